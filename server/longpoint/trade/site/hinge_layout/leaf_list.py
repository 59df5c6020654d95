"""Common hinge leaves, offered where none was measured: who says so, and what decides."""

from ...tables.hinges import HINGE_LEAVES, leaves_of
from ...tool import Answer

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tables.hinges import HingeLeaf

LIST_SOURCES = [
    "Listed hinge leaves: .134 and .180 a maker's sizing guide, .190 a maker's note on A156.1, all "
    "others from memory; makers vary, your own tape or caliper decides."
]


def add_leaf_list(
    answer: Answer, hinge: "float | None", weight: str, listed: "HingeLeaf | None"
) -> None:
    """Add the list of hinge leaves of a height, or of all, with the one that was taken."""
    scale = answer.scale
    rows = leaves_of(hinge) if hinge is not None else []
    if hinge is not None and weight != "none" and listed is None:
        answer.note(
            f"No {weight} hinge {scale.length(hinge)} high is listed here: measure the hinge leaf."
        )
    if weight != "none" and hinge is None:
        answer.note("Which hinge leaf is listed goes by the hinge's height.")
    if listed is not None:
        answer.caution(
            f"A hinge leaf of {scale.decimal(listed.thickness)} is the list's, {listed.source}: "
            "measure yours before you cut, the list is only a start."
        )
    rows = rows or list(HINGE_LEAVES)
    columns = ["Hinge high", "Weight", "Hinge leaf", "Who says so"]
    cells = [
        [scale.length(row.height), row.weight, scale.decimal(row.thickness), row.source]
        for row in rows
    ]
    answer.table("Common hinge leaves", columns, cells, rows.index(listed) if listed else None)
