"""A storage that fails is said, and what was typed is kept as soon as it can be."""

import json
from pathlib import Path
from typing import Any

from playwright.sync_api import Error, Page, expect

from tests.phone.app import App
from tests.phone.storage import (
    beside_the_app,
    create_database,
    frozen,
    kept_documents,
    put_documents,
    wait_until,
)

FORM = "#/saw/mitered-frame"
WIDTH, HEIGHT = "Opening width", "Opening height"

# What a browser answers, as a switch on the page decides.
FAILS = """(method, name) => {
  const real = IDBObjectStore.prototype[method];
  IDBObjectStore.prototype[method] = function (...given) {
    if (globalThis.isFailing) throw new DOMException("made to fail", name);
    return real.apply(this, given);
  };
}"""


def failing(app: App, method: str, name: str) -> None:
    app.page.add_init_script(f"globalThis.isFailing = true; ({FAILS})('{method}', '{name}')")


def fail_now(app: App, method: str, name: str) -> None:
    """Let it fail in the load that stands, from this moment on."""
    app.page.evaluate(f"globalThis.isFailing = true; ({FAILS})('{method}', '{name}')")


def mend(app: App) -> None:
    app.page.evaluate("globalThis.isFailing = false")


def said(app: App, words: str) -> None:
    expect(app.page.get_by_role("status").filter(has_text=words)).to_be_visible()


def expect_kept(app: App) -> None:
    """Wait until a change is written: only then can it be undone."""
    expect(app.page.get_by_role("main").get_by_role("button", name="Undo")).to_be_visible()


def kept_inputs(app: App) -> Any:
    """Return what the storage has of the form; None where it has none."""
    kept = kept_documents(app.page).get(("form", "mitered-frame"))
    return kept and kept["body"]["inputs"]


def crash(page: Page) -> None:
    """End the page's process, as a phone short of memory does."""
    with page.expect_event("crash"):
        try:
            page.goto("chrome://crash")
        except Error:
            return


def test_a_full_disk_is_said_and_nothing_is_lost_once_there_is_room(app: App) -> None:
    failing(app, "put", "QuotaExceededError")
    app.open(FORM)
    app.enter(WIDTH, "27 13/16")
    said(app, "This device has no room left")
    mend(app)
    app.enter(HEIGHT, "60 1/8")
    # The first can be undone before the second is written.
    both = {"opening_width": "27 13/16", "opening_height": "60 1/8"}
    wait_until(app.page, lambda: kept_inputs(app) == both, "both are kept")
    app.page.evaluate("localStorage.clear()")
    app.open(FORM)
    expect(app.field(WIDTH)).to_have_value("27 13/16")
    expect(app.field(HEIGHT)).to_have_value("60 1/8")


def test_what_can_not_be_read_is_not_taken_for_empty(app: App) -> None:
    """The story: an app that took a failed read for an empty storage wrote over what was there."""
    app.open(FORM)
    app.enter(WIDTH, "27 13/16")
    expect_kept(app)
    failing(app, "get", "DataError")
    app.open(FORM)
    said(app, "This device's storage could not be")
    mend(app)
    app.enter(HEIGHT, "60 1/8")
    expect(app.field(WIDTH)).to_have_value("27 13/16")
    expect_kept(app)
    both = {"opening_width": "27 13/16", "opening_height": "60 1/8"}
    wait_until(app.page, lambda: kept_inputs(app) == both, "both are kept")


LATE = """
const define = customElements.define.bind(customElements);
customElements.define = (name, made) =>
  name === "lp-app" ? setTimeout(() => define(name, made), 500) : define(name, made);
"""


def test_a_fault_before_there_is_a_screen_is_said_on_it(app: App) -> None:
    """The settings are read first, while the screen that says their fault is still made."""
    app.open("#/saw")
    # Written later, the place that is open now would take the broken record away.
    settings = ("settings", "settings")
    wait_until(app.page, lambda: settings in kept_documents(app.page), "the settings are kept")
    broken = {"kind": "settings", "id": "settings", "units": "in", "revision": "x", "body": {}}
    put_documents(app.page, app.address, broken)
    app.page.add_init_script(LATE)
    app.open("#/saw")
    said(app, "What was kept for this can't be read")


def test_a_lost_connection_is_taken_up_again(app: App) -> None:
    app.open(FORM)
    app.page.evaluate(
        """() => {
          const real = IDBDatabase.prototype.transaction;
          IDBDatabase.prototype.transaction = function () {
            IDBDatabase.prototype.transaction = real;
            throw new DOMException("Connection is closing.", "InvalidStateError");
          };
        }"""
    )
    app.enter(WIDTH, "27 13/16")
    expect_kept(app)
    assert kept_documents(app.page)["form", "mitered-frame"]["revision"] == 1


