"""A frame laid out from its own pieces must close up, and fit what it is for."""

import math

from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, unary_union

from tests.trade.asking import answer, figures

SIZES = st.floats(min_value=13, max_value=120)
WIDTHS = st.floats(min_value=0.5, max_value=6)


def trapezoid(long: float, width: float, start: float, end: float) -> Polygon:
    """Return a piece from its long edge, its width and its two settings, outer edge on y = 0."""
    return Polygon(
        [
            (0, 0),
            (long, 0),
            (long - width * math.tan(math.radians(end)), width),
            (width * math.tan(math.radians(start)), width),
        ]
    )


def turned(piece: Polygon, quarter: int, at: tuple[float, float]) -> Polygon:
    """Return the piece turned clockwise on screen by quarters, its start corner at `at`."""
    cos, sin = [(1, 0), (0, 1), (-1, 0), (0, -1)][quarter]
    x0, y0 = at
    corners = piece.exterior.coords[:-1]
    return Polygon([(x0 + x * cos - y * sin, y0 + x * sin + y * cos) for x, y in corners])


@given(SIZES, SIZES, WIDTHS, WIDTHS, WIDTHS)
def test_the_pieces_close_up_round_the_recess(
    width: float, height: float, side: float, top: float, bottom: float
) -> None:
    found = answer(
        "mitered-frame",
        fit="inside",
        opening_width=width,
        opening_height=height,
        trim_width=side,
        top_width=top,
        bottom_width=bottom,
    )
    at = [(0, 0), (width, 0), (width, height), (0, height)]
    laid = []
    for quarter, piece in enumerate(found["pieces"]):
        first, second = (end["saw"] for end in piece["ends"])
        shape = trapezoid(piece["length"], piece["width"], first, second)
        laid.append(turned(shape, quarter, at[quarter]))
    ring = Polygon(
        at,
        [
            [
                (side, top),
                (side, height - bottom),
                (width - side, height - bottom),
                (width - side, top),
            ]
        ],
    )
    assert math.isclose(sum(shape.area for shape in laid), ring.area, rel_tol=1e-9)
    assert unary_union(laid).symmetric_difference(ring).area < 1e-6 * ring.area


@given(SIZES, SIZES, WIDTHS, WIDTHS)
def test_settings_of_a_corner_make_a_square(
    width: float, height: float, side: float, top: float
) -> None:
    found = figures(
        "mitered-frame",
        fit="inside",
        opening_width=width,
        opening_height=height,
        trim_width=side,
        top_width=top,
    )
    assert math.isclose(found["saw_top"] + found["saw_side"], 90, abs_tol=1e-9)


@given(SIZES, SIZES, WIDTHS, st.floats(min_value=0, max_value=1), st.sampled_from(["3", "4"]))
def test_around_an_opening_the_short_points_stand_off_by_the_reveal(
    width: float, height: float, trim: float, reveal: float, sides: str
) -> None:
    found = figures(
        "mitered-frame",
        fit="around",
        opening_width=width,
        opening_height=height,
        trim_width=trim,
        reveal=reveal,
        sides=sides,
    )
    assert math.isclose(found["top_short"], width + 2 * reveal)
    assert math.isclose(found["side_short"], height + reveal * (2 if sides == "4" else 1))
