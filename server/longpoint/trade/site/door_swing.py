"""Will the door clear as it opens, and what bevel does its edge need?"""

from .. import degrees
from ..cautions import FIRE_DOOR, HEAVY_DOOR
from ..lengths import show_angle
from ..tool import Angle, Answer, Choice, Given, Length, Refusal, Scale, Tool
from .swing import Swing
from .swing_views import edge_view, plan, tight_view

STANDARD = degrees.atan(1 / 16)
"""Degrees of the bevel said as 1/8 in 2."""
BEVELS = (
    ("square", 0.0),
    ("3.0°", 3.0),
    ("1/8 in 2 1/4", degrees.atan(1 / 18)),
    ("1/8 in 2", STANDARD),
)
STEEP = 7.0
_HAIR = 1e-9  # Inches: float noise must not turn "just enough" into "not enough".


class Edge:
    """One leaf's strike edge: its swing, and the bevel it needs; inches and degrees."""

    def __init__(self, swing: Swing, relief: float) -> None:
        self.swing = swing
        self.relief = relief
        self.bevel = swing.bevel(relief)


def work(given: Given, scale: Scale) -> Answer:
    """Return the tightest gap, the bevel that keeps the clearance, marks and views."""
    edges = _edges(given, scale)
    answer = Answer(scale)
    _figures(answer, edges[0], given)
    if len(edges) > 1:
        _other_figures(answer, edges[1])
    _marks(answer, edges)
    _bevels(answer, edges[0])
    swing, relief = edges[0].swing, edges[0].relief
    other = edges[1].swing if len(edges) > 1 else None
    answer.draw(plan(swing, relief, given.number("opening"), other, scale))
    answer.draw(tight_view(swing, relief, scale))
    if relief:
        answer.draw(edge_view(swing, relief, scale))
    if other and edges[1].relief and other.width != swing.width:
        answer.draw(edge_view(other, edges[1].relief, scale))
    _notes(answer, edges, given)
    return answer


def _edges(given: Given, scale: Scale) -> "list[Edge]":
    """Return the edge of the door, and of the other leaf where there is one."""
    width = given.number("width")
    edges = [_edge(given, "width", width, scale)]
    if given.text("meets") == "leaf":
        edges.append(_edge(given, "other_width", given.maybe("other_width") or width, scale))
    return edges


def _edge(given: Given, field: str, width: float, scale: Scale) -> Edge:
    """Return an edge with the least bevel that keeps the clearance, or refuse."""
    thick, land, keep = [given.number(name) for name in ("thickness", "land", "clearance")]
    if land >= thick:
        raise Refusal(
            "land",
            f"A land of {scale.length(land)} leaves nothing of an edge {scale.length(thick)} "
            "thick to bevel: use less.",
        )
    pin = (given.number("pin_in"), given.number("pin_out"))
    together = given.text("opens") == "together"
    swing = Swing(width, thick, pin[0], pin[1], given.number("strike_gap"), land, together)
    if swing.tight_gap() >= keep - _HAIR:
        return Edge(swing, 0.0)
    fine = scale.finer()
    wider = f"a gap of {fine.length(swing.gap_for(keep))} needs no bevel at all"
    most, relief = swing.most_land(keep), swing.relief_for(keep)
    if most < 0:
        raise Refusal(
            "clearance",
            f"A gap of {fine.length(swing.gap)} can't keep {fine.length(keep)} clear as the door "
            f"opens, whatever the bevel: keep less, or widen it; {wider}.",
        )
    if relief is None:
        raise Refusal(
            field,
            f"A door {scale.length(width)} wide and {scale.length(thick)} thick can't turn past "
            f"a gap of {fine.length(swing.gap)} with any bevel: {wider}.",
        )
    if land > most + _HAIR:
        raise Refusal(
            "land",
            f"A land of {fine.length(land)} itself comes nearer than {fine.length(keep)}: use at "
            f"most {fine.length(most)}, or widen the gap.",
        )
    return Edge(swing, relief)


def _figures(answer: Answer, edge: Edge, given: Given) -> None:
    swing, keep = edge.swing, given.number("clearance")
    standard = swing.tight_gap(swing.relief(STANDARD))
    answer.length(
        "tight_gap", swing.tight_gap(), label="Tightest gap, square edge", lead=True, fine=True
    )
    answer.angle("bevel_angle", edge.bevel, label="Bevel", lead=True)
    answer.length("back_relief", edge.relief, label="Off the far corner", fine=True)
    enough = "yes" if standard >= keep - _HAIR else "no"
    answer.words("standard_enough", enough, label="Is 1/8 in 2 enough?")
    answer.length("standard_gap", standard, label="Tightest gap, 1/8 in 2", fine=True)
    answer.length("gap_needed", swing.gap_for(keep), label="Gap that needs no bevel", fine=True)
    answer.angle("tight_at", swing.tight_at, label="Tightest when open")
    at = swing.gap_at(given.number("opening"), edge.relief)
    label = f"Gap when open {show_angle(given.number('opening'))}"
    answer.length("opening_gap", at, label=label, fine=True)


