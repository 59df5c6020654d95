"""Let simulated shops live through a day: five devices, 2,000 edits, everything going wrong.

    python -m tests.bench.devices [--seeds 1000] [--first 0] [--edits 2000] [--minutes 60]

What goes wrong is told in `tests/shop/simulated/world.py`, and what must hold in the end. The
server is the little one, which `tests/shop/test_devices.py` holds equal to the real one.
"""

import argparse
import time

from tests.shop.simulated.little import LittleServer
from tests.shop.simulated.world import lived


def main() -> None:
    """Run and print how many shops ended well."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--seeds", type=int, default=1000)
    parser.add_argument("--first", type=int, default=0)
    parser.add_argument("--edits", type=int, default=2000)
    parser.add_argument("--minutes", type=float, default=60)
    asked = parser.parse_args()
    begun, failed, done = time.monotonic(), [], 0
    for seed in range(asked.first, asked.first + asked.seeds):
        if time.monotonic() - begun > 60 * asked.minutes:
            break
        try:
            lived(seed, asked.edits, LittleServer())
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
