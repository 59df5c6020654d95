"""A backup holds all, restores on either database, and is never half done."""

import sqlite3
from pathlib import Path

import pytest
from flask import Flask
from sqlalchemy import select

from longpoint.shop import people
from longpoint.shop.backup import NotDone, back_up, restore
from longpoint.shop.database import Database
from longpoint.shop.tables import Person, Shop, Table
from tests.shop.conftest import Phone, new_database, person, said, token_of
from tests.shop.test_documents import LIST


def whole(shop: Database) -> dict[str, list[tuple[object, ...]]]:
    """Return every row of every table but the number that a restored shop gets anew."""
    with shop.reading() as session:
        tables = Table.metadata.sorted_tables
        rows = {
            table.name: sorted(tuple(row) for row in session.execute(select(table)))
            for table in tables
        }
    rows["shop"] = [row[:1] + row[2:] for row in rows["shop"]]
    return rows


def filled(app: Flask, shop: Database) -> Phone:
    """Return a device of a shop in which something happened."""
    ada = Phone(app, token_of(shop, person(shop, "Ada", "owner")))
    ada.put(LIST, None, said("change-1", rows=["½"]))
    ada.put("photo.1", None, said("change-2", picture="x" * 300_000))
    ada.delete("photo.1", 1, "change-3")
    return ada


def epoch(shop: Database) -> str:
    with shop.reading() as session:
        return session.get_one(Shop, 1).epoch


def test_out_and_back_is_the_same_but_for_its_epoch(
    app: Flask, shop: Database, server: Path, tmp_path: Path
) -> None:
    """From either database into PostgreSQL, and from there into SQLite."""
    file = tmp_path / "backup.db"
    with pytest.raises(NotDone, match="Nobody is in this shop"):
        back_up(shop, file)
    filled(app, shop).put("photo.2", None, said("change-4", picture="x"))
    assert back_up(shop, file) == "1 person, 0 jobs, 1 photo"
    assert list(tmp_path.glob("backup*")) == [file], "one file, none beside it"
    assert file.stat().st_mode & 0o777 == 0o600, "for whoever made it alone"
    for address in (new_database(server), f"sqlite:///{tmp_path / 'other.db'}"):
        other = Database(address)
        restore(other, file, replace=False)
        assert whole(other) == whole(shop)
        assert epoch(other) != epoch(shop)
        # It goes on: numbers that the database gives come after those that were there.
        assert person(other, "Ben") > 1
        other.close()


def test_a_phone_hears_that_the_server_is_yesterday_s(
    app: Flask, shop: Database, tmp_path: Path
) -> None:
    ada = filled(app, shop)
    back_up(shop, tmp_path / "yesterday.db")
    ada.put(LIST, 1, said("change-9", rows=["today"]))
    before = ada.get("changes").json
    with pytest.raises(NotDone, match="--replace"):
        restore(shop, tmp_path / "yesterday.db", replace=False)
    assert ada.get(f"documents/{LIST}").json["body"] == {"rows": ["today"]}
    restore(shop, tmp_path / "yesterday.db", replace=True)
    after = ada.get(f"changes?since={before['since']}&last={before['last']}").json
    assert after["restored"]
    assert after["epoch"] != before["epoch"]
    assert [each["body"] for each in after["changes"] if not each["deleted"]] == [{"rows": ["½"]}]


def test_who_was_kept_out_since_stays_out(app: Flask, shop: Database, tmp_path: Path) -> None:
    """A phone that was lost today is signed in by yesterday's backup; hand work."""
    ada = filled(app, shop)
    lost = Phone(app, token_of(shop, person(shop, "Ben")))
    kept = Phone(app, token_of(shop, person(shop, "Cleo")))
    back_up(shop, tmp_path / "yesterday.db")
    with shop.session() as session:
        people.end_access(session, session.scalars(select(Person).filter_by(name="Ben")).one())
    new = person(shop, "Dora", "owner")
    with shop.session() as session:
        people.end_access(session, session.scalars(select(Person).filter_by(name="Ada")).one())
    restore(shop, tmp_path / "yesterday.db", replace=True)
    assert [each.get("me").status_code for each in (ada, lost, kept)] == [401, 401, 200]
    with shop.session() as session:
        assert session.get(Person, new) is None
        # She was the only owner there was yesterday: the server's own machine makes another.
        assert people.invite_first_owner(session)


def test_what_is_no_backup_touches_nothing(app: Flask, shop: Database, tmp_path: Path) -> None:
    filled(app, shop)
    before = whole(shop)
    broken = tmp_path / "broken.db"
    back_up(shop, broken)
    with pytest.raises(NotDone, match="there already"):
        back_up(shop, broken)
    broken.write_bytes(broken.read_bytes()[:20_000])
    words = tmp_path / "words.txt"
    words.write_text("no database")
    foreign = tmp_path / "foreign.db"
    with sqlite3.connect(foreign) as connection:
        connection.execute("CREATE TABLE songs (title)")
    connection.close()
    newer = tmp_path / "newer.db"
    back_up(shop, newer)
    with sqlite3.connect(newer) as connection:
        connection.execute("UPDATE alembic_version SET version_num = '9999'")
    connection.close()
    refused = {
        broken: r"damaged|malformed",
        words: "no backup",
        foreign: "no backup",
        newer: "newer Longpoint",
        tmp_path / "none": "no file",
    }
    for file, said_of_it in refused.items():
        with pytest.raises(NotDone, match=said_of_it):
            restore(shop, file, replace=True)
    assert whole(shop) == before
    with pytest.raises(NotDone, match="Can't write"):
        back_up(shop, words / "file.db")


def test_a_half_backup_is_none(app: Flask, shop: Database, tmp_path: Path) -> None:
    """What was begun and never ended lies in nobody's way, and what is half restored is not."""
    filled(app, shop)
    before = whole(shop)
    (tmp_path / "backup.db.part").write_bytes(b"begun")
    (tmp_path / "backup.db.part-wal").write_bytes(b"begun")
    file = tmp_path / "backup.db"
    back_up(shop, file)
    assert list(tmp_path.glob("backup*")) == [file]
    with sqlite3.connect(file) as connection:
        connection.execute("UPDATE changes SET person_id = 99")  # nobody
    connection.close()
    with pytest.raises(NotDone, match="can't be restored"):
        restore(shop, file, replace=True)
    assert whole(shop) == before
