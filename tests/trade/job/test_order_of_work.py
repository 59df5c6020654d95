"""Milling and gluing before crosscuts, boards tallied at the stack, what a plan leaves.

Expected numbers are hand work, beside their check.
"""

from typing import Any

import pytest

from .asking import blank, entries_of, worked
from .test_buying import FRAME

BOARD: dict[str, Any] = {
    "id": "s", "title": "4/4 maple", "sold": "board", "thickness": "4/4", "price": 8, "waste": 20,
}  # fmt: skip
PANEL = {"finished_width": "9 1/2", "board_width": "3 1/2", "thickness": "3/4", "length": "36"}
"""Glued of three strips: 2 x 3 1/2 is too narrow."""


def asked(own: str, letter: str, tool: str, inputs: dict[str, Any], **rest: Any) -> Any:
    return {"id": own, "letter": letter, "tool": tool, "inputs": inputs} | rest


def job(*entries: Any, stock: Any = BOARD, **rest: Any) -> Any:
    item = {"id": "i", "title": "Top", "entries": list(entries)}
    return worked(blank(items=[item], stock=[stock], **rest))


def test_boards_are_milled_then_glued_then_crosscut() -> None:
    got = job(
        asked("f", "A", "mitered-frame", FRAME, stock={"all": "s"}),
        asked("g", "B", "glue-up", PANEL, stock={"all": "s"}),
        asked("m", "C", "milling-passes", {"rough": "1", "finished": "3/4"}),
        ticks=[{"of": "g/glue up", "state": "done"}],
    )
    steps = got["saw"]["steps"]
    # Strips are 3/4 and the boards 4/4; the frame does not say how thick it is.
    assert [step["title"] for step in steps] == [
        "Mill 4/4 maple to 3/4", "Milling passes", "Glue-up"
    ]  # fmt: skip
    assert steps[0]["words"] == "From 1, for BS"
    assert [step["state"] for step in steps] == ["", "", "done"]
    groups = got["saw"]["groups"]
    assert [group["first"] for group in groups] == [True, False]
    assert groups[0]["setting"] == "square, to be glued up"
    assert {cut["tag"] for cut in groups[0]["cuts"]} == {"BS"}


class TestTally:
    TIE: dict[str, Any] = {"target": {"pieces": "s"}}  # noqa: RUF012 no test changes it

    def tallied(self, *boards: dict[str, Any]) -> Any:
        frame = asked("f", "A", "mitered-frame", FRAME, stock={"all": "s"})
        tally = asked("t", "B", "board-tally", {"boards": list(boards)}, ties=self.TIE)
        return job(frame, tally)["yard"]["lines"][0]

    def test_boards_at_the_stack_that_give_every_piece_prove_it(self) -> None:
        """6 1/4 wide, 7 ft: two strips of 3, 40 + 40 and 30 + 30. 6.25 x 84 / 144 = 3.646 bd ft,
        and the board below, as long and as thick, is more than is needed: 4 x 84 / 144 = 2.333."""
        got = self.tallied({"width": "6 1/4", "length": 7, "thickness": "4/4"}, {"width": "8"})
        assert got["proved"]
        assert got["words"] == "Every piece comes out of 1 of the 2 boards tallied"
        assert got["amount"] == pytest.approx((6.25 + 8) * 84 / 144)
        assert got["cost"] == pytest.approx(8 * (6.25 + 8) * 84 / 144)

    def test_what_finds_no_place_is_still_to_buy(self) -> None:
        """3 1/4 x 84 gives 40 + 40; two of 30 are left: 180 / 144 = 1.25, and a fifth."""
        got = self.tallied({"width": "3 1/4", "length": 7, "thickness": "4/4"})
        assert not got["proved"]
        assert got["words"] == "2 pieces do not come out of the 1 boards tallied"
        assert got["amount"] == pytest.approx(3.25 * 84 / 144 + 1.25 * 1.2)

    def test_thinner_boards_hold_none(self) -> None:
        got = self.tallied({"width": "8", "length": 10, "thickness": "3/4"})
        assert "tallied" not in got["words"]


def sticks(**rest: Any) -> Any:
    stock = {"id": "s", "title": "1x4 pine", "sold": "stick"} | rest
    frame = asked("f", "A", "mitered-frame", FRAME, stock={"all": "s"})
    return job(frame, stock=stock)["yard"]["lines"][0]


def test_sticks_priced_by_the_foot() -> None:
    """Pieces 40 40 30 30: two of 8 ft at $1.25 a foot, $20; 12 ft holds all, with three kerfs: 142
    does not fit 144 less nothing: 140 + 3/8 does. One of 12 ft, $15, costs least."""
    got = sticks(price=1.25, lengths=[{"length": "96"}, {"length": "144"}])
    assert (got["amount"], got["cost"]) == (1, 15)
    assert sticks(price=1.25, lengths=[{"length": "96"}])["cost"] == 20
    assert sticks(price=1.25, lengths=[{"length": "96", "price": 7}])["cost"] == 14


def test_what_a_plan_leaves_is_said_as_it_would_be_typed() -> None:
    """40 + 40 and 30 + 30 out of 96: 96 - 80 - 2/8 = 15 3/4 and 96 - 60 - 2/8 = 35 3/4."""
    assert sticks(lengths=[{"length": "96"}])["leaves"] == [
        {"length": '35 3/4"', "width": "", "count": 1},
        {"length": '15 3/4"', "width": "", "count": 1},
    ]


def test_ties_made_before_an_input_was_renamed_still_hold() -> None:
    """`width` is `opening_width` now, here and there."""
    frame = asked("f", "A", "mitered-frame", FRAME)
    later = asked("o", "B", "mitered-frame", {**FRAME, "opening_width": None},
                  ties={"width": {"entry": "f", "input": "width", "offset": "+ 2"}})  # fmt: skip
    got = entries_of(job(frame, later))["o"]
    assert got["errors"] == []
    assert {each["input"]: each["value"] for each in got["carried"]}["opening_width"] == 32
