"""The shop's part of the application: its documents, and who may come in."""

from typing import Any

from flask import Flask, current_app, jsonify, render_template, request
from flask_smorest import Api
from sqlalchemy.exc import OperationalError, TimeoutError

from longpoint.api.documents import make_document_blueprint
from longpoint.settings import room

from .database import Database
from .pages import add_pages
from .signed_in import set_up
from .tables import Shop


def open_shop(app: Flask, api: Api) -> None:
    """Add what a shop's people share to `app`, whose configuration names its database."""
    shop: Database = app.config["SHOP"]
    with shop.session() as session:
        secret = session.get_one(Shop, 1).secret
    app.config["ROOM"] = room()
    set_up(app, secret)
    add_pages(app)
    device = {"type": "apiKey", "in": "cookie", "name": app.config["SESSION_COOKIE_NAME"]}
    api.spec.components.security_scheme("device", device)
    api.register_blueprint(make_document_blueprint())
    for fault in (OperationalError, TimeoutError):
        app.register_error_handler(fault, _not_now)


def _not_now(fault: Exception) -> tuple[Any, int, dict[str, str]]:
    """Answer while the database is away, full, or held by another for too long."""
    current_app.logger.error("the database: %s", getattr(fault, "orig", fault))
    words = "The shop's server can't reach or write its database now. Nothing was changed."
    headers = {"Retry-After": "10", "Cache-Control": "no-store"}
    if request.path.startswith("/api/"):
        said = {"code": 503, "status": "Service Unavailable", "message": words}
        return jsonify(said), 503, headers
    return render_template("sentence.html", title="Not now", words=words), 503, headers
