"""Applied molding boxes evenly across a wall, or inside a door panel: sizes, places, cut list."""

from ..cautions import SAW, TEST_CUT
from ..tool import (
    Answer,
    Choice,
    Count,
    FieldError,
    Given,
    Length,
    Refusal,
    Rows,
    Scale,
    Text,
    Tool,
)
from .wall_drawing import one_frame, wall_view
from .wall_layout import Landing, Layout, count_near, hits, most_frames
from .wall_pieces import add_pieces, refuse_block, trim_in_all

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .wall_layout import Rectangle

MOST = 40
MOST_OFFERED = 4


def work(given: Given, scale: Scale) -> Answer:
    """Return the frames' size, where each starts, their pieces, and what obstacles land on."""
    where = given.text("on")
    layout = _layout(given, scale)
    spots = _spots(given, layout, where, scale)
    answer = Answer(scale)
    _figures(answer, layout, given.text("block"))
    _marks(answer, layout, where)
    add_pieces(answer, layout, given.text("block"))
    answer.draw(wall_view(layout, spots, where, scale))
    answer.draw(one_frame(layout, scale))
    if spots:
        _obstacles(answer, given, layout, spots)
    _notes(answer, layout, given.text("block"))
    return answer


def _layout(given: Given, scale: Scale) -> Layout:
    """Return the layout asked for, or refuse it."""
    between = given.number("between")
    top = _or(given.maybe("top_margin"), between)
    margins = (
        _or(given.maybe("end_margin"), between),
        between,
        top,
        _or(given.maybe("bottom_margin"), top),
    )
    trim, way = given.number("trim_width"), given.text("block")
    set_in = _or(given.maybe("set_in"), trim / 2) if way == "notch" else 0.0
    block = (_or(given.maybe("block_size"), 0.0), set_in)
    field = (given.number("length"), given.number("height"))
    layout = Layout(field, margins, trim, block, 1)
    refuse_block(layout, way, scale.finer())
    _refuse_height(layout, scale)
    return _counted(given, layout, scale)


def _or(value: "float | None", other: float) -> float:
    return other if value is None else value


def _refuse_height(layout: Layout, scale: Scale) -> None:
    if layout.height > 2 * layout.corner:
        return
    least = layout.top + layout.bottom + 2 * layout.corner
    raise Refusal(
        "height",
        f"Margins and trim need more than {scale.length(least)} of height and there are "
        f"{scale.length(layout.wall_height)}: use smaller margins or narrower trim.",
    )


def _counted(given: Given, layout: Layout, scale: Scale) -> Layout:
    """Return the layout with its number of frames, asked for or nearest to the target."""
    count, target = given.maybe_count("count"), given.maybe("target_width")
    if (count is None) == (target is None):
        words = "Give how many frames, or a width to come near to"
        both = count is not None
        raise Refusal.of([FieldError("count", words + (", not both." if both else "."), not both)])
    most = most_frames(layout)
    if most == 0:
        raise Refusal(
            "length",
            f"Margins and trim leave no opening in {scale.length(layout.length)}: use smaller "
            "margins or narrower trim.",
        )
    field = "count" if target is None else "target_width"
    if target is not None:
        count = count_near(layout, target)
    asked = count or 0
    if asked > most or asked > MOST:
        raise Refusal(
            field,
            f"{asked} frames are too many for {scale.length(layout.length)}: beside corners and "
            f"margins there are openings in {min(most, MOST)} at most.",
        )
    return layout.with_count(asked)


def _figures(answer: Answer, layout: Layout, way: str) -> None:
    answer.length("frame_width", layout.width, label="Frame width, outside", lead=True)
    answer.length("frame_height", layout.height, label="Frame height, outside", lead=True)
    answer.count("frames", layout.count, label="Frames")
    answer.length("pitch", layout.width + layout.between, label="Left edge to left edge")
    answer.length("clear_width", layout.width - 2 * layout.trim, label="Opening width")
    answer.length("clear_height", layout.height - 2 * layout.trim, label="Opening height")
    answer.length("end_margin", layout.end, label="At each end")
    answer.length("between", layout.between, label="Between")
    answer.length("total_trim", trim_in_all(layout, way), label="Trim in all")


def _marks(answer: Answer, layout: Layout, where: str) -> None:
    start = f"left end of the {where}"
    for index in range(layout.count):
        left, _, right, _ = layout.outside(index)
        tag = str(index + 1)
        answer.mark(tag, f"Frame {tag}, left edge", start, left)
        answer.mark(tag, f"Frame {tag}, right edge", start, right)
    start = f"bottom of the {where}"
    answer.mark("", "Frames, bottom edge", start, layout.bottom)
    answer.mark("", "Frames, top edge", start, layout.bottom + layout.height)


def _spots(given: Given, layout: Layout, where: str, scale: Scale) -> "list[Rectangle]":
    """Return each obstacle as left, bottom, right, top; refuse one that is off the wall."""
    spots, errors = [], []
    for index, row in enumerate(given.rows("obstacles")):
        up = _or(row.maybe("up"), layout.bottom + layout.height / 2)
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


