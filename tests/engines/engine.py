"""A browser of another kind, the size of a phone: what a test does with it, whichever it is.

What is waited for is looked at again and again by plain scripts, since the page forbids what
drivers' own waits do. Patience ends only where something is broken.
"""

import json
from abc import ABC, abstractmethod
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

from tests.engines.process import awaited

WIDTH, HEIGHT = 390, 844
ESCAPE = "\ue00c"  # as WebDriver (W3C) names keys that have no letter
PAGE = (Path(__file__).parent / "page.js").read_text(encoding="utf-8")


class Engine(ABC):
    """One browser with one page; what it keeps lies in `folder` and outlives `end`."""

    pointer: str
    """What a finger is to this engine: a touch, or a mouse where it knows no touch."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.saved = folder / "saved"
        """Where the page's files go."""
        self.saved.mkdir()
        self.width = WIDTH

    @abstractmethod
    def start(self) -> None:
        """Start the browser with an empty page."""

    @abstractmethod
    def end(self) -> None:
        """End the browser; without one this does nothing."""

    @abstractmethod
    def open(self, address: str) -> None:
        """Open an address, in the same load where only what follows its # is another."""

    @abstractmethod
    def reload(self) -> None:
        """Load the page again."""

    @abstractmethod
    def set_width(self, width: int) -> None:
        """Make the screen so wide, now or soon."""

    @abstractmethod
    def run(self, function: str, *arguments: Any) -> Any:
        """Return what a function of JavaScript comes to, of and to plain values."""

    @abstractmethod
    def perform(self, *sources: dict[str, Any]) -> None:
        """Do what WebDriver's actions describe."""

    @abstractmethod
    def give_file(self, css: str, path: Path) -> None:
        """Choose a file where the page asks for one."""

    @abstractmethod
    def errors(self) -> list[str]:
        """Return the errors of pages that no code of theirs caught."""

    def resize(self, width: int) -> None:
        """Make the screen so wide."""
        self.set_width(width)
        self.wait("(width) => innerWidth === width", width)
        self.width = width

    def ask(self, name: str, *arguments: Any) -> Any:
        """Return what a function of `page.js` comes to."""
        return self.run(f"(...all) => ({PAGE}).{name}(...all)", *arguments)

    def wait(self, function: str, *arguments: Any) -> Any:
        """Return what a function comes to once it is no longer nothing."""
        return self._until(lambda: self.run(function, *arguments), f"{function} of {arguments}")

    def says(self, css: str, *words: str) -> None:
        """Wait until the words stand, in this order, in an element that is shown."""
        self._until(lambda: self.ask("says", css, words), f"{css} with {words}")

    def gone(self, css: str, words: str = "") -> None:
        """Wait until no such element is shown."""
        self._until(lambda: self.ask("gone", css, words), f"no {css} with {words!r}")

    def holds(self, css: str, value: str) -> None:
        """Wait until the control has this value."""
        self._until(lambda: self.ask("holds", css, value), f"{value!r} in {css}")

    def keeps(self, text: str) -> None:
        """Wait until a document that is kept says this: a number is written once it is answered."""
        self._until(lambda: self.ask("keeps", text), f"{text!r} kept")

    def titled(self, title: str) -> None:
        """Wait until a screen of this title is up."""
        whole = f"{title} · Longpoint"
        self.wait("(title) => document.title === title", whole)

    def tap(self, css: str, words: str = "") -> None:
        """Tap the one element with this name."""
        left, top, width, height = self.place(css, words)
        self.drag([(left + width / 2, top + height / 2)])

    def place(self, css: str, words: str = "") -> tuple[float, float, float, float]:
        """Return left, top, width and height of the one element with this name.

        It is in sight and nothing lies over its middle, and it stands still while lists grow
        above it: five times the same.
        """
        before: Any = None
        alike = 0

        def look() -> Any:
            nonlocal before, alike
            last, before = before, self.ask("place", css, words)
            alike = alike + 1 if before == last else 0
            return before if alike >= 4 and not isinstance(before, str) else None

        left, top, width, height = self._until(
            look, f"{css} with {words!r} to tap", lambda: str(before)
        )
        return left, top, width, height

    def drag(self, way: Sequence[tuple[float, float]]) -> None:
        """Put a finger on the screen, take it along the way and let go."""
        moves = [
            {"type": "pointerMove", "x": round(x), "y": round(y), "duration": 0} for x, y in way
        ]
        actions = [moves[0], {"type": "pointerDown", "button": 0}, *moves[1:]]
        actions.append({"type": "pointerUp", "button": 0})
        finger = {"type": "pointer", "id": "finger", "parameters": {"pointerType": self.pointer}}
        self.perform({**finger, "actions": actions})

    def type(self, keys: str) -> None:
        """Press keys, each down and up, on whatever has the focus."""
        strokes = [{"type": kind, "value": key} for key in keys for kind in ("keyDown", "keyUp")]
        self.perform({"type": "key", "id": "keys", "actions": strokes})

    def fill(self, css: str, text: str) -> None:
        """Tap a control and type in place of what is there."""
        self.tap(css)
        self._until(lambda: self.ask("choose", css), f"the focus in {css}")
        self.type(text)
        self.holds(css, text)

    def escape(self) -> None:
        """Press the key that closes what lies on top."""
        self.type(ESCAPE)

    def file_saved(self) -> Path:
        """Wait until the page has saved its one file, whole: it is JSON."""

        def look() -> Path | None:
            files = [each for each in self.saved.iterdir() if each.suffix == ".json"]
            return files[0] if files and is_json(files[0]) else None

        found: Path = awaited(look, lambda: f"no whole file: {[*self.saved.iterdir()]}")
        return found

    def _until(self, look: Callable[[], Any], what: str, why: Callable[[], str] = str) -> Any:
        return awaited(look, lambda: f"not seen: {what}. {why()} On the page {self.ask('words')}")


def script(function: str, arguments: Sequence[Any]) -> str:
    """Return a function without arguments that gives what this one does, as JSON."""
    given = json.dumps(arguments)
    return f"async () => JSON.stringify((await ({function})(...{given})) ?? null)"


def is_json(file: Path) -> bool:
    try:
        json.loads(file.read_bytes())
    except ValueError:
        return False
    return True
