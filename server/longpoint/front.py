"""The built front end: where it lies, and the headers it is served under."""

import re
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import TYPE_CHECKING
from wsgiref.headers import Headers

from whitenoise import WhiteNoise

if TYPE_CHECKING:
    from _typeshed.wsgi import StartResponse, WSGIApplication, WSGIEnvironment

STATIC = Path(__file__).parent / "static"

_POLICY = (
    "default-src 'self'; script-src 'self'{}; object-src 'none'; base-uri 'none'; "
    "form-action 'self'; frame-ancestors 'none'"
)
PAGE_POLICY = _POLICY.format("")
# Browsers judge a worker by the header on its own script, so only this one may compile WebAssembly.
WORKER_POLICY = _POLICY.format(" 'wasm-unsafe-eval'")

EVERYWHERE = {
    "Content-Security-Policy": PAGE_POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
    "Cache-Control": "no-cache",
}
MEDIA_TYPES = {
    ".mjs": "text/javascript",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
}
_HASHED = re.compile(r"^/assets/[^/]+-[0-9A-Za-z_]{8,}\.[0-9a-z.]+$")
_WORKER = re.compile(r"^/assets/worker-[^/]+\.m?js$")


def is_built() -> bool:
    """Say whether the front end lies in the package."""
    return (STATIC / "index.html").is_file()


def with_front_end(application: "WSGIApplication") -> "WSGIApplication":
    """Return `application` with the front end's files served before it, indexed once, now."""
    served: WSGIApplication = WhiteNoise(
        application,
        root=STATIC,
        index_file=True,
        max_age=None,
        allow_all_origins=False,
        mimetypes=MEDIA_TYPES,
        add_headers_function=_add_headers,
    )
    return served


def _add_headers(headers: Headers, path: str, url: str) -> None:
    if _HASHED.match(url):
        headers["Cache-Control"] = "max-age=31536000, public, immutable"
    if _WORKER.match(url):
        headers["Content-Security-Policy"] = WORKER_POLICY


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
