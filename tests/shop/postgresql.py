"""A PostgreSQL server of the tests' own, from Debian's package, on a socket in a folder."""

import os
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
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
    found = programs()
    assert found, "no PostgreSQL here"
    folder = Path(tempfile.mkdtemp(prefix="longpoint-postgresql-"))
    runs_as = _unprivileged()
    if runs_as:
        shutil.chown(folder, "postgres", "postgres")
    data, log = folder / "data", folder / "log"

    def run(program: str, *arguments: str) -> None:
        subprocess.run(
            [found / program, "-D", data, *arguments],
            check=True, cwd=folder, stdout=subprocess.DEVNULL, **runs_as,
        )  # fmt: skip

    try:
        run("initdb", "-U", USER, "-A", "trust", "-E", "UTF8", "--locale=C", "--no-sync")
        # A test's databases needn't survive the machine, only the server's own end.
        settings = f"-k {folder} -c listen_addresses= -c fsync=off"
        run("pg_ctl", "start", "-w", "-l", str(log), "-o", settings)
        try:
            yield folder
        finally:
            run("pg_ctl", "stop", "-w", "-m", "immediate")
    finally:
        shutil.rmtree(folder)


def address_of(folder: Path, name: str) -> str:
    """Return the address of a database of the server with its socket in `folder`."""
    return f"postgresql+psycopg://{USER}@/{name}?host={folder}"
