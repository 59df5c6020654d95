"""What a pattern declares: the questions that an item of a kind begins with."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Question:
    """One question of a pattern.

    Parameters
    ----------
    key : str
        How the pattern's other questions and its things name this one.
    tool : str
        Slug on the shelf.
    asks : tuple of str
        The few inputs that are asked first: what a tape or a catalog says.
    title : str
        What it is called on the job; the tool's title where empty.
    presets : dict
        Raw inputs it begins with, seen and changed like typed ones.
    ties : dict
        Explicit ties by input: ``(key, "figure" or "input", name)``, or ``("job", "pieces", "")``
        for all pieces of the job.
    stock : dict
        By role of its pieces, or ``all``: the key of a stock of the pattern, or `none` for pieces
        that another question cuts.
    """

    def __init__(
        self,
        key: str,
        tool: str,
        asks: "tuple[str, ...]",
        *,
        title: str = "",
        presets: "dict[str, Any] | None" = None,
        ties: "dict[str, tuple[str, str, str]] | None" = None,
        stock: "dict[str, str] | None" = None,
    ) -> None:
        self.key = key
        self.tool = tool
        self.asks = asks
        self.title = title
        self.presets = presets or {}
        self.ties = ties or {}
        self.stock = stock or {}

    def declare(self) -> "dict[str, Any]":
        """Return the contract's JSON object for this question."""
        return {
            "key": self.key,
            "tool": self.tool,
            "title": self.title,
            "presets": self.presets,
            "asks": list(self.asks),
        }


class Pattern:
    """A kind of item: how it begins.

    Parameters
    ----------
    slug, title : str
    words : tuple of str
        What the trade also calls it, to find it by.
    questions : list of Question
        In their order, which is the order that numbers are carried in.
    stock : tuple
        What its pieces are cut from: ``(key, title, sold)``; a stock of that title which is on the
        job already is used.
    things : tuple
        What is bought by count: ``(title, count)``, or ``(title, tie, tie)`` for the product of
        the one or two numbers that the ties name.
    drawing : str
        Slug of the tool whose drawing stands for it.
    version : int
        Rises when its questions change; items that began with an older one stay as they are.
    """

    def __init__(
        self,
        slug: str,
        title: str,
        words: "tuple[str, ...]",
        questions: "list[Question]",
        *,
        stock: "tuple[tuple[str, str, str], ...]" = (),
        things: "tuple[tuple[Any, ...], ...]" = (),
        drawing: str,
        version: int = 1,
    ) -> None:
        self.slug = slug
        self.title = title
        self.words = words
        self.questions = questions
        self.stock = stock
        self.things = things
        self.drawing = drawing
        self.version = version

    def declare(self) -> "dict[str, Any]":
        """Return the contract's JSON object for this pattern."""
        return {
            "slug": self.slug,
            "version": self.version,
            "title": self.title,
            "words": list(self.words),
            "drawing": self.drawing,
            "questions": [question.declare() for question in self.questions],
            "stock": [title for _, title, _ in self.stock],
        }
