"""What a tool gives: the figures of its answers, declared once with kind, labels and quantity."""

from .quantities import kind_of

FIGURE_KINDS = ("length", "angle", "count", "number", "money", "text")

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


class Gives:
    """One figure of a tool's answers.

    Parameters
    ----------
    name : str
        The contract's name.
    kind : str
        length, angle, count, number, money or text.
    label : str
        What the trade says aloud, in full.
    short : str
        The same in one or two words, for where it stands small; the label where not given.
    quantity : str
        Which size it is, one of `quantities.QUANTITIES`; empty for one of no use elsewhere.
    sometimes : bool
        It comes only with some inputs. All others come with every answer.
    """

    def __init__(
        self,
        name: str,
        kind: str,
        label: str,
        *,
        short: str = "",
        quantity: str = "",
        sometimes: bool = False,
    ) -> None:
        if kind not in FIGURE_KINDS:
            raise ValueError("no such kind of figure: " + kind)
        if quantity and kind_of(quantity) != kind:
            raise ValueError(quantity + " is no " + kind)
        self.name = name
        self.kind = kind
        self.label = label
        self.short = short
        self.quantity = quantity
        self.sometimes = sometimes

    def declare(self) -> "dict[str, object]":
        """Return the contract's JSON object for this figure."""
        return {
            "name": self.name,
            "kind": self.kind,
            "label": self.label,
            "short": self.short or self.label,
            "quantity": self.quantity,
            "sometimes": self.sometimes,
        }


def label_figures(figures: "list[dict[str, Any]]", gives: "list[Gives]") -> None:
    """Put the declared labels on figures that carry none of their own.

    A short label that is missing on both is the label.

    >>> figure = {"name": "gap", "label": "", "short": ""}
    >>> label_figures([figure], [Gives("gap", "length", "Gap, each side", short="each side")])
    >>> figure["label"], figure["short"]
    ('Gap, each side', 'each side')
    """
    declared = {each.name: each for each in gives}
    for figure in figures:
        known = declared.get(figure["name"])
        own = figure["label"]
        figure["label"] = own or (known.label if known else figure["name"])
        figure["short"] = figure["short"] or (known.short if known and not own else "")
        figure["short"] = figure["short"] or figure["label"]
