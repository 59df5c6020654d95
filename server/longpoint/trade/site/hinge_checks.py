"""Readings of a hinge that are possible but not likely: said, never refused."""

from ..tables.hinges import LEAVES
from ..tool import Answer, Given

WIDE = 1 / 4
"""Inches; a wider gap at the hinge side is a slip of the pencil (common practice, no source)."""

READING = 0.005
"""Inches by which a caliper reading may pass the listed leaves before it is doubted."""


def add_doubts(answer: Answer, given: Given) -> None:
    """Add a caution for a leaf outside the listed ones, and for each gap wider than any usual."""
    _doubt_leaf(answer, given.number("leaf_thickness"))
    for name, words in (("gap", "to the jamb"), ("closed_gap", "of the closed hinge")):
        gap = given.number(name)
        if gap > WIDE:
            scale = answer.scale.finer()
            answer.caution(
                f"A gap {words} of {scale.length(gap)} is wider than {scale.bare(WIDE)}, which "
                "hardly any door has: measure again, and look at the unit."
            )


def _doubt_leaf(answer: Answer, leaf: float) -> None:
    listed = [row.leaf for row in LEAVES]
    thin, thick = min(listed), max(listed)
    if thin - READING <= leaf <= thick + READING:
        return
    decimal = answer.scale.decimal
    answer.caution(
        f"A leaf {decimal(leaf)} thick is {'thicker' if leaf > thick else 'thinner'} than any "
        f"listed here, {decimal(thin)} to {decimal(thick)}: measure one leaf alone, and look at "
        "the unit."
    )
