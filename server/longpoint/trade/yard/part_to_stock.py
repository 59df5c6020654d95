"""A part this thick and this wide: what is asked for at the yard, and what is done with it?"""

from ..cautions import PLANER
from ..lengths import Scale, show_money, show_number
from ..tool import Answer, Choice, Count, Given, Length, Tool
from .part_notes import add_notes, condition_note, how_words, short_note
from .part_views import glued_view, stock_view
from .sizes import add_size
from .stock_offers import Offer, offers_of
from .stock_ways import Part, Way, ways_of
from .yard_list import yard_input

_SHOWN = 8


def work(given: Given, scale: Scale) -> Answer:
    """Return what to ask for, what is left to mill, and all the other ways in order."""
    part, offers = Part(given), offers_of(given)
    ways = ways_of(offers, part, scale.finer().length)
    answer = Answer(scale)
    _figures(answer, ways[0], part)
    _pieces(answer, ways[0], part)
    add_notes(answer, ways, part)
    condition_note(answer, given.text("condition"), ways[0], part)
    short_note(answer, offers, part)
    _table(answer, ways)
    answer.draw(stock_view(ways[0], part, scale))
    if ways[0].glue_lines:
        answer.draw(glued_view(ways[0], part, scale))
    return answer


def _figures(answer: Answer, way: Way, part: Part) -> None:
    answer.words("best", way.offer.label, label="Ask for", lead=True)
    add_size(answer, "to_mill", way.to_mill, label="Off each face", lead=True)
    add_size(answer, "real_thickness", way.offer.thickness, label="Really thick")
    add_size(answer, "real_width", way.offer.width, label="Really wide")
    answer.length("rip_width", way.rip, label="Rip to")
    answer.length("cut_length", part.cut_length, label="Cut to")
    counts = (
        ("layers", "Layers", way.layers),
        ("strips", "Strips in a layer" if way.layers > 1 else "Strips", way.strips),
        ("side_by_side", "Out of each width", way.across),
    )
    for name, label, number in counts:
        if number > 1:
            answer.count(name, number, label=label)
    answer.count("glue_lines", way.glue_lines, label="Glue lines")
    _buying(answer, way, part)


def _buying(answer: Answer, way: Way, part: Part) -> None:
    answer.count("lengths", way.lengths, label="Lengths to cut")
    if way.boards is not None:
        answer.count("boards", way.boards, label="Boards to buy")
    answer.number("lineal_feet", way.lineal_feet(part), "ft", label="Lineal feet")
    board_feet = way.lengths * way.offer.billed_feet(part.cut_length)
    answer.number("board_feet", board_feet, "bf", label="Board feet billed")
    answer.number("waste", way.waste * 100, "%", label="Waste", places=0)
    if way.cost is not None:
        answer.money("cost", way.cost, label="Cost")


def _pieces(answer: Answer, way: Way, part: Part) -> None:
    name = "Blank"
    if way.glue_lines:
        name = "Layer" if way.strips == 1 else "Strip"
    answer.piece(
        "1",
        name,
        part.cut_length,
        width=way.rip,
        thickness=way.offer.thickness,
        count=way.pieces,
        stock=way.offer.label,
    )


def _table(answer: Answer, ways: "list[Way]") -> None:
    """List the best ways in order; prices and the standard's sizes only where there are any."""
    say = answer.scale.finer().length
    shown = ways[:_SHOWN]
    columns = [
        ("Ask for", [way.offer.label for way in shown]),
        ("How", [how_words(way) for way in shown]),
        ("Real size", [f"{say(way.offer.thickness)} x {say(way.offer.width)}" for way in shown]),
        ("Off a face", [say(way.to_mill) for way in shown]),
        ("Glue lines", [str(way.glue_lines) for way in shown]),
        ("Waste", [show_number(way.waste * 100, 0) + " %" for way in shown]),
    ]
    if [way for way in shown if way.cost is not None]:
        cost = ["not known" if way.cost is None else show_money(way.cost) for way in shown]
        columns.append(("Cost", cost))
    if [way for way in shown if way.offer.seen is not None]:
        columns.append(("Size from", [way.offer.origin() for way in shown]))
        columns.append(("By the standard", [_standard(way.offer, answer.scale) for way in shown]))
    rows = [[cells[row] for _, cells in columns] for row in range(len(shown))]
    answer.table("Ways, best first", [name for name, _ in columns], rows, 0)


def _standard(offer: Offer, scale: Scale) -> str:
    say = scale.finer().length
    sizes = [say(size) for size in offer.standard if size is not None]
    return " x ".join(sizes) if sizes else "not listed"


TOOL = Tool(
    slug="part-to-stock",
    place="yard",
    title="Part to stock",
    question="A part this thick and this wide: what do I ask for at the yard?",
    finds=("lumber", "rough", "board", "nominal", "quarters", "buy"),
    inputs=[
        Length("thickness", "Thickness", least=1 / 16, most=60, help="Of the finished part."),
        Length("width", "Width", least=1 / 16, most=240),
        Length("length", "Length", least=1 / 16, most=480),
        Count("count", "How many", default=1),
        Choice(
            "family",
            "Kind of stock",
            [("softwood", "softwood"), ("hardwood", "hardwood")],
            default="softwood",
        ),
        Choice(
            "condition",
            "Sold as",
            [
                ("dry", "dry", ("family", "softwood")),
                ("green", "green", ("family", "softwood")),
                ("rough", "rough", ("family", "hardwood")),
                ("s1s", "surfaced one side", ("family", "hardwood")),
                ("s2s", "surfaced two sides", ("family", "hardwood")),
            ],
        ),
        Length(
            "face_allowance",
            "Off each face",
            default="3/32",
            least=0,
            most=6,
            help="At least this to mill it flat; 0 to use it as thick as it comes.",
        ),
        Length(
            "edge_allowance",
            "Off each edge",
            default="1/8",
            least=0,
            most=6,
            help="At least this to joint and rip it straight; 0 to use it as wide as it comes.",
        ),
        Length(
            "end_allowance",
            "Off each end",
            default=1,
            least=0,
            most=48,
            help="To square it up and trim the snipe.",
        ),
        Length("kerf", "Kerf", default="1/8", least=0, most=1),
        Length(
            "board_width",
            "Boards about",
            default=6,
            most=120,
            help="Width to count on where boards come in random widths.",
        ),
        yard_input(),
    ],
    work=work,
    example={
        "thickness": "1 1/2",
        "width": "3",
        "length": "80",
        "count": 2,
        "yard": [
            {"label": "2x4", "thickness": "1 3/4", "width": "3 1/2", "price": "3.60"},
            {"label": "2x6", "thickness": "1 3/4", "width": "5 1/2", "price": "3.60"},
        ],
    },
    cautions=[PLANER],
    sources=[
        "Softwood: NIST PS 20-20, American Softwood Lumber Standard, minimum-dressed sizes, seen "
        "as reprinted in engineering tables.",
        "Hardwood: NHLA Rules for the Measurement and Inspection of Hardwood and Cypress, rough "
        "and surfaced thicknesses, seen as reprints. 3/32 off each face is what its surfaced two "
        "sides leaves up to 6/4; 6 is the least width of its best grade.",
        "Board feet billed: label's size in softwood, from memory; the quarter times the board's "
        "own width in hardwood, and less than an inch counts as one: NHLA rules as quoted by a "
        "dealer.",
        "1/8 off each edge, 1 off each end: from memory. Labels that yards carry, and heavier or "
        "lighter stock under them: common practice, no source.",
    ],
)
