"""Two pieces pushed together on a corner, their faces as vectors."""

from random import Random
from typing import Any

import numpy as np

from tests.trade.references.expected import Expected

SLUG = "miter-fit"


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "trim_width": random.randint(8, 128) / 16,
        "gap": random.randint(1, 24) / 64,
        "open_at": random.choice(["heel", "toe"]),
    }
    if random.random() < 0.8:
        inputs["corner"] = round(random.uniform(30, 165), 2)
    return inputs


def face(width: float, setting: float) -> Any:
    """From toe to heel along the cut of a piece that runs along +x with its outer edge at y = 0."""
    slope = np.array([np.sin(np.radians(setting)), np.cos(np.radians(setting))])
    return slope * width / slope[1]


def expect(inputs: dict[str, Any]) -> Expected | None:
    width, gap, corner = inputs["trim_width"], inputs["gap"], inputs.get("corner", 90)
    blunter = inputs["open_at"] == "heel"
    joint = face(width, 90 - corner / 2)
    across = np.array([-joint[1], joint[0]]) / np.linalg.norm(joint)
    # Square to the joint line at its open end lies the point that must be met there.
    moved = joint + gap * across * (1 if blunter else -1)
    one = float(np.degrees(np.arctan2(moved[0], moved[1])))
    if not 0 < one < 90:
        return None
    turn = abs(one - (90 - corner / 2))

    # Recut alike, both faces come to lie on the line that halves what stands between them.
    halving = joint / np.linalg.norm(joint) + moved / np.linalg.norm(moved)
    both = float(np.degrees(np.arctan2(halving[0], halving[1])))
    length = float(np.linalg.norm(joint))
    more = face(width, 90 - corner / 2 + (1 if corner > 2 else -1))
    # One degree: the far ends of two faces a degree apart, square to the first.
    tilted = more / np.linalg.norm(more)
    degree = length * abs(tilted @ across) / (tilted @ joint / length)
    words = ("less" if blunter else "more",) if turn / 2 >= 0.05 else ("shim",)
    return Expected(
        figures={
            "joint": length,
            "turn_one": turn,
            "turn_each": turn / 2,
            "saw_one": one,
            "saw_each": both,
            "corner_true": 180 - 2 * both,
            "gap_degree": float(degree),
            "shim": float(6 * np.tan(np.radians(turn / 2))),
            "way": "less: toward square" if blunter else "more: away from square",
        },
        words=(f"Open at the {inputs['open_at']}", *words),
    )
