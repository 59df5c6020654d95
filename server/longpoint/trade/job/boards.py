"""The buy list's boards: board feet with their waste, after what boards on hand give.

Once boards are tallied at the stack, a layout shows whether every piece comes out of them. A piece
comes out of a board only where a layout shows it: the board is ripped into
strips, grain along, and each strip is cut to length, longest piece first, a kerf at every cut.
"""

from ..lengths import Scale
from ..lumber.board_feet import board_feet
from .stock_sizes import Sizes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .pieces import Cut

    Sized = tuple[tuple[float, float, float], str, float]
    """Thickness, width and length that a piece takes, inches; its tag; its board feet."""

USUAL_KERF = 0.125
HAIR = 1e-9


class Board:
    """A board on hand as it is ripped up; inches.

    Attributes
    ----------
    place : int
        Where it stands in the list on hand; -1 for one tallied at the stack.
    strips : list of list
        Each strip's width, the length it has left, and the tags of its pieces.
    """

    def __init__(
        self, place: int, width: float, length: float, kerf: float, thick: float = 0.0
    ) -> None:
        self.thick = thick
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
    stock: "dict[str, Any]",
    cuts: "list[Cut]",
    sizes: Sizes,
    scale: Scale,
    rows: "list[dict[str, Any]]",
) -> "dict[str, Any]":
    """Return what a line of boards says: board feet to buy, and what comes off boards on hand.

    `rows` are the boards tallied at the stack: width in inches, length in feet, thickness, count;
    what one leaves out is as in the row above.
    """
    sized = _sized(cuts, stock, sizes)
    stack = _tallied(rows, stock, sizes)
    boards = _on_hand(stock, sizes)
    needed = _lay_out(_largest_first(sized), boards)
    bought = _lay_out(needed, stack)
    net = sum([feet for _, _, feet in bought])
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
        "from_hand": sum([feet for _, _, feet in sized]) - sum([feet for _, _, feet in needed]),
        "taken": taken,
        "proved": True if boards and not bought else None,
        "layout": _tables(boards + stack, scale),
        "longest": max([size[2] for size, _, _ in sized]),
        "widest": max([size[1] for size, _, _ in sized]),
    }
    if stack:
        _say_stack(line, stack, bought, stock)
    if sizes.read(stock.get("thickness")) <= 0:
        line["words"] = "Say how thick the rough boards are: counted by the parts until then."
    return line


def _say_stack(
    line: "dict[str, Any]",
    stack: "list[Board]",
    bought: "list[Sized]",
    stock: "dict[str, Any]",
) -> None:
    """Say of boards tallied at the stack whether every piece comes out of them."""
    used = len([board for board in stack if board.strips])
    feet = sum([board_feet(board.thick, board.width, board.length) for board in stack])
    line["amount"] += feet
    line["cost"] = None if stock.get("price") is None else stock["price"] * line["amount"]
    line["proved"] = not bought
    if bought:
        word = "piece does" if len(bought) == 1 else "pieces do"
        line["words"] = f"{len(bought)} {word} not come out of the {len(stack)} boards tallied"
    else:
        line["words"] = f"Every piece comes out of {used} of the {len(stack)} boards tallied"


def _tallied(rows: "list[dict[str, Any]]", stock: "dict[str, Any]", sizes: Sizes) -> "list[Board]":
    """Return the boards of a tally that are as thick as the stock, the smallest first."""
    kerf = sizes.read(stock.get("kerf"), USUAL_KERF)
    wanted = sizes.read(stock.get("thickness"))
    boards = []
    thickness, feet = "", 0.0
    for row in rows:
        thickness, feet = row.get("thickness") or thickness, row.get("length") or feet
        thick = sizes.read(thickness) or wanted
        if feet > 0 and thick >= wanted - HAIR:
            for _ in range(row.get("count") or 1):
                boards.append(Board(-1, row["width"], feet * 12, kerf, thick))
    return _smallest_first(boards)


def _on_hand(stock: "dict[str, Any]", sizes: Sizes) -> "list[Board]":
    """Return the boards on hand one by one, the smallest first, so that large ones are left."""
    kerf = sizes.read(stock.get("kerf"), USUAL_KERF)
    boards = []
    for place, each in enumerate(stock.get("on_hand") or []):
        width, length = sizes.read(each.get("width")), sizes.read(each.get("length"))
        if width > 0 and length > 0:
            boards += [Board(place, width, length, kerf) for _ in range(each.get("count") or 1)]
    return _smallest_first(boards)


def _smallest_first(boards: "list[Board]") -> "list[Board]":
    places = list(range(len(boards)))
    places.sort(key=lambda at: (boards[at].width * boards[at].length, at))
    return [boards[at] for at in places]


def _sized(cuts: "list[Cut]", stock: "dict[str, Any]", sizes: Sizes) -> "list[Sized]":
    """Return what each piece takes; copies of one piece follow each other and are read once."""
    sized = []
    piece: dict[str, Any] = {}
    size, feet = (0.0, 0.0, 0.0), 0.0
    for cut in cuts:
        if cut.piece is not piece:
            piece, size = cut.piece, sizes.rough(cut.piece, stock)
            feet = board_feet(*size)
        sized.append((size, cut.tag, feet))
    return sized


def _largest_first(sized: "list[Sized]") -> "list[Sized]":
    """Return pieces in the order in which they are laid out: widest first, then longest."""
    keyed = [(-size[1], -size[2], at) for at, (size, _, _) in enumerate(sized)]
    return [sized[at] for _, _, at in sorted(keyed)]


def _lay_out(sized: "list[Sized]", boards: "list[Board]") -> "list[Sized]":
    """Lay pieces out on the boards in their order; return those that find no place, in it too."""
    left = []
    for each in sized:
        (_, width, length), tag, _ = each
        if not any(board.takes(width, length, tag) for board in boards):
            left.append(each)
    return left


def _tables(boards: "list[Board]", scale: Scale) -> "list[dict[str, Any]]":
    rows = []
    for board in boards:
        for strip in board.strips:
            size = f"{scale.length(board.width)} x {scale.length(board.length)}"
            size += "" if board.place >= 0 else ", tallied"
            rows.append([size, scale.length(strip[0]), ", ".join(strip[2])])
    if not rows:
        return []
    columns = ["Board", "Rip", "Cut, longest first"]
    is_tallied = bool([board for board in boards if board.place < 0 and board.strips])
    name = "Out of the boards" if is_tallied else "Out of boards on hand"
    return [{"name": name, "columns": columns, "rows": rows, "pick": None}]
