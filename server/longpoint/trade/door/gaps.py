"""A leaf and the gaps round it, as every tool that makes or hangs one asks for them.

A gap is one size whatever it lies above or beside: `floor_gap` is under the leaf, over a floor or
over the bottom of a cupboard.
"""

from ..tool import Angle, Choice, Input, Length

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

MEETING_HELP = "Between the leaves."

INSET, OVERLAY, PASSAGE = "inset", "overlay", "passage"

BY_KIND = {
    "side_gap": {INSET: "3/32", PASSAGE: "1/8"},
    "head_gap": {INSET: "3/32", PASSAGE: "1/8"},
    "floor_gap": {INSET: "3/32", PASSAGE: "1/2"},
    "meeting_gap": {INSET: "3/32", OVERLAY: "1/8", PASSAGE: "1/8"},
    "door_thickness": {INSET: "3/4", OVERLAY: "3/4", PASSAGE: "1 3/8"},
    "bevel": {INSET: 0, PASSAGE: 3},
}
"""Usual sizes by the kind of door. Passage: Architectural Woodwork Standards, 1st edition, appendix
B, typical prefit, and 4.1.17.2 for the bevel; NAVEDTRA 14069 for the thickness. Cupboards: common
practice, no source; 3/32 is the most those standards allow between casework doors."""


def gap(name: str, label: str, default: str, help: str, quantity: str = "") -> Length:
    """Return an input for a small clearance, in inches; 0 is allowed."""
    return Length(name, label, default=default, least=0, most=6, help=help, quantity=quantity)


def opening_width(help: str = "Between the finished jambs.") -> Length:
    """Return the input `opening_width`, which was `width`."""
    return Length(
        "opening_width", "Opening width", help=help, quantity="opening width", was=("width",)
    )


def opening_height(help: str = "From the finished floor to the head.") -> Length:
    """Return the input `opening_height`, which was `height`."""
    return Length(
        "opening_height", "Opening height", help=help, quantity="opening height", was=("height",)
    )


def leaf_width(*was: str, **rest: "Any") -> Length:
    """Return the input `leaf_width`; `was` are the names it had."""
    return Length("leaf_width", "Leaf width", quantity="leaf width", was=was, **rest)


def leaf_height(*was: str, **rest: "Any") -> Length:
    """Return the input `leaf_height`; `was` are the names it had."""
    return Length("leaf_height", "Leaf height", quantity="leaf height", was=was, **rest)


def door_thickness(*was: str, **rest: "Any") -> Length:
    """Return the input `door_thickness`: of an interior door unless `rest` says otherwise."""
    given: dict[str, Any] = {} if "default_by" in rest else {"default": "1 3/8"}
    given.update(rest)
    return Length("door_thickness", "Door thickness", quantity="leaf thickness", was=was, **given)


def edge_bevel(**rest: "Any") -> Angle:
    """Return the input `bevel` of a leaf's edges, degrees."""
    return Angle("bevel", "Edge bevel", least=0, most=10, quantity="bevel", **rest)


def head_gap(**rest: "Any") -> Length:
    """Return the input `head_gap`."""
    given: dict[str, Any] = {"default": "1/8", "least": 0, "most": 6}
    given["help"] = "Between leaf and head."
    given.update(rest)
    return Length("head_gap", "Head gap", quantity="head gap", **given)


def floor_gap(**rest: "Any") -> Length:
    """Return the input `floor_gap`."""
    given: dict[str, Any] = {"default": "1/2", "least": 0, "most": 6}
    given["help"] = "Above the floor covering."
    given.update(rest)
    return Length("floor_gap", "Floor gap", quantity="floor gap", **given)


def hinge_gap(*was: str, **rest: "Any") -> Length:
    """Return the input `hinge_gap`, between leaf and jamb on the hinge side."""
    given: dict[str, Any] = {"least": 0, "most": 6}
    given.update(rest)
    return Length("hinge_gap", "Hinge gap", quantity="hinge gap", was=was, **given)


def kind_of_door() -> Choice:
    """Return the input `kind`: what the leaves close, and so the gaps they are hung with."""
    return Choice(
        "kind",
        "Kind",
        [
            (INSET, "cupboard, inset"),
            (OVERLAY, "cupboard, overlay"),
            (PASSAGE, "passage door"),
        ],
    )


def latch_height(**rest: "Any") -> Length:
    """Return the input `latch_height`, from the finished floor to the latch's center."""
    given: dict[str, Any] = {"most": 120}
    given.update(rest)
    return Length("latch_height", "Latch height", quantity="latch height", **given)


def jamb_thickness(**rest: "Any") -> Length:
    """Return the input `jamb_thickness`."""
    given: dict[str, Any] = {"default": "3/4"}
    given.update(rest)
    return Length("jamb_thickness", "Jamb thickness", quantity="jamb thickness", **given)


def leaves() -> Choice:
    """Return the input `leaves`: one, or a pair."""
    return Choice(
        "leaves", "Leaves", [("1", "one"), ("2", "a pair")], default="1", quantity="leaves"
    )


def gaps_by_kind() -> "list[Input]":
    """Return the inputs for all gaps of a leaf whose `kind` and `leaves` are asked before.

    A leaf that overlays its opening has no gaps in it.
    """
    found: list[Input] = []
    for name, label, help in (
        ("side_gap", "Side gap", "Between leaf and jamb, each side."),
        ("head_gap", "Head gap", "Above the leaf."),
        ("floor_gap", "Floor gap", "Below the leaf: over the floor, or the cupboard's bottom."),
    ):
        found.append(_gap_by_kind(name, label, help, ("kind", INSET, PASSAGE)))
    found.append(_gap_by_kind("meeting_gap", "Meeting gap", MEETING_HELP, ("leaves", "2")))
    return found


def _gap_by_kind(name: str, label: str, help: str, only_when: "tuple[object, ...]") -> Length:
    return Length(
        name,
        label,
        least=0,
        most=6,
        help=help,
        default_by=("kind", BY_KIND[name]),
        default_text="by the kind",
        only_when=only_when,
        quantity=label.lower(),
    )


def leaf_gaps() -> "list[Input]":
    """Return the inputs for all gaps around the leaves; `leaves` must be asked before."""
    meeting = Length(
        "meeting_gap",
        "Meeting gap",
        default="1/8",
        least=0,
        most=6,
        help=MEETING_HELP,
        only_when=("leaves", "2"),
        quantity="meeting gap",
    )
    return [
        gap("side_gap", "Side gap", "1/8", "Between leaf and jamb, each side.", "side gap"),
        head_gap(),
        floor_gap(),
        meeting,
    ]
