"""Items and questions laid into a job: ids and letters are given here, once and never again.

Every function takes a request of the core's door and returns the whole document anew; the one it
was given stays as it is. An id comes with the request, since the core has no chance to draw one.
"""

import json

from ..reading import quoted
from ..refusal import Refusal
from ..shelf import module_of
from .document import LONGEST_ID, check
from .patterns import pattern_named

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .patterns.pattern import Pattern, Question

ROOM = 24
"""Characters of an id that what belongs to an item adds to the item's."""


def letter_of(number: int) -> str:
    """Return the letter of a job's so-manieth question.

    >>> letter_of(1), letter_of(26), letter_of(27), letter_of(702), letter_of(703)
    ('A', 'Z', 'AA', 'ZZ', 'AAA')
    """
    letter = ""
    while number > 0:
        number, at = divmod(number - 1, 26)
        letter = chr(ord("A") + at) + letter
    return letter


def number_of(letter: str) -> int:
    """Return which question of its job a letter stands for; 0 for one that was not given here.

    >>> number_of("A"), number_of("AA"), number_of("a1")
    (1, 27, 0)
    """
    number = 0
    for each in letter:
        if not "A" <= each <= "Z":
            return 0
        number = 26 * number + ord(each) - ord("A") + 1
    return number


def letters_given(document: "dict[str, Any]") -> int:
    """Return how many letters a job has given, to questions since deleted too."""
    used = [number_of(entry["letter"]) for item in document["items"] for entry in item["entries"]]
    return max(used + [int(document.get("letters") or 0)])


def next_letter(document: "dict[str, Any]") -> str:
    """Give a letter that no question of the job ever had."""
    document["letters"] = letters_given(document) + 1
    return letter_of(document["letters"])


def begin_item(request: "dict[str, Any]") -> "dict[str, Any]":
    """Lay a pattern's questions into a job as a new item.

    The request holds `job`, `pattern` (empty for an item without questions), `id` of the new item
    and perhaps its `title`.

    Raises
    ------
    Refusal
        The job can't be read, the pattern or the id won't do, or a limit is passed.
    """
    job, own = _opened(request)
    slug = request.get("pattern") or ""
    title = str(request.get("title") or "")
    item: dict[str, Any] = {"id": own, "title": title or "Item", "count": 1, "entries": []}
    job["items"].append(item)
    if slug:
        pattern = pattern_named(slug)
        item["title"] = title or pattern.title
        item["pattern"], item["pattern_version"] = pattern.slug, pattern.version
        _lay(job, item, pattern)
    return _closed(job, item)


def copy_item(request: "dict[str, Any]") -> "dict[str, Any]":
    """Lay an item into the job once more, after itself: the same again, with letters of its own.

    The request holds `job`, `item`, `id` of the copy and perhaps its `title`. Ties among the
    item's own questions lead to the copies; what was ticked stays with the first one.
    """
    job, own = _opened(request)
    first = _item(job, request)
    item = json.loads(json.dumps(first))
    item["id"] = own
    item["title"] = str(request.get("title") or first["title"])
    item.pop("photos", None)
    job["items"].insert(job["items"].index(first) + 1, item)
    ids: dict[str, str] = {first["id"]: own}
    for entry in item["entries"]:
        was, entry["letter"] = entry["id"], next_letter(job)
        entry["id"] = ids[was] = own + "-" + entry["letter"]
    for entry in item["entries"]:
        for tie in (entry.get("ties") or {}).values():
            _lead(tie, ids)
    _copy_things(job, first["id"], own, ids)
    return _closed(job, item)


def add_entry(request: "dict[str, Any]") -> "dict[str, Any]":
    """Lay one question into an item, at its end or after another one.

    The request holds `job`, `item`, `id` of the new question and `tool`; perhaps `after` (id of a
    question), `inputs`, `ties`, `stock`, `typed_in`, `version`, `title`.
    """
    job, own = _opened(request)
    item = _item(job, request)
    slug = str(request.get("tool"))
    try:
        module_of(slug)
    except KeyError:
        raise Refusal("tool", f"There is no tool called {quoted(slug)}.")
    entry = {"id": own, "letter": next_letter(job), "tool": slug, "inputs": {}}
    for name in ("inputs", "ties", "stock", "typed_in", "version", "title"):
        if request.get(name) is not None:
            entry[name] = request[name]
    ids = [each["id"] for each in item["entries"]]
    after = request.get("after")
    item["entries"].insert(ids.index(after) + 1 if after in ids else len(ids), entry)
    return _closed(job, item, [own])


