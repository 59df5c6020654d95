"""The pages by which people come in, plain HTML that works without scripts."""

from collections.abc import Callable
from functools import wraps
from typing import Any

from flask import (
    Blueprint,
    Flask,
    Response,
    abort,
    redirect,
    render_template,
    request,
    session,
    url_for,
)
from flask_limiter import Limiter
from flask_limiter.util import get_remote_address
from flask_login import current_user, login_required
from sqlalchemy import select
from sqlalchemy.orm import Session, joinedload

from longpoint.front import PAGE_POLICY

from . import people
from .device_title import title_of
from .forms import ActionForm, ChangeForm, InviteForm, JoinForm, NewPassword, SignInForm
from .invitations import address_of, code_of
from .passwords import is_right
from .settings import limits_address
from .signed_in import OWNER, begin_session, shop_of_app
from .tables import Device, Event, Person

BY_ADDRESS = "10 per minute; 60 per hour"
BY_NAME = "10 per 15 minutes"
"""Tries that fail. Short ones: nobody can keep the real person out for long."""
MOST_EVENTS = 500

View = Callable[..., Any]
pages = Blueprint("pages", __name__, template_folder="templates")
limiter = Limiter(get_remote_address)


def add_pages(app: Flask) -> None:
    """Add the pages to `app`."""
    app.config.update(RATELIMIT_STORAGE_URI=limits_address(), RATELIMIT_HEADERS_ENABLED=False)
    limiter.init_app(app)
    app.register_blueprint(pages)


def owner_only(view: View) -> View:
    """Answer 403 to everyone but owners."""

    @wraps(view)
    @login_required
    def guarded(*where: Any, **named: Any) -> Any:
        return view(*where, **named) if current_user.is_owner else abort(403)

    return guarded


def _is_failure(response: Response) -> bool:
    return response.status_code not in (302, 303)


def _tried_name() -> str:
    return "name " + people.key_of(request.form.get("name", ""))[:80]


def _against_guessing(view: View) -> View:
    by_address = limiter.limit(BY_ADDRESS, methods=["POST"], deduct_when=_is_failure)
    by_name = limiter.limit(
        BY_NAME, key_func=_tried_name, methods=["POST"], deduct_when=_is_failure
    )
    guarded: View = by_address(by_name(view))
    return guarded


@pages.after_request
def guard(response: Response) -> Response:
    """Let forms be sent to this server alone, and keep pages out of every cache."""
    policy = PAGE_POLICY.replace("form-action 'none'", "form-action 'self'")
    response.headers["Content-Security-Policy"] = policy
    response.headers["Cache-Control"] = "no-store"
    return response


@pages.errorhandler(403)
def forbidden(_: Exception) -> tuple[str, int]:
    """Say that a page is the owner's."""
    return render_template(
        "sentence.html", title="The owner's", words="Only an owner of the shop sees this page."
    ), 403


@pages.errorhandler(429)
def too_many(_: Exception) -> tuple[str, int, dict[str, str]]:
    """Say when to try again."""
    words = "Too many tries that failed. Wait a quarter of an hour, then try again."
    return render_template("sentence.html", title="Wait", words=words), 429, {"Retry-After": "900"}


@pages.route("/sign-in", methods=["GET", "POST"])
@_against_guessing
def sign_in() -> Any:
    """Ask for name and password."""
    form = SignInForm()
    wrong = ""
    if form.validate_on_submit():
        with shop_of_app().session() as kept:
            token = people.sign_in(kept, form.name.data, form.password.data, title_of(request))
        if token:
            begin_session(token)
            return redirect(within(request.args.get("next", "/")), 303)
        wrong = "Name or password is wrong."
    return render_template(
        "sign-in.html", form=form, wrong=wrong
    ), 422 if form.is_submitted() else 200


def within(address: str) -> str:
    r"""Return an address if it stays on this site, else the app's own.

    >>> [within(each) for each in ("/devices", "//elsewhere", r"/\elsewhere", "http://elsewhere")]
    ['/devices', '/', '/', '/']
    """
    is_path = address.startswith("/") and address.isprintable() and "\\" not in address
    return address if is_path and not address.startswith("//") else "/"


@pages.route("/sign-out", methods=["GET", "POST"])
@login_required
def sign_out() -> Any:
    """Sign this device out."""
    form = ActionForm()
    if form.validate_on_submit():
        with shop_of_app().session() as kept:
            people.end_devices(kept, Device.id == current_user.device_id)
        session.clear()
        return redirect(url_for("pages.sign_in"), 303)
    return render_template("sign-out.html", form=form)


@pages.route("/join/<token>", methods=["GET", "POST"])
@limiter.limit(BY_ADDRESS, deduct_when=lambda response: response.status_code == 404)
def join(token: str) -> Any:
    """Take up an invitation, or a way to a new password."""
    with shop_of_app().reading() as kept:
        invitation = people.invitation_of(kept, token)
        known = kept.get(Person, invitation.person_id or 0) if invitation else None
        whose = known.name if known else ""
    if invitation is None:
        words = "This invitation was used, or it is over: ask for a new one."
        return render_template("sentence.html", title="Invitation", words=words), 404
    form = NewPassword() if whose else JoinForm()
    form.whose = whose
    refused = ""
    if form.validate_on_submit():
        try:
            with shop_of_app().session() as kept:
                person = people.join(kept, token, whose or form.name.data, form.password.data)
                begun = people.begin_device(kept, person, title_of(request))
            begin_session(begun)
            return redirect("/", 303)
        except people.Refused as fault:
            refused = str(fault)
    said = render_template(
        "join.html", form=form, whose=whose, refused=refused, role=invitation.role
    )
    return said, 422 if form.is_submitted() else 200


