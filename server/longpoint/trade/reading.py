"""Take a typed measure apart: numbers, fractions, signs and unit marks.

The words and marks are the trade's own; :mod:`longpoint.trade.measure` says what they add up to.
"""

from collections import namedtuple

from .remembered import remember

LONGEST = 60
"""More characters than any measure needs; longer texts are refused unread."""

DIGITS = "0123456789"

INCH = 25.4
"""Millimeters in an inch, exactly."""

_SWAPS = (
    ("“", '"'), ("”", '"'), ("″", '"'), ("‘", "'"), ("’", "'"), ("′", "'"), ("''", '"'),
    ("−", "-"), ("–", "-"), ("—", "-"), ("⁄", "/"), ("\u00a0", " "), ("\u2009", " "),
    ("\u202f", " "), ("\t", " "), ("º", "°"), ("˚", "°"),
    ("½", " 1/2"), ("¼", " 1/4"), ("¾", " 3/4"), ("⅛", " 1/8"), ("⅜", " 3/8"), ("⅝", " 5/8"),
    ("⅞", " 7/8"), ("⅓", " 1/3"), ("⅔", " 2/3"), ("⅙", " 1/6"), ("⅚", " 5/6"), ("⅕", " 1/5"),
    ("⅖", " 2/5"), ("⅗", " 3/5"), ("⅘", " 4/5"),
)  # fmt: skip

_WORDS = {
    '"': "in", "in": "in", "inch": "in", "inches": "in",
    "'": "ft", "ft": "ft", "foot": "ft", "feet": "ft",
    "mm": "mm", "cm": "cm", "m": "m",
    "°": "deg", "deg": "deg", "degrees": "deg",
    "full": "lean", "shy": "lean",
}  # fmt: skip


class Unreadable(ValueError):
    """A text or value that can't be taken as what was asked for; ``str()`` is for the person.

    `instead` holds texts that may have been meant, each to take the place of the whole text.
    """

    def __init__(self, message: str, instead: "tuple[str, ...]" = ()) -> None:
        super().__init__(message)
        self.instead = instead


Token = namedtuple("Token", ("kind", "text", "spaced", "at"))
"""`kind` is number, sign, slash or a unit; `spaced` says that a space stood before it.

`at` is where it begins in the plain text that `plain_text` makes.
"""


_TOKENS: "dict[str, list[Token]]" = {}
"""Texts that were taken apart lately: of a form that is read anew, one has changed."""


def quoted(text: str) -> str:
    """Return `text` in quotation marks, cut to what fits in a sentence."""
    return '"' + (text if len(text) <= 24 else text[:20] + "…") + '"'


def without_thousands(text: str) -> str:
    """Return an amount of money without the commas between its thousands.

    Raises
    ------
    Unreadable
        A comma stands where no thousands end.

    >>> without_thousands("1,250.50 + 12,000")
    '1250.50 + 12000'
    """
    at, plain = 0, ""
    while at < len(text):
        end = max(at + 1, _while_in(text, at, DIGITS + ".,"))
        plain += _number_without(text[at:end], text)
        at = end
    return plain


def _number_without(number: str, text: str) -> str:
    whole, point, cents = number.partition(".")
    groups = whole.split(",")
    first, groups = groups[0], groups[1:]
    is_money = 0 < len(first) <= 3 and not [1 for group in groups if len(group) != 3]
    if "," in cents or (groups and not is_money):
        meant = text.replace(",", ".").strip() if text.count(",") == 1 and not point else ""
        raise Unreadable(
            f"{quoted(text.strip())} has a comma that ends no thousands: write 1,250 or 1250, and "
            "cents with a point, like 1.25.",
            (meant,) if meant else (),
        )
    return whole.replace(",", "") + point + cents


def plain_text(text: str) -> str:
    """Return a typed measure in small letters and plain marks: ``27½″`` becomes ``27 1/2"``.

    Raises
    ------
    Unreadable
        The text is longer than any measure.
    """
    if len(text) > LONGEST:
        raise Unreadable(f"{quoted(text)} is {len(text)} characters long: a measure needs fewer.")
    plain = text.lower()
    for odd, usual in _SWAPS:
        plain = plain.replace(odd, usual)
    return plain


def tokens_of(text: str) -> "list[Token]":
    """Split a typed measure into tokens, which are not to be changed.

    Raises
    ------
    Unreadable
        A character or word that no measure holds, a text too long, or a number too long.

    >>> [token.kind for token in tokens_of("2' 3-1/2")]
    ['number', 'ft', 'number', 'sign', 'number', 'slash', 'number']
    """
    known = _TOKENS.get(text)
    return remember(_TOKENS, text, _taken_apart(text)) if known is None else known


def _taken_apart(text: str) -> "list[Token]":
    plain = plain_text(text)
    tokens: list[Token] = []
    at = 0
    while at < len(plain):
        end = _end_of_token(plain, at)
        if plain[at] != " ":
            spaced = at > 0 and plain[at - 1] == " "
            tokens.append(Token(_kind_of(plain[at:end], text), plain[at:end], spaced, at))
        at = end
    return tokens


def _end_of_token(plain: str, at: int) -> int:
    first = plain[at]
    if first in DIGITS or first == ".":
        return _while_in(plain, at, DIGITS + ".")
    if "a" <= first <= "z":
        return _while_in(plain, at, "abcdefghijklmnopqrstuvwxyz")
    return at + 1


def _while_in(plain: str, at: int, allowed: str) -> int:
    while at < len(plain) and plain[at] in allowed:
        at += 1
    return at


def _kind_of(word: str, text: str) -> str:
    if word[0] in DIGITS or word[0] == ".":
        if word.count(".") > 1:
            raise Unreadable(f"{quoted(text)} has more than one decimal point in a number.")
        return "number"
    if word in "+-":
        return "sign"
    if word == "/":
        return "slash"
    if word == ",":
        raise Unreadable(f"{quoted(text)} has a comma: write decimals with a point.")
    if word not in _WORDS:
        raise Unreadable(f"{quoted(text)} can't be read: what is {quoted(word)}?")
    return _WORDS[word]
