"""The trade core: all the carpentry there is, in Python that the phone runs too.

Nothing in this package imports more than ``math``, ``json``, ``collections.namedtuple`` and
the package itself: CPython runs it on the server, MicroPython runs the same files on the phone.

Inside the core a length is a float in inches, an angle a float in degrees, a weight in pounds,
money in dollars. Numbers become text only in :mod:`longpoint.trade.lengths`.
"""
