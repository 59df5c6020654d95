"""Crown at one corner: its settings, and the pieces of both walls where they are given."""

from ...cautions import warn_if_sharp
from ...geometry.laid_on_saw import flat
from ...lengths import brief_angle, show_angle
from ...tool import Answer, Refusal, Scale, miter, square
from .views import flat_on_saw, nested_on_saw, section
from .words import COPED, add_saw_notes, add_settings, add_sizes, add_tables, settings_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .crown import Crown

FIELDS = (("left", "wall_a"), ("right", "wall_b"))


class CrownCorner:
    """One corner: degrees, inside or outside, and the walls to the left and right, inches."""

    def __init__(self, angle: float, turn: str, walls: "list[float | None]") -> None:
        self.angle = angle
        self.turn = turn
        self.walls = walls


def refuse_corner(corner: CrownCorner, crown: "Crown") -> None:
    """Refuse what is no corner, and walls without the face that their edges depend on."""
    if corner.angle == 180:
        raise Refusal("corner", "180.0° is a straight wall: there is no corner. Cut square.")
    if corner.angle > 180:
        raise Refusal(
            "corner",
            f"{show_angle(corner.angle)} is measured the long way around: enter what is left of "
            f"360.0°, {show_angle(360 - corner.angle)}, and say inside or outside.",
        )
    if crown.width is None and [wall for wall in corner.walls if wall is not None]:
        raise Refusal(
            "width",
            "The face width is needed too: without it nobody can tell how far the top edge "
            "differs from the wall's length.",
        )


def answer_corner(crown: "Crown", corner: CrownCorner, bevels: str, scale: Scale) -> Answer:
    """Return the settings, the four ways of laying the crown, and the pieces where asked."""
    answer = Answer(scale)
    start = f"{corner.turn[:1].upper()}{corner.turn[1:]} corner"
    settings = settings_words(crown, corner.angle, bevels)
    answer.verdict(f"{start}, spring {brief_angle(crown.spring)}: {settings}")
    add_settings(answer, crown, corner.angle, bevels)
    add_sizes(answer, crown)
    if crown.width is not None:
        way = "shorter" if corner.turn == "inside" else "longer"
        label = f"Top edge {way} than bottom, each end"
        answer.length("edges", crown.edges(corner.angle), label=label)
    for (side, field), wall in zip(FIELDS, corner.walls):
        if wall is not None:
            _piece(answer, crown, corner, side, field, wall, bevels)
    add_tables(answer, bevels)
    answer.draw(flat_on_saw(crown, corner.angle, corner.turn, bevels))
    answer.draw(nested_on_saw(crown, corner.angle, corner.turn))
    answer.draw(section(crown, scale))
    add_saw_notes(answer, crown, [corner.angle])
    _measuring(answer, corner.turn)
    warn_if_sharp(answer, answer.figures[0]["value"], crown.nested(corner.angle))
    return answer


def _measuring(answer: Answer, turn: str) -> None:
    if turn == "inside":
        answer.note(COPED)
    point = "long" if turn == "inside" else "short"
    answer.note(f"Measure walls along the bottom edge: that is the {point} point here.")


def _piece(
    answer: Answer,
    crown: "Crown",
    corner: CrownCorner,
    side: str,
    field: str,
    wall: float,
    bevels: str,
) -> None:
    inside = corner.turn == "inside"
    edges = crown.edges(corner.angle)
    top = wall - edges if inside else wall + edges
    if top <= 0:
        raise Refusal(
            field,
            f"A wall of {answer.scale.length(wall)} is used up by the miter: the top edge loses "
            f"{answer.scale.length(edges)}. Use narrower crown, or measure again.",
        )
    keep = flat(corner.turn, side, bevels).keep
    note = f"{corner.turn} corner, flat, keep {keep}"
    joint = miter(crown.miter(corner.angle), note, crown.bevel(corner.angle))
    far = square("far end")
    answer.piece(
        "1" if side == "left" else "2",
        side[:1].upper() + side[1:] + " of the joint",
        max(wall, top),
        (far, joint) if side == "left" else (joint, far),
        short_point=min(wall, top),
        width=crown.width,
    )
