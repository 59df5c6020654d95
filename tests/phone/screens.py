"""Every screen there is, by name, each with the way to it."""

import re
from collections.abc import Callable

from playwright.sync_api import expect

from tests.phone.app import FRAME, TOOLS, App, hash_of

Show = Callable[[App], None]


def place(name: str) -> Show:
    return lambda app: app.turn(name)


def answered(at: str, slug: str) -> Show:
    return lambda app: app.turn_to_example(at, slug)


def empty(at: str, slug: str) -> Show:
    def show(app: App) -> None:
        app.turn(at, slug)
        expect(app.headline).to_contain_text("Still needed")

    return show


def pad(at: str, slug: str, label: str) -> Show:
    def show(app: App) -> None:
        app.turn_to_example(at, slug)
        app.field(label).first.tap()
        expect(app.pad).to_be_visible()

    return show


def refused(app: App) -> None:
    inputs = FRAME | {"opening_width": "10", "opening_height": "3/0", "trim_width": "6"}
    app.turn("saw", "mitered-frame", hash_of("saw", "mitered-frame", inputs))
    expect(app.page.get_by_text("3/0 has a 0 under the line").first).to_be_visible()


def refused_row(app: App) -> None:
    walls = '[{"length": "144"}, {"length": "abc"}]'
    inputs = {"walls": walls, "thickness": "5/8"}
    app.turn("saw", "trim-run", hash_of("saw", "trim-run", inputs))
    app.page.get_by_role("button", name=re.compile("^Wall 2 ")).tap()
    expect(app.page.get_by_role("button", name="Remove wall 2")).to_be_visible()


def unfolded(app: App) -> None:
    app.turn_to_example("saw", "trim-run")
    for summary in app.page.locator("summary").all():
        summary.tap()
    app.page.locator(".fold-inputs").tap()
    expect(app.field("Scarf angle")).to_be_visible()


def settings(app: App) -> None:
    app.turn_to_example("saw", "mitered-frame")
    app.page.get_by_role("button", name="Units and settings").tap()
    expect(app.page.get_by_role("dialog", name="How it is shown")).to_be_visible()


def earlier(app: App) -> None:
    app.turn_to_example("saw", "mitered-frame")
    app.answer.get_by_role("button", name="Earlier answers").tap()
    expect(app.page.get_by_role("dialog").get_by_role("listitem").first).to_be_visible()


def search(words: str) -> Show:
    def show(app: App) -> None:
        app.turn("yard")
        app.page.get_by_role("searchbox").fill(words)
        expect(app.page.get_by_role("status").filter(has_text="found")).to_have_count(1)

    return show


def nothing_found(app: App) -> None:
    app.turn("yard")
    app.page.get_by_role("searchbox").fill("zeppelin")
    expect(app.page.get_by_text("No question holds")).to_be_visible()


SCREENS: dict[str, Show] = {
    **{f"place {name}": place(name) for name in ("yard", "saw", "site")},
    **{f"{slug} answered": answered(at, slug) for at, slug in TOOLS},
    **{f"{slug} empty": empty(at, slug) for at, slug in TOOLS},
    "pad for a length": pad("saw", "mitered-frame", "Opening width"),
    "pad for an angle": pad("saw", "corner-joint", "Corner"),
    "pad for a count": pad("saw", "even-spacing", "How many"),
    "pad for a text": pad("yard", "stock-sizes", "Label"),
    "refused": refused,
    "refused in a row": refused_row,
    "all unfolded": unfolded,
    "settings": settings,
    "earlier answers": earlier,
    "search": search("miter"),
    "search without result": nothing_found,
}
