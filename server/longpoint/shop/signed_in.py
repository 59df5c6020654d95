"""Who is asking: the device whose token the session cookie carries."""

import hashlib
import secrets
from contextlib import suppress
from datetime import timedelta
from typing import Any

from flask import Flask, Request, current_app, g, redirect, request, session, url_for
from flask.sessions import SecureCookieSessionInterface
from flask_login import LoginManager, UserMixin, current_user
from flask_smorest import abort
from sqlalchemy import select, update
from sqlalchemy.exc import OperationalError, TimeoutError
from sqlalchemy.orm import joinedload

from .database import Database
from .names import key_of
from .tables import Device, now

OWNER, CREW = "owner", "crew"
STAYS = timedelta(days=400)
"""The longest that browsers keep a cookie (RFC 6265bis, from memory)."""
KNOWN = "known"
"""In the session: whose name was signed in with in this browser, and a number of its own."""
SEEN_EVERY = timedelta(minutes=1)


def hash_of(token: str) -> str:
    """Return what the database keeps of a token, which is long and random: no salt is needed."""
    return hashlib.sha256(token.encode()).hexdigest()


class SignedIn(UserMixin):  # type: ignore[misc]  # Flask-Login carries no types
    """The device that asks, and its person."""

    def __init__(self, token: str, device: Device) -> None:
        self.id = token
        self.device_id, self.device_title, self.seen = device.id, device.title, device.seen
        person = device.person
        self.person_id, self.name, self.role = person.id, person.name, person.role

    @property
    def is_owner(self) -> bool:
        """Whether this person may do all."""
        return bool(self.role == OWNER)


class _Session(SecureCookieSessionInterface):
    """A cookie that HTTPS brought goes back by HTTPS alone."""

    def get_cookie_secure(self, app: Flask) -> bool:
        return request.is_secure


def set_up(app: Flask, secret: str) -> None:
    """Let `app` know its people by their session cookie."""
    app.config.update(
        SECRET_KEY=secret,
        SESSION_COOKIE_NAME="longpoint",
        SESSION_COOKIE_SAMESITE="Lax",
        PERMANENT_SESSION_LIFETIME=STAYS,
        # An answer that is late must not bring back the cookie of before signing in or out.
        SESSION_REFRESH_EACH_REQUEST=False,
        # A token is looked up at every request; an address of a phone changes all day.
        SESSION_PROTECTION=None,
    )
    app.session_interface = _Session()
    manager = LoginManager(app)
    manager.user_loader(lambda token: _found(shop_of_app(), token))
    manager.unauthorized_handler(_refuse)
    app.after_request(_vary)


def _found(shop: Database, token: str) -> SignedIn | None:
    with shop.reading() as kept:
        device = kept.scalar(
            select(Device)
            .where(Device.token == hash_of(token), Device.ended.is_(None))
            .options(joinedload(Device.person))
        )
        if device is None or device.person.left is not None:
            return None
        found = SignedIn(token, device)
    if now() - found.seen > SEEN_EVERY:
        # A disk that is full, or who writes for long, keeps nobody from reading.
        with suppress(OperationalError, TimeoutError), shop.session() as kept:
            kept.execute(update(Device).where(Device.id == found.device_id).values(seen=now()))
    return found


def _refuse() -> Any:
    if request.path.startswith("/api/"):
        abort(401, message="Sign in on this device first: what is here stays on it until then.")
    # What was sent is not sent again after signing in: only a page is gone back to.
    back = request.path if request.method == "GET" else None
    return redirect(url_for("pages.sign_in", next=back), 303)


def _vary(response: Any) -> Any:
    """What a person alone may read is kept by nobody on the way."""
    # Whom the answer asked for: to ask now would take a database that may just have gone.
    asked_for = g.get("_login_user")
    if asked_for and asked_for.is_authenticated:
        response.headers["Cache-Control"] = "no-store"
    return response


def refuse_other_origins(asked: Request) -> None:
    """Abort with 403 where a page of another site asks a browser to write."""
    origin = asked.headers.get("Origin")
    if asked.method not in ("GET", "HEAD", "OPTIONS") and origin not in (None, asked.host_url[:-1]):
        abort(403, message="Another site's page can't write here.")


def refuse_unless_signed_in() -> None:
    """Abort with 401 where nobody is signed in, before anything that was sent is read."""
    if not current_user.is_authenticated:
        _refuse()


def shop_of_app() -> Database:
    """Return the database of the running application."""
    shop: Database = current_app.config["SHOP"]
    return shop


def begin_session(token: str, name: str) -> None:
    """Let the browser carry a device's token from now on, and nothing that it carried before."""
    session.clear()
    session.permanent = True
    session["_user_id"] = token
    session[KNOWN] = [hash_of(key_of(name)), secrets.token_urlsafe(9)]


def end_session() -> None:
    """Let the browser carry nothing but that it was here."""
    known = session.get(KNOWN)
    session.clear()
    session.permanent = True
    session[KNOWN] = known


def known_as(name: str) -> str:
    """Return the number of a browser from which this name was signed in before, or nothing.

    Its tries are counted apart, so that nobody who guesses elsewhere keeps the real person out
    (OWASP: device cookies, from memory).
    """
    whose, number = session.get(KNOWN) or ("", "")
    return number if whose == hash_of(key_of(name)) else ""
