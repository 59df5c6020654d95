"""How much will this width move with the seasons, and what gap does a panel need?"""

from ..lengths import Scale, show_number
from ..tables.equilibrium import CURVES, DAMPEST, DRIEST, equilibrium
from ..tables.movement import WOODS
from ..tool import Answer, Choice, Given, Input, Length, Number, Refusal, Tool
from .movement_notes import add_notes, scatter_words
from .movement_views import end_view, small_words
from .moving import Moving

_SHOWN_AT = (4, 6, 8, 10, 12, 14)
_MARKS = {"fahrenheit": "°F", "celsius": "°C"}


def work(given: Given, scale: Scale) -> Answer:
    """Return how a width changes, and the room that a centered panel needs."""
    answer = Answer(scale)
    span = (_moisture(given, "from", answer), _moisture(given, "to", answer))
    own = given.maybe("coefficient")
    moving = Moving(given.text("species"), given.text("cut"), own, span, given.number("width"))
    _figures(answer, given, moving)
    add_notes(answer, moving)
    _both_cuts(answer, moving)
    _at_moistures(answer, moving)
    answer.draw(end_view(moving, scale))
    return answer


def _moisture(given: Given, end: str, answer: Answer) -> float:
    """Return the moisture in percent at one end, as given or as the air makes it."""
    by = given.text(end + "_by")
    if by == "moisture":
        return given.number("moisture_" + end)
    temperature, humidity = given.number("temperature_" + end), given.number("humidity_" + end)
    curve = CURVES[by]
    if not curve.coldest <= temperature <= curve.hottest:
        raise Refusal(
            "temperature_" + end,
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


def _figures(answer: Answer, given: Given, moving: Moving) -> None:
    change = moving.change()
    _moves(answer, moving, "change", "Change in width", change, lead=True)
    _moves(answer, moving, "gap_each_side", "Gap, each side", max(0.0, change) / 2, lead=True)
    if change < 0:
        _moves(answer, moving, "draws_in", "Draws in, each side", -change / 2)
    answer.length("width_then", moving.width + change, label="Width then")
    for end, moisture, when in (("from", moving.start, "now"), ("to", moving.end, "then")):
        if given.text(end + "_by") != "moisture":
            answer.number("moisture_" + end, moisture, "%", label="Moisture " + when, places=1)
    if moving.is_by_shrinkage():
        answer.number("shrinkage", moving.shrinkage(), "%", label="Green to ovendry", places=1)
    else:
        answer.number("coefficient", moving.coefficient, label="For each percent", places=5)


def _moves(
    answer: Answer, moving: Moving, name: str, label: str, inches: float, lead: bool = False
) -> None:
    """Add a change; beside a wood's stands what one board may do, not a decimal none keeps to."""
    answer.length(name, inches, label=label, lead=lead, fine=True)
    if inches and moving.wood is not None:
        answer.figures[-1]["also"] = scatter_words(inches, answer.scale)


def _both_cuts(answer: Answer, moving: Moving) -> None:
    wood = moving.wood
    if wood is None or wood.radial is None:
        return
    rows = []
    for cut, coefficient in (("flat-sawn", wood.tangential), ("quarter-sawn", wood.radial)):
        other = Moving(moving.species, cut, None, (moving.start, moving.end), moving.width)
        change = small_words(other.change(), answer.scale)
        rows.append([cut, change, show_number(coefficient, 5)])
    pick = 0 if moving.cut == "flat-sawn" else 1
    answer.table("Both cuts", ["Cut", "Change", "For each percent"], rows, pick)


def _at_moistures(answer: Answer, moving: Moving) -> None:
    rows = []
    for moisture in _SHOWN_AT:
        change = moving.to(moisture).change()
        width = answer.scale.length(moving.width + change)
        rows.append([f"{moisture} %", width, small_words(change, answer.scale)])
    answer.table("This board at other moistures", ["Moisture", "Width", "Change from now"], rows)


def _asked(end: str, label: str, help: str) -> "list[Input]":
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


TOOL = Tool(
    slug="wood-movement",
    place="yard",
    title="Wood movement",
    question="How much will this width move, and what gap does the panel need?",
    finds=("shrink", "swell", "humidity", "moisture", "seasonal", "expansion"),
    inputs=[
        Choice(
            "species",
            "Wood",
            [(wood.value, wood.label) for wood in WOODS]
            + [("plywood", "plywood"), ("mdf", "MDF"), ("other", "another, by its coefficient")],
            help="Hardwoods by name, then softwoods, then imported woods, then sheets.",
        ),
        Number(
            "coefficient",
            "Coefficient",
            above=0,
            most=0.01,
            only_when=("species", "other"),
            help="Part of the width for each percent of moisture: 0.0037 for flat-sawn red oak.",
        ),
        Choice(
            "cut",
            "Cut",
            [("flat-sawn", "flat-sawn"), ("quarter-sawn", "quarter-sawn")],
            default="flat-sawn",
            help="Flat-sawn: growth lies along the face. Quarter-sawn: it stands on it.",
        ),
        Length("width", "Width", most=1200, help="Across the grain, all strips of a glue-up."),
    ]
    + _asked("from", "Now", "What the meter says of the stock as it is now.")
    + _asked(
        "to",
        "Then",
        "Indoors on average 8 in most of the US, 6 in the dry Southwest, 11 on the damp southern "
        "coast; more in summer, less when heated.",
    ),
    work=work,
    example={"species": "cherry", "width": "23 3/4", "moisture_from": 6, "moisture_to": 11},
    cautions=[
        "One board may move a fifth more or less than its species on the average: leave room for "
        "it, and never fit a panel tight in its width."
    ],
    sources=[
        "Change by coefficient, 6 to 14 percent: Wood Handbook (USDA Forest Products Laboratory, "
        "FPL-GTR-190), Table 13-5 and equation 13-2, as an extension service quotes it; hardwood "
        "rows seen as a reprint. Softwoods and poplar from memory, checked against total "
        "shrinkage; true hickory, mahogany, khaya and teak from memory.",
        "Brazilian cherry, jarrah, merbau, mesquite, padauk, purpleheart, wenge: lists of the "
        "flooring trade after Agriculture Handbook 72.",
        "Change outside that range: total shrinkage green to ovendry, straight from 30 percent "
        "(22 for redwood, western red and northern white cedar, from memory): Wood Handbook, "
        "Table 4-3, seen as a reprint, some rows from memory.",
        "Moisture from air: Wood Handbook, chapter 4, equation and Table 4-2, constants as "
        "quoted by others; one curve for all species, fine for practice (FPL-GTR-229).",
        "Indoor averages: Wood Handbook, Figure 13-1, as quoted. That a board differs from its "
        "species' mean: the laboratory's authors in Hardwood Floors, 2025; that a fifth covers "
        "most: a rule of thumb, no source.",
        "Plywood: APA, 0.2 percent from ovendry to fiber saturation, as a panel makers' page "
        "prints it. MDF: 0.05 percent for each percent, European MDF makers' pages.",
    ],
)
