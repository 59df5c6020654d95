"""Merge another way: a job as a set of facts, each a path by ids and a value; no walk, no order.

Written from the rules in DEVELOPERS.md: per fact, who changed it; per thing with an id, who deleted
it; ticks and log as sets. It knows nothing of the order of lists, which is looked at elsewhere.
"""

import json
from typing import Any

Path = tuple[str, ...]
Facts = dict[Path, str]
WHOLE = {"from", "times", "was", "strokes", "lengths", "sheets", "on_hand"}
"""Names of values that are one fact; rows are left out where both changed them."""
EVENTS = ("ticks", "log")
APART = (*EVENTS, "letters")
HERE = "<here>"


def facts_of(job: dict[str, Any]) -> Facts:
    """Return a job's facts; what holds others is a fact of its own, too."""
    found: Facts = {}
    waiting: list[tuple[Path, Any]] = [((), job)]
    while waiting:
        path, value = waiting.pop()
        if is_leaf(path, value):
            found[path] = json.dumps(value, sort_keys=True)
            continue
        found[path] = HERE
        held = value.items() if isinstance(value, dict) else ((each["id"], each) for each in value)
        waiting += [((*path, str(name)), each) for name, each in held if path or name not in APART]
    return found


def is_leaf(path: Path, value: Any) -> bool:
    if not isinstance(value, (dict, list)) or (path and path[-1] in WHOLE):
        return True
    if path[-2:-1] == ("ties",) or (isinstance(value, dict) and {"text", "units"} <= value.keys()):
        return True
    return isinstance(value, list) and not all(isinstance(e, dict) and "id" in e for e in value)


def joined(
    base: dict[str, Any], mine: dict[str, Any], theirs: dict[str, Any]
) -> tuple[Facts, set[Path]]:
    """Return the facts that stand, and the paths at which both sides collide."""
    old, here, there = facts_of(base), facts_of(mine), facts_of(theirs)
    collided: set[Path] = set()
    worked = {"mine": worked_on(base, mine), "theirs": worked_on(base, theirs)}
    for path in sorted(old, key=len):
        for gone, left, who in ((here, there, "theirs"), (there, here, "mine")):
            if old.get(path) != HERE or path in gone or path not in left:
                continue
            rest = under(path, left)
            if rest == under(path, old) and not touched(path, rest, worked[who]):
                for each in rest:
                    del left[each]
            else:
                collided.add(path)
                gone.update(rest)
            for each in under(path, old):
                del old[each]
    made: Facts = {}
    for path in {*old, *here, *there}:
        values = [facts.get(path) for facts in (old, here, there)]
        if values[1] != values[2] and values[0] not in values[1:]:
            collided.add(path)
        stands = values[2] if values[1] == values[0] else values[1]
        stands = values[2] if stands is None and values[0] not in values[1:] else stands
        if stands is not None:
            made[path] = stands
    return made, collided


def under(path: Path, facts: Facts) -> Facts:
    return {each: value for each, value in facts.items() if each[: len(path)] == path}


def worked_on(base: dict[str, Any], version: dict[str, Any]) -> set[str]:
    """Return the ids of questions of which pieces were ticked since."""
    return {
        json.loads(each)["of"].split("/")[0]
        for each in events(version, "ticks") - events(base, "ticks")
    }


def touched(path: Path, rest: Facts, ids: set[str]) -> bool:
    return path[:1] == ("items",) and bool({name for each in rest for name in each} & ids)


def events(job: dict[str, Any], name: str) -> set[str]:
    return {json.dumps(each, sort_keys=True) for each in job.get(name) or []}


def events_joined(versions: list[dict[str, Any]], name: str) -> set[str]:
    """Return what neither took away and what either added."""
    old, here, there = (events(each, name) for each in versions)
    return (old & here & there) | (here - old) | (there - old)
