"""Two people's changes to one job joined: by id, never by position; ticks united.

What only one of them changed is taken. What both changed alike is no quarrel. What both changed
differently stays as mine has it and is reported with both values. What one deleted and the other
changed stays, since nothing that was typed is lost, and is reported.
"""

import json

from ..refusal import Refusal
from .document import check
from .editing import letters_given, next_letter
from .orders import merged_order

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class _Gone:
    """Stands for what is not there: null is a value of its own."""


GONE = _Gone()
UNITED = ("ticks", "log")
"""Lists of what happened: both people's lines stand."""


def merge_jobs(request: "dict[str, Any]") -> "dict[str, Any]":
    """Join two versions of a job, as the core's door asks for it.

    The request holds `mine`, `theirs`, and `base`, the version that both were made from (null
    where there is none). The reply holds the `document` and its `collisions`.

    Raises
    ------
    Refusal
        One of them is no job, or they are not the same job.
    """
    base, mine, theirs = [request.get(name) for name in ("base", "mine", "theirs")]
    check(mine)
    check(theirs)
    if base is not None:
        check(base)
    document, collisions = merge(base, mine, theirs)
    return {"document": document, "collisions": collisions}


def merge(base: "Any", mine: "Any", theirs: "Any") -> "tuple[dict[str, Any], list[dict[str, Any]]]":
    """Return one job with the changes of both, and where they collide.

    A collision is ``{"path", "base", "mine", "theirs"}``, with ids in its path; null stands for
    what is not there.

    Raises
    ------
    Refusal
        They are two jobs.
    """
    if mine["id"] != theirs["id"]:
        raise Refusal("theirs", "These are two jobs, not two versions of one.")
    joined = _Joined()
    found = joined.value(GONE if base is None else base, mine, theirs, "")
    # Both versions stay as they were given.
    document: dict[str, Any] = json.loads(json.dumps(found))
    document["letters"] = max([letters_given(each) for each in (document, mine, theirs)])
    _letter_anew(document, joined.collisions)
    return document, joined.collisions


class _Joined:
    """The walk through three versions at once."""

    def __init__(self) -> None:
        self.collisions: list[dict[str, Any]] = []

    def value(self, base: "Any", mine: "Any", theirs: "Any", path: str) -> "Any":
        """Return the value that stands."""
        if is_same(mine, theirs) or is_same(base, theirs):
            return mine
        if is_same(base, mine):
            return theirs
        name = path.split(".")[-1]
        if name == "strokes":
            # Of two signatures one stands, whole: strokes of both would be nobody's.
            return self._collide(base, mine, theirs, path)
        if name in UNITED:
            return _united(_listed(base), _listed(mine), _listed(theirs))
        if _is_dict(mine) and _is_dict(theirs) and not _is_whole(mine, path):
            return self._dict(base if _is_dict(base) else {}, mine, theirs, path)
        lists = _listed(base), mine, theirs
        if _is_by_id(mine) and _is_by_id(theirs) and _is_by_id(lists[0]):
            return self._by_id(lists[0], mine, theirs, path)
        if _are_rows(base, mine, theirs):
            return [
                self.value(each, mine[at], theirs[at], f"{path}.{at}")
                for at, each in enumerate(base)
            ]
        return self._collide(base, mine, theirs, path)

    def _dict(
        self, base: "dict[str, Any]", mine: "dict[str, Any]", theirs: "dict[str, Any]", path: str
    ) -> "dict[str, Any]":
        before = path + "." if path else ""
        made: dict[str, Any] = {}
        together = _read_together(base, mine, theirs)
        if together:
            pairs = [{name: each.get(name) for name in together} for each in (base, mine, theirs)]
            if is_same(pairs[0], pairs[1]):
                chosen = theirs
            else:
                chosen = mine
                if not is_same(pairs[0], pairs[2]):
                    self._report(pairs[0], pairs[1], pairs[2], before + together[0])
            made.update({name: chosen[name] for name in together if name in chosen})
        for name in sorted(set(list(base) + list(mine) + list(theirs)) - set(together)):
            values = [each.get(name, GONE) for each in (base, mine, theirs)]
            value = self.value(values[0], values[1], values[2], before + name)
            if value is not GONE:
                made[name] = value
        return made

    def _by_id(
        self, base: "list[Any]", mine: "list[Any]", theirs: "list[Any]", path: str
    ) -> "list[Any]":
        known = [{each["id"]: each for each in version} for version in (base, mine, theirs)]
        made: dict[str, Any] = {}
        for own in sorted(set(list(known[0]) + list(known[1]) + list(known[2]))):
            values = [version.get(own, GONE) for version in known]
            value = self.value(values[0], values[1], values[2], f"{path}.{own}")
            if value is not GONE:
                made[own] = value
        orders = [[each["id"] for each in version] for version in (base, mine, theirs)]
        order, is_moved_twice = merged_order(orders[0], orders[1], orders[2], list(made))
        if is_moved_twice:
            self._report(orders[0], orders[1], orders[2], path)
        return [made[own] for own in order]

    def _collide(self, base: "Any", mine: "Any", theirs: "Any", path: str) -> "Any":
        self._report(base, mine, theirs, path)
        return theirs if mine is GONE else mine

    def _report(self, base: "Any", mine: "Any", theirs: "Any", path: str) -> None:
        values = [None if each is GONE else each for each in (base, mine, theirs)]
        self.collisions.append(
            {"path": path, "base": values[0], "mine": values[1], "theirs": values[2]}
        )


