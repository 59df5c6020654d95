"""Invitations: how long they hold, on the machine, taken back, and what stands in them."""

import re

import pytest
from flask import Flask
from sqlalchemy import select

from longpoint.cli import main
from longpoint.shop import people
from longpoint.shop.database import Database
from longpoint.shop.tables import Invitation, now
from tests.shop.visitor import Visitor, invited, link_on

pytestmark = pytest.mark.usefixtures("unlimited")
NEW = "walnut and steel"
"""Invented for the tests."""


def test_an_invitation_ends_after_a_week(app: Flask, shop: Database) -> None:
    token = invited(shop)
    with shop.session() as session:
        session.scalars(select(Invitation)).one().ends = now()
    assert Visitor(app).see(f"/join/{token}").status_code == 404
    assert people.INVITED_FOR.days == 7


def test_an_owner_who_forgot_is_let_in_on_the_machine(
    app: Flask, shop_address: str, owner: Visitor, monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:  # fmt: skip
    monkeypatch.setenv("LONGPOINT_DATABASE", shop_address)
    monkeypatch.setenv("LONGPOINT_ADDRESS", "https://shop.example")
    assert main(["invite", "nobody"]) == 1
    assert "Nobody here is called nobody." in capsys.readouterr().err
    assert main(["invite", "ada"]) == 0
    found = re.search(r"https://shop\.example/join/(\S+)", capsys.readouterr().out)
    assert found
    back = Visitor(app)
    assert back.send(f"/join/{found[1]}", password=NEW, again=NEW).status_code == 303
    assert back.client.get("/api/me").json["person"] == {"name": "Ada", "role": "owner"}
    assert not owner.is_in, "a new password signs the others out"
    assert "The server's machine: invited" in back.see("/log").text.replace("&#39;", "'")


def test_an_invitation_is_taken_back(app: Flask, owner: Visitor) -> None:
    token = link_on(owner.send("/people/invite", on="/people", role="owner"))
    page = owner.see("/people").text
    found = re.search(r"/people/invitations/\d+/end", page)
    assert found
    assert "Someone new, as owner" in page
    assert owner.send(found[0], on="/people").status_code == 303
    assert Visitor(app).see(f"/join/{token}").status_code == 404
    assert "Take back" not in owner.see("/people").text
    assert "Ada: invitation taken back" in owner.see("/log").text


def test_a_made_up_host_is_in_no_invitation(
    app: Flask, owner: Visitor, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("LONGPOINT_ADDRESS", "https://shop.example/")
    token = owner.csrf("/people")
    page = owner.client.post(
        "/people/invite", data={"csrf_token": token, "role": "crew"},
        headers={"X-Forwarded-Host": "evil.example"},
    )  # fmt: skip
    assert "https://shop.example/join/" in page.text
    assert "evil" not in page.text
