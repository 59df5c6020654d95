"""What is computed for a request: a tool's answer or a job, as JSON text."""

import json
import time
from collections.abc import Iterator
from itertools import islice
from typing import Any, NamedTuple

from longpoint.trade.job.sheets import job_replies
from longpoint.trade.lengths import Scale
from longpoint.trade.shelf import tool_named


class Asked(NamedTuple):
    """A question: a tool's slug with its inputs, or an empty slug with a job."""

    slug: str
    said: dict[str, Any]
    scale: Scale


def first(asked: Asked, steps: int) -> str | None:
    """Return the last reply if it is there after so many steps, else None.

    Raises
    ------
    Refusal
        For what can't be answered.
    """
    last, replies = None, _replies(asked)
    for reply in islice(replies, steps):
        last = reply if _is_whole(reply) else last
    return None if last is None or next(replies, None) else _text(last)


def whole(asked: Asked, seconds: float | None = None) -> str | None:
    """Return the last reply, or the best there is when its time is over, None if there is none.

    Raises
    ------
    Refusal
        For what can't be answered.
    """
    end = None if seconds is None else time.monotonic() + seconds
    last = None
    for reply in _replies(asked):
        last = reply if _is_whole(reply) else last
        if end is not None and time.monotonic() > end:
            break
    return None if last is None else _text(last)


def _replies(asked: Asked) -> Iterator[dict[str, Any]]:
    if not asked.slug:
        return job_replies(asked.said, asked.scale)
    tool = tool_named(asked.slug)
    return tool.answers(tool.read(asked.said, asked.scale), asked.scale)


def _is_whole(reply: dict[str, Any]) -> bool:
    """Tell a reply that can be used from one that says how far the work has come."""
    return len(reply) > 1


def _text(reply: dict[str, Any]) -> str:
    return json.dumps(reply, separators=(",", ":"))
