"""What plans of sticks and sheets take at their limits, in the phone's interpreter under Node.

    python -m tests.bench.searches [--rounds 3] [--only WORDS]

Each row is one list, as long and as awkward as the tools allow, asked as a phone asks it: a form of
texts as typed, of which all fields are said too. `first` is the call that brings the first answer,
from reading the form to its JSON, `whole` all calls up to the one with pieces, tables and drawings;
`quiet` are calls that only look on, `news` those that also say a better answer; milliseconds are
processor time, of each call the least of all rounds. Multiply by 4 for the slow phone that the
goals name.
"""

import argparse
import json
import random
import statistics
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from longpoint.trade.lengths import Scale
from longpoint.trade.shelf import tool_named

SCRIPT = Path(__file__).with_name("searches.mjs")
STICKS = [{"length": 72 + 12 * at, "price": round(3.1 * (at + 2) + at % 3, 2)} for at in range(12)]


def sixteenths(chance: random.Random, low: int, high: int) -> float:
    """Return a length of so many inches and sixteenths."""
    return chance.randint(16 * low, 16 * high) / 16


def stick_lists() -> Iterator[tuple[str, dict[str, Any]]]:
    """Give lists of pieces with what they are cut from."""
    chance = random.Random(1)
    rows = [{"length": sixteenths(chance, 6, 120)} for _ in range(300)]
    twice = [row | {"count": 1 + (at < 200)} for at, row in enumerate(rows)]
    short = [row | {"length": min(row["length"], 90)} for row in twice]
    fine = [{"length": f"{chance.uniform(200, 3000):.1f} mm"} for _ in range(150)]
    fine += [{"length": f"{chance.uniform(6, 120):.3f}"} for _ in range(150)]
    odd = [{"length": f"{100 + 20 * at}.{at}37", "price": 5 + 2 * at} for at in range(12)]
    thirds = [chance.randint(260, 490) / 10 for _ in range(200)]
    triplets = [100 - one - other for one, other in zip(thirds[::2], thirds[1::2], strict=True)]
    yield "250 rows, 12 priced sticks", {"pieces": rows[:250], "sticks": STICKS}
    yield "500 pieces in 300 rows, 12 priced sticks", {"pieces": twice, "sticks": STICKS}
    yield "500 pieces in 300 rows, 1 stick", {"pieces": short, "sticks": [{"length": 96}]}
    yield (
        "500 pieces, each a stick of its own",
        {
            "pieces": [row | {"length": 50 + at / 16} for at, row in enumerate(twice)],
            "sticks": [{"length": 96}],
        },
    )
    yield (
        "500 pieces in one stick",
        {
            "pieces": [row | {"length": 1 + at / 16} for at, row in enumerate(twice)],
            "sticks": [{"length": 12000}],
        },
    )
    yield "millimeters among thousandths", {"pieces": fine, "sticks": odd}
    yield (
        "12 sticks, 30 of each there",
        {"pieces": short, "sticks": [{"length": 97 + 7 * at, "count": 30} for at in range(12)]},
    )
    yield (
        "sticks that run out",
        {"pieces": short, "sticks": [{"length": 97 + 7 * at, "count": 10} for at in range(12)]},
    )
    yield (
        "300 pieces, nothing left of any stick",
        {
            "pieces": [{"length": f"{length:.1f}"} for length in thirds + triplets],
            "sticks": [{"length": 100}],
            "kerf": 0,
        },
    )


