"""What frames on a wall ask for."""

from ...tool import Choice, Count, Input, Length, Rows, Text

MOST = 40
_HAS_BLOCK = ("block", "stop", "notch")

OPENING: "list[Input]" = [
    Text("name", "What", optional=True, offers=(("Window", None), ("Door", None))),
    Length("from_left", "Left end to casing", least=0, help="To its outer edge."),
    Length("width", "Width over the casings", help="From outer edge to outer edge."),
    Length(
        "bottom",
        "Lower edge above bottom",
        optional=True,
        default_text="a door: none under",
        help="Of apron or casing, above the bottom line.",
    ),
    Length(
        "top",
        "Upper edge above bottom",
        optional=True,
        default_text="past the top: none over",
        help="Of the head casing, above the bottom line.",
    ),
]

INPUTS: "list[Input]" = [
    Length("length", "Length", help="From end to end of what the frames share."),
    Length("height", "Height", help="From the bottom line, such as the base, to the top one."),
    Length("trim_width", "Trim width", quantity="trim width"),
    Count(
        "count",
        "Frames",
        optional=True,
        most=MOST,
        default_text="or a target width",
        help="Of full height, in all runs together.",
    ),
    Length("target_width", "Target width", optional=True, default_text="or how many"),
    Rows(
        "openings",
        "Windows and doors",
        OPENING,
        row="window or door",
        least=0,
        help="Frames go around it: beside, under and over.",
    ),
    Length("between", "Between", default=3, least=0),
    Length("end_margin", "At each end", optional=True, least=0, default_text="as between"),
    Length(
        "casing_margin",
        "To casings",
        optional=True,
        least=0,
        default_text="as between",
    ),
    Length("top_margin", "Above", optional=True, least=0, default_text="as between"),
    Length("bottom_margin", "Below", optional=True, least=0, default_text="as above"),
    Choice(
        "block",
        "Corner blocks",
        [("none", "none, mitered"), ("stop", "trim stops at them"), ("notch", "let in")],
        default="none",
    ),
    Length("block_size", "Block size", only_when=_HAS_BLOCK),
    Length(
        "set_in",
        "Blocks set in",
        optional=True,
        default_text="half the trim",
        help="From the frame's outer edges; the trim passes outside, mitered.",
        only_when=("block", "notch"),
    ),
    Rows(
        "obstacles",
        "Outlets and switches",
        [
            Text(
                "name",
                "What",
                optional=True,
                offers=(("Outlet", None), ("Switch", None), ("Vent", None)),
            ),
            Length("center", "Center from left"),
            Length(
                "up",
                "Center above bottom",
                optional=True,
                default_text="middle of the frames",
            ),
            Length("width", "Plate width", default="2 3/4"),
            Length("height", "Plate height", default="4 1/2"),
        ],
        row="outlet or switch",
        least=0,
    ),
    Choice("on", "On", [("wall", "a wall"), ("panel", "a door panel")], default="wall"),
    Length(
        "trim_thickness",
        "Trim thickness",
        optional=True,
        default_text="not said",
        help="It is only written on the pieces.",
        quantity="trim thickness",
    ),
]
