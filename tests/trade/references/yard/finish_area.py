"""Doors built of triangles in space, their areas added up by cross products.

A face of a frame is cut into rectangles around its openings; each opening is a nest of rectangles,
one for each point of the sticking's section and of the bevel, every ring between two of them four
flat quadrilaterals with mitered corners. Sections lie evenly about their middle, as the tool says
that it takes them. What is priced is counted cell by cell from the printed rules.
"""

from itertools import pairwise
from random import Random
from typing import Any

import numpy as np
import numpy.typing as npt

from tests.trade.references.expected import Expected

SLUG = "finish-area"
WAYS = ["flat", "factors", "doubled", "girths"]
SIDES = {"all": (2, True), "faces": (2, False), "face-edges": (1, True), "face": (1, False)}
FACTORS = {"framed": 1.3, "slab": 1.2, "glazed": 0.8, "board": 1.0}
Mesh = list[npt.NDArray[np.float64]]


def draw(random: Random) -> dict[str, Any]:
    things = [thing(random) for _ in range(random.randint(1, 4))]
    return {"measured": random.choice(WAYS), "things": things}


def thing(random: Random) -> dict[str, Any]:
    kind = random.choice(["board", "slab", "framed", "framed", "framed", "glazed", "trim", "area"])
    row: dict[str, Any] = {"kind": kind, "count": random.randint(1, 4)}
    if kind == "area":
        return row | {"area": random.randint(1, 900) / 8}
    if kind == "trim":
        return row | {"girth": random.randint(4, 120) / 8, "length": random.randint(80, 4000) / 8}
    sides = random.choice([*SIDES])
    row |= {
        "sides": sides,
        "width": random.randint(160, 400) / 8,
        "length": random.randint(480, 760) / 8,
    }
    if SIDES[sides][1]:
        row["thickness"] = random.randint(4, 20) / 8
    return row | frame(random, row) if kind in ("framed", "glazed") else row


def frame(random: Random, row: dict[str, Any]) -> dict[str, Any]:
    """Draw openings, a straight or stepped sticking, and perhaps raised panels."""
    count = random.randint(1, 3)
    said: dict[str, Any] = {"openings": count, "opening_width": row["width"] - 6}
    said["opening_heights"] = row["length"] - 4 * (count + 1)
    width, deep = random.choice([0, 0.25, 0.375]), random.choice([0, 0.25, 0.5])
    said |= {"sticking_girth": float(girth_of(section(width, deep))), "sticking_width": width}
    if row["kind"] == "framed" and random.random() < 0.6:
        said |= {"raised": random.choice(["one", "both"]), "bevel_width": random.choice([1, 1.75])}
        said |= {
            "bevel_rise": random.choice([0, 0.25, 0.5]),
            "field_step": random.choice([0, 0.125]),
        }
    return said


def section(width: float, deep: float) -> npt.NDArray[np.float64]:
    """Return a sticking's section, inward and down: an ogee, even about its middle."""
    inward = np.array([0, 0.1, 0.5, 0.5, 0.9, 1]) * width
    down = np.array([0, 0.3, 0.4, 0.6, 0.7, 1]) * deep
    return np.column_stack([inward, down])


def girth_of(points: npt.NDArray[np.float64]) -> float:
    return float(np.linalg.norm(np.diff(points, axis=0), axis=1).sum())


def ring(left: float, low: float, wide: float, high: float, at: Any) -> npt.NDArray[np.float64]:
    """Return the four corners of a rectangle so far inward and down."""
    inward, down = at
    x = np.array([left + inward, left + wide - inward])
    y = np.array([low + inward, low + high - inward])
    return np.array(
        [[x[0], y[0], down], [x[1], y[0], down], [x[1], y[1], down], [x[0], y[1], down]]
    )


def quads(one: npt.NDArray[np.float64], other: npt.NDArray[np.float64]) -> Mesh:
    """Return the triangles of the band between two rings of corners."""
    mesh = []
    for here in range(4):
        then = (here + 1) % 4
        mesh.append(np.array([one[here], one[then], other[then]]))
        mesh.append(np.array([one[here], other[then], other[here]]))
    return mesh


