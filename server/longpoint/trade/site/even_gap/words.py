"""What is done at the hinges, in sentences."""

from .tilt import is_seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .tilt import Fix

VERBS = ("let in", "shim")
"""What is done at a hinge, by whether it moves toward the strike."""


def verdict_words(fix: "Fix", room: "float | None", fine: "Scale") -> "list[str]":
    """Return what to do at the hinges and what it leaves, ever shorter."""
    even = f"the strike gap is then {fine.length(fix.even)} all along"
    short = f"{fine.length(fix.even)} is left"
    moved = [(name, move) for name, move in zip(("top", "bottom"), fix.moves) if is_seen(move)]
    if not moved:
        return [f"Leave the hinges: the strike gap is even at {fine.length(fix.even)}"]
    if len(moved) == 1 and moved[0][1] < 0 and room is None:
        need = "the gap on its side must hold that"
        return [_do(moved[0], fine, True) + ": " + need, _do(moved[0], fine, True)]
    if len(moved) == 2 and moved[0][1] < moved[1][1]:
        moved.reverse()
    do = _do(moved[0], fine, True)
    if len(moved) == 2:
        do += ", " + _do(moved[1], fine, False)
    return [do + ": " + even, do + ": " + short, do]


def _do(what: "tuple[str, float]", fine: "Scale", first: bool) -> str:
    which, move = what
    if move > 0:
        words = f"shim the {which} hinge {fine.length(move)}"
    else:
        words = f"let the {which} hinge in {fine.length(-move)} deeper"
    return words[:1].upper() + words[1:] if first else words


def after_words(opens: float, fine: "Scale") -> str:
    """Return what happens to the gaps over and under the leaf at its strike edge."""
    way, other = ("opens", "closes") if opens > 0 else ("closes", "opens")
    return (
        f"At the strike the head gap {way} by {fine.length(abs(opens))}, and the floor gap "
        f"{other} by as much."
    )
