"""A whole job against a program of another kind, from the tape's numbers alone."""

import json
from math import ceil
from pathlib import Path
from random import Random
from typing import Any

import pytest

from tests.trade.cutting.published import T60_00, U120, listed

from .asking import blank, entries_of, figures_of, worked
from .reference import Tape, base, cased, doors, frames, least_cost

DEMO: dict[str, Any] = json.loads(
    (Path(__file__).parents[3] / "fixtures/job/demo.json").read_text(encoding="utf-8")
)["job"]
STICKS = ("molding", "base", "jamb", "stop", "casing")


def drawn(seed: int) -> Tape:
    """Return other numbers for the same job, each a whole number of sixteenths."""
    if not seed:
        return Tape()
    random = Random(seed)

    def tape(least: float, most: float) -> float:
        return random.randint(int(least * 16), int(most * 16)) / 16

    return Tape(
        opening=(tape(24, 40), tape(30, 46)), stile=tape(2, 3), rails=(tape(2, 3), tape(2, 4)),
        window=(tape(36, 48), tape(30, 40), tape(20, 25)), wall=(tape(118, 140), tape(30, 40)),
        room=(tape(110, 144), tape(84, 120)), door_at=tape(20, 50),
        slab=(random.choice((28, 30, 32)), 80), casing=tape(2, 3.25), latch=tape(34, 40),
    )  # fmt: skip


def job_of(tape: Tape) -> Any:
    """Return the demo with the tape's numbers typed into it."""
    job = json.loads(json.dumps(DEMO))
    by_tag = {
        entry["letter"]: entry["inputs"] for item in job["items"] for entry in item["entries"]
    }
    (wide, high) = tape.opening
    diagonal = (wide**2 + high**2) ** 0.5
    by_tag["A"] |= {
        "width_top": wide, "width_bottom": wide, "height_left": high, "height_right": high,
        "diagonal_a": diagonal, "diagonal_b": diagonal,
    }  # fmt: skip
    by_tag["C"] |= {"stile": tape.stile, "top_rail": tape.rails[0], "bottom_rail": tape.rails[1]}
    left, window, under = tape.window
    by_tag["G"] |= {
        "length": tape.wall[0], "height": tape.wall[1],
        "openings": [{"from_left": left, "width": window, "bottom": under}],
    }  # fmt: skip
    long, short = tape.room
    by_tag["H"] |= {
        "walls": [{"length": long}, {"length": short}] * 2,
        "openings": [{"wall": 3, "from_left": tape.door_at, "width": cased(tape)["outside"]}],
    }  # fmt: skip
    by_tag["I"] |= {
        "leaf_width": tape.slab[0], "latch_height": tape.latch,
        "rough_width": "", "rough_height": "",
    }  # fmt: skip
    by_tag["M"] |= {"casing_width": tape.casing}
    return job


def cuts_of(reply: Any, letter: str) -> list[float]:
    return sorted(
        cut["length"] for group in reply["saw"]["groups"] for cut in group["cuts"]
        if cut["tag"].startswith(letter)
    )  # fmt: skip


def close(found: Any, expected: Any) -> bool:
    return bool(found == pytest.approx(expected, abs=1e-6))


@pytest.mark.parametrize("seed", range(9))
def test_every_size_is_what_closes_the_opening(seed: int) -> None:
    tape = drawn(seed)
    reply = worked(job_of(tape))
    entries = {each["letter"]: each for each in entries_of(reply).values()}
    assert {letter: each["errors"] for letter, each in entries.items() if each["errors"]} == {}
    pair, door = doors(tape), cased(tape)
    leaf = figures_of(entries["C"])
    for name in ("leaf_width", "leaf_height", "panel_width", "panel_height"):
        assert close(leaf[name], pair[name]), name
    assert figures_of(entries["L"])["center_up"] == pytest.approx(door["latch"])
    # The reference turns the leaf in steps.
    assert figures_of(entries["K"])["tight_gap"] == pytest.approx(door["tight"], abs=1e-4)
    assert close(cuts_of(reply, "C"), sorted(pair["cuts"]))
    assert close(cuts_of(reply, "G"), sorted(frames(tape)))
    assert close(cuts_of(reply, "H"), sorted(base(tape, door["outside"])))
    assert close(cuts_of(reply, "I"), sorted(door["jamb"] + door["stop"]))
    assert close(cuts_of(reply, "M"), sorted(door["casing"]))
    for letter, expected in (("D", pair), ("J", door)):
        lines = hinge_lines(reply, entries[letter]["id"])
        assert close(lines, expected["hinge_lines"]), letter


