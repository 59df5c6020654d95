"""From the change of an input to the new figure and drawing.

`ready` is the time from the input event until figure and drawing stand in the page, styled and laid
out: all the work of app, worker and core. `painted` goes on until the browser has handed a frame
with them to the screen: a frame is asked for, and a message posted within it is heard after it.
A screen that refreshes 60 times a second lets a finished picture wait up to 16.7 ms, 8 on average;
`painted` holds that wait, whatever the app does, and its changes come at any moment of a refresh.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import cycle, islice

from playwright.sync_api import Page, expect

from tests.phone.app import App, example_hash

CHANGES = 50


@dataclass(frozen=True)
class Change:
    """A tool and the field that is changed, with values that each give another answer."""

    place: str
    slug: str
    field: str
    values: Iterable[str]
    is_in_row: bool = False


def _sixteenths(inches: int) -> list[str]:
    return [f"{inches + n // 15} {1 + n % 15}/16" for n in range(CHANGES)]


def _thousandths(first: int) -> list[str]:
    return [f"0.{first + n:03}" for n in range(CHANGES)]


TOOLS = (
    Change("saw", "mitered-frame", "field-opening_width", _sixteenths(27)),
    Change("saw", "corner-joint", "field-corner", [str(88 + n / 10) for n in range(CHANGES)]),
    Change("site", "hinge-layout", "field-leaf_thickness", _thousandths(80)),
    Change("saw", "trim-run", "field-walls-0-length", _sixteenths(140), is_in_row=True),
    Change("yard", "stock-sizes", "field-label", ["2x6", "1x4", "2x4", "4x4", "1x6"]),
)

_CHANGE = """
([id, text, pause]) => new Promise((resolve, reject) => {
  const card = document.querySelector("#answer");
  const field = document.getElementById(id);
  const before = card.textContent;
  let begun = 0;
  const late = setTimeout(() => reject(new Error(`${text} gave no other answer`)), 20_000);
  const watch = new MutationObserver(async () => {
    if (card.classList.contains("withdrawn") || card.textContent === before) return;
    watch.disconnect();
    const drawings = [...document.querySelectorAll("lp-drawing")];
    await Promise.all(drawings.map((drawing) => drawing.updateComplete));
    document.body.getBoundingClientRect(); // styles and layout count as work
    const ready = performance.now() - begun;
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        clearTimeout(late);
        resolve([ready, performance.now() - begun]);
      };
      port2.postMessage(0);
    });
  });
  watch.observe(card, { subtree: true, childList: true, attributes: true, characterData: true });
  setTimeout(() => {
    field.value = text;
    begun = performance.now();
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }, pause);
})
"""


def open_tool(page: Page, address: str, change: Change) -> None:
    """Open the tool with its example answered and the field in hand, as a thumb would have it."""
    app = App(page, address)
    app.open(example_hash(change.place, change.slug))
    expect(page.locator(".result lp-drawing:not(.ghost) svg")).to_be_visible()
    if change.is_in_row:
        page.locator(".row .summary").first.click()
    page.locator(f"#{change.field}").focus()
    expect(page.locator(".pad")).to_be_visible()


def changes(page: Page, change: Change, count: int) -> list[tuple[float, float]]:
    """Return `ready` and `painted` in milliseconds, for each of `count` changes."""
    took = []
    for turn, text in enumerate(islice(cycle(change.values), count)):
        # As between two keys of a quick thumb, and at another moment of the refresh each time.
        pause = 80 + 7 * turn % 17
        ready, painted = page.evaluate(_CHANGE, [change.field, text, pause])
        took.append((ready, painted))
    return took
