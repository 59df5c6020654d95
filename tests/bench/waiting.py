"""What everybody else waits for an answer while four clients search for cutting plans.

    python -m tests.bench.waiting [--seconds 20]

Both kinds of client ask without a pause, over connections of their own; a client that is told 503
asks again after a second. Ends by itself.
"""

import argparse
import http.client
import json
import statistics
import time
import urllib.parse
from collections import Counter
from concurrent.futures import ThreadPoolExecutor
from typing import Any

from longpoint.trade.shelf import tool_named
from tests.api.test_computing import LONG
from tests.serving import COMMAND, served

SEARCHERS = 4


def asked(address: str, end: float, path: str, body: Any) -> tuple[list[float], Counter[int]]:
    """Ask until `end`; return what each 200 took, in ms, and how often each status came."""
    parts = urllib.parse.urlsplit(address)
    link = http.client.HTTPConnection(parts.hostname or "", parts.port, timeout=120)
    took: list[float] = []
    statuses: Counter[int] = Counter()
    while time.monotonic() < end:
        begun = time.perf_counter()
        headers = {"Content-Type": "application/json"}
        link.request("POST", "/api/tools/" + path, json.dumps(body), headers)
        with link.getresponse() as came:
            came.read()
            statuses[came.status] += 1
            if came.status == 200:
                took.append(1000 * (time.perf_counter() - begun))
            else:
                time.sleep(1)
    link.close()
    return took, statuses


def measure(address: str, seconds: float, searchers: int) -> None:
    """Print a row: the short answers, and the long ones beside them."""
    example = tool_named("hinge-layout").example
    end = time.monotonic() + seconds
    with ThreadPoolExecutor() as threads:
        searching = [
            threads.submit(asked, address, end, "stick-plan", LONG | {"keep": 10 + at})
            for at in range(searchers)
        ]
        took, _ = threads.submit(asked, address, end, "hinge-layout", example).result()
        long = [each.result() for each in searching]
    p99 = sorted(took)[int(0.99 * (len(took) - 1))]
    searched = [each for one, _ in long for each in one]
    told: Counter[int] = sum((each for _, each in long), Counter())
    print(
        f"| {searchers} | {len(took)} | {statistics.median(took):.1f} | {p99:.0f} | "
        f"{len(searched)} | {statistics.median(searched or [0]):.0f} | {told[503]} |"
    )


def main() -> None:
    """Measure without and with others that search."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--seconds", type=float, default=20)
    seconds = parser.parse_args().seconds
    print("| searching | short answers | median ms | p99 ms | plans | median ms | told 503 |")
    print("|---|---|---|---|---|---|---|")
    with served(COMMAND) as address:
        measure(address, seconds / 4, 0)
        measure(address, seconds, SEARCHERS)


if __name__ == "__main__":
    main()
