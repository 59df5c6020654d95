"""Polygons and trying everything out.

The wall is a rectangle; openings grown by their margin are taken out of its middle strip, and what
is left are the runs. How many frames each run gets is found by trying every way to share them and
keeping the one whose widths, widest first, are smallest. Frames are rings of four sides and
blocks; a plate meets them where the shapes share area.
"""

from itertools import product
from random import Random
from typing import Any

import shapely

from tests.trade.references.expected import Expected

SLUG = "wall-frames"
HAIR = 1e-7
MOST = 40


def sixteenths(random: Random, low: float, high: float) -> float:
    return random.randint(int(low * 16), int(high * 16)) / 16


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "length": sixteenths(random, 40, 200),
        "height": sixteenths(random, 24, 100),
        "trim_width": sixteenths(random, 0.75, 3),
        "between": sixteenths(random, 0, 5),
    }
    for name in ("end_margin", "casing_margin", "top_margin", "bottom_margin"):
        if random.random() < 0.3:
            inputs[name] = sixteenths(random, 0, 6)
    if random.random() < 0.7:
        inputs["count"] = random.randint(1, 7)
    else:
        inputs["target_width"] = sixteenths(random, 8, 50)
    if random.random() < 0.6:
        inputs["openings"] = openings(random, inputs["length"], inputs["height"])
    if random.random() < 0.3:
        inputs |= {"block": "stop", "block_size": inputs["trim_width"] + random.choice([0, 0.5])}
    elif random.random() < 0.3:
        size = inputs["trim_width"] + random.choice([0, 0.5])
        inputs |= {"block": "notch", "block_size": size, "set_in": inputs["trim_width"] / 4}
    if random.random() < 0.6:
        inputs["obstacles"] = [
            {
                "center": sixteenths(random, 2, inputs["length"] - 2),
                "up": sixteenths(random, 2, inputs["height"] - 2),
            }
            for _ in range(random.randint(1, 2))
        ]
    return inputs


def openings(random: Random, length: float, height: float) -> list[dict[str, Any]]:
    """One or two openings, none over the other."""
    count = random.randint(1, 2)
    edges = sorted(random.sample(range(int(length)), 2 * count))
    found = []
    for left, right in zip(edges[::2], edges[1::2], strict=True):
        each: dict[str, Any] = {"from_left": left, "width": right - left}
        bottom, top = sorted(sixteenths(random, 1, height) for _ in range(2))
        if random.random() < 0.7:
            each["bottom"] = bottom
        if random.random() < 0.7 and top > bottom:
            each["top"] = top
        found.append(each)
    random.shuffle(found)
    return found


class Wall:
    def __init__(self, inputs: dict[str, Any]) -> None:
        self.inputs = inputs
        self.between = inputs["between"]
        self.end = inputs.get("end_margin", self.between)
        self.casing = inputs.get("casing_margin", self.between)
        top = inputs.get("top_margin", self.between)
        self.low = inputs.get("bottom_margin", top)
        self.high = inputs["height"] - top
        self.trim = inputs["trim_width"]
        self.block = inputs.get("block_size", 0.0)
        self.set_in = inputs.get("set_in", 0.0)
        self.openings = sorted(inputs.get("openings", []), key=lambda each: each["from_left"])

    @property
    def least(self) -> float:
        """What the corners of one frame take of its width or height."""
        return 2 * max(self.trim, self.set_in + self.block)

    def runs(self) -> list[tuple[float, float]]:
        """Where each run can stand; turned round where its margins cross."""
        edges = [self.end]
        for each in self.openings:
            edges += [each["from_left"] - self.casing]
            edges += [each["from_left"] + each["width"] + self.casing]
        edges.append(self.inputs["length"] - self.end)
        return list(zip(edges[::2], edges[1::2], strict=True))

    def width(self, run: tuple[float, float], count: int) -> float:
        return (run[1] - run[0] - (count - 1) * self.between) / count

    def most(self, run: tuple[float, float]) -> int:
        count = 0
        while self.width(run, count + 1) > self.least + HAIR:
            count += 1
            if count > 200:
                break
        return count

    def frames(self, counts: tuple[int, ...]) -> list[tuple[str, Any]]:
        """Kind and outer rectangle of each frame, in their order."""
        found: list[tuple[str, Any]] = []
        for at, run in enumerate(self.runs()):
            for index in range(counts[at]):
                wide = self.width(run, counts[at])
                left = run[0] + index * (wide + self.between)
                found.append(("run", shapely.box(left, self.low, left + wide, self.high)))
            if at < len(self.openings):
                found += self.around(self.openings[at])
        return found

    def around(self, opening: dict[str, Any]) -> list[tuple[str, Any]]:
        """What is left of the strip over and under an opening when its margin is taken off."""
        left, right = opening["from_left"], opening["from_left"] + opening["width"]
        strip = shapely.box(left, self.low, right, self.high)
        top, bottom = opening.get("top"), opening.get("bottom")
        found = []
        for kind, edge, keeps in (("under", bottom, -1e6), ("over", top, 1e6)):
            if edge is None:
                continue
            start = edge - self.casing if kind == "under" else edge + self.casing
            half = shapely.box(left, min(start, keeps), right, max(start, keeps))
            part = strip.intersection(half)
            x0, y0, x1, y1 = part.bounds if part.area else (0, 0, 0, 0)
            if min(x1 - x0, y1 - y0) > self.least + HAIR:
                found.append((kind, part))
        return found

    def ring(self, outer: Any) -> Any:
        x0, y0, x1, y1 = outer.bounds
        trim, block, off = self.trim, self.block, self.set_in
        ring = outer.difference(shapely.box(x0 + trim, y0 + trim, x1 - trim, y1 - trim))
        corners = [
            shapely.box(x, y, x + block, y + block)
            for x in (x0 + off, x1 - off - block)
            for y in (y0 + off, y1 - off - block)
        ]
        return shapely.union_all([ring, *corners]) if block else ring


