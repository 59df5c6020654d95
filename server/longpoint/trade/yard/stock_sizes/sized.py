"""One board or sheet as it really is: tape before list, list before table."""

from ...lumber.listed import Listed, listed, unlisted
from ...refusal import Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..yard_list import Seen

    Sizes = tuple[float | None, float | None]


class Sized:
    """One board or sheet, in inches: what tape, list and table say of it.

    Parameters
    ----------
    family, label, condition : str
        Kind of stock, its label as written, how it is sold.
    on_list : list of Seen
        Rows of the person's list under that label; the last one counts.
    tape, needed : tuple
        Thickness and width by the tape and of the finished part; None where not said.

    Attributes
    ----------
    width : float or None
        None where neither tape, list nor table knows it.
    """

    def __init__(
        self,
        family: str,
        label: str,
        condition: str,
        on_list: "list[Seen]",
        tape: "Sizes",
        needed: "Sizes",
    ) -> None:
        self.family = family
        self.condition = condition
        self.on_list = on_list
        self.seen = on_list[-1] if on_list else None
        self.found = _found(family, label, condition, self.seen)
        self.tape = tape
        self.needed = needed
        by_list = (None, None) if self.seen is None else (self.seen.thickness, self.seen.width)
        self.width = _first(tape[1], by_list[1], self.found.width)
        self.thickness = self._thickness(by_list[0])

    def _thickness(self, by_list: "float | None") -> float:
        thickness = _first(self.tape[0], by_list, self.found.thickness)
        if thickness is None:
            raise Refusal(
                "condition",
                f"No thickness is listed for {self.found.name} surfaced one side: "
                "choose rough or two sides, or measure the board.",
            )
        return thickness

    def said_by(self) -> str:
        """Return who says the size: tape, list or standard, the width's where it is another."""
        by_list = (None, None) if self.seen is None else (self.seen.thickness, self.seen.width)
        thick = _who(self.tape[0], by_list[0])
        wide = _who(self.tape[1], by_list[1])
        if self.width is None or thick == wide:
            return "by " + thick
        return f"by {thick}, width by {wide}"

    def extra(self) -> "Sizes":
        """Return how much of thickness and width is over what the part needs."""
        thick, wide = self.needed
        over = None if thick is None else self.thickness - thick
        return (over, None if wide is None or self.width is None else self.width - wide)


def _who(tape: "float | None", by_list: "float | None") -> str:
    if tape is not None:
        return "your tape"
    return "the standard" if by_list is None else "your list"


def _first(*sizes: "float | None") -> "float | None":
    """Return the first size that is known."""
    known = [size for size in sizes if size is not None]
    return known[0] if known else None


def _found(family: str, label: str, condition: str, seen: "Seen | None") -> Listed:
    """Return what the tables say; a label that only the list knows is answered from the list."""
    try:
        return listed(family, label, condition)
    except Refusal:
        if seen is None:
            raise
        return unlisted(seen.label, seen.sizes)
