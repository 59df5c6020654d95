"""Seconds of a viscosity cup as centistokes, inside the range of each cup alone.

Zahn cups by ASTM D4212, Ford cups by ASTM D1200, formulas as a maker of cups prints them, at 25 °C;
ranges as read there and in D1200. They hold for liquids whose thickness doesn't change by stirring.
"""

from collections import namedtuple

Cup = namedtuple("Cup", ("value", "label", "factor", "shift", "low", "high"))
"""Centistokes = factor x (seconds - shift), from `low` to `high` seconds."""

CUPS = (
    Cup("zahn-1", "Zahn 1", 1.1, 29.0, 35.0, 80.0),
    Cup("zahn-2", "Zahn 2", 3.5, 14.0, 20.0, 80.0),
    Cup("zahn-3", "Zahn 3", 11.7, 7.5, 20.0, 80.0),
    Cup("zahn-4", "Zahn 4", 14.8, 5.0, 20.0, 80.0),
    Cup("zahn-5", "Zahn 5", 23.0, 0.0, 20.0, 80.0),
    Cup("ford-1", "Ford 1", 0.49, 35.0, 55.0, 100.0),
    Cup("ford-2", "Ford 2", 1.44, 18.0, 40.0, 100.0),
    Cup("ford-3", "Ford 3", 2.31, 6.58, 20.0, 100.0),
    Cup("ford-4", "Ford 4", 3.85, 4.49, 20.0, 100.0),
    Cup("ford-5", "Ford 5", 12.1, 2.0, 20.0, 100.0),
)


def cup_named(value: str) -> Cup:
    """Return a cup by its name in the API."""
    return next(cup for cup in CUPS if cup.value == value)


def viscosity(cup: Cup, seconds: float) -> float:
    """Return centistokes.

    >>> viscosity(cup_named("zahn-2"), 30)
    56.0
    """
    return float(cup.factor * (seconds - cup.shift))


def seconds_in(cup: Cup, centistokes: float) -> float:
    """Return the seconds that a liquid takes in a cup, in its range or not."""
    return float(centistokes / cup.factor + cup.shift)


def is_in_range(cup: Cup, seconds: float) -> bool:
    """Tell whether a cup tells so many seconds."""
    return bool(cup.low - 1e-9 <= seconds <= cup.high + 1e-9)
