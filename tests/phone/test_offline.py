"""No signal: everything works from the second visit on, from a plain file host that is gone."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, Playwright, expect

from longpoint.cli import main
from tests.phone.app import FRAME, TOOLS, App, example_hash, hash_of, verdict_of
from tests.phone.conftest import FLAGS, PHONE
from tests.phone.plain import Host, hosted
from tests.phone.storage import kept_documents, wait_until

COLD = 5
"""The app starts anew at every so many tools."""


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The static site as `longpoint export` writes it, in a folder below the host's root."""
    root = tmp_path_factory.mktemp("host")
    assert main(["export", str(root / "tools" / "longpoint")]) == 0
    return root


@pytest.fixture
def host(site: Path) -> Iterator[Host]:
    with hosted(site) as host:
        yield host


@pytest.fixture
def app(page: Page, host: Host) -> App:
    return App(page, host.address + "/tools/longpoint")


def needed(host: Host) -> list[str]:
    """Return what was asked of the host but for the look for a newer version, which may fail."""
    return [path for path in host.asked if not path.endswith("/sw.js")]


def test_with_the_host_gone_every_tool_answers(
    app: App, host: Host, context: BrowserContext
) -> None:
    """Some from a cold start, the others on the page of the one before; in CPython's words."""
    app.install()
    host.stop()
    host.asked.clear()
    fresh = App(context.new_page(), app.address)
    for at, (place, slug) in enumerate(TOOLS):
        if at % COLD == 0:
            fresh.open(example_hash(place, slug))
        fresh.turn_to_example(place, slug)
        expect(fresh.answer).to_contain_text(verdict_of(slug))
        expect(fresh.page.locator(".drawing svg, svg.drawing").first).to_be_visible()
    assert needed(host) == []
    host.start()


def test_with_the_network_cut_a_reload_and_an_edit_work(
    app: App, host: Host, context: BrowserContext
) -> None:
    app.install()
    context.set_offline(True)
    host.asked.clear()
    app.open(hash_of("saw", "mitered-frame", FRAME))
    app.expect_answer("long point", "27 and 13/16")
    app.page.reload()
    app.enter("Opening width", "30")
    app.expect_answer("30")
    assert needed(host) == []


def test_hinge_mortise_of_a_residential_door_offline(app: App, context: BrowserContext) -> None:
    """By hand: 0.085 - (3/32 - 1/16) / 2 = 0.069375, a sixteenth full."""
    app.install()
    context.set_offline(True)
    app.go("Site")
    app.page.get_by_role("link", name="how deep is the mortise").click()
    for label, text in (
        ("Leaf height", "79"),
        ("Door thickness", "1 3/8"),
        ("Hinge height", "3 1/2"),
        ("Hinge leaf thickness", "0.085"),
        ("Hinge gap", "3/32"),
    ):
        app.enter(label, text)
    app.expect_answer("Mortise depth", "1/16", "full")
    expect(app.answer).to_contain_text("0.069")


def test_the_first_visit_asks_nothing_of_other_hosts(app: App, host: Host) -> None:
    asked: list[str] = []
    app.page.on("request", lambda request: asked.append(request.url))
    app.install()
    assert asked
    assert all(url.startswith((host.address, "blob:", "data:")) for url in asked)


def place_kept(app: App) -> str:
    return str(kept_documents(app.page)["settings", "settings"]["body"]["place"])


def test_what_was_typed_survives_the_end_of_the_browser(
    host: Host, playwright: Playwright, browser_path: str, tmp_path: Path
) -> None:
    def start() -> App:
        context = playwright.chromium.launch_persistent_context(
            str(tmp_path), executable_path=browser_path, args=FLAGS, viewport=PHONE
        )
        return App(context.new_page(), host.address + "/tools/longpoint")

    app = start()
    app.install()
    app.open("#/saw/mitered-frame")
    app.enter("Opening width", "31 1/2")
    app.enter("Opening height", "3/0")
    expect(app.page.get_by_text("3/0 has a 0 under the line").first).to_be_visible()
    app.go("Yard")
    expect(app.page.get_by_role("heading", name="At the yard")).to_be_visible()
    # The place is written after it is shown, and a browser that ends may tell its pages nothing.
    wait_until(app.page, lambda: place_kept(app) == "yard", "the place is kept")
    app.page.context.close()

    host.stop()
    app = start()
    app.open()
    expect(app.page.get_by_role("heading", name="At the yard")).to_be_visible()
    app.open("#/saw/mitered-frame")
    expect(app.field("Opening width")).to_have_value("31 1/2")
    expect(app.field("Opening height")).to_have_value("3/0")
    app.page.context.close()
    host.start()
