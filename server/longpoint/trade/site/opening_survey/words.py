"""What a survey says of an opening: its leaves, its errors, and where its numbers disagree."""

from ...geometry.quadrilateral import CORNER_NAMES, TAPE
from ...lengths import show_angle
from .routes import FLOOR, LEAST, MIDDLE, STRIKE, TOP

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...answer import Answer
    from ...lengths import Scale
    from .routes import Left, SquareLeaf, TaperedLeaf
    from .shape import Opening

    Leaf = SquareLeaf | TaperedLeaf

_HAIR = 1e-6
INSTALLED = 1 / 8 / 96  # Inches to the inch that an installed frame may lean.
SIDES = ("Left", "Right")
EDGES = {TOP: "Top", STRIKE: "Strike", FLOOR: "Bottom"}
AGAINST = {TOP: "head", STRIKE: "strike edge", FLOOR: "bottom"}
DOUBTFUL = "; doubtful: measure the diagonals first"


def leaf_name(place: int, count: int) -> str:
    """Return what the leaf at a place is called: of a pair the left or the right one."""
    return SIDES[place] + " leaf" if count > 1 else "Leaf"


def where_words(left: "Left", leaves: int) -> str:
    """Return where a gap lies: ``head, left``."""
    edge = "meeting edges" if leaves > 1 and left.edge == STRIKE else AGAINST[left.edge]
    if left.end == MIDDLE:
        return edge + ", middle"
    if left.edge == STRIKE:
        return edge + (", top" if left.end < 2 else ", bottom")
    return edge + (", left" if left.end in (0, 3) else ", right")


def add_leaf(
    answer: "Answer", leaf: "Leaf", place: int, count: int, thickness: float, doubt: str
) -> None:
    """Add one leaf: its piece, and its tapers as marks; `doubt` is said of every taper."""
    name = leaf_name(place, count)
    wide, high = leaf.blank
    answer.piece(str(place + 1), name, high, width=wide, thickness=thickness)
    tag = count + len(answer.marks)
    for taper in leaf.tapers:
        tag += 1
        corner, other = CORNER_NAMES[taper.corner], CORNER_NAMES[taper.other]
        words = f"{EDGES[taper.edge]} edge, off at the {corner} corner, nothing at the {other}"
        answer.mark(str(tag), words + doubt, f"corner of the {name.lower()}'s blank", taper.off)


def add_routes(
    answer: "Answer",
    routes: "list[tuple[str, Leaf, list[Left]]]",
    name: str,
    leaves: int,
) -> None:
    """Add the table that sets both routes of one leaf side by side.

    Parameters
    ----------
    routes : list of (str, leaf, gaps)
        Heading, leaf, and the gaps it really leaves.
    """
    length = answer.scale.length
    blanks = [leaf.blank for _, leaf, _ in routes]
    rows = [["Width"] + [length(wide) for wide, _ in blanks]]
    rows.append(["Height"] + [length(high) for _, high in blanks])
    for edge in (TOP, STRIKE, FLOOR):
        off = [_off_words(leaf, edge, answer.scale) for _, leaf, _ in routes]
        if [words for words in off if words]:
            label = f"Off the {EDGES[edge].lower()} edge"
            rows.append([label] + [words or "nothing" for words in off])
    for at, left in enumerate(routes[0][2]):
        gaps = [length(each[at].gap) for _, _, each in routes]
        rows.append(["Gap at the " + where_words(left, leaves)] + gaps)
    answer.table(name, ["Route"] + [heading for heading, _, _ in routes], rows)


def _off_words(leaf: "Leaf", edge: str, scale: "Scale") -> str:
    return ", ".join(
        [
            f"{scale.length(taper.off)} at the {CORNER_NAMES[taper.corner]}"
            for taper in leaf.tapers
            if taper.edge == edge
        ]
    )


def worst_of(gaps: "list[Left]") -> "Left":
    """Return the gap that is most over what was asked for, the first of equals.

    A hair of arithmetic makes no gap larger than another.
    """
    worst = gaps[0]
    for left in gaps[1:]:
        if left.gap - left.asked > worst.gap - worst.asked + _HAIR:
            worst = left
    return worst


