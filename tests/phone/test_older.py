"""What older versions kept opens in this one, for ever: their databases and their files.

The frozen ones in ``fixtures/kept`` were typed on the screens of those versions and read out whole.
"""

from pathlib import Path
from typing import Any

from playwright.sync_api import expect

from tests.cases import KEPT
from tests.phone.app import App
from tests.phone.storage import create_database, frozen, kept_documents

DATABASE_1 = frozen("database-1.json")
DATABASE_2 = frozen("database-2.json")
COPY_1 = frozen("copy-1.json")


def expect_everything(app: App, forms: list[dict[str, Any]]) -> None:
    """Expect what version 1 kept under the names of today: units beside inputs, lists apart."""
    found = kept_documents(app.page)
    for form in forms:
        inputs = dict(form["inputs"])
        units = inputs.pop("units")
        name = form["slug"]
        if name.startswith("list "):
            document = found["list", name.removeprefix("list ")]
            assert document["body"] == inputs | {"typed_in": units}
        else:
            document = found["form", name]
            assert document["body"] == {"inputs": inputs, "typed_in": units}
        assert document["units"] == units
    settings = found["settings", "settings"]["body"]
    assert settings == {key: COPY_1["settings"][key] for key in settings}
    for answer in COPY_1["answers"]:
        kept = found["answers", answer["slug"]]["body"]["answers"]
        (same,) = [each for each in kept if each["at"] == answer["at"]]
        for part in ("inputs", "scale", "lead", "says"):
            assert same[part] == answer[part]


def expect_seen(app: App) -> None:
    """Expect it on the screens too."""
    expect(app.page.locator("html")).to_have_attribute("data-look", "dark")
    expect(app.page.get_by_role("button", name="mm · 1/2")).to_be_visible()
    app.turn("site", "hinge-layout")
    expect(app.field("Leaf height")).to_have_value("2032")
    app.turn("yard", "stock-sizes")
    expect(app.page.locator("lp-rows").get_by_role("button", name="2x4")).to_be_visible()
    app.turn("saw", "trim-run")
    app.expect_answer()
    app.answer.get_by_role("button", name="Earlier answers").tap()
    sheet = app.page.get_by_role("dialog", name="Earlier answers")
    entry = sheet.get_by_role("listitem").filter(has_text="Closed run yes")
    expect(entry.first).to_be_visible()
    # An older form's names are the core's to bring up to date.
    app.open("#/saw/mitered-frame")
    app.expect_answer()
    expect(app.field("Opening height")).to_have_value("1500")


def test_a_database_of_version_1_loses_nothing(app: App) -> None:
    create_database(app.page, app.address, DATABASE_1 | {"left": None})
    app.open("#/yard")
    expect(app.page.get_by_role("heading", name="At the yard")).to_be_visible()
    expect_everything(app, DATABASE_1["stores"]["forms"]["values"])
    expect_seen(app)


def test_what_a_page_of_version_1_left_is_written(app: App) -> None:
    create_database(app.page, app.address, DATABASE_1)
    app.open("#/saw/glue-up")
    expect(app.page.locator("#field-finished_width")).to_have_value("614.5")
    assert not app.page.evaluate("localStorage.getItem('longpoint unwritten')")
    assert kept_documents(app.page)["form", "glue-up"]["units"] == "mm"


def test_a_file_of_version_1_comes_back(app: App) -> None:
    app.open("#/yard")
    app.page.get_by_label("Restore from a file").set_input_files(Path(KEPT / "copy-1.json"))
    expect(app.page.get_by_text("Everything in the file is kept here again.")).to_be_visible()
    expect_everything(app, COPY_1["forms"])
    expect_seen(app)


def test_a_database_of_version_2_loses_nothing(app: App) -> None:
    create_database(app.page, app.address, DATABASE_2 | {"left": None})
    app.open("#/job")
    job = app.page.get_by_role("link", name="Porch")
    expect(job).to_be_visible()
    kept = kept_documents(app.page)
    for before in DATABASE_2["stores"]["documents"]["values"]:
        assert kept[before["kind"], before["id"]]["body"] == before["body"]
    # Its history goes on: the name can still be taken back.
    job.tap()
    app.page.get_by_role("button", name="Undo").tap()
    expect(app.page.get_by_role("heading", level=1)).to_have_text("Job")
    app.open("#/saw/mitered-frame")
    expect(app.field("Opening width")).to_have_value("31 1/2")
