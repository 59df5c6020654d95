"""A signature drawn on the screen: strokes of whole points and nothing else, within bounds.

The JSON Schema published is read by `jsonschema-rs`, a program of another kind.
"""

import json
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema_rs import Draft202012Validator

from longpoint.trade.job.document import check, json_schema
from longpoint.trade.job.merge import merge
from longpoint.trade.refusal import Refusal
from tests.trade.phone_core import Call, phone_core

from .asking import blank

HAND = [[[10, 20], [300, 120]], [[600, 240]]]
SIGNED = ("quote.agreed", "quote.extras.0", "quote.signed")
PLACES = [place + whose for place in SIGNED for whose in (".strokes", ".shop.strokes")]
"""Three things are signed, each by the customer and by the shop."""
SCHEMA = Draft202012Validator(json_schema())


def job(strokes: Any, at: str = PLACES[0]) -> dict[str, Any]:
    """Return a job that is signed at one of its places."""
    name = at.split(".")[1]
    signed: dict[str, Any] = {"by": "Ada Fern", "strokes": strokes}
    if ".shop." in at:
        signed = {"by": "Ada Fern", "shop": signed}
    return blank(quote={name: [{"id": "e"} | signed] if name == "extras" else signed})


def faults(document: Any) -> dict[str, str]:
    with pytest.raises(Refusal) as raised:
        check(document)
    return {error.field: error.message for error in raised.value.errors}


@pytest.mark.parametrize("at", PLACES)
def test_it_is_kept_at_each_place_where_one_signs(at: str) -> None:
    check(job(HAND, at))
    assert list(faults(job([["<b>"]], at))) == [at + ".0"]


@pytest.mark.parametrize(
    "strokes",
    [
        [[[1, 2], [3, 4.5]]], [[[-1, 2]]], [[[1, 241]]], [[[601, 2]]], [[[1, 2, 3]]], [[[1]]],
        [[["1", "2"]]], [[[True, 2]]], [[None]], [[]], [7], ["M0 0"], [{"x": 1}],
        [[["<script>alert(1)</script>", 0]]], [[[1e300, 2]]], [[[None, 2]]],
    ],
)  # fmt: skip
def test_what_is_no_stroke_is_refused_at_its_place(strokes: Any) -> None:
    assert list(faults(job(strokes))) == [PLACES[0] + ".0"]
    assert not SCHEMA.is_valid(job(strokes))


@pytest.mark.parametrize("strokes", ["M0 0", None, 7, {}])
def test_what_is_no_list_is_refused(strokes: Any) -> None:
    assert faults(job(strokes)) == {PLACES[0]: "A list is needed here."}
    assert not SCHEMA.is_valid(job(strokes))


def test_one_too_large_is_a_sentence() -> None:
    """600 points of all strokes together, and 60 strokes."""
    half = [[at, 0] for at in range(300)]
    check(job([half, half]))
    words = faults(job([half, half, [[1, 1]]]))[PLACES[0]]
    assert words == ("601 points: a signature holds 600 at most. Clear it and sign again, shorter.")
    check(job([[[1, 1]]] * 60))
    assert "61 strokes: a signature holds 60 at most." in faults(job([[[1, 1]]] * 61))[PLACES[0]]


NUMBERS = st.integers(-2, 601) | st.sampled_from([0, 1.0, 1.5, 239, 240, 241, 600, True, "1", None])
STROKES = st.lists(st.lists(st.lists(NUMBERS, min_size=1, max_size=3), max_size=3), max_size=3)


@given(STROKES)
def test_the_check_and_the_published_schema_agree(strokes: Any) -> None:
    document = job(strokes)
    try:
        check(document)
    except Refusal:
        assert not SCHEMA.is_valid(document)
    else:
        assert SCHEMA.is_valid(document)


def test_of_two_signatures_one_stands_whole() -> None:
    """Both sign anew, each with as many strokes: mine stands, and both are reported."""
    mine, theirs = [[[1, 1], [2, 2]], [[3, 3]]], [[[9, 9], [8, 8]], [[7, 7]]]
    document, collisions = merge(job(HAND), job(mine), job(theirs))
    assert document["quote"]["agreed"]["strokes"] == mine
    assert collisions == [{"path": PLACES[0], "base": HAND, "mine": mine, "theirs": theirs}]
    partly = [HAND[0], [[5, 5]]]
    document, _ = merge(job(HAND), job([[[1, 1]], HAND[1]]), job(partly))
    assert document["quote"]["agreed"]["strokes"] == [[[1, 1]], HAND[1]]


def test_the_customer_and_the_shop_sign_on_two_phones() -> None:
    base = blank(quote={"agreed": {"price": 10}})
    mine, theirs = json.loads(json.dumps(base)), json.loads(json.dumps(base))
    mine["quote"]["agreed"]["shop"] = {"by": "Fern & Sons", "strokes": [[[1, 1]]]}
    theirs["quote"]["agreed"]["strokes"] = HAND
    document, collisions = merge(base, mine, theirs)
    assert collisions == []
    assert document["quote"]["agreed"] == {
        "price": 10, "strokes": HAND, "shop": {"by": "Fern & Sons", "strokes": [[[1, 1]]]},
    }  # fmt: skip


def test_a_signature_of_one_comes_along_with_the_name_of_the_other() -> None:
    base = blank(quote={"agreed": {"price": 10}})
    mine, theirs = json.loads(json.dumps(base)), json.loads(json.dumps(base))
    mine["quote"]["agreed"]["by"] = "Ada Fern"
    theirs["quote"]["agreed"]["strokes"] = HAND
    document, collisions = merge(base, mine, theirs)
    assert document["quote"]["agreed"] == {"price": 10, "by": "Ada Fern", "strokes": HAND}
    assert collisions == []


@pytest.fixture(scope="module")
def phone() -> Iterator[Call]:
    with phone_core() as asked:
        yield asked


def test_the_phone_says_the_same(phone: Call) -> None:
    for strokes in (HAND, [[["<b>", 1]]], [[[1, 2.5]]], [[[1, 1]]] * 61, "M0 0", [[]]):
        reply = phone({"do": "check job", "job": job(strokes)})
        try:
            check(job(strokes))
        except Refusal as refusal:
            said = [(error.field, error.message) for error in refusal.errors]
            assert [(error["field"], error["message"]) for error in reply["errors"]] == said
        else:
            assert reply["ok"]
