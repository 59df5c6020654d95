"""The moisture of the wood at one end of its way: by its meter, or by the air around it."""

from ...inputs import Choice, Input
from ...lengths import show_number
from ...measured import Number
from ...refusal import Refusal
from ...tables.equilibrium import CURVES, DAMPEST, DRIEST, equilibrium

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...answer import Answer

_MARKS = {"fahrenheit": "°F", "celsius": "°C"}


def moisture_in_air(
    answer: "Answer", by: str, temperature: float, humidity: float, field: str
) -> float:
    """Return the moisture in percent that air brings wood to, and note it.

    Raises
    ------
    Refusal
        On `field`: the temperature lies outside the handbook's formula.
    """
    curve = CURVES[by]
    if not curve.coldest <= temperature <= curve.hottest:
        raise Refusal(
            field,
            f"{show_number(temperature)} {_MARKS[by]} is outside the handbook's formula as it was "
            f"checked: give {curve.coldest} to {curve.hottest}. Colder or hotter air of the same "
            "humidity makes little difference.",
        )
    moisture = equilibrium(by, temperature, humidity)
    answer.note(
        f"Air of {show_number(temperature)} {_MARKS[by]} and {show_number(humidity)} percent "
        f"humidity brings wood to {show_number(moisture, 1)} percent moisture, if it stays so for "
        "weeks."
    )
    return moisture


def air_inputs(end: str, label: str, help: str) -> "list[Input]":
    """Return what is asked about the moisture at one end."""
    by, air = end + "_by", ("fahrenheit", "celsius")
    return [
        Choice(
            by,
            label + ", known by",
            [
                ("moisture", "percent moisture"),
                ("fahrenheit", "the air, °F"),
                ("celsius", "the air, °C"),
            ],
            default="moisture",
        ),
        Number(
            "moisture_" + end,
            "Moisture " + label.lower(),
            unit="%",
            most=200,
            only_when=(by, "moisture"),
            help=help,
        ),
        Number(
            "temperature_" + end,
            "Temperature " + label.lower(),
            unit="°",
            least=-100,
            most=400,
            only_when=(by, air[0], air[1]),
        ),
        Number(
            "humidity_" + end,
            "Humidity " + label.lower(),
            unit="%",
            least=DRIEST,
            most=DAMPEST,
            only_when=(by, air[0], air[1]),
            help="Relative humidity, 5 to 95.",
        ),
    ]