@pages.route("/password", methods=["GET", "POST"])
@login_required
@_against_guessing
def password() -> Any:
    """Change one's own password; other devices are signed out by that."""
    form = ChangeForm()
    form.whose = current_user.name
    wrong = ""
    if form.validate_on_submit():
        with shop_of_app().session() as kept:
            person = kept.get_one(Person, current_user.person_id)
            if is_right(form.old.data, person.password):
                people.change_password(kept, person, form.password.data)
                begin_session(people.begin_device(kept, person, title_of(request)))
                return redirect(url_for("pages.devices"), 303)
        wrong = "This is not your password."
    return render_template(
        "password.html", form=form, wrong=wrong
    ), 422 if form.is_submitted() else 200


@pages.route("/devices")
@login_required
def devices() -> Any:
    """List one's own devices; an owner sees everyone's."""
    with shop_of_app().reading() as kept:
        asked = (
            select(Device)
            .where(Device.ended.is_(None))
            .options(joinedload(Device.person))
            .order_by(Device.seen.desc())
        )
        if not current_user.is_owner:
            asked = asked.where(Device.person_id == current_user.person_id)
        found = kept.scalars(asked).all()
        return render_template("devices.html", devices=found, form=ActionForm())


@pages.route("/devices/<int:number>/end", methods=["POST"])
@login_required
def end_device(number: int) -> Any:
    """Sign a device out."""
    if ActionForm().validate_on_submit():
        with shop_of_app().session() as kept:
            device = kept.get(Device, number)
            if device is None or not (
                current_user.is_owner or device.person_id == current_user.person_id
            ):
                abort(404)
            people.end_devices(kept, Device.id == number)
            kept.add(
                Event(what="device signed out", person_id=device.person_id, detail=device.title)
            )
    return redirect(url_for("pages.devices"), 303)


@pages.route("/people")
@login_required
def everyone() -> Any:
    """List the shop's people; an owner invites here."""
    return _people()


def _people(**more: Any) -> Any:
    with shop_of_app().reading() as kept:
        found = kept.scalars(select(Person).where(Person.left.is_(None)).order_by(Person.key)).all()
        return render_template(
            "people.html", people=found, invite=InviteForm(), form=ActionForm(), owner=OWNER, **more
        )


@pages.route("/people/invite", methods=["POST"])
@owner_only
def invite() -> Any:
    """Make an invitation, and show it as a link and a code: once, since only its hash is kept."""
    form = InviteForm()
    if not form.validate_on_submit():
        return redirect(url_for("pages.everyone"), 303)
    with shop_of_app().session() as kept:
        token = people.invite(kept, form.role.data, current_user.person_id)
    return _invited(token, f"For someone new, as {form.role.data}.")


@pages.route("/people/<int:number>/password", methods=["POST"])
@owner_only
def new_password(number: int) -> Any:
    """Make a way to a new password for someone who forgot theirs."""
    if not ActionForm().validate_on_submit():
        return redirect(url_for("pages.everyone"), 303)
    with shop_of_app().session() as kept:
        person = _person(kept, number)
        token = people.invite(kept, person.role, current_user.person_id, person.id)
        words = f"For {person.name} to take a new password."
    return _invited(token, words)


def _invited(token: str, words: str) -> Any:
    address = address_of(token)
    return _people(address=address, code=code_of(address), words=words)


@pages.route("/people/<int:number>/end", methods=["POST"])
@owner_only
def end_access(number: int) -> Any:
    """Keep someone out from now on."""
    return _changed(number, people.end_access)


@pages.route("/people/<int:number>/role", methods=["POST"])
@owner_only
def give_role(number: int) -> Any:
    """Make someone owner or crew."""
    role = request.form.get("role", "")
    return _changed(number, lambda kept, person: people.give_role(kept, person, role))


def _changed(number: int, change: Callable[[Session, Person], None]) -> Any:
    if ActionForm().validate_on_submit():
        try:
            with shop_of_app().session() as kept:
                change(kept, _person(kept, number))
        except people.Refused as fault:
            return _people(refused=str(fault)), 409
    return redirect(url_for("pages.everyone"), 303)


def _person(kept: Session, number: int) -> Person:
    person = kept.get(Person, number)
    return person if person is not None and person.left is None else abort(404)


@pages.route("/log")
@owner_only
def log() -> Any:
    """List who came in, who did not, and what was deleted."""
    with shop_of_app().reading() as kept:
        asked = (
            select(Event, Person.name)
            .outerjoin(Person, Person.id == Event.person_id)
            .order_by(Event.id.desc())
            .limit(MOST_EVENTS)
        )
        return render_template("log.html", events=kept.execute(asked).all())
