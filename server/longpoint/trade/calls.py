"""The core's one door: a JSON text goes in, a JSON text comes out.

The phone calls nothing else, so only text crosses between the two languages.
DEVELOPERS.md lists the requests and replies.
"""

import json

from .form import Form
from .last_answer import LAST, Asked
from .lengths import Scale, read_length
from .reading import quoted
from .refusal import Refusal, Unreadable
from .shelf import PLACES, slugs_at, tool_named
from .steps import OFFERED

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

JOB_DEPTH = 3
"""Objects within objects of a job's reply whose long lists are put together from their items."""
MOST_SIZE = 1200.0
"""Inches: no stock is longer."""
LONG = 40
"""A list of more items is written item by item."""


def call(text: str) -> str:
    """Answer one request; what can't be answered comes back as errors on fields.

    >>> json.loads(call('{"do": "sing"}'))["errors"][0]["message"]
    '"sing" is not a request.'
    """
    try:
        reply = _reply(json.loads(text))
        reply["ok"] = True
    except Refusal as refusal:
        reply = {"ok": False, "errors": [error.to_json() for error in refusal.errors]}
    if "job" in reply:
        return _job_text(reply)
    return dumped(reply) if _is_long(reply) else json.dumps(reply)


def dumped(value: object, depth: int = 2) -> str:
    """Return a value as JSON text, its long lists put together from their items.

    The phone's interpreter lets a text grow by a few bytes at a time: what it takes to write one
    goes with the square of its length, and a long list is a long text.

    >>> dumped({"a": [1, 2], "b": {"c": None}})
    '{"a": [1, 2], "b": {"c": null}}'
    """
    if depth and isinstance(value, dict):
        parts = [json.dumps(key) + ": " + dumped(each, depth - 1) for key, each in value.items()]
        return "{" + ", ".join(parts) + "}"
    if isinstance(value, list) and (len(value) > LONG or _holds_long(value)):
        return "[" + ", ".join([dumped(each, depth) for each in value]) + "]"
    return json.dumps(value)


def _job_text(reply: "dict[str, Any]") -> str:
    """Return a job's reply as JSON text, its parts each written alone."""
    if "parts" not in reply:
        return dumped(reply, JOB_DEPTH) if "yard" in reply["job"] else json.dumps(reply)
    parts = reply["parts"]
    text = json.dumps({name: reply[name] for name in reply if name != "parts"})
    texts = [f'"{name}": {json.dumps(parts[name])}' for name in parts]
    return "".join([text[:-1], ', "parts": {', ", ".join(texts), "}}"])


def _is_long(reply: "dict[str, Any]") -> bool:
    answer = reply.get("answer") or {}
    length = len(answer.get("pieces", "")) + len(answer.get("tables", ""))
    return length > LONG or _holds_long(reply.get("fields", []))


def _holds_long(items: "list[Any]") -> bool:
    """Tell whether one of a list's items is a field with many rows."""
    return bool(
        [1 for each in items if isinstance(each, dict) and len(each.get("rows", "")) > LONG]
    )


def _reply(request: "dict[str, Any]") -> "dict[str, Any]":
    do = request.get("do")
    if do == "shelf":
        return {"places": shelf()}
    if do == "scales":
        return {"scales": scales()}
    if do == "declare":
        return {"tool": _tool(request).declare()}
    if do == "form":
        return _form(request)
    if do == "answer":
        return _answer(request)
    if do == "continue":
        return _Search.go_on(request.get("search"))
    if do == "job":
        # Only who works on a job waits for the rooms that work it out.
        from .job.work import WORK

        return WORK.start(request, _scale(request))
    if do == "check job":
        from .job.document import check

        check(request.get("job"))
        return {}
    if do == "labels":
        from .job.labels import label_grid

        return {"grid": label_grid(request, _scale(request))}
    if do == "calendar":
        from .finish.calendar_file import asked_for

        return {"file": asked_for(request)}
    if do == "continue job":
        from .job.work import WORK

        return WORK.go_on(request.get("work"))
    if do == "patterns":
        from .job.patterns import declared

        return {"patterns": declared()}
    if do in ("begin item", "copy item", "add entry"):
        from .job.editing import add_entry, begin_item, copy_item

        edits = {"begin item": begin_item, "copy item": copy_item, "add entry": add_entry}
        return edits[str(do)](request)
    if do == "merge jobs":
        from .job.merge import merge_jobs

        return merge_jobs(request)
    if do == "meet":
        from .job.meeting import meet

        return meet(request)
    if do == "answer question":
        from .job.questions import answer

        return answer(request)
    if do == "read sizes":
        return {"sizes": _sizes(request)}
    raise Refusal("do", f"{quoted(str(do))} is not a request.")


