"""How numbers are carried from question to question of a job.

An input takes, in this order, what was typed; its explicit tie; what the nearest earlier question
of the same item gives or was told under the same quantity; its default. Exact values are carried,
never rounded ones.
"""

from collections import namedtuple

from ..lengths import read_length
from ..quantities import instead_of, kind_of
from ..reading import Unreadable
from ..rows import Rows
from .taking import Sources
from .taking import taken as pieces_for

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..inputs import Input
    from .working import Done

Carried = namedtuple("Carried", ("value", "entry", "name", "title", "kind"))
"""`value` of figure or input `name` of the question with the id `entry`, called `title`.

Of pieces of the job: rows as raw values, or board feet; `entry` is what they belong to."""

_ALIKE = (("length", "length"), ("angle", "angle"), ("number", "number"), ("count", "count"))


def carried_to(
    inputs: "list[Input]",
    entry: "dict[str, Any]",
    done: "dict[str, Done]",
    earlier: "list[str]",
    sources: Sources,
) -> "tuple[dict[str, Carried], dict[str, str]]":
    """Return what each input can take from other questions, and what is wrong with its tie.

    Parameters
    ----------
    inputs : list of Input
        Of the question that takes.
    entry : dict
        That question, with its explicit ties by input name.
    done : dict
        Questions that are worked out, by id.
    earlier : list of str
        Ids of the questions before it in its item, the nearest first.
    sources : Sources
        Where pieces of the job are found.
    """
    found: dict[str, Carried] = {}
    wrong: dict[str, str] = {}
    ties = ties_by_input(inputs, entry)
    for asked in inputs:
        if asked.name in ties and ties[asked.name].get("pieces"):
            taken = _pieces(asked, ties[asked.name], sources, done, wrong)
        elif isinstance(asked, Rows):
            continue
        elif asked.name in ties:
            taken = _tied(asked, ties[asked.name], done, wrong)
        else:
            other = instead_of(asked.quantity, entry["inputs"])
            taken = _by_quantity(asked.quantity, done, earlier)
            taken = taken or (_by_quantity(other, done, earlier) if other else None)
        if taken is not None:
            found[asked.name] = taken
    return found, wrong


def ties_by_input(inputs: "list[Input]", entry: "dict[str, Any]") -> "dict[str, dict[str, Any]]":
    """Return a question's ties by what its inputs are called now, whatever they were called."""
    ties = entry.get("ties") or {}
    found: dict[str, dict[str, Any]] = {}
    for asked in inputs:
        for name in (asked.name,) + asked.was:
            if name in ties and asked.name not in found:
                found[asked.name] = ties[name]
    return found


def _pieces(
    asked: "Input",
    tie: "dict[str, Any]",
    sources: Sources,
    done: "dict[str, Done]",
    wrong: "dict[str, str]",
) -> "Carried | None":
    value, title, fault = pieces_for(asked, tie, sources, done)
    if fault:
        wrong[asked.name] = fault
        return None
    return Carried(value, tie["pieces"], "pieces", title, asked.kind)


def _by_quantity(quantity: str, done: "dict[str, Done]", earlier: "list[str]") -> "Carried | None":
    if not quantity:
        return None
    for entry in earlier:
        source = done.get(entry)
        known = source.sizes.get(quantity) if source else None
        if source is not None and known is not None:
            return Carried(known[1], entry, known[0], source.title, kind_of(quantity))
    return None


def _tied(
    asked: "Input", tie: "dict[str, Any]", done: "dict[str, Done]", wrong: "dict[str, str]"
) -> "Carried | None":
    source = done.get(tie["entry"])
    if source is None:
        wrong[asked.name] = "The question that this number was taken from is not on the job."
        return None
    name = name_now(tie, source)
    known = (source.figures if tie.get("figure") else source.values).get(name)
    if known is None:
        if not asked.may_lack:
            wrong[asked.name] = f"{source.title} does not give this number now."
        return None
    kind, value = known
    if (kind, asked.kind) not in _ALIKE and kind != asked.kind:
        wrong[asked.name] = f"{source.title} gives another kind of number."
        return None
    return _offset(asked, tie, Carried(value, tie["entry"], name, source.title, kind), wrong)


def name_now(tie: "dict[str, Any]", source: "Done") -> str:
    """Return what a tie names: an input that was renamed since by its new name."""
    name = str(tie.get("figure") or tie.get("input") or "")
    if tie.get("figure") or name in source.values:
        return name
    renamed = [asked.name for asked in source.inputs if name in asked.was]
    return renamed[0] if renamed else name


def _offset(
    asked: "Input", tie: "dict[str, Any]", taken: Carried, wrong: "dict[str, str]"
) -> "Carried | None":
    """Return what is taken with the tie's offset, such as ``+ 1/8``, added."""
    text = tie.get("offset") or ""
    if not text:
        return taken
    try:
        more = read_length(text)
    except Unreadable as unreadable:
        wrong[asked.name] = str(unreadable)
        return None
    return Carried(taken.value + more, taken.entry, taken.name, taken.title, taken.kind)
