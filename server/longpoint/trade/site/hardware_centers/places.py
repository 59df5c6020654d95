"""Where hardware sits on a leaf, and whether its stile or rail is wide enough for it.

Inches from two edges: x from the leaf's opening edge, y from its bottom or its top, whichever
the work is measured from. The other leaf of a pair has the same numbers, mirrored.
"""

from collections import namedtuple

from ...tool import Refusal, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    Point = tuple[float, float]

LeafSizes = namedtuple("LeafSizes", ("width", "height", "stile", "rail"))
"""A leaf and the widths of its stiles and rails, inches."""

Hardware = namedtuple("Hardware", ("where", "end", "along", "count", "at", "inset", "plate"))
"""What is put on, and where.

`where` is stile, rail or crossing; `end` bottom or top; `along` tells whether it runs along its
stile or rail; `at` is the height on a stile or the offset on a rail, `inset` the distance from the
outer edge, both None for the middle; `plate` a `Plate`.
"""

Plate = namedtuple("Plate", ("spacing", "wide", "long"))
"""Inches between its holes, 0 for one hole; how wide it is; how long, None for as its holes."""

Member = namedtuple("Member", ("name", "wide", "long", "upright"))
"""A stile or a rail: what it is called, its width and length, whether it stands upright."""

_HAIR = 1e-9  # Inches: float noise must not refuse what just goes on.


