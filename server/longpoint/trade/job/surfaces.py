"""Surfaces of the job to be coated, as rows of the finish area: doors whole, trim by its girth.

A frame-and-panel door is taken glued up, with square edges around its panels: no question knows
their sticking. Panels are raised where a panel raise of the same item says how, else flat. Trim
and jambs are coated on face and edges, their backs left; all else on all sides, faces alone where
nobody said how thick it is. What is coated otherwise is typed.
"""

from ..shelf import tool_named
from .pieces import cuts_of_entry
from .raised_panels import DOOR, is_in_a_door, raise_of, raised

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .pieces import Cut
    from .taking import Sources
    from .working import Done

IN_A_DOOR = ("frame", "panel")
"""Roles of pieces that are a door when it is glued up."""


def surfaces_of(
    own: str, sources: "Sources", done: "dict[str, Done]"
) -> "tuple[list[dict[str, Any]], int]":
    """Return the rows of what an id names (a stock, a question, an item, the whole job), and how
    many pieces of no known width are not among them.

    Lengths are inches; alike ones are counted together.
    """
    rows: list[dict[str, Any]] = []
    left = 0
    gathered = sources.entries(own)
    for item, entry in gathered:
        made, beside = done.get(entry["id"]), [each for of, each in gathered if of is item]
        cuts = cuts_of_entry(item, entry, made) if made else []
        if own in sources.stocks:
            cuts = [cut for cut in cuts if cut.stock == own]
        elif is_in_a_door(entry["id"], beside):
            continue
        elif made is not None and cuts and entry["tool"] == DOOR:
            raising = raise_of(entry["id"], beside, done)
            for row in _doors(made, int(item.get("count") or 1)):
                _count(rows, dict(row, **(raised(raising) if raising else {})))
            cuts = [cut for cut in cuts if cut.piece["role"] not in IN_A_DOOR]
        left += len([cut for cut in cuts if cut.piece["width"] is None])
        for cut in [cut for cut in cuts if cut.piece["width"] is not None]:
            _count(rows, _piece(cut, tool_named(entry["tool"]).coated, sources))
    return rows, left


def _doors(made: "Done", number: int) -> "list[dict[str, Any]]":
    """Return the leaves of a door, or of a pair, glued up."""
    figures = {name: value for name, (_, value) in made.figures.items()}
    leaves = int(str(made.values.get("leaves", ("", "1"))[1]))
    heights = [figures[name] for name in sorted(figures) if name.startswith("panel_height")]
    in_grooves = figures["panel_width"] - figures["sight_width"]
    step = (figures["stock_thickness"] - float(made.values["panel_thickness"][1])) / 2
    row = {
        "kind": "framed",
        "width": figures["leaf_width"],
        "length": figures["leaf_height"],
        "thickness": figures["stock_thickness"],
        "openings": len(heights),
        "opening_width": figures["sight_width"],
        "opening_heights": sum(heights) - len(heights) * in_grooves,
        "sticking_girth": max(step, 0.0),
        "name": made.entry["letter"] + " leaf",
    }
    if "leaf_width_right" not in figures:
        return [dict(row, count=leaves * number)]
    right = dict(row, width=figures["leaf_width_right"], name=made.entry["letter"] + " right leaf")
    return [dict(row, count=number), dict(right, count=number)]


def _piece(cut: "Cut", coated: str, sources: "Sources") -> "dict[str, Any]":
    thick, width = sources.thickness(cut), cut.piece["width"]
    row: dict[str, Any] = {"length": cut.piece["length"], "name": cut.tag, "count": 1}
    if coated == "girth":
        return dict(row, kind="trim", girth=width + 2 * (thick or 0.0))
    row["width"] = width
    hidden = coated == "front"
    if thick is None:
        return dict(row, sides="face" if hidden else "faces")
    return dict(row, sides="face-edges" if hidden else "all", thickness=thick)


def _count(rows: "list[dict[str, Any]]", row: "dict[str, Any]") -> None:
    """Add a row, or count it with the one that is alike in all but its name."""
    for known in rows:
        own = [name for name in row if name not in ("name", "count")]
        if len(known) == len(row) and not [n for n in own if known.get(n) != row[n]]:
            known["count"] += row["count"]
            return
    rows.append(row)
