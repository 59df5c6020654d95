"""Sweep: the leaf is turned in small steps and the nearest place is measured at each of them.

numpy turns the section's corners about the pin and measures how far they stay from the jamb's
corner and faces, and the jamb's corner from the section's sides. The bevel and the gap that are
needed are found by trying, with scipy's root finder, not by any formula. The hinge side is measured
on a row of levels through the leaf.
"""

from random import Random
from typing import Any

import numpy as np
from scipy.optimize import brentq

from tests.trade.references.expected import Expected

SLUG = "door-swing"
SLIGHT = 1 / 128  # Nobody planes off so little.
NEAR = 1e-6  # Closer to a limit than this, the sweep does not decide.


def draw(random: Random) -> dict[str, Any]:
    thick, gap = round(random.uniform(0.75, 2.5), 3), round(random.uniform(0.05, 0.4), 3)
    inputs: dict[str, Any] = {
        "leaf_width": round(random.uniform(10, 48), 3),
        "door_thickness": thick,
        "pin_out": round(random.uniform(0, 1), 3),
        "strike_gap": gap,
        "clearance": round(gap * random.uniform(0.02, 0.8), 4),
        "land": random.choice([0, 0, round(thick * random.uniform(0, 0.2), 3)]),
        "hinge_gap": round(random.uniform(0.03, 0.25), 3),
        "opening": random.randint(0, 170),
    }
    if random.random() < 0.5:
        inputs["pin_in"] = round(random.uniform(0, 0.25), 3)
    if random.random() < 0.4:
        inputs["jamb_closes_in"] = round(random.uniform(-0.1, 0.2), 3)
    if random.random() < 0.3:
        inputs["hinge_bevel"] = random.choice([0, 2, 3, 4.5])
    if random.random() < 0.4:
        inputs["meets"] = "leaf"
        inputs["opens"] = random.choice(["one", "together"])
        if random.random() < 0.5:
            inputs["other_width"] = round(random.uniform(10, 30), 3)
    return inputs


class Door:
    """One leaf by its width; everything else as asked."""

    def __init__(self, inputs: dict[str, Any], width: float) -> None:
        self.width, self.thick = width, inputs["door_thickness"]
        self.land, self.gap = inputs["land"], inputs["strike_gap"]
        self.pin = np.array([-inputs.get("pin_in", inputs["hinge_gap"] / 2), -inputs["pin_out"]])
        self.together = inputs.get("opens") == "together"

    def section(self, relief: float) -> np.ndarray:
        edge = [(self.width, self.land)] if relief and self.land else []
        corners = [(0.0, 0.0), (self.width, 0.0), *edge, (self.width - relief, self.thick)]
        return np.array([*corners, (0.0, self.thick)])

    def gaps(self, relief: float, opening: np.ndarray, gap: float) -> np.ndarray:
        """The gap at each opening: (openings,)."""
        turn = np.radians(opening)[:, None]
        x, y = (self.section(relief) - self.pin).T
        across = x * np.cos(turn) + y * np.sin(turn) + self.pin[0]
        down = y * np.cos(turn) - x * np.sin(turn) + self.pin[1]
        if self.together:
            half: np.ndarray = 2 * (self.width + gap / 2 - across.max(axis=1))
            return half
        jamb = np.array([self.width + gap, 0.0])
        corners = np.hypot(np.maximum(0, jamb[0] - across), np.maximum(0, jamb[1] - down))
        sides = side_distances(across, down, jamb)
        nearest: np.ndarray = np.minimum(corners.min(axis=1), sides.min(axis=1))
        nearest[holds(across, down, jamb)] = 0.0
        return nearest

    def tightest(self, relief: float = 0.0, gap: float | None = None) -> tuple[float, float]:
        """The smallest gap of the whole swing, and where."""
        gap = self.gap if gap is None else gap
        openings = np.linspace(0, 90, 241)
        found = np.pad(self.gaps(relief, openings, gap), 1, constant_values=np.inf)
        dips = openings[(found[1:-1] <= found[:-2]) & (found[1:-1] <= found[2:])]
        if found.min() == 0:
            dips = openings[found[1:-1] == 0][:1]
        return min(self.dip(relief, gap, float(dip)) for dip in dips)

    def dip(self, relief: float, gap: float, near: float) -> tuple[float, float]:
        """The smallest gap near an opening, looked at closer and closer."""
        reach = 0.4
        for _ in range(4):
            openings = np.linspace(max(0.0, near - reach), near + reach, 61)
            found = self.gaps(relief, openings, gap)
            near, reach = float(openings[found.argmin()]), reach / 25
        return float(found.min()), near


