"""What a typed measure adds up to: mixed numbers, feet and inches, sums and differences."""

from .reading import DIGITS, INCH, Token, Unreadable, plain_text, quoted, tokens_of

MOST_DIGITS = 15
"""Whole numbers this long are still exact as floats."""

_BARE = DIGITS + "./ "
_IN_INCHES = {"in": 1.0, "ft": 12.0, "mm": 1 / INCH, "cm": 10 / INCH, "m": 1000 / INCH}


def decimal_of(text: str) -> float:
    """Return a plain decimal such as ``27.8125``, ``.5`` or ``12`` as a float.

    Built from integers, so that every runtime rounds it alike.
    """
    whole, _, part = text.partition(".")
    if not whole + part or len(whole + part) > MOST_DIGITS:
        raise Unreadable(f"{quoted(text)} is not a number that can be measured.")
    digits: int = int(whole + part)
    return digits / float(10 ** len(part))


def bare_number(text: str) -> "float | None":
    """Return a number without a unit, mixed or not; None for what takes more reading.

    Most texts are no more than that, and a list of lengths is long.

    >>> bare_number("27 13/16"), bare_number("27.5"), bare_number("27 13")
    (27.8125, 27.5, None)
    """
    whole, _, share = text.partition(" ")
    if text.strip(_BARE) or len(text) > MOST_DIGITS or "/" in whole:
        return None
    if not share:
        return None if whole in ("", ".") or whole.count(".") > 1 else decimal_of(whole)
    over, _, under = share.partition("/")
    is_mixed = whole.isdigit() and over.isdigit() and under.isdigit() and int(over) < int(under)
    return int(whole) + int(over) / int(under) if is_mixed else None


def read_count(text: str) -> int:
    """Return a whole number, 0 or more, from digits alone.

    >>> read_count("3")
    3
    """
    bare = text.strip()
    if bare == "" or [c for c in bare if c not in DIGITS] or len(bare) > 9:
        raise Unreadable(f"{quoted(bare)} is not a count: write a whole number, like 3.")
    return int(bare)


def fraction_of(over: str, under: str) -> float:
    """Return ``over/under``; both are whole numbers in digits, and `under` is not 0."""
    said = f"{over}/{under}"
    if "." in said:
        raise Unreadable(f"{quoted(said)} mixes a fraction with a decimal point: use one of them.")
    if len(said) > MOST_DIGITS:
        raise Unreadable(f"{quoted(said)} is not a fraction that can be measured.")
    if int(under) == 0:
        raise Unreadable(f"{said} has a 0 under the line: no such fraction. Was 3/8 meant, say?")
    return int(over) / int(under)


def meant_by(over: str, under: str) -> "list[str]":
    """Return what may be meant by a fraction over one, written without a space.

    >>> meant_by("361", "4"), meant_by("2713", "16"), meant_by("5", "4"), meant_by("8", "8")
    (['36 1/4'], ['27 13/16', '271 3/16'], ['1 1/4'], ['1'])
    """
    meant = []
    for cut in range(1, len(over)):
        whole, rest = over[:cut], over[cut:]
        if rest[0] != "0" and int(rest) < int(under):
            meant.append(f"{whole} {rest}/{under}")
    if len(over) <= 2:
        inches, left = divmod(int(over), int(under))
        meant.append(f"{inches} {left}/{under}" if left else str(inches))
    return meant


