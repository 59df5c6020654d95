"""Routes of what a shop's people share: a document, the feed of changes, and who is signed in."""

import math
import re
from collections.abc import Iterator
from contextlib import contextmanager
from http import HTTPStatus
from typing import Any, NoReturn

from flask import Response, current_app, jsonify, request
from flask import abort as stop
from flask_login import current_user
from flask_smorest import abort
from flask_smorest.error_handler import ErrorSchema

from longpoint.shop.documents import (
    OWN,
    Full,
    Moved,
    NotThere,
    Restored,
    Said,
    UsedElsewhere,
    Writer,
    Written,
    read,
    write,
)
from longpoint.shop.feed import feed
from longpoint.shop.signed_in import refuse_other_origins, refuse_unless_signed_in, shop_of_app
from longpoint.shop.tables import Shop
from longpoint.trade.job.document import SCHEMA, check
from longpoint.trade.refusal import Refusal

from .document_forms import (
    ADDRESS,
    BY_DEVICE,
    CONDITIONS,
    NAME,
    DeletionQuery,
    DocumentForm,
    EpochQuery,
    FeedQuery,
)
from .errors import JsonBlueprint
from .jobs import by_place
from .replies.documents import Changes, Document, Head, Me
from .replies.documents import Moved as MovedReply

MOST_BYTES = 4 * 1024 * 1024
MOST_LEVELS = 32
"""Lists within lists; the phone keeps half as many. Whatever is kept can be said in the feed."""
_TAG = re.compile(r'(?:W/)?"([1-9][0-9]{0,8})"')


def make_document_blueprint() -> JsonBlueprint:
    """Return the routes of a shop's documents."""
    blueprint = JsonBlueprint("documents", __name__, url_prefix="/api")

    @blueprint.before_request
    def guard() -> None:
        request.max_content_length = MOST_BYTES
        refuse_other_origins(request)
        refuse_unless_signed_in()
        name = (request.view_args or {}).get("name")
        if name is not None and (not NAME.fullmatch(name) or name == OWN):
            abort(404, message="No document of a shop has this name.")

    @blueprint.route("/me", methods=["GET"], endpoint="me")
    @blueprint.doc(summary="Who is signed in on this device.", operationId="me", security=BY_DEVICE)
    @blueprint.response(200, Me)
    @_refusing(blueprint, 401)
    def get_me() -> Response:
        with shop_of_app().reading() as session:
            epoch = session.get_one(Shop, 1).epoch
        person = {"name": current_user.name, "role": current_user.role}
        device = {"id": current_user.device_id, "title": current_user.device_title}
        return jsonify(epoch=epoch, person=person, device=device)

    @blueprint.route("/changes", methods=["GET"], endpoint="changes")
    @blueprint.doc(
        summary="What was changed since; each document once, as it stands.",
        description=(
            "In the order of their last changes, deleted ones too. Ask again with the `since` and "
            "`last` of the reply. `restored` says that the server no longer knows what came with "
            "them: the feed then begins anew."
        ),
        operationId="changes",
        security=BY_DEVICE,
    )
    @blueprint.arguments(FeedQuery, location="query")
    @blueprint.response(200, Changes)
    @_refusing(blueprint, 401)
    def get_changes(query: dict[str, Any]) -> Response:
        with shop_of_app().reading() as session:
            return jsonify(feed(session, query["since"], query["last"], query["limit"]))

    _add_document(blueprint)
    return blueprint


def _add_document(blueprint: JsonBlueprint) -> None:
    @blueprint.route("/documents/<name>", methods=["GET"], endpoint="document", parameters=ADDRESS)
    @blueprint.doc(
        summary="A document as it stands; 410 for a deleted one.",
        operationId="document",
        security=BY_DEVICE,
    )
    @blueprint.response(200, Document)
    @blueprint.alt_response(410, schema=Document)
    @_refusing(blueprint, 401, 404)
    def get_document(name: str) -> Response:
        with _answering(), shop_of_app().reading() as session:
            said = read(session, name)
        response = jsonify(said)
        response.status_code = 410 if said["deleted"] else 200
        response.set_etag(str(said["rev"]))
        return response

    @blueprint.route("/documents/<name>", methods=["PUT"], endpoint="put", parameters=ADDRESS)
    @blueprint.doc(
        summary="Begin a document, or change it.",
        description=(
            '`If-None-Match: *` begins one, also where one was deleted; `If-Match: "<rev>"` '
            "changes it. A `change_id` that was answered before is answered again, and nothing is "
            "done twice. 412 tells what stands instead."
        ),
        operationId="put-document",
        security=BY_DEVICE,
        parameters=[*CONDITIONS, {"in": "query", "schema": EpochQuery}],
    )
    @blueprint.arguments(DocumentForm)
    @blueprint.arguments(EpochQuery, location="query")
    @blueprint.response(200, Head)
    @blueprint.alt_response(201, schema=Head)
    @blueprint.alt_response(412, schema=MovedReply)
    @_refusing(blueprint, 400, 401, 403, 404, 409, 413, 428, 507)
    def put_document(form: dict[str, Any], query: dict[str, Any], name: str) -> Response:
        _refuse_what_is_none(name, form)
        return _written(name, Said(**form), query["epoch"])

    @blueprint.route("/documents/<name>", methods=["DELETE"], endpoint="delete", parameters=ADDRESS)
    @blueprint.doc(
        summary="Delete a document; its number and its tombstone stay.",
        operationId="delete-document",
        security=BY_DEVICE,
        parameters=[*CONDITIONS[:1], {"in": "query", "schema": DeletionQuery}],
    )
    @blueprint.arguments(DeletionQuery, location="query")
    @blueprint.response(200, Head)
    @blueprint.alt_response(412, schema=MovedReply)
    @_refusing(blueprint, 400, 401, 403, 404, 409, 428)
    def delete_document(query: dict[str, Any], name: str) -> Response:
        return _written(name, Said(query["change_id"]), query["epoch"])


