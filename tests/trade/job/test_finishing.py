"""A finish plan as it is ticked: clocks that run from what was done, cautions.

Moments are worked out by hand beside their check, dates by Python's own calendar.
"""

from datetime import date, timedelta
from typing import Any

import pytest

from longpoint.trade.finish.dates import date_text, day_number, is_date, is_moment, weekday

from .asking import ask, blank, entries_of, worked

COATS = [
    {"name": "Primer", "minutes": "60", "recoat_from": "4", "recoat_until": "24", "sanding": "30",
     "sand_after": "3"},
    {"name": "Enamel", "minutes": "60", "recoat_from": "16"},
]  # fmt: skip
PLAN = {
    "air_temperature": "70", "humidity": "50", "coats": COATS, "faces": "1", "start_day": "mon",
    "day_from": "8 am", "day_to": "5 pm", "working_days": "5", "hang_after": "24",
}  # fmt: skip
PRIMER, SANDED, ENAMEL = "plan/coat 1.1", "plan/sand 2.1", "plan/coat 2.1"


def job(ticks: dict[str, str] | None = None, begins: str = "2026-11-30", **said: Any) -> Any:
    """Return a job that is finished from a Monday on, with what was done at which moment."""
    entry = {"id": "plan", "letter": "A", "tool": "finish-plan", "inputs": PLAN | said}
    item = {"id": "i", "title": "Doors", "entries": [entry]}
    done = [{"of": of, "state": "done", "at": at} for of, at in (ticks or {}).items()]
    starts = [{"id": "plan", "begins": begins}] if begins else []
    return blank(items=[item], ticks=done, finish={"starts": starts})


def steps(document: Any) -> dict[str, Any]:
    (plan,) = worked(document)["finish"]
    return {step["of"]: step for step in plan["steps"]}


def test_a_plan_has_dates_once_its_day_is_said() -> None:
    """Primer 8 to 9, sanding from 12 to 12:30, enamel from 1 to 2 pm; a day later it is hung."""
    plan = steps(job())
    assert [step["begins"][5:] for step in plan.values()] == [
        "11-30T08:00", "11-30T12:00", "11-30T13:00", "12-01T14:00",
    ]  # fmt: skip
    assert plan[ENAMEL]["when"] == "Mon Nov 30, 1:00 pm"
    assert plan[ENAMEL]["window"] == "from Mon Nov 30, 1:00 pm, until Tue Dec 1, 9:00 am"
    assert plan[SANDED]["window"] == "from Mon Nov 30, 12:00 pm"
    assert [step["state"] for step in plan.values()] == ["", "", "", ""]


def test_the_next_coats_clock_runs_from_the_tick() -> None:
    """Primer done at 10:20 instead of 9: sanding from 1:20, enamel from 2:20 pm."""
    plan = steps(job({PRIMER: "2026-11-30T10:20:00-05:00"}))
    assert (plan[PRIMER]["state"], plan[PRIMER]["when"]) == ("done", "Mon Nov 30, 10:20 am")
    assert plan[SANDED]["begins"] == "2026-11-30T13:20"
    assert plan[ENAMEL]["begins"] == "2026-11-30T14:20"
    assert plan["plan/hang"]["begins"] == "2026-12-01T15:20"
    assert {step["caution"] for step in plan.values()} == {""}


def test_a_coat_that_no_longer_fits_the_day_waits_for_the_next_one() -> None:
    """Primer done at 1 pm: enamel from 5 pm, when work ends; so Tuesday 8 am, in its window."""
    plan = steps(job({PRIMER: "2026-11-30T13:00:00-05:00"}))
    assert plan[ENAMEL]["begins"] == "2026-12-01T08:00"


def test_too_early_is_said() -> None:
    """Primer done at 9, enamel done at 1:30 pm and 60 minutes long: begun 12:30, allowed 1 pm."""
    plan = steps(job({PRIMER: "2026-11-30T09:00", ENAMEL: "2026-11-30T13:30"}))
    assert plan[ENAMEL]["caution"].startswith("Begun 30 min before the label lets it, counting 1 h")
    on_time = steps(job({PRIMER: "2026-11-30T09:00", ENAMEL: "2026-11-30T14:00"}))
    assert on_time[ENAMEL]["caution"] == ""


