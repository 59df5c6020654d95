"""What is asked about coats, how they are put on, the mix, the cans and the cup."""

from ...finish.cups import CUPS
from ...lengths import show_number
from ...tables.transfer import METHODS
from ...tool import Choice, Count, Number, Rows

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ...inputs import Input

FIT = "fit"
"""Quarts where two hold it, else gallons: three quarts cost about a gallon, from memory."""
CANS = (
    ("half-pint", "half-pint", 1 / 16),
    ("pint", "pint", 1 / 8),
    ("quart", "quart", 1 / 4),
    ("gallon", "gallon", 1.0),
    ("five", "5-gallon", 5.0),
    ("1l", "1 L", 1 / 3.785411784),
    ("2.5l", "2.5 L", 2.5 / 3.785411784),
    ("5l", "5 L", 5 / 3.785411784),
)
TWO = ("parts", "2")


class _FilmBy(Choice):
    """Said by the film that is given, where it isn't chosen."""

    def implied(self, raw: "dict[str, Any]") -> object:
        for by, name in (
            ("dry", "dry_film"),
            ("wet", "wet_coat"),
            ("spread", "coverage"),
            ("dry", "solids"),
        ):
            if raw.get(name) not in (None, ""):
                return by
        return None


class _Method(Choice):
    """A percent that is given needs no method."""

    def implied(self, raw: "dict[str, Any]") -> object:
        return None if raw.get("efficiency") in (None, "") else "given"


class _Solids(Number):
    """Needed to know a wet film from a dry one; else it tells the dry one."""

    def given_earlier(self, earlier: "dict[str, Any]") -> "Input":
        needed = earlier["film_by"] == "dry"
        return (
            self
            if not needed
            else Number(self.name, self.label, unit="%", above=0, most=100, help=self.help)
        )

    def is_always_asked(self) -> bool:
        return False


class _Efficiency(Number):
    """By the method chosen, the person's own list before the table; else typed."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        return earlier["method"] is not None

    def given_earlier(self, earlier: "dict[str, Any]") -> "Input":
        method = earlier["method"]
        default = {each.value: each.percent for each in METHODS}.get(method)
        for row in earlier["methods"] or []:
            if row["method"] == method:
                default = row["lands"]
        more: dict[str, Any] = {}
        if default is not None:
            more = {"default": default, "default_text": show_number(default, 1) + " %"}
        return Number(self.name, self.label, unit="%", above=0, most=100, help=self.help, **more)

    def is_always_asked(self) -> bool:
        return False


class _WithPotLife(Number):
    """Asked once a pot life is told."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        return earlier["pot_life"] is not None

    def is_always_asked(self) -> bool:
        return False


def inputs() -> "list[Input]":
    """Return the form."""
    return _film() + _put_on() + _mix() + _cans() + _cup()


def _film() -> "list[Input]":
    return [
        Number("area", "Area", measure="area", above=0, quantity="finish area"),
        Count("coats", "Coats", most=30),
        _FilmBy(
            "film_by",
            "Coat by",
            [("spread", "coverage"), ("wet", "wet film"), ("dry", "dry film")],
        ),
        Number(
            "dry_film",
            "Dry film per coat",
            measure="film",
            above=0,
            most=40,
            help="Of one coat: a data sheet may mean the whole system.",
            only_when=("film_by", "dry"),
        ),
        Number(
            "wet_coat",
            "Wet film per coat",
            measure="film",
            above=0,
            most=100,
            help="By the notched gauge, thinner in it.",
            only_when=("film_by", "wet"),
        ),
        Number(
            "coverage",
            "Coverage per coat",
            measure="spread",
            above=0,
            most=10000,
            help="The can says it; about 400 sq ft a gallon is usual, an almanac's rule of thumb.",
            only_when=("film_by", "spread"),
        ),
        _Solids(
            "solids",
            "Solids by volume",
            unit="%",
            above=0,
            most=100,
            optional=True,
            default_text="not known",
            help="Of the data sheet: by weight they read higher.",
        ),
        Number(
            "thinner",
            "Thinner",
            unit="%",
            default=0,
            most=200,
            help="Of the paint's volume.",
        ),
    ]


def _put_on() -> "list[Input]":
    methods = [(method.value, method.label) for method in METHODS]
    return [
        _Method("method", "Put on by", methods + [("given", "own percent")]),
        Rows(
            "methods",
            "My own percents",
            [
                Choice("method", "Method", methods),
                Number("lands", "Lands on the work", unit="%", above=0, most=100),
            ],
            row="percent that lands",
            least=0,
            most=12,
            kept="finish-methods",
        ),
        _Efficiency(
            "efficiency",
            "Paint that lands on the work",
            unit="%",
            above=0,
            most=100,
            optional=True,
            help="Of what leaves gun or brush; the rest is mist and loss.",
        ),
    ]


def _mix() -> "list[Input]":
    return [
        Choice("parts", "Mix", [("1", "one part"), ("2", "two parts")], default="1"),
        Number("part_a_of", "Parts of A", above=0, most=1000, only_when=TWO),
        Number("part_b_of", "Parts of B", above=0, most=1000, only_when=TWO),
        Choice(
            "thinner_of",
            "Thinner is of",
            [("both", "A and B together"), ("a", "A alone")],
            help="Data sheets differ: read yours.",
            only_when=TWO,
        ),
        Number(
            "batch",
            "Mixed at once",
            measure="mixed",
            above=0,
            optional=True,
            default_text="one coat",
            only_when=TWO,
        ),
        Number(
            "pot_life",
            "Pot life",
            unit="h",
            above=0,
            most=1000,
            optional=True,
            default_text="not known",
            only_when=TWO,
        ),
        _WithPotLife("pot_life_at", "Told at", measure="temperature", least=32, most=120),
        _WithPotLife("shop_temperature", "In the shop", measure="temperature", least=32, most=120),
    ]


def _cans() -> "list[Input]":
    return [
        Choice(
            "can",
            "Can",
            [(FIT, "quart or gallon")] + [(value, label) for value, label, _ in CANS],
            default=FIT,
            help="Up to two quarts in quarts, more in gallons.",
        ),
        Number(
            "can_price", "A can costs", unit="$", optional=True, default_text="not said", most=1e5
        ),
    ]


def _cup() -> "list[Input]":
    cups = [(cup.value, cup.label) for cup in CUPS]
    return [
        Choice("cup", "Viscosity cup", [("none", "none")] + cups, default="none"),
        Number(
            "cup_seconds",
            "Runs for",
            unit="s",
            above=0,
            most=1000,
            help="To the first break of the stream, at 77 °F (25 °C).",
            only_when=("cup",) + tuple([cup.value for cup in CUPS]),
        ),
    ]
