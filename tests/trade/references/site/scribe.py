"""Shapes moved until they touch: the wall is a polygon, the piece a rectangle slid toward it.

By halving, the piece is slid up to the wall; the dividers are found as the slide that would bring
its other edge to its place, and the scribed piece is the rectangle less the wall moved by as much.
What is left of it must be the gap itself, from foot to head.
"""

from random import Random
from typing import Any

import numpy as np
import shapely
from shapely import affinity

from tests.trade.references.expected import Expected

SLUG = "scribe"
FAR = 200.0


def draw(random: Random) -> dict[str, Any]:
    height = random.randint(16 * 20, 16 * 100) / 16
    count = random.randint(2, 5)
    heights = sorted(random.sample(range(int(height * 16) + 1), count))
    if random.random() < 0.6:
        heights[0], heights[-1] = 0, int(height * 16)
    near = random.randint(8, 60) / 32
    gaps = [{"up": up / 16, "gap": near + random.randint(0, 24) / 32} for up in heights]
    piece = random.choice(["filler", "stile"])
    if piece == "stile" and random.random() < 0.5:
        least = min(each["gap"] for each in gaps)
        gaps = [{"up": each["up"], "gap": each["gap"] - least} for each in gaps]
    random.shuffle(gaps)
    inputs: dict[str, Any] = {"piece": piece, "height": height, "gaps": gaps}
    if piece == "filler" and random.random() < 0.5:
        inputs["blank"] = near + random.randint(8, 60) / 32
    if piece == "filler" and random.random() < 0.5:
        inputs["spare"] = random.randint(0, 8) / 16
    if piece == "stile" and random.random() < 0.6:
        inputs["stile"] = random.randint(8, 64) / 16
    return inputs


def line_of(inputs: dict[str, Any]) -> tuple[np.ndarray, np.ndarray]:
    """Heights and gaps with foot and head put in; straight on beyond the readings."""
    known = sorted((each["up"], each["gap"]) for each in inputs["gaps"])
    ups, gaps = (np.array(values, dtype=float) for values in zip(*known, strict=True))
    for at, place, ends in ((0.0, 0, slice(0, 2)), (inputs["height"], len(ups), slice(-2, None))):
        if not np.any(np.isclose(ups, at)):
            fitted = np.polynomial.Polynomial.fit(ups[ends], gaps[ends], 1)
            ups, gaps = np.insert(ups, place, at), np.insert(gaps, place, fitted(at))
            place += 1
    order = np.argsort(ups)
    return ups[order], gaps[order]


def touching(wall: Any, piece: Any) -> float:
    """How far a piece can be slid toward the wall before it would go into it."""
    low, high = -FAR, FAR
    for _ in range(100):
        middle = (low + high) / 2
        if affinity.translate(piece, middle, 0).intersection(wall).area > 0:
            high = middle
        else:
            low = middle
    return low


def expect(inputs: dict[str, Any]) -> Expected | None:
    ups, gaps = line_of(inputs)
    height, is_filler = inputs["height"], inputs["piece"] == "filler"
    if gaps.min() < -1e-9 or (is_filler and gaps.min() <= 1e-9):
        return None
    edge = list(zip(gaps, ups, strict=True))
    wall = shapely.Polygon([*edge, (FAR, height), (FAR, 0)])
    widest = float(gaps.max())
    is_parallel = gaps.max() - gaps.min() <= 1 / 64
    wide = widest if is_parallel else widest + inputs.get("spare", 0.125)
    wide = inputs.get("blank", wide) if is_filler else FAR / 2
    if is_filler and wide < widest - 1e-9:
        return None
    if not is_filler and inputs.get("stile", FAR) <= gaps.max() - gaps.min():
        return None
    piece = shapely.box(-wide, 0, 0, height)
    held = touching(wall, piece)
    figures = {
        "widest_gap": widest,
        "smallest_gap": held,
        "out_of_plumb": abs(float(gaps[-1] - gaps[0])),
    }
    if is_filler:
        # Its left edge belongs at 0 and lies at held - wide.
        figures |= {"blank_width": wide, "leave_on": wide - held}
        setting = wide - held
        figures["dividers"] = 0.0 if is_parallel and "blank" not in inputs else setting
        line = affinity.translate(wall, -setting, 0)
        left = affinity.translate(piece, held, 0).difference(line)
        goal = shapely.Polygon([(0, 0), *edge, (0, height)])
        assert abs(left.area - goal.area) < 1e-4 * height, "the line leaves the gap's own shape"
    else:
        # Slid until it touches, it must still move until every gap is closed.
        closed = max(float(gap - held) for gap in gaps)
        figures |= {"dividers": closed, "leave_on": closed}
        if held > 1e-6:
            figures["slide"] = held
        if "stile" in inputs:
            figures["narrowest"] = inputs["stile"] - closed
    words = ("runs parallel",) if is_parallel and "blank" not in inputs else ()
    return Expected(figures=figures, words=words, tolerance=1e-6)
