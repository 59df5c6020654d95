"""Whether two JSON values say the same, in words and numbers that both runtimes write alike."""

import math

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

MANTISSA = 2**53
_BASIS = 0xCBF29CE484222325
_PRIME = 0x100000001B3
_WORD = 2**64 - 1


def is_same(one: "Any", other: "Any") -> bool:
    """Tell whether two values say the same; a yes is no 1.

    >>> is_same({"a": [1]}, {"a": [1.0]}), is_same(1, True), is_same([], {})
    (True, False, False)
    """
    if one is other:
        return True
    if isinstance(one, str):
        return bool(one == other)
    if isinstance(one, dict):
        if not isinstance(other, dict) or len(one) != len(other):
            return False
        return all(name in other and is_same(one[name], other[name]) for name in one)
    if isinstance(one, list):
        if not isinstance(other, list) or len(one) != len(other):
            return False
        return all(is_same(each, other[at]) for at, each in enumerate(one))
    if isinstance(one, bool) or isinstance(other, bool):
        return one is other
    return bool(one == other)


def said(value: "Any") -> str:
    """Return a value as a text that depends neither on the order of names nor on 1 or 1.0.

    It is the same in both runtimes, which write numbers and odd letters differently.

    >>> said({"b": 1.0, "a": ["x", None]}) == said({"a": ["x", None], "b": 1})
    True
    """
    if isinstance(value, dict):
        return "{" + ",".join([f"{said(name)}:{said(value[name])}" for name in sorted(value)]) + "}"
    if isinstance(value, list):
        return "[" + ",".join([said(each) for each in value]) + "]"
    if isinstance(value, str):
        if "\\" in value or '"' in value:
            value = value.replace("\\", "\\\\").replace('"', '\\"')
        return f'"{value}"'
    if isinstance(value, float):
        if value == int(value):
            return str(int(value))
        part, power = math.frexp(value)
        return f"{int(part * MANTISSA)}p{power}"
    return str(value)


def mark_of(text: str) -> str:
    """Return 16 letters and digits that tell one text from another (FNV-1a, 64 bits).

    The test vectors that its authors published, from memory.

    >>> mark_of(""), mark_of("a"), mark_of("foobar")
    ('cbf29ce484222325', 'af63dc4c8601ec8c', '85944171f73967e8')
    """
    found = _BASIS
    for byte in text.encode():
        found = ((found ^ byte) * _PRIME) & _WORD
    digits = ""
    for _ in range(16):
        digits = "0123456789abcdef"[found & 15] + digits
        found >>= 4
    return digits
