"""A shop's whole database in one file, and back: the same file for SQLite and PostgreSQL.

The file is a database of its own, SQLite with the same tables, so that what an older version wrote
is moved to today's tables like any other.
"""

import secrets
import shutil
import sqlite3
import tempfile
from contextlib import closing, suppress
from pathlib import Path

from sqlalchemy import Table as Columns
from sqlalchemy import delete, func, insert, select, text
from sqlalchemy.exc import DBAPIError
from sqlalchemy.orm import Session

from . import people
from .database import Database, NotOpened, reason
from .tables import Device, Document, Person, Shop, Table

ROWS = 20
"""Copied at a time: a row can hold four megabytes."""


class NotDone(Exception):
    """Nothing was written; the message is for the person."""


def back_up(shop: Database, file: Path) -> str:
    """Write all that `shop` holds at this moment into a new file, while others go on working.

    Returns how much that is, in words.

    Raises
    ------
    NotDone
        The file is there already, or can't be written, or nobody has a part in this shop: it is
        hardly the one that is meant.
    """
    if file.exists():
        raise NotDone(f"{file} is there already: name a new file.")
    with shop.reading() as kept:
        if not _people(kept):
            raise NotDone("Nobody is in this shop: does LONGPOINT_DATABASE name the right one?")
    part = file.with_name(file.name + ".part")
    try:
        _remove(part)
        held = _write(shop, part)
        part.rename(file)
        return held
    except (OSError, NotOpened, DBAPIError) as fault:
        with suppress(OSError):
            _remove(part)
        raise NotDone(f"Can't write {file}: {reason(fault)}.") from fault


def _remove(part: Path) -> None:
    for end in ("", "-wal", "-shm", "-journal"):
        part.with_name(part.name + end).unlink(missing_ok=True)


def _write(shop: Database, part: Path) -> str:
    copy = Database(f"sqlite:///{part}")
    try:
        with shop.reading() as source, copy.session() as target:
            held = _held(source)
            _copy(source, target)
        with copy.engine.connect() as connection:
            # All in the one file, none of it in files beside it.
            connection.connection.execute("PRAGMA journal_mode=DELETE")
        return held
    finally:
        copy.close()


def _people(kept: Session) -> int:
    return kept.scalar(select(func.count(Person.id)).where(Person.left.is_(None))) or 0


def _held(kept: Session) -> str:
    """Return how much there is, in words."""
    count = select(Document.kind, func.count()).where(~Document.deleted).group_by(Document.kind)
    kinds = {row.kind: row[1] for row in kept.execute(count)}
    parts = [(_people(kept), "person", "people"), (kinds.get("job", 0), "job", "jobs"),
             (kinds.get("photo", 0), "photo", "photos")]  # fmt: skip
    return ", ".join(f"{number} {one if number == 1 else more}" for number, one, more in parts)


def restore(shop: Database, file: Path, replace: bool) -> str:
    """Put what a file holds in the place of all that `shop` holds, in one step.

    Returns how much that is, in words.
    Phones are told by a new `epoch` that the server may have forgotten something. Devices that were
    signed out here, and people whose access was ended, stay out.

    Raises
    ------
    NotDone
        The file is no backup, or there is a shop here already and `replace` does not say so.
    """
    if not file.is_file():
        raise NotDone(f"There is no file {file}.")
    try:
        with tempfile.TemporaryDirectory() as folder:
            # Opened, it may be moved to newer tables: the backup itself stays as it is.
            taken = Path(folder) / "backup.db"
            shutil.copyfile(file, taken)
            if not _is_backup(taken):
                raise NotDone(f"{file} is no backup of a shop.")
            return _put_back(shop, taken, replace)
    except (OSError, NotOpened, DBAPIError, sqlite3.DatabaseError) as fault:
        raise NotDone(f"{file} can't be restored: {reason(fault)}.") from fault


def _put_back(shop: Database, taken: Path, replace: bool) -> str:
    copy = Database(f"sqlite:///{taken}")
    try:
        with copy.reading() as source, shop.session() as target:
            if not replace and target.scalar(select(Person.id).limit(1)) is not None:
                raise NotDone("A shop is kept here: --replace puts the backup in its place.")
            held, ended = _held(source), _ended(target)
            _copy(source, target)
            _end_again(target, ended)
            target.get_one(Shop, 1).epoch = secrets.token_hex(8)
            return held
    finally:
        copy.close()


def _ended(kept: Session) -> dict[type[Device | Person], list[str]]:
    """Return who was signed out, and who has left, by what names them in any copy."""
    return {
        Device: list(kept.scalars(select(Device.token).where(Device.ended.is_not(None)))),
        Person: list(kept.scalars(select(Person.key).where(Person.left.is_not(None)))),
    }


def _end_again(kept: Session, ended: dict[type[Device | Person], list[str]]) -> None:
    """Keep out who was kept out before: a lost phone does not come back with yesterday's data."""
    people.end_devices(kept, Device.token.in_(ended[Device]))
    back = select(Person).where(Person.key.in_(ended[Person]), Person.left.is_(None))
    for person in kept.scalars(back):
        people.keep_out(kept, person)


def _is_backup(file: Path) -> bool:
    """Tell whether a file is a shop's database: any other would be given a new shop's tables."""
    with closing(sqlite3.connect(file)) as connection:
        try:
            return bool(connection.execute("SELECT id FROM shop").fetchall() == [(1,)])
        except sqlite3.OperationalError:
            return False
        except sqlite3.DatabaseError as fault:
            if "not a database" in str(fault):
                return False
            raise


def _copy(source: Session, target: Session) -> None:
    tables = Table.metadata.sorted_tables
    for table in reversed(tables):
        target.execute(delete(table))
    for table in tables:
        rows = source.execute(select(table).execution_options(yield_per=ROWS))
        for part in rows.mappings().partitions(ROWS):
            target.execute(insert(table), [dict(row) for row in part])
        _count_on(target, table)


def _count_on(target: Session, table: Columns) -> None:
    """Let PostgreSQL give numbers after those that were copied."""
    if target.get_bind().dialect.name != "postgresql":
        return
    column = table.autoincrement_column
    if column is not None:
        after = target.scalars(select(func.coalesce(func.max(column), 0) + 1)).one()
        sequence = f"pg_get_serial_sequence('{table.name}', '{column.name}')"
        target.execute(text(f"SELECT setval({sequence}, :after, false)"), {"after": after})
