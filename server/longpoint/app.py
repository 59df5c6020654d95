"""The Flask application: the API, with the front end's files served before it."""

from collections.abc import Mapping
from importlib.metadata import version
from typing import Any

from flask import Flask, request
from werkzeug.middleware.proxy_fix import ProxyFix

from . import front
from .api.errors import MOST_BYTES, JsonApi
from .api.jobs import make_job_blueprint
from .api.replies import DOOR
from .api.routes import make_blueprint
from .health import add_health
from .settings import proxies
from .shop.opened import open_shop

SETTINGS = {
    "API_TITLE": "Longpoint",
    "API_VERSION": version("longpoint"),
    "OPENAPI_VERSION": "3.1.0",
    "OPENAPI_URL_PREFIX": "/api",
    "MAX_CONTENT_LENGTH": MOST_BYTES,
}


class _App(Flask):
    def log_exception(self, exc_info: Any) -> None:
        """Log where a fault was by its route: an address may hold an invitation."""
        self.logger.error("Fault at %s %s", request.method, request.url_rule, exc_info=exc_info)


def create_app(config: Mapping[str, Any] | None = None) -> Flask:
    """Return the application; `config` adds to `SETTINGS` or replaces them.

    With a `Database` as `SHOP` it keeps what the shop's people share; without, it keeps nothing.
    With `Workers` as `WORKERS` what takes long is computed by them; without, here.
    Without a built front end it serves the API alone.
    """
    app = _App(__name__, static_folder=None)
    app.config.update(SETTINGS)
    app.config.update(config or {})
    # Lists and objects go out in the core's own order, and no address redirects to another.
    app.json.sort_keys = False  # type: ignore[attr-defined]
    app.url_map.strict_slashes = False
    app.url_map.merge_slashes = False
    api = JsonApi(app)
    api.register_blueprint(make_blueprint())
    api.register_blueprint(make_job_blueprint())
    add_health(app)
    if "SHOP" in app.config:
        open_shop(app, api)
    for schema in DOOR:
        api.spec.components.schema(schema.__name__, schema=schema)
    shares = "SHOP" in app.config
    application = front.with_front_end(app.wsgi_app, shares) if front.is_built() else app.wsgi_app
    app.wsgi_app = front.with_headers(application)  # type: ignore[assignment, method-assign]
    if number := proxies():
        app.wsgi_app = ProxyFix(app.wsgi_app, number, number, x_host=number)  # type: ignore[method-assign]
    return app
