"""Reading a whole form, and inputs that repeat: walls of a room, boards of a stack."""

from .inputs import Input, condition_holds
from .lengths import Scale
from .reading import quoted
from .refusal import FieldError

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


def read_form(
    inputs: "list[Input]", raw: "dict[str, Any]", scale: Scale
) -> "tuple[dict[str, Any], list[FieldError]]":
    """Read raw values against a list of inputs.

    Returns
    -------
    values : dict
        Every input's name with its value, its default, or None.
    errors : list of FieldError
        In the order of the inputs, unknown names last.
    """
    values: dict[str, Any] = {}
    errors: list[FieldError] = []
    for asked in inputs:
        values[asked.name], wrong = read_one(asked, raw, values, scale)
        errors.extend(wrong)
    known = [asked.name for asked in inputs]
    unknown = sorted([str(name) for name in raw if name not in known])
    errors.extend([FieldError(name, unknown_words(name)) for name in unknown])
    return values, errors


def read_one(
    asked: Input, raw: "dict[str, Any]", earlier: "dict[str, Any]", scale: Scale
) -> "tuple[Any, list[FieldError]]":
    """Return one input's value and what is wrong with it."""
    if not condition_holds(asked.only_when, earlier):
        return None, []
    asked = asked.given_earlier(earlier)
    said = raw.get(asked.name)
    if said is None or said == "":
        if asked.required:
            return None, [FieldError(asked.name, missing_words(asked), True)]
        if asked.default is None:
            return asked.nothing(), []
        return asked.read(asked.default, Scale()), []
    return asked.errors(said, scale)


def missing_words(asked: Input) -> str:
    """Return the sentence for a required input that was not given."""
    return f"{asked.label} is needed."


def unknown_words(name: str) -> str:
    """Return the sentence for a name that no input has."""
    return f"{quoted(name)} is not asked for here."


class Rows(Input):
    """A group of inputs given once or more: `row` names one of them, as in "Add a wall".

    `kept` names a list that belongs to the person, not to one question (what the tape said at
    the yard): the phone keeps it once and gives it to every tool that asks for it by that name.
    """

    kind = "rows"

    def __init__(
        self,
        name: str,
        label: str,
        columns: "list[Input]",
        *,
        row: str = "row",
        least: int = 1,
        most: int = 40,
        kept: str = "",
        **rest: "Any",
    ) -> None:
        self.columns = columns
        self.row = row
        self.kept = kept
        self.least = least
        self.most = most
        super().__init__(name, label, optional=least == 0, **rest)

    def nothing(self) -> "Any":
        return []

    def errors(self, raw: object, scale: Scale) -> "tuple[Any, list[FieldError]]":
        if not isinstance(raw, list) or [row for row in raw if not isinstance(row, dict)]:
            return None, [FieldError(self.name, f"{self.label} needs a list of rows.")]
        if not self.least <= len(raw) <= self.most:
            return None, [FieldError(self.name, self._number_words(len(raw)), len(raw) == 0)]
        rows, wrong = [], []
        for index, row in enumerate(raw):
            values, errors = read_form(self.columns, row, scale)
            rows.append(values)
            wrong.extend([error.under(f"{self.name}.{index}") for error in errors])
        return rows, wrong

    def _number_words(self, number: int) -> str:
        if number < self.least:
            return f"{self.label}: at least {self.least} needed, {number} given."
        return f"{self.label}: {number} given, {self.most} at most."

    def declare(self) -> "dict[str, object]":
        declared = super().declare()
        declared["columns"] = [column.declare() for column in self.columns]
        declared["row"] = self.row
        declared["kept"] = self.kept
        declared["min_rows"] = self.least
        declared["max_rows"] = self.most
        return declared
