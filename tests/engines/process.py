"""Programs that a test starts and ends, each by its own id."""

import os
import re
import signal
import subprocess
import tempfile
import time
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from typing import Any

PATIENCE = 90.0
"""Seconds until what has not come is called broken: many more than anything takes."""
PAUSE = 0.02


def awaited(look: Callable[[], Any], missed: Callable[[], str]) -> Any:
    """Return what `look` gives once it is something; without end, `missed` says what is not."""
    deadline = time.monotonic() + PATIENCE
    while not (found := look()):
        if time.monotonic() > deadline:
            raise AssertionError(missed())
        time.sleep(PAUSE)
    return found


class Process:
    """A program in a session of its own, so that what it starts ends with it."""

    def __init__(
        self, command: Sequence[str], environment: Mapping[str, str] | None = None
    ) -> None:
        self._said = tempfile.TemporaryFile()  # noqa: SIM115 # closed by `kill`
        self._program = subprocess.Popen(
            command,
            stdin=subprocess.DEVNULL,
            stdout=self._said,
            stderr=subprocess.STDOUT,
            env=os.environ | (environment or {}),
            start_new_session=True,
        )

    @property
    def said(self) -> str:
        """All it has printed."""
        return os.pread(self._said.fileno(), os.fstat(self._said.fileno()).st_size, 0).decode(
            errors="replace"
        )

    @property
    def is_running(self) -> bool:
        return self._program.poll() is None

    def says(self, pattern: str) -> "re.Match[str]":
        """Wait until it prints what matches the pattern."""

        def look() -> "re.Match[str] | None":
            assert self.is_running, f"{self._program.args} has ended: {self.said}"
            return re.search(pattern, self.said)

        match: re.Match[str] = awaited(look, lambda: f"no {pattern} in {self.said}")
        return match

    def wait(self) -> None:
        """Wait until it has ended."""
        self._program.wait(PATIENCE)

    def kill(self) -> None:
        """End it and what it started, whatever they are at."""
        with suppress(ProcessLookupError):  # all have ended
            os.killpg(self._program.pid, signal.SIGKILL)
        self._program.wait()
        self._said.close()
