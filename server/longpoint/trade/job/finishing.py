"""Finish plans of the job as they are ticked: each next coat's clock runs from the last one's end.

A tick's `at` is the local moment at which a coat or a sanding was done. Until a date is said, or
something is ticked, a plan knows only its days of the week.
"""

from ..finish.coating import PAINTS, coats_of, number_name
from ..finish.dates import day_number, is_date, is_moment, minutes_from, moment_text, said, weekday
from ..finish.following import EARLY, Followed, follow
from ..finish.schedule import Step, minutes_in, step_words
from ..finish.week import DAYS, Week, lasting, minutes_of
from .desk import Desk
from .ticks import Ticks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .working import Done

PLAN = "finish-plan"


def finish_plans(
    document: "dict[str, Any]", done: "dict[str, Done]", ticks: Ticks, desk: Desk
) -> "list[dict[str, Any]]":
    """Return the plan of each question that plans coats and has an answer."""
    said_days = (document.get("finish") or {}).get("starts") or []
    starts = {each["id"]: each["begins"] for each in said_days}
    plans = []
    for item in document["items"]:
        for entry in item["entries"]:
            made, own = done[entry["id"]], entry["id"]
            if entry["tool"] != PLAN or made.answer is None or not _told(made, "coats"):
                continue
            plan = _Plan(item["title"], made, starts.get(own, ""), ticks)
            sources = [item["title"], made, starts.get(own, ""), ticks.under(own)]
            plans.append(desk.made(("finish", own), sources, plan.reply))
    return plans


def _told(made: "Done", name: str) -> "Any":
    return made.values.get(name, ("", None))[1]


class _Plan:
    """One plan: its coats, its working hours, its first day and what of it is done."""

    def __init__(self, item: str, made: "Done", begins: str, ticks: Ticks) -> None:
        self.item = item
        self.made = made
        self.own = made.entry["id"]
        self.ticks = ticks
        self.moments = {
            tick["of"]: tick["at"]
            for tick in ticks.under(self.own)
            if is_moment(tick.get("at") or "") and not tick["at"].endswith("Z")
        }
        numbers = {paint: int(_told(made, number_name(paint)) or 1) for paint in PAINTS}
        self.coats = coats_of(_told(made, "coats"), numbers)
        self.faces = int(_told(made, "faces"))
        self.first = _first_day(begins, list(self.moments.values()))
        self.week = self._week()

    def _week(self) -> Week:
        day = [value for value, _ in DAYS].index(_told(self.made, "start_day"))
        hours = [minutes_of(_told(self.made, name)) or 0 for name in ("day_from", "day_to")]
        first = day if self.first is None else weekday(self.first)
        return Week(first, int(_told(self.made, "working_days")), hours[0], hours[1])

    def reply(self) -> "dict[str, Any]":
        """Return the plan as the contract's JSON."""
        start = minutes_of(_told(self.made, "start_time") or "")
        ended = {} if self.first is None else self._ended(self.first)
        begin = self.week.begin if start is None else start
        followed = follow(self.coats, self.faces, self.week, begin, ended)
        steps = [self._step(each) for each in followed]
        steps.append(self._hang(max([each.step.end for each in followed])))
        return {
            "entry": self.own,
            "item": self.item,
            "title": self.made.title,
            "begins": "" if self.first is None else moment_text(self.first, 0)[:10],
            "steps": steps,
        }

    def _ended(self, first: int) -> "dict[tuple[str, int, int], int]":
        ended = {}
        for number in range(len(self.coats)):
            for face in range(self.faces):
                for what in ("sand", "coat"):
                    moment = self.moments.get(self._of(what, number, face))
                    if moment is not None:
                        ended[what, number, face] = minutes_from(first, moment)
        return ended

    def _of(self, what: str, coat: int, face: int) -> str:
        return f"{self.own}/{what} {coat + 1}.{face + 1}"

    def _step(self, each: Followed) -> "dict[str, Any]":
        step = each.step
        of = self._of(step.what, step.coat, step.face)
        words = step_words(step, self.coats, self.faces)
        at = step.end if each.is_done else step.at
        window = self._window(each.allowed, step)
        return self._said(of, words, at, (step.at, step.end), window, _caution(each))

    def _window(self, allowed: "int | None", step: Step) -> str:
        words = [] if allowed is None else ["from " + self._when(allowed)]
        words += [] if step.closes is None else ["until " + self._when(step.closes)]
        return ", ".join(words)

    def _hang(self, last: int) -> "dict[str, Any]":
        ready = last + minutes_in(float(_told(self.made, "hang_after")))
        at = self.week.next(ready, 0)
        of, caution = self.own + "/hang", ""
        moment = self.moments.get(of)
        if moment is not None and self.first is not None:
            at = minutes_from(self.first, moment)
            if at < ready:
                caution = f"Hung {lasting(ready - at)} too early: keep it off stop and stack."
        return self._said(of, "Hang it", at, (at, at), "from " + self._when(ready), caution)

    def _said(
        self, of: str, words: str, at: int, span: "tuple[int, int]", window: str, caution: str
    ) -> "dict[str, Any]":
        moments = ["", ""]
        if self.first is not None:
            moments = [moment_text(self.first, each) for each in span]
        return {
            "of": of,
            "words": words,
            "when": self._when(at),
            "window": window,
            "state": self.ticks.state(of),
            "caution": caution,
            "begins": moments[0],
            "ends": moments[1],
        }

    def _when(self, at: int) -> str:
        return self.week.said(at) if self.first is None else said(self.first, at)


def _first_day(begins: str, moments: "list[str]") -> "int | None":
    """Return the first day: as said, else that of the first tick; None for neither."""
    days = [day_number(moment) for moment in moments]
    if is_date(begins):
        # What was done before the day that was said moves it.
        days.append(day_number(begins))
    return min(days) if days else None


def _caution(each: Followed) -> str:
    if not each.fault:
        return ""
    takes = each.step.end - each.step.at
    if each.fault == EARLY:
        return (
            f"Begun {lasting(each.by)} before the label lets it, counting {lasting(takes)} for it: "
            "look for wrinkles and prints before you go on."
        )
    return (
        f"Begun {lasting(each.by)} after its window closed: the label says how the coat below is "
        "sanded or washed first."
    )
