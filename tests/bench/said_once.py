"""Count what is typed for a job, question by question and as a job: no clock, no browser.

    python -m tests.bench.said_once

The job is that of `tests/phone/test_week.py`: a pair of cupboard doors and a cased door, with the
numbers of their patterns' fixtures. *Alone*, each question is opened on its own: what the job
presets or carries is typed again, and the pieces of each stock that is sold by the stick are typed
into a stick plan. *As a job*, only what a tape or a catalog says is typed.

Taps: one into a field and one for each character of a number, as on the pad; one for a choice; two
to open a question on its own, by place and name; in a job one for its line and one to come back;
three to begin the job, two to add the item of a pattern.
"""

import json
from collections import Counter
from typing import Any

from longpoint.trade.job.patterns import pattern_named
from longpoint.trade.shelf import tool_named
from tests.trade.job.asking import worked
from tests.trade.job.test_patterns import FOLDER, begun

PATTERNS = ("cupboard-inset", "cased-door")
OPEN, BEGIN, ADD = 2, 3, 2


def tapped(tool: str, inputs: dict[str, str]) -> Counter[str]:
    """Return numbers typed and taps made for some inputs of a tool."""
    kinds = {asked.name: asked.kind for asked in tool_named(tool).inputs}
    said: Counter[str] = Counter()
    for name, text in inputs.items():
        is_number = kinds[name] not in ("choice", "flag")
        said["numbers"] += is_number
        said["taps"] += 1 + len(str(text)) * is_number
    return said


def bare(text: str) -> str:
    """Return a carried number as it would be typed."""
    return text.removesuffix(" full").removesuffix(" shy").removesuffix("°")


def sticks_typed(reply: Any) -> Counter[str]:
    """Return what a stick plan for each stock sold by the stick asks: lengths and counts."""
    said: Counter[str] = Counter()
    sold = {line["stock"] for line in reply["yard"]["lines"] if line["sold"] == "stick"}
    for stock in sold:
        groups = [group for group in reply["saw"]["groups"] if group["stock"] == stock]
        rows = Counter(bare(cut["text"]) for group in groups for cut in group["cuts"])
        said["taps"] += OPEN
        for length, count in rows.items():
            said["numbers"] += 2
            said["taps"] += 1 + len(length) + 1 + len(str(count))
    return said


def counted(pattern: str) -> tuple[Counter[str], Counter[str]]:
    """Return numbers and taps of a pattern's questions alone, and as an item of a job."""
    fixture = json.loads((FOLDER / f"{pattern}.json").read_text(encoding="utf-8"))
    job = begun(fixture)
    reply = worked(job)
    alone, within = sticks_typed(reply), Counter(taps=ADD)
    questions = pattern_named(pattern).questions
    entries = zip(questions, job["items"][0]["entries"], reply["items"][0]["entries"], strict=True)
    for question, entry, said in entries:
        carried = {each["input"]: bare(each["text"]) for each in said["carried"]}
        alone += tapped(entry["tool"], carried | entry["inputs"]) + Counter(taps=OPEN)
        typed = fixture["inputs"].get(question.key, {})
        within += tapped(entry["tool"], typed) + Counter(taps=OPEN)
    return alone, within


def main() -> None:
    """Print the table, and what is saved."""
    whole = [Counter[str](), Counter(taps=BEGIN)]
    print("| | numbers alone | as a job | taps alone | as a job |")
    print("|---|---|---|---|---|")
    for pattern in PATTERNS:
        pair = counted(pattern)
        whole = [sum_ + each for sum_, each in zip(whole, pair, strict=True)]
        print(row(pattern_named(pattern).title, *pair))
    print(row("the job", *whole))
    fewer = 100 * (1 - whole[1]["taps"] / whole[0]["taps"])
    print(f"\n{fewer:.0f} % fewer taps; goal 60.")


def row(title: str, alone: Counter[str], within: Counter[str]) -> str:
    cells = (title, alone["numbers"], within["numbers"], alone["taps"], within["taps"])
    return f"| {' | '.join(str(cell) for cell in cells)} |"


if __name__ == "__main__":
    main()
