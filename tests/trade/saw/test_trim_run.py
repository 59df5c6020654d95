"""Trim runs, checked by laying the pieces that were answered along the walls of real rooms.

Rooms are polygons; shapely says what their walls' trim must fill. Nothing here knows how the
answer was worked out: a piece is its marked length, its two settings and where its long points are.
"""

import json
import math
from typing import Any

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Polygon

from tests.trade import asking

SLACK = 1e-6
Room = list[tuple[float, float]]


def answer(inputs: dict[str, Any]) -> dict[str, Any]:
    return asking.answer("trim-run", **inputs)


def walls_of(room: Room) -> list[dict[str, Any]]:
    """Measure a room as a person would: lengths by Pythagoras, corners by the dot product."""
    walls = []
    for at in range(len(room)):
        a, b, c = (np.array(room[(at + step) % len(room)]) for step in range(3))
        back, on = a - b, c - b
        cosine = back @ on / np.linalg.norm(back) / np.linalg.norm(on)
        # Clockwise seen from above with y upward: a right turn has a negative cross product.
        right = (b - a)[0] * on[1] - (b - a)[1] * on[0] < 0
        walls.append(
            {
                "length": float(np.linalg.norm(b - a)),
                "corner": math.degrees(math.acos(cosine)),
                "turn": "inside" if right else "outside",
            }
        )
    return walls


def buildable(room: Room) -> bool:
    """Tell whether a room has neither slivers of corners nor stubs of walls."""
    return all(25 < wall["corner"] < 165 and wall["length"] > 20 for wall in walls_of(room))


@st.composite
def round_rooms(draw: st.DrawFn) -> Room:
    """Rooms of three to seven walls whose corners all see one point, clockwise."""
    count = draw(st.integers(3, 7))
    jitter = [draw(st.floats(-0.35, 0.35)) for _ in range(count)]
    radii = [draw(st.floats(60, 160)) for _ in range(count)]
    angles = [-2 * math.pi * (at + off) / count for at, off in enumerate(jitter)]
    return [
        (far * math.cos(angle), far * math.sin(angle))
        for far, angle in zip(radii, angles, strict=True)
    ]


@st.composite
def notched_rooms(draw: st.DrawFn) -> Room:
    """L-shaped rooms, and ones with a chimney breast too, sheared, listed from any wall."""
    a, b, c, d, e, f = (draw(st.floats(25, 120)) for _ in range(6))
    room = [(0, 0), (0, a + b), (c + d, a + b), (c + d, a), (c, a), (c, 0)]
    if draw(st.booleans()):
        high = a + b
        breast = [(0, high + e), (c, high + e), (c, high), (c + f, high), (c + f, high + e)]
        room = [(0, 0), *breast, (c + d + f, high + e), (c + d + f, a), (c, a), (c, 0)]
    lean = draw(st.floats(-0.7, 0.7))
    start = draw(st.integers(0, len(room) - 1))
    leaning = [(x + lean * y, y) for x, y in room]
    return leaning[start:] + leaning[:start]


def rooms() -> st.SearchStrategy[Room]:
    return st.one_of(round_rooms(), notched_rooms()).filter(buildable)


def face_reach(end: dict[str, Any], thickness: float) -> float:
    """Return how far the face passes the back, from the setting and the words on the end."""
    past = thickness * math.tan(math.radians(end["saw"]))
    if "long point back" in end["note"] or end["joint"] == "cope":
        return -past
    return past if "long point face" in end["note"] else 0.0


def lay(room: Room, pieces: list[dict[str, Any]], thickness: float) -> list[Polygon]:
    """Put the pieces up in order, each on what the earlier ones left free of its wall.

    Each must fill that from end to end: a piece that runs through finds the corner still free, a
    piece that dies in finds its neighbor there.
    """
    laid: list[Polygon] = []
    for at, piece in enumerate(pieces):
        start, end = np.array(room[at]), np.array(room[(at + 1) % len(room)])
        along = (end - start) / np.linalg.norm(end - start)
        inward = np.array([along[1], -along[0]])
        free = LineString([start, end])
        for one in laid:
            free = free.difference(one.buffer(SLACK / 10))
        assert free.geom_type == "LineString"
        assert free.length == pytest.approx(piece["length"], abs=SLACK)
        first, last = np.array(free.coords[0]), np.array(free.coords[-1])
        left, right = (face_reach(end, thickness) for end in piece["ends"])
        corners = [
            first,
            last,
            last + right * along + thickness * inward,
            first - left * along + thickness * inward,
        ]
        laid.append(Polygon(corners))
    return laid


