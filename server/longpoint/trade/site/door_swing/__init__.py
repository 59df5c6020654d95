"""Will it clear as it opens, and what bevel do its edges need?"""

from ... import degrees
from ...cautions import FIRE_DOOR, HEAVY_DOOR
from ...door import gaps
from ...lengths import show_angle
from ...tool import Angle, Answer, Choice, Given, Gives, Length, Refusal, Scale, Tool
from .edges import HAIR, SLIGHT, Hanging, HingeEdge, StrikeEdge
from .views import edge_view, hinge_view, plan, tight_view
from .words import hinge_notes, pair_note, strike_notes, verdict_words

STANDARD = degrees.atan(1 / 16)
"""Degrees of the bevel said as 1/8 in 2."""
BEVELS = (
    ("square", 0.0),
    ("3.0°", 3.0),
    ("1/8 in 2 1/4", degrees.atan(1 / 18)),
    ("1/8 in 2", STANDARD),
)


def work(given: Given, scale: Scale) -> Answer:
    """Return the tightest gaps, the bevels that keep the clearance, marks and views."""
    edges, hinge = _strike_edges(given, scale), _hinge_edge(given)
    opening, keep = given.number("opening"), given.number("clearance")
    answer = Answer(scale)
    answer.verdict(*verdict_words(edges, hinge, keep, scale))
    _figures(answer, edges[0], opening)
    if len(edges) > 1:
        _other_figures(answer, edges[1])
    answer.length("hinge_far_gap", hinge.far_gap, fine=True)
    answer.angle("hinge_bevel_angle", hinge.bevel)
    answer.length("hinge_relief", hinge.relief, fine=True)
    _marks(answer, edges, hinge)
    _bevels(answer, edges[0])
    _draw(answer, edges, hinge, opening)
    for words in strike_notes(edges[0], scale.finer()) + hinge_notes(hinge, scale.finer()):
        answer.note(words)
    if len(edges) > 1:
        answer.note(pair_note(given.text("opens") == "together"))
    return answer


def _strike_edges(given: Given, scale: Scale) -> "list[StrikeEdge]":
    """Return the strike edge of the leaf, and of the other one where there is one."""
    thick, land = given.number("door_thickness"), given.number("land")
    if land >= thick:
        raise Refusal(
            "land",
            f"A land of {scale.length(land)} leaves nothing of an edge {scale.length(thick)} "
            "thick to bevel: use less.",
        )
    pin_in = given.maybe("pin_in")
    hanging = Hanging(
        thick,
        given.number("hinge_gap") / 2 if pin_in is None else pin_in,
        given.number("pin_out"),
        given.number("strike_gap"),
        given.number("clearance"),
        land,
        given.text("opens") == "together",
    )
    width = given.number("leaf_width")
    edges = [StrikeEdge(hanging, width, "leaf_width", scale)]
    if given.text("meets") == "leaf":
        other = given.maybe("other_width") or width
        edges.append(StrikeEdge(hanging, other, "other_width", scale))
    return edges


def _hinge_edge(given: Given) -> HingeEdge:
    return HingeEdge(
        given.number("door_thickness"),
        given.number("hinge_gap"),
        given.number("clearance"),
        given.number("jamb_closes_in"),
        given.maybe("hinge_bevel"),
    )


def _figures(answer: Answer, edge: StrikeEdge, opening: float) -> None:
    swing = edge.swing
    standard = swing.tight_gap(swing.relief(STANDARD))
    answer.length("tight_gap", swing.tight_gap(), lead=True, fine=True)
    answer.angle("bevel_angle", edge.bevel, lead=True)
    answer.length("back_relief", edge.relief, fine=True)
    answer.words("standard_enough", "yes" if standard >= edge.keep - HAIR else "no")
    answer.length("standard_gap", standard, fine=True)
    answer.length("gap_needed", swing.gap_for(edge.keep), fine=True)
    answer.angle("tight_at", swing.tight_at)
    label = f"Gap when open {show_angle(opening)}"
    answer.length("opening_gap", swing.gap_at(opening, edge.relief), label=label, fine=True)


def _other_figures(answer: Answer, edge: StrikeEdge) -> None:
    answer.length("other_tight_gap", edge.swing.tight_gap(), fine=True)
    answer.angle("other_bevel_angle", edge.bevel)
    answer.length("other_back_relief", edge.relief, fine=True)


def _marks(answer: Answer, edges: "list[StrikeEdge]", hinge: HingeEdge) -> None:
    names = ["First leaf", "Other leaf"] if len(edges) > 1 else ["Leaf"]
    for number, edge in enumerate(edges):
        tag, name = str(number + 1), names[number]
        if not edge.is_planed:
            continue
        answer.mark(
            tag, name + ", pencil line on the far face", "strike edge", edge.relief, fine=True
        )
        if edge.swing.land:
            label = name + ", gauge line on the edge"
            answer.mark(tag, label, "knuckle face", edge.swing.land, fine=True)
    relief = hinge.needed_relief if hinge.is_short else hinge.relief
    if relief >= SLIGHT:
        label = names[0] + ", pencil line on the far face"
        answer.mark("1", label, "hinge edge", relief, fine=True)


def _bevels(answer: Answer, edge: StrikeEdge) -> None:
    """Show what the usual bevels would leave, beside the one needed."""
    scale, swing = answer.scale.finer(), edge.swing
    bevels = list(BEVELS)
    if edge.relief:
        bevels.append((show_angle(edge.bevel) + ", needed", edge.bevel))
    rows = []
    for name, bevel in bevels:
        relief = swing.relief(bevel)
        rows.append([name, scale.decimal(relief), scale.decimal(swing.tight_gap(relief))])
    columns = ["Bevel", "Comes off", "Tightest"]
    answer.table("Bevels compared", columns, rows, len(rows) - 1 if edge.relief else 0)


