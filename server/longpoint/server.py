"""The web server: waitress, with patience for nobody at the cost of the others.

Half a request holds its connection for `PATIENCE` seconds however slowly its bytes trickle in, and
when too many connections are open, the one that has waited longest makes room. A refusal reaches
who is still sending. Refusals of the server's own are JSON under the same headers as all else.
Told to stop, it finishes what was asked.
"""

import json
import signal
import socket
import time
from types import FrameType
from typing import TYPE_CHECKING

from waitress import wasyncore
from waitress.channel import HTTPChannel
from waitress.parser import HTTPRequestParser
from waitress.server import BaseWSGIServer, create_server
from waitress.task import ErrorTask

from .front import EVERYWHERE

if TYPE_CHECKING:
    from typing import Any

    from _typeshed.wsgi import WSGIApplication

PATIENCE = 30
MOST_CONNECTIONS = 200
THREADS = 8
"""For requests that are answered at once."""
TIME_TO_STOP = 10
"""Seconds for requests to come to their end, once told to stop."""
# Past the API's own limits, which say more; this one keeps the disk from filling up.
MOST_BODY = 4 * 1024 * 1024

_WORDS = {
    413: f"The request is too large: nothing here takes more than {MOST_BODY // 1024**2} MB.",
    431: "The request's headers are too large.",
    500: "Longpoint made a mistake here, and its log says where. Nothing was kept or changed.",
    501: "The request is coded in a way that is not read here.",
}
_MALFORMED = "This is not a request that HTTP knows."


def make_server(application: "WSGIApplication", host: str, port: int, waiting: int = 0) -> "Any":
    """Return a server that listens and answers as soon as it is run.

    Of its requests, `waiting` may wait for others to compute: each keeps a thread to itself.

    Raises
    ------
    OSError, ValueError
        There is no listening on that host and port.
    """
    sockets: dict[int, Any] = {}
    server = create_server(
        application,
        map=sockets,
        host=host,
        port=port,
        ident="longpoint",
        threads=THREADS + waiting,
        # Read by the application, where LONGPOINT_PROXIES says that they can be trusted.
        clear_untrusted_proxy_headers=False,
        max_request_body_size=MOST_BODY,
        channel_timeout=PATIENCE,
        cleanup_interval=PATIENCE // 6,
        # Never reached while a connection waits that can make room.
        connection_limit=2 * MOST_CONNECTIONS,
    )
    # A name like localhost can stand for several sockets: each is a server of its own.
    for each in sockets.values():
        if isinstance(each, BaseWSGIServer):
            each.channel_class = Channel
    return server


def run_until_told(server: "Any") -> None:
    """Answer requests until a signal says stop; then listen no more and finish what was asked."""
    sockets, wake, dispatcher = _parts(server)
    stopping = False

    def stop(number: int, frame: FrameType | None) -> None:
        nonlocal stopping
        stopping = True
        wake()

    for number in (signal.SIGINT, signal.SIGTERM):
        signal.signal(number, stop)
    while not stopping:
        wasyncore.loop(timeout=1, map=sockets, count=1)
    _finish(sockets)
    dispatcher.shutdown(timeout=1)
    wasyncore.close_all(sockets, ignore_all=True)


def _finish(sockets: "dict[int, Any]") -> None:
    """Take no new connection, and let requests come to their end, for as long as there is."""
    for each in _servers(sockets):
        each.accepting = False
        each.del_channel(sockets)
        each.socket.close()
    end = time.monotonic() + TIME_TO_STOP
    while _is_busy(sockets) and time.monotonic() < end:
        wasyncore.loop(timeout=0.2, map=sockets, count=1)


def _parts(server: "Any") -> "tuple[dict[int, Any], Any, Any]":
    """Return a server's sockets, what wakes its loop, and what hands its requests to threads."""
    sockets = server.map if hasattr(server, "map") else server._map
    return sockets, _servers(sockets)[0].pull_trigger, server.task_dispatcher


def _servers(sockets: "dict[int, Any]") -> "list[Any]":
    return [each for each in sockets.values() if isinstance(each, BaseWSGIServer)]


def _is_busy(sockets: "dict[int, Any]") -> bool:
    """Tell whether a request is under way; close the connections that have none."""
    channels = [each for each in sockets.values() if isinstance(each, HTTPChannel)]
    for each in channels:
        if each.is_idle():
            each.will_close = True
    return bool(channels)


class _Parser(HTTPRequestParser):  # type: ignore[misc]  # waitress carries no types
    """Tells nobody to go on with a request that is refused already."""

    expect_continue: bool

    def received(self, data: bytes) -> int:
        """Take some bytes and return how many of them belong to this request."""
        consumed: int = super().received(data)
        if self.error:
            self.expect_continue = False
        return consumed


class _ErrorTask(ErrorTask):  # type: ignore[misc]  # waitress carries no types
    """Answers in JSON, under the headers of every other answer."""

    def execute(self) -> None:
        """Write the answer and close the connection."""
        error = self.request.error
        message = _WORDS.get(error.code, _MALFORMED)
        said = {"code": error.code, "status": error.reason, "message": message}
        body = json.dumps(said).encode()
        self.status = f"{error.code} {error.reason}"
        self.response_headers.extend([("Content-Type", "application/json"), *EVERYWHERE.items()])
        self.set_close_on_finish()
        self.content_length = len(body)
        self.write(body)


class Channel(HTTPChannel):  # type: ignore[misc]  # waitress carries no types
    """One connection.

    Its last answer sent, it drops what still comes until the other side closes: closed at once, it
    would be reset, and an answer on its way be lost (RFC 9112, 9.6).
    """

    parser_class = _Parser
    error_task_class = _ErrorTask
    last_activity: float
    close_when_flushed: bool
    lingering = False

    def __init__(self, server: "Any", *rest: "Any", **named: "Any") -> None:
        super().__init__(server, *rest, **named)
        self._make_room()

    def _make_room(self) -> None:
        """Close the connection that has waited longest, where there are too many."""
        others = [each for each in self.server.active_channels.values() if each is not self]
        waiting = [each for each in others if not (each.requests or each.will_close)]
        if len(others) >= MOST_CONNECTIONS and waiting:
            min(waiting, key=lambda each: float(each.last_activity)).will_close = True

    def is_idle(self) -> bool:
        """Say whether nothing is asked here, nor an answer on its way."""
        return not (self.requests or self.request or self.total_outbufs_len or self.lingering)

    def readable(self) -> bool:
        """Say whether bytes are wanted."""
        return self.lingering or bool(super().readable())

    def handle_read(self) -> None:
        """Read what has come; half a request counts as waiting since it began."""
        if self.lingering:
            self._drop()
            return
        since = time.time() if self.request is None else self.last_activity
        super().handle_read()
        if self.request is not None:
            self.last_activity = since

    def handle_write(self) -> None:
        """Send what there is; after the last of it linger instead of closing."""
        is_last = self.close_when_flushed and not self.will_close
        if is_last:
            self.close_when_flushed = False
        super().handle_write()
        if is_last and self.total_outbufs_len:
            self.close_when_flushed = True
        elif is_last and self.connected:
            self._linger()

    def _linger(self) -> None:
        self.lingering = True
        try:
            self.socket.shutdown(socket.SHUT_WR)
        except OSError:
            self.handle_close()

    def _drop(self) -> None:
        try:
            self.recv(self.adj.recv_bytes)
        except OSError:
            self.handle_close()