@settings(max_examples=200, deadline=None)
@given(rooms(), st.sampled_from(["butt", "miter"]), st.sampled_from([0.5, 0.625, 1.5]))
def test_pieces_fill_the_edge_of_a_closed_room(room: Room, joint: str, thickness: float) -> None:
    """Laid along the walls the pieces fill the band at the walls, without a gap or an overlap."""
    got = answer(
        {
            "walls": walls_of(room),
            "closed": True,
            "trim_thickness": thickness,
            "inside_joint": joint,
        }
    )
    laid = lay(room, got["pieces"], thickness)
    outline = Polygon(room)
    band = outline.difference(outline.buffer(-thickness, join_style="mitre", mitre_limit=100))
    assert sum(piece.area for piece in laid) == pytest.approx(band.area, abs=1e-3)
    assert shapely.union_all(laid).symmetric_difference(band).area < 1e-3


@settings(max_examples=100, deadline=None)
@given(rooms(), st.integers(2, 5), st.sampled_from(["butt", "miter"]))
def test_pieces_of_an_open_run_cover_its_walls(room: Room, count: int, joint: str) -> None:
    """Where the run stops short of coming round, no piece overlaps another and no wall is bare."""
    count = min(count, len(room) - 1)
    walls = walls_of(room)[:count]
    walls[-1]["turn"] = "open"
    got = answer(
        {"walls": walls, "first_end": "open", "trim_thickness": 0.75, "inside_joint": joint}
    )
    laid = lay(room, got["pieces"], 0.75)
    assert sum(one.area for one in laid) == pytest.approx(shapely.union_all(laid).area, abs=1e-3)
    for at in range(count):
        wall = LineString([room[at], room[at + 1]])
        assert wall.difference(shapely.union_all(laid).buffer(1e-4)).length < 1e-3


@settings(max_examples=100, deadline=None)
@given(rooms(), st.floats(0.25, 2))
def test_coped_pieces_are_marked_as_long_as_their_walls(room: Room, thickness: float) -> None:
    """Coped joints take nothing off the mark, whatever the corner and the stock."""
    walls = walls_of(room)
    got = answer({"walls": walls, "closed": True, "trim_thickness": thickness})
    lengths = [piece["length"] for piece in got["pieces"]]
    assert lengths == pytest.approx([wall["length"] for wall in walls], abs=SLACK)


@settings(max_examples=100, deadline=None)
@given(rooms(), st.sampled_from(["cope", "butt"]))
def test_one_piece_runs_through_at_each_inside_corner(room: Room, joint: str) -> None:
    """At an inside corner one piece dies into the other; at an outside one both are mitered."""
    walls = walls_of(room)
    got = answer({"walls": walls, "closed": True, "trim_thickness": 0.625, "inside_joint": joint})[
        "pieces"
    ]
    for at, wall in enumerate(walls):
        ends = [got[at]["ends"][1], got[(at + 1) % len(got)]["ends"][0]]
        names = [end["joint"] for end in ends]
        if wall["turn"] == "outside":
            assert names == ["miter", "miter"]
            assert sum(end["saw"] for end in ends) == pytest.approx(180 - wall["corner"])
        else:
            assert names.count(joint) == 1
            later = got[max(at, (at + 1) % len(got))]
            assert joint in [end["joint"] for end in later["ends"]], "the later piece dies in"


