"""The server's log: JSON lines on stderr, one a request, that tell nothing about anybody.

Neither addresses with what they name, nor people's addresses, names or bodies stand in it. Of a
fault its kind and its places in the code are told; its words may quote what somebody typed.
"""

import json
import logging
import sys
import time
import traceback
from collections.abc import Callable, Iterable
from datetime import UTC, datetime
from typing import TYPE_CHECKING, Any

from flask import Flask, request

from .settings import log_level

if TYPE_CHECKING:
    from _typeshed.wsgi import StartResponse, WSGIEnvironment

HEALTH = "/healthz"
FILE, UNKNOWN = "(file)", "(unknown)"
"""Routes of the front end's files, and of addresses at which there is nothing."""

_ROUTE = "longpoint.route"
_requests = logging.getLogger("longpoint.requests")


def begin_log() -> None:
    """Write what is logged from now on to stderr, from the level that LONGPOINT_LOG names."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(Lines())
    level = logging.getLevelNamesMapping()[log_level().upper()]
    logging.basicConfig(handlers=[handler], level=max(level, logging.WARNING), force=True)
    logging.getLogger("longpoint").setLevel(level)
    # It would tell of each request that waits, and how long each took is told anyway.
    logging.getLogger("waitress.queue").setLevel(logging.ERROR)


class Lines(logging.Formatter):
    """A record as a line of JSON."""

    def format(self, record: logging.LogRecord) -> str:
        """Return the line: of ours what was told, of others their words without what fills them."""
        when = datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds")
        line: dict[str, Any] = {"time": when, "level": record.levelname.lower()}
        line |= getattr(record, "told", {"from": record.name, "message": str(record.msg)})
        if record.exc_info and record.exc_info[0]:
            line["fault"] = record.exc_info[0].__name__
            frames = traceback.extract_tb(record.exc_info[2])
            line["at"] = [f"{each.filename}:{each.lineno} {each.name}" for each in frames]
        return json.dumps(line)


def log_requests(app: Flask) -> None:
    """Log each request to `app` by its route."""
    application = app.wsgi_app

    @app.before_request
    def note_route() -> None:
        request.environ[_ROUTE] = request.url_rule.rule if request.url_rule else UNKNOWN

    def logged(environ: "WSGIEnvironment", start_response: "StartResponse") -> Iterable[bytes]:
        said: list[tuple[str, list[tuple[str, str]]]] = []

        def start(status: str, headers: list[tuple[str, str]], *rest: Any) -> Callable[..., Any]:
            said[:] = [(status, headers)]
            return start_response(status, headers, *rest)

        begun = time.perf_counter()
        body = application(environ, start)
        _tell(environ, *said[0], time.perf_counter() - begun)
        return body

    app.wsgi_app = logged  # type: ignore[method-assign]


def _tell(
    environ: "WSGIEnvironment", status: str, headers: list[tuple[str, str]], seconds: float
) -> None:
    lengths = [value for name, value in headers if name.lower() == "content-length"]
    told = {
        "method": environ["REQUEST_METHOD"][:10],
        "route": environ.get(_ROUTE, FILE),
        "status": int(status[:3]),
        "ms": round(seconds * 1000, 1),
        "bytes": int(lengths[0]) if lengths else 0,
    }
    _requests.log(_level(told["route"], told["status"]), "", extra={"told": told})


def _level(route: str, status: int) -> int:
    if status >= 500:
        return logging.ERROR
    return logging.DEBUG if route == HEALTH else logging.INFO
