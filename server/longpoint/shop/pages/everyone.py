"""The shop's people, their devices, and the owner's log."""

from collections.abc import Callable
from typing import Any

from flask import abort, redirect, render_template, request, url_for
from flask_login import current_user, login_required
from sqlalchemy import select
from sqlalchemy.orm import Session, joinedload

from longpoint.shop import people
from longpoint.shop.forms import ActionForm, InviteForm
from longpoint.shop.invitations import address_of, code_of
from longpoint.shop.signed_in import OWNER, shop_of_app
from longpoint.shop.tables import Device, Event, Person

from .parts import owner_only, pages

MOST_EVENTS = 500


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
        waiting = people.open_invitations(kept) if current_user.is_owner else []
    names = {person.id: person.name for person in found}
    said = {"people": found, "waiting": waiting, "names": names, "owner": OWNER}
    return render_template("people.html", invite=InviteForm(), form=ActionForm(), **said, **more)


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


@pages.route("/people/invitations/<int:number>/end", methods=["POST"])
@owner_only
def take_back(number: int) -> Any:
    """End an invitation that went to the wrong person."""
    if ActionForm().validate_on_submit():
        with shop_of_app().session() as kept:
            people.take_back(kept, number, current_user.person_id)
    return redirect(url_for("pages.everyone"), 303)


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
