"""What a JSON document may hold: shapes that check a value and publish themselves as JSON Schema.

Names that a shape doesn't know are left as they are: they survive a round trip.
"""

from ..lengths import show_number
from ..reading import LONGEST, quoted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

LARGEST = 1e12
"""No number of a job is larger."""


class Shape:
    """One kind of value."""

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        """Return what is wrong with a value: pairs of a path and a sentence.

        `known` is a value found right before; the parts of it that the value holds are not looked
        at again.
        """
        raise NotImplementedError

    def schema(self) -> "dict[str, Any]":
        """Return the same as JSON Schema, draft 2020-12."""
        raise NotImplementedError


class Words(Shape):
    """A text of at most so many characters."""

    def __init__(self, most: int = 200, least: int = 0) -> None:
        self.most = most
        self.least = least

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        if not isinstance(value, str):
            return [(path, "A text is needed here.")]
        if not self.least <= len(value) <= self.most:
            return [(path, f"{len(value)} characters: {self.least} to {self.most} will do.")]
        return []

    def schema(self) -> "dict[str, Any]":
        return {"type": "string", "minLength": self.least, "maxLength": self.most}


class Numeral(Shape):
    """A number between two limits, whole where asked for."""

    def __init__(
        self, least: float = -LARGEST, most: float = LARGEST, *, whole: bool = False
    ) -> None:
        self.least = least
        self.most = most
        self.whole = whole

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            return [(path, "A number is needed here.")]
        if not self.least <= value <= self.most:
            limits = f"{show_number(self.least)} to {show_number(self.most)}"
            return [(path, f"Outside {limits}.")]
        if self.whole and value != int(value):
            return [(path, "A whole number is needed here.")]
        return []

    def schema(self) -> "dict[str, Any]":
        kind = "integer" if self.whole else "number"
        return {"type": kind, "minimum": self.least, "maximum": self.most}


class Typed(Numeral):
    """A number between two limits, or a text as typed that is read as a number where it is used."""

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        if isinstance(value, str):
            return Words(LONGEST).faults(value, path)
        return super().faults(value, path, known)

    def schema(self) -> "dict[str, Any]":
        return {"anyOf": [super().schema(), Words(LONGEST).schema()]}


class OneOf(Shape):
    """One of a few texts or numbers."""

    def __init__(self, *values: object) -> None:
        self.values = values

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        if isinstance(value, (str, int, float)) and not isinstance(value, bool):
            if value in self.values:
                return []
            said = quoted(value) if isinstance(value, str) else str(value)
            return [(path, f"{said} is none of {', '.join([str(each) for each in self.values])}.")]
        return [(path, "A text or a number is needed here.")]

    def schema(self) -> "dict[str, Any]":
        return {"enum": list(self.values)}


class Anything(Shape):
    """A value that is not looked into here: inputs are read by their tool."""

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        return []

    def schema(self) -> "dict[str, Any]":
        return {}


class ListOf(Shape):
    """A list of at most so many values of one shape; with `by_id` each has an id of its own."""

    def __init__(self, one: Shape, most: int, what: str, *, by_id: bool = False) -> None:
        self.one = one
        self.most = most
        self.what = what
        self.by_id = by_id

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        if not isinstance(value, list):
            return [(path, "A list is needed here.")]
        if len(value) > self.most:
            return [(path, f"{len(value)} {self.what}: a job holds {self.most} at most.")]
        if value is known:
            return []
        before = known if isinstance(known, list) else []
        faults: list[tuple[str, str]] = []
        for at, each in enumerate(value):
            same = before[at] if at < len(before) else None
            if each is not same or each is None:
                faults.extend(self.one.faults(each, f"{path}.{at}", same))
        return faults + (self._twice(value, path) if self.by_id else [])

    def _twice(self, value: "list[Any]", path: str) -> "list[tuple[str, str]]":
        seen: dict[str, bool] = {}
        faults = []
        for at, each in enumerate(value):
            own = each.get("id") if isinstance(each, dict) else None
            if isinstance(own, str) and own in seen:
                faults.append((f"{path}.{at}.id", f"{quoted(own)} is the id of another one too."))
            elif isinstance(own, str):
                seen[own] = True
        return faults

    def schema(self) -> "dict[str, Any]":
        return {"type": "array", "items": self.one.schema(), "maxItems": self.most}


class Thing(Shape):
    """An object with known keys; the names in `needs` must be there."""

    def __init__(self, keys: "list[tuple[str, Shape]]", needs: "tuple[str, ...]" = ()) -> None:
        self.keys = keys
        self.needs = needs

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        if not isinstance(value, dict):
            return [(path, "An object is needed here.")]
        if value is known:
            return []
        right = known if isinstance(known, dict) else {}
        before = path + "." if path else ""
        faults = [(before + name, "This is needed.") for name in self.needs if name not in value]
        for name, shape in self.keys:
            if name in value:
                faults.extend(shape.faults(value[name], before + name, right.get(name)))
        return faults

    def schema(self) -> "dict[str, Any]":
        properties = {name: shape.schema() for name, shape in self.keys}
        return {"type": "object", "properties": properties, "required": list(self.needs)}


class EitherOf(Thing):
    """An object that says one or more of some keys."""

    def __init__(self, keys: "list[tuple[str, Shape]]", one_of: "tuple[str, ...]") -> None:
        super().__init__(keys)
        self.one_of = one_of

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        faults = super().faults(value, path, known)
        if isinstance(value, dict) and not [name for name in self.one_of if name in value]:
            faults.append((path, f"{' or '.join(self.one_of)} is needed."))
        return faults

    def schema(self) -> "dict[str, Any]":
        schema = super().schema()
        del schema["required"]
        schema["anyOf"] = [{"required": [name]} for name in self.one_of]
        return schema


class MapOf(Shape):
    """An object whose names are anything and whose values have one shape."""

    def __init__(self, one: Shape, most: int = 200) -> None:
        self.one = one
        self.most = most

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        if not isinstance(value, dict):
            return [(path, "An object is needed here.")]
        if value is known:
            return []
        if len(value) > self.most:
            return [(path, f"{len(value)} names: {self.most} at most.")]
        return [
            fault
            for name in sorted(value)
            for fault in self.one.faults(value[name], path + "." + name)
        ]

    def schema(self) -> "dict[str, Any]":
        schema = self.one.schema()
        return {"type": "object", "additionalProperties": schema, "maxProperties": self.most}


class Maybe(Shape):
    """A value of a shape, or null."""

    def __init__(self, one: Shape) -> None:
        self.one = one

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        return [] if value is None else self.one.faults(value, path, known)

    def schema(self) -> "dict[str, Any]":
        return {"anyOf": [self.one.schema(), {"type": "null"}]}