def _opened(request: "dict[str, Any]") -> "tuple[dict[str, Any], str]":
    """Return a copy of the job, and the new id."""
    check(request.get("job"))
    job = json.loads(json.dumps(request["job"]))
    own = request.get("id")
    if not isinstance(own, str) or not 1 <= len(own) <= LONGEST_ID - ROOM:
        raise Refusal("id", f"An id of 1 to {LONGEST_ID - ROOM} characters is needed.")
    taken = [item["id"] for item in job["items"]]
    taken += [entry["id"] for item in job["items"] for entry in item["entries"]]
    if own in taken:
        raise Refusal("id", f"{quoted(own)} is on the job already.")
    return job, own


def _item(job: "dict[str, Any]", request: "dict[str, Any]") -> "dict[str, Any]":
    for item in job["items"]:
        if item["id"] == request.get("item"):
            found: dict[str, Any] = item
            return found
    raise Refusal("item", "That item is not on the job.")


def _closed(
    job: "dict[str, Any]", item: "dict[str, Any]", entries: "list[str] | None" = None
) -> "dict[str, Any]":
    check(job)
    ids = [entry["id"] for entry in item["entries"]] if entries is None else entries
    return {"document": job, "item": item["id"], "entries": ids}


def _lay(job: "dict[str, Any]", item: "dict[str, Any]", pattern: "Pattern") -> None:
    stocks = {key: _stock(job, item, key, title, sold) for key, title, sold in pattern.stock}
    ids: dict[str, str] = {}
    for question in pattern.questions:
        letter = next_letter(job)
        ids[question.key] = item["id"] + "-" + letter
        item["entries"].append(_entry(question, ids, letter, stocks))
    for at, thing in enumerate(pattern.things):
        _add_thing(job, item, at, thing, ids)


def _entry(
    question: "Question", ids: "dict[str, str]", letter: str, stocks: "dict[str, str]"
) -> "dict[str, Any]":
    entry: dict[str, Any] = {
        "id": ids[question.key],
        "letter": letter,
        "tool": question.tool,
        "title": question.title,
        "typed_in": "in",
        "inputs": json.loads(json.dumps(question.presets)),
    }
    if question.ties:
        entry["ties"] = {name: _tie(tie, ids) for name, tie in question.ties.items()}
    if question.stock:
        entry["stock"] = {role: stocks.get(key, key) for role, key in question.stock.items()}
    return entry


def _tie(tie: "tuple[str, str, str]", ids: "dict[str, str]") -> "dict[str, str]":
    key, kind, name = tie
    if kind == "pieces":
        return {kind: key}
    return {"entry": ids[key], kind: name}


def _stock(job: "dict[str, Any]", item: "dict[str, Any]", key: str, title: str, sold: str) -> str:
    """Return the id of the job's stock of that title; a new one where there is none."""
    stocks = job.setdefault("stock", [])
    for known in stocks:
        if known["title"].lower() == title.lower() and known["sold"] == sold:
            return str(known["id"])
    made = {"id": f"{item['id']}-stock-{key}", "title": title, "sold": sold}
    stocks.append(made)
    return str(made["id"])


def _add_thing(
    job: "dict[str, Any]",
    item: "dict[str, Any]",
    at: int,
    thing: "tuple[Any, ...]",
    ids: "dict[str, str]",
) -> None:
    made = {"id": f"{item['id']}-thing-{at + 1}", "title": thing[0], "item": item["id"]}
    if isinstance(thing[1], int):
        made["count"] = thing[1]
    else:
        made["from"] = _tie(thing[1], ids)
        if len(thing) > 2:
            made["times"] = _tie(thing[2], ids)
    job.setdefault("things", []).append(made)


def _copy_things(job: "dict[str, Any]", first: str, own: str, ids: "dict[str, str]") -> None:
    mine = [thing for thing in job.get("things") or [] if thing.get("item") == first]
    for at, thing in enumerate(mine):
        made = json.loads(json.dumps(thing))
        made["id"], made["item"] = f"{own}-thing-{at + 1}", own
        for name in ("from", "times"):
            if name in made:
                _lead(made[name], ids)
        job["things"].append(made)


def _lead(tie: "dict[str, Any]", ids: "dict[str, str]") -> None:
    """Lead a tie among an item's own questions to their copies."""
    for name in ("entry", "pieces"):
        if tie.get(name) in ids:
            tie[name] = ids[tie[name]]
