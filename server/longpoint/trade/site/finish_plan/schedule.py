"""When each coat, sanding and turning can be done, one after the other, as soon as it may be."""

from .calendar import Week

MINUTES = 60


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


def schedule(coats: "list[Coat]", faces: int, week: Week, start: int) -> "list[Step]":
    """Return the steps in order.

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
            for step in _on_face(coats, number, last[up], up, turned, week, now):
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
) -> "list[Step]":
    """Return the sanding, if any, and the coat on one face."""
    coat, steps, ready = coats[number], [], now
    if before is not None:
        under = coats[before.coat]
        if under.sanding:
            at = week.next(max(now, before.end + under.sand), under.sanding)
            steps.append(Step("sand", at, under.sanding, number, face, turned))
            turned, now = False, steps[0].end
        ready = max(now, before.end + under.recoat)
    step = Step("coat", week.next(ready, coat.takes), coat.takes, number, face, turned)
    step.opens = ready
    if before is not None and coats[before.coat].until is not None:
        step.closes = before.end + (coats[before.coat].until or 0)
    return steps + [step]


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
