"""What a customer pays: price and tax in stages, change orders, what came in, what is left."""

from ..lengths import show_money, show_number
from ..money.exact import Exact, dollars
from ..money.stages import in_stages, stage_words, stages_fault
from .quote_tax import INCLUDED, tax_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def due(quote: "dict[str, Any]", price: int, material: int) -> "dict[str, Any]":
    """Return tax, total, stages, change orders, payments and the rest; all columns add up.

    Parameters
    ----------
    price, material : int
        Cents. Tax is taken as the quote says: on nothing, the material or the price, or it is in
        the price already and adds nothing.
    """
    tax, tax_words = tax_of(quote, price, material)
    is_included = quote.get("tax_on") == INCLUDED
    total = price if is_included else price + tax
    extras = [_extra(each) for each in quote.get("extras") or []]
    agreed = sum([each["cents"] for each in extras if each["state"] == "agreed"])
    payments = [_payment(each) for each in quote.get("payments") or []]
    paid = sum([Exact.of(each["amount"]).cents() for each in payments])
    stages, fault = _stages(quote, total)
    said = {
        "tax": tax,
        "total": total,
        "extras_total": agreed,
        "whole": total + agreed,
        "paid": paid,
        "left": total + agreed - paid,
    }
    reply: dict[str, Any] = {"tax_words": tax_words, "tax_included": is_included}
    reply.update({"stages": stages, "stages_fault": fault})
    reply["extras"] = [{name: each[name] for name in each if name != "cents"} for each in extras]
    reply["payments"] = payments
    for name in said:
        reply[name] = dollars(said[name])
        reply[name + "_text"] = show_money(dollars(said[name]))
    return reply


def _extra(extra: "dict[str, Any]") -> "dict[str, Any]":
    cents = Exact.of(extra.get("price") or 0).cents()
    return {
        "id": extra["id"],
        "title": extra.get("title") or "Change",
        "state": extra.get("state") or "offered",
        "cents": cents,
        "price": dollars(cents),
        "price_text": ("+" if cents > 0 else "") + show_money(dollars(cents)),
        "days_text": _days(extra.get("days") or 0),
    }


def _payment(payment: "dict[str, Any]") -> "dict[str, Any]":
    amount = dollars(Exact.of(payment.get("amount") or 0).cents())
    return {"id": payment["id"], "amount": amount, "text": show_money(amount) if amount else ""}


def _days(days: float) -> str:
    """Return days more or less in words; empty for none.

    >>> _days(2), _days(-1), _days(0)
    ('2 days later', '1 day sooner', '')
    """
    if days == 0:
        return ""
    word = "day" if abs(days) == 1 else "days"
    return f"{show_number(abs(days))} {word} " + ("later" if days > 0 else "sooner")


def _stages(quote: "dict[str, Any]", total: int) -> "tuple[list[dict[str, Any]], str]":
    """Return the stages of the total; a sentence instead where they don't make 100 %."""
    stages = quote.get("stages") or []
    percents = [float(stage.get("percent") or 0) for stage in stages]
    if not any(percents):
        return [], ""
    fault = stages_fault(percents)
    if fault:
        return [], fault
    amounts = in_stages(total, percents)
    rows = []
    for at, stage in enumerate(stages):
        name, percent = stage_words(stage.get("name") or "", at, percents[at])
        amount = dollars(amounts[at])
        rows.append(
            {
                "id": stage["id"],
                "name": name,
                "percent_text": percent,
                "amount": amount,
                "text": show_money(amount),
            }
        )
    return rows, ""
