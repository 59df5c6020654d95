"""What must hold of any three versions of a job, however they were edited."""

import json
import random
from itertools import permutations
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.trade import calls
from longpoint.trade.job.document import check
from longpoint.trade.job.editing import letter_of
from longpoint.trade.job.merge import merge
from longpoint.trade.job.orders import interleaved, merged_order
from longpoint.trade.job.sameness import is_same
from tests.trade.phone_core import phone_core

from .asking import ask
from .edited import ADDING, KINDS, Editor, Job, begun, copied
from .facts import events, events_joined, facts_of, joined

SEEDS = st.integers(0, 2**32)
EDITS = st.integers(0, 8)


def versions(
    seed: int, edits: int, people: str = "mt", kinds: list[str] | None = None
) -> list[Job]:
    """Return a job as it was, and as each person edited it."""
    chance = random.Random(seed)
    base = Editor(chance, "b").edit(begun(), chance.randint(0, 6))
    return [base, *(Editor(chance, name).edit(base, edits, kinds) for name in people)]


def call(request: dict[str, Any]) -> str:
    """Return what the core says here, a refusal too."""
    return text(json.loads(calls.call(json.dumps(request))))


def text(value: Any) -> str:
    return json.dumps(value, sort_keys=True)


def added(base: list[Any], version: list[Any]) -> set[str]:
    return {text(each) for each in version} - {text(each) for each in base}


def ids(job: Job) -> dict[str, set[str]]:
    """Return the ids of all that has one, by what it is."""
    found = {
        "items": {item["id"] for item in job["items"]},
        "entries": {entry["id"] for item in job["items"] for entry in item["entries"]},
        "photos": {photo["id"] for item in job["items"] for photo in item.get("photos") or []},
    }
    for name in ("stock", "ticks"):
        found[name] = {each["id"] for each in job.get(name) or []}
    return found


@settings(max_examples=150)
@given(SEEDS, EDITS)
def test_what_either_added_is_there_and_it_is_a_job(seed: int, edits: int) -> None:
    base, mine, theirs = versions(seed, edits)
    made, _ = merge(base, mine, theirs)
    check(made)
    before, after = ids(base), ids(made)
    for version in (mine, theirs):
        for name, held in ids(version).items():
            assert held - before[name] <= after[name]
        for name in ("ticks", "log"):
            new = added(base.get(name) or [], version.get(name) or [])
            assert new <= {text(each) for each in made.get(name) or []}
    letters = [entry["letter"] for item in made["items"] for entry in item["entries"]]
    assert len(letters) == len(set(letters))


@settings(max_examples=150)
@given(SEEDS, EDITS)
def test_what_neither_took_away_is_there(seed: int, edits: int) -> None:
    base, mine, theirs = versions(seed, edits)
    made, _ = merge(base, mine, theirs)
    both, after = [ids(mine), ids(theirs)], ids(made)
    for name, held in ids(base).items():
        assert held & both[0][name] & both[1][name] <= after[name]
        if name in ("ticks",):
            assert not (held - (both[0][name] & both[1][name])) & after[name]


@settings(max_examples=100)
@given(SEEDS, EDITS)
def test_one_alone_s_changes_are_taken_as_they_are(seed: int, edits: int) -> None:
    base, mine, _ = versions(seed, edits)
    for one, other, stands in ((mine, base, mine), (base, mine, mine), (mine, mine, mine)):
        made, collisions = merge(base, one, other)
        assert is_same(made, stands)
        assert collisions == []
    assert is_same(merge(None, mine, mine)[0], mine)


@settings(max_examples=150)
@given(SEEDS, EDITS)
def test_it_does_not_matter_who_is_asked(seed: int, edits: int) -> None:
    """Where something collides, the same places do, and all other values are the same."""
    base, mine, theirs = versions(seed, edits)
    given_ones = copied([base, mine, theirs])
    one, collisions = merge(base, mine, theirs)
    other, again = merge(base, theirs, mine)
    assert [base, mine, theirs] == given_ones
    places = {each["path"] for each in collisions if not each["path"].endswith(".letter")}
    assert places == {each["path"] for each in again if not each["path"].endswith(".letter")}
    if not collisions:
        assert is_same(one, other)


