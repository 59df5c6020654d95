"""What stands in a field: as typed, as carried from another question, or as its default is used."""

from .entry import marked
from .inputs import Choice, Flag
from .lengths import Scale, exactly, show_angle, show_number
from .measured import Angle, Length, is_typed_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .inputs import Input
    from .rows import Field

SAME = 0.0005
"""A typed number this near to a carried one is the same to every rule and saw."""


def shown(field: "Field", scale: Scale) -> str:
    """Return what stands in a field: as typed, with its unit where that is not in force."""
    asked, raw = field.asked, field.raw
    if isinstance(asked, Choice):
        return dict(asked.choices).get(field.value, "")
    if isinstance(asked, Flag):
        return "yes" if field.value else "no"
    if raw is None or isinstance(raw, list):
        return ""
    if field.source == "carried":
        return _carried_text(asked, field.value, scale)
    if isinstance(raw, str):
        foreign = isinstance(asked, Length) and scale.typed_in != scale.units
        return marked(raw, scale.typed_in) if foreign else raw
    if is_typed_in(raw):
        typed: Any = raw
        own = typed["units"] == scale.units
        return str(typed["text"]) if own else marked(typed["text"], typed["units"])
    return _number_text(asked, raw, scale)


def differing(field: "Field", carried: "dict[str, Any]", scale: Scale) -> "dict[str, str] | None":
    """Return what another question gives where something else was typed, else None."""
    value, typed = carried["value"], field.value
    if isinstance(value, (int, float)) and isinstance(typed, (int, float)):
        if abs(value - typed) < SAME:
            return None
        return {"text": _carried_text(field.asked, value, scale), "from": carried["from"]}
    if typed is None or typed == value:
        return None
    words = dict(field.asked.choices) if isinstance(field.asked, Choice) else {}
    return {"text": str(words.get(value, value)), "from": carried["from"]}


def _carried_text(asked: "Input", value: "Any", scale: Scale) -> str:
    """Return a carried number as it is worked with, as coarse as it can be said."""
    if isinstance(asked, Length):
        return scale.number(value)
    return _number_text(asked, value, scale)


def _number_text(asked: "Input", value: "Any", scale: Scale) -> str:
    if isinstance(asked, Length):
        text = exactly(value)
        return text[:-1] if scale.units == "in" else text
    return show_angle(value) if isinstance(asked, Angle) else show_number(value, 6)


def empty_text(asked: "Input") -> str:
    """Return what stands in a field that nothing was put into: the default as it is used."""
    return asked.default_text or asked.show_default()
