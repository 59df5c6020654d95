"""What has been cut, fitted, spoiled, bought or marked, and what was cut to an older size."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..lengths import Scale

NOTICED = 1 / 128
"""Inches by which a piece must be off before it is called cut to the old size."""


class Ticks:
    """The ticks of a job, by what they are of; the last one of each counts."""

    def __init__(self, ticks: "list[dict[str, Any]]") -> None:
        self.last: dict[str, dict[str, Any]] = {}
        self.spoilt: dict[str, int] = {}
        self._under: dict[str, list[dict[str, Any]]] = {}
        for tick in ticks:
            self.last[tick["of"]] = tick
            self._under.setdefault(tick["of"].split("/")[0], []).append(tick)
            if tick["state"] == "spoiled":
                self.spoilt[tick["of"]] = self.spoilt.get(tick["of"], 0) + 1

    def under(self, own: str) -> "list[dict[str, Any]]":
        """Return the ticks of a question's pieces and marks, of an item's checks, of a stock."""
        return self._under.get(own) or []

    def state(self, of: str) -> str:
        """Return what was last ticked of a piece, a mark or a line to buy; empty for nothing."""
        tick = self.last.get(of)
        return str(tick["state"]) if tick else ""

    def spoiled(self, of: str) -> int:
        """Return how many pieces were spoiled under this mark: so many more are needed."""
        return self.spoilt.get(of, 0)

    def paid(self, of: str) -> "float | None":
        """Return what was paid, None where nothing was said."""
        tick = self.last.get(of)
        return None if tick is None or tick.get("paid") is None else float(tick["paid"])

    def stale(self, of: str, length: float, scale: "Scale") -> "dict[str, Any] | None":
        """Return how a piece that was cut differs from what is wanted now; None where it fits.

        `by` is in inches, positive where the piece is too long.
        """
        tick = self.last.get(of)
        if tick is None or tick["state"] not in ("cut", "fitted"):
            return None
        was = (tick.get("was") or {}).get("length")
        if was is None or abs(was - length) < NOTICED:
            return None
        by = was - length
        shown = scale.finer(32).length(abs(by))
        words = f"{shown} long now: trim it" if by > 0 else f"{shown} short: cut another"
        return {"was": was, "by": by, "words": words}
