"""Show a family's whole table, with the row that a label stands in."""

from ...lengths import Scale
from ...lumber.labels import board_words, size_words
from ...lumber.listed import Listed
from ...tables import hardwood, sheets, softwood
from ...tool import Answer

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable


def show_tables(answer: Answer, family: str, condition: str, found: Listed) -> None:
    """Add the family's tables to an answer."""
    if family == "softwood":
        _softwood_thickness(answer, found)
        _softwood_width(answer, found)
    elif family == "hardwood":
        _hardwood(answer, found)
    else:
        _sheets(answer, condition, found)


def _softwood_thickness(answer: Answer, found: Listed) -> None:
    scale = answer.scale.finer()
    rows = []
    for size in softwood.BOARD_THICKNESSES:
        rows.append(["Boards", board_words(size.nominal)] + _dressed(size, scale))
    for size in softwood.DIMENSION_THICKNESSES:
        rows.append(["Dimension", size_words(size.nominal)] + _dressed(size, scale))
    first_timber = len(rows)
    rows.extend([["Timbers"] + row for row in _timber_rows(scale)])
    pick = found.row
    if pick is not None and pick >= first_timber:
        pick = first_timber + _timber_row(found.nominal[0])
    answer.table("Softwood, thickness", ["Class", "Label", "Dry", "Green"], rows, pick)


def _softwood_width(answer: Answer, found: Listed) -> None:
    scale = answer.scale.finer()
    kind = softwood.class_of(found.nominal[0])
    pick = found.width_row
    if kind == "timbers":
        rows = _timber_rows(scale)
        width = found.nominal[1]
        pick = None if width is None else _timber_row(width)
    else:
        sizes = softwood.widths(found.nominal[0])
        rows = [[size_words(size.nominal)] + _dressed(size, scale) for size in sizes]
    answer.table("Softwood, width of " + kind, ["Label", "Dry", "Green"], rows, pick)


def _dressed(size: "softwood.Size", scale: Scale) -> "list[str]":
    return [scale.length(size.dry), scale.length(size.green)]


def _timber_rows(scale: Scale) -> "list[list[str]]":
    rows = []
    for off in softwood.TIMBER_OFF:
        last = off is softwood.TIMBER_OFF[-1]
        label = f"{off.least} and up" if last else f"{off.least} to {off.most}"
        rows.append([label, scale.length(off.dry) + " off", scale.length(off.green) + " off"])
    return rows


def _timber_row(nominal: float) -> int:
    return [nominal <= off.most for off in softwood.TIMBER_OFF].index(True)


def _hardwood(answer: Answer, found: Listed) -> None:
    scale = answer.scale.finer()
    rows = []
    for quarter in hardwood.QUARTERS:
        sizes = (quarter.rough, quarter.s2s, quarter.s1s, hardwood.kiln_dried(quarter.rough))
        rows.append([quarter.name] + _cells(sizes, scale))
    columns = ["Label", "Rough", "S2S", "S1S", "Kiln-dried rough, at least"]
    answer.table("Hardwood, thickness", columns, rows, found.row)


def _cells(sizes: "Iterable[float | None]", scale: Scale) -> "list[str]":
    return ["not listed" if size is None else scale.length(size) for size in sizes]


def _sheets(answer: Answer, condition: str, found: Listed) -> None:
    scale = answer.scale
    rows = [
        [size_words(row.label)] + [scale.decimal(x) for x in (row.usual, row.least, row.most)]
        for row in sheets.sheets(condition)
    ]
    answer.table("Sheets sold so", ["Label", "Usual", "At least", "At most"], rows, found.row)
