"""Lists of what happened, of two people: both people's lines stand."""

from .document import STATES
from .orders import interleaved
from .sameness import is_same, said

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    Lines = list[Any]


def united(base: "Lines", mine: "Lines", theirs: "Lines") -> "Lines":
    """Return the ticks or the log that neither took away, then what either added.

    The last tick of a piece counts. Of one person it is the last in their own list; of two who
    ticked one piece and did not know of each other, what says more about the wood: fitted above
    cut, spoiled above both. Times decide nothing: a phone's clock may be wrong.
    """
    if not base:
        # Without a base, what both lists begin with is what they have in common.
        base = mine[: same_lines(mine, theirs)]
    known = min(same_lines(base, mine), same_lines(base, theirs))
    return base[:known] + _united(base[known:], mine[known:], theirs[known:])


def same_lines(base: "Lines", version: "Lines") -> int:
    """Return how many lines stand at the head of both lists: most, and quickly told.

    >>> same_lines([{"id": 1}, {"id": 2}], [{"id": 1}, {"id": 3}])
    1
    """
    most = min(len(base), len(version))
    at = 0
    while at < most and is_same(base[at], version[at]):
        at += 1
    return at


def _united(base: "Lines", mine: "Lines", theirs: "Lines") -> "Lines":
    known = [{said(each): each for each in version} for version in (base, mine, theirs)]
    kept = [words for words in [said(each) for each in base]
            if words in known[1] and words in known[2]]  # fmt: skip
    added: dict[str, list[list[str]]] = {}
    lines: dict[str, Any] = {}
    for version in (mine, theirs):
        _add_runs(version, known[0], added, lines)
    order = [key for of in sorted(added) for key in interleaved(added[of])]
    return [known[0][words] for words in kept] + [lines[key] for key in _last_of_each(order)]


def united_questions(mine: "Lines", theirs: "Lines") -> "Lines":
    """Return the open questions of both, by id; an answered one stays answered."""
    found: dict[str, Any] = {}
    for each in mine + theirs:
        if each["id"] not in found or "answered" in each:
            found[each["id"]] = each
    return [found[own] for own in sorted(found)]


def _add_runs(
    version: "Lines",
    old: "dict[str, Any]",
    added: "dict[str, list[list[str]]]",
    lines: "dict[str, Any]",
) -> None:
    """Add what a version holds anew to `added`, a run for each piece, and to `lines`."""
    runs: dict[str, list[str]] = {}
    for line in version:
        words = said(line)
        if words not in old:
            key = _rank(line) + words
            lines[key] = line
            runs.setdefault(_of(line), []).append(key)
    for of, run in runs.items():
        added.setdefault(of, []).append(_last_of_each(run))


def _of(line: "Any") -> str:
    return str(line.get("of") or "") if isinstance(line, dict) else ""


def _rank(line: "Any") -> str:
    """Return the place of a tick's state among all, a digit; the time of what has no state."""
    if not isinstance(line, dict):
        return ""
    state = line.get("state")
    return str(STATES.index(state)) if state in STATES else str(line.get("at") or "")


def _last_of_each(keys: "list[str]") -> "list[str]":
    """Return each key once, where it stands last."""
    last = {key: at for at, key in enumerate(keys)}
    return [key for at, key in enumerate(keys) if last[key] == at]
