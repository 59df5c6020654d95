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

Wood = namedtuple("Wood", ("value", "label", "gravity", "seen"))
"""A species: its name in the API, its label, specific gravity at 12 percent, whether read."""

READ, MEMORY = True, False
WATER = 62.43
"""Density of water in pounds per cubic foot."""
SATURATED = 30.0
"""Percent of moisture above which wood no longer swells."""
SWELL = 0.009

WOODS = (
    Wood("alder-red", "alder, red", 0.41, READ),
    Wood("ash-black", "ash, black", 0.49, READ),
    Wood("ash-green", "ash, green", 0.56, READ),
    Wood("ash-white", "ash, white", 0.60, READ),
    Wood("aspen", "aspen, quaking", 0.38, READ),
    Wood("baldcypress", "baldcypress", 0.46, MEMORY),
    Wood("basswood", "basswood", 0.37, READ),
    Wood("beech", "beech, American", 0.64, READ),
    Wood("birch-paper", "birch, paper", 0.55, READ),
    Wood("birch-sweet", "birch, sweet", 0.65, READ),
    Wood("birch-yellow", "birch, yellow", 0.62, READ),
    Wood("butternut", "butternut", 0.38, READ),
    Wood("cedar-western-red", "cedar, western red", 0.32, MEMORY),
    Wood("cherry", "cherry, black", 0.50, READ),
    Wood("chestnut", "chestnut, American", 0.43, READ),
    Wood("cottonwood", "cottonwood, eastern", 0.40, READ),
    Wood("douglas-fir", "Douglas-fir, coast", 0.48, MEMORY),
    Wood("elm-american", "elm, American", 0.50, READ),
    Wood("elm-slippery", "elm, slippery", 0.53, READ),
    Wood("hackberry", "hackberry", 0.53, READ),
    Wood("hemlock-western", "hemlock, western", 0.45, MEMORY),
    Wood("hickory-pecan", "hickory, pecan", 0.66, READ),
    Wood("hickory-pignut", "hickory, pignut", 0.75, READ),
    Wood("hickory-shagbark", "hickory, shagbark", 0.72, READ),
    Wood("locust-black", "locust, black", 0.69, READ),
    Wood("maple-bigleaf", "maple, bigleaf", 0.48, READ),
    Wood("maple-black", "maple, black", 0.57, READ),
    Wood("maple-red", "maple, red (soft)", 0.54, READ),
    Wood("maple-silver", "maple, silver (soft)", 0.47, MEMORY),
    Wood("maple-sugar", "maple, sugar (hard)", 0.63, READ),
    Wood("oak-red", "oak, northern red", 0.63, READ),
    Wood("oak-white", "oak, white", 0.68, READ),
    Wood("pine-eastern-white", "pine, eastern white", 0.35, MEMORY),
    Wood("pine-loblolly", "pine, loblolly", 0.51, MEMORY),
    Wood("pine-longleaf", "pine, longleaf", 0.59, READ),
    Wood("pine-ponderosa", "pine, ponderosa", 0.40, READ),
    Wood("pine-red", "pine, red", 0.46, READ),
    Wood("pine-sugar", "pine, sugar", 0.36, MEMORY),
    Wood("poplar-yellow", "poplar (yellow-poplar)", 0.42, READ),
    Wood("redwood-old", "redwood, old growth", 0.40, READ),
    Wood("redwood-young", "redwood, young growth", 0.35, READ),
    Wood("spruce-sitka", "spruce, Sitka", 0.40, MEMORY),
    Wood("sweetgum", "sweetgum", 0.52, MEMORY),
    Wood("sycamore", "sycamore", 0.49, MEMORY),
    Wood("walnut", "walnut, black", 0.55, READ),
)

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
