"""A job: numbers said once are carried, and what was cut to an older size says so.

Every expected number is hand work, beside its check.
"""

import json
from typing import Any

import pytest

from longpoint.trade.calls import call
from longpoint.trade.job.document import check
from longpoint.trade.refusal import Refusal


def entry(number: int, tool: str, **rest: Any) -> dict[str, Any]:
    letter = chr(ord("A") + number)
    return {"id": f"e{number}", "letter": letter, "tool": tool, "inputs": {}} | rest


def job(*entries: dict[str, Any], **rest: Any) -> dict[str, Any]:
    item = {"id": "i", "title": "Door", "entries": list(entries)}
    return {"longpoint": "job", "schema": 1, "id": "j", "title": "Porch", "items": [item]} | rest


def item(**rest: Any) -> dict[str, Any]:
    return {"id": "i", "title": "t", "entries": []} | rest


def worked(document: dict[str, Any]) -> dict[str, Any]:
    """Work a job out through the core's door, step by step to its end."""
    reply = json.loads(call(json.dumps({"do": "job", "job": document})))
    while reply["ok"] and reply["work"]:
        reply = json.loads(call(json.dumps({"do": "continue job", "work": reply["work"]})))
    assert reply["ok"], reply
    whole: dict[str, Any] = reply["job"]
    return whole


def entries_of(reply: dict[str, Any]) -> dict[str, dict[str, Any]]:
    return {each["id"]: each for item in reply["items"] for each in item["entries"]}


def figure(reply: dict[str, Any], entry: str, name: str) -> Any:
    return next(
        each["value"] for each in entries_of(reply)[entry]["figures"] if each["name"] == name
    )


JAMB = {"leaf_width": "32", "leaf_height": "80"}
GAP = {"gap_top": "1/16", "gap_bottom": "3/16"}
FRAME = {"fit": "inside", "opening_width": "30", "opening_height": "40", "trim_width": "3"}


class TestCarrying:
    def test_the_nearest_earlier_question_gives_what_it_was_told(self) -> None:
        reply = worked(
            job(entry(0, "jamb-and-stop", inputs=JAMB), entry(1, "even-gap", inputs=GAP))
        )
        (height, *_) = [
            each for each in entries_of(reply)["e1"]["carried"] if each["input"] == "leaf_height"
        ]
        assert (height["entry"], height["value"], height["from"]) == ("e0", 80, "Jamb and stop")

    def test_what_follows_from_a_choice_was_told_with_it(self) -> None:
        """An inset door has gaps of 3/32 unless something else is said: its hinges have too."""
        inset = {"kind": "inset", "opening_width": "20", "opening_height": "30", "stile": "2",
                 "panel_thickness": "1/4"}  # fmt: skip
        reply = worked(job(entry(0, "door-set", inputs=inset), entry(1, "hinge-layout")))
        gaps = {each["input"]: each["value"] for each in entries_of(reply)["e1"]["carried"]
                if each["input"].endswith("gap")}  # fmt: skip
        assert gaps == {"hinge_gap": 3 / 32, "head_gap": 3 / 32, "floor_gap": 3 / 32}

    @pytest.mark.parametrize(("meets", "gap"), [("jamb", 1 / 8), ("leaf", 1 / 16)])
    def test_the_strike_gap_is_the_gap_to_what_the_leaf_meets(self, meets: str, gap: float) -> None:
        """A side gap of 1/8 against the jamb, a meeting gap of 1/16 against the other leaf."""
        pair = JAMB | {"leaves": "2", "side_gap": "1/8", "meeting_gap": "1/16"}
        reply = worked(
            job(
                entry(0, "jamb-and-stop", inputs=pair),
                entry(1, "door-swing", inputs={"meets": meets}),
            )
        )
        carried = {each["input"]: each["value"] for each in entries_of(reply)["e1"]["carried"]}
        assert (carried["strike_gap"], carried["hinge_gap"]) == (gap, 1 / 8)

    def test_each_kind_is_shown_as_its_kind(self) -> None:
        """A bevel of 3 is degrees, a latch 36 high inches, two leaves a word of two."""
        survey = {"width_top": "60", "width_bottom": "60", "height_left": "80",
                  "height_right": "80", "leaves": "2", "bevel": "3"}  # fmt: skip
        reply = worked(job(entry(0, "opening-survey", inputs=survey), entry(1, "door-set")))
        shown = {each["input"]: each["text"] for each in entries_of(reply)["e1"]["carried"]}
        assert (shown["bevel"], shown["leaves"], shown["opening_width"]) == ("3.0°", "2", "60")

    def test_what_is_typed_comes_first(self) -> None:
        typed = GAP | {"leaf_height": "79"}
        told = worked(
            job(entry(0, "jamb-and-stop", inputs=JAMB), entry(1, "even-gap", inputs=typed))
        )
        alone = worked(job(entry(1, "even-gap", inputs=typed)))
        names = [each["name"] for each in entries_of(alone)["e1"]["figures"]]
        assert [figure(told, "e1", name) for name in names] == [
            figure(alone, "e1", name) for name in names
        ]

    def test_a_tie_takes_any_figure_of_its_kind_with_an_offset(self) -> None:
        """A frame 30 wide in a recess without play is 30 long point to long point; 1/2 more."""
        ties = {"opening_width": {"entry": "e0", "figure": "top_long", "offset": "1/2"}}
        second = {"fit": "inside", "opening_height": "40", "trim_width": "3"}
        reply = worked(job(
            entry(0, "mitered-frame", inputs=FRAME),
            entry(1, "mitered-frame", inputs=second, ties=ties),
        ))  # fmt: skip
        assert figure(reply, "e1", "top_long") == 30.5

    def test_a_tie_may_look_ahead(self) -> None:
        ties = {"opening_width": {"entry": "e1", "figure": "top_long"}}
        first = {"fit": "inside", "opening_height": "40", "trim_width": "3"}
        reply = worked(job(
            entry(0, "mitered-frame", inputs=first, ties=ties),
            entry(1, "mitered-frame", inputs=FRAME),
        ))  # fmt: skip
        assert figure(reply, "e0", "top_long") == 30

    def test_a_circle_of_ties_is_said_and_stops_nothing_else(self) -> None:
        def tied(to: str) -> dict[str, Any]:
            return {"opening_width": {"entry": to, "figure": "top_long"}}

        reply = worked(job(
            entry(0, "mitered-frame", ties=tied("e1")),
            entry(1, "mitered-frame", ties=tied("e0")),
            entry(2, "corner-joint", inputs={"corner": "90", "width_a": "3"}),
        ))  # fmt: skip
        said = [error["message"] for error in entries_of(reply)["e1"]["errors"]]
        assert any("circle" in words for words in said)
        assert figure(reply, "e2", "saw_a") == 45

    def test_a_source_that_is_gone_is_said_on_its_field(self) -> None:
        ties = {"opening_width": {"entry": "deleted", "figure": "top_long"}}
        reply = worked(job(entry(0, "mitered-frame", ties=ties)))
        (error,) = entries_of(reply)["e0"]["errors"]
        assert error["field"] == "opening_width"
        assert "not on the job" in error["message"]

    def test_a_question_this_version_does_not_have_stops_nothing(self) -> None:
        reply = worked(job(entry(0, "later-tool"), entry(1, "even-gap")))
        assert "no such question" in entries_of(reply)["e0"]["errors"][0]["message"]
        assert entries_of(reply)["e1"]["waiting"]


