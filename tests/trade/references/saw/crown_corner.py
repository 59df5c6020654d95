"""Vectors: crown hung on walls in space, its edges cut where the planes of its corners are.

Sticks are packed by trying every way to share the pieces out.
"""

from itertools import combinations
from random import Random
from typing import Any

import numpy as np

from tests.trade.references.expected import Expected

SLUG = "crown-corner"
UP = np.array([0.0, 0.0, 1.0])


def draw(random: Random) -> dict[str, Any]:
    inputs = crown(random)
    if random.random() < 0.5:
        inputs["corner"] = round(random.uniform(30, 170), 2)
        inputs["turn"] = random.choice(["inside", "outside"])
        if "width" in inputs or inputs["crown_by"] != "face":
            inputs["wall_a"] = random.randint(640, 1600) / 16
        return inputs
    inputs |= {"task": "run", "inside_joint": random.choice(["cope", "miter"])}
    inputs.setdefault("width", 4.0)
    if inputs["crown_by"] != "face":
        del inputs["width"]
    walls = []
    for _ in range(random.randint(1, 5)):
        wall: dict[str, Any] = {"length": random.randint(640, 2400) / 16}
        wall["turn"] = random.choice(["inside", "outside"])
        wall["corner"] = random.choice([90, 90, 135, round(random.uniform(70, 150), 1)])
        walls.append(wall)
    if random.random() < 0.5:
        walls[-1] = {"length": walls[-1]["length"], "turn": "open"}
    inputs["walls"] = walls
    if random.random() < 0.6:
        inputs |= {"stick": random.choice([96, 144, 192]), "scarf": random.choice([30, 45])}
    return inputs


def crown(random: Random) -> dict[str, Any]:
    by = random.choice(["face", "drop", "sizes"])
    inputs: dict[str, Any] = {"crown_by": by}
    if by != "sizes":
        inputs["spring"] = random.choice([38, 45, 52, round(random.uniform(20, 70), 1)])
    if by == "face" and random.random() < 0.8:
        inputs["width"] = random.randint(32, 96) / 16
    if by != "face":
        inputs["drop"] = random.randint(24, 80) / 16
    if by == "sizes":
        inputs["projection"] = random.randint(24, 80) / 16
    return inputs


def rise(inputs: dict[str, Any]) -> tuple[Any, bool]:
    """From the bottom edge to the top edge, out and up, and whether its length is known."""
    if inputs["crown_by"] == "sizes":
        return np.array([inputs["projection"], inputs["drop"]]), True
    lean = np.radians(inputs["spring"])
    unit = np.array([np.sin(lean), np.cos(lean)])
    if inputs["crown_by"] == "drop":
        return unit * inputs["drop"] / unit[1], True
    return unit * inputs.get("width", 1.0), "width" in inputs


def settings(out_up: Any, corner: float) -> dict[str, float]:
    """Angles between the plane that halves a corner, the crown's face and a square cut."""
    half = np.radians(corner / 2)
    along, out = (
        np.array([np.sin(half), -np.cos(half), 0]),
        np.array([np.cos(half), np.sin(half), 0]),
    )
    joint = np.array([1.0, 0.0, 0.0])
    up = (out_up[0] * out + out_up[1] * UP) / np.hypot(*out_up)
    face = np.cross(along, up)
    line = np.cross(face, joint)
    return {
        "flat_miter": between(line, up),
        "flat_bevel": float(np.degrees(np.arcsin(abs(face @ joint)))),
        "nested_miter": between(joint, along),
    }


def between(one: Any, other: Any) -> float:
    cosine = abs(one @ other) / np.linalg.norm(one) / np.linalg.norm(other)
    return float(np.degrees(np.arccos(min(1.0, cosine))))


def expect(inputs: dict[str, Any]) -> Expected | None:
    out_up, known = rise(inputs)
    spring = float(np.degrees(np.arctan2(*out_up)))
    figures: dict[str, Any] = {}
    if known:
        figures |= {"projection": float(out_up[0]), "drop": float(out_up[1])}
    if "walls" in inputs:
        return run(inputs, out_up, figures)
    figures |= settings(out_up, inputs["corner"])
    pieces: list[dict[str, Any]] = []
    if "wall_a" in inputs:
        turn = inputs["turn"]
        walls = [{"length": 200.0, "turn": turn, "corner": inputs["corner"]}, {"length": 200.0}]
        bottom, top = edges(walls, float(out_up[0]))[0]
        past = top[1] - bottom[1]
        wall = inputs["wall_a"]
        pieces = [{"length": max(wall, wall + past), "short_point": min(wall, wall + past)}]
        figures["edges"] = abs(past)
    words = (f"{inputs['turn'].capitalize()} corner", f"spring {brief(spring)}")
    return Expected(figures=figures, pieces=pieces, words=words)


def brief(angle: float) -> str:
    return f"{round(angle * 10 + 1e-7) / 10:g}°"


