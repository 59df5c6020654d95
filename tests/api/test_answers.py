"""The API gives the core's own answers, in the core's own words."""

import pytest
from flask.testing import FlaskClient

from tests.api.asking import as_door_reply, core_reply, post, words
from tests.cases import CASES_OF, Case, assert_same, hold_each, judge


@pytest.mark.parametrize("tool", CASES_OF)
def test_check_cases(client: FlaskClient, tool: str) -> None:
    """Each case carries its source in its fixture; the API must not change a word or a figure."""

    def hold(case: Case) -> None:
        response = post(client, tool, case.inputs, units=case.units, step=case.step)
        reply = as_door_reply(response)
        judge(case, reply)
        core = core_reply(tool, case.inputs, case.units, case.step)
        if core["ok"]:
            assert_same(reply["answer"], core["answer"])
        else:
            assert words(reply["errors"]) == words(core["errors"])

    hold_each(CASES_OF[tool], hold)


def test_a_hinge_mortise(client: FlaskClient) -> None:
    """Leaf 0.085, gap 3/32, 1/16 between the closed leaves: 0.085 - (3/32 - 1/16) / 2, by hand."""
    inputs = {
        "door_height": "79",
        "door_thickness": "1 3/8",
        "hinge_height": "3 1/2",
        "leaf_thickness": 0.085,
        "gap": "3/32",
    }
    answer = post(client, "hinge-layout", inputs).json
    depth = {figure["name"]: figure["value"] for figure in answer["figures"]}["mortise_depth"]
    assert depth == pytest.approx(0.069375, abs=1e-12)


def test_a_bare_number_in_a_text_is_in_the_units_asked_for(client: FlaskClient) -> None:
    """25.4 mm to the inch: international yard and pound agreement of 1959."""
    inputs = {
        "fit": "inside",
        "opening_width": "762",
        "opening_height": "1016",
        "trim_width": "63.5",
    }
    metric = post(client, "mitered-frame", inputs, units="mm").json
    assert metric["units"] == "mm"
    assert metric["inputs"]["opening_width"] == pytest.approx(30, abs=1e-12)
    assert metric["inputs"]["trim_width"] == pytest.approx(2.5, abs=1e-12)


def test_a_json_number_is_inches_whatever_the_units(client: FlaskClient) -> None:
    """So the API's own description says."""
    inputs = {"fit": "inside", "opening_width": 30, "opening_height": 40.0, "trim_width": 2.5}
    assert post(client, "mitered-frame", inputs, units="mm").json["inputs"]["opening_width"] == 30


@pytest.mark.parametrize("blank", ["", None])
def test_blank_means_not_given(client: FlaskClient, blank: str | None) -> None:
    """An empty field of a form is no input: the default stands, a needed one is missed."""
    given = {"fit": "inside", "opening_width": 30, "opening_height": 40, "trim_width": 2.5}
    bare = post(client, "mitered-frame", given).json
    assert post(client, "mitered-frame", given | {"top_width": blank}).json == bare
    missed = post(client, "mitered-frame", given | {"opening_width": blank}).json["errors"]["json"]
    assert list(missed) == ["opening_width"]


def test_what_is_not_asked_for_now_is_ignored(client: FlaskClient) -> None:
    """The reveal belongs to trim around an opening: inside a recess it may hold anything."""
    given = {"fit": "inside", "opening_width": 30, "opening_height": 40, "trim_width": 2.5}
    bare = post(client, "mitered-frame", given).json
    assert post(client, "mitered-frame", given | {"reveal": "abc"}).json == bare
    around = post(client, "mitered-frame", given | {"fit": "around", "reveal": "abc"})
    assert list(around.json["errors"]["json"]) == ["reveal"]


def test_a_huge_number_where_nothing_is_asked_is_ignored_too(client: FlaskClient) -> None:
    """Python won't turn 5,000 digits into an integer; the API must not trip over that."""
    digits = "9" * 5000
    sizes = '"opening_width": 30, "opening_height": 40, "trim_width": 2'
    body = f'{{"fit": "inside", {sizes}, "reveal": {digits}}}'
    response = client.post("/api/tools/mitered-frame", data=body, content_type="application/json")
    assert response.status_code == 200
