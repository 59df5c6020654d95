"""How is the frame plowed for this panel, and what tenon fits that groove?

The groove is as wide as the stack that can really be assembled, so the tenon is cut to the stack
and not to the width that was wished for.
"""

from ..lengths import show_number
from ..tool import Answer, Count, Given, Input, Length, Rows, Scale, Tool
from .dado_stack import stack_words
from .groove_joint import Joint
from .groove_views import joint_view, setup_view

LOOSE = 1 / 64
THIN_WALL = 3 / 16


def work(given: Given, scale: Scale) -> Answer:
    """Return the stack, the groove, the tenon and the saw's settings for both."""
    joint = Joint(given, scale)
    answer = Answer(scale)
    _figures(answer, joint)
    _tables(answer, joint)
    answer.draw(joint_view(joint, scale))
    answer.draw(setup_view(joint, scale))
    _notes(answer, joint)
    _warn(answer, joint)
    return answer


def _figures(answer: Answer, joint: Joint) -> None:
    answer.length("stack_width", joint.stack, label="Stack, true width", lead=True, fine=True)
    answer.length(
        "shoulder_depth", joint.shoulder_depth, label="Shoulder, each face", lead=True, fine=True
    )
    answer.words(
        "stack",
        stack_words(joint.above, joint.chippers, joint.shims, answer.scale),
        label="Assemble",
    )
    answer.length("groove_width", joint.groove_width, label="Groove wanted, at least", fine=True)
    answer.length("panel_slack", joint.stack - joint.panel, label="Panel's slack in it", fine=True)
    answer.length("groove_depth", joint.groove_depth, label="Groove depth", fine=True)
    answer.length("tenon_thickness", joint.tenon_thickness, label="Tenon thickness", fine=True)
    answer.length("tenon_length", joint.tenon_length, label="Tenon length", fine=True)
    if joint.passes > 1:
        answer.count("passes", joint.passes, label="Passes for each cheek")
    else:
        answer.length(
            "bury", joint.stack - joint.tenon_length, label="Bury in the fence", fine=True
        )
    answer.length("wall", joint.wall, label="Each wall of the groove", fine=True)
    answer.length("third", joint.stock / 3, label="A third of the stock", fine=True)


def _tables(answer: Answer, joint: Joint) -> None:
    rows: list[list[str]] = []
    pick = 0
    for stack in (joint.below, joint.above):
        if stack is not None:
            pick = len(rows)
            slack = stack.width - joint.panel
            said = "short by " + answer.scale.decimal(-slack) if slack < 0 else ""
            rows.append(
                [
                    stack_words(stack, joint.chippers, joint.shims, answer.scale),
                    answer.scale.decimal(stack.width),
                    said or answer.scale.decimal(slack),
                ]
            )
    answer.table(
        "Stacks on either side", ["Between two outer blades", "Width", "Slack"], rows, pick
    )


def _notes(answer: Answer, joint: Joint) -> None:
    answer.note(
        "Plow the grooves first, the show face of every piece against the fence, and mark it. Then "
        "try the tenon in scrap, a cut from each face: where the groove sits off center, set the "
        "blades anew for the second face until the faces are flush."
    )
    answer.note(
        "Stagger the chippers' teeth into the outer blades' gullets and spread the shims over "
        "the gaps between blades. Plow a scrap and try the panel: paint and a thick finish need "
        "room too."
    )
    _way_note(answer, joint)
    deeper = joint.tenon_length - joint.groove_depth
    if deeper > 1e-9:
        answer.note(
            f"The tenon is {answer.scale.finer().length(deeper)} longer than the groove is deep: "
            "mortise the groove's bottom by that much more at each joint."
        )
    elif deeper > -1e-9:
        answer.note(
            "The tenon reaches the groove's bottom: leave 1/32 for glue, or the shoulders may "
            "not close."
        )


def _way_note(answer: Answer, joint: Joint) -> None:
    if joint.passes == 1:
        answer.note(
            "Tenons in one pass per face: a sacrificial fence covers "
            f"{answer.scale.decimal(joint.stack - joint.tenon_length)} of the stack, the rail's "
            "end runs against it on the miter gauge. Raise the blades into that fence slowly."
        )
        return
    answer.note(
        f"Tenons in {joint.passes} passes per face on the miter gauge: set a stop for the "
        "shoulder, cut it first, then move out to the end."
    )


