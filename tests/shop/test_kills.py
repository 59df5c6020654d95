"""Server and database killed between any two steps of a write: nothing acknowledged is lost.

LONGPOINT_KILLS is how often of each kind; DEVELOPERS.md tells what 200 came to.
"""

import http.client
import json
import os
import random
import signal
import subprocess
import sys
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing, contextmanager, suppress
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select

from longpoint.shop.database import Database
from longpoint.shop.signed_in import hash_of
from longpoint.shop.tables import Change, Device, Person, Shop
from tests.shop import postgresql
from tests.shop.conftest import new_database

KILLS = int(os.environ.get("LONGPOINT_KILLS", "3"))
STEPS = 73
"""Of some three writes."""
TOKEN = "a device of the tests"
Reply = tuple[int, dict[str, Any]]


class Lives:
    """The program that serves, one life after another."""

    def __init__(self, process: "subprocess.Popen[str]") -> None:
        self.process, self.struck = process, []  # type: ignore[var-annotated]
        self.cookie = self._said("cookie")[0]

    def _said(self, word: str) -> list[str]:
        assert self.process.stdout
        while line := self.process.stdout.readline():
            first, *rest = line.split()
            if first == word:
                return rest
            if first == "struck":
                self.struck.append(" ".join(rest))
        raise AssertionError(f"the server said no {word}")

    @contextmanager
    def life(self, address: str, what: str = "nothing", step: int = 0) -> Iterator[int]:
        """Serve a database on the port that is given, until the end or the kill."""
        with self.at_once(1, address, what, step) as ports:
            yield ports[0]

    @contextmanager
    def at_once(
        self, count: int, address: str, what: str = "nothing", step: int = 0
    ) -> Iterator[list[int]]:
        """Serve a database by several processes that start at the same time."""
        assert self.process.stdin
        self.process.stdin.write(f"{address} {what} {step}\n" * count)
        self.process.stdin.flush()
        begun = [tuple(map(int, self._said("port"))) for _ in range(count)]
        try:
            yield [port for port, _ in begun]
        finally:
            for _, pid in begun:
                with suppress(ProcessLookupError):
                    os.kill(pid, signal.SIGKILL)


