"""What a job's own questions say of a door's panels: raised as its panel raise tells, else flat."""

from .. import degrees

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .working import Done

DOOR, RAISE = "door-set", "panel-raise"


def raise_of(door: str, entries: "list[dict[str, Any]]", done: "dict[str, Done]") -> "Done | None":
    """Return the panel raise of a door: the first one asked after it, before another door.

    `entries` are those of the door's item that the surfaces are taken from, in order.
    """
    is_behind = False
    for entry in entries:
        if entry["tool"] == DOOR:
            is_behind = entry["id"] == door
        made = done.get(entry["id"])
        if is_behind and entry["tool"] == RAISE and made is not None and made.answer is not None:
            return made
    return None


def is_in_a_door(own: str, entries: "list[dict[str, Any]]") -> bool:
    """Tell whether a panel raise is of a door before it: its panel is coated with that door."""
    tools = [entry["tool"] for entry in entries]
    ids = [entry["id"] for entry in entries]
    return tools[ids.index(own)] == RAISE and DOOR in tools[: ids.index(own)]


def raised(made: "Done") -> "dict[str, Any]":
    """Return the columns of a finish area's row for a panel raised on its front.

    The bevel begins where the frame ends. One milled by a cutter is taken straight, from there to
    the field.
    """
    shows = made.figures["shows"][1]
    if "saw_bevel" in made.figures:
        rise = shows * degrees.tan(made.figures["saw_bevel"][1])
        step = made.figures["score_depth"][1] if "score_depth" in made.figures else 0.0
    else:
        rise, step = made.figures["cut_depth"][1], 0.0
    return {"raised": "one", "bevel_width": shows, "bevel_rise": rise, "field_step": step}


def words_of(rows: "list[dict[str, Any]]") -> str:
    """Say how the panels of doors were taken; empty without a door."""
    doors = [row for row in rows if row.get("kind") == "framed"]
    if not doors:
        return ""
    flat = [row for row in doors if "raised" not in row]
    if not flat:
        return "panels raised, their bevels straight, edges around them square"
    panels = "panels" if len(flat) == len(doors) else "some panels"
    return f"{panels} taken flat, edges around them square"
