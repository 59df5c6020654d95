"""An angle that can be dragged: figure and drawing follow the thumb, or the arrow keys.

A range control's keys are those of WAI-ARIA's slider pattern: an arrow is one step.
"""

import re

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.phone.app import FRAMES, App, hash_of

DOOR = {"leaf_width": "24", "door_thickness": "1 3/8", "strike_gap": "1/8"}
TARGET = 48


@pytest.fixture
def door(app: App) -> App:
    app.open(hash_of("site", "door-swing", DOOR))
    app.expect_answer()
    # The drawing takes its size, and what lies under it its place.
    expect(app.page.locator(".result svg.drawing")).to_be_visible()
    app.page.evaluate(FRAMES)
    return app


def thumb(page: Page) -> Locator:
    return page.get_by_role("slider", name="Drawn open")


def drag(slider: Locator, start: float, end: float) -> None:
    """Put a pointer on the control at a share of its width, and take it along to another."""
    slider.scroll_into_view_if_needed()
    box = slider.bounding_box()
    assert box
    x, y, mouse = box["x"], box["y"] + box["height"] / 2, slider.page.mouse
    mouse.move(x + start * box["width"], y)
    mouse.down()
    mouse.move(x + end * box["width"], y, steps=5)


def test_it_stands_under_the_drawing_with_its_name_and_says_degrees(door: App) -> None:
    slider = thumb(door.page)
    expect(slider).to_have_attribute("aria-valuetext", "30 degrees")
    box, drawing = slider.bounding_box(), door.page.locator(".result svg.drawing").bounding_box()
    assert box
    assert drawing
    assert box["height"] >= TARGET
    assert box["y"] >= drawing["y"] + drawing["height"]


def test_figure_and_drawing_follow_the_thumb_before_it_is_let_go(door: App) -> None:
    slider = thumb(door.page)
    drag(slider, 30 / 180, 0.5)
    expect(slider).to_have_attribute("aria-valuetext", "90 degrees")
    expect(door.page.locator(".result svg.drawing desc")).to_contain_text("open 90.0°")
    expect(door.page.get_by_text("Gap when open 90.0°")).to_have_count(1)
    expect(door.page.locator("#field-opening")).to_have_value("90")
    door.page.mouse.up()
    expect(door.page).to_have_url(re.compile("opening=90"))


def test_arrow_keys_turn_it_by_a_degree_and_not_past_its_ends(door: App) -> None:
    slider = thumb(door.page)
    slider.press("ArrowRight")
    expect(slider).to_have_attribute("aria-valuetext", "31 degrees")
    expect(door.page.locator(".result svg.drawing desc")).to_contain_text("open 31.0°")
    slider.press("End")
    slider.press("ArrowRight")
    expect(slider).to_have_attribute("aria-valuetext", "180 degrees")
    expect(door.page.locator(".result svg.drawing desc")).to_contain_text("open 180.0°")


def test_what_is_typed_moves_it(door: App) -> None:
    door.page.get_by_role("button", name="More").click()
    door.page.locator("#field-opening").fill("45")
    expect(thumb(door.page)).to_have_value("45")


def test_before_there_is_a_door_there_is_nothing_to_drag(app: App) -> None:
    app.open(hash_of("site", "door-swing"))
    expect(app.headline).to_contain_text(re.compile("Check|Still needed"))
    expect(thumb(app.page)).to_have_count(0)
