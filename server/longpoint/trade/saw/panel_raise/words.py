"""What panel raise says: the setup in one line, the seat in the groove, what to beware of."""

from ...cautions import SAW
from ...ends import square
from ...lengths import brief_angle
from ...refusal import Refusal
from .section import MilledPanel, Raised, SawnPanel

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...answer import Answer
    from ...lengths import Scale

THIN_EDGE = 1 / 8
FLUSH = 1 / 32
"""Inches that a field may stand proud before it is remarked on."""


def say_sawn(answer: "Answer", panel: SawnPanel) -> None:
    """Say what is set on the saw."""
    scale = answer.scale
    fine = scale.finer().length
    angle = brief_angle(panel.angle)
    set_up = f"Blade at {angle}, {scale.length(panel.width)} high, {fine(panel.edge)} off the fence"
    near = f"Blade at {angle}, {fine(panel.edge)} off the fence"
    scored = f"; score {fine(panel.step)}" if panel.step else ""
    seats = _seat_words(panel, answer.scale)
    answer.verdict(*[words + scored + seat for words in (set_up, near) for seat in seats])
    answer.angle("saw_bevel", panel.angle, lead=True)
    answer.length("fence", panel.edge, lead=True, fine=True)
    answer.length("blade_height", panel.width)
    if panel.step:
        answer.length("score_depth", panel.step, fine=True)
        answer.note(
            "Score around the field first: panel face down, blade square, its far side "
            f"{scale.length(panel.width)} from the fence."
        )
    answer.length("mouth_slack", panel.mouth_slack, fine=True)
    answer.note(
        "Then stand the panel on edge, its back to a tall fence, the blade leaning away from the "
        "fence. The tongue is a wedge: it fills the groove when it is pushed home, so swelling "
        "never splits the frame."
    )
    if panel.edge < THIN_EDGE:
        answer.caution(
            f"An edge only {fine(panel.edge)} thick breaks easily: show more of the bevel, or "
            "use a thinner blank."
        )
    answer.caution(
        "On edge: a tall fence, featherboards, a zero-clearance insert, and a panel large enough "
        "to hold well away from the blade."
    )
    answer.caution(SAW)


def _seat_words(panel: Raised, scale: "Scale") -> "list[str]":
    """Return the groove and the play that the panel is raised for: they have usual sizes."""
    depth, play = panel.seat.depth, panel.seat.play
    long = f"; groove {scale.length(depth)} deep, play {scale.length(play)}"
    return [long, f"; groove {scale.number(depth)}, play {scale.given(play)}"]


def say_milled(answer: "Answer", panel: MilledPanel) -> None:
    """Say what the cutter takes."""
    scale = answer.scale
    fine = scale.finer().length
    depth = panel.deep - panel.relief
    times = f" in {panel.passes} passes" if panel.passes > 1 else ""
    cut = f"Take {fine(depth)} off the face{times}: tongue {scale.decimal(panel.tongue)}"
    back = f"; rabbet the back {fine(panel.relief)}" if panel.relief else ""
    short = f"; rabbet back {fine(panel.relief)}" if panel.relief else ""
    seats = _seat_words(panel, scale)
    brief = cut.replace(" off the face", " off") + short
    answer.verdict(*[words + seat for words in (cut + back, brief) for seat in seats])
    answer.length("cut_depth", depth, lead=True, fine=True)
    answer.length("tongue", panel.tongue, lead=True, fine=True)
    answer.count("passes", panel.passes)
    if panel.relief:
        answer.length("back_relief", panel.relief, fine=True)
        answer.note(
            f"The profile is {fine(panel.relief)} lower than this cut is deep: rabbet the back "
            "that much, as wide as the groove is deep, or the tongue is too thick."
        )
    if panel.uncut:
        answer.note(
            f"The blank is {fine(panel.uncut)} too thin for the whole profile: that much of its "
            "upper end stays uncut and the bevel is narrower."
        )
    if panel.room < panel.seat.play - 1e-9:
        answer.caution(
            f"The cutter's flat lets the panel swell only {fine(panel.room)} into each groove, "
            f"less than its play of {fine(panel.seat.play)}: use a longer flat or more play."
        )
    answer.caution(
        "A raising cutter belongs in a table, at the low speed its maker states, fed against its "
        "turning, in lighter passes, behind a guard and featherboards; never by hand."
    )


def say_seat(answer: "Answer", panel: Raised, stock: "float | None", relief: float) -> None:
    """Say how the panel sits in its frame, `stock` thick where that is known."""
    answer.length("tongue_in", panel.inside, fine=True)
    answer.length("shows", panel.shows)
    answer.length("bevel_width", panel.width)
    answer.mark("1", "Field's edge", "panel's edge", panel.width)
    if stock is None:
        return
    behind = panel.behind(stock, relief)
    way = "Field behind" if behind >= 0 else "Field proud of"
    answer.length("field_behind", abs(behind), label=way + " the frame's face", fine=True)
    if behind < -FLUSH:
        fine = answer.scale.finer().length
        answer.note(
            f"The field stands {fine(-behind)} proud of the frame: a blank "
            f"{fine(panel.blank + behind)} thick, or its back rabbeted that much, brings it "
            "flush."
        )


def say_field(answer: "Answer", panel: Raised, wide: "float | None", high: "float | None") -> None:
    """Say the field's size as far as the panel's is known, and the piece where all of it is.

    Raises
    ------
    Refusal
        A panel too small for two bevels.
    """
    for field, figure, size in (
        ("panel_width", "field_width", wide),
        ("panel_height", "field_height", high),
    ):
        if size is None:
            continue
        left, length = size - 2 * panel.width, answer.scale.length
        if left <= 0:
            raise Refusal(
                field,
                f"Two bevels of {length(panel.width)} leave no field on a panel {length(size)}: "
                f"make it larger than {length(2 * panel.width)}.",
            )
        answer.length(figure, left)
    if wide is not None and high is not None:
        ends = square(), square()
        answer.piece("1", "Panel", high, ends, width=wide, thickness=panel.blank, role="panel")
