"""In a job each door tool goes on with what the one before it found: a number is said once."""

from typing import Any

import pytest

from tests.trade.asking import at_the_door

SURVEY = {
    "width_top": "47 3/8",
    "width_bottom": "47 1/2",
    "height_left": "80 1/4",
    "height_right": "80",
    "diagonal_a": "93 1/8",
    "diagonal_b": "93 1/4",
    "side_gap": "3/32",
    "floor_gap": "3/4",
    "door_thickness": "1 3/4",
}
ENTRIES: list[tuple[str, dict[str, Any]]] = [
    ("opening-survey", SURVEY),
    ("door-set", {"kind": "passage", "stile": "4 1/2", "panel_thickness": "1/4"}),
    ("groove-and-tenon", {}),
    ("panel-raise", {"cut_with": "saw", "blank_thickness": "3/4", "bevel_shows": "1 1/2"}),
    ("wood-movement", {"species": "cherry", "moisture_from": 8, "moisture_to": 11}),
]


def worked(*, leaves: str, route: str) -> list[dict[str, Any]]:
    surveyed = SURVEY | {"leaves": leaves, "route": route}
    return of_one_item([(ENTRIES[0][0], surveyed), *ENTRIES[1:]])


def of_one_item(asked: list[tuple[str, dict[str, Any]]]) -> list[dict[str, Any]]:
    entries = [
        {"id": slug, "letter": "ABCDE"[at], "tool": slug, "inputs": inputs}
        for at, (slug, inputs) in enumerate(asked)
    ]
    item = {"id": "item", "title": "Doorway", "entries": entries}
    job = {"longpoint": "job", "schema": 1, "id": "job", "title": "House", "items": [item]}
    reply = at_the_door({"do": "job", "job": job})
    while reply.get("work"):
        reply = at_the_door({"do": "continue job", "work": reply["work"]})
    found: list[dict[str, Any]] = reply["job"]["items"][0]["entries"]
    assert [entry["errors"] for entry in found] == [[]] * len(found)
    return found


def values(entry: dict[str, Any]) -> dict[str, Any]:
    return {figure["name"]: figure["value"] for figure in entry["figures"]}


def carried(entry: dict[str, Any]) -> dict[str, str]:
    return {each["input"]: each["entry"] for each in entry["carried"]}


@pytest.mark.parametrize("leaves", ["1", "2"])
@pytest.mark.parametrize("route", ["square", "tapered"])
def test_a_door_set_on_a_survey_is_the_survey_s_own_leaf(leaves: str, route: str) -> None:
    survey, door, *_ = (values(entry) for entry in worked(leaves=leaves, route=route))
    for size in ("leaf_width", "leaf_height"):
        assert door[size] == pytest.approx(survey[size], abs=1e-9)
    assert door["stock_thickness"] == 1.75


def test_each_question_asks_only_what_none_before_it_said() -> None:
    _, door, groove, panel, movement = worked(leaves="1", route="square")
    survey = "opening-survey"
    assert {name for name, entry in carried(door).items() if entry == survey} >= {
        "opening_width", "opening_height", "side_gap", "floor_gap", "door_thickness",
    }  # fmt: skip
    of_door = {"panel_thickness", "stock_thickness", "tenon_length"}
    assert {carried(groove)[name] for name in of_door} == {"door-set"}
    # 1/4 and 0.005 of slack: two blades of 1/8 and a shim.
    assert values(groove)["groove_width"] == pytest.approx(0.255)
    assert carried(panel)["groove_width"] == "groove-and-tenon"
    assert carried(panel)["panel_width"] == "door-set"
    field = values(door)["panel_width"] - 2 * values(panel)["bevel_width"]
    assert values(panel)["field_width"] == pytest.approx(field)
    assert carried(movement)["panel_width"] in ("door-set", "panel-raise")


def test_the_wood_and_the_hinges_are_said_once() -> None:
    """The leaf's wood goes on to the panel's movement; what no list there holds does not."""
    door = {"kind": "passage", "opening_width": "36", "opening_height": "80", "stile": "4 1/2"}
    door |= {"panel_thickness": "1/4", "species": "oak-red"}
    moves = {"moisture_from": 8, "moisture_to": 11}
    hung = {"leaf_height": "79", "hinge_height": "4", "hinge_count": "4"}
    gap = {"gap_top": "1/16", "gap_bottom": "3/16"}
    found = of_one_item(
        [("door-set", door), ("wood-movement", moves), ("hinge-layout", hung), ("even-gap", gap)]
    )
    taken = [{each["input"]: each["value"] for each in entry["carried"]} for entry in found]
    assert taken[1]["species"] == "oak-red"
    assert taken[3]["hinge_count"] == 4
    sheet = [("wood-movement", {"species": "mdf", "panel_width": "20", **moves})]
    last = of_one_item([*sheet, ("door-set", {**door, "species": ""})])[-1]
    assert last["verdict"].startswith("Passage leaf")
