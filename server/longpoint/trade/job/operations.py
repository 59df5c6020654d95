"""What takes time on an item: operations counted by the job's own questions.

No minutes stand here: they are the shop's own, and grow from its finished jobs.
"""

from collections import namedtuple

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .pieces import Cut
    from .working import Done

Operation = namedtuple("Operation", ("name", "label", "tools", "by"))
"""`tools` are the questions that it is counted by. `by` says how: ``one`` for each question,
``pieces`` of its answer, or quantities whose numbers are multiplied."""

OPERATIONS = (
    Operation("leaf", "Make a leaf", ("door-set",), ("leaves",)),
    Operation("panel", "Raise a panel", ("panel-raise",), "one"),
    Operation("hinge", "Let in a hinge", ("hinge-layout",), ("hinge count", "leaves")),
    Operation("hang", "Hang a leaf", ("hinge-layout",), ("leaves",)),
    Operation("lock", "Bore a lock and its strike", ("lock-boring",), "one"),
    Operation("pull", "Bore for pulls on a leaf", ("hardware-centers",), ("leaves",)),
    Operation("jamb", "Set a jamb", ("jamb-and-stop",), "one"),
    Operation("casing", "Case an opening", ("casing-set", "mitered-frame", "odd-frame"), "one"),
    Operation("trim", "Fit a piece of trim", ("trim-run", "crown-corner"), "pieces"),
    Operation("frame", "Fit a piece of a wall frame", ("wall-frames",), "pieces"),
    Operation("scribe", "Scribe a piece", ("scribe",), "one"),
)
CUT = ("cut", "Cut a piece to length")
"""Counted from the cut list."""

LABELS = dict([CUT] + [(each.name, each.label) for each in OPERATIONS])


def operations_of(
    item: "dict[str, Any]", done: "dict[str, Done]", cuts: "list[Cut]"
) -> "list[tuple[str, int]]":
    """Return the operations of an item, all alike together, with how many of each."""
    alike = int(item.get("count") or 1)
    asked = [done[entry["id"]] for entry in item["entries"]]
    found = []
    for operation in OPERATIONS:
        each = sum([_counted(operation, made, asked) for made in asked])
        found.append((operation.name, each * alike))
    found.append((CUT[0], len([cut for cut in cuts if cut.item == item["id"]])))
    return [(name, number) for name, number in found if number]


def _counted(operation: Operation, made: "Done", asked: "list[Done]") -> int:
    if made.entry["tool"] not in operation.tools or made.answer is None:
        return 0
    if operation.by == "one":
        return 1
    if operation.by == "pieces":
        return sum([int(piece["count"]) for piece in made.answer["pieces"]])
    number = 1
    for quantity in operation.by:
        number *= _number(quantity, [made] + asked)
    return number


def _number(quantity: str, asked: "list[Done]") -> int:
    """Return a number that the first of some questions knows; 1 where none does."""
    for made in asked:
        digits = str(made.sizes[quantity][1]) if quantity in made.sizes else ""
        if digits.replace(".", "").isdigit():
            return int(float(digits))
    return 1
