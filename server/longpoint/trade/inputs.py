"""What a tool can ask for in words: a choice, a flag, a text; and what all inputs share."""

from .lengths import Scale
from .quantities import kind_of
from .reading import Unreadable, quoted
from .refusal import FieldError

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

MOST_TEXT = 60


class Input:
    """One thing a tool asks for.

    Parameters
    ----------
    name : str
        The contract's name, in API and addresses.
    label : str
        What the trade says aloud.
    default : object
        Raw value used when nothing is given: text, number or flag; None for none.
    optional : bool
        The tool can do without; it then finds None, unless there is a default.
    default_text : str
        What stands in the empty field; made from the default where not given.
    help : str
        One sentence, where the label doesn't say it all.
    only_when : tuple
        ``(input, value, ...)``: asked only while that earlier input has one of these values.
    quantity : str
        Which size it is, one of `quantities.QUANTITIES`, where other tools know it too.
    was : tuple of str
        Names it had before: they are read as well, so that old addresses and files keep working.
    """

    kind = ""
    unit = ""
    takes = ""
    """What of a job it can be filled with by a tie: ``pieces``, ``board feet``; mostly nothing."""
    may_lack = False
    """Whether a tie to a number that isn't given now leaves it empty, as if nobody had said it."""

    def __init__(
        self,
        name: str,
        label: str,
        *,
        default: object = None,
        optional: bool = False,
        default_text: str = "",
        help: str = "",
        only_when: "tuple[object, ...] | None" = None,
        quantity: str = "",
        was: "tuple[str, ...]" = (),
    ) -> None:
        if quantity and kind_of(quantity) != self.kind:
            raise ValueError(quantity + " is no " + self.kind)
        self.name = name
        self.label = label
        self.quantity = quantity
        self.was = was
        self.names = (name,) + was
        """Under which it is read."""
        self.default = default
        self.required = default is None and not optional
        self.default_text = default_text
        self.help = help
        self.only_when = only_when
        self._cases: dict[object, Input] = {}
        """This input as it is asked in the few cases that earlier inputs make, each made once."""

    def read(self, raw: object, scale: Scale) -> "Any":
        """Return the value that `raw` stands for, within bounds.

        Raises
        ------
        Unreadable
            With a sentence for the person.
        """
        raise NotImplementedError

    def read_into(self, field: "Any", reader: "Any") -> None:
        """Read a field's raw value into its value, or into its errors under this input's name."""
        try:
            field.value = self.read(field.raw, reader.scale)
        except Unreadable as unreadable:
            field.errors = [FieldError(self.name, str(unreadable), False, unreadable.instead)]

    def implied(self, raw: "dict[str, Any]") -> object:
        """Return what the other raw inputs say of this one where it isn't given; mostly None."""
        return None

    def applies(self, earlier: "dict[str, Any]") -> bool:
        """Tell whether it is asked, given the values of the inputs before it.

        Those of a column are the columns before it and the inputs before its rows.
        """
        return self.only_when is None or condition_holds(self.only_when, earlier)

    def is_always_asked(self) -> bool:
        """Tell whether it is asked whatever the others say."""
        return self.only_when is None

    def nothing(self) -> "Any":
        """Return the value of an optional input that was not given."""
        return None

    def given_earlier(self, earlier: "dict[str, Any]") -> "Input":
        """Return this input as it is asked, given the values of the inputs before it."""
        return self

    def declare(self) -> "dict[str, object]":
        """Return the contract's JSON object for this input."""
        declared: dict[str, object] = {
            "name": self.name,
            "label": self.label,
            "kind": self.kind,
            "required": self.required,
            "default": self.default,
            "default_text": self.default_text or self.show_default(),
            "help": self.help,
            "unit": self.unit,
            "only_when": declare_condition(self.only_when),
            "quantity": self.quantity,
        }
        if self.takes:
            declared["takes"] = self.takes
        return declared

    def show_default(self) -> str:
        """Return the default as the empty field shows it."""
        return "" if self.default is None else str(self.default)


def condition_holds(only_when: "tuple[object, ...] | None", earlier: "dict[str, Any]") -> bool:
    """Tell whether a condition holds, given the values of earlier inputs."""
    return only_when is None or earlier.get(str(only_when[0])) in only_when[1:]


def declare_condition(only_when: "tuple[object, ...] | None") -> "dict[str, object] | None":
    """Return a condition as the contract's JSON object."""
    if only_when is None:
        return None
    return {"input": only_when[0], "is": list(only_when[1:])}


def _is_value(raw: object, value: str) -> bool:
    return raw == value or (isinstance(raw, int) and str(raw) == value)


