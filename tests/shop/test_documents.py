"""Documents that a shop's people share.

Conditional requests by RFC 9110, 13.1; 428 by RFC 6585; the rest is the project's own contract.
"""

from datetime import UTC, datetime
from typing import Any

from flask import Flask
from sqlalchemy import update

from longpoint.app import create_app
from longpoint.shop.database import Database
from longpoint.shop.documents import read
from longpoint.shop.tables import Device
from tests.shop.conftest import Phone, said

LIST = "list.boards"


def test_one_is_begun_changed_deleted_and_begun_again(ada: Phone, ben: Phone) -> None:
    begun = ada.put(LIST, None, said("change-1", rows=[1]))
    assert (begun.status_code, begun.headers["ETag"], begun.json["rev"]) == (201, '"1"', 1)
    changed = ben.put(LIST, 1, said("change-2", rows=[1, 2]))
    assert (changed.status_code, changed.headers["ETag"]) == (200, '"2"')
    read = ada.get(f"documents/{LIST}")
    assert read.headers["ETag"] == '"2"'
    assert read.json["body"] == {"rows": [1, 2]}
    assert (read.json["by"], read.json["device"]) == ("Ben", "a phone")
    assert ada.delete(LIST, 2, "change-3").json["deleted"] is True
    gone = ben.get(f"documents/{LIST}")
    assert (gone.status_code, gone.headers["ETag"]) == (410, '"3"')
    assert "body" not in gone.json
    again = ben.put(LIST, None, said("change-4", rows=[]))
    assert (again.status_code, again.json["rev"]) == (200, 4)


def test_who_is_late_is_told_what_stands(ada: Phone, ben: Phone) -> None:
    ada.put(LIST, None, said("change-1", rows=[]))
    ben.put(LIST, 1, said("change-2", rows=["Ben"]))
    late = ada.put(LIST, 1, said("change-3", rows=["Ada"]))
    assert late.status_code == 412
    assert late.json["current"]["body"] == {"rows": ["Ben"]}
    assert late.json["current"]["rev"] == 2
    assert ada.put(LIST, None, said("change-4")).status_code == 412
    assert ada.get(f"documents/{LIST}").json["body"] == {"rows": ["Ben"]}


def test_a_change_asked_again_is_answered_again_and_made_once(ada: Phone, ben: Phone) -> None:
    ada.put(LIST, None, said("change-1", rows=[1]))
    ben.put(LIST, 1, said("change-2", rows=[2]))
    again = ada.put(LIST, None, said("change-1", rows=[1]))
    assert (again.status_code, again.json["rev"], again.json["seq"]) == (200, 1, 1)
    assert ada.get(f"documents/{LIST}").json["rev"] == 2
    assert ada.put("list.other", None, said("change-1")).status_code == 409
    assert ada.get("documents/list.other").status_code == 404


def test_a_write_names_what_it_changes(ada: Phone) -> None:
    path = f"/api/documents/{LIST}"
    bare = ada.client.put(path, json=said("change-1"))
    assert bare.status_code == 428
    for header in (
        {"If-Match": "*"},
        {"If-Match": "1"},
        {"If-Match": '"1", "2"'},
        {"If-None-Match": '"1"'},
        {"If-Match": '"1"', "If-None-Match": "*"},
    ):
        wrong = ada.client.put(path, json=said("change-1"), headers=header)
        assert wrong.status_code == 400, header
    # A proxy that compresses weakens a tag; the revision is the same.
    ada.put(LIST, None, said("change-1"))
    weak = ada.client.put(path, json=said("change-2"), headers={"If-Match": 'W/"1"'})
    assert weak.status_code == 200


def test_the_feed_tells_each_once_in_order(ada: Phone, ben: Phone) -> None:
    for at in range(5):
        ada.put(f"list.{at}", None, said(f"change-{at}", at=at))
    ben.put("list.1", 1, said("change-b", at="b"))
    ben.delete("list.3", 1, "change-d")
    first = ada.get("changes?limit=3").json
    assert [each["id"] for each in first["changes"]] == ["list.0", "list.2", "list.4"]
    assert first["more"]
    rest = ada.get(f"changes?since={first['since']}&last={first['last']}").json
    assert [each["id"] for each in rest["changes"]] == ["list.1", "list.3"]
    assert rest["changes"][1]["deleted"]
    assert (rest["restored"], rest["more"]) == (False, False)
    end = ada.get(f"changes?since={rest['since']}&last={rest['last']}").json
    assert (end["changes"], end["since"], end["last"]) == ([], rest["since"], rest["last"])