@settings(max_examples=100, deadline=None)
@given(rooms(), st.integers(-8, 8).filter(lambda off: off != 0))
def test_a_run_that_closes_is_not_doubted_and_one_that_does_not_is(room: Room, off: int) -> None:
    """A measured polygon closes; with one corner off by whole degrees it is said by how many."""
    walls = walls_of(room)
    asked = {"walls": walls, "closed": True, "trim_thickness": 0.5, "inside_joint": "miter"}
    assert not [note for note in answer(asked)["notes"] if "add up" in note or "misses" in note]
    walls[0]["corner"] += off
    more = (off > 0) == (walls[0]["turn"] == "inside")
    said = f"{abs(off)}.0° too {'much' if more else 'little'}"
    assert [note for note in answer(asked)["notes"] if said in note]


lengths = st.integers(16 * 30, 16 * 800).map(lambda sixteenths: sixteenths / 16)


@settings(max_examples=200, deadline=None)
@given(
    lengths,
    st.sampled_from([96.0, 144.0, 192.0]),
    st.sampled_from([30, 45, 60]),
    st.sampled_from([0.5, 0.75, 1.0]),
)
def test_scarfs_use_few_sticks_and_leave_no_short_end(
    wall: float, stick: float, angle: float, thickness: float
) -> None:
    """Fewest pieces, none over a stick, none under half of one, every lap paid for."""
    walls = [{"length": wall, "turn": "open"}]
    got = answer(
        {
            "walls": walls,
            "first_end": "open",
            "trim_thickness": thickness,
            "stick": stick,
            "scarf": angle,
        }
    )
    figures = {figure["name"]: figure["value"] for figure in got["figures"]}
    pieces = [piece["length"] for piece in got["pieces"]]
    lap = thickness * math.tan(math.radians(angle))
    assert figures["scarf_count"] == len(pieces) - 1
    assert sum(pieces) == pytest.approx(wall + lap * (len(pieces) - 1))
    assert figures["total_length"] == pytest.approx(sum(pieces))
    assert figures["to_buy"] == pytest.approx(sum(pieces) + 2 * (len(pieces) - 1))
    assert max(pieces) <= stick + SLACK
    if len(pieces) > 1:
        assert min(pieces) >= stick / 2
        fewer = len(pieces) - 1
        assert fewer * stick - (fewer - 1) * lap < wall, "one piece fewer would not reach"


@settings(max_examples=100, deadline=None)
@given(
    st.floats(100, 700),
    st.tuples(st.floats(45, 150), st.floats(45, 150)),
    st.sampled_from([20, 30, 45, 60]),
)
def test_scarfed_pieces_make_up_the_whole_between_two_outside_corners(
    wall: float, corners: tuple[float, float], angle: float
) -> None:
    """Laid lap over lap, the parts of a wall fill the plan of one long piece, points included."""
    thickness, stick = 0.75, 96.0
    walls = [
        {"length": 20, "turn": "outside", "corner": corners[0]},
        {"length": wall, "turn": "outside", "corner": corners[1]},
        {"length": 20, "turn": "open"},
    ]
    got = answer(
        {
            "walls": walls,
            "first_end": "open",
            "trim_thickness": thickness,
            "stick": stick,
            "scarf": angle,
        }
    )["pieces"]
    parts, at = [], 0.0
    for piece in got[1:-1]:
        left, right = (face_reach(end, thickness) for end in piece["ends"])
        over = left if piece["ends"][0]["joint"] == "scarf" else 0.0
        end = at + piece["length"] - over
        shape = [(at, 0), (end, 0), (end + right, thickness), (at - left, thickness)]
        parts.append(Polygon(shape))
        assert parts[-1].bounds[2] - parts[-1].bounds[0] <= stick + SLACK
        at = end
    past = [thickness / math.tan(math.radians(corner) / 2) for corner in corners]
    whole = Polygon([(0, 0), (wall, 0), (wall + past[1], thickness), (-past[0], thickness)])
    assert shapely.union_all(parts).symmetric_difference(whole).area < 1e-3
    assert sum(part.area for part in parts) == pytest.approx(whole.area, abs=1e-3)


