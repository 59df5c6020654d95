"""Rows filled with pieces of the job, live: what a plan is made of is typed once.

Expected numbers are hand work, beside their check.
"""

from typing import Any

from .asking import ask, blank, entries_of, figures_of, worked

FRAME = {"fit": "inside", "opening_width": "30", "opening_height": "40", "trim_width": "3"}
"""In a recess without play the frame is as long as the recess: two of 40, two of 30."""
STOCK = {"id": "s", "title": "1x4 pine", "sold": "stick"}


def job(ties: dict[str, Any], tool: str = "stick-plan", **rest: Any) -> dict[str, Any]:
    frame = {"id": "frame", "letter": "A", "tool": "mitered-frame", "inputs": FRAME,
             "stock": {"all": "s"}}  # fmt: skip
    plan = {"id": "plan", "letter": "B", "tool": tool, "ties": ties,
            "inputs": rest.pop("inputs", {"sticks": [{"length": "96"}]})}  # fmt: skip
    item = {"id": "i", "title": "Mirror", "entries": [plan, frame]}
    return blank(items=[item], stock=[rest.pop("stock", STOCK)]) | rest


def carried(reply: Any) -> Any:
    (taken,) = [each for each in entries_of(reply)["plan"]["carried"] if each["figure"] == "pieces"]
    return taken


def test_a_stick_plan_takes_the_pieces_of_a_stock() -> None:
    """40 + 40 and 30 + 30, each with a kerf, don't go into one stick of 96: two are used."""
    reply = worked(job({"pieces": {"pieces": "s"}}))
    assert figures_of(entries_of(reply)["plan"])["sticks_used"] == 2
    taken = carried(reply)
    assert (taken["from"], taken["text"]) == ("1x4 pine", "4 pieces")
    assert sorted((row["length"], row["count"]) for row in taken["value"]) == [
        (30, 1), (30, 1), (40, 1), (40, 1),
    ]  # fmt: skip
    assert {row["tag"] for row in taken["value"]} == {"A1", "A2", "A3", "A4"}


def test_they_change_with_the_piece() -> None:
    document = job({"pieces": {"pieces": "s"}})
    document["items"][0]["entries"][1]["inputs"] = FRAME | {"opening_height": "41"}
    lengths = sorted(row["length"] for row in carried(worked(document))["value"])
    assert lengths == [30, 30, 41, 41]


def test_the_pieces_of_a_plan_are_not_cut_twice() -> None:
    reply = worked(job({"pieces": {"pieces": "s"}}))
    cuts = [cut for group in reply["saw"]["groups"] for cut in group["cuts"]]
    assert sorted(cut["of"] for cut in cuts) == [f"frame/{tag}#1" for tag in "1234"]


def test_a_spoiled_piece_is_planned_once_more() -> None:
    """Three of 40 and two of 30 in sticks of 96: 40 + 40, 40 + 30, 30; or 30 + 30 and 40: three."""
    document = job(
        {"pieces": {"pieces": "s"}}, ticks=[{"of": "frame/1#1", "state": "spoiled"}],
    )  # fmt: skip
    assert carried(worked(document))["text"] == "5 pieces"


def test_an_item_and_a_question_can_be_taken_too() -> None:
    for own in ("i", "frame"):
        assert carried(worked(job({"pieces": {"pieces": own}})))["text"] == "4 pieces"


def test_what_is_typed_comes_first() -> None:
    typed = {"pieces": [{"length": "20"}], "sticks": [{"length": "96"}]}
    reply = worked(job({"pieces": {"pieces": "s"}}, inputs=typed))
    assert figures_of(entries_of(reply)["plan"])["sticks_used"] == 1
    empty = {"pieces": [{}], "sticks": [{"length": "96"}]}
    reply = worked(job({"pieces": {"pieces": "s"}}, inputs=empty))
    assert figures_of(entries_of(reply)["plan"])["sticks_used"] == 2


def test_a_board_tally_is_told_what_the_job_needs() -> None:
    """(40 + 40 + 30 + 30) x 3 = 420 square inches, an inch thick: 420 / 144 = 2.9167 bd ft."""
    boards = {"id": "s", "title": "4/4 oak", "sold": "board", "thickness": "4/4"}
    tied = {"target": {"pieces": "s"}}
    inputs = {"boards": [{"width": "6", "length": 8}]}
    reply = worked(job(tied, "board-tally", stock=boards, inputs=inputs))
    assert abs(carried(reply)["value"] - 420 / 144) < 1e-9
    assert carried(reply)["text"] == "2.917"


def test_a_weight_is_of_the_stock_s_wood() -> None:
    """Red oak of 0.75: 420 x 0.75 = 315 cubic inches, 0.1823 cubic feet. Its specific gravity by
    green volume is 0.56 (Wood Handbook, table 5-3b); dry to 8 % it is a little more, 8 % water with
    it: between 0.56 x 62.4 = 35 and 48 lb to the cubic foot, so 6.4 to 8.8 lb."""
    wood = STOCK | {"made_of": "wood", "species": "oak-red", "thickness": 0.75}
    reply = worked(job({"things": {"pieces": "s"}}, "piece-weight", stock=wood, inputs={}))
    assert 6.4 < figures_of(entries_of(reply)["plan"])["weight"] < 8.8


def test_what_the_stock_does_not_say_is_asked_for() -> None:
    reply = worked(job({"things": {"pieces": "s"}}, "piece-weight", inputs={}))
    asked = {error["field"].split(".")[-1] for error in entries_of(reply)["plan"]["errors"]}
    assert asked == {"species", "thickness"}


def test_what_is_not_there_is_said_on_its_field() -> None:
    for ties, words in (
        ({"pieces": {"pieces": "gone"}}, "not on the job"),
        ({"kerf": {"pieces": "s"}}, "takes no pieces"),
        ({"pieces": {"pieces": "plan"}}, "no pieces yet"),
    ):
        (error, *_) = entries_of(worked(job(ties)))["plan"]["errors"]
        assert words in error["message"]


def test_a_question_still_open_is_named() -> None:
    document = job({"pieces": {"pieces": "s"}})
    asked = {"id": "open", "letter": "C", "tool": "mitered-frame", "inputs": {},
             "stock": {"all": "s"}}  # fmt: skip
    document["items"].append({"id": "k", "title": "Later", "entries": [asked]})
    assert carried(worked(document))["from"] == "1x4 pine; 1 question is still open"


def test_the_form_says_where_its_rows_are_from() -> None:
    rows = {"value": [{"length": 40.5, "count": 2}], "from": "1x4 pine"}
    reply = ask(do="form", tool="stick-plan", inputs={}, carried={"pieces": rows})
    (pieces,) = [field for field in reply["fields"] if field["name"] == "pieces"]
    assert (pieces["from"], pieces["of"]) == ("carried", "1x4 pine")
    assert [field["shown"] for field in pieces["rows"][0]["fields"][:2]] == ["40 1/2", "2"]
