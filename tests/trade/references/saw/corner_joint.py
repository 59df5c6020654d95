"""Vectors: the joint runs from the inner corner of the two faces to their outer one."""

from random import Random
from typing import Any

import numpy as np

from tests.trade.references.expected import Expected

SLUG = "corner-joint"


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "corner": round(random.uniform(20, 170), 2),
        "width_a": random.randint(8, 160) / 16,
    }
    if random.random() < 0.7:
        inputs["width_b"] = random.randint(8, 160) / 16
    return inputs


def expect(inputs: dict[str, Any]) -> Expected:
    wide_a, wide_b = inputs["width_a"], inputs.get("width_b", inputs["width_a"])
    turn = np.radians(inputs["corner"])
    along_a, along_b = np.array([1.0, 0.0]), np.array([np.cos(turn), np.sin(turn)])
    # Away from the corner's inside, each outer edge lies a width off its inner edge.
    across_a, across_b = np.array([0.0, -1.0]), np.array([-np.sin(turn), np.cos(turn)])
    lines = np.array([across_a, across_b])
    heel = np.linalg.solve(lines, np.array([wide_a, wide_b]))
    joint = float(np.hypot(*heel))
    past_a, past_b = float(-heel @ along_a), float(-heel @ along_b)
    words: tuple[str, ...] = ("both pieces",)
    if wide_a != wide_b:
        turned = (("Piece A is so wide", past_a, wide_a), ("Piece B is so wide", past_b, wide_b))
        # A tenth of a degree is what the saw shows.
        words = tuple(name for name, past, wide in turned if past < -0.0018 * wide)
    return Expected(
        words=words,
        figures={
            "joint": joint,
            "run_a": past_a,
            "run_b": past_b,
            "saw_a": float(np.degrees(np.arctan2(past_a, wide_a))),
            "saw_b": float(np.degrees(np.arctan2(past_b, wide_b))),
        },
    )
