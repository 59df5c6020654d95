"""Someone at a browser without scripts: reads a page, fills its form in, sends it."""

import re
from html import unescape
from typing import Any

from flask import Flask
from werkzeug.test import TestResponse

from longpoint.shop import people
from longpoint.shop.database import Database

PASSWORD = "red oak and brass"
"""Invented for the tests."""


class Visitor:
    """A browser with its cookies."""

    def __init__(self, app: Flask) -> None:
        self.client = app.test_client()

    def see(self, path: str, **options: Any) -> TestResponse:
        return self.client.get(path, **options)

    def csrf(self, path: str) -> str:
        """Return what the first form of a page carries against forgery."""
        found = re.search(r'name="csrf_token"[^>]*value="([^"]+)"', self.see(path).text)
        assert found, f"no form on {path}"
        return unescape(found[1])

    def send(self, path: str, on: str = "", **fields: str) -> TestResponse:
        """Fill in the form of the page `on`, and send it to `path`."""
        return self.client.post(path, data={"csrf_token": self.csrf(on or path), **fields})

    def join(self, token: str, name: str, password: str = PASSWORD) -> TestResponse:
        return self.send(f"/join/{token}", name=name, password=password, again=password)

    def sign_in(self, name: str, password: str = PASSWORD) -> TestResponse:
        return self.send("/sign-in", name=name, password=password)

    @property
    def is_in(self) -> bool:
        return self.client.get("/api/me").status_code == 200

    @property
    def cookie(self) -> str:
        found = self.client.get_cookie("longpoint")
        return found.value if found else ""


def invited(shop: Database, role: str = "crew") -> str:
    """Return the token of an invitation."""
    with shop.session() as session:
        return people.invite(session, role)


def link_on(page: TestResponse) -> str:
    """Return the token of the invitation that a page shows."""
    found = re.search(r"/join/([\w-]+)", page.text)
    assert found, page.text
    return found[1]
