"""The sizes of a job's stock in inches, as the yard's paper or the tape has them."""

from ..lengths import read_length
from ..reading import Unreadable

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Sizes:
    """Reads the sizes of a job's stock: numbers are inches, texts are in the job's units."""

    def __init__(self, units: str) -> None:
        self.units = units

    def read(self, raw: object, default: float = 0.0) -> float:
        """Return a size in inches; the default where none was given or it can't be read."""
        if isinstance(raw, bool) or raw is None or raw == "":
            return default
        if isinstance(raw, (int, float)):
            return float(raw)
        try:
            return read_length(str(raw), self.units, over_one=True)
        except Unreadable:
            return default

    def rough(
        self, piece: "dict[str, Any]", stock: "dict[str, Any]"
    ) -> "tuple[float, float, float]":
        """Return thickness, width and length that a piece takes out of boards, inches.

        The thickness is the stock's; where nobody said that, the piece's own.
        """
        return (
            self.read(stock.get("thickness"), piece["thickness"] or 1.0),
            (piece["width"] or 0) + self.read(stock.get("extra_width")),
            piece["length"] + self.read(stock.get("extra_length")),
        )
