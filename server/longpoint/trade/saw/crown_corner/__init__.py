"""Crown at one corner or along a run of walls: saw settings, pieces, and the sticks for them."""

from ...cautions import SAW, TEST_CUT
from ...runs.run import Joining, Molding, Run, Wall
from ...tool import Answer, Given, Gives, Refusal, Scale, Tool
from .asked import INPUTS
from .corner import CrownCorner, answer_corner, refuse_corner
from .crown import Crown, crown_by_drop, crown_by_sizes
from .run import answer_run


def work(given: Given, scale: Scale) -> Answer:
    """Return what is set on the saw for a corner of crown, or the pieces of a run of it."""
    if given.text("ceiling") == "sloped":
        raise Refusal(
            "ceiling",
            "Under a sloped ceiling the two crowns lean differently, and one spring angle with "
            "one setting can't fit both. Use this where the ceiling is level along both walls; a "
            "slope needs a level return piece, fitted on the spot.",
        )
    crown, bevels = _crown(given), given.text("tilt")
    if given.text("task") == "run":
        run = _run(given, crown, scale)
        return answer_run(crown, run, given.number("kerf"), bevels, scale)
    walls = [given.maybe("wall_a"), given.maybe("wall_b")]
    corner = CrownCorner(given.number("corner"), given.text("turn"), walls)
    refuse_corner(corner, crown)
    return answer_corner(crown, corner, bevels, scale)


def _crown(given: Given) -> Crown:
    by = given.text("crown_by")
    if by == "sizes":
        return crown_by_sizes(given.number("drop"), given.number("projection"))
    if by == "drop":
        return crown_by_drop(given.number("spring"), given.number("drop"))
    return Crown(given.number("spring"), given.maybe("width"))


def _run(given: Given, crown: Crown, scale: Scale) -> Run:
    if crown.projection is None:
        raise Refusal(
            "width",
            "The face width is needed for a run: without it nobody can tell how far the top edge "
            "goes past a corner.",
        )
    walls = [
        Wall(row.number("length"), row.text("turn"), row.maybe("corner") or 90.0)
        for row in given.rows("walls")
    ]
    return Run(
        walls,
        [],
        (given.flag("closed"), given.text("first_end")),
        Molding(crown.projection, crown.width, given.maybe("stick")),
        Joining(given.text("inside_joint"), 0.0, given.number("scarf")),
        scale,
    )


TOOL = Tool(
    slug="crown-corner",
    place="saw",
    coated="girth",
    title="Crown at a corner",
    question="Crown at a corner or around a room: what is set on the saw, how long is each piece?",
    finds=("crown molding", "cove", "cornice", "compound miter", "bevel", "cope", "drop"),
    inputs=INPUTS,
    work=work,
    gives=[
        Gives("flat_miter", "angle", "Miter, flat on the table", short="Miter", sometimes=True),
        Gives("flat_bevel", "angle", "Bevel, flat on the table", short="Bevel", sometimes=True),
        Gives("nested_miter", "angle", "Miter, nested", short="Nested", sometimes=True),
        Gives("drop", "length", "Drop, down the wall", short="Drop", sometimes=True),
        Gives("projection", "length", "Projection, out on the ceiling", sometimes=True),
        Gives("edges", "length", "Edges differ, each end", sometimes=True),
        Gives("total_length", "length", "Total, point to point", short="Total", sometimes=True),
        Gives("sticks", "count", "Sticks", sometimes=True),
        Gives("to_buy", "length", "To buy, 2 in more a joint", short="To buy", sometimes=True),
        Gives("piece_count", "count", "Pieces", sometimes=True),
        Gives("longest_piece", "length", "Longest piece, point to point", sometimes=True),
    ],
    example={"corner": "90", "width": "4 5/8", "wall_a": "48", "wall_b": "60"},
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: the joint lies in the upright plane that halves the corner. Miter is the "
        "arc tangent of sin(spring) / tan(corner / 2), bevel the arc sine of cos(spring) times "
        "cos(corner / 2); worked trigonometry in print gives 14.30638 and 17.55124 for a spring "
        "angle of 38 in a corner of 135.",
        "Which edge goes to the fence: manuals of compound miter saws, crown flat on the table.",
        "38 is the predominant spring angle: notes on the geometry of crown, seen in print.",
        "Coped inside and mitered outside corners: NAVEDTRA 14044, Builder, interior trim.",
        "Reach of saws, scarfs cut nested: common practice, no source.",
    ],
)
