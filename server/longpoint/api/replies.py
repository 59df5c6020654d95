"""Schemas of what the API answers, for its description: the core makes the JSON itself."""

from typing import Any

import marshmallow as ma
from marshmallow import fields

from longpoint.trade.drawing import ROLES
from longpoint.trade.shelf import PLACES

_KINDS = ["length", "angle", "number", "count", "choice", "flag", "text", "rows"]
_FIGURES = ["length", "angle", "number", "count", "money", "text"]
_SHAPES = ["area", "line", "arc", "circle", "dimension", "tag", "text"]


class Reply(ma.Schema):
    """All that is described is always there, and nothing else is."""

    class Meta:
        unknown = ma.RAISE


def _text(description: str = "", **rest: Any) -> fields.String:
    return fields.String(required=True, metadata=_described(description, rest))


def _texts(description: str = "") -> fields.List[Any]:
    return fields.List(fields.String(), required=True, metadata=_described(description, {}))


def _number(description: str = "", none: bool = False) -> fields.Float:
    return fields.Float(required=True, allow_none=none, metadata=_described(description, {}))


def _whole(description: str = "", none: bool = False) -> fields.Integer:
    return fields.Integer(required=True, allow_none=none, metadata=_described(description, {}))


def _any(description: str) -> fields.Raw:
    return fields.Raw(required=True, metadata=_described(description, {}))


def _list(schema: type[ma.Schema]) -> fields.List[Any]:
    return fields.List(fields.Nested(schema), required=True)


def _point(**rest: Any) -> fields.List[Any]:
    return fields.List(fields.Float(), metadata={"minItems": 2, "maxItems": 2}, **rest)


def _described(description: str, rest: dict[str, Any]) -> dict[str, Any]:
    return rest | ({"description": description} if description else {})


class ShelvedTool(Reply):
    """One tool on the shelf."""

    slug = _text()
    title = _text()
    question = _text()


class Place(Reply):
    """A place and its tools, in display order."""

    place = _text(enum=[place for place, _ in PLACES])
    title = _text()
    tools = _list(ShelvedTool)


class Shelf(Reply):
    """All tools by place."""

    places = _list(Place)


class Condition(Reply):
    """Holds while the input named has one of the values."""

    input = _text()
    values = fields.List(fields.Raw(), required=True, data_key="is")


class Offer(Reply):
    """A text that can be tapped instead of typed."""

    value = _text()
    only_when = fields.Nested(Condition, required=True, allow_none=True)


class Option(Offer):
    """A value that can be chosen."""

    label = _text()


class Slide(Reply):
    """Degrees between which an angle can be dragged."""

    start = fields.Float(required=True, data_key="from")
    end = fields.Float(required=True, data_key="to")


class AskedInput(Reply):
    """One thing a tool asks for."""

    name = _text()
    label = _text()
    kind = _text(enum=_KINDS)
    required = fields.Boolean(required=True)
    default = _any("Raw value used when nothing is given; null for none.")
    default_text = _text("What stands in the empty field.")
    help = _text()
    unit = _text()
    only_when = fields.Nested(Condition, required=True, allow_none=True)
    quantity = _text("Which size it is, where other tools know it too.")
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

    name = _text()
    kind = _text(enum=_FIGURES)
    label = _text()
    short = _text("The label in a word or two.")
    quantity = _text("Which size it is; empty for one of no use elsewhere.")
    sometimes = fields.Boolean(required=True)


class Declaration(Reply):
    """A tool as it declares itself."""

    slug = _text()
    place = _text(enum=[place for place, _ in PLACES])
    title = _text()
    question = _text()
    finds = _texts("Words of the trade to find it by.")
    version = _whole("Of its form: a form kept by an older version is brought up to it.")
    inputs = _list(AskedInput)
    gives = _list(GivenFigure)
    cautions = _texts()
    sources = _texts()
    example = fields.Dict(required=True, metadata={"description": "A complete set of inputs."})


class Ticked(Reply):
    """A length lands on tick `tick` of a rule with `per` ticks to the inch or millimeter."""

    tick = _whole(none=True)
    per = _whole(none=True)


class Figure(Ticked):
    """One number of the answer."""

    name = _text()
    label = _text()
    short = _text("The label in a word or two, for where it stands small.")
    kind = _text(enum=_FIGURES)
    value = _any("Inches, degrees, pounds or dollars; a text where the kind is text.")
    text = _text("In the units asked for.")
    also = _text("A second way to say it, or empty.")
    lead = fields.Boolean(required=True)


class PieceEnd(Reply):
    """What is cut on one end."""

    joint = _text()
    saw = _number("Degrees off a square cut.")
    bevel = _number("Degrees the blade leans.")
    note = _text()


class Piece(Ticked):
    """A piece to cut; lengths in inches."""

    tag = _text()
    name = _text()
    count = _whole()
    thickness = _number(none=True)
    width = _number(none=True)
    length = _number("What is marked on the tape.")
    short_point = _number(none=True)
    text = _text()
    short_text = _text()
    section_text = _text("Thickness and width, as far as they are known.")
    ends = _list(PieceEnd)
    ends_text = _text()
    stock = _text()


class Mark(Ticked):
    """A pencil mark, inches from the datum that `from` names."""

    tag = _text()
    label = _text()
    datum = fields.String(required=True, data_key="from")
    value = _number()
    text = _text()


class Table(Reply):
    """A table of texts; `pick` is the row that the answer used."""

    name = _text()
    columns = _texts()
    rows = fields.List(fields.List(fields.String()), required=True)
    pick = _whole(none=True)


class Shape(Reply):
    """A shape of a drawing: inches, y downwards, degrees clockwise from +x."""

    shape = _text(enum=_SHAPES)
    role = _text(enum=list(ROLES))
    points = fields.List(_point())
    start_point = _point(data_key="from")
    end_point = _point(data_key="to")
    center = _point()
    at = _point()
    radius = fields.Float()
    start = fields.Float()
    sweep = fields.Float()
    lane = fields.Integer()
    text = fields.String()
    anchor = fields.String(metadata={"enum": ["start", "middle", "end"]})


class DrawingReply(Reply):
    """A view drawn to scale."""

    title = _text()
    description = _text()
    box = fields.List(fields.Float(), required=True, metadata={"minItems": 4, "maxItems": 4})
    shapes = _list(Shape)
    full_size = fields.Boolean(
        required=True, metadata={"description": "A template, worth a print at its true size."}
    )


class Keep(Reply):
    """A row that can be put on a list of the person's own."""

    input = _text("The input with rows that the list belongs to.")
    words = _text("What is kept.")
    row = fields.Dict(required=True, metadata={"description": "Raw values by column."})


class Answer(Reply):
    """The whole answer, each list in display order."""

    tool = _text()
    units = _text(enum=["in", "mm"])
    step = _whole()
    inputs = fields.Dict(required=True, metadata={"description": "As read, defaults filled in."})
    verdict = _text("The one sentence that decides, with what was assumed.")
    figures = _list(Figure)
    pieces = _list(Piece)
    marks = _list(Mark)
    tables = _list(Table)
    drawing = fields.Nested(DrawingReply, required=True, allow_none=True)
    details = _list(DrawingReply)
    notes = _texts()
    cautions = _texts()
    keeps = _list(Keep)
    sources = _texts()
    progress = _number("1 for a finished answer.")
