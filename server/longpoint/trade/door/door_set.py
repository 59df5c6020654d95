"""Which parts does a frame-and-panel door, or a pair, for this opening need?"""

from ..cautions import FIRE_DOOR, SAW
from ..tool import Answer, Choice, Given, Length, Rows, Scale, Tool
from . import gaps
from .door_parts import Stock, add_pieces, add_sizes, all_parts
from .door_views import elevation, section
from .leaf import Leaf
from .proportions import proportion_notes

WIDE_PANEL = 18.0


def work(given: Given, scale: Scale) -> Answer:
    """Return the leaves' sizes and every part, finished and rough."""
    leaf = Leaf(given, scale)
    stock = Stock(given, scale)
    answer = Answer(scale)
    _figures(answer, leaf)
    add_pieces(answer, leaf, stock)
    _marks(answer, leaf)
    add_sizes(answer, leaf, stock)
    answer.draw(elevation(leaf, scale))
    answer.draw(section(leaf, scale))
    _notes(answer, leaf, stock)
    for note in proportion_notes(leaf, scale):
        answer.note(note)
    return answer


def _figures(answer: Answer, leaf: Leaf) -> None:
    answer.length("leaf_width", leaf.width, label="Leaf width", lead=True)
    answer.length("leaf_height", leaf.height, label="Leaf height", lead=True)
    answer.length("rail_length", leaf.rail_length, label="Rails, tenons included")
    answer.length("sight_width", leaf.sight_width, label="Rails between shoulders")
    answer.length("panel_width", leaf.panel_width, label="Panel width")
    heights = leaf.panel_heights
    if len(heights) == 1:
        answer.length("panel_height", heights[0], label="Panel height")
    else:
        for place, height in enumerate(heights):
            which = " from the top" if place == 0 else ""
            label = f"Panel {place + 1}{which}, height"
            answer.length(f"panel_height_{place + 1}", height, label=label)
    answer.length("tenon_length", leaf.tenon, label="Tenon length", fine=True)
    diagonal = (leaf.width * leaf.width + leaf.height * leaf.height) ** 0.5
    answer.length("diagonal", diagonal, label="Diagonals, glued up square")


def _marks(answer: Answer, leaf: Leaf) -> None:
    """Mark both edges of every rail on the stiles, laid side by side."""
    tags = [part.tag for part in all_parts(leaf) if part.kind == "rail"]
    for tag, rail in zip(reversed(tags[: len(leaf.rails)]), reversed(leaf.rails)):
        if rail.low > 0:
            answer.mark(tag, rail.name + ", lower edge", "leaf bottom", rail.low)
        if rail.high < leaf.height:
            answer.mark(tag, rail.name + ", upper edge", "leaf bottom", rail.high)


def _notes(answer: Answer, leaf: Leaf, stock: Stock) -> None:
    answer.note(
        "Lay all stiles side by side and mark the rails' edges across them at once from the "
        "leaf's bottom; leave the stiles long at both ends until the leaf is glued."
    )
    answer.note(
        "Glue the rails, never the panel: finish its edges first, and pin it at the middle of "
        "top and bottom if it is to stay centered."
    )
    _joint_note(answer, leaf)
    if not stock.sheet and leaf.panel_width > WIDE_PANEL:
        answer.note(
            f"A solid panel {answer.scale.length(leaf.panel_width)} wide moves much: over "
            "18 wide plow deeper, or divide the panel, and check the play against its movement."
        )
    if stock.sheet and leaf.play > 1 / 16:
        answer.note("A sheet panel hardly moves: a play of 1/16 or less is enough for it.")
    if leaf.leaves == 2:
        answer.note(
            "The meeting stiles are taken as square butts: for rabbeted ones add the rabbet to "
            "one of them, or the astragal's room to the meeting gap."
        )


