"""The pages by which people come in.

What is tried is what the OWASP session and authentication cheat sheets name (from memory): fixed
cookies, replays, forged forms, guessing, addresses that lead elsewhere.
"""

import re
from collections.abc import Iterator
from typing import Any

import pytest
from argon2 import PasswordHasher, Type, extract_parameters
from flask import Flask
from sqlalchemy import select

from longpoint.app import create_app
from longpoint.shop import pages, passwords, people
from longpoint.shop.database import Database
from longpoint.shop.tables import Device, Event, Invitation, Person, now
from tests.shop.visitor import PASSWORD, Visitor, invited, link_on

NEW = "walnut and steel"


@pytest.fixture(autouse=True)
def unlimited() -> Iterator[None]:
    yield
    pages.limiter.reset()


@pytest.fixture(autouse=True)
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keep passwords by less work than the server does."""
    monkeypatch.setattr(passwords, "_hasher", PasswordHasher(1, 8, 1))


def test_passwords_are_kept_by_argon2id_of_enough_work() -> None:
    """OWASP's password storage cheat sheet (from memory): 19 MiB and 2 passes at least."""
    found = extract_parameters(PasswordHasher().hash("x"))
    assert type(passwords._hasher) is PasswordHasher
    assert found.type is Type.ID
    assert (found.memory_cost >= 19 * 1024, found.time_cost >= 2) == (True, True)


@pytest.fixture
def owner(app: Flask, shop: Database) -> Visitor:
    visitor = Visitor(app)
    with shop.session() as session:
        token = people.invite_first_owner(session)
    assert token
    assert visitor.join(token, "Ada").status_code == 303
    return visitor


@pytest.fixture
def crew(app: Flask, shop: Database, owner: Visitor) -> Visitor:
    visitor = Visitor(app)
    assert visitor.join(invited(shop), "Ben").status_code == 303
    return visitor


def test_the_first_owner_is_made_once(app: Flask, shop: Database) -> None:
    with shop.session() as session:
        older = people.invite_first_owner(session)
        token = people.invite_first_owner(session)
    assert older != token
    late = Visitor(app)
    assert late.see(f"/join/{older}").status_code == 404, "the older address ends"
    first = Visitor(app)
    assert first.join(str(token), "Ada").headers["Location"] == "/"
    assert first.client.get("/api/me").json["person"] == {"name": "Ada", "role": "owner"}
    assert Visitor(app).see(f"/join/{token}").status_code == 404, "used once"
    with shop.session() as session:
        assert people.invite_first_owner(session) is None


def test_an_owner_invites_and_crew_comes_in(app: Flask, owner: Visitor) -> None:
    page = owner.send("/people/invite", on="/people", role="crew")
    ben = Visitor(app)
    token = link_on(page)
    assert ben.join(token, " ben  ").status_code == 303
    assert ben.client.get("/api/me").json["person"] == {"name": "ben", "role": "crew"}
    assert "Ada" in ben.see("/people").text
    assert "Invite someone" not in ben.see("/people").text
    other = Visitor(app)
    assert other.sign_in("BEN").status_code == 303, "names are compared folded"
    # An address that was used is of no use to whoever finds it.
    assert Visitor(app).see(f"/join/{token}").status_code == 404


