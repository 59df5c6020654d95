"""The pages by which people come in, plain HTML that works without scripts."""

from flask import Flask
from limits.errors import ConfigurationError

from longpoint.settings import BadSetting, limits_address

from . import coming_in, everyone
from .guessing import limiter
from .parts import pages

__all__ = ["add_pages", "coming_in", "everyone", "limiter"]


def add_pages(app: Flask) -> None:
    """Add the pages to `app`.

    Raises
    ------
    BadSetting
        Tries that failed can't be counted where the setting says.
    """
    app.config.update(
        RATELIMIT_STORAGE_URI=limits_address(),
        RATELIMIT_HEADERS_ENABLED=False,
        # While that is away each process counts for itself.
        RATELIMIT_IN_MEMORY_FALLBACK_ENABLED=True,
    )
    try:
        limiter.init_app(app)
    except (ConfigurationError, ValueError) as fault:
        raise BadSetting(f"LONGPOINT_LIMITS is no place to count in: {fault}.") from fault
    app.register_blueprint(pages)
