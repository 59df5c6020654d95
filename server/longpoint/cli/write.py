"""`longpoint export`."""

from pathlib import Path

from longpoint.export import NotExported, export

from . import NotDone


def write(folder: Path) -> None:
    """Write the static site to a folder."""
    try:
        names = export(folder)
    except NotExported as refused:
        raise NotDone(str(refused)) from refused
    print(f"Wrote {len(names)} files to {folder}: serve that folder over HTTPS.")
