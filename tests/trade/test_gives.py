"""What tools declare to give really comes, and every answer leads with a sentence that decides."""

from typing import Any

import pytest

from longpoint.trade.answer import MOST_VERDICT
from longpoint.trade.lengths import Scale
from longpoint.trade.refusal import Refusal
from longpoint.trade.rows import Rows
from longpoint.trade.shelf import PLACES, slugs_at, tool_named
from tests.cases import CASES_OF

SCALES = (Scale(), Scale("mm", 16), Scale("in", 64))
TOOLS = [slug for place, _ in PLACES for slug in slugs_at(place) if tool_named(slug).gives]


def answers_of(slug: str, scale: Scale | None = None) -> list[dict[str, Any]]:
    """Return the answers of a tool's example and of all its check cases."""
    tool = tool_named(slug)
    asked = [(tool.example, Scale())]
    asked += [(each.inputs, Scale(each.units, each.step)) for each in CASES_OF[slug]]
    answers = []
    for inputs, own in asked:
        shown = own if scale is None else Scale(scale.units, scale.step, own.units)
        try:
            answers.append(tool.answer(inputs, shown))
        except Refusal:
            continue
    return answers


@pytest.mark.parametrize("slug", TOOLS)
def test_each_declared_figure_comes_and_is_of_its_kind(slug: str) -> None:
    gives = {each.name: each for each in tool_named(slug).gives}
    seen = set()
    for answer in answers_of(slug):
        figures = {figure["name"]: figure for figure in answer["figures"]}
        assert set(figures) <= set(gives), "a figure that is not declared"
        for name, each in gives.items():
            assert each.sometimes or name in figures, name
            if name in figures:
                assert figures[name]["kind"] == each.kind, name
        seen |= set(figures)
    assert set(gives) <= seen, "declared and never given"


@pytest.mark.parametrize("slug", TOOLS)
@pytest.mark.parametrize("scale", SCALES, ids=["in", "mm", "fine"])
def test_every_answer_leads_with_a_sentence_that_decides(slug: str, scale: Scale) -> None:
    for answer in answers_of(slug, scale):
        assert 0 < len(answer["verdict"]) <= MOST_VERDICT, answer["verdict"]


@pytest.mark.parametrize("slug", TOOLS)
def test_the_tags_of_pieces_are_one_each(slug: str) -> None:
    for answer in answers_of(slug):
        tags = [piece["tag"] for piece in answer["pieces"]]
        assert len(tags) == len(set(tags)), tags


def test_one_size_has_one_name_and_one_label() -> None:
    names: dict[str, set[tuple[str, str]]] = {}
    for slug in TOOLS:
        tool = tool_named(slug)
        inputs = [
            column for asked in tool.inputs if isinstance(asked, Rows) for column in asked.columns
        ]
        for each in [*tool.inputs, *inputs, *tool.gives]:
            if each.quantity:
                names.setdefault(each.quantity, set()).add((each.name, each.label))
    parted = {quantity: sorted(said) for quantity, said in names.items() if len(said) > 1}
    assert parted == {}
