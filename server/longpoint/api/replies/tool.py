"""The shelf, and a tool as it declares itself."""

from marshmallow import fields

from longpoint.trade.gives import FIGURE_KINDS
from longpoint.trade.shelf import PLACES

from . import members
from .members import INPUT_KINDS, Reply


class ShelvedTool(Reply):
    """One tool on the shelf."""

    slug = members.text()
    title = members.text()
    question = members.text()


class Place(Reply):
    """A place and its tools, in display order."""

    place = members.text(enum=[place for place, _ in PLACES])
    title = members.text()
    tools = members.listed(ShelvedTool)


class Shelf(Reply):
    """All tools by place."""

    places = members.listed(Place)


class StepChoice(Reply):
    """A step that lengths can be shown to."""

    steps = fields.List(
        fields.Integer(),
        required=True,
        metadata={"description": "Steps it stands for; choosing it sets the first."},
    )
    words = members.text()
    short = members.text("As it stands beside the units, in the page's head.")


class StepChoices(Reply):
    """The steps of one system of units."""

    units = members.text(enum=["in", "mm"])
    title = members.text()
    choices = members.listed(StepChoice)


class Condition(Reply):
    """Holds while the input named has one of the values."""

    input = members.text()
    values = fields.List(fields.Raw(), required=True, data_key="is")


class Offer(Reply):
    """A text that can be tapped instead of typed."""

    value = members.text()
    only_when = fields.Nested(Condition, required=True, allow_none=True)


class Option(Offer):
    """A value that can be chosen."""

    label = members.text()


class Slide(Reply):
    """Degrees between which an angle can be dragged."""

    start = fields.Float(required=True, data_key="from")
    end = fields.Float(required=True, data_key="to")


class AskedInput(Reply):
    """One thing a tool asks for."""

    name = members.text()
    label = members.text()
    kind = members.text(enum=INPUT_KINDS)
    required = members.flag()
    default = fields.Raw(
        required=True,
        metadata={"description": "Raw value used when nothing is given; null for none."},
    )
    default_text = members.text("What stands in the empty field.")
    help = members.text()
    unit = members.text()
    metric = fields.String(
        metadata={"description": "Its unit where millimeters are in force, if it has one."}
    )
    only_when = fields.Nested(Condition, required=True, allow_none=True)
    quantity = members.text("Which size it is, where other tools know it too.")
    takes = fields.String(
        metadata={"description": "What of a job can fill it: pieces, or board feet."}
    )
    choices = fields.List(fields.Nested(Option))
    offers = fields.List(fields.Nested(Offer))
    slide = fields.Nested(Slide, allow_none=True)
    columns = fields.List(fields.Nested(lambda: AskedInput()))
    row = fields.String()
    kept = fields.String()
    min_rows = fields.Integer()
    max_rows = fields.Integer()


class GivenFigure(Reply):
    """A figure of a tool's answers, as other questions can take it."""

    name = members.text()
    kind = members.text(enum=FIGURE_KINDS)
    label = members.text()
    short = members.text("The label in a word or two.")
    quantity = members.text("Which size it is; empty for one of no use elsewhere.")
    sometimes = members.flag()


class Declaration(Reply):
    """A tool as it declares itself."""

    slug = members.text()
    place = members.text(enum=[place for place, _ in PLACES])
    title = members.text()
    question = members.text()
    finds = members.texts("Words of the trade to find it by.")
    version = members.whole("Of its form: a form kept by an older version is brought up to it.")
    inputs = members.listed(AskedInput)
    gives = members.listed(GivenFigure)
    cautions = members.texts()
    sources = members.texts()
    example = fields.Dict(required=True, metadata={"description": "A complete set of inputs."})
