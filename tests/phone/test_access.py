"""For everyone, and in the sun with gloves on: WCAG 2.2 by axe-core, contrast 7:1, targets of 48.

Source of the rules: WCAG 2.2, levels A and AA, as the axe-core package judges them; 7:1 is its
success criterion 1.4.6 (AAA). 48 pixels for a target are the project's own, for gloved thumbs;
WCAG asks for 24 (2.5.8).
"""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.phone.app import TOOLS, App
from tests.phone.conftest import PHONE
from tests.phone.screens import SCREENS

AXE = Path(__file__).parents[2] / "web" / "node_modules" / "axe-core" / "axe.min.js"
SMALL = {"width": 320, "height": 568}
TARGET = 48
# The rules that look at colors: only colors differ in the dark.
COLORS = ["color-contrast", "color-contrast-enhanced", "link-in-text-block"]

RUN = """
async (only) => {
  const values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
  const rules = { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } };
  const options = only
    ? { runOnly: { type: "rule", values: only } }
    : { runOnly: { type: "tag", values }, rules };
  const settings = { ...options, preload: false, resultTypes: ["violations"] };
  const found = await axe.run(document, settings);
  const ran = ["violations", "passes", "incomplete"].flatMap((kind) => found[kind]);
  return {
    contrast: ran.some((rule) => rule.id === "color-contrast-enhanced"),
    violations: found.violations.flatMap(({ id, nodes }) =>
      nodes.map((node) => [id, node.target.join(" "), node.failureSummary])),
  };
}
"""

# A control's label is part of its target: a tap on it is a tap on the control.
TARGETS = """
(least) => {
  const found = [];
  const kinds = "button, a[href], input, select, textarea, summary, [role=slider]";
  for (const element of document.querySelectorAll(kinds)) {
    if (!element.checkVisibility({ visibilityProperty: true })) continue;
    const boxes = [element, ...(element.labels ?? [])].map((each) => each.getBoundingClientRect());
    const most = (side) => Math.max(...boxes.map((box) => box[side]));
    const fewest = (side) => Math.min(...boxes.map((box) => box[side]));
    const [width, height] = [most("right") - fewest("left"), most("bottom") - fewest("top")];
    if (width >= least - 0.01 && height >= least - 0.01) continue;
    const name = element.getAttribute("aria-label") || element.textContent.trim() || element.id;
    found.push(`${element.localName} "${name}": ${width} x ${height}`);
  }
  return found;
}
"""

# Letters in a drawing are drawn over a halo, a balloon's over its own ground.
LETTERS = """
() => {
  const channel = (part) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  const light = (color) => {
    const [red, green, blue] = color.match(/[\\d.]+/g).map(Number).map(channel);
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  return [...document.querySelectorAll("svg text")].map((text) => {
    const { fill, stroke } = getComputedStyle(text);
    const ground = text.closest(".tag, .strip")?.querySelector("rect");
    const under = stroke === "none" && ground ? getComputedStyle(ground).fill : stroke;
    const [low, high] = [light(fill), light(under)].sort((a, b) => a - b);
    return { words: text.textContent, fill, under, ratio: (high + 0.05) / (low + 0.05) };
  });
}
"""


@pytest.fixture(scope="module")
def judged(shared: App) -> App:
    """The shared page with axe in it; not as a script of the page, which the policy forbids."""
    shared.page.evaluate(AXE.read_text())
    return shared


@pytest.fixture
def app(judged: App) -> Iterator[App]:
    """A phone in the hand, at a place where no test ends, so that each begins afresh."""
    judged.page.set_viewport_size(PHONE)
    judged.turn("site")
    yield judged
    judged.page.emulate_media(color_scheme="light")


def violations(app: App, only: list[str] | None = None) -> Any:
    found = app.page.evaluate(RUN, only)
    assert found["contrast"], "the rule of 7:1 did not run"
    return found["violations"]


@pytest.mark.parametrize("name", SCREENS)
def test_wcag_and_contrast(app: App, name: str) -> None:
    SCREENS[name](app)
    assert violations(app) == []
    app.page.emulate_media(color_scheme="dark")
    assert violations(app, COLORS) == []


@pytest.mark.parametrize("size", [SMALL, PHONE], ids=lambda size: str(size["width"]))
def test_targets_are_as_large_as_a_gloved_thumb(app: App, size: Any) -> None:
    app.page.set_viewport_size(size)
    small: dict[str, list[str]] = {}
    for name, show in SCREENS.items():
        app.turn("site")
        show(app)
        if found := app.page.evaluate(TARGETS, TARGET):
            small[name] = found
    assert small == {}


@pytest.mark.parametrize("look", ["light", "dark"])
def test_letters_in_drawings_stand_out(app: App, look: Any) -> None:
    app.page.emulate_media(color_scheme=look)
    letters: list[Any] = []
    for at, slug in TOOLS:
        app.turn_to_example(at, slug)
        letters += app.page.evaluate(LETTERS)
    assert letters
    assert [letter for letter in letters if letter["ratio"] < 7] == []
