"""The front end's modules that need no page, called from here: they run in Node."""

import json
import subprocess
from pathlib import Path
from typing import Any

WEB = Path(__file__).parent.parent.parent / "web"

_SERVE = """
import { createInterface } from "node:readline";
import { load } from "./build/bundles.mjs";
const exported = await load(process.argv[1]);
for await (const line of createInterface({ input: process.stdin })) {
  const [name, ...given] = JSON.parse(line);
  console.log(JSON.stringify({ value: exported[name](...given.map(({ value }) => value)) }));
}
"""


class Module:
    """One module in a process of its own; what it is given and gives goes as JSON."""

    def __init__(self, path: str) -> None:
        self._node = subprocess.Popen(
            ["node", "--input-type=module", "-e", _SERVE, path],
            cwd=WEB,
            text=True,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
        )

    def call(self, name: str, *given: Any) -> Any:
        """Return what an exported function gives; NOTHING stands for what is not there."""
        assert self._node.stdin
        assert self._node.stdout
        wrapped = [{} if each is NOTHING else {"value": each} for each in given]
        self._node.stdin.write(json.dumps([name, *wrapped]) + "\n")
        self._node.stdin.flush()
        return json.loads(self._node.stdout.readline()).get("value", NOTHING)

    def end(self) -> None:
        """Let the process go."""
        self._node.communicate()


class _Nothing:
    def __repr__(self) -> str:
        return "NOTHING"


NOTHING = _Nothing()
