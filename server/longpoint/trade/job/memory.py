"""What was worked out before, so that a change works out anew only what it concerns."""

import json

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Memory:
    """Values by what they were made from, at most so many: then all are forgotten."""

    def __init__(self, most: int) -> None:
        self.most = most
        self.known: dict[Any, Any] = {}

    def get(self, key: object) -> "Any":
        """Return what is known under a key, None for nothing."""
        return self.known.get(key)

    def put(self, key: object, value: "Any") -> None:
        """Keep a value."""
        if len(self.known) >= self.most:
            self.known = {}
        self.known[key] = value


def key_of(value: "Any") -> str:
    """Return a text that is the same for values that say the same.

    >>> key_of({"b": 1, "a": [{"d": 2, "c": 3}]})
    '[["a", [[["c", 3], ["d", 2]]]], ["b", 1]]'
    """
    return json.dumps(_in_order(value))


def _in_order(value: "Any") -> "Any":
    """Return a value as lists: an object's names have no order of their own on the phone."""
    if isinstance(value, dict):
        return [[name, _in_order(value[name])] for name in sorted(value)]
    return [_in_order(each) for each in value] if isinstance(value, list) else value
