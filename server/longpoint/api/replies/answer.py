"""An answer: figures, pieces, marks, tables, drawings and words, each list in display order."""

from marshmallow import fields

from longpoint.trade.gives import FIGURE_KINDS

from . import members
from .drawing import Drawing
from .members import Reply


class Ticked(Reply):
    """A length lands on tick `tick` of a rule with `per` ticks to the inch or millimeter."""

    tick = members.whole(none=True)
    per = members.whole(none=True)


class Figure(Ticked):
    """One number of the answer."""

    name = members.text()
    label = members.text()
    short = members.text("The label in a word or two, for where it stands small.")
    kind = members.text(enum=FIGURE_KINDS)
    value = fields.Raw(
        required=True,
        metadata={
            "description": "Inches, degrees, pounds or dollars; a text where the kind is text."
        },
    )
    text = members.text("In the units asked for.")
    also = members.text("A second way to say it, or empty.")
    lead = members.flag()


class PieceEnd(Reply):
    """What is cut on one end."""

    joint = members.text()
    saw = members.number("Degrees off a square cut.")
    bevel = members.number("Degrees the blade leans.")
    note = members.text()


class Piece(Ticked):
    """A piece to cut; lengths in inches."""

    tag = members.text()
    name = members.text()
    count = members.whole()
    thickness = members.number(none=True)
    width = members.number(none=True)
    length = members.number("What is marked on the tape.")
    short_point = members.number(none=True)
    text = members.text()
    short_text = members.text()
    section_text = members.text("Thickness and width, as far as they are known.")
    ends = members.listed(PieceEnd)
    ends_text = members.text()
    stock = members.text()
    role = members.text("Tells the stocks of one question apart: frame, panel.")


class Mark(Ticked):
    """A pencil mark, inches from the datum that `from` names."""

    tag = members.text()
    label = members.text()
    datum = fields.String(required=True, data_key="from")
    value = members.number()
    text = members.text()


class Table(Reply):
    """A table of texts; `pick` is the row that the answer used."""

    name = members.text()
    columns = members.texts()
    rows = fields.List(fields.List(fields.String()), required=True)
    pick = members.whole(none=True)


class Keep(Reply):
    """A row that can be put on a list of the person's own."""

    input = members.text("The input with rows that the list belongs to.")
    words = members.text("What is kept.")
    row = fields.Dict(required=True, metadata={"description": "Raw values by column."})


class Offcut(Reply):
    """What a plan leaves that is worth keeping."""

    length = members.number("Inches.")
    width = members.number("Inches; none of a stick.", none=True)
    count = members.whole()


class Answer(Reply):
    """The whole answer, each list in display order."""

    tool = members.text()
    units = members.text(enum=["in", "mm"])
    step = members.whole()
    inputs = fields.Dict(
        required=True, metadata={"description": "As read, defaults filled in; none of a brief one."}
    )
    verdict = members.text("The one sentence that decides, with what was assumed.")
    figures = members.listed(Figure)
    pieces = members.listed(Piece)
    marks = members.listed(Mark)
    tables = members.listed(Table)
    drawing = members.maybe(Drawing)
    details = members.listed(Drawing)
    notes = members.texts()
    cautions = members.texts()
    keeps = members.listed(Keep)
    offcuts = members.listed(Offcut)
    sources = members.texts()
    progress = members.number("1 for a finished answer.")
    is_brief = members.flag(
        "Whether pieces, tables and drawings come with the next answer: only on the phone."
    )
