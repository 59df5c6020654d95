"""What to buy, after what is on hand. Expected numbers are hand work, beside their check."""

from itertools import zip_longest
from typing import Any

import pytest

from longpoint.trade.job.sheets import job_replies
from longpoint.trade.lengths import Scale
from tests.trade.cutting.published import T60_00, listed

from .asking import blank, worked

FRAME = {"fit": "inside", "opening_width": "30", "opening_height": "40", "trim_width": "3"}
"""Four pieces 3 wide: two of 40, two of 30."""


def job(stock: dict[str, Any], **rest: Any) -> dict[str, Any]:
    entry = {"id": "e", "letter": "A", "tool": "mitered-frame", "inputs": FRAME,
             "stock": {"all": "s"}}  # fmt: skip
    item = {"id": "i", "title": "Mirror", "entries": [entry]} | rest.pop("item", {})
    return blank(items=[item], stock=[{"id": "s", "title": "1x4 pine"} | stock]) | rest


def line(document: dict[str, Any], **rest: Any) -> Any:
    return worked(document, **rest)["yard"]["lines"][-1]


class TestSticks:
    def test_one_on_hand_is_not_bought(self) -> None:
        """40 + 40 in the 84 on hand with a kerf of 1/8; 30 + 30 in one bought stick of 96, $10."""
        got = line(job({
            "sold": "stick", "on_hand": [{"length": 84}], "lengths": [{"length": 96, "price": 10}],
        }))  # fmt: skip
        assert (got["amount"], got["from_hand"], got["taken"], got["cost"]) == (1, 1, [1], 10)

    def test_what_is_on_hand_may_be_enough(self) -> None:
        got = line(job({
            "sold": "stick", "on_hand": [{"length": 84, "count": 2}],
            "lengths": [{"length": 96, "price": 10}],
        }))  # fmt: skip
        assert (got["amount"], got["from_hand"], got["cost"]) == (0, 2, 0)

    def test_one_too_short_for_any_piece_is_left(self) -> None:
        """40 + 40 and 30 + 30 in two sticks of 96."""
        got = line(job({
            "sold": "stick", "on_hand": [{"length": 29}], "lengths": [{"length": 96, "price": 10}],
        }))  # fmt: skip
        assert (got["amount"], got["taken"]) == (2, [0])

    def test_without_prices_nothing_is_said_to_cost(self) -> None:
        got = line(job({"sold": "stick", "lengths": [{"length": 96}]}))
        assert (got["amount"], got["cost"]) == (2, None)
        assert "$" not in got["words"]

    def test_what_was_spoiled_comes_out_of_an_offcut_first(self) -> None:
        """A fifth piece of 40 goes into the 41 on hand: still two sticks bought."""
        got = line(job(
            {"sold": "stick", "on_hand": [{"length": 41}], "lengths": [{"length": 96}]},
            ticks=[{"of": "e/2#1", "state": "spoiled"}],
        ))  # fmt: skip
        assert (got["amount"], got["from_hand"]) == (2, 1)


class TestSheets:
    def test_half_a_sheet_is_used_first(self) -> None:
        """Strips 3 wide, 40 40 30 30 long, all four side by side in 13 x 48."""
        got = line(job({
            "sold": "sheet", "on_hand": [{"length": 48, "width": 13}],
            "sheets": [{"length": 96, "width": 48, "price": 60}],
        }))  # fmt: skip
        assert (got["amount"], got["from_hand"], got["taken"], got["cost"]) == (0, 1, [1], 0)

    def test_a_sheet_is_bought_where_what_is_there_is_too_small(self) -> None:
        got = line(job({
            "sold": "sheet", "on_hand": [{"length": 29, "width": 13}],
            "sheets": [{"length": 96, "width": 48, "price": 60}],
        }))  # fmt: skip
        assert (got["amount"], got["taken"], got["cost"]) == (1, [0], 60)


