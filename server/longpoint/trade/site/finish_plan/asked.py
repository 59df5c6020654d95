"""What the plan asks for: the air, the label's times, and the hours there is work."""

from ...finish.coating import ONE, PAINTS, film_name, number_name, stands_for
from ...finish.week import DAYS
from ...tool import Choice, Count, Length, Number, Rows, Text
from .air import COLDEST, HOTTEST
from .clock import Clock

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

MOST_HOURS = 2000
MOST_COATS = 20


def _has_coats(earlier: "dict[str, Any]") -> bool:
    return bool(earlier.get("coats"))


class _PlanChoice(Choice):
    """Asked once there are coats to plan."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        return _has_coats(earlier)

    def is_always_asked(self) -> bool:
        return False


class _PlanNumber(Number):
    """Asked once there are coats to plan."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        return _has_coats(earlier)

    def is_always_asked(self) -> bool:
        return False


class _PaintCount(Count):
    """Asked once a row stands for all coats of a paint."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        paints = [stands_for(row) for row in earlier.get("coats") or []]
        return self.name in [number_name(paint) for paint in paints]

    def is_always_asked(self) -> bool:
        return False


class _CoatFilm(Number):
    """Asked once a row stands for one coat."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        return ONE in [stands_for(row) for row in earlier.get("coats") or []]

    def is_always_asked(self) -> bool:
        return False


class _PaintFilm(Number):
    """Asked once a row stands for all coats of a paint; one whose solids nobody told has none."""

    may_lack = True

    def applies(self, earlier: "dict[str, Any]") -> bool:
        paints = [stands_for(row) for row in earlier.get("coats") or []]
        return self.name in [film_name(paint) for paint in paints]

    def is_always_asked(self) -> bool:
        return False


def _has_film(earlier: "dict[str, Any]") -> bool:
    names = ["dry_film"] + [film_name(paint) for paint in PAINTS]
    return bool([name for name in names if earlier.get(name) is not None])


class _GapLength(Length):
    """Asked once a film is told."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        return _has_film(earlier)

    def is_always_asked(self) -> bool:
        return False


class _Films(Choice):
    """Asked once a film is told."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        return _has_film(earlier)

    def is_always_asked(self) -> bool:
        return False


def _hours(name: str, label: str, help: str, *, optional: bool = False) -> Number:
    if optional:
        return Number(name, label, unit="h", most=MOST_HOURS, optional=True,
                      default_text="not said", help=help)  # fmt: skip
    return Number(name, label, unit="h", most=MOST_HOURS, help=help)


_COAT = [
    Text("name", "Coat", optional=True, default_text="coat"),
    Choice("paint", "Stands for",
           [(ONE, "one coat")] + [(paint, f"all coats of {paint}") for paint in PAINTS],
           default=ONE, help="All coats of one paint go by one label."),
    Number("minutes", "Coating, each face", unit="min", least=1, most=1440),
    _hours("recoat_from", "Recoat after", "Hours once it is on, by the label."),
    _hours("recoat_until", "Recoat before", "Where the label ends its window.", optional=True),
    Number("sanding", "Sanding, each face", unit="min", default=0, most=1440,
           help="Before the next coat; 0 for none."),
    _hours("sand_after", "Dry to sand", "The recoat time where not given.", optional=True),
    _hours("handle_after", "Dry to handle", "To turn it. The recoat time where not given.",
           optional=True),
]  # fmt: skip

_AIR = [
    Number("air_temperature", "Air", measure="temperature", least=COLDEST, most=HOTTEST),
    Number("humidity", "Relative humidity", unit="%", above=0, most=100),
    Number("surface_temperature", "Surface", measure="temperature", least=COLDEST, most=200,
           optional=True, default_text="not measured",
           help="Of the work, by a surface thermometer."),
    Number("label_lowest", "Label: not colder than", measure="temperature", least=COLDEST,
           most=HOTTEST, optional=True, default_text="not said"),
    Number("label_highest", "Label: not warmer than", measure="temperature", least=COLDEST,
           most=200, optional=True, default_text="not said"),
    Number("label_humidity", "Label: not damper than", unit="%", above=0, most=100, optional=True,
           default_text="not said"),
]  # fmt: skip


def with_films(raw: "dict[str, Any]") -> "dict[str, Any]":
    """Say of each paint what version 1 took for every coat."""
    kept = dict(raw)
    for row in raw.get("coats") or []:
        paint = row.get("paint") if isinstance(row, dict) else None
        if paint in PAINTS and raw.get("dry_film") not in (None, ""):
            kept[film_name(paint)] = raw["dry_film"]
    return kept


INPUTS = _AIR + [
    Rows("coats", "Coats", _COAT, row="coat", least=0, most=8),
] + [
    _PaintCount(number_name(paint), f"Coats of {paint}", most=MOST_COATS) for paint in PAINTS
] + [
    _PlanChoice("faces", "Faces",
                [("1", "all at once, hung or on points"), ("2", "one, turned, then the other")]),
    _PlanChoice("start_day", "Begin on", list(DAYS)),
    Clock("day_from", "Work from"),
    Clock("day_to", "Work to"),
    Clock("start_time", "Begin at", optional=True, default_text="start of work"),
    _PlanChoice("working_days", "Work on",
                [("5", "Monday to Friday"), ("6", "Monday to Saturday"), ("7", "every day")]),
    _PlanNumber("hang_after", "Dry to hang", unit="h", most=MOST_HOURS,
                help="After the last coat: stacked, closed against a stop."),
    _PlanNumber("cure_days", "Full cure", unit="days", most=365, optional=True,
                default_text="not said"),
    _CoatFilm("dry_film", "Dry film per coat", measure="film", above=0, most=40, optional=True,
                default_text="not said", help="To tell what the gaps of a door lose.",
                quantity="film thickness"),
] + [
    _PaintFilm(film_name(paint), f"Dry film per coat of {paint}", measure="film", above=0, most=40,
               optional=True, default_text="not said", help="To tell what the gaps of a door lose.")
    for paint in PAINTS
] + [
    _Films("coated", "Coated",
           [("leaf", "the leaf alone"), ("both", "leaf and jamb alike")]),
    _GapLength("side_gap", "Side gap", quantity="side gap", least=0, most=1, optional=True,
               default_text="not said", help="As the leaf is sized bare."),
]  # fmt: skip