def sheet_lists() -> Iterator[tuple[str, dict[str, Any]]]:
    """Give lists of parts with the sheets they are cut from."""
    chance = random.Random(2)

    def parts(low: int, high: int, **more: Any) -> list[dict[str, Any]]:
        def side() -> float:
            return sixteenths(chance, low, high)

        row = {"count": 5, "grain": "any"} | more
        return [row | {"length": side(), "width": side()} for _ in range(40)]

    sizes = [(60 + 6 * at, 40 + 4 * at) for at in range(10)]
    priced = [
        {"length": long, "width": wide, "price": round(20 + long * wide / 90 + at % 3, 2)}
        for at, (long, wide) in enumerate(sizes)
    ]
    fine = [
        part | {"length": f"{chance.uniform(100, 1500):.1f} mm", "width": f"{part['width']:.3f}"}
        for part in parts(4, 40)
    ]
    yield "200 parts in 40 rows, 10 priced sheets", {"parts": parts(4, 40), "sheets": priced}
    yield "200 parts in 40 rows, 1 sheet", {"parts": parts(4, 40), "sheets": [{}]}
    yield "200 small parts", {"parts": parts(2, 5), "sheets": [{}]}
    large = [part | {"length": part["length"] + 25} for part in parts(25, 40, grain="along")]
    yield "200 parts, each a sheet of its own", {"parts": large, "sheets": [{}]}
    yield (
        "millimeters among sixteenths",
        {"parts": fine, "sheets": [{"length": f"{97 + at}.125", "width": 48} for at in range(10)]},
    )
    yield (
        "sheets that run out",
        {"parts": parts(4, 40), "sheets": [{"count": 2} for _ in range(10)]},
    )
    yield (
        "9 parts, all ways tried",
        {
            "parts": [part | {"count": 1} for part in parts(10, 40)[:9]],
            "sheets": [{}, {"length": 60, "width": 60}],
        },
    )


def cases() -> Iterator[tuple[str, str, dict[str, Any]]]:
    """Give a title, a tool and its inputs."""
    for title, inputs in stick_lists():
        yield "sticks: " + title, "stick-plan", inputs
    for title, inputs in sheet_lists():
        yield "sheets: " + title, "sheet-plan", inputs


def typed(value: Any) -> Any:
    """Return inputs with their numbers as they are typed."""
    if isinstance(value, dict):
        return {name: typed(each) for name, each in value.items()}
    if isinstance(value, list):
        return [typed(each) for each in value]
    return Scale().given(value) if isinstance(value, float) else str(value)


def request(tool: str, inputs: dict[str, Any]) -> dict[str, Any]:
    """Return the request of the core's door for a form and its answer."""
    return {"do": "form", "tool": tool, "inputs": typed(inputs), "units": "in", "step": 16}


def row(title: str, walked: dict[str, Any]) -> list[str]:
    """Return the figures of one list as texts."""
    first, *later = walked["calls"]
    quiet = [call["ms"] for call in later if not call["said"]] or [0.0]
    news = [call["ms"] for call in later if call["said"]] or [0.0]
    verdict = walked["answer"]["verdict"] if walked["answer"] else "refused"
    return [
        title,
        f"{first['ms']:.0f}",
        f"{walked['whole']:.0f}" if walked["answer"] else "",
        f"{walked['megabytes']:.0f}",
        f"{walked['kilobytes']:.0f}",
        str(len(later)),
        f"{statistics.median(quiet):.1f} / {max(quiet):.0f}",
        f"{max(news):.0f}",
        f"{sum(call['ms'] for call in later) / 1000:.1f}",
        verdict if len(verdict) <= 60 else verdict[:57] + "...",
    ]


HEAD = (
    "list",
    "first ms",
    "whole ms",
    "memory MB",
    "answer KB",
    "slices",
    "quiet, median / worst ms",
    "news, worst ms",
    "all s",
    "verdict",
)


def main() -> int:
    """Measure and print a Markdown table; return the exit status."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.searches", description=__doc__)
    parser.add_argument("--rounds", type=int, default=3, help="the quickest of so many counts")
    parser.add_argument("--only", default="", help="lists whose title holds these words")
    chosen = parser.parse_args()
    print("| " + " | ".join(HEAD) + " |\n|" + "---|" * len(HEAD), flush=True)
    for title, tool, inputs in cases():
        if chosen.only in title:
            warm = request(tool, tool_named(tool).example)
            asked = json.dumps([{"warm": warm, "request": request(tool, inputs)}])
            command = ["node", str(SCRIPT), str(chosen.rounds)]
            told = subprocess.run(command, input=asked, capture_output=True, text=True, check=True)
            print("| " + " | ".join(row(title, json.loads(told.stdout))) + " |", flush=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
