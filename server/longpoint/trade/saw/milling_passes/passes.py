"""Passes of a planer: how many, what each takes, and off which face."""

import math

HAIR = 1e-9
"""Inches or passes: float noise must not add one where the cuts come out exactly."""


class Milling:
    """Passes of a planer, in inches.

    Parameters
    ----------
    rough, finished, per_pass : float
        Thickness before and after; most that a pass takes.
    light : str
        Which pass takes the odd rest: ``last``, ``first``, or ``equal`` for all alike.
    both : bool
        The board is turned over after every pass.
    """

    def __init__(
        self, rough: float, finished: float, per_pass: float, light: str, both: bool
    ) -> None:
        self.rough = rough
        self.finished = finished
        self.total = rough - finished
        self.passes = max(1, int(math.ceil(self.total / per_pass - HAIR)))
        self.per_pass = per_pass
        self.light = light
        self.both = both

    @property
    def is_even(self) -> bool:
        """Tell whether all passes take alike."""
        takes = self.takes()
        return max(takes) - min(takes) <= HAIR

    def takes(self) -> "list[float]":
        """Return what each pass takes, in order."""
        if self.light == "equal":
            return [self.total / self.passes] * self.passes
        full = [self.per_pass] * (self.passes - 1)
        rest = self.total - self.per_pass * (self.passes - 1)
        return full + [rest] if self.light == "last" else [rest] + full

    def leaves(self) -> "list[float]":
        """Return the thickness after each pass; the last one is the finished thickness."""
        left, thickness = [], self.rough
        for take in self.takes()[:-1]:
            thickness -= take
            left.append(thickness)
        return left + [self.finished]

    def face(self, index: int) -> int:
        """Return which face a pass planes: 2 first, since flattened face 1 lies down."""
        return 1 if self.both and index % 2 else 2

    def off_face(self, face: int) -> float:
        """Return what comes off one face in all."""
        return sum([take for index, take in enumerate(self.takes()) if self.face(index) == face])
