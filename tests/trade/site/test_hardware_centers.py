"""Hardware on a leaf: shapely lays plates on stiles and rails and looks what hangs over."""

import math
from typing import Any

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.asking import answer, ask, refusals

SIZES = st.floats(min_value=0.25, max_value=12)
LEAF = {"leaf_width": 24.0, "leaf_height": 40.0}


def holes(marks: list[dict[str, Any]], leaf: str = "") -> list[tuple[float, float]]:
    """Each hole by its two marks: from the opening edge, from bottom or top."""
    own = [mark for mark in marks if mark["from"].startswith(leaf)]
    across = {mark["tag"]: mark["value"] for mark in own if mark["from"].endswith("edge")}
    up = {mark["tag"]: mark["value"] for mark in own if not mark["from"].endswith("edge")}
    assert across.keys() == up.keys()
    return [(across[tag], up[tag]) for tag in across]


@given(
    st.sampled_from(["stile", "rail", "crossing"]),
    st.sampled_from(["along", "across"]),
    SIZES,
    SIZES,
    SIZES,
    SIZES,
    st.floats(min_value=0.5, max_value=20),
)
def test_hardware_lies_on_its_part_or_is_refused(
    part: str, way: str, stile: float, rail: float, wide: float, long: float, height: float
) -> None:
    stile, rail = min(stile, 11.9), min(rail, 19.9)
    asked = LEAF | {"stile": stile, "rail": rail, "part": part, "direction": way}
    asked |= {"plate_width": wide, "plate_length": long, "height": height}
    upright = (way == "along") == (part != "rail")
    across, along = (wide, long) if upright else (long, wide)
    center = {"stile": (stile / 2, height), "rail": (12, rail / 2)}.get(part, (stile / 2, rail / 2))
    plate = shapely.box(
        center[0] - across / 2, center[1] - along / 2, center[0] + across / 2, center[1] + along / 2
    )
    stiles, rails = shapely.box(0, 0, stile, 40), shapely.box(0, 0, 24, rail)
    lies_on = stiles if part == "stile" or (part == "crossing" and upright) else rails
    reply = ask("hardware-centers", **asked)
    outside = plate.difference(lies_on).area
    if reply["ok"]:
        assert outside == pytest.approx(0, abs=1e-6)
        (hole,) = holes(reply["answer"]["marks"])
        assert hole == pytest.approx(center)
    else:
        assert outside > 0, reply


@given(st.integers(min_value=1, max_value=6), st.floats(min_value=0.5, max_value=3))
def test_pulls_on_a_rail_share_it_evenly(count: int, spacing: float) -> None:
    """Mirrored about the leaf's middle the holes are the same ones."""
    asked = LEAF | {"stile": 2, "part": "rail", "count": count, "spacing": spacing}
    found = [x for x, _ in holes(answer("hardware-centers", **asked)["marks"])]
    assert len(found) == 2 * count
    assert sorted(24 - x for x in found) == pytest.approx(sorted(found))
    centers = [(a + b) / 2 for a, b in zip(found[0::2], found[1::2], strict=True)]
    assert centers == pytest.approx([24 / count * (0.5 + index) for index in range(count)])


@given(st.floats(min_value=4, max_value=36), st.floats(min_value=1, max_value=6))
def test_the_pair_is_mirrored(height: float, spacing: float) -> None:
    asked = LEAF | {"stile": 3, "height": height, "spacing": spacing, "leaves": "2"}
    marks = answer("hardware-centers", **asked)["marks"]
    left, right = holes(marks, "left leaf"), holes(marks, "right leaf")
    assert left == right
    assert math.isclose(left[1][1] - left[0][1], spacing)
    assert len({mark["tag"] for mark in marks}) == 4


def test_a_pull_longer_than_its_leaf_is_refused() -> None:
    said = refusals("hardware-centers", **LEAF, stile=3, spacing=50)
    assert "longer than the stile of 40" in said["spacing"]
