"""WebKit for GTK in a window of our own, driven by its driver's WebDriver (W3C) over HTTP."""

import json
import socket
from http.client import HTTPConnection
from pathlib import Path
from typing import Any

from tests.engines.engine import HEIGHT, WIDTH, Engine, script
from tests.engines.process import PATIENCE, Process, awaited

DEBIANS_PYTHON = "/usr/bin/python3"
WINDOW = Path(__file__).parent / "webkit_window.py"
ELEMENT = "element-6066-11e4-a52e-4f735466cecf"
"""The name under which WebDriver hands on an element."""
TAKEN = "Unable to listen"
"""What the driver says where another program was quicker at a port."""
HARMLESS = ("due to access control checks", "ResizeObserver loop completed")
"""What WebKit tells of a load that ends as the page goes on, and of a size told a frame later."""


class WebKit(Engine):
    """WebKit with its storage in `folder`, on a screen of its own that no one sees."""

    pointer = "mouse"

    def __init__(self, folder: Path) -> None:
        super().__init__(folder)
        self._screen: Process | None = None
        self._driver: Process | None = None
        self._session = ""
        self._errors: list[str] = []

    def start(self) -> None:
        # The server of the screen chooses a number that is free, and says it once it is ready.
        screen = ["-screen", "0", "1000x2000x24", "-nolisten", "tcp", "-displayfd", "1"]
        self._screen = Process(["Xvfb", *screen])
        display = self._screen.says(r"(?m)^(\d+)$")[1]
        self._driver = self._driver_on(
            {"DISPLAY": f":{display}", "GDK_BACKEND": "x11", "NO_AT_BRIDGE": "1"}
        )
        window = {"binary": DEBIANS_PYTHON, "args": [str(WINDOW), str(self.folder)]}
        wanted = {"alwaysMatch": {"webkitgtk:browserOptions": window}}
        self._session = self._call("POST", "/session", capabilities=wanted)["sessionId"]
        self._do("POST", "timeouts", script=PATIENCE * 1000, pageLoad=PATIENCE * 1000)
        self.resize(WIDTH)

    def end(self) -> None:
        driver, self._driver = self._driver, None
        screen, self._screen = self._screen, None
        try:
            if driver and self._session:
                self._call("DELETE", f"/session/{self._session}")
                self._errors += errors_in(driver.said)
        finally:
            for each in (driver, screen):
                if each:
                    each.kill()

    def open(self, address: str) -> None:
        self._do("POST", "url", url=address)

    def reload(self) -> None:
        self._do("POST", "refresh")

    def set_width(self, width: int) -> None:
        self._do("POST", "window/rect", x=0, y=0, width=width, height=HEIGHT)

    def run(self, function: str, *arguments: Any) -> Any:
        waits = f"const done = arguments[0]; ({script(function, arguments)})()"
        said = self._do(
            "POST",
            "execute/async",
            script=f"{waits}.then(done, (fault) => done(`!${{fault}}`))",
            args=[],
        )
        assert not said.startswith("!"), said
        return json.loads(said)

    def perform(self, *sources: dict[str, Any]) -> None:
        self._do("POST", "actions", actions=list(sources))

    def give_file(self, css: str, path: Path) -> None:
        found = self._do("POST", "element", using="css selector", value=css)
        self._do("POST", f"element/{found[ELEMENT]}/value", text=str(path))

    def errors(self) -> list[str]:
        return self._errors + (errors_in(self._driver.said) if self._driver else [])

    def _driver_on(self, environment: dict[str, str]) -> Process:
        """Start the driver on a port that is free: the next one where another was quicker."""

        def look() -> Process | None:
            self._port = free_port()
            driver = Process(["WebKitWebDriver", f"--port={self._port}"], environment)
            try:
                awaited(lambda: answers(self._port) or not driver.is_running, lambda: driver.said)
                if driver.is_running and TAKEN not in driver.said:
                    return driver
                assert TAKEN in driver.said, f"WebKit's driver has ended: {driver.said}"
            except BaseException:
                driver.kill()
                raise
            driver.kill()
            return None

        driver: Process = awaited(look, lambda: "no port is free for WebKit's driver")
        return driver

    def _do(self, method: str, what: str, **body: Any) -> Any:
        return self._call(method, f"/session/{self._session}/{what}", **body)

    def _call(self, method: str, path: str, **body: Any) -> Any:
        connection = HTTPConnection("127.0.0.1", self._port, timeout=PATIENCE)
        try:
            connection.request(method, path, json.dumps(body) if method == "POST" else None)
            reply = connection.getresponse()
            value = json.loads(reply.read())["value"]
        finally:
            connection.close()
        assert reply.status == 200, f"{method} {path}: {value}"
        return value


def free_port() -> int:
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        port: int = one.getsockname()[1]
        return port


def answers(port: int) -> bool:
    with socket.socket() as one:
        return one.connect_ex(("127.0.0.1", port)) == 0


def errors_in(said: str) -> list[str]:
    """Return the errors that no code caught; what a page logs of its own accord is its own."""
    told = [line for line in said.splitlines() if "CONSOLE JS ERROR" in line]
    return [line for line in told if not any(words in line for words in HARMLESS)]
