"""The trim of the frames, cut to its corners: mitered, stopped at blocks, or notched for them."""

from ...tool import Answer, End, Refusal, Scale, miter, square
from .layout import FrameTrim, Group, Layout

LEVEL, UPRIGHT = 1, 2
"""Places of a group's two kinds of piece among its tags."""


def refuse_block(trim: FrameTrim, way: str, scale: Scale) -> None:
    """Refuse blocks that don't cover their corner.

    Raises
    ------
    Refusal
        For a block that leaves the end of the trim, or of its miter, in sight.
    """
    width, size, set_in = trim
    if way == "stop" and size < width:
        raise Refusal(
            "block_size",
            f"Trim {scale.length(width)} wide is wider than a block of {scale.length(size)}: use "
            f"blocks of {scale.length(width)} or more, or let them into the corner.",
        )
    if way != "notch":
        return
    if set_in >= width:
        raise Refusal(
            "set_in",
            f"Set in {scale.length(set_in)} the blocks stand clear of trim {scale.length(width)} "
            f"wide: use less than {scale.length(width)}.",
        )
    if set_in + size < width:
        raise Refusal(
            "block_size",
            f"A block of {scale.length(size)} set in {scale.length(set_in)} doesn't reach the "
            f"inner edge of trim {scale.length(width)} wide: use {scale.length(width - set_in)} or "
            "more.",
        )


def tag_of(group: Group, place: int) -> str:
    """Return the tag of a group's pieces: it stays while sizes change."""
    return str(2 * group.slot + place)


def numbers_of(group: Group) -> str:
    """Return which frames a group has, in words."""
    first, last = group.frames[0].number, group.frames[-1].number
    return f"Frame {first}" if first == last else f"Frames {first} to {last}"


def add_pieces(answer: Answer, layout: Layout, way: str, thickness: "float | None") -> None:
    """Add the two kinds of piece of each size of frame, and the blocks of them all."""
    trim = layout.trim
    for group in layout.groups:
        sizes = ((LEVEL, "top and bottom", group.width), (UPRIGHT, "sides", group.height))
        for place, name, whole in sizes:
            length, short, end = _cut(trim, way, whole, answer.scale)
            answer.piece(
                tag_of(group, place),
                f"{numbers_of(group)}, {name}",
                length,
                (end, end),
                short_point=short,
                width=trim.width,
                thickness=thickness,
                count=2 * len(group.frames),
            )
    if trim.block:
        slots = 3 * len(layout.openings) + 1
        answer.piece(
            str(2 * slots + 1),
            "Corner blocks",
            trim.block,
            (square(), square()),
            width=trim.block,
            count=4 * len(layout.frames),
        )


def _cut(
    trim: FrameTrim, way: str, whole: float, scale: Scale
) -> "tuple[float, float | None, End]":
    """Return length, short point and end of a side that spans `whole` of the frame."""
    width, block, set_in = trim
    if way == "none":
        return whole, whole - 2 * width, miter(45.0)
    if way == "stop":
        return whole - 2 * block, None, square("to the block")
    deep, reach = scale.length(width - set_in), scale.length(set_in + block)
    note = f"inner edge notched {deep} deep to {reach} from the long point"
    return whole, whole - 2 * set_in, miter(45.0, note)


def trim_in_all(layout: Layout, way: str) -> float:
    """Return the length of trim on the wall, long points measured, saw cuts not counted."""
    less = 4 * layout.trim.block if way == "stop" else 0.0
    return sum(
        [len(group.frames) * 2 * (group.width + group.height - less) for group in layout.groups]
    )
