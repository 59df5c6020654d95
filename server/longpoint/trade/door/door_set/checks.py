"""What keeps a leaf from being built, each in its own sentence on the field that has to change."""

from ...refusal import Refusal
from .leaf import FramedLeaf, Rail

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale


def check_leaf(leaf: FramedLeaf, rail_fields: "list[str]", scale: "Scale") -> None:
    """Refuse a leaf that can't be built.

    Parameters
    ----------
    rail_fields : list of str
        Fields of the outer rails that were given, the bottom one first.

    Raises
    ------
    Refusal
    """
    _check_opening(leaf, scale)
    _check_frame(leaf, rail_fields, scale)
    _check_mid_rails(leaf, scale)
    _check_groove(leaf, scale)


def _check_opening(leaf: FramedLeaf, scale: "Scale") -> None:
    """Refuse gaps that leave no leaf in the opening."""
    place = leaf.place
    if leaf.width <= 0:
        across = 2 * place.sides + leaf.between
        field = "meeting_gap" if leaf.between > 2 * place.sides else "side_gap"
        raise Refusal(field, _gap_words(across, place.width, "wide", scale))
    if leaf.height <= 0:
        field = "head_gap" if place.head > place.floor else "floor_gap"
        raise Refusal(field, _gap_words(place.head + place.floor, place.height, "high", scale))


def _gap_words(gaps: float, opening: float, way: str, scale: "Scale") -> str:
    return (
        f"Gaps of {scale.length(gaps)} in all leave no leaf in an opening "
        f"{scale.length(opening)} {way}: use smaller gaps."
    )


def _check_frame(leaf: FramedLeaf, rail_fields: "list[str]", scale: "Scale") -> None:
    """Refuse stiles or outer rails that leave no room for a panel."""
    if leaf.sight_width <= 0:
        raise Refusal(
            "stile",
            f"Two stiles {scale.length(leaf.frame.stile)} wide leave no panel in a leaf "
            f"{scale.length(leaf.width)} wide: use less than {scale.length(leaf.width / 2)}.",
        )
    rails = leaf.frame.top_rail + leaf.frame.bottom_rail
    if rails >= leaf.height:
        raise Refusal(
            rail_fields[0] if rail_fields else "stile",
            f"Top and bottom rail take {scale.length(rails)} of a leaf "
            f"{scale.length(leaf.height)} high and leave no panel: use narrower rails.",
        )
    if leaf.lap >= leaf.frame.stile:
        raise Refusal(
            "lap",
            f"A lap of {scale.length(leaf.lap)} takes all of a stile "
            f"{scale.length(leaf.frame.stile)} wide: use less.",
        )


def _check_mid_rails(leaf: FramedLeaf, scale: "Scale") -> None:
    """Refuse mid rails that run into other rails, or leave no panel between."""
    floor, ceiling = leaf.frame.bottom_rail, leaf.height - leaf.frame.top_rail
    for rail in leaf.frame.mid_rails:
        if rail.high - rail.low >= ceiling - floor:
            raise Refusal(
                f"mid_rails.{rail.row}.width",
                f"A mid rail {scale.length(rail.high - rail.low)} wide fills the "
                f"{scale.length(ceiling - floor)} between bottom and top rail: use less.",
            )
        if rail.low <= floor:
            where = f"below the bottom rail's upper edge at {scale.length(floor)}"
            raise _off(rail, rail.low, where, "higher", scale)
        if rail.high >= ceiling:
            where = f"above the top rail's lower edge at {scale.length(ceiling)}"
            raise _off(rail, rail.high, where, "lower", scale)
    _check_pairs(leaf, scale)
    _check_grooves_meet(leaf, scale)


def _off(rail: Rail, edge: float, where: str, way: str, scale: "Scale") -> Refusal:
    center, width = (rail.low + rail.high) / 2, rail.high - rail.low
    return Refusal(
        f"mid_rails.{rail.row}.center",
        f"A mid rail {scale.length(width)} wide centered {scale.length(center)} up has an "
        f"edge at {scale.length(edge)}, on or {where}, and leaves no panel there: center it "
        f"{way}, or make it narrower.",
    )


def _check_pairs(leaf: FramedLeaf, scale: "Scale") -> None:
    for upper, lower in zip(leaf.frame.mid_rails, leaf.frame.mid_rails[1:]):
        if upper.low > lower.high:
            continue
        between = (upper.low + upper.high - lower.low - lower.high) / 2
        apart = (upper.high - upper.low + lower.high - lower.low) / 2
        first, last = min(upper.row, lower.row), max(upper.row, lower.row)
        raise Refusal(
            f"mid_rails.{last}.center",
            f"Mid rails {first + 1} and {last + 1} are centered {scale.length(between)} apart "
            f"and leave no panel between them: center them more than {scale.length(apart)} apart.",
        )


def _check_grooves_meet(leaf: FramedLeaf, scale: "Scale") -> None:
    for rail in leaf.frame.mid_rails:
        width = rail.high - rail.low
        if width <= 2 * leaf.groove.depth:
            raise Refusal(
                f"mid_rails.{rail.row}.width",
                f"A mid rail {scale.length(width)} wide is cut in two by grooves "
                f"{scale.length(leaf.groove.depth)} deep in both edges: make it wider than "
                f"{scale.length(2 * leaf.groove.depth)}.",
            )


def _check_groove(leaf: FramedLeaf, scale: "Scale") -> None:
    """Refuse a groove, tenon, play or panel that the frame can't hold."""
    frame, groove = leaf.frame, leaf.groove
    narrow = min(frame.stile, frame.top_rail, frame.bottom_rail)
    if groove.depth >= narrow:
        raise Refusal(
            "groove_depth",
            f"A groove {scale.length(groove.depth)} deep cuts through a part "
            f"{scale.length(narrow)} wide: plow less.",
        )
    if groove.tenon > frame.stile:
        raise Refusal(
            "tenon_length",
            f"A tenon {scale.length(groove.tenon)} long comes out through a stile "
            f"{scale.length(frame.stile)} wide: at most a through tenon of that width.",
        )
    _check_panel(leaf, scale)


def _check_panel(leaf: FramedLeaf, scale: "Scale") -> None:
    groove, thick = leaf.groove, leaf.frame.thickness
    if groove.play >= groove.depth:
        raise Refusal(
            "panel_play",
            f"A play of {scale.length(groove.play)} per side takes the panel out of a groove "
            f"{scale.length(groove.depth)} deep: use less, or plow deeper.",
        )
    if groove.panel >= thick:
        raise Refusal(
            "panel_thickness",
            f"A groove for {scale.length(groove.panel)} leaves no walls in stock "
            f"{scale.length(thick)} thick: give the thickness of the panel's tongue, "
            "or use thicker stock.",
        )
    if groove.width >= thick or groove.width < groove.panel:
        fine = scale.finer()
        raise Refusal(
            "groove_width",
            f"A groove {fine.length(groove.width)} wide is too narrow for a panel "
            f"{fine.length(groove.panel)} thick, or too wide for stock "
            f"{fine.length(thick)} thick: give one between the two.",
        )
