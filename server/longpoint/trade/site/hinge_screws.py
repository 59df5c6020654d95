"""Which screws the leaves take, and what to drill for them."""

from ..tables.hinges import HOLES, Holes, Leaf, leaf_like, screw_diameter
from ..tool import Answer, Choice, Flag, Given, Refusal, Scale
from .hinge_places import Layout

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..tool import Input

_WHEN = ("screws", True)
GAUGES = [(str(row.gauge), "#" + str(row.gauge)) for row in HOLES]

SCREW_INPUTS: "list[Input]" = [
    Flag("screws", "Which screws?", help="Their size, and the holes to drill."),
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
    "Screws: a hinge maker's cut sheets for 3 1/2 (#10 x 1) and larger (#12 x 1 1/4); light hinges "
    "and those of 6 from memory. Pilot holes: 70 percent of the screw's root in softwood, 90 in "
    "hardwood (American Wood Council's basis, as a table gives it), or a boatbuilders' table."
]

NAMES = {"root": "70 and 90 % of the root", "boat": "the boatbuilders' table"}


def add_screws(answer: Answer, given: Given, layout: Layout) -> None:
    """Add screw, pilot hole and shank hole, and both tables side by side."""
    listed = leaf_like(layout.hinge, layout.leaf)
    number = _gauge(given.text("gauge"), listed, answer.scale.length(layout.hinge))
    answer.count("screw_gauge", number, label="Screw number")
    if listed is not None and number == listed.gauge:
        answer.length("screw_length", listed.length, label="Screw length")
        answer.count("screws_per_leaf", listed.screws, label="Screws in each leaf")
        answer.note(
            f"Read as a {listed.weight} hinge, by its leaf: the screws in the box go before the "
            "table."
        )
    answer.length("screw_diameter", screw_diameter(number), label="Screw diameter", fine=True)
    _holes(answer, given, number)


def _gauge(asked: str, listed: "Leaf | None", height: str) -> int:
    """Return the screw asked for by number, or the one listed for the hinge."""
    if asked != "listed":
        return int(asked)
    if listed is None:
        raise Refusal(
            "gauge",
            f"No table here lists the screws of a hinge {height} high: choose the largest that "
            "lies flush in its countersinks.",
        )
    return int(listed.gauge)


def _holes(answer: Answer, given: Given, number: int) -> None:
    index = [row.gauge for row in HOLES].index(number)
    wood, used = given.text("wood"), given.text("pilot_table")
    pilot = _pilot(HOLES[index], used, wood)
    if pilot is None:
        used = "boat" if used == "root" else "root"
        pilot = _pilot(HOLES[index], used, wood)
        answer.note(f"That table has no #{number} in {wood}wood: {NAMES[used]} is used instead.")
    answer.length("pilot_hole", pilot or 0.0, label="Pilot hole", fine=True)
    answer.length("shank_hole", HOLES[index].shank, label="Shank hole", fine=True)
    answer.note(
        f"Pilot hole by {NAMES[used]}: tables disagree by a 64th or two, so try one in an offcut "
        "of the same wood. Drill in the middle of the leaf's hole, or it pulls the hinge aside."
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
