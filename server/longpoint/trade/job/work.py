"""The one job that the phone's core works out, step by step, beside a tool's search."""

import json

from ..refusal import Refusal
from .desk import Desk
from .parts import Parts
from .sheets import job_replies

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from ..lengths import Scale

MOST_PARTS = 200
"""New parts said at a time: what a call has put together lies about until the call is over."""


class Work:
    """A job being worked out; a new one ends it, and takes over what has not changed."""

    def __init__(self) -> None:
        self.number = 0
        self.replies: Iterator[dict[str, Any]] | None = None
        self.desk = Desk()
        self.parts = Parts()
        self.is_in_parts = False
        self.items: dict[str, Any] = {}
        """Items of the last job, by the texts that they were read from."""

    def start(self, request: "dict[str, Any]", scale: "Scale") -> "dict[str, Any]":
        """Begin with a job, and return its first reply.

        With `have`, the number of the last part that was heard, replies come in parts.
        """
        self.number += 1
        have = request.get("have")
        self.is_in_parts = isinstance(have, int)
        if isinstance(have, int):
            self.parts.heard(have)
        self.replies = self._said(
            job_replies(self._read(request.get("job")), scale, request.get("offcuts"), self.desk)
        )
        return self.go_on(self.number)

    def go_on(self, number: object) -> "dict[str, Any]":
        """Return the next reply.

        Raises
        ------
        Refusal
            For another job's number, and for what the job is refused for.
        """
        if self.replies is None or number != self.number:
            raise Refusal("work", "That job is not being worked out any more: ask again.")
        try:
            reply = next(self.replies)
        except Refusal:
            self.replies = None
            raise
        if reply["job"]["progress"] >= 1:
            self.replies = None
        reply["work"] = self.number if self.replies else None
        return reply

    def _read(self, job: object) -> object:
        """Return a job with those of its items read that are texts; one read before is the same.

        To read a job takes the phone longer than all else that is done with what stands.
        """
        items = job.get("items") if isinstance(job, dict) else None
        if not isinstance(job, dict) or not isinstance(items, list):
            return job
        known, self.items = self.items, {}
        for text in [item for item in items if isinstance(item, str)]:
            self.items[text] = known[text] if text in known else _read(text)
        return dict(job, items=[self.items[i] if isinstance(i, str) else i for i in items])

    def _said(self, replies: "Iterator[dict[str, Any]]") -> "Iterator[dict[str, Any]]":
        for reply in replies:
            if not self.is_in_parts or "yard" not in reply:
                yield {"job": reply}
                continue
            said, new = self.parts.numbered(reply)
            numbers = sorted(new)
            while len(numbers) > MOST_PARTS:
                early, numbers = numbers[:MOST_PARTS], numbers[MOST_PARTS:]
                yield {"job": {"progress": 0.75}, "parts": _named(new, early)}
            yield {"job": said, "parts": _named(new, numbers)}


def _read(text: str) -> object:
    """Return what a text of JSON says; one that is none stays a text, which is no item."""
    try:
        return json.loads(text)
    except ValueError:
        return text


def _named(parts: "dict[int, Any]", numbers: "list[int]") -> "dict[str, Any]":
    return {str(own): parts[own] for own in numbers}


WORK = Work()
"""The phone's own: its worker has one page."""
