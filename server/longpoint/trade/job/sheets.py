"""A job as its reader needs it: its questions answered, and the three sheets made from them."""

from ..lengths import Scale, show_angle, show_money, show_number
from .buying import Shop, buy_lines
from .desk import Desk
from .document import check, checked_offcuts
from .finishing import finish_plans
from .marking import mark_list
from .pieces import all_cuts
from .quote import quote_of
from .sawing import cut_list
from .steps import first_steps
from .ticks import Ticks
from .working import Done, work_out

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from .carrying import Carried
    from .pieces import Cut


def job_replies(
    document: object, scale: Scale, offcuts: object = None, desk: "Desk | None" = None
) -> "Iterator[dict[str, Any]]":
    """Check a job, then give what it comes to, ever more of it; the last one is whole.

    Each step is one question answered or one plan made better, so that a phone stays free to hear
    something else in between. `offcuts` are the rows of the shop's own list, if it has one. With
    the `desk` of the last time, what has not changed since is the same object.

    Raises
    ------
    Refusal
        With each fault's place, for what is no job; an entry's own errors are never among them.
    """
    desk = desk or Desk()
    job = _checked(document, scale, desk)
    number = sum([len(item["entries"]) for item in job["items"]])
    done: dict[str, Done] = {}
    for done in work_out(job, scale, desk):
        if len(done) < number:
            yield {"progress": len(done) / (2 * number)}
    ticks = Ticks(job.get("ticks") or [])
    cuts = all_cuts(job, done, desk)
    reply = {
        "items": [_item(item, done, scale, desk) for item in job["items"]],
        "saw": {
            "steps": first_steps(job, done, cuts, ticks, scale),
            "groups": cut_list(job, cuts, ticks, scale, desk),
        },
        "site": {"items": mark_list(job, done, ticks, scale, desk)},
        "finish": finish_plans(job, done, ticks, desk),
        "warnings": _warnings(job, cuts),
    }
    shop = Shop(job, done, checked_offcuts(offcuts))
    for better in buy_lines(shop, cuts, ticks, scale, desk):
        if better is None:
            # Nothing new is said while a search goes on: a long job takes long to say.
            yield {"progress": 0.75}
            continue
        lines, is_last = better
        priced = quote_of(job, done, cuts, lines)
        if is_last:
            desk.clear()
        whole = dict(reply, yard=_yard(lines), quote=priced)
        yield dict(whole, progress=1.0 if is_last else 0.75)


def _checked(document: object, scale: Scale, desk: Desk) -> "Any":
    if not isinstance(document, dict):
        check(document)
    job = desk.lay(document, scale)  # type: ignore[arg-type]  # what is no object was refused
    check(job, desk.document)
    desk.document = job
    return job


def _item(
    item: "dict[str, Any]", done: "dict[str, Done]", scale: Scale, desk: Desk
) -> "dict[str, Any]":
    entries = []
    for entry in item["entries"]:
        made = done[entry["id"]]
        said = desk.made(("entry", entry["id"]), [made], lambda: _entry(made, scale))  # noqa: B023 called at once
        entries.append(said)
    return {"id": item["id"], "title": item["title"], "entries": entries}


def _entry(made: Done, scale: Scale) -> "dict[str, Any]":
    answer = made.answer or {"verdict": "", "figures": [], "pieces": [], "marks": []}
    return {
        "id": made.entry["id"],
        "tool": made.entry["tool"],
        "letter": made.entry["letter"],
        "title": made.title,
        "verdict": answer["verdict"],
        "figures": answer["figures"],
        "errors": [error.to_json() for error in made.errors],
        "waiting": made.waiting,
        "carried": [_carried(name, made.carried[name], scale) for name in sorted(made.carried)],
        "pieces": len(answer["pieces"]),
        "marks": len(answer["marks"]),
    }


def _carried(name: str, taken: "Carried", scale: Scale) -> "dict[str, Any]":
    return {
        "input": name,
        "entry": taken.entry,
        "figure": taken.name,
        "value": taken.value,
        "text": _shown(taken, scale),
        "from": taken.title,
    }


def _shown(taken: "Carried", scale: Scale) -> str:
    if taken.kind == "length":
        return scale.length(taken.value)
    if taken.kind == "angle":
        return show_angle(taken.value)
    if taken.kind == "rows":
        number = sum([row.get("count", 1) for row in taken.value])
        return f"{number} piece{'' if number == 1 else 's'}"
    return taken.value if isinstance(taken.value, str) else show_number(taken.value, 3)


def _yard(lines: "list[dict[str, Any]]") -> "dict[str, Any]":
    cost = sum([line["cost"] for line in lines if line["cost"] is not None])
    paid = sum([line["paid"] for line in lines if line["paid"] is not None])
    texts = {"cost_text": show_money(cost), "paid_text": show_money(paid)}
    return dict(texts, lines=lines, cost=cost, paid=paid)


def _warnings(job: "dict[str, Any]", cuts: "list[list[Cut]]") -> "list[str]":
    known = [stock["id"] for stock in job.get("stock") or []]
    loose = [cut for mine in cuts for cut in mine if cut.stock not in known]
    if not loose:
        return []
    word = "piece has" if len(loose) == 1 else "pieces have"
    return [f"{len(loose)} {word} no stock yet: say what they are cut from, then they are bought."]
