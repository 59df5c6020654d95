"""Draw a board cut through: what it is, what its label claims, what the part needs."""

from ...lengths import Scale
from ...lumber.listed import Listed
from ...tool import Drawing

_RAGGED = (0.0, 0.12, -0.12, 0.12, 0.0)  # Of the thickness: an end that goes on.
_STUB = 4.0  # Widths unknown are drawn this many thicknesses wide.


def section(
    found: Listed,
    real: "tuple[float, float | None]",
    needed: "tuple[float | None, float | None]",
    scale: Scale,
) -> Drawing:
    """Return the cross-section, its middle at 0, 0.

    Parameters
    ----------
    found : Listed
        For the size that the label claims.
    real, needed : tuple
        Thickness and width in inches; None where there is none.
    """
    thick, wide = real
    across = wide if wide is not None else _STUB * thick
    view = Drawing("The board cut through", _words(found, real, scale))
    _claimed(view, found, across)
    view.area("stock", _outline(thick, across, wide is None))
    _needed(view, needed, thick, across)
    view.text((0, 0), found.name)
    _dimensions(view, real, needed, scale)
    return view


def _words(found: Listed, real: "tuple[float, float | None]", scale: Scale) -> str:
    say = scale.finer().length
    size = say(real[0]) + " thick"
    if real[1] is not None:
        size += f" and {say(real[1])} wide"
    return f"Sold as {found.name}: {size}, inside the outline that the label claims."


def _claimed(view: Drawing, found: Listed, across: float) -> None:
    """Draw the label's outline; only its faces where it claims no width."""
    thick, wide = found.nominal
    if wide is not None:
        view.box("clearance", -wide / 2, -thick / 2, wide / 2, thick / 2)
        return
    for y in (-thick / 2, thick / 2):
        view.line("clearance", (-across / 2, y), (across / 2, y))


def _outline(thick: float, across: float, ragged: bool) -> "list[tuple[float, float]]":
    """Return the board's outline; its right end is ragged where the width isn't known."""
    left = [(-across / 2, thick / 2), (-across / 2, -thick / 2)]
    if not ragged:
        return left + [(across / 2, -thick / 2), (across / 2, thick / 2)]
    last = len(_RAGGED) - 1
    return left + [
        (across / 2 + shift * thick, thick * (step / last - 0.5))
        for step, shift in enumerate(_RAGGED)
    ]


def _needed(
    view: Drawing, needed: "tuple[float | None, float | None]", thick: float, across: float
) -> None:
    """Draw the cuts that leave the part in the middle of a board `thick` by `across`."""
    high = thick if needed[0] is None else needed[0]
    wide = across if needed[1] is None else needed[1]
    if needed[0] is not None:
        for y in (-high / 2, high / 2):
            view.line("cut", (-wide / 2, y), (wide / 2, y))
    if needed[1] is not None:
        for x in (-wide / 2, wide / 2):
            view.line("cut", (x, -high / 2), (x, high / 2))


def _dimensions(
    view: Drawing,
    real: "tuple[float, float | None]",
    needed: "tuple[float | None, float | None]",
    scale: Scale,
) -> None:
    """Put the real sizes above and to the right, the needed ones below and to the left."""
    say = scale.finer().length
    left, top, right, low = view.to_json()["box"]
    thick, wide = real
    view.dimension((right, -thick / 2), (right, thick / 2), say(thick))
    if wide is not None:
        view.dimension((-wide / 2, top), (wide / 2, top), say(wide))
    thick_needed, wide_needed = needed
    if thick_needed is not None:
        y = thick_needed / 2
        view.dimension((left, -y), (left, y), say(thick_needed), -1)
    if wide_needed is not None:
        x = wide_needed / 2
        view.dimension((-x, low), (x, low), say(wide_needed), -1)
