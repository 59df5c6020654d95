"""A tool: one question of the trade, declared once for form, API, docs and offline screen."""

from .answer import Answer, End, miter, square
from .drawing import Drawing
from .inputs import Choice, Flag, Input, Text
from .lengths import Scale
from .measured import Angle, Count, Length, Number
from .refusal import FieldError, Refusal, Unreadable
from .rows import Given, Rows, read_form

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

__all__ = [
    "Angle",
    "Answer",
    "Choice",
    "Count",
    "Drawing",
    "End",
    "FieldError",
    "Flag",
    "Given",
    "Input",
    "Length",
    "Number",
    "Refusal",
    "Rows",
    "Scale",
    "Text",
    "Tool",
    "Unreadable",
    "miter",
    "square",
]


class Tool:
    """One question, what it asks for, and the pure function that answers it.

    Parameters
    ----------
    slug, place : str
        Name in addresses; yard, saw or site.
    title, question : str
        A heading of two or three words; the question in one sentence.
    inputs : list of Input
        In the order of the form; a condition refers to an earlier input.
    work : function
        From `Given` and `Scale` to an `Answer`; raises `Refusal` for what can't be built.
    search : function
        Instead of `work`, where the best answer takes looking for: from `Given` and `Scale` to an
        iterator of ever better answers, each after a few milliseconds' work and each saying in
        its `progress` how far the search has come; the last one says 1.
    example : dict
        A complete and plausible set of raw inputs, for the thumbnail.
    cautions, sources : list of str
        Sentences shown beside every answer.
    finds : tuple of str
        Words of the trade that a search should find it by, beyond those it shows.
    """

    def __init__(
        self,
        *,
        slug: str,
        place: str,
        title: str,
        question: str,
        inputs: "list[Input]",
        work: "Callable[[Given, Scale], Answer] | None" = None,
        search: "Callable[[Given, Scale], Iterator[Answer]] | None" = None,
        example: "dict[str, Any]",
        cautions: "list[str]",
        sources: "list[str]",
        finds: "tuple[str, ...]" = (),
    ) -> None:
        self.slug = slug
        self.place = place
        self.title = title
        self.question = question
        self.inputs = inputs
        self.work = work
        self.search = search
        self.example = example
        self.cautions = cautions
        self.sources = sources
        self.finds = finds

    def read(self, raw: "dict[str, Any]", scale: Scale) -> Given:
        """Read raw inputs.

        Raises
        ------
        Refusal
            With an error for each field that is missing, unknown, unreadable or out of bounds.
        """
        values, errors = read_form(self.inputs, raw, scale)
        if errors:
            raise Refusal.of(errors)
        return Given(values)

    def answer(self, raw: "dict[str, Any]", scale: Scale) -> "dict[str, Any]":
        """Read raw inputs and return the whole Answer as the contract's JSON object.

        Raises
        ------
        Refusal
            For inputs that can't be read, or that no such work can be built from.
        """
        best: dict[str, Any] = {}
        for answer in self.answers(raw, scale):
            best = answer
        return best

    def answers(self, raw: "dict[str, Any]", scale: Scale) -> "Iterator[dict[str, Any]]":
        """Read raw inputs and give ever better Answers; for most tools the first is the last.

        Raises
        ------
        Refusal
            As `answer` does, before the first.
        """
        given = self.read(raw, scale)
        if self.search is not None:
            found: Answer | None = None
            whole: dict[str, Any] = {}
            for better in self.search(given, scale):
                if better is not found:
                    found, whole = better, self._whole(better, given)
                whole["progress"] = better.progress
                yield whole
        elif self.work is not None:
            yield self._whole(self.work(given, scale), given)

    def _whole(self, answer: Answer, given: Given) -> "dict[str, Any]":
        whole = answer.to_json()
        whole["tool"] = self.slug
        whole["inputs"] = given.values
        whole["cautions"] = whole["cautions"] + self.cautions
        whole["sources"] = self.sources
        return whole

    def declare(self) -> "dict[str, Any]":
        """Return the tool's declaration as the contract's JSON object."""
        return {
            "slug": self.slug,
            "place": self.place,
            "title": self.title,
            "question": self.question,
            "finds": list(self.finds),
            "inputs": [asked.declare() for asked in self.inputs],
            "cautions": self.cautions,
            "sources": self.sources,
            "example": self.example,
        }