def hinge_lines(reply: Any, entry: str) -> list[float]:
    marks = [mark for item in reply["site"]["items"] for mark in item["marks"]]
    own = [mark for mark in marks if (mark["entry"], mark["from"]) == (entry, "leaf top")]
    return [mark["value"] for mark in own if mark["label"].endswith("top line")]


def quarts(tape: Tape, coats: int) -> int:
    """Return the quarts, of 231 / 4 cubic inches, of coats 4 mil wet of which 60 % land.

    A leaf 3/4 thick is a block less two recesses 1/4 deep within its frame: each recess takes as
    much face as its own bottom gives back, and adds its sides.
    """
    pair = doors(tape)
    wide, high = pair["leaf_width"], pair["leaf_height"]
    round_panel = 2 * (wide - 2 * tape.stile + high - sum(tape.rails))
    block = 2 * (wide * high + 3 / 4 * (wide + high))
    surface = 2 * (block + 2 * round_panel * 1 / 4)
    return ceil(surface * 0.004 * coats / 0.6 / (231 / 4))


@pytest.mark.parametrize("seed", range(9))
def test_nothing_is_bought_that_a_cheaper_plan_does_without(seed: int) -> None:
    tape = drawn(seed)
    reply = worked(job_of(tape))
    lines = {line["stock"]: line for line in reply["yard"]["lines"]}
    pair, door = doors(tape), cased(tape)
    cuts = {"molding": frames(tape), "base": base(tape, door["outside"])} | {
        name: door[name] for name in ("jamb", "stop", "casing")
    }
    costs = {name: least_cost(cuts[name], tape.sticks[name]) for name in STICKS}
    found = {name: line["cost"] for name in STICKS for own, line in lines.items()
             if own.endswith("-stock-" + name)}  # fmt: skip
    assert found == pytest.approx(costs)
    boards, panels = lines["doors-stock-frame"], lines["doors-stock-panel"]
    assert boards["amount"] == pytest.approx(pair["feet"])
    assert (panels["amount"], panels["cost"]) == pytest.approx(pair["sheets"])
    things = 4 * 4.25 + 2 * 7 + 118 + 3 * 6.4 + 34 + 19 * quarts(tape, 1) + 27 * quarts(tape, 2)
    whole = sum(costs.values()) + pair["feet_cost"] + pair["sheets"][1] + things
    assert reply["yard"]["cost"] == pytest.approx(whole)


@pytest.mark.parametrize(
    ("name", "room", "pieces", "fewest"),
    [
        ("t60_00", 1000, listed(T60_00), 20),
        *[(name, 150, listed(text), fewest) for name, (fewest, text) in list(U120.items())[:4]],
    ],
)
def test_published_pieces_are_bought_in_the_fewest_sticks(
    name: str, room: int, pieces: list[int], fewest: int
) -> None:
    """Falkenauer's problems (see `published`), a wall for each piece, 40 walls to a question."""
    entries = []
    for at in range(0, len(pieces), 40):
        walls = [{"length": piece} for piece in pieces[at : at + 40]]
        entries.append({
            "id": f"e{at}", "letter": chr(ord("A") + at // 40), "tool": "trim-run",
            "inputs": {"walls": walls, "trim_thickness": "1/2", "closed": False},
            "stock": {"all": "s"},
        })  # fmt: skip
    stock = {"id": "s", "title": "Trim", "sold": "stick", "lengths": [{"length": room}], "kerf": 0}
    item = {"id": "i", "title": "Walls", "entries": entries}
    reply = worked(blank(items=[item], stock=[stock]))
    (line,) = reply["yard"]["lines"]
    assert cuts_of(reply, "") == sorted(pieces)
    assert (line["amount"], line["proved"]) == (fewest, True)
