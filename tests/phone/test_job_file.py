"""A job out and in: file, photos, link, code and lists, read by programs of other hands.

The job is that of the sheets' tests.
"""

import csv
import io
import json
import re
import zlib
from base64 import b64encode, urlsafe_b64decode, urlsafe_b64encode
from collections.abc import Iterator
from pathlib import Path

import pytest
import zxingcpp
from PIL import Image
from playwright.sync_api import Browser, Locator, expect

from tests.phone.app import App
from tests.phone.conftest import page_of
from tests.phone.storage import kept_documents, put_documents, wait_until
from tests.phone.test_job_sheets import PINE, begin, job, kept_job


@pytest.fixture
def other(browser: Browser, address: str) -> Iterator[App]:
    """A second phone, which knows nothing of the first."""
    page = page_of(browser, reduced_motion="reduce")
    yield App(page, address)
    page.context.close()


def handed_on(app: App) -> Locator:
    app.open("#/job/boot")
    expect(app.page.locator(".entryline .medium").first).to_be_visible()
    app.page.get_by_role("button", name="Hand it on").tap()
    return app.page.get_by_role("dialog", name="Hand this job on")


def saved(app: App, name: str, path: Path) -> Path:
    with app.page.expect_download() as download:
        app.page.get_by_role("button", name=name).tap()
    file = path / download.value.suggested_filename
    download.value.save_as(file)
    return file


def offer(app: App, path: Path) -> Locator:
    """Choose a job file and return the sheet that comes up."""
    app.open("#/job")
    app.page.get_by_label("Open a job file").set_input_files(path)
    return app.page.get_by_role("dialog")


def test_a_job_goes_to_a_second_phone_by_file_code_and_list(
    app: App, other: App, tmp_path: Path
) -> None:
    """The code is read by an independent decoder, the link unpacked by Python's own zlib."""
    body = job(title='Boot room, "back"', ticks=[{"of": "screws", "state": "bought", "paid": 7.5}])
    body["later"] = {"kept": [1, {"a": None}]}
    begin(app, body)
    hand = handed_on(app)

    # The code holds the address of a link, and the link the job.
    expect(hand.get_by_role("img", name="QR code of this job")).to_be_visible()
    picture = Image.open(io.BytesIO(app.page.locator(".code").screenshot(scale="device")))
    (code,) = zxingcpp.read_barcodes(picture)
    assert code.format == zxingcpp.BarcodeFormat.QRCode
    page, _, packed = code.text.partition("#/take/1/")
    assert page == f"{app.address}/"
    data = urlsafe_b64decode(packed + "=" * (-len(packed) % 4))
    assert json.loads(zlib.decompress(data, wbits=-15)) == body

    # The file is the document itself; the lists are CSV that Python's reader takes.
    file = saved(app, "Save the job file", tmp_path)
    assert file.name == "boot-room-back.longpoint.json"
    assert json.loads(file.read_text(encoding="utf-8")) == body
    app.page.evaluate("navigator.canShare = undefined; delete Navigator.prototype.canShare")
    cut = saved(app, "Cut list", tmp_path).read_bytes().decode("utf-8-sig")
    assert cut.count("\r\n") == cut.count("\n") == 5
    rows = list(csv.DictReader(io.StringIO(cut, newline="")))
    assert [each["Length in inches"] for each in rows] == ["40", "40", "30", "30"]
    buy = saved(app, "Buy list", tmp_path).read_bytes().decode("utf-8-sig")
    bought = list(csv.DictReader(io.StringIO(buy, newline="")))
    assert [(each["Stock"], each["Paid"]) for each in bought] == [
        ("1×3 primed pine", ""), ("Screws, box", "7.5"),
    ]  # fmt: skip

    # A second phone takes it in, knows it the second time, and keeps what differs beside it.
    sheet_of = offer(other, file)
    expect(sheet_of).to_contain_text('Boot room, "back"')
    sheet_of.get_by_role("button", name="Take it in").tap()
    expect(other.page.locator(".entryline .medium").first).to_be_visible()
    assert kept_job(other.page) == body
    other.open(f"#/take/1/{packed}")
    expect(other.page.get_by_role("dialog")).to_contain_text("kept here already")
    other.page.get_by_role("button", name="Open it").tap()
    expect(other.page.get_by_role("dialog")).to_have_count(0)
    expect(other.page.get_by_role("heading", name="Boot room")).to_be_visible()
    file.write_text(json.dumps(body | {"title": "Another"}), encoding="utf-8")
    sheet_of = offer(other, file)
    expect(sheet_of).to_contain_text("nothing is written over")
    sheet_of.get_by_role("button", name="Take it in beside it").tap()
    expect(other.page.get_by_role("heading", name=re.compile("^Another, taken in"))).to_be_visible()
    assert kept_job(other.page) == body


