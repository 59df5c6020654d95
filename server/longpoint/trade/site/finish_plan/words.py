"""The air and the plan in words."""

from ...amounts import amount_words
from ...cautions import FLAMMABLE_FINISH, ISOCYANATES, LEAD_PAINT, OIL_RAGS
from ...finish.schedule import Coat, Step, missed
from ...finish.week import Week
from ...lengths import show_number
from ...tool import Answer, Given
from .air import FIVE_F, THREE_C

CAUTIONS = [FLAMMABLE_FINISH, OIL_RAGS, ISOCYANATES, LEAD_PAINT]

SOURCES = [
    "Dew point: Magnus formula, a = 17.62, b = 243.12, WMO guide to instruments, annex 4.B, as "
    "weather station manuals quote it.",
    "5 °F over the dew point: coating handbook of the services (UFC 3-190-06, read). 3 °C: ISO "
    "8502-4, its scope read, its number from memory. Measured again about every 4 hours: read "
    "there too.",
    "Times are your label's: they hold at 77 °F and 50 % humidity on test panels; wood, cold and "
    "damp take longer. Nothing here computes a drying time.",
]


def air_words(answer: Answer, given: Given, dew: float) -> "tuple[str, ...]":
    """Say what the air allows; return ways of the verdict, empty where nothing holds the work."""
    surface = given.maybe("surface_temperature")
    faults = _label_faults(answer, given)
    answer.note(
        "5 °F and 3 °C are not the same: 3 °C is 5.4 °F. Measure air and surface again about every "
        "4 hours, near the work."
    )
    for fault in faults:
        answer.note("Outside the label: " + fault + ".")
    if surface is not None:
        over = surface - dew
        answer.words("rule_5f", "go" if over >= FIVE_F else "hold")
        answer.words("rule_3c", "go" if over >= THREE_C else "hold")
        said = f"{degrees(answer, surface)} is {over_words(answer, over)} the dew point"
        if over < FIVE_F:
            return (f"Hold: a surface of {said}, {degrees(answer, dew)}", f"Hold: surface {said}")
        if over < THREE_C and not faults:
            return (f"Go by 5 °F, hold by 3 °C: the surface of {said}", "Go by 5 °F, not by 3 °C")
    if faults:
        return ("Hold: " + "; ".join(faults), "Hold: " + faults[0], "Hold: outside the label")
    return ()


def degrees(answer: Answer, fahrenheit: float) -> str:
    """Return a temperature in the units in force."""
    return amount_words(fahrenheit, "temperature", answer.scale.units, 1)


def over_words(answer: Answer, over: float) -> str:
    """Return how far over or under something it is, in the degrees in force."""
    unit, factor = ("°F", 1.0) if answer.scale.units == "in" else ("°C", 5 / 9)
    return show_number(abs(over) * factor, 1) + f" {unit} " + ("under" if over < 0 else "over")


def _label_faults(answer: Answer, given: Given) -> "list[str]":
    lowest, highest = given.maybe("label_lowest"), given.maybe("label_highest")
    faults = []
    for name, value in (
        ("air", given.number("air_temperature")),
        ("surface", given.maybe("surface_temperature")),
    ):
        if value is not None and lowest is not None and value < lowest:
            faults.append(f"{name} {degrees(answer, value)}, under {degrees(answer, lowest)}")
        if value is not None and highest is not None and value > highest:
            faults.append(f"{name} {degrees(answer, value)}, over {degrees(answer, highest)}")
    damp, limit = given.number("humidity"), given.maybe("label_humidity")
    if limit is not None and damp > limit:
        faults.append(f"humidity {show_number(damp)} %, over {show_number(limit)} %")
    return faults


def air_verdict(answer: Answer, dew: float) -> "tuple[str, ...]":
    """Return ways of the verdict of the air alone."""
    least = degrees(answer, dew + THREE_C)
    return (f"Dew point {degrees(answer, dew)}: coat no surface under {least}, 3 °C over it",)


def plan_verdict(
    week: Week, coats: "list[Coat]", steps: "list[Step]", hang: int
) -> "tuple[str, ...]":
    """Return ways of the verdict of a plan."""
    late = missed(steps)
    if late:
        said = f"{coats[late[0].coat].name} comes {week.said(late[0].at)}"
        return (
            f"Window missed: {said}, too late after {week.said(late[0].closes or 0)}",
            f"Window missed: {said}",
            f"Window missed before {week.said(late[0].at)}",
        )
    number = f"{len(coats)} coat" + ("s" if len(coats) > 1 else "")
    last = week.said(steps[-1].at)
    return (
        f"{number} from {week.said(steps[0].at)}: the last {last}, hang it {week.said(hang)}",
        f"{number}: the last {last}, hang it {week.said(hang)}",
        f"Hang it {week.said(hang)}",
    )


def film_words(answer: Answer, coats: "list[tuple[str, int, float | None]]") -> str:
    """Return how thick each coat of each row dries: ``Primer 2 mil, Topcoat 2 x 1.5 mil``."""
    said = []
    for name, number, film in coats:
        times = f"{number} x " if number > 1 else ""
        said.append(f"{name} {times}{answer.both_ways(film or 0.0, 'film')[0]}")
    return ", ".join(said)


def window_words(step: Step, week: Week) -> str:
    """Return from when until when a coat can go on."""
    if step.what != "coat":
        return ""
    until = "" if step.closes is None else " until " + week.said(step.closes)
    late = ", missed" if step.is_missed() else ""
    return "from " + week.said(step.opens) + until + late