STICKS = {"id": "s", "title": "1x4 pine", "sold": "stick", "lengths": [{"length": 96, "price": 10}]}


class TestSheets:
    def framed(self, **rest: Any) -> dict[str, Any]:
        made = entry(0, "mitered-frame", inputs=FRAME, stock={"all": "s"})
        return job(made, stock=[STICKS], **rest)

    def test_the_cut_list_is_by_setting_longest_first(self) -> None:
        """Four sides of one width: one setting, 45; two of 40, two of 30."""
        (group,) = worked(self.framed())["saw"]["groups"]
        assert [cut["length"] for cut in group["cuts"]] == [40, 40, 30, 30]
        assert {cut["tag"] for cut in group["cuts"]} == {"A1", "A2", "A3", "A4"}

    def test_sticks_are_planned(self) -> None:
        """140 and three kerfs of 1/8 don't go into one stick of 96: two, $20."""
        (line,) = worked(self.framed())["yard"]["lines"]
        assert (line["amount"], line["cost"], line["proved"]) == (2, 20, True)

    def test_a_spoiled_piece_is_bought_once_more(self) -> None:
        """Five pieces, 40 + 40 + 40 + 30 + 30 = 180 and four kerfs: 40 + 40 and 40 + 30 and 30
        in sticks of 96 are two of 96 only if 40 + 30 + 30 > 96: 100 is, so three sticks."""
        (group,) = worked(self.framed())["saw"]["groups"]
        longest = group["cuts"][0]["of"]
        reply = worked(self.framed(ticks=[{"of": longest, "state": "spoiled"}]))
        (line,) = reply["yard"]["lines"]
        assert line["amount"] == 3
        spoiled = [cut for cut in reply["saw"]["groups"][0]["cuts"] if cut["spoiled"]]
        assert [cut["of"] for cut in spoiled] == [longest]

    def test_what_was_spoiled_is_cut_again_from_the_smallest_that_holds_it(self) -> None:
        """A piece of 40 out of 41, not out of 60, and not out of 39."""
        hand = [{"length": 60}, {"length": "41", "where": "rack"}, {"length": 39}]
        document = self.framed(ticks=[{"of": "e0/2#1", "state": "spoiled"}])
        document["stock"] = [STICKS | {"on_hand": hand}]
        cuts = [cut for group in worked(document)["saw"]["groups"] for cut in group["cuts"]]
        assert {cut["of"]: cut["again"] for cut in cuts if cut["again"]} == {
            "e0/2#1": "On hand: 1 of 41, rack"
        }

    def test_what_a_piece_meets_is_no_setting(self) -> None:
        """Four walls coped one over the other: square, one cope, two copes. Three settings."""
        walls = [{"length": length} for length in (100, 80, 100, 80)]
        inputs = {"walls": walls, "trim_thickness": "1/2", "closed": True, "inside_joint": "cope"}
        reply = worked(job(entry(0, "trim-run", inputs=inputs)))
        settings = [group["setting"] for group in reply["saw"]["groups"]]
        assert len(settings) == len(set(settings)) == 3

    @pytest.mark.parametrize(
        ("was", "words"),
        [(40.0625, "1/16 long now: trim it"), (39.9375, "1/16 short: cut another")],
    )
    def test_what_was_cut_to_an_older_size_says_so(self, was: float, words: str) -> None:
        (group,) = worked(self.framed())["saw"]["groups"]
        tick = {"of": group["cuts"][0]["of"], "state": "cut", "was": {"length": was}}
        (group,) = worked(self.framed(ticks=[tick]))["saw"]["groups"]
        assert group["cuts"][0]["stale"]["words"] == words

    @pytest.mark.parametrize(
        ("was", "words", "is_left"),
        [
            ({"length": 40, "width": 2.75}, "1/4 narrow: cut another", False),
            ({"length": 40.5, "width": 2.75}, "1/4 narrow: cut another", False),
            ({"length": 39.5, "width": 3.25}, "1/2 short: cut another", False),
            ({"length": 39.5, "width": 2.75}, "1/2 short, 1/4 narrow: cut another", False),
            ({"length": 40, "width": 3.25}, "1/4 wide now: rip it or cut another", True),
            (
                {"length": 40.5, "width": 3.25},
                "1/2 long, 1/4 wide now: take it down or cut another",
                True,
            ),
            ({"length": 40, "width": 3, "thickness": 5}, None, None),
        ],
    )
    def test_width_counts_as_length_does(
        self, was: dict[str, float], words: str | None, is_left: bool | None
    ) -> None:
        """Hand work: trim 3 wide, its longest piece 40, of a thickness that nobody said. Wood
        that is too small in any size is scrap, however long it is."""
        (group,) = worked(self.framed())["saw"]["groups"]
        tick = {"of": group["cuts"][0]["of"], "state": "cut", "was": was}
        (group,) = worked(self.framed(ticks=[tick]))["saw"]["groups"]
        stale = group["cuts"][0]["stale"]
        assert (stale and stale["words"]) == words
        assert (stale and stale["by"] > 0) == is_left

    def test_pieces_without_a_stock_are_named(self) -> None:
        reply = worked(job(entry(0, "mitered-frame", inputs=FRAME)))
        assert reply["warnings"][0].startswith("4 pieces have no stock")

    def test_items_alike_count_each_piece(self) -> None:
        document = self.framed()
        document["items"][0]["count"] = 3
        (group,) = worked(document)["saw"]["groups"]
        assert len(group["cuts"]) == 12

    def test_boards_are_counted_with_their_waste(self) -> None:
        """Four strips of 3 x (40 + 40 + 30 + 30) = 420 sq in, an inch thick: 2.917 bd ft, and a
        fifth more is 3.5."""
        board = {"id": "s", "title": "4/4 oak", "sold": "board", "thickness": "4/4", "waste": 20,
                 "price": 8}  # fmt: skip
        made = entry(0, "mitered-frame", inputs=FRAME, stock={"all": "s"})
        (line,) = worked(job(made, stock=[board]))["yard"]["lines"]
        assert line["amount"] == pytest.approx(3.5)
        assert line["cost"] == pytest.approx(28)


