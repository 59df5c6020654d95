"""Who may what: every route of the application, by nobody, crew and owner.

What is tried besides is what OWASP's ASVS asks of access control (from memory).
"""

import re
import threading

import pytest
from flask import Flask

from longpoint.shop import people
from longpoint.shop.database import Database
from longpoint.shop.tables import Person
from longpoint.trade.shelf import PLACES, slugs_at
from tests.shop.conftest import person
from tests.shop.visitor import Visitor

pytestmark = pytest.mark.usefixtures("quick", "unlimited")
TOOLS = [slug for place, _ in PLACES for slug in slugs_at(place)]
# Questions are answered to everybody; what is sent empty is refused as a form, not as a person.
OPEN = {
    "GET /healthz": 200,
    "GET /api/openapi.json": 200,
    "GET /api/patterns": 200,
    "GET /api/job.schema.json": 200,
    "GET /api/tools": 200,
    "POST /api/jobs": 422,
    "POST /api/jobs/calendar": 422,
    **{f"GET /api/tools/{slug}": 200 for slug in TOOLS},
    **{f"POST /api/tools/{slug}": 422 for slug in TOOLS},
}
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
    "POST /people/invitations/<int:number>/end": (303, 403, 303),
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
    found = {
        f"{method} {rule}" for rule in app.url_map.iter_rules()
        for method in (rule.methods or set()) - {"HEAD", "OPTIONS"}
    }  # fmt: skip
    table = ROUTES | {line: (code, code, code) for line, code in OPEN.items()}
    assert found == set(table)
    for line, expected in table.items():
        method, path = line.split(" ")
        real = re.sub(r"<int:\w+>", "99", path)
        real = real.replace("<token>", "none").replace("<name>", "list.x")
        body = {} if method == "PUT" or (real.startswith("/api/") and method == "POST") else None
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


def test_another_site_writes_nothing(app: Flask, owner: Visitor) -> None:
    """Fetch standard: a browser says where a write comes from; a form can't send JSON."""
    said = {"change_id": "c1", "units": "in", "schema": 1, "body": {}}
    for headers in (
        {"Origin": "https://evil.example"},
        {"Origin": "null"},
        {"Origin": "http://localhost.evil.example"},
    ):
        put = owner.client.put(
            "/api/documents/list.x", json=said, headers={"If-None-Match": "*", **headers}
        )
        assert put.status_code == 403
    plain = owner.client.put(
        "/api/documents/list.x", data="{}", content_type="text/plain",
        headers={"If-None-Match": "*"},
    )  # fmt: skip
    assert plain.status_code == 415
    assert owner.client.get("/api/documents/list.x").status_code == 404
    shown = owner.client.get("/api/changes", headers={"Origin": "https://evil.example"})
    assert "Access-Control-Allow-Origin" not in shown.headers


def test_of_two_owners_who_end_each_other_one_stays(shop: Database) -> None:
    ada, ben = person(shop, "Ada", "owner"), person(shop, "Ben", "owner")
    refused: list[str] = []

    def other() -> None:
        try:
            with shop.session() as session:
                people.end_access(session, session.get_one(Person, ada))
        except people.Refused as fault:
            refused.append(str(fault))

    second = threading.Thread(target=other)
    with shop.session() as session:
        people.end_access(session, session.get_one(Person, ben))
        session.flush()
        second.start()
    second.join()
    assert len(refused) == 1


def test_a_fault_s_line_in_the_log_names_no_invitation(
    app: Flask, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def broken(*_: object) -> None:
        raise RuntimeError

    monkeypatch.setattr(people, "invitation_of", broken)
    monkeypatch.setitem(app.config, "PROPAGATE_EXCEPTIONS", False)
    assert Visitor(app).see("/join/a-secret-token").status_code == 500
    assert "/join/<token>" in caplog.text
    assert "a-secret-token" not in caplog.text
