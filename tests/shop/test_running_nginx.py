"""Two processes of the shop's server on one PostgreSQL, behind nginx as it is deployed.

What a browser gets over HTTPS: RFC 9110 (conditions, refusals), RFC 6265 (cookies), RFC 6797
(HSTS), W3C Service Workers.
"""

import http.client
import json
import re
import ssl
import urllib.parse
from collections.abc import Iterator
from contextlib import ExitStack
from html import unescape
from pathlib import Path
from typing import Any, NamedTuple

import pytest
from sqlalchemy import text

from longpoint import front
from longpoint.shop.database import Database
from tests.serving import SHARED, served
from tests.shop import nginx, redis
from tests.shop.conftest import new_database
from tests.shop.visitor import PASSWORD, invited

JSON = {"Content-Type": "application/json"}


class Reply(NamedTuple):
    """What came over the wire; a header that came twice stands twice."""

    status: int
    headers: list[tuple[str, str]]
    body: bytes

    def all(self, name: str) -> list[str]:
        return [value for key, value in self.headers if key.lower() == name.lower()]

    def header(self, name: str) -> str:
        (only,) = self.all(name)
        return only


class Browser:
    """Asks over HTTPS, trusts the certificate, and keeps its cookie."""

    def __init__(self, port: int, folder: Path) -> None:
        trusted = ssl.create_default_context(cafile=nginx.certificate(folder))
        self.link = http.client.HTTPSConnection(nginx.NAME, port, timeout=60, context=trusted)
        self.origin = f"https://{nginx.NAME}:{port}"
        self.cookie = ""

    def ask(
        self, method: str, path: str, body: Any = None, headers: dict[str, str] | None = None
    ) -> Reply:
        sent = {"Cookie": self.cookie, "Referer": self.origin + path} | (headers or {})
        self.link.request(method, path, body, sent)
        came = self.link.getresponse()
        reply = Reply(came.status, came.getheaders(), came.read())
        for each in reply.all("Set-Cookie"):
            self.cookie = each.split(";")[0]
        return reply

    def send(self, path: str, **fields: str) -> Reply:
        page = self.ask("GET", path).body.decode()
        token = re.search(r'name="csrf_token"[^>]*value="([^"]+)"', page)
        assert token, page
        form = urllib.parse.urlencode({"csrf_token": unescape(token[1]), **fields})
        return self.ask("POST", path, form, {"Content-Type": "application/x-www-form-urlencoded"})

    def put(self, change: str, body: Any, **conditions: str) -> Reply:
        said = {"change_id": change, "units": "in", "schema": 1, "body": body}
        return self.ask("PUT", "/api/documents/list.boards", json.dumps(said), JSON | conditions)


@pytest.fixture
def shop(server: Path, made_name: str) -> Iterator[Database]:
    made = Database(new_database(server, made_name))
    yield made
    made.close()


@pytest.fixture
def ports(shop: Database, tmp_path: Path) -> Iterator[tuple[int, int]]:
    if not (nginx.program() and redis.program()):
        pytest.skip("no nginx or no Redis here")
    with ExitStack() as opened:
        settings = {
            "LONGPOINT_DATABASE": shop.engine.url.render_as_string(hide_password=False),
            "LONGPOINT_PROXIES": "1",
            "LONGPOINT_LIMITS": opened.enter_context(redis.running(tmp_path)),
        }
        addresses = [opened.enter_context(served(SHARED, settings=settings)) for _ in range(2)]
        yield opened.enter_context(nginx.in_front_of(addresses, tmp_path))


def test_phones_over_https(ports: tuple[int, int], shop: Database, tmp_path: Path) -> None:
    secure, plain = ports
    browser = Browser(secure, tmp_path)
    the_app_is_served(browser)
    http_leads_to_https(plain, browser)
    somebody_joins(browser, shop)
    documents_are_shared(browser)
    too_much_is_said(browser)
    health_is_told(browser, shop)


