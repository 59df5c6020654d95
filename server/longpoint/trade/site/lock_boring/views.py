"""The views of a lock's bores: the leaf in its jamb, and a template to fold over the edge."""

from ...tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .bores import Bores

BESIDE = 4.0  # Inches of the leaf drawn beyond the cross bore.
ABOVE = 8.0  # Inches of it drawn above the latch where its height is not known.
GAP = 0.125  # Inches drawn between leaf and jamb.
JAMB = 3.0
POINT = 3 / 64  # Radius of a center on the template: a center punch's dot.
MARGIN = 1.0  # Inches of the template beyond the cross bore.


def front_view(bores: "Bores", scale: Scale) -> Drawing:
    """Return the leaf's strike side from the front, with its jamb, over the finished floor."""
    sheet, place = bores.sheet, bores.place
    high = bores.leaf.height or bores.up + ABOVE
    bottom, top = 0.0 - place.floor_gap, 0.0 - place.floor_gap - high
    view = Drawing(
        "The strike side from the front",
        f"A bore of {scale.length(sheet.cross)}, its center {scale.length(bores.near)} from the "
        f"edge and {scale.length(bores.up)} up the leaf; the strike {scale.length(place.latch)} "
        "above the floor.",
    )
    left = -bores.near - sheet.cross / 2 - BESIDE
    view.box("panel", left, top, 0, bottom)
    view.box("stock", GAP, top - place.head_gap, GAP + JAMB, 0)
    view.line("wall", (left, 0), (GAP + JAMB, 0))
    center = (-bores.near, -place.latch)
    view.box(
        "clearance", -bores.near, -place.latch - sheet.edge / 2, 0, sheet.edge / 2 - place.latch
    )
    view.circle("cut", center, sheet.cross / 2)
    view.line("mark", (0, -place.latch), (GAP + JAMB, -place.latch))
    view.tag((center[0], center[1] - sheet.cross), "1")
    view.tag((GAP + JAMB / 2, -place.latch - 2), "3")
    view.dimension((left, bottom), (left, -place.latch), scale.length(bores.up), 1)
    view.dimension((GAP + JAMB, -place.latch), (GAP + JAMB, 0), scale.length(place.latch), 1)
    view.dimension(
        (-bores.near, -place.latch + 4), (0, -place.latch + 4), scale.length(bores.near), 0
    )
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
