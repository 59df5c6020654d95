"""A part this thick and this wide: what is asked for at the yard, and what is done with it?"""

from ...cautions import PLANER
from ...lengths import Scale, show_money, show_number
from ...tool import Answer, Given, Gives, Tool
from ..sizes import SAME, add_size
from ..yard_list import seen_of
from .inputs import INPUTS, of_any_length
from .notes import (
    add_notes,
    condition_note,
    feet_words,
    how_words,
    rip_words,
    short_note,
    sticks_words,
)
from .offers import Offer, offers_of
from .views import glued_view, stock_view
from .ways import Part, Way, ways_of

_SHOWN = 8
_SAID = {"dry": "dry", "green": "green", "rough": "rough", "s1s": "S1S", "s2s": "S2S"}


def work(given: Given, scale: Scale) -> Answer:
    """Return what to buy, what is left to mill, and all the other ways in order."""
    part, condition = _part(given), given.text("condition")
    family = given.text("family")
    seen = seen_of([row.values for row in given.rows("yard")], family)
    wide, label = given.number("board_width"), given.text("use")
    offers = offers_of(family, condition, seen, wide, label)
    ways = ways_of(offers, part, scale.finer().length)
    best = ways[0]
    answer = Answer(scale)
    _verdict(answer, best, part, _SAID[condition])
    _figures(answer, best, part)
    _pieces(answer, best, part)
    add_notes(answer, ways, part)
    condition_note(answer, condition, best, part)
    short_note(answer, offers, part)
    _sticks_table(answer, best, part)
    _table(answer, ways)
    answer.draw(stock_view(best, part, scale))
    if best.glue_lines:
        answer.draw(glued_view(best, part, scale))
    return answer


def _part(given: Given) -> Part:
    size = (given.number("thickness"), given.number("width"), given.number("length"))
    names = ("face_allowance", "edge_allowance", "end_allowance")
    face, edge, end = [given.number(name) for name in names]
    sold = [12 * row.number("length") for row in given.rows("sold_lengths")]
    return Part(size, given.count("count"), (face, edge, end), given.number("kerf"), sold)


def _verdict(answer: Answer, way: Way, part: Part, condition: str) -> None:
    """Say what to buy, how it becomes the part, and how wide boards were taken to be."""
    scale = answer.scale
    stock = f"{way.offer.label} {condition}"
    if way.sticks:
        buy = f"Buy {stock}, {sticks_words(way, scale)}"
    elif way.offer.nominal[1] is None:
        buy = f"Ask for {show_number(way.board_feet)} bf of {stock}"
    else:
        buy = f"Ask for {show_number(way.feet)} ft of {stock}"
    if way.offer.guessed:
        buy += f", {scale.length(way.offer.width)} wide"
    rip = f"{rip_words(way)} to {scale.length(way.rip)}"
    cut = f"cut to {scale.length(part.cut_length)}, {rip}"
    off = scale.finer().length(way.to_mill)
    ends = ["no planing"]
    if way.to_mill > SAME:
        ends = [f"plane {off} off each face", f"plane {off} a face"]
    brief = f"cut {scale.number(part.cut_length)}, {rip_words(way)} {scale.given(way.rip)}"
    some = f"Buy {way.boards} of {stock}" if way.boards else buy
    answer.verdict(
        *[f"{buy}: {how}, {end}" for how in (cut, brief) for end in ends],
        f"{buy}: {cut}",
        f"{buy}: {brief}",
        f"{some}: {brief}",
        f"{buy}: {how_words(way)}",
        f"Buy {way.boards}: {brief}" if way.boards else brief,
    )


def _figures(answer: Answer, way: Way, part: Part) -> None:
    by_volume = not way.boards and way.offer.nominal[1] is None
    answer.words("best", way.offer.label, lead=True)
    if way.boards:
        answer.count("boards", way.boards, lead=True)
    answer.number("lineal_feet", way.feet, "ft", lead=not way.boards and not by_volume)
    answer.number("board_feet", way.board_feet, "bf", lead=by_volume)
    if way.cost is not None:
        answer.money("cost", way.cost, lead=True)
    add_size(answer, "to_mill", way.to_mill)
    add_size(answer, "real_thickness", way.offer.thickness)
    add_size(answer, "real_width", way.offer.width)
    answer.length("rip_width", way.rip)
    answer.length("cut_length", part.cut_length)
    if way.layers > 1:
        answer.count("layers", way.layers)
    if way.strips > 1:
        answer.count("strips", way.strips, label="Strips in a layer" if way.layers > 1 else "")
    if way.across > 1:
        answer.count("side_by_side", way.across)
    answer.count("glue_lines", way.glue_lines)
    answer.count("lengths", way.lengths)
    answer.number("waste", way.waste * 100, "%", places=0)


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


def _sticks_table(answer: Answer, way: Way, part: Part) -> None:
    """List the whole sticks, and what is cut from each."""
    rows = []
    for stick in reversed(way.sticks):
        left = stick.length - stick.each * part.cut_length - (stick.each - 1) * part.kerf
        left = max(0.0, left - part.kerf)
        cut = f"{stick.each} of {answer.scale.length(part.cut_length)}"
        size = feet_words(stick.length, answer.scale)
        rows.append([size, str(stick.count), cut, answer.scale.length(left)])
    if rows:
        answer.table("What to buy", ["Length", "How many", "Cut from each", "Left"], rows)


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
    finds=("lumber", "rough", "board", "nominal", "quarters", "buy", "stick", "8-footer", "resaw"),
    inputs=INPUTS,
    work=work,
    gives=[
        Gives("best", "text", "Ask for"),
        Gives("boards", "count", "Whole lengths to buy", short="to buy", sometimes=True),
        Gives("lineal_feet", "number", "Lineal feet"),
        Gives("board_feet", "number", "Board feet billed", short="board feet"),
        Gives("cost", "money", "Cost", sometimes=True),
        Gives("to_mill", "length", "Off each face"),
        Gives("real_thickness", "length", "Actual thickness"),
        Gives("real_width", "length", "Actual width"),
        Gives("rip_width", "length", "Rip to", short="rip"),
        Gives("cut_length", "length", "Cut to", short="cut"),
        Gives("layers", "count", "Layers", sometimes=True),
        Gives("strips", "count", "Strips", sometimes=True),
        Gives("side_by_side", "count", "Out of each width", sometimes=True),
        Gives("glue_lines", "count", "Glue lines"),
        Gives("lengths", "count", "Lengths to cut"),
        Gives("waste", "number", "Waste"),
    ],
    upgrades=(of_any_length,),
    example={
        "thickness": "1 1/2",
        "width": "3",
        "length": "80",
        "count": 5,
        "sold_in": "set",
        "sold_lengths": [{"length": 8}, {"length": 14}],
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
