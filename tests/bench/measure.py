"""Measure what a phone's user waits for, and print it as Markdown.

    sh tests/bench/run            everything, about five minutes
    sh tests/bench/run --quick    fewer rounds, about one minute

It measures the app as it is built now: bytes of a first visit, offline cold start, change of an
input to the new figure and drawing, and the core's own time for each tool. Nothing else should run
meanwhile; the load of the machine is printed first.
"""

import argparse
import os
import platform
import statistics
import sys
import tempfile
from collections.abc import Iterable
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

from playwright.sync_api import Playwright, sync_playwright

from tests.bench.browser import PACES, phone, slowness
from tests.bench.change import CHANGES, TOOLS, changes, open_tool
from tests.bench.core_time import core_times
from tests.bench.start import cold_start
from tests.bench.travel import first_visit
from tests.phone.app import App, example_hash
from tests.phone.conftest import FLAGS
from tests.serving import served

# Read at the start, since the measuring is a load of its own.
LOAD = os.getloadavg()
KILO = 1000
FIRST_BYTES, ALL_BYTES = 300 * KILO, 500 * KILO
START_MS = 700
CHANGE_MS = {"unthrottled": 16, "page at 4x": 50, "whole browser at 4x": 50}


def table(head: Iterable[str], rows: Iterable[Iterable[object]]) -> None:
    """Print a Markdown table and an empty line."""
    head = list(head)
    print("| " + " | ".join(head) + " |\n|" + "---|" * len(head))
    for row in rows:
        print("| " + " | ".join(str(cell) for cell in row) + " |")
    print(flush=True)


def _against(value: float, goal: float) -> str:
    return "met" if value < goal else "**missed**"


def _processor() -> str:
    for line in Path("/proc/cpuinfo").read_text().splitlines():
        if line.startswith("model name"):
            return line.split(":")[1].strip()
    return platform.machine()


def show_machine(playwright: Playwright) -> None:
    """Print machine, browser, date and load, and what each way of slowing comes to."""
    with tempfile.TemporaryDirectory() as name, phone(playwright, Path(name)) as context:
        browser = context.browser
        version = browser.version if browser else _version(playwright)
        slower = slowness(context.new_page(), Path(name))
    load = ", ".join(f"{each:.1f}" for each in LOAD)
    print(f"{_processor()}, {os.cpu_count()} cores, {platform.system()}; Chromium {version};")
    print(f"{datetime.now(UTC):%Y-%m-%d}; load before (1, 5, 15 minutes): {load}.")
    print("A loop in the page takes, times as long as unthrottled: ", end="")
    print(", ".join(f"{name} {times:.1f}" for name, times in slower.items()) + ".\n", flush=True)


def _version(playwright: Playwright) -> str:
    path = os.environ["LONGPOINT_BROWSER"]
    with closing(playwright.chromium.launch(executable_path=path, args=FLAGS)) as browser:
        return browser.version


def show_bytes(playwright: Playwright, address: str) -> None:
    """Print the bytes of a first visit by encoding."""
    rows = []
    for encoding in ("br", "gzip"):
        answered, sent = first_visit(playwright, address, encoding)
        total = sum(size for _, size in sent)
        first = _against(answered, FIRST_BYTES)
        whole = _against(total, ALL_BYTES)
        sizes = f"{answered / KILO:.0f}", first, f"{total / KILO:.0f}", whole
        rows.append((encoding, *sizes, len(sent)))
    head = ("first visit", "KB to the first answer", "< 300", "KB all in", "< 500", "responses")
    table(head, rows)


def show_starts(playwright: Playwright, folder: Path, address: str, rounds: int) -> None:
    """Print the cold starts with the network gone, at each pace."""
    rows = []
    for tool in TOOLS:
        opened = example_hash(tool.place, tool.slug)
        for name, pace in PACES.items():
            took = [cold_start(playwright, folder, address, pace, opened) for _ in range(rounds)]
            median = statistics.median(took)
            verdict = _against(median, START_MS)
            shown = [f"{each:.0f}" for each in (min(took), median, max(took))]
            rows.append((tool.slug, name, *shown, verdict))
    goal = f"median < {START_MS}"
    head = ("offline cold start", "pace", "best ms", "median ms", "worst ms", goal)
    table(head, rows)


def show_changes(playwright: Playwright, folder: Path, address: str, count: int) -> None:
    """Print the times from an input event to the new figure and drawing, at each pace."""
    rows = []
    with phone(playwright, folder) as context:
        context.set_offline(True)
        for change in TOOLS:
            page = context.new_page()
            open_tool(page, address, change)
            for name, pace in PACES.items():
                with pace(page, folder):
                    ready, painted = zip(*changes(page, change, count), strict=True)
                goal = CHANGE_MS[name]
                shown = [
                    f"{statistics.median(each):.1f} / {max(each):.1f}" for each in (ready, painted)
                ]
                judged = statistics.median(ready), max(ready), max(painted)
                verdict = [_against(each, goal) for each in judged]
                rows.append((change.slug, name, *shown, f"< {goal}", *verdict))
            page.close()
    table(
        ("change of an input", "pace", "ready, median / worst ms", "painted, median / worst ms",
         "goal", "ready, median", "ready, worst", "painted, worst"),
        rows,
    )  # fmt: skip


def show_core(playwright: Playwright, address: str, again: int) -> None:
    """Print the core's own times, unthrottled."""
    path = os.environ["LONGPOINT_BROWSER"]
    with closing(playwright.chromium.launch(executable_path=path, args=FLAGS)) as browser:
        times = core_times(browser, address, again)
    print(f"Boot of worker and core: {statistics.median(time.boot for time in times):.0f} ms.\n")
    table(
        ("core, unthrottled", "first call ms", "again ms", "answer KB"),
        ((t.slug, f"{t.first:.1f}", f"{t.again:.1f}", f"{t.length / KILO:.1f}") for t in times),
    )


def main() -> int:
    """Measure and print; return the exit status."""
    parser = argparse.ArgumentParser(prog="sh tests/bench/run", description=__doc__)
    parser.add_argument("--quick", action="store_true", help="fewer rounds, a first impression")
    quick = parser.parse_args().quick
    with sync_playwright() as playwright, tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        show_machine(playwright)
        with served() as address:
            show_bytes(playwright, address)
            show_core(playwright, address, 5 if quick else 20)
            with phone(playwright, folder) as context:
                App(context.new_page(), address).install()
        # The server is gone from here on: what follows comes from what the phone has kept.
        show_starts(playwright, folder, address, 3 if quick else 9)
        show_changes(playwright, folder, address, 10 if quick else CHANGES)
    return 0


if __name__ == "__main__":
    sys.exit(main())