def test_every_fault_stands_on_its_field_and_the_name_stays(app: Flask, shop: Database) -> None:
    """Rules of NIST SP 800-63B: length, none of the commonest, nothing about its letters."""
    visitor, token = Visitor(app), invited(shop)
    for password, again, words in (
        ("short", "short", "at least 10"),
        ("password123", "password123", "Many people"),
        ("aaaaaaaaaaaa", "aaaaaaaaaaaa", "Many people"),
        ("Ada Fernandez", "Ada Fernandez", "your name"),
        (PASSWORD, PASSWORD + "s", "not the same"),
        ("x" * 201, "x" * 201, "too long"),
    ):
        page = visitor.send(f"/join/{token}", name="Ada Fernandez", password=password, again=again)
        assert page.status_code == 422
        assert re.search(f'class="fault" id="[^"]+">[^<]*{words}', page.text), page.text
        assert 'value="Ada Fernandez"' in page.text
        assert password not in re.sub("Ada Fernandez", "", page.text) or password == "Ada Fernandez"
    assert visitor.join(token, "Ada Fernandez").status_code == 303
    assert "has this name" in Visitor(app).join(invited(shop), "ＡＤＡ fernandez").text


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
    elsewhere = {"REMOTE_ADDR": "192.0.2.7"}
    other = Visitor(app)
    assert (
        other.client.post("/sign-in", data={"name": " ada"}, environ_base=elsewhere).status_code
        == 429
    )
    assert (
        other.client.post("/sign-in", data={"name": "Ben"}, environ_base=elsewhere).status_code
        == 422
    )
    # Who is in stays in.
    assert owner.is_in


def test_what_succeeds_is_not_counted(app: Flask, owner: Visitor) -> None:
    for _ in range(12):
        assert Visitor(app).sign_in("Ada").status_code == 303


def test_a_form_of_another_page_does_nothing(app: Flask, owner: Visitor, crew: Visitor) -> None:
    for path in ("/people/invite", "/sign-out", "/password", "/devices/1/end", "/people/2/end",
                 "/people/2/role", "/people/2/password"):  # fmt: skip
        for forged in ({}, {"csrf_token": "made up"}, {"csrf_token": crew.csrf("/sign-out")}):
            owner.client.post(path, data={**forged, "role": "owner"})
    assert owner.is_in
    assert crew.is_in
    assert crew.client.get("/api/me").json["person"]["role"] == "crew"
    assert "/join/" not in owner.see("/people").text


def test_a_cookie_from_before_signing_in_is_worth_nothing_after(app: Flask, owner: Visitor) -> None:
    victim = Visitor(app)
    victim.see("/sign-in")
    planted = victim.cookie
    victim.sign_in("Ada")
    assert victim.cookie != planted
    thief = Visitor(app)
    thief.client.set_cookie("longpoint", planted)
    assert not thief.is_in


def test_a_cookie_from_before_signing_out_is_worth_nothing(app: Flask, owner: Visitor) -> None:
    kept = owner.cookie
    assert owner.send("/sign-out").status_code == 303
    assert not owner.is_in
    replay = Visitor(app)
    replay.client.set_cookie("longpoint", kept)
    assert not replay.is_in
    # Signed in twice, a device is another one each time.
    first, second = Visitor(app), Visitor(app)
    first.sign_in("Ada")
    second.sign_in("Ada")
    assert first.cookie != second.cookie


def test_the_cookie_s_attributes(app: Flask, owner: Visitor) -> None:
    """RFC 6265bis: HttpOnly, SameSite; Secure where it came by HTTPS."""
    said = owner.see("/devices", base_url="https://shop.example")
    visitor = Visitor(app)
    token = visitor.csrf("/sign-in")
    plain = visitor.client.post(
        "/sign-in", data={"csrf_token": token, "name": "Ada", "password": PASSWORD}
    )
    cookie = plain.headers["Set-Cookie"]
    assert "HttpOnly" in cookie
    assert "SameSite=Lax" in cookie
    assert "Secure" not in cookie
    assert said.status_code == 303, "a cookie that came plain is not sent to another site"
    page = visitor.client.get("/sign-in", base_url="https://shop.example")
    assert "Secure" in page.headers["Set-Cookie"]


def test_a_changed_password_signs_the_others_out(app: Flask, owner: Visitor) -> None:
    phone = Visitor(app)
    phone.sign_in("Ada")
    wrong = owner.send("/password", old="not mine", password=NEW, again=NEW)
    assert "This is not your password." in wrong.text
    changed = owner.send("/password", old=PASSWORD, password=NEW, again=NEW)
    assert changed.status_code == 303
    assert owner.is_in
    assert not phone.is_in
    assert phone.sign_in("Ada").status_code == 422
    assert phone.sign_in("Ada", NEW).status_code == 303


