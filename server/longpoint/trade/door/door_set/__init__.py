"""Which parts does a frame-and-panel door, or a pair, for this opening need?"""

from ...cautions import SAW
from ...lengths import show_number
from ...refusal import Refusal
from ...tables.weights import panel_density, wood_density, wood_named
from ...tool import Answer, Given, Scale, Tool
from ..gaps import OVERLAY
from . import words
from .advice import advice
from .asked import UNSAID, as_a_passage_door, gives, inputs
from .checks import check_leaf
from .leaf import BUTTED, STUB, Frame, FramedLeaf, Groove, Meeting, Place, Rail
from .parts import RAIL, Allowances, RoughStock, add_pieces, add_sizes, all_parts
from .views import elevation, section

MOISTURE = 8.0
"""Percent, indoors on average: Wood Handbook, Figure 13-1, as quoted."""


def work(given: Given, scale: Scale) -> Answer:
    """Return the leaves' sizes and every part, finished and rough."""
    bevel = given.maybe("bevel") or 0.0
    leaf = FramedLeaf(_place(given), _meeting(given), _frame(given), _groove(given, scale), bevel)
    named = [name for name in ("bottom_rail", "top_rail") if given.maybe(name) is not None]
    check_leaf(leaf, named, scale)
    stock = _stock(given, leaf, scale)
    answer = Answer(scale)
    words.verdict(answer, leaf)
    _figures(answer, leaf)
    _amounts(answer, given, leaf, stock)
    add_pieces(answer, leaf, stock)
    _marks(answer, leaf)
    add_sizes(answer, leaf, stock)
    answer.draw(lambda: elevation(leaf, scale))
    answer.draw(lambda: section(leaf, scale))
    words.add_notes(answer, leaf, stock.sheet, given.flag("glued"))
    for note in advice(leaf, scale):
        answer.note(note)
    return answer


def _place(given: Given) -> Place:
    """Return the opening and its gaps; an overlap is a gap the other way."""
    kind = given.text("kind")
    if kind == OVERLAY:
        side = given.number("overlap")
        gaps_in = [-side] + [-_or(given, name, side) for name in ("overlap_top", "overlap_bottom")]
    else:
        gaps_in = [given.number(name) for name in ("side_gap", "head_gap", "floor_gap")]
    return Place(
        kind,
        int(given.text("leaves")),
        given.number("opening_width"),
        given.number("opening_height"),
        gaps_in[0],
        gaps_in[1],
        gaps_in[2],
        given.maybe("meeting_gap") or 0.0,
    )


def _or(given: Given, name: str, other: float) -> float:
    """Return a number, or another one where it was not given; 0 is given."""
    value = given.maybe(name)
    return other if value is None else value


def _meeting(given: Given) -> Meeting:
    return Meeting(
        given.text("meeting") or BUTTED, given.maybe("lap") or 0.0, given.maybe("stem") or 0.0
    )


def _frame(given: Given) -> Frame:
    stile = given.number("stile")
    top = _or(given, "top_rail", stile)
    return Frame(
        given.number("door_thickness"), stile, top, _or(given, "bottom_rail", top), _mids(given)
    )


def _mids(given: Given) -> "list[Rail]":
    """Return the mid rails from the top down, each with the number of its row."""
    rows = given.rows("mid_rails")
    order = sorted([(-row.number("center"), index) for index, row in enumerate(rows)])
    rails = []
    for place, (below, index) in enumerate(order):
        half = rows[index].number("width") / 2
        name = "Mid rail" if len(rows) == 1 else f"Mid rail {place + 1}"
        rails.append(Rail(name, -below - half, -below + half, index))
    return rails


def _groove(given: Given, scale: Scale) -> Groove:
    depth, panel = given.number("groove_depth"), given.number("panel_thickness")
    tenon = given.maybe("tenon_length")
    if tenon is None and depth <= STUB:
        raise Refusal(
            "groove_depth",
            f"A groove {scale.finer().length(depth)} deep holds no tenon: plow it deeper, or "
            "give the tenon's length.",
        )
    return Groove(
        _or(given, "groove_width", panel),
        depth,
        depth - STUB if tenon is None else tenon,
        panel,
        given.number("panel_play"),
    )


def _stock(given: Given, leaf: FramedLeaf, scale: Scale) -> RoughStock:
    widest, loss = given.maybe("board_width"), given.maybe("joint_loss") or 0.0
    if widest is not None and widest <= 2 * loss:
        raise Refusal(
            "board_width",
            f"A board {scale.length(widest)} wide is used up by its two glued edges: "
            f"use boards wider than {scale.length(2 * loss)}.",
        )
    extra = [given.number(name) for name in ("extra_thickness", "extra_width", "extra_length")]
    allowed = Allowances(extra[0], extra[1], extra[2], leaf.bevel_off)
    return RoughStock(widest, loss, allowed, given.text("panel_of") == "sheet")


