"""What a run of trim refuses, and what would do."""

from ..lengths import show_angle
from ..tool import Refusal, Scale
from .ends import STEEPEST, TrimEnd
from .pieces import Piece
from .run import ENDING, Run
from .scarf import MOST_PIECES, fits, piece_length, pieces_needed

FEWEST_CLOSED = 3


def refuse_unclosed(run: Run) -> None:
    """Refuse a closed run of too few walls, or with no wall to meet at its end."""
    count = len(run.walls)
    if run.closed and count < FEWEST_CLOSED:
        raise Refusal(
            "walls",
            f"A closed run needs {FEWEST_CLOSED} walls or more, {count} given: add the others, or "
            "say that the run is not closed.",
        )
    if run.closed and run.walls[-1].turn in ENDING:
        raise Refusal(
            f"walls.{count - 1}.turn",
            "In a closed run the last wall meets the first: make its turn inside or outside, or "
            "say that the run is not closed.",
        )


def refuse_no_trim(pieces: "list[Piece]") -> None:
    """Refuse openings that take all the walls there are."""
    if not pieces:
        raise Refusal("openings", "The openings take all the walls: no trim is left to cut.")


def refuse_unbuildable(run: Run, whole: Piece, scale: Scale, too_big: str) -> None:
    """Refuse a piece with a sliver of an end, one that its ends use up, one too long to scarf.

    `too_big` says of stock that leaves nothing of a piece what it is and what would do: "stock 3/4
    thick: use thinner stock".
    """
    _refuse_sliver(whole.wall, whole.right)
    _refuse_sliver((whole.wall - 1) % len(run.walls), whole.left)
    _refuse_nothing_left(run, whole, scale, too_big)
    _refuse_short_stick(run, whole, scale)


def refuse_overlapped(run: Run, pieces: "list[Piece]", scale: Scale) -> None:
    """Refuse scarfs that lap so far that nothing of a piece is left."""
    for piece in pieces:
        if min(piece.back(), piece.face(run.thickness)) <= 0:
            raise Refusal(
                "scarf",
                f"A scarf at {show_angle(run.scarf)} laps {scale.length(run.lap())}, too much for "
                f"the pieces of wall {piece.wall + 1}: use a smaller angle or a longer stick.",
            )


def _refuse_sliver(index: int, end: TrimEnd) -> None:
    """Refuse a corner that would need an end drawn out to a sliver; `index` is its wall."""
    if end.saw() <= STEEPEST:
        return
    advice = "check the angle" if end.angle < 90 else "miter it, or take both walls as one"
    raise Refusal(
        f"walls.{index}.corner",
        f"A corner of {show_angle(end.angle)} needs an end cut {show_angle(end.saw())} off "
        f"square, {show_angle(STEEPEST)} at most: {advice}.",
    )


def _refuse_nothing_left(run: Run, whole: Piece, scale: Scale, too_big: str) -> None:
    """Refuse a stretch whose ends, as cut or as they stand, take all of it."""
    thick, stretch = run.thickness, whole.stretch
    if stretch.stands(thick) and whole.face(thick) > 0:
        return
    size, wall = scale.length(stretch.end - stretch.start), whole.wall + 1
    if stretch.opening is None:
        field, what = f"walls.{whole.wall}.length", f"Wall {wall} is {size} long"
    else:
        field = f"openings.{stretch.opening}.from_left"
        what = f"Part {whole.tag} of wall {wall} is {size} long"
    raise Refusal(
        field,
        f"{what}, and its ends take all of {too_big}, or check the wall and what is beside it.",
    )


def _refuse_short_stick(run: Run, whole: Piece, scale: Scale) -> None:
    over_all, lost = whole.over_all(run.thickness), run.lap()
    if run.stick is None or fits(over_all, run.stick):
        return
    if run.stick <= lost:
        raise Refusal(
            "stick",
            f"A scarf at {show_angle(run.scarf)} laps {scale.length(lost)}, all of a stick "
            f"{scale.length(run.stick)} long: use longer sticks or a smaller angle.",
        )
    number = pieces_needed(over_all, run.stick, lost)
    if number > MOST_PIECES:
        raise Refusal(
            "stick",
            f"Sticks {scale.length(run.stick)} long would make {number} pieces of wall "
            f"{whole.wall + 1}, and {MOST_PIECES} are the most: use sticks longer than "
            f"{scale.length(piece_length(over_all, MOST_PIECES, lost))}.",
        )
