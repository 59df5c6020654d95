"""The pages by which people come in, plain HTML that works without scripts."""

from flask import Flask

from longpoint.settings import limits_address

from . import coming_in, everyone
from .guessing import limiter
from .parts import pages

__all__ = ["add_pages", "coming_in", "everyone", "limiter"]


def add_pages(app: Flask) -> None:
    """Add the pages to `app`."""
    app.config.update(RATELIMIT_STORAGE_URI=limits_address(), RATELIMIT_HEADERS_ENABLED=False)
    limiter.init_app(app)
    app.register_blueprint(pages)
