"""Readings of a hinge that are possible but not likely: said, never refused."""

from ...tables.hinges import HINGE_LEAVES
from ...tool import Answer

WIDE = 1 / 4
"""Inches; a wider gap at the hinge side is a slip of the pencil (common practice, no source)."""

READING = 0.005
"""Inches by which a caliper reading may pass the listed leaves before it is doubted."""


def doubt_leaf(answer: Answer, leaf: float) -> None:
    """Add a caution for a hinge leaf outside the listed ones."""
    listed = [row.thickness for row in HINGE_LEAVES]
    thin, thick = min(listed), max(listed)
    if thin - READING <= leaf <= thick + READING:
        return
    decimal = answer.scale.decimal
    answer.caution(
        f"A hinge leaf {decimal(leaf)} thick is {'thicker' if leaf > thick else 'thinner'} than "
        f"any listed here, {decimal(thin)} to {decimal(thick)}: measure one leaf alone, and look "
        "at the unit."
    )


def doubt_gap(answer: Answer, gap: float, words: str) -> None:
    """Add a caution for a gap wider than any usual; `words` say which."""
    if gap > WIDE:
        scale = answer.scale.finer()
        answer.caution(
            f"A gap {words} of {scale.length(gap)} is wider than {scale.bare(WIDE)}, which "
            "hardly any door has: measure again, and look at the unit."
        )
