"""Reading and showing lengths, against arithmetic with exact fractions."""

from collections.abc import Callable
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.trade.lengths import (
    Scale,
    read_length,
    show_angle,
    show_money,
    show_number,
)
from longpoint.trade.measure import Measure, read_angle, read_count
from longpoint.trade.reading import Unreadable

EXACTLY = 27 + Fraction(13, 16)


@pytest.mark.parametrize(
    "text",
    [
        "27 13/16", "27-13/16", '27 13/16"', "2' 3 13/16\"", "2'-3-13/16\"", "2 ft 3 13/16 in",
        "2′ 3 13/16″", "27.8125", "27 13⁄16", "  27   13/16 inches", "20 + 7 13/16",
        "28 - 3/16", "27 13/16 full", "27 13/16 shy",
    ],
)  # fmt: skip
def test_reads_what_carpenters_write(text: str) -> None:
    assert read_length(text) == EXACTLY


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("13/16", Fraction(13, 16)),
        ("27½", Fraction(55, 2)),
        ("½", Fraction(1, 2)),
        ("2 ft 3 in", 27),
        ("3'", 36),
        ("27 13/16 - 2 1/2", EXACTLY - Fraction(5, 2)),
        ("27 - 13/16", 27 - Fraction(13, 16)),
        ("-5", -5),
        (".5", Fraction(1, 2)),
        ("706 mm", Fraction(7060, 254)),
        ("70.6 cm", Fraction(7060, 254)),
        ("0.706 m", Fraction(7060, 254)),
    ],
)
def test_reads_parts_sums_and_the_metric_system(text: str, inches: Fraction) -> None:
    assert read_length(text) == pytest.approx(float(inches), abs=1e-12)


def outcome(read: Callable[[], float]) -> float | str:
    try:
        return read()
    except Unreadable as unreadable:
        return str(unreadable)


@given(st.text("0123456789./ m", max_size=18), st.sampled_from(["in", "mm", "ft"]))
def test_a_bare_number_is_read_as_the_whole_grammar_reads_it(text: str, units: str) -> None:
    whole = outcome(lambda: Measure(text, units).total())
    assert outcome(lambda: read_length(text, units)) == whole


@given(st.integers(0, 999), st.integers(0, 70), st.integers(0, 70), st.sampled_from(["", " mm"]))
def test_a_mixed_number_is_read_as_the_whole_grammar_reads_it(
    whole: int, over: int, under: int, unit: str
) -> None:
    text = f"{whole} {over}/{under}{unit}"
    assert outcome(lambda: read_length(text)) == outcome(lambda: Measure(text, "in").total())


def test_a_bare_number_is_in_the_units_in_force() -> None:
    assert read_length("254", "mm") == 10
    assert read_length('10"', "mm") == 10


@pytest.mark.parametrize(
    "text",
    [
        "", " ", "-", "abc", "3/0", "1,5", "27 17/16", "27 13", "1/2/3", "1.5/2", "..", "27..1",
        "2 in 3", "--5", "5 +", "3°", "1" * 10_000, "9" * 20, "27 shy 3", "shy", "\ud800", "𝟚",
    ],
)  # fmt: skip
def test_what_is_no_length_gets_a_sentence(text: str) -> None:
    with pytest.raises(Unreadable, match=r"\w+ .*[.?]$"):
        read_length(text)


@given(st.text(max_size=70))
def test_any_text_is_read_or_refused(text: str) -> None:
    try:
        length = read_length(text)
    except Unreadable:
        return
    assert abs(length) < 1e18


SIXTEENTHS = st.integers(min_value=-16 * 1200, max_value=16 * 1200)


@given(SIXTEENTHS, st.sampled_from([16, 32, 64]))
def test_reading_what_was_shown_gives_back_a_sixteenth(ticks: int, step: int) -> None:
    inches = ticks / 16
    assert read_length(Scale("in", step).length(inches)) == inches


LENGTHS = st.floats(min_value=0, max_value=1200)
SCALES = st.builds(Scale, st.sampled_from(["in", "mm"]), st.sampled_from([8, 16, 32, 64, 1000]))


@given(LENGTHS, SCALES)
def test_reading_what_was_shown_gives_back_the_shown_length(inches: float, scale: Scale) -> None:
    again = read_length(scale.length(inches), scale.units)
    assert again == pytest.approx(scale.shown(inches), abs=1e-9)


@given(LENGTHS, st.sampled_from([8, 16, 32, 64]))
def test_shown_is_the_nearest_step_and_says_which_way(inches: float, step: int) -> None:
    scale = Scale("in", step)
    left = (Fraction(inches) - Fraction(scale.shown(inches))) * step
    assert abs(left) <= Fraction(1, 2) + Fraction(1, 10**6)
    text = scale.length(inches)
    if abs(left) > Fraction(1, 4) + Fraction(1, 10**6):
        assert text.endswith(" full" if left > 0 else " shy")
    if abs(left) < Fraction(1, 4):
        assert not text.endswith(("full", "shy"))


@pytest.mark.parametrize(
    ("inches", "step", "text"),
    [
        (15 + 63 / 64, 16, "16"),
        (15 + 63 / 64, 64, "15 63/64"),
        (0.5, 16, "1/2"),
        (-0.5, 16, "-1/2"),
        (-(27 + 13 / 16), 16, "-27 13/16"),
        (0, 16, "0"),
        (60 + 3 / 64, 16, "60 1/16"),  # exactly a quarter of a step off: not more
        (60 + 5 / 128, 16, "60 1/16 shy"),
        (60 + 11 / 128, 16, "60 1/16 full"),
        (27.8125, 1000, "27.813"),
    ],
)
def test_fractions_reduce_carry_and_lean(inches: float, step: int, text: str) -> None:
    assert Scale("in", step).length(inches) == text


@pytest.mark.parametrize(
    ("step", "text"), [(16, "706 mm full"), (32, "706.5 mm"), (64, "706.4 mm"), (1000, "706.40 mm")]
)
def test_millimeters(step: int, text: str) -> None:
    assert Scale("mm", step).length(706.4 / 25.4) == text


def test_a_row_of_marks_is_rounded_each_from_the_one_datum() -> None:
    third = 100 / 3
    shown = [Scale().shown(third * number) for number in range(1, 31)]
    assert max(abs(mark - third * (at + 1)) for at, mark in enumerate(shown)) <= 1 / 32


def test_angles_and_numbers() -> None:
    assert read_angle("22 1/2") == read_angle("22.5°") == read_angle("22° 30'") == 22.5
    assert show_angle(22.55) == "22.6°"
    assert show_angle(-0.04) == "0.0°"
    assert (show_number(12.5), show_number(3), show_number(0.125, 3)) == ("12.5", "3", "0.125")
    assert (show_money(1234.125), show_money(-2)) == ("$1,234.13", "-$2.00")
    assert read_count(" 12 ") == 12
    for wrong in ("3.5", "-1", "", "two"):
        with pytest.raises(Unreadable):
            read_count(wrong)
