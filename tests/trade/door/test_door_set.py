"""A door built again from its pieces alone closes up to the leaf, and the leaves to the opening."""

import json
import math
from fractions import Fraction
from typing import Any

from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import Polygon, box, unary_union

from longpoint.trade.calls import call
from longpoint.trade.door.door_set import TOOL

NEAR = 1e-6
GAPS = ("side_gap", "head_gap", "floor_gap", "meeting_gap")


def ask(inputs: dict[str, Any]) -> dict[str, Any]:
    request = {"do": "answer", "tool": "door-set", "inputs": inputs, "units": "in", "step": 16}
    reply: dict[str, Any] = json.loads(call(json.dumps(request)))
    return reply


def inches(least: int, most: int) -> st.SearchStrategy[float]:
    """Sixteenths from `least` to `most` inches."""
    return st.integers(16 * least, 16 * most).map(lambda n: n / 16)


@st.composite
def doors(draw: st.DrawFn) -> dict[str, Any]:
    """Doors of which most can be built: mid rails are drawn evenly up the leaf and moved a bit."""
    height = draw(inches(60, 110))
    mids = draw(st.integers(0, 4))
    step = height / (mids + 1)
    rails = [
        {"center": (place + 1) * step + draw(inches(-2, 2)), "width": draw(inches(1, 6))}
        for place in range(mids)
    ]
    door: dict[str, Any] = {
        "kind": draw(st.sampled_from(["inset", "passage"])),
        "opening_width": draw(inches(30, 80)),
        "opening_height": height,
        "leaves": draw(st.sampled_from(["1", "2"])),
        "stile": draw(inches(1, 6)),
        "top_rail": draw(inches(1, 6)),
        "bottom_rail": draw(inches(1, 10)),
        "mid_rails": draw(st.permutations(rails)),
        "panel_thickness": 0.5,
        "bevel": draw(st.sampled_from([0, 2, 3])),
        "groove_depth": draw(st.sampled_from([0.25, 0.375, 0.4375, 0.5, 0.75])),
        "panel_play": draw(st.sampled_from([0, 0.0625, 0.125, 0.1875])),
        "tenon_length": draw(st.sampled_from([None, 0.25, 0.5, 1.0])),
        "board_width": draw(st.sampled_from([None, 3.5, 5.5, 7.25, 11.25])),
    }
    door |= {name: draw(st.sampled_from([0, 0.0625, 0.125, 0.1875, 0.5])) for name in GAPS}
    return door


def built(door: dict[str, Any]) -> dict[str, Any]:
    reply = ask(door)
    assume(reply["ok"])
    answer: dict[str, Any] = reply["answer"]
    return answer


def of_leaf(answer: dict[str, Any], number: int) -> list[dict[str, Any]]:
    pieces: list[dict[str, Any]] = answer["pieces"]
    size = len(pieces) // int(answer["inputs"]["leaves"])
    return pieces[number * size : (number + 1) * size]


def assembled(
    pieces: list[dict[str, Any]], door: dict[str, Any], tenon: float
) -> tuple[list[Polygon], list[Polygon]]:
    """Lay the pieces of one leaf from the bottom up as a joiner would: each rail's shoulders on
    the stiles, each panel into the groove of the rail below it and centered in its play.

    Nothing is known here but the pieces, the groove, the play and the tenon.
    """
    stiles, rails, panels = (
        [piece for piece in pieces if word in piece["name"].lower()]
        for word in ("stile", "rail", "panel")
    )
    shoulder = stiles[0]["width"]
    right = shoulder + rails[0]["length"] - 2 * tenon
    frame = [
        box(0, 0, shoulder, stiles[0]["length"]),
        box(right, 0, right + stiles[1]["width"], stiles[1]["length"]),
    ]
    laid, up = [], 0.0
    for rail, panel in zip(rails[::-1], [*panels[::-1], None], strict=True):
        frame.append(box(shoulder - tenon, up, right + tenon, up + rail["width"]))
        up += rail["width"]
        if panel:
            foot = up - door["groove_depth"] + door["panel_play"]
            left = (shoulder + right - panel["width"]) / 2
            laid.append(box(left, foot, left + panel["width"], foot + panel["length"]))
            up = foot + panel["length"] + door["panel_play"] - door["groove_depth"]
    return frame, laid


@given(doors())
@settings(max_examples=150, deadline=None)
def test_the_pieces_close_up_to_the_leaf(door: dict[str, Any]) -> None:
    answer = built(door)
    shown = {figure["name"]: figure["value"] for figure in answer["figures"]}
    leaf = box(0, 0, shown["leaf_width"], shown["leaf_height"])
    for number in range(int(door["leaves"])):
        frame, panels = assembled(of_leaf(answer, number), door, shown["tenon_length"])
        whole = unary_union(frame + panels)
        assert whole.symmetric_difference(leaf).area < NEAR
        assert abs(math.dist(whole.bounds[:2], whole.bounds[2:]) - shown["diagonal"]) < NEAR


@given(doors())
@settings(max_examples=100, deadline=None)
def test_every_panel_is_held_on_four_sides_and_has_its_play(door: dict[str, Any]) -> None:
    answer = built(door)
    tenon = next(f["value"] for f in answer["figures"] if f["name"] == "tenon_length")
    frame, panels = assembled(of_leaf(answer, 0), door, tenon)
    stiles_and_rails = unary_union([*frame[:2], *(_to_shoulders(b, frame) for b in frame[2:])])
    whole = box(*unary_union(frame).bounds)
    sights = pieces_of(whole.difference(stiles_and_rails))
    assert len(sights) == len(panels)
    for sight, panel in zip(sights, panels, strict=True):
        held = [abs(a - b) for a, b in zip(sight.bounds, panel.bounds, strict=True)]
        assert max(abs(side - (door["groove_depth"] - door["panel_play"])) for side in held) < NEAR