def test_plan_is_drawn_clockwise_with_the_room_inside() -> None:
    """Seen from above the walls of a room run clockwise: y down, so a positive signed area."""
    square = [{"length": 144}, {"length": 120}, {"length": 144}, {"length": 120}]
    drawing = answer({"walls": square, "closed": True, "trim_thickness": 0.625})["drawing"]
    starts = [shape["from"] for shape in drawing["shapes"] if shape["shape"] == "line"]
    outline = Polygon(starts)
    signed = sum(
        a[0] * b[1] - a[1] * b[0] for a, b in zip(starts, starts[1:] + starts[:1], strict=True)
    )
    assert signed / 2 == pytest.approx(144 * 120)
    for shape in drawing["shapes"]:
        if shape["shape"] == "area":
            assert outline.buffer(SLACK).contains(Polygon(shape["points"]))


odd = st.one_of(
    st.floats(allow_nan=False, allow_infinity=False),
    st.integers(),
    st.booleans(),
    st.none(),
    st.sampled_from(
        [
            "",
            "0",
            "-5",
            "3/0",
            "1e400",
            "1/64",
            "179.99999999999997",
            "1e-14",
            "inside",
            "outside",
            "open",
            "casing",
            "cope",
            "butt",
            "miter",
            "wall",
            "9" * 10000,
        ]
    ),
)
near = st.one_of(st.sampled_from([1e-300, 1e-9, 0.1, 1, 45, 89.99999999, 90, 179.9999999999]), odd)
odd_walls = st.lists(
    st.fixed_dictionaries(
        {"length": near},
        optional={
            "corner": near,
            "turn": st.sampled_from(["inside", "outside", "open", "casing"]),
        },
    ),
    max_size=5,
)


odd_openings = st.lists(
    st.fixed_dictionaries(
        {"wall": st.integers(-1, 5), "from_left": near, "width": near},
        optional={"stop": st.sampled_from(["casing", "open"])},
    ),
    max_size=3,
)


@settings(max_examples=500, deadline=None)
@given(
    st.fixed_dictionaries(
        {"walls": odd_walls, "trim_thickness": near},
        optional={
            "closed": st.booleans(),
            "openings": odd_openings,
            "first_end": odd,
            "inside_joint": st.sampled_from(["cope", "miter", "butt"]),
            "spring": near,
            "stick": near,
            "scarf": near,
        },
    )
)
def test_whatever_is_typed_gets_figures_or_a_sentence(inputs: dict[str, Any]) -> None:
    """No traceback, no NaN, no piece without length: an answer or a refusal on a field."""
    got = asking.ask("trim-run", **inputs)
    assert json.dumps(got, allow_nan=False), "no NaN or infinity, drawings included"
    if got["ok"]:
        assert all(piece["length"] > 0 for piece in got["answer"]["pieces"])
    else:
        assert all(error["field"] and error["message"] for error in got["errors"])


CLOSING = "set Closed run to yes"


def closing_cautions(inputs: dict[str, Any]) -> list[str]:
    return [words for words in answer(inputs)["cautions"] if CLOSING in words]


@given(rooms(), st.sampled_from(["cope", "miter", "butt"]))
def test_walls_all_round_a_room_are_not_taken_for_an_open_run_in_silence(
    room: Room, joint: str
) -> None:
    walls = walls_of(room)
    asked = {"walls": walls, "trim_thickness": 0.5, "inside_joint": joint}
    said = closing_cautions(asked)
    assert len(said) == (walls[-1].get("turn", "inside") == "inside")
    assert not closing_cautions(asked | {"closed": True})


@pytest.mark.parametrize(
    ("changes", "closes"),
    [
        ({}, True),
        # Half an inch is what tapes and walls differ by; five inches is another corner.
        ({2: {"length": 143.5}}, True),
        ({2: {"length": 139}}, False),
        ({3: {"turn": "casing"}}, False),
        ({1: {"turn": "casing"}}, False),
        ({1: {"corner": 135}}, False),
    ],
)
def test_four_walls_that_meet_again_are_a_closed_run(
    changes: dict[int, dict[str, Any]], closes: bool
) -> None:
    walls = [{"length": length} for length in (144, 120, 144, 120)]
    walls = [wall | changes.get(at, {}) for at, wall in enumerate(walls)]
    assert bool(closing_cautions({"walls": walls, "trim_thickness": 0.625})) == closes


