"""Applied molding frames evenly across a wall, or inside a door panel: sizes, places, cut list."""

from ...cautions import SAW, TEST_CUT
from ...lumber.lineal import to_buy
from ...tool import Answer, FieldError, Given, Gives, Refusal, Scale, Tool
from .asked import INPUTS, MOST
from .landing import Landing, hits
from .layout import (
    FrameTrim,
    Layout,
    Margins,
    WallOpening,
    corner_of,
    most_in,
    nearest,
    run_spans,
    shared,
)
from .pieces import add_pieces, numbers_of, refuse_block, trim_in_all
from .refusals import placed_openings, refuse_bare, refuse_height, refuse_number
from .views import one_frame, wall_view
from .words import add_notes, decide, refuse_in_verdict

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .layout import Rectangle

MOST_OFFERED = 3


def work(given: Given, scale: Scale) -> Answer:
    """Return the frames' sizes, where each starts, their pieces, and what obstacles land on."""
    where, way = given.text("on"), given.text("block")
    layout = _layout(given, scale)
    spots = _spots(given, layout, where, scale)
    answer = Answer(scale)
    decide(answer, layout, way)
    _figures(answer, layout, way)
    _marks(answer, layout, where)
    add_pieces(answer, layout, way, given.maybe("trim_thickness"))
    answer.draw(lambda: wall_view(layout, spots, where, scale))
    answer.draw(lambda: one_frame(layout, scale))
    if layout.openings:
        _sizes(answer, layout)
    if spots:
        names = [row.text("name") for row in given.rows("obstacles")]
        _obstacles(answer, names, layout, spots)
    add_notes(answer, layout, way)
    return answer


def _layout(given: Given, scale: Scale) -> Layout:
    """Return the layout asked for, or refuse it."""
    between = given.number("between")
    top = _or(given.maybe("top_margin"), between)
    margins = Margins(
        _or(given.maybe("end_margin"), between),
        between,
        _or(given.maybe("casing_margin"), between),
        top,
        _or(given.maybe("bottom_margin"), top),
    )
    width, way = given.number("trim_width"), given.text("block")
    set_in = _or(given.maybe("set_in"), width / 2) if way == "notch" else 0.0
    trim = FrameTrim(width, _or(given.maybe("block_size"), 0.0), set_in)
    refuse_block(trim, way, scale.finer())
    field = (given.number("length"), given.number("height"))
    refuse_height(field[1], margins, trim, scale)
    openings = placed_openings(
        [_opening(at, row) for at, row in enumerate(given.rows("openings"))], field[0], scale
    )
    count, target = given.maybe_count("count"), given.maybe("target_width")
    counts = _counts(field[0], margins, trim, openings, count, target, scale)
    layout = Layout(field, margins, trim, openings, counts)
    refuse_bare(layout, scale)
    return layout


def _or(value: "float | None", other: float) -> float:
    return other if value is None else value


def _opening(place: int, row: Given) -> WallOpening:
    left = row.number("from_left")
    right = left + row.number("width")
    name = row.text("name") or f"opening {place + 1}"
    return WallOpening(place, name, left, right, row.maybe("bottom"), row.maybe("top"))


def _counts(
    length: float,
    margins: Margins,
    trim: FrameTrim,
    openings: "list[WallOpening]",
    count: "int | None",
    target: "float | None",
    scale: Scale,
) -> "list[int]":
    """Return the number of frames in each run, asked for in all or nearest to the target."""
    if (count is None) == (target is None):
        words = "Give how many frames, or a width to come near to"
        both = count is not None
        raise Refusal.of([FieldError("count", words + (", not both." if both else "."), not both)])
    corner, spans = corner_of(trim), run_spans(length, margins, openings)
    most = [most_in(span, margins.between, corner) for span in spans]
    if target is not None:
        counts = [nearest(span, margins.between, corner, target) for span in spans]
        refuse_number("target_width", sum(counts), most, length, MOST, scale)
        return counts
    asked = count or 0
    refuse_number("count", asked, most, length, MOST, scale)
    return shared(asked, spans, margins.between, corner) or []


def _figures(answer: Answer, layout: Layout, way: str) -> None:
    first, margins = layout.groups[0], layout.margins
    answer.length("frame_width", first.width, lead=True)
    answer.length("frame_height", first.height, lead=True)
    answer.count("frames", len(layout.frames))
    if len(first.frames) > 1:
        answer.length("pitch", first.width + margins.between)
        answer.length("between", margins.between)
    answer.length("clear_width", first.width - 2 * layout.trim.width)
    answer.length("clear_height", first.height - 2 * layout.trim.width)
    answer.length("end_margin", margins.end)
    total = trim_in_all(layout, way)
    answer.length("total_trim", total)
    answer.length("to_buy", to_buy(total, 4 * len(layout.frames)))


def _marks(answer: Answer, layout: Layout, where: str) -> None:
    start = f"left end of the {where}"
    for frame in layout.frames:
        left, _, right, _ = frame.outside
        tag = str(frame.number)
        answer.mark(tag, f"Frame {tag}, left edge", start, left)
        answer.mark(tag, f"Frame {tag}, right edge", start, right)
    start = f"bottom of the {where}"
    answer.mark("", "Frames, bottom edge", start, layout.low)
    answer.mark("", "Frames, top edge", start, layout.high)
    for group in layout.groups:
        tag = str(group.frames[0].number)
        _, low, _, high = group.frames[0].outside
        if group.kind == "under":
            answer.mark(tag, f"Frame {tag}, top edge", start, high)
        elif group.kind == "over":
            answer.mark(tag, f"Frame {tag}, bottom edge", start, low)


