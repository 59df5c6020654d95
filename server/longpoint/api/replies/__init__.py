"""Schemas of replies, one declaration for the API's description and the front end's types.

The core makes the JSON itself; tests hold it to these.
"""

from .answer import Answer
from .drawing import SHAPES
from .form import FormReply, FormSaid, Refused, SearchReply
from .meeting import DocumentQuestion, Meeting, Settled
from .tool import Declaration, Shelf, StepChoices

__all__ = ["SHAPES", "Answer", "Declaration", "FormReply", "Refused", "Shelf", "StepChoices"]

DOOR = (
    *SHAPES, FormReply, FormSaid, SearchReply, Refused, StepChoices,
    Meeting, DocumentQuestion, Settled,
)  # fmt: skip
"""Schemas that no operation of the API names, and the phone's front end still needs."""
