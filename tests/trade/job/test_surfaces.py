"""What the job's doors and pieces have to be coated, live; and the cans on its buy list.

Expected numbers are hand work, beside their check.
"""

import math
from typing import Any

import pytest

from .asking import ask, blank, entries_of, figures_of, worked

DOOR = {
    "kind": "passage", "opening_width": "32 1/4", "opening_height": "80 5/8", "stile": "4 1/2",
    "panel_thickness": "3/8", "bottom_rail": "9 1/2", "panel_of": "solid", "leaves": "1",
}  # fmt: skip
FRAME = {"fit": "inside", "opening_width": "30", "opening_height": "40", "trim_width": "3"}


def job(*entries: dict[str, Any], source: str = "job", **rest: Any) -> dict[str, Any]:
    made = [each | {"id": each["letter"], "stock": each.get("stock", {})} for each in entries]
    area = {"id": "area", "letter": "Y", "tool": "finish-area", "inputs": {},
            "ties": {"things": {"pieces": source}}}  # fmt: skip
    items = [{"id": "made", "title": "Made", "count": rest.pop("count", 1), "entries": made}]
    finish = {"id": "finish", "title": "Finish", "entries": [area, *rest.pop("more", [])]}
    return blank(items=[finish, *items]) | rest


def rows(reply: Any) -> list[dict[str, Any]]:
    (taken,) = [each for each in entries_of(reply)["area"]["carried"] if each["input"] == "things"]
    value: list[dict[str, Any]] = taken["value"]
    return value


def test_a_door_is_coated_whole_not_part_by_part() -> None:
    """A leaf 32 x 80 x 1 3/8 with stiles and top rail of 4 1/2, bottom rail 9 1/2: one opening 23 x
    66, its edges a step of (1 3/8 - 3/8) / 2 = 1/2 deep, on each of two faces; three such doors.

    2 x 32 x 80 + 2 x 1.375 x 112 + 2 x 178 x 0.5 = 5606 square inches, 38.9306 sq ft.
    """
    reply = worked(job({"letter": "A", "tool": "door-set", "inputs": DOOR}, count=3))
    (leaf,) = rows(reply)
    assert leaf["count"] == 3
    assert leaf["width"] == pytest.approx(32)
    assert leaf["openings"] == 1
    assert leaf["opening_heights"] == pytest.approx(66)
    figures = figures_of(entries_of(reply)["area"])
    assert figures["area"] == pytest.approx(3 * 5606 / 144)


def test_trim_is_coated_on_face_and_edges() -> None:
    """Two pieces of 40 and two of 30, 3 wide; of a stock 3/4 thick: 140 x (3 + 1.5) / 144."""
    stock = {"id": "s", "title": "1x4 pine", "sold": "stick", "thickness": "3/4"}
    frame = {"letter": "A", "tool": "mitered-frame", "inputs": FRAME, "stock": {"all": "s"}}
    reply = worked(job(frame, stock=[stock]))
    assert {row["girth"] for row in rows(reply)} == {4.5}
    assert figures_of(entries_of(reply)["area"])["area"] == pytest.approx(140 * 4.5 / 144)


def test_without_a_thickness_trim_is_coated_on_its_face() -> None:
    reply = worked(job({"letter": "A", "tool": "mitered-frame", "inputs": FRAME}))
    assert figures_of(entries_of(reply)["area"])["area"] == pytest.approx(140 * 3 / 144)


RAISE = {"cut_with": "saw", "blank_thickness": "3/4", "groove_width": "3/8", "bevel_shows": "1 1/2"}


def corner_areas(*corners: tuple[float, float, float]) -> float:
    """Return the area of a plane quadrangle in space: half its diagonals' cross product."""
    (ax, ay, az), (bx, by, bz) = [
        tuple(one - other for one, other in zip(corners[at + 2], corners[at], strict=True))
        for at in (0, 1)
    ]
    return math.hypot(ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx) / 2


def raised_panel(width: float, height: float, shows: float, rise: float, step: float) -> float:
    """Return a raised panel's front in an opening: four bevels in space, the step, the field."""
    frame = [(0, 0, 0), (width, 0, 0), (width, height, 0), (0, height, 0)]
    far, up = width - shows, height - shows
    field = [(shows, shows, rise), (far, shows, rise), (far, up, rise), (shows, up, rise)]
    bevels = sum(
        corner_areas(frame[at - 1], frame[at], field[at], field[at - 1]) for at in range(4)
    )
    inside = (width - 2 * shows, height - 2 * shows)
    return bevels + 2 * sum(inside) * step + inside[0] * inside[1]


