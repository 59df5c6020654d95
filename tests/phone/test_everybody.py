"""Everybody's hands and eyes: few colors, no touch, a reader's order, a job on all its screens.

WCAG 2.2: 1.3.2 (order), 2.1.1 and 2.1.2 (keyboard, no trap), 2.4.7 (focus seen), 2.3.3 (motion);
forced colors are CSS Color Adjustment 1. What each tool must hold is in `test_access`, with large
letters too in `test_layout`.
"""

import json
import re
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, FilePayload, expect

from tests.phone.app import FRAME, App, hash_of
from tests.phone.conftest import page_of
from tests.phone.job_screens import picture
from tests.phone.test_access import AXE, COLORS, CONTRAST, LETTERS, violations
from tests.phone.test_search import PIECES, STEPS, STICKS

MOST_STOPS = 150

# Focus is seen by an outline or a ring that is not there without it, on the control or on the card
# that stands for it.
SEEN = """
() => {
  const at = document.activeElement;
  const around = [at, at.nextElementSibling, at.closest(".field"), at.closest("label")];
  const rings = () => around.filter(Boolean).map((each) => {
    const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(each);
    const outline = outlineStyle === "none" || parseFloat(outlineWidth) < 2 ? "" : outlineWidth;
    return `${outline} ${boxShadow}`;
  });
  const focused = rings();
  at.blur();
  const without = rings();
  at.focus({ focusVisible: true });
  return focused.some((ring, each) => ring !== without[each]);
}
"""


@pytest.fixture(scope="module")
def judged(browser: Browser, address: str) -> Iterator[App]:
    """One page for all, on which nothing moves, with axe in it."""
    page = page_of(browser, reduced_motion="reduce")
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    page.add_init_script(STEPS)  # A search can be held while it is looked at.
    app = App(page, address)
    app.open("#/site")
    page.evaluate(AXE.read_text())
    page.evaluate("letGo(1e9)")
    yield app
    page.context.close()
    assert errors == []


@pytest.fixture
def app(judged: App) -> Iterator[App]:
    judged.turn("site")
    yield judged
    judged.page.keyboard.press("Escape")
    judged.page.emulate_media(forced_colors="none", color_scheme="light")


def demo(app: App) -> str:
    """Open the demo job, once, and return its address."""
    app.page.goto(f"{app.address}/#/job")
    button = app.page.get_by_role("button", name="Open the demo job")
    card = app.page.locator(".jobcard")
    expect(button.or_(card).first).to_be_visible()
    if card.count():
        card.tap()
    else:
        button.tap()
    expect(app.page.locator(".entryline .medium").nth(16)).to_be_visible()
    return str(app.page.evaluate("location.hash"))


def look(app: App, name: str) -> list[Any]:
    """Return what axe finds in both looks, and letters of drawings that are too faint."""
    found = []
    for scheme in ("light", "dark"):
        app.page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
        found += violations(app, None if scheme == "light" else COLORS)
        letters = app.page.evaluate(LETTERS)
        found += [each for each in letters if each["ratio"] < CONTRAST]
    app.page.emulate_media(color_scheme="light")
    return [name, *found] if found else []


def test_a_job_on_all_its_screens(app: App) -> None:
    page, faults = app.page, []
    address = demo(app)
    faults += look(app, "job")
    page.get_by_role("button", name="Job and customer").tap()
    expect(page.get_by_role("dialog", name="Job and customer")).to_be_visible()
    faults += look(app, "job and customer")
    page.keyboard.press("Escape")
    page.locator(".itemtitle").first.tap()
    wall = FilePayload(name="wall.png", mimeType="image/png", buffer=picture(64, 48))
    page.locator("lp-photos input[type=file]").set_input_files(wall)
    expect(page.locator("lp-photo")).to_have_count(1)
    faults += look(app, "item with a photo")
    page.keyboard.press("Escape")
    expect(page.get_by_role("dialog")).to_have_count(0)

    page.goto(f"{app.address}/{address}/stock")
    expect(page.get_by_role("button", name="A stock")).to_be_visible()
    faults += look(app, "stock")
    page.goto(f"{app.address}/{address}/quote")
    page.get_by_role("button", name="Begin the quote").tap()
    expect(page.get_by_role("region", name="Price", exact=True)).to_be_visible()
    faults += look(app, "quote")
    for place in ("yard", "saw", "site"):
        app.turn(place)
        box = page.locator(".tickbox[aria-checked=false]").first
        label = box.get_attribute("aria-label") or ""
        # By its name: the list may still move.
        page.get_by_role("checkbox", name=label, exact=True, checked=False).first.tap()
        ticked = page.get_by_role("checkbox", name=label, exact=True, checked=True)
        expect(ticked.first).to_be_visible()
        faults += look(app, f"ticked at the {place}")
    page.goto(f"{app.address}/#/job")
    expect(page.locator(".jobcard")).to_be_visible()
    faults += look(app, "jobs")
    rows = {"pieces": json.dumps(PIECES), "sticks": json.dumps(STICKS), "kerf": "1/8"}
    page.evaluate("letGo(-1e9)")
    app.turn("saw", "stick-plan", hash_of("saw", "stick-plan", rows))
    expect(page.get_by_role("progressbar")).to_be_visible()
    faults += look(app, "search running")
    page.evaluate("letGo(2e9)")
    assert faults == []


