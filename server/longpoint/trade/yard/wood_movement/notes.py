"""What to say about a width that moves: where its numbers are from, and what to do about it."""

from ...lengths import Scale, show_number
from ...steps import FINEST
from ...tables.movement import (
    CONFLICTS,
    FLOORING,
    MEMORY,
    SATURATED,
    coefficient_of,
)
from ...tool import Answer
from .moving import DAMP_END, DRY_END, SCATTER, Moving
from .views import small_words

DOUBTS = {
    MEMORY: "This wood's coefficients are not confirmed: leave more room.",
    FLOORING: "Its coefficient is from the flooring trade's lists; they warn that such woods have "
    "moved far more in use.",
}

_SHEETS = {
    "plywood": "Plywood is practically still: 0.2 percent from ovendry to soaked, by the APA's "
    "figure, where flat-sawn oak moves fifty times as much. The grain of its face is no matter.",
    "mdf": "MDF is practically still: 0.05 percent for each percent of moisture, as its European "
    "makers say, a seventh of flat-sawn oak. It takes up less moisture than wood in the same "
    "air, too.",
}


def add_notes(answer: Answer, moving: Moving) -> None:
    """Add what to do, how it was figured, and from what."""
    change = moving.change()
    _room(answer, moving, change)
    if moving.wood is None:
        _no_species(answer, moving)
    else:
        _figured(answer, moving)
        if moving.wood.seen in DOUBTS:
            answer.note(DOUBTS[moving.wood.seen])
        answer.note(
            "Along the grain a board stays as long as it is; the change is too small to matter."
        )
    if max(moving.start, moving.end) > moving.begins:
        answer.note(
            f"Above {show_number(moving.begins)} percent this wood neither swells nor shrinks: "
            f"{show_number(moving.begins)} is counted."
        )
    _conflict(answer, moving, change)


def _room(answer: Answer, moving: Moving, change: float) -> None:
    """Say what a panel in a frame needs."""
    each = small_words(moving.safe(), answer.scale)
    hold = "Center the panel, and pin or glue it only at the middle of its ends. "
    if change > 0:
        answer.note(
            hold + f"Beyond its left and right edge the stiles' grooves need {each} of room at the "
            "moisture it has now; in the rails' grooves, along the grain, none for movement."
        )
    elif change < 0:
        answer.note(
            hold + f"It draws up to {each} out of the groove of each stile: let it in so much "
            "deeper than it must hold, and finish its edges before it goes in, so that no bare "
            "strip shows."
        )
    if change and moving.spread():
        answer.note(
            "The play is for the worst board: a fifth more than the mean of its species. For the "
            "other season ask again with its moisture."
        )
    else:
        answer.note("The moisture stays, and so does the width.")


def _figured(answer: Answer, moving: Moving) -> None:
    if not moving.is_by_shrinkage():
        answer.note("Both moistures lie within 6 to 14 percent, where the coefficient holds.")
        return
    printed = moving.wood is not None and moving.wood.shrinkage is not None
    origin = "by the table" if printed else "worked back from the coefficient"
    answer.note(
        f"Outside {show_number(DRY_END)} to {show_number(DAMP_END)} percent the coefficient "
        f"doesn't hold: figured by total shrinkage, {show_number(moving.shrinkage(), 1)} percent "
        f"from {show_number(moving.begins)} percent moisture to ovendry, {origin}."
    )


def _no_species(answer: Answer, moving: Moving) -> None:
    if moving.species in _SHEETS:
        answer.note(_SHEETS[moving.species])
        return
    answer.note("Figured by the coefficient you gave: a part of the width for each percent.")
    if not moving.is_within():
        answer.note(
            f"Outside {show_number(DRY_END)} to {show_number(DAMP_END)} percent a coefficient "
            "tells only roughly."
        )


def _conflict(answer: Answer, moving: Moving, change: float) -> None:
    """Warn where what was read and what was recalled part."""
    if moving.species == "teak":
        answer.caution(
            "Teak: lists differ (0.00186 and 0.00185 flat-sawn), quarter-sawn is from memory, "
            "and coefficients of imported woods don't fit the shrinkages printed elsewhere in the "
            "same book. Leave more room."
        )
    if moving.species not in CONFLICTS:
        return
    printed = CONFLICTS[moving.species][1 if moving.cut == "flat-sawn" else 0]
    by_print = coefficient_of(printed, SATURATED)
    other = small_words(abs(change) * by_print / moving.coefficient, answer.scale)
    answer.caution(
        f"Sources conflict: the shrinkage printed in Table 4-4, {show_number(printed, 1)} percent, "
        f"would be a coefficient of {show_number(by_print, 5)} and a change of {other}; the one "
        f"used, {show_number(moving.coefficient, 5)}, is from memory and leaves more room."
    )


def scatter_words(change: float, scale: Scale) -> str:
    """Return between what two lengths one board's change is to be expected.

    >>> scatter_words(0.3125, Scale())
    '1/4 to 3/8'
    """
    fine = scale.finer()
    fine = fine if fine.tick(change) else scale.finer(FINEST)
    low, high = [fine.bare(abs(change) * (1 + way * SCATTER)) for way in (-1, 1)]
    return low if low == high else low + " to " + high
