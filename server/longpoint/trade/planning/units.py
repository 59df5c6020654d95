"""Lengths in whole units, so that "fits exactly" is exact."""

PER_INCH = 3048000
"""Units to the inch that hold 1/64 in, 1/1000 in, thirds of an inch and 1/100 mm exactly."""


def whole_units(lengths: "list[float]") -> "tuple[list[int], int]":
    """Return lengths in inches, 0 or more, as whole numbers of the largest unit that divides all.

    Returns
    -------
    units : list of int
    step : int
        A unit is `step` parts of the `PER_INCH` that an inch has.

    >>> whole_units([96.0, 27.8125, 254 / 25.4])
    ([1536, 445, 160], 190500)
    """
    fine = [int(length * PER_INCH + 0.5) for length in lengths]
    step = divisor(fine)
    return [length // step for length in fine], step


def divisor(numbers: "list[int]") -> int:
    """Return the greatest common divisor; 1 where all are 0.

    >>> divisor([96, 0, 36]), divisor([0])
    (12, 1)
    """
    found = 0
    for number in numbers:
        if found and number % found == 0:
            continue
        while number:
            found, number = number, found % number
    return found or 1
