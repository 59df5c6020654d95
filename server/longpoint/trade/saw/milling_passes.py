"""From rough to finished thickness: how many passes, and what does each one leave?

Taking alike from both faces keeps a board flatter, since both sides dry and spring alike.
"""

import math

from ..tool import Answer, Choice, Drawing, Given, Length, Refusal, Scale, Tool, square

MOST = 200
SMALL_MACHINE = 1 / 16
HEAVY_MACHINE = 1 / 8
THINNEST = 3 / 16
SHORTEST = 7.0
MOST_TAGS = 8
_HAIR = 1e-9  # Of a pass: float noise must not add one where the cuts come out exactly.


class Milling:
    """Passes of a planer, in inches.

    Parameters
    ----------
    rough, finished, per_pass : float
        Thickness before and after; most that a pass takes.
    light : str
        Which pass takes the odd rest: ``last``, ``first``, or ``equal`` for all alike.
    both : bool
        The board is turned over after every pass.
    """

    def __init__(
        self, rough: float, finished: float, per_pass: float, light: str, both: bool
    ) -> None:
        self.rough = rough
        self.finished = finished
        self.total = rough - finished
        self.passes = max(1, int(math.ceil(self.total / per_pass - _HAIR)))
        self.per_pass = per_pass
        self.light = light
        self.both = both

    def takes(self) -> "list[float]":
        """Return what each pass takes, in order."""
        if self.light == "equal":
            return [self.total / self.passes] * self.passes
        full = [self.per_pass] * (self.passes - 1)
        rest = self.total - self.per_pass * (self.passes - 1)
        return full + [rest] if self.light == "last" else [rest] + full

    def leaves(self) -> "list[float]":
        """Return the thickness after each pass; the last one is the finished thickness."""
        left, thickness = [], self.rough
        for take in self.takes()[:-1]:
            thickness -= take
            left.append(thickness)
        return left + [self.finished]

    def face(self, index: int) -> int:
        """Return which face a pass planes: 2 first, since flattened face 1 lies down."""
        return 1 if self.both and index % 2 else 2

    def off_face(self, face: int) -> float:
        """Return what comes off one face in all."""
        return sum([take for index, take in enumerate(self.takes()) if self.face(index) == face])


def work(given: Given, scale: Scale) -> Answer:
    """Return the passes from rough to finished, and the length to leave for snipe."""
    milling = _milling(given, scale)
    answer = Answer(scale)
    answer.count("passes", milling.passes, label="Passes", lead=True)
    answer.length("total", milling.total, label="To take off", lead=True, fine=True)
    answer.length("first_pass", milling.takes()[0], label="First pass takes", fine=True)
    answer.length("last_pass", milling.takes()[-1], label="Last pass takes", fine=True)
    answer.length("off_face_1", milling.off_face(1), label="Off face 1", fine=True)
    answer.length("off_face_2", milling.off_face(2), label="Off face 2", fine=True)
    answer.draw(_end_view(milling, scale))
    _snipe(answer, given, milling)
    _table(answer, milling)
    _notes(answer, milling)
    _cautions(answer, given, milling)
    return answer


def _milling(given: Given, scale: Scale) -> Milling:
    rough, finished = given.number("rough"), given.number("finished")
    fine = scale.finer()
    if rough <= finished:
        raise Refusal(
            "finished",
            f"A board {fine.length(rough)} thick can't finish at {fine.length(finished)}: ask for "
            f"less than {fine.length(rough)}, take thicker stock, or glue up.",
        )
    per_pass = given.number("per_pass")
    if (rough - finished) / per_pass > MOST:
        raise Refusal(
            "per_pass",
            f"{fine.decimal(per_pass)} a pass takes more than {MOST} passes: take more a pass, "
            "or saw the board thinner first.",
        )
    both = given.text("faces") == "both"
    return Milling(rough, finished, per_pass, given.text("light"), both)


def _table(answer: Answer, milling: Milling) -> None:
    fine = answer.scale.finer()
    rows = [
        [str(index + 1), str(milling.face(index)), fine.length(take), fine.length(leaves)]
        for index, (take, leaves) in enumerate(zip(milling.takes(), milling.leaves()))
    ]
    answer.table("Pass by pass", ["Pass", "Face up", "Takes", "Leaves"], rows)


def _snipe(answer: Answer, given: Given, milling: Milling) -> None:
    """Add what the ends cost: extra length that is cut off after planing."""
    snipe, part = given.number("snipe"), given.maybe("part_length")
    answer.length("snipe_extra", 2 * snipe, label="Extra length for snipe")
    if snipe:
        answer.note(
            f"Leave {answer.scale.length(snipe)} at each end beyond the part, and cut it off "
            "after the last pass: the planer dips there as the board meets and leaves its rollers."
        )
    if part is None:
        return
    length = part + 2 * snipe
    ends = square("cut off after planing" if snipe else "")
    answer.length("rough_length", length, label="Rough length")
    answer.piece("1", "Blank to plane", length, (ends, ends), thickness=milling.rough)
    answer.draw(_side_view(milling, part, snipe, answer.scale))
    if length < SHORTEST:
        answer.caution(
            f"{answer.scale.length(length)} is shorter than the {answer.scale.length(SHORTEST)} "
            "a small planer's manual names as least: the board must reach from roller to roller. "
            "Plane a longer piece and cut parts from it."
        )


