"""The mark list: by item what is pencilled, from which datum, and the checks before leaving."""

from ..lengths import show_angle
from .desk import Desk
from .ticks import Ticks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..lengths import Scale
    from .working import Done

_GAPS = ("head gap", "side gap", "strike gap", "meeting gap", "floor gap")
_HUNG = ("hinge-layout", "door-swing", "jamb-and-stop", "door-set")


def mark_list(
    document: "dict[str, Any]",
    done: "dict[str, Done]",
    ticks: Ticks,
    scale: "Scale",
    desk: Desk,
) -> "list[dict[str, Any]]":
    """Return each item with its marks and its closing checks."""
    listed = []
    for item in document["items"]:
        entries = [done[entry["id"]] for entry in item["entries"]]
        owns = [item["id"]] + [made.entry["id"] for made in entries]
        sources = [item["title"], entries, [ticks.under(own) for own in owns]]
        name = ("marked", item["id"])
        listed.append(desk.made(name, sources, lambda: _marked(item, entries, ticks, scale)))  # noqa: B023 called at once
    return listed


def _marked(
    item: "dict[str, Any]", entries: "list[Done]", ticks: Ticks, scale: "Scale"
) -> "dict[str, Any]":
    checks = enumerate(_checks(entries, scale))
    return {
        "item": item["id"],
        "title": item["title"],
        "marks": [mark for made in entries for mark in _marks(made, ticks)],
        "checks": [_check(item, at, words, ticks) for at, words in checks],
    }


def _marks(made: "Done", ticks: Ticks) -> "list[dict[str, Any]]":
    entry = made.entry["id"]
    marks = []
    for mark in made.answer["marks"] if made.answer else []:
        said = dict(mark)
        said["of"] = f"{entry}/{mark['from']}: {mark['label']}"
        said["entry"], said["title"] = entry, made.title
        if mark["tag"]:
            said["tag"] = made.entry["letter"] + mark["tag"]
        said["state"] = ticks.state(said["of"])
        marks.append(said)
    return marks


def _checks(entries: "list[Done]", scale: "Scale") -> "list[str]":
    """Return what is looked at before leaving; common practice, no source."""
    checks = []
    sizes: dict[str, Any] = {}
    for made in entries:
        sizes.update(made.sizes)
    # A gap of 3/32 is no "1/8 shy": what is held to with a feeler is said as fine as it is.
    fine = scale.finer(32)
    gaps = [f"{name} {fine.length(sizes[name][1])}" for name in _GAPS if name in sizes]
    if gaps:
        checks.append("Gaps even: " + ", ".join(gaps))
    bevel = _bevel(entries, sizes)
    if bevel is not None:
        edge = f"Bevel {show_angle(bevel)}" if bevel else "Edges square"
        checks.append(f"{edge}, clears as it swings")
    if [made for made in entries if made.entry["tool"] in _HUNG]:
        checks.append("Closes by itself, latch catches")
    return checks + ["Touched up, swept, customer shown"]


SLIGHT = 1 / 128
"""Inches off an edge that nobody planes off: it is checked as a square one."""


def _bevel(entries: "list[Done]", sizes: "dict[str, Any]") -> "float | None":
    """Return the bevel that the swing needs; where nobody asked for that, the one that was said."""
    for made in entries:
        if made.entry["tool"] == "door-swing" and "bevel_angle" in made.figures:
            is_planed = made.figures["back_relief"][1] >= SLIGHT
            return float(made.figures["bevel_angle"][1]) if is_planed else 0.0
    return float(sizes["bevel"][1]) if "bevel" in sizes else None


def _check(item: "dict[str, Any]", at: int, words: str, ticks: Ticks) -> "dict[str, Any]":
    # The words may carry a size that changes: the check is known by its first word.
    of = f"{item['id']}/check {words.split(' ')[0]} {at}"
    return {"of": of, "words": words, "state": ticks.state(of)}
