"""A linear program and numpy: the corners are drawn first, tape and level read off them.

The largest square leaf is the best corner of a linear program (its width and its upper and lower
edge, inside the four sides); the tapered one is cut out by moving each side in and crossing the
lines with a solver. Of two leaves each has the half of the opening on its side of the line through
the middles of head and floor.
"""

from random import Random
from typing import Any

import numpy as np
from scipy.optimize import linprog

from tests.trade.references.expected import Expected

SLUG = "opening-survey"
SIXTEENTH = 1 / 16
CORNERS = ("top left", "top right", "bottom right", "bottom left")


def draw(random: Random) -> dict[str, Any]:
    wide, high = random.uniform(20, 70), random.uniform(60, 100)
    out = 0.0 if random.random() < 0.1 else 0.5
    at = np.array([[0, 0], [wide, 0], [wide, high], [0, high]], dtype=float)
    at = at + np.array([[random.uniform(-out, out) for _ in range(2)] for _ in range(4)])
    inputs: dict[str, Any] = {
        "width_top": _far(at[0], at[1]),
        "width_bottom": _far(at[3], at[2]),
        "height_left": _far(at[0], at[3]),
        "height_right": _far(at[1], at[2]),
        "diagonal_a": _far(at[0], at[2]),
        "diagonal_b": _far(at[1], at[3]),
        "leaves": random.choice(["1", "2"]),
        "route": random.choice(["square", "tapered"]),
        "side_gap": random.randint(0, 6) / 32,
        "head_gap": random.randint(0, 6) / 32,
        "floor_gap": random.randint(0, 12) / 16,
        "door_thickness": random.randint(12, 36) / 16,
        "bevel": random.uniform(0, 6),
    }
    if inputs["leaves"] == "2":
        inputs["meeting_gap"] = random.randint(0, 6) / 32
    else:
        inputs["hinge_side"] = random.choice(["left", "right"])
    if random.random() < 0.3:
        mean = (inputs["width_top"] + inputs["width_bottom"]) / 2
        inputs["width_middle"] = mean + random.uniform(-0.3, 0.2)
    if random.random() < 0.3:
        mean = (inputs["height_left"] + inputs["height_right"]) / 2
        inputs["height_middle"] = mean + random.uniform(-0.3, 0.2)
    if random.random() < 0.5:
        inputs["plumb_left"] = -48 * (at[0] - at[3])[0] / (at[0] - at[3])[1]
        inputs["level_head"] = -24 * (at[1] - at[0])[1] / (at[1] - at[0])[0]
    if random.random() < 0.2:
        inputs["depth"] = random.randint(8, 90) / 16
    return inputs


def _far(one: Any, other: Any) -> float:
    return float(np.linalg.norm(one - other))


def _corners(inputs: dict[str, Any]) -> Any:
    """The corners from sides and diagonal by crossing circles, the head laid level."""
    top, left = inputs["width_top"], inputs["height_left"]
    a, b = inputs["diagonal_a"], inputs["diagonal_b"]
    x = (top**2 + a**2 - inputs["height_right"] ** 2) / (2 * top)
    low_right = (x, (a**2 - x**2) ** 0.5)
    x = (top**2 + left**2 - b**2) / (2 * top)
    return np.array([(0, 0), (top, 0), low_right, (x, (left**2 - x**2) ** 0.5)])


def _bow(inputs: dict[str, Any], first: str, middle: str, last: str) -> float:
    mean = (inputs[first] + inputs[last]) / 2
    return max(0.0, mean - inputs.get(middle, mean))


def _mirrored(at: Any) -> Any:
    """The same bay seen from behind, so that its hinges are at the left."""
    return np.array([[-1, 1] * at[1], [-1, 1] * at[0], [-1, 1] * at[3], [-1, 1] * at[2]])


def _upright(at: Any) -> Any:
    """The bay turned so that its left side is upright and starts at the origin."""
    down = (at[3] - at[0]) / np.linalg.norm(at[3] - at[0])
    right = np.array([down[1], -down[0]])
    return (at - at[0]) @ np.array([right, down]).T


def _line(start: Any, end: Any) -> tuple[Any, float]:
    """A line as normal . point = constant, the normal to the right of its way: outwards."""
    along = (end - start) / np.linalg.norm(end - start)
    normal = np.array([along[1], -along[0]])
    return normal, float(normal @ start)


def _largest(bay: Any, bows: tuple[float, float]) -> Any:
    """Width, top and foot of the largest rectangle on the hinge side."""
    size = np.array([bay[1][0], bay[3][1]])
    rows, limits = [], []

    def inside(side: int, across: Any, down: Any, spare: float = 0.0) -> None:
        """Keep a point inside a side; both its coordinates are weights of width, top and foot.

        `spare` is kept free along the leaf's edges, not square to the side.
        """
        normal, constant = _line(bay[side], bay[(side + 1) % 4])
        rows.append(normal[0] * np.array(across) + normal[1] * np.array(down))
        limits.append(constant - spare * (abs(normal[0]) if side == 1 else abs(normal[1])))

    hinge, edge, half, top, foot = (0, 0, 0), (1, 0, 0), (0.5, 0, 0), (0, 1, 0), (0, 0, 1)
    for across in (hinge, edge):
        inside(0, across, top)
        inside(2, across, foot)
    inside(1, edge, top)
    inside(1, edge, foot)
    inside(0, half, top, bows[1])
    inside(1, edge, (0, 0.5, 0.5), bows[0])
    worth = [-size[1], size[0], -size[0]]
    bounds = [(0, None), (0, None), (0, None)]
    return linprog(worth, A_ub=np.array(rows), b_ub=np.array(limits), bounds=bounds).x


