"""What the shop's server says of the documents that its people share."""

from marshmallow import fields

from . import members
from .members import Reply


class Head(Reply):
    """A document's numbers, without what it says."""

    id = members.text("Its kind, a dot, and its id among its kind.")
    kind = members.text()
    rev = members.whole()
    seq = members.whole()
    change_id = members.text()
    deleted = members.flag()


class Document(Head):
    """A document as it stands; one that is deleted says nothing more."""

    by = members.text("Who changed it last.")
    device = members.text()
    at = members.text("When, by the server's clock; for people to read.")
    units = fields.String()
    schema = fields.Integer()
    body = fields.Dict()


class Changes(Reply):
    """A part of the feed."""

    epoch = members.text("Another one: the server was restored from a backup.")
    restored = members.flag()
    changes = members.listed(Document)
    since = members.whole()
    last = members.text()
    more = members.flag()


class Moved(Reply):
    """What stands where a change was made to something else."""

    code = members.whole()
    status = members.text()
    message = members.text()
    current = fields.Nested(Document, required=True)


class PersonSignedIn(Reply):
    """Who is signed in."""

    name = members.text()
    role = members.text()


class DeviceSignedIn(Reply):
    """On which device."""

    id = members.whole()
    title = members.text()


class Me(Reply):
    """Who asks."""

    epoch = members.text()
    person = fields.Nested(PersonSignedIn, required=True)
    device = fields.Nested(DeviceSignedIn, required=True)