def test_too_late_is_said() -> None:
    """The window closes Tuesday 9 am; done Tuesday noon and an hour long: begun 2 h late."""
    plan = steps(job({PRIMER: "2026-11-30T09:00", ENAMEL: "2026-12-01T12:00"}))
    assert plan[ENAMEL]["caution"].startswith("Begun 2 h after its window closed")


def test_sanded_and_hung_too_early_is_said() -> None:
    """Sanded from 11 to 11:30, allowed at noon. Enamel done at 2 pm: hung from Tuesday 2 pm."""
    done = {PRIMER: "2026-11-30T09:00", SANDED: "2026-11-30T11:30", ENAMEL: "2026-11-30T14:00"}
    plan = steps(job(done | {"plan/hang": "2026-12-01T09:00"}))
    assert plan[SANDED]["caution"].startswith("Begun 1 h before the label lets it")
    assert plan["plan/hang"]["caution"].startswith("Hung 5 h too early")


def test_two_faces_have_a_tick_each() -> None:
    """One face 8 to 9; turned after 2 h, the other 11 to 12; the first is sanded from 12 on."""
    coats = [COATS[0] | {"handle_after": "2"}, COATS[1]]
    plan = steps(job(faces="2", coats=coats))
    assert plan["plan/coat 1.2"]["begins"] == "2026-11-30T11:00"
    assert plan["plan/coat 1.2"]["words"] == "Turn it, Primer on the second face"
    early = steps(job({PRIMER: "2026-11-30T09:00", "plan/coat 1.2": "2026-11-30T11:00"}, faces="2",
                      coats=coats))  # fmt: skip
    assert early["plan/coat 1.2"]["caution"].startswith("Begun 1 h before")


def test_what_was_ticked_alone_is_not_held_to_what_is_planned() -> None:
    """Nobody ticked the primer: when it was done, and so whether this is early, is not known."""
    assert steps(job({ENAMEL: "2026-11-30T09:30"}))[ENAMEL]["caution"] == ""


def test_without_a_day_the_plan_knows_its_weekdays() -> None:
    plan = steps(job(begins=""))
    assert (plan[PRIMER]["when"], plan[PRIMER]["begins"]) == ("Mon 8:00 am", "")


def test_the_first_tick_says_the_day() -> None:
    """Done on a Thursday at 10: enamel from 2 pm, hung Friday 3 pm."""
    plan = steps(job({PRIMER: "2026-12-03T10:00:00+01:00"}, begins=""))
    assert plan[ENAMEL]["begins"] == "2026-12-03T14:00"
    assert plan["plan/hang"]["when"] == "Fri Dec 4, 3:00 pm"


def test_a_weekend_is_passed_over() -> None:
    """Begun Friday: enamel from 1 to 2 pm; a day later is Saturday, so it is hung Monday at 8."""
    assert steps(job(begins="2026-12-04"))["plan/hang"]["begins"] == "2026-12-07T08:00"


def test_what_is_no_moment_ticks_without_a_clock() -> None:
    for moment in ("", "yesterday", "2026-02-30T09:00", "2026-11-30T14:00:00Z"):
        plan = steps(job({PRIMER: moment}))
        assert (plan[PRIMER]["state"], plan[ENAMEL]["begins"]) == ("done", "2026-11-30T13:00")


def test_the_number_of_coats_is_said_once() -> None:
    """Said where the paint is bought. Primer 8 to 9, topcoat from 1 pm; then each 16 h after the
    last ended, that is at 8 am: three of them end on Wednesday, two on Tuesday."""
    begun = ask(do="begin item", job=blank(), pattern="finish", id="f")["document"]
    area, primer, topcoat, plan = begun["items"][0]["entries"]
    area["ties"] = {}
    area["inputs"] = {"things": [{"kind": "slab", "width": "36", "length": "80"}]}
    for paint in (primer, topcoat):
        paint["inputs"] |= {"film_by": "wet", "wet_coat": "5", "method": "brush", "can": "quart"}
    rows = [
        row | {"minutes": "60", "recoat_from": hours}
        for row, hours in zip(plan["inputs"]["coats"], ("4", "16"), strict=True)
    ]
    plan["inputs"] |= PLAN | {"coats": rows}
    begun["finish"] = {"starts": [{"id": plan["id"], "begins": "2026-11-30"}]}

    def planned(number: str) -> Any:
        topcoat["inputs"]["coats"] = number
        reply = worked(begun)
        (made,) = reply["finish"]
        carried = entries_of(reply)[plan["id"]]["carried"]
        taken = {each["input"]: (each["value"], each["from"]) for each in carried}
        return taken["topcoat_coats"], [(each["words"], each["begins"]) for each in made["steps"]]

    taken, three = planned("3")
    assert taken == (3, "Topcoat")
    assert three == [
        ("Primer", "2026-11-30T08:00"), ("Topcoat 1", "2026-11-30T13:00"),
        ("Topcoat 2", "2026-12-01T08:00"), ("Topcoat 3", "2026-12-02T08:00"),
        ("Hang it", "2026-12-03T09:00"),
    ]  # fmt: skip
    taken, two = planned("2")
    assert (taken, two[:-1]) == ((2, "Topcoat"), three[:3])
    assert two[-1] == ("Hang it", "2026-12-02T09:00")


