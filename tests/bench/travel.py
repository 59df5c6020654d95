"""Bytes of a first visit: everything the server sends until the app says it is ready offline.

The browser talks to a go-between that counts what comes back, headers and bodies as they travel,
whoever asked: the page, the preloads, the service worker. Until the first answer is shown it holds
back what that one can do without: the service worker, and the core's parts for other tools.
"""

import http.client
import re
import tempfile
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from urllib.parse import urlsplit

from playwright.sync_api import Playwright, expect

from tests.bench.browser import phone
from tests.phone.app import READY, example_hash
from tests.phone.core_worker import NEEDS

FIRST_TOOL = "mitered-frame"
FIRST_PARTS = ["frame", *NEEDS[FIRST_TOOL]]

Sent = list[tuple[str, int]]


def _is_for_later(path: str) -> bool:
    part = re.fullmatch(r"/assets/core-(\w+)-\w+\.bin", path)
    return path == "/sw.js" or (part is not None and part[1] not in FIRST_PARTS)


class _Between(BaseHTTPRequestHandler):
    server: "_Counting"

    def do_GET(self) -> None:
        if _is_for_later(self.path):
            self.server.answered.wait()
        wanted = {name: value for name, value in self.headers.items() if name != "Accept-Encoding"}
        link = http.client.HTTPConnection(self.server.behind)
        link.request("GET", self.path, headers=wanted | {"Accept-Encoding": self.server.encoding})
        reply = link.getresponse()
        body = reply.read()
        head = "".join(f"{name}: {value}\r\n" for name, value in reply.getheaders())
        top = f"HTTP/1.0 {reply.status} {reply.reason}\r\n{head}\r\n".encode("latin-1")
        link.close()
        self.server.sent.append((self.path, len(top) + len(body)))
        self.wfile.write(top + body)

    def log_message(self, *arguments: object) -> None:
        """Keep the output to the tables."""


class _Counting(ThreadingHTTPServer):
    def __init__(self, behind: str, encoding: str) -> None:
        self.behind = urlsplit(behind).netloc
        self.encoding = encoding
        self.sent: Sent = []
        self.answered = threading.Event()
        super().__init__(("127.0.0.1", 0), _Between)


@contextmanager
def counted(behind: str, encoding: str) -> Iterator[_Counting]:
    """Pass requests on to `behind`, asking for `encoding` alone."""
    server = _Counting(behind, encoding)
    threading.Thread(target=server.serve_forever, args=(0.01,), daemon=True).start()
    try:
        yield server
    finally:
        server.shutdown()
        server.server_close()


def first_visit(playwright: Playwright, address: str, encoding: str) -> tuple[int, Sent]:
    """Return the bytes until the first answer is shown, and every response until all is kept."""
    with (
        tempfile.TemporaryDirectory() as folder,
        counted(address, encoding) as server,
        phone(playwright, Path(folder)) as context,
    ):
        page = context.new_page()
        page.goto(f"http://127.0.0.1:{server.server_port}/{example_hash('saw', FIRST_TOOL)}")
        expect(page.locator(".result lp-drawing:not(.ghost) svg")).to_be_visible()
        answered = sum(size for _, size in server.sent)
        server.answered.set()
        expect(page.get_by_text(READY)).to_be_visible()
        return answered, list(server.sent)