def test_who_forgot_the_password_takes_a_new_one(
    app: Flask, shop: Database, owner: Visitor, crew: Visitor
) -> None:
    page = owner.send("/people/2/password", on="/people")
    ben = Visitor(app)
    token = link_on(page)
    assert 'name="name"' not in ben.see(f"/join/{token}").text
    assert ben.send(f"/join/{token}", password=NEW, again=NEW).status_code == 303
    assert ben.client.get("/api/me").json["person"]["name"] == "Ben"
    assert not crew.is_in


def test_a_device_is_signed_out_at_once(
    app: Flask, shop: Database, owner: Visitor, crew: Visitor
) -> None:
    with shop.reading() as session:
        own = session.scalars(select(Device.id).join(Person).where(Person.name == "Ada")).one()
        ben = session.scalars(select(Device.id).join(Person).where(Person.name == "Ben")).one()
    assert "Ada" not in crew.see("/devices").text, "crew sees its own"
    assert crew.send(f"/devices/{own}/end", on="/devices").status_code == 404
    assert owner.is_in
    assert owner.send(f"/devices/{ben}/end", on="/devices").status_code == 303
    assert not crew.is_in


def test_access_ends_and_the_last_owner_stays(
    app: Flask, shop: Database, owner: Visitor, crew: Visitor
) -> None:
    for path, more in (("/people/1/end", {}), ("/people/1/role", {"role": "crew"})):
        refused = owner.send(path, on="/people", **more)
        assert refused.status_code == 409
        assert "make someone else one first" in refused.text
    assert owner.send("/people/2/role", on="/people", role="king").status_code == 409
    token = link_on(owner.send("/people/2/password", on="/people"))
    assert owner.send("/people/2/end", on="/people").status_code == 303
    assert not crew.is_in
    assert Visitor(app).see(f"/join/{token}").status_code == 404, "no way back in"
    assert Visitor(app).sign_in("Ben").status_code == 422
    # Invited anew, Ben is who Ben was.
    assert Visitor(app).join(invited(shop), "Ben").status_code == 303
    with shop.reading() as session:
        assert session.scalars(select(Person.name).where(Person.key == "ben")).one() == "Ben"


def test_an_invitation_ends_after_a_week(app: Flask, shop: Database) -> None:
    token = invited(shop)
    with shop.session() as session:
        session.scalars(select(Invitation)).one().ends = now()
    assert Visitor(app).see(f"/join/{token}").status_code == 404
    assert people.INVITED_FOR.days == 7


def test_the_log_tells_the_owner(app: Flask, shop: Database, owner: Visitor, crew: Visitor) -> None:
    Visitor(app).sign_in("Ada", "some other words")
    Visitor(app).sign_in("my secret typed in the wrong field", "x")
    page = owner.see("/log").text
    for words in ("joined: Ben", "signed in: Ada", "sign-in failed: Ada"):
        assert words in page
    assert "my secret" not in page
    assert crew.see("/log").status_code == 403
    with shop.reading() as session:
        known = {each.what for each in session.scalars(select(Event))}
    assert known >= {"joined", "signed in", "sign-in failed"}


@pytest.mark.parametrize(
    "away",
    [
        "//evil.example",
        r"/\evil.example",
        "https://evil.example",
        r"\\evil.example",
        "/\tevil",
        "evil",
    ],
)
def test_signing_in_leads_nowhere_else(app: Flask, owner: Visitor, away: str) -> None:
    visitor = Visitor(app)
    token = visitor.csrf("/sign-in")
    done = visitor.client.post(
        "/sign-in", query_string={"next": away},
        data={"csrf_token": token, "name": "Ada", "password": PASSWORD},
    )  # fmt: skip
    assert done.headers["Location"] == "/"


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


