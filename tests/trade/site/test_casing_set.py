"""A set of casing laid out again from its pieces: it goes around the opening, no more, no less."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, box
from shapely.ops import unary_union

from longpoint.trade.lengths import Scale
from longpoint.trade.shelf import tool_named
from tests.trade.asking import answer, ask, figures

HEADS = st.sampled_from(["miter", "butt", "blocks"])
WIDE, HIGH = st.floats(12, 72), st.floats(30, 100)
SIDE, REVEAL = st.floats(1, 6), st.floats(1 / 8, 0.5)


def pieces(found: dict[str, Any]) -> dict[str, dict[str, Any]]:
    return {piece["name"]: piece for piece in found["pieces"]}


def face(piece: dict[str, Any]) -> float:
    """A trapezoid's area is its mean length times its width; all alike ones together."""
    short = piece["length"] if piece["short_point"] is None else piece["short_point"]
    return float(piece["count"] * piece["width"] * (piece["length"] + short) / 2)


@given(WIDE, HIGH, SIDE, REVEAL, HEADS, st.booleans())
def test_casing_fills_the_ring_round_the_opening(
    wide: float, high: float, side: float, reveal: float, head: str, closed: bool
) -> None:
    """All round, or on three sides: the area between reveal line and outer edge, block by block."""
    inputs: dict[str, Any] = {"opening_width": wide, "opening_height": high, "casing_width": side}
    inputs["casing_thickness"] = 11 / 16
    inputs |= {"reveal": reveal, "head": head, "opening": "around" if closed else "door"}
    found = answer("casing-set", **inputs, overhang=0, block_size=side)
    low = -reveal if closed else 0.0
    inner = box(-reveal, low, wide + reveal, high + reveal)
    outer = box(
        -reveal - side, low - (side if closed else 0), wide + reveal + side, high + reveal + side
    )
    ring = outer.difference(inner).area
    assert sum(face(piece) for piece in found["pieces"]) == pytest.approx(ring)


@given(WIDE, HIGH, SIDE, REVEAL, HEADS, st.booleans(), st.none() | st.floats(1, 12))
def test_the_drawing_is_of_the_pieces(
    wide: float,
    high: float,
    side: float,
    reveal: float,
    head: str,
    closed: bool,
    plinth: float | None,
) -> None:
    """Drawn parts lie beside each other, cover what the pieces cover, and keep off the jamb."""
    inputs: dict[str, Any] = {"opening_width": wide, "opening_height": high, "casing_width": side}
    inputs["casing_thickness"] = 11 / 16
    inputs |= {"reveal": reveal, "head": head, "opening": "around" if closed else "door"}
    found = answer("casing-set", **inputs, plinth_height=plinth)
    drawn = [
        Polygon(shape["points"])
        for shape in found["drawing"]["shapes"]
        if shape["role"] in ("stock", "panel")
    ]
    whole = unary_union(drawn)
    assert sum(part.area for part in drawn) == pytest.approx(whole.area)
    assert sum(face(piece) for piece in found["pieces"]) == pytest.approx(whole.area)
    assert whole.intersection(box(0, 0, wide, high)).area == pytest.approx(0, abs=1e-6)
    bounds = whole.bounds
    shown = {figure["name"]: figure["value"] for figure in found["figures"]}
    assert shown["outside_height"] == pytest.approx(bounds[3] - bounds[1])
    if plinth is None or closed:
        assert shown["outside_width"] == pytest.approx(bounds[2] - bounds[0])


@given(WIDE, HIGH, SIDE, st.floats(1, 6), REVEAL)
def test_mitered_heads_are_those_of_a_mitered_frame(
    wide: float, high: float, side: float, top: float, reveal: float
) -> None:
    inputs: dict[str, Any] = {"opening_width": wide, "opening_height": high, "reveal": reveal}
    casing = {"opening": "door", "casing_width": side, "casing_thickness": 11 / 16}
    found = figures("casing-set", **inputs, **casing, head_width=top)
    around = inputs | {"fit": "around", "sides": "3"}
    frame = figures("mitered-frame", **around, trim_width=side, top_width=top)
    assert found["head_long"] == pytest.approx(frame["top_long"])
    assert found["head_short"] == pytest.approx(frame["top_short"])
    assert found["leg_long"] == pytest.approx(frame["side_long"])
    assert found["saw_head"] == pytest.approx(frame["saw_top"])


