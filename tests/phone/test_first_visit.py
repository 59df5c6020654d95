"""A first visit that goes wrong: a sentence and the way out, no blank page, no false promise."""

import json
import re
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

import longpoint
from tests.phone.app import FRAME, READY, App, hash_of
from tests.phone.plain import Host, hosted
from tests.phone.storage import wait_until

BUILT = Path(longpoint.__file__).parent / "static"
FORM = "#/saw/mitered-frame"


WATCH = """(says) => {
  const fetched = window.fetch;
  window.fetch = (what, ...rest) => {
    if (String(what).includes("micropython")) window.begun ??= performance.now();
    return fetched(what, ...rest);
  };
  new MutationObserver(() => {
    const isSeen = document.querySelector("lp-app")?.innerText.includes(says);
    if (isSeen) window.seen ??= performance.now();
  }).observe(document, { subtree: true, childList: true, characterData: true });
}"""
"""Notes when words are on the screen, and when the interpreter is asked for."""


@pytest.fixture
def host(tmp_path: Path) -> Iterator[Host]:
    folder = tmp_path / "site"
    shutil.copytree(BUILT, folder)
    with hosted(folder) as host:
        yield host


@pytest.fixture
def app(page: Page, host: Host) -> App:
    return App(page, host.address)


def script(host: Host, name: str) -> str:
    """Return the path of a built script, whose name carries its hash."""
    (found,) = (host.folder / "assets").glob(f"{name}-*.js")
    return f"/assets/{found.name}"


def kept(page: Page, path: str) -> Any:
    """Return status and media type of a file as it is kept for use with no signal."""
    return page.evaluate(
        """(path) => caches.match(path).then((kept) =>
             kept && [kept.status, kept.headers.get("content-type")])""",
        path,
    )


def answers(app: App) -> None:
    app.put("#field-fit", "inside")
    for label, text in (("Opening width", "30"), ("Opening height", "40"), ("Trim width", "2")):
        app.enter(label, text)
    app.expect_answer("30")


def test_a_worker_of_the_wrong_media_type_heals_from_what_is_kept(app: App, host: Host) -> None:
    """What is kept is known by its hash, so it is kept as what it is, whatever the host says."""
    worker = script(host, "worker")
    host.types[worker] = "text/plain"
    app.open(FORM)
    app.page.wait_for_function("() => navigator.serviceWorker.controller !== null")
    # It stays for some seconds alone.
    expect(app.page.get_by_text(READY)).to_be_visible()
    app.put("#field-fit", "inside")
    app.enter("Opening width", "30")
    assert kept(app.page, worker) == [200, "text/javascript; charset=utf-8"]
    host.stop()
    app.page.reload()
    answers(app)
    host.start()


@pytest.mark.parametrize(
    ("fragment", "says"),
    [
        ("#/saw", "The joint is open at the heel or the toe"),
        ("#/job", "A job keeps a customer's items together"),
        (FORM, "Still needed: Frame goes, Opening width, Opening height, Trim width"),
    ],
    ids=["list", "jobs", "tool"],
)
def test_the_screen_waits_for_nothing_of_the_core(app: App, fragment: str, says: str) -> None:
    """The interpreter is by far the largest file: it is asked for once the screen is drawn."""
    asked: list[str] = []
    app.page.route(re.compile("micropython|core-"), lambda route: asked.append(route.request.url))
    app.page.add_init_script(f"({WATCH})({json.dumps(says)})")
    app.open(fragment)
    expect(app.page.get_by_text(says)).to_be_visible()
    app.page.wait_for_function("() => window.begun")
    seen, begun = app.page.evaluate("() => [window.seen, window.begun]")
    wait_until(app.page, lambda: bool(asked), "the host is asked for it")
    assert seen < begun


