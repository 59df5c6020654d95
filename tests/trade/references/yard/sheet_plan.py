"""Brute force from the whole sheet down: every cut at every place, every set on a sheet."""

from functools import cache
from random import Random
from typing import Any

from tests.trade.references.expected import Expected

SLUG = "sheet-plan"

BANDS = {"none": (0, 0), "long": (1, 0), "longs": (2, 0), "short": (0, 1), "shorts": (0, 2)}
BANDS |= {"front": (1, 2), "all": (2, 2)}
MDF_SHEET = 97.0
"""Pounds of a 96 x 48 sheet of MDF 3/4 thick, as published."""

# Sides along and across the sheet, and whether it may be turned.
Part = tuple[int, int, bool]
Parts = tuple[Part, ...]


def draw(random: Random) -> dict[str, Any]:
    length, width = random.choice(((9, 6), (8, 8), (10, 5)))
    rows = []
    left = random.randint(1, 4)
    while left:
        row: dict[str, Any] = {
            "length": random.randint(1, length + (random.random() < 0.05)),
            "width": random.randint(1, width),
            "count": random.randint(1, min(2, left)),
            "grain": random.choice(("along", "across", "any")),
            "band": random.choice(list(BANDS)),
        }
        rows.append(row)
        left -= row["count"]
    inputs: dict[str, Any] = {
        "parts": rows,
        "sheets": [{"length": length, "width": width}],
        "kerf": random.choice((0, 1)),
        "keep": 0,
    }
    if random.random() < 0.3:
        inputs |= {"made_of": "mdf", "sheet_thickness": 0.75}
    return inputs


def expect(inputs: dict[str, Any]) -> Expected | None:
    sheet = inputs["sheets"][0]
    long, wide, kerf = sheet["length"], sheet["width"], inputs["kerf"]
    rows = [row for row in inputs["parts"] for _ in range(row["count"])]
    parts = tuple(as_laid(row) for row in rows)
    if any(not fits((part,), long, wide, kerf) for part in parts):
        return None
    number = fewest(parts, long, wide, kerf)
    area = sum(row["length"] * row["width"] for row in rows)
    figures: dict[str, Any] = {
        "sheets_used": number,
        "lower_bound": number,
        "proved": "yes",
        "yield": 100 * area / (number * long * wide),
    }
    band = sum(banded(row) for row in rows)
    if band:
        figures["edge_band"] = band
    if "made_of" in inputs:
        per_area = MDF_SHEET / (96 * 48)
        figures["parts_weight"] = area * per_area
        figures["heaviest_part"] = per_area * max(row["length"] * row["width"] for row in rows)
        figures["sheet_weight"] = long * wide * per_area
    absent = ("could_save", *(() if band else ("edge_band",)))
    return Expected(figures=figures, absent=absent, words=("proven optimal",))


def as_laid(row: dict[str, Any]) -> Part:
    sides = (row["length"], row["width"])
    along, across = reversed(sides) if row["grain"] == "across" else sides
    return (along, across, row["grain"] == "any")


def banded(row: dict[str, Any]) -> int:
    long, short = sorted((row["length"], row["width"]), reverse=True)
    longs, shorts = BANDS[row["band"]]
    return int(longs * long + shorts * short)


@cache
def fits(parts: Parts, long: int, wide: int, kerf: int) -> bool:
    """Tell whether whole-number cuts get all the parts out of one rectangle."""
    if not parts:
        return True
    if long <= 0 or wide <= 0 or sum(w * h for w, h, _ in parts) > long * wide:
        return False
    if len(parts) == 1:
        w, h, turns = parts[0]
        return (w <= long and h <= wide) or (turns and h <= long and w <= wide)
    for ones, others in splits(parts):
        for at in range(1, long):
            if fits(ones, at, wide, kerf) and fits(others, long - at - kerf, wide, kerf):
                return True
        for at in range(1, wide):
            if fits(ones, long, at, kerf) and fits(others, long, wide - at - kerf, kerf):
                return True
    return False


def splits(parts: Parts) -> list[tuple[Parts, Parts]]:
    """Return every way to part the parts in two, none empty, the first on either side."""
    found = []
    for chosen in range(1, (1 << len(parts)) - 1):
        ones = tuple(part for at, part in enumerate(parts) if chosen >> at & 1)
        found.append((ones, tuple(part for at, part in enumerate(parts) if not chosen >> at & 1)))
    return found


def fewest(parts: Parts, long: int, wide: int, kerf: int) -> int:
    """Return the fewest sheets: the first part in every set that fits one."""
    if not parts:
        return 0
    first, rest = parts[0], parts[1:]
    best = len(parts)
    for chosen in range(1 << len(rest)):
        ones = (first, *(part for at, part in enumerate(rest) if chosen >> at & 1))
        others = tuple(part for at, part in enumerate(rest) if not chosen >> at & 1)
        if fits(ones, long, wide, kerf):
            best = min(best, 1 + fewest(others, long, wide, kerf))
    return best