def _figures(answer: Answer, leaf: FramedLeaf) -> None:
    answer.length("leaf_width", leaf.width, lead=True)
    answer.length("leaf_height", leaf.height, lead=True)
    if leaf.lap:
        answer.length("leaf_width_right", leaf.widths[1], lead=True)
    answer.length("rail_length", leaf.rail_length)
    answer.length("sight_width", leaf.sight_width)
    answer.words("panels", words.panels_words(leaf, answer.scale))
    answer.length("panel_width", leaf.panel_width)
    heights = leaf.panel_heights
    if len(heights) == 1:
        answer.length("panel_height", heights[0])
    else:
        for place, height in enumerate(heights):
            answer.length(f"panel_height_{place + 1}", height)
    answer.length("tenon_length", leaf.groove.tenon, fine=True)
    answer.length("stock_thickness", leaf.frame.thickness)
    answer.length("rail", leaf.frame.top_rail)
    answer.length("diagonal", leaf.diagonal)
    if leaf.bevel_off > 0:
        answer.length("bevel_off", leaf.bevel_off, fine=True)


def _amounts(answer: Answer, given: Given, leaf: FramedLeaf, stock: RoughStock) -> None:
    """Add what is bought of solid wood, and what a leaf weighs where the wood is known."""
    feet = sum([stock.board_feet(part) for part in all_parts(leaf)])
    answer.number("board_feet", feet, "bf", places=1)
    species = given.text("species")
    if species == UNSAID:
        return
    density = wood_density(wood_named(species).gravity, MOISTURE)
    frame, panels = leaf.volumes()
    of_panels = panel_density(given.text("sheet")) if stock.sheet else density
    answer.weight("leaf_weight", (frame * density + panels * of_panels) / 1728)
    answer.note(
        f"Weight at {show_number(MOISTURE)} percent moisture, panels as thick all over as in "
        "their grooves, without hardware and finish."
    )


def _marks(answer: Answer, leaf: FramedLeaf) -> None:
    """Mark both edges of every rail on the stiles, laid side by side."""
    tags = [part.tag for part in all_parts(leaf) if part.kind == RAIL]
    for tag, rail in zip(reversed(tags[: len(leaf.rails)]), reversed(leaf.rails)):
        if rail.low > 0:
            answer.mark(tag, rail.name + ", lower edge", "leaf bottom", rail.low)
        if rail.high < leaf.height:
            answer.mark(tag, rail.name + ", upper edge", "leaf bottom", rail.high)


TOOL = Tool(
    slug="door-set",
    place="saw",
    title="Door set",
    question="A frame-and-panel door or pair for this opening: what is every part?",
    finds=(
        "stile",
        "rail",
        "cabinet door",
        "cope and stick",
        "panel door",
        "shaker",
        "ply",
        "double door",
        "slab",
    ),
    inputs=inputs(),
    work=work,
    gives=gives(),
    upgrades=(as_a_passage_door,),
    example={
        "kind": "passage",
        "opening_width": "32 1/4",
        "opening_height": "80 5/8",
        "stile": "4 1/2",
        "panel_thickness": "3/8",
        "bottom_rail": "9 1/2",
    },
    cautions=[SAW],
    sources=[
        "Passage doors: gaps of 1/8 at head and jambs, 1/16 per leaf where a pair meets, 1/2 above "
        "the floor, edges beveled 3°: Architectural Woodwork Standards, 1st edition, appendix B, "
        "typical prefit, and 4.1.17.2. Interior doors 1 3/8 thick: NAVEDTRA 14069.",
        "Cupboards: 3/4 thick: the same standards, 4.4.6.10; 3/32 around inset leaves, 1/8 "
        "between overlay ones: common practice, no source.",
        "Rail = leaf - 2 stiles + 2 tenons, panel = opening + 2 grooves - 2 plays: plane geometry.",
        "Play of 1/8 per side, panels over 18 wide: woodworking magazine article on raised "
        "panels. Sheet panels with 1/16 or none: builders' forum practice.",
        "Haunch that fills the groove: Noyes, Handwork in Wood; Fairham, Woodwork Joints.",
        "Weights: Wood Handbook, specific gravity at 12 percent, some from memory. Board feet: "
        "NHLA rules as a dealer quotes them.",
        "Rough allowances, 1/32 at the tenon's end, proportions, rabbets of half the thickness: "
        "common practice, from memory, no source.",
    ],
)
