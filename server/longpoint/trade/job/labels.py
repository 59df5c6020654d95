"""Where labels lie on a sheet of paper: a grid measured off the sheet that is at hand."""

from ..lengths import Scale, read_length
from ..reading import Unreadable
from ..refusal import FieldError, Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

PAPERS = {"letter": (8.5, 11.0), "a4": (210 / 25.4, 297 / 25.4)}
"""Inches wide and high: ANSI/ASME Y14.1 size A, ISO 216 A4."""

_LENGTHS = ("width", "height", "left", "top", "gap_across", "gap_down")
_MAY_BE_NONE = ("left", "top", "gap_across", "gap_down")
_SLACK = 0.02
"""Inches by which a grid may pass the paper: the last gap of a sheet that was measured by rule."""

LEAST = 0.25
"""Inches: on anything smaller nothing can be read."""


def label_grid(asked: "dict[str, Any]", scale: Scale) -> "dict[str, Any]":
    """Return where each label of a sheet lies, row by row, in inches from the top left corner.

    Parameters
    ----------
    asked : dict
        `paper`; the texts `width` and `height` of a label, `left` and `top` of the first one from
        the paper's edges, `gap_across` and `gap_down` between two; the numbers `across` and `down`.
    scale : Scale
        Whose units bare numbers are in.

    Raises
    ------
    Refusal
        For each field that can't be read, and where the labels pass the paper's edge.
    """
    sizes, errors = _read(asked, scale)
    counts = {name: _count(asked.get(name), name, errors) for name in ("across", "down")}
    if errors:
        raise Refusal.of(errors)
    paper = PAPERS.get(str(asked.get("paper")), PAPERS["letter"])
    ways = (("across", "left", "width", "gap_across"), ("down", "top", "height", "gap_down"))
    lines = []
    for way, room in zip(ways, paper):
        lines.append(_along(way, sizes, counts, room, scale, errors))
    if errors:
        raise Refusal.of(errors)
    spots = [[left, top] for top in lines[1] for left in lines[0]]
    return {
        "width": sizes["width"],
        "height": sizes["height"],
        "paper": list(paper),
        "spots": spots,
    }


def _read(asked: "dict[str, Any]", scale: Scale) -> "tuple[dict[str, float], list[FieldError]]":
    sizes: dict[str, float] = {}
    errors: list[FieldError] = []
    for name in _LENGTHS:
        text = str(asked.get(name) or ("0" if name in _MAY_BE_NONE else ""))
        try:
            sizes[name] = read_length(text, scale.typed_in)
        except Unreadable as unreadable:
            errors.append(FieldError(name, str(unreadable), missing=not text))
            continue
        least = 0.0 if name in _MAY_BE_NONE else LEAST
        if not least <= sizes[name] <= 12:
            limits = f"{scale.length(least)} to {scale.length(12)}"
            errors.append(FieldError(name, f"{scale.length(sizes[name])} is outside {limits}."))
    return sizes, errors


def _count(raw: object, name: str, errors: "list[FieldError]") -> int:
    text = str(raw if raw is not None else "").strip()
    if text.isdigit() and 1 <= int(text) <= 40:
        return int(text)
    errors.append(FieldError(name, "A whole number from 1 to 40 will do."))
    return 1


def _along(
    way: "tuple[str, str, str, str]",
    sizes: "dict[str, float]",
    counts: "dict[str, int]",
    room: float,
    scale: Scale,
    errors: "list[FieldError]",
) -> "list[float]":
    count_name, first, size, gap = way
    count, start = counts[count_name], sizes[first]
    pitch = sizes[size] + sizes[gap]
    end = start + count * pitch - sizes[gap]
    if end > room + _SLACK:
        errors.append(
            FieldError(
                count_name,
                f"{count} labels end {scale.length(end)} from the paper's edge, "
                f"which is {scale.length(room)} away: check sizes and gaps.",
            )
        )
    return [start + at * pitch for at in range(count)]
