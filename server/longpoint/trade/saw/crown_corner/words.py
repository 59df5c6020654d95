"""What is said of crown: how pieces lie on the saw, which side is kept, what to watch."""

from ...cautions import SHARPEST
from ...geometry.laid_on_saw import flat, nested
from ...lengths import brief_angle, show_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Answer
    from .crown import Crown

MOST_BEVEL = 45.0
"""How far many saws bevel, degrees: common practice, no source."""
COPED = (
    "Inside corners are coped where they must stay shut: one piece square to the wall, the other "
    "cut as here and then sawn along the line of its face, slightly undercut."
)


def settings_words(crown: "Crown", corner: float, bevels: str) -> str:
    """Return what is set on the saw for a corner, flat and nested, in a few words."""
    miter, bevel = brief_angle(crown.miter(corner)), brief_angle(crown.bevel(corner))
    nested_miter = brief_angle(crown.nested(corner))
    return f"flat miter {miter}, bevel {bevel} {bevels}; nested miter {nested_miter}"


def add_settings(answer: "Answer", crown: "Crown", corner: float, bevels: str) -> None:
    """Add the settings of a corner, flat and nested."""
    answer.angle("flat_miter", crown.miter(corner), lead=True)
    short = "Bevel " + bevels
    label = f"Bevel to the {bevels}, flat on the table"
    answer.angle("flat_bevel", crown.bevel(corner), label=label, short=short, lead=True)
    answer.angle("nested_miter", crown.nested(corner), lead=True)


def add_sizes(answer: "Answer", crown: "Crown") -> None:
    """Add how far the crown reaches down and out."""
    if crown.drop is not None and crown.projection is not None:
        answer.length("drop", crown.drop)
        answer.length("projection", crown.projection)


def add_tables(answer: "Answer", bevels: str) -> None:
    """List how each piece lies on the saw at either kind of corner, flat and nested."""
    ways = [(turn, side) for turn in ("inside", "outside") for side in ("left", "right")]
    columns = ["Corner", "Piece", "At the fence", "Handle", "Keep"]
    cuts = [(turn, side, flat(turn, side, bevels)) for turn, side in ways]
    answer.table(
        f"Flat, face up, blade beveled {bevels}",
        columns,
        [[turn, side, cut.edge + " edge", cut.handle, cut.keep] for turn, side, cut in cuts],
    )
    cuts = [(turn, side, nested(turn, side)) for turn, side in ways]
    answer.table(
        "Nested, upside down, no bevel",
        columns,
        [[turn, side, cut.edge + " edge", cut.handle, cut.keep] for turn, side, cut in cuts],
    )


def add_saw_notes(answer: "Answer", crown: "Crown", corners: "list[float]") -> None:
    """Say how crown is laid on the saw, and which corner is past most saws."""
    answer.note(
        "Left and right of the joint are as you face the corner. Handle says where the saw's "
        "handle goes, keep which side of the blade is yours."
    )
    answer.note(
        "Nested: upside down, the ceiling edge on the table and the wall edge against the fence, "
        "held at its spring angle by a stop."
    )
    for corner in corners:
        miter, bevel = crown.miter(corner), crown.bevel(corner)
        if miter > SHARPEST or bevel > MOST_BEVEL:
            answer.note(
                f"A corner of {show_angle(corner)} is sharp: a miter of {show_angle(miter)} and a "
                f"bevel of {show_angle(bevel)} are more than many saws reach. Nested needs a "
                f"miter of {show_angle(crown.nested(corner))} and no bevel."
            )
