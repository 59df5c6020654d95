"""A phone's document meets the server's: what stands, what is said, what the document asks.

Hand work throughout: the rules are told in DEVELOPERS.md, "Two phones meet".
"""

from typing import Any

import pytest

from .asking import ask, blank, refused
from .edited import copied

JOB = blank(items=[{"id": "i", "title": "Doors", "entries": [
    {"id": "e", "letter": "A", "tool": "door-set", "inputs": {"stile": "2 1/4"}, "typed_in": "in"},
]}])  # fmt: skip


def state(body: Any, **rest: Any) -> dict[str, Any]:
    return {"units": "in", "schema": 1, "body": body} | rest


def meet(base: Any, mine: Any, theirs: Any, kind: str = "job", **rest: Any) -> Any:
    """Meet three bodies; None is not there."""
    sides = {"base": base, "mine": mine, "theirs": theirs}
    states = {name: None if body is None else state(body) for name, body in sides.items()}
    return ask(do="meet", kind=kind, names=["Ann", "Bo"], **(states | rest))


def with_stile(value: str, **rest: Any) -> dict[str, Any]:
    job: dict[str, Any] = copied(JOB) | rest
    job["items"][0]["entries"][0]["inputs"]["stile"] = value
    return job


def asked(reply: Any) -> list[Any]:
    found: list[Any] = reply["document"]["body"].get("questions") or []
    return found


class TestWhatStands:
    def test_who_alone_changed_it(self) -> None:
        mine = meet(JOB, with_stile("3"), JOB)
        assert (mine["document"]["body"], mine["is_mine"], mine["is_theirs"]) == (
            with_stile("3"), True, False,
        )  # fmt: skip
        theirs = meet(JOB, JOB, with_stile("3"))
        assert (theirs["is_mine"], theirs["is_theirs"]) == (False, True)
        for one, other in ((None, JOB), (JOB, None)):
            assert meet(JOB, one, other)["document"] is None
        assert meet(None, None, JOB)["is_theirs"]
        assert meet(None, JOB, None)["is_mine"]

    def test_what_one_deleted_and_the_other_changed_stays_and_is_said(self) -> None:
        for mine, theirs in ((None, with_stile("3")), (with_stile("3"), None)):
            met = meet(JOB, mine, theirs)
            assert met["document"]["body"] == with_stile("3")
            assert [each["path"] for each in met["collisions"]] == [""]

    def test_a_server_that_is_behind_says_nothing(self) -> None:
        met = meet(JOB, with_stile("3"), with_stile("2"), is_behind=True)
        assert (met["is_mine"], met["collisions"]) == (True, [])
        assert meet(JOB, None, with_stile("2"), is_behind=True)["document"] is None

    def test_without_a_base_both_are_united_and_theirs_stands(self) -> None:
        mine = with_stile("3", things=[{"id": "m", "title": "Hinges"}])
        met = meet(None, mine, with_stile("2", title="Bo's"))
        body = met["document"]["body"]
        assert body["items"][0]["entries"][0]["inputs"]["stile"] == "2"
        assert (body["title"], body["things"]) == ("Bo's", mine["things"])
        assert {each["path"][-1]: each["sides"] for each in asked(met)} == {
            "stile": [{"by": "Bo", "value": "2"}, {"by": "Ann", "value": "3"}],
            "title": [{"by": "Bo", "value": "Bo's"}, {"by": "Ann", "value": "Porch"}],
        }

    def test_rows_of_a_list_are_united_and_one_that_both_changed_is_asked_about(self) -> None:
        base = {"rows": [{"title": "a"}, {"title": "b"}], "typed_in": "in"}
        mine = copied(base) | {"rows": [{"title": "a"}, {"title": "b"}, {"title": "m"}]}
        theirs = copied(base) | {"rows": [{"title": "a", "count": 2}, {"title": "b"}]}
        met = meet(base, mine, theirs, kind="list")
        assert met["document"]["body"]["rows"] == [
            {"title": "a", "count": 2}, {"title": "b"}, {"title": "m"},
        ]  # fmt: skip
        theirs["typed_in"] = "mm"
        apart = meet(base, mine, theirs, kind="list")
        assert apart["document"]["body"]["rows"] == mine["rows"]
        (question,) = asked(apart)
        assert (question["path"], question["together"]) == (["rows"], True)

    def test_two_pictures_are_not_mixed(self) -> None:
        met = meet({"data": ["a"]}, {"data": ["m"]}, {"data": ["t"]}, kind="photo")
        assert met["document"]["body"] == {"data": ["m"]}
        assert [each["path"] for each in met["collisions"]] == [""]

    def test_what_a_newer_version_wrote_is_left_alone(self) -> None:
        sides = {"base": state({}), "mine": state({"a": 1}), "theirs": state({"b": 1}, schema=2)}
        assert "newer" in refused(do="meet", kind="list", **sides)[0]

    def test_photos_of_two_people_are_all_kept(self) -> None:
        """Each adds as many as a phone takes."""
        base, mine, theirs = copied([JOB, JOB, JOB])
        for name, job in (("m", mine), ("t", theirs)):
            job["items"][0]["photos"] = [{"id": f"{name}{at}"} for at in range(12)]
        assert len(meet(base, mine, theirs)["document"]["body"]["items"][0]["photos"]) == 24

    def test_a_question_of_two_items_stands_in_one(self) -> None:
        """One moved it to another item, by a file made elsewhere; the other changed it."""
        mine = copied(JOB)
        mine["items"].append({"id": "j", "title": "More", "entries": mine["items"][0]["entries"]})
        mine["items"][0] = mine["items"][0] | {"entries": []}
        body = meet(JOB, mine, with_stile("3"))["document"]["body"]
        assert [len(item["entries"]) for item in body["items"]] == [1, 0]