def _other_figures(answer: Answer, edge: Edge) -> None:
    tight = edge.swing.tight_gap()
    answer.length("other_tight_gap", tight, label="Other leaf, tightest gap", fine=True)
    answer.angle("other_bevel_angle", edge.bevel, label="Other leaf, bevel")
    answer.length(
        "other_back_relief", edge.relief, label="Other leaf, off the far corner", fine=True
    )


def _marks(answer: Answer, edges: "list[Edge]") -> None:
    names = ["First leaf", "Other leaf"] if len(edges) > 1 else ["Door"]
    for number, edge in enumerate(edges):
        tag, name = str(number + 1), names[number]
        if not edge.relief:
            continue
        answer.mark(
            tag, name + ", pencil line on the far face", "strike edge", edge.relief, fine=True
        )
        if edge.swing.land:
            label = name + ", gauge line on the edge"
            answer.mark(tag, label, "knuckle face", edge.swing.land, fine=True)


def _bevels(answer: Answer, edge: Edge) -> None:
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


def _notes(answer: Answer, edges: "list[Edge]", given: Given) -> None:
    edge, fine = edges[0], answer.scale.finer()
    tight = edge.swing.tight_gap()
    if tight < 0:
        answer.note(
            f"With a square edge the door binds: its far corner would have to pass "
            f"{fine.length(-tight)} through."
        )
    if edge.relief:
        where = "the gauge line on the edge" if edge.swing.land else "the corner at the knuckle"
        answer.note(
            f"Plane from {where} to the pencil line on the far face, the one toward the stop; "
            f"check with a bevel set to {show_angle(90 - edge.bevel)}."
        )
    else:
        answer.note("A square edge clears: a bevel is not needed, easing the corners will do.")
    if edge.bevel > STEEP:
        answer.note(
            "That is steeper than lock faces are made: widen the gap, or bring the pin nearer to "
            "the door's face."
        )
    if len(edges) > 1:
        _pair_note(answer, given.text("opens") == "together")


def _pair_note(answer: Answer, together: bool) -> None:
    if together:
        answer.note("Both leaves open at once: each edge keeps to its own half of the gap.")
        return
    answer.note(
        "Either leaf opens with the other closed. If the first always opens first, the other's "
        "edge may be beveled the other way, parallel to it, for an even gap all through."
    )


def _space(name: str, label: str, default: str, help: str) -> Length:
    return Length(name, label, default=default, least=0, help=help)


TOOL = Tool(
    slug="door-swing",
    place="site",
    title="Door swing",
    question="Will it clear as it opens, and what bevel does it need?",
    finds=("butt hinge", "bevel", "bind", "threshold", "clearance"),
    inputs=[
        Length("width", "Door width"),
        Length("thickness", "Door thickness"),
        _space("pin_in", "Pin in", "1/16", "From the door's hinge edge toward the jamb."),
        _space("pin_out", "Pin out", "1/2", "Center of the pin beyond the knuckle face."),
        Length(
            "strike_gap", "Strike gap", default="1/8", help="Closed, to the jamb or other leaf."
        ),
        _space("clearance", "Clearance", "1/16", "To keep all through the swing."),
        _space("land", "Land", "0", "Flat left at the knuckle face before the bevel begins."),
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
    example={"width": "18", "thickness": "1 3/4", "pin_out": "5/8", "land": "1/8"},
    cautions=[HEAVY_DOOR, FIRE_DOOR],
    sources=[
        "Tightest gap: the far corner's distance from the pin against that of the jamb's corner "
        "(plane geometry), checked against a numerical sweep.",
        "A strike gap of 1/8, and 1/16 for each leaf where a pair meets; 3 degrees on both edges: "
        "Architectural Woodwork Standards, 1st edition, appendix B and 4.1.17.2.",
        "1/8 in 2 1/4 as locks are beveled: Building Trades Pocketbook, 1899. 1/8 in 2: from "
        "memory.",
        "Pin 1/16 in and 1/2 out, a clearance of 1/16, lock faces up to 7 degrees: common "
        "practice, no source. Measure your own hinge.",
    ],
)
