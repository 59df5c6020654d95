"""The core as it travels: compiled, a part for each room, all of it and each file once."""

import json
from pathlib import Path

from longpoint.front import STATIC

PACKAGE = STATIC.parent


def room_of(source: Path) -> str:
    """A room is a folder in trade/; what lies in none is the frame."""
    folders = source.relative_to(PACKAGE).parts[1:-1]
    return folders[0] if folders else "frame"


def test_every_source_travels_in_the_part_of_its_room() -> None:
    sources = [PACKAGE / "__init__.py", *(PACKAGE / "trade").rglob("*.py")]
    expected = {(room_of(source), str(source.relative_to(PACKAGE.parent).with_suffix("")))
                for source in sources}
    found = []
    for part in (STATIC / "assets").glob("core-*.bin"):
        index, contents = part.read_bytes().split(b"\n", 1)
        files = json.loads(index)
        assert sum(size for _, size in files) == len(contents)
        room = part.name.split("-")[1]
        found += [(room, str(Path(path).with_suffix(""))) for path, _ in files]
    assert len(found) == len(expected)
    assert set(found) == expected
