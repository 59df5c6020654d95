"""Turn a search for a plan into ever better answers, for sticks and sheets alike."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

    from ..tool import Answer


def ever_better(
    found: "Any", spare: "int | None", answer_of: "Callable[[], Answer]"
) -> "Iterator[Answer]":
    """Give an answer at each pause of a search, made anew where plan or bound got better.

    Parameters
    ----------
    found : Search
        With `run`, `plan`, `bound`, `progress` and `problem`.
    spare : int or None
        The kind of stock that is not there: a plan that needs it is no answer, and where the
        bound shows that every plan does, looking on can't help.
    answer_of : function
        Makes the answer for the plan as it stands.
    """
    answer: Answer | None = None
    shown: tuple[Any, int] | None = None
    for _ in found.run():
        if needs(found.plan, spare):
            if found.bound >= found.problem.weights[spare]:
                return
            continue
        if answer is None or shown is None or shown[0] is not found.plan or shown[1] != found.bound:
            answer, shown = answer_of(), (found.plan, found.bound)
        answer.progress = found.progress
        if found.progress < 1:
            yield answer


def needs(plan: "Any", kind: "int | None") -> bool:
    """Tell whether a plan uses a kind of stock."""
    return kind is not None and plan.used()[kind] > 0
