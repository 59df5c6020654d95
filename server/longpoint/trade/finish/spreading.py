"""Films, wet and dry, and how far a finish goes.

A gallon is 231 cubic inches, so it covers 231 x 1000 / 144 = 1604.17 square feet a mil thick.
Solids are by volume: what is left of the paint when it has dried. Thinner is a share of the paint.
"""

import math

GALLON = 231 * 1000 / 144
"""Square feet that a gallon covers a mil thick."""


class Film:
    """One coat: mils wet as it is put on, mils of the paint alone in it, mils dry.

    Attributes
    ----------
    wet, paint : float
        With its thinner, and without.
    dry : float or None
        Where the solids are known.

    >>> film = Film.of_dry(1.5, 0.40, 0.10)
    >>> film.wet, film.paint
    (4.125, 3.75)
    """

    def __init__(self, paint: float, thinned: float, dry: "float | None") -> None:
        self.paint = paint
        self.wet = paint * (1 + thinned)
        self.dry = dry

    @staticmethod
    def of_dry(dry: float, solids: float, thinned: float) -> "Film":
        """Return the film that dries to `dry` mils, `solids` and `thinned` as shares."""
        return Film(dry / solids, thinned, dry)

    @staticmethod
    def of_wet(wet: float, solids: "float | None", thinned: float) -> "Film":
        """Return the film that is `wet` mils on the gauge."""
        paint = wet / (1 + thinned)
        return Film(paint, thinned, None if solids is None else paint * solids)

    @staticmethod
    def of_spread(spread: float, solids: "float | None", thinned: float) -> "Film":
        """Return the film of so many square feet a gallon of paint, nothing lost."""
        paint = GALLON / spread
        return Film(paint, thinned, None if solids is None else paint * solids)


def gallons(area: float, coats: int, film: Film, landing: float) -> float:
    """Return the gallons of paint, without thinner, for an area in square feet.

    `landing` is the share that lands on the work.
    """
    return area * coats * film.paint / (GALLON * landing)


def spread(film: Film, landing: float) -> float:
    """Return the square feet that a gallon of paint covers, what is lost in it."""
    return GALLON * landing / film.paint


def whole_cans(amount: float, can: float) -> int:
    """Return how many cans hold an amount.

    >>> whole_cans(1.909, 1), whole_cans(1.909, 0.25), whole_cans(2, 1)
    (2, 8, 2)
    """
    return max(1, int(math.ceil(amount / can - 1e-9)))


def mixed_parts(
    whole: float, parts: "tuple[float, float]", thinned: float
) -> "tuple[float, float, float]":
    """Return part A, part B and thinner of a mixed amount.

    `thinned` is the thinner's share of both parts together.

    >>> mixed_parts(44, (3, 1), 0.1)
    (30.0, 10.0, 4.0)
    """
    paint = whole / (1 + thinned)
    first = paint * parts[0] / (parts[0] + parts[1])
    return first, paint - first, whole - paint


def pot_life(hours: float, said_at: float, here: float) -> float:
    """Return how long a mix can be used: half as long for each 18 °F that it is warmer.

    >>> pot_life(2, 68, 86), pot_life(2, 68, 104)
    (1.0, 0.5)
    """
    return float(hours * 0.5 ** ((here - said_at) / 18))