def the_app_is_served(browser: Browser) -> None:
    page = browser.ask("GET", "/")
    assert page.status == 200
    assert b"<html" in page.body
    worker = browser.ask("GET", "/sw.js", headers={"Accept-Encoding": "br"})
    assert (worker.status, worker.header("Content-Type").split(";")[0]) == (200, "text/javascript")
    # Compressed by Longpoint as it was built, with a tag that nginx left as it was.
    assert worker.header("Content-Encoding") == "br"
    tag = worker.header("ETag")
    assert browser.ask("GET", "/sw.js", headers={"If-None-Match": tag}).status == 304
    plain = dict(front.EVERYWHERE)
    for reply, expected in (
        (page, plain | {"Content-Security-Policy": front.page_policy()}),
        (browser.ask("GET", "/api/tools"), plain),
        (browser.ask("GET", "/nowhere"), plain),
    ):
        assert {name: reply.all(name) for name in expected} == {
            name: [value] for name, value in expected.items()
        }
        # For a year without a way back: whoever runs the server chooses it.
        assert not reply.all("Strict-Transport-Security")


def http_leads_to_https(plain: int, browser: Browser) -> None:
    link = http.client.HTTPConnection("127.0.0.1", plain, timeout=60)
    # The name asked for is not believed.
    link.request("GET", "/sign-in?next=/devices", headers={"Host": nginx.NAME})
    came = link.getresponse()
    assert came.status == 301
    assert came.headers["Location"] == f"{browser.origin}/sign-in?next=/devices"
    link.close()


def somebody_joins(browser: Browser, shop: Database) -> None:
    token = invited(shop, "owner")
    joined = browser.send(f"/join/{token}", name="Ada", password=PASSWORD, again=PASSWORD)
    assert joined.status == 303, joined.body
    cookies = joined.all("Set-Cookie")
    assert cookies
    for cookie in cookies:
        assert {"Secure", "HttpOnly", "SameSite=Lax"} <= set(cookie.split("; "))
    # Both processes know her.
    assert [browser.ask("GET", "/api/me").status for _ in range(4)] == [200] * 4


def documents_are_shared(browser: Browser) -> None:
    begun = browser.put("change-1", {"rows": []}, **{"If-None-Match": "*"})
    assert (begun.status, begun.header("ETag")) == (201, '"1"')
    read = browser.ask("GET", "/api/documents/list.boards", headers={"Accept-Encoding": "gzip"})
    assert (read.status, read.header("ETag")) == (200, '"1"')
    mega = {"rows": ["9" * 1000] * 3900}
    assert browser.put("change-2", mega, **{"If-Match": read.header("ETag")}).status == 200
    late = browser.put("change-3", {}, **{"If-Match": '"1"'})
    assert (late.status, json.loads(late.body)["current"]["rev"]) == (412, 2)
    assert json.loads(late.body)["current"]["body"] == mega
    from_elsewhere = {"If-Match": '"2"', "Origin": "https://elsewhere.example"}
    assert browser.put("change-4", {}, **from_elsewhere).status == 403
    assert (
        browser.put("change-5", {}, **{"If-Match": '"2"', "Origin": browser.origin}).status == 200
    )


def too_much_is_said(browser: Browser) -> None:
    large = browser.put("change-6", {"rows": ["9" * 1000] * 4500}, **{"If-Match": '"3"'})
    assert (large.status, large.header("Content-Type")) == (413, "application/json")
    assert "4 MB" in json.loads(large.body)["message"]
    # Whom nginx saw is counted, not who the other side says it is.
    tries = [
        browser.ask("GET", "/join/none", headers={"X-Forwarded-For": f"192.0.2.{at}"})
        for at in range(12)
    ]
    # Both processes count together.
    assert [each.status for each in tries] == [404] * 10 + [429] * 2
    assert int(tries[-1].header("Retry-After")) > 0


def health_is_told(browser: Browser, shop: Database) -> None:
    well = browser.ask("GET", "/healthz")
    assert (well.status, well.body) == (200, b"ok\n")
    with shop.engine.begin() as connection:
        connection.execute(text("ALTER TABLE shop RENAME TO gone"))
    assert browser.ask("GET", "/healthz").status == 503
    browser.link.close()
