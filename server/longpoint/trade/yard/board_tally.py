"""Board by board at the stack: how many board feet are these, what do they cost, is it enough?"""

from ..lengths import Scale, show_number
from ..tool import Answer, Choice, Count, Given, Length, Number, Rows, Text, Tool
from .feet import Feet
from .tally import CUBIC_METERS, Tally
from .tally_views import laid_out, show_boards, show_thicknesses

_ENOUGH = 1e-9  # Board feet: float noise is no reason to go back to the stack.


class Price:
    """What the yard asks.

    Parameters
    ----------
    dollars : float or None
        For one board foot or lineal foot; None where it isn't known.
    per : str
        ``board-foot`` or ``lineal-foot``.
    drying : float
        Percent that the yard adds to board feet measured after drying.
    """

    def __init__(self, dollars: "float | None", per: str, drying: float) -> None:
        self.dollars = dollars
        self.per = per
        self.drying = drying

    def is_known(self) -> bool:
        """Tell whether there is a price."""
        return self.dollars is not None

    def charged(self, board_feet: float) -> float:
        """Return the board feet that are paid for."""
        return board_feet * (1 + self.drying / 100)

    def of(self, board_feet: float, lineal_feet: float) -> float:
        """Return dollars for boards of so many board feet and lineal feet."""
        by_length = self.per == "lineal-foot"
        return (self.dollars or 0.0) * (lineal_feet if by_length else self.charged(board_feet))


def work(given: Given, scale: Scale) -> Answer:
    """Return the tally of a stack, its cost, and how much more the job wants."""
    tally = Tally(given.rows("boards"), given.text("rule") == "graded")
    price = Price(given.maybe("price"), given.text("price_per"), given.number("drying"))
    answer = Answer(scale)
    _figures(answer, tally, price)
    _target(answer, given, tally.board_feet())
    _notes(answer, tally, price)
    show_boards(answer, tally, price)
    show_thicknesses(answer, tally, price)
    answer.draw(laid_out(tally, scale))
    return answer


def _figures(answer: Answer, tally: Tally, price: Price) -> None:
    feet, lineal = tally.board_feet(), tally.lineal_feet()
    answer.number("board_feet", feet, "bf", label="Board feet", lead=True)
    if price.is_known():
        answer.money("cost", price.of(feet, lineal), label="Cost", lead=True)
    answer.number("lineal_feet", lineal, "ft", label="Lineal feet")
    answer.count("board_count", sum([board.count for board in tally.boards]), label="Boards")
    if tally.graded:
        surface = sum([board.surface for board in tally.boards])
        answer.count("surface_measure", surface, label="Surface measure")
    if price.drying:
        answer.number("board_feet_charged", price.charged(feet), "bf", label="Board feet charged")
    if answer.scale.units == "mm":
        answer.number("cubic_meters", feet * CUBIC_METERS, "m³", label="Cubic meters", places=4)


def _target(answer: Answer, given: Given, feet: float) -> None:
    """Add what the job wants with its waste, or what these boards are good for."""
    waste, target = given.number("waste"), given.maybe("target")
    more = show_number(waste)
    if target is None:
        answer.number("good_for", feet / (1 + waste / 100), "bf", label="Good for a job of")
        answer.note(f"{more} percent for waste is counted on top of what a job's parts measure.")
        return
    to_buy = target * (1 + waste / 100)
    answer.number("board_feet_to_buy", to_buy, "bf", label="Board feet to buy", lead=True)
    answer.number("still_to_pick", max(0.0, to_buy - feet), "bf", label="Still to pick")
    job = f"A job of {show_number(target)} board feet wants {show_number(to_buy)} with {more} "
    if feet >= to_buy - _ENOUGH:
        over = show_number(max(0.0, feet - to_buy))
        answer.note(job + f"percent for waste: these are enough, with {over} over.")
    else:
        answer.note(job + f"percent for waste: {show_number(to_buy - feet)} more to pick.")


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
            "A surface measure of exactly a half goes up and down by turns, the first one up: "
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
    finds=("lumber", "board foot", "hardwood", "waste", "rough"),
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
            "target", "The job needs", unit="bf", above=0, optional=True, default_text="not said"
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
        "halves of surface measure by turns: from memory.",
        "Drying allowance, usually 7 percent in wholesale tallies: a lumber dealer's page.",
        "20 to 30 percent for waste in rough random-width hardwood: from memory.",
    ],
)