class Places:
    """Centers and holes of all the hardware on one leaf.

    `centers` and `holes` are (x, y); `run` is how long each piece of hardware is along its
    holes, `wide` how wide across them.

    Raises
    ------
    Refusal
        Stiles or rails that meet, and hardware that hangs over its stile or rail.
    """

    def __init__(self, leaf: LeafSizes, hardware: Hardware, scale: Scale) -> None:
        self.scale = scale
        self.width, self.height, self.stile, self.rail = leaf
        self._check_leaf()
        self.end = hardware.end
        self.where = hardware.where
        self.spacing, self.wide, _ = hardware.plate
        self.run = self._run(hardware.plate.long)
        self.upright: bool = hardware.along == (self.where != "rail")
        self.member = self._member()
        self.centers = self._centers(hardware)
        self._check_across()
        self._check_along()

    @property
    def holes(self) -> "list[Point]":
        """All holes, from the opening edge on, and from the end measured from."""
        half = self.spacing / 2
        shifts = (-half, half) if half else (0.0,)
        return [
            (x, y + shift) if self.upright else (x + shift, y)
            for x, y in self.centers
            for shift in shifts
        ]

    @property
    def across(self) -> float:
        """Where the center line runs, from the outer edge of its stile or rail."""
        x, y = self.centers[0]
        return x if self.member.upright else y

    @property
    def room(self) -> float:
        """The widest thing that goes on its stile or rail about that center line."""
        return 2 * min(self.across, float(self.member.wide) - self.across)

    @property
    def filled(self) -> float:
        """How much of the stile's or rail's width the hardware takes."""
        return self.wide if self.lengthwise else self.run

    @property
    def left(self) -> float:
        """The wood between the hardware and the nearer edge."""
        return (self.room - self.filled) / 2

    @property
    def lengthwise(self) -> bool:
        """Whether the hardware runs along its stile or rail."""
        return bool(self.upright == self.member.upright)

    def _check_leaf(self) -> None:
        for name, size, whole in (
            ("stile", self.stile, self.width),
            ("rail", self.rail, self.height),
        ):
            if 2 * size >= whole:
                raise Refusal(
                    name,
                    f"Two {name}s of {self.scale.length(size)} leave nothing between them in "
                    f"{self.scale.length(whole)}: use less than {self.scale.length(whole / 2)}.",
                )

    def _run(self, long: "float | None") -> float:
        """Return how long the hardware is along its holes."""
        if long is not None and long < self.spacing:
            raise Refusal(
                "plate_length",
                f"Holes {self.scale.length(self.spacing)} apart lie off a plate "
                f"{self.scale.length(long)} long: measure plate and holes again.",
            )
        return self.spacing if long is None else long

    def _member(self) -> Member:
        """Return what has to be wide enough: at a crossing, the one that it runs along."""
        if self.where == "stile" or (self.where == "crossing" and self.upright):
            return Member("stile", self.stile, self.height, True)
        return Member("rail", self.rail, self.width, False)

    def _centers(self, hardware: Hardware) -> "list[Point]":
        inset, at, count = hardware.inset, hardware.at, hardware.count
        if self.where == "stile":
            x = self.stile / 2 if inset is None else inset
            return [(x, self.height / 2 if at is None else at)]
        if self.where == "crossing":
            return [(self.stile / 2, self.rail / 2)]
        y = self.rail / 2 if inset is None else inset
        if at is not None and count > 1:
            raise Refusal(
                "offset",
                f"An offset places one: leave it out, and {count} are spread evenly.",
            )
        if at is not None:
            return [(at, y)]
        return [(self.width * (2 * index + 1) / (2 * count), y) for index in range(count)]

    def _check_across(self) -> None:
        """Refuse what is wider than its stile or rail, or hangs over an edge of it."""
        name, most = self.member.name, float(self.member.wide)
        size, room = self.scale.length(self.filled), self.scale.length(most)
        if self.filled > most + _HAIR and self.lengthwise:
            raise Refusal(
                "plate_width",
                f"A plate {size} wide is wider than its {name} of {room}: use {room} or less.",
            )
        if self.filled > most + _HAIR:
            raise Refusal(
                self._run_field(),
                f"{size} across the {name} is wider than its {room}: use {room} or less, or let "
                "it run along.",
            )
        half = self.filled / 2
        if self.across >= most or self.filled > self.room + _HAIR:
            raise Refusal(
                "inset",
                f"Centered {self.scale.length(self.across)} in, it hangs over the {name} of "
                f"{self.scale.length(most)}: {self._between(half, most - half)}.",
            )

    def _between(self, low: float, high: float) -> str:
        """Return what would do, as words."""
        least, most = self.scale.length(low), self.scale.length(high)
        return f"use {least}" if least == most else f"use {least} to {most}"

    def _check_along(self) -> None:
        """Refuse what runs off the end of its stile or rail, or into its neighbor."""
        long = self.run if self.lengthwise else self.wide
        whole = float(self.member.long)
        if long > whole + _HAIR:
            raise Refusal(
                self._run_field() if self.lengthwise else "plate_width",
                f"{self.scale.length(long)} is longer than the {self.member.name} of "
                f"{self.scale.length(whole)}: use less.",
            )
        apart = whole / len(self.centers)
        if len(self.centers) > 1 and long > apart + _HAIR:
            most = int(whole / long + _HAIR)
            raise Refusal(
                "count",
                f"{len(self.centers)} of {self.scale.length(long)} overlap on "
                f"{self.scale.length(whole)}: use {most} or fewer.",
            )
        x, y = self.centers[0]
        at = y if self.member.upright else x
        if at - long / 2 < -_HAIR or at + long / 2 > whole + _HAIR:
            raise self._off_the_end(at, long, whole)

    def _off_the_end(self, at: float, long: float, whole: float) -> Refusal:
        if self.where == "crossing":
            return Refusal(
                self._run_field(),
                f"{self.scale.length(long)} long it runs off the leaf at the crossing: put it on "
                f"the {self.member.name}, {self.scale.length(long / 2)} from the end or more.",
            )
        return Refusal(
            "height" if self.where == "stile" else "offset",
            f"Centered at {self.scale.length(at)} it runs off the leaf, "
            f"{self.scale.length(whole)} long: {self._between(long / 2, whole - long / 2)}.",
        )

    def _run_field(self) -> str:
        """Return the field that says how long the hardware is along its holes."""
        return "spacing" if self.run == self.spacing else "plate_length"
