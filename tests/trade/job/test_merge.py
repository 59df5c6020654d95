"""Two people's changes to one job joined: nothing typed is lost, the few collisions are said."""

import json
from collections import Counter
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.trade.job.document import check
from longpoint.trade.job.editing import letter_of
from longpoint.trade.job.merge import merge
from longpoint.trade.job.sameness import is_same

from .asking import ask, blank, refused

IDS = ["a", "b", "c", "d"]
WORDS = st.sampled_from(["", "27 13/16", "one", "two"])
INPUTS = st.dictionaries(st.sampled_from(["stile", "width", "height"]), WORDS, max_size=3)


def entries() -> st.SearchStrategy[dict[str, Any]]:
    return st.fixed_dictionaries(
        {"id": st.just(""), "tool": st.just("door-set"), "inputs": INPUTS},
        optional={"later": st.integers(0, 2), "title": WORDS},
    )  # fmt: skip


def listed(one: st.SearchStrategy[dict[str, Any]], prefix: str) -> st.SearchStrategy[list[Any]]:
    """Return lists by id, in any order."""

    def with_ids(values: dict[str, dict[str, Any]]) -> list[Any]:
        return [value | {"id": prefix + own} for own, value in values.items()]

    return st.dictionaries(st.sampled_from(IDS), one, max_size=4).map(with_ids)


TICKS = st.lists(
    st.fixed_dictionaries(
        {"of": st.sampled_from(["ia-ea/1#1", "ia-eb/2#1"]),
         "state": st.sampled_from(["cut", "spoiled"]), "at": st.sampled_from(["1", "2", "3"])}
    ),
    max_size=4, unique_by=lambda tick: (tick["of"], tick["state"], tick["at"]),
)  # fmt: skip


@st.composite
def jobs(draw: st.DrawFn) -> dict[str, Any]:
    items = draw(listed(st.fixed_dictionaries({"title": WORDS, "count": st.integers(1, 3)}), "i"))
    for item in items:
        item["entries"] = draw(listed(entries(), f"{item['id']}-e"))
        for entry in item["entries"]:
            # Given once: the same in every version, as different questions have different ones.
            entry["letter"] = letter_of(
                1 + 4 * IDS.index(item["id"][-1]) + IDS.index(entry["id"][-1])
            )
    job = blank(items=items, ticks=draw(TICKS), title=draw(WORDS))
    return job | draw(st.dictionaries(st.sampled_from(["later", "__proto__"]), WORDS, max_size=2))


def reports(collisions: list[dict[str, Any]]) -> Counter[str]:
    return Counter(each["path"] for each in collisions)


class TestAlways:
    @settings(max_examples=50)
    @given(jobs())
    def test_a_job_joined_with_itself_is_itself(self, job: dict[str, Any]) -> None:
        made, collisions = merge(job, job, job)
        assert collisions == []
        assert made["title"] == job["title"]
        assert [item["id"] for item in made["items"]] == [item["id"] for item in job["items"]]

    @settings(max_examples=50)
    @given(jobs(), jobs())
    def test_what_one_alone_changed_is_taken(
        self, base: dict[str, Any], theirs: dict[str, Any]
    ) -> None:
        """Whichever of the two it was, and however much: letters aside, which are never twice."""
        for mine, other in ((base, theirs), (theirs, base)):
            made, _ = merge(base, mine, other)
            assert is_same(bare(made), bare(theirs))

    @settings(max_examples=50)
    @given(jobs(), jobs(), jobs())
    def test_it_does_not_matter_who_is_asked_where_nothing_collides(
        self, base: dict[str, Any], mine: dict[str, Any], theirs: dict[str, Any]
    ) -> None:
        one, collisions = merge(base, mine, theirs)
        other, again = merge(base, theirs, mine)
        assert reports(collisions) == reports(again)
        if not collisions:
            assert is_same(one, other)

    @settings(max_examples=50)
    @given(jobs(), jobs(), jobs())
    def test_joining_again_changes_nothing(
        self, base: dict[str, Any], mine: dict[str, Any], theirs: dict[str, Any]
    ) -> None:
        made, _ = merge(base, mine, theirs)
        again, collisions = merge(made, made, made)
        assert is_same(again, made)
        assert collisions == []

    @settings(max_examples=50)
    @given(jobs(), jobs(), jobs())
    def test_every_question_and_tick_that_someone_added_is_there_once(
        self, base: dict[str, Any], mine: dict[str, Any], theirs: dict[str, Any]
    ) -> None:
        made, _ = merge(base, mine, theirs)
        check(made)
        ids = [entry["id"] for item in made["items"] for entry in item["entries"]]
        assert len(ids) == len(set(ids))
        old = set(ids_of(base))
        assert set(ids) >= (set(ids_of(mine)) | set(ids_of(theirs))) - old
        ticks = [json.dumps(tick, sort_keys=True) for tick in made["ticks"]]
        assert len(ticks) == len(set(ticks))
        for each in (mine, theirs):
            new = [tick for tick in each["ticks"] if tick not in base["ticks"]]
            assert all(tick in made["ticks"] for tick in new)

    @settings(max_examples=50)
    @given(jobs(), st.lists(st.sampled_from("ABC"), min_size=2, max_size=2))
    def test_no_letter_stands_on_two_questions(
        self, base: dict[str, Any], letters: list[str]
    ) -> None:
        """Each adds a question, both perhaps of one letter, or of one that is there already."""
        versions = [json.loads(json.dumps(base)) for _ in letters]
        for at, (version, letter) in enumerate(zip(versions, letters, strict=True)):
            new = {"id": f"new-{at}", "letter": letter, "tool": "door-set", "inputs": {}}
            version["items"].append({"id": f"item-{at}", "title": "", "entries": [new]})
        made, _ = merge(base, *versions)
        found = [entry["letter"] for item in made["items"] for entry in item["entries"]]
        assert len(found) == len(set(found))


