"""What is asked of each thing that is coated."""

from ...finish.conventions import CONVENTIONS, FLAT
from ...tool import Choice, Count, Length, Number, Rows, Text
from .things import DOORS, PANELLED

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ...inputs import Input

SIZED = DOORS + ("board",)
RAISED = {"no": 0, "one": 1, "both": 2}


class _Thickness(Length):
    """Asked only where edges are coated."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        return earlier["sides"] in ("all", "face-edges")

    def is_always_asked(self) -> bool:
        return False


class _Factor(Number):
    """Asked of what has faces."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        return earlier["kind"] in SIZED

    def is_always_asked(self) -> bool:
        return False


def inputs() -> "list[Input]":
    """Return the form."""
    return [
        Rows(
            "things",
            "What is coated",
            _sizes() + _in_the_frame() + _counted(),
            row="piece",
            surfaces=True,
            most=200,
        ),
        Choice(
            "measured",
            "Priced by",
            list(CONVENTIONS),
            default=FLAT,
            help="How painters measure for a price, never what is bought by. Doubled: about "
            "1909; narrow trim wider: 19th century.",
        ),
    ]


def _sizes() -> "list[Input]":
    return [
        Choice(
            "kind",
            "Kind",
            [
                ("board", "board or piece"),
                ("slab", "flat door"),
                ("framed", "frame and panel"),
                ("glazed", "door with glass"),
                ("trim", "trim, by its girth"),
                ("area", "area known"),
                ("off", "area left out"),
            ],
            default="board",
        ),
        Choice(
            "sides",
            "Coated",
            [
                ("all", "both faces and edges"),
                ("faces", "both faces"),
                ("face-edges", "one face and edges"),
                ("face", "one face"),
            ],
            default="all",
            only_when=("kind",) + SIZED,
        ),
        Length("width", "Width", only_when=("kind",) + SIZED),
        Length("girth", "Girth", help="Tape pressed into each curve.", only_when=("kind", "trim")),
        Length("length", "Height or length", only_when=("kind", "trim") + SIZED),
        _Thickness("thickness", "Thickness", most=24),
        Number("area", "Area", measure="area", above=0, only_when=("kind", "area", "off")),
    ]


def _in_the_frame() -> "list[Input]":
    panelled, raised = ("kind",) + PANELLED, ("raised", "one", "both")
    return [
        Count("openings", "Panel openings", most=60, only_when=panelled),
        Length(
            "opening_width",
            "Opening width",
            help="Of each, between the middles of the sticking.",
            only_when=panelled,
        ),
        Length(
            "opening_heights",
            "Opening heights, added",
            help="Of all openings together.",
            only_when=panelled,
        ),
        Length(
            "sticking_girth",
            "Sticking girth",
            least=0,
            most=24,
            help="Around its shape, face to panel; of a square edge the depth of the step.",
            only_when=panelled,
        ),
        Length(
            "sticking_width",
            "Sticking width",
            least=0,
            most=12,
            default=0,
            help="As it lies in the face; of a square edge 0.",
            only_when=panelled,
        ),
        Choice(
            "raised",
            "Panels raised",
            [("no", "flat"), ("one", "one face"), ("both", "both faces")],
            default="no",
            only_when=("kind", "framed"),
        ),
        Length("bevel_width", "Bevel width", most=24, only_when=raised),
        Length("bevel_rise", "Bevel rise", least=0, most=4, only_when=raised),
        Length("field_step", "Step to the field", least=0, most=2, default=0, only_when=raised),
    ]


def _counted() -> "list[Input]":
    return [
        _Factor(
            "factor",
            "Price factor",
            above=0,
            most=20,
            optional=True,
            default_text="by kind",
            help="Where priced by a factor: 1.30 paneled, 1.20 flat, "
            "0.80 glass, 1.00 part glass, 1.80 louvered.",
        ),
        Count("count", "How many", default=1),
        Text("name", "Name", optional=True),
    ]
