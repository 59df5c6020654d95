"""The pieces of a whole run, checked against what can be built."""

from .ends import SCARF
from .pieces import Piece, name_neighbors, split, stretches, whole_piece
from .refusals import refuse_no_trim, refuse_overlapped, refuse_unbuildable, refuse_unclosed
from .run import Run

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale


def build(run: Run, scale: "Scale", too_big: str) -> "list[Piece]":
    """Return the pieces of a run in the order they go up.

    `too_big` says of stock that leaves nothing of a piece what it is and what would do.

    Raises
    ------
    Refusal
        For what can't be built.
    """
    refuse_unclosed(run)
    walls = [_pieces_of_wall(run, index, scale, too_big) for index in range(len(run.walls))]
    name_neighbors(run, walls)
    pieces = [piece for wall in walls for piece in wall]
    refuse_no_trim(pieces)
    return pieces


def _pieces_of_wall(run: Run, index: int, scale: "Scale", too_big: str) -> "list[Piece]":
    found = []
    for stretch in stretches(run, index):
        whole = whole_piece(run, stretch)
        refuse_unbuildable(run, whole, scale, too_big)
        pieces = split(run, whole)
        refuse_overlapped(run, pieces, scale)
        found += pieces
    return found


def joint_count(run: Run, pieces: "list[Piece]") -> int:
    """Return at how many corners and scarfs two pieces are cut to meet."""
    corners = [index for index in range(len(run.walls)) if run.meets(index)]
    return len(corners) + scarf_count(pieces)


def scarf_count(pieces: "list[Piece]") -> int:
    """Return the number of scarf joints."""
    return len([piece for piece in pieces if piece.right.kind in SCARF])