def side_distances(across: np.ndarray, down: np.ndarray, point: np.ndarray) -> np.ndarray:
    """How far a point is from each side of a section, at each opening."""
    along_x = np.roll(across, -1, axis=1) - across
    along_y = np.roll(down, -1, axis=1) - down
    off_x, off_y = point[0] - across, point[1] - down
    share = (off_x * along_x + off_y * along_y) / (along_x**2 + along_y**2)
    share = np.clip(share, 0, 1)
    distances: np.ndarray = np.hypot(off_x - share * along_x, off_y - share * along_y)
    return distances


def holds(across: np.ndarray, down: np.ndarray, point: np.ndarray) -> np.ndarray:
    """Whether a section holds a point, at each opening."""
    along_x = np.roll(across, -1, axis=1) - across
    along_y = np.roll(down, -1, axis=1) - down
    turns = along_x * (point[1] - down) - along_y * (point[0] - across)
    inside: np.ndarray = (turns > 0).all(axis=1)
    return inside


def relief_needed(door: Door, keep: float) -> float | None:
    """What must come off the far corner; None where nothing does it."""
    if door.tightest()[0] >= keep:
        return 0.0
    most = 0.999 * door.width
    if door.tightest(most)[0] < keep:
        return None
    return float(brentq(lambda off: door.tightest(off)[0] - keep, 1e-9, most, xtol=1e-9))


def expect(inputs: dict[str, Any]) -> Expected | None:
    keep, width = inputs["clearance"], inputs["leaf_width"]
    doors = [Door(inputs, width)]
    if inputs.get("meets") == "leaf":
        doors.append(Door(inputs, inputs.get("other_width", width)))
    reliefs = [relief_needed(door, keep) for door in doors]
    if None in reliefs:
        return None
    figures: dict[str, Any] = {}
    for prefix, door, relief in zip(("", "other_"), doors, reliefs, strict=False):
        figures |= leaf_figures(prefix, door, relief or 0.0)
    door = doors[0]
    standard = door.tightest((door.thick - door.land) / 16)[0]
    if standard > 0:
        figures["standard_gap"] = standard
    if abs(standard - keep) > NEAR:
        figures["standard_enough"] = "yes" if standard > keep else "no"
    figures["gap_needed"] = brentq(lambda gap: door.tightest(0.0, gap)[0] - keep, 0, 9, xtol=1e-9)
    opening = np.array([float(inputs["opening"])])
    figures["opening_gap"] = max(0.0, float(door.gaps(reliefs[0] or 0.0, opening, door.gap)[0]))
    tight, at = door.tightest()
    if tight > 0 or door.together:
        figures["tight_at"] = at
    side, words = hinge_side(inputs)
    is_beveled = max(relief or 0.0 for relief in reliefs) >= SLIGHT
    if not is_beveled and not words:
        is_planed = side["hinge_relief"] >= SLIGHT
        words = ("strike edge stays square",) if is_planed else ("No bevel needed",)
    elif is_beveled:
        words = (*words, "strike edge") if len(doors) == 1 else words
    return Expected(figures=figures | side, words=words, tolerance=5e-6)


def leaf_figures(prefix: str, door: Door, relief: float) -> dict[str, Any]:
    tight = door.tightest()[0]
    angle = np.degrees(np.arctan2(relief, door.thick - door.land))
    figures = {prefix + "back_relief": relief, prefix + "bevel_angle": float(angle)}
    if tight > 0 or door.together:
        figures[prefix + "tight_gap"] = tight
    return figures


def hinge_side(inputs: dict[str, Any]) -> tuple[dict[str, Any], tuple[str, ...]]:
    """The closed hinge side level by level: jamb and edge as two slanting lines."""
    thick, gap, keep = inputs["door_thickness"], inputs["hinge_gap"], inputs["clearance"]
    levels = np.linspace(0, 1, 101)
    jamb = -gap + inputs.get("jamb_closes_in", 0) * levels

    def narrowest(relief: float) -> float:
        return float((relief * levels - jamb).min())

    least = min(keep, gap)
    needed = 0.0
    if narrowest(0.0) < least:
        # The narrowest place can only be the far face: give it back there.
        needed = float(brentq(lambda off: off - jamb[-1] - least, 0, 9, xtol=1e-12))
    relief, words = needed, ()
    if "hinge_bevel" in inputs:
        relief = thick * np.tan(np.radians(inputs["hinge_bevel"]))
        if relief < needed - NEAR:
            words = ("or it binds",)
    angle = float(np.degrees(np.arctan2(relief, thick)))
    far = float(relief - jamb[-1])
    return {"hinge_far_gap": far, "hinge_relief": relief, "hinge_bevel_angle": angle}, words
