"""The sizes of a job's stock in inches, as the yard's paper or the tape has them."""

from ..lengths import read_length
from ..reading import Unreadable
from .memory import Memory

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_read = Memory(400)
"""Sizes by units and text: the same few are read for every piece."""


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
        key = (self.units, str(raw))
        if _read.get(key) is None:
            _read.put(key, self._read(str(raw)))
        value: float = _read.get(key)
        # What can't be read is remembered as less than any size.
        return default if value < 0 else value

    def _read(self, raw: str) -> float:
        try:
            return max(0.0, read_length(raw, self.units, over_one=True))
        except Unreadable:
            return -1.0

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
