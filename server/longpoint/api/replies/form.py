"""A form as the phone's screen gets it from the core's door; keys that say nothing are left out."""

from typing import Any

from marshmallow import fields

from . import members
from .answer import Answer
from .members import Reply


def _texts(**rest: Any) -> fields.List[Any]:
    return fields.List(fields.String(), metadata=rest)


class FieldError(Reply):
    """One sentence about one field; inside rows `walls.1.length`, rows counted from 0."""

    field = members.text()
    message = members.text()
    missing = members.flag("Required, and nothing was given yet.")
    instead = members.texts("Texts that may have been meant.")


class Refused(Reply):
    """A request that has no answer."""

    ok = members.flag()
    errors = members.listed(FieldError)


class Offered(Reply):
    """A value that can be chosen now."""

    value = members.text()
    label = members.text()


class InchSplit(Reply):
    """Where the last inch of an entry begins and ends; `share` is the fraction it has now."""

    before = members.text()
    share = members.number(none=True)
    after = members.text()


class Differing(Reply):
    """What another question of the job gives, where something else was typed."""

    text = members.text()
    title = members.text("The question's title.", name="from")


class Field(Reply):
    """One field of a form as the core reads it."""

    name = members.text()
    shown = fields.String(metadata={"description": "What stands in the field."})
    empty = fields.String(
        metadata={"description": "What stands there while nothing is put in: the default as used."}
    )
    unit = fields.String(
        metadata={"description": "Behind what is shown, where it is not the declared one."}
    )
    chosen = fields.String()
    choices = fields.List(
        fields.Nested(Offered),
        metadata={"description": "Those offered now, where they are not all that are declared."},
    )
    offers = _texts(description="Texts that can be tapped instead of typed.")
    source = fields.String(data_key="from", metadata={"enum": ["typed", "carried", "default"]})
    of = fields.String(metadata={"description": "The question that a carried value is from."})
    carried = fields.Nested(
        Differing, metadata={"description": "What would stand here if nothing was typed."}
    )
    changed = fields.Boolean(metadata={"description": "Something other than the default."})
    at = fields.Float(
        allow_none=True, metadata={"description": "Degrees, where it can be dragged."}
    )
    reads = _texts(
        minItems=2, maxItems=2, description="A length in the units in force and in the other ones."
    )
    missing = fields.Boolean()
    message = fields.String()
    instead = _texts(description="Texts that may have been meant.")
    unfinished = fields.Boolean(metadata={"description": "The entry stops in the middle."})
    pad = fields.Nested(InchSplit)
    rows = fields.List(fields.Nested(lambda: RowFields()))


class RowFields(Reply):
    """The fields of one row."""

    fields_ = fields.List(fields.Nested(Field), required=True, data_key="fields")
    missing = fields.Boolean()
    message = fields.String()
    instead = _texts()


class Waiting(Reply):
    """What the answer waits for, and the field to go to."""

    field = members.text()
    words = members.text()


class SetAside(Reply):
    """What this version could not use of a kept form."""

    path = members.text()
    value = fields.Raw(required=True, allow_none=True)


class FormSaid(Reply):
    """What the core says of a form's fields."""

    ok = members.flag()
    version = members.whole("Of the tool's form.")
    fields_ = fields.List(fields.Nested(Field), required=True, data_key="fields")
    stray = members.texts("Messages that belong to no field.")
    waiting = members.maybe(Waiting)
    aside = members.listed(SetAside)
    inputs = fields.Dict(
        metadata={"description": "Without what was set aside, brought up to this version."}
    )


class SearchReply(Reply):
    """The next answer of a search, null where the last one stands."""

    ok = members.flag()
    answer = members.maybe(Answer)
    progress = members.number("1 for a finished answer.")
    search = members.whole("What to go on with where a better answer may be found.", none=True)


class FormReply(FormSaid):
    """What the core says of a form, with its answer where it has one."""

    answer = members.maybe(Answer)
    progress = members.number("1 for a finished answer.")
    search = members.whole("What to go on with where a better answer may be found.", none=True)
