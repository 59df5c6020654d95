"""Twenty phones on one shop's server: 200 jobs go up, come down everywhere, and are worked on.

    python -m tests.bench.load [sqlite] [postgresql] [--phones 20] [--jobs 200] [--rounds 10]

Each phone has a connection of its own and asks without a pause. The phones, the server and its
database share the machine. Ends by itself, with status 1 if the server ever answered 5xx.
"""

import argparse
import http.client
import json
import statistics
import sys
import tempfile
import time
import urllib.parse
from collections import defaultdict
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from longpoint.app import create_app
from longpoint.shop.database import Database
from tests.serving import SHARED, served
from tests.shop import postgresql
from tests.shop.conftest import Phone, new_database, person, token_of

DEMO = Path(__file__).parents[2] / "fixtures" / "job" / "demo.json"


class Loader:
    """A phone that asks as fast as it is answered, and notes how long that takes."""

    def __init__(self, address: str, cookie: str, number: int) -> None:
        parts = urllib.parse.urlsplit(address)
        self.link = http.client.HTTPConnection(parts.hostname or "", parts.port, timeout=60)
        self.headers = {"Cookie": f"longpoint={cookie}", "Content-Type": "application/json"}
        self.number, self.changes = number, 0
        self.since, self.last = 0, ""
        self.took: dict[str, list[float]] = defaultdict(list)
        self.statuses: dict[int, int] = defaultdict(int)
        self.revisions: dict[str, int] = {}

    def ask(self, what: str, method: str, path: str, body: Any = None, **headers: str) -> Any:
        begun = time.perf_counter()
        sent = None if body is None else json.dumps(body)
        self.link.request(method, "/api/" + path, sent, self.headers | headers)
        with self.link.getresponse() as came:
            said = came.read()
            self.statuses[came.status] += 1
        self.took[what].append(1000 * (time.perf_counter() - begun))
        return json.loads(said)

    def write(self, job: Any) -> None:
        """Send a job, as new or as the next revision."""
        self.changes += 1
        name = "job." + job["id"]
        known = self.revisions.get(name)
        condition = {"If-Match": f'"{known}"'} if known else {"If-None-Match": "*"}
        change = f"change-{self.number}-{self.changes}"
        said = {"change_id": change, "units": "in", "schema": 1, "body": job}
        kept = self.ask("write", "PUT", "documents/" + name, said, **condition)
        self.revisions[name] = kept.get("rev", kept.get("current", {}).get("rev"))

    def pull(self, what: str) -> None:
        """Take what is new, page by page."""
        while True:
            page = self.ask(what, "GET", f"changes?since={self.since}&last={self.last}")
            self.since, self.last = page["since"], page["last"]
            for each in page["changes"]:
                self.revisions[each["id"]] = each["rev"]
            if not page["more"]:
                return


def jobs(number: int) -> list[Any]:
    """Return so many jobs like the demo."""
    demo = json.loads(DEMO.read_text(encoding="utf-8"))["job"]
    return [demo | {"id": f"load-{at}", "title": f"Job {at}"} for at in range(number)]


def live(phones: list[Loader], kept: list[Any], rounds: int) -> float:
    """Let the phones do it all; return the seconds that it took."""
    begun = time.perf_counter()
    with ThreadPoolExecutor(len(phones)) as threads:

        def together(do: Any) -> None:
            list(threads.map(do, phones))

        def send(phone: Loader) -> None:
            for job in kept[phone.number :: len(phones)]:
                phone.write(job)

        def work(phone: Loader) -> None:
            mine = kept[phone.number :: len(phones)]
            for at in range(rounds):
                phone.write(mine[at % len(mine)] | {"title": f"Round {at}"})
                phone.pull("news")

        together(send)
        together(lambda phone: phone.pull("all jobs"))
        together(work)
    return time.perf_counter() - begun


@contextmanager
def database(kind: str, folder: str) -> Iterator[str]:
    """Give the address of a new database."""
    if kind == "sqlite":
        yield f"sqlite:///{folder}/shop.db"
        return
    with postgresql.running() as server:
        yield new_database(server)


def cookies(shop: Database, number: int) -> list[str]:
    """Sign so many devices of five people in; return what their browsers carry."""
    app = create_app({"SHOP": shop})
    people = [person(shop, f"Person {at}") for at in range(5)]
    found = []
    for at in range(number):
        phone = Phone(app, token_of(shop, people[at % 5]))
        cookie = phone.client.get_cookie("longpoint")
        assert cookie
        found.append(cookie.value)
    return found


def memory(parent: int | None = None) -> dict[str, float]:
    """Return the most memory in MB that the server has had; each of its processes by itself."""
    lists = Path(f"/proc/{parent or 'self'}/task").glob("*/children")
    found = {}
    for process in [each for listed in lists for each in listed.read_text().split()]:
        if b"longpoint.cli" in Path(f"/proc/{process}/cmdline").read_bytes():
            lines = Path(f"/proc/{process}/status").read_text().splitlines()
            (most,) = [line.split()[1] for line in lines if line.startswith("VmHWM")]
            found[process] = int(most) / 1024
    return found


def measure(kind: str, arguments: argparse.Namespace) -> bool:
    """Load a server on one kind of database, print the figures; tell whether none was 5xx."""
    with tempfile.TemporaryDirectory() as folder, database(kind, folder) as address:
        shop = Database(address)
        carried = cookies(shop, arguments.phones)
        shop.close()
        with served(SHARED, settings={"LONGPOINT_DATABASE": address}) as server:
            phones = [Loader(server, cookie, at) for at, cookie in enumerate(carried)]
            before = memory()
            seconds = live(phones, jobs(arguments.jobs), arguments.rounds)
            show(kind, phones, seconds, before, memory())
            for phone in phones:
                phone.link.close()
    return not any(status >= 500 for phone in phones for status in phone.statuses)


def show(
    kind: str,
    phones: list[Loader],
    seconds: float,
    before: dict[str, float],
    after: dict[str, float],
) -> None:
    """Print what came of it, as rows of a table."""
    statuses: dict[int, int] = defaultdict(int)
    for phone in phones:
        for status, count in phone.statuses.items():
            statuses[status] += count
    number = sum(statuses.values())
    for what in phones[0].took:
        took = sorted(each for phone in phones for each in phone.took[what])
        p99 = took[int(0.99 * (len(took) - 1))]
        print(f"| {kind} | {what} | {len(took)} | {statistics.median(took):.0f} | {p99:.0f} |")
    most, first = max(after.values()), max(before.values())
    print(
        f"{kind}: {number} answers in {seconds:.1f} s, {number / seconds:.0f} a second, "
        f"{dict(statuses)}; server's memory {first:.0f} MB at first, at most {most:.0f}\n"
    )


def main() -> int:
    """Measure each kind of database that is asked for."""
    parser = argparse.ArgumentParser()
    parser.add_argument("kinds", nargs="*", default=["sqlite", "postgresql"])
    parser.add_argument("--phones", type=int, default=20)
    parser.add_argument("--jobs", type=int, default=200)
    parser.add_argument("--rounds", type=int, default=10)
    arguments = parser.parse_args()
    print("| database | what | times | median ms | p99 ms |\n|---|---|---|---|---|")
    return int(not all(measure(kind, arguments) for kind in arguments.kinds))


if __name__ == "__main__":
    sys.exit(main())
