"""What a tool can ask for in numbers: lengths, angles, numbers and counts, within bounds."""

from .inputs import Input
from .lengths import (
    Scale,
    exactly,
    read_angle,
    read_count,
    read_length,
    read_number,
    show_angle,
    show_number,
)
from .reading import Unreadable

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

NUMBER_TYPES = (int, float)


class Bounds:
    """Limits of a number: `above` and `below` stay out, `least` and `most` are still in."""

    def __init__(
        self,
        above: "float | None" = None,
        least: "float | None" = None,
        below: "float | None" = None,
        most: "float | None" = None,
    ) -> None:
        self.above = above
        self.least = least
        self.below = below
        self.most = most

    def complaint(self, value: float) -> "tuple[str, float] | None":
        """Return the words and the limit that `value` breaks, or None."""
        if self.above is not None and value <= self.above:
            return "must be greater than", self.above
        if self.least is not None and value < self.least:
            return "must be at least", self.least
        if self.below is not None and value >= self.below:
            return "must be less than", self.below
        if self.most is not None and value > self.most:
            return "must be at most", self.most
        return None


class _Measured(Input):
    """An input whose value is a number within bounds.

    With `default_by`, ``(input, {value: default})``, a length or an angle takes its default from
    what that earlier choice says; it is then optional.
    """

    def __init__(
        self,
        name: str,
        label: str,
        bounds: Bounds,
        *,
        default_by: "tuple[str, dict[str, object]] | None" = None,
        **rest: "Any",
    ) -> None:
        self.bounds = bounds
        self.default_by = default_by
        self.rest = rest
        if default_by is not None:
            rest["optional"] = True
        super().__init__(name, label, **rest)

    def given_earlier(self, earlier: "dict[str, Any]") -> "Input":
        if self.default_by is None:
            return self
        name, defaults = self.default_by
        chosen = earlier.get(name)
        if chosen not in defaults:
            return self
        rest = {key: value for key, value in self.rest.items() if key != "default_text"}
        rest["default"] = defaults[chosen]
        return self.within(self.bounds, rest)

    def within(self, bounds: Bounds, rest: "dict[str, Any]") -> "Input":
        """Return this input again, with `rest` as its other parameters."""
        kind: Any = self.__class__
        limits = {"above": bounds.above, "least": bounds.least, "below": bounds.below}
        again: Input = kind(self.name, self.label, most=bounds.most, **limits, **rest)
        return again

    def read(self, raw: object, scale: Scale) -> "Any":
        value = self.number_of(raw, scale)
        broken = self.bounds.complaint(value)
        if broken:
            words, limit = broken
            raise Unreadable(
                f"{self.label} {words} {self.show(limit, scale)}: "
                f"{self.show(value, scale)} can't be."
            )
        return value

    def number_of(self, raw: object, scale: Scale) -> float:
        """Return a raw value as a number: JSON numbers as they are, texts read."""
        if isinstance(raw, bool):
            raise Unreadable(f"{self.label} needs {self.wanted()}, not yes or no.")
        if isinstance(raw, NUMBER_TYPES):
            if not -1e15 < raw < 1e15:
                raise Unreadable(f"{self.label} needs {self.wanted()} of a size that can be used.")
            return float(raw)
        if isinstance(raw, str):
            return self.parse(raw, scale)
        raise Unreadable(f"{self.label} needs {self.wanted()}.")

    def parse(self, text: str, scale: Scale) -> float:
        """Return the number that `text` says."""
        raise NotImplementedError

    def show(self, value: float, scale: Scale) -> str:
        """Return `value` as it is written in sentences."""
        raise NotImplementedError

    def wanted(self) -> str:
        """Return what is asked for, as a noun."""
        return "a number"


def is_typed_in(raw: object) -> bool:
    """Tell whether a length comes as a text with the units its bare numbers were typed in."""
    if not isinstance(raw, dict):
        return False
    return isinstance(raw.get("text"), str) and raw.get("units") in ("in", "mm")


class Length(_Measured):
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
        if is_typed_in(raw):
            typed: Any = raw
            scale = Scale(scale.units, scale.step, typed["units"])
            return super().number_of(typed["text"], scale)
        return super().number_of(raw, scale)

    def parse(self, text: str, scale: Scale) -> float:
        return read_length(text, scale.typed_in)

    def show(self, value: float, scale: Scale) -> str:
        return scale.finer().length(value)

    def show_default(self) -> str:
        return "" if self.default is None else exactly(self.read(self.default, Scale()))

    def wanted(self) -> str:
        return "a length"


class Angle(_Measured):
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


class Number(_Measured):
    """A plain number, in `unit`; 0 or more unless said otherwise.

    With ``takes="board feet"`` a job fills it with what its pieces of a stock measure.
    """

    kind = "number"

    def __init__(
        self,
        name: str,
        label: str,
        *,
        unit: str = "",
        above: "float | None" = None,
        least: "float | None" = None,
        most: float = 1000000.0,
        takes: str = "",
        **rest: "Any",
    ) -> None:
        if above is None and least is None:
            least = 0.0
        self.unit = unit
        self.takes = takes
        super().__init__(name, label, Bounds(above, least, None, most), **rest)

    def parse(self, text: str, scale: Scale) -> float:
        return read_number(text)

    def show(self, value: float, scale: Scale) -> str:
        return show_number(value, 3)


class Count(_Measured):
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
