"""Lines in the plan, met by solving equations: the backs on the walls, the faces a thickness off.

Each wall is laid along the x axis with its neighbors at their angles, and every end of a piece is
the pair of points where its back and its face meet the line that stops them: the next wall, the
next trim's face, or the line through both corners of a miter. Settings are slopes of those pairs.
Doors are taken out of a wall as one takes an interval out of an interval; scarfs are counted up
until no piece is longer than the stick.
"""

from dataclasses import dataclass
from itertools import pairwise
from random import Random
from typing import Any

import numpy as np
from shapely import LineString, MultiLineString

from tests.trade.references.expected import Expected

SLUG = "trim-run"
MOST_PARTS = 12
HAIR = 1e-9
Point = tuple[float, float]


def draw(random: Random) -> dict[str, Any]:
    count = random.randint(1, 6)
    inputs: dict[str, Any] = {
        "walls": [wall(random) for _ in range(count)],
        "trim_thickness": random.choice([0.5, 0.625, 0.75, 1.0]),
        "inside_joint": random.choice(["cope", "miter", "butt"]),
        "closed": random.random() < 0.4,
        "first_end": random.choice(["wall", "casing", "open"]),
    }
    if inputs["closed"] and count < 3:
        inputs["walls"] += [wall(random) for _ in range(3 - count)]
    if inputs["closed"]:
        inputs["walls"][-1]["turn"] = random.choice(["inside", "outside"])
    if random.random() < 0.4:
        inputs["openings"] = openings(random, inputs["walls"])
    if random.random() < 0.4:
        inputs |= {"stick": random.choice([96, 144, 192]), "scarf": random.choice([30, 45])}
    if inputs["inside_joint"] == "cope" and random.random() < 0.3:
        inputs["spring"] = 0.0625
    return inputs


def wall(random: Random) -> dict[str, Any]:
    turns = ["inside"] * 4 + ["outside"] * 3 + ["casing", "open"]
    return {
        "length": random.randint(16 * 3, 16 * 240) / 16,
        "turn": random.choice(turns),
        "corner": random.choice([90, 90, random.randint(45, 150)]),
    }


