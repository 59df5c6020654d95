"""The views of a lock's bores: close, their heights, and a template to fold over the edge."""

from ...tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .bores import Bores

BESIDE = 4.0  # Inches of the leaf drawn beyond the cross bore.
AROUND = 2.5  # Inches of it drawn around the bore where it is seen close.
PLATE = 0.25  # Inches of the strike plate drawn; it decides nothing.
ABOVE = 8.0  # Inches of it drawn above the latch where its height is not known.
GAP = 0.125  # Inches drawn between leaf and jamb.
JAMB = 3.0
POINT = 3 / 64  # Radius of a center on the template: a center punch's dot.
MARGIN = 1.0  # Inches of the template beyond the cross bore.


def close_view(bores: "Bores", plate: "float | None", scale: Scale) -> Drawing:
    """Return both bores and the strike from the front, the wider face of the leaf on the left."""
    sheet, fine = bores.sheet, scale.finer()
    half = max(sheet.cross, plate or 0.0) / 2 + AROUND
    left = -bores.near - sheet.cross / 2 - AROUND
    view = Drawing(
        "Bores and strike from the front",
        f"A bore of {fine.length(sheet.cross)}, its center {fine.length(bores.near)} from the edge "
        f"and {scale.length(bores.up)} up the leaf; the strike {scale.length(bores.place.latch)} "
        "above the floor.",
    )
    view.box("panel", left, -half, 0, half)
    view.box("stock", GAP, -half, GAP + JAMB, half)
    view.box("clearance", -bores.near, -sheet.edge / 2, 0, sheet.edge / 2)
    if plate is not None:
        view.box("metal", GAP, -plate / 2, GAP + PLATE, plate / 2)
    view.circle("cut", (-bores.near, 0), sheet.cross / 2)
    view.line("mark", (left, 0), (GAP + JAMB, 0))
    view.dimension((-bores.near, -half), (0, -half), fine.length(bores.near))
    across = (-bores.near - sheet.cross / 2, half), (-bores.near + sheet.cross / 2, half)
    view.dimension(across[0], across[1], fine.length(sheet.cross), -1)
    # Above the bore: on a small screen the words are wider than the wood beside it.
    over = -(sheet.cross / 2 + half) / 2
    view.text((left + 0.1, over), scale.length(bores.up) + " up", anchor="start")
    view.text((GAP + JAMB - 0.1, over), scale.length(bores.place.latch) + " up", anchor="end")
    return view


def height_view(bores: "Bores", scale: Scale) -> Drawing:
    """Return the strike side of the leaf in its jamb, over the finished floor."""
    sheet, place = bores.sheet, bores.place
    high = bores.leaf.height or bores.up + ABOVE
    bottom, level = -place.floor_gap, -place.latch
    top, left = bottom - high, -bores.near - sheet.cross / 2 - BESIDE
    view = Drawing(
        "Heights on leaf and jamb",
        f"The center {scale.length(bores.up)} up the leaf, {scale.length(place.latch)} above the "
        "finished floor.",
    )
    view.box("panel", left, top, 0, bottom)
    view.box("stock", GAP, top - place.head_gap, GAP + JAMB, 0)
    view.line("wall", (left, 0), (GAP + JAMB, 0))
    view.circle("cut", (-bores.near, level), sheet.cross / 2)
    view.line("mark", (left, level), (GAP + JAMB, level))
    view.dimension((left, bottom), (left, level), scale.length(bores.up))
    view.dimension((GAP + JAMB, level), (GAP + JAMB, 0), scale.length(place.latch))
    if bores.down is not None:
        view.dimension((left, level), (left, top), scale.length(bores.down))
    return view


def template(bores: "Bores", scale: Scale) -> Drawing:
    """Return the wider face and the edge unfolded at full size, the fold between them.

    The edge lies to the left of the fold, the face to its right; turned end for end the paper
    serves a leaf of the other hand.
    """
    sheet, thick = bores.sheet, bores.leaf.thickness
    half = sheet.cross / 2 + MARGIN
    right = bores.near + half
    fine = scale.finer()
    view = Drawing(
        "Template to fold over the edge",
        f"Fold on the line at the wider face; the middle line at the latch's height. Cross bore "
        f"{fine.length(bores.near)} from the fold, edge bore {fine.length(thick / 2)} from it.",
        full_size=True,
    )
    view.box("stock", -thick, -half, 0, half)
    view.box("panel", 0, -half, right, half)
    view.line("mark", (-thick, 0), (right, 0))
    for center, bore in (((bores.near, 0.0), sheet.cross), ((-thick / 2, 0.0), sheet.edge)):
        view.circle("cut", center, bore / 2)
        view.circle("cut", center, POINT)
    view.text((-thick / 2, half - 0.3), "edge")
    view.text((bores.near, half - 0.3), "wider face")
    view.dimension((0, -half), (bores.near, -half), fine.length(bores.near))
    view.dimension((-thick, -half), (-thick / 2, -half), fine.length(thick / 2))
    return view