def test_a_server_that_forgot_tells_everything(ada: Phone) -> None:
    ada.put(LIST, None, said("change-1"))
    for asked in ("since=9&last=change-9", "since=1&last=change-9"):
        reply = ada.get(f"changes?{asked}").json
        assert reply["restored"], asked
        assert [each["id"] for each in reply["changes"]] == [LIST]
    # Whoever did not note the change's id goes on by the number alone.
    bare = ada.get("changes?since=1").json
    assert (bare["restored"], bare["changes"]) == (False, [])


def test_a_phone_that_knows_another_epoch_changes_nothing(ada: Phone) -> None:
    """A restored server counts revisions again that it has given before."""
    ada.put(LIST, None, said("change-1", rows=[1]))
    path, tag = f"/api/documents/{LIST}", {"If-Match": '"1"'}
    late = ada.client.put(f"{path}?epoch=gone", json=said("change-2", rows=[2]), headers=tag)
    assert (late.status_code, "restored" in late.json["message"]) == (409, True)
    gone = ada.client.delete(f"{path}?epoch=gone&change_id=change-3", headers=tag)
    assert gone.status_code == 409
    assert ada.get(f"documents/{LIST}").json["rev"] == 1
    now = ada.get("me").json["epoch"]
    right = ada.client.put(f"{path}?epoch={now}", json=said("change-2", rows=[2]), headers=tag)
    assert right.status_code == 200


def test_a_large_reply_is_cut(ada: Phone) -> None:
    for at in range(3):
        ada.put(f"photo.{at}", None, said(f"change-{at}", picture="x" * 700_000))
    reply = ada.get("changes").json
    assert (len(reply["changes"]), reply["more"]) == (1, True)


def test_nobody_reads_or_writes_unasked(app: Flask, ada: Phone) -> None:
    nobody = Phone(app)
    ada.put(LIST, None, said("change-1"))
    for reply in (
        nobody.get("me"),
        nobody.get("changes"),
        nobody.get(f"documents/{LIST}"),
        nobody.put(LIST, 1, said("change-2")),
        nobody.delete(LIST, 1, "change-3"),
    ):
        assert reply.status_code == 401
        assert reply.json["message"].endswith(".")
    other = ada.client.put(
        f"/api/documents/{LIST}", json=said("change-2"),
        headers={"If-Match": '"1"', "Origin": "https://elsewhere.example"},
    )  # fmt: skip
    assert other.status_code == 403
    assert ada.get("me").json["person"] == {"name": "Ada", "role": "owner"}


def test_a_job_is_one(ada: Phone) -> None:
    """The core's own check stands at the door, with a fault's place."""
    job = {"longpoint": "job", "schema": 1, "id": "j1", "title": "Porch", "units": "in", "step": 16,
           "items": [], "stock": [], "things": [], "ticks": [], "log": []}  # fmt: skip
    assert ada.put("job.j1", None, said("change-1", **job)).status_code == 201
    assert ada.put("job.j2", None, said("change-2", **job)).status_code == 422
    newer = ada.put("job.j1", 1, said("change-3", **job) | {"schema": 9})
    assert "newer Longpoint" in str(newer.json["errors"])
    broken = ada.put("job.j1", 1, said("change-4", **(job | {"title": 5})))
    assert list(broken.json["errors"]["json"]) == ["body.title"]


def test_what_is_no_document_is_refused_in_words(ada: Phone) -> None:
    for name in ("form.corner-joint", "settings.settings", "job.", "nothing", "list.a%00b",
                 "list." + "x" * 161):  # fmt: skip
        reply = ada.put(name, None, said("change-1"))
        assert (reply.status_code, bool(reply.json["message"])) == (404, True), name
    for change in (said("short"), said("with space"), said("change-1\n"), said("c" * 65),
                   said("change-1") | {"body": []}, said("change-1") | {"schema": 10**30},
                   said("change-1") | {"units": "ft"}, said("change-1") | {"more": 1}):  # fmt: skip
        assert ada.put(LIST, None, change).status_code == 422, change
    for value in (float("nan"), float("-inf"), 10**400, [[float("nan")]]):
        assert ada.put(LIST, None, said("change-1", rows=value)).status_code == 422, value
    for at, value in enumerate(("\0", "\ud800", [[[[]]]], "\u202e", 2**53, 0.1, None)):
        ada.put(LIST, at or None, said(f"change-{at}", rows=value))
        assert ada.get(f"documents/{LIST}").json["body"] == {"rows": value}


