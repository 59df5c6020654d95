"""Signing in and out, taking up an invitation, changing one's password."""

from typing import Any

from flask import redirect, render_template, request, url_for
from flask_login import current_user, login_required

from longpoint.shop import passwords, people
from longpoint.shop.device_title import title_of
from longpoint.shop.forms import ActionForm, ChangeForm, JoinForm, NewPassword, SignInForm
from longpoint.shop.signed_in import begin_session, end_session, shop_of_app
from longpoint.shop.tables import Device, Person

from .guessing import against_guessed_addresses, against_guessing
from .parts import pages, sentence


@pages.route("/sign-in", methods=["GET", "POST"])
@against_guessing
def sign_in() -> Any:
    """Ask for name and password."""
    form = SignInForm()
    wrong = ""
    if form.validate_on_submit():
        name, tried = form.name.data, form.password.data
        token = people.sign_in(shop_of_app(), name, tried, title_of(request))
        if token:
            begin_session(token, name)
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
        end_session()
        return redirect(url_for("pages.sign_in"), 303)
    return render_template("sign-out.html", form=form)


@pages.route("/join/<token>", methods=["GET", "POST"])
@against_guessed_addresses
def join(token: str) -> Any:
    """Take up an invitation, or a way to a new password."""
    with shop_of_app().reading() as kept:
        invitation = people.invitation_of(kept, token)
        known = kept.get(Person, invitation.person_id or 0) if invitation else None
        whose = known.name if known else ""
    if invitation is None:
        words = "This invitation was used, or it is over: ask for a new one."
        return sentence("Invitation", words), 404
    form = NewPassword() if whose else JoinForm()
    form.whose = whose
    refused = ""
    if form.validate_on_submit():
        try:
            return _joined(token, whose or form.name.data, form.password.data)
        except people.Refused as fault:
            refused = str(fault)
    said = render_template(
        "join.html", form=form, whose=whose, refused=refused, role=invitation.role
    )
    return said, 422 if form.is_submitted() else 200


def _joined(token: str, name: str, typed: str) -> Any:
    known = passwords.kept(typed)
    with shop_of_app().session() as kept:
        person = people.join(kept, token, name, known)
        begun = people.begin_device(kept, person, title_of(request))
    begin_session(begun, name)
    return redirect("/", 303)


@pages.route("/password", methods=["GET", "POST"])
@login_required
@against_guessing
def password() -> Any:
    """Change one's own password; other devices are signed out by that."""
    form = ChangeForm()
    form.whose = current_user.name
    if form.validate_on_submit():
        if _changed_password(form.old.data, form.password.data):
            return redirect(url_for("pages.devices"), 303)
        form.old.errors = ["This is not your password."]
    said = render_template("password.html", form=form)
    return said, 422 if form.is_submitted() else 200


def _changed_password(old: str, new: str) -> bool:
    """Change the password of who is signed in, unless the old one is wrong or changed just now."""
    with shop_of_app().reading() as kept:
        known = kept.get_one(Person, current_user.person_id).password
    if not passwords.is_right(old, known):
        return False
    hashed = passwords.kept(new)
    with shop_of_app().session() as kept:
        person = kept.get_one(Person, current_user.person_id)
        if person.password != known:
            return False
        people.change_password(kept, person, hashed)
        begun = people.begin_device(kept, person, title_of(request))
    begin_session(begun, person.name)
    return True
