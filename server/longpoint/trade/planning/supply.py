"""What is cut from: kinds of sticks or sheets, how many there are and what each costs."""

from ..refusal import Refusal
from .units import divisor

CENT = 0.01


class Supply:
    """A kind of stick or sheet.

    Parameters
    ----------
    count : int or None
        How many there are; None for as many as needed.
    price : float or None
        Dollars each; None where none was given.
    """

    def __init__(self, count: "int | None", price: "float | None") -> None:
        self.count = count
        self.price = price

    @property
    def on_hand(self) -> bool:
        """Tell whether it lies there already: counted, and without a price."""
        return self.count is not None and self.price is None


def is_priced(supplies: "list[Supply]") -> bool:
    """Tell whether money decides; otherwise what is bought does."""
    return bool([supply for supply in supplies if supply.price is not None])


def refuse_unpriced(supplies: "list[Supply]", field: str, names: "list[str]") -> None:
    """Refuse prices on some supplies only, naming the first that lacks one.

    Parameters
    ----------
    field : str
        The input of the supplies.
    names : list of str
        What each is called: "stick of 96".
    """
    if not is_priced(supplies):
        return
    for at, supply in enumerate(supplies):
        if supply.price is None and supply.count is None:
            raise Refusal(
                f"{field}.{at}.price",
                f"What does a {names[at]} cost? With a price on some only, the cheapest plan "
                "can't be told: give all, or none.",
            )


def costs_of(
    supplies: "list[Supply]", amounts: "list[int]", each: float
) -> "tuple[list[int], float]":
    """Return what the supplies cost in whole numbers, and what 1 of these is worth.

    Without prices it is the amount that costs: of what is bought, or where nothing is, of what is
    used. What lies there already costs nothing.

    Parameters
    ----------
    amounts : list of int
        Length or area of each.
    each : float
        What 1 of an amount is, in inches or square inches.

    >>> costs_of([Supply(None, 12.5), Supply(3, None)], [96, 40], 1.0)
    ([1, 0], 12.5)
    >>> costs_of([Supply(None, None), Supply(3, None)], [96, 40], 1.0)
    ([1, 0], 96.0)
    """
    if is_priced(supplies):
        costs, each = [int((supply.price or 0.0) / CENT + 0.5) for supply in supplies], CENT
    else:
        buys = bool([supply for supply in supplies if supply.count is None])
        costs = [0 if buys and s.on_hand else amount for s, amount in zip(supplies, amounts)]
    common = divisor(costs)
    return [cost // common for cost in costs], each * common


def spare_cost(costs: "list[int]", limits: "list[int | None]", pieces: int) -> int:
    """Return a cost so high that only what fits nowhere else is cut from a supply of that cost.

    It stands for a supply that is not there, so that a plan tells what the real ones lack.
    """
    there = sum([cost * (limit or 0) for cost, limit in zip(costs, limits)])
    return there + max(costs) * pieces + 1
