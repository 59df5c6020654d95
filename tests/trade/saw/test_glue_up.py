"""What must always hold of a glue-up: shapely joints the strips and lays them edge to edge."""

import math
from itertools import pairwise
from typing import Any

from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import box, unary_union

from tests.trade.asking import answer, at_the_door, figures

FINISHED = st.integers(min_value=64, max_value=1600)  # thirty-seconds of an inch
STOCKS = st.integers(min_value=32, max_value=400)
LOSSES = st.integers(min_value=0, max_value=8)
WAYS = st.sampled_from(["wider", "thicker"])
TOLERANCE = 1e-9


def asked(way: str, finished: int, stock: int, loss: int, **rest: Any) -> dict[str, Any]:
    names = ["finished_width", "board_width", "joint_loss"]
    if way == "thicker":
        names = ["finished_thickness", "stock_thickness", "face_loss"]
        rest = {"part_width": 3, **rest}
    assume(finished / (stock - 2 * loss) < 50)
    sizes = [finished / 32, stock / 32, loss / 32]
    return {"way": way, **dict(zip(names, sizes, strict=True)), **rest}


def fewest(finished: int, stock: int, loss: int) -> int:
    """Add a strip at a time, each joint costing both edges, until the part is made."""
    count, made = 1, stock
    while made < finished:
        count, made = count + 1, made + stock - 2 * loss
    return count


@given(WAYS, FINISHED, STOCKS, LOSSES)
def test_no_fewer_strips_would_do(way: str, finished: int, stock: int, loss: int) -> None:
    found = figures("glue-up", **asked(way, finished, stock, loss))
    assert found["strips"] == fewest(finished, stock, loss)
    assert found["rip_width"] <= stock / 32 + TOLERANCE


@given(WAYS, FINISHED, STOCKS, LOSSES)
def test_jointed_strips_laid_side_by_side_make_the_part(
    way: str, finished: int, stock: int, loss: int
) -> None:
    """Shapely: shave every glued side of every strip, push them together, measure the union."""
    found = figures("glue-up", **asked(way, finished, stock, loss))
    count, shave = found["strips"], loss / 32
    strips, at = [], 0.0
    for index in range(count):
        left, right = (shave if index else 0.0), (shave if index < count - 1 else 0.0)
        rough = box(0, 0, found["rip_width"], 1)
        jointed = rough.intersection(box(left, 0, found["rip_width"] - right, 1))
        wide = jointed.bounds[2] - jointed.bounds[0]
        strips.append(box(at, 0, at + wide, 1))
        at += wide
        name = "outer_strip" if index in (0, count - 1) else "inner_strip"
        assert count == 1 or abs(found[name] - wide) < TOLERANCE
    assert abs(unary_union(strips).area - finished / 32) < 1e-6


@given(FINISHED, STOCKS, LOSSES, st.floats(min_value=6, max_value=120))
def test_neighbors_turn_their_rings_the_other_way(
    finished: int, stock: int, loss: int, length: float
) -> None:
    got = answer("glue-up", **asked("wider", finished, stock, loss, length=length))
    turned = [row[1] for row in got["tables"][0]["rows"]]
    (strips,) = got["pieces"]
    assert strips["count"] == len(turned) == fewest(finished, stock, loss)
    assert all(one != other for one, other in pairwise(turned))


@given(
    st.floats(min_value=6, max_value=200),
    st.floats(min_value=2, max_value=24),
    st.sampled_from([("hard", 175), ("soft", 100)]),
)
def test_clamps_stand_close_enough_and_press_hard_enough(
    length: float, spacing: float, wood: tuple[str, int]
) -> None:
    """Glue makers' pressure times the joint's area; every spot within half a spacing."""
    inputs = {"finished_width": 12, "board_width": 5, "thickness": 1.5, "wood": wood[0]}
    found = figures("glue-up", **inputs, length=length, clamp_spacing=spacing)
    gap = length / found["clamps"]
    assert found["clamps"] >= 2
    assert gap <= spacing + 1e-6
    assert found["clamps"] == 2 or length / (found["clamps"] - 1) > spacing - 1e-6
    assert math.isclose(found["clamp_force"] * found["clamps"], wood[1] * length * 1.5)


def test_a_square_foot_of_line_takes_what_spread_tables_say() -> None:
    """1604.17 square feet to a gallon at one mil of film is printed in coating tables."""
    inputs = {"finished_width": 20, "board_width": 10, "joint_loss": 0, "film": 1}
    found = figures("glue-up", **inputs, length=144, thickness=1)
    assert math.isclose(found["glue"] / 128 * 1604.17, 1, rel_tol=1e-5)


def test_a_form_kept_before_still_answers_as_it_did() -> None:
    """The first version took a thickness not given for 3/4, and called the board a strip."""
    kept = {"finished_width": "22", "strip_width": "5", "length": "36"}
    form = {"do": "form", "tool": "glue-up", "version": 1, "inputs": kept}
    (piece,) = at_the_door(form)["answer"]["pieces"]
    assert (piece["thickness"], piece["width"]) == (0.75, 4.5)
    assert at_the_door(form | {"version": 2})["answer"]["pieces"][0]["thickness"] is None
