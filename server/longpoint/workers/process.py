"""A process that computes what it is asked, one question after another, until nobody asks."""

import os
import signal
import traceback
from multiprocessing.connection import Connection
from typing import NamedTuple

from longpoint.trade.refusal import FieldError, Refusal

from .computed import Asked, whole

LESS_URGENT = 10
"""Steps of niceness: who asks for little is served before whoever searches."""


class Done(NamedTuple):
    """What came of a question: a text, or None in the time there was; or why there is none."""

    text: str | None = None
    refused: tuple[FieldError, ...] = ()
    fault: str = ""


def run(link: "Connection[Done, tuple[Asked, float]]") -> None:
    """Answer what comes over `link` until it closes."""
    # A signal to all processes at once is the server's to act on: it ends this one when it is time.
    for number in (signal.SIGINT, signal.SIGTERM):
        signal.signal(number, signal.SIG_IGN)
    if hasattr(os, "nice"):
        os.nice(LESS_URGENT)
    while True:
        try:
            asked, seconds = link.recv()
            link.send(_done(asked, seconds))
        except (EOFError, OSError):
            return


def _done(asked: Asked, seconds: float) -> Done:
    try:
        return Done(whole(asked, seconds))
    except Refusal as refusal:
        return Done(refused=tuple(refusal.errors))
    except Exception:  # noqa: BLE001 a fault is told to the server, which logs it
        return Done(fault=traceback.format_exc())
