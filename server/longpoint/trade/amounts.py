"""Amounts that have two systems of units and are no lengths: areas, films, volumes, temperatures.

Inside they are what the American trade says (square feet, mils, gallons, degrees Fahrenheit). Where
millimeters are in force they are read and shown in the metric unit.
"""

from collections import namedtuple

from .lengths import show_number
from .measure import read_number
from .reading import INCH, Unreadable, quoted

Measure = namedtuple("Measure", ("unit", "metric", "factor", "shift", "marks", "metric_marks"))
"""What one unit is in the other: metric = (value + shift) * factor; and how both are written."""

LITERS = 3.785411784
"""In a US gallon, exactly: 231 cubic inches."""

SQUARE_METERS = (12 * INCH / 1000) ** 2
"""In a square foot, exactly."""

MEASURES = {
    "weight": Measure("lb", "kg", 0.45359237, 0.0, ("lb", "lbs"), ("kg",)),
    "area": Measure(
        "sq ft", "m²", SQUARE_METERS, 0.0, ("sq ft", "sqft", "ft2", "ft²"), ("m²", "m2", "sq m")
    ),
    "film": Measure("mil", "µm", INCH, 0.0, ("mil", "mils"), ("µm", "um", "μm", "micron")),
    "volume": Measure("gal", "L", LITERS, 0.0, ("gal", "gallon", "gallons"), ("l", "liter")),
    "mixed": Measure("fl oz", "mL", LITERS * 1000 / 128, 0.0, ("fl oz", "oz"), ("ml",)),
    "spread": Measure(
        "sq ft/gal", "m²/L", SQUARE_METERS / LITERS, 0.0, ("sq ft/gal", "ft2/gal"), ("m²/l", "m2/l")
    ),
    "temperature": Measure("°F", "°C", 5 / 9, -32.0, ("°f", "f"), ("°c", "c")),
}


def unit_of(measure: str, units: str) -> str:
    """Return the unit that an amount is said in.

    >>> unit_of("area", "in"), unit_of("area", "mm")
    ('sq ft', 'm²')
    """
    known = MEASURES[measure]
    return str(known.unit if units == "in" else known.metric)


def in_units(value: float, measure: str, units: str) -> float:
    """Return an amount as a number of the unit that it is said in.

    >>> in_units(68, "temperature", "mm"), in_units(4, "film", "mm")
    (20.0, 101.6)
    """
    known = MEASURES[measure]
    return value if units == "in" else (value + known.shift) * known.factor


def from_units(number: float, measure: str, units: str) -> float:
    """Return the amount that a number of the unit in force stands for."""
    known = MEASURES[measure]
    return number if units == "in" else number / known.factor - known.shift


SMALLER = {
    "in": (("fl oz", 128.0, 1 / 4), ("qt", 4.0, 1.0)),
    "mm": (("mL", LITERS * 1000, 1 / LITERS),),
}
"""Units of a small volume: how many to a gallon, and below how many gallons it is said in them."""


def volume_words(gallons: float, units: str) -> str:
    """Return a volume as it is poured: a small one in fluid ounces, quarts or milliliters.

    >>> volume_words(0.09, "in"), volume_words(0.5, "in"), volume_words(0.09, "mm")
    ('12 fl oz', '2 qt', '341 mL')
    """
    for unit, number, below in SMALLER[units]:
        if gallons < below:
            return show_number(gallons * number, 1 if unit == "qt" else 0) + " " + unit
    return amount_words(gallons, "volume", units, places_of(in_units(gallons, "volume", units)))


def places_of(number: float) -> int:
    """Return to how many decimals an amount is said: a tenth, a small one to a hundredth."""
    return 1 if abs(number) >= 10 else 2


def amount_words(value: float, measure: str, units: str, places: "int | None" = None) -> str:
    """Return an amount with its unit, to a tenth, a small one to a hundredth.

    >>> amount_words(42.819, "area", "in"), amount_words(0.25, "area", "mm")
    ('42.8 sq ft', '0.02 m²')
    """
    if measure == "volume" and places is None:
        return volume_words(value, units)
    number = in_units(value, measure, units)
    if places is None:
        places = places_of(number)
    return show_number(number, places) + " " + unit_of(measure, units)


def split_unit(text: str, measure: str) -> "tuple[str, str]":
    """Return a typed amount without its unit, and the system that unit is of: empty for none.

    >>> split_unit("12 m2", "area"), split_unit("4", "film"), split_unit("68°F", "temperature")
    (('12', 'mm'), ('4', ''), ('68', 'in'))
    """
    known, plain = MEASURES[measure], text.strip().lower()
    for units, marks in (("in", known.marks), ("mm", known.metric_marks)):
        for mark in sorted(marks, key=lambda each: (-len(each), each)):
            if plain.endswith(mark):
                return plain[: -len(mark)].strip(), units
    return text, ""


def read_amount(text: str, measure: str, units: str) -> float:
    """Return the amount that `text` says; a bare number is in the unit of `units`.

    Raises
    ------
    Unreadable
        With a sentence for the person.

    >>> read_amount("100 µm", "film", "in") == 100 / 25.4, read_amount("20", "temperature", "mm")
    (True, 68.0)
    """
    bare, own = split_unit(text, measure)
    try:
        number = read_number(bare)
    except Unreadable:
        unit = unit_of(measure, own or units)
        raise Unreadable(f"{quoted(text)} is not a number of {unit}. Write it like 12 or 12.5.")
    return from_units(number, measure, own or units)