def counts_of(wall: Wall) -> tuple[int, ...] | None:
    runs = wall.runs()
    most = [wall.most(run) for run in runs]
    if "target_width" in wall.inputs:
        target = wall.inputs["target_width"]
        tries = [range(1, each + 1) for each in most]
        return tuple(
            min(each, key=lambda n, run=run: (round(abs(wall.width(run, n) - target), 9), n))
            if each
            else 0
            for run, each in zip(runs, tries, strict=True)
        )
    total = wall.inputs["count"]
    ways = [
        way
        for way in product(*[range(min(1, each), min(each, total) + 1) for each in most])
        if sum(way) == total
    ]

    def widths(way: tuple[int, ...]) -> list[float]:
        found = [wall.width(run, n) for run, n in zip(runs, way, strict=True) if n]
        return [round(each, 9) for each in sorted(found, reverse=True)]

    if not ways or not sum(most):
        return None
    best = min(ways, key=widths)
    alike = [way for way in ways if widths(way) == widths(best)]
    return max(alike)  # Of ways as good, the left runs get more.


def is_refused(wall: Wall) -> bool:
    for one in wall.openings:
        if one.get("top") is not None and one["top"] <= one.get("bottom", 0.0):
            return True
    return bool(wall.high - wall.low <= wall.least)


def expect(inputs: dict[str, Any]) -> Expected | None:
    wall = Wall(inputs)
    if is_refused(wall):
        return None
    counts = counts_of(wall)
    if counts is None or sum(counts) > MOST:
        return None
    frames = wall.frames(counts)
    if not frames:
        return None
    x0, y0, x1, y1 = frames[0][1].bounds
    total = sum(outer.length for _, outer in frames)
    if inputs.get("block") == "stop":
        total -= 8 * wall.block * len(frames)
    plates = [
        shapely.box(o["center"] - 1.375, o["up"] - 2.25, o["center"] + 1.375, o["up"] + 2.25)
        for o in inputs.get("obstacles", [])
    ]
    shared = [plate.intersection(wall.ring(outer)).area for plate in plates for _, outer in frames]
    words: tuple[str, ...] = ()
    if any(area > HAIR for area in shared):
        words = ("Don't cut",)
    elif plates and not any(area > 0 for area in shared):
        words = ("Every obstacle is clear of the trim.",)
    return Expected(
        figures={
            "frame_width": x1 - x0,
            "frame_height": y1 - y0,
            "frames": len(frames),
            "total_trim": total,
            "to_buy": total + 8 * len(frames),
        },
        pieces=pieces_of(wall, counts),
        marks=marks_of(wall, frames),
        words=words,
    )


def pieces_of(wall: Wall, counts: tuple[int, ...]) -> list[dict[str, Any]]:
    """Sizes in the order in which their first frame comes."""
    way = wall.inputs.get("block", "none")
    sizes: list[tuple[int, float, float]] = []
    for at, run in enumerate(wall.runs()):
        if counts[at]:
            sizes.append((counts[at], wall.width(run, counts[at]), wall.high - wall.low))
        if at < len(wall.openings):
            for _, outer in wall.around(wall.openings[at]):
                x0, y0, x1, y1 = outer.bounds
                sizes.append((1, x1 - x0, y1 - y0))
    found = []
    for count, wide, high in sizes:
        for side in (wide, high):
            length = side - 2 * wall.block if way == "stop" else side
            short = {"none": side - 2 * wall.trim, "notch": side - 2 * wall.set_in}.get(way)
            found.append({"length": length, "short_point": short, "count": 2 * count})
    if wall.block:
        blocks = 4 * sum(count for count, _, _ in sizes)
        found.append({"length": wall.block, "short_point": None, "count": blocks})
    return found


def marks_of(wall: Wall, frames: list[tuple[str, Any]]) -> list[dict[str, Any]]:
    marks: list[dict[str, Any]] = []
    for number, (_, outer) in enumerate(frames):
        x0, _, x1, _ = outer.bounds
        marks += [{"tag": str(number + 1), "value": x} for x in (x0, x1)]
    marks += [{"tag": "", "value": wall.low}, {"tag": "", "value": wall.high}]
    for number, (kind, outer) in enumerate(frames):
        if kind != "run":
            edge = outer.bounds[3] if kind == "under" else outer.bounds[1]
            marks.append({"tag": str(number + 1), "value": edge})
    return marks
