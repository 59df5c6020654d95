"""One search at a time: others are told when to come back, and all else is answered meanwhile."""

import json
import threading
import urllib.error
import urllib.request
from collections.abc import Iterator
from concurrent.futures import Future, ThreadPoolExecutor
from typing import Any, NamedTuple

import pytest
from werkzeug.serving import make_server

from longpoint.api import jobs, search_gate
from longpoint.app import create_app
from longpoint.trade.job import working
from longpoint.trade.job.memory import Memory
from tests.trade.cutting.published import T60_00, listed

# Falkenauer's triplets (published): far too many ways for a first glance.
LONG = {
    "pieces": [{"length": length / 10} for length in listed(T60_00)],
    "sticks": [{"length": 100}],
    "kerf": 0,
}
SHORT = {"pieces": [{"length": 24, "count": 3}], "sticks": [{"length": 96}]}
JOB: dict[str, Any] = {
    "longpoint": "job",
    "schema": 1,
    "id": "job-1",
    "title": "Fence",
    "items": [
        {
            "id": "item-1",
            "title": "Rails",
            "entries": [
                {
                    "id": f"entry-{at}",
                    "letter": letter,
                    "tool": "stick-plan",
                    "inputs": LONG | {"keep": 10 + at},
                }
                for at, letter in enumerate("ABCDEFGH")
            ],
        }
    ],
}


class Reply(NamedTuple):
    """What came over the wire."""

    status: int
    retry_after: str | None
    body: Any


class Server:
    """The application over HTTP; a search that goes on stands still until it is let go."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.searching, self.may_go_on = threading.Event(), threading.Event()
        search_on = search_gate._searched

        def held(replies: Iterator[Any], last: Any) -> Any:
            self.searching.set()
            assert self.may_go_on.wait(60)
            return search_on(replies, last)

        monkeypatch.setattr(search_gate, "_searched", held)
        self.http = make_server("127.0.0.1", 0, create_app(), threaded=True)
        self.threads = ThreadPoolExecutor()
        self.threads.submit(self.http.serve_forever)

    def close(self) -> None:
        self.may_go_on.set()
        self.http.shutdown()
        self.threads.shutdown()
        self.http.server_close()

    def ask(self, path: str, body: Any = None) -> Reply:
        request = urllib.request.Request(
            f"http://127.0.0.1:{self.http.port}/api/{path}",
            data=None if body is None else json.dumps(body).encode(),
            headers={"Content-Type": "application/json"},
        )
        try:
            with urllib.request.urlopen(request, timeout=60) as response:
                return Reply(response.status, None, json.load(response))
        except urllib.error.HTTPError as error:
            with error:
                return Reply(error.code, error.headers["Retry-After"], json.load(error))

    def begin(self, path: str, body: Any) -> "Future[Reply]":
        """Ask from a thread of its own; return once its search has begun."""
        asked = self.threads.submit(self.ask, path, body)
        assert self.searching.wait(60)
        return asked


@pytest.fixture
def server(monkeypatch: pytest.MonkeyPatch) -> Iterator[Server]:
    made = Server(monkeypatch)
    yield made
    made.close()


def test_one_searches_others_come_back_and_all_else_is_answered(server: Server) -> None:
    """Four searches at once once kept every other request waiting for minutes."""
    first = server.begin("tools/stick-plan", LONG)
    others = [server.threads.submit(server.ask, "tools/stick-plan", LONG) for _ in range(3)]
    for other in others:
        status, retry_after, body = other.result(60)
        assert status == 503
        # RFC 9110, 10.2.3: a number of seconds.
        assert int(retry_after or "") > 0
        assert body == {
            "code": 503,
            "status": "Service Unavailable",
            "message": "Another search is under way: ask again in a few seconds. "
            "All else is answered meanwhile.",
        }
    assert server.ask("tools").status == 200
    assert server.ask("tools/stick-plan").status == 200
    assert server.ask("tools/stick-plan", SHORT).status == 200
    assert not first.done()
    server.may_go_on.set()
    figures = {each["name"]: each["value"] for each in first.result(60).body["figures"]}
    assert figures["sticks_used"] == 20
    assert server.ask("tools/stick-plan", LONG).status == 200


def test_a_long_job_takes_the_place_too(server: Server, monkeypatch: pytest.MonkeyPatch) -> None:
    first = server.begin("tools/stick-plan", LONG)
    assert server.ask("jobs", JOB).status == 200
    # What is remembered takes no steps; this job is to be a new one.
    monkeypatch.setattr(working, "_memory", Memory(600))
    monkeypatch.setattr(jobs, "FREE", len(JOB["items"][0]["entries"]) - 2)
    assert server.ask("jobs", JOB).status == 503
    server.may_go_on.set()
    assert first.result(60).status == 200
    assert server.ask("jobs", JOB).status == 200


def test_a_search_that_breaks_leaves_its_place(
    server: Server, monkeypatch: pytest.MonkeyPatch
) -> None:
    server.may_go_on.set()
    monkeypatch.setattr(search_gate, "_searched", lambda replies, last: 1 / 0)
    assert server.ask("tools/stick-plan", LONG).status == 500
    monkeypatch.undo()
    assert server.ask("tools/stick-plan", LONG).status == 200


def test_the_description_tells_of_it(server: Server) -> None:
    paths = server.ask("openapi.json").body["paths"]
    busy = {
        path
        for path, operations in paths.items()
        if "503" in operations.get("post", {}).get("responses", {})
    }
    plans = {"/api/tools/stick-plan", "/api/tools/sheet-plan"}
    assert busy == plans | {"/api/jobs", "/api/jobs/calendar"}
    described = paths["/api/tools/stick-plan"]["post"]["responses"]["503"]
    assert described["headers"]["Retry-After"]["schema"] == {"type": "integer"}
    assert "application/json" in described["content"]
