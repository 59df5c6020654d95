"""In the sun a drawing is read by its lines: letters at 7:1, lines at 4.5:1, in both looks.

The ratios are those of WCAG 2.2 (1.4.6 for letters; for lines, where 1.4.11 asks for 3:1, its ratio
for text), worked out here by its definition of relative luminance from the styles as written.
"""

import re
from itertools import product
from pathlib import Path

import pytest

STYLES = Path(__file__).parents[2] / "web" / "styles"
LETTERS, LINES = 7, 4.5
COLORS = (STYLES / "colors.css").read_text()
DRAWING = (STYLES / "drawing.css").read_text()


def tokens(block: str) -> dict[str, str]:
    return dict(re.findall(r"--([\w-]+): (#[0-9a-f]{6});", block))


LIGHT, *DARKS = [tokens(block) for block in re.findall(r"\{([^{}]*--paper[^{}]*)\}", COLORS)]
LOOKS = [pytest.param(LIGHT, id="light"), pytest.param(DARKS[0], id="dark")]


def luminance(color: str) -> float:
    def channel(at: int) -> float:
        share = int(color[at : at + 2], 16) / 255
        return float(share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4)

    return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5)


def ratio(one: str, other: str) -> float:
    low, high = sorted([luminance(one), luminance(other)])
    return (high + 0.05) / (low + 0.05)


def role_colors(role: str) -> dict[str, str]:
    """Return the names of the colors that a role's shapes are filled and drawn with."""
    rule = re.search(rf"\.drawing \.r-{role} \{{([^}}]*)\}}", DRAWING)
    assert rule, role
    return dict(re.findall(r"(fill|stroke): var\(--([\w-]+)\)", rule[1]))


ROLES = {role: role_colors(role) for role in re.findall(r"^\.drawing \.r-(\w+) \{", DRAWING, re.M)}


def test_the_dark_look_is_one() -> None:
    assert len(DARKS) == 2
    assert DARKS[0] == DARKS[1]
    assert DARKS[0].keys() == LIGHT.keys()


@pytest.mark.parametrize("look", LOOKS)
def test_letters(look: dict[str, str]) -> None:
    pairs = [*product(("ink", "pencil", "chalk", "waste"), ("paper", "card")),
             ("on-chalk", "chalk"), ("ink", "chalk-wash"), ("ink", "tape")]  # fmt: skip
    faint = {pair: ratio(*[look[name] for name in pair]) for pair in pairs}
    assert {pair: found for pair, found in faint.items() if found < LETTERS} == {}


@pytest.mark.parametrize("look", LOOKS)
def test_lines_of_drawings(look: dict[str, str]) -> None:
    fills = {colors["fill"] for colors in ROLES.values() if "fill" in colors}
    assert {"wood", "panel", "wall", "waste-wash"} <= fills
    # Any shape may lie on any other: a frame on a wall, a blade in wood.
    pairs = set(product([colors["stroke"] for colors in ROLES.values()], fills | {"paper"}))
    pairs |= {("chalk", "tape"), ("ink", "tape"), ("pencil", "paper")}
    faint = {pair: ratio(look[pair[0]], look[pair[1]]) for pair in pairs}
    assert {pair: found for pair, found in faint.items() if found < LINES} == {}