def test_primer_and_topcoat_have_films_and_cans_of_their_own() -> None:
    """Hand work: slabs of 36 x 80 without edges, ten of them: 400 sq ft on both faces.

    Primer 2 mil dry of 40 %: 5 wet, 400 x 5 / (1604.167 x 0.95) = 1.31 gal, 6 quarts. Topcoat 5 wet
    of 30 %, 1.5 dry, two coats: 2.62 gal, 3 gallons. All in all 2 + 2 x 1.5 mil on each surface;
    leaf and jamb on both sides are four of them: 0.020.
    """
    begun = ask(do="begin item", job=blank(), pattern="finish", id="f")["document"]
    area, primer, topcoat, plan = begun["items"][0]["entries"]
    slab = {"kind": "slab", "width": "36", "length": "80", "count": "10", "sides": "faces"}
    area["ties"], area["inputs"] = {}, {"things": [slab]}
    put_on = {"method": "brush"}
    primer["inputs"] |= put_on | {"dry_film": "2", "solids": "40", "can": "quart"}
    topcoat["inputs"] |= put_on | {"wet_coat": "5", "solids": "30", "can": "gallon"}
    rows = [row | COATS[at] for at, row in enumerate(plan["inputs"]["coats"])]
    plan["inputs"] |= PLAN | {"coats": rows, "coated": "both"}
    reply = worked(begun)
    bought = {line["title"]: line["amount_text"] for line in reply["yard"]["lines"]}
    assert bought == {"Primer": "6 cans", "Topcoat": "3 cans"}
    figures = {each["name"]: each["value"] for each in entries_of(reply)[plan["id"]]["figures"]}
    assert figures["film_total"] == pytest.approx(5)
    assert figures["film_of_gaps"] == pytest.approx(0.020)
    # Without its solids nobody knows the topcoat's film: the plan stands, the gaps wait.
    del topcoat["inputs"]["solids"]
    left = entries_of(worked(begun))[plan["id"]]
    assert left["errors"] == []
    assert "film_of_gaps" not in {each["name"] for each in left["figures"]}


def test_a_plan_kept_before_has_its_film_for_both_paints() -> None:
    rows = [row | {"paint": paint} for row, paint in zip(COATS, ("primer", "topcoat"), strict=True)]
    kept = PLAN | {"coats": rows, "primer_coats": 1, "topcoat_coats": 2, "dry_film": "1.5"}
    request = {"do": "form", "tool": "finish-plan", "inputs": kept | {"coated": "leaf"},
               "version": 1, "units": "in", "step": 16}  # fmt: skip
    figures = {each["name"]: each["value"] for each in ask(**request)["answer"]["figures"]}
    assert figures["film_of_gaps"] == pytest.approx(2 * 3 * 0.0015)


def test_a_plan_without_coats_is_none() -> None:
    assert worked(job(coats=[]))["finish"] == []


@pytest.mark.parametrize("start", [date(1999, 12, 25), date(2024, 2, 20), date(2100, 2, 20)])
def test_days_are_those_of_the_calendar(start: date) -> None:
    for days in range(500):
        day = start + timedelta(days=days)
        number = (day - date(1970, 1, 1)).days
        assert (day_number(day.isoformat()), date_text(number)) == (number, day.isoformat())
        assert weekday(number) == day.weekday()


def test_what_is_no_date_is_none() -> None:
    assert [is_date(text) for text in ("2026-11-31", "2026-13-01", "2026-1-1", "20261130")] == [
        False, False, False, False,
    ]  # fmt: skip
    assert (is_moment("2026-11-30T24:00"), is_moment("2026-11-30T23:59")) == (False, True)
