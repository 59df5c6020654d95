"""The shop's database: SQLite in a file, or PostgreSQL by its address."""

import secrets
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import Lock

from alembic import command
from alembic.config import Config
from alembic.util import CommandError
from sqlalchemy import Connection, Engine, create_engine, event, func, insert, make_url, select
from sqlalchemy.exc import ArgumentError, DBAPIError, NoSuchModuleError, TimeoutError
from sqlalchemy.orm import Session

from .tables import Shop

PATIENCE = 10
"""Seconds that a writer waits for another before it gives up."""
_LOCK = 0x10_69_90_17
"""Any number that no other program takes for its lock in this database."""


class NotOpened(Exception):
    """The database can't be worked with; the message is for the person."""


class Database:
    """A shop's database, moved to this version's tables.

    Raises
    ------
    NotOpened
        It is not there, is damaged, or a newer version wrote it.
    """

    def __init__(self, address: str) -> None:
        try:
            self.engine = _engine(address)
        except (ArgumentError, NoSuchModuleError, ImportError) as fault:
            raise NotOpened(f"LONGPOINT_DATABASE is no address of a database: {fault}.") from fault
        except OSError as fault:
            raise NotOpened(f"The shop's database does not open: {reason(fault)}.") from fault
        self._line = Lock() if self.engine.dialect.name == "sqlite" else None
        self._readers = self.engine.execution_options(**_reading(self.engine))
        try:
            _check(self.engine)
            _upgrade(self.engine)
        except DBAPIError as fault:
            self.close()
            raise NotOpened(f"The shop's database does not open: {reason(fault)}.") from fault
        except NotOpened:
            self.close()
            raise

    @contextmanager
    def session(self) -> Iterator[Session]:
        """Give a session whose work is written whole at the end, or not at all.

        Raises
        ------
        TimeoutError, OperationalError
            Others write for too long, of this process or of another.
        """
        with self._turn(), Session(self.engine, expire_on_commit=False) as session, session.begin():
            yield session

    @contextmanager
    def _turn(self) -> Iterator[None]:
        """Have this process's writers stand in line at SQLite, which lets the latest go first."""
        if self._line is None:
            yield
            return
        if not self._line.acquire(timeout=PATIENCE):
            raise TimeoutError("others write for too long")
        try:
            yield
        finally:
            self._line.release()

    @contextmanager
    def reading(self) -> Iterator[Session]:
        """Give a session that sees one moment, and keeps nobody from writing."""
        with Session(self._readers, expire_on_commit=False) as session, session.begin():
            yield session

    def close(self) -> None:
        """Let go of every connection."""
        self.engine.dispose()


def _engine(address: str) -> Engine:
    url = make_url(address)
    if url.get_backend_name() != "sqlite":
        return create_engine(url, pool_pre_ping=True, hide_parameters=True)
    if url.database and not url.database.startswith("file:"):
        file = Path(url.database)
        file.parent.mkdir(parents=True, exist_ok=True)
        # All that is secret is in it; SQLite gives the files beside it the same rights.
        file.touch(mode=0o600)
    engine = create_engine(url, connect_args={"timeout": PATIENCE}, hide_parameters=True)

    @event.listens_for(engine, "connect")
    def connected(connection: object, _: object) -> None:
        # The driver would begin no transaction before the first write: `begin` below does it.
        connection.isolation_level = None  # type: ignore[attr-defined]
        for pragma in ("journal_mode=WAL", "synchronous=FULL", "foreign_keys=ON"):
            connection.execute(f"PRAGMA {pragma}")  # type: ignore[attr-defined]

    @event.listens_for(engine, "begin")
    def begin(connection: Connection) -> None:
        # Whoever reads in order to write must be the only one who does.
        is_reading = connection.get_execution_options().get("reading")
        connection.exec_driver_sql("BEGIN" if is_reading else "BEGIN IMMEDIATE")

    return engine


def _reading(engine: Engine) -> dict[str, object]:
    """Return the options of a connection that reads one moment of the database."""
    if engine.dialect.name == "sqlite":
        return {"reading": True}
    return {"isolation_level": "REPEATABLE READ", "postgresql_readonly": True}


def _check(engine: Engine) -> None:
    if engine.dialect.name != "sqlite":
        return
    with engine.connect() as connection:
        found = connection.exec_driver_sql("PRAGMA integrity_check").scalar()
    if found != "ok":
        raise NotOpened(f"The shop's database is damaged ({found}): restore a backup.")


def _upgrade(engine: Engine) -> None:
    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent / "migrations"))
    with engine.begin() as connection:
        if engine.dialect.name == "postgresql":
            # Of several processes that start at once, one makes the tables.
            connection.execute(select(func.pg_advisory_xact_lock(_LOCK)))
        config.attributes["connection"] = connection
        try:
            command.upgrade(config, "head")
        except CommandError as fault:
            words = "A newer Longpoint wrote the shop's database: install that version."
            raise NotOpened(words) from fault
        _begin(connection)


def _begin(connection: Connection) -> None:
    if connection.scalar(select(Shop.id)) is None:
        row = {"id": 1, "epoch": secrets.token_hex(8), "secret": secrets.token_hex(32), "seq": 0}
        connection.execute(insert(Shop).values(row))


def reason(fault: Exception) -> str:
    """Return a fault of a database or a file in a few words, without a full stop."""
    return str(getattr(fault, "orig", None) or fault).strip().splitlines()[0].rstrip(".")
