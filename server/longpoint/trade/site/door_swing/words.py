"""What a swing comes to, in sentences."""

from ...lengths import show_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .edges import HingeEdge, StrikeEdge

STEEP = 7.0


def verdict_words(
    edges: "list[StrikeEdge]", hinge: "HingeEdge", keep: float, scale: "Scale"
) -> "list[str]":
    """Return which edges to bevel and what was assumed, ever shorter."""
    swing, fine = edges[0].swing, scale.finer()
    gap, out = fine.length(swing.gap), fine.length(swing.pin_out)
    pin = f"pin {out} out, {fine.length(swing.pin_in)} in"
    strike = _strike(edges, fine)
    side = _hinge_side(hinge, fine)
    if side and not strike:
        return [
            side[0] + "; the strike edge stays square",
            side[1] + "; the strike edge stays square",
        ]
    if side:
        also = "; " + side[1][:1].lower() + side[1][1:]
        return [strike[0] + also, strike[-1] + also, _both(edges, hinge)]
    if not strike:
        tight = min([edge.swing.tight_gap() for edge in edges])
        strike = [f"No bevel needed: {fine.length(tight)} stays clear"]
    return [
        f"{strike[0]} (gap {gap}, {pin}, keeps {fine.length(keep)})",
        f"{strike[0]} (gap {gap}, {pin})",
        f"{strike[-1]} (gap {gap}, {pin})",
        f"{strike[-1]} (pin {out} out)",
        strike[-1],
    ]


def _strike(edges: "list[StrikeEdge]", fine: "Scale") -> "list[str]":
    """Return what the strike edge needs, or those of a pair; nothing where all stay square."""
    angles = [show_angle(edge.bevel) for edge in edges]
    off = [fine.length(edge.relief) for edge in edges]
    if not [edge for edge in edges if edge.is_planed]:
        return []
    if len(edges) == 1:
        words = f"Bevel the strike edge {angles[0]}"
    elif edges[0].relief == edges[1].relief:
        words = f"Bevel both strike edges {angles[0]}"
    elif not edges[1].is_planed:
        words = f"Bevel the first leaf's strike edge {angles[0]}"
    elif not edges[0].is_planed:
        return [f"Bevel the other leaf's strike edge {angles[1]}"]
    else:
        return [f"Bevel the strike edges: first leaf {angles[0]}, other {angles[1]}"]
    return [f"{words}, {off[0]} off the far face", words]


def _hinge_side(hinge: "HingeEdge", fine: "Scale") -> "list[str]":
    """Return what the hinge edge needs, in full and short; nothing where it may stay square."""
    if hinge.is_short:
        words = f"Bevel the hinge edge {show_angle(hinge.needed_bevel)}, or it binds"
        return [words, words]
    if not hinge.is_planed:
        return []
    words = f"Bevel the hinge edge {show_angle(hinge.bevel)}"
    return [words + f", {fine.length(hinge.relief)} off the far face", words]


def _both(edges: "list[StrikeEdge]", hinge: "HingeEdge") -> str:
    """Return the angles alone, for the strike edges and the hinge edge."""
    strike = " and ".join([show_angle(edge.bevel) for edge in edges])
    side = show_angle(hinge.needed_bevel if hinge.is_short else hinge.bevel)
    binds = ", or it binds" if hinge.is_short else ""
    return f"Bevel strike edge{'s'[: len(edges) - 1]} {strike}, hinge edge {side}{binds}"


def strike_notes(edge: "StrikeEdge", fine: "Scale") -> "list[str]":
    """Return how the strike edge is planed, and what else is to be known of it."""
    swing, tight = edge.swing, edge.swing.tight_gap()
    said = []
    if tight < 0:
        said.append(
            "With a square edge the door binds: the leaf's far corner would have to pass "
            f"{fine.length(-tight)} through."
        )
    if edge.is_planed:
        where = "the gauge line on the edge" if swing.land else "the corner at the knuckle face"
        said.append(
            f"Plane from {where} to the pencil line on the far face, the one toward the stop; "
            f"check with a bevel gauge set to {show_angle(90 - edge.bevel)}."
        )
    else:
        said.append("A square edge clears: a bevel is not needed, easing the corners will do.")
    if edge.bevel > STEEP:
        said.append(
            "That is steeper than lock faces are made: widen the gap, or bring the pin nearer to "
            "the leaf's face."
        )
    return said


def hinge_notes(hinge: "HingeEdge", fine: "Scale") -> "list[str]":
    """Return what happens on the hinge side."""
    said = []
    if hinge.square_gap < 0:
        said.append(
            f"The hinge jamb takes {fine.length(-hinge.square_gap)} more than the gap at the far "
            "face: with a square hinge edge the leaf binds there and springs open."
        )
    if hinge.is_planed or hinge.is_short:
        said.append("Bevel the hinge edge before its mortises are cut: they follow the edge.")
    if hinge.closes_in < 0:
        said.append(
            "The hinge jamb opens away from the leaf: the gap is widest at the stop, nothing binds."
        )
    return said


def pair_note(together: bool) -> str:
    """Return how the edges of a pair belong together."""
    if together:
        return "Both leaves open at once: each edge keeps to its own half of the gap."
    return (
        "Either leaf opens with the other closed. If the first always opens first, the other's "
        "edge may be beveled the other way, parallel to it, for an even gap all through."
    )
