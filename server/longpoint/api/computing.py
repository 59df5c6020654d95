"""Answers by the core: a short one at once; a long one, and each job, by processes that compute."""

from flask import current_app
from flask_smorest import abort
from flask_smorest.error_handler import ErrorSchema

from longpoint.workers.computed import Asked, first, whole
from longpoint.workers.pool import Busy, Lost, Workers

AT_ONCE = 2
"""Replies of a tool that are looked at before a process is asked: most have one, in 1 to 5 ms."""

RETRY_SECONDS = 5
BUSY_WORDS = (
    "So many plans are being worked out that this one would wait too long: ask again in a few "
    "seconds. All else is answered meanwhile."
)
LOST_WORDS = "This could not be worked out in the time there is: ask for less of it at once."

BUSY = {
    "schema": ErrorSchema,
    "description": "Others are computing, or it takes too long. `Retry-After` says when to ask.",
    "headers": {
        "Retry-After": {
            "description": "Seconds to wait before asking again.",
            "schema": {"type": "integer"},
        }
    },
}
"""What an operation that may take long says of its 503."""


def computed(asked: Asked) -> str:
    """Return the reply as JSON text; abort with 503 where there is none in time.

    Without `Workers` as the application's `WORKERS` it is computed here, however long it takes.

    Raises
    ------
    Refusal
        For what can't be answered.
    """
    workers: Workers | None = current_app.config.get("WORKERS")
    if workers is None:
        return whole(asked) or ""
    # One step of a job may take a tenth of a second: it is never looked at here.
    return (asked.slug and first(asked, AT_ONCE)) or _by(workers, asked)


def _by(workers: Workers, asked: Asked) -> str:
    try:
        if text := workers.compute(asked):
            return text
    except Busy:
        _refuse(BUSY_WORDS)
    except Lost:
        pass
    return _refuse(LOST_WORDS)


def _refuse(words: str) -> str:
    headers = {"Retry-After": str(RETRY_SECONDS)}
    refused: str = abort(503, message=words, headers=headers)
    return refused
