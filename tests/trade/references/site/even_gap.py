"""Trial: a rigid leaf is moved at its hinges in each way there is, and the ways are compared.

A way is a system of linear equations: the strike gap across from both hinges, less the moves there,
is one unknown gap; a hinge left alone has no move. What the moves leave is measured again on the
leaf's corners, turned and shifted by a matrix.
"""

from random import Random
from typing import Any

import numpy as np

from tests.trade.references.expected import Expected

SLUG = "even-gap"
SEEN = 1 / 128


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "gap_top": round(random.uniform(0, 0.3), 3),
        "gap_bottom": round(random.uniform(0, 0.3), 3),
        "leaf_height": random.randint(60 * 16, 96 * 16) / 16,
        "leaf_width": random.randint(18 * 16, 42 * 16) / 16,
    }
    if random.random() < 0.6:
        inputs["top_center"] = random.randint(4 * 16, 12 * 16) / 16
        inputs["bottom_center"] = random.randint(5 * 16, 14 * 16) / 16
    if random.random() < 0.5:
        inputs["hinge_gap"] = round(random.uniform(0.01, 0.25), 3)
    if random.random() < 0.25:
        inputs["wanted"] = round(random.uniform(0.04, 0.25), 3)
    if random.random() < 0.3:
        inputs["head_gap_strike"] = round(random.uniform(0.05, 0.25), 3)
    return inputs


def solved(across: np.ndarray, pinned: tuple[int, float]) -> tuple[np.ndarray, float]:
    """Moves and gap, where unknown number `pinned[0]` of (top, bottom, gap) is given."""
    rows = np.array([[1.0, 0.0, 1.0], [0.0, 1.0, 1.0], [0.0, 0.0, 0.0]])
    rows[2, pinned[0]] = 1.0
    found = np.linalg.solve(rows, np.array([across[0], across[1], pinned[1]]))
    return found[:2], float(found[2])


def chosen(inputs: dict[str, Any], across: np.ndarray) -> tuple[np.ndarray, float] | None:
    """The way to go: what is wanted, or the first that the gaps on both sides allow."""
    room = inputs.get("hinge_gap", np.inf)

    def has_room(way: tuple[np.ndarray, float]) -> bool:
        return bool(-way[0].min() <= room + SEEN)

    if "wanted" in inputs:
        way = solved(across, (2, inputs["wanted"]))
        return way if has_room(way) else None
    alone = [solved(across, (0, 0.0)), solved(across, (1, 0.0))]
    shim, deepen = sorted(alone, key=lambda way: way[1])
    if shim[1] >= 1 / 16:
        return shim
    if has_room(deepen):
        return deepen
    if shim[1] >= 1 / 32:
        return shim
    both = solved(across, (2, min(1 / 16, shim[1] + room)))
    return both if both[1] >= 1 / 32 else None


def expect(inputs: dict[str, Any]) -> Expected | None:
    high, wide = inputs["leaf_height"], inputs["leaf_width"]
    down = np.array([inputs.get("top_center", 6.625), high - inputs.get("bottom_center", 11.25)])
    across = np.interp(down, [0.0, high], [inputs["gap_top"], inputs["gap_bottom"]])
    way = chosen(inputs, across)
    if way is None:
        return None
    moves, even = way
    figures: dict[str, Any] = {"even_gap": even}
    absent = []
    for name, move in zip(("top", "bottom"), moves, strict=True):
        for verb, sign in (("pack_", 1), ("deepen_", -1)):
            if sign * move > SEEN:
                figures[verb + name] = sign * move
            else:
                absent.append(verb + name)
    figures["head_change"] = turned(wide, down, moves)
    if "head_gap_strike" in inputs:
        figures["head_gap_after"] = inputs["head_gap_strike"] + figures["head_change"]
    deeper = -moves.min()
    if "hinge_gap" in inputs:
        left = np.maximum(0.0, inputs["hinge_gap"] + moves)
        figures |= {"hinge_gap_top": left[0], "hinge_gap_bottom": left[1]}
    elif deeper > SEEN:
        figures["hinge_gap_needed"] = deeper
    # A small turn is told by its tangent, the matrix turns by the angle.
    words = (*words_for(moves), *head_words(figures["head_change"]))
    return Expected(figures=figures, absent=tuple(absent), words=words, tolerance=2e-5)


def turned(wide: float, down: np.ndarray, moves: np.ndarray) -> float:
    """How far the strike edge's upper corner sinks as the hinge edge is moved at two places."""
    turn = np.arctan2(moves[0] - moves[1], down[1] - down[0])
    matrix = np.array([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])
    hinge, strike = np.array([0.0, 0.0]), np.array([wide, 0.0])
    return float((matrix @ strike - matrix @ hinge)[1])


def words_for(moves: np.ndarray) -> list[str]:
    made = [(name, move) for name, move in zip(("top", "bottom"), moves, strict=True)]
    made = [(name, move) for name, move in made if abs(move) > SEEN]
    if not made:
        return ["Leave the hinges"]
    if len(made) == 1:
        name, move = made[0]
        return [f"him the {name} hinge" if move > 0 else f"{name[1:]} hinge "]
    first, second = sorted(made, key=lambda each: -each[1])
    do = f", shim {second[0]} " if second[1] > 0 else f", {second[0]} "
    return [f"Shim {first[0]} " if first[1] > 0 else f"{first[0].capitalize()} ", do]


def head_words(opens: float) -> list[str]:
    if abs(abs(opens) - SEEN) < 1e-4 or abs(opens) < SEEN:
        return []
    return ["the head gap opens" if opens > 0 else "the head gap closes"]
