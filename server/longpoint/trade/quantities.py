"""What numbers are: one word for one size, so that a number said once is known everywhere.

An input and a figure that name the same quantity are the same size of the same thing. Within an
item of a job an input takes what an earlier question gave or was told under its quantity.
"""

QUANTITIES = {
    # The opening: what is measured or left between jambs, head and floor.
    "opening width": "length",
    "opening height": "length",
    "opening width at the top": "length",
    "opening width at the bottom": "length",
    "opening height at the left": "length",
    "opening height at the right": "length",
    "opening diagonal, top left to bottom right": "length",
    "opening diagonal, top right to bottom left": "length",
    "rough opening width": "length",
    "rough opening height": "length",
    # What swings: one leaf, or each of a pair.
    "leaves": "choice",
    "leaf width": "length",
    "leaf height": "length",
    "leaf thickness": "length",
    "leaf weight": "number",
    # Gaps around the leaf. The strike gap is the side gap against a jamb, the meeting gap against
    # another leaf.
    "side gap": "length",
    "head gap": "length",
    "floor gap": "length",
    "meeting gap": "length",
    "strike gap": "length",
    "hinge gap": "length",
    # The lock: from the finished floor to the latch's center.
    "latch height": "length",
    # Frame and panel.
    "stile width": "length",
    "rail width": "length",
    "panel thickness": "length",
    "panel width": "length",
    "panel height": "length",
    "panel play": "length",
    "groove width": "length",
    "groove depth": "length",
    "tenon length": "length",
    # Stock.
    "stock thickness": "length",
    "stock width": "length",
    "board width": "length",
    "strip width": "length",
    "kerf": "length",
    "end trim": "length",
    "wood": "choice",
    # Hinges.
    "hinge count": "count",
    "hinge height": "length",
    "hinge leaf thickness": "length",
    "hinge center, top": "length",
    "hinge center, bottom": "length",
    "bevel": "angle",
    # Trim.
    "casing width": "length",
    "casing thickness": "length",
    "trim width": "length",
    "trim thickness": "length",
    "reveal": "length",
    "corner": "angle",
    "spring angle": "angle",
    "wall length": "length",
    "wall height": "length",
    "stick length": "length",
    # Jamb.
    "jamb thickness": "length",
    "jamb depth": "length",
    "stop thickness": "length",
    # The finish: one dry coat in mils, and all that is coated in square feet.
    "film thickness": "number",
    "finish area": "number",
}
"""Each quantity with the kind of its value: what a figure or an input of that quantity must be."""

LIES_AT = {
    "hinge gap": ("", {"": "side gap"}),
    "strike gap": ("meets", {"": "side gap", "jamb": "side gap", "leaf": "meeting gap"}),
}
"""Quantities that are another one where nobody said them, by what an input of the question says."""


def instead_of(quantity: str, inputs: "dict[str, object]") -> "str | None":
    """Return the quantity that another one is taken from where nobody said it.

    >>> instead_of("strike gap", {"meets": "leaf"}), instead_of("strike gap", {})
    ('meeting gap', 'side gap')
    >>> instead_of("leaf width", {})
    """
    if quantity not in LIES_AT:
        return None
    by, others = LIES_AT[quantity]
    return others.get(str(inputs.get(by) or ""))


def kind_of(quantity: str) -> str:
    """Return the kind of a quantity's value.

    Raises
    ------
    KeyError
        There is no such quantity.

    >>> kind_of("leaf width")
    'length'
    """
    return QUANTITIES[quantity]
