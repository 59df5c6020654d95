"""Ticks made in two windows at once are all there; what is ticked is known by the last of each."""

from collections.abc import Iterator
from typing import Any

import pytest

from tests.store.modules import Module

BODY = {"longpoint": "job", "schema": 1, "id": "j", "title": "t", "items": []}


@pytest.fixture(scope="module")
def ticking() -> Iterator[Module]:
    module = Module("src/job-sheets/ticking.ts")
    yield module
    module.end()


@pytest.fixture(scope="module")
def joining() -> Iterator[Module]:
    module = Module("src/store/merge.ts")
    yield module
    module.end()


def said(body: Any) -> list[tuple[str, str]]:
    return [(tick["of"], tick["state"]) for tick in body["ticks"]]


def test_two_windows_tick_at_once_and_nothing_is_lost(ticking: Module, joining: Module) -> None:
    """A tick without an id, as another program may write it, is told apart by its place."""
    given = BODY | {"ticks": [{"of": "e/1#1", "state": "cut"}]}
    base = ticking.call("withTick", given, "e/2#1", "cut", {"length": 30})
    mine = ticking.call("withTick", base, "e/3#1", "cut", {"length": 30})
    theirs = ticking.call("withoutTick", base, "e/1#1")
    theirs = ticking.call("withTick", theirs, "e/4#1", "spoiled", {"length": 30})
    joined = joining.call("merge", base, mine, theirs)
    assert joined["collisions"] == []
    assert sorted(said(joined["value"])) == [
        ("e/2#1", "cut"), ("e/3#1", "cut"), ("e/4#1", "spoiled"),
    ]  # fmt: skip


def test_unticking_takes_away_all_but_what_was_spoiled(ticking: Module) -> None:
    body: Any = BODY
    for state in ("cut", "spoiled", "cut", "cut"):
        body = ticking.call("withTick", body, "e/1#1", state, {"length": 30})
    body = ticking.call("withTick", body, "e/2#1", "cut", {"length": 30})
    untick = ticking.call("withoutTick", body, "e/1#1")
    assert said(untick) == [("e/1#1", "cut"), ("e/1#1", "spoiled"), ("e/2#1", "cut")]
    trimmed = ticking.call("withSize", body, "e/2#1", {"length": 29, "width": 3})
    assert trimmed["ticks"][-1]["was"] == {"length": 29, "width": 3}
    assert len(trimmed["ticks"]) == len(body["ticks"])