def flat(corners: npt.NDArray[np.float64]) -> Mesh:
    return [corners[[0, 1, 2]], corners[[0, 2, 3]]]


def box(x: float, y: float, wide: float, high: float) -> Mesh:
    return flat(ring(x, y, wide, high, (0.0, 0.0)))


def face(row: dict[str, Any], is_raised: bool) -> Mesh:
    """Return one face: plain, or a frame with its openings one above the other."""
    wide, high = row["width"], row["length"]
    if "openings" not in row:
        return box(0, 0, wide, high)
    sticking = row["sticking_width"]
    deep = depth_of(row)
    across = row["opening_width"] + sticking
    each = row["opening_heights"] / row["openings"] + sticking
    gap = (high - each * row["openings"]) / (row["openings"] + 1)
    left = (wide - across) / 2
    mesh = box(0, 0, left, high) + box(left + across, 0, wide - left - across, high)
    for place in range(row["openings"] + 1):
        mesh += box(left, place * (gap + each), across, gap)
    path = section(sticking, deep)
    if is_raised:
        inner, rise = sticking + row["bevel_width"], row["bevel_rise"]
        path = np.vstack([path, [inner, deep - rise], [inner, deep - rise - row["field_step"]]])
    for place in range(row["openings"]):
        low = gap + place * (gap + each)
        rings = [ring(left, low, across, each, point) for point in path]
        for one, other in pairwise(rings):
            mesh += quads(one, other)
        mesh += [] if row["kind"] == "glazed" else flat(rings[-1])
    return mesh


def depth_of(row: dict[str, Any]) -> float:
    """Return the depth that the girth was drawn with."""
    for deep in (0, 0.25, 0.5):
        if abs(girth_of(section(row["sticking_width"], deep)) - row["sticking_girth"]) < 1e-12:
            return deep
    raise AssertionError("no such sticking")


def edges(row: dict[str, Any]) -> Mesh:
    """Return the band between the outlines of both faces."""
    outline = ring(0, 0, row["width"], row["length"], (0.0, 0.0))
    return quads(outline, outline + np.array([0, 0, row["thickness"]]))


def area(mesh: Mesh) -> float:
    triangles = np.array(mesh)
    sides = triangles[:, 1:] - triangles[:, :1]
    return float(np.linalg.norm(np.cross(sides[:, 0], sides[:, 1]), axis=1).sum() / 2)


def measured(row: dict[str, Any], way: str) -> tuple[float, float]:
    """Return the true area of one and the area that it is priced by, in square inches."""
    if row["kind"] == "area":
        return row["area"] * 144, row["area"] * 144
    if row["kind"] == "trim":
        girth, long = row["girth"], row["length"]
        counted = {
            "flat": girth,
            "factors": girth if girth * 25.4 > 100 else 0,
            "doubled": 12 if girth <= 6 else 12 + (girth - 6) * 2,
            "girths": 6 if girth < 6 else max(girth, 12),
        }
        return girth * long, counted[way] * long
    faces, has_edges = SIDES[row["sides"]]
    raised = {"one": 1, "both": 2}.get(row.get("raised", ""), 0)
    around = area(edges(row)) if has_edges else 0.0
    true = sum(area(face(row, side < raised)) for side in range(faces)) + around
    plain = faces * row["width"] * row["length"]
    priced = {
        "flat": plain,
        "factors": plain * FACTORS[row["kind"]],
        "doubled": plain * (2 if "openings" in row else 1) + around * 2,
        "girths": true,
    }
    return true, priced[way]


def expect(inputs: dict[str, Any]) -> Expected:
    both = [(row["count"], *measured(row, inputs["measured"])) for row in inputs["things"]]
    true = sum(count * one for count, one, _ in both) / 144
    priced = sum(count * other for count, _, other in both) / 144
    return Expected(figures={"area": true, "priced_area": priced}, tolerance=1e-8 * true + 1e-9)
