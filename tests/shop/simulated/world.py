"""Devices, a server and all that goes wrong between them; what must hold in the end.

Whatever a person types or adds holds a word of its own, so that nothing can be lost unseen: a word
is looked for in the documents as they are in the end, their questions included.
"""

import json
import random
import re
from collections.abc import Callable
from typing import Any

from longpoint.trade.job.questions import answer
from longpoint.trade.job.sameness import is_same
from tests.shop.simulated.device import Crash, Device, Disk, Lost
from tests.shop.simulated.states import State
from tests.trade.job.edited import Editor, begun, copied

WORD = re.compile(r'~(?<!"of": ".~)(?<!"entry": ".~)\w+~')
"""Not where it only names another thing: that one may be deleted."""
NAMES = ["Ann", "Bo", "Cy", "Di", "Ed"]
JOBS = ["job.porch", "job.shed"]
MOST_ITEMS, MOST_TICKS = 8, 40
SHRINKING = ["delete", "untick", "untick", "input", "field", "move"]
"""Edits of a job that is large enough: small ones collide more often, and sooner."""
OTHERS = ["list.boards", "settings.labels"]


_FOUND: dict[int, tuple[State, set[str]]] = {}
"""The words of states that were looked through; the state stays, so that its number is its own."""


def words(state: State) -> set[str]:
    """Return the words that people typed into a state."""
    if state is None:
        return set()
    if id(state) not in _FOUND:
        _FOUND[id(state)] = (state, set(WORD.findall(json.dumps(state))))
    return _FOUND[id(state)][1]


def ticked(state: State) -> set[str]:
    """Return the ids of a job's ticks that someone made here."""
    ticks = (state["body"].get("ticks") or []) if state else []
    return {tick["id"] for tick in ticks if WORD.search(tick["id"])}


class Typist(Editor):
    """A person all of whose texts are told apart."""

    def new(self) -> str:
        self.count += 1
        return f"{self.chance.choice('abcxyz')}~{self.name}{self.count}~"

    def text(self) -> str:
        return f"{self.new()} 3/4" if self.chance.random() < 0.9 else ""


