"""The patterns an item can begin with: data only, one declaration and one fixture each."""

from ...reading import quoted
from ...refusal import Refusal
from .doors import CASED_DOOR, CUPBOARD_INSET, CUPBOARD_OVERLAY, PAIR, PASSAGE_OLD_JAMB
from .finish import FINISH
from .pattern import Pattern
from .trim import BASE, CROWN, ODD_FRAME, WALL_FRAMES, WINDOW

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

PATTERNS = [
    CUPBOARD_INSET, CUPBOARD_OVERLAY, PASSAGE_OLD_JAMB, CASED_DOOR, PAIR, WINDOW, BASE, CROWN,
    WALL_FRAMES, ODD_FRAME, FINISH,
]  # fmt: skip
"""In the order that they are offered in."""


def pattern_named(slug: object) -> Pattern:
    """Return a pattern.

    Raises
    ------
    Refusal
        No pattern of this version has that slug.
    """
    for pattern in PATTERNS:
        if pattern.slug == slug:
            return pattern
    raise Refusal("pattern", f"This version has no pattern called {quoted(str(slug))}: update.")


def declared() -> "list[dict[str, Any]]":
    """Return all patterns as the contract's JSON."""
    return [pattern.declare() for pattern in PATTERNS]
