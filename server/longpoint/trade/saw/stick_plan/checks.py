"""What no stick plan can be made of, said on its field."""

from ...planning.supply import refuse_unpriced
from ...planning.units import PER_INCH
from ...tool import Refusal, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...cutting.plans import StickPlan
    from .order import PieceRow, Stick, StickOrder

MOST_PIECES = 500
MOST_NAMED = 6


def refuse_too_many(rows: "list[PieceRow]") -> None:
    """Refuse more pieces than a plan is made for."""
    total = sum([row.count for row in rows])
    if total > MOST_PIECES:
        raise Refusal(
            "pieces",
            f"{total} pieces are more than the {MOST_PIECES} planned at a time: make two "
            "lists, one for each delivery or room.",
        )


def refuse_sticks(sticks: "list[Stick]", trim: float, scale: Scale) -> None:
    """Refuse sticks that are trimmed to nothing, and prices on some only."""
    for stick in sticks:
        if stick.usable <= 0:
            raise Refusal(
                "end_trim",
                f"{scale.finer().length(trim)} off each end leaves nothing of a stick "
                f"{scale.length(stick.length)} long: trim less than "
                f"{scale.length(stick.length / 2)}, or leave that stick out.",
            )
    names = [f"stick of {scale.length(stick.length)}" for stick in sticks]
    refuse_unpriced(list(sticks), "sticks", names)


def refuse_too_long(order: "StickOrder", scale: Scale) -> None:
    """Refuse a piece longer than every stick."""
    longest = max([stick.usable for stick in order.sticks])
    trimmed = " once its ends are trimmed" if order.trim else ""
    fine = scale.finer()
    for at, row in enumerate(order.rows):
        if row.length > longest + 0.5 / PER_INCH:
            raise Refusal(
                f"pieces.{at}.length",
                f"Piece {row.tag} is {fine.length(row.length)} long, and no stick gives more "
                f"than {fine.length(longest)}{trimmed}: add a stick of "
                f"{fine.length(row.length + 2 * order.trim)} or longer, or scarf it of two pieces.",
            )


def short_of_sticks(order: "StickOrder", plan: "StickPlan", proved: bool, scale: Scale) -> Refusal:
    """Return the refusal that names the pieces which found no stick."""
    over: list[int] = []
    longest, left = 0, [row.count for row in order.rows]
    for kind, pattern in plan.single():
        if kind == order.spare:
            longest = max(longest, order.problem.rooms[kind] - plan.rest(kind, pattern))
            for size, number in pattern:
                for row in reversed(order.rows_of_size[size]):
                    take = min(number, left[row])
                    left[row], number = left[row] - take, number - take
                    over.extend([row] * take)
    need = order.inches(longest - order.kerf_units) + 2 * order.trim
    maybe = "" if proved else " There may be a way that was not found."
    return Refusal(
        "sticks",
        f"The sticks run out: of {order.pieces} pieces {len(over)} found no place, "
        f"{_named(order, over, scale)}. Add {plan.used()[order.spare or 0]} of "
        f"{scale.length(need)} or longer, or leave a count empty for as many as needed.{maybe}",
    )


def _named(order: "StickOrder", over: "list[int]", scale: Scale) -> str:
    rows = sorted(set(over))
    names = []
    for row in rows[:MOST_NAMED]:
        number = over.count(row)
        times = f"{number} of " if number > 1 else ""
        names.append(f"{times}{order.rows[row].tag} ({scale.length(order.rows[row].length)})")
    return ", ".join(names) + (" and others" if len(rows) > MOST_NAMED else "")