class Choice(Input):
    """One of a few values; `choices` is a list of ``(value, label)``.

    A value in digits may come as a JSON number too. A choice may carry a condition like
    `only_when` as its third part; the default is then the first choice whose condition holds.
    """

    kind = "choice"

    def __init__(
        self, name: str, label: str, choices: "list[tuple[Any, ...]]", **rest: "Any"
    ) -> None:
        self.choices = [(str(choice[0]), str(choice[1])) for choice in choices]
        self.conditions = [choice[2] if len(choice) > 2 else None for choice in choices]
        self.narrowed = False
        """Whether only some of the declared choices are offered now."""
        super().__init__(name, label, **rest)
        if self.depends():
            self.required = False

    def depends(self) -> bool:
        """Tell whether what can be chosen depends on an earlier input."""
        return bool([when for when in self.conditions if when is not None])

    def offers_now(self, raw: object) -> bool:
        """Tell whether `raw` is one of the values that can be chosen."""
        return [value for value, _ in self.choices if _is_value(raw, value)] != []

    def given_earlier(self, earlier: "dict[str, Any]") -> "Input":
        if not self.depends():
            return self
        held = [condition_holds(when, earlier) for when in self.conditions]
        # None holds while the earlier input is itself wrong: one complaint is enough then.
        case = tuple(held if True in held else [True for _ in held])
        if case not in self._cases:
            self._cases[case] = self._among(case)
        return self._cases[case]

    def _among(self, case: "tuple[bool, ...]") -> "Choice":
        choices: list[tuple[Any, ...]] = [
            choice for choice, is_offered in zip(self.choices, case) if is_offered
        ]
        asked = Choice(
            self.name,
            self.label,
            choices,
            default=choices[0][0],
            quantity=self.quantity,
            was=self.was,
        )
        asked.narrowed = True
        return asked

    def read(self, raw: object, scale: Scale) -> str:
        for value, _ in self.choices:
            if _is_value(raw, value):
                return value
        names = ", ".join([value for value, _ in self.choices])
        said = quoted(raw) + " is not among them" if isinstance(raw, str) else "it is not a text"
        raise Unreadable(f"{self.label} is one of {names}: {said}.")

    def show_default(self) -> str:
        return dict(self.choices).get(self.default, "")  # type: ignore[call-overload, no-any-return]

    def declare(self) -> "dict[str, object]":
        declared = super().declare()
        declared["choices"] = [
            {"value": value, "label": label, "only_when": declare_condition(when)}
            for (value, label), when in zip(self.choices, self.conditions)
        ]
        return declared


class Flag(Input):
    """Yes or no; no unless the default says yes."""

    kind = "flag"

    def __init__(self, name: str, label: str, *, default: bool = False, **rest: "Any") -> None:
        super().__init__(name, label, default=default, **rest)

    def read(self, raw: object, scale: Scale) -> bool:
        if isinstance(raw, bool):
            return raw
        raise Unreadable(f"{self.label} is yes or no: give true or false.")

    def show_default(self) -> str:
        return "yes" if self.default else "no"


class Text(Input):
    """A few words as the trade writes them; `offers` can be tapped instead of typed.

    Each offer is a text, or ``(text, condition)`` with a condition like `only_when`. `listed`
    names an input with rows and one of its columns, whose texts are offered before these; further
    names are columns that must hold what the form holds under the same name.
    """

    kind = "text"

    def __init__(
        self,
        name: str,
        label: str,
        *,
        offers: "tuple[tuple[str, tuple[object, ...] | None], ...]" = (),
        listed: "tuple[str, ...]" = (),
        **rest: "Any",
    ) -> None:
        self.offers = offers
        self.listed = listed
        self.rest = rest
        super().__init__(name, label, **rest)

    def given_earlier(self, earlier: "dict[str, Any]") -> "Input":
        case = tuple([condition_holds(when, earlier) for _, when in self.offers])
        if False not in case:
            return self
        if case not in self._cases:
            offers = tuple([offer for offer, is_made in zip(self.offers, case) if is_made])
            self._cases[case] = self.__class__(
                self.name, self.label, offers=offers, listed=self.listed, **self.rest
            )
        return self._cases[case]

    def read(self, raw: object, scale: Scale) -> str:
        if not isinstance(raw, str):
            raise Unreadable(f"{self.label} needs a text.")
        if len(raw) > MOST_TEXT:
            raise Unreadable(
                f"{self.label} is {len(raw)} characters long: use {MOST_TEXT} or less."
            )
        if [c for c in raw if c < " " or 0xD800 <= ord(c) <= 0xDFFF]:
            raise Unreadable(f"{self.label} holds a character that can't be shown.")
        return raw.strip()

    def declare(self) -> "dict[str, object]":
        declared = super().declare()
        declared["offers"] = [
            {"value": value, "only_when": declare_condition(when)} for value, when in self.offers
        ]
        return declared
