"""The verdict, the table of methods and the notes."""

from ...finish.spreading import Film
from ...lengths import show_number
from ...tables.transfer import METHODS, SPRAYED
from ...tool import Answer, Given

RUNS = 6.0
"""Mils wet at which upright faces sag, as finishers' pages say of lacquer."""

BRITTLE = 5.0
"""Mils dry in all that lacquer and conversion varnish must not pass, as they say too."""

SOURCES = [
    "231 cubic inches to the gallon, so 1604 sq ft a mil thick; film and spread by solids: "
    "derived, as a coating trade paper and a paint course print it.",
    "Share that lands: state pollution-prevention office, coating trade paper, makers' pages, as "
    "read; brush and roller from memory. Every one can be edited.",
    "Pot life halves for each 10 °C: a resin maker's page, as read.",
    "Cups: formulas of ASTM D4212 and D1200 as a maker of cups prints them, with their ranges.",
    "Sizes of cans: from memory.",
]


def verdict(answer: Answer, given: Given, film: Film, paint: float, cans: str) -> None:
    """Say what is bought, how wet each coat goes on, and what share is taken to land."""
    volume = answer.both_ways(paint, "volume")[0]
    wet = answer.both_ways(film.wet, "film")[0]
    coats = given.count("coats")
    word = f"{coats} coat{'' if coats == 1 else 's'}"
    lands = show_number(given.number("efficiency"), 1) + " %"
    answer.verdict(
        f"Buy {cans}: {volume} for {word}, each {wet} wet, if {lands} lands on the work",
        f"Buy {cans}: {volume}, {word} {wet} wet, {lands} lands",
        f"Buy {cans}; coats {wet} wet, {lands} lands",
    )


def add_table(answer: Answer, given: Given) -> None:
    """Add what lands by the printed sources, the method that was taken picked."""
    method = given.text("method")
    rows, pick = [], None
    for at, each in enumerate(METHODS):
        own = [
            row.number("lands") for row in given.rows("methods") if row.text("method") == each.value
        ]
        mine = show_number(own[-1], 1) + " %" if own else "-"
        rows.append([each.label, each.range + " %", f"{each.percent} %", mine])
        pick = at if each.value == method else pick
    answer.table("What lands on the work", ["Put on by", "Sources", "Taken", "My own"], rows, pick)


def add_notes(answer: Answer, given: Given, film: Film) -> None:
    """Add what films of that thickness do, and what a gauge tells."""
    coats = given.count("coats")
    if film.wet >= RUNS:
        limit = answer.both_ways(RUNS, "film")[0]
        answer.note(f"{limit} wet and more runs on upright faces: more coats, each thinner.")
    if film.dry is not None and film.dry * coats > BRITTLE:
        limit = answer.both_ways(BRITTLE, "film")[0]
        answer.note(f"Lacquer and conversion varnish over {limit} dry in all may crack.")
    if given.text("method") in SPRAYED:
        answer.note("Narrow trim sprayed alone lands far less than a door's face: count less.")
    if given.number("thinner"):
        answer.note("Thinned paint covers more but leaves less dry: so the wet film is thicker.")
    answer.note(
        "The gauge's deepest wetted notch is the wet film. Cans to be tinted are filled short: "
        "pour all of one color together before you begin."
    )
