"""What a tool is given: the inputs of its question as read."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Given:
    """The inputs of one question as read: the tool asks for each by name and kind.

    Lengths are inches, angles degrees. An input that was not asked for, or not given and without
    a default, is None: ask for those with `maybe`.

    >>> given = Given({"width": 27.5, "sides": 4, "reveal": None})
    >>> given.number("width"), given.count("sides"), given.maybe("reveal")
    (27.5, 4, None)
    """

    def __init__(self, values: "dict[str, Any]") -> None:
        self.values = values

    def number(self, name: str) -> float:
        """Return a length, angle or number that is certainly there."""
        return float(self.values[name])

    def maybe(self, name: str) -> "float | None":
        """Return a length, angle or number, or None."""
        value = self.values[name]
        return None if value is None else float(value)

    def count(self, name: str) -> int:
        """Return a whole number that is certainly there."""
        return int(self.values[name])

    def maybe_count(self, name: str) -> "int | None":
        """Return a whole number, or None."""
        value = self.values[name]
        return None if value is None else int(value)

    def text(self, name: str) -> str:
        """Return a text or the value of a choice; "" where none was given."""
        return self.values[name] or ""

    def flag(self, name: str) -> bool:
        """Return a yes or no; no where it was not asked."""
        return bool(self.values[name])

    def rows(self, name: str) -> "list[Given]":
        """Return the rows of a repeated group, in order."""
        return [Given(row) for row in self.values[name] or []]
