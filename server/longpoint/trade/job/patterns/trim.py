"""Patterns of trim: windows, base and crown around a room, wall frames, frames out of square."""

from .pattern import Pattern, Question

WINDOW = Pattern(
    "window",
    "Window with stool and apron",
    ("casing", "sill", "window trim", "returns"),
    [
        Question(
            "casing", "casing-set",
            ("opening_width", "opening_height", "casing_width", "casing_thickness", "head",
             "stool_inside", "stool_thickness", "apron_width", "apron_thickness"),
            presets={"opening": "stool", "reveal": "3/16", "returns": True},
            stock={"casing": "casing", "block": "blocks", "stool": "stool", "apron": "apron"},
        ),
    ],
    stock=(("casing", "Casing", "stick"), ("stool", "Stool", "stick"),
           ("apron", "Apron", "stick"), ("blocks", "Corner blocks", "each")),
    drawing="casing-set",
)  # fmt: skip

BASE = Pattern(
    "base-room",
    "Base around a room",
    ("baseboard", "skirting", "chair rail", "shoe"),
    [
        Question(
            "run", "trim-run",
            ("walls", "openings", "trim_thickness", "closed", "first_end", "inside_joint",
             "stick"),
            stock={"all": "base"},
        ),
    ],
    stock=(("base", "Base", "stick"),),
    drawing="trim-run",
)  # fmt: skip

CROWN = Pattern(
    "crown-room",
    "Crown around a room",
    ("cornice", "ceiling", "crown molding", "cove"),
    [
        Question(
            "run", "crown-corner",
            ("walls", "crown_by", "spring", "width", "drop", "projection", "closed",
             "first_end", "inside_joint", "stick"),
            presets={"task": "run"}, stock={"all": "crown"},
        ),
    ],
    stock=(("crown", "Crown", "stick"),),
    drawing="crown-corner",
)  # fmt: skip

WALL_FRAMES = Pattern(
    "wall-frames",
    "Wall frames",
    ("wainscot", "picture frame molding", "panel molding", "box molding"),
    [
        Question(
            "frames", "wall-frames",
            ("length", "height", "trim_width", "count", "between", "openings", "obstacles"),
            presets={"between": "3"}, stock={"all": "molding"},
        ),
    ],
    stock=(("molding", "Panel molding", "stick"),),
    drawing="wall-frames",
)  # fmt: skip

ODD_FRAME = Pattern(
    "odd-frame",
    "Out-of-square frame",
    ("crooked opening", "racked", "odd miters", "trapezoid"),
    [
        Question(
            "frame", "odd-frame",
            ("fit", "trim_width", "width_top", "width_bottom", "height_left", "height_right",
             "diagonal_a", "diagonal_b"),
            stock={"all": "trim"},
        ),
    ],
    stock=(("trim", "Trim", "stick"),),
    drawing="odd-frame",
)  # fmt: skip
