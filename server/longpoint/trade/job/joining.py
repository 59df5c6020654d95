"""The walk through three versions of a document at once: what both come to, and where they part."""

from collections import namedtuple

from .orders import merged_order
from .sameness import is_same, said
from .uniting import same_lines, united, united_questions

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    Path = tuple[str | int, ...]
    Object = dict[str, Any]


class _Gone:
    """Stands for what is not there: null is a value of its own."""


GONE = _Gone()
UNITED = ("ticks", "log")
"""Lists of what happened: both people's lines stand."""
QUESTIONS = "questions"
"""What a document asks its people: see `questions`."""

Collision = namedtuple("Collision", "path base mine theirs together")
"""What both changed: ids, names and places that lead to it, its three values (GONE where it is not
there), and whether the values are several names' of the object that the path's last name is in."""


class Joined:
    """Two versions joined by what both were made from; `collisions` says where mine stands."""

    def __init__(self, base: "Any", mine: "Any", theirs: "Any") -> None:
        self.collisions: list[Collision] = []
        self._ticked = [_ticked_since(base, version) for version in (mine, theirs)]
        self.found = self._value(base, mine, theirs, ())

    def _value(self, base: "Any", mine: "Any", theirs: "Any", path: "Path") -> "Any":
        """Return the value that stands."""
        if is_same(mine, theirs):
            return mine
        is_mine_alone = is_same(base, theirs)
        if is_mine_alone or is_same(base, mine):
            stands, other = (mine, theirs) if is_mine_alone else (theirs, mine)
            ticked = self._ticked[1 if is_mine_alone else 0]
            if not ticked or not _things_of(other, path) & ticked - _things_of(stands, path):
                return stands
            # One deleted what the other ticked pieces of: that is wood, so it stays.
            if stands is GONE:
                return self._collide(base, mine, theirs, path)
        if path == ("letters",):
            # How many were given: none is given twice, whoever gave it.
            return max([each for each in (mine, theirs) if each is not GONE])
        if path == (QUESTIONS,):
            return united_questions(_listed(mine), _listed(theirs))
        if path and path[-1] in UNITED:
            return united(_listed(base), _listed(mine), _listed(theirs))
        if isinstance(mine, dict) and isinstance(theirs, dict) and not _is_whole(mine, path):
            return self._dict(base if isinstance(base, dict) else {}, mine, theirs, path)
        if isinstance(mine, list) and isinstance(theirs, list) and path and path[-1] != "strokes":
            # Of two signatures one stands, whole: strokes of both would be nobody's.
            return self._list(_listed(base), mine, theirs, path)
        return self._collide(base, mine, theirs, path)

    def _dict(self, base: "Object", mine: "Object", theirs: "Object", path: "Path") -> "Object":
        made: dict[str, Any] = {}
        together = _read_together(mine, theirs)
        if together:
            made.update(self._together(together, [base, mine, theirs], path))
        for name in sorted(set(list(base) + list(mine) + list(theirs)) - set(together)):
            values = [each.get(name, GONE) for each in (base, mine, theirs)]
            value = self._value(values[0], values[1], values[2], path + (name,))
            if value is not GONE:
                made[name] = value
        return made

    def _together(
        self, names: "tuple[str, ...]", versions: "list[Object]", path: "Path"
    ) -> "Object":
        """Return what several names hold that mean something only together."""
        pairs = [{name: each[name] for name in names if name in each} for each in versions]
        if is_same(pairs[0], pairs[1]):
            return pairs[2]
        if not is_same(pairs[0], pairs[2]):
            whole = [{name: each.get(name) for name in names} for each in pairs]
            place = path + (names[0],)
            self.collisions.append(Collision(place, whole[0], whole[1], whole[2], True))
        return pairs[1]

    def _list(
        self, base: "list[Any]", mine: "list[Any]", theirs: "list[Any]", path: "Path"
    ) -> "list[Any]":
        if _is_by_id(mine) and _is_by_id(theirs) and _is_by_id(base):
            return self._by_id(base, mine, theirs, path)
        found = _rows_joined(base, mine, theirs)
        if found is not None:
            return found
        if _stand_in_place(base, mine, theirs):
            return [
                self._value(each, mine[at], theirs[at], path + (at,))
                for at, each in enumerate(base)
            ]
        collided: list[Any] = self._collide(base, mine, theirs, path)
        return collided

    def _by_id(
        self, base: "list[Any]", mine: "list[Any]", theirs: "list[Any]", path: "Path"
    ) -> "list[Any]":
        known = [{each["id"]: each for each in version} for version in (base, mine, theirs)]
        made: dict[str, Any] = {}
        for own in sorted(set(list(known[0]) + list(known[1]) + list(known[2]))):
            values = [version.get(own, GONE) for version in known]
            value = self._value(values[0], values[1], values[2], path + (own,))
            if value is not GONE:
                made[own] = value
        orders = [[each["id"] for each in version] for version in (base, mine, theirs)]
        order, is_moved_twice = merged_order(orders[0], orders[1], orders[2], list(made))
        if is_moved_twice:
            self._report(orders[0], orders[1], orders[2], path)
        return [made[own] for own in order]

    def _collide(self, base: "Any", mine: "Any", theirs: "Any", path: "Path") -> "Any":
        self._report(base, mine, theirs, path)
        return theirs if mine is GONE else mine

    def _report(self, base: "Any", mine: "Any", theirs: "Any", path: "Path") -> None:
        self.collisions.append(Collision(path, base, mine, theirs, False))


