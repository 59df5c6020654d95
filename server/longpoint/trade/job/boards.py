"""The buy list's boards: board feet with their waste, after what boards on hand give.

A piece comes out of a board on hand only where a layout shows it: the board is ripped into
strips, grain along, and each strip is cut to length, longest piece first, a kerf at every cut.
"""

from ..lengths import Scale
from ..lumber.board_feet import board_feet
from .stock_sizes import Sizes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .pieces import Cut

USUAL_KERF = 0.125
HAIR = 1e-9


class Board:
    """A board on hand as it is ripped up; inches.

    Attributes
    ----------
    strips : list of list
        Each strip's width, the length it has left, and the tags of its pieces.
    """

    def __init__(self, place: int, width: float, length: float, kerf: float) -> None:
        self.place = place
        self.width = width
        self.length = length
        self.kerf = kerf
        self.left = width
        self.strips: list[list[Any]] = []

    def takes(self, width: float, length: float, tag: str) -> bool:
        """Cut a piece from the board if there is room, and tell whether there was."""
        for strip in self.strips:
            if width <= strip[0] + HAIR and length <= strip[1] + HAIR:
                strip[1] -= length + self.kerf
                strip[2].append(tag)
                return True
        if width > self.left + HAIR or length > self.length + HAIR:
            return False
        self.left -= width + self.kerf
        self.strips.append([width, self.length - length - self.kerf, [tag]])
        return True


def board_line(
    stock: "dict[str, Any]", cuts: "list[Cut]", sizes: Sizes, scale: Scale
) -> "dict[str, Any]":
    """Return what a line of boards says: board feet to buy, and what comes off boards on hand."""
    sized = [(sizes.rough(cut.piece, stock), cut.tag) for cut in cuts]
    boards = _on_hand(stock, sizes)
    bought = _lay_out(sized, boards)
    net = sum([board_feet(*size) for size in bought])
    waste = float(stock.get("waste") or 0)
    amount = net * (1 + waste / 100)
    hand = stock.get("on_hand") or []
    taken = [len([board for board in boards if board.place == at and board.strips])
             for at in range(len(hand))]  # fmt: skip
    price = stock.get("price")
    line = {
        "amount": amount,
        "net": net,
        "waste": waste,
        "cost": None if price is None else price * amount,
        "from_hand": sum([board_feet(*size) for size, _ in sized]) - net,
        "taken": taken,
        "proved": True if boards and not bought else None,
        "layout": _tables(boards, scale),
        "longest": max([size[2] for size, _ in sized]),
        "widest": max([size[1] for size, _ in sized]),
    }
    if sizes.read(stock.get("thickness")) <= 0:
        line["words"] = "Say how thick the rough boards are: counted by the parts until then."
    return line


def _on_hand(stock: "dict[str, Any]", sizes: Sizes) -> "list[Board]":
    """Return the boards on hand one by one, the smallest first, so that large ones are left."""
    kerf = sizes.read(stock.get("kerf"), USUAL_KERF)
    boards = []
    for place, each in enumerate(stock.get("on_hand") or []):
        width, length = sizes.read(each.get("width")), sizes.read(each.get("length"))
        if width > 0 and length > 0:
            boards += [Board(place, width, length, kerf) for _ in range(each.get("count") or 1)]
    places = list(range(len(boards)))
    places.sort(key=lambda at: (boards[at].width * boards[at].length, at))
    return [boards[at] for at in places]


def _lay_out(
    sized: "list[tuple[tuple[float, float, float], str]]", boards: "list[Board]"
) -> "list[tuple[float, float, float]]":
    """Lay pieces out on the boards, widest and longest first; return the sizes left to buy."""
    places = list(range(len(sized)))
    places.sort(key=lambda at: (-sized[at][0][1], -sized[at][0][2], at))
    bought = []
    for at in places:
        (thick, width, length), tag = sized[at]
        if not any(board.takes(width, length, tag) for board in boards):
            bought.append((thick, width, length))
    return bought


def _tables(boards: "list[Board]", scale: Scale) -> "list[dict[str, Any]]":
    rows = []
    for board in boards:
        for strip in board.strips:
            size = f"{scale.length(board.width)} x {scale.length(board.length)}"
            rows.append([size, scale.length(strip[0]), ", ".join(strip[2])])
    if not rows:
        return []
    columns = ["Board on hand", "Rip", "Cut, longest first"]
    return [{"name": "Out of boards on hand", "columns": columns, "rows": rows, "pick": None}]
