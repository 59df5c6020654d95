"""What is wrong with a job is a sentence at its place; nothing is lost, nothing is run."""

import json
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.trade.calls import call
from longpoint.trade.job.document import MOST_ENTRIES, MOST_ITEMS, check
from longpoint.trade.refusal import Refusal

from .asking import ask, blank, entries_of, refused, worked

FRAME = {"fit": "inside", "opening_width": "30", "opening_height": "40", "trim_width": "3"}
ODD_IDS = ["__proto__", "constructor", "toString", "../..", "<b>", "a/b#1", "\u202e", "0"]


def entry(own: str, **rest: Any) -> dict[str, Any]:
    made = {"id": own, "letter": "A", "tool": "mitered-frame", "inputs": dict(FRAME)}
    return made | rest


def job(*entries: dict[str, Any], **rest: Any) -> dict[str, Any]:
    return blank(items=[{"id": "i", "title": "Door", "entries": list(entries)}]) | rest


def faults(document: Any) -> dict[str, str]:
    with pytest.raises(Refusal) as raised:
        check(document)
    return {error.field: error.message for error in raised.value.errors}


class TestTies:
    def test_a_circle_of_three_is_named_and_the_rest_goes_on(self) -> None:
        def tied(to: str) -> dict[str, Any]:
            return {"opening_width": {"entry": to, "figure": "top_long"}}

        inputs = {name: value for name, value in FRAME.items() if name != "opening_width"}
        ring = [entry(own, inputs=inputs, ties=tied(to)) for own, to in ("ab", "bc", "ca")]
        found = entries_of(worked(job(*ring, entry("d"))))
        said = [error["message"] for own in "abc" for error in found[own]["errors"]]
        assert any("circle" in words for words in said)
        assert found["d"]["verdict"]

    def test_a_question_tied_to_itself_is_a_circle(self) -> None:
        ties = {"opening_width": {"entry": "a", "figure": "top_long"}}
        found = entries_of(worked(job(entry("a", inputs={}, ties=ties))))
        assert "circle" in found["a"]["errors"][0]["message"]

    def test_a_source_that_was_deleted_leaves_what_was_typed(self) -> None:
        ties = {"opening_width": {"entry": "gone", "figure": "top_long"}}
        assert entries_of(worked(job(entry("a", ties=ties))))["a"]["verdict"]

    def test_a_tie_that_says_nothing_is_refused_at_its_place(self) -> None:
        wrong = job(entry("a", ties={"opening_width": {"offset": "1/8"}}))
        assert faults(wrong)["items.0.entries.0.ties.opening_width"] == "entry or pieces is needed."

    def test_an_offset_that_can_t_be_read_is_said_on_its_field(self) -> None:
        ties = {"opening_width": {"entry": "a", "figure": "top_long", "offset": "a hair"}}
        inputs = {name: value for name, value in FRAME.items() if name != "opening_width"}
        found = entries_of(
            worked(job(entry("a"), entry("b", letter="B", inputs=inputs, ties=ties)))
        )
        assert [error["field"] for error in found["b"]["errors"]] == ["opening_width"]


class TestItems:
    def test_two_of_one_title_are_two(self) -> None:
        items = [{"id": own, "title": "Door", "entries": [entry("e" + own)]} for own in "ab"]
        assert [item["id"] for item in worked(blank(items=items))["items"]] == ["a", "b"]

    def test_one_of_a_newer_pattern_opens_as_it_was_given(self) -> None:
        document = job(entry("a"))
        document["items"][0] |= {"pattern": "window", "pattern_version": 99}
        assert entries_of(worked(document))["a"]["verdict"]

    def test_a_pattern_this_version_has_not_is_a_sentence(self) -> None:
        words = refused(do="begin item", job=blank(), pattern="spiral-stair", id="i")[0]
        assert "spiral-stair" in words
        assert "update" in words

    @pytest.mark.parametrize("own", ODD_IDS)
    def test_odd_ids_are_ids_like_others(self, own: str) -> None:
        document = job(entry(own), ticks=[{"of": own + "/1#1", "state": "cut"}])
        document["items"][0]["id"] = own
        document["stock"] = [{"id": own, "title": "<script>", "sold": "stick"}]
        document["items"][0]["entries"][0]["stock"] = {"all": own}
        reply = worked(document)
        assert entries_of(reply)[own]["verdict"]
        assert reply["yard"]["lines"][0]["title"] == "<script>"


