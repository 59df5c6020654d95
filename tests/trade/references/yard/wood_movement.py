"""A board on a scale of sizes: stepped through moistures, or back to green and down again.

Between 6 and 14 percent its width is stepped a hundredth of a point at a time by the coefficient;
outside, it is looked up on the straight line from green to ovendry, the green width found by
bisection. A panel for a frame is found by bisection too: the widest whose worst board just fits.

Coefficients and shrinkages: Wood Handbook, Tables 13-5 and 4-3 as reprinted; one fifth for the
worst board: a rule of thumb, no source. Cedar begins to shrink at 22 percent: from memory.
"""

from random import Random
from typing import Any

import numpy as np
from scipy.optimize import brentq

from tests.trade.references.expected import Expected

SLUG = "wood-movement"
WORST = 1.2
# Quarter-sawn and flat-sawn: coefficient, percent from green to ovendry; percent where it begins.
WOODS = {
    "alder-red": ((0.00151, 4.4), (0.00256, 7.3), 30),
    "ash-white": ((0.00169, 4.9), (0.00274, 7.8), 30),
    "beech": ((0.0019, 5.5), (0.00431, 11.9), 30),
    "cherry": ((0.00126, 3.7), (0.00248, 7.1), 30),
    "walnut": ((0.0019, 5.5), (0.00274, 7.8), 30),
    "cedar-western-red": ((0.00111, 2.4), (0.00234, 5.0), 22),
}
SHEETS = {"plywood": 0.002 / 30, "mdf": 0.0005}


def draw(random: Random) -> dict[str, Any]:
    species = random.choice([*WOODS, *WOODS, *SHEETS, "other"])
    top = 14 if random.random() < 0.6 else 35
    low = 6 if top == 14 else 0
    inputs: dict[str, Any] = {
        "species": species,
        "cut": random.choice(["flat-sawn", "quarter-sawn"]),
        "moisture_from": random.randint(2 * low, 2 * top) / 2,
        "moisture_to": random.randint(2 * low, 2 * top) / 2,
    }
    if species == "other":
        inputs["coefficient"] = random.randint(100, 500) / 100000
    if random.random() < 0.5:
        return inputs | {"panel_width": random.randint(16, 640) / 16}
    frame = {
        "frame_opening": random.randint(80, 500) / 16,
        "groove_depth": random.randint(4, 16) / 16,
    }
    return inputs | {"size": "opening"} | frame


def grown(inputs: dict[str, Any], width: float) -> float:
    """Return what a width of the mean board comes to."""
    start, end = inputs["moisture_from"], inputs["moisture_to"]
    species = inputs["species"]
    if species not in WOODS:
        each = SHEETS.get(species) or inputs["coefficient"]
        return stepped(width, each, min(start, 30), min(end, 30))
    quarter, flat, begins = WOODS[species]
    each, total = flat if inputs["cut"] == "flat-sawn" else quarter
    if min(start, end) >= 6 and max(start, end) <= 14:
        return stepped(width, each, start, end)

    def at(green: float, moisture: float) -> float:
        return green * float(np.interp(moisture, [0, begins], [1 - total / 100, 1]))

    green = brentq(lambda whole: at(whole, start) - width, width / 2, width * 2, xtol=1e-13)
    return at(float(green), end)


def stepped(width: float, each: float, start: float, end: float) -> float:
    """Return a width after steps of a hundredth of a point; each is of the width it began with."""
    steps = round(abs(end - start) * 100)
    moved = np.full(steps, width * each * np.sign(end - start) / 100)
    return width + float(moved.sum())


def expect(inputs: dict[str, Any]) -> Expected | None:
    worst = 1.0 if inputs["species"] in SHEETS else WORST
    if "panel_width" in inputs:
        return told(inputs, inputs["panel_width"], worst, {})
    groove = inputs["groove_depth"]
    room = inputs["frame_opening"] + 2 * groove

    def widest(width: float) -> float:
        return max(width, width + worst * (grown(inputs, width) - width))

    width = float(brentq(lambda wide: widest(wide) - room, room / 2, room * 1.0001, xtol=1e-13))
    least = min(width, width + worst * (grown(inputs, width) - width))
    hold = (least - inputs["frame_opening"]) / 2
    if hold <= 0:
        return None
    return told(inputs, width, worst, {"panel_width": width, "hold": hold})


def told(inputs: dict[str, Any], width: float, worst: float, more: dict[str, float]) -> Expected:
    change = grown(inputs, width) - width
    figures = {
        "change": change,
        "gap_each_side": max(0.0, change) / 2,
        "width_then": width + change,
    }
    figures |= more
    absent: tuple[str, ...] = ()
    words: tuple[str, ...] = ("stays",)
    if change > 1e-12:
        figures["panel_play"] = change / 2 * worst
        absent, words = ("draws_in",), ("swells",)
    elif change < -1e-12:
        figures["draws_in"] = -change / 2
        absent, words = ("panel_play",), ("shrinks", "draws in")
    return Expected(figures=figures, absent=absent, words=words, tolerance=1e-7)
