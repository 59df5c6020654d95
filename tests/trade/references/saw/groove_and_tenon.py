"""Enumeration and shapely: every stack of the kit is put together, and passes are cut out of a bar.

Thicknesses are whole ten-thousandths of an inch, so that sums are exact. A groove takes as many
passes as it needs until the boxes cut from both faces, and then from the middle, leave no rib; a
tenon's cheek as many as cover it from the shoulder out.
"""

import itertools
from random import Random
from typing import Any

from shapely import box, unary_union

from tests.trade.references.expected import Expected

SLUG = "groove-and-tenon"
UNIT = 10_000
RATTLES = 156  # 1/64, rounded down: sizes are drawn so that none lies on it.


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "panel_thickness": random.randint(900, 6000) / UNIT,
        "stock_thickness": random.choice([0.75, 0.8125, 1.0, 1.375, 1.75]),
        "slack": random.randint(0, 12) / 1000,
        "groove_depth": random.choice([0.25, 0.375, 0.5, 0.625]),
        "tenon_play": random.choice([0.0, 0.003]),
        "cut_with": random.choice(["stack", "stack", "stack", "blade", "bit"]),
    }
    if random.random() < 0.3:
        inputs["tenon_length"] = random.randint(4, 24) / 16
    if inputs["cut_with"] == "bit":
        inputs["bit"] = random.choice([1250, 1875, 2500]) / UNIT
    elif inputs["cut_with"] == "blade":
        inputs["kerf"] = random.choice([938, 1250]) / UNIT
    else:
        inputs["outer_blade"] = random.choice([938, 1250]) / UNIT
        inputs["shims_per_gap"] = random.choice([200, 310]) / UNIT
        inputs["chippers"] = _some(random, [1250, 625, 938], 4)
        inputs["shims"] = _some(random, [40, 50, 100, 200], 3)
    return inputs


def _some(random: Random, sizes: list[int], most: int) -> list[dict[str, Any]]:
    picked = random.sample(sizes, random.randint(0, 2))
    return [{"thickness": size / UNIT, "count": random.randint(1, most)} for size in picked]


def _units(inches: float) -> int:
    return round(inches * UNIT)


def _stacks(inputs: dict[str, Any]) -> list[tuple[int, int]]:
    """Every stack that may be put together: its width, and the room its gaps leave for shims."""
    per_gap, outer = _units(inputs["shims_per_gap"]), _units(inputs["outer_blade"])
    rows = [(row, False) for row in inputs["chippers"]] + [(row, True) for row in inputs["shims"]]
    found = []
    for counts in itertools.product(*[range(row["count"] + 1) for row, _ in rows]):
        sizes = [n * _units(row["thickness"]) for n, (row, _) in zip(counts, rows, strict=True)]
        shims = sum(size for size, (_, is_shim) in zip(sizes, rows, strict=True) if is_shim)
        gaps = 1 + sum(n for n, (_, is_shim) in zip(counts, rows, strict=True) if not is_shim)
        if shims <= gaps * per_gap:
            found.append((2 * outer + sum(sizes), gaps * per_gap - shims))
    return found


def _plowed(inputs: dict[str, Any], wanted: int) -> tuple[int, int, int] | None:
    """What one pass cuts, how wide the groove gets, and the shim that is added."""
    if inputs["cut_with"] != "stack":
        cutter = _units(inputs["bit" if inputs["cut_with"] == "bit" else "kerf"])
        return None if cutter > wanted + RATTLES else (cutter, max(cutter, wanted), 0)
    outer = _units(inputs["outer_blade"])
    if 2 * outer > wanted + RATTLES:
        return None if outer > wanted + RATTLES else (outer, max(outer, wanted), 0)
    stacks = _stacks(inputs)
    enough = [width for width, _ in stacks if wanted <= width <= wanted + RATTLES]
    if enough:
        return min(enough), min(enough), 0
    below = max(width for width, _ in stacks if width < wanted)
    return below, wanted, wanted - below


def _passes(stock: int, groove: int, cut: int) -> int:
    """Cut boxes out of the edge until the groove is clear: both faces to the fence, the middle."""
    wall = (stock - groove) / 2
    bare = box(wall, 0, wall + groove, 1)
    starts = [wall, stock - wall - cut]
    middle = wall + cut
    while len(starts) < 60:
        starts.append(middle)
        middle += cut
    for number in range(1, 60):
        done = unary_union([box(at, 0, at + cut, 1) for at in starts[:number]])
        if bare.difference(done).area < 1e-6 * stock:
            return number
    raise AssertionError("never done")


def _cheek(length: int, cut: int) -> int:
    """Sweep the cutter out from the shoulder until nothing of the cheek is left."""
    left, number = box(0, 0, length, 1), 0
    while left.area > 1e-6:
        left = left.difference(box(length - (number + 1) * cut, 0, length - number * cut, 1))
        number += 1
    return number


def _rooms(inputs: dict[str, Any], width: int) -> set[int]:
    return {room for stack, room in _stacks(inputs) if stack == width}


def expect(inputs: dict[str, Any]) -> Expected | None:
    wanted = _units(inputs["panel_thickness"]) + _units(inputs["slack"])
    stock = _units(inputs["stock_thickness"])
    plowed = _plowed(inputs, wanted)
    if plowed is None:
        return None
    cut, groove, shim = plowed
    if groove >= stock:
        return None
    added = shim if shim and max(_rooms(inputs, cut)) >= shim else 0
    cut += added
    tenon = inputs.get("tenon_length", inputs["groove_depth"] - 1 / 32)
    figures: dict[str, Any] = {
        "groove_width": groove / UNIT,
        "stack_width": cut / UNIT,
        "groove_passes": _passes(stock, groove, cut),
        "panel_slack": groove / UNIT - inputs["panel_thickness"],
        "tenon_thickness": groove / UNIT - inputs["tenon_play"],
        "tenon_length": tenon,
        "wall": (stock - groove) / 2 / UNIT,
        "shoulder_depth": (stock - groove) / 2 / UNIT + inputs["tenon_play"] / 2,
    }
    absent = ["shim_added"]
    if added:
        figures["shim_added"], absent = added / UNIT, []
    passes = _cheek(round(tenon * UNIT * 16), cut * 16)
    if passes > 1:
        figures["passes"] = passes
    else:
        figures["bury"] = cut / UNIT - tenon
    return Expected(figures=figures, absent=tuple(absent))
