"""What a job keeps of its quote: rates, minutes, stages, extras, payments, the punch list."""

from .shapes import ListOf, Maybe, Numeral, OneOf, Thing, Typed, Words
from .signature_shape import Strokes

_ID = Words(64, least=1)
_TITLE = Words(120)
_NOTE = Words(4000)
_WHEN = Words(40)
_MONEY = Maybe(Typed(0, 1e7))
_HOURS = Maybe(Typed(0, 100000))
_PERCENT = Maybe(Typed(0, 900))

RATES = Thing(
    [
        ("rate", _MONEY),
        ("overhead_percent", _PERCENT),
        ("contingency_percent", _PERCENT),
        ("profit_of", OneOf("price", "cost")),
        ("profit_percent", _PERCENT),
        ("round_up", OneOf("cent", "one", "five", "ten")),
    ]
)
"""The shop's rates as this quote was made with them: dollars an hour, percents."""
MINUTES = ListOf(
    Thing([("id", _ID), ("minutes", _HOURS)], needs=("id",)), 60, "operations", by_id=True
)
"""The shop's minutes for one of each operation; the id is the operation's name."""
_HAND = Thing([("at", _WHEN), ("by", _TITLE), ("strokes", Strokes())])
"""Who signed when: by name, by hand, or both."""
EXTRA = Thing(
    [
        ("id", _ID),
        ("title", _TITLE),
        ("words", _NOTE),
        ("price", Maybe(Typed(-1e7, 1e7))),
        ("days", Maybe(Typed(-1000, 1000))),
        ("state", OneOf("offered", "agreed", "declined")),
        ("at", _WHEN),
        ("by", _TITLE),
        ("strokes", Strokes()),
        ("shop", _HAND),
    ],
    needs=("id",),
)
"""A change order: what it is, dollars and days more or less, who agreed when, the signatures."""
PUNCH = Thing(
    [("id", _ID), ("words", _NOTE), ("state", OneOf("open", "done")), ("at", _WHEN)], needs=("id",)
)
SIGNED = Thing(_HAND.keys + [("shop", _HAND)])
"""The customer's signature, and the shop's beside it."""

_AGREED_LINE = Thing(
    [
        ("line", Words(64)),
        ("title", _TITLE),
        ("count", Numeral(0, 10000, whole=True)),
        ("price", Numeral(0, 1e7)),
    ],
    needs=("line", "price"),
)
AGREED = Thing(
    [
        ("price", Maybe(Numeral(0, 1e7))),
        ("tax", Maybe(Numeral(0, 1e7))),
        ("lines", ListOf(_AGREED_LINE, 300, "lines agreed on")),
    ]
    + SIGNED.keys
)
"""What both signed, in dollars: it stands, whatever hours, stock and rates do after that.

`tax` is what comes on top of the price; `line` is the id of an item or of a line of the quote.
"""

QUOTE = Thing(
    [
        ("rates", RATES),
        ("minutes", MINUTES),
        (
            "lines",
            ListOf(
                Thing(
                    [("id", _ID), ("title", _TITLE), ("material", _MONEY), ("hours", _HOURS)],
                    needs=("id",),
                ),
                60,
                "lines",
                by_id=True,
            ),
        ),
        ("price_by", OneOf("item", "sum")),
        ("tax_on", OneOf("nothing", "material", "price", "included")),
        ("tax_percent", Maybe(Typed(0, 50))),
        (
            "stages",
            ListOf(
                Thing([("id", _ID), ("name", _TITLE), ("percent", _PERCENT)], needs=("id",)),
                12,
                "stages",
                by_id=True,
            ),
        ),
        ("date", _WHEN),
        ("valid_until", _WHEN),
        ("begins", _TITLE),
        ("ends", _TITLE),
        ("work", _NOTE),
        ("exclusions", _NOTE),
        ("terms", _NOTE),
        ("agreed", AGREED),
        ("extras", ListOf(EXTRA, 100, "change orders", by_id=True)),
        (
            "payments",
            ListOf(
                Thing(
                    [("id", _ID), ("words", _TITLE), ("amount", _MONEY), ("at", _WHEN)],
                    needs=("id",),
                ),
                100,
                "payments",
                by_id=True,
            ),
        ),
        ("punch", ListOf(PUNCH, 200, "lines of the punch list", by_id=True)),
        ("signed", Thing(SIGNED.keys + [("came_up", _WHEN)])),
    ]
)
"""The quote of a job: what was said of it.

`came_up` is when something came up on the punch list after the sign-off: it is signed again.
"""
