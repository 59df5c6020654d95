"""The core owns the form: what applies, what stands in a field, what it comes to."""

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.trade import calls
from longpoint.trade.entry import inch_split, marked
from longpoint.trade.lengths import read_length
from longpoint.trade.tool import (
    Answer,
    Choice,
    Flag,
    Given,
    Length,
    Refusal,
    Rows,
    Scale,
    Text,
    Tool,
)


def work(given: Given, scale: Scale) -> Answer:
    """Answer with the sum of the walls; a wall longer than 200 is refused."""
    lengths = [wall.number("length") for wall in given.rows("walls")]
    for at, length in enumerate(lengths):
        if length > 200:
            raise Refusal(f"walls.{at}.length", "Too long.")
    answer = Answer(scale)
    answer.verdict("Walls in all")
    answer.length("total", sum(lengths) + given.number("width"), label="Total")
    return answer


def older(raw: dict[str, Any]) -> dict[str, Any]:
    """Bring version 1 to version 2: it always stood at a wall."""
    return {"stands": "wall"} | raw


@pytest.fixture(autouse=True)
def tool(monkeypatch: pytest.MonkeyPatch) -> Tool:
    tool = Tool(
        slug="try", place="saw", title="", question="",
        inputs=[
            Choice("stands", "Stands", [("wall", "at a wall"), ("free", "free")]),
            Length("width", "Width", was=("breadth",)),
            Length("reach", "Reach", default=0.005, only_when=("stands", "free")),
            Choice("end", "End", [
                ("cope", "coped", ("stands", "wall")), ("square", "square"),
            ]),
            Flag("closed", "Closed"),
            Text("label", "Label", optional=True, offers=(
                ("2x4", None), ("4/4", ("stands", "free")),
            )),
            Rows("walls", "Walls", [Length("length", "Length")], row="wall", least=0),
        ],
        work=work, example={}, cautions=[], sources=[], upgrades=(older,),
    )  # fmt: skip
    monkeypatch.setattr(calls, "tool_named", lambda slug: tool)
    return tool


def form(inputs: object, **rest: Any) -> dict[str, Any]:
    request = {"do": "form", "tool": "try", "inputs": inputs} | rest
    reply: dict[str, Any] = json.loads(calls.call(json.dumps(request)))
    return reply


def field(reply: dict[str, Any], name: str) -> dict[str, Any]:
    return next((each for each in reply["fields"] if each["name"] == name), {})


class TestFields:
    def test_what_is_asked_depends_on_what_was_said(self) -> None:
        assert not field(form({"stands": "wall"}), "reach")
        assert field(form({"stands": "free"}), "reach")

    def test_choices_that_are_not_all_offered_come_with_the_field(self) -> None:
        free = field(form({"stands": "free"}), "end")
        assert [each["value"] for each in free["choices"]] == ["square"]
        assert free["chosen"] == "square"

    def test_a_choice_that_is_not_offered_any_more_gives_way(self) -> None:
        """It is no error: the form shows what counts now, and keeps what was chosen."""
        reply = form({"stands": "free", "end": "cope", "width": "3"})
        assert field(reply, "end")["chosen"] == "square"
        assert reply["answer"]

    def test_texts_are_offered_under_their_condition(self) -> None:
        assert field(form({"stands": "wall"}), "label")["offers"] == ["2x4"]
        assert field(form({"stands": "free"}), "label")["offers"] == ["2x4", "4/4"]

    def test_a_default_is_shown_as_it_is_used(self) -> None:
        """Five thousandths once stood as 0 in the field."""
        reach = field(form({"stands": "free"}), "reach")
        assert (reach["empty"], reach["from"]) == ('0.005"', "default")

    def test_an_earlier_name_is_read(self) -> None:
        reply = form({"stands": "wall", "breadth": "12"})
        assert field(reply, "width")["shown"] == "12"
        assert reply["inputs"] == {"stands": "wall", "width": "12"}

    def test_what_is_needed_is_named_and_led_to(self) -> None:
        reply = form({})
        assert reply["waiting"] == {"field": "stands", "words": "Still needed: Stands, Width"}
        assert field(reply, "width")["missing"]

    def test_carried_numbers_stand_until_something_is_typed(self) -> None:
        carried = {"width": {"value": 47.375, "from": "Opening survey"}}
        width = field(form({"stands": "wall"}, carried=carried), "width")
        assert (width["shown"], width["from"], width["of"]) == (
            "47 3/8",
            "carried",
            "Opening survey",
        )
        typed = field(form({"stands": "wall", "width": "40"}, carried=carried), "width")
        assert (typed["shown"], typed["from"]) == ("40", "typed")
        assert typed["carried"] == {"text": "47 3/8", "from": "Opening survey"}

    def test_a_carried_number_is_shown_as_a_rule_shows_it(self) -> None:
        # 30.152117 lies between 30 9/64 and 30 10/64, nearer the second.
        carried = {"width": {"value": 30.152117, "from": "Opening survey"}}
        assert field(form({"stands": "wall"}, carried=carried), "width")["shown"] == "30 5/32"
        # A gap that was typed as 3/32 must not be read as 1/8, nor a gauged 0.085 as 5/64.
        for value, text in ((0.09375, "3/32"), (0.085, "0.085")):
            carried = {"width": {"value": value, "from": "Opening survey"}}
            assert field(form({"stands": "wall"}, carried=carried), "width")["shown"] == text
        # A tape can't tell 1/8192 of an inch.
        carried = {"width": {"value": 47.375122, "from": "Opening survey"}}
        typed = field(form({"stands": "wall", "width": "47 3/8"}, carried=carried), "width")
        assert "carried" not in typed


