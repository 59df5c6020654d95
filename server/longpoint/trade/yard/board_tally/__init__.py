"""Board by board at the stack: how many board feet are these, what do they cost, is it enough?"""

from ...lengths import Scale, show_money, show_number
from ...lumber.board_feet import CUBIC_METERS
from ...tool import Answer, Choice, Count, Given, Gives, Length, Number, Rows, Text, Tool
from ..feet import Feet
from ..yard_list import keep_size
from .price import Price
from .tally import ENOUGH, Line, Tally, going_back, thickness_words
from .views import laid_out, show_boards, show_thicknesses


def work(given: Given, scale: Scale) -> Answer:
    """Return the tally of a stack, its cost, and how much more the job wants."""
    lines = [
        Line(row.text("thickness"), row.number("width"), row.maybe("length"), row.count("count"))
        for row in given.rows("boards")
    ]
    tally = Tally(lines, given.text("rule") == "graded")
    price = Price(given.maybe("price"), given.text("price_per"), given.number("drying"))
    waste, target = given.number("waste"), given.maybe("target")
    answer = Answer(scale)
    _figures(answer, tally, price)
    if target is None:
        _good_for(answer, tally, price, waste)
    else:
        _target(answer, tally, target * (1 + waste / 100), waste)
    _notes(answer, tally, price)
    show_boards(answer, tally, price)
    show_thicknesses(answer, tally, price)
    _keep(answer, tally, price)
    answer.draw(laid_out(tally, scale))
    return answer


def _figures(answer: Answer, tally: Tally, price: Price) -> None:
    feet, lineal = tally.board_feet(), tally.lineal_feet()
    answer.number("board_feet", feet, "bf", lead=True)
    if price.is_known():
        answer.money("cost", price.of(feet, lineal), lead=True)
    answer.number("lineal_feet", lineal, "ft")
    answer.count("board_count", tally.count())
    if tally.graded:
        answer.count("surface_measure", sum([board.surface for board in tally.boards]))
    if price.drying:
        answer.number("board_feet_charged", price.charged(feet), "bf")
    if answer.scale.units == "mm":
        answer.number("cubic_meters", feet * CUBIC_METERS, "m³", places=4)


def _good_for(answer: Answer, tally: Tally, price: Price, waste: float) -> None:
    """Say what is there and what a job may take of it."""
    feet, boards = tally.board_feet(), tally.count()
    good = feet / (1 + waste / 100)
    answer.number("good_for", good, "bf")
    more = show_number(waste)
    answer.note(f"{more} percent for waste is counted on top of what a job's parts measure.")
    what = f"{feet_words(feet)} in {boards} board{'s' if boards > 1 else ''}"
    what += " by grading rules" if tally.graded else ""
    if price.is_known():
        what += ", " + show_money(price.of(feet, tally.lineal_feet()))
    answer.verdict(
        f"{what}: good for a job of {show_number(good)} with {more} % waste",
        f"{what}: good for {show_number(good)}",
        what,
    )


def _target(answer: Answer, tally: Tally, to_buy: float, waste: float) -> None:
    """Say how much is still to be picked, or what is over and which boards can go back."""
    feet, more = tally.board_feet(), f"{show_number(waste)} % waste"
    answer.number("board_feet_to_buy", to_buy, "bf", lead=True)
    answer.number("still_to_pick", max(0.0, to_buy - feet), "bf")
    if feet < to_buy - ENOUGH:
        missing = feet_words(to_buy - feet)
        answer.verdict(
            f"Pick {missing} more: {show_number(feet)} of {show_number(to_buy)}, {more} counted",
            f"Pick {missing} more, {more} counted",
        )
        return
    back = going_back(tally.boards, feet - to_buy, tally.graded)
    enough = f"Enough: {feet_words(max(0.0, feet - to_buy))} over"
    if not back:
        answer.verdict(f"{enough}, {more} counted", enough)
        return
    names = _back_words(back)
    answer.words("go_back", names)
    answer.verdict(
        f"{enough}, {more} counted; {names} can go back",
        f"{enough}; {names} can go back",
        f"{enough}, {more} counted; some boards can go back",
    )
    answer.note(
        f"Can go back, largest first: {names}. Look that what stays still holds the longest and "
        "the widest part."
    )


def feet_words(board_feet: float) -> str:
    """Return board feet in words.

    >>> feet_words(1), feet_words(13.75)
    ('1 board foot', '13.75 board feet')
    """
    number = show_number(board_feet)
    return number + (" board foot" if number == "1" else " board feet")


def _back_words(back: "list[tuple[int, int]]") -> str:
    """Return which lines of the tally, and how many boards of each.

    >>> _back_words([(3, 1), (5, 2)])
    'board 3, 2 of board 5'
    """
    return ", ".join([(f"{many} of " if many > 1 else "") + f"board {at}" for at, many in back])


def _keep(answer: Answer, tally: Tally, price: Price) -> None:
    """Offer each thickness with its price for the person's list."""
    if not price.is_known():
        return
    for thickness in sorted({board.thickness for board in tally.boards}):
        label = thickness_words(thickness)
        keep_size(answer, label, "hardwood", thickness, None, price.dollars, price.per)


