"""Dew point of the air, and the two rules for how far over it a surface has to be.

Magnus: g = ln(RH / 100) + a T / (b + T), dew point = b g / (a - g), in degrees Celsius; a = 17.62
and b = 243.12, WMO guide to instruments, annex 4.B, for -45 to 60 °C.
"""

import math

A, B = 17.62, 243.12
FIVE_F = 5.0
"""Degrees Fahrenheit over the dew point: coating handbooks of the services."""
THREE_C = 5.4
"""3 degrees Celsius in degrees Fahrenheit: the rule of ISO 8502-4, its number from memory."""
COLDEST, HOTTEST = 0.0, 140.0
"""Degrees Fahrenheit: nobody coats in colder air, and the formula holds to the hotter end."""


def dew_point(air: float, humidity: float) -> float:
    """Return the dew point in °F of air so warm (°F), at so many percent relative humidity.

    >>> abs(dew_point(68, 50) - 48.67) < 0.02, abs(dew_point(64.4, 100) - 64.4) < 1e-9
    (True, True)
    """
    celsius = (air - 32) * 5 / 9
    g = math.log(humidity / 100) + A * celsius / (B + celsius)
    return 32 + 9 / 5 * B * g / (A - g)
