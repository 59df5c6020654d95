"""The tables of the shop's database.

Times are UTC and for people to read: nothing is decided by them except when an invitation or a
sign-in ends. What came before what is told by `seq` and `rev` alone.
"""

from datetime import UTC, datetime

from sqlalchemy import BigInteger, DateTime, ForeignKey, String, Text, TypeDecorator
from sqlalchemy.engine import Dialect
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column, relationship


class Moment(TypeDecorator[datetime]):
    """A time in UTC, where a database keeps no zone too."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Return what is kept."""
        return None if value is None else value.astimezone(UTC)

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Return what was kept, with its zone."""
        return None if value is None else value.replace(tzinfo=value.tzinfo or UTC)


def now() -> datetime:
    """Return the time of this machine."""
    return datetime.now(UTC)


class Table(DeclarativeBase):
    """What every table is."""


class Shop(Table):
    """The one row that says which shop's database this is.

    `epoch` is made anew when a backup is restored: phones then know that the server may have
    forgotten what it had acknowledged. `seq` is the number of the last change.
    """

    __tablename__ = "shop"
    id: Mapped[int] = mapped_column(primary_key=True)
    epoch: Mapped[str] = mapped_column(String(32))
    seq: Mapped[int] = mapped_column(BigInteger, default=0)
    secret: Mapped[str] = mapped_column(String(64))


class Person(Table):
    """Someone of the shop: `name` is what they sign in with as typed, `key` is it casefolded."""

    __tablename__ = "people"
    id: Mapped[int] = mapped_column(primary_key=True)
    name: Mapped[str] = mapped_column(String(80))
    key: Mapped[str] = mapped_column(String(160), unique=True)
    role: Mapped[str] = mapped_column(String(16))
    """`owner` or `crew`."""
    password: Mapped[str] = mapped_column(String(200))
    """Argon2id, in its own encoded form."""
    made: Mapped[datetime] = mapped_column(Moment, default=now)
    left: Mapped[datetime | None] = mapped_column(Moment, default=None)
    """Since when the person can't sign in any more; what they wrote stays."""
    devices: Mapped[list["Device"]] = relationship(back_populates="person")


class Device(Table):
    """A browser that is, or was, signed in."""

    __tablename__ = "devices"
    id: Mapped[int] = mapped_column(primary_key=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("people.id"), index=True)
    token: Mapped[str] = mapped_column(String(64), unique=True)
    """SHA-256, in hex, of the token that the device holds."""
    title: Mapped[str] = mapped_column(String(120))
    made: Mapped[datetime] = mapped_column(Moment, default=now)
    seen: Mapped[datetime] = mapped_column(Moment, default=now)
    ended: Mapped[datetime | None] = mapped_column(Moment, default=None)
    person: Mapped[Person] = relationship(back_populates="devices")


class Invitation(Table):
    """A way in, used once."""

    __tablename__ = "invitations"
    id: Mapped[int] = mapped_column(primary_key=True)
    token: Mapped[str] = mapped_column(String(64), unique=True)
    """SHA-256, in hex, of the token in its address."""
    role: Mapped[str] = mapped_column(String(16))
    made_by: Mapped[int | None] = mapped_column(ForeignKey("people.id"), default=None)
    """Nobody where it was made on the server's own machine."""
    person_id: Mapped[int | None] = mapped_column(ForeignKey("people.id"), default=None)
    """Who gets a new password by it; nobody where it makes someone new."""
    made: Mapped[datetime] = mapped_column(Moment, default=now)
    ends: Mapped[datetime] = mapped_column(Moment)
    used: Mapped[datetime | None] = mapped_column(Moment, default=None)


class Document(Table):
    """A document as it stands; one that was deleted stays as a tombstone without a body."""

    __tablename__ = "documents"
    id: Mapped[str] = mapped_column(String(200), primary_key=True)
    """Its kind, a dot, and its id among its kind: `job.5f0c…`."""
    kind: Mapped[str] = mapped_column(String(32), index=True)
    rev: Mapped[int]
    """Counts its changes, from 1."""
    seq: Mapped[int] = mapped_column(BigInteger, unique=True)
    """The number of its last change among all of the shop's."""
    change_id: Mapped[str] = mapped_column(String(64))
    deleted: Mapped[bool] = mapped_column(default=False)
    units: Mapped[str] = mapped_column(String(8), default="")
    schema: Mapped[int] = mapped_column(default=0)
    size: Mapped[int] = mapped_column(default=0)
    """Bytes of the body."""
    made_by: Mapped[int] = mapped_column(ForeignKey("people.id"), index=True)
    """Whose room it takes."""
    body: Mapped[str] = mapped_column(Text, default="")
    """JSON; empty where it is deleted. The last column: SQLite reads a row from its beginning."""


class Change(Table):
    """One acknowledged change, by which a repeated request is known; kept for ever."""

    __tablename__ = "changes"
    seq: Mapped[int] = mapped_column(BigInteger, primary_key=True, autoincrement=False)
    change_id: Mapped[str] = mapped_column(String(64), unique=True)
    document_id: Mapped[str] = mapped_column(String(200), index=True)
    rev: Mapped[int]
    device_id: Mapped[int | None] = mapped_column(ForeignKey("devices.id"))
    person_id: Mapped[int] = mapped_column(ForeignKey("people.id"))
    at: Mapped[datetime] = mapped_column(Moment, default=now)


class Event(Table):
    """A line of the owner's log: who came in, who did not, what was deleted."""

    __tablename__ = "events"
    id: Mapped[int] = mapped_column(primary_key=True)
    at: Mapped[datetime] = mapped_column(Moment, default=now, index=True)
    what: Mapped[str] = mapped_column(String(32))
    """What happened, as the log shows it."""
    person_id: Mapped[int | None] = mapped_column(ForeignKey("people.id"))
    detail: Mapped[str] = mapped_column(String(240), default="")