def _notes(answer: Answer, tally: Tally, price: Price) -> None:
    boards = tally.boards
    if tally.graded:
        _graded_notes(answer, tally)
    else:
        answer.note("Counted as measured: nothing is rounded before the sum.")
    if [board for board in boards if board.thickness < 1]:
        answer.note("What is thinner than an inch counts as an inch thick.")
    if price.drying and price.per == "board-foot":
        answer.note(
            f"The yard adds {show_number(price.drying)} percent, since boards measured after "
            "drying were bigger green. At retail that is usually in the price already: ask."
        )
    answer.note(
        "Surfaced lumber counts by the quarter it was before surfacing: 13/16 is 4/4 to the yard."
    )


def _graded_notes(answer: Answer, tally: Tally) -> None:
    answer.note(
        "Graded: each board's width in inches times its length in feet, over 12, goes to the "
        "nearest whole surface measure (SM), and that times the thickness. Unrounded this stack "
        f"measures {show_number(tally.exact())} board feet."
    )
    if [board for board in tally.boards if board.counted_feet != board.feet]:
        answer.note("Part-feet of length are dropped, by the rules.")
    if tally.halves.met:
        answer.note(
            "A surface measure of exactly a half goes up and down alternately, the first one up: "
            "another tally may begin the other way."
        )
    for at, board in enumerate(tally.boards):
        if board.surface == 0:
            answer.note(
                f"Board {at + 1} rounds to nothing by the grading rules: count exactly to have "
                "it in."
            )


TOOL = Tool(
    slug="board-tally",
    place="yard",
    title="Board tally",
    question="Board by board at the stack: how many board feet, what do they cost, is it enough?",
    finds=("lumber", "board foot", "bf", "bd ft", "hardwood", "waste", "rough"),
    inputs=[
        Rows(
            "boards",
            "Boards",
            [
                Length("width", "Width", most=60),
                Feet(
                    "length",
                    "Length",
                    unit="ft",
                    above=0,
                    most=60,
                    optional=True,
                    default_text="same",
                    help="In feet; left empty, it is that of the board above.",
                ),
                Text(
                    "thickness",
                    "Thickness",
                    optional=True,
                    default_text="same",
                    help="By the quarter, as sold; left empty, it is that of the board above.",
                    offers=tuple(
                        [
                            (label, None)
                            for label in ("4/4", "5/4", "6/4", "8/4", "10/4", "12/4", "16/4", "3/4")
                        ]
                    ),
                ),
                Count("count", "Count", default=1),
            ],
            row="board",
            most=100,
        ),
        Choice(
            "rule",
            "Counted",
            [("exact", "exactly"), ("graded", "by grading rules")],
            default="exact",
        ),
        Number("price", "Price", unit="$", optional=True, default_text="not said"),
        Choice(
            "price_per",
            "Price is per",
            [("board-foot", "board foot"), ("lineal-foot", "lineal foot")],
            default="board-foot",
        ),
        Number(
            "target",
            "The job needs",
            unit="bf",
            above=0,
            optional=True,
            default_text="not said",
            takes="board feet",
        ),
        Number(
            "waste",
            "Waste",
            unit="%",
            default=20,
            most=300,
            help="On top of what the parts measure: 20 to 30 is usual for rough random widths.",
        ),
        Number(
            "drying",
            "Drying allowance",
            unit="%",
            default=0,
            most=30,
            help="What some wholesale yards add to boards measured after drying, often 7.",
        ),
    ],
    work=work,
    gives=[
        Gives("board_feet", "number", "Board feet"),
        Gives("cost", "money", "Cost", sometimes=True),
        Gives("lineal_feet", "number", "Lineal feet"),
        Gives("board_count", "count", "Boards"),
        Gives("surface_measure", "count", "Surface measure", sometimes=True),
        Gives("board_feet_charged", "number", "Board feet charged", sometimes=True),
        Gives("cubic_meters", "number", "Cubic meters", sometimes=True),
        Gives("good_for", "number", "Good for a job of", sometimes=True),
        Gives("board_feet_to_buy", "number", "Board feet to buy", short="to buy", sometimes=True),
        Gives("still_to_pick", "number", "Still to pick", sometimes=True),
        Gives("go_back", "text", "Can go back", sometimes=True),
    ],
    example={
        "boards": [
            {"width": "6 1/4", "length": 10, "thickness": "4/4"},
            {"width": "8"},
            {"width": "7 1/2", "count": 2},
            {"width": "9", "length": 8, "thickness": "8/4"},
            {"width": "5 3/4"},
        ],
        "price": "6.50",
        "target": 30,
    },
    cautions=[
        "Long boards in a stack slide and tip: lift with two, gloves on, and restack what you "
        "have turned over."
    ],
    sources=[
        "Board feet and surface measure: NHLA rules as the American Hardwood Export Council's "
        "measuring guide and a dealer's page print them, with their examples.",
        "Thinner than an inch counts as an inch; surfaced lumber by its size before surfacing: "
        "a dealer's page quoting the NHLA rules.",
        "Part-feet of length round down: the American Hardwood Export Council's guide. Exact "
        "halves of surface measure alternately: from memory.",
        "Drying allowance, usually 7 percent in wholesale tallies: a lumber dealer's page.",
        "20 to 30 percent for waste in rough random-width hardwood: from memory.",
    ],
)
