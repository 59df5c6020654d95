"""The form of a tool as a screen needs it: what each field asks, says and comes to.

A screen keeps what was typed and shows what stands here; it knows no condition, no default and no
unit. Keys that say nothing (an empty text, no choices of its own) are left out of a field.
"""

from .entry import inch_split, is_unfinished
from .inputs import Choice, Flag, Text
from .lengths import Scale
from .measured import Angle, Length, has_two_units, is_typed_in
from .refusal import FieldError
from .rows import Field, Reader, Rows, known_names, unknown_names
from .shown import differing, empty_text, shown, unit_shown
from .waiting import waits_for

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .inputs import Input
    from .tool import Tool

LONGEST_TEXT = 200
"""Characters of a text that a form keeps; no field needs so many."""


class Form:
    """One tool's form, read forgivingly.

    Parameters
    ----------
    tool : Tool
    raw : dict
        Inputs as typed and kept, perhaps by another version of the form, perhaps damaged.
    scale : Scale
        Units the form was typed in, units and step to show.
    version : int
        Of the form that kept the inputs.
    carried : dict
        By input: ``{"value": ..., "from": title}``, what another question gives.
    """

    def __init__(
        self,
        tool: "Tool",
        raw: object,
        scale: Scale,
        version: int = 0,
        carried: "dict[str, Any] | None" = None,
    ) -> None:
        self.tool = tool
        self.scale = scale
        self.other = scale.other()
        self.carried = carried or {}
        self.aside: list[dict[str, Any]] = []
        given = raw if isinstance(raw, dict) else {}
        kept = tool.upgraded(given, version or tool.version)
        self.inputs = self._understood(tool.inputs, known_names(tool.inputs), kept, "")
        self.is_changed = self.inputs != given
        values = {name: each["value"] for name, each in self.carried.items()}
        reader = Reader(scale, values, forgiving=True)
        self.fields = reader.fields(tool.inputs, self.inputs)

    def errors(self) -> "list[FieldError]":
        """Return what is wrong with the fields, in their order."""
        return [error for field in self.fields for error in field.errors]

    def _understood(
        self, inputs: "list[Input]", known: "list[str]", raw: "dict[str, Any]", path: str
    ) -> "dict[str, Any]":
        """Return what this version can use; the rest is set aside under its path."""
        for name in unknown_names(known, raw):
            self._set_aside(path + name, raw[name])
        kept: dict[str, Any] = {}
        for asked in inputs:
            for name in asked.names:
                if name in raw and asked.name not in kept:
                    self._keep(kept, asked, raw[name], path)
        return kept

    def _keep(self, kept: "dict[str, Any]", asked: "Input", value: object, path: str) -> None:
        if isinstance(asked, Rows):
            rows = value if isinstance(value, list) else []
            if rows is not value:
                self._set_aside(path + asked.name, value)
            kept[asked.name] = self._rows(asked, rows)
        elif could_be_typed(asked, value):
            kept[asked.name] = value
        else:
            self._set_aside(path + asked.name, value)

    def _rows(self, asked: Rows, rows: "list[Any]") -> "list[dict[str, Any]]":
        kept: list[dict[str, Any]] = []
        typed = [each.name for each in asked.columns if not isinstance(each, Flag)]
        for at, row in enumerate(rows):
            path = f"{asked.name}.{at}"
            if len(kept) < asked.most and _is_all_typed(row, typed):
                kept.append(row)
            elif isinstance(row, dict) and len(kept) < asked.most:
                kept.append(
                    self._understood(asked.columns, asked.names_of_columns, row, path + ".")
                )
            else:
                self._set_aside(path, row)
        return kept

    def _set_aside(self, path: str, value: object) -> None:
        self.aside.append({"path": path, "value": value})

    def to_json(
        self, active: str = "", errors: "list[FieldError] | None" = None
    ) -> "dict[str, Any]":
        """Return the form's part of the contract's JSON object.

        Parameters
        ----------
        active : str
            Path of the field in hand; it comes with what the pad needs.
        errors : list of FieldError
            Those to show: the form's own, or the tool's where it refused.
        """
        told = self.errors() if errors is None else errors
        at = {error.field: error for error in reversed(told)}
        paths = self._paths() if told else []
        reply: dict[str, Any] = {
            "version": self.tool.version,
            "fields": [self._field(field, "", at, active) for field in self.fields],
            "stray": [error.message for error in told if error.field not in paths],
            "waiting": waits_for(self.tool, told),
            "aside": self.aside,
        }
        if self.is_changed:
            reply["inputs"] = self.inputs
        return reply

    def _paths(self) -> "list[str]":
        paths = []
        for field in self.fields:
            name = field.asked.name
            paths.append(name)
            for at, row in enumerate(field.rows):
                paths.append(f"{name}.{at}")
                paths.extend([f"{name}.{at}.{each.asked.name}" for each in row])
        return paths

    def _field(
        self, field: Field, before: str, errors: "dict[str, FieldError]", active: str
    ) -> "dict[str, Any]":
        asked, path = field.asked, before + field.asked.name
        hangs_on_more = path == active or path in errors or asked.name in self.carried
        # The words that a list offers for a text are in other fields.
        is_listed = isinstance(asked, Text) and asked.listed
        if hangs_on_more or field.rows or is_listed:
            return self._said(field, before, errors, active)
        if field.said is None:
            field.said = self._said(field, before, errors, active)
        return field.said

    def _said(
        self, field: Field, before: str, errors: "dict[str, FieldError]", active: str
    ) -> "dict[str, Any]":
        asked, path = field.asked, before + field.asked.name
        said: dict[str, Any] = {"name": asked.name}
        _put(said, "shown", shown(field, self.scale))
        _put(said, "empty", empty_text(asked))
        if has_two_units(asked) and unit_shown(field, self.scale) != asked.unit:
            said["unit"] = unit_shown(field, self.scale)
        if isinstance(asked, Choice):
            _put(said, "chosen", field.value)
            _put(said, "choices", options(asked) if asked.narrowed else None)
        if isinstance(asked, Text):
            own = self._listed(asked)
            _put(said, "offers", own + [words for words, _ in asked.offers if words not in own])
        if isinstance(asked, Angle) and asked.slide:
            said["at"] = field.value
        _put(said, "from", field.source)
        _put(said, "changed", field.source == "typed" and field.raw != asked.default)
        if field.source == "carried":
            said["of"] = self.carried[asked.name]["from"]
        if not before and asked.name in self.carried and field.source == "typed":
            _put(said, "carried", differing(field, self.carried[asked.name], self.scale))
        if isinstance(asked, Length) and field.value is not None:
            said["reads"] = [self.scale.said(field.value), self.other.said(field.value)]
        _put_error(said, errors.get(path), field.raw)
        if path == active and isinstance(asked, Length) and _goes_on(field):
            _put(said, "pad", inch_split(shown(field, self.scale)))
        if field.rows:
            said["rows"] = [
                self._row(row, f"{path}.{at}", errors, active) for at, row in enumerate(field.rows)
            ]
        return said

    def _listed(self, asked: Text) -> "list[str]":
        """Return what a list of the person's own offers for a text, each word once."""
        words: list[str] = []
        values = {field.asked.name: field.value for field in self.fields}
        rows, column, alike = asked.listed[:1], asked.listed[1:2], asked.listed[2:]
        for row in [row for name in rows for row in values.get(name) or []]:
            other = [name for name in alike if row.get(name) != values.get(name)]
            words += [row[name] for name in column if row[name] and not other]
        return [word for at, word in enumerate(words) if word not in words[:at]]

    def _row(
        self, row: "list[Field]", path: str, errors: "dict[str, FieldError]", active: str
    ) -> "dict[str, Any]":
        before = path + "."
        # Of many rows hardly one is in hand or wrong: what was said of the others stands.
        stands = not errors and not self.carried and not active.startswith(path)
        said: dict[str, Any] = {
            "fields": [
                (stands and field.said) or self._field(field, before, errors, active)
                for field in row
            ]
        }
        _put_error(said, errors.get(path), None)
        return said


