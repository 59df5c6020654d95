"""How is the frame plowed for this panel, and what tenon fits that groove?

The groove is as wide as the cutter and its passes really make it, so the tenon is cut to that and
not to the width that was wished for.
"""

from ...refusal import Refusal
from ...tool import Answer, Choice, Count, Given, Gives, Input, Length, Rows, Scale, Tool
from . import words
from .joint import STUB, GrooveJoint
from .plow import Kit, Plow, with_cutter, with_stack
from .stacks import Stack, stack_words
from .views import joint_view, plow_view, setup_view

STACK, BLADE, BIT = "stack", "blade", "bit"
NOUNS = {STACK: "outer blade", BLADE: "blade", BIT: "bit"}


def work(given: Given, scale: Scale) -> Answer:
    """Return the cutter's setup, the groove, the tenon and the settings for both."""
    cut_with = given.text("cut_with")
    kit = _kit(given) if cut_with == STACK else None
    joint = GrooveJoint(
        given.number("panel_thickness"),
        given.number("stock_thickness"),
        given.number("groove_depth"),
        (_tenon_length(given, scale), given.number("tenon_play")),
        _plow(given, kit, scale),
        scale,
    )
    answer = Answer(scale)
    cutter = words.cutter_words(joint, kit, NOUNS[cut_with], scale)
    words.verdict(answer, joint, cutter)
    _figures(answer, joint, _wanted(given), cutter)
    if kit is not None:
        _stacks(answer, joint, kit)
    answer.draw(lambda: joint_view(joint, scale))
    answer.draw(lambda: plow_view(joint, scale))
    stacked = kit is not None and joint.plow.stack is not None
    answer.draw(lambda: setup_view(joint, given.number("outer_blade") if stacked else 0.0, scale))
    words.add_notes(answer, joint, kit, NOUNS[cut_with])
    words.warn(answer, joint)
    answer.caution(ROUTER if cut_with == BIT else DADO if cut_with == STACK else RIP)
    return answer


def _wanted(given: Given) -> float:
    return given.number("panel_thickness") + given.number("slack")


def _kit(given: Given) -> Kit:
    rows = [
        [(row.number("thickness"), row.count("count")) for row in given.rows(name)]
        for name in ("chippers", "shims")
    ]
    return Kit(given.number("outer_blade"), rows[0], rows[1], given.number("shims_per_gap"))


def _plow(given: Given, kit: "Kit | None", scale: Scale) -> Plow:
    wanted = _wanted(given)
    if kit is not None:
        return with_stack(wanted, kit, scale)
    field = "kerf" if given.text("cut_with") == BLADE else "bit"
    return with_cutter(wanted, given.number(field), field, scale)


def _tenon_length(given: Given, scale: Scale) -> float:
    asked, depth = given.maybe("tenon_length"), given.number("groove_depth")
    if asked is None and depth <= STUB:
        raise Refusal(
            "groove_depth",
            f"A groove {scale.finer().length(depth)} deep holds no tenon: plow it deeper, or "
            "give the tenon's length.",
        )
    return depth - STUB if asked is None else asked


def _figures(answer: Answer, joint: GrooveJoint, wanted: float, cutter: str) -> None:
    answer.length("groove_width", joint.groove, lead=True, fine=True)
    answer.length("shoulder_depth", joint.shoulder, lead=True, fine=True)
    answer.words("stack", cutter)
    answer.length("stack_width", joint.cut, fine=True)
    answer.count("groove_passes", joint.plow.passes)
    if joint.plow.shim:
        answer.length("shim_added", joint.plow.shim, fine=True)
    answer.length("groove_wanted", wanted, fine=True)
    answer.length("panel_slack", joint.groove - joint.panel, fine=True)
    answer.length("groove_depth", joint.depth, fine=True)
    answer.length("tenon_thickness", joint.tenon_thickness, fine=True)
    answer.length("tenon_length", joint.tenon_length, fine=True)
    if joint.passes > 1:
        answer.count("passes", joint.passes)
    else:
        answer.length("bury", joint.bury, fine=True)
    answer.length("wall", joint.wall, fine=True)
    answer.length("third", joint.stock / 3, fine=True)


def _stacks(answer: Answer, joint: GrooveJoint, kit: Kit) -> None:
    """Add the nearest stacks of the kit on either side of the width wanted."""
    rows: list[list[str]] = []
    pick: int | None = None
    for stack in joint.plow.nearest:
        if stack is not None:
            pick = len(rows) if stack is joint.plow.stack else pick
            rows.append(_row(stack, joint, kit, answer.scale))
    if rows:
        columns = ["Between two outer blades", "Width", "Slack"]
        answer.table("Stacks on either side", columns, rows, pick)


def _row(stack: Stack, joint: GrooveJoint, kit: Kit, scale: Scale) -> "list[str]":
    slack = stack.width - joint.panel
    said = "short by " + scale.decimal(-slack) if slack < 0 else scale.decimal(slack)
    named = stack_words(stack, kit.chippers, kit.shims, scale)
    return [named, scale.decimal(stack.width), said]


def _columns(noun: str, most: float) -> "list[Input]":
    return [
        Length("thickness", "Thickness", most=most, help=f"Of each {noun}, as measured."),
        Count("count", "How many", default=1, most=12),
    ]


