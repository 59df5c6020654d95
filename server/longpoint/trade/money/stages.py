"""A sum in stages: each is rounded to the cent, the last takes what is left: they add up."""

from ..lengths import show_number
from .exact import Exact


def in_stages(cents: int, percents: "list[float]") -> "list[int]":
    """Return the cents of each stage; percents that make 100 are the caller's to see to.

    >>> in_stages(333333, [40, 40, 20])
    [133333, 133333, 66667]
    """
    total = Exact.of_cents(cents)
    stages = [(total * Exact.percent(percent)).cents() for percent in percents[:-1]]
    return stages + [cents - sum(stages)]


def make_whole(percents: "list[float]") -> bool:
    """Tell whether percents make 100, exactly as typed.

    >>> make_whole([33.3, 33.3, 33.4]), make_whole([40, 40])
    (True, False)
    """
    total = Exact(0)
    for percent in percents:
        total = total + Exact.of(percent)
    return total.over == 100 * total.under


def stages_fault(percents: "list[float]") -> str:
    """Return why percents are no stages of a whole; empty where they are.

    >>> stages_fault([40, 40])
    'The stages come to 80 %: make them 100 % together.'
    """
    if make_whole(percents):
        return ""
    return f"The stages come to {show_number(sum(percents), 4)} %: make them 100 % together."


def stage_words(name: str, at: int, percent: float) -> "tuple[str, str]":
    """Return what a stage is called, and its percent.

    >>> stage_words("", 1, 33.5)
    ('Stage 2', '33.5 %')
    """
    return name or f"Stage {at + 1}", show_number(percent, 4) + " %"


def parted(cents: int, parts: "list[Exact]") -> "list[int]":
    """Return parts in cents that add up to a rounded sum: the largest takes the odd cents.

    >>> parted(100, [Exact(1, 3), Exact(1, 3), Exact(1, 3)])
    [34, 33, 33]
    """
    rounded = [part.cents() for part in parts]
    largest = 0
    for at, part in enumerate(rounded):
        if part > rounded[largest]:
            largest = at
    rounded[largest] += cents - sum(rounded)
    return rounded
