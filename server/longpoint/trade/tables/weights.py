"""What materials weigh: specific gravity of woods at 12 percent moisture, density of the rest.

Sources: Wood Handbook (USDA Forest Products Laboratory), Table 5-3 and its like, specific gravity
on ovendry mass and volume at 12 percent, seen as reprints for the woods marked `READ`, from memory
for those marked `MEMORY`. Density from specific gravity: Wood Handbook chapter 4, as quoted with
its worked example by a state forestry page. Change of specific gravity with moisture: the formula
of the National Design Specification's commentary, as reprinted in engineering tables.
Glass: 2500 kg/m3, EN 572-1, as makers quote it. Panels: weights of 3/4 in 4x8 sheets as published
(97 lb MDF, 85 lb particleboard, 60 lb veneer-core hardwood plywood); plywood of softwood and of
birch throughout from memory. A board differs from its species' mean by 10 percent and more.
"""

from collections import namedtuple

from .species import SPECIES

Wood = namedtuple("Wood", ("value", "label", "gravity", "seen"))
"""A species: its name in the API, its label, specific gravity at 12 percent, whether read."""

READ, MEMORY = True, False
WATER = 62.43
"""Density of water in pounds per cubic foot."""
SATURATED = 30.0
"""Percent of moisture above which wood no longer swells."""
SWELL = 0.009

_GRAVITIES = {
    "alder-red": (0.41, READ),
    "ash-black": (0.49, READ),
    "ash-green": (0.56, READ),
    "ash-white": (0.60, READ),
    "aspen": (0.38, READ),
    "basswood": (0.37, READ),
    "beech": (0.64, READ),
    "birch-paper": (0.55, READ),
    "birch-sweet": (0.65, READ),
    "birch-yellow": (0.62, READ),
    "butternut": (0.38, READ),
    "cherry": (0.50, READ),
    "chestnut": (0.43, READ),
    "cottonwood": (0.40, READ),
    "elm-american": (0.50, READ),
    "elm-slippery": (0.53, READ),
    "hackberry": (0.53, READ),
    "hickory-pecan": (0.66, READ),
    "hickory-pignut": (0.75, READ),
    "hickory-shagbark": (0.72, READ),
    "hickory-true": (0.72, MEMORY),
    "locust-black": (0.69, READ),
    "magnolia": (0.50, MEMORY),
    "maple-bigleaf": (0.48, READ),
    "maple-black": (0.57, READ),
    "maple-red": (0.54, READ),
    "maple-silver": (0.47, MEMORY),
    "maple-sugar": (0.63, READ),
    "oak-live": (0.88, MEMORY),
    "oak-overcup": (0.63, MEMORY),
    "oak-red": (0.63, READ),
    "oak-white": (0.68, READ),
    "poplar-yellow": (0.42, READ),
    "sassafras": (0.46, MEMORY),
    "sweetgum": (0.52, MEMORY),
    "sycamore": (0.49, MEMORY),
    "tupelo-black": (0.50, MEMORY),
    "walnut": (0.55, READ),
    "baldcypress": (0.46, MEMORY),
    "cedar-alaska": (0.44, MEMORY),
    "cedar-eastern-red": (0.47, MEMORY),
    "cedar-incense": (0.37, MEMORY),
    "cedar-northern-white": (0.31, MEMORY),
    "cedar-port-orford": (0.43, MEMORY),
    "cedar-western-red": (0.32, MEMORY),
    "douglas-fir": (0.48, MEMORY),
    "douglas-fir-interior": (0.48, MEMORY),
    "fir-white": (0.39, MEMORY),
    "hemlock-eastern": (0.40, MEMORY),
    "hemlock-western": (0.45, MEMORY),
    "larch-western": (0.52, MEMORY),
    "pine-eastern-white": (0.35, MEMORY),
    "pine-loblolly": (0.51, MEMORY),
    "pine-lodgepole": (0.41, MEMORY),
    "pine-longleaf": (0.59, READ),
    "pine-ponderosa": (0.40, READ),
    "pine-red": (0.46, READ),
    "pine-shortleaf": (0.51, MEMORY),
    "pine-sugar": (0.36, MEMORY),
    "pine-western-white": (0.38, MEMORY),
    "redwood-old": (0.40, READ),
    "redwood-young": (0.35, READ),
    "spruce-engelmann": (0.35, MEMORY),
    "spruce-sitka": (0.40, MEMORY),
}

WOODS = [
    Wood(each.value, each.label, _GRAVITIES[each.value][0], _GRAVITIES[each.value][1])
    for each in SPECIES
    if each.value in _GRAVITIES
]
"""Every species whose weight is known, in the order of `species`."""

PANELS = (
    ("plywood", "plywood, hardwood face", 30.0),
    ("plywood-softwood", "plywood, softwood", 36.0),
    ("plywood-birch", "plywood, birch throughout", 43.0),
    ("mdf", "MDF", 48.5),
    ("particleboard", "particleboard", 42.5),
    ("glass", "glass", 2500 / 0.45359237 * 0.3048**3),
)
"""What is no solid wood: its name, its label, pounds per cubic foot."""


def wood_named(value: str) -> Wood:
    """Return a species by its name in the API."""
    return next(wood for wood in WOODS if wood.value == value)


def gravity_at(gravity: float, moisture: float) -> float:
    """Return specific gravity on the volume at a moisture content, from that at 12 percent.

    Parameters
    ----------
    gravity : float
        Ovendry mass over the mass of as much water as the wood's volume at 12 percent.
    moisture : float
        Percent of the ovendry mass. Above `SATURATED` the volume grows no more.
    """
    ovendry = gravity / (1 - SWELL * 12 * gravity)
    return ovendry / (1 + SWELL * ovendry * min(moisture, SATURATED))


def wood_density(gravity: float, moisture: float) -> float:
    """Return pounds per cubic foot, water included, from specific gravity at 12 percent.

    >>> from longpoint.trade.lengths import show_number
    >>> show_number(wood_density(0.4, 12), 2)
    '27.97'
    """
    return WATER * gravity_at(gravity, moisture) * (1 + moisture / 100)


def panel_density(value: str) -> float:
    """Return pounds per cubic foot of a panel or of glass."""
    return next(density for name, _, density in PANELS if name == value)