def edges(walls: list[dict[str, Any]], out: float) -> list[tuple[Any, Any]]:
    """For each wall where its bottom and top edge begin and end, along it, all corners mitered.

    Walls are vectors, the room to their right; the top edges lie on lines `out` in the room.
    """
    heading, spot = 0.0, np.zeros(2)
    lines = []
    for wall in walls:
        along = np.array([np.cos(heading), np.sin(heading)])
        lines.append((spot, along, np.array([-along[1], along[0]])))
        spot = spot + wall["length"] * along
        corner = np.radians(wall.get("corner", 90))
        turn = np.pi - corner if wall.get("turn") != "outside" else corner - np.pi
        heading += turn
    found = []
    for at, ((start, along, room), wall) in enumerate(zip(lines, walls, strict=True)):
        ends = [0.0, float(wall["length"])]
        tops = list(ends)
        for place, other in ((0, at - 1), (1, at + 1)):
            if 0 <= other < len(walls):
                spot = crossing(start + out * room, along, lines[other], out)
                tops[place] = float((spot - start) @ along)
        found.append((np.array(ends), np.array(tops)))
    return found


def crossing(spot: Any, along: Any, line: Any, out: float) -> Any:
    """Where a line meets another wall's line `out` in the room."""
    start, heading, room = line
    steps = np.linalg.solve(np.column_stack([along, -heading]), start + out * room - spot)
    return spot + steps[0] * along


def run(inputs: dict[str, Any], out_up: Any, figures: dict[str, Any]) -> Expected | None:
    walls, out = inputs["walls"], float(out_up[0])
    bounds = edges(walls, out)
    pieces: list[dict[str, Any]] = []
    corners, joints = set(), 0
    for at, wall in enumerate(walls):
        bottom, top = (np.array(each) for each in bounds[at])
        last = at + 1 == len(walls)
        coped = inputs["inside_joint"] == "cope"
        if wall["turn"] == "inside" and (coped or last):
            top[1] = to_wall(bounds, walls, at, out)
        elif last and wall["turn"] == "outside":
            top[1] = bottom[1] + out / np.tan(np.radians(wall["corner"] / 2))
        if wall["turn"] != "open" and not (last and wall["turn"] == "inside"):
            corners.add(wall["corner"])
        joints += not last
        if min(top[1] - top[0], 1) <= 0:
            return None
        pieces += scarfed(inputs, bottom, top, out)
    joints += len(pieces) - len(walls)
    total = sum(piece["length"] for piece in pieces)
    figures |= {
        "total_length": total,
        "to_buy": total + 2 * joints,
        "piece_count": len(pieces),
        "longest_piece": max(piece["length"] for piece in pieces),
    }
    if len(corners) == 1:
        figures |= settings(out_up, corners.pop())
    if "stick" in inputs and len(pieces) <= 8:
        figures["sticks"] = sticks([piece["length"] for piece in pieces], inputs["stick"], 0.125)
    return Expected(figures=figures, pieces=pieces, tolerance=2e-6)


def to_wall(bounds: Any, walls: list[dict[str, Any]], at: int, out: float) -> float:
    """Where a top edge that is not mitered meets the next wall itself."""
    length = walls[at]["length"]
    corner = np.radians(walls[at]["corner"])
    along, room = np.array([1.0, 0.0]), np.array([0.0, 1.0])
    back = np.array([-np.cos(corner), np.sin(corner)])
    spot = out * room
    steps = np.linalg.solve(np.column_stack([along, -back]), np.array([length, 0.0]) - spot)
    return float(steps[0])


def scarfed(inputs: dict[str, Any], bottom: Any, top: Any, out: float) -> list[dict[str, Any]]:
    """One piece, or as many alike as it takes: each scarf laps over its whole depth in plan."""
    start, end = min(bottom[0], top[0]), max(bottom[1], top[1])
    whole = float(end - start)
    stick = inputs.get("stick", np.inf)
    lap = out * np.tan(np.radians(inputs.get("scarf", 45)))
    number = 1
    while (whole + (number - 1) * lap) / number > stick + 1e-9:
        number += 1
    if number > 1:
        return [{"length": (whole + (number - 1) * lap) / number}] * number
    short = min(float(bottom[1] - bottom[0]), float(top[1] - top[0]))
    past = [bottom[0] - top[0], top[1] - bottom[1]]
    mixed = max(past) > 1e-9 and min(past) < -1e-9
    square = max(np.abs(past)) < 1e-9
    return [{"length": whole, "short_point": None if mixed or square else short}]


def sticks(lengths: list[float], stick: float, kerf: float) -> int:
    """Fewest sticks, by taking every set that one stick holds, the longest piece in it."""
    if not lengths:
        return 0
    lengths = sorted(lengths, reverse=True)
    rest = range(1, len(lengths))
    best = len(lengths)
    for size in range(len(lengths)):
        for others in combinations(rest, size):
            used = lengths[0] + sum(lengths[at] + kerf for at in others)
            if used <= stick + 1e-9:
                left = [lengths[at] for at in rest if at not in others]
                best = min(best, 1 + sticks(left, stick, kerf))
    return best
