"""An opening is laid out a second time with numpy; the leaf that is answered is hung in it."""

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon

from longpoint.trade.site.opening_survey import TOOL
from tests.trade.asking import answer, ask

Corners = np.ndarray[Any, np.dtype[np.float64]]
SIDE, HEAD, FLOOR = 1 / 8, 1 / 8, 1 / 2  # AWS 1st edition, appendix B, typical prefit.
NEAR = 0.003


@st.composite
def openings(draw: st.DrawFn) -> Corners:
    """Openings up to half an inch out at each corner, clockwise from the top left, y downwards."""
    wide, high = draw(st.floats(24, 72)), draw(st.floats(70, 100))
    off = [[draw(st.floats(-0.5, 0.5)) for _ in range(2)] for _ in range(4)]
    return np.asarray(np.array([[0, 0], [wide, 0], [wide, high], [0, high]]) + np.array(off))


def far(one: Corners, other: Corners) -> float:
    return float(np.linalg.norm(one - other))


def taped(at: Corners) -> dict[str, Any]:
    """What a tape reads, the step fine enough to read the answer's words back."""
    return {
        "width_top": far(at[0], at[1]),
        "width_bottom": far(at[3], at[2]),
        "height_left": far(at[0], at[3]),
        "height_right": far(at[1], at[2]),
        "diagonal_a": far(at[0], at[2]),
        "diagonal_b": far(at[1], at[3]),
    }


def bubbles(at: Corners) -> dict[str, Any]:
    """What a level reads over 48 and 24: right at the top, high at the right are positive."""
    lean = [(at[0] - at[3]), (at[1] - at[2])]
    rise = [(at[1] - at[0]), (at[2] - at[3])]
    return {
        "plumb_left": 48 * lean[0][0] / -lean[0][1],
        "plumb_right": 48 * lean[1][0] / -lean[1][1],
        "level_head": 24 * -rise[0][1] / rise[0][0],
        "level_sill": 24 * -rise[1][1] / rise[1][0],
    }


def figures(found: dict[str, Any]) -> dict[str, Any]:
    return {figure["name"]: figure["value"] for figure in found["figures"]}


def cut_leaf(found: dict[str, Any], place: int = 0) -> dict[str, list[float]]:
    """A leaf's corners from its blank and the marks alone, y downwards from the blank's top."""
    piece = found["pieces"][place]
    wide, high = piece["width"], piece["length"]
    at = {
        "top left": [0.0, 0.0],
        "top right": [wide, 0.0],
        "bottom right": [wide, high],
        "bottom left": [0.0, high],
    }
    for mark in found["marks"]:
        if piece["name"].lower() not in mark["from"]:
            continue
        edge = mark["label"].split(" ")[0]
        corner = mark["label"].split("off at the ")[1].split(" corner")[0]
        if edge == "Strike":
            at[corner][0] += mark["value"] if "left" in corner else -mark["value"]
        else:
            at[corner][1] += mark["value"] if edge == "Top" else -mark["value"]
    return at


def hung(leaf: Corners, opening: Corners, hinge: str) -> Corners:
    """The leaf moved to its hinge side: parallel to it, off it by the gap, under the head."""
    top, low = (opening[0], opening[3]) if hinge == "left" else (opening[1], opening[2])
    down = (low - top) / far(low, top)
    right = np.array([down[1], -down[0]])
    inward = right if hinge == "left" else -right
    edge = leaf[0] if hinge == "left" else leaf[1]
    placed = top + SIDE * inward + np.outer(leaf[:, 0] - edge[0], right)
    placed = placed + np.outer(leaf[:, 1], down)
    head = LineString(opening[:2] + np.outer([-9, 9], opening[1] - opening[0]))
    # From deep inside back up until the nearer upper corner keeps the head gap.
    deep = placed + 10 * down
    slack = min(head.distance(Point(deep[at])) for at in (0, 1)) - HEAD
    lean = down @ np.array([-(opening[1] - opening[0])[1], (opening[1] - opening[0])[0]])
    return np.asarray(deep - down * slack * far(opening[1], opening[0]) / lean)