def _notes(answer: Answer, milling: Milling) -> None:
    answer.note(
        "Flatten face 1 first, by jointer or hand plane: a planer makes faces parallel, not flat. "
        "Face 1 goes down on the table for pass 1, so face 2 is planed first."
    )
    if milling.both:
        answer.note(
            "Turn the board over and end for end between passes, so that the knives still meet "
            "the grain the same way and both faces lose alike."
        )
    else:
        answer.note("All from one face: stop at once if the board begins to cup.")
    takes = milling.takes()
    if max(takes) - min(takes) > _HAIR:
        answer.note(f"The {milling.light} pass takes the rest, so that all the others are full.")
    answer.note(
        "Run every part of the job through at one setting before you change it, and a test piece "
        "with them: all finish alike."
    )


def _cautions(answer: Answer, given: Given, milling: Milling) -> None:
    scale = answer.scale.finer()
    biggest = max(milling.takes())
    if biggest > HEAVY_MACHINE + _HAIR:
        answer.caution(
            f"{scale.length(biggest)} a pass is more than the {scale.length(HEAVY_MACHINE)} even a "
            "heavy planer is meant to take: kickback, tear-out, a stalled cut. Take less."
        )
    elif biggest > SMALL_MACHINE + _HAIR:
        answer.caution(
            f"{scale.length(biggest)} a pass is more than the {scale.length(SMALL_MACHINE)} a "
            "small planer takes at its full width: take less on wide or hard boards."
        )
    if given.number("finished") < THINNEST - _HAIR:
        answer.caution(
            f"Thinner than {scale.length(THINNEST)} a board can break up under the knives: plane "
            "it fixed to a flat carrier board, or as the machine's manual says."
        )


def _end_view(milling: Milling, scale: Scale) -> Drawing:
    """Draw the board from its end: what each pass takes, and what stays."""
    fine, high = scale.finer(), milling.rough
    wide = high * 3
    view = Drawing(
        "The board from its end, face 2 up",
        f"{milling.passes} passes from {fine.length(high)} to {fine.length(milling.finished)}.",
    )
    core = (milling.off_face(2), high - milling.off_face(1))
    view.box("stock", 0, core[0], wide, core[1])
    layers = _layers(milling)
    for top, bottom in layers:
        view.box("waste", 0, top, wide, bottom)
    # After all the layers, whose hatching would run through the numbers.
    for index, (top, bottom) in enumerate(layers if milling.passes <= MOST_TAGS else []):
        across = wide * (index + 1) / (milling.passes + 1)
        view.tag((across, (top + bottom) / 2), str(index + 1))
    view.dimension((0, high), (0, 0), fine.length(high))
    view.dimension((wide, core[0]), (wide, core[1]), fine.length(milling.finished))
    return view


def _layers(milling: Milling) -> "list[tuple[float, float]]":
    """Return the layer each pass takes: its upper and lower edge, down from rough face 2."""
    layers, top, bottom = [], 0.0, milling.rough
    for index, take in enumerate(milling.takes()):
        if milling.face(index) == 2:
            layers.append((top, top + take))
            top += take
        else:
            layers.append((bottom - take, bottom))
            bottom -= take
    return layers


def _side_view(milling: Milling, part: float, snipe: float, scale: Scale) -> Drawing:
    high, long = milling.finished, part + 2 * snipe
    view = Drawing(
        "The blank from its edge",
        f"A part {scale.length(part)} long from a blank {scale.length(long)} long.",
    )
    view.box("stock", snipe, 0, snipe + part, high)
    if snipe:
        view.box("waste", 0, 0, snipe, high).box("waste", snipe + part, 0, long, high)
        view.dimension((0, high), (snipe, high), scale.length(snipe), -1)
    view.dimension((0, 0), (long, 0), scale.length(long), 2)
    view.dimension((snipe, 0), (snipe + part, 0), scale.length(part))
    return view


TOOL = Tool(
    slug="milling-passes",
    place="saw",
    title="Milling passes",
    question="From rough to finished thickness: how many passes, and what does each one leave?",
    finds=("planer", "jointer", "plane", "surface"),
    inputs=[
        Length("rough", "Rough thickness", help="At the thickest spot, once face 1 is flat."),
        Length("finished", "Finished"),
        Length("per_pass", "A pass takes", default="1/16", help="At most."),
        Choice(
            "light",
            "Odd rest",
            [("last", "last pass"), ("first", "first pass"), ("equal", "all alike")],
            default="last",
        ),
        Choice(
            "faces",
            "Planed",
            [("both", "both faces, by turns"), ("one", "one face only")],
            default="both",
        ),
        Length("part_length", "Part length", optional=True, help="To say how long to leave it."),
        Length("snipe", "Snipe, each end", default=3, least=0, most=24),
    ],
    work=work,
    example={"rough": "1 1/16", "finished": "3/4", "part_length": "30"},
    cautions=[
        "Planer: stand to one side, let go once the rollers have the board, and never put a hand "
        "or an eye to the opening while it runs. Hearing protection on, dust drawn off.",
    ],
    sources=[
        "1/32 to 1/16 a pass, 1/16 at full width on a small machine, 1/8 the limit of a heavy one: "
        "planer explainers and the manual of a 12 1/2 in planer.",
        "Least piece 3/16 thick and 7 long, ends left long against snipe: the same manual.",
        "Snipe of 2 to 3 inches at each end: from memory.",
        "Both faces by turns, grain kept the same way, a light last pass: common practice, no "
        "source.",
    ],
)