class TestShape:
    @pytest.mark.parametrize(
        ("path", "value"),
        [
            ("items.0.entries.0.inputs", "text"), ("items.0.entries.0.ties", []),
            ("items.0.entries.0.ties.stile", 7), ("items.0.entries.0.stock.all", 7),
            ("items.0.entries.0.letter", "ABCD"), ("items.0.entries.0.version", 1.5),
            ("items.0.count", 0), ("items.0.count", True), ("items.0.photos", [{"id": 7}]),
            ("customer.name", 7), ("customer.note", "x" * 1_000_000), ("units", "yd"), ("step", 7),
            ("stock", [{"id": "s", "title": "t", "sold": "stick", "lengths": [{"price": "much"}]}]),
            ("ticks", [{"of": "", "state": "cut"}]), ("log", [{"at": 7}]), ("letters", -1),
        ],
    )  # fmt: skip
    def test_a_wrong_value_in_its_depth_is_named_with_its_place(
        self, path: str, value: Any
    ) -> None:
        document: Any = json.loads(json.dumps(job(entry("a", ties={}, stock={}), customer={})))
        where: Any = document
        *names, last = path.split(".")
        for name in names:
            where = where[int(name)] if isinstance(where, list) else where[name]
        where[last] = value
        assert [place for place in faults(document) if place.startswith(path)]

    @given(st.recursive(
        st.none() | st.booleans() | st.floats(allow_nan=False) | st.text(max_size=5),
        lambda inner: st.lists(inner, max_size=3)
        | st.dictionaries(st.sampled_from(["id", "items", "entries", "inputs", "title"]), inner),
        max_leaves=12,
    ))  # fmt: skip
    @settings(max_examples=60)
    def test_anything_at_all_is_a_job_or_a_sentence(self, value: Any) -> None:
        for document in (value, job() | {"items": value}, job(entry("a", inputs=value))):
            reply = json.loads(call(json.dumps({"do": "job", "job": document})))
            assert reply["ok"] or all(error["message"] for error in reply["errors"])

    def test_a_newer_job_is_a_sentence(self) -> None:
        assert "newer" in faults(blank(schema=2))["schema"]


class TestLimits:
    def test_items(self) -> None:
        items = [{"id": str(at), "title": "", "entries": []} for at in range(MOST_ITEMS)]
        check(blank(items=items))
        more = blank(items=[*items, {"id": "one more", "title": "", "entries": []}])
        assert "a job holds 100" in faults(more)["items"]
        words = refused(do="begin item", job=blank(items=items), pattern="window", id="new")[0]
        assert "a job holds 100" in words

    def test_questions(self) -> None:
        entries = [entry(str(at), inputs={}) for at in range(MOST_ENTRIES)]
        halves = [{"id": own, "title": "", "entries": some}
                  for own, some in (("a", entries[:250]), ("b", entries[250:]))]  # fmt: skip
        check(blank(items=halves))
        halves[0]["entries"] = [*entries[:250], entry("one more")]
        assert "a job holds 500" in faults(blank(items=halves))["items"]

    def test_pieces(self) -> None:
        """A frame has four; 200 alike of 7 questions are 5,600."""
        document = job(*[entry(str(at)) for at in range(7)])
        document["items"][0]["count"] = 200
        reply = ask(do="job", job=document)
        while reply.get("work"):
            reply = json.loads(call(json.dumps({"do": "continue job", "work": reply["work"]})))
        assert "a job holds 5000" in reply["errors"][0]["message"]

    def test_a_job_at_its_limits_is_worked_out(self) -> None:
        """500 questions, waiting for their numbers, in 100 items of 5."""
        items = [{"id": f"i{at}", "title": "", "entries": [entry(f"{at}-{k}", inputs={})
                                                            for k in range(5)]}
                 for at in range(MOST_ITEMS)]  # fmt: skip
        reply = worked(blank(items=items))
        assert len(entries_of(reply)) == MOST_ENTRIES
