"""The front end's files over real HTTP: their types, their lifetimes, their policies."""

import gzip
import re
from base64 import b64encode
from collections.abc import Iterator
from hashlib import sha256
from http.client import HTTPConnection, HTTPResponse
from urllib.parse import urlsplit

import brotli
import pytest
from flask.testing import FlaskClient
from werkzeug.middleware.dispatcher import DispatcherMiddleware
from werkzeug.test import Client

from longpoint import front
from longpoint.app import create_app

FILES = sorted(
    path.relative_to(front.STATIC).as_posix()
    for path in front.STATIC.rglob("*")
    if path.is_file() and path.suffix not in (".br", ".gz")
)
HASHED = [name for name in FILES if name.startswith("assets/")]
FIXED = ["", *(name for name in FILES if not name.startswith("assets/") and name != "index.html")]
ALL = FIXED + HASHED


@pytest.fixture(scope="module")
def connection(address: str) -> Iterator[HTTPConnection]:
    parts = urlsplit(address)
    connection = HTTPConnection(parts.hostname or "", parts.port)
    yield connection
    connection.close()


def get(connection: HTTPConnection, name: str, **headers: str) -> tuple[HTTPResponse, bytes]:
    """Fetch a file as it lies on the wire."""
    connection.request("GET", "/" + name, headers=headers)
    response = connection.getresponse()
    return response, response.read()


def only(pattern: str) -> str:
    (name,) = [name for name in FILES if re.fullmatch(pattern, name)]
    return name


@pytest.mark.parametrize("name", ALL)
def test_every_file_is_guarded(connection: HTTPConnection, name: str) -> None:
    """CSP level 3; the Fetch standard's nosniff; no CORS header, so no other site reads it."""
    response, body = get(connection, name)
    assert response.status == 200
    assert body == (front.STATIC / (name or "index.html")).read_bytes()
    policy = response.headers["Content-Security-Policy"]
    assert "default-src 'self'" in policy
    assert "unsafe-inline" not in policy
    assert "'unsafe-eval'" not in policy
    assert response.headers["X-Content-Type-Options"] == "nosniff"
    assert response.headers["Referrer-Policy"] == "same-origin"
    assert "Access-Control-Allow-Origin" not in response.headers


def test_only_the_worker_may_compile_webassembly(connection: HTTPConnection) -> None:
    """A dedicated worker goes by the policy of its own script (CSP level 3, section 4.2.2)."""
    worker = only(r"assets/worker-\w+\.js")
    allowed = [
        name
        for name in ALL
        if "'wasm-unsafe-eval'" in get(connection, name)[0].headers["Content-Security-Policy"]
    ]
    assert allowed == [worker]


def test_the_page_may_run_the_one_script_within_it(connection: HTTPConnection) -> None:
    """By its hash (CSP level 3, section 2.3.1), worked out here from the page as it is sent."""
    page = get(connection, "")[1].decode()
    (script,) = re.findall(r"<script>(.*?)</script>", page, re.DOTALL)
    source = f"'sha256-{b64encode(sha256(script.encode()).digest()).decode()}'"
    assert source in page.split("Content-Security-Policy", 1)[1].split(">")[0]
    allowed = [
        name
        for name in ALL
        if source in get(connection, name)[0].headers["Content-Security-Policy"]
    ]
    assert allowed == [""]


@pytest.mark.parametrize("name", HASHED)
def test_hashed_names_are_kept_for_a_year(connection: HTTPConnection, name: str) -> None:
    """RFC 8246 for immutable; RFC 9111, 5.2.2.1 for max-age, in seconds."""
    kept = get(connection, name)[0].headers["Cache-Control"].split(", ")
    assert "immutable" in kept
    assert f"max-age={365 * 24 * 60 * 60}" in kept


@pytest.mark.parametrize("name", FIXED)
def test_other_names_are_asked_for_again(connection: HTTPConnection, name: str) -> None:
    """RFC 9111, 5.2.2.4: stored, but never used unasked; asking again costs no body."""
    response, _ = get(connection, name)
    assert response.headers["Cache-Control"] == "no-cache"
    again, body = get(connection, name, **{"If-None-Match": response.headers["ETag"]})
    assert (again.status, body) == (304, b"")


@pytest.mark.parametrize(
    ("pattern", "kind"),
    [
        ("index.html", "text/html"),
        ("sw.js", "text/javascript"),
        (r"assets/app-\w+\.js", "text/javascript"),
        (r"assets/style-\w+\.css", "text/css"),
        (r"assets/core-frame-\w+\.bin", "application/octet-stream"),
        (r"assets/micropython-\w+\.wasm", "application/wasm"),
        (r"manifest\.webmanifest", "application/manifest+json"),
    ],
)
def test_media_types(connection: HTTPConnection, pattern: str, kind: str) -> None:
    """RFC 9239; the WebAssembly Web API; the manifest standard's media type registration."""
    name = only(pattern)
    response, _ = get(connection, "" if name == "index.html" else name)
    assert response.headers.get_content_type() == kind


@pytest.mark.parametrize(("coding", "undo"), [("br", brotli.decompress), ("gzip", gzip.decompress)])
def test_compressed_on_request(connection: HTTPConnection, coding: str, undo: object) -> None:
    """RFC 9110, 8.4 and 12.5.3; undone with the reference libraries."""
    assert callable(undo)
    name = only(r"assets/micropython-\w+\.wasm")
    response, body = get(connection, name, **{"Accept-Encoding": coding})
    assert response.headers["Content-Encoding"] == coding
    assert "Accept-Encoding" in response.headers["Vary"]
    assert undo(body) == (front.STATIC / name).read_bytes()
    assert len(body) < 0.6 * len(undo(body))


def test_the_page_has_one_address(connection: HTTPConnection) -> None:
    """So that a service worker keeps it once: index.html leads to the folder it lies in."""
    response, _ = get(connection, "index.html")
    assert (response.status, response.headers["Location"]) == (302, "./")


def test_an_address_without_a_file(client: FlaskClient) -> None:
    response = client.get("/nothing-here")
    assert response.status_code == 404
    assert response.headers["X-Content-Type-Options"] == "nosniff"


def test_under_a_prefix() -> None:
    """A host may hang the app under a path: what the page names must be there too."""
    hung = Client(DispatcherMiddleware(create_app(), {"/trade": create_app()}))
    with hung.get("/trade/") as page:
        named = re.findall(r'(?:href|src)="([^"]+)"', page.get_data(as_text=True))
    assert named
    for name in named:
        assert not name.startswith(("/", "http")), name
        with hung.get("/trade/" + name) as response:
            assert response.status_code == 200, name
