"""Tries that fail are counted, by address and by name; too many are refused for a short while."""

import time
from collections.abc import Callable
from typing import Any

from flask import Response, request
from flask_limiter import Limiter
from flask_limiter.util import get_remote_address
from flask_login import current_user

from longpoint.shop.names import key_of
from longpoint.shop.signed_in import known_as

BY_ADDRESS = "10 per minute; 50 per hour"
BY_NAME = "10 per 15 minutes"
"""Tries that fail. Short ones: nobody can keep the real person out for long."""

View = Callable[..., Any]
limiter = Limiter(get_remote_address)


def against_guessing(view: View) -> View:
    """Refuse passwords after too many that were wrong."""
    by_address = limiter.limit(
        BY_ADDRESS, key_func=_from_where, methods=["POST"], deduct_when=_is_failure
    )
    by_name = limiter.limit(BY_NAME, key_func=_whose, methods=["POST"], deduct_when=_is_failure)
    guarded: View = by_address(by_name(view))
    return guarded


def against_guessed_addresses(view: View) -> View:
    """Refuse invitations after too many that there are not."""
    guarded: View = limiter.limit(BY_ADDRESS, deduct_when=_is_nowhere)(view)
    return guarded


def seconds_left() -> int:
    """Return how long who is refused waits."""
    limit = limiter.current_limit
    return max(1, round(limit.reset_at - time.time())) if limit else 60


def _is_failure(response: Response) -> bool:
    return response.status_code not in (302, 303)


def _is_nowhere(response: Response) -> bool:
    return response.status_code == 404


def _from_where() -> str:
    """Return the address; of a browser that signed in before, itself: a shop shares an address."""
    return known_as(request.form.get("name", "")) or get_remote_address()


def _whose() -> str:
    """Return whose password is tried, and whether from a browser that they used before."""
    if current_user.is_authenticated:
        return f"person {current_user.person_id}"
    name = request.form.get("name", "")
    known = known_as(name)
    return f"browser {known}" if known else f"name {key_of(name)[:80]}"
