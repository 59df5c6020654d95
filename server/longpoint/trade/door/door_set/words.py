"""What a door set says: its line, its notes, and what its kind calls for."""

from ...cautions import FIRE_DOOR
from ..gaps import INSET, OVERLAY, PASSAGE
from .leaf import ASTRAGAL, BUTTED, RABBETED, FramedLeaf

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...answer import Answer
    from ...lengths import Scale

WIDE_PANEL = 18.0
SHEET_PLAY = 1 / 16
KINDS = {INSET: "inset", OVERLAY: "overlay", PASSAGE: "passage"}
MEETS = {BUTTED: "butted", RABBETED: "rabbeted", ASTRAGAL: "astragal"}


def verdict(answer: "Answer", leaf: FramedLeaf) -> None:
    """Say the leaves with their kind and gaps, then the rails."""
    length = answer.scale.length
    size = _by([leaf.width, leaf.height], answer.scale)
    kind = KINDS[leaf.kind]
    if leaf.leaves == 1:
        name = f"{kind[0].upper()}{kind[1:]} leaf {size}"
    elif leaf.lap:
        wide = " and ".join([length(each) for each in leaf.widths])
        name = f"Rabbeted {kind} pair, {wide} x {length(leaf.height)}"
    else:
        name = f"Two {kind} leaves {size}, {MEETS[leaf.style]}"
    rails = "; rails " + length(leaf.rail_length)
    # Gaps and the groove's depth have usual values, and every part hangs on them.
    gaps = ", " + _gaps(leaf, answer.scale.finer())
    groove = "; grooves " + length(leaf.groove.depth)
    answer.verdict(*[name + words + groove for words in (gaps + rails, gaps, "")])


def _gaps(leaf: FramedLeaf, scale: "Scale") -> str:
    """Return the gaps, each but the sides' only where it differs from theirs."""
    sides, head, floor = leaf.place.sides, leaf.place.head, leaf.place.floor
    said = "overlap " + scale.length(-sides) if leaf.overlays else "gaps " + scale.length(sides)
    sign, names = (-1, ("top", "bottom")) if leaf.overlays else (1, ("head", "floor"))
    for name, gap in zip(names, (head, floor)):
        said += "" if gap == sides else f", {name} {scale.length(sign * gap)}"
    meets = leaf.leaves == 2 and (leaf.overlays or leaf.place.meeting != sides)
    return said + (f", meeting {scale.length(leaf.place.meeting)}" if meets else "")


def panels_words(leaf: FramedLeaf, scale: "Scale") -> str:
    """Return width and height of each panel, from the top."""
    wide, heights = scale.length(leaf.panel_width), leaf.panel_heights
    if len(heights) == 1:
        return f"{wide} x {scale.length(heights[0])}"
    return f"{wide} x " + ", ".join([scale.length(height) for height in heights])


def _by(sizes: "list[float]", scale: "Scale") -> str:
    return " x ".join([scale.length(size) for size in sizes])


def add_notes(answer: "Answer", leaf: FramedLeaf, sheet: bool, glued: bool) -> None:
    """Say how the parts go together, and what the kind and the panels call for."""
    answer.note(
        "Lay all stiles side by side and mark the rails' edges across them at once from the "
        "leaf's bottom; leave the stiles long at both ends until the leaf is glued."
    )
    _panel_notes(answer, leaf, sheet, glued)
    _joint_note(answer, leaf)
    _bevel_note(answer, leaf)
    if leaf.leaves == 2:
        _meeting_note(answer, leaf)
    if leaf.kind == PASSAGE:
        answer.caution(FIRE_DOOR)
    elif leaf.kind == OVERLAY:
        answer.note(
            "Overlay hinges are made for one overlap: check it against the hinge's sheet before "
            "you cut."
        )


def _panel_notes(answer: "Answer", leaf: FramedLeaf, sheet: bool, glued: bool) -> None:
    groove = leaf.groove
    if sheet and glued:
        answer.note("Glue the sheet panels into their grooves all around: that stiffens the leaf.")
    else:
        answer.note(
            "Glue the rails, never the panel: finish its edges first, and pin it at the middle of "
            "top and bottom if it is to stay centered."
        )
    if not sheet and leaf.panel_width > WIDE_PANEL:
        answer.note(
            f"A solid panel {answer.scale.length(leaf.panel_width)} wide moves much: over "
            "18 wide plow deeper, or divide the panel, and check the play against its movement."
        )
    if sheet and groove.play > SHEET_PLAY + 1e-9:
        answer.note(
            f"A sheet panel hardly moves: a play of {answer.scale.length(SHEET_PLAY)} or less is "
            "enough for it."
        )


def _joint_note(answer: "Answer", leaf: FramedLeaf) -> None:
    thick = answer.scale.finer().length(leaf.groove.width)
    answer.note(f"The tenons are {thick} thick, as the groove is wide.")
    deeper = leaf.groove.tenon - leaf.groove.depth
    if deeper > 1e-9:
        answer.note(
            f"The tenons are {answer.scale.finer().length(deeper)} longer than the groove is "
            "deep: mortise the stiles that much deeper, and haunch the outer tenons so that they "
            "fill the groove at the stile's end."
        )
    elif leaf.kind == PASSAGE:
        answer.note(
            "Stub tenons in the groove alone carry a light door; for a heavy or an outside one "
            "give longer tenons and mortise the stiles."
        )


def _bevel_note(answer: "Answer", leaf: FramedLeaf) -> None:
    if leaf.bevel_off > 0:
        which = "meeting stile" if leaf.leaves == 2 else "stile"
        off = answer.scale.finer().length(leaf.bevel_off)
        answer.note(
            f"Sizes are those of the wider face. Each {which} that gets the bevel is {off} wider "
            "in the rough, so that planing it takes nothing off that face."
        )


def _meeting_note(answer: "Answer", leaf: FramedLeaf) -> None:
    if leaf.style == RABBETED:
        answer.note(
            f"The right leaf laps {answer.scale.length(leaf.lap)} behind the left one: rabbet its "
            "meeting stile from the front and the left one's from the back, each half the "
            "thickness. "
            "Where the left leaf closes last, read left for right."
        )
    elif leaf.style == ASTRAGAL:
        answer.note("The astragal goes on the leaf that stays shut; it is as long as that leaf.")
    else:
        apart = answer.scale.finer().length(leaf.between)
        answer.note(
            f"The meeting stiles are square butts {apart} apart: for a lap or an astragal say so "
            "above."
        )
