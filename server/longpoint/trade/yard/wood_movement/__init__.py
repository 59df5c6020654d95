"""How much will this width move with the seasons, and what gap does a panel need?"""

from ...lengths import Scale, show_number
from ...tables.movement import WOODS
from ...tool import Answer, Choice, Given, Gives, Length, Number, Refusal, Tool
from .air import air_inputs, moisture_in_air
from .moving import Moving
from .notes import add_notes, scatter_words
from .views import end_view, small_words

_SHOWN_AT = (4, 6, 8, 10, 12, 14)
_SHEETS = {"plywood": "plywood", "mdf": "MDF", "other": "this wood"}


def work(given: Given, scale: Scale) -> Answer:
    """Return how a width changes, and the room that a centered panel needs."""
    answer = Answer(scale)
    by_air = [end for end in ("from", "to") if given.text(end + "_by") != "moisture"]
    span = (_moisture(given, "from", answer), _moisture(given, "to", answer))
    groove = given.maybe("groove_depth")
    width = given.number("panel_width") if groove is None else 1.0
    moving = Moving(
        given.text("species"), given.text("cut"), given.maybe("coefficient"), span, width
    )
    if groove is not None:
        moving = _for_frame(moving, given.number("frame_opening"), groove, scale)
    _verdict(answer, moving, groove)
    _figures(answer, moving, by_air, groove)
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
    return moisture_in_air(answer, by, temperature, humidity, "temperature_" + end)


def _for_frame(inch: Moving, opening: float, groove: float, scale: Scale) -> Moving:
    """Return the widest panel that the grooves of both stiles take at its widest; inches.

    `inch` is one inch of it.

    Raises
    ------
    Refusal
        On `groove_depth`, where the panel would come out of it.
    """
    room, play = opening + 2 * groove, inch.safe()
    wide = room / (1 + 2 * play) if inch.change() > 0 else room
    if groove <= wide * play:
        raise Refusal(
            "groove_depth",
            f"Each edge moves up to {small_words(wide * play, scale)}: out of a groove "
            f"{small_words(groove, scale)} deep. Plow it deeper, or take quarter-sawn stock or a "
            "sheet.",
        )
    return inch.sized(wide)


def _verdict(answer: Answer, moving: Moving, groove: "float | None") -> None:
    """Say what to cut or to leave, which way it moves, and for which wood and cut."""
    change, scale = moving.change(), answer.scale
    each, all_of_it = small_words(moving.safe(), scale), small_words(abs(change), scale)
    way = "swells" if change > 0 else "shrinks"
    wood = _wood_words(moving)
    cut = "" if groove is None else f"Cut the panel {scale.length(moving.width)} wide: "
    if not change:
        answer.verdict(_begun(cut + "the moisture stays, and so does the width"))
        return
    span = f"{show_number(moving.start, 1)} to {show_number(moving.end, 1)} %"
    moves = f"{way} {all_of_it}"
    room = f"leave {each} at each stile" if change > 0 else f"draws in {each} at each stile"
    if groove is not None and change > 0:
        room = f"{each} play at each stile"
    answer.verdict(
        _begun(f"{cut}{wood}, {span}, {moves}; {room}"),
        _begun(f"{cut}{wood} {moves}; {room}"),
        _begun(f"{cut}{moves}, {room}"),
        _begun(f"{cut}{room}"),
    )


def _begun(words: str) -> str:
    """Return words as a sentence begins."""
    return words[:1].upper() + words[1:]


def _wood_words(moving: Moving) -> str:
    """Return the wood and, where it matters, how it is sawn."""
    if moving.wood is None:
        return _SHEETS[moving.species]
    name = moving.wood.label.split(" (")[0].split(", ")
    return " ".join([moving.cut] + list(reversed(name)))


def _figures(answer: Answer, moving: Moving, by_air: "list[str]", groove: "float | None") -> None:
    change, safe = moving.change(), moving.safe()
    if groove is not None:
        answer.length("panel_width", moving.width, lead=True)
    words = "" if not change else "Change, swells" if change > 0 else "Change, shrinks"
    _moves(answer, moving, "change", change, label=words, lead=True)
    if change > 0:
        answer.length("panel_play", safe, lead=True, fine=True)
    if groove is not None:
        answer.length("hold", groove - safe, fine=True)
    _moves(answer, moving, "gap_each_side", max(0.0, change) / 2)
    if change < 0:
        _moves(answer, moving, "draws_in", -change / 2)
    answer.length("width_then", moving.width + change)
    for end, moisture in (("from", moving.start), ("to", moving.end)):
        if end in by_air:
            answer.number("moisture_" + end, moisture, "%", places=1)
    if moving.is_by_shrinkage():
        answer.number("shrinkage", moving.shrinkage(), "%", places=1)
    else:
        answer.number("coefficient", moving.coefficient, places=5)


def _moves(
    answer: Answer,
    moving: Moving,
    name: str,
    inches: float,
    *,
    label: str = "",
    lead: bool = False,
) -> None:
    """Add a change; beside a wood's stands what one board may do, not a decimal none keeps to."""
    answer.length(name, inches, label=label, lead=lead, fine=True)
    if inches and moving.spread():
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
            quantity="wood",
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
        Choice(
            "size",
            "Known",
            [("width", "the panel"), ("opening", "the frame")],
            default="width",
        ),
        Length(
            "panel_width",
            "Panel width",
            most=1200,
            only_when=("size", "width"),
            help="Of a panel or any board, across the grain, all strips of a glue-up.",
            quantity="panel width",
            was=("width",),
        ),
        Length(
            "frame_opening",
            "Between the stiles",
            most=1200,
            only_when=("size", "opening"),
            help="Edge to edge of the frame, not counting the grooves.",
        ),
        Length(
            "groove_depth",
            "Groove depth",
            most=24,
            only_when=("size", "opening"),
            quantity="groove depth",
        ),
    ]
    + air_inputs("from", "Now", "What the meter says of the stock as it is now.")
    + air_inputs(
        "to",
        "Then",
        "Indoors on average 8 in most of the US, 6 in the dry Southwest, 11 on the damp southern "
        "coast; more in summer, less when heated.",
    ),
    work=work,
    gives=[
        Gives("panel_width", "length", "Panel width", quantity="panel width", sometimes=True),
        Gives("change", "length", "Change in width", short="change"),
        Gives("panel_play", "length", "Panel play", quantity="panel play", sometimes=True),
        Gives("hold", "length", "Stays in each groove", sometimes=True),
        Gives("gap_each_side", "length", "Swells at each stile, mean"),
        Gives("draws_in", "length", "Draws in at each stile, mean", sometimes=True),
        Gives("width_then", "length", "Width then"),
        Gives("moisture_from", "number", "Moisture now", sometimes=True),
        Gives("moisture_to", "number", "Moisture then", sometimes=True),
        Gives("shrinkage", "number", "Green to ovendry", sometimes=True),
        Gives("coefficient", "number", "For each percent", sometimes=True),
    ],
    example={"species": "cherry", "panel_width": "23 3/4", "moisture_from": 6, "moisture_to": 11},
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
