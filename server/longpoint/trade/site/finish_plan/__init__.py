"""When can each coat go on, and when can the work be hung? And is the air fit to coat in?"""

from ...finish.coating import ONE, PAINTS, coats_of, film_name, films_of, number_name, stands_for
from ...finish.schedule import (
    Coat,
    Step,
    minutes_in,
    missed,
    schedule,
    start_without_miss,
    step_words,
)
from ...finish.week import DAY, DAYS, Week, minutes_of
from ...lengths import Scale
from ...tool import Answer, Given, Gives, Refusal, Tool
from .air import FIVE_F, THREE_C, dew_point
from .asked import INPUTS, MOST_COATS, with_films
from .views import days
from .words import (
    CAUTIONS,
    SOURCES,
    air_verdict,
    air_words,
    film_words,
    plan_verdict,
    window_words,
)


def work(given: Given, scale: Scale) -> Answer:
    """Return the dew point, and the plan where coats are given."""
    dew = dew_point(given.number("air_temperature"), given.number("humidity"))
    answer = Answer(scale)
    planned = _plan(answer, given) if given.rows("coats") else ()
    # The stricter rule leads.
    answer.amount("surface_3c", dew + THREE_C, "temperature", lead=not planned, places=1)
    answer.amount("dew_point", dew, "temperature", places=1)
    answer.amount("surface_5f", dew + FIVE_F, "temperature", places=1)
    held = air_words(answer, given, dew)
    answer.verdict(*(held or planned or air_verdict(answer, dew)))
    if planned:
        _film(answer, given)
        answer.note("Every time begins at the end of a coat on its face, as you gave it.")
    return answer


