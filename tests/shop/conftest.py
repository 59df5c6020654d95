"""A shop's server in this process, on each kind of database, and devices that are signed in."""

import json
import secrets
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from argon2 import PasswordHasher
from flask import Flask
from flask.testing import FlaskClient
from sqlalchemy import NullPool, create_engine, make_url, text
from werkzeug.test import TestResponse

from longpoint.app import create_app
from longpoint.shop import passwords, people
from longpoint.shop.database import Database
from longpoint.shop.pages import limiter
from longpoint.shop.signed_in import hash_of
from longpoint.shop.tables import Device, Person
from tests.shop import postgresql
from tests.shop.visitor import Visitor, invited


@pytest.fixture(scope="session")
def server() -> Iterator[Path]:
    """The folder of a PostgreSQL server's socket."""
    if not postgresql.programs():
        pytest.skip("no PostgreSQL here")
    with postgresql.running() as folder:
        yield folder


def new_database(folder: Path, template: str = "template0") -> str:
    """Return the address of a new PostgreSQL database, as empty as its template."""
    name = f"t{secrets.token_hex(6)}"
    engine = create_engine(postgresql.address_of(folder, "postgres"), poolclass=NullPool)
    with engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        connection.execute(text(f"CREATE DATABASE {name} TEMPLATE {template}"))
    return postgresql.address_of(folder, name)


@pytest.fixture(scope="session")
def made_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A new shop's SQLite database, to be copied: to make its tables takes longer."""
    file = tmp_path_factory.mktemp("made") / "shop.db"
    Database(f"sqlite:///{file}").close()
    return file


@pytest.fixture(scope="session")
def made_name(server: Path) -> str:
    """The name of a new shop's PostgreSQL database, to be copied."""
    address = new_database(server)
    Database(address).close()
    return make_url(address).database or ""


@pytest.fixture(params=["sqlite", "postgresql"])
def shop_address(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """The address of a new shop's database of each kind."""
    if request.param == "sqlite":
        file = tmp_path / "shop.db"
        shutil.copyfile(request.getfixturevalue("made_file"), file)
        return f"sqlite:///{file}"
    made = request.getfixturevalue("made_name")
    return new_database(request.getfixturevalue("server"), made)


@pytest.fixture
def shop(shop_address: str) -> Iterator[Database]:
    database = Database(shop_address)
    yield database
    database.close()


@pytest.fixture(scope="session")
def application(made_file: Path) -> Iterator[Flask]:
    """The application, made once: to describe its tools takes longer than a test."""
    database = Database(f"sqlite:///{made_file}")
    yield create_app({"SHOP": database})
    database.close()


@pytest.fixture
def app(application: Flask, shop: Database) -> Flask:
    """The application on this test's database."""
    application.config["SHOP"] = shop
    return application


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


def said(change: str, **body: Any) -> dict[str, Any]:
    """Return what a change says."""
    return {"change_id": change, "units": "in", "schema": 1, "body": body}


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


@pytest.fixture
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keep passwords by less work than the server does."""
    monkeypatch.setattr(passwords, "_hasher", PasswordHasher(1, 8, 1))


@pytest.fixture
def unlimited(application: Flask) -> Iterator[None]:
    """No tries that failed are counted yet."""
    limiter.reset()
    yield
    limiter.reset()


@pytest.fixture
def owner(app: Flask, shop: Database, quick: None, unlimited: None) -> Visitor:
    """Ada at a browser, who took up the first owner's invitation."""
    visitor = Visitor(app)
    with shop.session() as session:
        token = people.invite_first_owner(session)
    assert token
    assert visitor.join(token, "Ada").status_code == 303
    return visitor


@pytest.fixture
def crew(app: Flask, shop: Database, owner: Visitor) -> Visitor:
    """Ben, whom Ada invited."""
    visitor = Visitor(app)
    assert visitor.join(invited(shop), "Ben").status_code == 303
    return visitor
