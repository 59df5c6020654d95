"""The groove that a stack plows and the tenon that suits it: sizes, and what can't be built."""

import math

from ..tool import Given, Refusal, Scale
from .dado_stack import Stack, TooManySums, nearest_stacks

BEYOND = 1 / 16
STUB = 1 / 32


class Joint:
    """The groove and its tenon, in inches; `above` is the stack used, `below` the next narrower.

    Raises
    ------
    Refusal
        No stack cuts such a groove, or the stock is too thin for it.
    """

    def __init__(self, given: Given, scale: Scale) -> None:
        self.panel = given.number("panel_thickness")
        self.stock = given.number("stock_thickness")
        self.groove_depth = given.number("groove_depth")
        self.outer = given.number("outer_blade")
        self.chippers = _parts(given, "chippers")
        self.shims = _parts(given, "shims")
        self.per_gap = given.number("shims_per_gap")
        self.groove_width = self.panel + given.number("slack")
        self.above, self.below = self._stacks(scale)
        self.tenon_length = self._tenon_length(given, scale)
        self.tenon_thickness = self.stack - given.number("tenon_play")
        self.wall = (self.stock - self.stack) / 2
        self.shoulder_depth = (self.stock - self.tenon_thickness) / 2
        if self.wall <= 0:
            raise Refusal(
                "stock_thickness",
                f"A groove {scale.decimal(self.stack)} wide leaves no walls in stock "
                f"{scale.length(self.stock)} thick: use stock of at least "
                f"{scale.length(3 * self.stack)}, or rabbet the panel's edge to a tongue.",
            )
        if self.tenon_thickness <= 0:
            raise Refusal("tenon_play", "The play takes up the whole tenon: use less.")

    @property
    def stack(self) -> float:
        """The true width of the stack, and so of the groove."""
        return float(self.above.width)

    @property
    def passes(self) -> int:
        """How many passes side by side cut one cheek of the tenon."""
        return math.ceil(self.tenon_length / self.stack - 1e-9)

    def _tenon_length(self, given: Given, scale: Scale) -> float:
        asked = given.maybe("tenon_length")
        if asked is None and self.groove_depth <= STUB:
            raise Refusal(
                "groove_depth",
                f"A groove {scale.finer().length(self.groove_depth)} deep holds no tenon: plow "
                "it deeper, or give the tenon's length.",
            )
        return self.groove_depth - STUB if asked is None else asked

    def _stacks(self, scale: Scale) -> "tuple[Stack, Stack | None]":
        blades = 2 * self.outer
        if blades > self.groove_width + BEYOND:
            raise Refusal(
                "outer_blade",
                f"Two outer blades {scale.decimal(self.outer)} thick already cut "
                f"{scale.decimal(blades)}; this groove is {scale.decimal(self.groove_width)}. "
                "Plow it with one blade in two passes, turning the piece face for face.",
            )
        try:
            above, below = nearest_stacks(
                self.groove_width, self.outer, self.chippers, self.shims, self.per_gap
            )
        except TooManySums:
            raise Refusal(
                "shims",
                "These chippers and shims make too many different stacks to search: list only "
                "those worth trying.",
            )
        if above is None:
            raise Refusal("chippers", self._short_words(below, scale))
        return above, below

    def _short_words(self, widest: "Stack | None", scale: Scale) -> str:
        reach = widest.width if widest else 2 * self.outer
        return (
            f"The widest stack of these comes to {scale.decimal(reach)}, "
            f"{scale.decimal(self.groove_width - reach)} short of a groove "
            f"{scale.decimal(self.groove_width)} wide: add a chipper, or plow in two passes and "
            "move the fence between them."
        )


def _parts(given: Given, name: str) -> "list[tuple[float, int]]":
    return [(row.number("thickness"), row.count("count")) for row in given.rows(name)]