def test_pages_are_kept_by_nobody_and_send_forms_here_alone(app: Flask, owner: Visitor) -> None:
    """CSP level 3."""
    for path in ("/sign-in", "/people", "/devices", "/password", "/log", "/sign-out"):
        page = owner.see(path)
        policy = page.headers["Content-Security-Policy"]
        assert "form-action 'self'" in policy, path
        assert "script-src 'self';" in policy
        assert page.headers["Cache-Control"] == "no-store"
        assert page.headers["Referrer-Policy"] == "same-origin"
        assert "<script" not in page.text
        assert "style=" not in page.text


ROUTES = {
    # Who may: nobody signed in, crew, owner. 303 leads to sign-in.
    "GET /sign-in": (200, 200, 200),
    "POST /sign-in": (422, 422, 422),
    "GET /sign-out": (303, 200, 200),
    "POST /sign-out": (303, 200, 200),
    "GET /join/<token>": (404, 404, 404),
    "POST /join/<token>": (404, 404, 404),
    "GET /password": (303, 200, 200),
    "POST /password": (303, 422, 422),
    "GET /devices": (303, 200, 200),
    "POST /devices/<int:number>/end": (303, 303, 303),
    "GET /people": (303, 200, 200),
    "POST /people/invite": (303, 403, 303),
    "POST /people/<int:number>/password": (303, 403, 303),
    "POST /people/<int:number>/end": (303, 403, 303),
    "POST /people/<int:number>/role": (303, 403, 303),
    "GET /log": (303, 403, 200),
    "GET /api/me": (401, 200, 200),
    "GET /api/changes": (401, 200, 200),
    "GET /api/documents/<name>": (401, 404, 404),
    "PUT /api/documents/<name>": (401, 422, 422),
    "DELETE /api/documents/<name>": (401, 422, 422),
}


def test_every_route_has_its_right(app: Flask, owner: Visitor, crew: Visitor) -> None:
    """A route that is not in the table, or a table's line without a route, fails."""
    alone = {str(rule) for rule in create_app().url_map.iter_rules()}
    shared = [rule for rule in app.url_map.iter_rules() if str(rule) not in alone]
    found = {
        f"{method} {rule}" for rule in shared for method in rule.methods or () if method in
        ("GET", "POST", "PUT", "DELETE", "PATCH")
    }  # fmt: skip
    assert found == set(ROUTES)
    for line, expected in ROUTES.items():
        method, path = line.split(" ")
        real = re.sub(r"<int:\w+>", "99", path)
        real = real.replace("<token>", "none").replace("<name>", "list.x")
        body = {} if method == "PUT" else None
        seen = tuple(
            visitor.client.open(real, method=method, json=body).status_code
            for visitor in (Visitor(app), crew, owner)
        )
        assert seen == expected, line
        if expected[0] == 303:
            sent = Visitor(app).client.open(real, method=method).headers["Location"]
            assert sent.startswith("/sign-in")


@pytest.mark.parametrize(
    ("path", "header"),
    [
        ("/people", {"X-Original-URL": "/log"}),
        ("//people", {}),
        ("/people/../log", {}),
        ("/people%2f..%2flog", {}),
        ("/log;x=1", {}),
        ("/people/1/end", {"X-HTTP-Method-Override": "POST"}),
        ("/api/changes", {"X-Forwarded-User": "Ada"}),
        ("/api/documents/list.x", {"Cookie": "longpoint=made-up"}),
    ],
)
def test_tricks_open_nothing(app: Flask, owner: Visitor, path: str, header: dict[str, str]) -> None:
    reply = Visitor(app).client.get(path, headers=header)
    assert reply.status_code in (302, 303, 308, 401, 404, 405)
    assert "Ada" not in reply.text
