"""Take a sheet plan apart: the parts as drawn, and the cut list carried out piece by piece."""

import re
from collections import Counter
from fractions import Fraction
from typing import Any

from shapely import Polygon

Size = tuple[Fraction, Fraction]


def sheets_of(answer: dict[str, Any]) -> list[tuple[int, dict[str, Any]]]:
    """Return how many sheets are cut alike and their drawing, for every way to cut one."""
    views = [answer["drawing"], *answer["details"]]
    counted = []
    for view in views:
        numbers = [int(word) for word in re.findall(r"\d+", view["title"])]
        counted.append((numbers[-1] - numbers[0] + 1, view))
    return counted


def drawn_parts(view: dict[str, Any]) -> list[tuple[str, Polygon]]:
    """Return the parts in a drawing, each with the tag that stands in its middle."""
    areas = [s["points"] for s in view["shapes"] if s["shape"] == "area" and s["role"] == "panel"]
    tags = [(s["at"], s["text"]) for s in view["shapes"] if s["shape"] == "tag"]
    found = []
    for area in areas:
        polygon = Polygon(area)
        middle = polygon.centroid
        near = [t for at, t in tags if abs(at[0] - middle.x) + abs(at[1] - middle.y) < 1e-6]
        assert len(near) == 1
        found.append((near[0], polygon))
    return found


def inches(text: str) -> Fraction:
    """Return an exact measure; the questions are such that none is full or shy."""
    assert "full" not in text
    assert "shy" not in text
    return sum((Fraction(word) for word in text.split()), Fraction(0))


def size(text: str) -> Size:
    """Return what "30 1/8 x 15" says."""
    long, wide = text.split(" x ")
    return inches(long), inches(wide)


def carried_out(rows: list[list[str]], whole: Size, kerf: Fraction) -> Counter[tuple[str, Size]]:
    """Cut a sheet as the list says, with a saw that knows nothing else; return the parts.

    Every measure must lie inside the piece in hand; what comes off and what is left must be as
    large as the list says.
    """
    hand = {"sheet": whole}
    done: Counter[tuple[str, Size]] = Counter()
    for number, take, runs, at, off, left in rows:
        piece = hand.pop(take)
        if number == "trim":
            trim = inches(at)
            hand["sheet"] = (piece[0] - 2 * trim, piece[1] - 2 * trim)
            assert hand["sheet"] == size(off.removeprefix("sheet "))
            continue
        axis = {"across the sheet": 0, "along the sheet": 1}[runs]
        measure = inches(at)
        assert 0 < measure < piece[axis]
        rest = max(Fraction(0), piece[axis] - measure - kerf)
        for words, side in ((off, measure), (left, rest)):
            made = (side, piece[1]) if axis == 0 else (piece[0], side)
            if words == "dust":
                assert side == 0
                continue
            name, said = words.split(": ")
            assert size(said) == made
            if name.startswith("part "):
                done[name.removeprefix("part "), made] += 1
            elif name not in ("offcut", "waste"):
                hand[name] = made
    assert hand == {}
    return done