def test_a_raised_panel_is_coated_as_it_is_raised() -> None:
    """The door above, its panel raised on the front: four planes in space, by their corners.

    The bevel by hand: from a tongue of 3/8 - 0.005 where the play of 1/8 ends it rises to 3/4 less
    the step of 1/16, 0.3175 in 1 1/2 - 1/8: over the 1 1/2 that show 0.34636.
    """
    entries = [
        {"letter": "A", "tool": "door-set", "inputs": DOOR},
        {"letter": "B", "tool": "panel-raise", "inputs": RAISE},
    ]
    reply = worked(job(*entries))
    rise = 0.3175 / 1.375 * 1.5
    wanted = 5606 - 23 * 66 + raised_panel(23, 66, 1.5, rise, 1 / 16)
    assert figures_of(entries_of(reply)["area"])["area"] == pytest.approx(wanted / 144, abs=1e-5)
    assert len(rows(reply)) == 1, "the panel is coated with its door"
    assert said_of(reply) == (
        "The whole job; panels raised, their bevels straight, edges around them square"
    )


def test_a_panel_milled_by_a_cutter_is_taken_straight() -> None:
    """A reach of 1 3/4 shows 1 1/2 beside the 1/4 in the groove; 3/4 less 0.37 comes off."""
    milled = {"cut_with": "cutter", "blank_thickness": "3/4", "groove_width": "3/8",
              "cutter_reach": "1 3/4", "cutter_flat": "3/8"}  # fmt: skip
    entries = [
        {"letter": "A", "tool": "door-set", "inputs": DOOR},
        {"letter": "B", "tool": "panel-raise", "inputs": milled},
    ]
    wanted = 5606 - 23 * 66 + raised_panel(23, 66, 1.5, 0.38, 0)
    area = figures_of(entries_of(worked(job(*entries)))["area"])["area"]
    assert area == pytest.approx(wanted / 144, abs=1e-5)


def test_flat_panels_and_square_edges_are_said() -> None:
    reply = worked(job({"letter": "A", "tool": "door-set", "inputs": DOOR}))
    assert said_of(reply) == "The whole job; panels taken flat, edges around them square"


def said_of(reply: Any) -> str:
    (taken,) = [each for each in entries_of(reply)["area"]["carried"] if each["input"] == "things"]
    return str(taken["from"])


def test_the_area_moves_with_the_opening() -> None:
    wider = DOOR | {"opening_width": "33 1/4"}
    one, other = [
        figures_of(
            entries_of(worked(job({"letter": "A", "tool": "door-set", "inputs": each})))["area"]
        )
        for each in (DOOR, wider)
    ]
    # One inch more: two faces 160, two edges 2.75, the opening's step on two faces 2.
    assert other["area"] - one["area"] == pytest.approx((160 + 2.75 + 2) / 144)


def test_one_question_alone_can_be_coated() -> None:
    entries = [
        {"letter": "A", "tool": "door-set", "inputs": DOOR},
        {"letter": "B", "tool": "mitered-frame", "inputs": FRAME},
    ]
    reply = worked(job(*entries, source="B"))
    assert {row["kind"] for row in rows(reply)} == {"trim"}


def test_a_job_without_pieces_says_so() -> None:
    reply = worked(job())
    (error,) = entries_of(reply)["area"]["errors"]
    assert error["message"] == "The whole job has no pieces yet."


def test_the_cans_stand_on_the_buy_list() -> None:
    """38.9306 sq ft, one coat 5 mil wet, brushed: 38.9306 x 5 / (1604.167 x 0.95) = 0.1277 gal, one
    quart at 18; two coats of 4 mil: 0.2044 gal, one quart."""
    document = job({"letter": "A", "tool": "door-set", "inputs": DOOR})
    begun = ask(do="begin item", job=document, pattern="finish", id="f")["document"]
    area, primer, topcoat, _ = begun["items"][2]["entries"]
    assert area["ties"] == {"things": {"pieces": "job"}}
    primer["inputs"] |= {"film_by": "wet", "wet_coat": "5", "method": "brush", "can": "quart"}
    primer["inputs"]["can_price"] = "18"
    topcoat["inputs"] |= {"film_by": "wet", "wet_coat": "4", "method": "brush", "can": "quart"}
    lines = {line["title"]: line for line in worked(begun)["yard"]["lines"]}
    assert (lines["Primer"]["amount_text"], lines["Primer"]["cost"]) == ("1 can", 18)
    assert lines["Primer"]["words"].startswith("Buy 1 quart can: 16 fl oz for 1 coat")
    assert (lines["Topcoat"]["amount"], lines["Topcoat"]["cost"]) == (1, None)
