"""What no sheet plan can be made of, said on its field."""

from ...planning.supply import refuse_unpriced
from ...tool import FieldError, Refusal, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .layouts import SheetLayout
    from .order import Part, Sheet, SheetOrder

MOST_PARTS = 200
MOST_NAMED = 4
LEAST_SIDE = 1 / 16
"""Inches: what is narrower is no part and no sheet, and could be 0 in whole units."""


def refuse_too_many(parts: "list[Part]") -> None:
    """Refuse more parts than a plan is made for."""
    total = sum([part.count for part in parts])
    if total > MOST_PARTS:
        raise Refusal(
            "parts",
            f"{total} parts are more than the {MOST_PARTS} planned at a time: make two "
            "lists, one for each thickness or room.",
        )


def refuse_sheets(sheets: "list[Sheet]", trim: float, scale: Scale) -> None:
    """Refuse sheets that are trimmed to nothing, and prices on some only."""
    for sheet in sheets:
        if min(sheet.usable) < LEAST_SIDE:
            raise Refusal(
                "edge_trim",
                f"{scale.finer().length(trim)} off every edge leaves nothing of a sheet "
                f"{scale.length(sheet.length)} x {scale.length(sheet.width)}: trim less "
                f"than {scale.length(min(sheet.length, sheet.width) / 2)}.",
            )
    names = [
        f"sheet of {scale.length(sheet.length)} x {scale.length(sheet.width)}" for sheet in sheets
    ]
    refuse_unpriced(list(sheets), "sheets", names)


def refuse_too_large(order: "SheetOrder", scale: Scale) -> None:
    """Refuse parts that fit no sheet."""
    errors = [
        FieldError(f"parts.{at}.length", _too_large(order, at, scale))
        for at in range(len(order.parts))
        if order.is_too_large(at)
    ]
    if errors:
        raise Refusal.of(errors)


def _too_large(order: "SheetOrder", at: int, scale: Scale) -> str:
    part, fine = order.parts[at], scale.finer()
    words = f"{part.name}, {fine.length(part.length)} x {fine.length(part.width)}"
    if order.fits_turned(at):
        return (
            f"{words}, fits no sheet with its grain {part.grain}: turn it, or let its grain "
            "run any way."
        )
    largest = max([(sheet.area, sheet.usable) for sheet in order.sheets])[1]
    trimmed = " once its edges are trimmed" if order.trim else ""
    return (
        f"{words}, fits no sheet: the largest gives {fine.length(largest[0])} x "
        f"{fine.length(largest[1])}{trimmed}. Add a larger sheet, or join it of two parts."
    )


def short_of_sheets(
    order: "SheetOrder", layouts: "list[SheetLayout]", proved: bool, scale: Scale
) -> Refusal:
    """Return the refusal that names the parts which found no sheet."""
    over = []
    for layout in layouts:
        if layout.kind == order.problem.spare:
            over.extend([row for row, _ in layout.parts] * layout.times)
    parts = [order.parts[row] for row in sorted(set(over))]
    names = [f"{p.name} ({scale.length(p.length)} x {scale.length(p.width)})" for p in parts]
    more = " and others" if len(names) > MOST_NAMED else ""
    maybe = "" if proved else " There may be a way that was not found."
    return Refusal(
        "sheets",
        f"The sheets run out: {len(over)} of {order.problem.parts} parts found no place, "
        f"{', '.join(names[:MOST_NAMED])}{more}. Add sheets, or leave a count empty for as many "
        f"as needed.{maybe}",
    )
