"""Two people's changes to one job joined: by id, never by position; ticks united.

What only one of them changed is taken. What both changed alike is no quarrel. What both changed
differently stays as mine has it and is reported with both values. What one deleted and the other
changed, or ticked, stays, since nothing that was typed is lost, and is reported.
"""

import json

from ..refusal import Refusal
from .document import check
from .editing import letters_given, next_letter
from .joining import GONE, Collision, Joined

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


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
    document, collisions = joined_jobs(base, mine, theirs)
    return document, [reported(each) for each in collisions]


def joined_jobs(
    base: "Any", mine: "Any", theirs: "Any"
) -> "tuple[dict[str, Any], list[Collision]]":
    """Return the same with the collisions as `joining` has them."""
    if mine["id"] != theirs["id"]:
        raise Refusal("theirs", "These are two jobs, not two versions of one.")
    joined = Joined(GONE if base is None else base, mine, theirs)
    # All versions stay as they were given; what is changed after this is copied first.
    document: dict[str, Any] = dict(joined.found)
    if _has_twice(document):
        document["items"] = json.loads(json.dumps(document["items"]))
    _place_once(document, joined.collisions)
    given = [letters_given(each) for each in (document, mine, theirs)]
    if max(given) > given[0]:
        document["letters"] = max(given)
    _letter_anew(document, base, joined.collisions)
    return document, joined.collisions


def reported(collision: Collision) -> "dict[str, Any]":
    """Return a collision as the door says it."""
    values = [None if each is GONE else each for each in collision[1:4]]
    path = ".".join([str(name) for name in collision.path])
    return {"path": path, "base": values[0], "mine": values[1], "theirs": values[2]}


def _has_twice(document: "dict[str, Any]") -> bool:
    """Tell whether a question, or a letter, is there more than once."""
    entries = [entry for _, entry in _entries(document)]
    alone = [{entry[name] for entry in entries} for name in ("id", "letter")]
    return len(alone[0]) < len(entries) or len(alone[1]) < len(entries)


def _place_once(document: "dict[str, Any]", collisions: "list[Collision]") -> None:
    """Leave a question that came to stand in two items in the first of them."""
    seen: set[str] = set()
    for item in document["items"]:
        for entry in list(item["entries"]):
            if entry["id"] in seen:
                item["entries"].remove(entry)
                path = ("items", item["id"], "entries", entry["id"])
                collisions.append(Collision(path, GONE, GONE, entry, False))
            seen.add(entry["id"])


def _letter_anew(document: "dict[str, Any]", base: "Any", collisions: "list[Collision]") -> None:
    """Give another letter to a question where both people's new ones got the same.

    The one whose pieces are ticked keeps it, since it stands on wood; else the one that was there
    before, else the lower id.
    """
    ticked = {tick["of"].split("/")[0] for tick in document.get("ticks") or []}
    old = {entry["id"] for _, entry in _entries(base)}
    entries = _entries(document)
    ranked = sorted([(entry["id"] not in ticked, entry["id"] not in old, entry["id"], at)
                     for at, (_, entry) in enumerate(entries)])  # fmt: skip
    seen: set[str] = set()
    for _, _, own, at in ranked:
        item, entry = entries[at]
        if entry["letter"] in seen:
            was, entry["letter"] = entry["letter"], next_letter(document)
            path = ("items", item["id"], "entries", own, "letter")
            collisions.append(Collision(path, GONE, was, entry["letter"], False))
        seen.add(entry["letter"])


def _entries(job: "Any") -> "list[tuple[Any, Any]]":
    items = job["items"] if job else []
    return [(item, entry) for item in items for entry in item["entries"]]
