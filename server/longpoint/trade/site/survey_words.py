"""What a survey says of an opening: its leaves, its errors, and where its numbers disagree."""

from ..geometry.quadrilateral import CORNER_NAMES, TAPE
from ..lengths import show_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..tool import Answer
    from .leaf_taper import Leaf
    from .opening_shape import Opening

INSTALLED = 1 / 8 / 96  # Inches to the inch that an installed frame may lean.
SIDES = ("Left", "Right")
DOUBTFUL = "; doubtful: measure the diagonals first"


def add_leaf(
    answer: "Answer",
    leaf: "Leaf",
    which: "tuple[int, int]",
    size: "tuple[float, float]",
    thickness: float,
    doubt: str,
) -> None:
    """Add leaf `which` of so many: its piece, its tapers, the gaps of a square leaf.

    `doubt` is said of every taper.
    """
    place, count = which
    name = SIDES[place] + " leaf" if count > 1 else "Leaf"
    after = "_" + SIDES[place].lower() if count > 1 else ""
    wide, high = leaf.blank
    if leaf.tapers:
        answer.length("blank_width" + after, wide, label=name + " before its taper, width")
        answer.length("blank_height" + after, high, label=name + " before its taper, height")
    answer.piece(str(place + 1), name, high, width=wide, thickness=thickness)
    tag = count + len(answer.marks)
    for taper in leaf.tapers:
        tag += 1
        corner, other = CORNER_NAMES[taper.corner], CORNER_NAMES[taper.other]
        words = f"{taper.edge} edge, off at the {corner} corner, nothing at the {other}{doubt}"
        answer.mark(str(tag), words, f"corner of the {name.lower()}'s blank", taper.off)
    length = answer.scale.length
    rows = [[where, length(gap)] for where, gap in leaf.gaps_left(size[0], size[1])]
    answer.table(name + ", if it stays square", ["Where", "Gap"], rows)


def add_errors(answer: "Answer", opening: "Opening") -> None:
    """Add how far the opening is out of square, plumb, level and plane."""
    first, second = opening.diagonals
    if first is not None and second is not None:
        off = abs(first - second)
        answer.length("out_of_square", off, label="Out of square, diagonals differ by")
    for name, slope, over in _slopes(opening):
        way = _way(name, slope)
        label = name + (", right on" if slope == 0 else f", {way} by")
        field = "out_of_level_" if name in ("Head", "Sill") else "out_of_plumb_"
        answer.length(field + name.split(" ")[0].lower(), abs(slope) * over, label=label)
    strings = opening.given.maybe("strings")
    if strings is not None:
        answer.length("out_of_plane", 2 * strings, label="Out of plane, corner to corner")


def _slopes(opening: "Opening") -> "list[tuple[str, float, float]]":
    """Return each side that a level was held to: its name, slope and length."""
    wide, high = opening.widths, opening.heights
    read = (
        ("Left side", opening.plumb[0], high[0]),
        ("Right side", opening.plumb[1], high[-1]),
        ("Head", opening.level[0], wide[0]),
        ("Sill", opening.level[1], wide[-1]),
    )
    return [(name, slope, over) for name, slope, over in read if slope is not None]


def _way(name: str, slope: float) -> str:
    if name in ("Head", "Sill"):
        return ("right" if slope > 0 else "left") + " end high"
    return "top leans " + ("right" if slope > 0 else "left")


def add_assumption(answer: "Answer", opening: "Opening", tapered: bool) -> None:
    """Warn of what is taken for granted, and of what hangs on it."""
    if not opening.assumed:
        return
    hangs = "every taper hangs on that" if tapered else "that the door stays square hangs on that"
    answer.caution(
        f"Without diagonals {opening.assumed}, and {hangs}: measure the diagonals before you cut."
    )


def add_contradictions(answer: "Answer", opening: "Opening") -> None:
    """Warn of readings that can't all be true."""
    length, off = answer.scale.finer().length, opening.disagree
    if opening.diagonals[0] is not None:
        answer.length("disagree", abs(off), label="Diagonals and sides disagree by", fine=True)
    if abs(off) > TAPE:
        answer.caution(
            f"The measurements contradict each other: no opening with these sides has these two "
            f"diagonals, together they are {length(abs(off))} too {'long' if off > 0 else 'short'}"
            ". Measure all six again before you order."
        )
    bubble = opening.bubble_disagrees()
    if bubble:
        name, angle, taped = bubble
        answer.caution(
            f"Level and tape contradict each other: by plumb and level the {name} corner is "
            f"{show_angle(angle)}, by the tape {show_angle(taped)}. Turn the level end for "
            "end, check the signs, and measure again."
        )


def add_notes(answer: "Answer", opening: "Opening", leaves: "list[Leaf]") -> None:
    """Say how the answer is meant, and what to do before the door is made."""
    if [leaf for leaf in leaves if leaf.tapers]:
        answer.note(
            "Make the blank to the sizes before the taper, hinge edge straight, and take off "
            "the marked amounts; then every gap is even. The table says which gaps a leaf of "
            "the tightest size leaves if it stays square: less than 0 and it does not go in."
        )
    else:
        answer.note("No corner is more than 1/16 off: the door stays square.")
    if opening.diagonals[0] is None:
        answer.note(
            "Without diagonals the corners are no surer than a level reads: measure both diagonals."
        )
    if len(opening.widths) + len(opening.heights) < 6:
        answer.note("A middle was not measured: a jamb bowed in there is tighter than its ends.")
    if [1 for _, slope, _ in _slopes(opening) if abs(slope) > INSTALLED + 1e-9]:
        answer.note(
            "Further out than the 1/8 in 96 that an installed frame may be: shim the hinge side "
            "plumb first if it can be moved, or the door swings by itself."
        )
    if opening.given.maybe("strings"):
        answer.note(
            "The jambs are twisted: the leaf meets the stop at one corner first. Move the stop "
            "or the foot of a jamb; planing the edges does not help."
        )
    answer.note("Sizes are those of the wider face, before the edges are beveled.")
