"""Whatever comes in, by a file, an address or the storage itself, is looked at first.

It is taken, or set aside, or refused in a sentence; nothing hangs, and nothing else is lost.
"""

import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect

from longpoint.trade.shelf import tool_named
from tests.phone.app import App, hash_of
from tests.phone.storage import beside_the_app, kept_documents, put_documents, wait_until

FRAME = {
    "fit": "around",
    "opening_width": "27 13/16",
    "opening_height": "60 1/8",
    "trim_width": "2 1/2",
}
FORM = "#/saw/mitered-frame"


def document(kind: str, name: str, body: Any, **changed: Any) -> dict[str, Any]:
    record = {"kind": kind, "id": name, "units": "in", "revision": 1, "schema": 1, "step": 0}
    return record | {"body": body} | changed


def form(inputs: dict[str, Any], slug: str = "mitered-frame", **changed: Any) -> dict[str, Any]:
    body = {"inputs": inputs, "typed_in": "in"}
    version = {"schema": tool_named(slug).version}
    return document("form", slug, body, **(version | changed))


def answer(**changed: Any) -> dict[str, Any]:
    scale = {"units": "in", "step": 16}
    whole = {"id": "one", "at": 1.7e12, "inputs": FRAME, "version": 2, "scale": scale}
    return whole | {"lead": "A frame that is whole", "says": "Opening width 27 13/16"} | changed


def started(app: App) -> App:
    """Run the app once, so that its database is there."""
    app.open("#/yard")
    expect(app.page.get_by_role("heading", name="At the yard")).to_be_visible()
    return app


def said(app: App, words: str) -> None:
    expect(app.page.get_by_role("status").filter(has_text=words)).to_be_visible()


def copy(*documents: Any, **changed: Any) -> dict[str, Any]:
    return {"longpoint": "copy", "schema": 2, "documents": list(documents)} | changed


def restore(app: App, path: Path, content: Any) -> None:
    text = content if isinstance(content, str) else json.dumps(content)
    path.write_text(text, encoding="utf-8")
    app.page.get_by_label("Restore from a file").set_input_files(path)


class TestFile:
    @pytest.fixture
    def path(self, tmp_path: Path) -> Path:
        return tmp_path / "copy.json"

    @pytest.mark.parametrize(
        ("content", "words"),
        [
            ("no JSON at all", "not a whole copy"),
            ("[1, 2]", "not a whole copy"),
            ({"longpoint": "copy", "schema": 1, "forms": 3, "answers": []}, "not a whole copy"),
            (copy(documents={}), "not a whole copy"),
            (copy(schema=3), "A newer Longpoint made this copy"),
            ("[" * 100_000, "not a whole copy"),
        ],
        ids=["text", "list", "forms", "documents", "newer", "deep"],
    )
    def test_what_is_no_copy_is_refused(
        self, app: App, path: Path, content: Any, words: str
    ) -> None:
        restore(started(app), path, content)
        said(app, words)
        assert set(kept_documents(app.page)) <= {("settings", "settings")}

    def test_one_too_large_is_not_even_read(self, app: App, path: Path) -> None:
        with path.open("wb") as file:
            file.truncate(101_000_000)
        started(app).page.get_by_label("Restore from a file").set_input_files(path)
        said(app, "This file has 101 MB")

    def test_what_is_damaged_in_it_is_left_out_and_the_rest_comes(
        self, app: App, path: Path
    ) -> None:
        whole = form(FRAME)
        damaged = [
            None,
            form({"width": "9" * 20_000_000}, "trim-run"),
            document("__proto__", "one", {}),
            document("form", "__proto__", {}),
            document("list", "yard-sizes", None),
            document("list", "yard-sizes", {"rows": []}, units={"in": True}),
            document("answers", "trim-run", {}, schema="first"),
            document("job", "one", {"deep": json.loads("[" * 40 + "]" * 40)}),
        ]
        restore(started(app), path, copy(*damaged, whole))
        said(app, f"but for {len(damaged)} things in it that can't be read")
        app.open(FORM)
        expect(app.field("Opening width")).to_have_value("27 13/16")
        # The place is kept after it is shown.
        wait_until(
            app.page, lambda: ("settings", "settings") in kept_documents(app.page), "the place"
        )
        kinds = {kind for kind, _ in kept_documents(app.page)}
        assert kinds == {"settings", "form"}

    def test_names_of_objects_own_are_nothing_special(self, app: App, path: Path) -> None:
        text = json.dumps(copy(form(FRAME))).replace('"trim_width"', '"constructor"')
        restore(started(app), path, text)
        said(app, "Everything in the file is kept here again.")
        app.open(FORM)
        expect(app.field("Opening width")).to_have_value("27 13/16")
        expect(app.page.get_by_text("not used by this version")).to_be_visible()

    def test_damaged_answers_of_version_1(self, app: App, path: Path) -> None:
        kept = {key: value for key, value in answer(slug="mitered-frame").items() if key != "id"}
        damaged = [kept | {"at": 1e300}, kept | {"slug": ["saw"]}, None]
        old = {"longpoint": "copy", "schema": 1, "forms": [], "settings": None}
        restore(started(app), path, old | {"answers": [*damaged, kept]})
        said(app, "but for 3 things in it")
        app.open(FORM)
        app.page.get_by_role("button", name="Earlier answers").first.tap()
        expect(app.page.get_by_role("listitem").filter(has_text="that is whole")).to_be_visible()

    def test_what_gave_way_to_a_file_can_be_had_back(self, app: App, path: Path) -> None:
        app.open(FORM)
        app.enter("Opening width", "40")
        expect(app.page.get_by_role("main").get_by_role("button", name="Undo")).to_be_visible()
        restore(started(app), path, copy(form(FRAME)))
        said(app, "Everything in the file")
        app.open(FORM)
        expect(app.field("Opening width")).to_have_value("27 13/16")
        app.page.get_by_role("main").get_by_role("button", name="Undo").tap()
        expect(app.field("Opening width")).to_have_value("40")

    def test_kinds_that_this_version_does_not_know_go_round(self, app: App, path: Path) -> None:
        later = [
            document("sketch", "one", {"strokes": [[1, 2]]}, schema=7, color="blue"),
            form(FRAME | {"later_input": {"of": [1]}}, schema=99, beside={"any": None}),
            document("job", "gone", {}, deleted=1.7e12),
        ]
        restore(started(app), path, copy(*later))
        said(app, "Everything in the file")
        with app.page.expect_download() as download:
            app.page.get_by_role("button", name="Save to a file").tap()
        download.value.save_as(path)
        saved = json.loads(path.read_text(encoding="utf-8"))
        counted = {"revision", "step"}
        found = [
            {key: value for key, value in each.items() if key not in counted}
            for each in saved["documents"]
        ]
        for record in later:
            assert {key: value for key, value in record.items() if key not in counted} in found


