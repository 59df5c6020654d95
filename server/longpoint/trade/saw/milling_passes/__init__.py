"""From rough to finished thickness: how many passes, and what does each one leave?

Taking alike from both faces keeps a board flatter, since both sides dry and spring alike.
"""

from ...tool import Answer, Choice, Given, Gives, Length, Refusal, Scale, Tool, square
from .passes import HAIR, Milling
from .views import end_view, side_view

MOST = 200
SMALL_MACHINE = 1 / 16
HEAVY_MACHINE = 1 / 8
THINNEST = 3 / 16
SHORTEST = 7.0


def work(given: Given, scale: Scale) -> Answer:
    """Return the passes from rough to finished, and the length to leave for snipe."""
    rough, finished, per_pass = [given.number(x) for x in ("rough", "finished", "per_pass")]
    _refuse(rough, finished, per_pass, scale)
    milling = Milling(rough, finished, per_pass, given.text("light"), given.text("faces") == "both")
    snipe, part = given.number("snipe"), given.maybe("part_length")
    answer = Answer(scale)
    _verdict(answer, milling, None if part is None else part + 2 * snipe)
    answer.count("passes", milling.passes, lead=True)
    answer.length("total", milling.total, lead=True, fine=True)
    answer.length("first_pass", milling.takes()[0], fine=True)
    answer.length("last_pass", milling.takes()[-1], fine=True)
    answer.length("off_face_1", milling.off_face(1), fine=True)
    answer.length("off_face_2", milling.off_face(2), fine=True)
    answer.draw(end_view(milling, scale))
    _snipe(answer, milling, snipe, part)
    _table(answer, milling)
    _notes(answer, milling)
    _cautions(answer, milling)
    return answer


def _refuse(rough: float, finished: float, per_pass: float, scale: Scale) -> None:
    fine = scale.finer()
    if rough <= finished:
        raise Refusal(
            "finished",
            f"A board {fine.length(rough)} thick can't finish at {fine.length(finished)}: ask for "
            f"less than {fine.length(rough)}, take thicker stock, or glue up.",
        )
    if (rough - finished) / per_pass > MOST:
        raise Refusal(
            "per_pass",
            f"{fine.decimal(per_pass)} a pass takes more than {MOST} passes: take more a pass, "
            "or saw the board thinner first.",
        )


def _verdict(answer: Answer, milling: Milling, blank: "float | None") -> None:
    """Say how many passes of what depth, off which faces, and how long to leave the blank."""
    what = _passes_words(milling, answer.scale)
    faces = "alternating faces" if milling.both and milling.passes > 1 else "face 2 only"
    to = " down to " + answer.scale.finer().length(milling.finished)
    long = "" if blank is None else "; blank length " + answer.scale.length(blank)
    answer.verdict(
        f"{what}{to}, {faces}{long}", f"{what}, {faces}{long}", f"{what}{long}", f"{what}, {faces}"
    )


def _passes_words(milling: Milling, scale: Scale) -> str:
    say, takes = scale.finer().length, milling.takes()
    if milling.passes == 1:
        return f"One pass of {say(milling.total)}"
    if milling.is_even:
        return f"{milling.passes} passes of {say(takes[0])}"
    rest = takes[-1] if milling.light == "last" else takes[0]
    return f"{milling.passes} passes of {say(milling.per_pass)} (the {milling.light} {say(rest)})"


def _table(answer: Answer, milling: Milling) -> None:
    fine = answer.scale.finer()
    rows = [
        [str(index + 1), str(milling.face(index)), fine.length(take), fine.length(leaves)]
        for index, (take, leaves) in enumerate(zip(milling.takes(), milling.leaves()))
    ]
    answer.table("Pass by pass", ["Pass", "Face up", "Takes", "Leaves"], rows)


def _snipe(answer: Answer, milling: Milling, snipe: float, part: "float | None") -> None:
    """Add what the ends cost: extra length that is cut off after planing."""
    answer.length("snipe_extra", 2 * snipe)
    if snipe:
        answer.note(
            f"Leave {answer.scale.length(snipe)} at each end beyond the part, and cut it off "
            "after the last pass: the planer dips there as the board meets and leaves its rollers."
        )
    if part is None:
        return
    length = part + 2 * snipe
    ends = square("cut off after planing" if snipe else "")
    answer.length("rough_length", length)
    answer.piece("1", "Blank to plane", length, (ends, ends), thickness=milling.rough)
    answer.draw(side_view(milling, part, snipe, answer.scale))
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
    if not milling.is_even:
        answer.note(f"The {milling.light} pass is the lighter one: all others take the full depth.")
    answer.note(
        "Run every part of the job through at one setting before you change it, and a test piece "
        "with them: all finish alike."
    )


def _cautions(answer: Answer, milling: Milling) -> None:
    scale = answer.scale.finer()
    biggest = max(milling.takes())
    if biggest > HEAVY_MACHINE + HAIR:
        answer.caution(
            f"{scale.length(biggest)} a pass is more than the {scale.length(HEAVY_MACHINE)} even a "
            "heavy planer is meant to take: kickback, tear-out, a stalled cut. Take less."
        )
    elif biggest > SMALL_MACHINE + HAIR:
        answer.caution(
            f"{scale.length(biggest)} a pass is more than the {scale.length(SMALL_MACHINE)} a "
            "small planer takes at its full width: take less on wide or hard boards."
        )
    if milling.finished < THINNEST - HAIR:
        answer.caution(
            f"Thinner than {scale.length(THINNEST)} a board can break up under the knives: plane "
            "it fixed to a flat carrier board, or as the machine's manual says."
        )


TOOL = Tool(
    slug="milling-passes",
    place="saw",
    title="Milling passes",
    question="From rough to finished thickness: how many passes, and what does each one leave?",
    finds=("planer", "jointer", "plane", "surface", "dress", "s2s", "mill down", "resaw"),
    inputs=[
        Length("rough", "Rough thickness", help="At the thickest spot, once face 1 is flat."),
        Length("finished", "Finished thickness"),
        Length("per_pass", "Max depth per pass", default="1/16"),
        Choice(
            "light",
            "Lighter pass",
            [("last", "the last"), ("first", "the first"), ("equal", "all alike")],
            default="last",
            help="Where the passes don't come out even.",
        ),
        Choice(
            "faces",
            "Planed",
            [("both", "both faces, alternating"), ("one", "one face only")],
            default="both",
        ),
        Length("part_length", "Part length", optional=True, help="To say how long to leave it."),
        Length("snipe", "Snipe, each end", default=3, least=0, most=24),
    ],
    work=work,
    gives=[
        Gives("passes", "count", "Passes"),
        Gives("total", "length", "To take off", short="off"),
        Gives("first_pass", "length", "First pass takes"),
        Gives("last_pass", "length", "Last pass takes"),
        Gives("off_face_1", "length", "Off face 1"),
        Gives("off_face_2", "length", "Off face 2"),
        Gives("snipe_extra", "length", "Extra length for snipe"),
        Gives("rough_length", "length", "Length of the blank", sometimes=True),
    ],
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
        "Alternating faces, grain kept the same way, a light last pass: common practice, no "
        "source.",
    ],
)
