"""The shop's people: who comes in, by what, and who no longer does."""

import secrets
from collections.abc import Sequence
from datetime import timedelta

from sqlalchemy import ColumnElement, delete, select, update
from sqlalchemy.exc import IntegrityError
from sqlalchemy.orm import Session

from . import passwords
from .database import Database
from .names import key_of
from .signed_in import CREW, OWNER, hash_of
from .tables import Device, Event, Invitation, Person, now

INVITED_FOR = timedelta(days=7)
FAILURES_STAY = timedelta(days=90)
"""In the owner's log; everything else stays in it."""
TAKEN = "Someone here has this name: add a letter of your last name."


class Refused(Exception):
    """It can't be done; the message is for the person."""


def invite(session: Session, role: str, by: int | None = None, person_id: int | None = None) -> str:
    """Return the token of a way in that is used once: for someone new, or a new password.

    `by` is nobody where it was made on the server's own machine.
    """
    token = secrets.token_urlsafe(24)
    session.add(
        Invitation(
            token=hash_of(token),
            role=role,
            made_by=by,
            person_id=person_id,
            ends=now() + INVITED_FOR,
        )
    )
    session.add(Event(what="invited", person_id=by, detail=role))
    return token


def invite_first_owner(session: Session) -> str | None:
    """Return the token that makes the owner, a new one each time; None where there is one."""
    if _owners(session) > 0:
        return None
    session.execute(delete(Invitation).where(Invitation.made_by.is_(None)))
    return invite(session, OWNER)


def invitation_of(session: Session, token: str) -> Invitation | None:
    """Return the invitation that a token is for, while it can be used."""
    return session.scalar(select(Invitation).where(*_usable(token)))


def open_invitations(session: Session) -> Sequence[Invitation]:
    """Return the invitations that can still be taken up, the one that ends first before."""
    usable = (Invitation.used.is_(None), Invitation.ends > now())
    return session.scalars(select(Invitation).where(*usable).order_by(Invitation.ends)).all()


def take_back(session: Session, number: int, by: int) -> None:
    """End an invitation that nobody took up yet."""
    unused = delete(Invitation).where(Invitation.id == number, Invitation.used.is_(None))
    if role := session.scalar(unused.returning(Invitation.role)):
        session.add(Event(what="invitation taken back", person_id=by, detail=role))


def _usable(token: str) -> list[ColumnElement[bool]]:
    return [Invitation.token == hash_of(token), Invitation.used.is_(None), Invitation.ends > now()]


def join(session: Session, token: str, name: str, kept: str) -> Person:
    """Take an invitation up, and return whose it was; `kept` is what is kept of the password.

    Raises
    ------
    Refused
        It was used meanwhile, or the name is someone else's.
    """
    used = (
        update(Invitation)
        .where(*_usable(token))
        .values(used=now())
        .returning(Invitation.role, Invitation.person_id)
    )
    row = session.execute(used).first()
    if row is None:
        raise Refused("This invitation was used, or it is over: ask for a new one.")
    role, person_id = row
    if person_id is not None:
        return change_password(session, session.get_one(Person, person_id), kept)
    person = _new(session, name)
    person.role, person.password, person.left = role, kept, None
    try:
        session.flush()
    except IntegrityError:
        # Two took the same name at one moment.
        raise Refused(TAKEN) from None
    session.add(Event(what="joined", person_id=person.id))
    return person


def _new(session: Session, name: str) -> Person:
    """Return someone new, or someone who left and comes back under the same name."""
    known = session.scalar(select(Person).where(Person.key == key_of(name)))
    if known is None:
        known = Person(name=" ".join(name.split()), key=key_of(name))
        session.add(known)
    elif known.left is None:
        raise Refused(TAKEN)
    return known


def named(session: Session, name: str) -> Person | None:
    """Return who signs in with a name, if they may."""
    return session.scalar(select(Person).where(Person.key == key_of(name), Person.left.is_(None)))


def sign_in(shop: Database, name: str, password: str, title: str) -> str | None:
    """Return the token of a device that is signed in now; None where name or password is wrong.

    The password is looked at while nobody waits: that work is long on purpose.
    """
    with shop.reading() as session:
        person = named(session, name)
    known = person.password if person else None
    is_right = passwords.is_right(password, known)
    kept = passwords.kept(password) if is_right and passwords.is_outdated(known or "") else known
    with shop.session() as session:
        person = named(session, name)
        if not is_right or person is None or person.password != known:
            _note_failure(session, person)
            return None
        person.password = kept or ""
        return begin_device(session, person, title)


def _note_failure(session: Session, person: Person | None) -> None:
    """Write a failed sign-in into the log, and let go of old ones: guessers write them."""
    old = Event.at < now() - FAILURES_STAY
    session.execute(delete(Event).where(Event.what == "sign-in failed", old))
    session.add(Event(what="sign-in failed", person_id=person.id if person else None))


def begin_device(session: Session, person: Person, title: str) -> str:
    """Return the token of a device of this person's."""
    token = secrets.token_urlsafe(32)
    session.add(Device(person_id=person.id, token=hash_of(token), title=title))
    session.add(Event(what="signed in", person_id=person.id, detail=title))
    return token


def end_devices(session: Session, *which: ColumnElement[bool]) -> None:
    """Sign devices out; those that are out already stay as they were."""
    session.execute(update(Device).where(Device.ended.is_(None), *which).values(ended=now()))


def change_password(session: Session, person: Person, kept: str) -> Person:
    """Give a person a new password; every device of theirs signs in again."""
    person.password = kept
    end_devices(session, Device.person_id == person.id)
    session.add(Event(what="password changed", person_id=person.id))
    return person


def end_access(session: Session, person: Person) -> None:
    """Keep a person out from now on; what they wrote stays.

    Raises
    ------
    Refused
        It is the last owner.
    """
    _leave_an_owner(session, person)
    keep_out(session, person)


def keep_out(session: Session, person: Person) -> None:
    """End a person's access, also the last owner's."""
    person.left = now()
    end_devices(session, Device.person_id == person.id)
    # Their invitations and ways to a new password end with them.
    session.execute(
        delete(Invitation).where(
            (Invitation.made_by == person.id) | (Invitation.person_id == person.id),
            Invitation.used.is_(None),
        )
    )
    session.add(Event(what="access ended", person_id=person.id))


def give_role(session: Session, person: Person, role: str) -> None:
    """Make a person owner or crew.

    Raises
    ------
    Refused
        It is the last owner.
    """
    if role not in (OWNER, CREW):
        raise Refused("A person of the shop is owner or crew.")
    if role != OWNER:
        _leave_an_owner(session, person)
    person.role = role
    session.add(Event(what="role given", person_id=person.id, detail=role))


def _leave_an_owner(session: Session, person: Person) -> None:
    if person.role == OWNER and person.left is None and _owners(session) == 1:
        raise Refused("A shop has an owner: make someone else one first.")


def _owners(session: Session) -> int:
    # Held until the end: of two owners who end each other's access, one is too late.
    owners = select(Person.id).where(Person.role == OWNER, Person.left.is_(None))
    return len(session.scalars(owners.order_by(Person.id).with_for_update()).all())
