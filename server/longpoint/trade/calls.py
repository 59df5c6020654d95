"""The core's one door: a JSON text goes in, a JSON text comes out.

The phone calls nothing else, so only text crosses between the two languages.
DEVELOPERS.md lists the requests and replies.
"""

import json

from .lengths import Scale
from .measured import Angle, Count, Length, Number
from .reading import quoted
from .refusal import Refusal, Unreadable
from .shelf import PLACES, slugs_at, tool_named

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

_ECHO = {
    "length": Length("", "This", least=-1e15, most=1e15),
    "angle": Angle("", "This", least=-1e15, most=1e15),
    "number": Number("", "This", least=-1e15, most=1e15),
    "count": Count("", "This", least=0, most=10**9),
}


def call(text: str) -> str:
    """Answer one request; what can't be answered comes back as errors on fields.

    >>> call('{"do": "read", "kind": "count", "text": "3"}')
    '{"value": 3, "text": "3", "other": "", "ok": true}'
    """
    try:
        reply = _reply(json.loads(text))
        reply["ok"] = True
    except Refusal as refusal:
        reply = {"ok": False, "errors": [error.to_json() for error in refusal.errors]}
    return json.dumps(reply)


def _reply(request: "dict[str, Any]") -> "dict[str, Any]":
    do = request.get("do")
    if do == "shelf":
        return {"places": shelf()}
    if do == "declare":
        return {"tool": _tool(request).declare()}
    if do == "answer":
        return _Search.start(_tool(request).answers(request.get("inputs") or {}, _scale(request)))
    if do == "continue":
        return _Search.go_on(request.get("search"))
    if do == "read":
        return _read(request)
    raise Refusal("do", f"{quoted(str(do))} is not a request.")


class _Search:
    """The one question that may still be looking for a better answer; a new one ends it."""

    number = 0
    answers: "Iterator[dict[str, Any]] | None" = None
    said: "dict[str, Any] | None" = None

    @classmethod
    def start(cls, answers: "Iterator[dict[str, Any]]") -> "dict[str, Any]":
        cls.number += 1
        cls.answers, cls.said = answers, None
        return cls.go_on(cls.number)

    @classmethod
    def go_on(cls, number: object) -> "dict[str, Any]":
        if cls.answers is None or number != cls.number:
            raise Refusal("search", "That search is over: ask again.")
        try:
            answer = next(cls.answers)
        except Refusal:
            cls.answers = None
            raise
        if answer["progress"] >= 1:
            cls.answers = None
        search = cls.number if cls.answers else None
        # An answer that stands is not said again: a long plan takes longer to say than to find.
        news = None if answer is cls.said else answer
        cls.said = answer
        return {"answer": news, "progress": answer["progress"], "search": search}


def shelf() -> "list[dict[str, Any]]":
    """Return the places in order, each with the slugs of its tools."""
    return [{"place": place, "title": title, "tools": slugs_at(place)} for place, title in PLACES]


def _tool(request: "dict[str, Any]") -> "Any":
    slug = str(request.get("tool"))
    try:
        return tool_named(slug)
    except KeyError:
        raise Refusal("tool", f"There is no tool called {quoted(slug)}.")


def _scale(request: "dict[str, Any]") -> Scale:
    try:
        return Scale(request.get("units") or "in", request.get("step") or 16)
    except Unreadable as unreadable:
        raise Refusal("step", str(unreadable))


def _read(request: "dict[str, Any]") -> "dict[str, Any]":
    """Read one typed value and say it back, a length in the other system too."""
    scale = _scale(request)
    kind = str(request.get("kind"))
    if kind not in _ECHO:
        raise Refusal("kind", f"{quoted(kind)} is not a kind of number.")
    try:
        value = _ECHO[kind].read(request.get("text"), scale)
    except Unreadable as unreadable:
        raise Refusal("", str(unreadable))
    if kind != "length":
        return {"value": value, "text": _ECHO[kind].show(value, scale), "other": ""}
    other = Scale("mm" if scale.units == "in" else "in", scale.step)
    return {"value": value, "text": scale.length(value), "other": other.length(value)}
