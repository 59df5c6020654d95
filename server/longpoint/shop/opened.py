"""The shop's part of the application: its documents, and who may come in."""

from flask import Flask
from flask_smorest import Api

from longpoint.api.documents import make_document_blueprint

from .database import Database
from .pages import add_pages
from .signed_in import set_up
from .tables import Shop


def open_shop(app: Flask, api: Api) -> None:
    """Add what a shop's people share to `app`, whose configuration names its database."""
    shop: Database = app.config["SHOP"]
    with shop.session() as session:
        secret = session.get_one(Shop, 1).secret
    set_up(app, secret)
    add_pages(app)
    api.register_blueprint(make_document_blueprint())
