"""A frame with square corners as it is seen from the front."""

from ...drawing import Drawing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...geometry.square_frame import SquareFrame
    from ...lengths import Scale


def front_view(
    frame: "SquareFrame",
    opening: "tuple[float, float]",
    inside: bool,
    stand_off: float,
    scale: "Scale",
) -> Drawing:
    """Return the frame with its lengths, in the recess or around the opening it belongs to."""
    wide, high, side = frame.width, frame.height, frame.side
    top, low = frame.top, frame.height - frame.bottom
    view = Drawing(
        "The frame from the front",
        f"{scale.length(wide)} wide and {scale.length(high)} high over all.",
    )
    _surround(view, frame, opening, inside, stand_off)
    view.area("stock", [(0, 0), (wide, 0), (wide - side, top), (side, top)])
    view.area("stock", [(wide, 0), (wide, high), (wide - side, low), (wide - side, top)])
    if frame.closed:
        view.area("stock", [(wide, high), (0, high), (side, low), (wide - side, low)])
    view.area("stock", [(0, high), (0, 0), (side, top), (side, low)])
    middle = (low + top) / 2
    view.tag((wide / 2, top / 2), "1").tag((wide - side / 2, middle), "2")
    if frame.closed:
        view.tag((wide / 2, (high + low) / 2), "3")
    view.tag((side / 2, middle), "4" if frame.closed else "3")
    view.dimension((0, 0), (wide, 0), scale.length(wide))
    view.dimension((wide, 0), (wide, high), scale.length(high))
    view.dimension((side, top), (wide - side, top), scale.length(frame.clear_width), -1)
    return view


def _surround(
    view: Drawing,
    frame: "SquareFrame",
    opening: "tuple[float, float]",
    inside: bool,
    stand_off: float,
) -> None:
    """Draw the edge of the recess or of the opening that the frame belongs to."""
    width, height = opening
    left = (frame.width - width) / 2
    if inside:
        top = (frame.height - height) / (2 if frame.closed else 1)
        view.box("wall", left, top, left + width, top + height)
        return
    top = frame.top + stand_off
    view.box("clearance", left, top, left + width, top + height)
