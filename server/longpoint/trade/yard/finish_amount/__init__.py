"""How much finish is bought, and how wet does it go on? Coats, cans, mix and cup."""

from ...cautions import (
    FINISH_VAPORS,
    FLAMMABLE_FINISH,
    ISOCYANATES,
    LEAD_PAINT,
    OIL_RAGS,
    SANDING_DUST,
    SPRAY_MIST,
)
from ...finish.spreading import Film, gallons, spread
from ...tool import Answer, Given, Gives, Scale, Tool
from .asked import inputs
from .buying import add_cans
from .cup import add_viscosity
from .mixing import add_mix, thinned_by
from .views import films
from .words import SOURCES, add_notes, add_table, verdict


def work(given: Given, scale: Scale) -> Answer:
    """Return the wet film, the paint to buy, how far a gallon goes, and the mix."""
    film, landing = _film(given), given.number("efficiency") / 100
    coats = given.count("coats")
    paint = gallons(given.number("area"), coats, film, landing)
    answer = Answer(scale)
    cans = add_cans(answer, given, paint)
    answer.amount("wet_film", film.wet, "film")
    answer.amount("spread", spread(film, landing), "spread")
    if film.dry is not None:
        answer.amount("dry_film", film.dry, "film")
        answer.amount("dry_total", film.dry * coats, "film")
    add_mix(answer, given, paint, thinned_by(given))
    add_viscosity(answer, given)
    verdict(answer, given, film, paint, cans)
    add_table(answer, given)
    add_notes(answer, given, film)
    answer.draw(films(answer, film, coats))
    if given.text("parts") == "2":
        answer.caution(ISOCYANATES)
    return answer


def _film(given: Given) -> Film:
    by, thinned = given.text("film_by"), thinned_by(given)
    percent = given.maybe("solids")
    solids = None if percent is None else percent / 100
    if by == "wet":
        return Film.of_wet(given.number("wet_coat"), solids, thinned)
    if by == "spread":
        return Film.of_spread(given.number("coverage"), solids, thinned)
    return Film.of_dry(given.number("dry_film"), given.number("solids") / 100, thinned)


TOOL = Tool(
    slug="finish-amount",
    place="yard",
    title="Finish amount",
    question="How much finish is bought for so many coats, and how wet does each go on?",
    finds=(
        "paint",
        "varnish",
        "lacquer",
        "primer",
        "gallons",
        "mil",
        "wet film",
        "spray",
        "HVLP",
        "Zahn",
        "Ford",
        "pot life",
        "catalyst",
        "coverage",
    ),
    inputs=inputs(),
    work=work,
    gives=[
        Gives("cans", "count", "Cans"),
        Gives("volume", "number", "Paint needed", short="needed"),
        Gives("wet_film", "number", "Wet film per coat", short="wet"),
        Gives("spread", "number", "A gallon covers, loss counted", short="covers"),
        Gives("bought", "number", "In the cans"),
        Gives("cost", "money", "Cost", sometimes=True),
        Gives("dry_film", "number", "Dry film per coat", quantity="film thickness", sometimes=True),
        Gives("dry_total", "number", "Dry film, all coats", short="dry", sometimes=True),
        Gives("thinner_volume", "number", "Thinner, all coats", short="thinner", sometimes=True),
        Gives("part_a", "number", "Part A", sometimes=True),
        Gives("part_b", "number", "Part B", sometimes=True),
        Gives("thinner_part", "number", "Thinner in the mix", sometimes=True),
        Gives("pot_life_here", "number", "Pot life in the shop", short="pot life", sometimes=True),
        Gives("viscosity", "number", "Viscosity", sometimes=True),
    ],
    example={
        "area": "230",
        "coats": 2,
        "film_by": "spread",
        "coverage": 400,
        "solids": 38,
        "method": "brush",
    },
    cautions=[
        FLAMMABLE_FINISH,
        SPRAY_MIST,
        OIL_RAGS,
        SANDING_DUST,
        LEAD_PAINT,
        FINISH_VAPORS,
    ],
    sources=SOURCES,
)
