"""Two changes of one document are joined without loss.

The judge of plain forms is the definition itself, over every leaf by its path: a leaf that one side
alone has changed is as that side has it; where both changed it differently, mine stands and the
path is told; one that one side took away and the other changed stays.
"""

import copy
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.store.modules import NOTHING, Module

NAMES = ["width", "height", "fit", "closed"]
ENTRIES = st.sampled_from(["27", "27 13/16", "30", 31.5, True, False, ""])
ROWS = st.lists(st.dictionaries(st.sampled_from(["length", "turn"]), ENTRIES), max_size=3)
FORMS = st.fixed_dictionaries(
    {
        "inputs": st.dictionaries(st.sampled_from(NAMES), ENTRIES),
        "later": st.dictionaries(st.sampled_from(["a", "b"]), ENTRIES),
    }
)

Leaves = dict[tuple[str, ...], Any]


@pytest.fixture(scope="module")
def module() -> Iterator[Module]:
    module = Module("src/store/merge.ts")
    yield module
    module.end()


def joined(module: Module, base: Any, mine: Any, theirs: Any) -> tuple[Any, list[Any]]:
    merged = module.call("merge", base, mine, theirs)
    return merged.get("value", NOTHING), merged["collisions"]


def leaves(value: Any, path: tuple[str, ...] = ()) -> Leaves:
    if not isinstance(value, dict):
        return {path: value}
    found: Leaves = {}
    for name, held in value.items():
        found |= leaves(held, (*path, name))
    return found


def same(one: Any, other: Any) -> bool:
    """Whether two leaves are the same; to Python True is 1, in a form it is not."""
    return type(one) is type(other) and bool(one == other)


def by_definition(base: Leaves, mine: Leaves, theirs: Leaves) -> tuple[Leaves, set[Any]]:
    result: Leaves = {}
    collisions = set()
    for path in base | mine | theirs:
        was, here, there = (side.get(path, NOTHING) for side in (base, mine, theirs))
        if same(here, there) or same(there, was):
            value = here
        elif same(here, was):
            value = there
        else:
            collisions.add(path)
            value = there if here is NOTHING else here
        if value is not NOTHING:
            result[path] = value
    return result, collisions


@given(FORMS, FORMS, FORMS)
def test_each_field_is_as_the_side_that_changed_it_has_it(
    module: Module, base: Any, mine: Any, theirs: Any
) -> None:
    value, collisions = joined(module, base, mine, theirs)
    wanted, told = by_definition(leaves(base), leaves(mine), leaves(theirs))
    found = leaves(value)
    assert {path for path in found if found[path] != {}} >= wanted.keys()
    for path, leaf in wanted.items():
        assert same(found[path], leaf)
    assert {tuple(path) for path in collisions} == told


@given(FORMS, FORMS)
def test_one_side_alone_is_taken_whole(module: Module, base: Any, changed: Any) -> None:
    assert joined(module, base, changed, base) == (changed, [])
    assert joined(module, base, base, changed) == (changed, [])
    assert joined(module, base, changed, changed) == (changed, [])


@given(ROWS, ROWS, ROWS)
def test_rows_never_mix_into_rows_that_nobody_wrote(
    module: Module, base: Any, mine: Any, theirs: Any
) -> None:
    value, collisions = joined(module, {"walls": base}, {"walls": mine}, {"walls": theirs})
    if not len(base) == len(mine) == len(theirs):
        assert value["walls"] in (mine, theirs)
    if not collisions:
        swapped, _ = joined(module, {"walls": base}, {"walls": theirs}, {"walls": mine})
        assert swapped == value


def test_two_walls_changed_in_two_windows(module: Module) -> None:
    base = [{"length": "144"}, {"length": "120"}]
    mine = [{"length": "143"}, {"length": "120"}]
    theirs = [{"length": "144"}, {"length": "120", "turn": "outside"}]
    wanted = [{"length": "143"}, {"length": "120", "turn": "outside"}]
    assert joined(module, base, mine, theirs) == (wanted, [])


def test_a_row_put_in_front_does_not_shift_what_is_typed_elsewhere(module: Module) -> None:
    base = [{"length": "144"}, {"length": "120"}]
    mine = [{"length": "144"}, {"length": "121"}]
    theirs = [{"length": "96"}, {"length": "144"}, {"length": "120"}]
    assert joined(module, base, mine, theirs) == (mine, [[]])


def test_a_number_never_gets_the_units_of_another(module: Module) -> None:
    """27 inches typed here, 706 mm there: 27 mm would be neither."""
    base = {"text": "26", "units": "in"}
    mine = {"text": "27", "units": "in"}
    theirs = {"text": "706", "units": "mm"}
    assert joined(module, base, mine, theirs) == (mine, [[]])
    base = {"inputs": {"width": "26"}, "typed_in": "in"}
    mine = {"inputs": {"width": "26", "height": "30"}, "typed_in": "in"}
    theirs = {"inputs": {"width": "706"}, "typed_in": "mm"}
    assert joined(module, base, mine, theirs) == (mine, [[]])


IDS = st.lists(st.sampled_from("abcdef"), unique=True)


def items(ids: list[str], **changed: str) -> list[dict[str, str]]:
    return [{"id": name, "title": changed.get(name, name)} for name in ids]


@given(IDS, IDS, IDS)
def test_lists_of_things_with_ids_are_united(
    module: Module, base: list[str], mine: list[str], theirs: list[str]
) -> None:
    """Nobody changed an item: one is there if a side put it in, or neither took it out."""
    value, collisions = joined(module, items(base), items(mine), items(theirs))
    found = [item["id"] for item in value]
    wanted = {
        name
        for name in "abcdef"
        if (name in mine and name in theirs) or (name not in base and name in mine + theirs)
    }
    assert collisions == []
    assert len(found) == len(set(found))
    assert set(found) == wanted


def test_an_item_changed_here_and_taken_out_there_stays(module: Module) -> None:
    base, mine, theirs = items(["a", "b"]), items(["a", "b"], b="B"), items(["a"])
    assert joined(module, base, mine, theirs) == (mine, [[1]])
    assert joined(module, base, theirs, mine) == (mine, [[1]])


def test_an_item_moved_here_and_changed_there_is_moved_and_changed(module: Module) -> None:
    base, mine, theirs = (
        items(["a", "b", "c"]),
        items(["c", "a", "b"]),
        items(["a", "b", "c"], b="B"),
    )
    assert joined(module, base, mine, theirs) == (items(["c", "a", "b"], b="B"), [])


JSON = st.recursive(
    st.none() | st.booleans() | st.integers(0, 3) | st.sampled_from(["", "27", "toString"]),
    lambda inner: (
        st.lists(inner, max_size=4)
        | st.dictionaries(st.sampled_from(["a", "b", "constructor", "walls"]), inner, max_size=3)
    ),
    max_leaves=12,
)


@pytest.fixture(scope="module")
def edits() -> Iterator[Module]:
    module = Module("src/store/edits.ts")
    yield module
    module.end()


@given(JSON, JSON)
def test_a_change_can_be_done_and_undone(edits: Module, before: Any, after: Any) -> None:
    before, after = {"value": before}, {"value": after}
    kept = copy.deepcopy(before)
    change = edits.call("editsBetween", before, after)
    assert edits.call("withEdits", before, change) == after
    assert edits.call("withEdits", after, edits.call("undoing", change)) == kept