def _plan(answer: Answer, given: Given) -> "tuple[str, ...]":
    """Add the plan, and return ways of its verdict."""
    coats = _coats(given)
    week, faces = _week(given, coats), int(given.text("faces"))
    steps = schedule(coats, faces, week, _start(given, week))
    last = max([step.end for step in steps])
    hang = week.next(last + minutes_in(given.number("hang_after")), 0)
    answer.words("hang", week.said(hang), lead=True)
    answer.words("last_coat", week.said(steps[-1].at), lead=True)
    answer.number("hang_hours", (hang - steps[0].at) / 60, "h", places=1)
    answer.count("days", hang // DAY - steps[0].at // DAY + 1)
    answer.count("missed", len(missed(steps)))
    cure = given.maybe("cure_days")
    if cure is not None:
        answer.words("cured", week.said(last + minutes_in(24 * cure)))
    _missed_words(answer, coats, faces, week, steps)
    rows = [[week.said(s.at), step_words(s, coats, faces), window_words(s, week)] for s in steps]
    rows.append([week.said(hang), "Hang it", ""])
    answer.table("The plan", ["When", "What", "Can be done"], rows)
    answer.draw(days(steps, coats, week, hang))
    return plan_verdict(week, coats, steps, hang)


def _missed_words(
    answer: Answer, coats: "list[Coat]", faces: int, week: Week, steps: "list[Step]"
) -> None:
    late = missed(steps)
    for step in late:
        answer.note(
            f"{step_words(step, coats, faces)}: its window closed {week.said(step.closes or 0)}; "
            "the label says how to sand or wash before a coat after that."
        )
    if not late:
        return
    better = start_without_miss(coats, faces, week, steps[0].at)
    if better is not None:
        answer.words("better_start", week.said(better))
        answer.note(f"Begun {week.said(better)}, no window is missed.")
    else:
        answer.note("No start within the next week keeps every window: work longer or other days.")


def _coats(given: Given) -> "list[Coat]":
    """Return the coats in order.

    Raises
    ------
    Refusal
        A window ends before it begins, a paint has two rows, or there are too many coats.
    """
    rows, paints = [row.values for row in given.rows("coats")], []
    for at, row in enumerate(rows):
        until, paint = row["recoat_until"], stands_for(row)
        if until is not None and until < row["recoat_from"]:
            raise Refusal(f"coats.{at}.recoat_until", "The window ends before it begins.")
        if paint != ONE and paint in paints:
            raise Refusal(f"coats.{at}.paint", f"A row above stands for all {paint} already.")
        paints.append(paint)
    coats = coats_of(rows, _numbers(given))
    if len(coats) > MOST_COATS:
        raise Refusal("coats", f"{len(coats)} coats are too many: plan {MOST_COATS} at most.")
    return coats


def _numbers(given: Given) -> "dict[str, int]":
    return {each: given.maybe_count(number_name(each)) or 1 for each in PAINTS}


def _week(given: Given, coats: "list[Coat]") -> Week:
    begin, end = minutes_of(given.text("day_from")) or 0, minutes_of(given.text("day_to")) or 0
    if end <= begin:
        raise Refusal("day_to", "Work ends before it begins: write 4 pm or 16:00.")
    first = [value for value, _ in DAYS].index(given.text("start_day"))
    longest = max([max(coat.takes, coat.sanding) for coat in coats])
    if longest > end - begin:
        raise Refusal("day_to", f"{longest} minutes in one go don't fit in a day of {end - begin}.")
    return Week(first, int(given.text("working_days")), begin, end)


def _start(given: Given, week: Week) -> int:
    said = given.text("start_time")
    return minutes_of(said) or 0 if said else week.begin


def _film(answer: Answer, given: Given) -> None:
    """Add what the films take of a door's gaps: of the leaf's two edges, and of the jambs."""
    films = {paint: given.maybe(film_name(paint)) for paint in PAINTS}
    films[ONE] = given.maybe("dry_film")
    rows = [row.values for row in given.rows("coats")]
    coats = films_of(rows, _numbers(given), films)
    unknown = [name for name, _, film in coats if film is None]
    if unknown:
        if len(unknown) < len(coats):
            answer.note(f"What the gaps lose is told once the dry film of {unknown[0]} is.")
        return
    whole = sum([number * (film or 0.0) for _, number, film in coats])
    answer.amount("film_total", whole, "film")
    answer.note("Dry film: " + film_words(answer, coats) + ".")
    each_side = whole / 1000 * (2 if given.text("coated") == "both" else 1)
    answer.length("film_of_gaps", 2 * each_side, fine=True)
    gap = given.maybe("side_gap")
    if gap is None:
        return
    if gap <= each_side:
        raise Refusal("side_gap", "The films fill this gap: size the leaf smaller.")
    answer.length("side_gap_after", gap - each_side, fine=True)


TOOL = Tool(
    slug="finish-plan",
    place="site",
    title="Finish plan",
    question="When can each coat go on and the work be hung, and is the air fit for it?",
    finds=("paint", "varnish", "lacquer", "primer", "spray", "dry", "recoat", "sand", "dew point",
           "humidity", "temperature", "schedule", "calendar", "cure"),
    inputs=INPUTS,
    work=work,
    upgrades=(with_films,),
    gives=[
        Gives("surface_3c", "number", "Surface at least, 3 °C rule", short="surface"),
        Gives("dew_point", "number", "Dew point"),
        Gives("surface_5f", "number", "Surface at least, 5 °F rule", short="5 °F rule"),
        Gives("rule_5f", "text", "By the 5 °F rule", sometimes=True),
        Gives("rule_3c", "text", "By the 3 °C rule", sometimes=True),
        Gives("hang", "text", "Hang it from", short="hang", sometimes=True),
        Gives("last_coat", "text", "Last coat begins", short="last coat", sometimes=True),
        Gives("hang_hours", "number", "First coat to hanging", sometimes=True),
        Gives("days", "count", "Days", sometimes=True),
        Gives("missed", "count", "Windows missed", sometimes=True),
        Gives("better_start", "text", "Begin instead", sometimes=True),
        Gives("cured", "text", "Cured", sometimes=True),
        Gives("film_total", "number", "Dry film, all coats", short="film", sometimes=True),
        Gives("film_of_gaps", "length", "Films take of both side gaps", sometimes=True),
        Gives("side_gap_after", "length", "Side gap when coated", sometimes=True),
    ],
    example={
        "air_temperature": 70,
        "humidity": 50,
        "coats": [
            {"name": "Primer", "minutes": 40, "recoat_from": 4, "sanding": 30, "sand_after": 4,
             "handle_after": 2},
            {"name": "Enamel", "minutes": 40, "recoat_from": 16, "handle_after": 4},
        ],
        "faces": "2",
        "start_day": "mon",
        "day_from": "7",
        "day_to": "4 pm",
        "working_days": "5",
        "hang_after": 48,
        "dry_film": 1.5,
        "coated": "both",
        "side_gap": "1/8",
    },
    cautions=CAUTIONS,
    sources=SOURCES,
)  # fmt: skip