def verdict(answer: "Answer", opening: "Opening", leaves: "list[Leaf]", gaps: "list[Left]") -> None:
    """Say the leaf and what is still wrong with it, or that the numbers can't be true."""
    contradiction = _contradiction(opening, answer.scale)
    if contradiction:
        answer.verdict(contradiction)
        return
    tapers = [taper for leaf in leaves for taper in leaf.tapers]
    size = " x ".join([answer.scale.length(side) for side in largest(leaves)])
    if len(leaves) == 1:
        name = ("Blank " if tapers else "Leaf ") + size + ", hinged " + leaves[0].bay.hinge
    else:
        name = ("Blanks up to " if tapers else "Two leaves, each ") + size
    asked = _asked_words(leaves, answer.scale)
    if opening.assumed:
        what, state = opening.assumed
        answer.verdict(
            f"{name}, {asked}, if {what} is {state}: measure the diagonals first",
            f"{name}, {asked}: measure the diagonals first",
            f"{name}, {asked}: measure diagonals",
            f"{name}: measure the diagonals first",
        )
    elif tapers:
        offs = ", ".join([_taper_words(leaf, len(leaves), answer.scale) for leaf in leaves])
        most = answer.scale.length(max([taper.off for taper in tapers]))
        many = f"{len(tapers)} tapers, the largest {most}" if len(tapers) > 1 else "taper " + most
        answer.verdict(
            f"{name}; taper off: {offs}; {asked}", f"{name}; {many}; {asked}", f"{name}; {asked}"
        )
    else:
        _square_verdict(answer, f"{name}, square, {asked}", worst_of(gaps), len(leaves))


def _asked_words(leaves: "list[Leaf]", scale: "Scale") -> str:
    """Return the gaps asked for: the usual ones are assumed, and the leaf hangs on them."""
    gaps = leaves[0].gaps
    each = [gaps.hinge, gaps.head] + ([2 * gaps.far] if len(leaves) > 1 else [gaps.far])
    alike = [each[0]] if max(each) - min(each) < 1e-9 else each
    said = ", ".join([scale.number(gap) for gap in alike])
    if len(alike) == 1 and abs(gaps.floor - alike[0]) < 1e-9:
        return f"gaps {said} all around"
    return f"gaps {said}, floor {scale.given(gaps.floor)}"


def _taper_words(leaf: "Leaf", leaves: int, scale: "Scale") -> str:
    """Return what comes off each edge of a leaf; of a pair with the side it hangs on."""
    side = leaf.bay.hinge + " " if leaves > 1 else ""
    offs = [f"{side}{EDGES[taper.edge].lower()} {scale.length(taper.off)}" for taper in leaf.tapers]
    return ", ".join(offs) or f"{side}none"


def _square_verdict(answer: "Answer", name: str, worst: "Left", leaves: int) -> None:
    if worst.gap - worst.asked <= LEAST + 1e-9:
        answer.verdict(f"{name}: true within {answer.scale.length(LEAST)}", name)
        return
    # "Up to 13/16 shy" would be read as short of it.
    gap = answer.scale.bare(worst.gap)
    where = where_words(worst, leaves)
    really = f"{name}, really up to {gap}"
    answer.verdict(f"{really} at the {where}", really, f"{name}: up to {gap}")


def largest(leaves: "list[Leaf]") -> "tuple[float, float]":
    """Return the width and the height of the largest blank."""
    return max([leaf.blank[0] for leaf in leaves]), max([leaf.blank[1] for leaf in leaves])


def _contradiction(opening: "Opening", scale: "Scale") -> str:
    corner, sides = opening.corner_off(), opening.sides_off()
    if corner:
        return f"Measure again: level and tape contradict each other at the {corner[0]} corner"
    if sides:
        between = "left and right" if sides[0] else "head and sill"
        return f"Measure again: level and tape contradict each other about {between}"
    if abs(opening.disagree) > TAPE:
        off = scale.length(abs(opening.disagree))
        return f"Measure again: sides and diagonals contradict each other by {off}"
    return ""


