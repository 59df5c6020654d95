"""Whether the server can do its work, for what watches over it."""

from flask import Flask, Response
from sqlalchemy import text
from sqlalchemy.exc import SQLAlchemyError

from .log import HEALTH


def add_health(app: Flask) -> None:
    """Answer `ok` at `HEALTH`; 503 while the shop's database does not answer."""

    @app.get(HEALTH)
    def health() -> Response:
        return _said(200, "ok") if _answers(app) else _said(503, "the database does not answer")


def _answers(app: Flask) -> bool:
    shop = app.config.get("SHOP")
    if shop is None:
        return True
    try:
        with shop.reading() as session:
            session.execute(text("SELECT 1 FROM shop"))
    except SQLAlchemyError:
        return False
    return True


def _said(status: int, words: str) -> Response:
    headers = {"Cache-Control": "no-store"}
    return Response(words + "\n", status, headers, content_type="text/plain; charset=utf-8")
