"""A job worked out: its questions answered, and the three sheets made from them."""

from marshmallow import fields

from . import members
from .answer import Figure, PieceEnd, Table
from .form import FieldError, Waiting
from .members import Reply
from .quote import Quote


class CarriedNumber(Reply):
    """A number that an input takes from another question."""

    input = members.text()
    entry = members.text("Id of the question that gives it.")
    figure = members.text("The figure or the input there.")
    value = fields.Raw(required=True, metadata={"description": "Inches, degrees, or a choice."})
    text = members.text()
    title = members.text("The question's title.", name="from")


class JobEntry(Reply):
    """One question of a job."""

    id = members.text()
    tool = members.text()
    letter = members.text()
    title = members.text()
    verdict = members.text("Empty where it is not answered.")
    figures = members.listed(Figure)
    errors = members.listed(FieldError)
    waiting = members.maybe(Waiting)
    carried = members.listed(CarriedNumber)
    pieces = members.whole()
    marks = members.whole()


class JobItem(Reply):
    """Something made or fitted."""

    id = members.text()
    title = members.text()
    entries = members.listed(JobEntry)


class LeftOver(Reply):
    """An offcut that a plan leaves, its sizes as they would be typed, rounded down."""

    length = members.text()
    width = members.text("Empty of a stick.")
    count = members.whole()


class BuyLine(Reply):
    """One line to buy."""

    of = members.text("What a tick of it names.")
    stock = members.text()
    title = members.text()
    sold = members.text()
    amount = members.number()
    unit = members.text()
    amount_text = members.text()
    cost_text = members.text("Empty where no price is known.")
    from_hand = members.number("Of what is on hand, in the unit: not counted in the amount.")
    taken = fields.List(
        fields.Integer(), required=True,
        metadata={"description": "How many of each of the stock's `on_hand`, in their order."},
    )  # fmt: skip
    offered = fields.List(
        fields.Integer(), required=True,
        metadata={"description": "Places in the shop's offcuts that pieces come out of."},
    )  # fmt: skip
    on_hand = members.texts("What is there already, and where it stands.")
    cost = members.number(none=True)
    paid = members.number(none=True)
    state = members.text()
    proved = fields.Boolean(required=True, allow_none=True)
    words = members.text("How the amount is known, or why it is not.")
    layout = members.listed(Table)
    leaves = members.listed(LeftOver)
    net = fields.Float(metadata={"description": "Board feet without the waste."})
    waste = fields.Float(metadata={"description": "Percent."})
    longest = fields.Float()
    widest = fields.Float()


class Yard(Reply):
    """What is bought."""

    lines = members.listed(BuyLine)
    cost_text = members.text()
    paid_text = members.text()
    cost = members.number()
    paid = members.number()


class Stale(Reply):
    """How a piece that was cut differs from what is wanted now."""

    was = members.number()
    by = members.number("Inches of the size farthest off, positive where it can be taken down.")
    words = members.text()


class JobCut(Reply):
    """One piece of wood."""

    of = members.text("What a tick of it names.")
    tag = members.text("What is pencilled on it.")
    item = members.text()
    entry = members.text()
    name = members.text()
    length = members.number()
    text = members.text()
    short_text = members.text()
    rough_text = members.text("The size first cut to; empty where nothing is left on.")
    section_text = members.text()
    width = members.number(none=True)
    thickness = members.number(none=True)
    ends = members.listed(PieceEnd)
    ends_text = members.text()
    tick = members.whole(none=True)
    per = members.whole(none=True)
    state = members.text()
    spoiled = members.whole("Pieces spoiled under this mark.")
    again = members.text("What is on hand that a spoiled one comes out of; else empty.")
    stale = members.maybe(Stale)


class CutGroup(Reply):
    """Pieces out of one stock at one setting of the saw."""

    stock = members.text()
    title = members.text()
    setting = members.text()
    first = fields.Boolean(
        required=True, metadata={"description": "It is milled or glued up, then others are cut."}
    )
    cuts = members.listed(JobCut)


class SawStep(Reply):
    """Something done before the crosscuts: boards milled, strips glued up."""

    of = members.text("What a tick of it names.")
    entry = members.text("The question that says it; empty where the stock does.")
    title = members.text()
    words = members.text()
    state = members.text()


class Saw(Reply):
    """What is cut."""

    steps = members.listed(SawStep)
    groups = members.listed(CutGroup)


class JobMark(Reply):
    """One pencil mark."""

    of = members.text()
    entry = members.text()
    title = members.text()
    tag = members.text()
    label = members.text()
    datum = members.text(name="from")
    value = members.number()
    text = members.text()
    tick = members.whole(none=True)
    per = members.whole(none=True)
    state = members.text()


class JobCheck(Reply):
    """Something looked at before leaving."""

    of = members.text()
    words = members.text()
    state = members.text()


class MarkedItem(Reply):
    """What is marked on one item."""

    item = members.text()
    title = members.text()
    marks = members.listed(JobMark)
    checks = members.listed(JobCheck)


class Site(Reply):
    """What is marked and checked."""

    items = members.listed(MarkedItem)


class FinishStep(Reply):
    """One coat, one sanding, or the hanging of a finish plan."""

    of = members.text("What a tick of it names.")
    words = members.text()
    when = members.text("When it is due; of one that is ticked, when it was done.")
    window = members.text("From when until when the label lets it begin; else empty.")
    state = members.text()
    caution = members.text("It was ticked too early or too late; else empty.")
    begins = members.text("Local, 2026-11-30T07:45; empty while no date is said.")
    ends = members.text()


class FinishPlan(Reply):
    """A finish plan with its ticks: what is not done yet counts from what was."""

    entry = members.text("Id of the question that plans it.")
    item = members.text("Title of its item.")
    title = members.text()
    begins = members.text("The date it begins on; empty while none is said.")
    steps = members.listed(FinishStep)


class Job(Reply):
    """A job worked out."""

    items = members.listed(JobItem)
    yard = fields.Nested(Yard, required=True)
    saw = fields.Nested(Saw, required=True)
    site = fields.Nested(Site, required=True)
    quote = members.maybe(Quote)
    finish = members.listed(FinishPlan)
    warnings = members.texts()
    progress = members.number("1 for a finished reply.")


class PatternQuestion(Reply):
    """One question that an item begins with."""

    key = members.text("What the pattern's other questions name it by.")
    tool = members.text()
    title = members.text("Empty where the tool's own will do.")
    presets = fields.Dict(required=True, metadata={"description": "Inputs that it begins with."})
    asks = members.texts("Inputs that are asked first: what a tape or a catalog says.")


class Pattern(Reply):
    """A kind of item, and the questions that it begins with."""

    slug = members.text()
    version = members.whole()
    title = members.text()
    words = members.texts("Words of the trade to find it by.")
    drawing = members.text("Slug of the tool whose drawing stands for it.")
    questions = members.listed(PatternQuestion)
    stock = members.texts("Titles of what its pieces are cut from.")


class Patterns(Reply):
    """All patterns, in the order they are offered in."""

    patterns = members.listed(Pattern)
