"""How much of a finish lands on the work, by the way it is put on: percent of its solids.

Sources, as read: air gun at most 30, often 15 (a state pollution-prevention office), about 30 (a
coating trade paper); HVLP 50 to 65, airless 40 to 50, air-assisted airless 60 to 80 (makers' and
finishers' pages). Brush and roller 95 to 98: from memory. All depend on operator and part: narrow
trim sprayed alone wastes far more than a door's face (from memory).
"""

from collections import namedtuple

Method = namedtuple("Method", ("value", "label", "percent", "range"))

METHODS = (
    Method("brush", "brush", 95, "95 to 98"),
    Method("roller", "roller or pad", 95, "95 to 98"),
    Method("hvlp", "HVLP gun", 55, "50 to 65"),
    Method("air-assisted", "air-assisted airless", 70, "60 to 80"),
    Method("airless", "airless", 45, "40 to 50"),
    Method("air-gun", "high-pressure air gun", 25, "15 to 35"),
)
SPRAYED = ("hvlp", "air-assisted", "airless", "air-gun")
