"""When each coat, sanding and turning can be done, one after the other, as soon as it may be."""

from .week import Week

MINUTES = 60
LABEL_HOURS = ("recoat_from", "recoat_until", "sand_after", "handle_after")
"""What a label says of a coat after it is on, in hours."""


class Coat:
    """One coat by its label; all in minutes.

    Parameters
    ----------
    name : str
        What it is called.
    takes, sanding : int
        To put it on one face, and to sand that face afterwards before the next coat; 0 for none.
    handle, sand, recoat : int
        After it is on: until the work can be turned, sanded, coated again.
    until : int or None
        After it is on: when the next coat must have been begun.
    """

    def __init__(self, name: str, takes: int, sanding: int) -> None:
        self.name = name
        self.takes = takes
        self.sanding = sanding
        self.handle = 0
        self.sand = 0
        self.recoat = 0
        self.until: int | None = None

    def by_label(self, hours: "dict[str, float | None]") -> "Coat":
        """Set the label's hours: `recoat_from` at least; to sand and to handle are else the same.

        `recoat_until`, `sand_after` and `handle_after` may be None.
        """
        self.recoat = minutes_in(hours["recoat_from"] or 0.0)
        sand, handle, until = [
            hours.get(name) for name in ("sand_after", "handle_after", "recoat_until")
        ]
        self.sand = self.recoat if sand is None else minutes_in(sand)
        self.handle = self.recoat if handle is None else minutes_in(handle)
        self.until = None if until is None else minutes_in(until)
        return self


def minutes_in(hours: float) -> int:
    """Return hours as whole minutes."""
    return int(hours * 60 + 0.5)


class Step:
    """Something done: `what` is coat or sand; `face` 0 or 1; `turned` first or not.

    `opens` and `closes` are the moments between which the label lets a coat begin; it may name no
    end.
    """

    def __init__(self, what: str, at: int, takes: int, coat: int, face: int, turned: bool) -> None:
        self.what = what
        self.at = at
        self.end = at + takes
        self.coat = coat
        self.face = face
        self.turned = turned
        self.opens = at
        self.closes: int | None = None

    def is_missed(self) -> bool:
        """Tell whether its window has closed before."""
        return self.closes is not None and self.at > self.closes


def schedule(
    coats: "list[Coat]",
    faces: int,
    week: Week,
    start: int,
    ended: "dict[tuple[str, int, int], int] | None" = None,
) -> "list[Step]":
    """Return the steps in order.

    `ended` says when steps, by what, coat and face, were really done: what follows counts from it.
    With two faces a coat begins on the face that lies up, then the work is turned, so that it is
    turned once for each coat.
    """
    steps: list[Step] = []
    last: list[Step | None] = [None, None]
    up, now = 0, start
    for number in range(len(coats)):
        for turn in range(faces):
            turned = turn == 1
            if turned:
                below = last[up]
                now = max(now, (below.end if below else now) + coats[number].handle)
                up = 1 - up
            for step in _on_face(coats, number, last[up], up, turned, week, now, ended or {}):
                steps.append(step)
                now = step.end
            last[up] = steps[-1]
    return steps


def _on_face(
    coats: "list[Coat]",
    number: int,
    before: "Step | None",
    face: int,
    turned: bool,
    week: Week,
    now: int,
    ended: "dict[tuple[str, int, int], int]",
) -> "list[Step]":
    """Return the sanding, if any, and the coat on one face."""
    coat, steps, ready = coats[number], [], now
    if before is not None:
        under = coats[before.coat]
        if under.sanding:
            at = week.next(max(now, before.end + under.sand), under.sanding)
            steps.append(_done(Step("sand", at, under.sanding, number, face, turned), ended))
            turned, now = False, steps[0].end
        ready = max(now, before.end + under.recoat)
    step = Step("coat", week.next(ready, coat.takes), coat.takes, number, face, turned)
    step.opens = ready
    if before is not None and coats[before.coat].until is not None:
        step.closes = before.end + (coats[before.coat].until or 0)
    return steps + [_done(step, ended)]


def _done(step: Step, ended: "dict[tuple[str, int, int], int]") -> Step:
    """Return a step as it was really done, where it was."""
    end = ended.get((step.what, step.coat, step.face))
    if end is not None:
        step.at, step.end = step.at + end - step.end, end
    return step


def missed(steps: "list[Step]") -> "list[Step]":
    """Return the coats that come after their window has closed."""
    return [step for step in steps if step.is_missed()]


def start_without_miss(
    coats: "list[Coat]", faces: int, week: Week, start: int, days: int = 7
) -> "int | None":
    """Return the next whole hour at which to begin so that no window is missed, or None."""
    for hour in range(start // MINUTES + 1, start // MINUTES + 24 * days):
        at = hour * MINUTES
        can_begin = week.next(at, coats[0].takes) == at
        if can_begin and not missed(schedule(coats, faces, week, at)):
            return at
    return None


def step_words(step: Step, coats: "list[Coat]", faces: int) -> str:
    """Return what is done at a step."""
    face = "" if faces == 1 else (" the first face" if step.face == 0 else " the second face")
    if step.what == "sand":
        said = f"sand{face}"
    else:
        said = coats[step.coat].name + (f" on{face}" if face else "")
    return ("Turn it, " + said) if step.turned else said[0].upper() + said[1:]
