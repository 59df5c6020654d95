"""The application and a client that speaks to it in this process."""

import pytest
from flask import Flask
from flask.testing import FlaskClient

from longpoint.app import create_app


@pytest.fixture(scope="session")
def app() -> Flask:
    """The application as it is served: faults become answers, as they would there."""
    return create_app()


@pytest.fixture
def client(app: Flask) -> FlaskClient:
    return app.test_client()
