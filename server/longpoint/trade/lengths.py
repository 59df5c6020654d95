"""Read lengths, and show lengths, angles and numbers.

Reading takes what a carpenter writes: ``27 13/16``, ``27-13/16``, ``2' 3 13/16"``, ``27½``,
``706 mm``, or a sum or difference of such. Showing rounds once, to the step asked for, and says
``full`` or ``shy`` where the true value lies more than a quarter of a step off the shown one.
All text is built from integers, since runtimes differ in how they format exact halves.
"""

import math

from .measure import Measure, bare_number
from .reading import INCH, Unreadable, quoted
from .remembered import remember
from .steps import FINEST, STEPS

_METRIC_PER = {8: 1, 16: 1, 32: 2, 64: 10, 1000: 100}
TRUE = 1e-5
"""Inches by which a shown length may differ and be the very one: what adds up in floats."""
_NUDGE = 1e-7  # Of a step: float noise must not turn an exact half or quarter the other way.
_QUARTER = 0.25 + _NUDGE
_SPREAD = 65536.0
"""MicroPython hashes a float by its whole part: so much larger, fractions of an inch differ too."""
_WORDS: "dict[tuple[str, int], dict[float, tuple[str, str]]]" = {}
"""By units and step: lengths that were said lately."""


def read_length(text: str, units: str = "in", *, over_one: bool = False) -> float:
    """Return the length that `text` says, in inches.

    Parameters
    ----------
    text : str
        As typed. Bare numbers are in `units`; after feet they are inches.
    units : str
        ``in`` or ``mm``.
    over_one : bool
        Take fractions over one, as in the label 5/4; else they are asked back: 361/4 is 36 1/4
        with its space forgotten more often than 90 1/4.

    Raises
    ------
    Unreadable
        With a sentence for the person.

    >>> read_length("27-13/16"), read_length("2' 3 13/16\\""), read_length("27 13/16 - 2 1/2")
    (27.8125, 27.8125, 25.3125)
    >>> read_length("254", "mm")
    10.0
    """
    unit, bare = ("mm", text[:-2].rstrip()) if text[-2:] == "mm" else (units, text)
    number = bare_number(bare) if unit in ("in", "mm") else None
    if number is None:
        return Measure(text, units, over_one=over_one).total()
    return number / INCH if unit == "mm" else number


class Scale:
    """How lengths are read and shown: the units in force and the finest step.

    Parameters
    ----------
    units : str
        ``in`` or ``mm``: what is shown.
    step : int
        One of `STEPS`. Millimeters are shown to 1, 1, 1/2, 1/10 and 1/100.
    typed_in : str
        ``in`` or ``mm``: what a bare number in a text means; the units shown where not given.

    >>> Scale().length(60.0546875), Scale("mm", 32).length(60.0625)
    ('60 1/16', '1525.5 mm')
    >>> Scale().length(15.984375), Scale().length(-0.5)
    ('16', '-1/2')
    """

    def __init__(self, units: str = "in", step: int = 16, typed_in: str = "") -> None:
        for each in (units, typed_in or units):
            if each not in ("in", "mm"):
                raise Unreadable(f"{quoted(str(each))} is not a unit: use in or mm.")
        if step not in STEPS:
            raise Unreadable(f"{step} is not a step: use 8, 16, 32, 64 or 1000.")
        self.units = units
        self.step = step
        self.typed_in = typed_in or units
        self._per = step if units == "in" else _METRIC_PER[step]
        self._known = _WORDS.setdefault((units, step), {})
        self._others: dict[object, Scale] = {}
        """Scales that were made of this one, by what they differ in."""

    def other(self) -> "Scale":
        """Return the same step in the other system of units."""
        if None not in self._others:
            self._others[None] = Scale("mm" if self.units == "in" else "in", self.step)
        return self._others[None]

    def finer(self, step: int = 64) -> "Scale":
        """Return this scale, showing at least to `step`."""
        if step <= self.step:
            return self
        if step not in self._others:
            self._others[step] = Scale(self.units, step, self.typed_in)
        return self._others[step]

    def given(self, inches: float) -> str:
        """Return a length that was given, as coarse as it can be said and be itself.

        What was given must not be read as another measure: a gap of 3/32 is no 1/8. One that no
        step shows as it is, since it was worked out somewhere, is said to the nearest 1/64.

        >>> Scale().given(0.09375), Scale().given(0.085), Scale().given(30.152117)
        ('3/32', '0.085', '30 5/32')
        """
        for step in STEPS:
            finer = self.finer(step)
            if step == finer.step and abs(finer.shown(inches) - inches) < TRUE:
                return finer.bare(inches)
        return self.finer().bare(inches)

    def per(self) -> int:
        """Return the shown steps in one unit (inch or millimeter)."""
        return self._per

    def tick(self, inches: float) -> int:
        """Return the shown length as a whole number of steps."""
        return _rounded(self._steps(inches))

    def shown(self, inches: float) -> float:
        """Return the length that is shown, in inches."""
        units = self.tick(inches) / self.per()
        return units if self.units == "in" else units / INCH

    def length(self, inches: float) -> str:
        """Return a length as text, with ``full`` or ``shy`` where it is off by a quarter step."""
        bare, lean = self._words(inches)
        return bare + lean

    def bare(self, inches: float) -> str:
        """Return a length as text, without saying which way it was rounded."""
        return self._words(inches)[0]

    def _words(self, inches: float) -> "tuple[str, str]":
        """Return a length as text, and which way it was rounded."""
        key = inches * _SPREAD
        return self._known.get(key) or remember(self._known, key, self._in_words(inches))

    def _in_words(self, inches: float) -> "tuple[str, str]":
        steps = self._steps(inches)
        size = abs(steps)
        rounded = int(size + 0.5 + _NUDGE)
        left = size - rounded
        lean = ""
        if self.step != FINEST and not -_QUARTER <= left <= _QUARTER:
            lean = " full" if left > 0 else " shy"
        tick = -rounded if steps < 0 else rounded
        if self.units == "mm":
            return _decimal(tick, self._per) + " mm", lean
        return _decimal(tick, FINEST) if self.step == FINEST else _fraction(tick, self.step), lean

    def number(self, inches: float) -> str:
        """Return a given length without its unit, where one that follows names it.

        >>> Scale("mm").number(10 / 25.4), Scale().number(0.09375)
        ('10', '3/32')
        """
        return self.given(inches).replace(" mm", "")

    def said(self, inches: float) -> str:
        """Return a length with its unit, whatever the units in force: ``27 13/16 in shy``."""
        bare, lean = self._words(inches)
        return f"{bare} in{lean}" if self.units == "in" else bare + lean

    def feet(self, inches: float) -> str:
        """Return a length in feet and inches, shown to the step in force.

        >>> print(Scale().feet(144), Scale().feet(-100.5))
        12' -8' 4 1/2"
        """
        tick = self.tick(inches)
        feet, rest = divmod(abs(tick), 12 * self.step)
        words = f"{feet}'"
        if rest:
            part = _decimal(rest, FINEST) if self.step == FINEST else _fraction(rest, self.step)
            words += f' {part}"'
        return ("-" if tick < 0 else "") + words

    def decimal(self, inches: float) -> str:
        """Return the length as a decimal in the units in force: the second way to say it."""
        if self.units == "mm":
            return show_number(inches * INCH, 2) + " mm"
        return _decimal(_rounded(inches * 1000), 1000)

    def _steps(self, inches: float) -> float:
        return (inches if self.units == "in" else inches * INCH) * self._per


