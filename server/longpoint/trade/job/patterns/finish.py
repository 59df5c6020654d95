"""Finishing what the job makes: its surfaces, a primer and a topcoat, and when each coat goes on.

One coat of primer and two of topcoat: common practice, no source; typed over like all presets. The
plan takes both numbers and both films from what is bought, and asks one label's times for each
paint.
"""

from ..taking import WHOLE
from .pattern import Pattern, Question

FILM = (
    "film_by", "coverage", "wet_coat", "dry_film", "solids", "method", "efficiency", "can",
)  # fmt: skip
TIMES = (
    "air_temperature", "humidity", "coats", "faces", "start_day", "day_from", "day_to",
    "working_days", "hang_after", "coated",
)  # fmt: skip
COATS = [{"name": "Primer", "paint": "primer"}, {"name": "Topcoat", "paint": "topcoat"}]

FINISH = Pattern(
    "finish",
    "Finish",
    ("paint", "varnish", "lacquer", "primer", "topcoat", "spray", "coats"),
    [
        Question("area", "finish-area", ("things",), ties={"things": (WHOLE, "pieces", "")}),
        Question("primer", "finish-amount", FILM, title="Primer", presets={"coats": "1"}),
        Question("topcoat", "finish-amount", FILM, title="Topcoat", presets={"coats": "2"}),
        Question(
            "plan",
            "finish-plan",
            TIMES,
            presets={"coats": COATS},
            ties={
                "primer_coats": ("primer", "input", "coats"),
                "topcoat_coats": ("topcoat", "input", "coats"),
                "primer_film": ("primer", "figure", "dry_film"),
                "topcoat_film": ("topcoat", "figure", "dry_film"),
            },
        ),
    ],
    things=(
        ("Primer", ("primer", "figure", "cans")),
        ("Topcoat", ("topcoat", "figure", "cans")),
    ),
    drawing="finish-amount",
    version=3,
)