def _crossed(one: tuple[Any, float], other: tuple[Any, float]) -> Any:
    return np.linalg.solve(np.array([one[0], other[0]]), np.array([one[1], other[1]]))


def _moved_in(bay: Any, inches: list[float]) -> Any:
    lines = []
    for side in range(4):
        normal, constant = _line(bay[side], bay[(side + 1) % 4])
        lines.append((normal, constant - inches[side]))
    return np.array([_crossed(lines[side - 1], lines[side]) for side in range(4)])


def _tapered(bay: Any, gaps: list[float], mirrored: bool) -> tuple[Any, list[dict[str, Any]]]:
    """Blank size and tapers of a bay with its hinges at the left."""
    leaf = _upright(_moved_in(bay, gaps))
    off = {
        "Top": float(leaf[1][1]),
        "Strike": float(leaf[2][0] - leaf[1][0]),
        "Bottom": float(leaf[3][1] - leaf[2][1]),
    }
    cut = {edge: abs(by) > SIXTEENTH for edge, by in off.items()}
    wide = (max if cut["Strike"] else min)(leaf[1][0], leaf[2][0])
    foot = (max if cut["Bottom"] else min)(leaf[2][1], leaf[3][1])
    top = (min if cut["Top"] else max)(0.0, leaf[1][1])
    ends = {"Top": (0, 1), "Strike": (2, 1), "Bottom": (3, 2)}
    marks = []
    for edge in ("Top", "Strike", "Bottom"):
        if cut[edge]:
            other, corner = ends[edge] if off[edge] > 0 else ends[edge][::-1]
            at, no = (CORNERS[each ^ mirrored] for each in (corner, other))
            words = f"{edge} edge, off at the {at} corner, nothing at the {no}"
            marks.append({"value": abs(off[edge]), "label": words})
    return (float(wide), float(foot - top)), marks


def _bays(inputs: dict[str, Any]) -> list[tuple[Any, bool, tuple[float, float]]]:
    """Each leaf's bay with its hinges turned to the left, whether mirrored, and its bows."""
    at = _corners(inputs)
    wide = _bow(inputs, "width_top", "width_middle", "width_bottom")
    high = _bow(inputs, "height_left", "height_middle", "height_right")
    if inputs["leaves"] == "1":
        mirrored = inputs["hinge_side"] == "right"
        return [(_mirrored(at) if mirrored else at, mirrored, (wide, high))]
    top, low = (at[0] + at[1]) / 2, (at[2] + at[3]) / 2
    halves = np.array([at[0], top, low, at[3]]), np.array([top, at[1], at[2], low])
    half = (wide / 2, high)
    return [(halves[0], False, half), (_mirrored(halves[1]), True, half)]


def expect(inputs: dict[str, Any]) -> Expected | None:
    if inputs.get("depth", 99) <= inputs["door_thickness"]:
        return None
    bays = _bays(inputs)
    side, head, floor = (inputs[name] for name in ("side_gap", "head_gap", "floor_gap"))
    far = inputs["meeting_gap"] / 2 if len(bays) == 2 else side
    rooms = [_largest(_upright(bay), bows) for bay, _, bows in bays]
    size = (
        float(min(room[0] for room in rooms)) - side - far,
        float(min(room[2] - room[1] for room in rooms)) - head - floor,
    )
    sizes, marks = [size] * len(bays), []
    if inputs["route"] == "tapered":
        sizes = []
        for bay, mirrored, bows in bays:
            gaps = [head + bows[1], far + bows[0], floor, side]
            blank, off = _tapered(bay, gaps, mirrored)
            sizes.append(blank)
            marks += off
    wide, high = max(each[0] for each in sizes), max(each[1] for each in sizes)
    across = 2 * side + (inputs["meeting_gap"] if len(bays) == 2 else 0)
    thick = inputs["door_thickness"]
    figures = {
        "leaf_width": wide,
        "leaf_height": high,
        "opening_width": len(bays) * wide + across,
        "opening_height": high + head + floor,
        "door_diagonal": float(np.hypot(wide, high)),
        "bevel_off": thick * float(np.tan(np.radians(inputs["bevel"]))),
        "out_of_square": abs(inputs["diagonal_a"] - inputs["diagonal_b"]),
        "disagree": 0.0,
    }
    if "depth" in inputs:
        figures["depth_left"] = inputs["depth"] - thick
    if "plumb_left" in inputs:
        figures["out_of_plumb_left"] = abs(inputs["plumb_left"]) / 48 * inputs["height_left"]
        figures["out_of_level_head"] = abs(inputs["level_head"]) / 24 * inputs["width_top"]
    return Expected(
        figures=figures,
        pieces=[{"width": each[0], "length": each[1]} for each in sizes],
        marks=marks,
        tolerance=1e-5,
    )
