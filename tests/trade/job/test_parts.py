"""A job said in parts comes together as the same job worked out anew, whatever was changed."""

import copy
import json
import random
from collections.abc import Callable
from pathlib import Path
from typing import Any

from longpoint.trade.calls import call
from longpoint.trade.job.sheets import job_replies
from longpoint.trade.lengths import Scale

from .asking import ask

Job = dict[str, Any]
DEMO: Job = json.loads(
    (Path(__file__).parents[3] / "fixtures/job/demo.json").read_text(encoding="utf-8")
)["job"]


class Hearer:
    """Puts replies together from their parts, as a page does."""

    def __init__(self) -> None:
        self.known: dict[int, Any] = {}
        self.have = 0
        self.said: list[int] = []

    def hear(self, reply: Any) -> Any:
        """Return a whole reply, None where it is not whole yet."""
        new = {int(number): part for number, part in reply.get("parts", {}).items()}
        self.known |= new
        self.said += new
        self.have = max([self.have, *new])
        job = reply["job"]
        if "yard" not in job:
            return None
        before, self.known = self.known, {}
        for item in job["items"]:
            item["entries"] = self.all(item["entries"], before)
        for group in job["saw"]["groups"]:
            group["cuts"] = self.all(group["cuts"], before)
        job["site"]["items"] = self.all(job["site"]["items"], before)
        job["yard"]["lines"] = self.all(job["yard"]["lines"], before)
        return job

    def all(self, numbers: list[int], before: dict[int, Any]) -> list[Any]:
        self.known |= {number: before[number] for number in numbers}
        return copy.deepcopy([before[number] for number in numbers])

    def worked(self, document: Job, steps: int = 10**6) -> Any:
        """Return what a job comes to, or what it has come to after some steps."""
        items = [json.dumps(item) for item in document["items"]]
        reply = ask(do="job", job=document | {"items": items}, have=self.have)
        whole = self.hear(reply)
        for _ in range(steps):
            if not reply["work"]:
                break
            reply = ask(do="continue job", work=reply["work"])
            whole = self.hear(reply) or whole
        return whole


def anew(document: Job) -> Any:
    """Return the same worked out by nobody who knows anything of it."""
    whole: Any = None
    for reply in job_replies(json.loads(json.dumps(document)), Scale("in", 16)):
        whole = reply if "yard" in reply else whole
    return json.loads(json.dumps(whole))


def stile(job: Job, chance: random.Random) -> None:
    width = chance.choice(["2", "2 1/4", "2 1/2"])
    for entry in [entry for item in job["items"] for entry in item["entries"]]:
        if entry["tool"] == "door-set":
            entry["inputs"]["stile"] = width


def alike(job: Job, chance: random.Random) -> None:
    chance.choice(job["items"])["count"] = chance.randint(1, 3)


def tick(job: Job, chance: random.Random) -> None:
    whole = anew(job)
    cuts = [cut for group in whole["saw"]["groups"] for cut in group["cuts"]]
    marks = [mark for item in whole["site"]["items"] for mark in item["marks"] + item["checks"]]
    lines = whole["yard"]["lines"]
    of, state = chance.choice([
        (chance.choice(cuts)["of"], "cut"), (chance.choice(cuts)["of"], "spoiled"),
        (chance.choice(marks)["of"], "marked"), (chance.choice(lines)["of"], "bought"),
    ])  # fmt: skip
    job.setdefault("ticks", []).append({"of": of, "state": state, "was": {"length": 30.0}})


def untick(job: Job, chance: random.Random) -> None:
    if job.get("ticks"):
        job["ticks"].pop(chance.randrange(len(job["ticks"])))


def drop(job: Job, chance: random.Random) -> None:
    entries = chance.choice(job["items"])["entries"]
    if len(entries) > 1:
        entries.pop(chance.randrange(len(entries)))


def turn(job: Job, chance: random.Random) -> None:
    chance.shuffle(job["items"])


def dearer(job: Job, chance: random.Random) -> None:
    stock = chance.choice(job["stock"])
    stock["price"] = chance.randint(2, 9)
    stock["title"] = chance.choice(["Poplar", "Maple", stock["title"]])


CHANGES: list[Callable[[Job, random.Random], None]] = [
    stile, alike, tick, tick, untick, drop, turn, dearer
]  # fmt: skip


def test_what_is_put_together_is_the_job_worked_out_anew() -> None:
    """The reference is the reply of a first time; what is changed and undone is up to chance."""
    chance = random.Random(5)
    hearer, history = Hearer(), [DEMO]
    for _ in range(40):
        job = copy.deepcopy(history[-1])
        if len(history) > 2 and chance.random() < 0.25:
            job = history[chance.randrange(len(history))]
        else:
            chance.choice(CHANGES)(job, chance)
        history.append(job)
        if chance.random() < 0.3:
            # It is left before it is whole.
            hearer.worked(job, chance.randint(0, 3))
            continue
        whole, again = hearer.worked(job), anew(job)
        if all(line["proved"] is not False for line in again["yard"]["lines"]):
            assert whole == again
        else:
            # A plan remembered with its search goes on further than one looked for anew.
            assert {**whole, "yard": 0, "progress": 1} == {**again, "yard": 0, "progress": 1}


def test_a_change_says_what_it_concerns() -> None:
    hearer, job = Hearer(), copy.deepcopy(DEMO)
    hearer.worked(job)
    assert len(hearer.said) > 60
    hearer.said = []
    hearer.worked(copy.deepcopy(job))
    assert hearer.said == []
    job["ticks"] = [{"of": first_cut(job), "state": "cut"}]
    hearer.worked(job)
    assert len(hearer.said) == 1


def first_cut(job: Job) -> str:
    return str(anew(job)["saw"]["groups"][0]["cuts"][0]["of"])


def test_what_was_never_heard_is_said_again() -> None:
    hearer = Hearer()
    hearer.worked(DEMO)
    job = copy.deepcopy(DEMO)
    job["items"][0]["entries"][2]["inputs"]["stile"] = "2 3/4"
    lost = Hearer()
    lost.known, lost.have = dict(hearer.known), hearer.have
    lost.worked(job)
    assert hearer.worked(job) == lost.worked(job)


def test_a_wrong_document_is_refused_after_a_right_one_as_before_it() -> None:
    Hearer().worked(DEMO)
    wrong = copy.deepcopy(DEMO)
    wrong["items"][1]["count"] = "two"
    wrong["stock"][0]["sold"] = "heap"
    reply = json.loads(call(json.dumps({"do": "job", "job": wrong, "have": 0})))
    assert [error["field"] for error in reply["errors"]] == ["items.1.count", "stock.0.sold"]