def test_a_form_that_is_half_filled_keeps_no_place_for_an_example(app: App) -> None:
    """Its drawing is asked for where a form was empty; a caption once stood over nothing."""
    app.open(hash_of("saw", "mitered-frame", {"opening_width": "30"}))
    expect(app.page.get_by_text("Still needed: Frame goes")).to_be_visible()
    # The core has spoken: what it says brings no caption either.
    expect(app.page.locator(".tool:not(.coming)")).to_be_visible()
    expect(app.page.locator(".ghosted")).to_have_count(0)
    app.open(FORM)
    expect(app.page.locator(".ghosted svg.drawing")).to_be_visible()


def test_without_its_worker_it_is_not_called_ready(app: App, host: Host) -> None:
    host.refuse.add(script(host, "worker"))
    app.open(FORM)
    expect(app.page.get_by_text("could not be kept for use with no signal")).to_be_visible()
    app.put("#field-fit", "inside")
    app.enter("Opening width", "30")
    expect(app.page.get_by_text("could not be loaded").first).to_be_visible()
    expect(app.page.get_by_text(READY)).to_have_count(0)
    host.refuse.clear()
    app.open(FORM)
    expect(app.page.get_by_text(READY)).to_be_visible()
    host.stop()
    app.page.reload()
    answers(app)
    host.start()


def test_a_kept_file_that_was_damaged_is_fetched_again(app: App, host: Host) -> None:
    app.install()
    worker = script(host, "worker")
    app.page.evaluate(
        """async (path) => {
          for (const name of await caches.keys()) {
            const cache = await caches.open(name);
            const headers = { "content-type": "text/plain" };
            await cache.put(path, new Response("broken", { headers }));
          }
        }""",
        worker,
    )
    app.open(FORM)
    # `wait_for_function` takes a promise for true at once: nothing would be waited for.
    length = "async (path) => (await (await caches.match(path)).text()).length"
    wait_until(app.page, lambda: app.page.evaluate(length, worker) > 1000, "it is whole again")
    app.page.reload()
    answers(app)


def test_scripts_that_are_missing(app: App, host: Host) -> None:
    host.refuse.add(script(host, "app"))
    app.page.clock.install()
    app.open(FORM)
    expect(app.page.get_by_text("Longpoint has not started.")).to_be_visible()


def test_the_first_paint_waits_for_no_script(app: App) -> None:
    app.page.route("**/assets/*.js", lambda route: None)  # It is never answered.
    app.page.goto(f"{app.address}/{FORM}", wait_until="commit")
    expect(app.page.get_by_role("heading", name="Longpoint")).to_be_visible()
    expect(app.page.get_by_role("navigation").get_by_role("link", name="Saw")).to_be_visible()


def test_a_start_takes_over_compiled_scripts(app: App) -> None:
    """Chromium says in its trace how much of a script it found compiled."""
    app.install()
    cdp = app.page.context.new_cdp_session(app.page)
    events: list[dict[str, Any]] = []
    ends: list[object] = []
    cdp.on("Tracing.dataCollected", lambda part: events.extend(part["value"]))
    cdp.on("Tracing.tracingComplete", lambda end: ends.append(end))
    traced = {"includedCategories": ["v8", "devtools.timeline"]}
    cdp.send("Tracing.start", {"transferMode": "ReportEvents", "traceConfig": traced})
    app.open(FORM)
    expect(app.field("Opening width")).to_be_visible()
    cdp.send("Tracing.end")
    wait_until(app.page, lambda: ends, "the trace is here")
    compiled = [event["args"] for event in events if event["name"] == "v8.compile"]
    for name in ("first", "app", "tool"):
        (found,) = [each for each in compiled if f"/assets/{name}-" in each.get("fileName", "")]
        assert found["data"].get("consumedCacheSize", 0) > 10_000, name


