"""What has been cut, fitted, spoiled, bought or marked, and what was cut to an older size."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..lengths import Scale

NOTICED = 1 / 128
"""Inches by which a piece must be off before it is called cut to the old size."""
SIZES = {"length": ("short", "long"), "width": ("narrow", "wide"), "thickness": ("thin", "thick")}
"""A piece's sizes, and what it is called that has too little or too much of each."""
DOWN = {"length": "trim it", "width": "rip it or cut another",
        "thickness": "plane it or cut another"}  # fmt: skip
"""How too much of each comes off; a molding can be neither ripped nor planed."""


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

    def stale(self, of: str, piece: "dict[str, Any]", scale: "Scale") -> "dict[str, Any] | None":
        """Return how a piece that was cut differs from what is wanted now; None where it fits.

        Each size that was noted as it was cut is compared. `by` is in inches: the size farthest
        off, positive where all that differ are too large and can be taken down.
        """
        tick = self.last.get(of)
        if tick is None or tick["state"] not in ("cut", "fitted"):
            return None
        was = tick.get("was") or {}
        over = [(was[name] - piece[name], name) for name in SIZES
                if was.get(name) is not None and piece[name] is not None]  # fmt: skip
        large = [each for each in over if each[0] >= NOTICED]
        small = [each for each in over if each[0] <= -NOTICED]
        if not (large or small):
            return None
        finer = scale.finer(32)
        off = small or large
        said = ", ".join([f"{finer.length(abs(by))} {SIZES[name][by > 0]}" for by, name in off])
        down = DOWN[off[0][1]] if len(off) == 1 else "take it down or cut another"
        words = f"{said}: cut another" if small else f"{said} now: {down}"
        by = min(off)[0] if small else max(off)[0]
        return {"was": was.get("length", piece["length"]), "by": by, "words": words}
