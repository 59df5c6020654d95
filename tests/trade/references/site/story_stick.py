"""A system of equations: each row of the form is one, all marks are unknown, solved at once."""

from random import Random
from typing import Any

import numpy as np

from tests.trade.references.expected import Expected

SLUG = "story-stick"


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {"marks": [mark(random) for _ in range(random.randint(1, 9))]}
    if random.random() < 0.7:
        inputs["length"] = random.randint(16 * 40, 16 * 160) / 16
    if random.random() < 0.5:
        inputs["datum"] = random.choice(["floor", "left jamb"])
    return inputs


def mark(random: Random) -> dict[str, Any]:
    start = random.choice(["end"] * 4 + ["last"] * 2 + ["far"])
    most = {"end": 90, "last": 10, "far": 40}[start]
    return {
        "distance": random.randint(0, 32 * most) / 32,
        "start": start,
        "lies": random.choice(["line", "beyond", "before"]),
    }


def expect(inputs: dict[str, Any]) -> Expected | None:
    rows, length = inputs["marks"], inputs.get("length")
    if length is None and any(row["start"] == "far" for row in rows):
        return None
    count = len(rows)
    lines, known = np.eye(count), np.zeros(count)
    for at, row in enumerate(rows):
        known[at] = row["distance"]
        if row["start"] == "last" and at:
            lines[at, at - 1] = -1
        if row["start"] == "far":
            lines[at, at], known[at] = -1, row["distance"] - length
    places = np.linalg.solve(lines, known)
    if places.min() < -1e-9 or (length is not None and places.max() > length + 1e-9):
        return None
    order = np.argsort(places, kind="stable")
    apart = [gap for gap in np.diff(places[order]) if gap > 1e-9]
    figures = {
        "mark_count": count,
        "stick": places.max() if length is None else length,
        "first_mark": places.min(),
        "last_mark": places.max(),
    }
    if apart:
        figures["closest"] = min(apart)
    return Expected(
        figures={name: float(value) for name, value in figures.items()},
        marks=[
            {
                "tag": str(at + 1),
                "value": float(places[at]),
                "from": inputs.get("datum", "end"),
                "label": f"Mark {at + 1}"
                + {"line": ""}.get(rows[at]["lies"], ", part " + rows[at]["lies"]),
            }
            for at in order
        ],
        absent=() if apart else ("closest",),
    )
