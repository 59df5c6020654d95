"""A window's stool and apron, with the horns beside the jambs and the returned ends."""

from collections import namedtuple

from ...tool import Refusal, Scale, miter, square
from .casing import Casing, CasingPart

StoolSizes = namedtuple("StoolSizes", ("nose", "thick", "inside"))
"""A stool in inches; `inside` from the wall's face in to the sash."""

ApronSizes = namedtuple("ApronSizes", ("width", "thick"))
"""An apron's section in inches."""


class Stool:
    """Stool and apron in inches: the stool ends `nose` past the casing, in front and sideways.

    Parameters
    ----------
    casing : Casing
    stool : StoolSizes
    apron : ApronSizes
    returned : bool
        Whether the ends are returned: mitered, with a short piece back to the wall.
    scale : Scale
        How refusals show lengths.

    Raises
    ------
    Refusal
        For returns that are longer than what they are mitered to.
    """

    def __init__(
        self,
        casing: Casing,
        stool: StoolSizes,
        apron: ApronSizes,
        returned: bool,
        scale: Scale,
    ) -> None:
        self.opening = casing.width
        self.nose, self.thick, self.inside = stool
        self.out: float = casing.thick + self.nose
        self.length: float = casing.outer + 2 * self.nose
        self.apron = casing.outer
        self.apron_wide, self.apron_thick = apron
        self.returned = returned
        if returned:
            self._refuse_short(casing, scale)

    def _refuse_short(self, casing: Casing, scale: Scale) -> None:
        if self.out > self.horn:
            most = casing.side + casing.reveal
            raise Refusal(
                "casing_thickness",
                f"Casing {scale.length(casing.thick)} thick leaves no horn to miter a return to: "
                f"use {scale.length(most)} or less, or no returned ends.",
            )
        if 2 * self.apron_thick >= self.apron:
            raise Refusal(
                "apron_thickness", "The returns meet: use a thinner apron, or no returned ends."
            )

    @property
    def width(self) -> float:
        """Width of the stool: in to the sash and out past the casing."""
        return float(self.inside) + self.out

    @property
    def horn(self) -> float:
        """Length of a horn: how far the stool runs on past the jamb's face, on the wall."""
        return (self.length - self.opening) / 2

    def above(self) -> "list[CasingPart]":
        """Return the stool and its returns: first to be cut, the casing stands on it."""
        end = miter(45, "returned") if self.returned else square()
        where = "long points" if self.returned else "end to end"
        where += ", the nose past the casing on both sides"
        short = self.length - 2 * self.out if self.returned else None
        size = (self.width, self.thick)
        found = [CasingPart("stool", 1, self.length, short, *size, (end, end), where, False)]
        if self.returned:
            ends, size = (miter(45), square("at the wall")), (self.out, self.thick)
            where = "long point to the wall"
            found.append(CasingPart("stool return", 2, self.out, None, *size, ends, where, False))
        return found

    def below(self) -> "list[CasingPart]":
        """Return the apron and its returns: last to be cut, below the stool."""
        end = miter(0, "returned", bevel=45) if self.returned else square()
        where = "outer edges of the casing" + (", long points" if self.returned else "")
        short = self.apron - 2 * self.apron_thick if self.returned else None
        size = self.apron_wide, self.apron_thick
        found = [CasingPart("apron", 1, self.apron, short, *size, (end, end), where, False)]
        if self.returned:
            ends = (miter(0, bevel=45), square("at the wall"))
            where = "long point to the wall"
            found.append(
                CasingPart("apron return", 2, self.apron_thick, None, *size, ends, where, False)
            )
        return found