def to_side(corners: Corners, opening: Corners, side: int) -> list[float]:
    """How far the two corners next to a side of the opening are from it, its way on included."""
    ends = opening[[side, (side + 1) % 4]]
    line = LineString(ends + np.outer([-9, 9], ends[1] - ends[0]))
    return [line.distance(Point(corners[at])) for at in (side, (side + 1) % 4)]


@given(openings(), st.sampled_from(["left", "right"]))
def test_a_tapered_leaf_leaves_even_gaps(opening: Corners, hinge: str) -> None:
    found = answer("opening-survey", **taped(opening), hinge_side=hinge, route="tapered")
    named = cut_leaf(found)
    leaf = hung(np.array(list(named.values())), opening, hinge)
    assert Polygon(opening).contains(Polygon(leaf))
    assert figures(found)["disagree"] == pytest.approx(0, abs=1e-6)
    tapered = {mark["label"].split(" ")[0] for mark in found["marks"]}
    strike = 1 if hinge == "left" else 3
    for side, edge, gap in ((0, "Top", HEAD), (strike, "Strike", SIDE), (2, "Bottom", FLOOR)):
        gaps = to_side(leaf, opening, side)
        over = 0.0 if edge in tapered else 1 / 16
        assert min(gaps) == pytest.approx(gap, abs=NEAR), edge
        assert max(gaps) <= gap + over + NEAR, edge
    assert all(mark["value"] > 1 / 16 for mark in found["marks"])


@given(openings())
def test_a_pair_closes_the_opening_with_its_gaps(opening: Corners) -> None:
    """Each leaf hung to its side: between them, above and below are the gaps, or up to 1/16."""
    found = answer("opening-survey", **taped(opening), leaves="2", route="tapered")
    assert [piece["name"] for piece in found["pieces"]] == ["Left leaf", "Right leaf"]
    hanging = []
    for place, hinge in enumerate(("left", "right")):
        leaf = hung(np.array(list(cut_leaf(found, place).values())), opening, hinge)
        hanging.append(Polygon(leaf))
        sill = to_side(leaf, opening, 2)
        assert min(sill) == pytest.approx(FLOOR, abs=NEAR)
        assert max(sill) <= FLOOR + 1 / 16 + NEAR
        assert max(to_side(leaf, opening, 0)) <= HEAD + 1 / 16 + NEAR
    # A square strike edge stands back by at most 1/16 where the other end is tight.
    apart = hanging[0].distance(hanging[1])
    assert 1 / 8 - NEAR < apart < 1 / 8 + 2 / 16


def along(direction: Corners, corner: Corners, opening: Corners, side: int) -> float:
    """How far it is from a corner to a side of the opening along a direction; negative beyond."""
    start, end = opening[side], opening[(side + 1) % 4]
    ways = np.array([direction, start - end]).T
    return float(np.linalg.solve(ways, start - corner)[0])


@given(openings(), st.sampled_from(["left", "right"]))
def test_the_gaps_of_a_square_leaf_are_those_of_a_rectangle_hung_there(
    opening: Corners, hinge: str
) -> None:
    found = answer("opening-survey", {"step": 1000}, **taped(opening), hinge_side=hinge)
    wide, high = figures(found)["leaf_width"], figures(found)["leaf_height"]
    square = np.array([[0, 0], [wide, 0], [wide, high], [0, high]])
    leaf = hung(square, opening, hinge)
    said = {row[0]: float(row[1]) for row in found["tables"][0]["rows"] if "Gap" in row[0]}
    down = (leaf[3] - leaf[0]) / high
    right = (leaf[1] - leaf[0]) / wide
    far, top, low = (right, 1, 2) if hinge == "left" else (-right, 0, 3)
    strike = 1 if hinge == "left" else 3
    gaps = {
        "Gap at the head, left": along(-down, leaf[0], opening, 0),
        "Gap at the head, right": along(-down, leaf[1], opening, 0),
        "Gap at the strike edge, top": along(far, leaf[top], opening, strike),
        "Gap at the strike edge, bottom": along(far, leaf[low], opening, strike),
        "Gap at the bottom, right": along(down, leaf[2], opening, 2),
        "Gap at the bottom, left": along(down, leaf[3], opening, 2),
    }
    assert said.keys() == gaps.keys()
    for where, gap in gaps.items():
        assert said[where] == pytest.approx(gap, abs=NEAR), where
    asked = (HEAD, HEAD, SIDE, SIDE, FLOOR, FLOOR)
    over = [gap - wanted for gap, wanted in zip(gaps.values(), asked, strict=True)]
    worst = [gap for gap, more in zip(gaps.values(), over, strict=True) if more > max(over) - NEAR]
    said_worst = figures(found)["worst_gap"]
    assert min(over) > -NEAR
    assert any(said_worst == pytest.approx(gap, abs=2 * NEAR) for gap in worst)


