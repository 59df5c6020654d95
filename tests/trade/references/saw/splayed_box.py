"""Planes in space: each board lies between two leaning planes and two level ones; its corners are
where three of them meet."""

from random import Random
from typing import Any

import numpy as np

from tests.trade.references.expected import Expected

SLUG = "splayed-box"
UP = np.array([0.0, 0.0, 1.0])


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "sides": random.choice([3, 4, 4, 4, 5, 6, 8, 12, 24]),
        "lean": random.choice([0, round(random.uniform(0, 80), 2)]),
        "joint": random.choice(["miter", "butt"]),
    }
    if random.random() < 0.8:
        inputs["narrow"] = random.randint(64, 480) / 16
        inputs["height"] = random.randint(32, 480) / 16
        inputs["stock_thickness"] = random.randint(4, 24) / 16
    return inputs


class Boards:
    """The box around the z axis; board 0 looks along x, the others follow counterclockwise."""

    def __init__(self, sides: int, lean: float, narrow: float) -> None:
        self.sides = sides
        self.lean = np.radians(lean)
        self.radius = narrow / 2 / np.tan(np.pi / sides)

    def normal(self, at: int) -> Any:
        turn = 2 * np.pi * at / self.sides
        flat = np.array([np.cos(turn), np.sin(turn), 0.0])
        return np.cos(self.lean) * flat - np.sin(self.lean) * UP

    def meet(self, depth: float, at: int, other: float, level: float) -> Any:
        """Where board 0's plane `depth` inside its face meets board `at`'s plane at a level."""
        planes = np.array([self.normal(0), self.normal(at), UP])
        first = np.cos(self.lean) * self.radius
        return np.linalg.solve(planes, [first - depth, first - other, level])

    def edge(self, depth: float, left: float, right: float, level: float) -> float:
        """Length of an edge of board 0 between planes of its two neighbors."""
        ends = self.meet(depth, -1, left, level), self.meet(depth, 1, right, level)
        return float(ends[1][1] - ends[0][1])


def expect(inputs: dict[str, Any]) -> Expected | None:
    sides, butted = inputs["sides"], inputs["joint"] == "butt"
    sized = "narrow" in inputs
    high = inputs.get("height", 10.0)
    box = Boards(sides, inputs["lean"], inputs.get("narrow", 10.0))
    rise = np.array([np.sin(box.lean), 0.0, np.cos(box.lean)])
    joint_line = box.meet(0, 1, 0, high) - box.meet(0, 1, 0, 0)
    halving = np.array([-np.sin(np.pi / sides), np.cos(np.pi / sides), 0.0])
    figures = {
        "miter": degrees_between(joint_line, rise),
        "bevel": abs(90 - degrees_between(halving, box.normal(0))),
        "butt_bevel": abs(90 - degrees_between(box.normal(1), box.normal(0))),
        "edge_bevel": inputs["lean"],
    }
    word = "Butted" if butted else "Mitered"
    if not sized:
        return Expected(figures=figures, pieces=[], absent=("wide", "slant"), words=(word,))
    thick = inputs["stock_thickness"]
    inside = {name: box.edge(thick, thick, thick, z) for name, z in (("wide", high), ("narrow", 0))}
    alternate = sides % 2 == 0
    past = 0.0 if not alternate else thick
    between = [box.edge(0, thick, past, z) for z in (high, 0)]
    if inside["narrow"] <= 0 or (butted and between[1] <= 0):
        return None
    whole = [box.edge(0, 0, 0, z) for z in (high, 0)]
    corners = [box.meet(depth, 1, 0, z) @ rise for depth in (0, thick) for z in (0, high)]
    figures |= {
        "wide": whole[0],
        "slant": float(joint_line @ rise),
        "blank_width": float(max(corners) - min(corners)),
        "inside_wide": inside["wide"],
        "inside_narrow": inside["narrow"],
    }
    if sides != 4:
        figures["across_wide"] = 2 * middle(box, thick, high)
        figures["across_narrow"] = 2 * middle(box, thick, 0)
    return Expected(figures=figures, pieces=pieces(whole, between, butted, sides), words=(word,))


def degrees_between(one: Any, other: Any) -> float:
    cosine = one @ other / np.linalg.norm(one) / np.linalg.norm(other)
    return float(np.degrees(np.arccos(np.clip(cosine, -1, 1))))


def middle(box: Boards, depth: float, level: float) -> float:
    """How far board 0's plane is from the axis at a level."""
    planes = np.array([box.normal(0), [0.0, 1.0, 0.0], UP])
    return float(np.linalg.solve(planes, [np.cos(box.lean) * box.radius - depth, 0, level])[0])


def pieces(
    whole: list[float], between: list[float], butted: bool, sides: int
) -> list[dict[str, Any]]:
    def piece(edges: list[float], count: int) -> dict[str, Any]:
        return {"length": edges[0], "short_point": edges[1], "count": count}

    if not butted:
        return [piece(whole, sides)]
    if sides % 2:
        return [piece(between, sides)]
    return [piece(whole, sides // 2), piece(between, sides // 2)]
