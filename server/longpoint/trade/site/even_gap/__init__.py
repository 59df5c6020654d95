"""The strike gap is uneven: which hinge is shimmed or let in deeper, and by how much?"""

from ...cautions import FIRE_DOOR, HEAVY_DOOR
from ...door import gaps
from ...door.hinge_count import hinge_names, usual_count
from ...tool import Answer, Count, Given, Gives, Length, Refusal, Scale, Tool
from .tilt import LEAST_GAP, SEEN, TIGHT, Tilt, is_seen
from .view import front_view
from .words import VERBS, after_words, verdict_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .tilt import Fix

ENDS = ("top", "bottom")


def work(given: Given, scale: Scale) -> Answer:
    """Return what is done at each hinge, the gaps then left, and the leaf as it hangs."""
    tilt, room = _tilt(given, scale), given.maybe("hinge_gap")
    fix = _fix(tilt, given.maybe("wanted"), room, scale)
    answer = Answer(scale)
    answer.verdict(*verdict_words(fix, tilt, room, scale))
    _figures(answer, fix)
    _hinge_side(answer, fix, room)
    if given.maybe("leaf_width") is not None:
        opens = tilt.head_change(fix.moves, given.number("leaf_width"))
        _head(answer, opens, given.maybe("head_gap_strike"))
    _each_hinge(answer, fix, given.maybe_count("hinge_count") or usual_count(tilt.height))
    answer.draw(front_view(tilt, fix.moves, scale))
    if given.maybe("wanted") is None:
        _other_way(answer, tilt, fix, room)
    _notes(answer, fix)
    return answer


def _tilt(given: Given, scale: Scale) -> Tilt:
    height = given.number("leaf_height")
    first, last = given.number("top_center"), height - given.number("bottom_center")
    if first >= height:
        raise Refusal(
            "top_center",
            f"A hinge {scale.length(first)} below its top is off a leaf {scale.length(height)} "
            "high: use less.",
        )
    if last <= first:
        raise Refusal(
            "bottom_center",
            f"{scale.length(given.number('bottom_center'))} up, the bottom hinge is not below the "
            f"top one: use less than {scale.length(height - first)}.",
        )
    return Tilt(given.number("gap_top"), given.number("gap_bottom"), height, first, last)


def _fix(tilt: Tilt, wanted: "float | None", room: "float | None", scale: Scale) -> "Fix":
    """Return the moves for the gap wanted, or those that work; refuse a hinge without room."""
    fine = scale.finer()
    if wanted is None:
        best = tilt.best(room)
        if best is None:
            raise Refusal(
                "hinge_gap",
                f"A gap of {fine.length(room or 0.0)} on the hinge side lets no hinge in deep "
                f"enough, and a shim alone leaves less than {fine.length(TIGHT)} at the strike: "
                "plane the strike edge where it rubs.",
            )
        return best
    fix = tilt.fix(wanted)
    deeper = -min(fix.moves)
    if room is not None and deeper > room + SEEN:
        raise Refusal(
            "hinge_gap",
            f"A hinge would go {fine.length(deeper)} deeper, but there is a gap of only "
            f"{fine.length(room)} on its side: ask for {fine.length(tilt.ends[0] + room)} or less "
            "at the strike, or plane it.",
        )
    return fix


def _figures(answer: Answer, fix: "Fix") -> None:
    done = []
    for which, move in zip(ENDS, fix.moves):
        if is_seen(move):
            name = ("pack_" if move > 0 else "deepen_") + which
            answer.length(name, abs(move), lead=True, fine=True)
            done.append(which)
    if not done:
        answer.words("hinge", "neither", lead=True)
    else:
        answer.words("hinge", "both" if len(done) == 2 else done[0])
    answer.length("even_gap", fix.even, fine=True)


def _hinge_side(answer: Answer, fix: "Fix", room: "float | None") -> None:
    """Add what the gap on the hinge side must hold, or what is left of it at both hinges."""
    deeper, fine = max(0.0, -min(fix.moves)), answer.scale.finer()
    if room is not None:
        for which, move in zip(ENDS, fix.moves):
            answer.length("hinge_gap_" + which, max(0.0, room + move), fine=True)
    elif is_seen(deeper):
        answer.length("hinge_gap_needed", deeper, fine=True)
        answer.note(
            f"The gap on the hinge side must hold the {fine.length(deeper)} that the hinge goes "
            "deeper: measure it first, or the leaf binds there."
        )


def _head(answer: Answer, opens: float, now: "float | None") -> None:
    """Add what happens to the gap over the leaf at its strike edge."""
    answer.length("head_change", opens, fine=True)
    fine = answer.scale.finer()
    if is_seen(opens):
        answer.note(after_words(opens, fine))
    if now is None:
        return
    answer.length("head_gap_after", now + opens, fine=True)
    if now + opens < TIGHT - SEEN:
        answer.caution(
            f"The head gap at the strike is then {fine.length(now + opens)}: plane the leaf's top "
            f"there, {fine.length(LEAST_GAP - now - opens)} or more, before you hang it again."
        )


