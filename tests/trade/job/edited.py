"""Random edits of a job, as a person makes them on a phone: one of each kind that screens offer."""

import marshal
import random
from collections.abc import Callable
from typing import Any

from longpoint.trade.job.editing import next_letter

NO_SHARING = 2
"""The last version of the format that knows no references."""
Job = dict[str, Any]
TEXTS = ["", "27 13/16", "2 1/4", "30", "706", "é ½″"]
INPUTS = ["stile", "top_rail", "leaf_width"]
STATES = ["cut", "fitted", "spoiled", "bought", "done"]


def copied(value: Any) -> Any:
    """Return a value as JSON would give it back: what is the same object twice becomes two."""
    return marshal.loads(marshal.dumps(value, NO_SHARING))


def begun() -> Job:
    """Return a job with two items, ticks, stock and a quote."""
    job: Job = {
        "longpoint": "job", "schema": 1, "id": "j", "title": "Porch", "units": "in", "step": 16,
        "items": [], "letters": 0, "ticks": [{"id": "t", "of": "doors-1/1#1", "state": "cut"}],
        "stock": [
            {"id": "maple", "title": "Maple", "sold": "board", "price": 6.5,
             "lengths": [{"length": "96", "price": None}, {"length": "120", "price": 12}],
             "on_hand": [{"length": "31", "count": 2}]},
            {"id": "ply", "title": "Plywood", "sold": "sheet"},
        ],
        "quote": {"rates": {"rate": "85"}, "lines": [{"id": "l", "title": "Doors", "hours": "3"}],
                  "agreed": {"by": "", "strokes": [[[1, 1], [2, 2]]]}},
    }  # fmt: skip
    for own in ("doors", "base"):
        item: Job = {"id": own, "title": own, "entries": [], "count": 1}
        for at in (1, 2):
            item["entries"].append(question(job, f"{own}-{at}"))
        job["items"].append(item)
    return job


def question(job: Job, own: str) -> Job:
    return {
        "id": own, "letter": next_letter(job), "tool": "door-set", "typed_in": "in",
        "inputs": {"stile": "2 1/4", "top_rail": {"text": "60", "units": "mm"}},
        "ties": {"opening": {"entry": "doors-1", "figure": "leaf"}},
    }  # fmt: skip


class Editor:
    """A person who edits; what they add has ids of their own."""

    def __init__(self, chance: random.Random, name: str) -> None:
        self.chance = chance
        self.name = name
        self.count = 0
        self.put_aside: dict[str, list[Job]] = {}
        """Items deleted from each job."""

    def edit(self, job: Job, times: int = 1, kinds: "list[str] | None" = None) -> Job:
        """Return the job edited; the one given stays as it is."""
        made: Job = copied(job)
        for _ in range(times):
            name = self.chance.choice(kinds or list(KINDS))
            KINDS[name](self, made)
        return made

    def new(self) -> str:
        self.count += 1
        # Ids are random on a phone: neither in the order they were made nor by person.
        return f"{self.chance.choice('abcxyz')}{self.name}{self.count}"

    def one(self, values: list[Any]) -> Any:
        return self.chance.choice(values) if values else None

    def entry(self, job: Job) -> Job | None:
        found: Job | None = self.one([each for item in job["items"] for each in item["entries"]])
        return found

    def text(self) -> str:
        return self.chance.choice(TEXTS)


def _field(self: Editor, job: Job) -> None:
    holder = self.one([job, *job["items"], *job["stock"], job.setdefault("customer", {})])
    name = "name" if holder is job["customer"] else "title"
    holder[name] = self.text() or "x"


def _input(self: Editor, job: Job) -> None:
    entry = self.entry(job)
    if entry is None:
        return
    name = self.one(INPUTS)
    value: Any = self.text()
    if self.chance.random() < 0.3:
        value = {"text": value, "units": self.one(["in", "mm"])}
    if self.chance.random() < 0.2:
        entry["inputs"].pop(name, None)
    else:
        entry["inputs"][name] = value


def _meant(self: Editor, job: Job) -> None:
    entry = self.entry(job)
    if entry is not None:
        entry["typed_in"] = self.one(["in", "mm"])
        entry["inputs"]["stile"] = self.text()


def _tie(self: Editor, job: Job) -> None:
    entry = self.entry(job)
    if entry is not None:
        other = self.entry(job)
        assert other is not None
        entry.setdefault("ties", {})[self.one(["opening", "height"])] = {
            "entry": other["id"], "figure": self.one(["leaf", "width"]),
        }  # fmt: skip


