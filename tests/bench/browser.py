"""The browser that is measured: started on a folder of its own, and slowed to a phone's pace.

There are two ways of slowing. DevTools' CPU throttling reaches the page's main thread alone: asked
to throttle a worker, Chromium 156 answers "Operation is only supported for pages, not workers".
The core runs in a worker and the files come through the service worker, so the second way holds
every process and thread of the browser: stopped by signal three parts of the time, running one.
That is the harsher figure, since the browser's own work, which a phone does on further cores, is
held with it.
"""

import os
import signal
import statistics
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, Playwright

from tests.phone.conftest import FLAGS, PHONE

SLOWER = 4
SLICE = 0.001


@contextmanager
def phone(playwright: Playwright, folder: Path) -> Iterator[BrowserContext]:
    """Start a browser the size of a phone that keeps what it has in `folder`."""
    context = playwright.chromium.launch_persistent_context(
        str(folder),
        executable_path=os.environ["LONGPOINT_BROWSER"],
        args=FLAGS,
        viewport=PHONE,
        has_touch=True,
        is_mobile=True,
    )
    try:
        yield context
    finally:
        context.close()


def process_of(folder: Path) -> int:
    """Return the id of the browser process that runs on `folder`."""
    for entry in Path("/proc").glob("[0-9]*"):
        try:
            words = (entry / "cmdline").read_bytes().decode().split("\0")
        except OSError:
            continue  # it ended while we looked
        is_child = any(word.startswith("--type=") for word in words)
        if f"--user-data-dir={folder}" in words and not is_child:
            return int(entry.name)
    raise LookupError(f"no browser runs on {folder}")


def _stop_and_go(group: int, ended: threading.Event) -> None:
    while not ended.is_set():
        begun = time.perf_counter()
        time.sleep(SLICE)
        os.killpg(group, signal.SIGSTOP)
        time.sleep((SLOWER - 1) * (time.perf_counter() - begun))
        os.killpg(group, signal.SIGCONT)


@contextmanager
def all_slowed(page: Page, folder: Path) -> Iterator[None]:
    """Let every process of the browser run a quarter of the time, a millisecond at a time."""
    group = os.getpgid(process_of(folder))
    ended = threading.Event()
    thread = threading.Thread(target=_stop_and_go, args=(group, ended))
    thread.start()
    try:
        yield
    finally:
        ended.set()
        thread.join()


@contextmanager
def page_slowed(page: Page, folder: Path) -> Iterator[None]:
    """Throttle the page's main thread as DevTools does."""
    session = page.context.new_cdp_session(page)
    session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    yield
    session.send("Emulation.setCPUThrottlingRate", {"rate": 1})
    session.detach()


@contextmanager
def unslowed(page: Page, folder: Path) -> Iterator[None]:
    """Leave the browser at the machine's own pace."""
    yield


Pace = Callable[[Page, Path], AbstractContextManager[None]]
PACES: dict[str, Pace] = {
    "unthrottled": unslowed,
    "page at 4x": page_slowed,
    "whole browser at 4x": all_slowed,
}

_LOOP = """() => {
  const begun = performance.now();
  let sum = 0;
  for (let i = 0; i < 5e7; i += 1) sum += i % 7;
  return performance.now() - begun;
}"""


def slowness(page: Page, folder: Path) -> dict[str, float]:
    """Return how many times longer than unthrottled a loop in the page takes, by pace."""
    took = {}
    for name, pace in PACES.items():
        with pace(page, folder):
            took[name] = statistics.median(page.evaluate(_LOOP) for _ in range(5))
    return {name: value / took["unthrottled"] for name, value in took.items()}