def _refusing(blueprint: JsonBlueprint, *codes: int) -> Any:
    """Return what describes refusals."""

    def describe(view: Any) -> Any:
        for code in codes:
            view = blueprint.alt_response(code, schema=ErrorSchema)(view)
        return view

    return describe


def _refuse(code: int, message: str, **more: Any) -> NoReturn:
    """Abort with a status that says more than a sentence, or that the framework has no name for."""
    said = jsonify(code=code, status=HTTPStatus(code).phrase, message=message, **more)
    said.status_code = code
    stop(said)


@contextmanager
def _answering() -> Iterator[None]:
    """Answer in words what a document refuses."""
    try:
        yield
    except NotThere:
        abort(404, message="There is no such document.")
    except Full:
        _refuse(507, "There is no room left on the shop's server for what you began there.")
    except Restored:
        abort(409, message="The shop's server was restored from a backup: fetch its changes first.")
    except UsedElsewhere:
        abort(409, message="This change_id belongs to a change of another document.")


def _written(name: str, said: Said, epoch: str) -> Response:
    to = _condition(is_deletion=said.body is None)
    writer = Writer(
        current_user.person_id, current_user.device_id, current_app.config["ROOM"], epoch
    )
    try:
        with _answering(), shop_of_app().session() as session:
            done = write(session, writer, name, said, to)
    except Moved:
        with _answering(), shop_of_app().reading() as session:
            current = read(session, name)
        _refuse(412, "Someone changed it meanwhile.", current=current)
    return _as_response(name, said, done)


def _as_response(name: str, said: Said, done: Written) -> Response:
    response = jsonify(
        id=name, kind=name.split(".")[0], rev=done.rev, seq=done.seq,
        change_id=said.change_id, deleted=said.body is None,
    )  # fmt: skip
    response.status_code = 201 if done.is_new else 200
    response.set_etag(str(done.rev))
    return response


def _condition(is_deletion: bool) -> int | None:
    """Return the revision that is changed, None for a document that is begun."""
    match, none = request.headers.get("If-Match"), request.headers.get("If-None-Match")
    if match is None and none is None:
        abort(428, message='Say with If-Match: "<rev>" or If-None-Match: * what you change.')
    tag = _TAG.fullmatch(match.strip()) if match else None
    if match and tag and none is None:
        return int(tag[1])
    if match is not None or none != "*" or is_deletion:
        abort(400, message='If-Match takes one revision in quotes, If-None-Match only "*".')
    return None


def _refuse_what_is_none(name: str, form: dict[str, Any]) -> None:
    """Abort with 422 where the body is nothing that this kind of document can say."""
    if fault := _fault_of(form["body"]):
        abort(422, errors={"json": {"body": [fault]}})
    try:
        if name.startswith("job."):
            if form["schema"] > SCHEMA:
                raise Refusal("schema", "A newer Longpoint wrote this: update the shop's server.")
            check(form["body"])
            if form["body"].get("id") != name.removeprefix("job."):
                raise Refusal("id", "The job has another id than its address.")
    except Refusal as refusal:
        abort(422, errors={"json": {f"body.{k}": v for k, v in by_place(refusal.errors).items()}})


def _fault_of(value: object, level: int = 1) -> str:
    """Return why a value can't be said again as JSON; empty where it can."""
    if level > MOST_LEVELS:
        return f"This has lists within lists, deeper than {MOST_LEVELS} levels."
    if isinstance(value, float) and not math.isfinite(value):
        return "A number here is none that JSON can say (RFC 8259)."
    inner = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    held = (_fault_of(each, level + 1) for each in inner if isinstance(each, dict | list | float))
    return next(filter(None, held), "")
