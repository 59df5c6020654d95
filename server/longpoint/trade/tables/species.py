"""Woods by name, once for all tables: what moves and what weighs is the same tree."""

from collections import namedtuple

Species = namedtuple("Species", ("value", "label"))
"""A wood's name in the API and its label."""

HARDWOODS = (
    Species("alder-red", "alder, red"),
    Species("ash-black", "ash, black"),
    Species("ash-green", "ash, green"),
    Species("ash-white", "ash, white"),
    Species("aspen", "aspen, quaking"),
    Species("basswood", "basswood"),
    Species("beech", "beech, American"),
    Species("birch-paper", "birch, paper"),
    Species("birch-sweet", "birch, sweet"),
    Species("birch-yellow", "birch, yellow"),
    Species("butternut", "butternut"),
    Species("cherry", "cherry, black"),
    Species("chestnut", "chestnut, American"),
    Species("cottonwood", "cottonwood, eastern"),
    Species("elm-american", "elm, American"),
    Species("elm-slippery", "elm, slippery"),
    Species("hackberry", "hackberry"),
    Species("hickory-pecan", "hickory, pecan"),
    Species("hickory-pignut", "hickory, pignut"),
    Species("hickory-shagbark", "hickory, shagbark"),
    Species("hickory-true", "hickory, true"),
    Species("honeylocust", "honeylocust"),
    Species("locust-black", "locust, black"),
    Species("magnolia", "magnolia, southern"),
    Species("maple-bigleaf", "maple, bigleaf"),
    Species("maple-black", "maple, black (hard)"),
    Species("maple-red", "maple, red (soft)"),
    Species("maple-silver", "maple, silver (soft)"),
    Species("maple-sugar", "maple, sugar (hard)"),
    Species("oak-live", "oak, live"),
    Species("oak-overcup", "oak, overcup"),
    Species("oak-red", "oak, red"),
    Species("oak-white", "oak, white"),
    Species("persimmon", "persimmon"),
    Species("poplar-yellow", "poplar (yellow-poplar)"),
    Species("sassafras", "sassafras"),
    Species("sweetgum", "sweetgum"),
    Species("sycamore", "sycamore"),
    Species("tupelo-black", "tupelo, black"),
    Species("walnut", "walnut, black"),
)

SOFTWOODS = (
    Species("baldcypress", "baldcypress"),
    Species("cedar-alaska", "cedar, Alaska yellow"),
    Species("cedar-eastern-red", "cedar, eastern red"),
    Species("cedar-incense", "cedar, incense"),
    Species("cedar-northern-white", "cedar, northern white"),
    Species("cedar-port-orford", "cedar, Port Orford"),
    Species("cedar-western-red", "cedar, western red"),
    Species("douglas-fir", "Douglas-fir, coast"),
    Species("douglas-fir-interior", "Douglas-fir, interior north"),
    Species("fir-white", "fir, white"),
    Species("hemlock-eastern", "hemlock, eastern"),
    Species("hemlock-western", "hemlock, western"),
    Species("larch-western", "larch, western"),
    Species("pine-eastern-white", "pine, eastern white"),
    Species("pine-loblolly", "pine, loblolly"),
    Species("pine-lodgepole", "pine, lodgepole"),
    Species("pine-longleaf", "pine, longleaf"),
    Species("pine-ponderosa", "pine, ponderosa"),
    Species("pine-red", "pine, red"),
    Species("pine-shortleaf", "pine, shortleaf"),
    Species("pine-sugar", "pine, sugar"),
    Species("pine-western-white", "pine, western white"),
    Species("redwood-old", "redwood, old growth"),
    Species("redwood-young", "redwood, young growth"),
    Species("spruce-engelmann", "spruce, Engelmann"),
    Species("spruce-sitka", "spruce, Sitka"),
)

IMPORTED = (
    Species("brazilian-cherry", "Brazilian cherry"),
    Species("jarrah", "jarrah"),
    Species("khaya", "khaya"),
    Species("mahogany", "mahogany"),
    Species("merbau", "merbau"),
    Species("mesquite", "mesquite"),
    Species("padauk", "padauk"),
    Species("purpleheart", "purpleheart"),
    Species("teak", "teak"),
    Species("wenge", "wenge"),
)

SPECIES = HARDWOODS + SOFTWOODS + IMPORTED
"""In the order in which they are offered."""
