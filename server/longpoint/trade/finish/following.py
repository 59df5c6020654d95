"""A plan of coats as it is really done: what the label allows, and what was too early or late."""

from .schedule import Coat, Step, schedule
from .week import Week

EARLY, LATE = "early", "late"


class Followed:
    """One step of a plan.

    Attributes
    ----------
    step : Step
        When it is due, or was done.
    allowed : int or None
        The minute before which the label lets it not begin; None for the first coat.
    fault, by : str, int
        `EARLY` or `LATE`, and how many minutes; empty and 0 for what was done in time or not yet.
    """

    def __init__(self, step: Step, allowed: "int | None", is_done: bool) -> None:
        self.step = step
        self.allowed = allowed
        self.is_done = is_done
        self.fault = ""
        self.by = 0
        if not is_done:
            return
        if allowed is not None and step.at < allowed:
            self.fault, self.by = EARLY, allowed - step.at
        elif step.is_missed():
            self.fault, self.by = LATE, step.at - (step.closes or 0)


def follow(
    coats: "list[Coat]",
    faces: int,
    week: Week,
    start: int,
    ended: "dict[tuple[str, int, int], int]",
) -> "list[Followed]":
    """Return the steps of a plan; what is not done yet counts from what was.

    Parameters
    ----------
    ended : dict
        By what, coat and face of a step: the minute at which it was done. It is taken to have begun
        as long before as the plan gives it.
    """
    last: list[Step | None] = [None, None]
    followed: list[Followed] = []
    below: Step | None = None
    for step in schedule(coats, faces, week, start, ended):
        is_done = _key(step) in ended
        waits_for = [last[step.face], below if step.turned else None]
        if is_done:
            # What was done is held to what was done before it, not to what is still planned.
            waits_for = [each if each and _key(each) in ended else None for each in waits_for]
        allowed = _allowed(coats, step, waits_for[0], waits_for[1])
        followed.append(Followed(step, allowed, is_done))
        if step.what == "coat":
            last[step.face] = below = step
    return followed


def _key(step: Step) -> "tuple[str, int, int]":
    return step.what, step.coat, step.face


def _allowed(
    coats: "list[Coat]", step: Step, before: "Step | None", below: "Step | None"
) -> "int | None":
    """Return when the label lets a step begin: over the coat below it, and turned on the other."""
    waits = []
    if before is not None:
        under = coats[before.coat]
        waits.append(before.end + (under.sand if step.what == "sand" else under.recoat))
    if below is not None:
        waits.append(below.end + coats[below.coat].handle)
    return max(waits) if waits else None
