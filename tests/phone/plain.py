"""A plain file server with a log of what it was asked, as any static host would be."""

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any


class Host:
    """A folder served on a port of its own, which can be stopped and started again."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.asked: list[str] = []
        self.refuse: set[str] = set()
        self.types: dict[str, str] = {}
        """Media types that the host gives wrongly, by the end of a path."""
        self.policy = ""
        """A Content-Security-Policy of the host's own."""
        self._server = self._listen(0)
        self.address = f"http://127.0.0.1:{self._server.server_port}"

    def stop(self) -> None:
        """Take the host off the network: connections are refused."""
        self._server.shutdown()
        self._server.server_close()

    def start(self) -> None:
        """Come back at the same address."""
        self._server = self._listen(self._server.server_port)

    def _listen(self, port: int) -> ThreadingHTTPServer:
        server = ThreadingHTTPServer(("127.0.0.1", port), partial(_Handler, self))
        threading.Thread(target=server.serve_forever, args=(0.01,), daemon=True).start()
        return server


class _Handler(SimpleHTTPRequestHandler):
    def __init__(self, host: Host, *arguments: object) -> None:
        self.host = host
        super().__init__(*arguments, directory=str(host.folder))  # type: ignore[arg-type]

    def do_GET(self) -> None:
        self.host.asked.append(self.path)
        if self.path.split("?")[0] in self.host.refuse:
            self.send_error(404)
        else:
            super().do_GET()

    def guess_type(self, path: Any) -> str:
        wrong = [type_ for end, type_ in self.host.types.items() if str(path).endswith(end)]
        return wrong[0] if wrong else super().guess_type(path)

    def end_headers(self) -> None:
        # As hosts do that mean it: a script of another type is not run.
        self.send_header("X-Content-Type-Options", "nosniff")
        if self.host.policy:
            self.send_header("Content-Security-Policy", self.host.policy)
        super().end_headers()

    def log_message(self, *arguments: object) -> None:
        """Keep the test's output clean; `asked` is the log."""


@contextmanager
def hosted(folder: Path) -> Iterator[Host]:
    """Serve a folder while this lasts."""
    host = Host(folder)
    try:
        yield host
    finally:
        host.stop()
