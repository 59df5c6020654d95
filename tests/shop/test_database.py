"""The shop's database: its tables, older and newer ones, and what does not open."""

import sqlite3
import time
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import select
from sqlalchemy.exc import OperationalError, TimeoutError

from longpoint.shop import database
from longpoint.shop.database import Database, NotOpened
from longpoint.shop.documents import read
from longpoint.shop.tables import Person, Table
from tests.cases import KEPT


def test_the_migrations_make_the_tables(shop: Database) -> None:
    """Alembic's own comparison finds nothing that the one has and the other lacks."""
    with shop.engine.connect() as connection:
        assert compare_metadata(MigrationContext.configure(connection), Table.metadata) == []


def test_its_file_is_for_its_own_user_alone(tmp_path: Path) -> None:
    """Hashes of passwords and the key of all cookies are in it."""
    shop = Database(f"sqlite:///{tmp_path / 'shop.db'}")
    with shop.session():
        rights = {each.name: each.stat().st_mode & 0o777 for each in tmp_path.iterdir()}
    shop.close()
    assert rights == {"shop.db": 0o600, "shop.db-wal": 0o600, "shop.db-shm": 0o600}


def test_who_holds_it_keeps_nobody_waiting_for_all_before_them(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Writers stand in line, and give up together: one after the other they would take 20 s."""
    monkeypatch.setattr(database, "PATIENCE", 1)
    shop = Database(f"sqlite:///{tmp_path / 'shop.db'}")

    def refused(_: int) -> bool:
        with pytest.raises((OperationalError, TimeoutError)), shop.session() as session:
            session.scalars(select(Person.name)).all()
        return True

    with (
        closing(sqlite3.connect(tmp_path / "shop.db", isolation_level=None)) as other,
        ThreadPoolExecutor(20) as threads,
    ):
        other.execute("BEGIN IMMEDIATE")
        begun = time.monotonic()
        assert list(threads.map(refused, range(20))) == [True] * 20
        assert time.monotonic() - begun < 15
    with shop.session() as session:
        session.add(Person(name="Ada", key="ada", role="owner", password=""))
    with shop.reading() as session:
        assert session.scalars(select(Person.name)).all() == ["Ada"]
    shop.close()


def test_the_database_of_version_1_opens(tmp_path: Path) -> None:
    """Written out as SQL when its tables were made."""
    file = tmp_path / "shop.db"
    connection = sqlite3.connect(file)
    connection.executescript((KEPT / "shop-0001.sql").read_text(encoding="utf-8"))
    connection.close()
    shop = Database(f"sqlite:///{file}")
    with shop.reading() as session:
        assert read(session, "list.boards")["body"] == {"rows": [{"width": "6 1/2"}]}
        assert read(session, "list.gone")["deleted"]
        assert [(each.name, each.role) for each in session.query(Person)] == [("Ada", "owner")]
    with shop.engine.connect() as connection:
        assert compare_metadata(MigrationContext.configure(connection), Table.metadata) == []
    shop.close()


def test_a_newer_one_is_left_alone(tmp_path: Path) -> None:
    file = tmp_path / "shop.db"
    Database(f"sqlite:///{file}").close()
    with sqlite3.connect(file) as connection:
        connection.execute("UPDATE alembic_version SET version_num = '9999'")
    connection.close()
    before = file.read_bytes()
    with pytest.raises(NotOpened, match="A newer Longpoint"):
        Database(f"sqlite:///{file}")
    assert file.read_bytes() == before


@pytest.mark.parametrize(
    ("address", "words"),
    [
        ("nonsense", "no address of a database"),
        ("oracle://shop", "no address of a database"),
        ("postgresql+psycopg://127.0.0.1:1/shop?connect_timeout=2", "does not open"),
        ("sqlite:////proc/shop/shop.db", "does not open"),
        ("sqlite:///file:/proc/version?mode=ro&uri=true", "does not open"),
    ],
)
def test_what_does_not_open_says_why(address: str, words: str) -> None:
    with pytest.raises(NotOpened, match=words):
        Database(address)


def test_one_that_can_only_be_read_says_so(tmp_path: Path) -> None:
    file = tmp_path / "shop.db"
    sqlite3.connect(file).close()
    with pytest.raises(NotOpened, match="readonly"):
        Database(f"sqlite:///file:{file}?mode=ro&uri=true")


def test_a_damaged_one_is_not_worked_with(tmp_path: Path) -> None:
    file = tmp_path / "shop.db"
    Database(f"sqlite:///{file}").close()
    whole = file.read_bytes()
    torn = whole[:4096] + b"\xff" * 4096 + whole[8192:]  # a page of it
    for broken in (b"nothing of a database", whole[: len(whole) // 2], torn):
        file.write_bytes(broken)
        with pytest.raises(NotOpened, match=r"damaged|does not open"):
            Database(f"sqlite:///{file}")