def ids_of(job: dict[str, Any]) -> list[str]:
    return [entry["id"] for item in job["items"] for entry in item["entries"]]


def bare(job: dict[str, Any]) -> dict[str, Any]:
    """Return a job without its letters."""
    whole: dict[str, Any] = json.loads(json.dumps(job))
    whole.pop("letters", None)
    for item in whole["items"]:
        for entry in item["entries"]:
            del entry["letter"]
    whole["ticks"] = sorted(whole["ticks"], key=lambda tick: json.dumps(tick, sort_keys=True))
    return whole


def job(**rest: Any) -> dict[str, Any]:
    entry = {"id": "e", "letter": "A", "tool": "door-set", "inputs": {"stile": "2 1/4"},
             "typed_in": "in"}  # fmt: skip
    return blank(items=[{"id": "i", "title": "Doors", "entries": [entry | rest]}])


class TestOne:
    def test_two_numbers_of_one_question_are_both_taken(self) -> None:
        mine = job(inputs={"stile": "2 1/2"})
        theirs = job(inputs={"stile": "2 1/4", "top_rail": "3"})
        made, collisions = merge(job(), mine, theirs)
        entry = made["items"][0]["entries"][0]
        assert entry["inputs"] == {"stile": "2 1/2", "top_rail": "3"}
        assert collisions == []

    def test_one_number_changed_by_both_stays_mine_and_is_reported(self) -> None:
        mine, theirs = job(inputs={"stile": "2 1/2"}), job(inputs={"stile": "2 3/4"})
        made, (collision,) = merge(job(), mine, theirs)
        assert made["items"][0]["entries"][0]["inputs"]["stile"] == "2 1/2"
        assert collision == {
            "path": "items.i.entries.e.inputs.stile",
            "base": "2 1/4", "mine": "2 1/2", "theirs": "2 3/4",
        }  # fmt: skip

    def test_a_measure_is_never_parted_from_its_units(self) -> None:
        """One says all in millimeters, the other changes a number of inches: one of the two."""
        mine = job(inputs={"stile": "57"}, typed_in="mm")
        theirs = job(inputs={"stile": "2 1/4", "top_rail": "3"})
        made, collisions = merge(job(), mine, theirs)
        entry = made["items"][0]["entries"][0]
        assert (entry["inputs"], entry["typed_in"]) == ({"stile": "57"}, "mm")
        assert [each["path"] for each in collisions] == ["items.i.entries.e.inputs"]

    def test_what_one_deleted_and_the_other_changed_stays(self) -> None:
        gone = blank(items=[])
        changed = job(inputs={"stile": "3"})
        for mine, theirs in ((gone, changed), (changed, gone)):
            made, (collision,) = merge(job(), mine, theirs)
            assert made["items"][0]["entries"][0]["inputs"] == {"stile": "3"}
            assert None in (collision["mine"], collision["theirs"])

    def test_two_new_questions_of_one_letter_get_two(self) -> None:
        """The ticked one keeps its letter: it is on the wood."""
        base = blank(items=[{"id": "i", "title": "Doors", "entries": []}])
        new = {"letter": "A", "tool": "even-gap", "inputs": {}}
        mine, theirs = (
            json.loads(json.dumps(base)) for _ in range(2)
        )  # fmt: skip
        mine["items"][0]["entries"] = [new | {"id": "m"}]
        theirs["items"][0]["entries"] = [new | {"id": "k"}]
        mine["ticks"] = [{"of": "m/1#1", "state": "cut"}]
        made, _ = merge(base, mine, theirs)
        assert {entry["id"]: entry["letter"] for entry in made["items"][0]["entries"]} == {
            "m": "A", "k": "B",
        }  # fmt: skip

    def test_a_letter_that_either_gave_is_not_given_again(self) -> None:
        made, _ = merge(job(), job() | {"letters": 7}, job() | {"letters": 4})
        assert made["letters"] == 7

    def test_without_a_base_all_that_differs_is_reported(self) -> None:
        reply = ask(do="merge jobs", base=None, mine=job(), theirs=job(inputs={"stile": "3"}))
        assert [each["path"] for each in reply["collisions"]] == ["items.i.entries.e.inputs.stile"]

    def test_two_jobs_are_not_joined(self) -> None:
        other = job() | {"id": "other"}
        assert "two jobs" in refused(do="merge jobs", base=None, mine=job(), theirs=other)[0]

    @pytest.mark.parametrize("which", ["base", "mine", "theirs"])
    def test_what_is_no_job_is_refused(self, which: str) -> None:
        versions: dict[str, Any] = {"base": job(), "mine": job(), "theirs": job()}
        assert refused(do="merge jobs", **(versions | {which: [1]}))
