"""Polygons: shave a board's end a pass at a time, turn it over, and measure what is left."""

from random import Random
from typing import Any

from shapely import Polygon, affinity, box

from tests.trade.references.expected import Expected

SLUG = "milling-passes"
WIDE = 10.0


def draw(random: Random) -> dict[str, Any]:
    finished = random.randint(8, 160) / 64
    inputs: dict[str, Any] = {
        "finished": finished,
        "rough": finished + random.choice([-1, 0, *range(1, 60), *range(1, 60)]) / 64,
        "per_pass": random.choice([1 / 32, 3 / 64, 1 / 16, 0.07, 1 / 8]),
        "light": random.choice(["last", "first", "equal"]),
        "faces": random.choice(["both", "one"]),
    }
    if random.random() < 0.5:
        inputs["part_length"] = random.randint(20, 1600) / 16
        inputs["snipe"] = random.choice([0, 2.5, 3])
    return inputs


def cuts(inputs: dict[str, Any]) -> list[float]:
    """Return how deep each pass goes: as deep as it may until the board is there."""
    high, deep = inputs["rough"], []
    while high > inputs["finished"] + 1e-9:
        deep.append(min(inputs["per_pass"], high - inputs["finished"]))
        high -= deep[-1]
    if inputs["light"] == "first":
        return deep[::-1]
    return [sum(deep) / len(deep)] * len(deep) if inputs["light"] == "equal" else deep


def height(board: Polygon) -> float:
    return float(board.bounds[3] - board.bounds[1])


def expect(inputs: dict[str, Any]) -> Expected | None:
    if inputs["rough"] <= inputs["finished"]:
        return None
    board, off, up = box(0, 0, WIDE, inputs["rough"]), {1: 0.0, 2: 0.0}, 2
    deep = cuts(inputs)
    for take in deep:
        top = board.bounds[3]
        off[up] += board.intersection(box(0, top - take, WIDE, top)).area / WIDE
        board = board.intersection(box(0, -100, WIDE, top - take))
        if inputs["faces"] == "both":
            board, up = affinity.rotate(board, 180, origin=(WIDE / 2, 0)), 3 - up
    assert abs(height(board) - inputs["finished"]) < 1e-9
    figures = {
        "passes": len(deep),
        "total": inputs["rough"] - height(board),
        "first_pass": deep[0],
        "last_pass": deep[-1],
        "off_face_1": off[1],
        "off_face_2": off[2],
    }
    by_turns = "alternating faces" if off[1] else "face 2 only"
    part = inputs.get("part_length")
    if part is None:
        return Expected(figures=figures, absent=("rough_length",), words=(by_turns,))
    figures["rough_length"] = part + 2 * inputs["snipe"]
    blank = {"length": figures["rough_length"], "thickness": inputs["rough"], "count": 1}
    return Expected(figures=figures, pieces=[blank])
