"""A job's reply in parts, of which only those are said that the hearer doesn't have.

A part is one question, one piece, one item's marks or one line to buy. Each has a number; a reply
names its parts by their numbers, and `parts` says the new ones.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Parts:
    """The parts that the hearer has, by the identity of what they say, which is kept with them."""

    def __init__(self) -> None:
        self._known: dict[int, tuple[int, Any]] = {}
        self._last = 0

    def heard(self, number: int) -> None:
        """Let go the parts above a number: the hearer never got them."""
        self._last = max(self._last, number)
        self._known = {own: each for own, each in self._known.items() if each[0] <= number}

    def numbered(self, reply: "dict[str, Any]") -> "tuple[dict[str, Any], dict[int, Any]]":
        """Return a whole reply with numbers in the place of its parts, and the new ones by number.

        What the reply does not name is forgotten, here and by who hears it.
        """
        known, self._known = self._known, {}
        new: dict[int, Any] = {}

        def number(part: "Any") -> int:
            own = known.get(id(part)) or self._known.get(id(part))
            if own is None:
                self._last += 1
                own = self._last, part
                new[self._last] = part
            self._known[id(part)] = own
            return own[0]

        said = dict(reply)
        said["items"] = [_with(item, "entries", number) for item in reply["items"]]
        groups = [_with(group, "cuts", number) for group in reply["saw"]["groups"]]
        said["saw"] = dict(reply["saw"], groups=groups)
        said["site"] = {"items": [number(item) for item in reply["site"]["items"]]}
        said["yard"] = _with(reply["yard"], "lines", number)
        return said, new


def _with(whole: "dict[str, Any]", name: str, number: "Any") -> "dict[str, Any]":
    """Return an object with the numbers of what one of its lists holds."""
    said = dict(whole)
    said[name] = [number(each) for each in whole[name]]
    return said