def is_same(one: "Any", other: "Any") -> bool:
    """Tell whether two values say the same; a yes is no 1.

    >>> is_same({"a": [1]}, {"a": [1.0]}), is_same(1, True), is_same([], {})
    (True, False, False)
    """
    if isinstance(one, dict) and isinstance(other, dict):
        return len(one) == len(other) and not [
            name for name in one if name not in other or not is_same(one[name], other[name])
        ]
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and not [
            at for at, each in enumerate(one) if not is_same(each, other[at])
        ]
    if isinstance(one, bool) or isinstance(other, bool):
        return one is other
    return bool(one == other)


def _is_dict(value: "Any") -> bool:
    return isinstance(value, dict)


def _is_whole(value: "dict[str, Any]", path: str) -> bool:
    """Tell whether an object means something only as a whole: a tie, a measure with its units."""
    names = path.split(".")
    is_tie = names[-1] in ("from", "times", "was") or names[-2:-1] == ["ties"]
    return is_tie or ("units" in value and "text" in value)


def _read_together(
    base: "dict[str, Any]", mine: "dict[str, Any]", theirs: "dict[str, Any]"
) -> "tuple[str, ...]":
    """Return names that are taken together: numbers, and what says how they are meant.

    That is so only where the two versions mean them differently.
    """
    if "longpoint" in mine:
        return () if is_same(mine.get("units"), theirs.get("units")) else ("units", "stock")
    if "tool" not in mine or "inputs" not in mine:
        return ()
    meant = ("typed_in", "version", "tool")
    if not [name for name in meant if not is_same(mine.get(name), theirs.get(name))]:
        return ()
    return ("inputs",) + meant


def _listed(value: "Any") -> "list[Any]":
    return value if isinstance(value, list) else []


def _is_by_id(value: "Any") -> bool:
    """Tell whether a list's values are objects with ids of their own; an empty one may be."""
    if not isinstance(value, list):
        return False
    ids = [each.get("id") for each in value if isinstance(each, dict)]
    ids = [own for own in ids if isinstance(own, str)]
    return len(ids) == len(value) == len(set(ids))


def _are_rows(base: "Any", mine: "Any", theirs: "Any") -> bool:
    """Tell whether three lists are rows of which none was added or taken away."""
    if not (isinstance(base, list) and isinstance(mine, list) and isinstance(theirs, list)):
        return False
    return len(base) == len(mine) == len(theirs)


def _united(base: "list[Any]", mine: "list[Any]", theirs: "list[Any]") -> "list[Any]":
    """Return what neither took away, then what either added, in the order that it happened."""
    said = [{_said(each): each for each in version} for version in (base, mine, theirs)]
    kept = [each for each in base if _said(each) in said[1] and _said(each) in said[2]]
    new = dict(said[1])
    new.update(said[2])
    added = sorted([(_when(new[words]), words) for words in new if words not in said[0]])
    return kept + [new[words] for _, words in added]


def _when(line: "Any") -> str:
    return str(line.get("at") or "") if isinstance(line, dict) else ""


def _said(value: "Any") -> str:
    """Return a value as a text that depends neither on the order of names nor on 1 or 1.0."""
    if isinstance(value, dict):
        return "{" + ",".join([f"{name}:{_said(value[name])}" for name in sorted(value)]) + "}"
    if isinstance(value, list):
        return "[" + ",".join([_said(each) for each in value]) + "]"
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        return str(float(value))
    return json.dumps(value)


def _letter_anew(document: "dict[str, Any]", collisions: "list[dict[str, Any]]") -> None:
    """Give another letter to a question where both people's new ones got the same.

    The one whose pieces are ticked keeps it, since it stands on wood; else the lower id does.
    """
    ticked = [tick["of"].split("/")[0] for tick in document.get("ticks") or []]
    entries = [(item, entry) for item in document["items"] for entry in item["entries"]]
    ranked = sorted([(entry["id"] not in ticked, entry["id"], at)
                     for at, (_, entry) in enumerate(entries)])  # fmt: skip
    seen: list[str] = []
    for _, own, at in ranked:
        item, entry = entries[at]
        if entry["letter"] in seen:
            was, entry["letter"] = entry["letter"], next_letter(document)
            path = f"items.{item['id']}.entries.{own}.letter"
            collisions.append({"path": path, "base": None, "mine": was, "theirs": entry["letter"]})
        seen.append(entry["letter"])
