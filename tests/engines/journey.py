"""One way through the whole app, written once and gone in each engine.

All numbers are hand work, beside each step.
"""

import json

from tests.engines.engine import Engine
from tests.phone.app import READY, hash_of
from tests.phone.test_print import HINGES
from tests.phone.test_search import ALL, SEARCHES, STEPS

# A slow thumb leaves answers of a half-typed width in the list: this one is of all that was typed.
WHOLE = "Opening width 27 and 13/16 · Opening height 60 and 1/8 · Trim width 2 and 1/2"
INCHES, MILLIMETERS = "fieldset:nth-of-type(1)", "fieldset:nth-of-type(2)"


class Journey:
    """The app at `address`, in one engine."""

    def __init__(self, engine: Engine, address: str) -> None:
        self.engine = engine
        self.address = address

    def open(self, fragment: str, title: str) -> None:
        """Open an address of the app and wait until its screen is up."""
        self.engine.open(f"{self.address}/{fragment}")
        self.engine.titled(title)

    def answer(self, *words: str) -> None:
        """Wait until the card says these words, in this order, and the answer stands."""
        self.engine.says("#answer:not(.withdrawn) [role=status]", *words)
        # What comes last moves what lies below it.
        self.engine.says(".result lp-drawing:not(.ghost) svg.drawing")

    def enter(self, css: str, text: str) -> None:
        """Type into a field and close the pad."""
        self.engine.fill(css, text)
        self.engine.escape()
        self.engine.gone(".pad")

    def press(self, *keys: str) -> None:
        """Tap keys of the pad, by their names."""
        for key in keys:
            self.engine.tap(".pad button", key)

    def pick(self, sixteenths: int) -> None:
        """Tap the enlarged inch, a share of the way from its first stroke to its last."""
        self.engine.place(".pad .inch")
        strokes = self.engine.ask("boxes", ".pad .inch .tick")
        (first, top, _, height), *_, (last, *_) = strokes
        self.engine.drag([(first + (last - first) * sixteenths / 16, top + height / 2)])

    def first_visit(self) -> None:
        self.open("", "At the yard")
        self.engine.says("[role=status]", READY)

    def a_frame_by_taps(self) -> None:
        """Inside a recess without play the top is as long as the recess is wide: 27 13/16."""
        engine = self.engine
        engine.tap("nav a", "Saw")
        engine.tap("a", "Trim around an opening or inside a recess: how long is each piece?")
        engine.titled("Mitered frame")
        engine.tap("label.option", "inside a recess")
        engine.tap("#field-opening_width")
        self.press("2", "7")
        self.pick(13)
        engine.holds("#field-opening_width", "27 13/16")
        engine.says(".pad", "706 mm")  # 27.8125 x 25.4 = 706.4
        self.press("Next", "6", "0")
        self.pick(2)
        engine.holds("#field-opening_height", "60 1/8")
        self.press("Next", "2")
        self.pick(8)
        engine.holds("#field-trim_width", "2 1/2")
        self.press("Close the pad")
        engine.gone(".pad")
        self.answer("long point", "27 and 13/16")

    def millimeters_and_earlier_answers(self) -> None:
        """31 in = 787.4 mm; 27 13/16 in = 706.4 mm."""
        engine = self.engine
        # An answer is kept once it has stood for a moment.
        engine.tap("#answer button", "Earlier answers")
        engine.says("dialog .line", WHOLE)
        engine.tap("dialog button", "Close")
        engine.gone("dialog")
        self.enter("#field-opening_width", "31")
        self.answer("long point", "31")
        self.show_in(MILLIMETERS, "1")
        self.answer("787 mm full")
        engine.tap("#answer button", "Earlier answers")
        engine.tap("dialog button", WHOLE)
        engine.gone("dialog")
        self.answer("706 mm full")
        self.show_in(INCHES, "1/16")
        engine.holds("#field-opening_width", "27 13/16")
        self.answer("27 and 13/16")

    def show_in(self, units: str, step: str) -> None:
        """Choose how lengths are shown."""
        self.engine.tap("button", "Units and settings")
        self.engine.tap(f"dialog {units} .option", step)
        self.engine.tap("dialog button", "Close")
        self.engine.gone("dialog")

    def rows(self) -> None:
        """Coped trim in a room of 144 x 120 is marked as long as the walls are."""
        engine = self.engine
        self.open("#/saw/trim-run?trim_thickness=5/8", "Trim run")
        engine.tap("button", "Add a wall")
        engine.says(".pad", "Length")
        self.press("1", "4", "4", "Close the pad")
        engine.tap("button", "Duplicate wall 1")
        engine.holds("#field-walls-1-length", "144")
        self.enter("#field-walls-1-length", "120")
        self.answer("144")
        engine.says("section[aria-label=Cut] li", "120")

    def slide(self) -> None:
        """The middle of 0 to 180 degrees is 90."""
        engine = self.engine
        swing = {"leaf_width": "24", "door_thickness": "1 3/8", "strike_gap": "1/8"}
        self.open(hash_of("site", "door-swing", swing), "Door swing")
        self.answer()
        left, top, width, height = engine.place("#slide-opening")
        across = [left + share * width for share in (1 / 6, 0.3, 0.4, 0.5)]
        engine.drag([(x, top + height / 2) for x in across])
        drawn = "document.querySelector('.result svg.drawing desc')?.textContent"
        engine.wait(f"(words) => {drawn}?.includes(words)", "open 90.0°")
        engine.holds("#slide-opening", "90")

    def search_and_stop(self) -> None:
        """Each step of the search waits until it is let go, so that it goes on under the thumb."""
        engine = self.engine
        place, slug, inputs = SEARCHES[0]
        engine.run(f"() => {{ {STEPS} }}")
        typed = {key: v if isinstance(v, str) else json.dumps(v) for key, v in inputs.items()}
        self.open(hash_of(place, slug, typed), "Stick plan")
        engine.says("#answer", "Looking for a better answer")
        engine.run("() => window.letGo(3)")
        engine.wait("() => window.asked > 3")
        engine.tap("#answer button", "Stop")
        engine.says("#answer", "Stopped: a better answer may exist")
        engine.run("(steps) => window.letGo(steps)", ALL)
        asked = engine.run("() => window.asked")
        engine.tap("#answer button", "Go on")
        engine.wait("(before) => window.asked > before + 3", asked)
        engine.says("#answer:not(.withdrawn)", "kerf 1/8")

    def a_job_from_a_pattern(self) -> None:
        """Three frames in 96 x 34, 3 between: (96 - 4 x 3) / 3 = 28 wide, 34 - 2 x 3 = 28 high."""
        engine = self.engine
        self.open("#/job", "Jobs")
        engine.tap("button", "New job")
        engine.fill("dialog label:first-of-type input", "Boot room")
        engine.tap("dialog button", "Done")
        engine.tap("button", "An item")
        engine.tap("dialog button", "Wall frames")
        engine.gone("dialog")
        engine.tap(".item a", "A Wall frames")
        engine.titled("Wall frames")
        for name, text in (("length", "96"), ("height", "34"), ("trim_width", "1"), ("count", "3")):
            self.enter(f"#field-{name}", text)
        self.answer("28")
        engine.tap("nav a", "Saw")
        engine.tap(".cutgroup .tickrow:first-child .tickbox", "Cut: A1")
        engine.says("[role=status]", "A1", "cut")
        self.is_cut()

    def is_cut(self) -> None:
        self.engine.says(".tickrow.ticked .cutlength", "28")

    def printed_at_full_size(self) -> None:
        """Give the page to the printer; the test looks at what comes out."""
        given = {name: str(value) for name, value in HINGES.inputs.items()}
        self.open(hash_of("site", "hinge-layout", given), "Hinge layout")
        self.answer()
        self.engine.run("() => { window.print = () => {} }")
        self.engine.tap("button", "Print at full size")

    def saved_and_restored(self) -> None:
        """What was saved at one address is kept at another, where nothing was."""
        engine = self.engine
        self.open("#/saw", "At the saw")
        engine.says("main", "Panel raise")  # The last question: what lies below moves no more.
        engine.tap("button", "Save to a file")
        file = engine.file_saved()
        other = Journey(engine, self.address.replace("127.0.0.1", "localhost"))
        other.first_visit()
        other.open("#/saw", "At the saw")
        engine.gone(".jobsheet")
        engine.give_file(".filebutton input", file)
        engine.says("[role=status]", "Everything in the file is kept here")
        other.stands()
        self.stands()

    def stands(self) -> None:
        """Form, answer and the tick are as they were left."""
        engine = self.engine
        self.open("#/saw/mitered-frame", "Mitered frame")
        engine.holds("#field-opening_width", "27 13/16")
        self.answer("27 and 13/16")
        self.open("#/saw", "At the saw")
        self.is_cut()

    def with_the_server_gone(self) -> None:
        """A reload, and a question never asked: 0.085 - (3/32 - 1/16) / 2 = 0.069375 deep."""
        self.engine.reload()
        self.stands()
        inputs = {
            "leaf_height": "79", "door_thickness": "1 3/8", "hinge_height": "3 1/2",
            "leaf_thickness": "0.085", "hinge_gap": "3/32",
        }  # fmt: skip
        self.open(hash_of("site", "hinge-layout", inputs), "Hinge layout")
        self.answer("Mortise depth", "1/16", "full")

    def restarted(self) -> None:
        """What was typed, and the units, outlive the browser."""
        engine = self.engine
        self.stands()
        self.show_in(MILLIMETERS, "1")
        self.open("#/saw/mitered-frame", "Mitered frame")
        self.enter("#field-opening_height", "3/0")
        engine.says(".message", "has a 0 under the line")
        engine.keeps("3/0")
        engine.end()
        engine.start()
        self.open("#/saw/mitered-frame", "Mitered frame")
        engine.holds("#field-opening_width", '27 13/16"')
        engine.holds("#field-opening_height", "3/0")
        self.enter("#field-opening_height", "1500")
        self.answer("706 mm full")