def _cutter_inputs() -> "list[Input]":
    stack = ("cut_with", STACK)
    return [
        Length(
            "outer_blade",
            "Outer blade",
            default="1/8",
            most=0.5,
            help="Each of the two.",
            only_when=stack,
        ),
        Rows(
            "chippers",
            "Chippers",
            _columns("chipper", 0.5),
            row="chipper",
            least=0,
            most=12,
            only_when=stack,
        ),
        Rows(
            "shims", "Shims", _columns("shim", 0.125), row="shim", least=0, most=12, only_when=stack
        ),
        Length(
            "shims_per_gap",
            "Shims per gap",
            default="1/32",
            least=0,
            most=0.5,
            help="Most for each gap between blades: wider than the teeth overlap leaves a rib.",
            only_when=stack,
        ),
        Length(
            "kerf",
            "Kerf",
            default="1/8",
            most=1,
            help="As measured in a test cut.",
            only_when=("cut_with", BLADE),
            quantity="kerf",
        ),
        Length("bit", "Bit", most=2, help="What it cuts.", only_when=("cut_with", BIT)),
    ]


DADO = (
    "Dado stack: unplug the saw to change it, never stack wider than the saw allows, and "
    "see that the nut has its full thread. Where the guard can't stay on, hold the work with "
    "featherboards or a jig, and push with a block, never with the hand over the cut."
)
RIP = (
    "A groove is a cut where guard and splitter can't stay on: hold the work with featherboards, "
    "push with a block, and put the guard back after it."
)
ROUTER = (
    "Router table: feed against the cutter's turning, lighter passes in hard wood, featherboards "
    "before and behind the bit."
)

TOOL = Tool(
    slug="groove-and-tenon",
    place="saw",
    title="Groove and tenon",
    question="Plow the frame for this panel: which stack, and what tenon suits it?",
    finds=("dado", "mortise", "stub tenon", "slot", "plywood", "ply", "shaker", "router"),
    inputs=[
        Length(
            "panel_thickness",
            "Panel thickness",
            most=6,
            help="As measured with a caliper: of a raised panel, its tongue.",
            quantity="panel thickness",
        ),
        Length(
            "stock_thickness",
            "Stock thickness",
            most=12,
            help="Of stiles and rails.",
            quantity="stock thickness",
        ),
        Choice(
            "cut_with",
            "Cut with",
            [(STACK, "dado stack"), (BLADE, "one blade"), (BIT, "router bit")],
            default=STACK,
        ),
        Length(
            "slack",
            "Slack",
            default="0.005",
            least=0,
            most=0.25,
            help="Least room for the panel's thickness, in all: 0.005 to 0.010.",
        ),
        Length("groove_depth", "Groove depth", default="3/8", most=6, quantity="groove depth"),
        Length(
            "tenon_length",
            "Tenon length",
            optional=True,
            most=12,
            default_text="1/32 less than the groove",
            quantity="tenon length",
        ),
        Length(
            "tenon_play",
            "Tenon play",
            default=0,
            least=0,
            most=0.25,
            help="How much thinner than the groove; 0 is pared to a hand fit.",
        ),
    ]
    + _cutter_inputs(),
    work=work,
    gives=[
        Gives("groove_width", "length", "Groove width", short="groove", quantity="groove width"),
        Gives("shoulder_depth", "length", "Shoulder, each face", short="shoulder"),
        Gives("stack", "text", "Set up", short="set up"),
        Gives("stack_width", "length", "One pass cuts", short="one pass"),
        Gives("groove_passes", "count", "Passes for the groove", short="passes"),
        Gives("shim_added", "length", "Shim to add", sometimes=True),
        Gives("groove_wanted", "length", "Groove wanted, at least", short="wanted"),
        Gives("panel_slack", "length", "Panel's slack in it", short="slack"),
        Gives("groove_depth", "length", "Groove depth", short="deep", quantity="groove depth"),
        Gives("tenon_thickness", "length", "Tenon thickness", short="tenon"),
        Gives("tenon_length", "length", "Tenon length", short="long", quantity="tenon length"),
        Gives("passes", "count", "Passes for each cheek", short="passes", sometimes=True),
        Gives("bury", "length", "Bury in the fence", short="buried", sometimes=True),
        Gives("wall", "length", "Each wall, and fence to cutter", short="wall"),
        Gives("third", "length", "A third of the stock", short="a third"),
    ],
    example={
        "panel_thickness": "0.380",
        "stock_thickness": "1 3/8",
        "chippers": [{"thickness": "1/8", "count": 4}, {"thickness": "1/16", "count": 1}],
        "shims": [{"thickness": "0.005", "count": 2}, {"thickness": "0.010", "count": 2}],
    },
    cautions=[
        "Take a deep groove in two heights; a saw that labors is cutting too much at once.",
    ],
    sources=[
        "A third of the mortised stock's thickness, a half in power-tool texts: woodworking "
        "magazine articles on mortise and tenon.",
        "Chippers of 1/8 and 1/16, shims of .005, .010 and .020: articles on stacked dado sets. "
        "Painter's tape about .005: woodworking magazine article.",
        "Grooves 3/8 deep: woodworkers' forum practice on panel expansion.",
        "Featherboards or a jig where the guard can't be used: California Code of Regulations, "
        "Title 8, section 4296(a).",
        "Shims of 1/32 per gap at most, tenon 1/32 short of the groove's bottom, walls of 3/16 "
        "and more, two passes turned face for face: common practice, no source.",
    ],
)
