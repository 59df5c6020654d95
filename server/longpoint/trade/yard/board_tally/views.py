"""Show a tally: every board in a table, each thickness by itself, and the boards laid out."""

from ...lengths import Scale, show_money, show_number
from ...tool import Answer, Drawing
from ..feet import show_feet
from .price import Price
from .tally import Board, Tally, thickness_words

MOST_TAGS = 12
_BETWEEN = 1.0  # Inches from board to board in the drawing.


def show_boards(answer: Answer, tally: Tally, price: Price) -> None:
    """Add the table of boards with its sum."""
    columns = ["Board", "Size", "Count"]
    columns += ["SM"] if tally.graded else []
    columns += ["bf", "ft"] + (["Cost"] if price.is_known() else [])
    rows = []
    for at, board in enumerate(tally.boards):
        size = board_words(board, answer.scale)
        rows.append([str(at + 1), size, str(board.count)] + _cells([board], tally.graded, price))
    rows.append(["All", "", str(tally.count())] + _cells(tally.boards, tally.graded, price))
    answer.table("Board by board", columns, rows)


def _cells(boards: "list[Board]", graded: bool, price: Price) -> "list[str]":
    feet = sum([board.board_feet for board in boards])
    lineal = sum([board.lineal_feet() for board in boards])
    cells = [str(sum([board.surface for board in boards]))] if graded else []
    cells += [show_number(feet), show_number(lineal)]
    return cells + ([show_money(price.of(feet, lineal))] if price.is_known() else [])


def show_thicknesses(answer: Answer, tally: Tally, price: Price) -> None:
    """Add the sums by thickness, thinnest first, where there is more than one."""
    found = sorted({board.thickness for board in tally.boards})
    if len(found) < 2:
        return
    rows = []
    for thickness in found:
        boards = [board for board in tally.boards if board.thickness == thickness]
        count = sum([board.count for board in boards])
        cells = _cells(boards, False, price)
        rows.append([thickness_words(thickness), str(count)] + cells)
    columns = ["Thickness", "Count", "bf", "ft"]
    answer.table("By thickness", columns + (["Cost"] if price.is_known() else []), rows)


def board_words(board: Board, scale: Scale) -> str:
    """Return a board's size as the tally says it.

    >>> board_words(Board(1.25, 6.25, 8, 1), Scale())
    '5/4 x 6 1/4 x 8 ft'
    """
    width = scale.bare(board.width)
    return f"{thickness_words(board.thickness)} x {width} x {show_feet(board.feet)}"


def laid_out(tally: Tally, scale: Scale) -> Drawing:
    """Return the boards seen flat, one of each line, in the order of the tally."""
    lines = len(tally.boards)
    view = Drawing(
        "The boards laid out",
        f"{lines} {'sizes' if lines > 1 else 'size'} of board, each drawn once.",
    )
    y = 0.0
    for at, board in enumerate(tally.boards):
        long = board.feet * 12
        view.box("stock", 0, y, long, y + board.width)
        if lines <= MOST_TAGS:
            view.tag((long * (0.4 + 0.2 * (at % 2)), y + board.width / 2), str(at + 1))
        y += board.width + _BETWEEN
    first = tally.boards[0]
    view.dimension((0, 0), (first.feet * 12, 0), show_feet(first.feet))
    view.dimension((0, first.width), (0, 0), scale.length(first.width))
    return view
