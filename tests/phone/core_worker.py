"""The app's own worker, started with its own bytes and asked directly, in whatever browser.

Each tool has a worker that was given its own parts of the core alone, as on a first visit.
"""

import json
from collections.abc import Callable
from typing import Any

from longpoint.front import STATIC
from longpoint.trade.calls import call

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

Evaluate = Callable[[str, Any], Any]
"""Runs a function of JavaScript with one plain value in a page of the app."""


class Phone:
    """The core as the phone runs it, in a page whose scripts `evaluate` runs."""

    def __init__(self, evaluate: Evaluate) -> None:
        self.evaluate = evaluate
        self.tools: tuple[str, ...] = ()

    def take(self, tool: str) -> None:
        """Go on with a worker for one tool, or for none."""
        if tool not in self.tools:
            self.take_all(tool)

    def take_all(self, *tools: str) -> None:
        """Go on with a worker for these tools."""
        assert "fault" not in self.evaluate(START, start_files(*tools))
        self.tools = tools

    def call(self, request: dict[str, Any]) -> dict[str, Any]:
        """Return the reply to one request; an escaped exception fails the test."""
        self.take(request.get("tool") or next(iter(self.tools), ""))
        said = self.evaluate("(text) => window.ask({ text })", json.dumps(request))
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


def start_files(*tools: str) -> list[str]:
    """Return what `START` takes: worker, interpreter, and the parts of the core for these tools."""
    rooms = ["frame", *dict.fromkeys(room for tool in tools for room in NEEDS[tool])]
    parts = [asset(f"core-{room}-*.bin") for room in rooms]
    return [asset("worker-*.js"), asset("micropython-*.wasm"), *parts]
