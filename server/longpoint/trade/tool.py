"""A tool: one question of the trade, declared once for form, API, docs and offline screen."""

from .answer import Answer
from .drawing import Drawing
from .ends import End, miter, square
from .given import Given
from .gives import Gives, label_figures
from .inputs import Choice, Flag, Input, Text
from .lengths import Scale
from .measured import Angle, Count, Length, Number
from .refusal import FieldError, Refusal, Unreadable, in_form
from .rows import Rows, places_of, read_form, values_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

    from .rows import Field

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
    "Gives",
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
        iterator of ever better answers, each saying in its `progress` how far the search has come;
        the last one says 1. Between them, after a few milliseconds' work each, it gives its
        progress alone.
    example : dict
        A complete and plausible set of raw inputs, for the thumbnail.
    cautions, sources : list of str
        Sentences shown beside every answer.
    coated : str
        How a finish goes on its pieces: ``girth``, face and edges of trim; ``front``, one face and
        the edges; ``all`` else.
    finds : tuple of str
        Words of the trade that a search should find it by, beyond those it shows.
    gives : list of Gives
        The figures of its answers, as other questions can take them.
    upgrades : tuple of function
        Steps from older forms of this tool to today's, oldest first: each takes raw inputs as the
        version before it kept them and returns them as the next one means them.
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
        search: "Callable[[Given, Scale], Iterator[Answer | float]] | None" = None,
        example: "dict[str, Any]",
        cautions: "list[str]",
        sources: "list[str]",
        coated: str = "all",
        finds: "tuple[str, ...]" = (),
        gives: "list[Gives] | None" = None,
        upgrades: "tuple[Callable[[dict[str, Any]], dict[str, Any]], ...]" = (),
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
        self.coated = coated
        self.finds = finds
        self.gives = gives or []
        self.upgrades = upgrades
        self.version = 1 + len(upgrades)

    def upgraded(self, raw: "dict[str, Any]", version: int) -> "dict[str, Any]":
        """Return raw inputs kept by an older version of this form as today's means them."""
        for step in self.upgrades[max(version - 1, 0) :]:
            raw = step(raw)
        return raw

    def read(self, raw: "dict[str, Any]", scale: Scale) -> "list[Field]":
        """Read raw inputs strictly.

        Raises
        ------
        Refusal
            With an error for each field that is missing, unknown, unreadable or out of bounds.
        """
        return read_form(self.inputs, raw, scale)

    def answer(self, raw: "dict[str, Any]", scale: Scale) -> "dict[str, Any]":
        """Read raw inputs and return the whole Answer as the contract's JSON object.

        Raises
        ------
        Refusal
            For inputs that can't be read, or that no such work can be built from.
        """
        best: dict[str, Any] = {}
        for answer in self.answers(self.read(raw, scale), scale):
            best = answer if "figures" in answer else best
        return best

    def answers(
        self,
        fields: "list[Field]",
        scale: Scale,
        is_drawn: bool = True,
        is_brief_first: bool = False,
    ) -> "Iterator[dict[str, Any]]":
        """Give ever better Answers to a form as read; for most tools the first is the last.

        Between two of them a search says its `progress` alone, as often as it pauses. The last is
        an Answer. Who shows no drawings need not wait for them; who shows each answer as it comes
        can have a brief one first where the whole takes long to say.

        Raises
        ------
        Refusal
            For what can't be built, before the first; its rows counted as they stand in the form.
        """
        given, places = Given(values_of(self.inputs, fields)), places_of(fields)
        # What a search no longer needs is let go: memory that stays full makes it slow.
        fields = []
        try:
            for answer in self._answers(given, scale, is_drawn):
                if is_brief_first or not answer.get("is_brief"):
                    yield answer
        except Refusal as refusal:
            raise in_form(refusal, places)

    def _answers(self, given: Given, scale: Scale, is_drawn: bool) -> "Iterator[dict[str, Any]]":
        if self.search is not None:
            for better in self.search(given, scale):
                if isinstance(better, Answer):
                    yield self._whole(better, given, is_drawn)
                else:
                    yield {"progress": better}
        elif self.work is not None:
            yield self._whole(self.work(given, scale), given, is_drawn)

    def _whole(self, answer: Answer, given: Given, is_drawn: bool) -> "dict[str, Any]":
        whole = answer.to_json(is_drawn)
        label_figures(whole["figures"], self.gives)
        whole["tool"] = self.slug
        whole["inputs"] = {} if answer.is_brief else given.values
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
            "version": self.version,
            "inputs": [asked.declare() for asked in self.inputs],
            "gives": [each.declare() for each in self.gives],
            "cautions": self.cautions,
            "sources": self.sources,
            "example": self.example,
        }