@given(openings(), st.sampled_from(["1", "2"]), st.sampled_from(["square", "tapered"]))
def test_the_door_built_for_the_opening_that_is_given_on_is_the_leaf(
    opening: Corners, leaves: str, route: str
) -> None:
    """What a door set makes of the opening's width and height is the survey's own leaf."""
    found = answer("opening-survey", **taped(opening), leaves=leaves, route=route)
    given_on = figures(found)
    size = {name: given_on[name] for name in ("opening_width", "opening_height")}
    frame = {"stile": 2, "panel_thickness": 0.25, "leaves": leaves, "kind": "passage"}
    built = figures(answer("door-set", **size, **frame))
    for name in ("leaf_width", "leaf_height"):
        assert built[name] == pytest.approx(given_on[name], abs=1e-9)
    sizes = [(piece["width"], piece["length"]) for piece in found["pieces"]]
    assert max(wide for wide, _ in sizes) == given_on["leaf_width"]
    assert max(high for _, high in sizes) == given_on["leaf_height"]
    if route == "square":
        assert len(set(sizes)) == 1


def test_a_form_kept_before_there_were_two_routes_still_cuts_the_tapered_leaf() -> None:
    assert TOOL.upgraded({"width_top": "36"}, 1) == {"width_top": "36", "route": "tapered"}


@given(
    openings(),
    st.sampled_from(["1", "2"]),
    st.sampled_from([None, "plumb_left", "plumb_right"]),
    st.sampled_from([None, "level_head", "level_sill"]),
)
def test_level_alone_finds_what_the_diagonals_find(
    opening: Corners, leaves: str, upright: str | None, across: str | None
) -> None:
    """One side held to plumb and one to level are enough: the others follow from the sizes."""
    tape = taped(opening)
    read = {name: gap for name, gap in bubbles(opening).items() if name not in (upright, across)}
    fine = {"step": 1000}
    both = answer("opening-survey", fine, **tape, **read, leaves=leaves)
    assert not [words for words in both["cautions"] if "contradict" in words]
    del tape["diagonal_a"], tape["diagonal_b"]
    level = answer("opening-survey", fine, **tape, **read, leaves=leaves)
    assert not [words for words in level["cautions"] if "contradict" in words]
    for one, other in zip(both["tables"], level["tables"], strict=True):
        pairs = zip(of_square(one), of_square(other), strict=True)
        for (where, gap), (_, again) in pairs:
            # A lean taken over from across is right but for the slope of the widths: 1 in 24.
            assert gap == pytest.approx(again, abs=0.04), where


@given(openings(), st.sampled_from([-1.0, 1.0]))
def test_a_level_that_contradicts_the_tape_is_warned_of(opening: Corners, way: float) -> None:
    """A bubble read half an inch wrong over 48 is off by 0.6 degrees."""
    read = bubbles(opening)
    read["plumb_left"] += way / 2
    found = answer("opening-survey", **taped(opening), **read)
    (warned,) = [words for words in found["cautions"] if "contradict" in words]
    assert "left corner" in warned


@given(openings())
def test_errors_are_those_of_the_corners(opening: Corners) -> None:
    found = figures(answer("opening-survey", **taped(opening), **bubbles(opening)))
    a, b = far(opening[0], opening[2]), far(opening[1], opening[3])
    assert found["out_of_square"] == pytest.approx(abs(a - b))
    # The slope runs over the measured side, which is a hair longer than its plumb height.
    assert found["out_of_plumb_left"] == pytest.approx(abs(opening[0][0] - opening[3][0]), abs=1e-3)
    assert found["out_of_level_head"] == pytest.approx(abs(opening[0][1] - opening[1][1]), abs=1e-3)


