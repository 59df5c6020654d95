"""The pieces of a jamb and the lines on them; a piece keeps its tag while only sizes change."""

from ...tool import Answer, End, miter, square

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .frame import Jamb, Latch

HEAD, LEFT, HEAD_STOP, LEFT_STOP, RIGHT, RIGHT_STOP = "1", "2", "3", "4", "5", "6"
"""Legs and stops that are alike go by the left one's tag."""
ON_THE_LEAF = "7"
"""Tag of the mark on the leaf, which is no piece of the jamb."""


def add_pieces(answer: Answer, jamb: "Jamb") -> None:
    """Add the frame's pieces, then the stops: head first, the legs' stops up against it."""
    stock, stop = jamb.stock, jamb.stop
    into = {"housed": "in its housing", "between": "against the leg", "over": "over the leg"}
    end = square(into[stock.joint])
    width, thick = section = stock.depth, stock.thick
    answer.piece(HEAD, "Head", jamb.head, (end, end), width=width, thickness=thick, role="jamb")
    _upright(answer, "leg", jamb.legs, (LEFT, RIGHT), square(), section, "jamb")
    end, section = miter(0, bevel=45) if stop.mitered else square(), (stop.width, stop.thick)
    short = jamb.wide - 2 * stop.thick if stop.mitered else None
    answer.piece(
        HEAD_STOP,
        "Head stop",
        jamb.wide,
        (end, end),
        short_point=short,
        width=section[0],
        thickness=section[1],
        role="stop",
    )
    drop = stop.thick if stop.mitered else None
    _upright(answer, "leg stop", jamb.stops, (LEFT_STOP, RIGHT_STOP), end, section, "stop", drop)


def _upright(
    answer: Answer,
    name: str,
    lengths: "tuple[float, float]",
    tags: "tuple[str, str]",
    top: End,
    section: "tuple[float, float]",
    role: str,
    drop: "float | None" = None,
) -> None:
    """Add the left and the right piece, or both as one; `drop` is from long to short point."""
    alike = lengths[0] == lengths[1]
    names = [name[0].upper() + name[1:]] if alike else ["Left " + name, "Right " + name]
    for label, tag, length in zip(names, tags, lengths):
        answer.piece(
            tag,
            label,
            length,
            (square("foot"), top),
            short_point=None if drop is None else length - drop,
            width=section[0],
            thickness=section[1],
            count=3 - len(names),
            role=role,
        )


def add_marks(answer: Answer, jamb: "Jamb", latch: "Latch | None") -> None:
    """Add the head's lines on the legs, the stop's, and those of the latch."""
    stock, start = jamb.stock, "legs' upper end"
    if stock.joint != "over":
        answer.mark(HEAD, "Head, upper face", start, stock.horn)
        answer.mark(HEAD, "Head, lower face", start, stock.horn + stock.thick)
    edge = "jamb's edge, hinge face"
    if latch is not None:
        answer.mark(LEFT, "Strike, latch center", start, latch.down_leg)
    answer.mark(HEAD_STOP, "Stop, edge toward the door", edge, jamb.line)
    answer.mark(HEAD_STOP, "Stop, far edge", edge, jamb.far)
    if latch is not None:
        answer.mark(LEFT, "Strike, latch center", edge, latch.in_from_edge)
        answer.mark(ON_THE_LEAF, "Latch center", "leaf's bottom", latch.up_leaf)