class TestUnits:
    """25.4 mm to the inch."""

    def test_what_was_typed_in_inches_carries_its_mark_among_millimeters(self) -> None:
        width = field(form({"width": "27 13/16"}, typed_in="in", units="mm"), "width")
        assert width["shown"] == '27 13/16"'
        assert width["reads"] == ["706 mm full", "27 13/16 in"]  # 706.4

    def test_a_number_typed_in_other_units_than_its_form(self) -> None:
        typed = {"width": {"text": "706", "units": "mm"}, "stands": "wall"}
        inches = form(typed, typed_in="in", units="in")
        assert field(inches, "width")["shown"] == "706 mm"
        assert inches["answer"]["figures"][0]["value"] == pytest.approx(706 / 25.4)
        assert field(form(typed, typed_in="in", units="mm"), "width")["shown"] == "706"

    @given(
        st.lists(st.sampled_from(["12", "27 13/16", "0.5", "3/8", "2' 3 1/2", "706 mm", "1 ft"]),
                 min_size=1, max_size=3),
        st.sampled_from([" + ", " - "]),
        st.sampled_from(["in", "mm"]),
    )  # fmt: skip
    def test_a_marked_text_means_the_same_whatever_is_in_force(
        self, terms: list[str], sign: str, units: str
    ) -> None:
        text = sign.join(terms)
        meant = read_length(text, units)
        for in_force in ("in", "mm"):
            assert read_length(marked(text, units), in_force) == pytest.approx(meant)


class TestCarefulReading:
    def test_a_fraction_over_one_is_asked_back(self) -> None:
        """361/4 is 36 1/4 with its space forgotten, not 90 1/4."""
        width = field(form({"width": "361/4"}), "width")
        assert width["instead"] == ["36 1/4"]
        assert "36 1/4" in width["message"]

    @pytest.mark.parametrize("text", ["27 ", "27 13", "27 13/", "12 +", "3."])
    def test_an_entry_that_stops_in_the_middle_is_known(self, text: str) -> None:
        width = field(form({"width": text}), "width")
        assert width.get("unfinished") or "message" not in width

    @given(
        st.integers(0, 120), st.integers(1, 63), st.sampled_from(["", '"', " in"]),
        st.integers(1, 15),
    )  # fmt: skip
    def test_the_fraction_of_an_entry_is_changed_and_nothing_else(
        self, whole: int, over: int, mark: str, sixteenths: int
    ) -> None:
        split = inch_split(f"{whole} {over}/64{mark}")
        assert split is not None
        assert split["share"] == over / 64
        changed = f"{split['before']} {sixteenths}/16{split['after']}"
        assert read_length(changed) == whole + sixteenths / 16


class TestRows:
    def test_a_row_that_nobody_filled_is_passed_over(self) -> None:
        reply = form({"stands": "wall", "width": "1", "walls": [{}, {"length": "2"}]})
        assert reply["answer"]["figures"][0]["value"] == 3

    def test_a_refusal_counts_the_rows_as_they_stand(self) -> None:
        reply = form({"stands": "wall", "width": "1", "walls": [{}, {"length": "201"}]})
        row = field(reply, "walls")["rows"][1]["fields"][0]
        assert row["message"] == "Too long."
        assert reply["waiting"] == {"field": "walls.1.length", "words": "Check Wall 2, Length"}


class TestAtEveryDoor:
    """Whatever a file, an address or an old store brings: kept, shown, and in nobody's way."""

    def test_an_older_form_is_brought_up(self) -> None:
        reply = form({"width": "3"}, version=1)
        assert field(reply, "stands")["chosen"] == "wall"
        assert reply["inputs"] == {"stands": "wall", "width": "3"}
        assert form({"width": "3"}, version=2)["answer"] is None

    @pytest.mark.parametrize(
        ("inputs", "path"),
        [
            ({"later_input": "7"}, "later_input"),
            ({"walls": [None]}, "walls.0"),
            ({"walls": [{"length": [None]}]}, "walls.0.length"),
            ({"walls": {"length": "3"}}, "walls"),
            ({"closed": "perhaps"}, "closed"),
            ({"reach": {"length": 3}}, "reach"),
            ({"label": "x" * 1000}, "label"),
            ({"__proto__": {"a": 1}}, "__proto__"),
        ],
    )
    def test_what_can_t_be_used_is_set_aside(self, inputs: dict[str, Any], path: str) -> None:
        reply = form({"stands": "wall", "width": "3"} | inputs)
        assert [each["path"] for each in reply["aside"]] == [path]
        assert reply["answer"]

    @pytest.mark.parametrize("inputs", [None, [], "text", 7])
    def test_what_is_no_form_is_an_empty_one(self, inputs: object) -> None:
        assert form(inputs)["waiting"]

    def test_in_the_api_an_unknown_field_stays_an_error(self, tool: Tool) -> None:
        with pytest.raises(Refusal, match="later_input"):
            tool.read({"stands": "wall", "width": "3", "later_input": "7"}, Scale())

    def test_the_fields_alone_leave_a_search_alone(self) -> None:
        reply = form({"stands": "wall", "width": "3"}, answer=False)
        assert "answer" not in reply