# Lines of drawings and what is chosen, in the person's own colors.
OWN_COLORS = """
() => {
  const own = (names) => names.map((name) => {
    const probe = document.body.appendChild(document.createElement("i"));
    probe.style.color = name;
    const { color } = getComputedStyle(probe);
    probe.remove();
    return color;
  });
  const [text, link, ground] = own(["CanvasText", "LinkText", "Canvas"]);
  const paints = (element) => getComputedStyle(element);
  const shapes = document.querySelectorAll(".drawing :is(.area, .line, .bar, .circle, .arc)");
  const odd = [...shapes].filter((shape) => ![text, link].includes(paints(shape).stroke));
  const filled = [...shapes].filter((shape) => ![ground, "none"].includes(paints(shape).fill));
  const [on, off] = ["input:checked", "input:not(:checked)"]
    .map((which) => paints(document.querySelector(`.option ${which} + span`)).backgroundColor);
  return { shapes: shapes.length, odd: odd.length, filled: filled.length, told: on !== off,
    place: paints(document.querySelector(".places [aria-current]")).textDecorationLine };
}
"""


def test_few_colors_and_nothing_that_moves(app: App) -> None:
    for scheme in ("light", "dark"):
        app.page.emulate_media(forced_colors="active", color_scheme=scheme)  # type: ignore[arg-type]
        app.turn_to_example("saw", "mitered-frame")
        expect(app.page.locator(".result svg.drawing")).to_be_visible()
        found = app.page.evaluate(OWN_COLORS)
        assert found.pop("shapes") > 10
        assert found == {"odd": 0, "filled": 0, "told": True, "place": "underline"}
        assert app.page.evaluate(LETTERS)
        assert [at for at in app.page.evaluate(LETTERS) if at["ratio"] < CONTRAST] == []
    app.field("Opening width").tap()
    expect(app.pad).to_be_visible()
    moves = "() => getComputedStyle(document.querySelector('.pad')).animationName"
    assert app.page.evaluate(moves) == "none"
    app.page.emulate_media(reduced_motion="no-preference")
    assert app.page.evaluate(moves) == "rise"
    app.page.emulate_media(reduced_motion="reduce")


def tab_to(app: App, selector: str) -> None:
    """Press Tab until a control has the focus; at each stop the focus is seen."""
    for _ in range(MOST_STOPS):
        app.page.keyboard.press("Tab")
        if app.page.evaluate("document.activeElement === document.body"):
            continue
        assert app.page.evaluate(SEEN), app.page.evaluate("document.activeElement.outerHTML")
        if app.page.evaluate("(at) => document.activeElement.matches(at)", selector):
            return
    pytest.fail(f"{selector} is not reached by Tab")


def test_a_question_and_a_tick_without_a_touch(app: App) -> None:
    page = app.page
    demo(app)
    app.turn("saw")
    tab_to(app, "[role=checkbox][aria-checked=false]")
    label = page.evaluate("document.activeElement.ariaLabel")
    page.keyboard.press("Space")
    ticked = page.get_by_role("checkbox", name=label, exact=True, checked=True)
    expect(ticked.first).to_be_visible()

    app.turn("saw", "mitered-frame")
    expect(app.headline).to_contain_text("Still needed")
    tab_to(app, "#field-fit")
    page.keyboard.press("Space")
    for name in ("opening_width", "opening_height", "trim_width"):
        tab_to(app, f"#field-{name}")
        page.keyboard.type(FRAME[name])
    app.expect_answer("27 and 13/16")
    tab_to(app, "main summary")
    page.keyboard.press("Enter")
    expect(page.locator("main details[open]").first).to_be_visible()
    tab_to(app, ".places a")  # past all that is in the page: nothing holds the focus

    tab_to(app, "[aria-label^='Units and settings']")
    page.keyboard.press("Enter")
    dialog = page.get_by_role("dialog", name="How it is shown")
    expect(dialog).to_be_visible()
    tab_to(app, "dialog button")
    page.keyboard.press("Escape")
    expect(dialog).to_have_count(0)
    expect(page.get_by_role("button", name="Units and settings")).to_be_focused()


def test_the_order_in_which_a_tool_is_read(app: App) -> None:
    app.turn_to_example("saw", "mitered-frame")
    expect(app.page.locator(".result svg.drawing")).to_be_visible()
    read = app.page.locator("body").aria_snapshot()
    order = [
        'heading "Mitered frame"', 'radiogroup "Frame goes"', 'textbox "Opening width"',
        'region "Answer"', "status", "img", 'heading "Cut', "Keep guards", "Take care",
        "Start over", 'navigation "Places"',
    ]  # fmt: skip
    assert re.search(".*".join(map(re.escape, order)), read, re.DOTALL), read
