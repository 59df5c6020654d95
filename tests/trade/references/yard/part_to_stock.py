"""One kind of board, sawn up in every way there is; sticks chosen by an integer program.

Layers, strips and pieces side by side are tried one after the other, in fractions; HiGHS then says
how many sticks of which length give so many pieces out of the least that is bought.
"""

from fractions import Fraction
from random import Random
from typing import Any

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp

from tests.trade.references.expected import Expected

SLUG = "part-to-stock"
LABELS = {"1x4": (1, 4), "1x6": (1, 6), "5/4x6": (1.25, 6), "2x4": (2, 4), "2x8": (2, 8)}
END, KERF = Fraction(1), Fraction(1, 8)


def draw(random: Random) -> dict[str, Any]:
    label = random.choice([*LABELS])
    nominal = LABELS[label]
    row: dict[str, Any] = {
        "label": label,
        "thickness": nominal[0] - random.randint(1, 8) / 16,
        "width": nominal[1] - random.randint(2, 16) / 16,
    }
    if random.random() < 0.6:
        row |= {"price": random.randint(50, 900) / 100}
        row["per"] = random.choice(["board-foot", "lineal-foot"])
    inputs: dict[str, Any] = {
        "thickness": random.randint(4, 40) / 16,
        "width": random.randint(8, 200) / 16,
        "length": random.randint(80, 900) / 8,
        "count": random.randint(1, 20),
        "face_allowance": random.choice([0, 1 / 16, 1 / 8]),
        "edge_allowance": random.choice([0, 1 / 16, 1 / 8]),
        "use": label,
        "yard": [row],
        "sold_in": random.choice(["set", "set", "random"]),
    }
    if inputs["sold_in"] == "set":
        feet = random.sample(range(8, 21), random.randint(1, 4))
        inputs["sold_lengths"] = [{"length": each} for each in feet]
    return inputs


def least(count: int, lengths: list[int], each: list[int]) -> float:
    """Return the inches of the sticks that give `count` pieces out of the least length."""
    best = milp(
        np.array(lengths),
        constraints=LinearConstraint(np.array(each)[None, :], lb=count),
        integrality=np.ones(len(lengths)),
        bounds=Bounds(0, np.inf),
    )
    return float(best.fun)


def glued(size: Fraction, stock: Fraction, loss: Fraction, most: int) -> int | None:
    """Return the fewest pieces, each made true on both sides, that make up a size."""
    return next((n for n in range(1, most + 1) if n * (stock - 2 * loss) >= size), None)


def expect(inputs: dict[str, Any]) -> Expected | None:
    (row,) = inputs["yard"]
    thick, wide = Fraction(row["thickness"]), Fraction(row["width"])
    face, edge = Fraction(inputs["face_allowance"]), Fraction(inputs["edge_allowance"])
    finished, width = Fraction(inputs["thickness"]), Fraction(inputs["width"])
    layers, strips = glued(finished, thick, face, 8), glued(width, wide, edge, 24)
    if layers is None or strips is None:
        return None
    rip = width / strips + 2 * edge
    across = max(n for n in range(1, 200) if n == 1 or n * rip + (n - 1) * KERF <= wide)
    pieces = inputs["count"] * layers * strips
    lengths = -(-pieces // across)
    cut = Fraction(inputs["length"]) + 2 * END
    inches = float(lengths * cut)
    absent: tuple[str, ...] = ("boards",)
    if inputs["sold_in"] == "set":
        sold = [12 * each["length"] for each in inputs["sold_lengths"]]
        each = [sum(1 for n in range(1, 99) if n * cut + (n - 1) * KERF <= s) for s in sold]
        if not max(each):
            return None
        inches, absent = least(lengths, sold, each), ()
    figures = {
        "best": row["label"],
        "lineal_feet": inches / 12,
        "to_mill": float((thick - finished / layers) / 2),
        "rip_width": float(rip),
        "cut_length": float(cut),
        "glue_lines": layers * strips - 1,
        "lengths": lengths,
    }
    nominal = LABELS[row["label"]]
    figures["board_feet"] = nominal[0] * nominal[1] * inches / 144
    if "price" in row:
        by_foot = row["per"] == "lineal-foot"
        figures["cost"] = row["price"] * figures["lineal_feet" if by_foot else "board_feet"]
    parts = finished * width * Fraction(inputs["length"]) * inputs["count"]
    figures["waste"] = 100 * (1 - float(parts) / (inches * float(thick * wide)))
    piece = {"count": pieces, "length": float(cut), "width": float(rip), "thickness": float(thick)}
    return Expected(figures=figures, pieces=[piece], absent=absent, tolerance=1e-6)