class TestBoards:
    BOARD: dict[str, Any] = {  # noqa: RUF012 no test changes it
        "sold": "board", "thickness": "4/4", "price": 8, "waste": 20,
    }  # fmt: skip

    def test_what_a_board_on_hand_gives_is_not_bought(self) -> None:
        """A board 3 1/4 x 84: both pieces of 40, with a kerf. To buy: 2 x 30 x 3 = 180 square
        inches, 1.25 bd ft, and a fifth is 1.5: $12. From hand: 240 / 144 = 1.667 bd ft."""
        got = line(job(self.BOARD | {"on_hand": [{"width": 3.25, "length": 84}]}))
        assert got["amount"] == pytest.approx(1.5)
        assert got["cost"] == pytest.approx(12)
        assert got["from_hand"] == pytest.approx(240 / 144)
        assert (got["taken"], got["proved"]) == ([1], None)

    def test_boards_that_give_every_piece_prove_it(self) -> None:
        """6 1/4 wide and 84 long: two strips 3 wide with a kerf of 1/8, 40 + 40 and 30 + 30."""
        got = line(job(self.BOARD | {"on_hand": [{"width": 6.25, "length": 84}]}))
        assert (got["amount"], got["proved"], got["cost"]) == (0, True, 0)
        rows = got["layout"][0]["rows"]
        assert [row[1] for row in rows] == ["3", "3"]

    def test_the_kerf_is_counted(self) -> None:
        """Two strips of 3 and a kerf of 1/8 don't come out of a board 6 wide: one does."""
        got = line(job(self.BOARD | {"on_hand": [{"width": 6, "length": 84}]}))
        assert got["from_hand"] == pytest.approx(240 / 144)

    def test_an_unsaid_thickness_is_said(self) -> None:
        assert "how thick" in line(job({"sold": "board"}))["words"]


class TestThings:
    def hinged(self, **rest: Any) -> dict[str, Any]:
        hinges = {"id": "h", "letter": "A", "tool": "hinge-layout",
                  "inputs": {"leaf_height": "80", "hinge_height": "3 1/2"}}  # fmt: skip
        thing = {"id": "t", "title": "Hinges", "item": "i", "price": 6,
                 "from": {"entry": "h", "figure": "hinge_count"}}  # fmt: skip
        return blank(
            items=[{"id": "i", "title": "Door", "count": 2, "entries": [hinges]}],
            things=[thing | rest],
        )

    def test_hinges_are_counted_for_every_item_alike(self) -> None:
        """A leaf of 80 has three hinges (one to each 30 inches or part of it); two doors, $36."""
        got = line(self.hinged())
        assert (got["amount"], got["cost"]) == (6, 36)

    def test_a_count_that_was_typed_comes_first(self) -> None:
        assert line(self.hinged(count=7))["amount"] == 7

    def test_what_is_not_answered_is_said(self) -> None:
        gone = {"entry": "gone", "figure": "hinge_count"}
        got = line(self.hinged(**{"from": gone}))
        assert (got["amount"], got["words"]) == (0, "Counted once its question is answered.")


def test_the_shop_s_offcuts_are_offered_where_a_piece_comes_out_of_them() -> None:
    offcuts: list[Any] = [
        {"title": "1X4 Pine ", "sold": "stick", "length": "41", "where": "rack"},
        {"title": "1x4 pine", "sold": "stick", "length": "29"},
        {"title": "1x4 oak", "sold": "stick", "length": "60"},
        {"title": "1x4 pine", "sold": "sheet", "length": "60", "width": "20"},
        "nonsense", {"title": 7},
    ]  # fmt: skip
    got = line(job({"sold": "stick", "lengths": [{"length": 96}]}), offcuts=offcuts)
    assert got["offered"] == [0]


def test_two_who_look_for_one_plan_at_once_take_turns() -> None:
    """Falkenauer's t60_00, 20 sticks (see `published`), asked for twice, step by step in turn."""
    walls = [{"length": piece} for piece in listed(T60_00)]
    document = blank(
        items=[{"id": "i", "title": "Walls", "entries": [
            {"id": f"e{at}", "letter": "AB"[at], "tool": "trim-run", "stock": {"all": "s"},
             "inputs": {"walls": walls[30 * at : 30 * at + 30], "trim_thickness": "1/2"}}
            for at in range(2)
        ]}],
        stock=[{"id": "s", "title": "Trim", "sold": "stick", "lengths": [{"length": 1000}],
                "kerf": "0"}],
    )  # fmt: skip
    both = [job_replies(document, Scale("in", 16)) for _ in range(2)]
    last: list[Any] = [{}, {}]
    for replies in zip_longest(*both):
        last = [reply or before for reply, before in zip(replies, last, strict=True)]
    for reply in last:
        (bought,) = reply["yard"]["lines"]
        assert (bought["amount"], bought["proved"], reply["progress"]) == (20, True, 1)
