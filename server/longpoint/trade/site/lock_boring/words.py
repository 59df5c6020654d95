"""What a lock's bores come to, in sentences."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .bores import Bores

THIN = 1 / 8
"""Inches of wood beside an edge bore that split easily: common practice, no source."""
NARROW = 1 / 2
"""Inches of stile left beyond a cross bore that are few: common practice, no source."""


def verdict_words(bores: "Bores", scale: "Scale") -> "list[str]":
    """Return where to bore and what was assumed, ever shorter."""
    length, sheet, place = scale.length, bores.sheet, bores.place
    # As fine as the figure: one hole has one number.
    near = scale.finer().length(bores.near)
    bore = f"Bore {length(sheet.cross)} at {near} in, {length(bores.up)} up the leaf"
    gap = f" (floor gap {length(place.floor_gap)})"
    edge, strike = f"edge bore {length(sheet.edge)}", f"strike {length(place.latch)} up"
    return [
        f"{bore}{gap}; {edge}; {strike}",
        f"{bore}; {edge}; {strike}",
        f"{bore}{gap}",
        f"{bore}; {strike}",
        bore,
    ]


def notes(bores: "Bores", scale: "Scale") -> "list[str]":
    """Return how the bores are marked and drilled."""
    length, fine, sheet = scale.length, scale.finer(), bores.sheet
    said = []
    if bores.taken:
        said.append(
            f"The edge is beveled: mark {fine.length(bores.near)} from the edge on the wider face, "
            f"{fine.length(bores.far)} on the narrower one."
        )
    if sheet.least is None and sheet.most is None:
        said.append("Which door thicknesses the lock takes stands on its sheet: not checked here.")
    said.append(
        "Drill the cross bore from both faces into one pilot hole, then the edge bore in the "
        f"middle of the edge, straight in until it meets the cross bore, {length(bores.reach)} "
        "deep or as the sheet says."
    )
    said.append(
        "Close the leaf and mark where the latch meets the jamb before you mortise the strike: its "
        "height is the latch's, the hung leaf has the last word."
    )
    if bores.leaf.stile is None:
        said.append("Keep the bores clear of a lock rail's tenon and of glass.")
    return said


def cautions(
    bores: "Bores", jamb: float, strike_depth: "float | None", scale: "Scale"
) -> "list[str]":
    """Return where little wood is left."""
    fine, said = scale.finer(), []
    if bores.edge_wood < THIN - 1e-9:
        said.append(
            f"Only {fine.length(bores.edge_wood)} is left on both sides of the edge bore: clamp "
            "the edge between blocks while you drill, it splits easily."
        )
    left = bores.stile_left
    if left is not None and left < NARROW - 1e-9:
        said.append(
            f"Only {fine.length(left)} of the stile is left beyond the bore: a latch of less "
            "backset keeps it stronger."
        )
    if strike_depth is not None and strike_depth >= jamb:
        said.append(
            f"The strike's bore of {scale.length(strike_depth)} goes through a jamb "
            f"{scale.length(jamb)} thick: mind shims and nails behind it."
        )
    return said
