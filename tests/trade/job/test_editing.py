"""Items and questions laid into a job: letters are given once and never again."""

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.trade.job.document import check
from longpoint.trade.job.editing import letter_of, number_of
from longpoint.trade.job.patterns import PATTERNS
from longpoint.trade.shelf import tool_named

from .asking import ask, blank, refused, worked


def letters(job: dict[str, Any]) -> list[str]:
    return [entry["letter"] for item in job["items"] for entry in item["entries"]]


def begun(*patterns: str) -> dict[str, Any]:
    job = blank()
    for at, pattern in enumerate(patterns):
        job = ask(do="begin item", job=job, pattern=pattern, id=f"item-{at}")["document"]
    return job


class TestLetters:
    @given(st.integers(1, 18_000))
    def test_a_letter_says_its_number(self, number: int) -> None:
        assert number_of(letter_of(number)) == number
        assert len(letter_of(number)) <= 3

    def test_they_go_on_from_item_to_item(self) -> None:
        """A cased door has five questions, a window one."""
        assert letters(begun("cased-door", "window")) == ["A", "B", "C", "D", "E", "F"]

    def test_a_letter_of_a_question_since_deleted_is_not_given_again(self) -> None:
        job = begun("cased-door")
        job["items"] = []
        job = ask(do="begin item", job=job, pattern="window", id="later")["document"]
        assert letters(job) == ["F"]

    def test_a_job_that_never_counted_its_letters_goes_on_after_the_last(self) -> None:
        job = begun("cased-door")
        del job["letters"]
        job = ask(do="begin item", job=job, pattern="window", id="later")["document"]
        assert letters(job)[-1] == "F"


@pytest.mark.parametrize("pattern", PATTERNS, ids=lambda pattern: pattern.slug)
class TestPatterns:
    def test_what_it_names_is_there(self, pattern: Any) -> None:
        known = {question.key: tool_named(question.tool) for question in pattern.questions}
        for question in pattern.questions:
            inputs = {asked.name for asked in known[question.key].inputs}
            assert set(question.asks) <= inputs
            assert set(question.presets) <= inputs
            assert set(question.ties) <= inputs
        tool_named(pattern.drawing)

    def test_it_begins_an_item_that_the_core_takes(self, pattern: Any) -> None:
        job = begun(pattern.slug)
        check(job)
        worked(job)
        (item,) = job["items"]
        assert (item["title"], item["pattern"]) == (pattern.title, pattern.slug)

    def test_nothing_is_asked_twice(self, pattern: Any) -> None:
        """What is asked first is not what another question of the pattern gives."""
        job = worked(begun(pattern.slug))
        (item,) = job["items"]
        for question, entry in zip(pattern.questions, item["entries"], strict=True):
            carried = {each["input"] for each in entry["carried"]}
            assert carried.isdisjoint(set(question.asks) - set(question.presets))


class TestItems:
    def test_a_stock_of_one_title_is_shared(self) -> None:
        """Both doors take their casing from one stock, so that it is bought at once."""
        job = begun("cased-door", "cased-door")
        assert [stock["title"] for stock in job["stock"]] == ["Jamb stock", "Door stop", "Casing"]

    def test_a_copy_ties_its_own_questions_and_keeps_what_was_typed(self) -> None:
        job = begun("cupboard-inset")
        first = job["items"][0]
        first["entries"][1]["inputs"]["panel_thickness"] = "1/4"
        reply = ask(do="copy item", job=job, item="item-0", id="again", title="Left side")
        one, two = reply["document"]["items"]
        assert two["title"] == "Left side"
        assert [entry["inputs"] for entry in two["entries"]] == [
            entry["inputs"] for entry in one["entries"]
        ]
        assert two["entries"][1]["ties"]["stock_thickness"]["entry"] == two["entries"][0]["id"]
        assert letters(reply["document"]) == list("ABCDEFGHIJKL")
        assert len({thing["id"] for thing in reply["document"]["things"]}) == 4

    def test_the_job_that_was_given_stays_as_it_was(self) -> None:
        job = begun("window")
        before = json.dumps(job)
        ask(do="copy item", job=job, item="item-0", id="again")
        assert json.dumps(job) == before

    def test_a_question_is_added_after_another(self) -> None:
        job = begun("cased-door")
        first = job["items"][0]["entries"][0]["id"]
        reply = ask(
            do="add entry", job=job, item="item-0", id="new", tool="even-gap", after=first,
            inputs={"gap_top": "1/16"},
        )  # fmt: skip
        entry = reply["document"]["items"][0]["entries"][1]
        assert (entry["id"], entry["letter"], entry["tool"]) == ("new", "F", "even-gap")

    @pytest.mark.parametrize(
        ("request_", "words"),
        [
            ({"do": "begin item", "pattern": "later-than-us", "id": "i"}, "no pattern"),
            ({"do": "begin item", "pattern": "window", "id": ""}, "An id"),
            ({"do": "begin item", "pattern": "window", "id": "x" * 60}, "An id"),
            ({"do": "begin item", "pattern": "window", "id": 7}, "An id"),
            ({"do": "begin item", "pattern": "window", "id": "item-0"}, "already"),
            ({"do": "copy item", "item": "gone", "id": "i"}, "not on the job"),
            ({"do": "add entry", "item": "item-0", "id": "i", "tool": "planer"}, "no tool"),
            ({"do": "add entry", "item": "item-0", "id": "i", "tool": "even-gap", "inputs": 7},
             "An object"),
        ],
    )  # fmt: skip
    def test_what_can_t_be_laid_in_is_a_sentence(
        self, request_: dict[str, Any], words: str
    ) -> None:
        assert words in refused(**request_, job=begun("window"))[0]
