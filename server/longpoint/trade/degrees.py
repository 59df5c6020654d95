"""Trigonometry in degrees, exact where the trade expects it to be.

``math.tan(math.radians(45))`` is a hair under one, and a saw table built on it shows 44.9.
The angles a carpenter meets most are reduced in degrees first, so that 45 and 90 come out exact.
"""

import math

_SINES = {
    0.0: 0.0,
    30.0: 0.5,
    90.0: 1.0,
    150.0: 0.5,
    180.0: 0.0,
    210.0: -0.5,
    270.0: -1.0,
    330.0: -0.5,
}


def sin(angle: float) -> float:
    """Return the sine of an angle in degrees.

    >>> sin(30), sin(180), sin(-90)
    (0.5, 0.0, -1.0)
    """
    turned = angle % 360
    if turned in _SINES:
        return _SINES[turned]
    return math.sin(math.radians(turned))


def cos(angle: float) -> float:
    """Return the cosine of an angle in degrees.

    >>> cos(60), cos(90)
    (0.5, 0.0)
    """
    return sin(90 - angle)


def tan(angle: float) -> float:
    """Return the tangent of an angle in degrees; 90 and 270 raise ZeroDivisionError.

    >>> tan(45), tan(135), tan(0)
    (1.0, -1.0, 0.0)
    """
    turned = angle % 180
    if turned in (45, 135):
        return 1.0 if turned == 45 else -1.0
    return sin(turned) / cos(turned)


def atan(ratio: float) -> float:
    """Return the angle in degrees, -90 to 90, whose tangent is `ratio`.

    >>> atan(1), atan(-1)
    (45.0, -45.0)
    """
    if ratio in (1, -1):
        return 45.0 * ratio
    return math.degrees(math.atan(ratio))


def asin(ratio: float) -> float:
    """Return the angle in degrees, -90 to 90, whose sine is `ratio` (-1 to 1).

    >>> asin(0.5)
    30.0
    """
    if ratio in (0.5, -0.5):
        return 60.0 * ratio
    return math.degrees(math.asin(ratio))


def acos(ratio: float) -> float:
    """Return the angle in degrees, 0 to 180, whose cosine is `ratio` (-1 to 1).

    >>> acos(0)
    90.0
    """
    return 90.0 - asin(ratio)
