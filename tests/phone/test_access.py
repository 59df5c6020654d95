"""For everyone, in the sun, on every phone: WCAG 2.2 as axe-core judges it, contrast 7:1, sizes.

Source of the rules: WCAG 2.2, levels A and AA; 7:1 is its success criterion 1.4.6 (AAA), and the
formula for letters in drawings, which axe-core leaves out, its definition of contrast ratio.
"""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect

from tests.phone.app import App
from tests.phone.conftest import PHONE
from tests.phone.screens import SCREENS
from tests.phone.test_layout import faults_by_size

AXE = Path(__file__).parents[2] / "web" / "node_modules" / "axe-core" / "axe.min.js"
CONTRAST = 7
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
  const shown = [...document.querySelectorAll("svg text")].filter((text) => text.checkVisibility());
  return shown.map((text) => {
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
    judged.turn("site")
    yield judged
    judged.page.emulate_media(color_scheme="light")
    judged.page.set_viewport_size(PHONE)


def violations(app: App, only: list[str] | None = None) -> Any:
    found = app.page.evaluate(RUN, only)
    assert found["contrast"], "the rule of 7:1 did not run"
    return found["violations"]


def faint_letters(app: App, name: str) -> list[Any]:
    letters: list[Any] = app.page.evaluate(LETTERS)
    assert letters or not name.endswith("answered"), "a drawing without a letter"
    return [letter for letter in letters if letter["ratio"] < CONTRAST]


@pytest.mark.parametrize("name", SCREENS)
def test_wcag_contrast_and_sizes(app: App, name: str) -> None:
    """Nothing is cut off, nothing overlaps, nothing is too small to tap."""
    SCREENS[name](app)
    if name.endswith("answered"):
        expect(app.page.locator(".result svg.drawing")).to_be_visible()
    assert violations(app) == []
    assert faint_letters(app, name) == []
    app.page.emulate_media(color_scheme="dark")
    assert violations(app, COLORS) == []
    assert faint_letters(app, name) == []
    app.page.emulate_media(color_scheme="light")
    assert faults_by_size(app, name) == {}
