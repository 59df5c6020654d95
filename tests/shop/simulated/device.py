"""A device as DEVELOPERS.md says that a phone syncs, with a place to crash at between all steps.

Only `disk` outlives a crash; each `_keep` is one transaction. States are never changed in place.
"""

import random
from collections.abc import Callable
from functools import partial
from typing import Any, Protocol

from longpoint.trade.job.meeting import meet
from tests.shop.simulated.states import Reply, State, state_of

MOST_SEEN = 20
TRIES = 8
PAGE = 3


class Crash(Exception):
    """The browser was killed."""


class Lost(Exception):
    """A request, or its answer, did not come through."""


class Server(Protocol):
    """What a device asks."""

    def write(
        self, name: str, to: int | None, change_id: str, state: State, epoch: str
    ) -> Reply: ...
    def changes(self, since: int, last: str, limit: int) -> dict[str, Any]: ...


class Network(Protocol):
    """What is between a device and the server."""

    def carry(self, ask: Callable[[], Any]) -> Any: ...


class Disk:
    """What is kept: documents, a row of `sync` for each, and the feed's cursor."""

    def __init__(self) -> None:
        self.documents: dict[str, State] = {}
        self.sync: dict[str, dict[str, Any]] = {}
        self.cursor: dict[str, Any] = {"epoch": "", "since": 0, "last": "", "is_unsure": False}

    def copy(self) -> "Disk":
        copy = Disk()
        copy.documents = dict(self.documents)
        copy.sync = {name: dict(row) for name, row in self.sync.items()}
        copy.cursor = dict(self.cursor)
        return copy


def blank_row() -> dict[str, Any]:
    return {"rev": None, "change_id": "", "base": None, "pending": None, "seen": [],
            "is_unsure": False}  # fmt: skip


class Device:
    """A phone."""

    def __init__(self, name: str, server: Server, network: Network, chance: random.Random) -> None:
        self.name, self.server, self.network, self.chance = name, server, network, chance
        self.disk = Disk()
        self.crashes = 0.0
        self.on_acknowledged: Callable[[str, State], None] = lambda name, state: None
        self._count = 0

    def state(self, name: str) -> State:
        return self.disk.documents.get(name)

    def edit(self, name: str, state: State) -> None:
        """Keep what the person did; nothing else is noted."""
        self._keep({name: state})

    def to_go_up(self) -> list[str]:
        """Return the documents whose state is not the one that the server has."""
        names = sorted(set(self.disk.documents) | set(self.disk.sync))
        return [name for name in names if self.state(name) != self._row(name)["base"]]

    def sync(self) -> None:
        """Send what waits, fetch what is new, send what differs; again if someone was quicker."""
        for _ in range(TRIES):
            if self._resent() and self._pulled() and self._sent():
                return

    def restore_file(self, documents: dict[str, State]) -> None:
        """Take a saved file in: its documents' bases are forgotten, the feed is read anew."""
        rows = {name: blank_row() for name in documents}
        cursor = self.disk.cursor | {"since": 0, "last": ""}
        self._keep(documents, rows, cursor)

    def _row(self, name: str) -> dict[str, Any]:
        return self.disk.sync.get(name) or blank_row()

    def _resent(self) -> bool:
        waiting = [name for name, row in sorted(self.disk.sync.items()) if row["pending"]]
        is_known = [self._send(name) for name in waiting]
        return all(is_known)

    def _sent(self) -> bool:
        for name in self.to_go_up():
            self._count += 1
            change_id = f"change-{self.name}-{self._count}-{self.chance.randrange(10**9)}"
            pending = {"change_id": change_id, "state": self.state(name)}
            self._keep({}, {name: self._row(name) | {"pending": pending}})
            if not self._send(name):
                return False
        return True

    def _send(self, name: str) -> bool:
        """Send a pending change; false where something else stands on the server."""
        row = self._row(name)
        change_id, state = row["pending"]["change_id"], row["pending"]["state"]
        epoch = self.disk.cursor["epoch"]
        write = partial(self.server.write, name, row["rev"], change_id, state, epoch)
        status, head = self._ask(write)
        if status in (200, 201):
            self._keep({}, {name: row | self._held(row, head, state) | {"pending": None}})
            self.on_acknowledged(name, state)
            return True
        assert status in (404, 409, 412), (status, head)
        self._keep({}, {name: row | {"pending": None}})
        return False

    def _held(self, row: dict[str, Any], head: dict[str, Any], state: State) -> dict[str, Any]:
        """Return what a row says once it is known that the server holds a version."""
        seen = [each for each in row["seen"] if each != head["change_id"]] + [head["change_id"]]
        return {"rev": head["rev"], "change_id": head["change_id"], "base": state,
                "seen": seen[-MOST_SEEN:], "is_unsure": False}  # fmt: skip

    def _pulled(self) -> bool:
        while True:
            cursor = self.disk.cursor
            said = self._ask(partial(self.server.changes, cursor["since"], cursor["last"], PAGE))
            if said["restored"] or said["epoch"] != cursor["epoch"]:
                self._begin_anew(said["epoch"])
                continue
            self._take(said)
            if not said["more"]:
                self._forget_what_the_server_forgot()
                return True

    def _begin_anew(self, epoch: str) -> None:
        """The server may have forgotten what it had: nothing that is known of it is sure."""
        rows = {name: row | {"is_unsure": row["rev"] is not None}
                for name, row in self.disk.sync.items()}  # fmt: skip
        self._keep({}, rows, {"epoch": epoch, "since": 0, "last": "", "is_unsure": True})

    def _forget_what_the_server_forgot(self) -> None:
        if self.disk.cursor["is_unsure"]:
            lost = {name: blank_row() for name, row in self.disk.sync.items() if row["is_unsure"]}
            self._keep({}, lost, self.disk.cursor | {"is_unsure": False})

    def _take(self, said: dict[str, Any]) -> None:
        documents: dict[str, State] = {}
        rows: dict[str, dict[str, Any]] = {}
        for told in said["changes"]:
            name, row = told["id"], self._row(told["id"])
            if told["change_id"] != row["change_id"]:
                documents[name] = self._met(name, row, told)
            if told["change_id"] != row["change_id"] or row["is_unsure"]:
                rows[name] = row | self._held(row, told, state_of(told))
        cursor = self.disk.cursor | {"since": said["since"], "last": said["last"]}
        self._keep(documents, rows, cursor)

    def _met(self, name: str, row: dict[str, Any], told: dict[str, Any]) -> State:
        """Return what the core says that stands."""
        is_behind = row["is_unsure"] and told["change_id"] in row["seen"]
        said = meet({
            "kind": name.split(".")[0], "base": None if row["is_unsure"] else row["base"],
            "mine": self.state(name), "theirs": state_of(told), "is_behind": is_behind,
            "names": [self.name, "another"],
        })  # fmt: skip
        found: State = said["document"]
        return found

    def _ask(self, ask: Callable[[], Any]) -> Any:
        self._may_crash()
        reply = self.network.carry(ask)
        self._may_crash()
        return reply

    def _keep(
        self,
        documents: dict[str, State],
        rows: dict[str, dict[str, Any]] | None = None,
        cursor: dict[str, Any] | None = None,
    ) -> None:
        """One transaction: all of it, or nothing."""
        self._may_crash()
        self.disk.documents.update(documents)
        self.disk.sync.update(rows or {})
        self.disk.cursor = cursor or self.disk.cursor
        self._may_crash()

    def _may_crash(self) -> None:
        if self.chance.random() < self.crashes:
            raise Crash
