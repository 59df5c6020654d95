"""Whether a frame goes inside a recess or around an opening: it changes every length."""

from ..tool import Choice, Length

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def fit() -> Choice:
    """Return the question where the frame goes; nobody but the carpenter can know."""
    choices = [("inside", "inside a recess"), ("around", "around an opening")]
    return Choice("fit", "Frame goes", choices)


def reveal() -> Length:
    """Return the question for the reveal of a frame around an opening."""
    return Length(
        "reveal",
        "Reveal",
        default="3/16",
        least=0,
        help="How far the trim's inner edge stands back from the opening.",
        only_when=("fit", "around"),
        quantity="reveal",
    )


def fitted_inside(raw: "dict[str, Any]") -> "dict[str, Any]":
    """Say what version 1 of a frame's form took for granted: inside a recess.

    >>> fitted_inside({}), fitted_inside({"fit": "around"})
    ({'fit': 'inside'}, {'fit': 'around'})
    """
    kept = dict(raw)
    kept["fit"] = raw.get("fit") or "inside"
    return kept
