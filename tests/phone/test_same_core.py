"""The phone's runtime against the server's: every check case, the same figures and words.

The app's own worker is started with its own bytes and asked directly; CPython is the reference.
Each tool has a worker that was given its own parts of the core alone, as on a first visit.
"""

import json
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from longpoint.front import STATIC
from longpoint.trade.calls import call
from longpoint.trade.shelf import PLACES, SHELF, slugs_at
from tests.cases import Case, all_cases, assert_same, finished, judge

WEB = STATIC.parent.parent.parent / "web"
NEEDS = json.loads((WEB / "generated" / "core" / "needs.json").read_text())

START = """
async ([worker, ...files]) => {
  const get = async (file) => (await fetch(file)).arrayBuffer();
  const [wasm, ...parts] = await Promise.all(files.map(get));
  window.end?.();
  const core_ = new Worker(worker, { type: "module" });
  const waiting = new Map();
  const reply = (id) => new Promise((resolve) => waiting.set(id, resolve));
  core_.onmessage = ({ data }) => waiting.get(data.id)?.(data);
  await reply(0);
  let id = 0;
  window.ask = (message) => {
    id += 1;
    const answer = reply(id);
    core_.postMessage({ id, ...message });
    return answer;
  };
  window.end = () => core_.terminate();
  return window.ask({ boot: { wasm, parts } });
}
"""


class Phone:
    """The core as the phone runs it."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.tool: str | None = None

    def take(self, tool: str) -> None:
        """Go on with a worker for one tool, or for none."""
        if tool == self.tool:
            return
        assert "fault" not in self.page.evaluate(START, start_files(tool))
        self.tool = tool

    def call(self, request: dict[str, Any]) -> dict[str, Any]:
        """Return the reply to one request; an escaped exception fails the test."""
        self.take(request.get("tool") or self.tool or "")
        said = self.page.evaluate("(text) => window.ask({ text })", json.dumps(request))
        assert "fault" not in said, said["fault"]
        reply: dict[str, Any] = json.loads(said["text"])
        return reply


def reference(request: dict[str, Any]) -> dict[str, Any]:
    """Return CPython's reply to one request."""
    reply: dict[str, Any] = json.loads(call(json.dumps(request)))
    return reply


def asset(pattern: str) -> str:
    (path,) = (STATIC / "assets").glob(pattern)
    return "/assets/" + path.name


def start_files(tool: str) -> list[str]:
    """Return what `START` takes: worker, interpreter, and the parts of the core for a tool."""
    rooms = ["frame", *NEEDS[tool]]
    parts = [asset(f"core-{room}-*.bin") for room in rooms]
    return [asset("worker-*.js"), asset("micropython-*.wasm"), *parts]


@pytest.fixture(scope="module")
def phone(browser: Browser, address: str) -> Iterator[Phone]:
    page = browser.new_page(service_workers="block")
    page.goto(address)
    yield Phone(page)
    page.close()


@pytest.mark.parametrize("case", all_cases(), ids=lambda case: f"{case.tool}: {case.title}")
def test_case(phone: Phone, case: Case) -> None:
    reply = finished(phone.call, case.request)
    judge(case, reply)
    assert_same(finished(reference, case.request), reply)


@pytest.mark.parametrize("slug", [slug for place, _ in PLACES for slug in slugs_at(place)])
def test_declaration(phone: Phone, slug: str) -> None:
    request = {"do": "declare", "tool": slug}
    assert_same(reference(request), phone.call(request))


def test_shelf(phone: Phone) -> None:
    places = phone.call({"do": "shelf"})["places"]
    assert [slug for place in places for slug in place["tools"]] == [
        path.split("/")[1] for place, _ in PLACES for at, path in SHELF if at == place
    ]


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize(
    "text",
    [
        "27 13/16", "27-13/16", "2' 3 13/16\"", "27½", "706 mm", "27 13/16 - 2 1/2", "3/0", "-5",
        "abc", "1" * 10_000, "1,5", "27 17/16", "", "..", "5'-6 1/2\"", "0.1", "12.345678901234",
    ],
)  # fmt: skip
def test_reading(phone: Phone, text: str, units: str) -> None:
    request = {"do": "read", "kind": "length", "text": text, "units": units, "step": 32}
    assert_same(reference(request), phone.call(request))
