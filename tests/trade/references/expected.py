"""What a reference says must come out: a second program of another kind that knows no tool's code.

A reference is a module ``references/<folder>/<tool>.py`` with

- ``SLUG``: the tool;
- ``draw(random)``: raw inputs, plausible ones and some at the edges;
- ``expect(inputs)``: an `Expected`, worked out another way, or None for inputs to be refused.

Its docstring says how it computes. It imports nothing of Longpoint.
"""

from dataclasses import dataclass, field
from typing import Any


@dataclass(frozen=True)
class Expected:
    """Part of an answer: figures by name; pieces and marks by place, only the keys given.

    `absent` names figures that must not be there; `words` are parts of sentences that the verdict
    or a note must hold. Lengths are inches and angles degrees, within `tolerance`.
    """

    figures: dict[str, Any] = field(default_factory=dict)
    pieces: list[dict[str, Any]] | None = None
    marks: list[dict[str, Any]] | None = None
    absent: tuple[str, ...] = ()
    words: tuple[str, ...] = ()
    tolerance: float = 1e-6


def check(expected: Expected | None, reply: dict[str, Any]) -> None:
    """Assert that a reply of the core's door is what the reference says."""
    if expected is None:
        assert not reply["ok"], "answered what must be refused"
        return
    assert reply["ok"], reply
    answer = reply["answer"]
    shown = {figure["name"]: figure["value"] for figure in answer["figures"]}
    for name, value in expected.figures.items():
        assert name in shown, f"no figure {name}"
        _same(name, shown[name], value, expected.tolerance)
    assert not set(expected.absent) & set(shown)
    for kind in ("pieces", "marks"):
        wanted = getattr(expected, kind)
        if wanted is not None:
            _each(kind, answer[kind], wanted, expected.tolerance)
    said = " ".join([answer["verdict"], *answer["notes"]])
    for words in expected.words:
        assert words in said, words


def _each(kind: str, got: list[Any], wanted: list[Any], tolerance: float) -> None:
    assert len(got) == len(wanted), f"{len(got)} {kind} instead of {len(wanted)}"
    for at, (one, other) in enumerate(zip(got, wanted, strict=True)):
        for name, value in other.items():
            _same(f"{kind} {at} {name}", one[name], value, tolerance)


def _same(name: str, got: Any, wanted: Any, tolerance: float) -> None:
    """Compare numbers within the tolerance, lists one by one, of an object only the keys given."""
    if isinstance(wanted, list):
        _each(name, got, wanted, tolerance)
        return
    if isinstance(wanted, int | float) and not isinstance(wanted, bool):
        assert got is not None, name
        assert abs(got - wanted) <= tolerance, f"{name} is {got}, not {wanted}"
    else:
        assert got == wanted, f"{name} is {got}, not {wanted}"
