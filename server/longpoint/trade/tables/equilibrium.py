"""The moisture that wood comes to in air of a given temperature and humidity.

Source: Wood Handbook (USDA Forest Products Laboratory), chapter 4: formula and constants, in
Fahrenheit as a woodworkers' page quotes them, in Celsius after FPL-RN-0268 as a library of climate
formulas has them. They were held against the rows of Table 4-2 that could be read. One curve
stands for all species; the laboratory calls it fine for practice, not for science (FPL-GTR-229).
"""

from collections import namedtuple

Curve = namedtuple("Curve", ("w", "k", "k1", "k2", "coldest", "hottest"))
"""Four quadratics of the temperature, each as constant, slope and curvature; and its bounds."""

CURVES = {
    "fahrenheit": Curve(
        (330, 0.452, 0.00415),
        (0.791, 0.000463, -0.000000844),
        (6.34, 0.000775, -0.0000935),
        (1.09, 0.0284, -0.0000904),
        30,
        140,
    ),
    "celsius": Curve(
        (349, 1.29, 0.0135),
        (0.805, 0.000736, -0.00000273),
        (6.27, -0.00938, -0.000303),
        (1.91, 0.0407, -0.000293),
        -1,
        60,
    ),
}
"""By the degrees they take; the table begins at 30 °F, and rows were read up to 140."""

DRIEST, DAMPEST = 5.0, 95.0
"""Percent of relative humidity where the table begins and ends."""


def equilibrium(degrees: str, temperature: float, humidity: float) -> float:
    """Return the equilibrium moisture content in percent.

    Parameters
    ----------
    degrees : str
        ``fahrenheit`` or ``celsius``: what `temperature` is in.
    humidity : float
        Relative humidity in percent.

    >>> from longpoint.trade.lengths import show_number
    >>> show_number(equilibrium("fahrenheit", 70, 50), 1)
    '9.2'
    """
    curve = CURVES[degrees]
    w, k = _at(curve.w, temperature), _at(curve.k, temperature)
    k1, k2 = _at(curve.k1, temperature), _at(curve.k2, temperature)
    kh = k * humidity / 100
    bound = k1 * kh + 2 * k1 * k2 * kh * kh
    return 1800 / w * (kh / (1 - kh) + bound / (1 + k1 * kh + k1 * k2 * kh * kh))


def _at(curve: "tuple[float, ...]", temperature: float) -> float:
    return curve[0] + curve[1] * temperature + curve[2] * temperature * temperature
