"""Cup hinges of cupboard doors, in inches: where their cups are bored, how deep, what is left."""

from ...tool import Refusal, Scale

TALLEST = ((40.0, 2), (60.0, 3), (80.0, 4))
"""Leaf heights and the cups they take, one more beyond: from memory of makers' charts."""

THIN = 1 / 8
"""Less wood than that behind a cup shows or breaks through: common practice, no source."""


class Cups:
    """The cups of one leaf; what is not known yet is None.

    Parameters
    ----------
    bore : float
        Diameter of a cup.
    distance, depth : float or None
        From the leaf's hinge edge to the cup's rim; of the bore: by the hinge's sheet.
    thickness : float or None
        Of the door.

    Raises
    ------
    Refusal
        The bore goes through the door.
    """

    def __init__(
        self,
        bore: float,
        distance: "float | None",
        depth: "float | None",
        thickness: "float | None",
        scale: Scale,
    ) -> None:
        self.bore = bore
        self.depth = depth
        self.thickness = thickness
        self.center = None if distance is None else distance + bore / 2
        self.left = None if depth is None or thickness is None else thickness - depth
        if self.left is not None and self.left <= 0:
            raise Refusal(
                "cup_depth",
                f"A bore {scale.length(self.left + (thickness or 0.0))} deep goes through a door "
                f"{scale.length(thickness or 0.0)} thick: take a flatter hinge or a thicker door.",
            )


def usual_cups(leaf_height: float) -> int:
    """Return the usual number of cup hinges: a leaf's weight may ask for more.

    >>> [usual_cups(height) for height in (30, 40, 41, 60, 80, 81)]
    [2, 2, 3, 3, 4, 5]
    """
    for tallest, count in TALLEST:
        if leaf_height <= tallest:
            return count
    return 5


def cup_centers(
    leaf_height: float, bore: float, count: int, from_ends: float, scale: Scale
) -> "list[float]":
    """Return the cups' centers down from the leaf's top, spread evenly.

    Raises
    ------
    Refusal
        Cups that lie off the leaf, or overlap.
    """
    apart = (leaf_height - 2 * from_ends) / (count - 1)
    if from_ends < bore / 2:
        raise Refusal(
            "end_offset",
            f"A cup {scale.length(bore)} wide with its center {scale.length(from_ends)} from the "
            f"end runs off the leaf: use more than {scale.length(bore / 2)}.",
        )
    if apart < bore:
        raise Refusal(
            "end_offset",
            f"{count} cups {scale.length(from_ends)} from both ends overlap on a leaf "
            f"{scale.length(leaf_height)} high: use a smaller offset, or fewer hinges.",
        )
    return [from_ends + number * apart for number in range(count)]
