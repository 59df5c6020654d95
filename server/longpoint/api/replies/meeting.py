"""What comes of a document as two people have it."""

from marshmallow import fields

from . import members
from .members import Reply


class MetState(Reply):
    """What a document says."""

    units = members.text()
    schema = members.whole()
    body = fields.Dict(required=True)


class Collided(Reply):
    """A place that both changed; null is what is not there."""

    path = members.text("Names and ids, with dots between; empty for the whole document.")
    base = fields.Raw(required=True, allow_none=True)
    mine = fields.Raw(required=True, allow_none=True)
    theirs = fields.Raw(required=True, allow_none=True)


class Meeting(Reply):
    """A phone's document and the server's, met."""

    document = fields.Nested(
        MetState, required=True, allow_none=True,
        metadata={"description": "What both are to have; null where it is deleted."},
    )  # fmt: skip
    is_mine = members.flag("It says what the phone has.")
    is_theirs = members.flag("It says what the server has.")
    collisions = members.listed(Collided)


class QuestionSide(Reply):
    """What one of the two said."""

    by = members.text("A person's name.")
    value = fields.Raw(required=True, allow_none=True)


class DocumentQuestion(Reply):
    """What two people said differently; settled, it has `answered` and nothing else but its id."""

    id = members.text()
    path = fields.List(
        fields.Raw(), metadata={"description": "Names, ids, and places of rows as numbers."}
    )
    sides = fields.List(
        fields.Nested(QuestionSide), metadata={"description": "Two; the first one's stands."}
    )
    together = fields.Boolean(
        metadata={"description": "A side's value holds several names of the last name's holder."}
    )
    answered = fields.String(metadata={"description": "Who settled it."})


class Settled(Reply):
    """A document's body, a question of it settled."""

    document = fields.Dict(required=True)
