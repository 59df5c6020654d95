"""A marshmallow field for each kind of input, made from the core's own declaration."""

from collections.abc import Iterable, Mapping
from typing import Any, ClassVar

import marshmallow as ma
from marshmallow.error_store import merge_errors

from longpoint.trade.inputs import Choice, Input
from longpoint.trade.measured import Number
from longpoint.trade.refusal import FieldError
from longpoint.trade.rows import Rows


class Reading(ma.fields.Field[Any]):
    """What the fields share: they describe an input, and leave its reading to the whole form."""

    asked: Input
    json_type: ClassVar[dict[str, object]] = {}

    def deserialize(
        self,
        value: Any,
        attr: str | None = None,
        data: Mapping[str, Any] | None = None,
        **kwargs: Any,
    ) -> Any:
        """Return the value as it came: the core reads the form as one."""
        return value

    def document(self, asked: Input) -> dict[str, Any]:
        """Return what the API's description says about this input."""
        words = [asked.label + "." if asked.label[-1:] not in ".?" else asked.label, asked.help]
        if asked.unit:
            words.append(f"In {asked.unit}.")
        if asked.default_text and asked.default is None:
            words.append(f"When not given: {asked.default_text}.")
        described: dict[str, Any] = dict(self.json_type)
        described["description"] = " ".join(word for word in words if word)
        if asked.default is not None:
            described["default"] = asked.default
        return described


class InputField(Reading):
    """An input with one value."""

    def __init__(self, asked: Input) -> None:
        self.asked = asked
        super().__init__(required=certainly(asked), metadata=self.document(asked))


TYPED_IN = {
    "type": "object",
    "description": "A text with the units that its bare numbers were typed in.",
    "properties": {"text": {"type": "string"}, "units": {"enum": ["in", "mm"]}},
    "required": ["text", "units"],
    "additionalProperties": False,
}


class LengthField(InputField):
    """A length: a number of inches, or a text as the trade writes it.

    Bare numbers in a text are in the units asked for; an object names other units.
    """

    json_type: ClassVar[dict[str, object]] = {
        "anyOf": [{"type": ["number", "string", "null"]}, TYPED_IN]
    }


class AngleField(InputField):
    """An angle: a number of degrees, or a text."""

    json_type: ClassVar[dict[str, object]] = {"type": ["number", "string", "null"]}


class NumberField(InputField):
    """A number in its unit, or a text that says one.

    Of a number with two systems of units a bare text is in the units asked for; an object names
    other units.
    """

    json_type: ClassVar[dict[str, object]] = {"type": ["number", "string", "null"]}

    def document(self, asked: Input) -> dict[str, Any]:
        described = super().document(asked)
        if isinstance(asked, Number) and asked.measure:
            described["anyOf"] = [{"type": described.pop("type")}, TYPED_IN]
        return described


class CountField(InputField):
    """A whole number, or a text that says one."""

    json_type: ClassVar[dict[str, object]] = {"type": ["integer", "string", "null"]}


class ChoiceField(InputField):
    """One of the values that the tool names."""

    asked: Choice

    def document(self, asked: Input) -> dict[str, Any]:
        described = super().document(asked)
        described["enum"] = [value for value, _ in self.asked.choices] + ["", None]
        return described


class FlagField(InputField):
    """Yes or no."""

    json_type: ClassVar[dict[str, object]] = {"enum": [True, False, "", None]}


class TextField(InputField):
    """A few words."""

    json_type: ClassVar[dict[str, object]] = {"type": ["string", "null"], "maxLength": 60}


class RowsField(Reading, ma.fields.List[Any]):
    """Rows of inputs; `row` is the schema of one of them."""

    asked: Rows

    def __init__(self, asked: Rows, row: type[ma.Schema]) -> None:
        self.asked = asked
        metadata = self.document(asked) | {"minItems": asked.least, "maxItems": asked.most}
        super().__init__(ma.fields.Nested(row), required=certainly(asked), metadata=metadata)


KINDS: dict[str, type[InputField]] = {
    "length": LengthField,
    "angle": AngleField,
    "number": NumberField,
    "count": CountField,
    "choice": ChoiceField,
    "flag": FlagField,
    "text": TextField,
}


def certainly(asked: Input) -> bool:
    """Say whether an input has to be given whatever the others say."""
    return asked.required and asked.is_always_asked()


def nested(errors: Iterable[FieldError]) -> dict[str, Any]:
    """Return the core's errors in marshmallow's shape.

    >>> nested([FieldError("walls.1.length", "Length is needed.")])
    {'walls': {'1': {'length': ['Length is needed.']}}}
    """
    merged: dict[str, Any] = {}
    for error in errors:
        branch: object = [error.message]
        for name in reversed(_steps(error.field)):
            branch = {name: branch}
        merged = merge_errors(merged, branch)  # type: ignore[no-untyped-call]
    return merged


def _steps(path: str) -> list[str]:
    """Return the steps of a field's path; an unknown name may hold dots of its own."""
    steps = path.split(".", 2)
    return steps if len(steps) > 1 and steps[1].isdigit() else [path]