class Measure:
    """One typed measure on its way to a number.

    Parameters
    ----------
    text : str
        As typed; quoted in messages.
    units : str
        ``in`` or ``mm``: what a bare number means.
    tokens : list of Token
        Where the caller has taken the text apart already.
    wanted : str
        What is asked for, and how to write it.
    over_one : bool
        A fraction over one is meant, as in the label 5/4; else it is asked back.
    """

    def __init__(
        self,
        text: str,
        units: str,
        tokens: "list[Token] | None" = None,
        wanted: str = "a length. Write it like 27 13/16, 2' 3 1/2\" or 706 mm",
        over_one: bool = False,
    ) -> None:
        self.over_one = over_one
        self.text = text
        self.units = units
        self.wanted = wanted
        self.tokens = tokens_of(text) if tokens is None else tokens
        self.at = 0

    def total(self) -> float:
        """Return the sum in inches, or plainly the number where no unit is meant."""
        if len(self.tokens) > 1 and self.tokens[-1].kind == "lean":
            self.tokens = self.tokens[:-1]
        sum_ = self._sign() * self._measure()
        while self.at < len(self.tokens):
            if self._kind() != "sign":
                raise self._lost()
            sum_ += self._sign() * self._measure()
        return sum_

    def _kind(self, ahead: int = 0) -> str:
        at = self.at + ahead
        return self.tokens[at].kind if at < len(self.tokens) else ""

    def _lost(self) -> Unreadable:
        return Unreadable(f"{quoted(self.text)} is not {self.wanted}.")

    def _sign(self) -> int:
        if self._kind() != "sign":
            return 1
        self.at += 1
        return -1 if self.tokens[self.at - 1].text == "-" else 1

    def _measure(self) -> float:
        value = self._mixed()
        unit = self._unit() or self.units
        if unit not in _IN_INCHES:
            raise self._lost()
        inches = value * _IN_INCHES[unit] if unit != "mm" else value / INCH
        if unit != "ft":
            return inches
        if self._tight_dash() and self._kind(1) == "number":
            self.at += 1
        if self._kind() != "number":
            return inches
        rest = self._mixed()
        if self._unit() not in ("", "in"):
            raise self._lost()
        return inches + rest

    def _unit(self) -> str:
        kind = self._kind()
        if kind in ("", "sign", "number", "slash"):
            return ""
        self.at += 1
        return kind

    def _tight_dash(self) -> bool:
        """Tell whether a dash stands here with no space on either side: it joins, not takes."""
        if self._kind() != "sign" or self.at + 1 >= len(self.tokens):
            return False
        dash, after = self.tokens[self.at], self.tokens[self.at + 1]
        return bool(dash.text == "-" and not dash.spaced and not after.spaced)

    def _mixed(self) -> float:
        if self._kind() != "number":
            raise self._lost()
        if self._kind(1) == "slash":
            start = self.at
            over = self._over()
            if over >= 1 and not self.over_one:
                raise self._asked_back(start)
            return over
        whole = self.tokens[self.at].text
        self.at += 1
        joined = 1 if self._tight_dash() else 0
        if self._kind(joined) != "number" or self._kind(joined + 1) != "slash":
            return decimal_of(whole)
        self.at += joined
        over = self._over()
        if over >= 1 or "." in whole:
            raise Unreadable(f"{quoted(self.text)} has a fraction that doesn't follow its number.")
        return decimal_of(whole) + over

    def _asked_back(self, start: int) -> Unreadable:
        """Return the question that a fraction over one raises: was a space meant?"""
        over, under = self.tokens[start].text, self.tokens[start + 2].text
        plain = plain_text(self.text)
        end = self.tokens[start + 2].at + len(under)
        before, after = plain[: self.tokens[start].at], plain[end:]
        meant = meant_by(over, under)
        asks = f"was {' or '.join(meant)} meant?" if meant else "write it as a number."
        return Unreadable(
            f"{over}/{under} is a fraction over one: {asks}",
            tuple([before + each + after for each in meant]),
        )

    def _over(self) -> float:
        if self._kind(2) != "number":
            raise self._lost()
        over, under = self.tokens[self.at].text, self.tokens[self.at + 2].text
        self.at += 3
        return fraction_of(over, under)


def read_angle(text: str) -> float:
    """Return the angle that `text` says, in degrees: ``22.5``, ``22 1/2°``, ``22° 30'``.

    >>> read_angle("22° 30'")
    22.5
    """
    tokens = tokens_of(text)
    kinds = [token.kind for token in tokens]
    if kinds in (["number", "deg", "number", "ft"], ["number", "deg", "number"]):
        minutes = decimal_of(tokens[2].text)
        if minutes < 60:
            return decimal_of(tokens[0].text) + minutes / 60
    return _plain(text, "deg", "an angle. Write it like 45, 22.5 or 22 1/2")


def read_number(text: str, mark: str = "") -> float:
    """Return a plain number: ``12``, ``12.5``, ``12 1/2``, ``-3``.

    With a `mark`, ``%`` or ``$``, that mark may stand with each number.

    >>> read_number("12 1/2"), read_number("20%", "%"), read_number("$40 + $1.50", "$")
    (12.5, 20.0, 41.5)
    """
    bare = text.replace(mark, " ") if mark else text
    return _plain(bare, "", "a number. Write it like 12 or 12.5", text)


def _plain(text: str, mark: str, wanted: str, said: str = "") -> float:
    """Read a number, mixed or not, that may carry the unit `mark`; `said` is the text as typed."""
    tokens = tokens_of(text)
    if mark and tokens and tokens[-1].kind == mark:
        tokens = tokens[:-1]
    if [token for token in tokens if token.kind not in ("number", "sign", "slash")] or not tokens:
        raise Unreadable(f"{quoted(said or text)} is not {wanted}.")
    return Measure(text, "in", tokens, wanted).total()
