"""The numbers of a quote as they were typed, read as every number is; what can't be is said."""

from ..lengths import Scale
from ..measured import Number
from ..reading import Unreadable

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_MONEY = Number("money", "Money", unit="$", most=1e7)
_HOURS = Number("hours", "Hours", most=10000)
_PERCENT = Number("percent", "Percent", unit="%", most=900)
_MARGIN = Number("margin", "Profit of the price", unit="%", most=95)
_RATES = {
    "rate": Number("rate", "An hour", unit="$", most=10000),
    "overhead_percent": Number("overhead", "Overhead", unit="%", most=900),
    "contingency_percent": Number("contingency", "Contingency", unit="%", most=900),
    "profit_percent": Number("profit", "Profit", unit="%", most=900),
}
_ROWS = {
    "minutes": {"minutes": Number("minutes", "Minutes", most=100000)},
    "lines": {"material": _MONEY, "hours": _HOURS},
    "stages": {"percent": Number("stage", "A stage", unit="%", most=100)},
    "extras": {"price": _MONEY, "days": Number("days", "Days", least=-1000, most=1000)},
    "payments": {"amount": _MONEY},
}
"""Lists of a quote and the numbers of their rows."""
_OF_PRICE = ("rates.", "minutes.", "lines.", "items.")


class Read:
    """A job whose quote has numbers where texts were typed.

    Attributes
    ----------
    job : dict
        A copy; what can't be read is None there.
    faults : list of dict
        ``field`` and ``message`` of each number that can't be read or won't do.
    """

    def __init__(self, job: "dict[str, Any]") -> None:
        self.faults: list[dict[str, str]] = []
        quote = dict(job["quote"])
        rates = dict(quote.get("rates") or {})
        asked = dict(_RATES)
        if (rates.get("profit_of") or "price") == "price":
            asked["profit_percent"] = _MARGIN
        quote["rates"] = self._row("rates", rates, asked)
        quote = self._row("quote", quote, {"tax_percent": Number("tax", "Tax", unit="%", most=50)})
        for name in _ROWS:
            rows = quote.get(name) or []
            quote[name] = [self._row(f"{name}.{row['id']}", row, _ROWS[name]) for row in rows]
        hours = {"hours": _HOURS, "actual_hours": _HOURS}
        items = [self._row("items." + item["id"], item, hours) for item in job["items"]]
        self.job = dict(job, quote=quote, items=items)

    def _row(
        self, path: str, row: "dict[str, Any]", asked: "dict[str, Number]"
    ) -> "dict[str, Any]":
        """Return a row with the numbers asked for; a text that is empty says nothing."""
        typed = [name for name in asked if isinstance(row.get(name), str)]
        if not typed:
            return row
        row = dict(row)
        for name in typed:
            try:
                row[name] = _signed(row[name].strip(), asked[name], name == "price")
            except Unreadable as unreadable:
                row[name] = None
                self.faults.append({"field": f"{path}.{name}", "message": _helped(unreadable)})
        return row

    def asks(self) -> "list[str]":
        """Return what must be put right before there is a price."""
        return [each["message"] for each in self.faults if each["field"].startswith(_OF_PRICE)]

    def warnings(self) -> "list[str]":
        """Return what counts as nothing in what is due until it is put right."""
        rest = [each for each in self.faults if not each["field"].startswith(_OF_PRICE)]
        return [each["message"] + " It counts as nothing until it is put right." for each in rest]


def _helped(unreadable: Unreadable) -> str:
    """Return a refusal that says what to write instead."""
    words = str(unreadable)
    is_of_size = " must be " in words
    return words if is_of_size or "rite " in words else words + " Write it like 12, 12.5 or 12 1/2."


def _signed(text: str, asked: Number, can_be_less: bool) -> "float | None":
    """Return what a text says; a change order that makes the job cheaper has a minus before all."""
    if text == "":
        return None
    if can_be_less and text.startswith("-"):
        return -float(asked.read(text[1:], Scale()))
    return float(asked.read(text, Scale()))
