"""The demo's job worked out from the tape's numbers alone, by linear systems and integer programs.

It knows nothing of the core: sizes are the solutions of the equations that close an opening, a
leaf, a wall (numpy), sticks and sheets the least cost over all ways to cut one (HiGHS).
"""

from collections.abc import Iterator
from dataclasses import dataclass, field
from math import floor
from typing import Any

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp

KERF = 1 / 8
TINY = 1e-9


@dataclass
class Tape:
    """What the tape and the catalog say, inches and dollars."""

    opening: tuple[float, float] = (30, 40)
    gap: float = 3 / 32
    stile: float = 2.25
    rails: tuple[float, float] = (2.25, 3)
    groove: float = 3 / 8
    play: float = 1 / 16
    hinge: float = 2
    offset: float = 2.5
    wall: tuple[float, float] = (120, 32)
    window: tuple[float, float, float] = (42, 36, 24)
    between: float = 3
    room: tuple[float, float] = (120, 96)
    door_at: float = 40
    slab: tuple[float, float] = (32, 80)
    side: float = 1 / 8
    floor: float = 1 / 2
    jamb: float = 3 / 4
    housing: float = 3 / 8
    stop: float = 3 / 8
    casing: float = 2.5
    reveal: float = 3 / 16
    latch: float = 36
    board: tuple[float, float, float, float] = (1.0, 0.25, 25, 6.5)
    """Longer, wider, percent of waste, dollars a board foot."""
    hand: tuple[float, float] = (48, 24)
    sheet: tuple[float, float, float] = (96, 48, 24)
    sticks: dict[str, list[tuple[float, float]]] = field(default_factory=lambda: {
        "molding": [(96, 9.8)], "base": [(144, 29), (192, 38)], "jamb": [(84, 21), (120, 30)],
        "stop": [(84, 5.5), (120, 8)], "casing": [(84, 12.6), (168, 24)],
    })  # fmt: skip


def solved(*equations: tuple[list[float], float]) -> list[float]:
    """Solve a square linear system: rows of factors, and what each adds up to."""
    left = np.array([factors for factors, _ in equations])
    return [float(x) for x in np.linalg.solve(left, np.array([whole for _, whole in equations]))]


def doors(tape: Tape) -> dict[str, Any]:
    """Two inset leaves: the opening, each leaf and each frame close up."""
    (wide, high), (top, bottom) = tape.opening, tape.rails
    tenon = tape.groove - 1 / 32
    # Leaf, sight between the stiles, rail, panel.
    leaf, _, rail, panel = solved(
        ([2, 0, 0, 0], wide - 3 * tape.gap),
        ([1, -1, 0, 0], 2 * tape.stile),
        ([0, -1, 1, 0], 2 * tenon),
        ([0, -1, 0, 1], 2 * (tape.groove - tape.play)),
    )
    height, _, panel_height = solved(
        ([1, 0, 0], high - 2 * tape.gap),
        ([1, -1, 0], top + bottom),
        ([0, -1, 1], 2 * (tape.groove - tape.play)),
    )
    more, wider, waste, price = tape.board
    parts = np.array(
        [[height, tape.stile]] * 4 + [[rail, top]] * 2 + [[rail, bottom]] * 2
    ) + np.array([more, wider])
    feet = float(np.prod(parts, axis=1).sum() / 144 * (1 + waste / 100))
    return {
        "leaf_width": leaf, "leaf_height": height, "panel_width": panel,
        "panel_height": panel_height, "cuts": [height] * 4 + [rail] * 4 + [panel_height] * 2,
        "feet": feet, "feet_cost": feet * price,
        "sheets": sheets(panel, panel_height, 2, tape),
        "hinge_lines": [tape.offset, height - tape.offset - tape.hinge],
        "hinges": 4,
    }  # fmt: skip


