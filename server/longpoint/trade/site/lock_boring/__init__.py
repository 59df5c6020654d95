"""Where are lock and latch bored, and where does the strike go? All sizes are the sheet's own."""

from ...cautions import FIRE_DOOR
from ...door import gaps
from ...tool import Answer, Choice, Given, Gives, Length, Scale, Tool
from .bores import Bores, LatchPlace, LeafSizes, LockSheet
from .views import close_view, height_view, template
from .words import cautions, notes, verdict_words


def work(given: Given, scale: Scale) -> Answer:
    """Return centers and depths of the bores, the strike's lines, and a template."""
    bores = _bores(given, scale)
    answer = Answer(scale)
    answer.verdict(*verdict_words(bores, scale))
    _figures(answer, bores)
    _leaf_marks(answer, bores, given.maybe("latch_plate"))
    _strike_marks(answer, bores, given.maybe("strike_plate"))
    answer.draw(lambda: close_view(bores, given.maybe("strike_plate"), scale))
    answer.draw(lambda: height_view(bores, scale))
    answer.draw(lambda: template(bores, scale))
    for words in notes(bores, scale):
        answer.note(words)
    jamb = given.number("jamb_thickness")
    for words in cautions(bores, jamb, given.maybe("strike_depth"), scale):
        answer.caution(words)
    return answer


def _bores(given: Given, scale: Scale) -> Bores:
    sheet = LockSheet(
        given.number("backset"),
        given.text("backset_from") == "middle",
        given.number("cross_bore"),
        given.number("edge_bore"),
        given.maybe("thickness_from"),
        given.maybe("thickness_to"),
    )
    leaf = LeafSizes(
        given.number("door_thickness"),
        given.maybe("leaf_height"),
        given.number("bevel"),
        given.maybe("stile"),
    )
    place = LatchPlace(
        given.number("latch_height"),
        given.number("floor_gap"),
        given.number("head_gap"),
        given.number("setback"),
    )
    return Bores(sheet, leaf, place, scale)


def _figures(answer: Answer, bores: Bores) -> None:
    answer.length("cross_in", bores.near, lead=True, fine=True)
    if bores.taken:
        answer.length("cross_in_far", bores.far, fine=True)
    answer.length("center_up", bores.up, lead=True)
    if bores.down is not None:
        answer.length("center_down", bores.down)
    answer.length("edge_center", bores.leaf.thickness / 2, fine=True)
    answer.length("edge_reach", bores.reach)
    answer.length("edge_wood", bores.edge_wood, fine=True)
    if bores.stile_left is not None:
        answer.length("stile_left", bores.stile_left)
    answer.length("strike_up", bores.place.latch)
    if bores.strike_down is not None:
        answer.length("strike_down", bores.strike_down)
    answer.length("strike_in", bores.strike_in, fine=True)


def _leaf_marks(answer: Answer, bores: Bores, plate: "float | None") -> None:
    """Mark both bores on the leaf, and the latch plate on its edge where its height is known."""
    bottom = "leaf's bottom"
    answer.mark("1", "Cross bore, center", "edge, wider face", bores.near, fine=True)
    if bores.taken:
        answer.mark("1", "Cross bore, center", "edge, narrower face", bores.far, fine=True)
    answer.mark("1", "Both bores, center", bottom, bores.up)
    if plate is not None:
        answer.mark("2", "Latch plate, lower line", bottom, bores.up - plate / 2)
        answer.mark("2", "Latch plate, upper line", bottom, bores.up + plate / 2)
    answer.mark("2", "Edge bore, center", "either face", bores.leaf.thickness / 2, fine=True)


def _strike_marks(answer: Answer, bores: Bores, plate: "float | None") -> None:
    """Mark the strike on its leg of the jamb."""
    latch, floor = bores.place.latch, "finished floor"
    answer.mark("3", "Strike, center", floor, latch)
    if plate is not None:
        answer.mark("3", "Strike plate, lower line", floor, latch - plate / 2)
        answer.mark("3", "Strike plate, upper line", floor, latch + plate / 2)
    answer.mark("3", "Strike bore, center", "jamb's edge, hinge face", bores.strike_in, fine=True)


