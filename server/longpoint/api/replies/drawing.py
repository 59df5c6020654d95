"""A drawing: shapes to scale, in inches, y downwards, degrees clockwise from +x."""

from typing import Any

from marshmallow import fields

from longpoint.trade.drawing import ROLES

from . import members
from .members import Reply


def _point(name: str | None = None) -> fields.List[Any]:
    pair = {"minItems": 2, "maxItems": 2}
    return fields.List(fields.Float(), required=True, data_key=name, metadata=pair)


def _kind(name: str) -> fields.String:
    return members.text(enum=[name])


class _Shape(Reply):
    role = members.text(enum=list(ROLES))


class AreaShape(_Shape):
    """A closed polygon."""

    shape = _kind("area")
    points = fields.List(_point(), required=True)


class LineShape(_Shape):
    """A straight line."""

    shape = _kind("line")
    start = _point("from")
    end = _point("to")


class ArcShape(_Shape):
    """An arc from `start`, `sweep` degrees clockwise."""

    shape = _kind("arc")
    center = _point()
    radius = members.number()
    start = members.number()
    sweep = members.number()


class CircleShape(_Shape):
    """A full circle."""

    shape = _kind("circle")
    center = _point()
    radius = members.number()


class DimensionShape(_Shape):
    """A dimension; `lane` counts lanes to the left of its direction."""

    shape = _kind("dimension")
    start = _point("from")
    end = _point("to")
    lane = members.whole()
    text = members.text()


class TagShape(_Shape):
    """A numbered balloon."""

    shape = _kind("tag")
    at = _point()
    text = members.text()


class TextShape(_Shape):
    """Words."""

    shape = _kind("text")
    at = _point()
    text = members.text()
    anchor = members.text(enum=["start", "middle", "end"])


SHAPES = (AreaShape, LineShape, ArcShape, CircleShape, DimensionShape, TagShape, TextShape)

_ONE_OF = [{"$ref": f"#/components/schemas/{shape.__name__}"} for shape in SHAPES]


class Drawing(Reply):
    """A view drawn to scale."""

    title = members.text()
    description = members.text()
    box = fields.List(fields.Float(), required=True, metadata={"minItems": 4, "maxItems": 4})
    shapes = fields.List(fields.Raw(metadata={"oneOf": _ONE_OF}), required=True)
    full_size = members.flag("A template, worth a print at its true size.")