def _joint_note(answer: Answer, leaf: Leaf) -> None:
    deeper = leaf.tenon - leaf.groove
    if deeper > 1e-9:
        answer.note(
            f"The tenons are {answer.scale.finer().length(deeper)} longer than the groove is "
            "deep: mortise the stiles that much deeper, and haunch the outer tenons so that they "
            "fill the groove at the stile's end."
        )
    else:
        answer.note(
            "Stub tenons in the groove alone carry a light door; for a heavy or an outside one "
            "give longer tenons and mortise the stiles."
        )


def _extra(name: str, label: str, default: str, help: str) -> Length:
    return Length(name, label, default=default, least=0, most=24, help=help)


TOOL = Tool(
    slug="door-set",
    place="saw",
    title="Door set",
    question="A frame-and-panel door or pair for this opening: what is every part?",
    finds=("stile", "rail", "cabinet door", "cope and stick", "panel door"),
    inputs=[
        Length("width", "Opening width", help="Between the finished jambs."),
        Length("height", "Opening height", help="From the finished floor to the head."),
        Length("stile", "Stile width", help="The rails follow it where nothing else is given."),
        Length(
            "panel_thickness",
            "Panel thickness",
            help="As measured, where it sits in the groove: of a raised panel, its tongue.",
        ),
        gaps.leaves(),
        Length("top_rail", "Top rail", optional=True, default_text="as the stiles"),
        Length("bottom_rail", "Bottom rail", optional=True, default_text="as the top rail"),
        Rows(
            "mid_rails",
            "Mid rails",
            [
                Length("center", "Center", help="Height of its middle above the leaf's bottom."),
                Length("width", "Width"),
            ],
            row="mid rail",
            least=0,
            most=12,
        ),
    ]
    + gaps.leaf_gaps()
    + [
        Length("stock_thickness", "Stock thickness", default="1 3/8", help="Of the frame."),
        Length("groove_depth", "Groove depth", default="3/8"),
        Length(
            "tenon_length",
            "Tenon length",
            optional=True,
            default_text="1/32 less than the groove",
        ),
        gaps.gap("panel_play", "Panel play", "1/8", "Per side, between the panel and the groove."),
        Choice(
            "panel_of",
            "Panel of",
            [("solid", "solid wood"), ("sheet", "sheet goods")],
            default="solid",
        ),
        Length(
            "stock_width",
            "Widest board",
            optional=True,
            help="Parts wider than that are glued up from strips.",
        ),
        gaps.gap("joint_loss", "Lost per edge", "1/16", "Jointing each glued edge."),
        _extra("extra_thickness", "Extra thickness", "1/8", "Of rough over finished stock."),
        _extra("extra_width", "Extra width", "1/4", "Of a part before it is ripped to size."),
        _extra("extra_length", "Extra length", "1", "Of a part before it is cut to length."),
    ],
    work=work,
    example={
        "width": "32 1/4",
        "height": "80 5/8",
        "stile": "4 1/2",
        "panel_thickness": "3/8",
        "bottom_rail": "9 1/2",
        "mid_rails": [{"center": "38", "width": "8"}],
        "groove_depth": "1/2",
        "stock_width": "7 1/4",
    },
    cautions=[SAW, FIRE_DOOR],
    sources=[
        "Gaps of 1/8 at head and jambs, 1/16 per leaf where a pair meets, 1/2 above the floor: "
        "Architectural Woodwork Standards, 1st edition, appendix B, typical prefit.",
        "Rail = leaf - 2 stiles + 2 tenons, panel = opening + 2 grooves - 2 plays: plane geometry.",
        "Play of 1/8 per side, panels over 18 wide: woodworking magazine article on raised "
        "panels. Sheet panels with 1/16 or none: builders' forum practice.",
        "Haunch that fills the groove: Noyes, Handwork in Wood; Fairham, Woodwork Joints.",
        "Interior doors 1 3/8 thick: NAVEDTRA 14069.",
        "Rough allowances, 1/32 at the tenon's end, proportions: common practice, from memory, "
        "no source.",
    ],
)
