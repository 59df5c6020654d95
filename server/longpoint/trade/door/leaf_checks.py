"""What keeps a leaf from being built, each in its own sentence on the field that has to change."""

from ..refusal import Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale
    from ..rows import Given
    from .leaf import Leaf, Rail


def check_opening(leaf: "Leaf", scale: "Scale") -> None:
    """Refuse gaps that leave no leaf in the opening."""
    wide, high = leaf.opening
    if leaf.width <= 0:
        across = 2 * leaf.side_gap + leaf.meeting_gap
        field = "meeting_gap" if leaf.meeting_gap > 2 * leaf.side_gap else "side_gap"
        raise Refusal(field, _gap_words(across, wide, "wide", scale))
    if leaf.height <= 0:
        field = "head_gap" if leaf.head_gap > leaf.floor_gap else "floor_gap"
        raise Refusal(field, _gap_words(leaf.head_gap + leaf.floor_gap, high, "high", scale))


def _gap_words(gaps: float, opening: float, way: str, scale: "Scale") -> str:
    return (
        f"Gaps of {scale.length(gaps)} in all leave no leaf in an opening "
        f"{scale.length(opening)} {way}: use smaller gaps."
    )


def check_frame(leaf: "Leaf", given: "Given", scale: "Scale") -> None:
    """Refuse stiles or outer rails that leave no room for a panel."""
    if leaf.sight_width <= 0:
        raise Refusal(
            "stile",
            f"Two stiles {scale.length(leaf.stile)} wide leave no panel in a leaf "
            f"{scale.length(leaf.width)} wide: use less than {scale.length(leaf.width / 2)}.",
        )
    rails = leaf.top_rail + leaf.bottom_rail
    if rails >= leaf.height:
        named = [name for name in ("bottom_rail", "top_rail") if given.maybe(name) is not None]
        raise Refusal(
            named[0] if named else "stile",
            f"Top and bottom rail take {scale.length(rails)} of a leaf "
            f"{scale.length(leaf.height)} high and leave no panel: use narrower rails.",
        )


def check_mid_rails(leaf: "Leaf", scale: "Scale") -> None:
    """Refuse mid rails that run into other rails, or leave no panel between."""
    floor, ceiling = leaf.bottom_rail, leaf.height - leaf.top_rail
    for rail in leaf.mid_rails:
        if rail.high - rail.low >= ceiling - floor:
            raise Refusal(
                f"mid_rails.{rail.row}.width",
                f"A mid rail {scale.length(rail.high - rail.low)} wide fills the "
                f"{scale.length(ceiling - floor)} between bottom and top rail: use less.",
            )
        if rail.low <= floor:
            raise _off(rail, f"below the bottom rail's upper edge at {scale.length(floor)}", scale)
        if rail.high >= ceiling:
            raise _off(rail, f"above the top rail's lower edge at {scale.length(ceiling)}", scale)
    _check_pairs(leaf, scale)
    _check_grooves_meet(leaf, scale)


def _off(rail: "Rail", where: str, scale: "Scale") -> Refusal:
    center, half = (rail.low + rail.high) / 2, (rail.high - rail.low) / 2
    below = where.startswith("below")
    edge = rail.low if below else rail.high
    return Refusal(
        f"mid_rails.{rail.row}.center",
        f"A mid rail {scale.length(2 * half)} wide centered {scale.length(center)} up has an "
        f"edge at {scale.length(edge)}, on or {where}, and leaves no panel there: center it "
        f"{'higher' if below else 'lower'}, or make it narrower.",
    )


def _check_pairs(leaf: "Leaf", scale: "Scale") -> None:
    for upper, lower in zip(leaf.mid_rails, leaf.mid_rails[1:]):
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


def _check_grooves_meet(leaf: "Leaf", scale: "Scale") -> None:
    for rail in leaf.mid_rails:
        width = rail.high - rail.low
        if width <= 2 * leaf.groove:
            raise Refusal(
                f"mid_rails.{rail.row}.width",
                f"A mid rail {scale.length(width)} wide is cut in two by grooves "
                f"{scale.length(leaf.groove)} deep in both edges: make it wider than "
                f"{scale.length(2 * leaf.groove)}.",
            )


def check_groove(leaf: "Leaf", scale: "Scale") -> None:
    """Refuse a groove, tenon, play or panel that the frame can't hold."""
    narrow = min(leaf.stile, leaf.top_rail, leaf.bottom_rail)
    if leaf.groove >= narrow:
        raise Refusal(
            "groove_depth",
            f"A groove {scale.length(leaf.groove)} deep cuts through a part "
            f"{scale.length(narrow)} wide: plow less.",
        )
    if leaf.tenon > leaf.stile:
        raise Refusal(
            "tenon_length",
            f"A tenon {scale.length(leaf.tenon)} long comes out through a stile "
            f"{scale.length(leaf.stile)} wide: at most a through tenon of that width.",
        )
    _check_panel(leaf, scale)


def _check_panel(leaf: "Leaf", scale: "Scale") -> None:
    if leaf.play >= leaf.groove:
        raise Refusal(
            "panel_play",
            f"A play of {scale.length(leaf.play)} per side takes the panel out of a groove "
            f"{scale.length(leaf.groove)} deep: use less, or plow deeper.",
        )
    if leaf.panel_thickness >= leaf.thickness:
        raise Refusal(
            "panel_thickness",
            f"A groove for {scale.length(leaf.panel_thickness)} leaves no walls in stock "
            f"{scale.length(leaf.thickness)} thick: give the thickness of the panel's tongue, "
            "or use thicker stock.",
        )
