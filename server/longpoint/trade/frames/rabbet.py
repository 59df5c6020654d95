"""A rabbet in a frame, and the glass or panel that lies in it."""

from ..tool import Flag, Length, Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..tool import Input, Scale


def rabbet_inputs(only_when: "tuple[object, ...] | None" = None) -> "list[Input]":
    """Return the questions for a rabbet; the play has no default, since it decides the glass."""
    return [
        Flag("rabbeted", "Rabbet for glass or panel", only_when=only_when),
        Length(
            "rabbet",
            "Rabbet width",
            help="How far it is cut back from the inner edge, the same all around.",
            only_when=("rabbeted", True),
        ),
        Length(
            "rabbet_play",
            "Glass smaller by",
            least=0,
            help="In all, in each direction, so that the glass or panel drops in.",
            only_when=("rabbeted", True),
        ),
    ]


def glass_outset(rabbet: float, play: float, narrowest: float, scale: "Scale") -> float:
    """Return how far past the frame's inner edges glass reaches, on each side.

    Parameters
    ----------
    rabbet, play : float
        Width of the rabbet, and what the glass is smaller than it in all, inches.
    narrowest : float
        Width of the narrowest piece of the frame, inches.

    Raises
    ------
    Refusal
        On ``rabbet`` or ``rabbet_play``, where nothing of a piece is left or the glass falls
        through.
    """
    fine = scale.finer()
    if rabbet >= narrowest:
        raise Refusal(
            "rabbet",
            f"A rabbet {fine.length(rabbet)} wide leaves nothing of trim "
            f"{fine.length(narrowest)} wide: make it narrower.",
        )
    if play >= 2 * rabbet:
        raise Refusal(
            "rabbet_play",
            f"Glass {fine.length(play)} smaller falls through a rabbet {fine.length(rabbet)} "
            f"wide: use less than {fine.length(2 * rabbet)}.",
        )
    return rabbet - play / 2
