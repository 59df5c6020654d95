"""The answer for cup hinges of cupboard doors: centers, bores, and the lines on the case."""

from ...tool import Answer, Given, Scale
from .cup_views import back_view, bore_view
from .cups import THIN, Cups, cup_centers, usual_cups
from .missing import refuse_unless_known
from .words import cup_verdict

CUP_SOURCES = [
    "Cup hinges: distance and depth are those of the hinge's own sheet. A bore of 35 mm, 2 hinges "
    "to 40 inches of leaf height, 3 to 60, 4 to 80: from memory of makers' charts, which go by "
    "weight too. Outer cups farther apart than the leaf is wide: makers' advice, from memory.",
]
CUP_PAIRS = (("leaf_height",), ("cup_distance", "cup_depth"))


def cup_answer(given: Given, scale: Scale) -> Answer:
    """Return the cups' centers and bores as far as they are known."""
    high, thick = given.maybe("leaf_height"), given.maybe("door_thickness")
    cups = Cups(
        given.number("cup_bore"),
        given.maybe("cup_distance"),
        given.maybe("cup_depth"),
        thick,
        scale,
    )
    if high is None and (cups.center is None or cups.depth is None):
        refuse_unless_known(given, CUP_PAIRS)
    centers = None
    if high is not None:
        count = given.maybe_count("hinge_count") or usual_cups(high)
        centers = cup_centers(high, cups.bore, count, given.number("end_offset"), scale)
    answer = Answer(scale)
    answer.verdict(*cup_verdict(cups, centers, scale))
    _figures(answer, cups, centers)
    _marks(answer, cups, centers, given.maybe("leaf_over"), given.maybe("plate_setback"))
    if high is not None and centers is not None:
        answer.draw(back_view(cups, high, centers, scale))
    if cups.center is not None and cups.depth is not None:
        drawn = thick or cups.depth + THIN
        answer.draw(bore_view(cups, cups.center, cups.depth, drawn, scale))
    _notes(answer, cups)
    return answer


def _figures(answer: Answer, cups: Cups, centers: "list[float] | None") -> None:
    answer.length("cup_bore_size", cups.bore, fine=True)
    if cups.center is not None:
        answer.length("cup_center", cups.center, lead=True, fine=True)
    if cups.depth is not None:
        answer.length("cup_bore_depth", cups.depth, lead=cups.center is None, fine=True)
    if cups.left is not None:
        answer.length("cup_wood_left", cups.left, fine=True)
    if centers is not None:
        answer.count("hinge_count", len(centers), lead=cups.center is None)
        answer.length("top_center", centers[0])
        answer.length("bottom_center", centers[0])


def _marks(
    answer: Answer,
    cups: Cups,
    centers: "list[float] | None",
    over: "float | None",
    plate: "float | None",
) -> None:
    for number, center in enumerate(centers or []):
        answer.mark(str(number + 1), f"Cup {number + 1}, center", "leaf top", center)
    if cups.center is not None:
        answer.mark("1", "Cups, center line", "hinge edge", cups.center, fine=True)
    if over is not None:
        for number, center in enumerate(centers or []):
            label = f"Plate {number + 1}, center"
            answer.mark(str(number + 1), label, "top of the case side", center - over)
    if plate is not None:
        answer.mark("1", "Plates, hole line", "front of the case side", plate, fine=True)


def _notes(answer: Answer, cups: Cups) -> None:
    fine = answer.scale.finer()
    if cups.center is None or cups.depth is None:
        answer.note("How far in and how deep the cups are bored stands on the hinge's own sheet.")
    if cups.left is not None and cups.left < THIN:
        answer.caution(
            f"Only {fine.length(cups.left)} is left behind the cup: set the drill's stop on a "
            "scrap of the same thickness, and mind the point of the bit."
        )
    answer.note(
        "Bore from behind at a drill press or with a stop; try overlay and gap with one hinge in "
        "scrap. Keep the outer cups farther apart than the leaf is wide."
    )
