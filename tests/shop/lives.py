"""A shop's server that lives many times: `python -m tests.shop.lives TOKEN`.

Prints the cookie of the device that holds TOKEN. Each line read is a database's address, what is
killed (`server`, `nothing`, or the folder of a PostgreSQL server) and at which step of the writes
it serves: before and after each statement, commit and answer. Prints `port PORT PID` once a life
has begun, and `struck` with the step before it kills.

The application is made once and forked, since to describe its tools takes longer than a life.
"""

import os
import signal
import sys
import threading
from contextlib import suppress
from pathlib import Path
from typing import Any

from flask import Flask, has_request_context, request
from sqlalchemy import Engine, event
from sqlalchemy.orm import Session

from longpoint.app import create_app
from longpoint.server import make_server
from longpoint.shop.database import Database
from tests.shop import postgresql


class Striker:
    """Counts the steps of writes, and kills at one of them."""

    what, step = "nothing", 0

    def __init__(self) -> None:
        self._counting = threading.Lock()

    def at(self, where: str) -> None:
        """Count a step; a request that only reads has none."""
        if not has_request_context() or request.method not in ("PUT", "DELETE"):
            return
        with self._counting:
            self.step -= 1
            is_due = self.step == 0
        if is_due and self.what != "nothing":
            print("struck", where, flush=True)
            self._kill()

    def _kill(self) -> None:
        if self.what == "server":
            os.kill(os.getpid(), signal.SIGKILL)
        postgresql.kill(Path(self.what))


def listen(engine: Engine, striker: Striker) -> None:
    """Let the striker know of every step that a database takes."""

    def told(when: str) -> Any:
        def step(_: object, __: object, statement: str, *rest: object) -> None:
            striker.at(f"{when} {' '.join(statement.split()[:2])}")

        return step

    event.listen(engine, "before_cursor_execute", told("before"))
    event.listen(engine, "after_cursor_execute", told("after"))
    event.listen(engine, "begin", lambda _: striker.at("before begin"))
    event.listen(engine, "commit", lambda _: striker.at("before commit"))


def live(app: Flask, address: str, striker: Striker) -> None:
    """Serve until killed."""
    shop = Database(address)
    listen(shop.engine, striker)
    app.config["SHOP"] = shop
    server = make_server(app, "127.0.0.1", 0)
    print("port", server.effective_port, os.getpid(), flush=True)
    server.run()


def main(token: str) -> None:
    """Begin a life for each line, until there are no more."""
    striker = Striker()
    shop = Database("sqlite://")
    app = create_app({"SHOP": shop})
    event.listen(Session, "after_commit", lambda _: striker.at("after commit"))

    def answering(response: Any) -> Any:
        striker.at("before the answer")
        return response

    app.after_request(answering)
    client = app.test_client()
    with client.session_transaction() as session:
        session["_user_id"] = token
    cookie = client.get_cookie("longpoint")
    assert cookie
    shop.close()
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)
    print("cookie", cookie.value, flush=True)
    for line in sys.stdin:
        address, striker.what, step = line.split()
        striker.step = int(step)
        if os.fork() == 0:
            with suppress(KeyboardInterrupt):
                live(app, address, striker)
            os._exit(1)


if __name__ == "__main__":
    main(sys.argv[1])
