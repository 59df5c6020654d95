"""The server under fault and load: each test is a way in which it once failed everyone."""

import json
import socket
import time
from collections.abc import Iterator
from contextlib import ExitStack, closing
from pathlib import Path
from types import SimpleNamespace
from urllib.parse import urlsplit

import pytest
from waitress import wasyncore

from longpoint import front, server
from longpoint.app import create_app
from tests.api.test_serve import run

HALF = b"GET /api/tools HTTP/1.1\r\nHost: here\r\n"
WHOLE = HALF + b"Connection: close\r\n\r\n"


@pytest.fixture
def place(address: str) -> tuple[str, int]:
    parts = urlsplit(address)
    return parts.hostname or "", parts.port or 0


def asked(place: tuple[str, int], request: bytes) -> tuple[int, dict[str, str], bytes]:
    """Send a request whole, then read the answer: status, headers, body."""
    with socket.create_connection(place, timeout=20) as link:
        link.sendall(request)
        said = b"".join(iter(lambda: link.recv(65536), b""))
    head, _, body = said.partition(b"\r\n\r\n")
    top, *lines = head.decode("latin-1").split("\r\n")
    headers = dict(line.split(": ", 1) for line in lines)
    return int(top.split(" ")[1]), headers, body


def assert_guarded(headers: dict[str, str]) -> None:
    assert {name: headers.get(name) for name in front.EVERYWHERE} == front.EVERYWHERE


def test_half_requests_keep_nobody_out(place: tuple[str, int]) -> None:
    """Waitress listens to nobody else once 100 connections are open."""
    with ExitStack() as links:
        for _ in range(server.MOST_CONNECTIONS + 50):
            link = links.enter_context(socket.create_connection(place, timeout=20))
            link.sendall(HALF)
        assert asked(place, WHOLE)[0] == 200


@pytest.fixture
def quiet() -> Iterator[tuple[SimpleNamespace, dict[int, object]]]:
    """A server that does a step when told to, and its sockets."""
    made = server.make_server(lambda environ, start: [], "127.0.0.1", 0)
    with closing(made):
        yield made, made._map
    made.task_dispatcher.shutdown()


def test_bytes_that_trickle_in_buy_no_time(
    quiet: tuple[SimpleNamespace, dict[int, object]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Each byte of half a header used to start the patience anew."""
    made, sockets = quiet
    begun = time.time()
    with socket.create_connection(("127.0.0.1", made.effective_port)) as link:
        wasyncore.poll(5, sockets)
        (channel,) = made.active_channels.values()
        for later in (0, 20):
            monkeypatch.setattr(server.time, "time", lambda later=later: begun + later)
            monkeypatch.setattr("waitress.channel.time.time", lambda later=later: begun + later)
            link.sendall(b"GET")
            wasyncore.poll(5, sockets)
        assert channel.last_activity == begun
        made.maintenance(begun + server.PATIENCE + 1)
        assert channel.will_close
        channel.handle_close()


@pytest.mark.parametrize("chunked", [False, True])
@pytest.mark.parametrize("megabytes", [5, 20])
def test_a_body_far_too_large_is_refused_in_words(
    place: tuple[str, int], megabytes: int, chunked: bool
) -> None:
    """RFC 9110, 15.5.14; a reset instead would leave the sender without a reason."""
    million = b"9" * 1_000_000
    if chunked:
        coding = "Transfer-Encoding: chunked"
        body = (b"f4240\r\n" + million + b"\r\n") * megabytes + b"0\r\n\r\n"
    else:
        coding = f"Content-Length: {megabytes * 1_000_000}"
        body = million * megabytes
    head = f"POST /api/tools/miter-fit HTTP/1.1\r\nHost: here\r\n{coding}\r\n\r\n"
    status, headers, said = asked(place, head.encode() + body)
    assert status == 413
    assert headers["Content-Type"] == "application/json"
    assert "4 MB" in json.loads(said)["message"]
    assert_guarded(headers)


def test_who_asks_first_whether_to_send_a_large_body_is_told_no(place: tuple[str, int]) -> None:
    """RFC 9110, 10.1.1: a final status instead of 100 Continue."""
    head = b"POST /api/tools/miter-fit HTTP/1.1\r\nHost: here\r\nExpect: 100-continue\r\n"
    assert asked(place, head + b"Content-Length: 99000000\r\n\r\n")[0] == 413


@pytest.mark.parametrize(
    ("request_", "expected"),
    [
        (b"GET\r\n\r\n", 400),
        (b"GET / HTTP/1.1\r\nno colon\r\n\r\n", 400),
        (b"POST / HTTP/1.1\r\nContent-Length: many\r\n\r\n", 400),
        (b"POST / HTTP/1.1\r\nTransfer-Encoding: odd\r\n\r\n", 501),
        (b"GET / HTTP/1.1\r\nX: " + b"x" * 300_000 + b"\r\n\r\n", 431),
    ],
    ids=["no address", "no header", "no length", "unknown coding", "too many headers"],
)
def test_what_is_no_request_is_answered_like_all_else(
    place: tuple[str, int], request_: bytes, expected: int
) -> None:
    """RFC 9112, 2.2, and RFC 6585, 5."""
    status, headers, said = asked(place, request_)
    assert status == expected
    assert json.loads(said)["message"]
    assert_guarded(headers)


def test_files_that_a_build_replaces_meanwhile_are_served_as_they_were(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """They came cut at their old length, and one that was gone as a bare 500."""
    (tmp_path / "index.html").write_text("the page")
    (tmp_path / "sw.js").write_text("the worker")
    monkeypatch.setattr(front, "STATIC", tmp_path)
    client = create_app().test_client()
    (tmp_path / "index.html").write_text("the page, but longer")
    (tmp_path / "sw.js").unlink()
    for path, expected in (("/", "the page"), ("/sw.js", "the worker")):
        with client.get(path) as response:
            assert (response.status_code, response.text) == (200, expected)
            assert_guarded(dict(response.headers))


@pytest.mark.parametrize("host", ["a..b", "no host", "x" * 70, "[::1", "192.0.2.1"])
def test_a_host_that_is_none(host: str) -> None:
    """192.0.2.1 is no machine's own: RFC 5737."""
    told = run("serve", f"--host={host}", "--port=0")
    assert told.returncode == 1
    assert "Can't listen" in told.stderr
    assert "Traceback" not in told.stderr