def _obstacles(answer: Answer, given: Given, layout: Layout, spots: "list[Rectangle]") -> None:
    """Say what every obstacle lands on, and which numbers of frames would clear them all."""
    rows, is_clear = [], True
    for index, (row, spot) in enumerate(zip(given.rows("obstacles"), spots)):
        landing = Landing(layout, spot)
        name = row.text("name") or f"Obstacle {index + 1}"
        rows.append([name, landing.words, answer.scale.length(landing.room)])
        if not landing.is_clear:
            is_clear = False
            answer.note(f"{name} lands {landing.words}.")
    answer.table("Obstacles", ["What", "Lands", "Clear by"], rows)
    if is_clear:
        answer.note("Every obstacle is clear of the trim.")
        return
    better = _clear_counts(layout, spots)
    if better:
        answer.note("With these margins every obstacle is clear with " + _listed(better) + ".")
    else:
        answer.note("No number of frames clears them with these margins: change a margin.")


def _clear_counts(layout: Layout, spots: "list[Rectangle]") -> "list[int]":
    """Return the numbers of frames, nearest first, with which no obstacle meets any trim."""
    counts = [(abs(n - layout.count), n) for n in range(1, min(MOST, most_frames(layout)) + 1)]
    found: list[int] = []
    for _, count in sorted(counts):
        other = layout.with_count(count)
        if not any(hits(other, spot) for spot in spots):
            found.append(count)
        if len(found) == MOST_OFFERED:
            break
    return sorted(found)


def _listed(counts: "list[int]") -> str:
    return " or ".join([str(count) for count in counts]) + " frames"


def _notes(answer: Answer, layout: Layout, way: str) -> None:
    cut, true = answer.scale.shown(layout.width), layout.width
    if abs(cut - true) > 1e-9:
        answer.note(
            f"Cut all frames alike, {answer.scale.bare(true)} wide, and set each by its left "
            "mark: what rounding leaves falls evenly into the gaps, never along the row."
        )
    answer.note(
        "Corners A, B, C, D run clockwise from the top left. Write the frame's number before the "
        "piece's on the back, so that 2.1 is the top of frame 2, and keep each piece with the "
        "corners it was fitted to."
    )
    if way == "stop":
        answer.note("Blocks first, flush with the frame's outer edges; the trim is cut to fit.")
    elif way == "notch":
        answer.note(
            "Miter each corner first, then hold the block over it, mark, and cut the notch from "
            "the inner edge: the miter shows only outside the block."
        )
    else:
        answer.note("Glue each frame up on a flat bench, check its diagonals, and put it up whole.")
    answer.note("Level one line across the wall for all frames; floor and ceiling seldom are.")


_HAS_BLOCK = ("block", "stop", "notch")

TOOL = Tool(
    slug="wall-frames",
    place="saw",
    title="Wall frames",
    question="Applied molding boxes evenly across a wall or a panel: what size, where, what cuts?",
    finds=("wainscot", "picture frame", "shadow box", "panel molding"),
    inputs=[
        Choice("on", "On", [("wall", "a wall"), ("panel", "a door panel")], default="wall"),
        Length("length", "Length", help="From end to end of what the frames share."),
        Length("height", "Height", help="From the bottom line, such as the base, to the top one."),
        Length("trim_width", "Trim width"),
        Count("count", "Frames", optional=True, most=MOST, default_text="or a target width"),
        Length("target_width", "Target width", optional=True, default_text="or how many"),
        Length("between", "Between", default=3, least=0),
        Length("end_margin", "At each end", optional=True, least=0, default_text="as between"),
        Length("top_margin", "Above", optional=True, least=0, default_text="as between"),
        Length("bottom_margin", "Below", optional=True, least=0, default_text="as above"),
        Choice(
            "block",
            "Corner blocks",
            [("none", "none, mitered"), ("stop", "trim stops at them"), ("notch", "let in")],
            default="none",
        ),
        Length("block_size", "Block size", only_when=_HAS_BLOCK),
        Length(
            "set_in",
            "Blocks set in",
            optional=True,
            default_text="half the trim",
            help="From the frame's outer edges; the trim passes outside, mitered.",
            only_when=("block", "notch"),
        ),
        Rows(
            "obstacles",
            "Obstacles",
            [
                Text(
                    "name",
                    "What",
                    optional=True,
                    offers=(("Outlet", None), ("Switch", None), ("Vent", None)),
                ),
                Length("center", "Center from left"),
                Length(
                    "up",
                    "Center above bottom",
                    optional=True,
                    default_text="middle of the frames",
                ),
                Length("width", "Plate width", default="2 3/4"),
                Length("height", "Plate height", default="4 1/2"),
            ],
            row="obstacle",
            least=0,
        ),
    ],
    work=work,
    example={
        "length": "96",
        "height": "36",
        "trim_width": "1 1/2",
        "count": "3",
        "obstacles": [{"name": "Outlet", "center": "30", "up": "12"}],
    },
    cautions=[
        SAW,
        TEST_CUT,
        "Before you nail near an outlet or a switch: power off, and know where the cable runs. "
        "Moving a box is for a licensed electrician.",
    ],
    sources=[
        "Arithmetic: what margins leave of the length is shared evenly among the frames.",
        "Cover plates of 2 3/4 by 4 1/2, margins of about 3: from memory.",
        "Frames glued up before they go on the wall, blocks before trim: common practice, no "
        "source.",
    ],
)
