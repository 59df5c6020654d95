"""Rules instead of tables, in fractions: what dressing takes off each nominal size.

Softwood after PS 20: a board loses a little in thickness, 1/2 in width up to 7 and 3/4 beyond;
dimension loses 1/2 in thickness; timbers 1/2, 3/4 or 1; green stock is the heavier the wider.
Hardwood after the pattern of the NHLA's printed rows; plywood after PS 1's tolerance. The tape
goes before the person's list, the list before the rule.
"""

from fractions import Fraction
from random import Random
from typing import Any

from tests.trade.references.expected import Expected

SLUG = "stock-sizes"
Size = tuple[Fraction | None, Fraction | None]

BOARDS = ("3/8", "1/2", "5/8", "3/4", "1", "5/4", "6/4")
DIMENSION = ("2", "2-1/2", "3", "3-1/2", "4", "4-1/2")
BOARD_WIDTHS = (2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16)
DIMENSION_WIDTHS = (2, 3, 4, 5, 6, 8, 10, 12, 14, 16)
QUARTERS = ("3/8", "1/2", "5/8", "3/4", "4/4", "5/4", "6/4", "7/4", "8/4", "10/4", "12/4", "16/4")
CATEGORIES = ("1/4", "11/32", "3/8", "7/16", "15/32", "1/2", "19/32", "5/8", "23/32", "3/4")


def draw(random: Random) -> dict[str, Any]:
    family = random.choice(["softwood", "softwood", "hardwood", "sheet"])
    inputs: dict[str, Any] = {"family": family}
    if family == "softwood":
        inputs["label"] = softwood_label(random)
        inputs["condition"] = random.choice(["dry", "green"])
    elif family == "hardwood":
        inputs["label"] = random.choice(QUARTERS)
        inputs["condition"] = random.choice(["rough", "s1s", "s2s"])
    else:
        inputs["condition"] = random.choice(["sanded", "mdf", "hardwood"])
        whole = ("1/4", "3/8", "1/2", "5/8", "3/4")
        inputs["label"] = random.choice(CATEGORIES if inputs["condition"] == "sanded" else whole)
    for name in ("measured_thickness", "measured_width", "needed_thickness", "needed_width"):
        if random.random() < 0.4:
            inputs[name] = random.randint(4, 200) / 16
    if random.random() < 0.4:
        inputs["yard"] = [kept(random, inputs)]
    return inputs


def softwood_label(random: Random) -> str:
    kind = random.random()
    if kind < 0.4:
        return (
            random.choice(BOARDS)
            + random.choice(["x", " x ", "×"])
            + str(random.choice(BOARD_WIDTHS))
        )
    if kind < 0.8:
        thickness = random.choice(DIMENSION)
        wide = [w for w in DIMENSION_WIDTHS if w >= nominal(thickness)]
        return f"{thickness} x {random.choice(wide)}"
    sides = sorted([random.randint(5, 20), random.randint(5, 20)])
    return f"{sides[0]}x{sides[1]}"


def kept(random: Random, inputs: dict[str, Any]) -> dict[str, Any]:
    """Return a row of the list, sometimes of another label."""
    label = inputs["label"] if random.random() < 0.7 else "3/8"
    row = {"label": label, "family": inputs["family"], "thickness": random.randint(4, 90) / 16}
    return row | ({"width": random.randint(8, 200) / 16} if random.random() < 0.5 else {})


def nominal(text: str) -> Fraction:
    return sum((Fraction(part) for part in text.split("-")), Fraction(0))


def sides(label: str) -> list[Fraction]:
    return [nominal(part.strip()) for part in label.replace("×", "x").split("x")]


def softwood(label: str, condition: str) -> Size:
    thick, wide = sides(label)
    green = condition == "green"
    if thick >= 5:
        return timber(thick, green), timber(wide, green)
    if thick >= 2:
        real = thick - Fraction(1, 2) + (Fraction(1, 16) if green else 0)
    else:
        off = {Fraction(3, 4): Fraction(1, 8)}.get(thick)
        off = off or (Fraction(1, 16) if thick < 1 else Fraction(1, 4))
        more = Fraction(1, 16) if thick == Fraction(3, 4) else Fraction(1, 32)
        real = thick - off + (more if green else 0)
    across = wide - (Fraction(1, 2) if wide <= 7 else Fraction(3, 4))
    if green:
        across += Fraction(1, 16) if wide <= 4 else Fraction(1, 8 if wide <= 7 else 4)
    return real, across


def timber(side: Fraction, green: bool) -> Fraction:
    if green or side <= 6:
        return side - Fraction(1, 2)
    return side - (Fraction(3, 4) if side <= 15 else 1)


def hardwood(label: str, condition: str) -> Size:
    rough = Fraction(label)
    if condition == "rough":
        return rough, None
    if condition == "s2s":
        return rough - (Fraction(3, 16) if rough <= Fraction(3, 2) else Fraction(1, 4)), None
    # Surfaced one side, as printed: 1/8 off up to 6/4, 3/16 beyond, and three rows not printed.
    if rough <= Fraction(3, 2):
        return rough - Fraction(1, 8), None
    return (None if label in ("7/4", "10/4", "14/4") else rough - Fraction(3, 16)), None


def sheet(label: str, condition: str) -> Size:
    whole = Fraction(label)
    return whole - (Fraction(1, 32) if condition == "hardwood" else 0), None


RULES = {"softwood": softwood, "hardwood": hardwood, "sheet": sheet}


def expect(inputs: dict[str, Any]) -> Expected | None:
    family = inputs["family"]
    rule = RULES[family](inputs["label"], inputs["condition"])
    on_list = [
        row for row in inputs.get("yard", []) if same_label(row["label"], inputs["label"], family)
    ]
    seen = on_list[-1] if on_list else {}
    thick = first(inputs.get("measured_thickness"), seen.get("thickness"), rule[0])
    if thick is None:
        return None
    boards = family != "sheet"
    tape_wide = inputs.get("measured_width") if boards else None
    wide = first(tape_wide, seen.get("width"), rule[1])
    figures = {"thickness": thick}
    absent = []
    for name, real, needed in (
        ("to_mill_thickness", thick, inputs.get("needed_thickness")),
        ("to_mill_width", wide, inputs.get("needed_width") if boards else None),
    ):
        if real is None or needed is None:
            absent.append(name)
        else:
            figures[name] = real - needed
    if wide is None:
        absent.append("width")
    else:
        figures["width"] = wide
    words = todo(figures, family)
    return Expected(figures=figures, absent=tuple(absent), words=words, tolerance=1e-9)


def todo(figures: dict[str, float], family: str) -> tuple[str, ...]:
    """Return the words that tell which way each size is off."""
    off = "too thick" if family == "sheet" else "plane off"
    words = []
    for name, over, under in (
        ("to_mill_thickness", off, "too thin"),
        ("to_mill_width", "rip off", "too narrow"),
    ):
        extra = figures.get(name)
        if extra is not None and abs(extra) >= 1 / 64:
            words.append(over if extra > 0 else under)
    return tuple(words)


def same_label(one: str, other: str, family: str) -> bool:
    if family == "softwood":
        return sorted(sides(one)) == sorted(sides(other))
    return Fraction(one) == Fraction(other)


def first(*sizes: float | Fraction | None) -> float | None:
    known = [size for size in sizes if size is not None]
    return float(known[0]) if known else None
