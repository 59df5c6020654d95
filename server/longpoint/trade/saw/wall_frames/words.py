"""What to say of frames on a wall: the line that decides, and the order of work."""

from .layout import Layout

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Answer
    from .layout import Group

_CORNERS = {"none": "saw 45°", "stop": "square to blocks", "notch": "saw 45°, blocks let in"}


def decide(answer: "Answer", layout: Layout, way: str) -> None:
    """Give the verdict of frames that hit nothing: how many of what size, and how far apart."""
    if layout.openings:
        _decide_around(answer, layout, way)
        return
    length, margins = answer.scale.length, layout.margins
    group = layout.groups[0]
    count = len(group.frames)
    size = f"{length(group.width)} x {length(group.height)} outside"
    frames = "1 frame" if count == 1 else f"{count} frames"
    apart = f", {length(margins.between)} apart" if count > 1 else ""
    rest = _margins(answer, layout)
    answer.verdict(
        f"{frames} {size}{apart}, {rest}, {_CORNERS[way]}",
        f"{frames} {size}{apart}, {rest}",
        f"{frames} {size}{apart}, {_CORNERS[way]}",
        f"{frames} {size}{apart}",
    )


def _margins(answer: "Answer", layout: Layout) -> str:
    """Return what is left around the frames."""
    length, margins = answer.scale.length, layout.margins
    if margins.end == margins.top == margins.bottom:
        return f"{length(margins.end)} to the edges"
    if margins.top == margins.bottom:
        return f"ends {length(margins.end)}, above and below {length(margins.top)}"
    return (
        f"ends {length(margins.end)}, above {length(margins.top)}, below {length(margins.bottom)}"
    )


def _decide_around(answer: "Answer", layout: Layout, way: str) -> None:
    """Say it run by run, then what goes under and over the openings."""
    length = answer.scale.length
    runs = " + ".join([f"{len(group.frames)} of {length(group.width)}" for group in layout.runs])
    high = f", {length(layout.high - layout.low)} high" if layout.runs else ""
    said = f"{len(layout.frames)} frames: {runs}{high}" if runs else "No room beside the openings"
    sizes = [_around(answer, group) for group in layout.groups if group.kind != "run"]
    brief = [group.kind for group in layout.groups if group.kind != "run"]
    apart = f", {length(layout.margins.casing)} to casings"
    counted = _counted(brief)
    answer.verdict(
        f"{said}; {', '.join(sizes)}{apart}, {_CORNERS[way]}" if sizes else f"{said}{apart}",
        f"{said}; {', '.join(sizes)}{apart}" if sizes else said,
        f"{said}; {', '.join(sizes)}" if sizes else said,
        f"{said}; {counted}" if counted else said,
        said,
        f"{len(layout.frames)} frames in {len(layout.runs)} runs{high}",
    )


def _around(answer: "Answer", group: "Group") -> str:
    length = answer.scale.length
    return f"{group.kind} {length(group.width)} x {length(group.height)}"


def _counted(kinds: "list[str]") -> str:
    return ", ".join([f"{kinds.count(k)} {k}" for k in ("under", "over") if k in kinds])


def refuse_in_verdict(
    answer: "Answer", name: str, words: str, frame: int, better: "list[int]"
) -> None:
    """Give the verdict of frames that would land on an obstacle, and which numbers would not."""
    way = "Change a margin"
    if better:
        way = "1 frame clears all" if better == [1] else f"{listed(better)} frames clear all"
    answer.verdict(
        f"Don't cut: {name} lands {words}. {way}.",
        f"Don't cut: {name} lands on frame {frame}. {way}.",
        f"Don't cut: an obstacle lands on frame {frame}. {way}.",
    )


def listed(counts: "list[int]") -> str:
    """Return numbers as words.

    >>> listed([2]), listed([2, 4, 5])
    ('2', '2, 4 or 5')
    """
    head = ", ".join([str(count) for count in counts[:-1]])
    return (head + " or " if head else "") + str(counts[-1])


def add_notes(answer: "Answer", layout: Layout, way: str) -> None:
    """Say how the frames are cut, numbered and put up."""
    rounded = [g for g in layout.runs if abs(answer.scale.shown(g.width) - g.width) > 1e-9]
    if rounded:
        answer.note(
            f"Cut all frames of a run alike, {answer.scale.bare(rounded[0].width)} wide, and set "
            "each by its left mark: what rounding leaves falls evenly into the gaps, never along "
            "the row."
        )
    answer.note(
        "Number the pieces on the back as they are fitted, frame and corner, so that each stays "
        "with the corners it was cut to."
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
    if layout.openings:
        _bare_notes(answer, layout)
    answer.note("Level one line across the wall for all frames; floor and ceiling seldom are.")


def _bare_notes(answer: "Answer", layout: Layout) -> None:
    """Say where no frame goes, since there is no room for one."""
    for index, (span, count) in enumerate(zip(layout.spans(), layout.counts)):
        if not count:
            room = answer.scale.length(max(0.0, span.right - span.left))
            answer.note(f"No frame in run {index + 1} from the left: margins leave {room} there.")
    answer.note(
        "Frames under and over an opening are as wide as its casings, edge over edge, so that the "
        "gap beside them runs on up the casing."
    )
