"""Firefox, headless, driven by WebDriver BiDi (W3C) over its own socket."""

import base64
import json
from pathlib import Path
from typing import Any

from websocket import WebSocket, create_connection

from tests.engines.engine import HEIGHT, WIDTH, Engine, script
from tests.engines.process import PATIENCE, Process

PREFERENCES = {
    # As on a phone: scroll bars lie over the page, pointers are coarse, nothing moves.
    "ui.useOverlayScrollbars": 1,
    "ui.primaryPointerCapabilities": 1,
    "ui.allPointerCapabilities": 1,
    "ui.prefersReducedMotion": 1,
    "dom.w3c_touch_events.enabled": 1,
    # One page is all there is: no processes for others, nothing of the browser's own to show.
    "fission.autostart": False,
    "dom.ipc.processCount": 1,
    "dom.ipc.processPrelaunch.enabled": False,
    "browser.newtab.preload": False,
    "browser.newtabpage.enabled": False,
    "browser.startup.page": 0,
    "browser.sessionstore.resume_from_crash": False,
    "extensions.enabledScopes": 0,
    "datareporting.policy.dataSubmissionEnabled": False,
    # Files are saved without a question.
    "browser.download.folderList": 2,
    "browser.download.useDownloadDir": True,
    "browser.download.alwaysOpenPanel": False,
}


HARMLESS = "A ServiceWorker intercepted the request"
"""What Firefox tells of a load that ends as the page goes on."""
LETTER = {"width": 21.59, "height": 27.94}
"""8 1/2 x 11 inches in centimeters."""


class Firefox(Engine):
    """Firefox with a profile in `folder`."""

    pointer = "touch"

    def __init__(self, folder: Path, command: str) -> None:
        super().__init__(folder)
        self._command = command
        self._profile = folder / "profile"
        self._profile.mkdir()
        given = PREFERENCES | {"browser.download.dir": str(self.saved)}
        lines = [f"user_pref({json.dumps(name)}, {json.dumps(at)});" for name, at in given.items()]
        (self._profile / "user.js").write_text("\n".join(lines), encoding="utf-8")
        self._errors: list[str] = []
        self._process: Process | None = None
        self._socket: WebSocket | None = None

    def start(self) -> None:
        options = ["--headless", "--no-remote", "--remote-debugging-port", "0"]
        self._process = Process([self._command, *options, "--profile", str(self._profile)])
        address = self._process.says(r"BiDi listening on (ws://\S+)")[1]
        # An origin would be a page's; the browser takes none of those.
        self._socket = create_connection(
            f"{address}/session", suppress_origin=True, timeout=PATIENCE
        )
        self._last = 0
        self._call("session.new", capabilities={})
        self._call("session.subscribe", events=["log.entryAdded"])
        self._page = self._fresh_page()
        self.resize(WIDTH)

    def end(self) -> None:
        process, self._process = self._process, None
        if process is None:
            return
        try:
            if self._socket:
                self._call("browser.close")
                process.wait()
        finally:
            process.kill()
            if self._socket:
                self._socket.close()
                self._socket = None

    def open(self, address: str) -> None:
        self._call("browsingContext.navigate", context=self._page, url=address, wait="complete")

    def reload(self) -> None:
        self._call("browsingContext.reload", context=self._page, wait="complete")

    def set_width(self, width: int) -> None:
        viewport = {"width": width, "height": HEIGHT}
        self._call("browsingContext.setViewport", context=self._page, viewport=viewport)

    def run(self, function: str, *arguments: Any) -> Any:
        called = self._call(
            "script.callFunction",
            functionDeclaration=script(function, arguments),
            awaitPromise=True,
            target={"context": self._page},
        )
        assert called["type"] == "success", called["exceptionDetails"]["text"]
        return json.loads(called["result"]["value"])

    def perform(self, *sources: dict[str, Any]) -> None:
        self._call("input.performActions", context=self._page, actions=list(sources))

    def give_file(self, css: str, path: Path) -> None:
        found = self._call(
            "browsingContext.locateNodes",
            context=self._page,
            locator={"type": "css", "value": css},
        )
        (node,) = found["nodes"]
        element = {"sharedId": node["sharedId"]}
        self._call("input.setFiles", context=self._page, element=element, files=[str(path)])

    def errors(self) -> list[str]:
        self._call("session.status")  # with its reply comes all that was told before
        return self._errors

    def pdf(self) -> bytes:
        """Return the page as it is printed on paper of Letter size."""
        printed = self._call(
            "browsingContext.print",
            context=self._page,
            background=True,
            page=LETTER,
            shrinkToFit=False,
        )
        return base64.b64decode(printed["data"])

    def _fresh_page(self) -> str:
        """The window that opens at the start never has the focus; a page of our own has."""
        page: str = self._call("browsingContext.create", type="tab")["context"]
        for each in self._call("browsingContext.getTree")["contexts"]:
            if each["context"] != page:
                self._call("browsingContext.close", context=each["context"])
        return page

    def _call(self, method: str, **params: Any) -> Any:
        assert self._socket
        self._last += 1
        self._socket.send(json.dumps({"id": self._last, "method": method, "params": params}))
        while (said := json.loads(self._socket.recv())).get("id") != self._last:
            self._hear(said)
        assert said["type"] == "success", f"{method}: {said}"
        return said["result"]

    def _hear(self, said: Any) -> None:
        """Keep the errors that no code caught; what a page logs of its own accord is its own."""
        entry = said.get("params", {})
        is_fault = (entry.get("type"), entry.get("level")) == ("javascript", "error")
        if is_fault and HARMLESS not in entry["text"]:
            self._errors.append(entry["text"])
