"""What will a board with this label really measure, and is it enough for the part?

The tables say what the standards demand; what the tape said at this yard goes before them, and
the tape on this very board before all.
"""

from ..cautions import PLANER
from ..lengths import Scale
from ..tool import Answer, Choice, Given, Length, Refusal, Text, Tool
from .common import COMMON
from .listed import Listed, listed, unlisted
from .section import section
from .size_notes import add_size, family_notes, mill_thickness_note, mill_width_note, tape_note
from .size_tables import show_tables
from .yard_list import Seen, beside_note, find, seen_of, show_seen, yard_input


class Stock:
    """One board or sheet, in inches: what table, list and tape say, and what the part needs.

    `width` is None where none of them knows it.
    """

    def __init__(self, given: Given) -> None:
        self.family = given.text("family")
        self.condition = given.text("condition")
        self.on_list = find(seen_of(given, self.family), self.family, given.text("label"))
        self.seen = self.on_list[-1] if self.on_list else None
        self.found = _found(self.family, given.text("label"), self.condition, self.seen)
        self.tape_thickness = given.maybe("measured_thickness")
        self.tape_width = given.maybe("measured_width")
        self.needed = (given.maybe("needed_thickness"), given.maybe("needed_width"))
        by_list = (None, None) if self.seen is None else (self.seen.thickness, self.seen.width)
        self.width = _first(self.tape_width, by_list[1], self.found.width)
        self.thickness = self._thickness(by_list[0])

    def _thickness(self, by_list: "float | None") -> float:
        thickness = _first(self.tape_thickness, by_list, self.found.thickness)
        if thickness is None:
            raise Refusal(
                "condition",
                f"No thickness is listed for {self.found.name} surfaced one side: "
                "choose rough or two sides, or measure the board.",
            )
        return thickness


def _first(*sizes: "float | None") -> "float | None":
    """Return the first size that is known."""
    known = [size for size in sizes if size is not None]
    return known[0] if known else None


def _found(family: str, label: str, condition: str, seen: "Seen | None") -> Listed:
    """Return what the tables say; a label that only the list knows is answered from the list."""
    try:
        return listed(family, label, condition)
    except Refusal:
        if seen is None:
            raise
        return unlisted(seen)


def work(given: Given, scale: Scale) -> Answer:
    """Return a label's real size, and what is left to mill."""
    stock = Stock(given)
    answer = Answer(scale)
    _figures(answer, stock)
    _notes(answer, stock)
    if stock.on_list:
        show_seen(answer, stock.on_list)
    if stock.found.row is not None:
        show_tables(answer, stock.family, stock.condition, stock.found)
    answer.draw(section(stock.found, (stock.thickness, stock.width), stock.needed, scale))
    return answer


def _figures(answer: Answer, stock: Stock) -> None:
    found, (thick, wide) = stock.found, stock.needed
    add_size(answer, "thickness", "Thickness", stock.thickness, lead=True)
    if stock.width is not None:
        add_size(answer, "width", "Width", stock.width, lead=True)
    if thick is not None:
        add_size(answer, "to_mill_thickness", "Off the thickness", stock.thickness - thick)
    if wide is not None and stock.width is not None:
        add_size(answer, "to_mill_width", "Off the width", stock.width - wide)
    _beside(answer, stock)
    if found.least is not None:
        label = "Kiln-dried, at least" if stock.family == "hardwood" else "At least"
        add_size(answer, "least_thickness", label, found.least)
    if found.most is not None:
        add_size(answer, "most_thickness", "At most", found.most)


def _beside(answer: Answer, stock: Stock) -> None:
    """Add the sizes that gave way: to the tape the list's, to both the table's."""
    found, seen = stock.found, stock.seen
    if seen is not None and stock.tape_thickness is not None:
        add_size(answer, "list_thickness", "Thickness by your list", seen.thickness)
    if seen is not None and seen.width is not None and stock.tape_width is not None:
        add_size(answer, "list_width", "Width by your list", seen.width)
    if found.thickness is not None and (seen is not None or stock.tape_thickness is not None):
        add_size(answer, "table_thickness", "Thickness by the table", found.thickness)
    listed_width = seen is not None and seen.width is not None
    if found.width is not None and (listed_width or stock.tape_width is not None):
        add_size(answer, "table_width", "Width by the table", found.width)