def _draw(answer: Answer, edges: "list[StrikeEdge]", hinge: HingeEdge, opening: float) -> None:
    edge, scale = edges[0], answer.scale
    other = edges[1] if len(edges) > 1 else None
    beyond = None if other is None else other.swing
    answer.draw(lambda: plan(edge.swing, edge.relief, hinge, opening, beyond, scale))
    answer.draw(lambda: tight_view(edge.swing, edge.relief, scale))
    if edge.relief:
        answer.draw(lambda: edge_view(edge.swing, edge.relief, scale))
    if other and other.relief and other.swing.width != edge.swing.width:
        answer.draw(lambda: edge_view(other.swing, other.relief, scale))
    if hinge.relief or hinge.closes_in:
        answer.draw(lambda: hinge_view(hinge, edge.swing.thickness, scale))


def _space(name: str, label: str, default: str, help: str) -> Length:
    return Length(name, label, default=default, least=0, help=help)


TOOL = Tool(
    slug="door-swing",
    place="site",
    title="Door swing",
    question="Will it clear as it opens, and what bevel does it need?",
    finds=("butt hinge", "back bevel", "bind", "hinge bound", "threshold", "clearance"),
    inputs=[
        gaps.leaf_width("width", help="At its wider face."),
        gaps.door_thickness("thickness", default=None),
        gaps.hinge_gap(default="1/8", help="Closed, between leaf and jamb at the knuckle face."),
        Length(
            "pin_in",
            "Pin in",
            least=0,
            optional=True,
            default_text="half the hinge gap",
            help="From the leaf's hinge edge toward the jamb.",
        ),
        _space("pin_out", "Pin out", "1/2", "Center of the pin beyond the knuckle face."),
        Length(
            "strike_gap",
            "Strike gap",
            default="1/8",
            help="Closed, to the jamb or other leaf.",
            quantity="strike gap",
        ),
        _space("clearance", "Clearance", "1/16", "To keep all through the swing."),
        _space("land", "Land", "0", "Flat left at the knuckle face before the bevel begins."),
        Length(
            "jamb_closes_in",
            "Hinge jamb closes in",
            default="0",
            least=-1,
            most=1,
            help="Its face against a square, over the leaf's thickness: + toward the leaf, "
            "- away from it.",
        ),
        Angle(
            "hinge_bevel",
            "Hinge edge bevel",
            least=0,
            most=10,
            optional=True,
            default_text="what it needs",
        ),
        Choice("meets", "Meets", [("jamb", "a jamb"), ("leaf", "the other leaf")], default="jamb"),
        Choice(
            "opens",
            "Opens",
            [("one", "one at a time"), ("together", "both at once")],
            default="one",
            only_when=("meets", "leaf"),
        ),
        Length(
            "other_width",
            "Other leaf",
            optional=True,
            default_text="as wide",
            only_when=("meets", "leaf"),
        ),
        Angle("opening", "Drawn open", default=30, least=0, most=180, slide=True),
    ],
    work=work,
    gives=[
        Gives("tight_gap", "length", "Tightest gap, square edge", short="tightest"),
        Gives("bevel_angle", "angle", "Strike edge bevel", short="bevel"),
        Gives("back_relief", "length", "Off the far corner", short="comes off"),
        Gives("standard_enough", "text", "Is 1/8 in 2 enough?", short="1/8 in 2"),
        Gives("standard_gap", "length", "Tightest gap, 1/8 in 2"),
        Gives("gap_needed", "length", "Gap that needs no bevel", short="gap without bevel"),
        Gives("tight_at", "angle", "Tightest when open", short="tightest at"),
        Gives("opening_gap", "length", "Gap when open as drawn", short="gap, open"),
        Gives("other_tight_gap", "length", "Other leaf, tightest gap", sometimes=True),
        Gives("other_bevel_angle", "angle", "Other leaf, bevel", sometimes=True),
        Gives("other_back_relief", "length", "Other leaf, off the far corner", sometimes=True),
        Gives("hinge_far_gap", "length", "Hinge gap at the far face", short="hinge side"),
        Gives("hinge_bevel_angle", "angle", "Hinge edge bevel", short="hinge bevel"),
        Gives("hinge_relief", "length", "Off the hinge edge's far corner", short="hinge edge off"),
    ],
    example={"leaf_width": "18", "door_thickness": "1 3/4", "pin_out": "5/8", "land": "1/8"},
    cautions=[HEAVY_DOOR, FIRE_DOOR],
    sources=[
        "Tightest gap: the far corner's distance from the pin against that of the jamb's corner "
        "(plane geometry), checked against a numerical sweep.",
        "A strike gap of 1/8, and 1/16 for each leaf where a pair meets; 3 degrees on both edges: "
        "Architectural Woodwork Standards, 1st edition, appendix B and 4.1.17.2.",
        "1/8 in 2 1/4 as locks are beveled: Building Trades Pocketbook, 1899. 1/8 in 2: from "
        "memory.",
        "Pin in the middle of a hinge gap of 1/8 and 1/2 out, a clearance of 1/16, lock faces up "
        "to 7 degrees: common practice, no source. Measure your own hinge.",
        "A hinge edge turns away from its jamb, so it is tightest when closed: plane geometry.",
    ],
)