class World:
    """A shop on one day."""

    def __init__(self, seed: int, server: Any, people: int = 5) -> None:
        self.chance = random.Random(seed)
        self.server = server
        self.devices = [Device(name, server, self, self.chance) for name in NAMES[:people]]
        self.typists = [Typist(self.chance, device.name) for device in self.devices]
        self.offline = [False] * people
        self.late: list[Callable[[], Any]] = []
        self.faults = True
        self.now = 0
        self.typed: dict[str, str] = {}
        self.taken_away: set[str] = set()
        self.acknowledged: set[str] = set()
        self.backups: list[Any] = []
        self.copies: list[tuple[int, Disk]] = []
        self.photos = 0
        self.unticked: set[str] = set()
        # A restored backup, or a document that stays, brings back what was taken away in it: that
        # no tick comes back by itself is looked at where neither happens.
        self.is_tame = seed % 3 == 0
        for device in self.devices:
            device.on_acknowledged = lambda _, state: self.acknowledged.update(words(state))

    def carry(self, ask: Callable[[], Any]) -> Any:
        """Lose, double, delay or carry a request."""
        if self.offline[self.now]:
            raise Lost
        fate = self.chance.random() if self.faults else 1.0
        if fate < 0.05:
            if self.chance.random() < 0.5:
                self.late.append(ask)
            raise Lost
        reply = ask()
        if fate < 0.1:
            raise Lost
        if fate < 0.15:
            reply = ask()
        elif fate < 0.18:
            self.late.append(ask)
        return reply

    def run(self, edits: int) -> None:
        """Let so many edits happen among everything else."""
        done = 0
        while done < edits:
            self.now = self.chance.randrange(len(self.devices))
            device = self.devices[self.now]
            device.crashes = self.chance.choice([0, 0, 0.01, 0.05])
            try:
                for _ in range(self.chance.randint(1, 8)):
                    done += 1
                    self._edit(device, self.typists[self.now])
                self._mishap()
                device.sync()
            except (Crash, Lost):
                pass

    def settle(self) -> None:
        """End all faults and let every device sync until none has anything more to say."""
        self.faults, self.offline = False, [False] * len(self.devices)
        for device in self.devices:
            device.crashes = 0
        for _ in range(12):
            for at, device in enumerate(self.devices):
                self.now = at
                device.sync()
            for ask in self.late:
                ask()
            self.late = []
            if all(self._is_level(device) for device in self.devices):
                return

    def check(self) -> None:
        """Assert that all are equal and nothing is lost."""
        standing = {name: each for name, each in self.server.states().items() if each is not None}
        for device in self.devices:
            assert not [name for name, row in device.disk.sync.items() if row["pending"]]
            assert device.to_go_up() == []
            here = {name: each for name, each in device.disk.documents.items() if each is not None}
            assert here.keys() == standing.keys(), device.name
            for name, state in standing.items():
                assert is_same(here[name], state), (device.name, name)
        if self.is_tame:
            for state in standing.values():
                assert ticked(state) & self.unticked == set()
        there: dict[str, set[str]] = {name: words(state) for name, state in standing.items()}
        for word, name in self.typed.items():
            is_there = word in self.taken_away or word in there.get(name, set())
            assert is_there, (word, name, word in self.acknowledged)

    def _is_level(self, device: Device) -> bool:
        cursor = device.disk.cursor
        return not device.to_go_up() and cursor["since"] == self.server.seq

    def _edit(self, device: Device, typist: Typist) -> None:
        name = self.chance.choice([*JOBS, *JOBS, *JOBS, *OTHERS, "photo"])
        if name == "photo":
            self.photos += 1
            name = f"photo.{self.photos}"
        before = device.state(name)
        self._change(device, name, before, self._edited(name, before, typist))

    def _change(self, device: Device, name: str, before: State, after: State) -> None:
        """Note what is about to be typed and taken away, then keep it, which may crash."""
        old, new = words(before), words(after)
        try:
            device.edit(name, after)
        finally:
            if device.state(name) is after:
                self.typed.update(dict.fromkeys(new - old, name))
                self.taken_away |= old - new
                if after is not None:
                    self.unticked |= ticked(before) - ticked(after)

    def _edited(self, name: str, before: State, typist: Typist) -> State:
        kind = name.split(".")[0]
        if before is None:
            return {"units": "in", "schema": 1, "body": self._blank(kind, name, typist)}
        if self.chance.random() < 0.01 and not self.is_tame:
            return None
        body = before["body"]
        if kind == "job":
            is_large = len(body["items"]) > MOST_ITEMS or len(body.get("ticks") or []) > MOST_TICKS
            kinds = SHRINKING if is_large else None
            body = self._answered(typist.edit(body, kinds=kinds), typist)
        else:
            body = self._plain(kind, copied(body), typist)
        units = body["units"] if kind == "job" else before["units"]
        return before | {"units": units, "body": body}

    def _blank(self, kind: str, name: str, typist: Typist) -> dict[str, Any]:
        if kind == "job":
            return begun() | {"id": name.split(".")[1]}
        return {"rows": [], "typed_in": "in"} if kind == "list" else {"data": [typist.new()]}

    def _plain(self, kind: str, body: dict[str, Any], typist: Typist) -> dict[str, Any]:
        if kind == "list":
            rows = body["rows"]
            if rows and self.chance.random() < 0.4:
                rows[self.chance.randrange(len(rows))]["where"] = typist.new()
            elif rows and self.chance.random() < 0.4:
                rows.pop(self.chance.randrange(len(rows)))
            else:
                rows.append({"title": typist.new(), "count": 1})
            body["typed_in"] = self.chance.choice(["in", "in", "in", "mm"])
        else:
            body[self.chance.choice("abcdef")] = typist.new()
        return body

    def _answered(self, body: dict[str, Any], typist: Typist) -> dict[str, Any]:
        waiting = [each for each in body.get("questions") or [] if "path" in each]
        if not waiting or self.chance.random() < 0.7:
            return body
        asked = self.chance.choice(waiting)
        # Who settles it has seen both: what stands may be typed over by who has not heard of it.
        for each in waiting:
            if each["path"] == asked["path"]:
                self.taken_away |= words(each)
        request = {"document": body, "question": asked["id"], "by": typist.name, "side": None}
        made: dict[str, Any] = answer(request)["document"]
        return made

    def _mishap(self) -> None:
        """Something that happens now and then."""
        kind = self.chance.randrange(200)
        if kind < 20:
            self.offline[self.now] = not self.offline[self.now]
        elif kind < 25 and self.late:
            self.late.pop(self.chance.randrange(len(self.late)))()
        elif kind < 29:
            self.backups.append(self.server.backed_up())
        elif kind < 33:
            self.copies.append((self.now, self.devices[self.now].disk.copy()))
        elif self.is_tame:
            pass
        elif kind < 39 and self.backups:
            self._losing(lambda: self.server.restore(self.chance.choice(self.backups[-3:])))
        elif kind < 43 and self.copies:
            self._losing(self._restore_phone)
        elif kind < 45 and self.copies:
            self._losing(self._restore_file)

    def _restore_phone(self) -> None:
        at, copy = self.chance.choice(self.copies[-5:])
        self.devices[at].disk = copy.copy()

    def _restore_file(self) -> None:
        _, copy = self.chance.choice(self.copies[-5:])
        kept = {name: each for name, each in copy.documents.items() if each is not None}
        self.devices[self.now].restore_file(kept)

    def _losing(self, happen: Callable[[], None]) -> None:
        """Let something be restored; what stands nowhere any more after it is no one's fault."""
        before = self._all_words()
        try:
            happen()
        finally:
            self.taken_away |= before - self._all_words()

    def _all_words(self) -> set[str]:
        states = list(self.server.states().values())
        for device in self.devices:
            states += device.disk.documents.values()
        return {word for state in states for word in words(state)}


def lived(seed: int, edits: int, server: Any) -> World:
    """Let a shop live through so many edits, and check it."""
    _FOUND.clear()
    world = World(seed, server)
    world.run(edits)
    world.settle()
    world.check()
    return world
