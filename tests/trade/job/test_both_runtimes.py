"""The phone's interpreter lays in, works out and joins jobs as CPython does: numbers to 1e-9."""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from longpoint.trade.job.patterns import PATTERNS
from tests.trade.phone_core import Call, phone_core

from .asking import ask, blank
from .test_finishing import ENAMEL, PRIMER
from .test_finishing import job as finished
from .test_patterns import FILES, begun

DEMO: dict[str, Any] = json.loads(
    (Path(__file__).parents[3] / "fixtures/job/demo.json").read_text(encoding="utf-8")
)["job"]


@pytest.fixture(scope="module")
def phone() -> Iterator[Call]:
    with phone_core() as call:
        yield call


def alike(one: Any, other: Any) -> bool:
    if isinstance(one, dict) and isinstance(other, dict):
        return one.keys() == other.keys() and all(alike(one[name], other[name]) for name in one)
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(alike, one, other))
    if isinstance(one, bool) or isinstance(other, bool):
        return one is other
    if isinstance(one, (int, float)) and isinstance(other, (int, float)):
        return bool(one == pytest.approx(other, abs=1e-9))
    return bool(one == other)


def worked(call: Call, job: Any, **rest: Any) -> Any:
    reply = call({"do": "job", "job": job, **rest})
    while reply["ok"] and reply["work"]:
        reply = call({"do": "continue job", "work": reply["work"]})
    return reply


def here(request: dict[str, Any]) -> Any:
    return ask(**request)


def both(phone: Call, **request: Any) -> bool:
    return alike(phone(request), here(request))


def test_the_demo(phone: Call) -> None:
    offcuts = [{"title": "Base", "sold": "stick", "length": "60", "where": "rack"}]
    assert alike(worked(phone, DEMO, offcuts=offcuts), worked(here, DEMO, offcuts=offcuts))


def test_a_finish_plan_that_is_ticked(phone: Call) -> None:
    job = finished({PRIMER: "2026-11-30T10:20:00-05:00", ENAMEL: "2026-12-01T12:00"})
    assert alike(worked(phone, job), worked(here, job))
    (plan,) = worked(here, job)["job"]["finish"]
    events = [step | {"id": step["of"], "note": step["window"]} for step in plan["steps"]]
    assert both(phone, do="calendar", title="Porch", events=events, stamp="2026-11-26T16:30")


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_patterns(phone: Call, path: Path) -> None:
    fixture = json.loads(path.read_text(encoding="utf-8"))
    assert both(phone, do="begin item", job=blank(), pattern=fixture["pattern"], id="i")
    job = begun(fixture)
    assert alike(worked(phone, job), worked(here, job))


def test_laying_in(phone: Call) -> None:
    assert both(phone, do="patterns")
    assert both(phone, do="copy item", job=DEMO, item="doors", id="again")
    assert both(phone, do="add entry", job=DEMO, item="base", id="new", tool="even-gap")


def test_joining(phone: Call) -> None:
    """Two copies changed at every kind of place, with and without what both were made from."""
    mine, theirs = (json.loads(json.dumps(DEMO)) for _ in range(2))
    mine["items"].reverse()
    mine["items"][0]["entries"][0]["inputs"]["leaf_width"] = "30"
    mine["ticks"].append({"of": "door-I/1#1", "state": "cut", "at": "2026-01-14T08:00:00Z"})
    theirs["items"][-1]["entries"][0]["inputs"]["leaf_width"] = "34"
    theirs["stock"][0]["price"] = None
    theirs["ticks"].pop(0)
    theirs = ask(do="begin item", job=theirs, pattern="window", id="k")["document"]
    mine = ask(do="begin item", job=mine, pattern=PATTERNS[-1].slug, id="l")["document"]
    for base in (DEMO, None):
        assert both(phone, do="merge jobs", base=base, mine=mine, theirs=theirs)
