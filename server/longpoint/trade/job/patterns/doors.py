"""Patterns of doors: cupboards, passage doors, pairs.

The presets are usual sizes (common practice, no source, but for those that `door.gaps` names);
all of them are seen in the form and typed over.
"""

from ..document import NOT_CUT
from .pattern import Pattern, Question

SURVEYED = (
    "leaves", "width_top", "width_bottom", "height_left", "height_right", "diagonal_a",
    "diagonal_b",
)  # fmt: skip
NO_LEAF = {"all": NOT_CUT}
"""The survey's leaf is made of the parts that the door set cuts."""

INSET = {
    "leaves": "2", "side_gap": "3/32", "head_gap": "3/32", "floor_gap": "3/32",
    "meeting_gap": "3/32", "door_thickness": "3/4", "bevel": "0",
}  # fmt: skip
PASSAGE = {
    "side_gap": "1/8", "head_gap": "1/8", "floor_gap": "1/2", "meeting_gap": "1/8",
    "door_thickness": "1 3/8", "bevel": "3",
}  # fmt: skip

DOOR_STOCK = (("frame", "Door frames", "board"), ("panel", "Door panels", "board"))
DOOR_PARTS = {"frame": "frame", "panel": "panel"}
HINGES = ("Hinges", ("hinges", "figure", "hinge_count"), ("doors", "input", "leaves"))
ONE_LEAF = ("Hinges", ("hinges", "figure", "hinge_count"))
PARTS = ("stile", "top_rail", "bottom_rail", "panel_of")
BUTTS = ("hinge_height", "leaf_thickness")
LOCK = ("backset", "cross_bore", "edge_bore", "latch_height")
FROM_SURVEY = {"stock_thickness": ("survey", "input", "door_thickness")}

CUPBOARD_INSET = Pattern(
    "cupboard-inset",
    "Cupboard doors, inset",
    ("cabinet", "flush", "frame and panel", "pair"),
    [
        Question("survey", "opening-survey", SURVEYED, presets=INSET, stock=NO_LEAF),
        Question(
            "groove", "groove-and-tenon", ("panel_thickness", "outer_blade", "chippers"),
            ties=FROM_SURVEY,
        ),
        Question(
            "doors", "door-set", PARTS, presets={"kind": "inset", "panel_of": "solid"},
            stock=DOOR_PARTS,
        ),
        Question(
            "hinges", "hinge-layout", BUTTS + ("top_offset", "bottom_offset"),
            presets={"measured_on": "door", "top_offset": "2 1/2", "bottom_offset": "2 1/2"},
        ),
        Question("swing", "door-swing", ("meets", "pin_out"), presets={"meets": "leaf"}),
        Question("pulls", "hardware-centers", ("height", "spacing"), title="Pulls"),
    ],
    stock=DOOR_STOCK,
    things=(HINGES, ("Pulls", ("doors", "input", "leaves"))),
    drawing="door-set",
)  # fmt: skip

CUPBOARD_OVERLAY = Pattern(
    "cupboard-overlay",
    "Cupboard doors, overlay",
    ("cabinet", "lay-on", "frame and panel", "cup hinges", "face frame"),
    [
        Question(
            "groove", "groove-and-tenon",
            ("panel_thickness", "stock_thickness", "outer_blade", "chippers"),
            presets={"stock_thickness": "3/4"},
        ),
        Question(
            "doors", "door-set",
            ("opening_width", "opening_height", "overlap", "leaves", "meeting_gap") + PARTS,
            presets={"kind": "overlay", "leaves": "2", "meeting_gap": "1/8", "panel_of": "solid"},
            ties={"door_thickness": ("groove", "input", "stock_thickness")},
            stock=DOOR_PARTS,
        ),
        Question(
            "hinges", "hinge-layout", ("cup_distance", "cup_depth", "plate_setback", "end_offset"),
            presets={"kind": "cup", "end_offset": "3 1/2"},
        ),
        Question("pulls", "hardware-centers", ("height", "spacing"), title="Pulls"),
    ],
    stock=DOOR_STOCK,
    things=(HINGES, ("Pulls", ("doors", "input", "leaves"))),
    drawing="door-set",
)  # fmt: skip

