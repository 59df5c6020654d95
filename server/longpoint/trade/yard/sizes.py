"""A size of real stock in an answer, and what green stock will do."""

from ..lengths import Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..answer import Answer

SAME = 1 / 128
"""Inches: closer than half of a 64th no tape tells two sizes apart."""

GREEN = (
    "Green stock shrinks on its way to dry: about to the dry size. Let it dry first, and measure "
    "again before you mill."
)


def add_size(
    answer: "Answer", name: str, inches: float, *, label: str = "", lead: bool = False
) -> None:
    """Add a size, shown finer than asked for where the step asked for can't say it."""
    fine = abs(answer.scale.shown(inches) - inches) > 1e-6
    answer.length(name, inches, label=label, lead=lead, fine=fine)


def sizes_words(thickness: float, width: "float | None", scale: Scale) -> str:
    """Return a cross section, exact to a 64th: ``1 1/2 x 3 1/2``, or ``thickness 1``.

    >>> sizes_words(1.5, 3.5, Scale()), sizes_words(1.0, None, Scale())
    ('1 1/2 x 3 1/2', 'thickness 1')
    """
    say = scale.finer().length
    if width is None:
        return "thickness " + say(thickness)
    return say(thickness) + " x " + say(width)
