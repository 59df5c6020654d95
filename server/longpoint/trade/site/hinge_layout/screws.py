"""Which screws the hinge leaves take, and what to drill for them."""

from ...tables.hinges import HOLES, Holes, leaf_like, leaves_of, screw_diameter
from ...tool import Answer, Choice, Flag, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tables.hinges import HingeLeaf
    from ...tool import Input

_WHEN = ("screws", True)
GAUGES = [(str(row.gauge), "#" + str(row.gauge)) for row in HOLES]

SCREW_INPUTS: "list[Input]" = [
    Flag(
        "screws",
        "Which screws?",
        help="Their size, and the holes to drill.",
        only_when=("kind", "butt"),
    ),
    Choice(
        "wood",
        "Wood",
        [("soft", "softwood"), ("hard", "hardwood")],
        default="soft",
        only_when=_WHEN,
    ),
    Choice(
        "gauge",
        "Screw",
        [("listed", "as listed for the hinge")] + GAUGES,
        default="listed",
        only_when=_WHEN,
    ),
    Choice(
        "pilot_table",
        "Pilot holes by",
        [("root", "70 and 90 % of the root"), ("boat", "boatbuilders' table")],
        default="root",
        only_when=_WHEN,
    ),
]

SCREW_SOURCES = [
    "Screws in hinge leaves: from memory, #10 x 1 in standard 3 1/2, #12 x 1 1/4 in 4 to 5. Pilot "
    "holes: 70 percent of the screw's root in softwood, 90 in hardwood (American Wood Council's "
    "basis, as a table gives it), or a boatbuilders' table."
]

NAMES = {"root": "70 and 90 % of the root", "boat": "the boatbuilders' table"}


def hinge_leaf_like(
    hinge: "float | None", thickness: "float | None", weight: str
) -> "HingeLeaf | None":
    """Return the listed leaf of a hinge by its height and its weight class or thickness.

    >>> hinge_leaf_like(4.5, None, "heavy").thickness, hinge_leaf_like(4.5, 0.13, "none").weight
    (0.18, 'standard')
    """
    if hinge is None:
        return None
    for row in leaves_of(hinge):
        if row.weight == weight:
            return row
    return None if thickness is None else leaf_like(hinge, thickness)


def add_screws(
    answer: Answer, listed: "HingeLeaf | None", gauge: str, wood: str, table: str
) -> None:
    """Add screw, pilot hole and shank hole, and both tables side by side."""
    if gauge == "listed" and listed is None:
        answer.note(
            "No table here lists the screws of this hinge, or its height and leaf are not known: "
            "choose the largest screw that lies flush in its countersinks."
        )
        return
    number = int(listed.gauge) if listed is not None and gauge == "listed" else int(gauge)
    answer.count("screw_gauge", number)
    if listed is not None and number == listed.gauge:
        answer.length("screw_length", listed.length)
        answer.count("screws_per_leaf", listed.screws)
        answer.note(
            f"Read as a {listed.weight} hinge, its screws from memory: those in the box go first."
        )
    answer.length("screw_diameter", screw_diameter(number), fine=True)
    _holes(answer, number, wood, table)


def _holes(answer: Answer, number: int, wood: str, used: str) -> None:
    index = [row.gauge for row in HOLES].index(number)
    pilot = _pilot(HOLES[index], used, wood)
    if pilot is None:
        used = "boat" if used == "root" else "root"
        pilot = _pilot(HOLES[index], used, wood)
        answer.note(f"That table has no #{number} in {wood}wood: {NAMES[used]} is used instead.")
    answer.length("pilot_hole", pilot or 0.0, fine=True)
    answer.length("shank_hole", HOLES[index].shank, fine=True)
    answer.note(
        f"Pilot hole by {NAMES[used]}: tables disagree by a 64th or two, so try one in an offcut "
        "of the same wood. Drill in the middle of the hinge leaf's hole, or it pulls the hinge "
        "aside."
    )
    columns = ["Screw", "Root, soft", "Root, hard", "Boat, soft", "Boat, hard", "Shank"]
    rows = [_row(row, answer.scale.finer()) for row in HOLES]
    answer.table("Holes for screws", columns, rows, index)


def _pilot(row: Holes, table: str, wood: str) -> "float | None":
    """Return a table's pilot hole for a screw in soft or hard wood, or None."""
    roots, boats = (row.root_soft, row.root_hard), (row.boat_soft, row.boat_hard)
    found: float | None = (roots if table == "root" else boats)[wood == "hard"]
    return found


def _row(row: Holes, scale: Scale) -> "list[str]":
    cells = [row.root_soft, row.root_hard, row.boat_soft, row.boat_hard, row.shank]
    return ["#" + str(row.gauge)] + ["" if cell is None else scale.length(cell) for cell in cells]