PASSAGE_OLD_JAMB = Pattern(
    "passage-old-jamb",
    "Passage door in an old jamb",
    ("replacement", "slab", "rehang", "existing frame", "interior door"),
    [
        Question(
            "survey", "opening-survey", SURVEYED[1:] + ("hinge_side", "floor_gap"),
            presets=PASSAGE, stock=NO_LEAF,
        ),
        Question(
            "groove", "groove-and-tenon", ("panel_thickness", "outer_blade", "chippers"),
            ties=FROM_SURVEY,
        ),
        Question(
            "doors", "door-set", PARTS + ("mid_rails",),
            presets={"kind": "passage", "panel_of": "solid"}, stock=DOOR_PARTS,
        ),
        Question(
            "hinges", "hinge-layout", BUTTS + ("existing",),
            presets={"match": True, "read_off": "jamb"},
        ),
        Question("swing", "door-swing", ("pin_out", "jamb_closes_in")),
        Question("lock", "lock-boring", LOCK),
    ],
    stock=DOOR_STOCK,
    things=(ONE_LEAF, ("Lock", 1)),
    drawing="opening-survey",
)  # fmt: skip

CASED_DOOR = Pattern(
    "cased-door",
    "New cased door",
    ("new jamb", "rough opening", "slab", "casing", "interior door"),
    [
        Question(
            "jamb", "jamb-and-stop",
            ("leaf_width", "leaf_height", "head_joint", "jamb_depth", "rough_width", "rough_height",
             "latch_height", "floor_gap"),
            presets={"door_thickness": "1 3/8", "jamb_depth": "4 5/8", "side_gap": "1/8",
                     "head_gap": "1/8", "floor_gap": "1/2", "jamb_thickness": "3/4"},
            stock={"jamb": "jamb", "stop": "stop"},
        ),
        Question("hinges", "hinge-layout", BUTTS),
        Question("swing", "door-swing", ("pin_out",)),
        Question("lock", "lock-boring", LOCK[:3]),
        Question(
            "casing", "casing-set", ("casing_width", "casing_thickness", "head", "reveal"),
            presets={"opening": "door", "reveal": "3/16"}, stock={"all": "casing"},
        ),
    ],
    stock=(("jamb", "Jamb stock", "stick"), ("stop", "Door stop", "stick"),
           ("casing", "Casing", "stick")),
    things=(("Door slab", 1), ONE_LEAF, ("Lock", 1)),
    drawing="casing-set",
)  # fmt: skip

PAIR = Pattern(
    "pair",
    "A pair in an opening",
    ("double doors", "two leaves", "french", "astragal"),
    [
        Question(
            "survey", "opening-survey", SURVEYED[1:] + ("floor_gap", "meeting_gap"),
            presets=dict(PASSAGE, leaves="2"), stock=NO_LEAF,
        ),
        Question(
            "groove", "groove-and-tenon", ("panel_thickness", "outer_blade", "chippers"),
            ties=FROM_SURVEY,
        ),
        Question(
            "doors", "door-set", ("meeting",) + PARTS + ("mid_rails",),
            presets={"kind": "passage", "panel_of": "solid"}, stock=DOOR_PARTS,
        ),
        Question("hinges", "hinge-layout", BUTTS),
        Question("swing", "door-swing", ("opens", "pin_out"), presets={"meets": "leaf"}),
        Question("pulls", "hardware-centers", ("height", "spacing"), title="Pulls"),
    ],
    stock=DOOR_STOCK,
    things=(HINGES, ("Pulls", ("doors", "input", "leaves"))),
    drawing="door-swing",
)  # fmt: skip
