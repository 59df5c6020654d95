"""What frames on a wall refuse, and what would do."""

from ...tool import FieldError, Refusal, Scale
from .layout import HAIR, FrameTrim, Layout, Margins, WallOpening, corner_of


def refuse_height(height: float, margins: Margins, trim: FrameTrim, scale: Scale) -> None:
    """Refuse margins and trim that leave no opening in the height."""
    least = margins.top + margins.bottom + 2 * corner_of(trim)
    if height > least:
        return
    raise Refusal(
        "height",
        f"Margins and trim need more than {scale.length(least)} of height and there are "
        f"{scale.length(height)}: use smaller margins or narrower trim.",
    )


def placed_openings(
    openings: "list[WallOpening]", length: float, scale: Scale
) -> "list[WallOpening]":
    """Return openings from left to right.

    Raises
    ------
    Refusal
        For one that is off the wall, upside down, or over another.
    """
    errors = []
    for each in openings:
        path = f"openings.{each.place}."
        if each.right > length + HAIR:
            words = (
                f"It ends {scale.length(each.right)} from the left end, and the wall is "
                f"{scale.length(length)} long: measure again."
            )
            errors.append(FieldError(path + "width", words))
        if each.top is not None and each.top <= (each.bottom or 0.0):
            words = "Its top is not above its bottom: measure both from the bottom line."
            errors.append(FieldError(path + "top", words))
        over = [
            other.place + 1
            for other in openings
            if other.place < each.place
            and min(each.right, other.right) - max(each.left, other.left) > HAIR
        ]
        if over:
            words = f"It lies over opening {over[0]}: measure again."
            errors.append(FieldError(path + "from_left", words))
    if errors:
        raise Refusal.of(errors)
    order = sorted([(each.left, each.place) for each in openings])
    return [openings[place] for _, place in order]


def refuse_number(
    field: str, asked: int, most: "list[int]", length: float, limit: int, scale: Scale
) -> None:
    """Refuse more frames than go in, or fewer than the runs that have room.

    `most` is the largest number in each run.
    """
    if field == "count" and not sum(most):
        raise Refusal(
            "length",
            f"Margins and trim leave no opening in {scale.length(length)}: use smaller margins or "
            "narrower trim.",
        )
    if asked > min(sum(most), limit):
        raise Refusal(
            field,
            f"{asked} frames are too many for {scale.length(length)}: beside corners and "
            f"margins there are openings in {min(sum(most), limit)} at most.",
        )
    runs = len([each for each in most if each])
    if field == "count" and asked < runs:
        raise Refusal(
            field,
            f"{runs} runs between the openings have room for a frame: use {runs} or more.",
        )


def refuse_bare(layout: Layout, scale: Scale) -> None:
    """Refuse a wall that has no room for any frame."""
    if layout.groups:
        return
    raise Refusal(
        "length",
        f"Margins and trim leave no opening in {scale.length(layout.length)}: use smaller margins "
        "or narrower trim.",
    )