def _spots(given: Given, layout: Layout, where: str, scale: Scale) -> "list[Rectangle]":
    """Return each obstacle as left, bottom, right, top; refuse one that is off the wall."""
    spots, errors = [], []
    for index, row in enumerate(given.rows("obstacles")):
        up = _or(row.maybe("up"), (layout.low + layout.high) / 2)
        half = (row.number("width") / 2, row.number("height") / 2)
        x, path = row.number("center"), f"obstacles.{index}."
        spots.append((x - half[0], up - half[1], x + half[0], up + half[1]))
        for name, at, end in (("center", x, layout.length), ("up", up, layout.wall_height)):
            if at > end:
                words = f"{scale.length(at)} is off the {where}, which ends at {scale.length(end)}."
                errors.append(FieldError(path + name, words + " Measure again."))
    if errors:
        raise Refusal.of(errors)
    return spots


def _sizes(answer: Answer, layout: Layout) -> None:
    """Add the table of the sizes of frames, from left to right."""
    length, places = answer.scale.length, {"run": "", "under": "under ", "over": "over "}
    rows = []
    for group in layout.groups:
        name = places[group.kind] + (group.opening.name if group.opening else "full height")
        left = length(group.frames[0].outside[0])
        rows.append([numbers_of(group), name, length(group.width), length(group.height), left])
    answer.table("Sizes", ["Frames", "Where", "Width", "Height", "From the left"], rows)


def _obstacles(
    answer: Answer, names: "list[str]", layout: Layout, spots: "list[Rectangle]"
) -> None:
    """Say what every obstacle lands on; the verdict refuses frames that would hit one."""
    rows, first = [], None
    for index, spot in enumerate(spots):
        landing = Landing(layout, spot)
        name = names[index] or f"Obstacle {index + 1}"
        rows.append([name, landing.words, answer.scale.length(landing.room)])
        if not landing.is_clear:
            first = first or (name, landing)
            answer.note(f"{name} lands {landing.words}.")
    answer.table("Obstacles", ["What", "Lands", "Clear by"], rows)
    if first is None:
        answer.note("Every obstacle is clear of the trim.")
        return
    name, landing = first
    better = _clear_counts(layout, spots)
    refuse_in_verdict(answer, name, landing.words, landing.frame, better)


def _clear_counts(layout: Layout, spots: "list[Rectangle]") -> "list[int]":
    """Return numbers of frames, half to twice as many, with which no obstacle meets any trim."""
    now, corner = sum(layout.counts), corner_of(layout.trim)
    found: list[int] = []
    for _, count in sorted([(abs(n - now), n) for n in range((now + 1) // 2, 2 * now + 1)]):
        counts = shared(count, layout.spans(), layout.margins.between, corner)
        if counts is None or count == now or count > MOST or len(found) == MOST_OFFERED:
            continue
        other = layout.with_counts(counts)
        if not [spot for spot in spots if hits(other, spot)]:
            found.append(count)
    return sorted(found)


TOOL = Tool(
    slug="wall-frames",
    place="saw",
    coated="girth",
    title="Wall frames",
    question="Applied molding frames on a wall or a panel, around windows and outlets: what size, "
    "where, what cuts?",
    finds=("wainscot", "boxes", "picture frame", "shadow box", "panel molding", "lineal feet"),
    inputs=INPUTS,
    work=work,
    gives=[
        Gives("frame_width", "length", "Frame width, outside, first run", short="wide"),
        Gives("frame_height", "length", "Frame height, outside", short="high"),
        Gives("frames", "count", "Frames"),
        Gives("pitch", "length", "Left edge to left edge", sometimes=True),
        Gives("between", "length", "Between", sometimes=True),
        Gives("clear_width", "length", "Clear width inside the trim", short="clear"),
        Gives("clear_height", "length", "Clear height inside the trim", short="clear"),
        Gives("end_margin", "length", "At each end"),
        Gives("total_trim", "length", "Trim in all", short="trim"),
        Gives("to_buy", "length", "To buy, 2 in more a corner", short="to buy"),
    ],
    example={
        "length": "96",
        "height": "36",
        "trim_width": "1 1/2",
        "count": "3",
    },
    cautions=[
        SAW,
        TEST_CUT,
        "Before you nail near an outlet or a switch: power off, and know where the cable runs. "
        "Moving one is for a licensed electrician.",
    ],
    sources=[
        "Arithmetic: what margins leave of the length is shared evenly among the frames; between "
        "openings each run is shared by itself, so that the widest frame is as narrow as can be.",
        "Cover plates of 2 3/4 by 4 1/2, margins of about 3: from memory.",
        "2 in more for each corner when buying: trade articles on base molding.",
        "Frames glued up before they go on the wall, blocks before trim, frames under a window as "
        "wide as its casings: common practice, no source.",
    ],
)