NOTED = """
const { Worker } = globalThis;
globalThis.Worker = class extends Worker {
  constructor(...given) {
    super(...given);
    window.beforeScripts ??= globalThis.define === undefined;
  }
};
const asked = (window.asked = []);
const { fetch } = globalThis;
globalThis.fetch = (what, ...rest) => (asked.push(String(what)), fetch(what, ...rest));
const isAnswered = () => document.querySelector("#answer:not(.withdrawn)") !== null;
const post = globalThis.ServiceWorker?.prototype.postMessage;
if (post) ServiceWorker.prototype.postMessage = function (...given) {
  window.checked ??= isAnswered();
  return post.apply(this, given);
};
"""
"""Whether the core began before any script, what was asked for, whether what is kept was looked
through only once an answer stood."""


def test_a_start_comes_before_all_that_can_wait(app: App) -> None:
    app.install()
    app.page.add_init_script(NOTED)
    app.open(hash_of("saw", "mitered-frame", FRAME))
    app.expect_answer()
    assert app.page.evaluate("window.beforeScripts"), "the core starts before the page's scripts"
    # What is kept the page reads itself: the service worker gives it scripts alone.
    assert app.page.evaluate("window.asked") == []
    app.page.wait_for_function("() => window.checked !== undefined")
    assert app.page.evaluate("window.checked"), "what is kept is looked through after the answer"


def test_a_host_whose_policy_knows_no_script_within_the_page(app: App, host: Host) -> None:
    """It is a policy's right (CSP level 3): the start is slower then, nothing else."""
    host.policy = "script-src 'self' 'wasm-unsafe-eval'"
    app.install()
    app.page.add_init_script(NOTED)
    host.stop()
    app.open(FORM)
    answers(app)
    assert not app.page.evaluate("window.beforeScripts")
    host.start()


@pytest.mark.parametrize("status", [404, 200], ids=["missing", "empty"])
def test_a_screen_that_does_not_come_is_asked_for_again(app: App, host: Host, status: int) -> None:
    """Opening the question again is all that it takes."""
    tool = f"**{script(host, 'tool')}"
    app.page.route(tool, lambda route: route.fulfill(status=status, content_type="text/javascript"))
    app.open("#/saw")
    question = app.page.get_by_role("link", name="Mitered frame")
    question.tap()
    expect(app.page.get_by_text("it needs a signal once")).to_be_visible()
    app.page.unroute(tool)
    app.turn("saw")
    question.tap()
    answers(app)


def test_a_browser_without_workers(app: App) -> None:
    app.page.add_init_script("delete globalThis.Worker;")
    app.open(FORM)
    app.put("#field-fit", "inside")
    app.enter("Opening width", "30")
    expect(app.page.get_by_text("This browser can't run the part that works").first).to_be_visible()
    app.page.reload()
    expect(app.field("Opening width")).to_have_value("30")


def test_a_device_without_room_for_the_files(app: App, host: Host) -> None:
    tool = app.page.context.new_cdp_session(app.page)
    tool.send("Storage.overrideQuotaForOrigin", {"origin": host.address, "quotaSize": 1000})
    app.open(FORM)
    # It has fetched and checked every file by then.
    words = app.page.get_by_text("could not be kept for use with no signal")
    expect(words).to_be_visible()
    answers(app)


def test_another_tab_at_work_on_the_database(app: App) -> None:
    """Its upgrade goes on and on: to open is neither refused nor said to be held back."""
    other = app.page.context.new_page()
    other.goto(f"{app.address}/manifest.webmanifest")
    other.evaluate(
        """() => new Promise((resolve) => {
          const opening = indexedDB.open("longpoint", 1);
          opening.onupgradeneeded = () => {
            const store = opening.result.createObjectStore("kept");
            const spin = () => { if (!globalThis.let) store.get(0).onsuccess = spin; };
            spin();
            resolve();
          };
        })"""
    )
    app.open(FORM)
    words = app.page.get_by_text("This device's storage does not open")
    expect(words.first).to_be_visible()
    answers(app)
    other.close()
