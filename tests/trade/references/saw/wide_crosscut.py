"""Kerfs as lines in the plane of the board, moved by matrices when it is flipped."""

from random import Random
from typing import Any

import numpy as np

from tests.trade.references.expected import Expected

SLUG = "wide-crosscut"


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "board_width": random.randint(32, 480) / 16,
        "capacity": random.randint(64, 288) / 16,
    }
    if random.random() < 0.6:
        inputs["angle"] = round(random.uniform(0, 60), 2)
    if random.random() < 0.8:
        inputs["flip"] = random.choice(["over", "round"])
        inputs["fence_error"] = round(random.uniform(0, 1), 2)
    return inputs


def direction(angle: float) -> Any:
    """The way a blade travels, from the fence (y = 0) across the board."""
    return np.array([np.sin(np.radians(angle)), np.cos(np.radians(angle))])


def expect(inputs: dict[str, Any]) -> Expected | None:
    width, capacity = inputs["board_width"], inputs["capacity"]
    angle, error = inputs.get("angle", 0.0), inputs.get("fence_error", 0.1)
    over = inputs.get("flip", "over") == "over"
    meant = direction(angle)
    # The saw travels its capacity along the cut, whatever the angle.
    crossed = float((meant * capacity)[1])
    line = meant * width / meant[1]
    figures: dict[str, Any] = {
        "effective_capacity": crossed,
        "cut_length": float(np.hypot(*line)),
    }
    if width <= crossed:
        figures |= {"cuts": 1, "to_spare": crossed - width}
        return Expected(figures=figures, absent=("first_cut", "off_line"), words=("One cut",))
    if width > 2 * crossed:
        figures["short_by"] = width - 2 * crossed
        return Expected(figures=figures, absent=("cuts", "off_line"), words=("Too wide",))
    first = direction(angle + error)
    # The same saw meets the flipped board; the flip brings its kerf back into the board's plane.
    mirror = np.diag([1.0, -1.0]) if over else np.diag([-1.0, -1.0])
    second = mirror @ direction((-angle if over else angle) + error)
    second = second * np.sign(second[1])
    parted = float(np.degrees(np.arccos(np.clip(first @ second, -1, 1))))
    figures |= {
        "cuts": 2,
        "first_cut": width / 2,
        "overlap": 2 * crossed - width,
        "meeting_error": parted if parted > 1e-5 else 0.0,
        "off_line": off(second, first, line / 2) if over else off(first, meant, line),
    }
    absent = ("stop_shift",)
    if over and angle:
        figures["stop_shift"], absent = float(line[0]), ()
    words = ("Two cuts", "roll" if over else "end for end")
    return Expected(figures=figures, absent=absent, words=words, tolerance=2e-6)


def off(cut: Any, straight: Any, along: Any) -> float:
    """How far a cut stands off a straight line, square to it, after the length of `along`."""
    sine = abs(cut[0] * straight[1] - cut[1] * straight[0])
    return float(np.hypot(*along) * sine / (cut @ straight))
