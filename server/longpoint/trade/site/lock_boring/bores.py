"""The bores of a lock in its leaf and jamb, in inches, and what can't be bored.

Seen from above, the strike edge runs from the leaf's wider face to its narrower one; a bevel takes
the narrower one back. The bores stand square to the faces.
"""

from collections import namedtuple

from ... import degrees
from ...tool import Refusal, Scale

LockSheet = namedtuple("LockSheet", ("backset", "from_middle", "cross", "edge", "least", "most"))
"""What the lock's sheet says: backset, whether it runs from the middle of a beveled edge or from
its high corner, both bores, and the door thicknesses that it takes; None: not said."""

LeafSizes = namedtuple("LeafSizes", ("thickness", "height", "bevel", "stile"))
"""The leaf that is bored; height and stile are None where not known, bevel in degrees."""

LatchPlace = namedtuple("LatchPlace", ("latch", "floor_gap", "head_gap", "setback"))
"""The latch's height above the finished floor, the gaps, the leaf's setback on its jamb."""


class Bores:
    """Where the bores lie.

    Parameters
    ----------
    sheet : LockSheet
    leaf : LeafSizes
    place : LatchPlace

    `near` and `far` are the cross bore's center from the edge of the wider and the narrower face.

    Raises
    ------
    Refusal
        The lock does not fit the door, or a bore has no room.
    """

    def __init__(self, sheet: LockSheet, leaf: LeafSizes, place: LatchPlace, scale: Scale) -> None:
        self.sheet = sheet
        self.leaf = leaf
        self.place = place
        taken: float = leaf.thickness * degrees.tan(leaf.bevel)
        self.taken = taken
        self.near: float = sheet.backset + (taken / 2 if sheet.from_middle else 0.0)
        self.far = self.near - taken
        self.up: float = place.latch - place.floor_gap
        self.edge_wood: float = (leaf.thickness - sheet.edge) / 2
        self.reach: float = (self.near + self.far - sheet.cross) / 2
        self.strike_in: float = place.setback + leaf.thickness / 2
        self._refuse_door(scale)
        self._refuse_bores(scale)

    @property
    def down(self) -> "float | None":
        """From the leaf's top to the center, where its height is known."""
        height: float | None = self.leaf.height
        return None if height is None else height - self.up

    @property
    def strike_down(self) -> "float | None":
        """From the jamb's head to the strike's center, where the leaf's height is known."""
        down = self.down
        return None if down is None else down + float(self.place.head_gap)

    @property
    def stile_left(self) -> "float | None":
        """Wood of the stile beyond the cross bore, where its width is known."""
        stile: float | None = self.leaf.stile
        return None if stile is None else stile - self.near - float(self.sheet.cross) / 2

    def _refuse_door(self, scale: Scale) -> None:
        sheet, thick = self.sheet, self.leaf.thickness
        least, most, said = sheet.least or 0.0, sheet.most, scale.length
        if most is not None and most < least:
            raise Refusal(
                "thickness_to",
                f"A lock for doors from {said(least)} to {said(most)} fits none: read both again.",
            )
        if thick < least - 1e-9 or (most is not None and thick > most + 1e-9):
            doors = f"from {said(least)} up" if most is None else f"{said(least)} to {said(most)}"
            raise Refusal(
                "door_thickness",
                f"The lock takes doors {doors}, this one is {said(thick)} thick: ask its maker for "
                "parts that fit, or take another lock.",
            )
        height = self.leaf.height
        if self.up <= 0 or (height is not None and self.up >= height):
            raise Refusal(
                "latch_height",
                f"{said(self.place.latch)} above the floor there is no leaf: it begins "
                f"{said(self.place.floor_gap)} up"
                + ("." if height is None else f" and is {said(height)} high."),
            )

    def _refuse_bores(self, scale: Scale) -> None:
        sheet, said = self.sheet, scale.length
        if self.edge_wood <= 0:
            raise Refusal(
                "edge_bore",
                f"An edge bore of {said(sheet.edge)} splits a door {said(self.leaf.thickness)} "
                "thick: look on the sheet for a thinner latch.",
            )
        if min(self.near, self.far) <= sheet.cross / 2:
            raise Refusal(
                "backset",
                f"With a backset of {said(sheet.backset)} a bore of {said(sheet.cross)} breaks out "
                "at the edge: read the sheet again.",
            )
        left = self.stile_left
        if left is not None and left <= 0:
            raise Refusal(
                "stile",
                f"The bore ends {said(self.near + sheet.cross / 2)} from the edge, past a stile of "
                f"{said(self.leaf.stile)}: take a latch of less backset.",
            )
