"""Schemas for what a request may carry, built from the tools' own declarations."""

from collections.abc import Mapping
from typing import Any

import marshmallow as ma

from longpoint.trade.inputs import Input
from longpoint.trade.lengths import Scale
from longpoint.trade.reading import Unreadable, quoted
from longpoint.trade.rows import Rows, unknown_words
from longpoint.trade.steps import STEPS
from longpoint.trade.tool import Tool

from .fields import KINDS, Reading, RowsField


class Strict(ma.Schema):
    """What holds nothing but what it names."""

    class Meta:
        unknown = ma.RAISE

    def handle_error(self, error: ma.ValidationError, data: Any, **rest: Any) -> None:
        """Name each unknown name in its message; marshmallow's own words leave it out."""
        messages = error.normalized_messages()  # type: ignore[no-untyped-call]
        for name in messages:
            if name not in self.fields and name != ma.exceptions.SCHEMA:
                messages[name] = [unknown_words(str(name))]
        raise ma.ValidationError(messages, data=data)


class ScaleQuery(Strict):
    """The query of a request for an answer: how lengths are read and shown."""

    units = ma.fields.String(
        load_default="in",
        validate=lambda units: _scale_or_words(units, 16),
        metadata={"enum": ["in", "mm"], "description": "What a bare number in a text means."},
    )
    step = ma.fields.String(
        load_default="16",
        validate=lambda step: _scale_or_words("in", _step(step)),
        metadata={
            "type": "integer",
            "enum": list(STEPS),
            "default": 16,
            "description": "The part of an inch that lengths are shown to; 1000 is decimal.",
        },
    )

    @ma.post_load
    def make_scale(self, read: Mapping[str, str], **rest: Any) -> Scale:
        """Return the core's scale."""
        return Scale(read["units"], _step(read["step"]))


class ToolForm(ma.Schema):
    """The inputs of one question: described field by field, read by the core as one form."""

    # marshmallow declares this as the instance's, though it reads the class's.
    error_messages = {"type": "Send one JSON object with the inputs by name."}  # noqa: RUF012

    class Meta:
        unknown = ma.RAISE

    def load(self, data: Any, **rest: Any) -> Any:
        """Let names that no input has pass: the core refuses them, in its own words."""
        return super().load(data, **(rest | {"unknown": ma.INCLUDE}))

    @ma.post_load(pass_original=True)
    def keep(self, read: object, raw: Any, **rest: Any) -> Any:
        """Return the inputs as they came, names that no input has included."""
        return raw


def form_of(tool: Tool) -> type[ToolForm]:
    """Return the schema of the tool's inputs."""
    return _form(_camel(tool.slug) + "Inputs", tool.inputs)


def _form(name: str, inputs: list[Input]) -> type[ToolForm]:
    return type(name, (ToolForm,), {asked.name: _field(name, asked) for asked in inputs})


def _field(form: str, asked: Input) -> Reading:
    if isinstance(asked, Rows):
        return RowsField(asked, _form(form + _camel(asked.name), asked.columns))
    return KINDS[asked.kind](asked)


def _camel(name: str) -> str:
    return "".join(word.capitalize() for word in name.replace("_", "-").split("-"))


def _step(text: str) -> Any:
    # What is no step goes on as a quotation, for the core to refuse.
    return {str(step): step for step in STEPS}.get(text, quoted(text))


def _scale_or_words(units: str, step: Any) -> None:
    try:
        Scale(units, step)
    except Unreadable as unreadable:
        raise ma.ValidationError(str(unreadable)) from None
