"""Every failure as JSON, in words, with one shape."""

import json
from typing import Any

from flask import Request, request
from flask_smorest import Api, Blueprint
from webargs.flaskparser import FlaskParser, abort, is_json_request
from werkzeug.exceptions import HTTPException, MethodNotAllowed

MOST_BYTES = 256 * 1024
MOST_ERRORS = 50
LONGEST_NAME = 80

_WORDS = {
    400: "The request can't be read: send one JSON object with the inputs by name.",
    404: "Nothing is at this address. GET /api/tools lists the tools.",
    415: "Send the inputs as JSON, with Content-Type: application/json.",
    500: "Longpoint made a mistake here, and its log says where. Nothing was kept or changed.",
}


class JsonApi(Api):  # type: ignore[misc]  # flask-smorest carries no types
    """An Api whose errors always carry a sentence, and an Allow header where one is due."""

    def handle_http_exception(self, error: HTTPException) -> tuple[dict[str, Any], int, Any]:
        """Return the error's body, status and headers."""
        payload, status, headers = super().handle_http_exception(error)
        payload.setdefault("message", _words(error))
        _shorten(payload)
        if isinstance(error, MethodNotAllowed):
            headers = {"Allow": ", ".join(sorted(error.valid_methods or []))}
        return payload, status, headers


def _words(error: HTTPException) -> str:
    if isinstance(error, MethodNotAllowed):
        return f"This address answers {', '.join(sorted(error.valid_methods or []))} only."
    if error.code == 422:
        return "Some inputs can't be used: errors says which, and what would do."
    if error.code == 413:
        most = (request.max_content_length or MOST_BYTES) // 1024
        return f"The request is too large: send at most {most} KB."
    return _WORDS.get(error.code or 0, error.description or error.name)


def _shorten(payload: dict[str, Any]) -> None:
    """Tell the first errors alone, where a request has thousands: nobody reads them all."""
    errors = payload.get("errors")
    if isinstance(errors, dict):
        payload["errors"] = _first(errors, MOST_ERRORS)
        if (count := _count(errors)) > MOST_ERRORS:
            payload["message"] += f" There are {count} errors, these are the first {MOST_ERRORS}."


def _first(errors: dict[Any, Any], most: int) -> dict[Any, Any]:
    """Return the first fields with an error, at most so many; an overlong name is cut."""
    kept: dict[Any, Any] = {}
    for name, said in errors.items():
        left = most - _count(kept)
        if left <= 0:
            break
        kept[_named(name)] = _first(said, left) if isinstance(said, dict) else said
    return kept


def _count(errors: dict[Any, Any]) -> int:
    return sum(_count(said) if isinstance(said, dict) else 1 for said in errors.values())


def _named(name: Any) -> Any:
    is_long = isinstance(name, str) and len(name) > LONGEST_NAME
    return name[: LONGEST_NAME - 1] + "…" if is_long else name


class JsonParser(FlaskParser):
    """Reads JSON bodies; whatever isn't JSON ends as 400 or 415, never as a crash."""

    # Each schema says for itself what it does with unknown names, in a query too.
    DEFAULT_UNKNOWN_BY_LOCATION: dict[str, str | None] = {}  # noqa: RUF012 declared so by webargs

    def _raw_load_json(self, req: Request) -> Any:
        if not is_json_request(req):
            abort(415)
        return _parsed(req.get_data())


def _parsed(body: bytes) -> Any:
    try:
        return json.loads(body.decode("utf-8"), parse_int=_whole)
    except (ValueError, RecursionError):
        abort(400, messages={"json": ["This is not JSON that can be read."]})


def _whole(digits: str) -> int | float:
    # Python refuses to read very long integers; as infinity they reach the field's own bounds.
    return int(digits) if len(digits) < 20 else float(digits)


class JsonBlueprint(Blueprint):  # type: ignore[misc]  # flask-smorest carries no types
    """A blueprint that reads JSON strictly."""

    ARGUMENTS_PARSER = JsonParser()