def _sheet_size(name: str, label: str, help: str, default_text: str = "not marked") -> Length:
    return Length(name, label, optional=True, default_text=default_text, help=help)


TOOL = Tool(
    slug="lock-boring",
    place="site",
    title="Lock boring",
    question="A lock by its sheet: where are its bores on the leaf, and the strike on the jamb?",
    finds=("lockset", "knob", "lever", "latch", "deadbolt", "hole saw", "backset", "strike"),
    inputs=[
        Length(
            "backset", "Backset", help="From the edge to the cross bore's center, by the sheet."
        ),
        Length("cross_bore", "Cross bore", help="Its diameter, by the sheet: through both faces."),
        Length("edge_bore", "Edge bore", help="Its diameter, by the sheet: for the latch."),
        gaps.door_thickness(default=None),
        gaps.latch_height(help="From the finished floor to the latch's center."),
        gaps.floor_gap(),
        _sheet_size("thickness_from", "Lock fits from", "Thinnest door, by the sheet.", "not said"),
        _sheet_size("thickness_to", "Lock fits to", "Thickest door, by the sheet.", "not said"),
        gaps.edge_bevel(default=0, help="Of the strike edge."),
        Choice(
            "backset_from",
            "Backset from",
            [("middle", "the middle of the edge"), ("high", "its high corner")],
            default="middle",
            help="Where the sheet begins on a beveled edge.",
        ),
        gaps.leaf_height(optional=True, default_text="not needed", help="To measure from the top."),
        gaps.head_gap(),
        Length(
            "stile",
            "Stile width",
            optional=True,
            default_text="not checked",
            quantity="stile width",
        ),
        _sheet_size("latch_plate", "Latch plate height", "Its length along the edge."),
        _sheet_size("strike_plate", "Strike plate height", "Its length along the jamb."),
        _sheet_size("strike_depth", "Strike bore depth", "Into the jamb.", "not checked"),
        gaps.jamb_thickness(),
        gaps.gap("setback", "Setback", "0", "Of the leaf's hinge face from the jamb's edge."),
    ],
    work=work,
    gives=[
        Gives("cross_in", "length", "Cross bore center, from the edge", short="in"),
        Gives(
            "cross_in_far",
            "length",
            "Cross bore center, on the narrower face",
            short="in, far face",
            sometimes=True,
        ),
        Gives("center_up", "length", "Center, up the leaf", short="up the leaf"),
        Gives("center_down", "length", "Center, down the leaf", short="down", sometimes=True),
        Gives("edge_center", "length", "Edge bore center, from either face", short="edge center"),
        Gives("edge_reach", "length", "Edge bore meets the cross bore at", short="edge deep"),
        Gives("edge_wood", "length", "Wood beside the edge bore", short="wood beside"),
        Gives("stile_left", "length", "Stile left beyond the bore", sometimes=True),
        Gives("strike_up", "length", "Strike center, up from the floor", short="strike up"),
        Gives("strike_down", "length", "Strike center, down from the head", sometimes=True),
        Gives("strike_in", "length", "Strike center, in from the jamb's edge", short="strike in"),
    ],
    example={
        "backset": "2 3/8",
        "cross_bore": "2 1/8",
        "edge_bore": "1",
        "door_thickness": "1 3/8",
        "latch_height": "36",
        "thickness_from": "1 3/8",
        "thickness_to": "1 3/4",
        "leaf_height": "80",
        "strike_plate": "2 1/4",
    },
    cautions=[
        "Clamp the leaf, and drill with both hands on the drill's handles: a hole saw that catches "
        "turns the drill. Back up the far face, or stop when the pilot bit comes through.",
        FIRE_DOOR,
    ],
    sources=[
        "Sizes of bores, backset, plates and door thickness: the lock's own sheet; backsets of "
        "2 3/8 and 2 3/4, bores of 2 1/8 and 1 are met most: door preparation guides.",
        "Knob 36 to 38 above the floor: Navy Builder text on locks.",
        "Bores square to the faces, the edge bore and the strike in the middle of the door's "
        "thickness, 1/8 beside a bore and 1/2 of stile beyond it: common practice, no source.",
        "Marks on both faces of a beveled edge: plane geometry.",
    ],
)