@given(WIDE, HIGH, st.floats(2, 6), REVEAL, HEADS, st.floats(0, 1), st.booleans())
def test_stool_and_apron_go_with_the_casing(
    wide: float, high: float, side: float, reveal: float, head: str, nose: float, returns: bool
) -> None:
    """From above: the stool's front strip and its returns make a rectangle again."""
    found = answer(
        "casing-set",
        opening="stool",
        opening_width=wide,
        opening_height=high,
        casing_width=side,
        casing_thickness=11 / 16,
        reveal=reveal,
        head=head,
        stool_nose=nose,
        returns=returns,
    )
    parts = pieces(found)
    stool, apron = parts["Stool"]["length"], parts["Apron"]["length"]
    assert apron == pytest.approx(wide + 2 * reveal + 2 * side)
    assert stool - apron == pytest.approx(2 * nose)
    notches = [mark["value"] for mark in found["marks"] if mark["from"].startswith("stool")]
    assert notches[1] - notches[0] == pytest.approx(wide)
    assert stool - notches[1] == pytest.approx(notches[0])
    assert found["pieces"][0]["name"] == "Stool"
    assert found["pieces"][-1]["name"] == ("Apron return" if returns else "Apron")
    if not returns:
        assert parts["Stool"]["short_point"] is None
        return
    out = parts["Stool return"]["length"]
    assert out == pytest.approx(11 / 16 + nose)
    strip = out * (stool + parts["Stool"]["short_point"]) / 2
    corner = Polygon([(0, 0), (out, 0), (0, out)])
    assert strip + 2 * corner.area == pytest.approx(box(0, 0, stool, out).area)


@given(WIDE, HIGH, SIDE, HEADS, st.sampled_from(["door", "stool", "around"]))
def test_every_piece_says_where_it_is_measured(
    wide: float, high: float, side: float, head: str, opening: str
) -> None:
    inputs: dict[str, Any] = {"opening_width": wide, "opening_height": high, "casing_width": side}
    inputs["casing_thickness"] = 11 / 16
    found = answer("casing-set", **inputs, head=head, opening=opening)
    table = found["tables"][0]
    for piece, row in zip(found["pieces"], table["rows"], strict=True):
        assert row[0] == piece["tag"] + " " + piece["name"]
        assert row[1]
        assert row[2] in (piece["text"], piece["short_text"])


@given(
    st.lists(st.just(0.0) | st.floats(1 / 64, 60), min_size=7, max_size=7),
    HEADS,
    st.sampled_from(["door", "stool", "around"]),
)
def test_whatever_is_typed_answers_or_says_why(sizes: list[float], head: str, opening: str) -> None:
    names = ["opening_width", "opening_height", "casing_width", "reveal", "plinth_height"]
    names += ["casing_thickness", "apron_thickness"]
    inputs: dict[str, Any] = dict(zip(names, sizes, strict=True))
    reply = ask("casing-set", **inputs, head=head, opening=opening)
    if not reply["ok"]:
        assert all(len(error["message"]) > 20 for error in reply["errors"])
        return
    for piece in reply["answer"]["pieces"]:
        assert piece["length"] > 0
        assert piece["short_point"] is None or piece["short_point"] > 0


@given(st.floats(min_value=16, max_value=120), st.floats(min_value=16, max_value=96))
def test_numbers_of_stool_and_apron_stand_side_by_side(width: float, height: float) -> None:
    """Both boards are thin, and a balloon is 22 pixels wide on some 300 of drawing."""
    sizes = {"opening_width": width, "opening_height": height, "casing_width": 3.5}
    sizes["casing_thickness"] = 11 / 16
    view = answer("casing-set", opening="stool", **sizes)["drawing"]
    stool, apron = [
        next(s["at"][0] for s in view["shapes"] if s["shape"] == "tag" and s["text"] == tag)
        for tag in ("1", "5")
    ]
    assert abs(stool - apron) > width / 4


def test_a_form_kept_by_version_1_answers_as_it_did() -> None:
    """It said neither what was cased nor how thick: a door, 11/16. Hand: 32 1/4 + 2 x 3/16."""
    tool = tool_named("casing-set")
    kept = {"width": "32 1/4", "height": "80 5/8", "casing_width": "3 1/2"}
    found = tool.answer(tool.upgraded(kept, 1), Scale())
    shown = {figure["name"]: figure["value"] for figure in found["figures"]}
    assert shown["head_short"] == 32.625
    assert {piece["thickness"] for piece in found["pieces"]} == {11 / 16}
    assert "stool_length" not in shown
