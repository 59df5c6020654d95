"""The processes that compute, as many as there are processors, and the queue before them.

Each has a pipe of its own: one that dies or does not end takes its own question with it and no
other's, and the next question finds a new process.
"""

import queue
import threading
from multiprocessing import get_context
from multiprocessing.connection import Connection
from multiprocessing.context import SpawnProcess

from longpoint.trade.refusal import Refusal

from .computed import Asked
from .process import Done, run

SECONDS = 10.0
"""What a question may take; so long it may wait for its turn, too."""
GRACE = 5.0
"""Seconds past its time after which a process is taken for stuck."""
WAITING = 2
"""Questions that may wait, for each process."""

_SPAWN = get_context("spawn")


class Busy(Exception):
    """So many wait that another one would wait too long."""


class Lost(Exception):
    """The process died over this question, or did not come to an end."""


class Broken(Exception):
    """A mistake of ours; the message says where."""


class Workers:
    """Processes started as they are first needed.

    Parameters
    ----------
    number : int
        How many compute at once.
    seconds : float
        What a question may take.
    """

    def __init__(self, number: int, seconds: float = SECONDS) -> None:
        self.seconds = seconds
        self.places = number * (1 + WAITING)
        self._places = threading.BoundedSemaphore(self.places)
        self._all = [_Worker() for _ in range(number)]
        # The last one back is asked first: others need not be started.
        self._free: queue.LifoQueue[_Worker] = queue.LifoQueue()
        for worker in self._all:
            self._free.put(worker)

    def compute(self, asked: Asked) -> str | None:
        """Return what `computed.whole` does.

        Raises
        ------
        Refusal, Busy, Lost, Broken
        """
        if not self._places.acquire(blocking=False):
            raise Busy
        try:
            return _text(self._done(asked))
        finally:
            self._places.release()

    def _done(self, asked: Asked) -> Done:
        try:
            worker = self._free.get(timeout=self.seconds)
        except queue.Empty:
            raise Busy from None
        try:
            return worker.ask(asked, self.seconds)
        finally:
            self._free.put(worker)

    def close(self) -> None:
        """End all processes."""
        for worker in self._all:
            worker.end()


def _text(done: Done) -> str | None:
    if done.fault:
        raise Broken(done.fault)
    if done.refused:
        raise Refusal.of(list(done.refused))
    return done.text


class _Worker:
    """A place for one process."""

    def __init__(self) -> None:
        self._process: SpawnProcess | None = None
        self._link: Connection[tuple[Asked, float], Done]

    def ask(self, asked: Asked, seconds: float) -> Done:
        if self._process is None or not self._process.is_alive():
            self._start()
        try:
            self._link.send((asked, seconds))
            if self._link.poll(seconds + GRACE):
                return self._link.recv()
        except (EOFError, OSError):
            pass
        self.end()
        raise Lost

    def _start(self) -> None:
        self.end()
        self._link, other = _SPAWN.Pipe()
        self._process = _SPAWN.Process(target=run, args=(other,), name="computes", daemon=True)
        self._process.start()
        other.close()

    def end(self) -> None:
        if self._process is not None:
            self._link.close()
            self._process.kill()
            self._process.join()
            self._process.close()
            self._process = None
