"""A job's screens as their user handles them: items, questions, fields, photos."""

import re
import zlib
from pathlib import Path

from playwright.sync_api import FilePayload, Locator, Page, expect

from tests.phone.app import FRAMES, App

FAULTS = (Path(__file__).parent / "faults.js").read_text()
TARGET = 48
WIDTHS = (390, 360, 320)


def begin(app: App, name: str) -> None:
    """Begin a job from the list."""
    app.page.get_by_role("button", name="New job").tap()
    app.page.get_by_label("Name of the job").fill(name)
    app.page.get_by_role("button", name="Done").tap()
    expect(app.page.get_by_role("heading", level=1)).to_have_text(name)


def add_item(app: App, pattern: str) -> None:
    app.page.get_by_role("button", name=re.compile("^(An|Another) item$")).tap()
    app.page.get_by_role("dialog").get_by_role("button", name=pattern).tap()
    expect(app.page.get_by_role("dialog")).to_have_count(0)


def item(app: App, title: str) -> Locator:
    return app.page.get_by_role("region", name=title, exact=True)


def line(app: App, title: str, question: str) -> Locator:
    """Return the line of a question, by the balloon's letter and its name."""
    return item(app, title).get_by_role("link", name=re.compile(f"^{question}"))


def open_item(app: App, title: str) -> None:
    item(app, title).get_by_role("button", name=re.compile(f"^{re.escape(title)}")).tap()


def back(app: App) -> None:
    app.page.keyboard.press("Escape")
    app.page.get_by_role("link", name="Back to the job").tap()


def fill(app: App, **texts: str) -> None:
    for name, text in texts.items():
        app.put(f"#field-{name}", text)
    app.page.keyboard.press("Escape")


def field_card(app: App, name: str) -> Locator:
    return app.page.locator(f".field:has(#field-{name})")


def picture(wide: int, high: int) -> bytes:
    """Return a PNG (ISO/IEC 15948) of one gray, bit for bit black."""

    def chunk(name: bytes, data: bytes) -> bytes:
        crc = zlib.crc32(name + data).to_bytes(4, "big")
        return len(data).to_bytes(4, "big") + name + data + crc

    head = wide.to_bytes(4, "big") + high.to_bytes(4, "big") + bytes([8, 0, 0, 0, 0])
    rows = zlib.compress(bytes(1 + wide) * high)
    parts = [chunk(b"IHDR", head), chunk(b"IDAT", rows), chunk(b"IEND", b"")]
    return b"\x89PNG\r\n\x1a\n" + b"".join(parts)


def take_photo(page: Page) -> Locator:
    """Take a photo for the open item; return the camera's button."""
    camera = page.locator("lp-photos input[type=file]")
    photo = FilePayload(name="wall.png", mimeType="image/png", buffer=picture(3000, 1500))
    camera.set_input_files(photo)
    expect(page.locator("lp-photo")).to_have_count(1)
    return camera


def photographed(page: Page, folder: Path) -> None:
    """Take a photo for the open item; what is none, or too large, is said and not kept."""
    camera = take_photo(page)
    none = FilePayload(name="wall.pdf", mimeType="application/pdf", buffer=b"%PDF-1.7")
    camera.set_input_files(none)
    expect(page.get_by_role("status").filter(has_text="wall.pdf")).to_be_visible()
    broken = FilePayload(name="torn.jpg", mimeType="image/jpeg", buffer=b"no picture")
    camera.set_input_files(broken)
    expect(page.get_by_role("status").filter(has_text="torn.jpg")).to_be_visible()
    # By its path: so many bytes take the browser's driver half a minute.
    large = folder / "large.jpg"
    large.write_bytes(bytes(20_000_001))
    camera.set_input_files(large)
    expect(page.get_by_role("status").filter(has_text="at most 20 MB")).to_be_visible()
    expect(page.locator("lp-photo")).to_have_count(1)


def expect_sound(page: Page, screen: str) -> None:
    """Nothing is cut off, nothing overlaps, all can be tapped, on phones of three widths."""
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 844})
        page.evaluate(FRAMES)
        assert page.evaluate(FAULTS, TARGET) == [], f"{screen}, {width} wide"
    page.set_viewport_size({"width": 390, "height": 844})
