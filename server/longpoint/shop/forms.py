"""What the pages ask for."""

from typing import Any

from flask_wtf import FlaskForm
from wtforms import Field, PasswordField, SelectField, StringField
from wtforms.validators import InputRequired, Length, ValidationError

from . import names, passwords
from .signed_in import CREW, OWNER


class Form(FlaskForm):  # type: ignore[misc]  # Flask-WTF carries no types
    """A form that only a page of this server can send."""

    class Meta:
        csrf_time_limit = None

    @property
    def stale(self) -> str:
        """Why nothing was done though no field is wrong: the page is another session's."""
        return "This page was open too long: send it again." if self.csrf_token.errors else ""


def _is_name(_: Form, field: Field) -> None:
    if fault := names.fault_of(field.data):
        raise ValidationError(fault)


def _name() -> Any:
    return StringField(
        "Your name",
        [InputRequired("Type your name."), _is_name],
        render_kw={"autocomplete": "username", "autocapitalize": "words"},
    )


def _password(label: str, use: str, words: str = "Type your password.") -> Any:
    return PasswordField(
        label,
        [InputRequired(words), Length(max=passwords.MOST, message="This is too long.")],
        render_kw={"autocomplete": use},
    )


class SignInForm(Form):
    """A name and its password."""

    name = _name()
    password = _password("Password", "current-password")


class NewPassword(Form):
    """A password typed twice, so that a slip of the thumb shuts nobody out."""

    password = _password("New password", "new-password")
    again = _password("The same again", "new-password", "Type it a second time.")
    whose = ""
    """The person's name, where it is not on the form."""

    def validate_password(self, field: Field) -> None:
        """Refuse a password that many use, or that is too short."""
        name = self.name.data if "name" in self else self.whose
        if fault := passwords.fault_of(field.data, name or ""):
            raise ValidationError(fault)

    def validate_again(self, field: Field) -> None:
        """Refuse a second one that differs."""
        if field.data != self.password.data:
            raise ValidationError("The two are not the same: type both again.")


class JoinForm(NewPassword):
    """Someone new."""

    name = _name()


class ChangeForm(NewPassword):
    """A new password for who knows the old one."""

    old = _password("Password until now", "current-password")


class InviteForm(Form):
    """For whom an invitation is."""

    role = SelectField("As", choices=[CREW, OWNER])


class ActionForm(Form):
    """A button."""