def _tick(self: Editor, job: Job) -> None:
    entry = self.entry(job)
    of = f"{entry['id']}/1#{self.chance.randint(1, 2)}" if entry else "maple"
    # Its time is a wrong clock's.
    at = f"20{self.chance.randint(10, 40)}-01-01T08:00:00Z"
    tick = {"id": self.new(), "of": of, "state": self.one(STATES), "at": at}
    job.setdefault("ticks", []).append(tick)


def _untick(self: Editor, job: Job) -> None:
    tick = self.one(job.get("ticks") or [])
    if tick:
        job["ticks"].remove(tick)


def _add_item(self: Editor, job: Job) -> None:
    own = self.new()
    item: Job = {"id": own, "title": own, "entries": [question(job, f"{own}-1")]}
    job["items"].insert(self.chance.randint(0, len(job["items"])), item)


def _add_entry(self: Editor, job: Job) -> None:
    item = self.one(job["items"])
    if item:
        at = self.chance.randint(0, len(item["entries"]))
        item["entries"].insert(at, question(job, self.new()))


def _move(self: Editor, job: Job) -> None:
    held = self.one([job["items"], job["stock"], *(item["entries"] for item in job["items"])])
    if held:
        moved = held.pop(self.chance.randrange(len(held)))
        held.insert(self.chance.randint(0, len(held)), moved)


def _delete(self: Editor, job: Job) -> None:
    held = self.one([job["items"], job["stock"], *(item["entries"] for item in job["items"])])
    if held:
        gone = held.pop(self.chance.randrange(len(held)))
        if held is job["items"]:
            self.put_aside.setdefault(job["id"], []).append(gone)


def _undelete(self: Editor, job: Job) -> None:
    """Undo of a deletion: the very item again, with its ids and letters."""
    gone = self.put_aside.get(job["id"])
    if gone:
        item = gone.pop()
        taken = {each["id"] for each in job["items"]}
        if item["id"] not in taken:
            job["items"].append(item)


def _row(self: Editor, job: Job) -> None:
    stock = self.one(job["stock"])
    if stock is None:
        return
    rows = stock.setdefault(self.one(["lengths", "on_hand"]), [])
    row = {"length": self.text(), "price": self.chance.randint(1, 9)}
    if rows and self.chance.random() < 0.5:
        rows[self.chance.randrange(len(rows))]["length"] = self.text()
    elif rows and self.chance.random() < 0.4:
        rows.pop()
    elif len(rows) < 5:
        rows.append(row)


def _price(self: Editor, job: Job) -> None:
    stock = self.one(job["stock"])
    if stock is not None:
        stock["price"] = self.one([None, 1, 2.5, 40.0625])


def _photo(self: Editor, job: Job) -> None:
    item = self.one(job["items"])
    if item is None:
        return
    photos = item.setdefault("photos", [])
    if len(photos) > 2:
        photos.pop()
    else:
        photos.append({"id": self.new()})


def _quote(self: Editor, job: Job) -> None:
    quote = job.setdefault("quote", {})
    if self.chance.random() < 0.3:
        point = [self.chance.randint(1, 50), 7]
        quote.setdefault("agreed", {})["strokes"] = [[point, point]]
    elif self.chance.random() < 0.5:
        line = {"id": self.new(), "title": self.text(), "hours": "1"}
        quote.setdefault("lines", []).append(line)
    else:
        quote.setdefault("rates", {})["rate"] = self.text()


def _log(self: Editor, job: Job) -> None:
    job.setdefault("log", []).append({"at": f"20{self.count:02}", "words": self.new()})


def _units(self: Editor, job: Job) -> None:
    job["units"] = "mm" if job["units"] == "in" else "in"


Kind = Callable[[Editor, Job], None]
KINDS: dict[str, Kind] = {
    "field": _field, "input": _input, "meant": _meant, "tie": _tie, "tick": _tick,
    "untick": _untick, "add item": _add_item, "add entry": _add_entry, "move": _move,
    "delete": _delete, "undelete": _undelete, "row": _row, "price": _price, "photo": _photo,
    "quote": _quote, "log": _log, "units": _units,
}  # fmt: skip
ADDING = ["field", "input", "tick", "add item", "add entry", "price", "photo", "quote", "log"]
