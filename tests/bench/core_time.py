"""The core's own time in the phone's runtime: each tool of the shelf asked for its worked example.

Each tool gets a worker of its own, as if it were the first one opened: `first` holds the import of
the tool and of all it needs, `again` is the median of later calls. The way of the text from page to
worker and back is in both.
"""

import json
import statistics
from dataclasses import dataclass

from playwright.sync_api import Browser, Page

from longpoint.trade.shelf import tool_named
from tests.phone.app import TOOLS
from tests.phone.core_worker import START, start_files

AGAIN = 20

_ASK = """
async (text) => {
  const begun = performance.now();
  const said = await window.ask({ text });
  const took = performance.now() - begun;
  if (said.fault || !JSON.parse(said.text).ok) throw new Error(said.fault ?? said.text);
  return [took, said.text.length];
}
"""


@dataclass(frozen=True)
class CoreTime:
    """Milliseconds of one tool's example, and the characters of its answer."""

    slug: str
    boot: float
    first: float
    again: float
    length: int


def _timed(page: Page, slug: str, again: int) -> CoreTime:
    files = start_files(slug)
    boot = page.evaluate(
        f"""async (files) => {{
          const begun = performance.now();
          await ({START})(files);
          return performance.now() - begun;
        }}""",
        files,
    )
    inputs = tool_named(slug).example
    request = {"do": "answer", "tool": slug, "inputs": inputs, "units": "in", "step": 16}
    text = json.dumps(request)
    first, length = page.evaluate(_ASK, text)
    later = statistics.median(page.evaluate(_ASK, text)[0] for _ in range(again))
    return CoreTime(slug, boot, first, later, length)


def core_times(browser: Browser, address: str, again: int = AGAIN) -> list[CoreTime]:
    """Return every tool's times, in the order of the shelf."""
    times = []
    for _, slug in TOOLS:
        page = browser.new_page(service_workers="block")
        page.goto(address)
        times.append(_timed(page, slug, again))
        page.close()
    return times