class TestStored:
    def test_an_input_that_this_version_does_not_know_withholds_nothing(self, app: App) -> None:
        put_documents(started(app).page, app.address, form(FRAME | {"later_input": "3"}))
        app.open(FORM)
        app.expect_answer()
        expect(app.page.get_by_text("Kept, and not used by this version")).to_be_visible()
        app.enter("Opening width", "31")
        expect(app.page.get_by_role("main").get_by_role("button", name="Undo")).to_be_visible()
        body = kept_documents(app.page)["form", "mitered-frame"]["body"]
        assert body["inputs"]["opening_width"] == "31"
        assert body["aside"] == [{"path": "later_input", "value": "3"}]
        app.page.reload()
        app.expect_answer()
        expect(app.page.get_by_text("Kept, and not used by this version")).to_be_visible()

    def test_what_was_set_aside_comes_back_once_it_is_understood(self, app: App) -> None:
        inputs = {key: value for key, value in FRAME.items() if key != "trim_width"}
        record = form(inputs)
        record["body"]["aside"] = [{"path": "trim_width", "value": "2 1/2"}]
        put_documents(started(app).page, app.address, record)
        app.open(FORM)
        expect(app.field("Trim width")).to_have_value("2 1/2")
        expect(app.page.get_by_text("not used by this version")).to_be_hidden()

    def test_an_address_takes_nothing_of_it_away(self, app: App) -> None:
        put_documents(started(app).page, app.address, form(FRAME | {"later_input": "3"}))
        app.open(f"{FORM}?opening_width=40&form=2")
        app.enter("Opening height", "60")
        expect(app.page.get_by_role("main").get_by_role("button", name="Undo")).to_be_visible()
        app.open(FORM)
        expect(app.field("Opening width")).to_have_value("40")
        expect(app.page.get_by_text("Kept, and not used by this version")).to_be_visible()

    @pytest.mark.parametrize("walls", [[None], [{"length": [None]}], "144", {"0": {}}, [[]]])
    def test_rows_that_are_none_are_set_aside(self, app: App, walls: Any) -> None:
        kept = form({"walls": walls, "thickness": "5/8"}, "trim-run")
        put_documents(started(app).page, app.address, kept)
        app.open("#/saw/trim-run")
        expect(app.field("Trim thickness")).to_have_value("5/8")
        expect(app.page.get_by_text("Kept, and not used by this version")).to_be_visible()
        expect(app.page.get_by_role("button", name="Add a wall")).to_be_visible()

    @pytest.mark.parametrize(
        "body",
        [None, "text", [1], {"inputs": {"width": "9" * 100_000}}],
        ids=["nothing", "text", "list", "long"],
    )
    def test_a_record_beyond_reading_is_said_and_kept(self, app: App, body: Any) -> None:
        record = document("form", "mitered-frame", body)
        put_documents(started(app).page, app.address, record)
        app.open(FORM)
        said(app, "What was kept for this can't be read. It is set aside")
        app.enter("Opening width", "31")
        expect(app.page.get_by_role("main").get_by_role("button", name="Undo")).to_be_visible()
        found = kept_documents(app.page)
        assert found["form", "mitered-frame"]["body"]["inputs"] == {"opening_width": "31"}
        (aside,) = [each for (kind, _), each in found.items() if kind == "damaged"]
        assert aside["body"] == {"kept": record}

    def test_a_newer_form_is_not_written_over(self, app: App) -> None:
        newer = form({"opening": {"of": "another kind"}}, schema=99)
        put_documents(started(app).page, app.address, newer)
        app.open(FORM)
        said(app, "A newer Longpoint wrote what is kept here")
        for label, name in (("Opening width", "opening_width"), ("Trim width", "trim_width")):
            app.enter(label, FRAME[name])
            said(app, "A newer Longpoint wrote what is kept here")
        # Once it is understood, what was typed meanwhile is joined with it.
        beside_the_app(app.page, app.address)
        assert kept_documents(app.page)["form", "mitered-frame"] == newer
        (left,) = app.page.evaluate(
            "Object.entries(localStorage).filter(([name]) => name.includes('unwritten'))"
        )
        assert FRAME["opening_width"] in left[1]

    def test_answers_that_are_none_are_passed_over(self, app: App) -> None:
        damaged = [
            answer(at=1e300),
            answer(at=None),
            answer(scale={}),
            answer(scale={"units": "cubits", "step": 16}),
            answer(inputs=[1]),
            answer(lead={"no": "text"}),
            None,
            "27",
        ]
        kept = document("answers", "mitered-frame", {"answers": [*damaged, answer()]})
        put_documents(started(app).page, app.address, kept)
        app.open(FORM)
        app.page.get_by_role("button", name="Earlier answers").first.tap()
        sheet = app.page.get_by_role("dialog", name="Earlier answers")
        expect(sheet.get_by_role("listitem")).to_have_count(1)
        sheet.get_by_role("button", name="A frame that is whole").tap()
        expect(app.field("Opening width")).to_have_value("27 13/16")

    def test_earlier_answers_never_hang(self, app: App) -> None:
        odd = {"mitered-frame": None, "corner-joint": 3, "trim-run": {"at": 1}, "glue-up": "x"}
        kept = [document("answers", slug, {"answers": each}) for slug, each in odd.items()]
        put_documents(started(app).page, app.address, *kept)
        for slug in odd:
            app.open(hash_of("saw", slug))
            app.page.get_by_role("button", name="Earlier answers").first.tap()
            expect(app.page.get_by_text("None yet.")).to_be_visible()

    def test_settings_that_make_no_sense_are_as_at_first(self, app: App) -> None:
        body = {"units": {}, "step": 7, "place": [], "look": "loud", "awake": "no"}
        put_documents(started(app).page, app.address, document("settings", "settings", body))
        app.open("#/saw")
        expect(app.page.get_by_role("button", name="in · 1/16")).to_be_visible()

    @pytest.mark.parametrize(
        "left",
        ["no JSON", "{}", "[1]", '[["mitered-frame"]]', '[{"key": ["form", 1]}]', "null"],
    )
    def test_nonsense_that_a_page_left_stops_nothing(self, app: App, left: str) -> None:
        beside_the_app(app.page, app.address)
        for name in ("longpoint unwritten", "longpoint unwritten another"):
            app.page.evaluate("([name, left]) => localStorage.setItem(name, left)", [name, left])
        app.open(FORM)
        app.enter("Opening width", "31")
        expect(app.page.get_by_role("main").get_by_role("button", name="Undo")).to_be_visible()


