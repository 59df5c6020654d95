"""A job worked out: each question answered with what it was told and what is carried to it."""

from ..form import Form
from ..last_answer import LAST, Asked
from ..lengths import Scale
from ..refusal import FieldError, Refusal
from ..shelf import tool_named
from ..waiting import waits_for
from .carrying import Carried, carried_to, ties_by_input
from .desk import Desk
from .memory import Memory, key_of
from .taking import Sources

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from ..inputs import Input
    from ..tool import Tool

MOST_REMEMBERED = 600
MOST_STEPS = 50
"""Better answers that are waited for of one question that searches."""

_memory = Memory(MOST_REMEMBERED)


class Done:
    """One question of a job, worked out.

    Attributes
    ----------
    title : str
        What it is called: its own title, else its tool's.
    figures, values : dict
        By name: kind and value of what it gives, and of what it was told.
    sizes : dict
        By quantity: name and value of the figure or input that has it; figures before inputs.
    inputs : list of Input
        What its tool asks.
    answer : dict or None
        Verdict, figures, pieces and marks; None where it is not answered.
    errors : list of FieldError
    carried : dict
        By input: what was taken from other questions.
    wrong : dict
        By input: what is wrong with its tie.
    """

    def __init__(self, entry: "dict[str, Any]", title: str) -> None:
        self.entry = entry
        self.title = title
        self.figures: dict[str, tuple[str, Any]] = {}
        self.values: dict[str, tuple[str, Any]] = {}
        self.sizes: dict[str, tuple[str, Any]] = {}
        self.answer: dict[str, Any] | None = None
        self.errors: list[FieldError] = []
        self.inputs: list[Input] = []
        self.waiting: dict[str, str] | None = None
        self.carried: dict[str, Carried] = {}
        self.wrong: dict[str, str] = {}
        self.is_recalled = False

    def recall(self, known: "Done") -> None:
        """Take over what the same question came to when it was told and carried the same."""
        self.is_recalled = True
        self.figures, self.values, self.sizes = known.figures, known.values, known.sizes
        self.answer, self.errors, self.waiting = known.answer, known.errors, known.waiting


def work_out(document: "dict[str, Any]", scale: Scale, desk: Desk) -> "Iterator[dict[str, Done]]":
    """Give the questions that are worked out, in an order that carries, and at the end all.

    Each time one more was worked out anew; what is remembered takes no time of its own. A question
    that can't be answered never stops another. One that says and takes the same as the last time
    is the same `Done`.
    """
    entries = [entry for item in document["items"] for entry in item["entries"]]
    order = [entry["id"] for entry in entries]
    places = {entry["id"]: entry for entry in entries}
    earlier = _earlier(document)
    done: dict[str, Done] = {}
    sources = Sources(document)
    for start in order:
        waiting = [start]
        while waiting:
            entry = waiting[-1]
            if entry in done:
                waiting.pop()
                continue
            ahead = _needed(places[entry], earlier[entry], sources, done, waiting)
            if ahead is not None:
                waiting.append(ahead)
                continue
            given = _given(places[entry], earlier[entry], done, sources)
            name = ("done", entry)
            made = desk.known(name, given)
            is_new = made is None
            if made is None:
                made = _answered(places[entry], earlier[entry], done, scale, waiting, sources)
                made = _as_before(made, desk.last(name))
                if not made.wrong:
                    desk.keep(name, given, made)
            done[entry] = made
            waiting.pop()
            if is_new and not made.is_recalled and len(done) < len(order):
                yield done
    yield done


def _given(
    entry: "dict[str, Any]", earlier: "list[str]", done: "dict[str, Done]", sources: Sources
) -> "list[Any]":
    """Return all that a question is made of."""
    given: list[Any] = [entry]
    for tie in (entry.get("ties") or {}).values():
        if tie.get("pieces"):
            given += sources.of_pieces(tie["pieces"])
        given += [done.get(own) for own in _tied_to(tie, sources)]
    return given + [done.get(own) for own in earlier]


def _tied_to(tie: "dict[str, Any]", sources: Sources) -> "list[str]":
    """Return the ids of the questions that a tie takes from."""
    if tie.get("pieces"):
        return [each["id"] for _, each in sources.entries(tie["pieces"])]
    return [tie["entry"]] if tie["entry"] in sources.places else []


def _as_before(made: Done, last: "Done | None") -> Done:
    """Return the last answer of a question where it says just the same."""
    if last is None or last.answer is not made.answer or last.errors is not made.errors:
        return made
    is_same = last.entry is made.entry and last.title == made.title
    return last if is_same and last.carried == made.carried else made


def _earlier(document: "dict[str, Any]") -> "dict[str, list[str]]":
    """Return by question the ids of those before it in its item, the nearest first."""
    earlier: dict[str, list[str]] = {}
    for item in document["items"]:
        before: list[str] = []
        for entry in item["entries"]:
            earlier[entry["id"]] = before
            before = [entry["id"]] + before
    return earlier


