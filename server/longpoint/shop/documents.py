"""The shop's documents: one as it stands, and changing one.

A change names the revision that it was made to, and is known by an id of its own for ever: asked
again, it is answered again and not made twice. Writers stand in line at the shop's one row, so that
the numbers of changes are in the order in which they are seen.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Select, func, select, update
from sqlalchemy.orm import Session

from .tables import Change, Device, Document, Event, Person, Shop

KINDS = ("job", "photo", "list", "settings")
"""What people of a shop share. Forms, earlier answers and `settings.settings` are a phone's own."""
OWN = "settings.settings"


class NotThere(Exception):
    """No document has this id, or none that is not deleted."""


class Moved(Exception):
    """The document is not at the revision that the change was made to."""


class Full(Exception):
    """The writer has no room left."""


class Restored(Exception):
    """The server was restored from a backup that the writer does not know of yet."""


class UsedElsewhere(Exception):
    """The change's id belongs to a change of another document."""


@dataclass(frozen=True)
class Writer:
    """Who writes, from which device, and the bytes that all of a person's documents may take.

    `epoch` is the one that the device knows, empty for any: a restored server counts revisions
    again that it has given before, so that a revision alone does not say what was changed.
    """

    person_id: int
    device_id: int | None
    room: int
    epoch: str = ""


@dataclass(frozen=True)
class Said:
    """A change: its id, and what the document says after it; no body deletes it."""

    change_id: str
    units: str = ""
    schema: int = 0
    body: Mapping[str, Any] | None = None

    def columns(self) -> dict[str, Any]:
        """Return what the document's row holds of it."""
        text = "" if self.body is None else json.dumps(self.body, separators=(",", ":"))
        return {
            "change_id": self.change_id, "units": self.units, "schema": self.schema,
            "body": text, "size": len(text), "deleted": self.body is None,
        }  # fmt: skip


@dataclass(frozen=True)
class Written:
    """What a change came to."""

    rev: int
    seq: int
    is_new: bool


def write(session: Session, writer: Writer, name: str, said: Said, to: int | None) -> Written:
    """Change a document, or begin one.

    Parameters
    ----------
    to : int or None
        The revision that the change was made to; None where there was no document.

    Raises
    ------
    Moved, NotThere, Full, UsedElsewhere, Restored
        Nothing is changed then.
    """
    if known := _known(session, name, said):
        return known
    step = update(Shop).values(seq=Shop.seq + 1).returning(Shop.seq, Shop.epoch)
    seq, epoch = session.execute(step).one()
    # Whoever stood before us in line may have brought the very same change.
    if known := _known(session, name, said):
        return known
    if writer.epoch not in ("", epoch):
        raise Restored
    columns = said.columns()
    called = _called(session, name) if said.body is None else ""
    _make_room(session, writer, name, columns["size"])
    rev = _put(session, writer, name, columns | {"seq": seq}, to)
    session.add(
        Change(
            seq=seq,
            change_id=said.change_id,
            document_id=name,
            rev=rev,
            device_id=writer.device_id,
            person_id=writer.person_id,
        )
    )
    if said.body is None:
        session.add(Event(what="deleted", person_id=writer.person_id, detail=called))
    return Written(rev, seq, is_new=rev == 1)


def _called(session: Session, name: str) -> str:
    """Return what people call a document, for the log: a job's title, else its kind."""
    kind = name.split(".")[0]
    body = session.scalar(select(Document.body).where(Document.id == name, Document.kind == "job"))
    title = json.loads(body).get("title") if body else None
    return f"job: {title}"[:240] if title else kind


def _known(session: Session, name: str, said: Said) -> Written | None:
    found = session.scalar(select(Change).where(Change.change_id == said.change_id))
    if found is None:
        return None
    if found.document_id != name:
        raise UsedElsewhere
    return Written(found.rev, found.seq, is_new=False)


def _make_room(session: Session, writer: Writer, name: str, size: int) -> None:
    others = select(func.coalesce(func.sum(Document.size), 0)).where(
        Document.made_by == writer.person_id, Document.id != name
    )
    if size and session.scalars(others).one() + size > writer.room:
        raise Full


def _put(
    session: Session, writer: Writer, name: str, columns: dict[str, Any], to: int | None
) -> int:
    """Write the document's row where it still is what the change was made to; return its rev."""
    same = Document.deleted if to is None else Document.rev == to
    change = (
        update(Document)
        .where(Document.id == name, same)
        .values(rev=Document.rev + 1, **columns)
        .returning(Document.rev)
    )
    rev = session.execute(change).scalar()
    if rev is not None:
        return int(rev)
    if session.get(Document, name) is not None:
        raise Moved
    if to is not None or not columns["body"]:
        raise NotThere
    kind = name.split(".", 1)[0]
    session.add(Document(id=name, kind=kind, rev=1, made_by=writer.person_id, **columns))
    return 1


def chosen() -> Select[Document, Change, str, str]:
    """Return the query for documents with their last change: whose it was, on which device."""
    return (
        select(Document, Change, Person.name, Device.title)
        .join(Change, Change.seq == Document.seq)
        .join(Person, Person.id == Change.person_id)
        .outerjoin(Device, Device.id == Change.device_id)
    )


def read(session: Session, name: str) -> dict[str, Any]:
    """Return a document, or its tombstone, as JSON says it.

    Raises
    ------
    NotThere
        There never was one.
    """
    row = session.execute(chosen().where(Document.id == name)).first()
    if row is None:
        raise NotThere
    return as_said(*row)


def as_said(document: Document, change: Change, by: str, device: str | None) -> dict[str, Any]:
    """Return a document as JSON says it."""
    head = {
        "id": document.id, "kind": document.kind, "rev": document.rev, "seq": document.seq,
        "change_id": document.change_id, "deleted": document.deleted,
        "by": by, "device": device or "", "at": change.at.isoformat(timespec="seconds"),
    }  # fmt: skip
    if document.deleted:
        return head
    body = json.loads(document.body)
    return head | {"units": document.units, "schema": document.schema, "body": body}
