"""What inputs of numbers share: bounds, defaults that follow a choice, reading with complaints."""

from .inputs import Input
from .lengths import Scale
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


class Measured(Input):
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
        if chosen not in self._cases:
            rest = {key: value for key, value in self.rest.items() if key != "default_text"}
            rest["default"] = defaults[chosen]
            self._cases[chosen] = self.within(self.bounds, rest)
        return self._cases[chosen]

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