def exactly(inches: float) -> str:
    """Return a length in inches with its mark, not rounded: a default is shown as it is used.

    >>> exactly(0.1875), exactly(0.005), exactly(10)
    ('3/16"', '0.005"', '10"')
    """
    if inches * 64 == int(inches * 64):
        return _fraction(int(inches * 64), 64) + '"'
    return show_number(inches, 6) + '"'


def show_angle(degrees: float) -> str:
    """Return an angle to a tenth of a degree.

    >>> show_angle(45), show_angle(22.55)
    ('45.0°', '22.6°')
    """
    return _decimal(_rounded(degrees * 10), 10) + "°"


def brief_angle(degrees: float) -> str:
    """Return an angle to a tenth of a degree, a whole one without its tenth.

    >>> brief_angle(45), brief_angle(22.5)
    ('45°', '22.5°')
    """
    return show_number(degrees, 1) + "°"


def show_number(value: float, places: int = 2) -> str:
    """Return a number to at most `places` decimals, without trailing zeros.

    >>> show_number(12.50), show_number(3), show_number(0.125, 3)
    ('12.5', '3', '0.125')
    """
    text = _decimal(_rounded(value * 10**places), 10**places)
    return text.rstrip("0").rstrip(".") if "." in text else text


def show_money(dollars: float) -> str:
    """Return an amount in dollars and cents.

    >>> show_money(1234.5)
    '$1,234.50'
    """
    text = _decimal(_rounded(abs(dollars) * 100), 100)
    for at in range(len(text) - 6, 0, -3):
        text = text[:at] + "," + text[at:]
    return ("-$" if dollars < 0 else "$") + text


def _rounded(value: float) -> int:
    whole = math.floor(abs(value) + 0.5 + _NUDGE)
    return -whole if value < 0 else whole


def _decimal(tick: int, per: int) -> str:
    """Return tick/per, `per` being 1, 2 or a power of ten, as a decimal with all its places."""
    if per == 2:
        tick, per = tick * 5, 10
    whole, part = divmod(abs(tick), per)
    text = str(whole)
    if per > 1:
        text += "." + str(per + part)[1:]
    return "-" + text if tick < 0 else text


def _fraction(tick: int, per: int) -> str:
    whole, over = divmod(abs(tick), per)
    text = str(whole)
    if over:
        common = over & -over  # `per` is a power of two, so this divides both
        share = str(over // common) + "/" + str(per // common)
        text = text + " " + share if whole else share
    return "-" + text if tick < 0 else text
