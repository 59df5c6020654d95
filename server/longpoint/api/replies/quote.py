"""A job's quote worked out: lines, build-up, what is due, estimate against actual."""

from marshmallow import fields

from . import members
from .members import Reply


class QuoteOperation(Reply):
    """Something that takes time on an item, and how many there are of it."""

    operation = members.text()
    label = members.text()
    count = members.whole()
    minutes = members.number("Of one; null where the shop has not said.", none=True)


class QuoteLine(Reply):
    """A line of a quote: an item, or something of the quote's own."""

    id = members.text("Of the item or the line; empty for what belongs to the whole job.")
    title = members.text()
    count = members.whole()
    material_text = members.text()
    hours = members.number(none=True)
    hours_text = members.text()
    is_typed = fields.Boolean(required=True)
    price = members.number("Dollars: its share of the price.", none=True)
    price_text = members.text()
    operations = members.listed(QuoteOperation)


class QuoteRow(Reply):
    """A row of the build-up: parts and sums, in order."""

    name = members.text()
    label = members.text()
    text = members.text()
    value = members.number()


class QuoteStage(Reply):
    """A part of the total that is paid at once."""

    id = members.text()
    name = members.text()
    percent_text = members.text()
    amount = members.number()
    text = members.text()


class QuoteExtra(Reply):
    """A change order."""

    id = members.text()
    title = members.text()
    state = members.text()
    price = members.number()
    price_text = members.text()
    days_text = members.text()


class QuotePayment(Reply):
    """A payment that came in."""

    id = members.text()
    amount = members.number()
    text = members.text("Empty where no amount was said.")


class QuoteFault(Reply):
    """A number of the quote that can't be read, or won't do."""

    field = members.text("As `rates.rate`, `items.` or `lines.` with an id and `.hours`.")
    message = members.text()


class QuoteDue(Reply):
    """What the customer pays; every column adds up to the cent."""

    tax_words = members.text("Empty for no tax.")
    tax_included = members.flag("The price holds it: the total is the price.")
    tax = members.number()
    tax_text = members.text()
    total = members.number("Price and tax, without change orders.")
    total_text = members.text()
    extras_total = members.number("Of the change orders agreed on.")
    extras_total_text = members.text()
    whole = members.number()
    whole_text = members.text()
    paid = members.number()
    paid_text = members.text()
    left = members.number()
    left_text = members.text()
    stages = members.listed(QuoteStage)
    stages_fault = members.text("Why there are no stages; else empty.")
    extras = members.listed(QuoteExtra)
    payments = members.listed(QuotePayment)


class QuoteCompared(Reply):
    """An item as it was quoted and as it went."""

    id = members.text()
    title = members.text()
    hours_text = members.text()
    actual_text = members.text("Empty where no hours worked were said.")
    over_text = members.text()
    material_text = members.text()
    paid_text = members.text()


class QuoteCompare(Reply):
    """Estimate against actual."""

    rows = members.listed(QuoteCompared)
    words = members.text("What was kept of the price in the end.")


class QuoteLearned(Reply):
    """Minutes of one operation, as the items that are finished took them."""

    operation = members.text()
    label = members.text()
    minutes = members.number()


class Quote(Reply):
    """The quote of a job, worked out; without rates its lines alone."""

    asks = members.texts("What is still asked before there is a price.")
    warnings = members.texts()
    faults = members.listed(QuoteFault)
    lines = members.listed(QuoteLine)
    build = members.listed(QuoteRow)
    price = members.number("Dollars, before tax.", none=True)
    price_text = members.text()
    kept = members.text("What stays of the price, in words.")
    drift = members.text("How the price would be by today's numbers; empty where it is the same.")
    due = members.maybe(QuoteDue)
    compare = members.maybe(QuoteCompare)
    learned = members.listed(QuoteLearned)
