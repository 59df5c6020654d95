"""The coats on the wood, a thousand times as thick as they are: an inch drawn is a mil."""

from ...finish.spreading import Film
from ...tool import Answer, Drawing

_WIDE, _GAP = 10.0, 2.0
MOST_DRAWN = 8


def films(answer: Answer, film: Film, coats: int) -> Drawing:
    """Draw a wet coat, and beside it all coats dry where the solids are known."""
    wet = answer.both_ways(film.wet, "film")[0]
    words = f"One coat {wet} wet"
    view = Drawing("Coats on the wood, a thousand times as thick", "")
    view.box("clearance", 0, -film.wet, _WIDE, 0)
    right, low = _WIDE, max(film.wet / 2, 1.0)
    # Below, not beside: on a small phone labels at both sides leave the coats no width.
    words_at = low + film.wet * 0.3
    view.text((_WIDE / 2, words_at), wet + " wet")
    if film.dry is not None:
        left, right = _WIDE + _GAP, 2 * _WIDE + _GAP
        shown = min(coats, MOST_DRAWN)
        for at in range(shown):
            view.box("panel", left, -film.dry * (at + 1), right, -film.dry * at)
        dry = answer.both_ways(film.dry * shown, "film")[0]
        view.text(((left + right) / 2, words_at), dry + " dry")
        words += f"; {shown} dry, {dry}"
    view.box("stock", 0, 0, right, low)
    view.description = words + "."
    return view
