"""What must be known before anything can be said, where no input alone is required."""

from ...tool import FieldError, Given, Refusal
from .inputs import INPUTS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import NoReturn


def refuse_unless_known(given: Given, pairs: "tuple[tuple[str, ...], ...]") -> "NoReturn":
    """Refuse, asking for what is missing of the pair that was begun; of the first one if none was.

    Raises
    ------
    Refusal
        Always.
    """
    labels = {asked.name: asked.label for asked in INPUTS}
    begun = [pair for pair in pairs if [name for name in pair if given.maybe(name) is not None]]
    pair = begun[0] if begun else pairs[0]
    raise Refusal.of(
        [
            FieldError(name, f"{labels[name]} is needed.", True)
            for name in pair
            if given.maybe(name) is None
        ]
    )