def _is_whole(value: "Object", path: "Path") -> bool:
    """Tell whether an object means something only as a whole: a tie, a measure with its units."""
    is_tie = path[-1:] in (("from",), ("times",), ("was",)) or path[-2:-1] == ("ties",)
    return is_tie or ("units" in value and "text" in value)


def _read_together(mine: "Object", theirs: "Object") -> "tuple[str, ...]":
    """Return names that are taken together: numbers, and what says how they are meant.

    That is so only where the two versions mean them differently.
    """
    if "longpoint" in mine:
        return () if is_same(mine.get("units"), theirs.get("units")) else ("units", "stock")
    meant = ("typed_in", "version", "tool")
    for numbers in ("inputs", "rows"):
        if numbers in mine or numbers in theirs:
            is_alike = is_same(
                [mine.get(name) for name in meant], [theirs.get(name) for name in meant]
            )
            return () if is_alike else (numbers,) + meant
    return ()


def _listed(value: "Any") -> "list[Any]":
    return value if isinstance(value, list) else []


def _is_by_id(value: "Any") -> bool:
    """Tell whether a list's values are objects with ids of their own; an empty one may be."""
    ids = [each.get("id") for each in value if isinstance(each, dict)]
    ids = [own for own in ids if isinstance(own, str)]
    return len(ids) == len(value) == len(set(ids))


def _rows_joined(base: "list[Any]", mine: "list[Any]", theirs: "list[Any]") -> "list[Any] | None":
    """Return rows without ids that neither changed a row of the other's; None where one did."""
    keys = [_row_keys(version) for version in (base, mine, theirs)]
    gone = [[key for key in keys[0] if key not in version] for version in keys[1:]]
    if [key for key in gone[0] if key in gone[1]]:
        return None
    lost = gone[0] + gone[1]
    left = [key for key in _once(keys[0] + keys[1] + keys[2]) if key not in lost]
    order, is_moved_twice = merged_order(keys[0], keys[1], keys[2], left)
    if is_moved_twice:
        return None
    rows: dict[str, Any] = {}
    for version, named in zip((base, mine, theirs), keys):
        rows.update(dict(zip(named, version)))
    return [rows[key] for key in order]


def _row_keys(rows: "list[Any]") -> "list[str]":
    """Return what each row says; of rows that say the same, counted."""
    counts: dict[str, int] = {}
    keys = []
    for row in rows:
        words = said(row)
        counts[words] = counts.get(words, 0) + 1
        keys.append(f"{words}#{counts[words]}")
    return keys


def _once(keys: "list[str]") -> "list[str]":
    seen: set[str] = set()
    return [key for key in keys if not (key in seen or seen.add(key))]  # type: ignore[func-returns-value]


def _stand_in_place(base: "list[Any]", mine: "list[Any]", theirs: "list[Any]") -> bool:
    """Tell whether rows can be told by their places: none was added, taken away or moved."""
    if not len(base) == len(mine) == len(theirs):
        return False
    keys = _row_keys(base)
    return not [
        key
        for version in (_row_keys(mine), _row_keys(theirs))
        for at, key in enumerate(version)
        if key in keys and keys.index(key) != at
    ]


def _ticked_since(base: "Any", version: "Any") -> "set[str]":
    """Return the ids of questions of which a version ticked something that its base had not."""
    if base is GONE:
        # Nothing was deleted since what never was.
        return set()
    before, after = _ticks_of(base), _ticks_of(version)
    known = same_lines(before, after)
    old = {said(tick) for tick in before[known:]}
    return {tick["of"].split("/")[0] for tick in after[known:] if said(tick) not in old}


def _ticks_of(job: "Any") -> "list[Any]":
    ticks = _listed(job.get("ticks")) if isinstance(job, dict) else []
    return [tick for tick in ticks if isinstance(tick, dict) and isinstance(tick.get("of"), str)]


def _things_of(value: "Any", path: "Path") -> "set[str]":
    """Return the ids of the items and questions in a value at a path."""
    if path[:1] != ("items",) or len(path) > 4 or (len(path) == 3 and path[2] != "entries"):
        return set()
    found = set()
    for thing in value if isinstance(value, list) else [value]:
        if isinstance(thing, dict):
            found.update({thing["id"]} | {each["id"] for each in _listed(thing.get("entries"))})
    return found
