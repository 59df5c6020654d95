"""Take the README's pictures from the app itself, on a phone's screen.

    sh tests/phone/pictures

writes the six pictures to web/pictures. Numbers in them are the core's own answers. Where the
machine has pngquant the files come out at a third of the size, in 64 colors.
"""

import os
import shutil
import subprocess
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from playwright.sync_api import Browser, expect, sync_playwright

from tests.phone.app import FRAME, App, example_hash, hash_of
from tests.phone.conftest import FLAGS, PHONE
from tests.serving import served

FOLDER = Path(__file__).parent.parent.parent / "web" / "pictures"
SHARPNESS = 2


def place(app: App) -> None:
    """The saw's questions."""
    app.open("#/saw")
    expect(app.page.get_by_role("heading", name="At the saw")).to_be_visible()


def frame(app: App) -> None:
    """A mitered frame answered."""
    app.open(hash_of("saw", "mitered-frame", FRAME))
    app.expect_answer("27 and 13/16")


def pad(app: App) -> None:
    """A measure on the inch pad."""
    frame(app)
    app.field("Opening height").tap()
    expect(app.page.get_by_role("group", name="Pad for")).to_be_visible()


def trim(app: App) -> None:
    """Molding around a room: the answer and its plan."""
    app.open(example_hash("saw", "trim-run"))
    expect(app.page.locator(".result lp-drawing:not(.ghost) svg")).to_be_visible()
    app.answer.evaluate("(card) => scrollTo(0, card.getBoundingClientRect().top + scrollY - 12)")


def hinges(app: App) -> None:
    """Hinges and their mortises."""
    app.open(example_hash("site", "hinge-layout"))
    app.expect_answer("Mortise depth", "1/16", "full")


def refusal(app: App) -> None:
    """Trim too wide for its recess is refused with what would do, and the answer withdrawn."""
    frame(app)
    app.enter("Trim width", "15")
    app.page.keyboard.press("Escape")
    expect(app.page.locator(".message")).to_be_visible()
    app.expect_withdrawn()


PICTURES: list[tuple[str, Callable[[App], None]]] = [
    ("place", place),
    ("frame", frame),
    ("pad", pad),
    ("trim", trim),
    ("hinges-dark", hinges),
    ("refusal", refusal),
]


@contextmanager
def phone(browser: Browser, look: str) -> Iterator[App]:
    """A phone that has kept the app already, so that nothing is announced over the picture."""
    with (
        served() as address,
        closing(
            browser.new_context(
                viewport=PHONE,
                has_touch=True,
                is_mobile=True,
                device_scale_factor=SHARPNESS,
                color_scheme="dark" if look == "dark" else "light",
            )
        ) as context,
    ):
        app = App(context.new_page(), address)
        app.install()
        expect(app.page.get_by_text("Ready offline")).to_be_hidden()
        yield app


def make_small(path: Path) -> None:
    """Reduce the colors of a PNG in place, where there is a tool for it."""
    tool = shutil.which("pngquant")
    if tool:
        options = ["--force", "--strip", "--nofs", "--output", str(path)]
        subprocess.run([tool, *options, "64", str(path)], check=True)


def main() -> None:
    """Take all pictures."""
    FOLDER.mkdir(exist_ok=True)
    with (
        sync_playwright() as playwright,
        closing(
            playwright.chromium.launch(executable_path=os.environ["LONGPOINT_BROWSER"], args=FLAGS)
        ) as browser,
    ):
        for look in ("light", "dark"):
            with phone(browser, look) as app:
                for name, show in PICTURES:
                    if name.endswith("-dark") == (look == "dark"):
                        show(app)
                        path = FOLDER / f"{name}.png"
                        app.page.screenshot(path=path, animations="disabled", caret="hide")
                        make_small(path)
                        print(f"{path.name}: {path.stat().st_size / 1000:.0f} KB")


if __name__ == "__main__":
    main()
