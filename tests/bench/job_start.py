"""Cold starts with jobs on the phone: a job's cut list, and the list of 200 jobs.

    sh tests/run python -m tests.bench.job_start [--rounds 5]

The app is kept by the service worker and the network cut; each round starts the browser anew. The
job is that of `tests.bench.jobs`: 40 questions, 324 pieces, worked out once before, so that the
last reply stands at each start. A list is there when the rows or jobs that fill the screen are on
it; `whole` is the last of them. The clock is the page's own, which starts with the navigation.
"""

import argparse
import json
import statistics
import tempfile
from pathlib import Path
from typing import Any

from playwright.sync_api import Playwright, sync_playwright

from tests.bench.browser import PACES, Pace, phone
from tests.bench.jobs import job
from tests.phone.app import App
from tests.phone.storage import put_documents, wait_until_made
from tests.serving import served

MANY = 200
GOALS = {
    "cut list, first screen": 1000,
    "cut list, whole": None,
    "200 jobs, first screen": 300,
    "200 jobs, from a place, first screen": 300,
    "200 jobs, from a place, whole": None,
}
"""Milliseconds at a quarter of the pace; None for none."""

_WATCH = """
window.shown = (selector, number) => new Promise((resolve) => {
  const isShown = () => document.querySelectorAll(selector).length >= number;
  const said = () => requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => resolve(performance.now());
    port2.postMessage(0);
  });
  if (isShown()) return void said();
  const watch = new MutationObserver(() => {
    if (!isShown()) return;
    watch.disconnect();
    said();
  });
  watch.observe(document, { subtree: true, childList: true });
});
"""
CUT_ROWS = ("#/saw", ".jobsheet .tickrow", 10)
ALL_ROWS = ("#/saw", ".jobsheet .tickrow", 324)
JOB_CARDS = ("#/job", ".jobcard", 10)
ALL_CARDS = ("#/job", ".jobcard", MANY)


def record(body: dict[str, Any]) -> dict[str, Any]:
    """Return a job as the database keeps it."""
    kept = {"kind": "job", "id": body["id"], "units": "in", "revision": 1, "schema": 1, "step": 0}
    return kept | {"body": body, "listed": ["job", 1, body["title"]]}


def fill(playwright: Playwright, folder: Path, address: str) -> None:
    """Keep the app and the jobs in a browser's folder, the largest one open."""
    with phone(playwright, folder) as context:
        app = App(context.new_page(), address)
        app.install()
        large = job() | {"id": "large", "title": "Large"}
        demo = json.loads(json.dumps(large))
        demo["items"] = demo["items"][:1]
        small = [demo | {"id": f"job {at}", "title": f"Job {at}"} for at in range(MANY - 1)]
        put_documents(app.page, address, *[record(each) for each in [large, *small]])
        app.open("#/job/large")
        wait_until_made(app.page, "large")


def start(
    playwright: Playwright, folder: Path, address: str, pace: Pace, of: tuple[str, str, int]
) -> float:
    """Return the milliseconds from opening an address to what is looked for on it."""
    place, selector, number = of
    with phone(playwright, folder) as context:
        context.set_offline(True)
        context.add_init_script(_WATCH)
        page = context.new_page()
        with pace(page, folder):
            page.goto(f"{address}/{place}", wait_until="commit")
            return float(page.evaluate(f"window.shown({json.dumps(selector)}, {number})"))


def listed(
    playwright: Playwright, folder: Path, address: str, pace: Pace, of: tuple[str, str, int]
) -> float:
    """Return the milliseconds from a tap on *Job* to the list, in an app that is open."""
    place, selector, number = of
    with phone(playwright, folder) as context:
        context.set_offline(True)
        context.add_init_script(_WATCH)
        page = context.new_page()
        page.goto(f"{address}/#/yard", wait_until="commit")
        page.wait_for_selector(".jobsheet .tickrow")
        page.wait_for_selector(".question")
        with pace(page, folder):
            return float(
                page.evaluate(
                    """async ([place, selector, number]) => {
                      const begun = performance.now();
                      location.hash = place;
                      return (await window.shown(selector, number)) - begun;
                    }""",
                    [place, selector, number],
                )
            )


def main() -> None:
    """Measure and print the table for DEVELOPERS.md."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--rounds", type=int, default=5)
    rounds = parser.parse_args().rounds
    print("| jobs | pace | best ms | median ms | goal at 4x |\n|---|---|---|---|---|")
    with (
        sync_playwright() as playwright,
        tempfile.TemporaryDirectory() as name,
        served() as address,
    ):
        folder = Path(name)
        fill(playwright, folder, address)
        for pace_name, pace in PACES.items():
            given = playwright, folder, address, pace
            took: dict[str, list[float]] = {what: [] for what in GOALS}
            for _ in range(rounds):
                took["cut list, first screen"].append(start(*given, CUT_ROWS))
                took["cut list, whole"].append(start(*given, ALL_ROWS))
                took["200 jobs, first screen"].append(start(*given, JOB_CARDS))
                took["200 jobs, from a place, first screen"].append(listed(*given, JOB_CARDS))
                took["200 jobs, from a place, whole"].append(listed(*given, ALL_CARDS))
            for what, times in took.items():
                print(line(what, pace_name, times), flush=True)


def line(what: str, pace: str, times: list[float]) -> str:
    """Return the table's line of one thing that was measured."""
    best, median, goal = min(times), statistics.median(times), GOALS[what]
    if goal is None:
        return f"| {what} | {pace} | {best:.0f} | {median:.0f} | |"
    met = "" if pace == "unthrottled" else " met" if median < goal else " **missed**"
    return f"| {what} | {pace} | {best:.0f} | {median:.0f} | < {goal}{met} |"


if __name__ == "__main__":
    main()