def sheets(width: float, length: float, count: int, tape: Tape) -> tuple[int, float]:
    """Return how many panels' sheets are bought, and their cost; the one on hand first."""

    def holds(sheet: tuple[float, float]) -> int:
        across = floor((sheet[1] + KERF) / (width + KERF) + TINY)
        return across * floor((sheet[0] + KERF) / (length + KERF) + TINY)

    left = max(0, count - holds(tape.hand))
    bought = -(-left // holds(tape.sheet[:2])) if left else 0
    return bought, bought * tape.sheet[2]


def frames(tape: Tape) -> list[float]:
    """Two frames each side of the window and one under it: every row of the wall closes up."""
    (wide, high), (left, window, under) = tape.wall, tape.window
    gap = tape.between
    sides = [left, wide - left - window]
    cuts = []
    for span in sides:
        (frame,) = solved(([2], span - 3 * gap))
        cuts += [frame] * 4 + [high - 2 * gap] * 4
    return [*cuts, window, window, under - 2 * gap, under - 2 * gap]


def cased(tape: Tape) -> dict[str, Any]:
    """The jamb around the slab, its stops, the casing to its long points, the hinges' lines."""
    wide = tape.slab[0] + 2 * tape.side
    high = tape.slab[1] + tape.side + tape.floor
    outside = wide + 2 * (tape.reveal + tape.casing)
    top = 5 - tape.side
    bottom = tape.slab[1] - (10 - tape.floor) - 3.5
    return {
        "jamb": [wide + 2 * tape.housing, high + tape.jamb, high + tape.jamb],
        "stop": [wide, high - tape.stop, high - tape.stop],
        "casing": [outside, *[high + tape.reveal + tape.casing] * 2],
        "outside": outside,
        "latch": tape.latch - tape.floor,
        "hinge_lines": [top, (top + bottom) / 2, bottom],
        "tight": tight(tape.slab[0], 1.375, tape.side, tape.side),
    }


def tight(width: float, thick: float, hinge_gap: float, strike_gap: float) -> float:
    """Return how near the far corner of a square strike edge comes to the jamb as it turns.

    The pin is half the hinge gap from the leaf's edge and 1/2 before its face; the corner is turned
    about it by complex numbers, and the nearest taken while it is still inside the jamb's edge,
    which ends where the leaf's near face was.
    """
    corner = complex(width + hinge_gap / 2, -(0.5 + thick))
    turned = corner * np.exp(1j * np.linspace(0, np.pi / 2, 200_001))
    inside = turned[-turned.imag >= 0.5]
    return float(width + hinge_gap / 2 + strike_gap - inside.real.max())


def base(tape: Tape, outside: float) -> list[float]:
    """Round the room, each piece its wall; the door's wall in two."""
    long, short = tape.room
    return [long, short, tape.door_at, long - tape.door_at - outside, short]


def least_cost(cuts: list[float], sold: list[tuple[float, float]]) -> float:
    """Return what sticks cost at least: an integer program over all ways to cut each."""
    sizes = sorted({round(cut, 9) for cut in cuts}, reverse=True)
    wanted = [sum(abs(cut - size) < 1e-6 for cut in cuts) for size in sizes]
    columns, costs = [], []
    for length, price in sold:
        for way in ways(sizes, wanted, length + KERF):
            columns.append(way)
            costs.append(price)
    done = milp(
        np.array(costs), integrality=np.ones(len(costs)), bounds=Bounds(0, np.inf),
        constraints=LinearConstraint(np.array(columns).T, lb=np.array(wanted)),
    )  # fmt: skip
    assert done.success
    return float(done.fun)


def ways(sizes: list[float], wanted: list[int], room: float) -> Iterator[tuple[int, ...]]:
    """Yield every way to cut a stick, a kerf with each piece."""
    if not sizes:
        yield ()
        return
    most = min(wanted[0], floor((room + TINY) / (sizes[0] + KERF)))
    for number in range(most + 1):
        for rest in ways(sizes[1:], wanted[1:], room - number * (sizes[0] + KERF)):
            yield (number, *rest)
