"""`sh server/start` in folders that a person may well have."""

import shutil
import sysconfig
import urllib.request
from pathlib import Path

import pytest

from tests.serving import served

TOP = Path(__file__).parent.parent
START = ["env", "PORT=0", "sh", "server/start"]
NEEDED = ["server", "pyproject.toml", "README.md"]


def title_at(address: str) -> str:
    with urllib.request.urlopen(address + "/") as page:
        text: str = page.read().decode()
    return text.partition("<title>")[2].partition("</title>")[0]


def copy(source: Path, target: Path) -> None:
    target.mkdir()
    # Other tests' Pythons keep there what they compile, just now.
    compiled = shutil.ignore_patterns("__pycache__")
    for name in NEEDED:
        if (source / name).is_dir():
            shutil.copytree(source / name, target / name, ignore=compiled)
        else:
            shutil.copy(source / name, target / name)


def test_a_path_with_signs_in_it_and_a_copy_of_that_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The copy comes with the first one's .venv, whose every script names the first folder."""
    monkeypatch.setenv("LONGPOINT_WEB", "keep")
    # What Longpoint and its build need is seen where these tests have it, and so is not installed
    # for each folder again; the app itself is not seen there, since a .pth file counts in a .venv's
    # own folder alone. That all of it can be installed is shown by tests/api/test_wheel.py.
    monkeypatch.setenv("PYTHONPATH", sysconfig.get_path("purelib"))
    monkeypatch.setenv("PIP_NO_BUILD_ISOLATION", "false")  # pip's word for: no isolation
    first = tmp_path / 'the carpenter\'s $5 "app"'
    copy(TOP, first)
    with served(START, first) as address:
        assert title_at(address) == "Longpoint"
    second = tmp_path / "second"
    shutil.copytree(first, second, symlinks=True)
    page = second / "server" / "longpoint" / "static" / "index.html"
    page.write_text(page.read_text().replace("<title>Longpoint<", "<title>The copy<"))
    with served(START, second) as address:
        assert title_at(address) == "The copy"