@given(openings(), st.floats(-1, 1))
def test_diagonals_that_no_such_sides_have_are_warned_of(opening: Corners, wrong: float) -> None:
    """The other diagonal follows from four sides and one: any error in it is a contradiction."""
    tape = taped(opening)
    tape["diagonal_b"] += wrong
    found = answer("opening-survey", **tape)
    assert figures(found)["disagree"] == pytest.approx(abs(wrong), abs=1e-6)
    warned = [words for words in found["cautions"] if "contradict" in words]
    assert bool(warned) == (abs(wrong) > 1 / 8 + 1e-9) or abs(abs(wrong) - 1 / 8) < 1e-6


@given(st.floats(24, 72), st.floats(70, 100), st.floats(1 / 64, 1))
def test_crossed_strings_tell_the_corner_that_stands_out(
    wide: float, high: float, out: float
) -> None:
    """In space: one corner of four stands out, the strings are the two diagonals."""
    corners = np.array([[0, 0, 0], [wide, 0, 0], [wide, high, out], [0, high, 0]])
    first, second = corners[2] - corners[0], corners[3] - corners[1]
    normal = np.cross(first, second)
    apart = abs((corners[1] - corners[0]) @ normal) / np.linalg.norm(normal)
    found = figures(answer("opening-survey", **taped(corners), strings=float(apart)))
    assert found["out_of_plane"] == pytest.approx(out, abs=1e-3)


@given(openings(), st.floats(0.01, 0.5), st.floats(0.01, 0.5))
def test_a_bow_is_kept_clear_of(opening: Corners, bow: float, sag: float) -> None:
    """Half way down a straight edge the leaf is as wide as the mean of its two ends."""
    tape = taped(opening)
    middle = (tape["width_top"] + tape["width_bottom"]) / 2 - bow
    height = (tape["height_left"] + tape["height_right"]) / 2 - sag
    bowed = {"width_middle": middle, "height_middle": height}
    found = answer("opening-survey", **tape, **bowed, route="tapered")
    corners = np.array(list(cut_leaf(found).values()))
    wide = (far(corners[0], corners[1]) + far(corners[3], corners[2])) / 2
    assert wide <= middle - 2 * SIDE + 0.01
    square = figures(answer("opening-survey", **tape, **bowed))
    tightest = min(tape["width_top"], middle, tape["width_bottom"])
    # The tape follows head and floor, the leaf is square to the hinge side: a slope of 1 in 24.
    assert square["leaf_width"] == pytest.approx(tightest - 2 * SIDE, abs=0.06)


@given(st.lists(st.floats(0.01, 200), min_size=6, max_size=6), st.sampled_from(["1", "2"]))
def test_whatever_is_measured_answers_or_says_why(sizes: list[float], leaves: str) -> None:
    names = ("width_top", "width_bottom", "height_left", "height_right", "plumb_left", "depth")
    inputs: dict[str, Any] = dict(zip(names, sizes, strict=True))
    reply = ask("opening-survey", **inputs, leaves=leaves)
    if not reply["ok"]:
        assert all(len(error["message"]) > 20 for error in reply["errors"])
        return
    found = reply["answer"]
    assert all(piece["width"] > 0 and piece["length"] > 0 for piece in found["pieces"])


@pytest.mark.parametrize("short", ["width", "height"])
def test_a_side_of_nearly_nothing_is_no_side(short: str) -> None:
    """A ten-millionth of an inch beside 1,200 was divided by as zero."""
    sides = {"width": ("width_top", "width_bottom"), "height": ("height_left", "height_right")}
    whole = {name: 1200.0 for names in sides.values() for name in names}
    reply = ask("opening-survey", **whole | dict.fromkeys(sides[short], 1e-7))
    assert {error["field"] for error in reply["errors"]} == set(sides[short])
    least = ask("opening-survey", **whole | dict.fromkeys(sides[short], 1 / 8))
    assert "The gaps fill all of 1/8" in least["errors"][0]["message"]


