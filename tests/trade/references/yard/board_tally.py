"""One board after the other, in fractions, by hand's rules; boards put back one at a time.

Surface measure to the nearest whole, part-feet dropped, thinner than an inch counts as an inch:
NHLA rules as printed by others; halves by turns, the first one up: from memory.
"""

from fractions import Fraction
from random import Random
from typing import Any

from tests.trade.references.expected import Expected

SLUG = "board-tally"
QUARTERS = ("4/4", "5/4", "6/4", "8/4", "12/4", "3/4", "1/2")


def draw(random: Random) -> dict[str, Any]:
    boards = []
    for at in range(random.randint(1, 8)):
        row: dict[str, Any] = {"width": random.randint(24, 200) / 16}
        if at == 0 or random.random() < 0.4:
            row["length"] = random.randint(8, 32) / 2
        if at == 0 or random.random() < 0.3:
            row["thickness"] = random.choice(QUARTERS)
        if random.random() < 0.3:
            row["count"] = random.randint(1, 6)
        boards.append(row)
    inputs: dict[str, Any] = {"boards": boards, "rule": random.choice(["exact", "graded"])}
    if random.random() < 0.5:
        inputs |= {"price": random.randint(200, 2000) / 100}
        inputs |= {"price_per": random.choice(["board-foot", "lineal-foot"])}
    if random.random() < 0.6:
        inputs |= {"target": random.randint(2, 80), "waste": random.choice([0, 10, 20, 25])}
    return inputs


def every_board(boards: list[dict[str, Any]]) -> list[tuple[int, Fraction, Fraction, Fraction]]:
    """Return each board: line, thickness that counts, width, feet."""
    found, thick, feet = [], Fraction(0), Fraction(0)
    for line, row in enumerate(boards, 1):
        thick = Fraction(row["thickness"]) if "thickness" in row else thick
        feet = Fraction(row["length"]) if "length" in row else feet
        board = (line, max(thick, Fraction(1)), Fraction(row["width"]), feet)
        found += [board] * row.get("count", 1)
    return found


def counted(boards: list[tuple[int, Fraction, Fraction, Fraction]], graded: bool) -> list[Fraction]:
    """Return the board feet of each board."""
    found, up = [], True
    for _, thick, wide, feet in boards:
        if not graded:
            found.append(thick * wide * feet / 12)
            continue
        twice = wide * int(feet) / 6
        surface = int(twice + 1) // 2
        if twice.denominator == 1 and twice % 2:
            surface = int(twice) // 2 + up
            up = not up
        found.append(surface * thick)
    return found


def expect(inputs: dict[str, Any]) -> Expected:
    boards = every_board(inputs["boards"])
    graded = inputs["rule"] == "graded"
    each = counted(boards, graded)
    total, lineal = sum(each), sum(feet for *_, feet in boards)
    figures: dict[str, Any] = {
        "board_feet": float(total),
        "lineal_feet": float(lineal),
        "board_count": len(boards),
    }
    if "price" in inputs:
        by = lineal if inputs["price_per"] == "lineal-foot" else total
        figures["cost"] = float(by) * inputs["price"]
    if "target" not in inputs:
        return Expected(figures=figures, absent=("go_back", "still_to_pick"))
    to_buy = Fraction(inputs["target"]) * (100 + inputs["waste"]) / 100
    figures["board_feet_to_buy"] = float(to_buy)
    figures["still_to_pick"] = max(0.0, float(to_buy - total))
    back = [] if graded else spared(boards, each, total - to_buy)
    if back:
        figures["go_back"] = ", ".join(back)
    words = ("Enough",) if total >= to_buy else ("more",)
    absent = () if graded or back else ("go_back",)
    return Expected(figures=figures, absent=absent, words=words)


def spared(
    boards: list[tuple[int, Fraction, Fraction, Fraction]], each: list[Fraction], over: Fraction
) -> list[str]:
    """Put boards back one at a time, the largest of those that can be spared first."""
    lines: list[int] = []
    left = sorted(zip(each, boards, strict=True), key=lambda one: (-one[0], one[1][0]))
    for feet, board in left:
        if feet <= over:
            over -= feet
            lines.append(board[0])
    told = []
    for line in dict.fromkeys(lines):
        many = lines.count(line)
        told.append(f"{many} of board {line}" if many > 1 else f"board {line}")
    return told