def _warn(answer: Answer, joint: Joint) -> None:
    scale = answer.scale
    if joint.stack - joint.groove_width > LOOSE:
        answer.caution(
            f"The nearest stack is {scale.decimal(joint.stack - joint.groove_width)} wider than "
            "the groove wanted: the panel will rattle. Add a thinner shim, or plow with a "
            "narrower stack in two passes."
        )
    share = joint.stack / joint.stock
    if share > 0.5:
        answer.caution(
            f"The groove takes {show_number(100 * share, 0)} % of the thickness: more than half "
            "leaves the walls too weak. Use thicker stock, or rabbet the panel to a thinner tongue."
        )
    elif joint.stack > joint.stock / 3 + LOOSE:
        answer.note(
            f"The groove takes {show_number(100 * share, 0)} % of the thickness, more than the "
            "old third; up to a half is accepted where machines cut the joint."
        )
    if joint.wall < THIN_WALL:
        answer.caution(
            f"Walls only {scale.finer().length(joint.wall)} thick split easily: don't lever the "
            "panel in, and keep nails out of them."
        )


def _columns(noun: str, most: float) -> "list[Input]":
    return [
        Length("thickness", "Thickness", most=most, help=f"Of each {noun}, as measured."),
        Count("count", "How many", default=1, most=12),
    ]


TOOL = Tool(
    slug="groove-and-tenon",
    place="saw",
    title="Groove and tenon",
    question="Plow the frame for this panel: which stack, and what tenon suits it?",
    finds=("dado", "mortise", "stub tenon", "slot", "plywood"),
    inputs=[
        Length("panel_thickness", "Panel thickness", most=6, help="As measured with a caliper."),
        Length("stock_thickness", "Stock thickness", most=12, help="Of stiles and rails."),
        Length(
            "slack",
            "Slack",
            default="0.005",
            least=0,
            most=0.25,
            help="Least room for the panel's thickness, in all: 0.005 to 0.010.",
        ),
        Length("groove_depth", "Groove depth", default="3/8", most=6),
        Length(
            "tenon_length",
            "Tenon length",
            optional=True,
            most=12,
            default_text="1/32 less than the groove",
        ),
        Length(
            "tenon_play",
            "Tenon play",
            default=0,
            least=0,
            most=0.25,
            help="How much thinner than the groove; 0 is pared to a hand fit.",
        ),
        Length("outer_blade", "Outer blade", default="1/8", most=0.5, help="Each of the two."),
        Rows("chippers", "Chippers", _columns("chipper", 0.5), row="chipper", least=0, most=12),
        Rows("shims", "Shims", _columns("shim", 0.125), row="shim", least=0, most=12),
        Length(
            "shims_per_gap",
            "Shims per gap",
            default="1/32",
            least=0,
            most=0.5,
            help="Most for each gap between blades: wider than the teeth overlap leaves a rib.",
        ),
    ],
    work=work,
    example={
        "panel_thickness": "0.380",
        "stock_thickness": "1 3/8",
        "chippers": [{"thickness": "1/8", "count": 4}, {"thickness": "1/16", "count": 1}],
        "shims": [{"thickness": "0.005", "count": 2}, {"thickness": "0.010", "count": 2}],
    },
    cautions=[
        "Dado stack: unplug the saw to change it, never stack wider than the saw allows, and "
        "see that the nut has its full thread. Where the guard can't stay on, hold the work with "
        "featherboards or a jig, and push with a block, never with the hand over the cut.",
        "Take a deep groove in two heights; a saw that labors is cutting too much at once.",
    ],
    sources=[
        "A third of the mortised stock's thickness, a half in power-tool texts: woodworking "
        "magazine articles on mortise and tenon.",
        "Chippers of 1/8 and 1/16, shims of .005, .010 and .020: articles on stacked dado sets.",
        "Grooves 3/8 deep: woodworkers' forum practice on panel expansion.",
        "Featherboards or a jig where the guard can't be used: California Code of Regulations, "
        "Title 8, section 4296(a).",
        "Shims of 1/32 per gap at most, tenon 1/32 short of the groove's bottom, walls of 3/16 "
        "and more: common practice, no source.",
    ],
)
