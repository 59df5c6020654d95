"""Five devices, edits, and all that goes wrong between them: all end equal, nothing is lost."""

import random
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.shop.simulated.device import Device
from tests.shop.simulated.little import LittleServer
from tests.shop.simulated.real import RealServer
from tests.shop.simulated.states import Reply, state_of
from tests.shop.simulated.world import lived

FEW = 10


@pytest.fixture
def real(shop_address: str, tmp_path: Path) -> Iterator[RealServer]:
    server = RealServer(shop_address, tmp_path)
    yield server
    server.database.close()


@pytest.mark.parametrize("seed", range(FEW))
def test_all_end_equal_and_nothing_is_lost(seed: int) -> None:
    """A thousand seeds of 2,000 edits are `python -m tests.bench.devices`."""
    lived(seed, 150, LittleServer())


def test_the_same_with_the_real_server(real: RealServer) -> None:
    """Seed 1 has restored phones and servers in it."""
    lived(1, 100, real)


def test_the_little_server_is_the_real_one(real: RealServer) -> None:
    """Random requests, right and wrong: the same answers."""
    chance, little = random.Random(5), LittleServer()
    epochs, backups = ["1", "wrong"], []
    for at in range(80):
        now = {"1": real.changes(0, "", 1)["epoch"], "wrong": "wrong"}
        epoch = chance.choice([*epochs[:1] * 5, *epochs])
        name = f"list.{chance.randint(1, 3)}"
        to = chance.choice([None, None, 1, 2, 3, 4])
        state = {"units": "in", "schema": 1, "body": {"rows": [at]}}
        if to is not None and chance.random() < 0.2:
            state = None  # type: ignore[assignment]
        what = "goes" if state is None else "stays"
        change_id = f"change-{chance.randint(max(0, at - 3), at)}-{name[-1]}-{what}"
        here = little.write(
            name, to, change_id, state, epoch if epoch != "1" else str(little.epoch)
        )
        there = real.write(name, to, change_id, state, now[epoch])
        assert told(here) == told(there), at
        since, last = chance.choice(
            [(0, ""), (at // 2, ""), (little.seq, change_id), (at // 2, "change-none")]
        )
        assert fed(little.changes(since, last, 2)) == fed(real.changes(since, last, 2))
        if at % 30 == 10:
            backups = [little.backed_up(), real.backed_up()]
        elif at % 30 == 20:
            little.restore(backups[0])
            real.restore(backups[1])
    assert little.seq == real.seq


def told(reply: Reply) -> Any:
    """Return what both servers say of a change."""
    status, said = reply
    if status == 412:
        return status, bare(said["current"])
    return status, bare(said) if status == 200 else None


def fed(said: dict[str, Any]) -> Any:
    """Return what both servers say of the feed."""
    changes = [bare(each) | {"state": state_of(each)} for each in said["changes"]]
    return changes, said["restored"], said["since"], said["last"], said["more"]


def bare(head: dict[str, Any]) -> dict[str, Any]:
    return {name: head[name] for name in ("id", "rev", "seq", "change_id", "deleted")}


def test_a_phone_keeps_to_one_change_id_until_it_is_answered() -> None:
    """Hand work: the answer is lost twice; the server knows the change and makes it once."""

    class Forgetful:
        lose = 2

        def carry(self, ask: Any) -> Any:
            reply = ask()
            if isinstance(reply, tuple) and self.lose:
                self.lose -= 1
                raise ConnectionError
            return reply

    server = LittleServer()
    phone = Device("Ann", server, Forgetful(), random.Random(1))
    phone.edit("list.a", {"units": "in", "schema": 1, "body": {"rows": [1]}})
    for _ in range(2):
        with pytest.raises(ConnectionError):
            phone.sync()
    phone.sync()
    assert (server.seq, phone.to_go_up(), phone.disk.sync["list.a"]["rev"]) == (1, [], 1)
