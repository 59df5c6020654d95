"""Reading a whole form, and inputs that repeat: walls of a room, boards of a stack."""

from .inputs import Choice, Input
from .lengths import Scale
from .reading import LONGEST, quoted
from .refusal import FieldError, Refusal
from .remembered import remember

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Field:
    """One input of a form as read.

    Attributes
    ----------
    asked : Input
        As it is asked, given the inputs before it.
    raw : object
        What was typed; None for nothing.
    value : object
        As read: inches, degrees, a number, a text, yes or no, rows.
    source : str
        ``typed``, ``carried``, ``default``, or empty where there is no value.
    errors : list of FieldError
        What is wrong with it, rows' fields included.
    rows : list of list of Field
        Of an input with rows: the fields of each row as it stands in the form.
    places : list of int
        Which of these rows count: a row that nobody filled is passed over where none is needed.
    said : dict or None
        What a screen is told of it, once that was said and where it stays the same.
    """

    def __init__(self, asked: Input, raw: object = None) -> None:
        self.asked = asked
        self.raw = raw
        self.value: Any = None
        self.source = ""
        self.errors: list[FieldError] = []
        self.rows: list[list[Field]] = []
        self.places: list[int] = []
        self.said: dict[str, Any] | None = None


_READ: "dict[tuple[Any, ...], Field]" = {}
"""Fields that were read lately, with all that their reading depends on; they stay as they are."""


class Reader:
    """Reads forms.

    Parameters
    ----------
    scale : Scale
        In which units bare numbers are read and messages speak.
    carried : dict
        Values that other questions give, by input: used where nothing is typed.
    forgiving : bool
        Set aside what this version doesn't understand, instead of refusing it: a form kept by
        another version is read so, a request to the API is not.
    """

    def __init__(
        self, scale: Scale, carried: "dict[str, Any] | None" = None, *, forgiving: bool = False
    ) -> None:
        self.scale = scale
        self.carried = carried or {}
        self.forgiving = forgiving
        self._manner = f"{scale.units} {scale.step} {scale.typed_in} {forgiving}"
        """How it reads, in a word."""
        self.before: dict[str, Any] = {}
        """Values of the inputs before the one that is being read."""

    def fields(
        self,
        inputs: "list[Input]",
        raw: "dict[str, Any]",
        before: "dict[str, Any] | None" = None,
    ) -> "list[Field]":
        """Return the fields that are asked for, in order, each with its value or errors.

        `before` holds the values of the inputs that stand before the rows these belong to.
        """
        values: dict[str, Any] = dict(before or {})
        fields = []
        for asked in inputs:
            values[asked.name] = None
            self.before = values
            if asked.applies(values):
                field = self._field(asked.given_earlier(values), raw)
                values[asked.name] = field.value
                fields.append(field)
        return fields

    def _field(self, asked: Input, raw: "dict[str, Any]") -> Field:
        said = said_for(asked, raw)
        if asked.name in self.carried or not _is_brief(said):
            return self._read(asked, said)
        key = (asked, said, self._manner)
        return _READ.get(key) or remember(_READ, key, self._read(asked, said))

    def _read(self, asked: Input, said: object) -> Field:
        field = Field(asked, said)
        if self.forgiving and has_lapsed(asked, field.raw):
            field.raw = None
        if asked.name in self.carried and holds_nothing(field.raw):
            field.raw = None
        if field.raw is not None:
            field.source = "typed"
            asked.read_into(field, self)
        elif asked.name in self.carried and not has_lapsed(asked, self.carried[asked.name]):
            field.source, field.raw = "carried", self.carried[asked.name]
            asked.read_into(field, self)
        elif asked.required:
            field.errors = [FieldError(asked.name, missing_words(asked), True)]
        elif asked.default is None:
            field.value = asked.nothing()
        else:
            field.source, field.value = "default", asked.read(asked.default, Scale())
        return field


def _is_brief(said: object) -> bool:
    """Tell whether nothing was given, or a text that is short; rows and numbers are neither."""
    return said is None or (isinstance(said, str) and len(said) <= LONGEST)


def said_for(asked: Input, raw: "dict[str, Any]") -> object:
    """Return what was given for an input under its name or an earlier one, or what others imply.

    None for nothing.
    """
    for name in asked.names:
        said = raw.get(name)
        if said is not None and said != "":
            return said
    return asked.implied(raw)


def holds_nothing(raw: object) -> bool:
    """Tell whether rows were given that nobody has filled."""
    return isinstance(raw, list) and not [
        row for row in raw if not isinstance(row, dict) or not is_blank(row)
    ]