def of_square(table: dict[str, Any]) -> list[tuple[str, float]]:
    """The gaps of the leaf that stays square."""
    return [(row[0], float(row[1])) for row in table["rows"] if "Gap" in row[0]]


def warnings(found: dict[str, Any]) -> list[str]:
    return [words for words in found["cautions"] if "measure the diagonals before you cut" in words]


def tapers(found: dict[str, Any]) -> list[tuple[str, float]]:
    return [(mark["label"].split(";")[0], mark["value"]) for mark in found["marks"]]


@given(
    st.floats(24, 72),
    st.floats(70, 100),
    st.tuples(*[st.floats(-0.4, 0.4)] * 3),
    st.sampled_from(["left", "right"]),
)
def test_the_corner_taken_as_square_is_named_and_every_taper_is_doubted(
    wide: float, high: float, off: tuple[float, float, float], hinges: str
) -> None:
    """Laid out with that very corner square, the opening has just the tapers that are doubted."""
    corners = [[off[0], 0], [wide, 0], [wide, high], [off[1], high + off[2]]]
    tape = taped(np.array(corners)) | {"hinge_side": hinges, "route": "tapered"}
    sure = answer("opening-survey", **tape)
    del tape["diagonal_a"], tape["diagonal_b"]
    unsure = answer("opening-survey", **tape)
    (said,) = warnings(unsure)
    assert "the top right corner is taken as square" in said
    assert ("every taper" in said) == bool(unsure["marks"])
    assert [label for label, _ in tapers(unsure)] == [label for label, _ in tapers(sure)]
    for (_, one), (_, other) in zip(tapers(unsure), tapers(sure), strict=True):
        assert one == pytest.approx(other, abs=1e-6)
    assert all("doubtful" in mark["label"] for mark in unsure["marks"])
    assert not [mark for mark in sure["marks"] if "doubtful" in mark["label"]]


@pytest.mark.parametrize(
    ("read", "assumed"),
    [
        ({"plumb_left": 0}, "the head is taken as level"),
        ({"plumb_right": "1/8"}, "the head is taken as level"),
        ({"level_sill": "1/16"}, "the right side is taken as plumb"),
        ({"plumb_left": 0, "level_head": 0}, ""),
        ({"diagonal_a": 87.7268, "diagonal_b": 87.7268}, ""),
    ],
)
def test_what_was_not_read_is_named(read: dict[str, Any], assumed: str) -> None:
    sizes = {"width_top": 36, "width_bottom": 36, "height_left": 80, "height_right": 80}
    said = warnings(answer("opening-survey", **sizes, **read))
    assert [assumed in words for words in said] == ([True] if assumed else [])


@given(openings(), st.sampled_from(["1", "2"]), st.booleans(), st.booleans())
def test_no_line_of_size_runs_through_the_opening(
    opening: Corners, leaves: str, wide: bool, high: bool
) -> None:
    """Middle width and height crossed each other and the words; now they are words themselves."""
    tape = taped(opening)
    tape |= {"width_middle": tape["width_top"]} if wide else {}
    tape |= {"height_middle": tape["height_left"]} if high else {}
    shapes = answer("opening-survey", **tape, leaves=leaves)["drawing"]["shapes"]
    assert all(shape["lane"] for shape in shapes if shape["shape"] == "dimension")
    words = " ".join(shape["text"] for shape in shapes if shape["shape"] == "text")
    assert ["wide " in words, "high " in words] == [wide, high]


def test_a_true_opening_has_no_errors_to_draw_larger() -> None:
    """A cupboard's: its gaps are one all around, and no error is said of a true rectangle."""
    sizes = {"width_top": 30, "width_bottom": 30, "height_left": 40, "height_right": 40}
    gaps = dict.fromkeys(("side_gap", "head_gap", "floor_gap"), "3/32")
    true = answer("opening-survey", **sizes, **gaps)
    assert "gaps 3/32 all around" in true["verdict"]
    assert "errors" not in str(true["drawing"])
    wider = answer("opening-survey", **sizes | {"width_bottom": "30 1/16"}, **gaps)
    assert "errors" in str(wider["drawing"])
