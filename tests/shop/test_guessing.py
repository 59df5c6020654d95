"""Guessing passwords and invitations: slowed, told nothing, and keeping nobody out for good.

Source of what is tried: OWASP's authentication cheat sheet, its note on device cookies, NIST SP
800-63B on throttling (all from memory).
"""

import re
import shutil
from pathlib import Path
from typing import Any

import pytest
from argon2 import PasswordHasher
from flask import Flask
from sqlalchemy import select

from longpoint.app import create_app
from longpoint.shop import passwords
from longpoint.shop.database import Database
from longpoint.shop.tables import Person
from tests.shop.visitor import PASSWORD, Visitor, invited

pytestmark = pytest.mark.usefixtures("quick", "unlimited")
ELSEWHERE = {"REMOTE_ADDR": "192.0.2.7"}
"""An address of another network (RFC 5737)."""


@pytest.fixture
def shop_address(made_file: Path, tmp_path: Path) -> str:
    """One kind of database will do: tries are not counted in it."""
    return f"sqlite:///{shutil.copyfile(made_file, tmp_path / 'shop.db')}"


class _Counting(PasswordHasher):
    """Counts how often a password is looked at."""

    verified = 0

    def verify(self, *known: Any) -> Any:
        self.verified += 1
        return super().verify(*known)


def test_wrong_name_and_wrong_password_are_one_answer(
    app: Flask, owner: Visitor, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Neither words nor work tell whether there is such a person."""
    hasher = _Counting()
    monkeypatch.setattr(passwords, "_hasher", hasher)
    pages_seen = [Visitor(app).sign_in(name, "some other words").text for name in ("Ada", "Nobody")]
    assert hasher.verified == 2
    assert "Name or password is wrong." in pages_seen[0]
    strip = re.compile(r'value="[^"]*"')
    assert strip.sub("", pages_seen[0]) == strip.sub("", pages_seen[1])


def test_guessing_is_slowed_by_address_and_by_name(app: Flask, owner: Visitor) -> None:
    guesser = Visitor(app)
    for _ in range(10):
        assert guesser.sign_in("Ada", "not this one").status_code == 422
    slowed = guesser.client.post("/sign-in", data={"name": "Ada"})
    assert slowed.status_code == 429
    assert int(slowed.headers["Retry-After"]) > 0
    assert "try again" in slowed.text
    # From another address the same name is still slowed, another name is not.
    other = Visitor(app)
    assert (
        other.client.post("/sign-in", data={"name": " ada"}, environ_base=ELSEWHERE).status_code
        == 429
    )
    assert (
        other.client.post("/sign-in", data={"name": "Ben"}, environ_base=ELSEWHERE).status_code
        == 422
    )
    # Who is in stays in.
    assert owner.is_in


def test_what_succeeds_is_not_counted(app: Flask, owner: Visitor) -> None:
    for _ in range(12):
        assert Visitor(app).sign_in("Ada").status_code == 303


def test_the_real_person_is_not_kept_out(app: Flask, owner: Visitor) -> None:
    """A browser that was signed in by a name is counted apart from who guesses elsewhere."""
    owner.send("/sign-out")
    for _ in range(11):
        guess = Visitor(app)
        token = guess.csrf("/sign-in")
        form = {"csrf_token": token, "name": "Ada", "password": "not this one"}
        last = guess.client.post("/sign-in", data=form, environ_base=ELSEWHERE)
    assert last.status_code == 429
    assert Visitor(app).sign_in("Ada").status_code == 429
    assert owner.sign_in("Ada").status_code == 303
    # Nor is it from the shop's one address, where someone failed at any names.
    owner.send("/sign-out")
    for each in range(11):
        last = Visitor(app).client.post("/sign-in", data={"name": f"someone {each}"})
    assert last.status_code == 429
    assert owner.sign_in("Ada").status_code == 303
    # It is no way around: its own tries are counted, and other names' are as ever.
    owner.send("/sign-out")
    tries = [owner.client.post("/sign-in", data={"name": "Ada"}, environ_base={
        "REMOTE_ADDR": f"192.0.2.{each}"}).status_code for each in range(100, 112)]  # fmt: skip
    assert tries[9:] == [422, 429, 429]


def test_a_header_is_no_address(app: Flask, owner: Visitor) -> None:
    """Where no web server stands before this one, anybody could write X-Forwarded-For."""
    for each in range(11):
        headers = {"X-Forwarded-For": f"198.51.100.{each}", "Forwarded": f"for=198.51.100.{each}"}
        data = {"name": f"someone {each}"}
        last = Visitor(app).client.post("/sign-in", data=data, headers=headers)
    assert last.status_code == 429
    assert int(last.headers["Retry-After"]) <= 61, "the shortest of its limits"


def test_behind_a_web_server_its_word_counts(
    shop: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Only its own: what a client wrote before it stays unread."""
    monkeypatch.setenv("LONGPOINT_PROXIES", "1")
    app = create_app({"SHOP": shop})
    for each in range(11):
        headers = {"X-Forwarded-For": f"198.51.100.{each}, 203.0.113.5"}
        data = {"name": f"someone {each}"}
        last = Visitor(app).client.post("/sign-in", data=data, headers=headers)
    assert last.status_code == 429
    over = {"X-Forwarded-For": "203.0.113.6", "X-Forwarded-Proto": "https"}
    page = Visitor(app).client.get("/sign-in", headers=over)
    assert "Secure" in page.headers["Set-Cookie"]


def test_invitations_are_not_guessed(app: Flask, shop: Database) -> None:
    token = invited(shop)
    codes = [Visitor(app).see(f"/join/guess-{each}").status_code for each in range(11)]
    assert codes == [404] * 10 + [429]
    asked = Visitor(app).client.get(f"/join/{token}", environ_base=ELSEWHERE)
    assert asked.status_code == 200


def test_one_person_s_slips_are_no_other_s(app: Flask, owner: Visitor, crew: Visitor) -> None:
    token = crew.csrf("/password")
    form = {"csrf_token": token, "old": "wrong", "password": PASSWORD, "again": PASSWORD}
    for each in range(11):
        base = {"REMOTE_ADDR": f"192.0.2.{each}"}
        last = crew.client.post("/password", data=form, environ_base=base)
    assert last.status_code == 429
    assert (
        owner.send("/password", old="wrong", password=PASSWORD, again=PASSWORD).status_code == 422
    )


def test_a_stronger_way_of_keeping_is_taken_at_sign_in(
    app: Flask, shop: Database, owner: Visitor, monkeypatch: pytest.MonkeyPatch
) -> None:
    def kept() -> str:
        with shop.reading() as session:
            return session.scalars(select(Person.password)).one()

    weak = kept()
    monkeypatch.setattr(passwords, "_hasher", PasswordHasher(2, 16, 1))
    assert Visitor(app).sign_in("Ada").status_code == 303
    assert (weak.split("$")[3], kept().split("$")[3]) == ("m=8,t=1,p=1", "m=16,t=2,p=1")
    assert Visitor(app).sign_in("Ada").status_code == 303
