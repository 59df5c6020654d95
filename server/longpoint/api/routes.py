"""The routes: the shelf, each tool's declaration, each tool's answer."""

from collections.abc import Callable
from typing import Any

from flask import Response, jsonify
from flask_smorest import abort

from longpoint.trade.calls import shelf
from longpoint.trade.lengths import Scale
from longpoint.trade.refusal import Refusal
from longpoint.trade.shelf import tool_named
from longpoint.trade.tool import Tool
from longpoint.workers.computed import Asked

from . import replies
from .computing import BUSY, computed
from .errors import JsonBlueprint
from .fields import nested
from .forms import ScaleQuery, form_of

View = Callable[..., Response]


def make_blueprint() -> JsonBlueprint:
    """Return the API's routes, with an operation of its own for every tool on the shelf."""
    blueprint = JsonBlueprint("tools", __name__, url_prefix="/api/tools")
    _add_shelf(blueprint)
    for place in shelf():
        for slug in place["tools"]:
            _add_declaration(blueprint, tool_named(slug))
            _add_answer(blueprint, tool_named(slug))
    return blueprint


def _add_shelf(blueprint: JsonBlueprint) -> None:
    @blueprint.route("", methods=["GET"], endpoint="shelf")
    @blueprint.doc(summary="All tools by place.", operationId="shelf")
    @blueprint.response(200, replies.Shelf)
    def get_shelf() -> Response:
        return jsonify(places=[_place(place) for place in shelf()])


def _place(place: dict[str, Any]) -> dict[str, Any]:
    tools = [tool_named(slug) for slug in place["tools"]]
    shelved = [{"slug": t.slug, "title": t.title, "question": t.question} for t in tools]
    return place | {"tools": shelved}


def _add_declaration(blueprint: JsonBlueprint, tool: Tool) -> None:
    @blueprint.route(f"/{tool.slug}", methods=["GET"], endpoint=f"{tool.slug}-declaration")
    @blueprint.doc(summary=f"{tool.title}: what it asks for.", operationId=f"declare-{tool.slug}")
    @blueprint.response(200, replies.Declaration)
    def get_declaration() -> Response:
        return jsonify(tool.declare())


def _add_answer(blueprint: JsonBlueprint, tool: Tool) -> None:
    @blueprint.route(f"/{tool.slug}", methods=["POST"], endpoint=f"{tool.slug}-answer")
    @blueprint.doc(
        summary=tool.question, description=_told(tool), operationId=f"answer-{tool.slug}"
    )
    @blueprint.arguments(ScaleQuery, location="query")
    @blueprint.arguments(form_of(tool), example=tool.example)
    @blueprint.response(200, replies.Answer)
    @_may_be_busy(blueprint, tool)
    def post_inputs(scale: Scale, inputs: dict[str, Any]) -> Response:
        try:
            text = computed(Asked(tool.slug, inputs, scale))
        except Refusal as refusal:
            abort(422, errors={"json": nested(refusal.errors)})
        return Response(text, content_type="application/json")


def _may_be_busy(blueprint: JsonBlueprint, tool: Tool) -> Callable[[View], View]:
    """Return what describes the 503 of a tool that searches."""
    if tool.search is None:
        return lambda view: view
    described: Callable[[View], View] = blueprint.alt_response(503, **BUSY)
    return described


def _told(tool: Tool) -> str:
    return "\n\n".join([tool.question, *tool.cautions, *tool.sources])
