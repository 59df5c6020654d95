"""What must hold for any groove, and the stack search against plain enumeration."""

import itertools
import json
from fractions import Fraction
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.trade.calls import call
from longpoint.trade.lengths import Scale
from longpoint.trade.refusal import Refusal
from longpoint.trade.saw.groove_and_tenon import TOOL
from longpoint.trade.saw.groove_and_tenon.stacks import MOST_SUMS, TooManySums, nearest_stacks

Parts = list[tuple[int, int]]

# Ten thousandths of an inch: whole numbers, so that the oracle's sums are exact.
UNIT = 10000
CHIPPERS = st.lists(
    st.tuples(st.sampled_from([1250, 625, 938, 313, 1181]), st.integers(1, 4)), max_size=4
)
SHIMS = st.lists(
    st.tuples(st.sampled_from([40, 50, 80, 100, 120, 200, 310]), st.integers(1, 3)), max_size=4
)


def floats(parts: Parts) -> list[tuple[float, int]]:
    return [(thickness / UNIT, count) for thickness, count in parts]


def every_stack(chippers: Parts, shims: Parts, per_gap: int) -> list[tuple[int, int, int]]:
    """Every combination by plain enumeration: total between the blades, parts, shims among them.

    A stack with more shims than its gaps may hold is none.
    """
    parts = chippers + shims
    stacks = []
    for counts in itertools.product(*[range(count + 1) for _, count in parts]):
        widths = [n * part[0] for n, part in zip(counts, parts, strict=True)]
        gaps = sum(counts[: len(chippers)]) + 1
        if sum(widths[len(chippers) :]) <= per_gap * gaps:
            stacks.append((sum(widths), sum(counts), sum(counts[len(chippers) :])))
    return stacks


@given(
    chippers=CHIPPERS, shims=SHIMS, gap=st.integers(-600, 7000), outer=st.integers(600, 1300),
    per_gap=st.sampled_from([0, 100, 200, 310, 5000]),
)  # fmt: skip
@settings(max_examples=200, deadline=None)
def test_the_search_finds_what_plain_enumeration_finds(
    chippers: Parts, shims: Parts, gap: int, outer: int, per_gap: int
) -> None:
    goal = (gap + 2 * outer) / UNIT
    above, below = nearest_stacks(
        goal, outer / UNIT, floats(chippers), floats(shims), per_gap / UNIT
    )
    stacks = every_stack(chippers, shims, per_gap)
    best = min((stack for stack in stacks if stack[0] >= gap), default=None)
    under = max((stack[0] for stack in stacks if stack[0] < gap), default=None)
    assert (above is None) == (best is None)
    assert (below is None) == (under is None)
    if above is not None and best is not None:
        assert abs(above.width - (best[0] + 2 * outer) / UNIT) < 1e-9
        assert (sum(above.chippers) + sum(above.shims), sum(above.shims)) == best[1:]
        assert spelled(above.chippers, chippers) + spelled(above.shims, shims) == best[0]
    if below is not None and under is not None:
        assert abs(below.width - (under + 2 * outer) / UNIT) < 1e-9


def spelled(counts: tuple[int, ...], parts: Parts) -> int:
    """What the parts named by a stack add up to; none may be used more often than it is there."""
    assert all(n <= part[1] for n, part in zip(counts, parts, strict=True))
    return sum(n * part[0] for n, part in zip(counts, parts, strict=True))


def test_the_search_is_bounded() -> None:
    odd = [(0.0101 + 0.00013 * n * n, 12) for n in range(12)]
    try:
        nearest_stacks(3.0, 0.125, odd, odd, 0.5)
    except TooManySums:
        return
    raise AssertionError(f"more than {MOST_SUMS} sums were searched")


def ask(
    panel: Fraction, stock: Fraction, depth: Fraction, chippers: Parts, shims: Parts
) -> dict[str, Any] | None:
    """The figures by name, or None where no such joint can be built."""
    raw = {
        "panel_thickness": float(panel),
        "stock_thickness": float(stock),
        "groove_depth": float(depth),
        "chippers": [{"thickness": t / UNIT, "count": n} for t, n in chippers],
        "shims": [{"thickness": t / UNIT, "count": n} for t, n in shims],
    }
    try:
        answer = TOOL.answer(raw, Scale())
    except Refusal:
        return None
    return {figure["name"]: figure["value"] for figure in answer["figures"]}


sixty_fourths = st.integers(1, 200).map(lambda n: Fraction(n, 64))


@given(
    panel=sixty_fourths, stock=sixty_fourths, depth=sixty_fourths, chippers=CHIPPERS, shims=SHIMS
)
@settings(max_examples=200, deadline=None)
def test_walls_shoulders_and_passes_add_up(
    panel: Fraction, stock: Fraction, depth: Fraction, chippers: Parts, shims: Parts
) -> None:
    found = ask(panel, stock, depth, chippers, shims)
    if found is None:
        return
    stack, long = found["stack_width"], found["tenon_length"]
    groove = found["groove_width"]
    assert found["groove_wanted"] - 1e-9 <= groove <= found["groove_wanted"] + 1 / 64 + 1e-9
    assert found["groove_passes"] * stack >= groove - 1e-9
    assert (found["groove_passes"] - 1) * stack < groove
    assert abs(2 * found["wall"] + groove - float(stock)) < 1e-9
    assert abs(2 * found["shoulder_depth"] + found["tenon_thickness"] - float(stock)) < 1e-9
    assert found["wall"] > 0
    assert found["tenon_thickness"] <= groove
    assert long < float(depth)
    assert ("bury" in found) != ("passes" in found)
    if "bury" in found:
        assert abs(found["bury"] + long - stack) < 1e-9
        assert found["bury"] >= -1e-9
    else:
        assert found["passes"] * stack >= long - 1e-9
        assert (found["passes"] - 1) * stack < long


@given(
    panel=st.floats(0.001, 6), stock=st.floats(0.001, 12), depth=st.floats(0.001, 6),
    tenon=st.one_of(st.none(), st.floats(0.001, 12)), outer=st.floats(0.001, 0.5),
)  # fmt: skip
@settings(max_examples=200, deadline=None)
def test_any_sizes_are_answered_or_refused_on_a_field_that_was_asked(
    panel: float, stock: float, depth: float, tenon: float | None, outer: float
) -> None:
    raw: dict[str, Any] = {"panel_thickness": panel, "stock_thickness": stock}
    raw |= {"groove_depth": depth, "tenon_length": tenon, "outer_blade": outer}
    request = {"do": "answer", "tool": TOOL.slug, "inputs": raw, "units": "in", "step": 16}
    reply = json.loads(call(json.dumps(request)))
    if reply["ok"]:
        assert reply["answer"]["details"]
    else:
        asked = {one.name for one in TOOL.inputs}
        assert {error["field"] for error in reply["errors"]} <= asked
        assert all(error["message"].endswith(".") for error in reply["errors"])
