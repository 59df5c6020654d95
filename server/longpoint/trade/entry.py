"""A length as it stands in a field: with its unit where that is not in force, and on the pad."""

from .lengths import read_length
from .reading import Token, Unreadable, plain_text, tokens_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_MARK = {"in": '"', "mm": " mm"}
_UNITS = ("in", "ft", "mm", "cm", "m")


def marked(text: str, units: str) -> str:
    """Return a typed length with the unit of its bare numbers written out.

    A text that can't be read comes back as it is.

    >>> marked("27 13/16", "in"), marked("706", "mm"), marked("27 13/16 - 2 1/2", "in")
    ('27 13/16"', '706 mm', '27 13/16" - 2 1/2"')
    >>> marked("2' 3 1/2", "mm"), marked("2 ft", "in"), marked("1 foot 3", "in")
    ("2' 3 1/2", '2 ft', '1 foot 3')
    """
    try:
        read_length(text, units)
        plain, tokens = plain_text(text), tokens_of(text)
    except Unreadable:
        return text
    parts, done, unit = [], 0, ""
    for number, token in enumerate(tokens):
        unit = token.kind if token.kind in _UNITS else unit
        if not _ends_term(tokens, number):
            continue
        end = token.at + len(token.text)
        parts.append(plain[done:end] + ("" if unit else _MARK[units]))
        done, unit = end, ""
    return "".join(parts) + plain[done:]


def _ends_term(tokens: "list[Token]", number: int) -> bool:
    """Tell whether the term that this token belongs to ends with it."""
    if tokens[number].kind in ("sign", "lean"):
        return False
    if number + 1 == len(tokens) or tokens[number + 1].kind == "lean":
        return True
    after = tokens[number + 1]
    # A dash with a space on neither side joins, as in 27-13/16.
    joins = number + 2 < len(tokens) and not after.spaced and not tokens[number + 2].spaced
    return after.kind == "sign" and not (after.text == "-" and joins)


def is_unfinished(text: str) -> bool:
    """Tell whether an entry stops in the middle, as every entry does while it is typed.

    >>> [is_unfinished(text) for text in ("27 ", "27 13/", "27 13", "27 13/16")]
    [True, True, True, False]
    """
    if text[-1:] in (" ", "/", "+", "-", "−", "."):
        return True
    try:
        kinds = [token.kind for token in tokens_of(text)]
    except Unreadable:
        return False
    return kinds[-2:] == ["number", "number"]


def inch_split(text: str) -> "dict[str, Any] | None":
    """Return where the last inch of an entry begins and ends, so that its fraction can be changed.

    Returns
    -------
    dict or None
        ``before`` and ``after``: what stays when the fraction is changed; ``share``: the fraction
        it has now, None where it has no number yet. None for what counts no inches.

    >>> inch_split("27 13/16")
    {'before': '27', 'share': 0.8125, 'after': ''}
    >>> inch_split("2' 3"), inch_split('27.5"')["share"], inch_split("706 mm")
    ({'before': "2' 3", 'share': 0.0, 'after': ''}, 0.5, None)
    >>> inch_split("8 +")
    {'before': '8 +', 'share': None, 'after': ''}
    """
    try:
        plain, tokens = plain_text(text), tokens_of(text)
    except Unreadable:
        return None
    end = len(tokens)
    while end and tokens[end - 1].kind in ("lean", "in"):
        end -= 1
    if end and tokens[end - 1].kind in ("mm", "cm", "m", "deg"):
        return None
    after = plain[tokens[end].at :] if end < len(tokens) else ""
    if not end or tokens[end - 1].kind != "number":
        share = 0.0 if end and tokens[end - 1].kind == "ft" else None
        return {"before": plain.strip(), "share": share, "after": ""}
    if end > 2 and tokens[end - 2].kind == "slash":
        return _over_split(plain, tokens, end - 3, after)
    return _whole_split(plain, tokens[end - 1], after)


def _over_split(
    plain: str, tokens: "list[Token]", start: int, after: str
) -> "dict[str, Any] | None":
    over, under = tokens[start].text, tokens[start + 2].text
    if "." in over + under or int(under) == 0 or int(over) >= int(under):
        return None
    before = plain[: tokens[start].at].rstrip()
    joined = start > 0 and tokens[start - 1].kind == "sign" and not tokens[start].spaced
    if joined and not tokens[start - 1].spaced and start > 1:
        before = before[:-1]
    return {"before": before, "share": int(over) / int(under), "after": after}


def _whole_split(plain: str, number: Token, after: str) -> "dict[str, Any]":
    whole, _, part = number.text.partition(".")
    share = int(part) / 10 ** len(part) if part else 0.0
    return {"before": plain[: number.at] + whole, "share": share, "after": after}
