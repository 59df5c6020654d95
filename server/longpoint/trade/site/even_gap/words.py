"""What is done at the hinges, in sentences."""

from .tilt import is_seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .tilt import Fix, Tilt

VERBS = ("let in", "shim")
"""What is done at a hinge, by whether it moves toward the strike."""


def verdict_words(fix: "Fix", tilt: "Tilt", room: "float | None", scale: "Scale") -> "list[str]":
    """Return what to do at the hinges and what it leaves, ever shorter.

    Where the hinges stand may be a usual place, and every move hangs on it: so it is said.
    """
    left = scale.finer().length(fix.even)
    moved = [(name, move) for name, move in zip(("top", "bottom"), fix.moves) if is_seen(move)]
    if not moved:
        return [f"Leave the hinges: the strike gap is even at {left}"]
    if len(moved) == 2 and moved[0][1] < moved[1][1]:
        moved.reverse()
    ends = [f": strike gap then {left} all along", f": {left} left"]
    if len(moved) == 1 and moved[0][1] < 0 and room is None:
        ends = [": the gap on its side must hold that", " if its gap holds that"]
    last = tilt.height - tilt.last
    at = f"hinges {scale.number(tilt.first)} down, {scale.given(last)} up"
    ways = []
    for do in (_do, _at_hinge) if len(moved) == 1 else (_at,):
        words = ", ".join([do(each, scale.finer()) for each in moved])
        words = words[:1].upper() + words[1:]
        ways += [words + end + "; " + at for end in ends]
    return ways


def _do(what: "tuple[str, float]", fine: "Scale") -> str:
    which, move = what
    if move > 0:
        return f"shim the {which} hinge {fine.length(move)}"
    return f"let the {which} hinge in {fine.length(-move)} deeper"


def _at_hinge(what: "tuple[str, float]", fine: "Scale") -> str:
    return _at((what[0] + " hinge", what[1]), fine)


def _at(what: "tuple[str, float]", fine: "Scale") -> str:
    which, move = what
    if move > 0:
        return f"shim {which} {fine.length(move)}"
    return f"{which} {fine.length(-move)} deeper"


def after_words(opens: float, fine: "Scale") -> str:
    """Return what happens to the gaps over and under the leaf at its strike edge."""
    way, other = ("opens", "closes") if opens > 0 else ("closes", "opens")
    return (
        f"At the strike the head gap {way} by {fine.length(abs(opens))}, and the floor gap "
        f"{other} by as much."
    )
