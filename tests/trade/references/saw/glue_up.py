"""Polygons: boards are shaved on every glued side, pushed together and measured.

One board more is tried until the part can be made; how wide to rip them is then found by bisection.
"""

from itertools import accumulate, pairwise
from random import Random
from typing import Any

from scipy.optimize import brentq
from shapely import box, unary_union

from tests.trade.references.expected import Expected

SLUG = "glue-up"
MOST = 60


def draw(random: Random) -> dict[str, Any]:
    wider = random.random() < 0.6
    stock = random.randint(24, 160) / 16
    loss = random.choice([0, 1 / 32, 1 / 16, 1 / 8])
    size = random.randint(8, 500) / 16
    inputs: dict[str, Any] = {"way": "wider" if wider else "thicker"}
    if wider:
        inputs |= {"finished_width": size, "board_width": stock, "joint_loss": loss}
        inputs["thickness"] = random.choice([3 / 4, 1, 13 / 8])
    else:
        inputs |= {"finished_thickness": size / 8, "stock_thickness": stock / 4}
        inputs |= {"face_loss": loss, "part_width": random.randint(8, 96) / 8}
    inputs["trim"] = random.choice([0, 0, 1 / 4, 1 / 2])
    inputs["length"] = random.randint(40, 800) / 8
    return inputs


def jointed(rip: float, left: float, right: float) -> float:
    """Return how wide a board is once `left` and `right` are shaved off its edges."""
    shaved = box(0, 0, rip, 1) - box(-1, 0, left, 1) - box(rip - right, 0, rip + 1, 1)
    return float(shaved.area)


def made(count: int, rip: float, loss: float) -> float:
    """Return the width of a panel of boards `rip` wide, measured on the glued outline."""
    outer = jointed(rip, 0.0, loss if count > 1 else 0.0)
    inner = jointed(rip, loss, loss)
    wide = [outer] + [inner] * (count - 2) + [outer] * (count > 1)
    edges = [0.0, *accumulate(wide)]
    return float(unary_union([box(x, 0, y, 1) for x, y in pairwise(edges) if y > x]).area)


def expect(inputs: dict[str, Any]) -> Expected | None:
    wider = inputs["way"] == "wider"
    names = ("finished_width", "board_width", "joint_loss")
    if not wider:
        names = ("finished_thickness", "stock_thickness", "face_loss")
    finished, stock, loss = (inputs[name] for name in names)
    glued = finished + inputs["trim"]
    count = next((n for n in range(1, MOST + 1) if made(n, stock, loss) >= glued - 1e-9), None)
    if count is None:
        return None
    rip = glued
    if count > 1:
        rip = float(brentq(lambda wide: made(count, wide, loss) - glued, 2 * loss, stock + 1))
    figures = {"strips": count, "rip_width": rip, "joints": count - 1, "glued_size": glued}
    figures["to_spare"] = stock - rip
    across = inputs["thickness" if wider else "part_width"]
    size = {"width": rip, "thickness": across} if wider else {"width": across, "thickness": rip}
    piece = {"count": count, "length": inputs["length"], **size}
    if count == 1:
        return Expected(figures=figures, pieces=[piece], absent=("outer_strip", "clamps"))
    figures["outer_strip"] = rip - loss
    figures["clamps"] = max(2, -(-int(inputs["length"] * 8) // 64))
    return Expected(figures=figures, pieces=[piece])
