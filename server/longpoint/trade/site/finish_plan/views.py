"""The plan as a calendar: a row for each day, working hours pale, work on them."""

from ...finish.schedule import Coat, Step
from ...finish.week import DAY, SHORT, Week
from ...tool import Drawing

_LONG, _HIGH, _PITCH, _MOST = 12.0, 1.0, 1.4, 14
_DAY = -2.2  # Where the name of a day begins, left of its row.


def days(steps: "list[Step]", coats: "list[Coat]", week: Week, hang: int) -> Drawing:
    """Draw each day from the first to that of hanging, two weeks at most."""
    title = "The days of the plan"
    view = Drawing(title, f"{len(coats)} coats; hang it {week.said(hang)}.")
    last = min(hang // DAY, _MOST - 1)
    for day in range(last + 1):
        top = day * _PITCH
        if week.is_working(day):
            view.box("panel", _at(week.begin), top, _at(week.end), top + _HIGH)
        view.text((_DAY, top + _HIGH / 2), SHORT[(week.first + day) % 7], anchor="start")
        view.line("clearance", (0, top + _HIGH), (_LONG, top + _HIGH))
    for step in [step for step in steps if step.at // DAY <= last]:
        top = step.at // DAY * _PITCH
        role = "stock" if step.what == "coat" else "waste"
        view.box(
            role, _at(step.at % DAY), top, _at(step.at % DAY + step.end - step.at), top + _HIGH
        )
    if hang // DAY <= last:
        top = hang // DAY * _PITCH
        view.line("mark", (_at(hang % DAY), top), (_at(hang % DAY), top + _HIGH))
        view.text((_at(hang % DAY) + 0.2, top + _HIGH / 2), "hang", anchor="start")
    return view


def _at(minute: int) -> float:
    return _LONG * minute / DAY
