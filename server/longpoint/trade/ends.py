"""The two ends of a piece: what is cut on each, in degrees and in words."""

from collections import namedtuple

from .lengths import show_angle

End = namedtuple("End", ("joint", "saw", "bevel", "note"))
"""One end of a piece: joint in a word, saw and bevel in degrees off square, a remark."""


def square(note: str = "") -> End:
    """Return a square-cut end."""
    return End("square", 0.0, 0.0, note)


def miter(saw: float, note: str = "", bevel: float = 0.0) -> End:
    """Return a mitered end; `saw` in degrees off a square cut."""
    return End("miter", float(saw), float(bevel), note)


def end_words(end: End) -> str:
    """Return what is cut on an end, in words.

    >>> end_words(miter(45)), end_words(square())
    ('45.0° miter', 'square')
    """
    words: str = end.joint
    if end.saw:
        words = show_angle(end.saw) + " " + words
    if end.bevel:
        words += ", bevel " + show_angle(end.bevel)
    return words + (", " + end.note if end.note else "")


def ends_words(ends: "tuple[End, ...]") -> str:
    """Return what is cut on both ends of a piece, in words.

    >>> ends_words((miter(45), miter(45))), ends_words((square(), miter(30)))
    ('45.0° miter both ends', 'left: square; right: 30.0° miter')
    """
    if not ends:
        return ""
    left, right = end_words(ends[0]), end_words(ends[1])
    return left + " both ends" if left == right else f"left: {left}; right: {right}"


def end_json(end: End) -> "dict[str, object]":
    """Return an end as the contract's JSON object."""
    return {"joint": end.joint, "saw": end.saw, "bevel": end.bevel, "note": end.note}
