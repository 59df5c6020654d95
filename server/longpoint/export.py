"""Writing the front end into a folder that any HTTPS file host can serve."""

from collections.abc import Iterable
from pathlib import Path

from . import front

RECORD = ".longpoint-export"
"""Names the files that an export wrote, one a line: what the next one may replace."""

# A page or a worker must not turn up before the files it names: these go last, in this order.
_LAST = ("index.html", "sw.js")


class NotExported(Exception):
    """The folder can't be written to as it stands; the message is for the person."""


def export(folder: Path) -> list[str]:
    """Write the front end, core included, into `folder`, and return the names written.

    Parameters
    ----------
    folder : Path
        New, empty, or an earlier export: then its own files are replaced, added ones kept.

    Raises
    ------
    NotExported
        The front end isn't built, or the folder holds something else.
    """
    if not front.is_built():
        raise NotExported("The front end is not built: install Longpoint again with pip.")
    try:
        return _write(folder, _earlier(folder))
    except OSError as fault:
        raise NotExported(f"Can't write to {folder}: {fault.strerror}.") from fault


def _write(folder: Path, earlier: set[str]) -> list[str]:
    names = _names()
    _refuse_links(folder, {*names, *earlier})
    folder.mkdir(parents=True, exist_ok=True)
    # Recorded before anything is written: what a break leaves behind is still ours to replace.
    _record(folder, [*names, *earlier])
    for name in names:
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        _put(folder / name, (front.STATIC / name).read_bytes())
    for name in earlier - set(names):
        (folder / name).unlink(missing_ok=True)
    _record(folder, names)
    return names


def _refuse_links(folder: Path, names: Iterable[str]) -> None:
    """Refuse a folder in which a name leads through a link: what lies behind it isn't ours."""
    folders = {parent for name in names for parent in Path(name).parents}
    for path in sorted(folder / parent for parent in folders if parent.parts):
        if path.is_symlink():
            raise NotExported(f"{path} is a link: put a folder in its place.")


def _put(path: Path, content: bytes) -> None:
    """Write a file; a link in its place is replaced, not followed."""
    fresh = path.with_name(f"{path.name}.new")
    fresh.unlink(missing_ok=True)
    fresh.write_bytes(content)
    fresh.replace(path)


def _record(folder: Path, names: Iterable[str]) -> None:
    _put(folder / RECORD, "".join(f"{name}\n" for name in names).encode())


def _names() -> list[str]:
    # Hosts compress for themselves, so the ready compressed copies stay behind.
    files = [path for path in front.STATIC.rglob("*") if path.is_file()]
    names = [path.relative_to(front.STATIC).as_posix() for path in files]
    plain = [name for name in names if not name.endswith((".br", ".gz"))]
    return sorted(plain, key=lambda name: (_LAST.index(name) if name in _LAST else -1, name))


def _earlier(folder: Path) -> set[str]:
    if folder.exists() and not folder.is_dir():
        raise NotExported(f"{folder} is a file: name a folder to export to.")
    record = folder / RECORD
    if record.is_file():
        return _recorded(record)
    if folder.is_dir() and any(folder.iterdir()):
        raise NotExported(
            f"{folder} is not empty and not an earlier export: name a new or an empty folder."
        )
    return set()


def _recorded(record: Path) -> set[str]:
    try:
        names = record.read_text(encoding="utf-8").splitlines()
    except UnicodeDecodeError:
        names = ["\0"]
    if not all(name.isprintable() for name in names):
        raise NotExported(
            f"{record} is not the list that an export leaves: name a new or an empty folder."
        )
    inside = [name for name in names if Path(name).parts and ".." not in Path(name).parts]
    return {name for name in inside if not Path(name).is_absolute()}