def pieces_of(shape: Any) -> list[Polygon]:
    """The separate polygons of a shape, lowest first."""
    return sorted(getattr(shape, "geoms", [shape]), key=lambda one: one.bounds[1])


def _to_shoulders(rail: Polygon, frame: list[Polygon]) -> Polygon:
    return rail.difference(unary_union(frame[:2]))


@given(doors())
@settings(max_examples=100, deadline=None)
def test_leaves_and_gaps_fill_the_opening(door: dict[str, Any]) -> None:
    answer = built(door)
    wide, high = (Fraction(door[name]) for name in ("opening_width", "opening_height"))
    shown = {
        figure["name"]: Fraction(figure["value"])
        for figure in answer["figures"]
        if figure["kind"] == "length"
    }
    leaves = int(door["leaves"])
    across = leaves * shown["leaf_width"] + 2 * Fraction(door["side_gap"])
    across += (leaves - 1) * Fraction(door["meeting_gap"])
    assert across == wide
    assert shown["leaf_height"] + Fraction(door["head_gap"]) + Fraction(door["floor_gap"]) == high


@given(doors())
@settings(max_examples=100, deadline=None)
def test_no_board_is_wider_than_the_stock_and_the_strips_make_up_the_part(
    door: dict[str, Any],
) -> None:
    assume(door["board_width"] is not None)
    answer = built(door)
    tables = {table["name"]: table["rows"] for table in answer["tables"]}
    glued = {row[0]: row for name, rows in tables.items() if "Glue-ups" in name for row in rows}
    strips = {tag: int(row[2]) for tags, row in glued.items() for tag in tags.split(", ")}
    off = math.tan(math.radians(door["bevel"])) * answer["inputs"]["door_thickness"]
    pair = door["leaves"] == "2"
    for piece in answer["pieces"]:
        planed = "Meeting" in piece["name"] if pair else "stile" in piece["name"]
        rough = piece["width"] + 0.25 + (off if planed else 0)
        if rough <= door["board_width"]:
            assert piece["tag"] not in strips
            continue
        assert piece["stock"].startswith("glue-up")
        count = strips[piece["tag"]]
        assert count * (door["board_width"] - 0.125) + 0.125 >= rough - NEAR
        fewer = count - 1
        assert fewer == 1 or fewer * (door["board_width"] - 0.125) + 0.125 < rough


def notes_of(**inputs: Any) -> str:
    sheet = {"opening_width": 24, "opening_height": 30, "stile": 2, "panel_thickness": 0.25}
    reply = ask({"kind": "inset", "panel_of": "sheet", **sheet, **inputs})
    return " ".join(reply["answer"]["notes"])


def test_the_play_that_a_sheet_gets_is_the_one_advised() -> None:
    """With nothing said it is 1/16; only a larger one that was typed is remarked on."""
    assert "hardly moves" not in notes_of()
    assert "hardly moves" not in notes_of(panel_play="1/16")
    assert "hardly moves" in notes_of(panel_play="1/8")


def test_a_cupboard_is_not_told_of_a_foot_to_stand_on() -> None:
    assert "foot to stand on" not in notes_of()
    assert "foot to stand on" in notes_of(kind="passage", opening_height=80)


def test_a_form_kept_before_kinds_were_asked_still_makes_the_same_door() -> None:
    """Version 1: a passage door 1 3/8 thick with square edges, a play of 1/8 for sheets too."""
    old = {"width": 36, "height": 80, "stile": 5, "panel_thickness": "1/2", "panel_of": "sheet"}
    reply = ask(TOOL.upgraded(old, 1))
    shown = {figure["name"]: figure["value"] for figure in reply["answer"]["figures"]}
    # 36 - 1/4 - 10 + 3/4 - 1/4 by hand.
    assert (shown["leaf_width"], shown["panel_width"]) == (35.75, 26.25)
    assert (shown["stock_thickness"], "bevel_off" in shown) == (1.375, False)


@given(
    width=st.floats(0.01, 12000), height=st.floats(0.01, 12000), stile=st.floats(0.01, 12000),
    panel=st.floats(0.01, 3), groove=st.floats(0.01, 20), leaves=st.sampled_from(["1", "2"]),
    mids=st.lists(
        st.fixed_dictionaries({"center": st.floats(0.01, 200), "width": st.floats(0.01, 100)}),
        max_size=3,
    ),
)  # fmt: skip
@settings(max_examples=200, deadline=None)
def test_any_sizes_are_answered_or_refused_on_a_field_that_was_asked(
    width: float, height: float, stile: float, panel: float, groove: float, leaves: str,
    mids: list[dict[str, float]],
) -> None:  # fmt: skip
    inputs = {"opening_width": width, "opening_height": height, "stile": stile}
    inputs["panel_thickness"] = panel
    reply = ask(
        {"kind": "passage", **inputs, "groove_depth": groove, "leaves": leaves, "mid_rails": mids}
    )
    if reply["ok"]:
        assert reply["answer"]["details"]
        assert all(piece["length"] > 0 < piece["width"] for piece in reply["answer"]["pieces"])
        return
    for error in reply["errors"]:
        assert error["field"].split(".")[0] in {one.name for one in TOOL.inputs}
        assert error["message"].endswith(".")
