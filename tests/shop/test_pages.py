"""The pages by which people come in.

What is tried is what the OWASP session and authentication cheat sheets name (from memory): fixed
cookies, replays, forged forms, guessing, addresses that lead elsewhere.
"""

import re
from datetime import UTC, datetime, timedelta

import pytest
from argon2 import PasswordHasher, Type, extract_parameters
from argon2.exceptions import VerifyMismatchError
from flask import Flask
from sqlalchemy import select, update

from longpoint.shop import passwords, people
from longpoint.shop.database import Database
from longpoint.shop.tables import Device, Event, Person
from tests.shop.visitor import PASSWORD, Visitor, invited, link_on

pytestmark = pytest.mark.usefixtures("unlimited")
NEW = "walnut and steel"


def test_passwords_are_kept_by_argon2id_of_enough_work() -> None:
    """OWASP's password storage cheat sheet (from memory): 19 MiB and 2 passes at least."""
    found = extract_parameters(PasswordHasher().hash("x"))
    assert type(passwords._hasher) is PasswordHasher
    assert found.type is Type.ID
    assert (found.memory_cost >= 19 * 1024, found.time_cost >= 2) == (True, True)
    assert extract_parameters(passwords._NOBODY) == found, "a name that is nobody's is no quicker"
    with pytest.raises(VerifyMismatchError):
        PasswordHasher().verify(passwords._NOBODY, "x")


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


def test_a_form_of_another_page_does_nothing(app: Flask, owner: Visitor, crew: Visitor) -> None:
    for path in ("/people/invite", "/sign-out", "/password", "/devices/1/end", "/people/2/end",
                 "/people/2/role", "/people/2/password", "/people/invitations/1/end"):  # fmt: skip
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


def test_the_log_tells_the_owner(app: Flask, shop: Database, owner: Visitor, crew: Visitor) -> None:
    Visitor(app).sign_in("Ada", "some other words")
    Visitor(app).sign_in("my secret typed in the wrong field", "x")
    page = owner.see("/log").text
    for words in ("Ben: joined", "Ada: signed in", "Ada: sign-in failed"):
        assert words in page
    assert "my secret" not in page
    assert crew.see("/log").status_code == 403
    with shop.reading() as session:
        known = {each.what for each in session.scalars(select(Event))}
    assert known >= {"joined", "signed in", "sign-in failed"}


def test_guessers_do_not_fill_the_log_for_ever(app: Flask, shop: Database, owner: Visitor) -> None:
    Visitor(app).sign_in("Ada", "some other words")
    old = datetime.now(UTC) - timedelta(days=91)
    with shop.session() as session:
        session.execute(update(Event).values(at=old))
    Visitor(app).sign_in("Ada", "some other words")
    with shop.reading() as session:
        kept = list(session.scalars(select(Event.what).order_by(Event.id)))
    assert kept.count("sign-in failed") == 1
    assert kept[0] == "invited", "what people of the shop did stays"


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


def test_pages_are_kept_by_nobody_and_send_forms_here_alone(app: Flask, owner: Visitor) -> None:
    """CSP level 3."""
    for path in ("/sign-in", "/people", "/devices", "/password", "/log", "/sign-out"):
        page = owner.see(path)
        policy = page.headers["Content-Security-Policy"]
        assert "form-action 'self'" in policy, path
        assert "default-src 'none'" in policy
        assert "script-src" not in policy
        assert page.headers["Cache-Control"] == "no-store"
        assert page.headers["Referrer-Policy"] == "no-referrer"
        assert "<script" not in page.text
        assert "style=" not in page.text


@pytest.mark.parametrize(
    "name",
    ["   ", "a\0b", "a\u200bb", "\ufdfa" * 40, "x" * 81, "\u202eadA"],
    ids=["blank", "nul", "unseen", "long when compared", "long", "turned round"],
)
def test_a_name_that_no_database_or_eye_takes(app: Flask, shop: Database, name: str) -> None:
    """Unicode's own traps: U+FDFA is 18 letters compared (Unicode's NFKC), U+200B none to see."""
    token = invited(shop)
    visitor = Visitor(app)
    for page in (visitor.join(token, name), visitor.sign_in(name)):
        assert page.status_code == 422
        assert 'id="name-fault"' in page.text
    assert visitor.see(f"/join/{token}").status_code == 200, "the invitation stands"


def test_one_password_typed_on_two_machines(app: Flask, owner: Visitor) -> None:
    """An accent typed as one letter or as two (Unicode normalization, NIST SP 800-63B)."""
    composed, apart = "caf\u00e9 and walnut", "cafe\u0301 and walnut"
    assert (
        owner.send("/password", old=PASSWORD, password=composed, again=composed).status_code == 303
    )
    assert Visitor(app).sign_in("Ada", apart).status_code == 303
    long = owner.send("/password", old=composed, password="é" * 101, again="é" * 101)
    assert "too long" in long.text, "200 bytes"


def test_after_a_form_that_needed_signing_in_a_page_is_shown(app: Flask, owner: Visitor) -> None:
    sent = Visitor(app).client.post("/people/invite")
    assert sent.headers["Location"] == "/sign-in"
    assert Visitor(app).see("/devices").headers["Location"] == "/sign-in?next=/devices"
