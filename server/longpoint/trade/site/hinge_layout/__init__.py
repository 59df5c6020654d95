"""Where do the hinges go and how deep is the mortise? The answer grows with what is known.

Lines on leaf and jamb need the leaf's and the hinge's height; the depth needs the hinge leaf's
thickness and the gap; the width needs the door's thickness. An option adds, it takes nothing away.
"""

from ...cautions import FIRE_DOOR, HEAVY_DOOR, SHALLOW
from ...door.hinge_count import hinge_names, usual_count
from ...tool import Answer, Given, Scale, Tool
from .advice import ADVICE_SOURCES, Hung, add_advice
from .cup_answer import CUP_SOURCES, cup_answer
from .doubts import doubt_gap, doubt_leaf
from .figures import GIVES
from .inputs import INPUTS
from .leaf_list import LIST_SOURCES, add_leaf_list
from .lines import Lines, Offsets, carried_over, spread
from .missing import refuse_unless_known
from .mortise import Mortise
from .outline import mortise_outline
from .screws import SCREW_SOURCES, add_screws, hinge_leaf_like
from .template import TEMPLATE_SOURCES, add_template
from .views import edge_view, section_view
from .words import butt_notes, butt_verdict

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tables.hinges import HingeLeaf

LINES_NEED = ("leaf_height", "hinge_height")
DEPTH_NEEDS = ("leaf_thickness", "hinge_gap")
LISTED_NEEDS = ("hinge_height", "hinge_gap")


def work(given: Given, scale: Scale) -> Answer:
    """Return mortise, marks on leaf and jamb, and the views."""
    if given.text("kind") == "cup":
        return cup_answer(given, scale)
    return _butt_answer(given, scale)


def _butt_answer(given: Given, scale: Scale) -> Answer:
    hinge, measured = given.maybe("hinge_height"), given.maybe("leaf_thickness")
    weight = given.text("listed_leaf") if measured is None else "none"
    hinge_leaf = hinge_leaf_like(hinge, measured, weight)
    listed = None if measured is not None else hinge_leaf
    lines = _lines(given, scale)
    mortise = _mortise(given, measured if listed is None else listed.thickness, scale)
    if lines is None and mortise.depth is None:
        refuse_unless_known(given, (LINES_NEED, DEPTH_NEEDS if weight == "none" else LISTED_NEEDS))
    answer = Answer(scale)
    head_gap = given.number("head_gap")
    answer.verdict(*butt_verdict(lines, mortise, head_gap, listed, scale))
    _figures(answer, lines, mortise)
    if lines is not None:
        for start, shift in (("leaf top", 0.0), ("head", head_gap)):
            _marks(answer, lines, start, shift)
    _draw(answer, lines, mortise, head_gap)
    if measured is None:
        add_leaf_list(answer, hinge, weight, listed)
    _options(answer, given, lines, mortise, hinge_leaf)
    for words in butt_notes(lines, mortise, head_gap, scale):
        answer.note(words)
    _doubts(answer, mortise, given.number("closed_gap"))
    answer.caution(SHALLOW)
    answer.caution(HEAVY_DOOR)
    return answer


def _lines(given: Given, scale: Scale) -> "Lines | None":
    """Return the hinges' lines once the leaf's and the hinge's height are known."""
    high, hinge = given.maybe("leaf_height"), given.maybe("hinge_height")
    if high is None or hinge is None:
        return None
    head_gap = given.number("head_gap")
    old = [row.number("top_line") for row in given.rows("existing")]
    if old:
        shift = -head_gap
        if given.text("read_off") == "door":
            above = given.maybe("old_head_gap")
            shift += head_gap if above is None else above
        return Lines(high, hinge, carried_over(high, hinge, old, shift, scale), True)
    on_frame = given.text("measured_on") == "frame"
    offsets = Offsets(
        given.number("top_offset"),
        given.number("bottom_offset"),
        head_gap if on_frame else 0.0,
        given.number("floor_gap") if on_frame else 0.0,
    )
    count = given.maybe_count("hinge_count") or usual_count(high)
    return Lines(high, hinge, spread(high, hinge, count, offsets, scale), False)


def _mortise(given: Given, leaf: "float | None", scale: Scale) -> Mortise:
    return Mortise(
        leaf,
        given.maybe("hinge_gap"),
        given.number("closed_gap"),
        given.maybe("door_thickness"),
        given.number("backset"),
        given.maybe("hinge_height"),
        scale,
    )


