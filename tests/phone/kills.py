"""Kill the browser again and again at a job: `python -m tests.phone.kills 60`.

A tick is acknowledged once the screen says it ("C1 cut."), a number once the storage has it. Each
round demands all that was acknowledged before, ticks and types, leaves one of each under way, and
kills every process of the browser at another moment. LONGPOINT_BROWSER names the browser, as
tests/setup finds it.
"""

import json
import os
import random
import signal
import sys
import tempfile
import time
from pathlib import Path
from typing import Any

from playwright.sync_api import BrowserContext, Error, Page, Playwright, expect, sync_playwright

from tests.bench.browser import phone
from tests.phone.app import App
from tests.phone.storage import kept_documents, put_documents, wait_until
from tests.serving import served

FIXTURE = Path(__file__).parent.parent.parent / "fixtures" / "job" / "demo.json"
JOB = json.loads(FIXTURE.read_text(encoding="utf-8"))["job"]
ENTRY, FIELD = "door-M", "casing_width"
WITHIN = 0.08
"""Seconds after the last touch in which the browser is killed."""
TICKS = 2
PATIENCE = 60_000


def end_processes(folder: Path) -> None:
    """Kill all processes that run on a browser's folder."""
    for entry in Path("/proc").glob("[0-9]*"):
        try:
            words = (entry / "cmdline").read_bytes().decode().split("\0")
            if f"--user-data-dir={folder}" in words:
                os.kill(int(entry.name), signal.SIGKILL)
        except OSError:
            continue  # it ended while we looked


def kept_job(page: Page) -> dict[str, Any]:
    body: dict[str, Any] = kept_documents(page)["job", JOB["id"]]["body"]
    return body


def typed_in(job: dict[str, Any]) -> str:
    entries = {entry["id"]: entry for item in job["items"] for entry in item["entries"]}
    return str(entries[ENTRY]["inputs"].get(FIELD, ""))


class Work:
    """A job that is worked on in a browser that keeps dying."""

    def __init__(self, address: str, rounds: int) -> None:
        self.address = address
        # A demo has pieces for some five rounds.
        self.items = [item | {"count": 1 + rounds // 5} for item in JOB["items"]]
        self.chance = random.Random(1)
        self.ticked: set[str] = set()
        self.counted = 0
        self.said = ""
        """Tag of the tick that the screen said last."""
        self.typed: set[str] = {""}
        """The number that was acknowledged last, and those begun since."""
        self.lost: list[str] = []

    def begin(self, app: App) -> None:
        """Keep the demo job on this phone."""
        app.open("#/yard")
        expect(app.page.get_by_role("heading", name="At the yard")).to_be_visible()
        job = {"kind": "job", "id": JOB["id"], "units": "in", "revision": 1, "schema": 1, "step": 0}
        body = {"body": JOB | {"items": self.items}, "listed": ["job", 1, "Demo"]}
        put_documents(app.page, self.address, job | body)
        self.typed = {typed_in(JOB)}
        app.open(f"#/job/{JOB['id']}")
        expect(app.page.locator(".entryline .medium").first).to_be_visible()

    def go_on(self, app: App, number: int) -> None:
        """Hold what is kept to what was acknowledged, and work on."""
        app.open(f"#/job/{JOB['id']}/{ENTRY}")
        expect(app.field("Casing width")).to_be_visible()
        self.check(kept_job(app.page), number)
        self.type(app, f"2 {1 + number % 15}/16")
        app.open("#/saw")
        for _ in range(TICKS):
            tag = self.tick(app.page)
            expect(app.page.locator(".saying p")).to_have_text(f"{tag} cut.", timeout=PATIENCE)
            self.said = tag
            self.ticked |= {tick["of"] for tick in kept_job(app.page)["ticks"]}
            self.counted += 1
        self.tick(app.page)

    def tick(self, page: Page) -> str:
        """Tick a piece and return its tag, another one than was said last."""
        left = page.locator(".jobsheet .tickbox[aria-checked=false][aria-label^='Cut:']")
        expect(left.first).to_be_visible(timeout=PATIENCE)
        labels = left.evaluate_all("(boxes) => boxes.map((box) => box.getAttribute('aria-label'))")
        tags = [str(label).split()[1] for label in labels]
        at = next(at for at, tag in enumerate(tags) if tag != self.said)
        # By its name: the list may move as the plan gets better.
        named = page.locator(".jobsheet").get_by_role("checkbox", name=labels[at], exact=True)
        named.first.tap()
        return tags[at]

    def type(self, app: App, text: str) -> None:
        app.enter("Casing width", text)
        self.typed.add(text)
        wait_until(app.page, lambda: typed_in(kept_job(app.page)) == text, f"{text} is kept")
        self.typed = {text}

    def check(self, job: dict[str, Any], number: int) -> None:
        ticks = {tick["of"] for tick in job.get("ticks", [])}
        self.lost += [f"round {number}: the tick of {of}" for of in self.ticked - ticks]
        if typed_in(job) not in self.typed:
            self.lost.append(f"round {number}: {self.typed}, there is {typed_in(job)!r}")


def work_on(playwright: Playwright, work: Work, folder: Path, number: int) -> None:
    """One life of the browser."""
    context: BrowserContext
    try:
        with phone(playwright, folder) as context:
            app = App(context.new_page(), work.address)
            if number == 0:
                work.begin(app)
            work.go_on(app, number)
            time.sleep(work.chance.random() * WITHIN)
            end_processes(folder)
    except Error as error:
        if "closed" not in str(error):
            raise


def lost_in(playwright: Playwright, rounds: int) -> tuple[list[str], int]:
    """Return what was lost over so many kills, and how many ticks were acknowledged."""
    with served() as address:
        work = Work(address, rounds)
        with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
            for number in range(rounds):
                work_on(playwright, work, Path(folder), number)
        return work.lost, work.counted


if __name__ == "__main__":
    with sync_playwright() as playwright:
        lost, ticked = lost_in(playwright, int(sys.argv[1]))
    print(f"{sys.argv[1]} kills, {ticked} ticks acknowledged, {len(lost)} lost")
    print(*lost, sep="\n")
    sys.exit(bool(lost))