def has_lapsed(asked: Input, raw: object) -> bool:
    """Tell whether a choice is not offered here: it has been replaced, or is its giver's alone."""
    return isinstance(asked, Choice) and raw is not None and not asked.offers_now(raw)


def values_of(inputs: "list[Input]", fields: "list[Field]") -> "dict[str, Any]":
    """Return every input's name with its value, its default, or None where it isn't asked."""
    values: dict[str, Any] = {asked.name: None for asked in inputs}
    values.update({field.asked.name: field.value for field in fields})
    return values


def read_form(inputs: "list[Input]", raw: "dict[str, Any]", scale: Scale) -> "list[Field]":
    """Read raw values against a list of inputs, strictly.

    Raises
    ------
    Refusal
        With an error for each field that is missing, unreadable or out of bounds, in the order of
        the inputs, and for each name that no input has.
    """
    fields = Reader(scale).fields(inputs, raw)
    errors = [error for field in fields for error in field.errors]
    errors += [
        FieldError(name, unknown_words(name)) for name in unknown_names(known_names(inputs), raw)
    ]
    if errors:
        raise Refusal.of(errors)
    return fields


def known_names(inputs: "list[Input]") -> "list[str]":
    """Return every name that some inputs are read under."""
    return [name for asked in inputs for name in asked.names]


def unknown_names(known: "list[str]", raw: "dict[str, Any]") -> "list[str]":
    """Return the names in `raw` that are not known."""
    return sorted([str(name) for name in raw if name not in known])


def missing_words(asked: Input) -> str:
    """Return the sentence for a required input that was not given."""
    return f"{asked.label} is needed."


def unknown_words(name: str) -> str:
    """Return the sentence for a name that no input has."""
    return f"{quoted(name)} is not asked for here."


def places_of(fields: "list[Field]") -> "dict[str, list[int]]":
    """Return for each input with rows where those that count stand in the form."""
    return {field.asked.name: field.places for field in fields if field.places}


def is_blank(row: "dict[str, Any]") -> bool:
    """Tell whether nobody has put anything into a row yet."""
    return not [value for value in row.values() if value not in (None, "")]


class Rows(Input):
    """A group of inputs given once or more: `row` names one of them, as in "Add a wall".

    `kept` names a list that belongs to the person, not to one question (what the tape said at
    the yard): the phone keeps it once and gives it to every tool that asks for it by that name.

    `pieces` says that the rows can be pieces of a job, and which column holds what of a piece:
    pairs of a column and ``length``, ``width``, ``thickness``, ``count``, ``tag``, ``made_of``
    or ``species``. With `surfaces` they are what the job's pieces and doors have to be coated.
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
        pieces: "tuple[tuple[str, str], ...]" = (),
        surfaces: bool = False,
        **rest: "Any",
    ) -> None:
        self.columns = columns
        self.names_of_columns = known_names(columns)
        self.row = row
        self.kept = kept
        self.pieces = pieces
        self.surfaces = surfaces
        self.takes = "pieces" if pieces or surfaces else ""
        self.least = least
        self.most = most
        super().__init__(name, label, optional=least == 0, **rest)

    def nothing(self) -> "Any":
        return []

    def read_into(self, field: "Any", reader: "Any") -> None:
        raw = field.raw
        if not isinstance(raw, list) or [row for row in raw if not isinstance(row, dict)]:
            field.errors = [FieldError(self.name, f"{self.label} needs a list of rows.")]
            return
        before = dict(reader.before)
        field.rows = [reader.fields(self.columns, row, before) for row in raw]
        spare = [at for at, row in enumerate(raw) if self.least == 0 and is_blank(row)]
        field.places = [at for at in range(len(raw)) if at not in spare]
        number = len(field.places)
        if not self.least <= number <= self.most:
            field.errors = [FieldError(self.name, self._number_words(number), number == 0)]
            return
        field.value = [values_of(self.columns, field.rows[at]) for at in field.places]
        for at in field.places:
            field.errors.extend(self._row_errors(at, raw[at], field.rows[at], reader))

    def _row_errors(
        self, at: int, raw: "dict[str, Any]", row: "list[Field]", reader: "Any"
    ) -> "list[FieldError]":
        errors = [error for field in row for error in field.errors]
        if not reader.forgiving:
            names = unknown_names(self.names_of_columns, raw)
            errors = errors + [FieldError(name, unknown_words(name)) for name in names]
        return [error.under(f"{self.name}.{at}") for error in errors]

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
