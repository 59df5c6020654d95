"""How is a panel raised: what is set on saw or cutter, and what tongue sits in the groove?"""

from ...tool import Answer, Choice, Given, Gives, Length, Refusal, Scale, Tool
from .section import Cutter, MilledPanel, SawnPanel, Seat
from .views import saw_view, section_view
from .words import say_field, say_milled, say_sawn, say_seat

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...inputs import Input

BY_SAW, BY_CUTTER = "saw", "cutter"


def work(given: Given, scale: Scale) -> Answer:
    """Return the settings, the tongue, the bevel and the field."""
    blank, stock = given.number("blank_thickness"), given.maybe("stock_thickness")
    seat = Seat(
        given.number("groove_width"),
        given.number("groove_depth"),
        given.number("panel_play"),
        given.number("slack"),
    )
    _check_seat(seat, scale)
    answer = Answer(scale)
    if given.text("cut_with") == BY_SAW:
        sawn = SawnPanel(blank, seat, given.number("bevel_shows"), given.number("step"), scale)
        say_sawn(answer, sawn)
        say_seat(answer, sawn, stock, 0.0)
        say_field(answer, sawn, given.maybe("panel_width"), given.maybe("panel_height"))
        answer.draw(section_view(sawn, stock, scale))
        answer.draw(saw_view(sawn, scale))
    else:
        milled = MilledPanel(blank, seat, _cutter(given), scale)
        say_milled(answer, milled)
        say_seat(answer, milled, stock, milled.relief)
        say_field(answer, milled, given.maybe("panel_width"), given.maybe("panel_height"))
        answer.draw(section_view(milled, stock, scale))
    answer.note(
        "Raise across the grain first, then along it: what tears out at a corner is then cut away."
    )
    answer.note("Finish the tongue before the panel goes in, and never glue it.")
    return answer


def _check_seat(seat: Seat, scale: Scale) -> None:
    """Refuse a play or a slack that leaves no tongue in the groove."""
    if seat.play >= seat.depth:
        raise Refusal(
            "panel_play",
            f"A play of {scale.length(seat.play)} per side takes the panel out of a groove "
            f"{scale.length(seat.depth)} deep: use less, or plow deeper.",
        )
    if seat.slack >= seat.width:
        raise Refusal("slack", "The slack takes up the whole tongue: use less.")


def _cutter(given: Given) -> Cutter:
    return Cutter(
        given.number("cutter_reach"),
        given.number("cutter_flat"),
        given.maybe("cutter_depth"),
        given.number("per_pass"),
    )


def _saw_inputs() -> "list[Input]":
    by_saw = ("cut_with", BY_SAW)
    return [
        Length(
            "bevel_shows",
            "Bevel that shows",
            help="Between the frame and the field.",
            only_when=by_saw,
        ),
        Length(
            "step",
            "Step at the field",
            default="1/16",
            least=0,
            help="How deep the field is scored around; 0 for none.",
            only_when=by_saw,
        ),
    ]


def _cutter_inputs() -> "list[Input]":
    by_cutter = ("cut_with", BY_CUTTER)
    return [
        Length(
            "cutter_reach",
            "Cutter's reach",
            help="How wide it cuts, the tongue included.",
            only_when=by_cutter,
        ),
        Length(
            "cutter_flat",
            "Flat for the tongue",
            help="How much of the reach is flat.",
            only_when=by_cutter,
        ),
        Length(
            "cutter_depth",
            "Profile height",
            optional=True,
            default_text="not known",
            help="From the flat to the field: from the cutter's sheet, or a scrap.",
            only_when=by_cutter,
        ),
        Length(
            "per_pass",
            "Max depth per pass",
            default="1/8",
            help="Less in hard wood and with a small machine.",
            only_when=by_cutter,
        ),
    ]


TOOL = Tool(
    slug="panel-raise",
    place="saw",
    title="Panel raise",
    question="A raised panel for this groove: what is set on saw or cutter?",
    finds=("raised panel", "fielded panel", "bevel", "tongue", "fielding", "router", "shaper"),
    inputs=[
        Choice(
            "cut_with",
            "Cut with",
            [(BY_SAW, "table saw"), (BY_CUTTER, "raising cutter")],
        ),
        Length("blank_thickness", "Blank thickness", help="Of the panel before it is raised."),
        Length(
            "groove_width",
            "Groove width",
            help="As it is really cut.",
            quantity="groove width",
        ),
    ]
    + _saw_inputs()
    + _cutter_inputs()
    + [
        Length("groove_depth", "Groove depth", default="3/8", quantity="groove depth"),
        Length(
            "panel_play",
            "Panel play",
            default="1/8",
            least=0,
            most=6,
            help="Per side, between the panel and the groove.",
            quantity="panel play",
        ),
        Length(
            "slack",
            "Slack",
            default="0.005",
            least=0,
            most=0.25,
            help="Of the tongue in the groove's width, in all.",
        ),
        Length(
            "stock_thickness",
            "Stock thickness",
            optional=True,
            default_text="not known",
            help="Of the frame: it tells how the field lies to its face.",
            quantity="stock thickness",
        ),
        Length(
            "panel_width",
            "Panel width",
            optional=True,
            default_text="not known",
            quantity="panel width",
        ),
        Length(
            "panel_height",
            "Panel height",
            optional=True,
            default_text="not known",
            quantity="panel height",
        ),
    ],
    work=work,
    gives=[
        Gives("saw_bevel", "angle", "Blade's bevel", short="bevel", sometimes=True),
        Gives("fence", "length", "Blade off the fence", short="fence", sometimes=True),
        Gives("blade_height", "length", "Blade height", short="high", sometimes=True),
        Gives("score_depth", "length", "Score around the field", short="score", sometimes=True),
        Gives("mouth_slack", "length", "Slack at the groove's mouth", sometimes=True),
        Gives("cut_depth", "length", "Off the face", short="off", sometimes=True),
        Gives("tongue", "length", "Tongue thickness", short="tongue", sometimes=True),
        Gives("passes", "count", "Passes", sometimes=True),
        Gives("back_relief", "length", "Rabbet off the back", short="back", sometimes=True),
        Gives("tongue_in", "length", "Tongue in the groove", short="in"),
        Gives("shows", "length", "Bevel that shows", short="shows"),
        Gives("bevel_width", "length", "Bevel, edge to field", short="to field"),
        Gives("field_behind", "length", "Field to the frame's face", sometimes=True),
        Gives("field_width", "length", "Field, width", sometimes=True),
        Gives("field_height", "length", "Field, height", sometimes=True),
    ],
    example={
        "cut_with": "saw",
        "blank_thickness": "3/4",
        "groove_width": "0.255",
        "bevel_shows": "1 1/2",
        "stock_thickness": "3/4",
        "panel_width": "11 1/2",
        "panel_height": "24",
    },
    cautions=[
        "Never raise a panel too small to hold: raise a longer one and cut it up.",
    ],
    sources=[
        "Angle, edge and height from the thickness, the groove and the bevel that shows: plane "
        "geometry.",
        "Play of 1/8 per side, panels never glued: woodworking magazine articles on raised panels.",
        "The tongue fitted where it is pushed home, a step of 1/16, an edge of 1/8 at least, "
        "passes of 1/8, ends first: common practice, no source.",
    ],
)
