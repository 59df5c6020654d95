"""The parts of a leaf to cut: numbered, finished and rough, and glued up where the stock is
too narrow."""

import math
from collections import namedtuple

from ..ends import End, square
from ..refusal import Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..answer import Answer
    from ..lengths import Scale
    from ..rows import Given
    from .leaf import Leaf

Part = namedtuple("Part", ("tag", "name", "kind", "thickness", "width", "length"))
"""One part: its number, its name, stile, rail or panel, and its finished size in inches."""

GlueUp = namedtuple("GlueUp", ("strips", "rip"))
"""How many strips, and how wide each is ripped in inches."""


class Stock:
    """What the parts are cut from: widest board and allowances, in inches.

    Raises
    ------
    Refusal
        A board too narrow to be glued at all.
    """

    def __init__(self, given: "Given", scale: "Scale") -> None:
        self.width = given.maybe("stock_width")
        self.loss = given.maybe("joint_loss") or 0.0
        self.extra = [
            given.number(name) for name in ("extra_thickness", "extra_width", "extra_length")
        ]
        self.sheet = given.text("panel_of") == "sheet"
        if self.width is not None and self.width <= 2 * self.loss:
            raise Refusal(
                "stock_width",
                f"A board {scale.length(self.width)} wide is used up by its two glued edges: "
                f"use boards wider than {scale.length(2 * self.loss)}.",
            )

    def is_sheet(self, part: Part) -> bool:
        """Tell whether a part is sawn from a sheet, to size and without glue."""
        return self.sheet and part.kind == "panel"

    def rough(self, part: Part) -> "tuple[float, float, float]":
        """Return rough thickness, width and length of a part, before it is ripped or glued."""
        if self.is_sheet(part):
            return part.thickness, part.width, part.length
        thick, wide, long = self.extra
        return part.thickness + thick, part.width + wide, part.length + long

    def glue_up(self, part: Part) -> "GlueUp | None":
        """Return the strips of a part that is wider than the stock, else None.

        The strips share the rough width and what jointing takes off every glued edge.
        """
        if self.width is None or self.is_sheet(part) or part.width <= self.width:
            return None
        rough = self.rough(part)[1]
        needed = (rough - 2 * self.loss) / (self.width - 2 * self.loss)
        strips = max(2, math.ceil(needed - 1e-9))
        return GlueUp(strips, (rough + 2 * (strips - 1) * self.loss) / strips)


def leaf_parts(leaf: "Leaf", number: int) -> "list[Part]":
    """Return the parts of one leaf in the order they go together; `number` is 0, or 1 for the
    right one of a pair."""
    names = ("Left stile", "Right stile")
    if leaf.leaves == 2:
        names = ("Meeting stile", "Hinge stile") if number else ("Hinge stile", "Meeting stile")
    sizes = [(name, "stile", leaf.stile, leaf.height) for name in names]
    sizes += [(rail.name, "rail", rail.high - rail.low, leaf.rail_length) for rail in leaf.rails]
    heights = leaf.panel_heights
    for place, height in enumerate(heights):
        name = "Panel" if len(heights) == 1 else f"Panel {place + 1}"
        sizes.append((name, "panel", leaf.panel_width, height))
    return [
        _part(leaf, number * len(sizes) + place + 1, number, size)
        for place, size in enumerate(sizes)
    ]


def _part(leaf: "Leaf", tag: int, number: int, size: "tuple[str, str, float, float]") -> Part:
    name, kind, width, length = size
    if leaf.leaves == 2:
        name += ", right leaf" if number else ", left leaf"
    thickness = leaf.panel_thickness if kind == "panel" else leaf.thickness
    return Part(str(tag), name, kind, thickness, width, length)


def add_pieces(answer: "Answer", leaf: "Leaf", stock: Stock) -> None:
    """Add every part of every leaf as a piece."""
    tenon = End("tenon", 0.0, 0.0, answer.scale.finer(32).length(leaf.tenon) + " long")
    for part in all_parts(leaf):
        end = tenon if part.kind == "rail" else square()
        answer.piece(
            part.tag,
            part.name,
            part.length,
            (end, end),
            width=part.width,
            thickness=part.thickness,
            stock=_stock_words(part, stock, answer.scale),
        )


def all_parts(leaf: "Leaf") -> "list[Part]":
    """Return the parts of every leaf."""
    return [part for number in range(leaf.leaves) for part in leaf_parts(leaf, number)]


def _stock_words(part: Part, stock: Stock, scale: "Scale") -> str:
    if stock.is_sheet(part):
        return "sheet"
    glued = stock.glue_up(part)
    if glued:
        return f"glue-up of {glued.strips} strips {scale.length(glued.rip)} wide"
    return "panel stock" if part.kind == "panel" else "frame stock"


def add_sizes(answer: "Answer", leaf: "Leaf", stock: Stock) -> None:
    """Add the tables of finished and rough sizes and of glue-ups, equal parts on one line."""
    scale = answer.scale
    sizes, glued = [], []
    for tags, part in _alike(all_parts(leaf)):
        finished = part.thickness, part.width, part.length
        rough = stock.rough(part)
        named = [tags, part.kind]
        sizes.append(named + [_size(finished, scale), _size(rough, scale)])
        strips = stock.glue_up(part)
        if strips:
            strip = (rough[0], strips.rip, rough[2])
            glued.append(named + [str(strips.strips), _size(strip, scale)])
    answer.table("Sizes", ["No.", "Part", "Finished", "Rough"], sizes)
    if glued:
        answer.table("Glue-ups, strips for each part", ["No.", "Part", "Strips", "Rip to"], glued)


def _alike(parts: "list[Part]") -> "list[tuple[str, Part]]":
    """Return parts of the same kind and size once, with the numbers of all of them."""
    groups: list[list[Part]] = []
    for part in parts:
        same = [group for group in groups if _is_alike(group[0], part)]
        if same:
            same[0].append(part)
        else:
            groups.append([part])
    return [(", ".join([part.tag for part in group]), group[0]) for group in groups]


def _is_alike(one: Part, other: Part) -> bool:
    sizes = ((one.thickness, other.thickness), (one.width, other.width), (one.length, other.length))
    return bool(one.kind == other.kind) and max([abs(a - b) for a, b in sizes]) < 1e-9


def _size(inches: "tuple[float, float, float]", scale: "Scale") -> str:
    return " × ".join([scale.length(side) for side in inches])