def _each_hinge(answer: Answer, fix: "Fix", count: int) -> None:
    """List every hinge: those between must follow, or the leaf is strained."""
    (top, bottom), rows = fix.moves, []
    fine = answer.scale.finer()
    for number, name in enumerate(hinge_names(count)):
        move = top + (bottom - top) * number / (count - 1)
        if is_seen(move):
            rows.append([name, VERBS[move > 0], fine.length(abs(move)), fine.decimal(abs(move))])
        else:
            rows.append([name, "leave", "", ""])
    answer.table("Each hinge", ["Hinge", "Do", "By", "Decimal"], rows)
    if count > 2 and (is_seen(top) or is_seen(bottom)):
        answer.note("The hinges between follow as listed, or they strain the leaf.")


def _other_way(answer: Answer, tilt: Tilt, fix: "Fix", room: "float | None") -> None:
    """Say what the other hinge alone would do, where it has the room."""
    less, more = tilt.ends
    if not is_seen(more - less):
        return
    even = more if fix.even - less <= SEEN else less
    if even == more and room is not None and more - less > room + SEEN:
        return
    top, bottom = tilt.fix(even).moves
    which, move = ("top", top) if abs(top) > abs(bottom) else ("bottom", bottom)
    fine = answer.scale.finer()
    do = f"shim the {which} hinge" if move > 0 else f"let the {which} hinge alone in deeper,"
    answer.note(
        f"Or {do} by {fine.length(abs(move))}: the gap is then {fine.length(even)} all along."
    )


def _notes(answer: Answer, fix: "Fix") -> None:
    if fix.even < LEAST_GAP - SEEN:
        answer.note(
            f"A strike gap of {answer.scale.finer().length(fix.even)} is tight: ease the edge if "
            "paint or damp makes it rub."
        )
    answer.note(
        "Tighten every screw first: a leaf that sags often hangs on loose ones. A shim goes "
        "behind the whole hinge leaf, and may be shared between the door's and the jamb's."
    )


def _strike(name: str, label: str) -> Length:
    return Length(name, label, least=0, most=2, help="On the strike side; 0 where it rubs.")


TOOL = Tool(
    slug="even-gap",
    place="site",
    title="Even gap",
    question="The strike gap is uneven: which hinge is shimmed or let in deeper, by how much?",
    finds=("shim", "reveal", "sag", "hinge bind", "hang a door", "prehung"),
    inputs=[
        _strike("gap_top", "Gap at the top"),
        _strike("gap_bottom", "Gap at the bottom"),
        gaps.leaf_height("door_height"),
        Length(
            "top_center",
            "Top hinge center",
            default="6 5/8",
            help="Down from the leaf's top.",
            quantity="hinge center, top",
        ),
        Length(
            "bottom_center",
            "Bottom hinge center",
            default="11 1/4",
            help="Up from the leaf's bottom.",
            quantity="hinge center, bottom",
        ),
        Length("wanted", "Gap wanted", optional=True, most=2, default_text="even, the easy way"),
        gaps.hinge_gap(
            optional=True, default_text="not measured", help="On the hinge side, as it is now."
        ),
        Count(
            "hinge_count",
            "Hinges",
            least=2,
            most=10,
            optional=True,
            default_text="by height",
            quantity="hinge count",
            was=("hinges",),
        ),
        gaps.leaf_width(
            "door_width",
            optional=True,
            default_text="not needed",
            help="To see what happens to the gap at the head.",
        ),
        Length(
            "head_gap_strike",
            "Head gap at the strike",
            optional=True,
            least=0,
            most=2,
            default_text="not measured",
            help="As it is now; with the leaf's width it is told what is left.",
        ),
    ],
    work=work,
    gives=[
        Gives("pack_top", "length", "Shim top hinge", short="shim top", sometimes=True),
        Gives("deepen_top", "length", "Top hinge deeper", short="top deeper", sometimes=True),
        Gives("pack_bottom", "length", "Shim bottom hinge", short="shim bottom", sometimes=True),
        Gives(
            "deepen_bottom", "length", "Bottom hinge deeper", short="bottom deeper", sometimes=True
        ),
        Gives("hinge", "text", "Which hinge", short="hinge"),
        Gives("even_gap", "length", "Strike gap then", short="strike gap"),
        Gives(
            "hinge_gap_needed",
            "length",
            "Hinge gap that must be there",
            short="hinge gap",
            sometimes=True,
        ),
        Gives("hinge_gap_top", "length", "Hinge gap then, at the top hinge", sometimes=True),
        Gives("hinge_gap_bottom", "length", "Hinge gap then, at the bottom hinge", sometimes=True),
        Gives(
            "head_change",
            "length",
            "Head gap at the strike, + opens, - closes",
            short="head gap",
            sometimes=True,
        ),
        Gives("head_gap_after", "length", "Head gap at the strike then", sometimes=True),
    ],
    example={
        "gap_top": "3/16",
        "gap_bottom": "3/32",
        "leaf_height": "79",
        "leaf_width": "30",
    },
    cautions=[HEAVY_DOOR, FIRE_DOOR],
    sources=[
        "A stiff leaf moves along a straight line between its hinges (plane geometry); the gap "
        "across from a hinge shrinks by the shim behind it.",
        "Hinge centers as the hinge layout places 3 1/2 hinges; a shim before a deeper mortise "
        "while 1/16 is left, 1/32 where there is no room: common practice, no source.",
    ],
)
