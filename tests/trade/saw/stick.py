"""Read a stick plan back from its tables, stick by stick."""

from fractions import Fraction
from typing import Any, NamedTuple


class Stick(NamedTuple):
    """One stick of a plan: its length, the tags of its pieces as they are cut, what is left."""

    number: int
    length: Fraction
    tags: list[str]
    left: Fraction


def inches(text: str) -> Fraction:
    """Return an exact measure; the questions are such that none is full or shy."""
    assert "full" not in text
    assert "shy" not in text
    return sum((Fraction(word) for word in text.split()), Fraction(0))


def sticks_of(answer: dict[str, Any]) -> list[Stick]:
    """Return every single stick of a plan, those cut alike one by one, in order."""
    sticks = []
    for table in answer["tables"][1:]:
        if table["columns"][0] == "Cut":
            name, *alike, length = table["name"].split(", ")
            assert alike in ([], ["cut alike"])
            tags = [row[1] for row in table["rows"] if row[1] != "end"]
            left = inches(table["rows"][-1][4])
            sticks += [Stick(n, inches(length), tags, left) for n in numbers(name)]
        else:
            for name, length, pieces, rest in table["rows"]:
                tags = [tag for run in pieces.split(", ") for tag in repeated(run)]
                sticks += [Stick(n, inches(length), tags, inches(rest)) for n in numbers(name)]
    assert [stick.number for stick in sticks] == list(range(1, len(sticks) + 1))
    return sticks


def numbers(name: str) -> range:
    """Return the numbers in "Stick 4" or "Sticks 4 to 7"."""
    said = [int(word) for word in name.split() if word.isdigit()]
    return range(said[0], said[-1] + 1)


def repeated(run: str) -> list[str]:
    """Return the tags that "A x 3" stands for."""
    tag, _, times = run.partition(" x ")
    return [tag] * int(times or 1)
