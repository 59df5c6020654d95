"""All the marks of a wall, a door or a run on one stick: where is each, from one end?

Marks are given as they were taped: from the end of the stick, from the mark before, or from the
far end. All are laid out from the one end, so that rounding never adds up.
"""

from collections import namedtuple

from ..tool import (
    Answer,
    Choice,
    Drawing,
    FieldError,
    Given,
    Gives,
    Length,
    Refusal,
    Rows,
    Scale,
    Text,
    Tool,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..tool import Input

StickMark = namedtuple("StickMark", ("at", "row", "name", "lies"))
"""A mark: inches from the end, its row counted from 0, its name, and where the part lies.

`lies` is line, beyond or before.
"""

_HAIR = 1e-9  # Inches: float noise must not push the last mark off its stick.
_SIDES = {"line": "", "beyond": ", part beyond", "before": ", part before"}


def work(given: Given, scale: Scale) -> Answer:
    """Return every mark of the stick from its one end, in the order they come."""
    datum, length = given.text("datum") or "end", given.maybe("length")
    rows = [
        (row.text("name"), row.number("distance"), row.text("start"), row.text("lies"))
        for row in given.rows("marks")
    ]
    marks = laid_out(rows, length, scale)
    stick = marks[-1].at if length is None else length
    answer = Answer(scale)
    _verdict(answer, marks, length, datum)
    _figures(answer, marks, stick)
    for mark in marks:
        name = mark.name or f"Mark {mark.row + 1}"
        answer.mark(str(mark.row + 1), name + _SIDES[mark.lies], datum, mark.at)
    answer.draw(_drawing(marks, stick, datum, scale))
    _notes(answer, marks, rows)
    return answer


def laid_out(
    rows: "list[tuple[str, float, str, str]]", length: "float | None", scale: Scale
) -> "list[StickMark]":
    """Return the marks from the end on.

    Parameters
    ----------
    rows : list of (str, float, str, str)
        Name, distance in inches, what it was taped from (``end``, ``last`` or ``far``), and where
        the part lies.
    length : float or None
        Of the stick, inches; needed for distances from its far end.

    Raises
    ------
    Refusal
        For marks off the stick, and for a far end that nobody knows.

    >>> rows = [("", 10, "end", "line"), ("", 4, "far", "line"), ("", 1.5, "last", "line")]
    >>> [mark.at for mark in laid_out(rows, 20, Scale())]
    [10.0, 16, 17.5]
    """
    marks: list[StickMark] = []
    errors, before = [], 0.0
    for row, (name, distance, start, lies) in enumerate(rows):
        if start == "far" and length is None:
            raise Refusal("length", "Give the stick's length to measure from its far end.")
        at = {"end": 0.0, "last": before}.get(start, 0.0) + distance
        if start == "far":
            at = (length or 0.0) - distance
        if at < -_HAIR or (length is not None and at > length + _HAIR):
            path = f"marks.{row}.distance"
            errors.append(FieldError(path, _off_words(at, length or 0.0, scale)))
        marks.append(StickMark(at, row, name, lies))
        before = at
    if errors:
        raise Refusal.of(errors)
    return [mark for _, _, mark in sorted([(mark.at, mark.row, mark) for mark in marks])]


def _off_words(at: float, length: float, scale: Scale) -> str:
    if at < 0:
        return (
            f"It is more than the stick's {scale.length(length)}, so it lies before the stick's "
            "end: measure again, or give a longer stick."
        )
    return (
        f"It comes to {scale.length(at)}, off a stick {scale.length(length)} long: measure again, "
        "or give a longer stick."
    )


def closest(marks: "list[StickMark]") -> "float | None":
    """Return the smallest distance between two marks that lie apart, None for fewer than two."""
    gaps = [marks[place + 1].at - marks[place].at for place in range(len(marks) - 1)]
    apart = [gap for gap in gaps if gap > _HAIR]
    return min(apart) if apart else None


def _verdict(answer: Answer, marks: "list[StickMark]", length: "float | None", datum: str) -> None:
    say = answer.scale.length
    count = "1 mark" if len(marks) == 1 else f"{len(marks)} marks"
    last = say(marks[-1].at)
    if length is None:
        stick, end = f"Stick {last} or longer", ""
    else:
        stick, end = f"Stick {say(length)}", f", the last at {last}"
    answer.verdict(
        f"{stick}: {count} from the {datum}{end}; measure each from there, never mark to mark",
        f"{stick}: {count} from the {datum}{end}",
        f"{stick}: {count}{end}",
    )


def _figures(answer: Answer, marks: "list[StickMark]", stick: float) -> None:
    answer.length("stick", stick, lead=True)
    answer.count("mark_count", len(marks), lead=True)
    answer.length("first_mark", marks[0].at)
    answer.length("last_mark", marks[-1].at)
    near = closest(marks)
    if near is not None:
        answer.length("closest", near)


def _notes(
    answer: Answer, marks: "list[StickMark]", rows: "list[tuple[str, float, str, str]]"
) -> None:
    if [row for row in rows if row[2] == "last"]:
        answer.note("Steps are added up exactly first; each mark is rounded once, from the end.")
    if [mark for mark in marks if mark.lies != "line"]:
        answer.note("Pencil an X on the side of the line where the part lies.")
    for place in range(len(marks) - 1):
        one, after = marks[place], marks[place + 1]
        if after.at - one.at <= _HAIR:
            answer.note(f"Marks {one.row + 1} and {after.row + 1} are the same line.")
    answer.note(
        "Print the marks at full size and lay the pages on the stick by their joins; check the "
        "ruler on each page first."
    )


def _drawing(marks: "list[StickMark]", stick: float, datum: str, scale: Scale) -> Drawing:
    """Draw the stick level, its end on the left, an X where a part lies beside its line."""
    high = max(stick, 1.0) / 14
    view = Drawing(
        "The stick",
        f"{len(marks)} marks from the {datum} on the left, the last at "
        f"{scale.length(marks[-1].at)}.",
    )
    view.box("stock", 0, 0, max(stick, high), high)
    view.line("wall", (0, -high / 2), (0, high * 1.5))
    for mark in marks:
        view.line("mark", (mark.at, 0), (mark.at, high))
        view.tag((mark.at, -high), str(mark.row + 1))
        if mark.lies != "line":
            _cross(view, mark.at, high * (0.4 if mark.lies == "beyond" else -0.4), high)
    view.dimension((0, high), (marks[-1].at, high), scale.length(marks[-1].at), -1)
    return view


def _cross(view: Drawing, at: float, way: float, high: float) -> None:
    """Draw a pencilled X from a line to `way` beside it."""
    for start, end in ((0.3, 0.7), (0.7, 0.3)):
        view.line("mark", (at + way * 0.2, high * start), (at + way, high * end))


MARK: "list[Input]" = [
    Text("name", "Mark", optional=True, default_text="its number"),
    Length("distance", "Distance", least=0),
    Choice(
        "start",
        "From",
        [("end", "the end"), ("last", "the mark before"), ("far", "the far end")],
        default="end",
    ),
    Choice(
        "lies",
        "The part lies",
        [("line", "on the line"), ("beyond", "beyond it"), ("before", "before it")],
        default="line",
    ),
]

TOOL = Tool(
    slug="story-stick",
    place="site",
    title="Story stick",
    question="All marks of a wall, a door or a run on one stick: where is each, from one end?",
    finds=("story pole", "layout", "rod", "transfer", "full size"),
    inputs=[
        Text(
            "datum",
            "Measured from the",
            optional=True,
            default_text="end",
            offers=(("floor", None), ("left jamb", None), ("head", None), ("left wall", None)),
        ),
        Length(
            "length",
            "Stick length",
            optional=True,
            default_text="to the last mark",
            help="From the end to the far end, such as floor to head.",
        ),
        Rows("marks", "Marks", MARK, row="mark", most=60),
    ],
    work=work,
    gives=[
        Gives("stick", "length", "Stick"),
        Gives("mark_count", "count", "Marks"),
        Gives("first_mark", "length", "First mark", short="first"),
        Gives("last_mark", "length", "Last mark", short="last"),
        Gives("closest", "length", "Closest two marks", short="closest", sometimes=True),
    ],
    example={
        "datum": "floor",
        "length": "84",
        "marks": [
            {"name": "Base", "distance": "5 1/2", "lies": "before"},
            {"name": "Chair rail", "distance": "32", "lies": "beyond"},
            {"name": "Rail's top", "distance": "2 1/2", "start": "last"},
            {"name": "Head casing", "distance": "3 1/2", "start": "far", "lies": "beyond"},
        ],
    },
    cautions=[],
    sources=[
        "Sums and differences from one end.",
        "A story stick instead of the tape, an X where the part lies: common practice, no source.",
    ],
)
