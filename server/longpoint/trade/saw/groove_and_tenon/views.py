"""What groove and tenon look like: the joint from the edge, and the tenon on the saw."""

from ...drawing import Drawing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .joint import GrooveJoint


def joint_view(joint: "GrooveJoint", scale: "Scale") -> Drawing:
    """Return the section: panel in the stile's groove above, the rail's tenon below it."""
    view = Drawing(
        "Groove and tenon in section",
        f"The groove is {scale.decimal(joint.groove)} wide and "
        f"{scale.finer().length(joint.depth)} deep; each shoulder is "
        f"{scale.decimal(joint.shoulder)} deep.",
    )
    _grooved(view, joint, scale)
    _tenoned(view, joint, scale)
    return view


def _grooved(view: Drawing, joint: "GrooveJoint", scale: "Scale") -> None:
    thick, deep, wall = joint.stock, joint.depth, joint.wall
    edge = max(deep + thick, joint.tenon_length)
    bottom = edge - deep
    view.area(
        "stock",
        [
            (0, 0), (edge, 0), (edge, wall), (bottom, wall),
            (bottom, thick - wall), (edge, thick - wall), (edge, thick), (0, thick),
        ],
    )  # fmt: skip
    half = joint.panel / 2
    view.box("panel", bottom, thick / 2 - half, edge + thick, thick / 2 + half)
    fine = scale.finer()
    view.dimension((bottom, 0), (edge, 0), fine.length(deep))
    view.dimension((0, thick), (0, 0), scale.length(thick))
    view.dimension((edge, wall), (edge, 0), fine.length(joint.wall), -1)


def _tenoned(view: Drawing, joint: "GrooveJoint", scale: "Scale") -> None:
    thick, long, deep = joint.stock, joint.tenon_length, joint.shoulder
    shoulder = max(joint.depth + thick, long)
    top = 1.75 * thick
    low, end = top + thick, shoulder - long
    view.box("waste", end, top, shoulder, top + deep)
    view.box("waste", end, low - deep, shoulder, low)
    view.area(
        "stock",
        [
            (shoulder, top), (shoulder + thick, top), (shoulder + thick, low), (shoulder, low),
            (shoulder, low - deep), (end, low - deep), (end, top + deep), (shoulder, top + deep),
        ],
    )  # fmt: skip
    fine = scale.finer()
    view.dimension((end, low - deep), (end, top + deep), fine.length(joint.tenon_thickness))
    view.dimension((shoulder, low), (end, low), fine.length(long))
    view.dimension((end, top + deep), (end, top), fine.length(deep))


def setup_view(joint: "GrooveJoint", outer: float, scale: "Scale") -> Drawing:
    """Return the cutter seen along the cut: fence on the left, the rail face down on the table.

    `outer` is the thickness of a stack's outer blades, 0 for a blade or a bit.
    """
    long, deep, thick = joint.tenon_length, joint.shoulder, joint.stock
    view = Drawing(
        "The tenon's first face at the cutter",
        f"The cutter stands {scale.decimal(deep)} above the table and ends "
        f"{scale.finer().length(long)} from the rail's end.",
    )
    start = long - joint.cut
    view.box("stock", 0, 0, long + 1.5 * thick, thick)
    if joint.passes == 1:
        view.box("wall", -max(0.75, 1.5 * -start), -thick / 2, 0, thick)
    else:
        _earlier_passes(view, joint)
    view.box("metal", start, thick - deep, long, thick + deep / 2)
    for side in (start + outer, long - outer) if outer else ():
        view.line("cut", (side, thick - deep), (side, thick + deep / 2))
    view.line("mark", (-max(0.75, 1.5 * -start), thick), (long + 1.5 * thick, thick))
    fine = scale.finer()
    view.dimension((0, 0), (long, 0), fine.length(long))
    view.dimension((long, thick), (long, thick - deep), fine.length(deep), -1)
    if joint.passes == 1 and start < 0:
        low = thick + deep / 2
        view.dimension((0, low), (start, low), fine.length(-start))
    return view


def _earlier_passes(view: Drawing, joint: "GrooveJoint") -> None:
    """Show what the passes between the shoulder's pass and the end take away."""
    low, end = joint.stock, joint.tenon_length
    for number in range(1, joint.passes):
        right = end - number * joint.cut
        left = max(0.0, right - joint.groove)
        view.box("waste", left, low - joint.shoulder, right, low)


def plow_view(joint: "GrooveJoint", scale: "Scale") -> Drawing:
    """Return the piece on edge over the cutter, seen along the cut: the passes side by side.

    The first pass is drawn as cut, the one with the other face to the fence as cleared.
    """
    wall, deep, thick = joint.wall, joint.depth, joint.stock
    view = Drawing(
        "Plowing the groove",
        f"The cutter starts {scale.decimal(wall)} from the fence and stands {scale.decimal(deep)} "
        "above the table.",
    )
    high = deep + thick
    view.box("wall", -thick, -thick / 2, 0, high)
    view.box("stock", 0, 0, thick, high)
    if joint.plow.passes > 1:
        view.box("clearance", wall, high - deep, wall + joint.groove, high)
    view.box("metal", wall, high - deep, wall + joint.cut, high + deep / 2)
    view.line("mark", (-thick, high), (2 * thick, high))
    view.dimension((0, 0), (thick, 0), scale.length(thick))
    fine = scale.finer()
    view.dimension((thick, high), (thick, high - deep), fine.length(deep), -1)
    low = high + deep / 2
    view.dimension((wall, low), (0, low), fine.length(wall))
    view.dimension((wall + joint.groove, low), (wall, low), fine.length(joint.groove))
    return view
