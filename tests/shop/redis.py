"""A Redis server of the tests' own, from Debian's package, on a socket in a folder."""

import shutil
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import redis


def program() -> str | None:
    """Return the server; None where there is none."""
    return shutil.which("redis-server")


@contextmanager
def running(folder: Path) -> Iterator[str]:
    """Run a server that keeps nothing on a disk; give its address."""
    found = program()
    assert found, "no Redis here"
    socket = folder / "redis"
    command = [found, "--port", "0", "--unixsocket", str(socket), "--save", ""]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=folder) as process:
        assert process.stdout
        try:
            for line in process.stdout:
                if "ready to accept connections" in line.lower():
                    break
            with redis.Redis(unix_socket_path=str(socket)) as link:
                assert link.ping()
            yield f"redis+unix://{socket}"
        finally:
            process.terminate()
