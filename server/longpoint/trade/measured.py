"""What a tool can ask for in numbers: lengths, angles, numbers and counts, within bounds."""

from .amounts import MEASURES, amount_words, read_amount
from .bounded import Bounds, Measured
from .inputs import Input
from .lengths import (
    Scale,
    exactly,
    read_length,
    show_angle,
    show_number,
)
from .measure import read_angle, read_count, read_number
from .reading import Unreadable, without_thousands

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def is_typed_in(raw: object) -> bool:
    """Tell whether a length comes as a text with the units its bare numbers were typed in."""
    if not isinstance(raw, dict):
        return False
    return isinstance(raw.get("text"), str) and raw.get("units") in ("in", "mm")


class Length(Measured):
    """A length, in inches once read; more than 0 and at most 1000 feet unless said otherwise.

    It comes as a number of inches, as a text in the units of the form, or as an object with a
    `text` and the `units` it was typed in, where those are others than the form's.
    """

    kind = "length"

    def __init__(
        self,
        name: str,
        label: str,
        *,
        above: "float | None" = None,
        least: "float | None" = None,
        below: "float | None" = None,
        most: float = 12000.0,
        **rest: "Any",
    ) -> None:
        if above is None and least is None:
            above = 0.0
        super().__init__(name, label, Bounds(above, least, below, most), **rest)

    def number_of(self, raw: object, scale: Scale) -> float:
        if isinstance(raw, str):
            return self.parse(raw, scale)
        if is_typed_in(raw):
            typed: Any = raw
            return self.parse(typed["text"], Scale(scale.units, scale.step, typed["units"]))
        return super().number_of(raw, scale)

    def parse(self, text: str, scale: Scale) -> float:
        return read_length(text, scale.typed_in)

    def show(self, value: float, scale: Scale) -> str:
        return scale.finer().length(value)

    def show_default(self) -> str:
        return "" if self.default is None else exactly(self.read(self.default, Scale()))

    def wanted(self) -> str:
        return "a length"


class Angle(Measured):
    """An angle, in degrees once read; 0 to 180 exclusive unless said otherwise.

    With `slide` a screen offers to drag it, from `least` to `most`, and the drawing follows.
    """

    kind = "angle"

    def __init__(
        self,
        name: str,
        label: str,
        *,
        above: "float | None" = None,
        least: "float | None" = None,
        below: "float | None" = None,
        most: "float | None" = None,
        slide: bool = False,
        **rest: "Any",
    ) -> None:
        low = above if above is not None or least is not None else 0.0
        high = below if below is not None or most is not None else 180.0
        if slide and (least is None or most is None):
            raise ValueError(f"{name} slides: give it least and most.")
        self.slide = slide
        super().__init__(name, label, Bounds(low, least, high, most), **rest)

    def declare(self) -> "dict[str, object]":
        declared = super().declare()
        bounds = {"from": self.bounds.least, "to": self.bounds.most}
        declared["slide"] = bounds if self.slide else None
        return declared

    def parse(self, text: str, scale: Scale) -> float:
        return read_angle(text)

    def show(self, value: float, scale: Scale) -> str:
        return show_angle(value)

    def show_default(self) -> str:
        return "" if self.default is None else show_angle(self.read(self.default, Scale()))

    def wanted(self) -> str:
        return "an angle"


class Number(Measured):
    """A plain number, in `unit`; 0 or more unless said otherwise.

    With ``takes="board feet"`` a job fills it with what its pieces of a stock measure. With a
    `measure`, one of `amounts.MEASURES`, it has two systems of units, as a length has: `unit` is
    then the measure's own, and a text may come with the units that it was typed in.
    """

    kind = "number"

    def __init__(
        self,
        name: str,
        label: str,
        *,
        unit: str = "",
        measure: str = "",
        above: "float | None" = None,
        least: "float | None" = None,
        most: float = 1000000.0,
        takes: str = "",
        **rest: "Any",
    ) -> None:
        if above is None and least is None:
            least = 0.0
        self.measure = measure
        self.unit = MEASURES[measure].unit if measure else unit
        self.takes = takes
        super().__init__(name, label, Bounds(above, least, None, most), **rest)

    def number_of(self, raw: object, scale: Scale) -> float:
        if self.measure and is_typed_in(raw):
            typed: Any = raw
            return self.number_of(typed["text"], Scale(scale.units, scale.step, typed["units"]))
        return super().number_of(raw, scale)

    def parse(self, text: str, scale: Scale) -> float:
        if self.measure:
            return read_amount(text, self.measure, scale.typed_in)
        if self.unit == "$":
            return read_number(without_thousands(text), "$")
        return read_number(text, "%" if self.unit == "%" else "")

    def show(self, value: float, scale: Scale) -> str:
        if self.measure:
            return amount_words(value, self.measure, scale.units, 3)
        return show_number(value, 3)

    def show_default(self) -> str:
        if self.measure and self.default is not None:
            return amount_words(self.read(self.default, Scale()), self.measure, "in", 3)
        return super().show_default()

    def declare(self) -> "dict[str, object]":
        declared = super().declare()
        if self.measure:
            declared["metric"] = MEASURES[self.measure].metric
        return declared


def has_two_units(asked: Input) -> bool:
    """Tell whether a bare number typed for an input means what the units in force say."""
    return isinstance(asked, Length) or (isinstance(asked, Number) and asked.measure != "")


class Count(Measured):
    """A whole number; 1 to 1000 unless said otherwise."""

    kind = "count"

    def __init__(
        self, name: str, label: str, *, least: int = 1, most: int = 1000, **rest: "Any"
    ) -> None:
        super().__init__(name, label, Bounds(None, least, None, most), **rest)

    def number_of(self, raw: object, scale: Scale) -> int:
        value = super().number_of(raw, scale)
        if value != int(value):
            raise Unreadable(f"{self.label} is a count: {show_number(value, 3)} is not whole.")
        return int(value)

    def parse(self, text: str, scale: Scale) -> float:
        return read_count(text)

    def show(self, value: float, scale: Scale) -> str:
        return str(int(value))

    def wanted(self) -> str:
        return "a whole number"