def _notes(answer: Answer, stock: Stock) -> None:
    found, (thick, wide) = stock.found, stock.needed
    say = answer.scale.finer().length
    if thick is not None:
        answer.note(mill_thickness_note(stock.family, found, stock.thickness - thick, thick, say))
    if wide is not None:
        answer.note(mill_width_note(found, stock.width, wide, say))
    if stock.tape_thickness is not None:
        answer.note(tape_note("thick", stock.tape_thickness, found.thickness, say))
    if stock.tape_width is not None:
        answer.note(tape_note("wide", stock.tape_width, found.width, say))
    if stock.seen is not None:
        answer.note(beside_note(stock.seen, (found.thickness, found.width), answer.scale))
    if found.row is not None:
        for note in family_notes(stock.family, stock.condition, found, stock.tape_thickness, say):
            answer.note(note)


_BOARDS = ("family", "softwood", "hardwood")

TOOL = Tool(
    slug="stock-sizes",
    place="yard",
    title="Stock sizes",
    question="What will a board with this label really measure?",
    finds=(
        "lumber",
        "actual",
        "nominal",
        "dimensional",
        "2x4",
        "1x6",
        "plywood",
        "hardwood",
        "softwood",
        "surfaced",
    ),
    inputs=[
        Choice(
            "family",
            "Kind of stock",
            [("softwood", "softwood"), ("hardwood", "hardwood"), ("sheet", "sheet")],
            default="softwood",
        ),
        Text(
            "label",
            "Label",
            help="As the yard writes it: 2x4, 5/4x6, 8/4 or 23/32.",
            offers=tuple([(label, ("family", family)) for family, label in COMMON]),
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
                ("unsanded", "plywood, unsanded", ("family", "sheet")),
                ("sanded", "plywood, sanded", ("family", "sheet")),
                ("hardwood", "hardwood plywood", ("family", "sheet")),
                ("mdf", "MDF", ("family", "sheet")),
            ],
        ),
        Length(
            "measured_thickness",
            "Your tape, thickness",
            optional=True,
            default_text="not measured",
            most=60,
            help="The tape on this very board wins over list and table.",
        ),
        Length(
            "measured_width",
            "Your tape, width",
            optional=True,
            default_text="not measured",
            most=120,
            only_when=_BOARDS,
        ),
        Length(
            "needed_thickness",
            "Part finishes at, thickness",
            optional=True,
            default_text="not said",
            most=60,
        ),
        Length(
            "needed_width",
            "Part finishes at, width",
            optional=True,
            default_text="not said",
            most=120,
            only_when=_BOARDS,
        ),
        yard_input(),
    ],
    work=work,
    example={"family": "softwood", "label": "2x4", "needed_thickness": "1 1/4", "needed_width": 3},
    cautions=[
        PLANER,
        "These are sizes, not strengths: what carries a load is for the local code to settle.",
    ],
    sources=[
        "Softwood: NIST PS 20-20, American Softwood Lumber Standard, nominal and minimum-dressed "
        "sizes of boards, dimension and timbers, seen as reprinted in engineering tables.",
        "Hardwood: NHLA Rules for the Measurement and Inspection of Hardwood and Cypress, rough "
        "and surfaced thicknesses, seen as reprints; miscut limits and kiln-dried allowance of "
        "the 2019 rules, page 5, paragraph 9, as NHLA quotes them. 10/4 surfaced: from memory.",
        "Plywood: PS 1-19, Structural Plywood, thickness by performance category and sanded "
        "tolerance, as published by APA, seen as reprints.",
        "Hardwood plywood: ANSI/HPVA HP-1, thickness tolerance from memory; a 3/4 veneer-core "
        "sheet near 23/32 is common practice, and the same 1/32 is assumed for the others.",
        "MDF: ANSI A208.2, thickness tolerance, as reprinted in a buyers' guide of 2014-2015.",
        "Heavier and lighter stock than the standard under the same label: common practice, "
        "no source.",
    ],
)