def _goes_on(field: Field) -> bool:
    """Tell whether an entry can take a fraction: it can be read, or stops in the middle."""
    raw = field.raw
    return field.value is not None or raw is None or (isinstance(raw, str) and is_unfinished(raw))


def options(asked: Choice) -> "list[dict[str, str]]":
    """Return what a choice offers, as the contract's JSON."""
    return [{"value": value, "label": label} for value, label in asked.choices]


def could_be_typed(asked: "Input", value: object) -> bool:
    """Tell whether a kept value is one that a field of this kind can hold at all."""
    if value is None:
        return True
    if isinstance(asked, Flag):
        return isinstance(value, bool)
    if isinstance(value, str):
        return len(value) <= LONGEST_TEXT
    if isinstance(value, bool):
        return False
    if has_two_units(asked) and is_typed_in(value):
        typed: Any = value
        return len(typed["text"]) <= LONGEST_TEXT
    return isinstance(value, (int, float)) and asked.kind not in ("text",)


def _is_all_typed(row: object, names: "list[str]") -> bool:
    """Tell whether a row holds nothing but short texts under these names: most of all rows do."""
    return isinstance(row, dict) and not [
        name
        for name, said in row.items()
        if name not in names or not isinstance(said, str) or len(said) > LONGEST_TEXT
    ]


def _put(said: "dict[str, Any]", key: str, value: object) -> None:
    if value:
        said[key] = value


def _put_error(said: "dict[str, Any]", error: "FieldError | None", raw: object) -> None:
    if error is None:
        return
    if error.missing:
        said["missing"] = True
        return
    said["message"] = error.message
    _put(said, "instead", list(error.instead))
    _put(said, "unfinished", isinstance(raw, str) and is_unfinished(raw))
