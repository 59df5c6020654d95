"""Turn a search for a plan into ever better answers, for sticks and sheets alike."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

    from ..tool import Answer

AGAIN = 20
"""Shares of work between two answers: an answer takes as long to say as some of them."""
ALMOST = 0.99
"""Progress of a search that is over, while its answer is still to be said."""
MOST_WITHOUT = 150000
"""Steps that a search may take without a plan to show."""


def ever_better(
    found: "Any",
    spare: "int | None",
    answer_of: "Callable[[], Answer]",
    brief_of: "Callable[[], Answer] | None" = None,
) -> "Iterator[Answer | float]":
    """Give at each pause of a search its progress, or now and then an answer where that is better.

    Parameters
    ----------
    found : StickSearch or SheetSearch
        With `run`, `plan`, `bound`, `progress`, `problem` and `work`.
    spare : int or None
        The kind of stock that is not there: a plan that needs it is no answer, and where the
        bound shows that every plan does, looking on can't help. It ends there or after
        `MOST_WITHOUT` steps, since it has nothing to show meanwhile.
    answer_of : function
        Makes the answer for the plan as it stands.
    brief_of : function
        Makes it without what takes long to say; the first answer of a long list comes so.
    """
    shown: tuple[Any, int] | None = None
    pauses = 0
    for _ in found.run():
        pauses += 1
        if needs(found.plan, spare):
            if is_needed(found, spare) or found.work.done > MOST_WITHOUT:
                return
        elif shown is None or (pauses >= AGAIN and is_news(shown, found)):
            if shown is None and brief_of is not None:
                yield _answered(brief_of, found.progress)
            shown, pauses = (found.plan, found.bound), 0
            yield _answered(answer_of, found.progress)
        else:
            yield found.progress
    if shown is None and brief_of is not None and not needs(found.plan, spare):
        yield _answered(brief_of, ALMOST)


def _answered(answer_of: "Callable[[], Answer]", progress: float) -> "Answer":
    answer = answer_of()
    answer.progress = progress
    return answer


def is_news(shown: "tuple[Any, int] | None", found: "Any") -> bool:
    """Tell whether plan or bound got better since an answer was made of them."""
    return shown is None or shown[0] is not found.plan or shown[1] != found.bound


def needs(plan: "Any", kind: "int | None") -> bool:
    """Tell whether a plan uses a kind of stock."""
    return kind is not None and plan.used()[kind] > 0


def is_needed(found: "Any", kind: "int | None") -> bool:
    """Tell whether the bound shows that every plan uses a kind of stock, the spare as a rule."""
    return kind is not None and bool(found.bound >= found.problem.weights[kind])
