"""Who computes long does it in a process of its own: bounded, queued, replaced when it dies."""

import json
import os
import signal
import urllib.error
import urllib.request
from collections.abc import Iterator
from concurrent.futures import FIRST_COMPLETED, Future, ThreadPoolExecutor, wait
from typing import Any, NamedTuple

import pytest
from werkzeug.serving import make_server

from longpoint.api.computing import BUSY_WORDS, LOST_WORDS
from longpoint.app import create_app
from longpoint.trade.lengths import Scale
from longpoint.trade.refusal import Refusal
from longpoint.workers import pool
from longpoint.workers.computed import Asked
from longpoint.workers.pool import Broken, Lost, Workers
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
                for at, letter in enumerate("AB")
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
    """The application over HTTP, with one process that computes."""

    def __init__(self) -> None:
        # Time enough on any machine: what is tried at the limit sets it itself.
        self.workers = Workers(1, seconds=300)
        self.app = create_app({"WORKERS": self.workers})
        self.http = make_server("127.0.0.1", 0, self.app, threaded=True)
        self.threads = ThreadPoolExecutor()
        self.threads.submit(self.http.serve_forever)

    def close(self) -> None:
        self.workers.close()
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
            with urllib.request.urlopen(request, timeout=300) as response:
                return Reply(response.status, None, json.load(response))
        except urllib.error.HTTPError as error:
            with error:
                return Reply(error.code, error.headers["Retry-After"], json.load(error))

    def begin(self, path: str, body: Any) -> "Future[Reply]":
        return self.threads.submit(self.ask, path, body)


@pytest.fixture(scope="module")
def server() -> Iterator[Server]:
    made = Server()
    yield made
    made.close()


def process_of(workers: Workers) -> int:
    process = workers._all[0]._process
    assert process
    assert process.pid
    return process.pid


def refusal(reply: Reply) -> str:
    assert reply.status == 503
    # RFC 9110, 10.2.3: a number of seconds.
    assert int(reply.retry_after or "") > 0
    return str(reply.body["message"])


def test_no_process_is_started_for_what_is_short() -> None:
    workers = Workers(1)
    client = create_app({"WORKERS": workers}).test_client()
    assert client.post("/api/tools/stick-plan", json=SHORT).status_code == 200
    assert client.get("/api/tools").status_code == 200
    assert workers._all[0]._process is None


def test_long_ones_queue_others_come_back_and_all_else_is_answered(server: Server) -> None:
    """Four searches at once once kept every other request waiting for minutes."""
    figures = {
        each["name"]: each["value"] for each in server.ask("tools/stick-plan", LONG).body["figures"]
    }
    # The published optimum: 60 pieces, three to a stick.
    assert figures["sticks_used"] == 20
    os.kill(process_of(server.workers), signal.SIGSTOP)
    begun = {server.begin("tools/stick-plan", LONG) for _ in range(server.workers.places + 1)}
    done, waiting = wait(begun, return_when=FIRST_COMPLETED)
    assert [refusal(each.result()) for each in done] == [BUSY_WORDS]
    assert server.ask("tools").status == 200
    assert server.ask("tools/stick-plan").status == 200
    assert server.ask("tools/stick-plan", SHORT).status == 200
    assert not [each for each in waiting if each.done()]
    os.kill(process_of(server.workers), signal.SIGCONT)
    assert {each.result().status for each in waiting} == {200}


def test_at_its_limit_a_search_gives_the_best_it_has_and_a_job_a_sentence(
    server: Server, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(server.workers, "seconds", 0)
    reply = server.ask("tools/stick-plan", LONG)
    assert reply.status == 200
    assert reply.body["progress"] < 1
    assert len(reply.body["pieces"])
    assert refusal(server.ask("jobs", JOB)) == LOST_WORDS
    monkeypatch.undo()
    assert server.ask("jobs", JOB).status == 200


class Deadly(dict[str, Any]):
    """What ends the process that reads it, as a want of memory would."""

    def __reduce__(self) -> Any:
        return os._exit, (3,)


def test_a_process_that_dies_is_replaced(server: Server) -> None:
    workers, long = server.workers, Asked("stick-plan", LONG, Scale())
    with pytest.raises(Lost):
        workers.compute(Asked("", Deadly(), Scale()))
    assert workers.compute(long)
    os.kill(process_of(workers), signal.SIGKILL)
    workers._all[0]._process.join()  # type: ignore[union-attr]  # it was started
    assert workers.compute(long)


def test_a_process_that_comes_to_no_end_is_ended(
    server: Server, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert server.ask("tools/stick-plan", LONG).status == 200
    os.kill(process_of(server.workers), signal.SIGSTOP)
    monkeypatch.setattr(server.workers, "seconds", 0)
    monkeypatch.setattr(pool, "GRACE", 0)
    assert refusal(server.ask("tools/stick-plan", LONG)) == LOST_WORDS
    monkeypatch.undo()
    assert server.ask("tools/stick-plan", LONG).status == 200


def test_what_is_refused_or_breaks_there_is_told_here(server: Server) -> None:
    short = {"pieces": [{"length": 120}], "sticks": [{"length": 96}]}
    with pytest.raises(Refusal) as here:
        server.workers.compute(Asked("stick-plan", short, Scale()))
    assert here.value.errors[0].message
    with pytest.raises(Broken, match="KeyError"):
        server.workers.compute(Asked("no-tool", {}, Scale()))


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
