"""Saying no: what was asked can't be answered, and which field would have to change."""

from .reading import Unreadable

__all__ = ["FieldError", "Refusal", "Unreadable", "in_form"]


class FieldError:
    """One sentence about one field.

    Parameters
    ----------
    field : str
        An input's name; inside rows ``walls.1.length``, rows counted from 0.
    message : str
        What is wrong, with the offending value, and what would do.
    missing : bool
        The field is required and nothing was given yet.
    instead : tuple of str
        Texts that may have been meant, each to take the place of the field's.
    """

    def __init__(
        self, field: str, message: str, missing: bool = False, instead: "tuple[str, ...]" = ()
    ) -> None:
        self.field = field
        self.message = message
        self.missing = missing
        self.instead = instead

    def under(self, path: str) -> "FieldError":
        """Return the same error on a field inside `path`."""
        return FieldError(path + "." + self.field, self.message, self.missing, self.instead)

    def to_json(self) -> "dict[str, object]":
        """Return the error as the contract's JSON object."""
        return {
            "field": self.field,
            "message": self.message,
            "missing": self.missing,
            "instead": list(self.instead),
        }


class Refusal(Exception):
    """No answer: one or more fields hold what can't be read or can't be built.

    >>> str(Refusal("corner", "The corner must be less than 180.0°."))
    'corner: The corner must be less than 180.0°.'
    """

    def __init__(self, field: str = "", message: str = "") -> None:
        self.errors = [FieldError(field, message)] if message else []
        super().__init__(field + ": " + message)

    @staticmethod
    def of(errors: "list[FieldError]") -> "Refusal":
        """Return a refusal that carries several errors, in the order of the form."""
        refusal = Refusal(errors[0].field, errors[0].message)
        refusal.errors = errors
        return refusal


def in_form(refusal: Refusal, places: "dict[str, list[int]]") -> Refusal:
    """Return a tool's refusal with its rows counted as they stand in the form."""
    return Refusal.of([_in_form(error, places) for error in refusal.errors])


def _in_form(error: FieldError, places: "dict[str, list[int]]") -> FieldError:
    name, _, rest = error.field.partition(".")
    at, dot, column = rest.partition(".")
    known = places.get(name, [])
    if not at.isdigit() or int(at) >= len(known):
        return error
    path = name + "." + str(known[int(at)]) + dot + column
    return FieldError(path, error.message, error.missing, error.instead)
