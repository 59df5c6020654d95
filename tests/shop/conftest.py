"""A shop's server in this process, on each kind of database, and devices that are signed in."""

import json
import secrets
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from sqlalchemy import NullPool, create_engine, text
from werkzeug.test import TestResponse

from longpoint.app import create_app
from longpoint.shop.database import Database
from longpoint.shop.signed_in import hash_of
from longpoint.shop.tables import Device, Person
from tests.shop import postgresql


@pytest.fixture(scope="session")
def server() -> Iterator[Path]:
    """The folder of a PostgreSQL server's socket."""
    if not postgresql.programs():
        pytest.skip("no PostgreSQL here")
    with postgresql.running() as folder:
        yield folder


def new_database(folder: Path) -> str:
    """Return the address of a new PostgreSQL database with nothing in it."""
    name = f"t{secrets.token_hex(6)}"
    engine = create_engine(postgresql.address_of(folder, "postgres"), poolclass=NullPool)
    with engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        connection.execute(text(f"CREATE DATABASE {name}"))
    return postgresql.address_of(folder, name)


@pytest.fixture(params=["sqlite", "postgresql"])
def shop_address(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """The address of an empty database of each kind."""
    if request.param == "sqlite":
        return f"sqlite:///{tmp_path / 'shop.db'}"
    return new_database(request.getfixturevalue("server"))


@pytest.fixture
def shop(shop_address: str) -> Iterator[Database]:
    database = Database(shop_address)
    yield database
    database.close()


@pytest.fixture
def app(shop: Database) -> Flask:
    return create_app({"SHOP": shop})


class Phone:
    """A device that asks the server, signed in as someone or as nobody."""

    def __init__(self, app: Flask, token: str = "") -> None:
        self.client: FlaskClient = app.test_client()
        if token:
            with self.client.session_transaction() as session:
                session["_user_id"] = token
                session["_fresh"] = True

    def get(self, path: str) -> TestResponse:
        return self.client.get(f"/api/{path}")

    def put(self, name: str, to: int | None, said: dict[str, Any]) -> TestResponse:
        """Write a document as of a revision; None begins it."""
        condition = {"If-None-Match": "*"} if to is None else {"If-Match": f'"{to}"'}
        return self.client.put(
            f"/api/documents/{name}", data=json.dumps(said), content_type="application/json",
            headers=condition,
        )  # fmt: skip

    def delete(self, name: str, to: int, change_id: str) -> TestResponse:
        return self.client.delete(
            f"/api/documents/{name}?change_id={change_id}", headers={"If-Match": f'"{to}"'}
        )


def person(shop: Database, name: str, role: str = "crew") -> int:
    """Make someone of the shop who can't sign in with a password; return their number."""
    with shop.session() as session:
        someone = Person(name=name, key=name.casefold(), role=role, password="none")
        session.add(someone)
        session.flush()
        return someone.id


def token_of(shop: Database, person_id: int, title: str = "a phone") -> str:
    """Make a device of someone, and return its token."""
    token = secrets.token_urlsafe(32)
    with shop.session() as session:
        session.add(Device(person_id=person_id, token=hash_of(token), title=title))
    return token


@pytest.fixture
def ada(app: Flask, shop: Database) -> Phone:
    return Phone(app, token_of(shop, person(shop, "Ada", "owner")))


@pytest.fixture
def ben(app: Flask, shop: Database) -> Phone:
    return Phone(app, token_of(shop, person(shop, "Ben")))
