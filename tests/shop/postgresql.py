"""A PostgreSQL server of the tests' own, from Debian's package, on a socket in a folder."""

import os
import select
import shutil
import signal
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Any

USER = "longpoint"


def programs() -> Path | None:
    """Return the folder of the newest PostgreSQL's programs; None where there is none."""
    found = Path("/usr/lib/postgresql").glob("*/bin/initdb")
    newest = max(found, key=lambda path: float(path.parts[-3]), default=None)
    return newest.parent if newest else None


def _unprivileged() -> dict[str, Any]:
    """Return whom the server runs as: it refuses to be root."""
    return (
        {"user": "postgres", "group": "postgres", "extra_groups": []} if os.geteuid() == 0 else {}
    )


@contextmanager
def running() -> Iterator[Path]:
    """Run a server, and give the folder of its socket."""
    folder = Path(tempfile.mkdtemp(prefix="longpoint-postgresql-"))
    if _unprivileged():
        shutil.chown(folder, "postgres", "postgres")
    try:
        _run(folder, "initdb", "-U", USER, "-A", "trust", "-E", "UTF8", "--locale=C", "--no-sync")
        start(folder)
        try:
            yield folder
        finally:
            _run(folder, "pg_ctl", "stop", "-w", "-m", "immediate")
    finally:
        shutil.rmtree(folder)


def start(folder: Path) -> None:
    """Start the server of a folder, after its death too."""
    # A test's databases needn't survive the machine, only the server's own end.
    settings = f"-k {folder} -c listen_addresses= -c fsync=off"
    _run(folder, "pg_ctl", "start", "-w", "-l", str(folder / "log"), "-o", settings)


def kill(folder: Path) -> None:
    """Kill the server of a folder and each process of its own, by SIGKILL; see them end."""
    file = folder / "data" / "postmaster.pid"
    first = int(file.read_text().split()[0])
    os.kill(first, signal.SIGSTOP)  # so that it begets no more
    children = Path(f"/proc/{first}/task/{first}/children").read_text().split()
    for pid in (*map(int, children), first):
        with suppress(ProcessLookupError):
            watched = os.pidfd_open(pid)
            os.kill(pid, signal.SIGKILL)
            select.select([watched], [], [])
            os.close(watched)
    # By these its number is looked up, which stands as long as nobody cleared the dead away.
    for left in (file, folder / ".s.PGSQL.5432.lock"):
        left.unlink()


def _run(folder: Path, program: str, *arguments: str) -> None:
    found = programs()
    assert found, "no PostgreSQL here"
    subprocess.run(
        [found / program, "-D", folder / "data", *arguments],
        check=True, cwd=folder, stdout=subprocess.DEVNULL, **_unprivileged(),
    )  # fmt: skip


def address_of(folder: Path, name: str) -> str:
    """Return the address of a database of the server with its socket in `folder`."""
    return f"postgresql+psycopg://{USER}@/{name}?host={folder}"
