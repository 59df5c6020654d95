"""Let simulated shops live through a day: five devices, 2,000 edits, everything going wrong.

    python -m tests.bench.devices [--seeds 1000] [--first 0] [--edits 2000] [--minutes 60]

What goes wrong is told in `tests/shop/simulated/world.py`, and what must hold in the end. The
server is the little one, which `tests/shop/test_devices.py` holds equal to the real one;
`--server sqlite` and `--server postgresql` take that, which is some twenty times slower.
"""

import argparse
import tempfile
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from typing import Any

from tests.shop import postgresql
from tests.shop.conftest import new_database
from tests.shop.simulated.little import LittleServer
from tests.shop.simulated.real import RealServer
from tests.shop.simulated.world import lived


@contextmanager
def servers(kind: str) -> Iterator[Any]:
    """Give what makes a new server."""
    with ExitStack() as opened:
        if kind == "little":
            yield LittleServer
            return
        folder = Path(opened.enter_context(tempfile.TemporaryDirectory()))
        socket = opened.enter_context(postgresql.running()) if kind == "postgresql" else None
        made = iter(range(10**6))

        def make() -> RealServer:
            own = folder / str(next(made))
            own.mkdir()
            address = new_database(socket) if socket else f"sqlite:///{own / 'shop.db'}"
            server = RealServer(address, own)
            opened.callback(server.database.close)
            return server

        yield make


def main() -> None:
    """Run and print how many shops ended well."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--seeds", type=int, default=1000)
    parser.add_argument("--first", type=int, default=0)
    parser.add_argument("--edits", type=int, default=2000)
    parser.add_argument("--minutes", type=float, default=60)
    kinds = ["little", "sqlite", "postgresql"]
    parser.add_argument("--server", choices=kinds, default="little")
    asked = parser.parse_args()
    with servers(asked.server) as new_server:
        run(asked, new_server)


def run(asked: argparse.Namespace, new_server: Any) -> None:
    """Let each seed's shop live."""
    begun, failed, done = time.monotonic(), [], 0
    for seed in range(asked.first, asked.first + asked.seeds):
        if time.monotonic() - begun > 60 * asked.minutes:
            break
        try:
            lived(seed, asked.edits, new_server())
        except Exception as fault:  # noqa: BLE001  # every kind of end is told, then the next seed
            failed.append(seed)
            print(f"seed {seed}: {type(fault).__name__} {str(fault)[:200]}", flush=True)
        done += 1
        if done % 20 == 0:
            print(
                f"{done} seeds, {len(failed)} failed, {time.monotonic() - begun:.0f} s", flush=True
            )
    print(f"{done} seeds of {asked.edits} edits, {len(failed)} failed: {failed}")
    print(f"{time.monotonic() - begun:.0f} s, {time.process_time():.0f} s of a processor")


if __name__ == "__main__":
    main()
