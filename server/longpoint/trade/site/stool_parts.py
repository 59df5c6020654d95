"""A window's stool and apron, with the horns beside the jambs and the returned ends."""

from ..tool import Given, Refusal, Scale, miter, square
from .casing_parts import Part

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .casing_parts import Casing


class Stool:
    """Stool and apron in inches: the stool ends `nose` past the casing, in front and sideways.

    Raises
    ------
    Refusal
        For returns that are longer than what they are mitered to.
    """

    def __init__(self, given: Given, casing: "Casing", scale: Scale) -> None:
        self.width = casing.width
        self.nose, self.thick = given.number("stool_nose"), given.number("stool_thickness")
        self.out = casing.thick + self.nose
        self.length = casing.outer + 2 * self.nose
        self.inside = given.maybe("stool_inside")
        self.apron = casing.outer
        self.apron_wide = given.maybe("apron_width") or casing.side
        self.apron_thick = given.number("apron_thickness")
        self.returned = given.flag("returns")
        if self.returned:
            self._refuse_short(casing, scale)

    def _refuse_short(self, casing: "Casing", scale: Scale) -> None:
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
    def horn(self) -> float:
        """Length of a horn: how far the stool runs on past the jamb's face, on the wall."""
        return (self.length - self.width) / 2

    def stool(self) -> "list[Part]":
        """Return the stool and its returns: first to be cut, the casing stands on it."""
        end = miter(45, "returned") if self.returned else square()
        wide = None if self.inside is None else self.inside + self.out
        where = "long points" if self.returned else "end to end"
        where += ", the nose past the casing on both sides"
        short = self.length - 2 * self.out if self.returned else None
        found = [Part("Stool", 1, self.length, short, wide, self.thick, (end, end), where)]
        if self.returned:
            where = "long point to the wall"
            ends = (miter(45), square("at the wall"))
            found.append(Part("Stool return", 2, self.out, None, None, self.thick, ends, where))
        return found

    def under(self) -> "list[Part]":
        """Return the apron and its returns: last to be cut, below the stool."""
        end = miter(0, "returned", bevel=45) if self.returned else square()
        where = "outer edges of the casing" + (", long points" if self.returned else "")
        short = self.apron - 2 * self.apron_thick if self.returned else None
        size = self.apron_wide, self.apron_thick
        found = [Part("Apron", 1, self.apron, short, size[0], size[1], (end, end), where)]
        if self.returned:
            ends = (miter(0, bevel=45), square("at the wall"))
            where = "long point to the wall"
            found.append(
                Part("Apron return", 2, self.apron_thick, None, size[0], size[1], ends, where)
            )
        return found