class TestDocument:
    @pytest.mark.parametrize(
        ("wrong", "place"),
        [
            ({"longpoint": "copy"}, "longpoint"),
            ({"schema": 9}, "schema"),
            ({"items": {}}, "items"),
            ({"items": [item(entries=[{"id": "e"}])]}, "items.0.entries.0.letter"),
            ({"title": "x" * 1_000_000}, "title"),
            ({"stock": [{"id": "s", "title": "t", "sold": "by eye"}]}, "stock.0.sold"),
            ({"ticks": [{"of": "a", "state": "lost"}]}, "ticks.0.state"),
            ({"items": [item()] * 2}, "items.1.id"),
            ({"items": [item(id=f"i{at}") for at in range(101)]}, "items"),
        ],
    )  # fmt: skip
    def test_each_fault_is_named_at_its_place(self, wrong: dict[str, Any], place: str) -> None:
        with pytest.raises(Refusal) as refused:
            check(job() | wrong)
        assert place in [error.field for error in refused.value.errors]

    @pytest.mark.parametrize("wrong", [None, [], 7, "job"])
    def test_what_is_no_job_is_refused(self, wrong: object) -> None:
        with pytest.raises(Refusal):
            check(wrong)

    def test_names_it_does_not_know_are_let_pass(self) -> None:
        check(job() | {"later": {"a": 1}})