@pytest.fixture(scope="module")
def lives() -> Iterator[Lives]:
    command = [sys.executable, "-m", "tests.shop.lives", TOKEN]
    with subprocess.Popen(
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as process:
        yield Lives(process)


class Writer:
    """A phone that changes documents, and knows what it was told of each."""

    def __init__(self, cookie: str, seed: int = 1) -> None:
        self.headers = {"Cookie": f"longpoint={cookie}", "Content-Type": "application/json"}
        self.chance, self.port, self.count = random.Random(seed), 0, 0
        self.known: dict[str, tuple[int, Any]] = {}
        self.acknowledged: list[tuple[str, str, int]] = []
        self.waiting: dict[str, Any] | None = None

    def ask(self, method: str, path: str, said: Any = None, **headers: str) -> Reply | None:
        """Ask the server; None where it or its database dies over it."""
        body = None if said is None else json.dumps(said)
        with closing(http.client.HTTPConnection("127.0.0.1", self.port, timeout=60)) as link:
            try:
                link.request(method, path, body, self.headers | headers)
                reply = link.getresponse()
                found = reply.status, json.loads(reply.read())
            except (OSError, http.client.HTTPException):
                return None
        return None if found[0] == 503 else found

    def make_a_change(self) -> None:
        """Choose a document, and what is done to it."""
        self.count += 1
        name = f"list.{self.chance.randint(1, 4)}"
        rev, state = self.known.get(name, (0, None))
        body = {"at": self.count, "much": "x" * self.chance.choice((1, 100_000))}
        goes = state is not None and self.chance.random() < 0.25
        self.waiting = {
            "name": name, "rev": rev, "begins": state is None,
            "id": f"change-{self.count:05}", "body": None if goes else body,
        }  # fmt: skip

    def send(self) -> bool:
        """Send the change that waits, and note what it is told; False where nothing is told."""
        assert self.waiting
        change = self.waiting
        path = f"/api/documents/{change['name']}"
        tag = {"If-None-Match": "*"} if change["begins"] else {"If-Match": f'"{change["rev"]}"'}
        if change["body"] is None:
            reply = self.ask("DELETE", f"{path}?change_id={change['id']}", **tag)
        else:
            said = {"change_id": change["id"], "units": "in", "schema": 1, "body": change["body"]}
            reply = self.ask("PUT", path, said, **tag)
        if reply is None:
            return False
        status, told = reply
        assert status in (200, 201), told
        assert told["rev"] == change["rev"] + 1
        assert told["seq"] == len(self.acknowledged) + 1
        self.known[change["name"]] = (told["rev"], change["body"])
        self.acknowledged.append((change["id"], change["name"], told["rev"]))
        self.waiting = None
        return True

    def live_on(self, changes: int) -> bool:
        """Make changes until so many are acknowledged, or nothing is told."""
        for _ in range(changes):
            if self.waiting is None:
                self.make_a_change()
            if not self.send():
                return False
        return True

    def assert_all_is_there(self) -> None:
        """Read the whole feed: each document once, as it was acknowledged last, in order."""
        told, since, last, more = [], 0, "", True
        while more:
            reply = self.ask("GET", f"/api/changes?since={since}&last={last}&limit=2")
            assert reply
            part = reply[1]
            assert not part["restored"]
            told += part["changes"]
            since, last, more = part["since"], part["last"], part["more"]
        assert [each["seq"] for each in told] == sorted({each["seq"] for each in told})
        assert {each["id"]: (each["rev"], each.get("body")) for each in told} == self.known


def signed_up(address: str) -> None:
    """Let the device of the tests in."""
    shop = Database(address)
    with shop.session() as session:
        ada = Person(name="Ada", key="ada", role="owner", password="none")
        session.add(ada)
        session.flush()
        session.add(Device(person_id=ada.id, token=hash_of(TOKEN), title="a phone"))
    shop.close()


def assert_whole(address: str, writer: Writer) -> None:
    """Open the database, which checks it, and find each acknowledged change once, in order."""
    shop = Database(address)
    with shop.reading() as session:
        kept = session.execute(
            select(Change.seq, Change.change_id, Change.document_id, Change.rev).order_by(
                Change.seq
            )
        ).all()
        assert session.get_one(Shop, 1).seq == len(kept)
    shop.close()
    assert [tuple(row) for row in kept] == [
        (seq, *each) for seq, each in enumerate(writer.acknowledged, 1)
    ]


def steps() -> list[int]:
    """Return at which step each life ends: spread over all of them."""
    return [1 + at * STEPS // KILLS if KILLS < STEPS else 1 + at % STEPS for at in range(KILLS)]


def test_the_server_is_killed(lives: Lives, shop_address: str) -> None:
    """Its next life answers the change that was on its way, made already or not."""
    signed_up(shop_address)
    writer = Writer(lives.cookie)
    for step in steps():
        with lives.life(shop_address, "server", step) as writer.port:
            assert not writer.live_on(STEPS), "it was killed"
        with lives.life(shop_address) as writer.port:
            assert writer.live_on(2)
            writer.assert_all_is_there()
    assert_whole(shop_address, writer)
    print(len(set(lives.struck)), "kinds of steps:", sorted(set(lives.struck)))


def test_the_database_is_killed(lives: Lives, server: Path, made_name: str) -> None:
    """The server goes on with the database once that is back."""
    address = new_database(server, made_name)
    signed_up(address)
    writer = Writer(lives.cookie)
    for step in steps():
        with lives.life(address, str(server), step) as writer.port:
            assert not writer.live_on(STEPS), "it was killed"
            postgresql.start(server)
            assert writer.live_on(2)
            writer.assert_all_is_there()
    assert_whole(address, writer)


@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_two_processes_begin_and_write_at_once(
    lives: Lives, kind: str, request: pytest.FixtureRequest, tmp_path: Path
) -> None:
    """One makes the tables. Each adds to what it read, and no addition is lost."""
    address = f"sqlite:///{tmp_path / 'new.db'}"
    if kind == "postgresql":
        address = new_database(request.getfixturevalue("server"))

    def add(port: int, whose: str) -> None:
        writer = Writer(lives.cookie)
        writer.port = port
        rev, body, done = 0, {"sum": 0}, 0
        while done < 15:
            change = f"change-{whose}-{done}-{rev}"
            said = {
                "change_id": change,
                "units": "in",
                "schema": 1,
                "body": {"sum": body["sum"] + 1},
            }
            tag = {"If-Match": f'"{rev}"'} if rev else {"If-None-Match": "*"}
            reply = writer.ask("PUT", "/api/documents/list.sum", said, **tag)
            assert reply
            status, told = reply
            if status == 412:
                rev, body = told["current"]["rev"], told["current"]["body"]
            else:
                assert status in (200, 201), told
                rev, body, done = told["rev"], said["body"], done + 1

    with lives.at_once(2, address) as (one, other):
        signed_up(address)
        with ThreadPoolExecutor(2) as both:
            for each in [both.submit(add, one, "one"), both.submit(add, other, "other")]:
                each.result()
        writer = Writer(lives.cookie)
        writer.port = one
        reply = writer.ask("GET", "/api/documents/list.sum")
    assert reply
    assert (reply[1]["rev"], reply[1]["body"]) == (30, {"sum": 30})