def add_errors(answer: "Answer", opening: "Opening", strings: "float | None") -> None:
    """Add how far the opening is out of square, plumb, level and plane."""
    first, second = opening.diagonals
    if first is not None and second is not None:
        answer.length("out_of_square", abs(first - second))
        answer.length("disagree", abs(opening.disagree), fine=True)
    for name, label, slope, over in _slopes(opening):
        way = _way(name, slope)
        answer.length(name, abs(slope) * over, label=label + (", " + way if way else ", right on"))
    if strings is not None:
        answer.length("out_of_plane", 2 * strings)


def _slopes(opening: "Opening") -> "list[tuple[str, str, float, float]]":
    """Return each side that a level was held to: figure, label, slope and length."""
    wide, high = opening.widths, opening.heights
    read = (
        ("out_of_plumb_left", "Left side", opening.plumb[0], high[0]),
        ("out_of_plumb_right", "Right side", opening.plumb[1], high[-1]),
        ("out_of_level_head", "Head", opening.level[0], wide[0]),
        ("out_of_level_sill", "Sill", opening.level[1], wide[-1]),
    )
    return [each for each in read if each[2] is not None]


def _way(name: str, slope: float) -> str:
    if slope == 0:
        return ""
    if name in ("out_of_level_head", "out_of_level_sill"):
        return ("right" if slope > 0 else "left") + " end high by"
    return "top leans " + ("right" if slope > 0 else "left") + " by"


def add_warnings(answer: "Answer", opening: "Opening", tapered: bool) -> None:
    """Warn of what is taken for granted, of what hangs on it, and of what can't be true."""
    if opening.assumed:
        what, state = opening.assumed
        hangs = "every taper hangs on that" if tapered else "the square leaf hangs on that"
        answer.caution(
            f"Without diagonals {what} is taken as {state}, and {hangs}: measure the diagonals "
            "before you cut."
        )
    length, off = answer.scale.finer().length, opening.disagree
    if abs(off) > TAPE:
        answer.caution(
            "The measurements contradict each other: no opening with these sides has these two "
            f"diagonals, together they are {length(abs(off))} too {'long' if off > 0 else 'short'}"
            ". Measure all six again before you order."
        )
    _warn_of_levels(answer, opening)


def _warn_of_levels(answer: "Answer", opening: "Opening") -> None:
    corner, sides = opening.corner_off(), opening.sides_off()
    again = "Turn the level end for end, check the signs, and measure again."
    if corner:
        name, angle, taped = corner
        answer.caution(
            f"Level and tape contradict each other: by plumb and level the {name} corner is "
            f"{show_angle(angle)}, by the tape {show_angle(taped)}. " + again
        )
    elif sides:
        upright, leveled, taped = sides
        ends = ("the top {} wider", "the top {} narrower")
        if not upright:
            ends = ("the left {} higher", "the right {} higher")
        said = [ends[off < 0].format(answer.scale.length(abs(off))) for off in (leveled, taped)]
        answer.caution(
            f"Level and tape contradict each other: by the level {said[0]}, by the tape {said[1]}. "
            + again
        )


def add_notes(answer: "Answer", opening: "Opening", leaves: "list[Leaf]", twisted: bool) -> None:
    """Say how the answer is meant, and what to do before the leaf is made."""
    if [leaf for leaf in leaves if leaf.tapers]:
        answer.note(
            "Make the blank square, hinge edge straight, and plane off the marked amounts. Hang "
            "it by its hinge edge along the hinge side."
        )
    answer.note("Opening width and height are those of the square opening this leaf is made for.")
    if opening.diagonals[0] is None:
        answer.note(
            "Without diagonals the corners are no surer than a level reads: measure both diagonals."
        )
    if len(opening.widths) + len(opening.heights) < 6:
        answer.note("A middle was not measured: a jamb bowed in there is tighter than its ends.")
    if [1 for _, _, slope, _ in _slopes(opening) if abs(slope) > INSTALLED + 1e-9]:
        answer.note(
            "Further out than the 1/8 in 96 that an installed frame may be: shim the hinge side "
            "plumb first if it can be moved, or the leaf swings by itself."
        )
    if twisted:
        answer.note(
            "The jambs are twisted: the leaf meets the stop at one corner first. Move the stop "
            "or the foot of a jamb; planing the edges does not help."
        )
    answer.note("Sizes are those of the wider face, before the edges are beveled.")