def test_photos_go_with_the_file_and_what_is_no_picture_stays_out(
    app: App, other: App, tmp_path: Path
) -> None:
    """One photo of two colors, made by another program, and one that is no picture at all."""
    made = io.BytesIO()
    Image.new("RGB", (40, 30), (200, 40, 20)).save(made, "JPEG")
    data = {"red": b64encode(made.getvalue()).decode(), "bad": b64encode(b"no picture").decode()}
    body = job()
    body["items"][0]["photos"] = [{"id": "red", "words": "Sill"}, {"id": "bad"}]
    begin(app, body)
    photos = [
        {"kind": "photo", "id": name, "units": "in", "revision": 1, "schema": 1, "step": 0}
        | {"body": {"job": "boot", "item": "i1", "data": [text]}}
        for name, text in data.items()
    ]
    put_documents(app.page, app.address, *photos)
    handed_on(app)
    file = saved(app, "Save the job file", tmp_path)
    assert json.loads(file.read_text(encoding="utf-8"))["pictures"] == data
    came = offer(other, file)
    expect(came).to_contain_text("2 photos")
    came.get_by_role("button", name="Take it in").tap()
    expect(other.page.locator(".entryline .medium").first).to_be_visible()
    (photo,) = kept_job(other.page)["items"][0]["photos"]
    assert photo["words"] == "Sill"
    kept = kept_documents(other.page)[("photo", photo["id"])]["body"]
    assert "".join(kept["data"]) == data["red"]


def test_a_link_alone_brings_the_job(app: App, other: App) -> None:
    begin(app, job())
    hand = handed_on(app)
    app.page.evaluate("() => { navigator.share = ({ url }) => { globalThis.shared = url; }; }")
    hand.get_by_role("button", name="Send a link").tap()
    wait_until(app.page, lambda: app.page.evaluate("globalThis.shared"), "the link is handed on")
    link = app.page.evaluate("globalThis.shared")
    other.open("#" + link.partition("#")[2])
    other.page.get_by_role("button", name="Take it in").tap()
    expect(other.page.get_by_role("dialog")).to_have_count(0)
    expect(other.page.get_by_role("heading", name="Boot room")).to_be_visible()
    assert kept_job(other.page) == job()
    other.page.reload()
    expect(other.page.get_by_role("heading", name="Boot room")).to_be_visible()
    expect(other.page.get_by_role("dialog")).to_have_count(0)


def test_a_job_too_large_for_one_code_says_so(app: App) -> None:
    """Random letters don't deflate: 6,000 hex digits are 3,000 bytes, above the 2,953 of a code."""
    noise = "".join(format((at * 2654435761 + at**3) % 2**32, "08x") for at in range(900))
    begin(app, job(customer={"note": noise[:4000]}, noise=noise))
    expect(handed_on(app)).to_contain_text("too large for one code")


EMPTY = {"longpoint": "job", "schema": 1, "id": "x", "title": "x", "items": []}
REFUSED = {
    "text": ("no JSON at all", "This is no job made by Longpoint"),
    "cut off": ('{"longpoint": "job", "sch', "only part of one"),
    "a list": ([1, 2], "An object is needed here."),
    "a copy": ({"longpoint": "copy", "schema": 2, "documents": []}, "not a job made by Longpoint"),
    "newer": (job(schema=2), "A newer Longpoint made this job"),
    "a wrong type": (
        job(items=[{"id": "i", "title": "t", "entries": [{"id": "e", "tool": 3}]}]),
        "Item 1, question 1, tool: A text is needed here.",
    ),
    "an id twice": (job(stock=[PINE, PINE]), "is the id of another one too"),
    "too deep": (EMPTY | {"later": json.loads("[" * 40 + "]" * 40)}, "too deep"),
    "a name": (json.dumps(job(later=1)).replace('"later"', '"__proto__"'), "can't be used"),
    "an id": (EMPTY | {"id": "__proto__"}, "can't be used"),
}


def packed(text: str) -> str:
    press = zlib.compressobj(9, wbits=-15)
    return urlsafe_b64encode(press.compress(text.encode()) + press.flush()).decode().rstrip("=")


def test_what_is_no_job_is_refused_in_words_and_touches_nothing(other: App, tmp_path: Path) -> None:
    """Files first, then links: damaged, newer, and one of 5 KB that unpacks to 5 MB."""
    path = tmp_path / "job.json"
    for name, (content, words) in REFUSED.items():
        text = content if isinstance(content, str) else json.dumps(content)
        path.write_text(text, encoding="utf-8")
        refused = offer(other, path)
        expect(refused, name).to_contain_text(words)
        refused.get_by_role("button", name="Close", exact=True).last.tap()
        expect(refused, name).to_have_count(0)
    with path.open("wb") as file:
        file.truncate(101_000_000)
    expect(offer(other, path)).to_contain_text("This file has 101 MB")
    whole = packed(json.dumps(job()))
    for link, words in (
        (f"1/{whole[:60]}", "Part of this link is missing"),
        (f"1/{whole[:40]}%%{whole[40:]}", "Part of this link is missing"),
        (f"2/{whole}", "A newer Longpoint made this link"),
        (f"1/{packed('0' * 5_000_000)}", "more than 2 MB"),
    ):
        other.open(f"#/take/{link}")
        expect(other.page.get_by_role("dialog")).to_contain_text(words)
    assert not [kind for kind, _ in kept_documents(other.page) if kind == "job"]
