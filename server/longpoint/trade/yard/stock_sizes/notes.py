"""What to say about a board's size: enough or not, tape against table, each family's ways."""

from ...lumber.listed import Listed
from ...tables import hardwood
from ..sizes import GREEN, SAME

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    Say = Callable[[float], str]


def mill_thickness_note(family: str, found: Listed, extra: float, needed: float, say: "Say") -> str:
    """Return whether the thickness will do; `extra` is real minus needed, inches."""
    if abs(extra) < SAME:
        return f"Thickness: it is already there, at {say(needed)}."
    if extra < 0:
        return f"Too thin by {say(-extra)}. " + _next_up(found.thicker(), needed, "thick", say)
    if family == "sheet":
        return (
            f"Thicker than needed by {say(extra)}, and a sheet is not planed: let the groove or "
            "rabbet follow the sheet, or choose another."
        )
    return (
        f"Thickness can be milled down: {say(extra)} comes off, {say(extra / 2)} a face. Take it "
        "off both faces alike, so that the board stays flat."
    )


def mill_width_note(found: Listed, width: "float | None", needed: float, say: "Say") -> str:
    """Return whether the width will do; `width` is None where nothing says it."""
    if width is None:
        return (
            f"Nothing says how wide this board is: the label {found.name} names no width. "
            "Measure it."
        )
    extra = width - needed
    if abs(extra) < SAME:
        return f"Width: it is already there, at {say(needed)}."
    if extra > 0:
        return f"Width can be brought down: joint one edge, then rip; {say(extra)} comes off."
    return f"Too narrow by {say(-extra)}. " + _next_up(found.wider(), needed, "wide", say)


def _next_up(offered: "list[tuple[str, float]]", needed: float, way: str, say: "Say") -> str:
    """Return the first size by the table that would do."""
    if not offered:
        return f"Ask for stock at least {say(needed)} {way}, or glue up."
    for label, size in offered:
        if size >= needed - SAME:
            return f"By the table {label} would do, {say(size)} {way}."
    return f"No size in the table is {way} enough: glue up."


def tape_note(way: str, tape: float, table: "float | None", say: "Say") -> str:
    """Return how far the tape is from the table; `way` is thick or wide, lengths in inches."""
    if table is None:
        return f"The table has no size here: your tape's {say(tape)} {way} stands."
    if abs(tape - table) < SAME:
        return f"Tape and table agree: {say(tape)} {way}."
    side = "over" if tape > table else "under"
    return (
        f"Your tape says {say(tape)} {way}, the table {say(table)}: "
        f"{say(abs(tape - table))} {side} the table. The tape decides."
    )


def family_notes(
    family: str, condition: str, found: Listed, tape: "float | None", say: "Say"
) -> "list[str]":
    """Return what is worth knowing about stock of this family; `tape` in inches or None."""
    if family == "softwood":
        return _softwood(condition, found)
    if family == "hardwood":
        return _hardwood(condition, found, say)
    return _sheet(condition, found, tape, say)


def _softwood(condition: str, found: Listed) -> "list[str]":
    notes = [
        "Yards sell heavier and lighter stock than the standard (one sells an inch and three "
        "quarter under a 2x4 label): the tape decides.",
        "The label is a name. The bill counts the label's size; by the standard the invoice "
        "shows the actual size too.",
    ]
    if found.shifted:
        notes.append(f"Read as {found.name}: a yard writes the thickness first.")
    if condition == "green":
        notes.append(GREEN)
    else:
        notes.append("Dry means at most 19 % moisture content; indoors it dries and shrinks more.")
    return notes


def _hardwood(condition: str, found: Listed, say: "Say") -> "list[str]":
    rough = found.nominal[0]
    notes = [
        "Hardwood comes in random widths: only the board's own width counts, so measure it. "
        "The bill counts the thickness before surfacing.",
        "Yards sell heavier and lighter stock than the standard (4/4 is found surfaced to 3/4, "
        "13/16 and 15/16): the tape decides.",
    ]
    if condition == "rough":
        notes.append(
            f"Kiln-dried rough stock may be scant, down to {say(hardwood.kiln_dried(rough))}, and "
            f"one board may run thick by as much as {say(hardwood.thick_spots(rough))} along its "
            f"length. Surfacing two sides takes {say(hardwood.surfacing(rough))} by the table."
        )
    elif found.name in hardwood.FROM_MEMORY:
        notes.append(f"The surfaced thickness of {found.name} stands here from memory: measure.")
    return notes


def _sheet(condition: str, found: Listed, tape: "float | None", say: "Say") -> "list[str]":
    notes = [
        "Sheets of one label differ from mill to mill and from batch to batch: the tape decides. "
        "Cut grooves and dadoes to the sheet in hand.",
        _SHEET_WORDS[condition],
    ]
    least, most = found.least, found.most
    if tape is not None and least is not None and most is not None:
        inside = least <= tape <= most
        where = "within" if inside else "outside: it may carry another label"
        notes.append(f"The label allows {say(least)} to {say(most)}; your tape is {where}.")
    return notes


_SHEET_WORDS = {
    "unsanded": "The panel's own stamp gives its thickness in thousandths of an inch, at 9 % "
    "moisture content: it goes before the table.",
    "sanded": "Sanded plywood stays within 1/64 up to 3/4, within 3 % above; the sheet's length "
    "and width may be 1/16 under.",
    "hardwood": "Working figures: a 3/4 veneer-core sheet commonly measures near 23/32. The "
    "limits are from memory.",
    "mdf": "The limits are for the sheet's average; a spot may differ from it by 0.005 more. MDF "
    "is mostly sold about 1 in over size both ways.",
}