class TestAddress:
    @pytest.mark.parametrize(
        "walls",
        ['[{"length":[null]}]', "[null]", "[", '[{"length":{"__proto__":1}}]', '{"text":1}'],
    )
    def test_rows_that_can_not_be_read_are_said(self, app: App, walls: str) -> None:
        app.open(hash_of("saw", "trim-run", {"walls": walls, "thickness": "5/8"}))
        said(app, "Part of this address can't be read and was left out: walls.")
        expect(app.field("Trim thickness")).to_have_value("5/8")

    def test_one_far_too_long_is_said_and_left_out(self, app: App) -> None:
        app.open(hash_of("saw", "mitered-frame", {"opening_width": "9" * 1_000_000}))
        said(app, "left out: all of it, since it is too long.")
        app.enter("Opening width", "31")
        expect(app.field("Opening width")).to_have_value("31")

    def test_a_text_too_long_is_left_out_alone(self, app: App) -> None:
        app.open(hash_of("saw", "mitered-frame", FRAME | {"trim_width": "9" * 20_000}))
        said(app, "left out: trim_width.")
        expect(app.field("Opening width")).to_have_value("27 13/16")

    def test_names_that_are_no_inputs(self, app: App) -> None:
        app.open(f"{FORM}?opening_width=30&__proto__=3&constructor=4&toString=5&form=2")
        expect(app.field("Opening width")).to_have_value("30")
