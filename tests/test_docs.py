"""What the documents say is so: their commands run, their table is the shelf."""

import json
import re
import urllib.request
from pathlib import Path

from longpoint.trade.shelf import PLACES, slugs_at, tool_named
from tests.serving import served

TOP = Path(__file__).parent.parent
README = (TOP / "README.md").read_text(encoding="utf-8")
DEVELOPERS = (TOP / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_the_readme_lists_the_shelf() -> None:
    tools = [(title, tool_named(slug)) for place, title in PLACES for slug in slugs_at(place)]
    rows = [f"| {title} | {tool.title} | {tool.question} |" for title, tool in tools]
    assert "\n".join(rows) in README
    assert len(re.findall(r"^\| (?:At|On) ", README, re.MULTILINE)) == len(rows)


def test_the_start_command_serves_the_app_at_the_address_it_prints() -> None:
    (command,) = re.findall(r"^sh server/start$", README, re.MULTILINE)
    with (
        served(["env", "PORT=0", *command.split()], TOP) as address,
        urllib.request.urlopen(address + "/") as page,
    ):
        assert b"Longpoint" in page.read()


def test_the_api_example_answers_as_the_trade_would(address: str) -> None:
    """By hand: 0.085 - (3/32 - 1/16) / 2 = 0.069375."""
    (path,) = re.findall(r"http://127\.0\.0\.1:8000(/api/tools/\S+)", README)
    (body,) = re.findall(r"-d '(\{.*\})'", README)
    request = urllib.request.Request(
        address + path, body.encode(), {"Content-Type": "application/json"}
    )
    with urllib.request.urlopen(request) as response:
        figures = {figure["name"]: figure for figure in json.load(response)["figures"]}
    assert abs(figures["mortise_depth"]["value"] - 0.069375) < 1e-12


def test_the_test_command_is_the_one_that_runs_everywhere() -> None:
    assert re.search(r"^sh tests/run$", README, re.MULTILINE)
    assert "sh tests/run" in (TOP / ".ci" / "run").read_text(encoding="utf-8")


def test_the_pictures_are_there() -> None:
    pictures = re.findall(r"\((web/pictures/\S+)\)", README)
    assert len(pictures) == 6
    assert [picture for picture in pictures if not (TOP / picture).exists()] == []


def test_the_rooms_of_the_house_exist() -> None:
    rooms = re.findall(r"^\| `((?:server|web|tests|fixtures)/[^`]*)`", DEVELOPERS, re.MULTILINE)
    assert rooms
    assert [room for room in rooms if not (TOP / room).exists()] == []
