"""Strips glued: how many a part takes, and how wide each one is ripped.

Strips edge to edge and layers face to face are the same arithmetic. All are ripped alike, and
each glued side loses what it takes to make it true, so the two outer ones show more than the
others. What the outer sides lose, and what is trimmed off after gluing, is part of the size as
glued: a caller that joints every edge adds one loss at each end.
"""

import math

_HAIR = 1e-9  # Of an inch or a strip: float noise must not add one to sizes that come out exactly.


class Strips:
    """The strips of one part, as few as the stock allows; inches.

    Parameters
    ----------
    size : float
        Of the part as glued, what is still to come off its outer sides included.
    stock : float
        The widest strip (or thickest layer) there is, as it comes.
    loss : float
        What each glued side loses.

    Attributes
    ----------
    count : int
        1 where the stock is wide enough: nothing is glued then.
    rip : float
        Size of each strip before its glued sides are made true.

    Raises
    ------
    ValueError
        More than one is needed, and two glued sides use up the stock.

    >>> panel = Strips(22, 5, 1 / 16)
    >>> panel.count, panel.rip, panel.shows(0), panel.shows(1)
    (5, 4.5, 4.4375, 4.375)
    >>> Strips(5, 5, 1 / 16).count
    1
    """

    def __init__(self, size: float, stock: float, loss: float) -> None:
        self.size = size
        self.loss = loss
        self.count = fewest(size, stock, loss)
        self.rip = (size + 2 * self.joints * loss) / self.count

    @property
    def joints(self) -> int:
        """Number of glue lines."""
        return self.count - 1

    def shows(self, index: int) -> float:
        """Return what a strip measures in the part, counted from 0 at one side."""
        glued_sides = (index > 0) + (index < self.joints)
        return self.rip - glued_sides * self.loss


def fewest(size: float, stock: float, loss: float) -> int:
    """Return how many strips a size takes; see `Strips`.

    >>> fewest(5 + 5 / 8, 5.5, 1 / 16), fewest(11.5, 4, 1 / 8)
    (2, 3)
    """
    if size <= stock + _HAIR:
        return 1
    if is_used_up(stock, loss):
        raise ValueError("two glued sides use up the stock")
    return max(2, int(math.ceil((size - 2 * loss) / (stock - 2 * loss) - _HAIR)))


def is_used_up(stock: float, loss: float) -> bool:
    """Tell whether truing two glued sides leaves nothing of the stock."""
    return stock <= 2 * loss