def test_an_end_at_a_casing_does_not_collide() -> None:
    walls = [{"length": length} for length in (144, 120, 144, 120)]
    assert not closing_cautions({"walls": walls, "trim_thickness": 0.625, "first_end": "casing"})


def test_what_to_buy_is_said_with_its_unit() -> None:
    # Hand: 144 + 120 + 144 + 120 is 528 inches, 44 feet, 13.41 meters; 2 inches are 51 mm, four
    # corners are four joints: 536 inches, 44.7 feet, 13.61 meters.
    walls = [{"length": length} for length in (144, 120, 144, 120)]
    asked: dict[str, Any] = {"walls": walls, "closed": True, "trim_thickness": 0.625}
    for units, total, buying, over in (
        ("in", "44 ft", "44.7 ft", "2 in more"),
        ("mm", "13.41 m", "13.61 m", "51 mm more"),
    ):
        got = asking.answer("trim-run", {"units": units}, **asked)
        figures = {figure["name"]: figure["also"] for figure in got["figures"]}
        assert (figures["total_length"], figures["to_buy"]) == (total, buying)
        assert any(over + " for each joint, 4 here" in note for note in got["notes"])


def test_the_joint_drawn_is_the_one_with_the_odd_angle() -> None:
    walls = [{"length": 90}, {"length": 60, "corner": 92}, {"length": 60, "turn": "outside"}]
    drawn = answer({"walls": [*walls, {"length": 40}], "trim_thickness": 0.625})["details"][0]
    assert drawn["title"] == "Joint of 2 and 3 from above, to scale"
    assert "92.0°" in drawn["description"]


def test_a_door_is_drawn_in_its_wall_and_trim_stops_beside_it() -> None:
    asked = {"walls": [{"length": 120, "turn": "open"}], "trim_thickness": 0.75}
    door = {"wall": 1, "from_left": 30, "width": 40}
    shapes = answer(asked | {"openings": [door]})["drawing"]["shapes"]
    areas = {role: [] for role in ("stock", "clearance")}
    for shape in shapes:
        if shape["shape"] == "area" and shape["role"] in areas:
            areas[shape["role"]].append(Polygon(shape["points"]))
    (opening,) = areas["clearance"]
    assert (opening.bounds[0], opening.bounds[2]) == (30, 70)
    assert all(stock.intersection(opening).area == 0 for stock in areas["stock"])
    assert sum(stock.bounds[2] - stock.bounds[0] for stock in areas["stock"]) == 80


def test_tags_stay_while_only_sizes_change() -> None:
    """A wall grows past its stick and back, a door moves: the other pieces keep their numbers."""
    door = {"wall": 1, "from_left": 30, "width": 40}
    walls = [{"length": 120}, {"length": 90}]
    asked: dict[str, Any] = {"openings": [door], "trim_thickness": 0.75, "stick": 96}
    tags = [piece["tag"] for piece in answer(asked | {"walls": walls})["pieces"]]
    assert tags == ["1.1", "1.2", "2"]
    walls[1] = {"length": 100}
    assert [p["tag"] for p in answer(asked | {"walls": walls})["pieces"]] == [*tags[:2], "2a", "2b"]
    asked["openings"] = [door | {"from_left": 0}]
    assert [p["tag"] for p in answer(asked | {"walls": walls})["pieces"]] == ["1.2", "2a", "2b"]


def test_a_piece_stands_in_one_short_line() -> None:
    """A phone 390 wide has room for some 45 letters a line; two lines hold any common piece."""
    walls = [{"length": 144}, {"length": 86.375, "turn": "outside"}, {"length": 38.5}]
    got = answer({"walls": [*walls, {"length": 50, "turn": "casing"}], "trim_thickness": 0.625})
    assert all(len(piece["ends_text"]) <= 75 for piece in got["pieces"])
