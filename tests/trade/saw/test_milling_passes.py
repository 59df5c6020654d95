"""What must always hold of a board planed down, recounted with exact fractions."""

from fractions import Fraction
from typing import Any

from hypothesis import assume, given
from hypothesis import strategies as st

from tests.cases import inches
from tests.trade.asking import answer

TICKS = st.integers(min_value=8, max_value=256)  # sixty-fourths of an inch
TAKES = st.integers(min_value=1, max_value=10)
LIGHTS = st.sampled_from(["last", "first", "equal"])
FACES = st.sampled_from(["both", "one"])
TOLERANCE = 1e-9


def planed(rough: int, finished: int, per_pass: int, **rest: Any) -> dict[str, Any]:
    assume(rough > finished)
    assume(rough - finished <= 150 * per_pass)
    question = {"rough": rough / 64, "finished": finished / 64, "per_pass": per_pass / 64}
    return answer("milling-passes", scale={"step": 64}, **question, **rest)


def figures_of(got: dict[str, Any]) -> dict[str, Any]:
    return {figure["name"]: figure["value"] for figure in got["figures"]}


@given(TICKS, TICKS, TAKES, LIGHTS, FACES)
def test_no_fewer_passes_would_do(
    rough: int, finished: int, per_pass: int, light: str, faces: str
) -> None:
    """Plane it in whole sixty-fourths, a pass at a time, and count."""
    found = figures_of(planed(rough, finished, per_pass, light=light, faces=faces))
    thickness, count = rough, 0
    while thickness > finished:
        thickness -= min(per_pass, thickness - finished)
        count += 1
    assert found["passes"] == count
    assert max(found["first_pass"], found["last_pass"]) <= per_pass / 64 + TOLERANCE


@given(TICKS, TICKS, TAKES, LIGHTS, FACES)
def test_both_faces_together_lose_what_must_go(
    rough: int, finished: int, per_pass: int, light: str, faces: str
) -> None:
    found = figures_of(planed(rough, finished, per_pass, light=light, faces=faces))
    off = found["off_face_1"] + found["off_face_2"]
    assert abs(off - (rough - finished) / 64) < TOLERANCE
    if faces == "both":
        assert abs(found["off_face_1"] - found["off_face_2"]) <= per_pass / 64 + TOLERANCE
    else:
        assert found["off_face_1"] == 0


@given(TICKS, TICKS, TAKES, st.sampled_from(["last", "first"]))
def test_the_table_follows_the_board_down(
    rough: int, finished: int, per_pass: int, light: str
) -> None:
    """Every thickness is a whole sixty-fourth here, so the table's words are exact."""
    rows = planed(rough, finished, per_pass, light=light)["tables"][0]["rows"]
    thickness = Fraction(rough, 64)
    for index, (number, face, takes, leaves) in enumerate(rows):
        assert number == str(index + 1)
        assert face == ("2" if index % 2 == 0 else "1")
        thickness -= Fraction(str(inches(takes)))
        assert float(thickness) == inches(leaves)
    assert thickness == Fraction(finished, 64)


@given(st.floats(min_value=1, max_value=200), st.floats(min_value=0, max_value=12))
def test_the_blank_holds_the_part_between_two_sniped_ends(part: float, snipe: float) -> None:
    got = answer("milling-passes", rough=1, finished=0.75, part_length=part, snipe=snipe)
    blank = got["pieces"][0]["length"]
    assert abs((blank - part) / 2 - snipe) < TOLERANCE
    warned = any("shorter than" in caution for caution in got["cautions"])
    assert warned is (part + 2 * snipe < 7)


def test_more_than_the_machine_is_meant_to_take_is_said() -> None:
    """1/16 for a small planer, 1/8 for a heavy one: planer explainers and a planer's manual."""
    words = {"1/16": 0, "5/64": "small planer", "1/8": "small planer", "9/64": "even a heavy"}
    for take, said in words.items():
        cautions = answer("milling-passes", rough=2, finished=1, per_pass=take)["cautions"][:-1]
        assert (said in cautions[0]) if said else cautions == []


def test_a_hair_too_thick_is_one_pass_not_none() -> None:
    got = figures_of(answer("milling-passes", rough=1 + 1e-12, finished=1, per_pass=36))
    assert got["passes"] == 1


@given(TICKS, TICKS, TAKES, LIGHTS, FACES)
def test_no_layer_is_drawn_over_the_number_of_a_pass(
    rough: int, finished: int, per_pass: int, light: str, faces: str
) -> None:
    """What is drawn later covers what was drawn before: hatching ran through the numbers."""
    got = planed(rough, finished, per_pass, light=light, faces=faces)
    drawn = [shape["shape"] for shape in got["drawing"]["shapes"]]
    numbers = [at for at, shape in enumerate(drawn) if shape == "tag"]
    assert not numbers or drawn.index("tag") > max(
        at for at, shape in enumerate(drawn) if shape == "area"
    )
