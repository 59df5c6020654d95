"""One search at a time: it computes as long as it may, and nothing else must wait behind it."""

import threading
import time
from collections.abc import Iterator
from typing import TypeVar

from flask_smorest import abort
from flask_smorest.error_handler import ErrorSchema

RETRY_SECONDS = 2
"""About what the longest search takes here."""

BUSY = {
    "schema": ErrorSchema,
    "description": "Another search is under way. `Retry-After` says when to ask again.",
    "headers": {
        "Retry-After": {
            "description": "Seconds to wait before asking again.",
            "schema": {"type": "integer"},
        }
    },
}
"""What an operation that may search says of its 503."""

_searching = threading.Lock()

Reply = TypeVar("Reply")


def last_of(replies: Iterator[Reply], free: int) -> Reply:
    """Return the last of ever better replies; for more than `free` of them there is one place.

    Aborts with 503 where another request has it.
    """
    last = next(replies)
    for _ in range(free):
        following = next(replies, None)
        if following is None:
            return last
        last = following
    if not _searching.acquire(blocking=False):
        abort(503, headers={"Retry-After": str(RETRY_SECONDS)})
    try:
        return _searched(replies, last)
    finally:
        _searching.release()


def _searched(replies: Iterator[Reply], last: Reply) -> Reply:
    for reply in replies:
        last = reply
        # Whoever waits for the interpreter gets it now, not when its time slice has run out.
        time.sleep(0)
    return last
