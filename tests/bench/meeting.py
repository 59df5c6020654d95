"""What a job of 40 questions, 300 pieces and 200 ticks weighs, and how long two of it take to meet.

    python -m tests.bench.meeting [--rounds 5]

Milliseconds are processor time, the least of all rounds: in CPython, and in the phone's interpreter
under Node, the JSON of request and reply in it. `x 4` is for the slow phone that the goals name.
"""

import argparse
import json
import random
import subprocess
import time
import zlib
from pathlib import Path
from typing import Any

import brotli

from longpoint.trade.calls import call
from tests.bench.jobs import job
from tests.trade.job.edited import Editor

SCRIPT = Path(__file__).with_name("meeting.mjs")
TICKS = 200
KINDS = ["field", "input", "tick", "tick", "add item", "move", "price", "log"]


def ticked() -> Any:
    """Return the job, as many of its pieces ticked."""
    made = job()
    entries = [entry["id"] for item in made["items"] for entry in item["entries"]]
    made["ticks"] = [
        {"id": f"t{at:08x}", "of": f"{entries[at % len(entries)]}/{at // len(entries)}#1",
         "state": "cut", "at": "2026-11-26T09:20:00Z", "was": {"length": 31.8125}}
        for at in range(TICKS)
    ]  # fmt: skip
    return made


def requests() -> dict[str, Any]:
    """Return the meetings that are measured, by name."""
    base, chance = ticked(), random.Random(1)
    mine, theirs = (Editor(chance, name).edit(base, 20, KINDS) for name in "mt")

    def meeting(base: Any, mine: Any, theirs: Any) -> dict[str, Any]:
        states = {"base": base, "mine": mine, "theirs": theirs}
        said = {name: body and {"units": "in", "schema": 1, "body": body}
                for name, body in states.items()}  # fmt: skip
        return {"do": "meet", "kind": "job", "names": ["Ann", "Bo"], **said}

    return {
        "only theirs changed": meeting(base, base, theirs),
        "both changed, 20 edits each": meeting(base, mine, theirs),
        "no base": meeting(None, mine, theirs),
    }


def here(request: Any) -> float:
    """Return the milliseconds that CPython takes."""
    text = json.dumps(request)
    begun = time.process_time()
    reply = json.loads(call(text))
    assert reply["ok"], reply
    return 1000 * (time.process_time() - begun)


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--rounds", type=int, default=5)
    rounds = parser.parse_args().rounds
    text = json.dumps(ticked(), separators=(",", ":")).encode()
    print(f"{len(text)} bytes, {len(zlib.compress(text, 6))} deflated, "
          f"{len(brotli.compress(text))} by brotli\n")  # fmt: skip
    asked = requests()
    said = subprocess.run(
        ["node", str(SCRIPT), str(rounds)],
        check=True, capture_output=True, text=True, input=json.dumps(asked),
    )  # fmt: skip
    there = json.loads(said.stdout)
    print("| two people's job meets | CPython ms | phone's interpreter ms | x 4 |")
    print("|---|---|---|---|")
    for name, request in asked.items():
        least = min(here(request) for _ in range(rounds))
        print(f"| {name} | {least:.0f} | {there[name]:.0f} | {4 * there[name]:.0f} |")


if __name__ == "__main__":
    main()
