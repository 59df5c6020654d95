"""What stands in a field: as typed, as carried from another question, or as its default is used."""

from .amounts import amount_words, in_units, places_of, split_unit, unit_of
from .entry import marked
from .inputs import Choice, Flag
from .lengths import Scale, exactly, show_angle, show_number
from .measured import Angle, Length, Number, has_two_units, is_typed_in

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
        foreign = has_two_units(asked) and scale.typed_in != scale.units
        return _marked(asked, raw, scale.typed_in) if foreign else raw
    if is_typed_in(raw):
        typed: Any = raw
        own = typed["units"] == scale.units
        return str(typed["text"]) if own else _marked(asked, typed["text"], typed["units"])
    return _number_text(asked, raw, scale)


def _marked(asked: "Input", text: str, units: str) -> str:
    """Return a typed text with the unit of its bare numbers written out."""
    if not isinstance(asked, Number):
        return marked(text, units)
    return text if split_unit(text, asked.measure)[1] else f"{text} {unit_of(asked.measure, units)}"


def unit_shown(field: "Field", scale: Scale) -> str:
    """Return the unit that stands behind what a field shows; empty where the text carries one."""
    asked = field.asked
    if not isinstance(asked, Number) or not asked.measure:
        return asked.unit
    text = shown(field, scale)
    return "" if split_unit(text, asked.measure)[1] else unit_of(asked.measure, scale.units)


def differing(field: "Field", carried: "dict[str, Any]", scale: Scale) -> "dict[str, str] | None":
    """Return what another question gives where something else was typed, else None."""
    value, typed = carried["value"], field.value
    if isinstance(value, (int, float)) and isinstance(typed, (int, float)):
        if abs(value - typed) < SAME:
            return None
        return {"text": _carried_words(field.asked, value, scale), "from": carried["from"]}
    if typed is None or typed == value:
        return None
    words = dict(field.asked.choices) if isinstance(field.asked, Choice) else {}
    return {"text": str(words.get(value, value)), "from": carried["from"]}


def _carried_words(asked: "Input", value: "Any", scale: Scale) -> str:
    """Return a carried number as a sentence says it."""
    if isinstance(asked, Number) and asked.measure:
        return amount_words(value, asked.measure, scale.units)
    return _carried_text(asked, value, scale)


def _carried_text(asked: "Input", value: "Any", scale: Scale) -> str:
    """Return a carried number as it is worked with, as coarse as it can be said."""
    if isinstance(asked, Length):
        return scale.number(value)
    if isinstance(asked, Number) and asked.measure:
        number = in_units(value, asked.measure, scale.units)
        return show_number(number, places_of(number))
    return _number_text(asked, value, scale)


def _number_text(asked: "Input", value: "Any", scale: Scale) -> str:
    if isinstance(asked, Length):
        text = exactly(value)
        return text[:-1] if scale.units == "in" else text
    if isinstance(asked, Number) and asked.measure:
        return show_number(in_units(value, asked.measure, scale.units), 4)
    return show_angle(value) if isinstance(asked, Angle) else show_number(value, 6)


def empty_text(asked: "Input") -> str:
    """Return what stands in a field that nothing was put into: the default as it is used."""
    return asked.default_text or asked.show_default()