def test_an_older_window_that_keeps_the_storage_back(app: App) -> None:
    older = app.page.context.new_page()
    create_database(older, app.address, frozen("database-1.json"))
    older.evaluate(
        """() => new Promise((resolve) => {
          const opening = indexedDB.open("longpoint", 1);
          opening.onsuccess = () => resolve((globalThis.held = opening.result));
        }).then(() => undefined)"""
    )
    app.open(FORM)
    said(app, "An older Longpoint is open in another tab: close that tab.")
    app.enter(WIDTH, "27 13/16")
    older.close()
    expect_kept(app)
    # What the older one kept was typed in millimeters, by an older form: it mixes with nothing.
    expect(app.field(WIDTH)).to_have_value('27 13/16"')
    app.page.get_by_role("status").get_by_role("button", name="Take the other").tap()
    expect(app.field(HEIGHT)).to_have_value("1500")
    expect(app.field(WIDTH)).to_have_value("31 in")


def test_a_newer_version_of_the_database_is_left_alone(app: App) -> None:
    beside_the_app(app.page, app.address)
    app.page.evaluate(
        """() => new Promise((resolve) => {
          const opening = indexedDB.open("longpoint", 99);
          opening.onsuccess = () => resolve(opening.result.close());
        })"""
    )
    app.open(FORM)
    said(app, "A newer version of Longpoint keeps its data here: reload this page.")


def test_everything_can_be_saved_without_the_core(app: App, tmp_path: Path) -> None:
    app.open(FORM)
    app.enter(WIDTH, "27 13/16")
    expect_kept(app)
    app.page.context.route("**/*.wasm", lambda route: route.abort())
    app.open(FORM)
    app.expect_withdrawn()
    expect(app.field(WIDTH)).to_have_value("27 13/16")
    app.open("#/saw")
    with app.page.expect_download() as download:
        app.page.get_by_role("button", name="Save to a file").tap()
    download.value.save_as(tmp_path / "saved.json")
    saved = json.loads((tmp_path / "saved.json").read_text(encoding="utf-8"))
    (form,) = [each for each in saved["documents"] if each["kind"] == "form"]
    assert form["body"]["inputs"] == {"opening_width": "27 13/16"}


def test_one_record_that_can_not_be_read_keeps_back_no_other(app: App, tmp_path: Path) -> None:
    app.open(FORM)
    app.enter(WIDTH, "27 13/16")
    expect_kept(app)
    app.open("#/saw")
    app.page.evaluate(
        """() => {
          IDBObjectStore.prototype.getAll = () => {
            throw new DOMException("one value can't be read", "DataError");
          };
          const get = IDBObjectStore.prototype.get;
          IDBObjectStore.prototype.get = function (key) {
            if (key[0] === "settings") throw new DOMException("that one", "DataError");
            return get.call(this, key);
          };
        }"""
    )
    with app.page.expect_download() as download:
        app.page.get_by_role("button", name="Save to a file").tap()
    download.value.save_as(tmp_path / "saved.json")
    saved = json.loads((tmp_path / "saved.json").read_text(encoding="utf-8"))
    assert [each["id"] for each in saved["documents"]] == ["mitered-frame"]
    said(app, "but for 1 thing that can't be read")


def test_a_page_killed_while_typing(app: App) -> None:
    """What was written stays, whatever was under way; what was left is written by the next page."""
    app.open(FORM)
    app.enter(WIDTH, "27 13/16")
    expect_kept(app)
    # The storage is busy, so that what is typed now is not written when the page is hidden.
    app.page.evaluate(
        """() => new Promise((resolve) => {
          const opening = indexedDB.open("longpoint");
          opening.onsuccess = () => {
            const tx = opening.result.transaction("documents", "readwrite");
            const again = () => (tx.objectStore("documents").count().onsuccess = again);
            again();
            resolve();
          };
        })"""
    )
    app.enter(HEIGHT, "60 1/8")
    app.page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    crash(app.page)
    again = App(app.page.context.new_page(), app.address)
    again.open(FORM)
    expect(again.field(WIDTH)).to_have_value("27 13/16")
    expect(again.field(HEIGHT)).to_have_value("60 1/8")
    left = "Object.keys(localStorage).filter((name) => name.includes('unwritten'))"
    assert again.page.evaluate(left) == []
