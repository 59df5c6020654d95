"""The built front end: where it lies, and the headers it is served under."""

import re
from collections.abc import Callable, Iterable
from functools import partial
from http import HTTPStatus
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING
from wsgiref.headers import Headers

from whitenoise import WhiteNoise
from whitenoise.responders import Response, StaticFile

if TYPE_CHECKING:
    from typing import Any

    from _typeshed.wsgi import StartResponse, WSGIApplication, WSGIEnvironment

STATIC = Path(__file__).parent / "static"

# A picture kept on the phone is shown from a blob's address, which no markup can make.
_POLICY = (
    "default-src 'self'; script-src 'self'{}; img-src 'self' blob:; object-src 'none'; "
    "base-uri 'none'; form-action 'self'; frame-ancestors 'none'"
)
PLAIN_POLICY = _POLICY.format("")
# Browsers judge a worker by the header on its own script, so only this one may compile WebAssembly.
WORKER_POLICY = _POLICY.format(" 'wasm-unsafe-eval'")

EVERYWHERE = {
    "Content-Security-Policy": PLAIN_POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
    "Cache-Control": "no-cache",
}
MEDIA_TYPES = {
    ".mjs": "text/javascript",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
}
SHARES = f"longpoint-shares=1; Path=/; Max-Age={400 * 24 * 60 * 60}; SameSite=Lax"
"""No secret and no sign of anyone: it says what the server is."""
_HASHED = re.compile(r"^/assets/[^/]+-[0-9A-Za-z_]{8,}\.[0-9a-z.]+$")
_WORKER = re.compile(r"^/assets/worker-[^/]+\.m?js$")
_HASH = re.compile(r"'sha256-[0-9A-Za-z+/=]+'")
"""How a policy names a script by its hash (CSP level 3)."""


def is_built() -> bool:
    """Say whether the front end lies in the package."""
    return (STATIC / "index.html").is_file()


def with_front_end(application: "WSGIApplication", shares: bool = False) -> "WSGIApplication":
    """Return `application` with the front end's files served before it, as they are now.

    Where the server `shares` what its people keep, a cookie tells the page so: the page of any
    other host asks nothing.
    """
    served: WSGIApplication = _HeldFiles(
        application,
        root=STATIC,
        index_file=True,
        max_age=None,
        allow_all_origins=False,
        mimetypes=MEDIA_TYPES,
        add_headers_function=partial(_add_headers, policy=page_policy(), shares=shares),
    )
    return served


class _HeldFiles(WhiteNoise):  # type: ignore[misc]  # WhiteNoise carries no types
    """Holds what it serves: a build may replace the files while the server runs."""

    def get_static_file(self, *where: "Any", **named: "Any") -> "_HeldFile":
        """Return a file's answers."""
        return _HeldFile(super().get_static_file(*where, **named))


class _HeldFile:
    """A file with its compressed copies, as it was when the server started."""

    def __init__(self, file: StaticFile) -> None:
        self._file = file
        self._held = {path: Path(path).read_bytes() for _, path, _ in file.alternatives}

    def get_response(self, method: str, environ: "WSGIEnvironment") -> Response:
        """Answer a request; parts of a file are not given, which HTTP leaves open."""
        asked = {name: value for name, value in environ.items() if name != "HTTP_RANGE"}
        # As for HEAD, the file on the disk is not opened.
        response = self._file.get_response("HEAD" if method == "GET" else method, asked)
        if method == "GET" and response.status == HTTPStatus.OK:
            path, headers = self._file.get_path_and_headers(asked)
            return Response(response.status, headers, BytesIO(self._held[path]))
        return response


def page_policy() -> str:
    """Return the policy under which the page's HTML may run the one script within it."""
    page = (STATIC / "index.html").read_text(encoding="utf-8") if is_built() else ""
    return _POLICY.format("".join(f" {found}" for found in _HASH.findall(page)))


def _add_headers(headers: Headers, path: str, url: str, policy: str, shares: bool) -> None:
    if _HASHED.match(url):
        headers["Cache-Control"] = "max-age=31536000, public, immutable"
    if _WORKER.match(url):
        headers["Content-Security-Policy"] = WORKER_POLICY
    if url == "/":
        headers["Content-Security-Policy"] = policy
    # Scripts come from the cache, and browsers ask for this one even then.
    if shares and url in ("/", "/sw.js"):
        headers["Set-Cookie"] = SHARES


def with_headers(application: "WSGIApplication") -> "WSGIApplication":
    """Return `application` with `EVERYWHERE` on each response that doesn't say otherwise."""

    def answer(environ: "WSGIEnvironment", start_response: "StartResponse") -> Iterable[bytes]:
        def start(
            status: str, headers: list[tuple[str, str]], *rest: "object"
        ) -> Callable[[bytes], object]:
            given = Headers(headers)
            for name, value in EVERYWHERE.items():
                given.setdefault(name, value)
            return start_response(status, headers, *rest)  # type: ignore[arg-type]

        return application(environ, start)

    return answer
