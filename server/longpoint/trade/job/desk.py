"""What stands of the job that is being worked out, so that a change costs what it concerns.

A document that comes anew is laid over the last one: what says the same is the same object then,
and whatever was made of the same objects stands.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from ..lengths import Scale

    Name = tuple[str, str]
    """What is made, and of which question, item or stock."""


class Desk:
    """One job at a time: its last document, and what was made of it.

    Attributes
    ----------
    document : dict
        The last one that was found to be a job; empty before there was one.
    """

    def __init__(self) -> None:
        self.document: dict[str, Any] = {}
        self._scale: tuple[str, int, object] = ("", 0, None)
        self._made: dict[Name, tuple[list[Any], Any]] = {}
        self._now: dict[Name, tuple[list[Any], Any]] = {}

    def lay(self, document: "dict[str, Any]", scale: "Scale") -> "dict[str, Any]":
        """Return a document in which what says the same as in the last one is that one's own.

        What was made stands for a job of the same units alone: they are in every text.
        """
        now = (scale.units, scale.step, document.get("units"))
        if now != self._scale:
            self._made, self._scale = {}, now
        # A job that was left before it was whole has made some of it anew.
        self._made.update(self._now)
        self._now = {}
        laid: dict[str, Any] = laid_over(self.document, document)
        return laid

    def known(self, name: "Name", sources: "list[Any]") -> "Any":
        """Return what was made under a name of the same sources; None where they differ."""
        known = self._now.get(name) or self._made.get(name)
        if known is None or known[0] != sources:
            return None
        self._now[name] = known
        return known[1]

    def last(self, name: "Name") -> "Any":
        """Return what was last made under a name, of whatever; None for nothing."""
        known = self._now.get(name) or self._made.get(name)
        return known and known[1]

    def keep(self, name: "Name", sources: "list[Any]", value: "Any") -> "Any":
        """Keep what was made of some sources, and return it."""
        self._now[name] = sources, value
        return value

    def made(self, name: "Name", sources: "list[Any]", make: "Callable[[], Any]") -> "Any":
        """Return what was made under a name of the same sources; make it where they differ.

        What is made anew and says the same is the last one.
        """
        known = self.known(name, sources)
        if known is not None:
            return known
        value, last = make(), self.last(name)
        return self.keep(name, sources, last if last is not None and last == value else value)

    def clear(self) -> None:
        """Let go what the job, now whole, was not made of."""
        self._made, self._now = self._now, {}


DEEPEST = 16
"""Levels of a job below which parts are compared as a whole: nothing of a job lies so deep."""


def laid_over(old: "Any", new: "Any", depth: int = DEEPEST) -> "Any":
    """Return a JSON value in which every part that equals the old one's is the old one's object.

    Objects of a list are known by their id, else by their place.

    >>> old = {"a": [1], "b": [2]}
    >>> new = laid_over(old, {"a": [1], "b": [3]})
    >>> new["a"] is old["a"], new
    (True, {'a': [1], 'b': [3]})
    """
    if type(old) is not type(new):
        return new
    if old == new:
        return old
    if depth and isinstance(new, dict):
        return {name: laid_over(old.get(name), new[name], depth - 1) for name in new}
    if depth and isinstance(new, list):
        return _list_over(old, new, depth - 1)
    return new


def _list_over(old: "list[Any]", new: "list[Any]", depth: int) -> "list[Any]":
    by_id = {_id_of(each): each for each in old}
    laid = []
    for at, each in enumerate(new):
        own = _id_of(each)
        known = by_id.get(own) if own else None
        if known is None and at < len(old):
            known = old[at]
        laid.append(laid_over(known, each, depth))
    return laid


def _id_of(each: "Any") -> str:
    own = each.get("id") if isinstance(each, dict) else None
    return own if isinstance(own, str) else ""
