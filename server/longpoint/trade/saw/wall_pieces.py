"""The trim of one frame, cut to its corners: mitered, stopped at blocks, or notched for them."""

from ..tool import Answer, End, Refusal, Scale, miter, square
from .wall_layout import CORNERS, Layout

SIDES = ("Top", "Right side", "Bottom", "Left side")


def refuse_block(layout: Layout, way: str, scale: Scale) -> None:
    """Refuse blocks that don't cover their corner.

    Raises
    ------
    Refusal
        For a block that leaves the end of the trim, or of its miter, in sight.
    """
    trim, size, set_in = layout.trim, layout.block, layout.set_in
    if way == "stop" and size < trim:
        raise Refusal(
            "block_size",
            f"Trim {scale.length(trim)} wide is wider than a block of {scale.length(size)}: use "
            f"blocks of {scale.length(trim)} or more, or let them into the corner.",
        )
    if way != "notch":
        return
    if set_in >= trim:
        raise Refusal(
            "set_in",
            f"Set in {scale.length(set_in)} the blocks stand clear of trim {scale.length(trim)} "
            f"wide: use less than {scale.length(trim)}.",
        )
    if set_in + size < trim:
        raise Refusal(
            "block_size",
            f"A block of {scale.length(size)} set in {scale.length(set_in)} doesn't reach the "
            f"inner edge of trim {scale.length(trim)} wide: use {scale.length(trim - set_in)} or "
            "more.",
        )


def add_pieces(answer: Answer, layout: Layout, way: str) -> None:
    """Add the four pieces of a frame, and its blocks, each as many times as there are frames."""
    for index, name in enumerate(SIDES):
        whole = layout.height if index % 2 else layout.width
        corners = f"{CORNERS[index]} to {CORNERS[(index + 1) % 4]}"
        length, short, end = _cut(layout, way, whole, answer.scale)
        answer.piece(
            str(index + 1),
            f"{name}, {corners}",
            length,
            (end, end),
            short_point=short,
            width=layout.trim,
            count=layout.count,
        )
    if layout.block:
        answer.piece(
            "5",
            "Corner block, A to D",
            layout.block,
            (square(), square()),
            width=layout.block,
            count=4 * layout.count,
        )


def _cut(layout: Layout, way: str, whole: float, scale: Scale) -> "tuple[float, float | None, End]":
    """Return length, short point and end of a side that spans `whole` of the frame."""
    if way == "none":
        return whole, whole - 2 * layout.trim, miter(45.0)
    if way == "stop":
        return whole - 2 * layout.block, None, square("to the block")
    deep = scale.length(layout.trim - layout.set_in)
    reach = scale.length(layout.set_in + layout.block)
    note = f"inner edge notched {deep} deep to {reach} from the long point"
    return whole, whole - 2 * layout.set_in, miter(45.0, note)


def trim_in_all(layout: Layout, way: str) -> float:
    """Return the length of trim on the wall, long points measured, saw cuts not counted."""
    less = 4 * layout.block if way == "stop" else 0.0
    return layout.count * 2 * (layout.width + layout.height - less)
