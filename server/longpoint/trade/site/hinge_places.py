"""Where the hinges of a door go: by offsets and equal spacing, or where old ones were."""

import math

from ..tool import Choice, Flag, Given, Length, Refusal, Rows, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..tool import Input

TALL_PER_HINGE = 30.0
_HAIR = 1e-9  # Inches: float noise must not refuse a hinge that just fits.

MATCH_INPUTS: "list[Input]" = [
    Flag("match", "Match old hinges", help="Carry the lines of an old jamb or door over."),
    Choice(
        "read_off",
        "Read off",
        [("jamb", "the jamb, from its head"), ("door", "the old door, from its top")],
        default="jamb",
        only_when=("match", True),
    ),
    Rows(
        "existing",
        "Old hinges",
        [Length("top_line", "Top line", least=0, help="Down to the top of the leaf.")],
        row="hinge",
        most=10,
        only_when=("match", True),
    ),
    Length(
        "old_head_gap",
        "Old gap at the head",
        optional=True,
        least=0,
        default_text="as the new one",
        help="Of the old door.",
        only_when=("read_off", "door"),
    ),
]


class Layout:
    """The hinges of one door, in inches; `tops` are their top lines from the door's top.

    Raises
    ------
    Refusal
        Hinges that lie off the door, overlap, or leave no mortise.
    """

    def __init__(self, given: Given, scale: Scale) -> None:
        self.door_height = given.number("door_height")
        self.thickness = given.number("door_thickness")
        self.hinge = given.number("hinge_height")
        self.leaf = given.number("leaf_thickness")
        self.gap = given.number("gap")
        self.head_gap = given.number("head_gap")
        self.backset = given.number("backset")
        self.width = self.thickness - self.backset
        depth = self.leaf - (self.gap - given.number("closed_gap")) / 2
        self.depth = max(0.0, depth)
        self.packing = max(0.0, -depth)
        if self.width <= 0:
            raise Refusal(
                "backset",
                f"A backset of {scale.length(self.backset)} leaves nothing of a door "
                f"{scale.length(self.thickness)} thick for the leaf: use less.",
            )
        self.matched = given.flag("match")
        self.tops = self._old(given, scale) if self.matched else self._spread(given, scale)
        self.count = len(self.tops)

    def _spread(self, given: Given, scale: Scale) -> "list[float]":
        count = given.maybe_count("hinges") or usual_count(self.door_height)
        on_frame = given.text("measured_on") == "frame"
        first = given.number("top_offset") - (self.head_gap if on_frame else 0.0)
        floor = given.number("floor_gap") if on_frame else 0.0
        last = self.door_height - given.number("bottom_offset") + floor - self.hinge
        if first < 0:
            raise Refusal(
                "top_offset",
                f"The top hinge would start {scale.length(-first)} above the door: "
                f"use at least {scale.length(self.head_gap)}.",
            )
        if last + self.hinge > self.door_height:
            raise Refusal(
                "bottom_offset",
                f"The bottom hinge would end {scale.length(last + self.hinge - self.door_height)} "
                f"below the door: use at least {scale.length(floor)}.",
            )
        apart = (last - first) / (count - 1)
        if apart < self.hinge:
            raise Refusal(
                "hinges",
                f"{count} hinges {scale.length(self.hinge)} high overlap on a door "
                f"{scale.length(self.door_height)} high: use fewer, or smaller offsets.",
            )
        return [first + number * apart for number in range(count)]

    def _old(self, given: Given, scale: Scale) -> "list[float]":
        """Return the old hinges' lines, carried to the new door over the gaps at the head."""
        shift = -self.head_gap
        if given.text("read_off") == "door":
            old = given.maybe("old_head_gap")
            shift += self.head_gap if old is None else old
        tops: list[float] = []
        for number, row in enumerate(given.rows("existing")):
            top = row.number("top_line") + shift
            message = self._misplaced(top, tops, scale)
            if message:
                raise Refusal(f"existing.{number}.top_line", message)
            tops.append(top)
        return tops

    def _misplaced(self, top: float, above: "list[float]", scale: Scale) -> str:
        """Return what is wrong with a top line, given those above it; "" if nothing."""
        if top < -_HAIR:
            return f"The hinge would start {scale.length(-top)} above the new door: read it again."
        over = top + self.hinge - self.door_height
        if over > _HAIR:
            return f"The hinge would end {scale.length(over)} below the new door: read it again."
        if above and top < above[-1] + self.hinge - _HAIR:
            return (
                f"The hinge overlaps the one above, which ends {scale.length(self.hinge)} below "
                "its top line: give them from the top down."
            )
        return ""


def usual_count(door_height: float) -> int:
    """Return the usual number of hinges: 2 to 60 inches, one more for each 30 or part of it.

    >>> [usual_count(height) for height in (24, 60, 61, 90, 91, 120)]
    [2, 2, 3, 3, 4, 4]
    """
    return max(2, math.ceil(door_height / TALL_PER_HINGE))


def hinge_names(count: int) -> "list[str]":
    """Return what the hinges are called, from the top.

    >>> hinge_names(3), hinge_names(4)
    (['Top', 'Middle', 'Bottom'], ['Top', 'Second', 'Third', 'Bottom'])
    """
    if count == 3:
        return ["Top", "Middle", "Bottom"]
    ordinals = ["Second", "Third", "Fourth", "Fifth", "Sixth", "Seventh", "Eighth", "Ninth"]
    return (["Top"] + ordinals[: count - 2] + ["Bottom"])[:count]
