"""The sheets in words, and a document looked at without being worked out.

All numbers are hand work.
"""

from typing import Any

from tests.trade.job.asking import ask, blank, refused, worked

FRAME = {"fit": "inside", "opening_width": "30", "opening_height": "40", "trim_width": "3"}


def framed(**stock: Any) -> dict[str, Any]:
    """Return a frame in a recess 30 x 40: two pieces of 30 and two of 40, all 3 wide."""
    entry = {
        "id": "e",
        "letter": "A",
        "tool": "mitered-frame",
        "inputs": FRAME,
        "stock": {"all": "s"},
    }
    maple = {"id": "s", "title": "Maple", "sold": "board"} | stock
    return blank(items=[{"id": "i", "title": "Frame", "entries": [entry]}], stock=[maple])


def test_boards_are_bought_by_rough_sizes_with_their_waste() -> None:
    """31 and 41 long, 3 1/4 wide: 3 1/4 x (2 x 31 + 2 x 41) / 144 is 3.25; 20 % over is 3.9."""
    allowed = {
        "thickness": "1",
        "extra_length": "1",
        "extra_width": "1/4",
        "waste": 20,
        "price": 10,
    }
    reply = worked(framed(**allowed))
    (line,) = reply["yard"]["lines"]
    assert line["amount_text"] == "3.9 bf"
    assert line["cost_text"] == reply["yard"]["cost_text"] == "$39.00"
    assert line["words"] == "Longest 41, widest 3 1/4; 3.3 and 20 % waste"
    cuts = [cut for group in reply["saw"]["groups"] for cut in group["cuts"]]
    assert [cut["rough_text"] for cut in cuts] == ["41 x 3 1/4"] * 2 + ["31 x 3 1/4"] * 2


def test_what_is_on_hand_stands_beside_the_line() -> None:
    hand = [{"length": "96", "count": 2, "where": "rack"}, {"length": 30}]
    reply = worked(framed(sold="stick", on_hand=hand, lengths=[{"length": "96"}]))
    (line,) = reply["yard"]["lines"]
    assert line["on_hand"] == ["2 of 96, rack", "1 of 30"]
    assert line["cost_text"] == ""


def test_a_document_is_looked_at_alone() -> None:
    assert ask(do="check job", job=blank()) == {"ok": True}
    assert refused(do="check job", job=blank(items=[{"id": 3}]))[0] == "This is needed."
    assert refused(do="check job", job=blank(schema=2)) == [
        "A newer Longpoint made this job: update, then open it again."
    ]