def _figures(answer: Answer, lines: "Lines | None", mortise: Mortise) -> None:
    if mortise.depth is not None:
        answer.length("mortise_depth", mortise.depth, lead=True, fine=True)
        answer.length("packing", mortise.shim, fine=True)
    if mortise.width is not None:
        answer.length("mortise_width", mortise.width)
    if mortise.length is not None:
        answer.length("mortise_length", mortise.length)
    if lines is not None:
        answer.count("hinge_count", lines.count, lead=mortise.depth is None)
        answer.length("top_center", lines.centers[0])
        answer.length("bottom_center", lines.centers[1])


def _marks(answer: Answer, lines: Lines, start: str, shift: float) -> None:
    for number, name in enumerate(hinge_names(lines.count)):
        tag, top = str(number + 1), lines.tops[number] + shift
        answer.mark(tag, f"{name} hinge, top line", start, top)
        answer.mark(tag, f"{name} hinge, bottom line", start, top + lines.hinge)


def _draw(answer: Answer, lines: "Lines | None", mortise: Mortise, head_gap: float) -> None:
    """Draw the section first where its depth is known, since that is what the verdict ends on."""
    scale, depth = answer.scale, mortise.depth
    if depth is not None:
        answer.draw(lambda: section_view(mortise, depth, mortise.gap or 0.0, scale))
    if lines is not None:
        answer.draw(lambda: edge_view(lines, head_gap, mortise.gap, scale))
    width, length = mortise.width, mortise.length
    if depth and width is not None and length is not None:
        answer.draw(lambda: mortise_outline(mortise, width, length, depth, scale))


def _options(
    answer: Answer,
    given: Given,
    lines: "Lines | None",
    mortise: Mortise,
    hinge_leaf: "HingeLeaf | None",
) -> None:
    if given.flag("choose"):
        hung = Hung(
            given.maybe("leaf_width"),
            given.maybe("leaf_height"),
            mortise.thickness,
            given.maybe("leaf_weight"),
            mortise.length,
            None if lines is None else lines.count,
        )
        add_advice(answer, hung, mortise.width, given.number("throw"))
    if given.flag("screws"):
        asked = given.text("gauge"), given.text("wood"), given.text("pilot_table")
        add_screws(answer, hinge_leaf, *asked)
    if given.flag("template"):
        sizes = given.number("bushing"), given.number("bit")
        add_template(answer, mortise, sizes[0], sizes[1], given.text("corners"))
    if given.flag("match") and not given.rows("existing"):
        answer.note("Add the old hinges' top lines; until then the offsets place the hinges.")


def _doubts(answer: Answer, mortise: Mortise, closed_gap: float) -> None:
    if mortise.leaf is not None:
        doubt_leaf(answer, mortise.leaf)
    if mortise.gap is not None:
        doubt_gap(answer, mortise.gap, "to the jamb")
        doubt_gap(answer, closed_gap, "of the closed hinge")


TOOL = Tool(
    slug="hinge-layout",
    place="site",
    title="Hinge layout",
    question="Where do the hinges go and how deep is the mortise?",
    finds=("butt hinge", "gain", "hinge leaf", "hang a door", "concealed hinge", "prehung"),
    inputs=INPUTS,
    work=work,
    gives=GIVES,
    example={
        "leaf_height": "79",
        "door_thickness": "1 3/8",
        "hinge_height": "3 1/2",
        "leaf_thickness": "0.085",
        "hinge_gap": "3/32",
    },
    cautions=[FIRE_DOOR],
    sources=[
        "Depth: the two hinge leaves, the closed hinge's gap and the two mortises close up to the "
        "gap wanted (geometry).",
        "Number of hinges: 2 up to 60 inches of leaf height, one more for each further 30 or "
        "part of it, as hinge makers' tables agree.",
        "Backset of 1/4 for doors 1 3/8 and 1 3/4 thick: hollow-metal frame and door makers' "
        "tables.",
        "Offsets of 5 and 10: common practice, no source; 6 and 9 or 7 and 11 are met as well.",
        "A gap of 1/16 between closed hinge leaves: usual swaging of butt hinges, makers' tables.",
    ]
    + LIST_SOURCES
    + CUP_SOURCES
    + ADVICE_SOURCES
    + SCREW_SOURCES
    + TEMPLATE_SOURCES,
)