@settings(max_examples=150)
@given(SEEDS, EDITS, st.sampled_from([[*ADDING, "delete"], [*ADDING, "move"], ADDING]))
def test_three_people_join_in_any_order(seed: int, edits: int, kinds: list[str]) -> None:
    """Where nothing collides; one who moves what another deletes may part what a third added."""
    chance = random.Random(seed)
    base = Editor(chance, "b").edit(begun(), chance.randint(0, 6))
    people = []
    for at, name in enumerate("abc"):
        # Letters of their own, since two that are alike collide.
        job = base | {"letters": 100 * (at + 1)}
        people.append(Editor(chance, name).edit(job, edits, kinds))
    found = []
    for first, second, third in permutations(people):
        two, collided = merge(base, first, second)
        made, collisions = merge(base, two, third)
        if collided or collisions:
            return
        found.append(made)
    assert all(is_same(found[0], each) for each in found)


@settings(max_examples=200)
@given(st.lists(st.lists(st.sampled_from("abcdefgh"), unique=True), min_size=3, max_size=3))
def test_runs_are_joined_in_any_order_each_in_its_own(runs: list[list[str]]) -> None:
    runs = [[f"{each}{at}" for each in run] for at, run in enumerate(runs)]
    whole = interleaved(runs)
    for run in runs:
        assert [each for each in whole if each in run] == run
    for first, second, third in permutations(runs):
        assert interleaved([interleaved([first, second]), third]) == whole


FACTS = [name for name in KINDS if name not in ("row", "units", "meant", "move")]
"""Rows have no ids; numbers with what says how they are meant, and an order, are no facts."""


@settings(max_examples=250)
@given(SEEDS, EDITS)
def test_it_is_what_sets_of_facts_come_to(seed: int, edits: int) -> None:
    """The reference knows facts by paths, and neither order nor a walk."""
    # Where an item was undeleted by one its letter may be another question's: see letters.
    base, mine, theirs = versions(seed, edits, kinds=FACTS)
    mine["letters"], theirs["letters"] = 100, 200
    for version, first in ((mine, 100), (theirs, 200)):
        give_letters_of_its_own(base, version, first)
    made, collisions = merge(base, mine, theirs)
    facts, collided = joined(base, mine, theirs)
    assert facts_of(made) == facts
    orders = {each["path"] for each in collisions if isinstance(each["mine"], list)
              and all(isinstance(own, str) for own in each["mine"])}  # fmt: skip
    assert {each["path"] for each in collisions} - orders == {".".join(each) for each in collided}
    for name in ("ticks", "log"):
        assert events(made, name) == events_joined([base, mine, theirs], name)


def give_letters_of_its_own(base: Job, version: Job, first: int) -> None:
    """Let no new question of two people have one letter."""
    old = ids(base)["entries"]
    for item in version["items"]:
        for entry in item["entries"]:
            if entry["id"] not in old:
                first += 1
                entry["letter"] = letter_of(first)


@pytest.mark.parametrize("times", [60])
def test_both_runtimes_say_the_same_bytes(times: int) -> None:
    """Of merge and of meet, with a base and without; one start of the phone's interpreter."""
    with phone_core() as phone:
        for seed in range(times):
            base, mine, theirs = versions(seed, seed % 9)
            states = [{"units": "in", "schema": 1, "body": each} for each in (base, mine, theirs)]
            if seed % 4 == 0:
                base, states[0] = None, None  # type: ignore[assignment, call-overload]
            merged = {"do": "merge jobs", "base": base, "mine": mine, "theirs": theirs}
            met = {"do": "meet", "kind": "job", "base": states[0], "mine": states[1],
                   "theirs": states[2], "names": ["Ann", "Bo"]}  # fmt: skip
            for request in (merged, met):
                assert text(phone(request)) == text(ask(**request))
            body = ask(**met)["document"]["body"]
            for question in [each for each in body.get("questions") or [] if "path" in each][:2]:
                settling = {"do": "answer question", "document": body, "side": seed % 2,
                            "question": question["id"], "by": "Bo"}  # fmt: skip
                assert text(phone(settling)) == call(settling)


def test_an_order_is_the_one_who_moved() -> None:
    """Hand work: Ann moves c to the front, Bo adds n behind b and deletes a."""
    order = merged_order(list("abc"), list("cab"), ["b", "n", "c"], list("bcn"))
    assert order == (["c", "b", "n"], False)
