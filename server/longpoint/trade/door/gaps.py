"""The gaps round a hung leaf, as every tool that hangs one asks for them."""

from ..tool import Choice, Input, Length


def gap(name: str, label: str, default: str, help: str) -> Length:
    """Return an input for a small clearance, in inches; 0 is allowed."""
    return Length(name, label, default=default, least=0, most=6, help=help)


def leaves() -> Choice:
    """Return the input `leaves`: one door, or a pair."""
    return Choice("leaves", "Leaves", [("1", "one"), ("2", "a pair")], default="1")


def leaf_gaps() -> "list[Input]":
    """Return the inputs for all gaps round the leaves; `leaves` must be asked before."""
    meeting = Length(
        "meeting_gap",
        "Meeting gap",
        default="1/8",
        least=0,
        most=6,
        help="Between the leaves.",
        only_when=("leaves", "2"),
    )
    return [
        gap("side_gap", "Side gap", "1/8", "Between leaf and jamb, each side."),
        gap("head_gap", "Head gap", "1/8", "Between leaf and head."),
        gap("floor_gap", "Floor gap", "1/2", "Above the floor covering."),
        meeting,
    ]
