"""The route that works a job out, and the schema of its document. Nothing is kept."""

from typing import Any

import marshmallow as ma
from flask import Response, jsonify
from flask_smorest import Blueprint, abort

from longpoint.trade.job.document import json_schema
from longpoint.trade.job.patterns import declared
from longpoint.trade.job.sheets import job_replies
from longpoint.trade.lengths import Scale
from longpoint.trade.refusal import FieldError, Refusal

from .errors import JsonParser
from .forms import ScaleQuery
from .replies.job import Job, Patterns
from .search_gate import BUSY, last_of

FREE = 100
"""Steps of a job that need no place of their own, about one for a question."""


class JobBlueprint(Blueprint):  # type: ignore[misc]  # flask-smorest carries no types
    """A blueprint that reads JSON strictly."""

    ARGUMENTS_PARSER = JsonParser()


class JobDocument(ma.Schema):
    """A job as its JSON Schema describes it; the core checks it as one."""

    error_messages = {"type": "Send one job as a JSON object."}  # noqa: RUF012 declared so

    class Meta:
        unknown = ma.INCLUDE


def make_job_blueprint() -> JobBlueprint:
    """Return the routes of jobs."""
    blueprint = JobBlueprint("jobs", __name__, url_prefix="/api")

    @blueprint.route("/job.schema.json", methods=["GET"], endpoint="schema")
    @blueprint.doc(summary="The JSON Schema of a job.", operationId="job-schema")
    @blueprint.response(200)
    def get_schema() -> Response:
        return jsonify(json_schema())

    @blueprint.route("/patterns", methods=["GET"], endpoint="patterns")
    @blueprint.doc(summary="The patterns an item can begin with.", operationId="patterns")
    @blueprint.response(200, Patterns)
    def get_patterns() -> Response:
        return jsonify(patterns=declared())

    @blueprint.route("/jobs", methods=["POST"], endpoint="work")
    @blueprint.doc(summary="A job worked out; nothing is kept.", operationId="work-out-job")
    @blueprint.arguments(ScaleQuery, location="query")
    @blueprint.arguments(JobDocument)
    @blueprint.response(200, Job)
    @blueprint.alt_response(503, **BUSY)
    def post_job(scale: Scale, document: dict[str, Any]) -> Response:
        try:
            whole = last_of(job_replies(document, scale), FREE)
        except Refusal as refusal:
            abort(422, errors={"json": by_place(refusal.errors)})
        return jsonify(whole)

    return blueprint


def by_place(errors: list[FieldError]) -> dict[str, list[str]]:
    """Return the sentences of a job's faults by their place, such as ``items.0.title``."""
    places: dict[str, list[str]] = {}
    for error in errors:
        places.setdefault(error.field or "job", []).append(error.message)
    return places
