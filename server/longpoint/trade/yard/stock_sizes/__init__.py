"""What will a board with this label really measure, and is it enough for the part?

The tables say what the standards demand; what the tape said at this yard goes before them, and
the tape on this very board before all.
"""

from ...cautions import PLANER
from ...lengths import Scale
from ...lumber.common import COMMON
from ...tool import Answer, Choice, Given, Gives, Length, Text, Tool
from ..sizes import SAME, add_size, sizes_words
from ..yard_list import beside_note, find, keep_size, seen_of, show_seen, yard_input
from .notes import family_notes, mill_thickness_note, mill_width_note, tape_note
from .section import section
from .sized import Sized
from .tables import show_tables

CONDITIONS = (
    ("dry", "dry", "softwood"),
    ("green", "green", "softwood"),
    ("rough", "rough", "hardwood"),
    ("s1s", "surfaced one side", "hardwood"),
    ("s2s", "surfaced two sides", "hardwood"),
    ("unsanded", "plywood, unsanded", "sheet"),
    ("sanded", "plywood, sanded", "sheet"),
    ("hardwood", "hardwood plywood", "sheet"),
    ("mdf", "MDF", "sheet"),
)
"""How stock is sold: value, words, kind of stock."""


_SAID = {
    "dry": "softwood, dry",
    "green": "softwood, green",
    "rough": "hardwood, rough",
    "s1s": "hardwood, S1S",
    "s2s": "hardwood, S2S",
    "unsanded": "unsanded plywood",
    "sanded": "sanded plywood",
    "hardwood": "hardwood plywood",
    "mdf": "MDF",
}  # Kind of stock and how it is sold, as short as a yard says it.


def work(given: Given, scale: Scale) -> Answer:
    """Return a label's real size, and what is left to mill."""
    family, label = given.text("family"), given.text("label")
    on_list = find(seen_of([row.values for row in given.rows("yard")], family), family, label)
    tape = (given.maybe("measured_thickness"), given.maybe("measured_width"))
    needed = (given.maybe("needed_thickness"), given.maybe("needed_width"))
    sized = Sized(family, label, given.text("condition"), on_list, tape, needed)
    answer = Answer(scale)
    _verdict(answer, sized)
    _figures(answer, sized)
    _notes(answer, sized)
    if sized.on_list:
        show_seen(answer, sized.on_list)
    if sized.found.row is not None:
        show_tables(answer, sized.family, sized.condition, sized.found)
    if sized.tape[0] is not None:
        keep_size(answer, sized.found.name, family, sized.thickness, sized.width)
    answer.draw(section(sized.found, (sized.thickness, sized.width), sized.needed, scale))
    return answer


def _verdict(answer: Answer, sized: Sized) -> None:
    """Say what the board measures, who says so, and what comes off or is missing."""
    name = f"{sized.found.name} {_SAID[sized.condition]}"
    size = sizes_words(sized.thickness, sized.width, answer.scale)
    todo = ", ".join(_todo(sized, answer.scale))
    whole = f"{size} {sized.said_by()}" + (f"; {todo}" if todo else "")
    brief = size + (f"; {todo}" if todo else "")
    answer.verdict(f"{name}: {whole}", f"{name}: {brief}", whole, brief, todo or size)


def _todo(sized: Sized, scale: Scale) -> "list[str]":
    """Return what has to be done about thickness and width, in a few words each."""
    thick, wide = sized.extra()
    sheet = sized.family == "sheet"
    words = []
    if thick is not None:
        off = "{} too thick" if sheet else "plane off {}"
        words.append(_one_todo(thick, off, "too thin by {}", "thickness as needed", scale))
    if wide is not None:
        words.append(_one_todo(wide, "rip off {}", "too narrow by {}", "width as needed", scale))
    elif sized.needed[1] is not None:
        words.append("measure its width")
    return words


def _one_todo(extra: float, off: str, short: str, right: str, scale: Scale) -> str:
    if abs(extra) < SAME:
        return right
    return (off if extra > 0 else short).replace("{}", scale.finer().length(abs(extra)))


def _figures(answer: Answer, sized: Sized) -> None:
    found, (thick, wide) = sized.found, sized.extra()
    add_size(answer, "thickness", sized.thickness, lead=True)
    if sized.width is not None:
        add_size(answer, "width", sized.width, lead=True)
    if thick is not None:
        add_size(answer, "to_mill_thickness", thick)
    if wide is not None:
        add_size(answer, "to_mill_width", wide)
    _beside(answer, sized)
    if found.least is not None:
        label = "Kiln-dried, at least" if sized.family == "hardwood" else ""
        add_size(answer, "least_thickness", found.least, label=label)
    if found.most is not None:
        add_size(answer, "most_thickness", found.most)


def _beside(answer: Answer, sized: Sized) -> None:
    """Add the sizes that gave way: to the tape the list's, to both the table's."""
    found, seen, (thick, wide) = sized.found, sized.seen, sized.tape
    if seen is not None and thick is not None:
        add_size(answer, "list_thickness", seen.thickness)
    if seen is not None and seen.width is not None and wide is not None:
        add_size(answer, "list_width", seen.width)
    if found.thickness is not None and (seen is not None or thick is not None):
        add_size(answer, "table_thickness", found.thickness)
    listed_width = seen is not None and seen.width is not None
    if found.width is not None and (listed_width or wide is not None):
        add_size(answer, "table_width", found.width)


def _notes(answer: Answer, sized: Sized) -> None:
    found, (thick, wide), tape = sized.found, sized.needed, sized.tape
    say = answer.scale.finer().length
    if thick is not None:
        extra = sized.thickness - thick
        answer.note(mill_thickness_note(sized.family, found, extra, thick, say))
    if wide is not None:
        answer.note(mill_width_note(found, sized.width, wide, say))
    if tape[0] is not None:
        answer.note(tape_note("thick", tape[0], found.thickness, say))
    if tape[1] is not None:
        answer.note(tape_note("wide", tape[1], found.width, say))
    if sized.seen is not None:
        answer.note(beside_note(sized.seen, (found.thickness, found.width), answer.scale))
    if found.row is not None:
        for note in family_notes(sized.family, sized.condition, found, tape[0], say):
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
        "ply",
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
            listed=("yard", "label", "family"),
        ),
        Choice(
            "condition",
            "Sold as",
            [(value, words, ("family", family)) for value, words, family in CONDITIONS],
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
    gives=[
        Gives("thickness", "length", "Thickness"),
        Gives("width", "length", "Width", sometimes=True),
        Gives(
            "to_mill_thickness",
            "length",
            "Off the thickness",
            short="off thickness",
            sometimes=True,
        ),
        Gives("to_mill_width", "length", "Off the width", short="off width", sometimes=True),
        Gives("list_thickness", "length", "Thickness by your list", sometimes=True),
        Gives("list_width", "length", "Width by your list", sometimes=True),
        Gives("table_thickness", "length", "Thickness by the table", sometimes=True),
        Gives("table_width", "length", "Width by the table", sometimes=True),
        Gives("least_thickness", "length", "At least", sometimes=True),
        Gives("most_thickness", "length", "At most", sometimes=True),
    ],
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
