"""Whatever tool shows a setting past a miter saw's reach says that it is past it.

That most miter saws stop at about 50 degrees: common practice, no source.
"""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.asking import answer

WORDS = "A setting past about 50°"
SQUARE = {"fit": "inside", "opening_width": 40, "opening_height": 40, "trim_width": 5}
SLANTED = {
    "fit": "inside",
    "width_top": 32,
    "height_right": 15,
    "width_bottom": 41,
    "height_left": 12,
    "diagonal_a": 42.72,
    "trim_width": 2,
}
DOOR = {"opening": "door", "opening_width": 30, "opening_height": 80, "casing_thickness": 0.75}
WIDTHS = st.floats(min_value=0.5, max_value=8)


def warned(found: dict[str, Any]) -> int:
    """Return how often the answer warns."""
    return sum(WORDS in caution for caution in found["cautions"])


def sharpest(found: dict[str, Any]) -> float:
    """Return the largest setting among the figures and on the ends of the pieces."""
    shown = [abs(f["value"]) for f in found["figures"] if f["name"].startswith("saw")]
    return max(shown + [abs(end["saw"]) for piece in found["pieces"] for end in piece["ends"]])


@given(WIDTHS, WIDTHS, WIDTHS, st.sampled_from("34"))
def test_a_frame_warns_once_when_a_setting_is_past_the_saw(
    side: float, top: float, bottom: float, sides: str
) -> None:
    widths = {"trim_width": side, "top_width": top, "bottom_width": bottom}
    found = answer(
        "mitered-frame", fit="inside", opening_width=60, opening_height=60, sides=sides, **widths
    )
    assert warned(found) == (sharpest(found) > 50)


@given(st.floats(min_value=30, max_value=150), WIDTHS, WIDTHS)
def test_a_corner_warns_for_a_setting_to_either_side(
    corner: float, width_a: float, width_b: float
) -> None:
    found = answer("corner-joint", corner=corner, width_a=width_a, width_b=width_b)
    assert warned(found) == (sharpest(found) > 50)


@pytest.mark.parametrize(
    ("tool", "inputs", "past"),
    [
        # Hand: atan(5/2) is 68.2 beside a top of 2; both 45 where the widths are alike.
        ("mitered-frame", SQUARE | {"top_width": 2}, True),
        ("mitered-frame", SQUARE, False),
        # Only the bottom is narrow.
        ("mitered-frame", SQUARE | {"bottom_width": 2}, True),
        ("casing-set", DOOR | {"casing_width": 5, "head_width": 2}, True),
        ("casing-set", DOOR | {"casing_width": 3.5}, False),
        # Hand: three sides are cut at 180/3 = 60, four at 45.
        ("polygon-frame", {"sides": 3, "size": 40, "trim_width": 2}, True),
        ("polygon-frame", {"sides": 4, "size": 40, "trim_width": 2}, False),
        # Hand: an inside corner of 60 mitered is cut at 90 - 30 = 60.
        (
            "trim-run",
            {
                "walls": [{"length": 90, "corner": 60}, {"length": 90}],
                "trim_thickness": 0.5,
                "inside_joint": "miter",
            },
            True,
        ),
        # Hand: a side that runs 9 out in 12 meets the bottom at 53.1, cut at 90 - 26.6.
        ("odd-frame", SLANTED, True),
        # Hand: nested, a corner of 70 is cut at 90 - 35.
        ("crown-corner", {"corner": 70, "spring": 38}, True),
        ("crown-corner", {"corner": 90, "spring": 38}, False),
        # Hand: for a corner of 70 the saw stands at 55 before it is turned.
        ("miter-fit", {"trim_width": 3, "gap": "1/64", "corner": 70}, True),
        ("miter-fit", {"trim_width": 3, "gap": "1/64"}, False),
        # Hand: three upright sides tilt at asin(sin 60) = 60; four sides leaning 15 swing at 14.5.
        ("splayed-box", {"sides": 3, "lean": 0}, True),
        ("splayed-box", {"sides": 4, "lean": 15}, False),
    ],
)
def test_every_saw_tool_warns_past_fifty(tool: str, inputs: dict[str, Any], past: bool) -> None:
    assert warned(answer(tool, **inputs)) == past
