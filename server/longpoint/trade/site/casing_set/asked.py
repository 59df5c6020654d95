"""What a set of casing asks for."""

from ...tool import Choice, Flag, Input, Length


def _inches(name: str, label: str, default: str, help: str, *when: str) -> Length:
    return Length(name, label, default=default, least=0, most=24, help=help, only_when=when or None)


def _maybe(name: str, label: str, words: str, help: str, *when: str) -> Length:
    return Length(name, label, optional=True, default_text=words, help=help, only_when=when or None)


INPUTS: "list[Input]" = [
    Choice(
        "opening",
        "Opening",
        [
            ("door", "a door"),
            ("stool", "a window with stool and apron"),
            ("around", "a window cased all around"),
        ],
    ),
    Length(
        "opening_width",
        "Opening width",
        help="Between the jambs.",
        quantity="opening width",
        was=("width",),
    ),
    Length(
        "opening_height",
        "Opening height",
        help="From floor, stool or lower jamb to the head jamb.",
        quantity="opening height",
        was=("height",),
    ),
    Length("casing_width", "Casing width", quantity="casing width"),
    Length("casing_thickness", "Casing thickness", quantity="casing thickness"),
    Choice(
        "head",
        "Head",
        [
            ("miter", "mitered"),
            ("butt", "butted on the legs"),
            ("blocks", "between corner blocks"),
        ],
        default="miter",
    ),
    Length(
        "reveal",
        "Reveal",
        default="3/16",
        least=0,
        most=24,
        help="How far the casing stands back from the jamb's face.",
        quantity="reveal",
    ),
    _maybe("head_width", "Head width", "as the legs", "", "head", "miter", "butt"),
    _inches("overhang", "Overhang", "1/2", "Of the head, past each leg.", "head", "butt"),
    _maybe(
        "block_size",
        "Corner block",
        "the casing and 1/4",
        "Square, centered on leg and head.",
        "head",
        "blocks",
    ),
    _maybe("block_thickness", "Block thickness", "the casing and 1/4", "", "head", "blocks"),
    _maybe("plinth_height", "Plinth height", "no plinths", "", "opening", "door"),
    _maybe("plinth_width", "Plinth width", "the casing and 1/4", "", "opening", "door"),
    _maybe("plinth_thickness", "Plinth thickness", "the casing and 1/4", "", "opening", "door"),
    _inches(
        "stool_nose",
        "Stool nose",
        "3/4",
        "Past the casing, in front and at the ends.",
        "opening",
        "stool",
    ),
    _maybe(
        "stool_inside",
        "Wall to sash",
        '3", not taped',
        "From the wall's face in to the sash: the stool's notches are as deep.",
        "opening",
        "stool",
    ),
    Length("stool_thickness", "Stool thickness", default="3/4", only_when=("opening", "stool")),
    _maybe("apron_width", "Apron width", "as the casing", "", "opening", "stool"),
    _maybe("apron_thickness", "Apron thickness", "as the casing", "", "opening", "stool"),
    Flag("returns", "Returned ends", default=True, only_when=("opening", "stool")),
]
