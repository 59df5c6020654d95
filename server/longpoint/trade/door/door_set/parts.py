"""The parts of a set to cut: numbered, finished and rough, and glued up where the stock is
too narrow."""

from collections import namedtuple

from ...ends import End, square
from ...lumber.board_feet import board_feet
from ...lumber.strips import Strips
from .leaf import ASTRAGAL, FramedLeaf

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...answer import Answer
    from ...lengths import Scale

STILE, RAIL, PANEL = "stile", "rail", "panel"

Part = namedtuple("Part", ("tag", "name", "kind", "thickness", "width", "length", "beveled"))
"""One part: its number and name, STILE, RAIL or PANEL, its finished size in inches, and whether
an edge of it is planed to a bevel."""

Allowances = namedtuple("Allowances", ("thickness", "width", "length", "bevel"))
"""What rough sizes have over finished ones, inches; `bevel` is for a beveled stile's width."""


class RoughStock:
    """What the parts are cut from: the widest board, or None, and what is allowed; inches.

    `loss` is what jointing takes off each glued edge; `sheet` whether panels are sheet goods.
    """

    def __init__(self, widest: "float | None", loss: float, extra: Allowances, sheet: bool) -> None:
        self.widest, self.loss, self.extra, self.sheet = widest, loss, extra, sheet

    def is_sheet(self, part: Part) -> bool:
        """Tell whether a part is sawn from a sheet, to size and without glue."""
        return bool(self.sheet and part.kind == PANEL)

    def rough(self, part: Part) -> "tuple[float, float, float]":
        """Return rough thickness, width and length of a part, before it is ripped or glued."""
        if self.is_sheet(part):
            return part.thickness, part.width, part.length
        extra = self.extra
        wide = part.width + extra.width + (extra.bevel if part.beveled else 0.0)
        return part.thickness + extra.thickness, wide, part.length + extra.length

    def glue_up(self, part: Part) -> "Strips | None":
        """Return the strips of a part whose rough width no board has, else None.

        Every edge is jointed, the outer ones within what the rough width has to spare.
        """
        wide = self.rough(part)[1]
        if self.widest is None or self.is_sheet(part) or wide <= self.widest:
            return None
        return Strips(wide, self.widest, self.loss)

    def board_feet(self, part: Part) -> float:
        """Return the board feet of a part's rough size, of its strips where it is glued up."""
        if self.is_sheet(part):
            return 0.0
        thick, wide, long = self.rough(part)
        glued = self.glue_up(part)
        return board_feet(thick, glued.count * glued.rip if glued else wide, long)


def leaf_parts(leaf: FramedLeaf, number: int) -> "list[Part]":
    """Return the parts of one leaf in the order they go together; `number` is 0, or 1 for the
    right one of a pair."""
    names = ("Left stile", "Right stile")
    if leaf.leaves == 2:
        names = ("Meeting stile", "Hinge stile") if number else ("Hinge stile", "Meeting stile")
    sizes: list[tuple[str, str, float, float, bool]] = []
    for stile, name in enumerate(names):
        beveled = leaf.bevel_off > 0 and leaf.is_beveled(number, stile)
        sizes.append((name, STILE, leaf.stile_width(number, stile), leaf.height, beveled))
    for rail in leaf.rails:
        sizes.append((rail.name, RAIL, rail.high - rail.low, leaf.rail_length, False))
    heights = leaf.panel_heights
    for place, height in enumerate(heights):
        name = "Panel" if len(heights) == 1 else f"Panel {place + 1}"
        sizes.append((name, PANEL, leaf.panel_width, height, False))
    tag = number * len(sizes) + 1
    return [_part(leaf, tag + place, number, size) for place, size in enumerate(sizes)]


def _part(
    leaf: FramedLeaf, tag: int, number: int, size: "tuple[str, str, float, float, bool]"
) -> Part:
    name, kind, width, length, beveled = size
    if leaf.leaves == 2:
        name += ", right leaf" if number else ", left leaf"
    thickness = leaf.groove.panel if kind == PANEL else leaf.frame.thickness
    return Part(str(tag), name, kind, thickness, width, length, beveled)


def all_parts(leaf: FramedLeaf) -> "list[Part]":
    """Return the parts of every leaf."""
    return [part for number in range(leaf.leaves) for part in leaf_parts(leaf, number)]


def add_pieces(answer: "Answer", leaf: FramedLeaf, stock: RoughStock) -> None:
    """Add every part of every leaf as a piece, and the astragal where there is one."""
    long = answer.scale.finer(32).length(leaf.groove.tenon)
    tenon = End("tenon", 0.0, 0.0, long + " long")
    parts = all_parts(leaf)
    for part in parts:
        end = tenon if part.kind == RAIL else square()
        answer.piece(
            part.tag,
            part.name,
            part.length,
            (end, end),
            width=part.width,
            thickness=part.thickness,
            stock=_stock_words(part, stock, answer.scale),
            role="panel" if part.kind == PANEL else "frame",
        )
    if leaf.style == ASTRAGAL:
        tag = str(len(parts) + 1)
        answer.piece(tag, "Astragal", leaf.height, (square(), square()), role="molding")


def _stock_words(part: Part, stock: RoughStock, scale: "Scale") -> str:
    if stock.is_sheet(part):
        return "sheet"
    glued = stock.glue_up(part)
    if glued:
        return f"glue-up of {glued.count} strips {scale.length(glued.rip)} wide"
    return ""


def add_sizes(answer: "Answer", leaf: FramedLeaf, stock: RoughStock) -> None:
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
            glued.append(named + [str(strips.count), _size(strip, scale)])
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
    alike = bool(one.kind == other.kind and one.beveled == other.beveled)
    return alike and max([abs(a - b) for a, b in sizes]) < 1e-9


def _size(inches: "tuple[float, float, float]", scale: "Scale") -> str:
    return " x ".join([scale.length(side) for side in inches])
