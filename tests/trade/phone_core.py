"""The core in the interpreter that the phone runs, asked from a test over a pipe."""

import json
import subprocess
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

WEB = Path(__file__).parent.parent.parent / "web"

Call = Callable[[dict[str, Any]], dict[str, Any]]


@contextmanager
def phone_core() -> Iterator[Call]:
    """Start the phone's interpreter under node; give the function that asks it."""
    command = ["node", "build/ask.mjs"]
    with subprocess.Popen(
        command, cwd=WEB, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as process:
        asking, answers = process.stdin, process.stdout
        assert asking is not None
        assert answers is not None

        def call(request: dict[str, Any]) -> dict[str, Any]:
            asking.write(json.dumps(request) + "\n")
            asking.flush()
            reply: dict[str, Any] = json.loads(answers.readline())
            return reply

        try:
            yield call
        finally:
            asking.close()
            process.wait()
