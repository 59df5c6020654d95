"""Exact numbers for money: fractions of whole numbers, rounded to cents once, half up.

The phone's interpreter has neither `decimal` nor `fractions`; its whole numbers have no limit.
"""

import math

_PARTS = 1000000
"""What is typed counts to the millionth."""


class Exact:
    """An exact number, `over` / `under`.

    >>> (Exact.of(640) * Exact.more(15)).cents()
    73600
    >>> (Exact.of(0.1) + Exact.of(0.2) - Exact.of(0.3)).cents()
    0
    """

    def __init__(self, over: int, under: int = 1) -> None:
        self.over = -over if under < 0 else over
        self.under = abs(under)

    @staticmethod
    def of(number: float) -> "Exact":
        """Return a number as typed, to the millionth."""
        return Exact(math.floor(number * _PARTS + 0.5), _PARTS)

    @staticmethod
    def percent(number: float) -> "Exact":
        """Return so many percent as a share: 15 as 0.15."""
        return Exact.of(number) / Exact(100)

    @staticmethod
    def more(number: float) -> "Exact":
        """Return what a number is taken times for so many percent more: 15 as 1.15."""
        return Exact(1) + Exact.percent(number)

    @staticmethod
    def of_cents(cents: int) -> "Exact":
        """Return whole cents as dollars."""
        return Exact(cents, 100)

    def __add__(self, other: "Exact") -> "Exact":
        return Exact(self.over * other.under + other.over * self.under, self.under * other.under)

    def __sub__(self, other: "Exact") -> "Exact":
        return Exact(self.over * other.under - other.over * self.under, self.under * other.under)

    def __mul__(self, other: "Exact") -> "Exact":
        return Exact(self.over * other.over, self.under * other.under)

    def __truediv__(self, other: "Exact") -> "Exact":
        return Exact(self.over * other.under, self.under * other.over)

    def is_positive(self) -> bool:
        """Tell whether it is more than nothing."""
        return self.over > 0

    def cents(self) -> int:
        """Return dollars as whole cents, half a cent away from nothing.

        >>> Exact(5, 1000).cents(), Exact(-5, 1000).cents(), Exact(4, 1000).cents()
        (1, -1, 0)
        """
        cents = (200 * abs(self.over) + self.under) // (2 * self.under)
        return cents if self.over >= 0 else -cents

    def cents_up_to(self, whole: int) -> int:
        """Return the least multiple of `whole` cents that is not less, as cents.

        >>> Exact.of(2558.54).cents_up_to(1000), Exact.of(2560).cents_up_to(1000)
        (256000, 256000)
        """
        return -(-100 * self.over // (self.under * whole)) * whole

    def is_whole(self) -> bool:
        """Tell whether it is a whole number."""
        return self.over % self.under == 0

    def rounded(self) -> int:
        """Return the nearest whole number, a half up.

        >>> Exact(5, 2).rounded(), Exact(12, 5).rounded()
        (3, 2)
        """
        return (2 * self.over + self.under) // (2 * self.under)

    def whole_up(self) -> int:
        """Return the least whole number that is not less.

        >>> Exact.of(3.01).whole_up(), Exact.of(3).whole_up()
        (4, 3)
        """
        return -(-self.over // self.under)

    def near(self) -> float:
        """Return it as a float, for showing.

        A float holds no numbers as long as these grow: they lose their tails first.
        """
        return (self.over * 10**12 // self.under) / 10**12


def dollars(cents: int) -> float:
    """Return whole cents as the dollars that an answer shows."""
    return cents / 100
