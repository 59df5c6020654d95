"""What two people said differently, kept in the document itself as questions to whoever opens it.

Open: ``{"id", "path", "sides": [{"by", "value"}, {"by", "value"}]}``, where the first side is the
one that stood when the question came up, and null is what is not there. `path` leads through names,
ids and places of rows; with ``"together": true`` a side's value holds several names of the object
that the path's last name is in. Settled: ``{"id", "answered": <by whom>}``, which stays, so that no
copy of the open one comes back. The id follows from what is asked: two phones that meet the same
collision ask the same.
"""

import json

from ..refusal import Refusal
from .joining import GONE, QUESTIONS, Collision
from .sameness import is_same, mark_of, said
from .uniting import united_questions

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    Object = dict[str, Any]

MOVED_ON = "That has changed since. Look at it, then leave it as it is or type it there."


def with_questions(body: "Object", collisions: "list[Collision]", names: "list[str]") -> "Object":
    """Return a document's body that asks about collisions; `names` are mine and theirs."""
    asked = [_question(each, names) for each in collisions if each.path]
    if not asked:
        return body
    made = dict(body)
    made[QUESTIONS] = united_questions(body.get(QUESTIONS) or [], asked)
    return made


def answer(request: "Object") -> "Object":
    """Settle a question, as the core's door asks for it.

    The request holds `document` (a body), the id of the `question`, the `side` that is right (0 or
    1; null leaves it as it is now) and `by`, who says so. All questions of one place are settled
    together. A letter stays as it is, whichever side is chosen: it was given once.

    Raises
    ------
    Refusal
        There is no such open question, or the place has changed since.
    """
    body = json.loads(json.dumps(request.get("document")))
    asked: list[Any] = (body.get(QUESTIONS) if isinstance(body, dict) else None) or []
    open_ones = [each for each in asked if "path" in each]
    named = [each for each in open_ones if each["id"] == request.get("question")]
    if not named:
        raise Refusal("question", "That question is settled already.")
    side = request.get("side")
    if side in (0, 1) and named[0]["path"][-1] != "letter":
        _lay(body, named[0], named[0]["sides"][side]["value"])
    by = str(request.get("by") or "")
    for each in open_ones:
        if each["path"] == named[0]["path"]:
            asked[asked.index(each)] = {"id": each["id"], "answered": by}
    return {"document": body}


def _question(collision: Collision, names: "list[str]") -> "Object":
    path, _, mine, theirs, is_together = collision
    values = [None if each is GONE else each for each in (mine, theirs)]
    sides = [{"by": by, "value": value} for by, value in zip(names, values)]
    if mine is GONE or path[-1] == "letter":
        # What one deleted and the other changed stands; so does the letter that was given anew.
        sides.reverse()
    words = said([list(path), sorted([said(values[0]), said(values[1])])])
    question: dict[str, Any] = {"id": mark_of(words), "path": list(path), "sides": sides}
    if is_together:
        question["together"] = True
    return question


def _lay(body: "Object", question: "Object", value: "Any") -> None:
    """Put a side's value into its place, where one of the two sides still stands."""
    path = question["path"]
    holder: Any = body
    for name in path[:-1]:
        holder = _at(holder, name)
    values = [each["value"] for each in question["sides"]]
    if question.get("together"):
        now = {name: holder.get(name) for name in value} if isinstance(holder, dict) else None
    else:
        now = _order_of(_at(holder, path[-1]), values)
    if not [each for each in values if is_same(each, now)]:
        raise Refusal("side", MOVED_ON)
    if question.get("together"):
        for name in value:
            _put(holder, name, value[name])
    elif _is_order(values):
        held = {each["id"]: each for each in holder[path[-1]]}
        holder[path[-1]] = [held[own] for own in value]
    else:
        _put(holder, path[-1], value)


def _at(holder: "Any", name: "Any") -> "Any":
    """Return what is held under a name, an id or a place; None where nothing is."""
    if isinstance(holder, dict):
        return holder.get(name)
    if isinstance(holder, list) and isinstance(name, int):
        return holder[name] if name < len(holder) else None
    if isinstance(holder, list):
        found = [each for each in holder if isinstance(each, dict) and each.get("id") == name]
        return found[0] if found else None
    return None


def _is_order(values: "list[Any]") -> bool:
    """Tell whether a question is about the order of a list: its sides are mere ids."""
    return not [each for each in values if not _is_ids(each)]


def _is_ids(value: "Any") -> bool:
    return isinstance(value, list) and not [each for each in value if not isinstance(each, str)]


def _order_of(now: "Any", values: "list[Any]") -> "Any":
    if _is_order(values) and isinstance(now, list):
        return [each.get("id") if isinstance(each, dict) else each for each in now]
    return now


def _put(holder: "Any", name: "Any", value: "Any") -> None:
    """Put a value under a name, an id or a place; null takes it away."""
    if isinstance(holder, list) and isinstance(name, str):
        old = [each for each in holder if each.get("id") == name]
        at = holder.index(old[0]) if old else len(holder)
        holder[at : at + len(old)] = [] if value is None else [value]
    elif isinstance(holder, dict) and value is None:
        holder.pop(name, None)
    else:
        holder[name] = value
