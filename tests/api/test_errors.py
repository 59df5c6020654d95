"""Everything under /api answers in JSON, failures included."""

import pytest
from flask.testing import FlaskClient

GIVEN = {"fit": "inside", "opening_width": 30, "opening_height": 40, "trim_width": 2.5}


def test_the_shelf_names_every_tool_by_place(client: FlaskClient) -> None:
    places = client.get("/api/tools").json["places"]
    assert [place["place"] for place in places] == ["yard", "saw", "site"]
    tools = [tool for place in places for tool in place["tools"]]
    for tool in tools:
        assert set(tool) == {"slug", "title", "question"}
        declared = client.get(f"/api/tools/{tool['slug']}").json
        assert {name: declared[name] for name in tool} == tool


@pytest.mark.parametrize("path", ["/api", "/api/", "/api/tools/no-such", "/api/nothing"])
def test_nothing_there(client: FlaskClient, path: str) -> None:
    """RFC 9110, 15.5.5."""
    response = client.get(path)
    assert (response.status_code, response.mimetype) == (404, "application/json")
    assert "/api/tools" in response.json["message"]


def test_an_address_with_a_slash_at_its_end_is_not_redirected(client: FlaskClient) -> None:
    """A redirect would turn a POST into a GET in many clients (RFC 9110, 15.4.3)."""
    assert client.get("/api/tools/").status_code == 200
    assert client.post("/api/tools/mitered-frame/", json=GIVEN).status_code == 200


@pytest.mark.parametrize(
    ("method", "path", "allowed"),
    [
        ("DELETE", "/api/tools/mitered-frame", {"GET", "HEAD", "OPTIONS", "POST"}),
        ("POST", "/api/tools", {"GET", "HEAD", "OPTIONS"}),
        ("PUT", "/api/openapi.json", {"GET", "HEAD", "OPTIONS"}),
        ("BREW", "/api/tools", {"GET", "HEAD", "OPTIONS"}),
    ],
)
def test_a_method_that_is_not_answered(
    client: FlaskClient, method: str, path: str, allowed: set[str]
) -> None:
    """405 must carry Allow: RFC 9110, 15.5.6."""
    response = client.open(path, method=method)
    assert (response.status_code, response.mimetype) == (405, "application/json")
    assert set(response.headers["Allow"].split(", ")) == allowed


@pytest.mark.parametrize("kind", ["text/plain", "application/x-www-form-urlencoded", None])
def test_a_content_type_that_is_not_json(client: FlaskClient, kind: str | None) -> None:
    """RFC 9110, 15.5.16."""
    response = client.post("/api/tools/mitered-frame", data=b"{}", content_type=kind)
    assert (response.status_code, response.mimetype) == (415, "application/json")
    assert "application/json" in response.json["message"]


def test_a_megabyte(client: FlaskClient) -> None:
    """RFC 9110, 15.5.14."""
    body = b'{"width": "' + b"9" * 1_000_000 + b'"}'
    response = client.post("/api/tools/mitered-frame", data=body, content_type="application/json")
    assert (response.status_code, response.mimetype) == (413, "application/json")
    assert "256 KB" in response.json["message"]


def test_no_answer_is_open_to_other_sites(client: FlaskClient) -> None:
    """The Fetch standard's CORS protocol: without this header other origins can't read."""
    origin = {"Origin": "https://elsewhere.example"}
    responses = [
        client.get("/api/tools", headers=origin),
        client.post("/api/tools/mitered-frame", json=GIVEN, headers=origin),
        client.options("/api/tools/mitered-frame", headers=origin),
    ]
    for response in responses:
        assert response.status_code == 200
        assert not [name for name, _ in response.headers if "Access-Control" in name]


def test_nothing_is_kept(client: FlaskClient) -> None:
    """An answer carries no state: no cookie (RFC 6265), and the same question the same answer."""
    first = client.post("/api/tools/mitered-frame", json=GIVEN)
    client.post("/api/tools/mitered-frame", json=GIVEN | {"opening_width": 99})
    again = client.post("/api/tools/mitered-frame", json=GIVEN)
    assert "Set-Cookie" not in first.headers
    assert first.json == again.json
