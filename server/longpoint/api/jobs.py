"""Routes that work a job out, and the schema of its document. Nothing is kept."""

import json
from datetime import UTC, datetime
from typing import Any

import marshmallow as ma
from flask import Response, jsonify
from flask_smorest import abort

from longpoint.trade.job.document import json_schema
from longpoint.trade.job.patterns import declared
from longpoint.trade.lengths import Scale
from longpoint.trade.refusal import FieldError, Refusal
from longpoint.workers.computed import Asked

from .calendar import MEDIA_TYPE, NO_DAY, calendar_of
from .computing import BUSY, computed
from .errors import JsonBlueprint
from .forms import ScaleQuery
from .replies.job import Job, Patterns


class JobDocument(ma.Schema):
    """A job as its JSON Schema describes it; the core checks it as one."""

    error_messages = {"type": "Send one job as a JSON object."}  # noqa: RUF012 declared so

    class Meta:
        unknown = ma.INCLUDE


def make_job_blueprint() -> JsonBlueprint:
    """Return the routes of jobs."""
    blueprint = JsonBlueprint("jobs", __name__, url_prefix="/api")

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
        return Response(worked_out(document, scale), content_type="application/json")

    @blueprint.route("/jobs/calendar", methods=["POST"], endpoint="calendar")
    @blueprint.doc(
        summary="The finish plans of a job as a calendar file, iCalendar by RFC 5545.",
        description=(
            "An event for each coat, each sanding and the hanging of every finish plan that has "
            "its days, by the job's `finish.starts` or its ticks. Times are local. Nothing is kept."
        ),
        operationId="job-calendar",
    )
    @blueprint.arguments(ScaleQuery, location="query")
    @blueprint.arguments(JobDocument)
    @blueprint.response(200, {"type": "string"}, content_type=MEDIA_TYPE)
    @blueprint.alt_response(503, **BUSY)
    def post_calendar(scale: Scale, document: dict[str, Any]) -> Response:
        plans = json.loads(worked_out(document, scale))["finish"]
        file = calendar_of(str(document["title"]), plans, datetime.now(UTC))
        if file is None:
            abort(422, errors={"json": {"finish": [NO_DAY]}})
        return Response(file, content_type=MEDIA_TYPE + "; charset=utf-8")

    return blueprint


def worked_out(document: dict[str, Any], scale: Scale) -> str:
    """Return a job's reply as JSON text; abort with its faults by their place where it is none."""
    try:
        text = computed(Asked("", document, scale))
    except Refusal as refusal:
        abort(422, errors={"json": by_place(refusal.errors)})
    return text


def by_place(errors: list[FieldError]) -> dict[str, list[str]]:
    """Return the sentences of a job's faults by their place, such as ``items.0.title``."""
    places: dict[str, list[str]] = {}
    for error in errors:
        places.setdefault(error.field or "job", []).append(error.message)
    return places