def test_whatever_is_kept_is_told(ada: Phone) -> None:
    """What can be read only near the top of the program's stack would block the feed for all."""
    body: Any = 1
    for at in range(500):
        body = [body] if at % 2 else {"in": body}
        reply = ada.client.put(
            "/api/documents/list.deep", json=said(f"change-{at}", rows=body),
            headers={"If-None-Match": "*"} if at == 0 else {"If-Match": f'"{at}"'},
        )  # fmt: skip
        if reply.status_code == 422:
            break
    assert "levels" in str(reply.json["errors"])
    assert ada.get("changes").json["changes"][0]["rev"] == at == 31
    for deep in (b"[" * 100_000, b"[" * 900 + b"]" * 900):
        text = (
            b'{"change_id": "change-x1", "units": "in", "schema": 1, "body": {"rows": %s}}' % deep
        )
        reply = ada.client.put(
            "/api/documents/list.deeper", data=text, content_type="application/json",
            headers={"If-None-Match": "*"},
        )  # fmt: skip
        assert reply.status_code in (400, 422)


def test_four_megabytes_is_the_end(ada: Phone) -> None:
    assert ada.put(LIST, None, said("change-1", rows="x" * 4_000_000)).status_code == 201
    large = ada.put(LIST, 1, said("change-2", rows="x" * 4_200_000))
    assert (large.status_code, "4096 KB" in large.json["message"]) == (413, True)


def test_a_full_disk_is_said_and_nothing_is_half_kept(ada: Phone, shop: Database) -> None:
    """SQLite's own limit of pages stands for the disk."""
    ada.put(LIST, None, said("change-1", rows=[1]))
    if shop.engine.dialect.name != "sqlite":
        return
    with shop.engine.connect() as connection:
        pages = connection.exec_driver_sql("PRAGMA page_count").scalar()
        connection.exec_driver_sql(f"PRAGMA max_page_count = {pages}")
    full = ada.put(LIST, 1, said("change-2", rows="x" * 100_000))
    assert (full.status_code, full.headers["Retry-After"]) == (503, "10")
    assert "database" in full.json["message"]
    assert ada.get(f"documents/{LIST}").json["body"] == {"rows": [1]}
    with shop.engine.connect() as connection:
        connection.exec_driver_sql("PRAGMA max_page_count = 100000")
    assert ada.put(LIST, 1, said("change-2", rows="x" * 100_000)).json["rev"] == 2


def test_who_only_reads_needs_nothing_written(ada: Phone, shop: Database) -> None:
    """When a device was seen last is noted where that can be."""
    ada.put(LIST, None, said("change-1", rows=[1]))
    if shop.engine.dialect.name != "sqlite":
        return
    with shop.session() as session:
        session.execute(update(Device).values(seen=datetime(2026, 1, 1, tzinfo=UTC)))
    with shop.engine.connect() as connection:
        connection.exec_driver_sql("PRAGMA query_only = ON")
    assert ada.get("changes").status_code == 200
    assert ada.put(LIST, 1, said("change-2", rows=[2])).status_code == 503


def test_room_ends(app: Flask, ada: Phone, monkeypatch: Any) -> None:
    monkeypatch.setitem(app.config, "ROOM", 100)
    assert ada.put(LIST, None, said("change-1", rows="x" * 50)).status_code == 201
    full = ada.put("list.more", None, said("change-2", rows="x" * 50))
    assert full.status_code == 507
    assert ada.put(LIST, 1, said("change-3", rows="x" * 60)).status_code == 200, "counts once"


def test_a_server_without_a_shop_has_none_of_it() -> None:
    client = create_app().test_client()
    for path in ("me", "changes", f"documents/{LIST}"):
        assert client.get(f"/api/{path}").status_code == 404


def test_it_stands_after_a_restart(ada: Phone, shop: Database, shop_address: str) -> None:
    ada.put(LIST, None, said("change-1", rows=["ü 1/2″"]))
    shop.close()
    again = Database(shop_address)
    with again.reading() as session:
        assert read(session, LIST)["body"] == {"rows": ["ü 1/2″"]}
    again.close()