def _sizes(request: "dict[str, Any]") -> "dict[str, dict[str, str]]":
    """Say of each size of a stock, by name, what it reads as, or why it can't be one."""
    scale = _scale(request)
    said: dict[str, dict[str, str]] = {}
    for name, text in (request.get("texts") or {}).items():
        try:
            inches = read_length(str(text), scale.typed_in, over_one=True)
        except Unreadable as unreadable:
            said[name] = {"message": str(unreadable)}
            continue
        if 0 < inches <= MOST_SIZE:
            said[name] = {"text": scale.length(inches)}
        else:
            most = scale.length(MOST_SIZE)
            said[name] = {"message": f"{quoted(str(text))} is no size: above 0, up to {most}."}
    return said


class _Search:
    """The one question that may still be looking for a better answer; a new one ends it."""

    number = 0
    answers: "Iterator[dict[str, Any]] | None" = None
    form: "Callable[[], dict[str, Any]] | None" = None
    """Says the fields that its brief answer went ahead of."""

    @classmethod
    def start(cls, answers: "Iterator[dict[str, Any]]") -> "dict[str, Any]":
        cls.number += 1
        cls.answers, cls.form = answers, None
        return cls.go_on(cls.number)

    @classmethod
    def end(cls) -> None:
        cls.answers = cls.form = None

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
        news = answer if "figures" in answer else None
        reply = {"answer": news, "progress": answer["progress"], "search": search}
        if news and cls.form:
            reply.update(cls.form())
            cls.form = None
        return reply


def shelf() -> "list[dict[str, Any]]":
    """Return the places in order, each with the slugs of its tools."""
    return [{"place": place, "title": title, "tools": slugs_at(place)} for place, title in PLACES]


def scales() -> "list[dict[str, Any]]":
    """Return how lengths can be shown: in each system the steps to choose from."""
    return [
        {
            "units": units,
            "title": title,
            "choices": [
                {"steps": list(steps), "words": words, "short": short}
                for steps, words, short in choices
            ],
        }
        for units, title, choices in OFFERED
    ]


def _tool(request: "dict[str, Any]") -> "Any":
    slug = str(request.get("tool"))
    try:
        return tool_named(slug)
    except KeyError:
        raise Refusal("tool", f"There is no tool called {quoted(slug)}.")


def _scale(request: "dict[str, Any]") -> Scale:
    units = request.get("units") or "in"
    try:
        return Scale(units, request.get("step") or 16, request.get("typed_in") or units)
    except Unreadable as unreadable:
        raise Refusal("step", str(unreadable))


def _answer(request: "dict[str, Any]") -> "dict[str, Any]":
    """Read a form strictly and answer it, as the API does."""
    tool, scale = _tool(request), _scale(request)
    return _Search.start(tool.answers(tool.read(request.get("inputs") or {}, scale), scale))


def _form(request: "dict[str, Any]") -> "dict[str, Any]":
    """Say what each field of a form comes to, and answer it where it can be answered."""
    tool, scale = _tool(request), _scale(request)
    version, carried = request.get("version") or 0, request.get("carried")
    form = Form(tool, request.get("inputs"), scale, version, carried)
    active = str(request.get("active") or "")
    errors = form.errors()
    if request.get("answer") is False:
        return form.to_json(active)
    found: dict[str, Any] = {"answer": None, "progress": 1, "search": None}
    if errors:
        _Search.end()
    else:
        try:
            found = _Search.start(tool.answers(form.fields, scale, is_brief_first=True))
        except Refusal as refusal:
            errors = refusal.errors
    if found["answer"] and found["search"] is None:
        values = {name: each["value"] for name, each in form.carried.items()}
        LAST.keep(Asked(request, values, scale), form, found["answer"])
    if found["answer"] and found["answer"]["is_brief"]:
        # The fields of a long list take as long to say as its answer: they follow with the whole.
        _Search.form = lambda: form.to_json(active)
        return found
    reply = form.to_json(active, errors)
    reply.update(found)
    return reply
