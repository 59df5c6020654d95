"""What all pages share: their headers, their refusals, who may see them."""

from collections.abc import Callable
from datetime import datetime
from functools import wraps
from typing import Any

from flask import Blueprint, Response, abort, render_template
from flask_login import current_user, login_required

from .guessing import seconds_left

# No scripts, nothing from elsewhere, forms to this server alone.
POLICY = (
    "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; "
    "frame-ancestors 'none'"
)

View = Callable[..., Any]
pages = Blueprint("pages", __name__, template_folder="templates")


@pages.app_template_filter("moment")
def moment(at: datetime) -> str:
    """Return a time as it is read."""
    return f"{at:%b} {at.day}, {at:%Y, %H:%M} UTC"


def owner_only(view: View) -> View:
    """Answer 403 to everyone but owners."""

    @wraps(view)
    @login_required
    def guarded(*where: Any, **named: Any) -> Any:
        return view(*where, **named) if current_user.is_owner else abort(403)

    return guarded


@pages.after_request
def guard(response: Response) -> Response:
    """Keep pages out of every cache, and their addresses, which may be secret, to themselves."""
    response.headers["Content-Security-Policy"] = POLICY
    response.headers["Cache-Control"] = "no-store"
    response.headers["Referrer-Policy"] = "no-referrer"
    return response


def sentence(title: str, words: str) -> str:
    """Return a page that says one thing."""
    return render_template("sentence.html", title=title, words=words)


@pages.errorhandler(403)
def forbidden(_: Exception) -> tuple[str, int]:
    """Say that a page is the owner's."""
    return sentence("The owner's", "Only an owner of the shop sees this page."), 403


@pages.errorhandler(404)
def nowhere(_: Exception) -> tuple[str, int]:
    """Say that what a button was for is gone."""
    return sentence("Not there", "This is not there any more: look at the list again."), 404


@pages.errorhandler(429)
def too_many(_: Exception) -> tuple[str, int, dict[str, str]]:
    """Say when to try again."""
    seconds = seconds_left()
    minutes = -(-seconds // 60)
    wait = f"{minutes} minutes" if minutes > 1 else "a minute"
    words = f"Too many tries that failed. Wait {wait}, then try again."
    return sentence("Wait", words), 429, {"Retry-After": str(seconds)}