class TestQuestions:
    def collided(self) -> Any:
        return meet(JOB, with_stile("3"), with_stile("2"))["document"]["body"]

    def settled(self, body: Any, side: int | None, by: str = "Bo") -> Any:
        question = body["questions"][0]["id"]
        reply = ask(do="answer question", document=body, question=question, side=side, by=by)
        return reply["document"]

    def stile(self, body: Any) -> Any:
        return body["items"][0]["entries"][0]["inputs"].get("stile")

    def test_it_holds_both_values_and_both_names(self) -> None:
        (question,) = self.collided()["questions"]
        assert question["path"] == ["items", "i", "entries", "e", "inputs", "stile"]
        assert question["sides"] == [{"by": "Ann", "value": "3"}, {"by": "Bo", "value": "2"}]

    @pytest.mark.parametrize(("side", "stands"), [(0, "3"), (1, "2"), (None, "3")])
    def test_one_s_answer_settles_it(self, side: int | None, stands: str) -> None:
        body = self.settled(self.collided(), side)
        assert self.stile(body) == stands
        assert [sorted(each) for each in body["questions"]] == [["answered", "id"]]

    def test_an_answered_one_never_comes_back(self) -> None:
        open_one, done = self.collided(), self.settled(self.collided(), 1)
        for base in (open_one, JOB, None):
            for mine, theirs in ((open_one, done), (done, open_one | {"title": "Shed"})):
                questions = asked(meet(base, mine, theirs))
                first = [each for each in questions if each["id"] == done["questions"][0]["id"]]
                assert first == done["questions"], base

    def test_lists_of_questions_are_united(self) -> None:
        """Ann and Bo each met someone else before they meet."""
        one = meet(JOB, with_stile("3"), with_stile("2"))["document"]["body"]
        other = meet(JOB, JOB | {"title": "x"}, JOB | {"title": "y"})["document"]["body"]
        found = asked(meet(JOB, one, other))
        assert [each["id"] for each in found] == sorted(
            each["id"] for each in one["questions"] + other["questions"]
        )

    def test_two_phones_that_meet_the_same_ask_the_same(self) -> None:
        one = meet(JOB, with_stile("3"), with_stile("2"))
        other = meet(JOB, with_stile("2"), with_stile("3"))
        assert [each["id"] for each in asked(one)] == [each["id"] for each in asked(other)]

    def test_a_place_that_changed_since_is_not_written_over(self) -> None:
        body = self.collided()
        body["items"][0]["entries"][0]["inputs"]["stile"] = "2 1/2"
        question = body["questions"][0]["id"]
        request = {"do": "answer question", "document": body, "question": question, "by": "Bo"}
        assert "changed since" in refused(**request, side=1)[0]
        assert self.stile(ask(**request, side=None)["document"]) == "2 1/2"
        assert "settled already" in refused(**(request | {"question": "none"}), side=1)[0]

    def test_a_deletion_can_be_chosen(self) -> None:
        gone = copied(JOB) | {"items": []}
        for mine, theirs in ((gone, with_stile("3")), (with_stile("3"), gone)):
            body = meet(JOB, mine, theirs)["document"]["body"]
            assert body["questions"][0]["sides"][1]["value"] is None
            assert self.settled(body, 1)["items"] == []
            assert self.stile(self.settled(body, 0)) == "3"

    def test_an_order_can_be_chosen(self) -> None:
        base = copied(JOB) | {"items": [{"id": own, "title": own, "entries": []} for own in "abc"]}
        mine, theirs = copied(base), copied(base)
        mine["items"].reverse()
        theirs["items"].insert(0, theirs["items"].pop(1))
        body = self.settled(meet(base, mine, theirs)["document"]["body"], 1)
        assert [item["id"] for item in body["items"]] == ["b", "a", "c"]

    def test_numbers_come_with_how_they_are_meant(self) -> None:
        mine, theirs = with_stile("57"), with_stile("2 3/4")
        mine["items"][0]["entries"][0]["typed_in"] = "mm"
        body = meet(JOB, mine, theirs)["document"]["body"]
        entry = self.settled(body, 1)["items"][0]["entries"][0]
        assert (entry["inputs"], entry["typed_in"]) == ({"stile": "2 3/4"}, "in")

    def test_a_letter_that_became_another_is_told_and_stays(self) -> None:
        new = {"letter": "B", "tool": "even-gap", "inputs": {}}
        mine, theirs = copied([JOB, JOB])
        mine["items"][0]["entries"].append(new | {"id": "m"})
        theirs["items"][0]["entries"].append(new | {"id": "k"})
        body = meet(JOB, mine, theirs)["document"]["body"]
        (question,) = body["questions"]
        assert [each["value"] for each in question["sides"]] == ["C", "B"]
        for side in (0, 1, None):
            entries = self.settled(body, side)["items"][0]["entries"]
            assert {each["id"]: each["letter"] for each in entries} == {
                "e": "A",
                "k": "B",
                "m": "C",
            }