def openings(random: Random, walls: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """Up to two doors in a wall, some of them in its corner."""
    found = []
    for number, each in enumerate(walls):
        edges = sorted(random.sample(range(int(each["length"])), 2 * random.randint(0, 1)))
        if edges and random.random() < 0.2:
            edges[0] = 0
        for left, right in zip(edges[::2], edges[1::2], strict=True):
            found.append(
                {
                    "wall": number + 1,
                    "from_left": left,
                    "width": right - left,
                    "stop": random.choice(["casing", "open"]),
                }
            )
    random.shuffle(found)
    return found


@dataclass
class End:
    """Back and face of an end: x along the wall from its left corner, y into the room."""

    joint: str
    back: Point
    face: Point
    note: str = ""


@dataclass
class Cut:
    """One piece."""

    tag: str
    left: End
    right: End

    @property
    def marked(self) -> float:
        start = self.left.face[0] if self.left.note == "over" else self.left.back[0]
        return self.right.back[0] - start

    @property
    def points(self) -> float:
        xs = [self.left.back[0], self.left.face[0], self.right.back[0], self.right.face[0]]
        return max(xs) - min(xs)


def crossing(one: tuple[Point, Point], other: tuple[Point, Point]) -> Point:
    """Where two lines, each a point and a way, meet."""
    (p, u), (q, v) = ((np.array(a), np.array(b)) for a, b in (one, other))
    along = np.linalg.solve(np.column_stack([u, -v]), q - p)
    met = p + along[0] * u
    return float(met[0]), float(met[1])


def corner_end(kind: str, corner: float, thick: float, length: float) -> tuple[Point, Point]:
    """The right end of a piece whose wall ends at `length`; the next wall turns by the corner.

    The room lies at y > 0. At an inside corner the next wall leaves the corner into the room, at
    an outside one away from it.
    """
    turn = np.radians(corner)
    is_outside = kind == "outside"
    way = (-np.cos(turn), -np.sin(turn)) if is_outside else (-np.cos(turn), np.sin(turn))
    # Into the room from the next wall: back toward the piece, or ahead of it around the corner.
    off = (np.sin(turn), -np.cos(turn)) if is_outside else (-np.sin(turn), -np.cos(turn))
    at = (length, 0.0)
    next_back = (at, way)
    next_face = ((length + thick * off[0], thick * off[1]), way)
    own_back, own_face = ((0.0, 0.0), (1.0, 0.0)), ((0.0, thick), (1.0, 0.0))
    if kind == "through":
        return at, crossing(own_face, next_back)
    if kind == "butt":
        return crossing(own_back, next_face), crossing(own_face, next_face)
    return at, crossing(own_face, next_face)


def at_corner(kind: str, corner: float, thick: float, length: float, on_left: bool) -> End:
    back, face = corner_end(kind, corner, thick, length)
    if on_left:
        back, face = (length - back[0], back[1]), (length - face[0], face[1])
    names = {"through": "square", "outside": "miter"}
    joint = names.get(kind, kind)
    if kind == "through" and abs(face[0] - back[0]) > 1e-9:
        joint = "off square"
    return End(joint, back, face)


def parts(inputs: dict[str, Any], number: int) -> list[tuple[str, float, float, str, str]]:
    """Tag, start, end, and what bounds each part of a wall that gets trim."""
    length = float(inputs["walls"][number]["length"])
    inside = [o for o in inputs.get("openings", []) if o["wall"] == number + 1]
    inside.sort(key=lambda each: each["from_left"])
    if not inside:
        return [(str(number + 1), 0.0, length, "", "")]
    left = LineString([(0, 0), (length, 0)])
    taken = [(o["from_left"], o["from_left"] + o["width"]) for o in inside]
    left = left.difference(MultiLineString([[(a, 0), (b, 0)] for a, b in taken]))
    lines = [line for line in getattr(left, "geoms", [left]) if line.length > HAIR]
    found = []
    for line in lines:
        start, end = line.bounds[0], line.bounds[2]
        before = [o for o, (_, b) in zip(inside, taken, strict=True) if b <= start + HAIR]
        after = [o for o, (a, _) in zip(inside, taken, strict=True) if a >= end - HAIR]
        stops = (before[-1]["stop"] if before else "", after[0]["stop"] if after else "")
        found.append((f"{number + 1}.{len(before) + 1}", start, end, *stops))
    return sorted(found, key=lambda each: each[1])


def reaches(inputs: dict[str, Any], number: int, side: str) -> bool:
    found = parts(inputs, number)
    if not found:
        return False
    length = inputs["walls"][number]["length"]
    return found[0][1] <= HAIR if side == "left" else found[-1][2] >= length - HAIR


def meets(inputs: dict[str, Any], number: int) -> bool:
    walls = inputs["walls"]
    if walls[number]["turn"] in ("casing", "open"):
        return False
    if number + 1 == len(walls) and not inputs["closed"]:
        return False
    after = (number + 1) % len(walls)
    return reaches(inputs, number, "right") and reaches(inputs, after, "left")


def kinds_at(inputs: dict[str, Any], number: int) -> tuple[str, str]:
    """How the trim left of a wall's right corner ends there, and how that after it begins.

    What goes up later dies into what is there; the first piece of a closed run is there already.
    """
    walls, joint = inputs["walls"], inputs["inside_joint"]
    turn, is_last = walls[number]["turn"], number + 1 == len(walls)
    if turn in ("casing", "open"):
        return turn, turn
    if is_last and not inputs["closed"]:
        return ("through" if turn == "inside" else "outside"), ""
    if not meets(inputs, number):
        return ("through", "through") if turn == "inside" else ("open", "open")
    if turn == "outside" or joint == "miter":
        return (turn, turn) if turn == "outside" else ("miter", "miter")
    return (joint, "through") if is_last else ("through", joint)


def end_of(
    inputs: dict[str, Any], number: int, part: tuple[str, float, float, str, str], on_left: bool
) -> tuple[str, End]:
    """One end of a part of a wall, and its kind."""
    _, start, end, *stops = part
    at, stop = (start, stops[0]) if on_left else (end, stops[1])
    walls, thick = inputs["walls"], inputs["trim_thickness"]
    if stop:
        return stop, End("square", (at, 0.0), (at, thick))
    if on_left and number == 0 and not inputs["closed"]:
        kind, corner = inputs["first_end"], 90.0
    else:
        corner_at = number - 1 if on_left else number
        kind = kinds_at(inputs, corner_at % len(walls))[1 if on_left else 0]
        corner = walls[corner_at]["corner"]
    if kind in ("wall", "casing", "open"):
        return kind, End("square", (at, 0.0), (at, thick))
    return kind, at_corner(kind, corner, thick, walls[number]["length"], on_left)


def slope(end: End) -> float:
    return abs(float(np.degrees(np.arctan2(end.face[0] - end.back[0], end.face[1] - end.back[1]))))


def stands(inputs: dict[str, Any], number: int, part: Any, ends: list[tuple[str, End]]) -> bool:
    """A coped end stands as a butted one: there must be a back and a face left."""
    (left_kind, left), (right_kind, right) = ends
    walls, thick = inputs["walls"], inputs["trim_thickness"]
    if left_kind == "cope":
        corner = walls[number - 1]["corner"]
        left = at_corner("butt", corner, thick, walls[number]["length"], True)
    if right_kind == "cope":
        corner = walls[number]["corner"]
        right = at_corner("butt", corner, thick, walls[number]["length"], False)
    cut_face = ends[1][1].face[0] - ends[0][1].face[0]
    backs, faces = right.back[0] - left.back[0], right.face[0] - left.face[0]
    return min(backs, faces, cut_face) > 0


def scarfed(inputs: dict[str, Any], cut: Cut) -> list[Cut] | None:
    """The fewest like pieces that lap each other and each come out of a stick."""
    stick = inputs.get("stick")
    if stick is None or cut.points <= stick + HAIR:
        return [cut]
    thick = inputs["trim_thickness"]
    lap = thick * float(np.tan(np.radians(inputs["scarf"])))
    count = 2
    while (cut.points + (count - 1) * lap) / count > stick + HAIR:
        count += 1
    if count > MOST_PARTS:
        return None
    each = (cut.points + (count - 1) * lap) / count
    first = min(cut.left.back[0], cut.left.face[0])
    ends: list[tuple[End, End]] = []
    for at in range(1, count):
        back = first + at * each - (at - 1) * lap
        pair = ((back, 0.0), (back - lap, thick))
        ends.append((End("scarf", *pair, "under"), End("scarf", *pair, "over")))
    lefts = [cut.left] + [after for _, after in ends]
    rights = [before for before, _ in ends] + [cut.right]
    return [
        Cut(cut.tag + "abcdefghijklmnop"[at], left, right)
        for at, (left, right) in enumerate(zip(lefts, rights, strict=True))
    ]


def expect(inputs: dict[str, Any]) -> Expected | None:
    walls = inputs["walls"]
    cuts: list[Cut] = []
    for number in range(len(walls)):
        for part in parts(inputs, number):
            ends = [end_of(inputs, number, part, on_left) for on_left in (True, False)]
            if not stands(inputs, number, part, ends):
                return None
            cut = Cut(part[0], ends[0][1], ends[1][1])
            kinds = [kind for kind, _ in ends]
            if "cope" in kinds and not {"open", "outside"} & set(kinds):
                x, y = cut.right.back
                spring = inputs.get("spring", 0.0)
                cut.right.back = (x + spring, y)
                cut.right.face = (cut.right.face[0] + spring, cut.right.face[1])
            made = scarfed(inputs, cut)
            if made is None:
                return None
            cuts += made
    if not cuts:
        return None
    corners = sum(meets(inputs, number) for number in range(len(walls)))
    scarfs = sum(cut.right.joint == "scarf" for cut in cuts)
    total = sum(cut.points for cut in cuts)
    return Expected(
        figures={
            "first_length": cuts[0].marked,
            "total_length": total,
            "to_buy": total + 2 * (corners + scarfs),
            "piece_count": len(cuts),
            "joint_count": corners + scarfs,
            "scarf_count": scarfs,
            "longest_piece": max(cut.points for cut in cuts),
        },
        pieces=[
            {
                "tag": cut.tag,
                "length": cut.marked,
                "thickness": inputs["trim_thickness"],
                "ends": [
                    {"joint": end.joint, "saw": slope(end), "bevel": 0.0}
                    for end in (cut.left, cut.right)
                ],
            }
            for cut in cuts
        ],
        words=words(cuts),
        tolerance=1e-6,
    )


def words(cuts: list[Cut]) -> tuple[str, ...]:
    """The verdict counts the pieces; two pieces of one wall that lap are named to each other."""
    count = "1 piece" if len(cuts) == 1 else f"{len(cuts)} pieces"
    laps = [one.tag for one, after in pairwise(cuts) if after.left.note == "over"]
    return (count, "Each scarf costs") if laps else (count,)