def _needed(
    entry: "dict[str, Any]",
    earlier: "list[str]",
    sources: Sources,
    done: "dict[str, Done]",
    waiting: "list[str]",
) -> "str | None":
    """Return a question to work out before this one, None where none is left."""
    tied: list[str] = []
    for tie in (entry.get("ties") or {}).values():
        tied += _tied_to(tie, sources)
    for other in tied + earlier:
        if other not in done and other not in waiting:
            return other
    return None


def _answered(
    entry: "dict[str, Any]",
    earlier: "list[str]",
    done: "dict[str, Done]",
    scale: Scale,
    waiting: "list[str]",
    sources: Sources,
) -> Done:
    try:
        tool = tool_named(entry["tool"])
    except KeyError:
        unknown = Done(entry, entry.get("title") or entry["tool"])
        unknown.errors = [FieldError("tool", "This version has no such question.")]
        return unknown
    made = Done(entry, entry.get("title") or tool.title)
    made.inputs = tool.inputs
    ties = ties_by_input(tool.inputs, entry)
    found, wrong = carried_to(tool.inputs, entry, done, earlier, sources)
    for name in ties:
        if ties[name].get("entry") in waiting:
            wrong[name] = "These questions take numbers from each other in a circle."
    made.carried, made.wrong = found, wrong
    key = _key(entry, found, scale)
    known = None if wrong else _memory.get(key)
    if known is not None:
        made.recall(known)
        return made
    values = {name: each.value for name, each in found.items()}
    # Its own screen has mostly asked the same just now.
    last = None if wrong else LAST.of(Asked(entry, values, scale))
    form = last[0] if last else _form_of(tool, entry, scale, found)
    tied = [FieldError(name, wrong[name]) for name in sorted(wrong) if not _is_typed(form, name)]
    made.errors = tied or form.errors()
    _remember_values(made, tool, form)
    if not made.errors:
        _answer(made, tool, form, scale, last and last[1])
    made.waiting = waits_for(tool, made.errors)
    if not wrong:
        _memory.put(key, made)
    return made


def _key(entry: "dict[str, Any]", found: "dict[str, Carried]", scale: Scale) -> str:
    """Return what an answer depends on: it is worked out again only if some of it has changed."""
    taken = [[name, found[name].value] for name in sorted(found)]
    said = [entry.get(name) for name in ("tool", "typed_in", "version", "inputs")]
    return key_of([said, taken, scale.units, scale.step])


def _form_of(
    tool: "Tool", entry: "dict[str, Any]", scale: Scale, found: "dict[str, Carried]"
) -> Form:
    carried = {name: {"value": each.value, "from": each.title} for name, each in found.items()}
    typed_in = entry.get("typed_in") or scale.units
    own = Scale(scale.units, scale.step, typed_in)
    return Form(tool, entry["inputs"], own, int(entry.get("version") or 0), carried)


def _is_typed(form: Form, name: str) -> bool:
    return bool(
        [each for each in form.fields if each.asked.name == name and each.source == "typed"]
    )


def _remember_values(made: Done, tool: "Tool", form: Form) -> None:
    """Keep what it was told; a default that follows from a choice was told with the choice."""
    by_choice = [each.name for each in tool.inputs if getattr(each, "default_by", None)]
    for field in form.fields:
        told = field.source in ("typed", "carried") or field.asked.name in by_choice
        if field.value is None or not told:
            continue
        made.values[field.asked.name] = (field.asked.kind, field.value)
        if field.asked.quantity:
            made.sizes[field.asked.quantity] = (field.asked.name, field.value)


def _answer(
    made: Done, tool: "Tool", form: Form, scale: Scale, known: "dict[str, Any] | None"
) -> None:
    try:
        whole = known or _worked(tool, form, scale)
        made.answer = {name: whole[name] for name in ("verdict", "figures", "pieces", "marks")}
        _remember_figures(made, tool, made.answer)
    except Refusal as refusal:
        made.errors = refusal.errors


def _worked(tool: "Tool", form: Form, scale: Scale) -> "dict[str, Any]":
    whole: dict[str, Any] = {}
    for step, answer in enumerate(tool.answers(form.fields, scale, is_drawn=False)):
        whole = answer if "figures" in answer else whole
        if whole and step >= MOST_STEPS:
            break
    return whole


def _remember_figures(made: Done, tool: "Tool", answer: "dict[str, Any]") -> None:
    shown = {figure["name"]: figure for figure in answer["figures"]}
    for each in tool.gives:
        if each.name not in shown:
            continue
        value = shown[each.name]["value"]
        made.figures[each.name] = (each.kind, value)
        if each.quantity:
            made.sizes[each.quantity] = (each.name, value)


def inputs_of(tool: "Tool") -> "list[Input]":
    """Return a tool's inputs that can be tied: rows can't."""
    return [asked for asked in tool.inputs if asked.kind != "rows"]
