"""The shop's server as a machine runs it: it says how it is, logs without names, and stops well."""

import http.client
import json
import os
import signal
import subprocess
import urllib.parse
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

import pytest
from flask import Flask
from sqlalchemy import text

from longpoint.app import create_app
from longpoint.shop.database import Database
from tests.api.test_computing import LONG, SHORT
from tests.serving import SHARED


def test_health_is_whether_the_database_answers(app: Flask, shop: Database) -> None:
    client = app.test_client()
    assert (client.get("/healthz").status_code, client.get("/healthz").text) == (200, "ok\n")
    with shop.engine.begin() as connection:
        connection.execute(text("ALTER TABLE shop RENAME TO gone"))
    assert client.get("/healthz").status_code == 503


def test_health_without_a_shop() -> None:
    assert create_app().test_client().get("/healthz").text == "ok\n"


@contextmanager
def running(log: Path) -> Iterator[tuple[subprocess.Popen[str], http.client.HTTPConnection]]:
    """Run the shop's server with its log in a file; give it and a connection to it."""
    environment = os.environ | {"PYTHONUNBUFFERED": "1", "LONGPOINT_LOG": "debug"}
    with (
        log.open("w") as file,
        subprocess.Popen(
            SHARED, stdout=subprocess.PIPE, stderr=file, text=True, env=environment
        ) as process,
    ):
        assert process.stdout
        address = urllib.parse.urlsplit(process.stdout.readline().split()[-1])
        link = http.client.HTTPConnection(address.hostname or "", address.port, timeout=60)
        try:
            yield process, link
        finally:
            link.close()
            process.kill()


def told(link: http.client.HTTPConnection, method: str, path: str, body: str = "") -> int:
    link.request(method, path, body, {"Content-Type": "application/json"})
    with link.getresponse() as came:
        came.read()
        return came.status


def children(process: int) -> list[int]:
    """Return the processes that compute for a server."""
    # Linux lists them by the thread that began them.
    lists = Path(f"/proc/{process}/task").glob("*/children")
    found = [each for listed in lists for each in listed.read_text().split()]
    named = {int(each): Path(f"/proc/{each}/cmdline").read_bytes() for each in found}
    return [each for each, command in named.items() if b"spawn_main" in command]


def test_it_logs_without_names_and_stops_when_all_is_answered(tmp_path: Path) -> None:
    log = tmp_path / "log"
    with running(log) as (process, link):
        assert told(link, "GET", "/") == 200
        assert told(link, "GET", "/join/a-secret-token?next=Ada") == 404
        assert told(link, "GET", "/Ada") == 404
        assert told(link, "GET", "/healthz") == 200
        assert told(link, "POST", "/api/tools/stick-plan", json.dumps(LONG)) == 200
        computing = children(process.pid)
        assert computing
        stop_within_a_request(process, link)
        assert not [each for each in computing if Path(f"/proc/{each}").exists()]
    check_log(log.read_text())


def stop_within_a_request(process: subprocess.Popen[str], link: http.client.HTTPConnection) -> None:
    """Send half a request, tell the server to stop, then send the rest: it is answered whole."""
    body = json.dumps(SHORT).encode()
    head = (
        "POST /api/tools/stick-plan HTTP/1.1\r\nHost: here\r\nContent-Type: application/json\r\n"
        f"Expect: 100-continue\r\nContent-Length: {len(body)}\r\n\r\n"
    )
    link.sock.sendall(head.encode())
    # The server has it in hand: it asks for the rest.
    assert link.sock.recv(100).startswith(b"HTTP/1.1 100")
    process.send_signal(signal.SIGTERM)
    with pytest.raises(OSError, match=r"[Rr]efused|reset|closed"):
        ask_for_ever(link.host, link.port)
    link.sock.sendall(body)
    answered = b"".join(iter(lambda: link.sock.recv(65536), b""))
    assert answered.startswith(b"HTTP/1.1 200 OK")
    assert answered.rstrip().endswith(b"}")
    assert process.wait(60) == 0


def ask_for_ever(host: str, port: int) -> None:
    while True:
        with closing(http.client.HTTPConnection(host, port, timeout=60)) as link:
            told(link, "GET", "/healthz")


def check_log(log: str) -> None:
    assert "Ada" not in log
    assert "secret" not in log
    assert "127.0.0.1" not in log
    lines = [json.loads(line) for line in log.splitlines()]
    asked = [line for line in lines if "route" in line]
    names = {"time", "level", "method", "route", "status", "ms", "bytes"}
    assert {frozenset(line) for line in asked} == {frozenset(names)}
    said = [(line["route"], line["status"], line["level"]) for line in asked]
    assert said[:5] == [
        ("(file)", 200, "info"),
        ("/join/<token>", 404, "info"),
        ("(unknown)", 404, "info"),
        ("/healthz", 200, "debug"),
        ("/api/tools/stick-plan", 200, "info"),
    ]
    assert said[-1] == ("/api/tools/stick-plan", 200, "info")
