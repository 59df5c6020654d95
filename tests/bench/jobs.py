"""What a job of 40 questions and 300 pieces takes in the phone's interpreter under Node.

    python -m tests.bench.jobs [--rounds 5]

The job is the demo three times over, its frames and doors more than once. `opened` is the first
time it is worked out, the tools' import in it; `changed` after one number of its first door was
changed; `own figure` is the changed question's own form. Milliseconds are processor time, of each
step the least of all rounds; `x 4` is for the slow phone that the goals name.
"""

import argparse
import json
import subprocess
from pathlib import Path
from typing import Any

from longpoint.trade.calls import call

SCRIPT = Path(__file__).with_name("jobs.mjs")
DEMO = Path(__file__).parents[2] / "fixtures/job/demo.json"
GOALS = {"own figure": 50, "every sheet": 150}
"""Milliseconds at a quarter of the pace."""


def ask(**request: Any) -> Any:
    reply = json.loads(call(json.dumps(request)))
    assert reply["ok"], reply
    return reply


def job() -> Any:
    """Return a job of 40 questions and some 300 pieces."""
    made = json.loads(DEMO.read_text(encoding="utf-8"))["job"]
    # Without its finish, as it was when it was measured first.
    made["items"] = [item for item in made["items"] if item["id"] != "finish"]
    made["things"] = [thing for thing in made["things"] if thing["item"] != "finish"]
    for item in list(made["items"]):
        for copy in (2, 3):
            made = ask(
                do="copy item", job=made, item=item["id"], id=f"{item['id']}-{copy}"
            )["document"]  # fmt: skip
    extra = {"do": "add entry", "job": made, "item": "base", "id": "corner", "tool": "corner-joint",
             "inputs": {"corner": "91", "width_a": "5 1/4"}}  # fmt: skip
    made = ask(**extra)["document"]
    for item in made["items"]:
        item["count"] = 3 if item["id"].startswith("frames") else 2
    return made


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--rounds", type=int, default=5)
    rounds = parser.parse_args().rounds
    whole = job()
    changed = json.loads(json.dumps(whole))
    doors = changed["items"][0]["entries"][2]
    doors["inputs"]["stile"] = "2 1/2"
    reply = ask(do="job", job=whole)
    while reply["work"]:
        reply = ask(do="continue job", work=reply["work"])
    taken = reply["job"]["items"][0]["entries"][2]["carried"]
    carried = {each["input"]: {"value": each["value"], "from": each["from"]} for each in taken}
    form = {"do": "form", "tool": doors["tool"], "inputs": doors["inputs"], "carried": carried}
    said = subprocess.run(
        ["node", str(SCRIPT), str(rounds)], check=True, capture_output=True, text=True,
        input=json.dumps({"job": whole, "changed": changed, "form": form}),
    )  # fmt: skip
    show(whole, reply["job"], json.loads(said.stdout))


def show(whole: Any, reply: Any, found: Any) -> None:
    """Print the table for DEVELOPERS.md."""
    entries = sum(len(item["entries"]) for item in whole["items"])
    pieces = sum(len(group["cuts"]) for group in reply["saw"]["groups"])
    print(
        f"{entries} questions, {pieces} pieces; said of them at first "
        f"{found['first']['kilobytes']:.0f} KB, of the change {found['again']['kilobytes']:.0f}\n"
    )
    print("| job, phone's interpreter | ms | x 4 | longest step, x 4 | goal |")
    print("|---|---|---|---|---|")
    for name, key in (("opened", "first"), ("changed", "again")):
        steps = found[key]["steps"]
        until = next(at for at, step in enumerate(steps) if step["whole"]) + 1
        row(f"{name}: every sheet", steps[:until], GOALS["every sheet"] if key == "again" else None)
        row(f"{name}: to the end of all searches", steps, None)
    row("own figure", [{"ms": found["own"]}], GOALS["own figure"])


def row(name: str, steps: list[dict[str, float]], goal: int | None) -> None:
    """Print the line of some steps."""
    times = [step["ms"] for step in steps]
    slow = 4 * sum(times)
    met = "" if goal is None else f"{goal}: {'met' if slow < goal else '**missed**'}"
    print(f"| {name} | {sum(times):.0f} | {slow:.0f} | {4 * max(times):.0f} | {met} |")


if __name__ == "__main__":
    main()
