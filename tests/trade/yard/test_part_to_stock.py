"""Part to stock: the ranking against trying everything, the drawing against plane geometry."""

import itertools
import math
from fractions import Fraction
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon
from shapely.ops import unary_union

from longpoint.trade.lumber.common import common_labels
from tests.trade.asking import answer, at_the_door, figures

Row = dict[str, Any]
Size = tuple[str, Fraction, Fraction, Row | None]
STANDARD = {
    label: tuple(
        Fraction(figures("stock-sizes", label=label)[name]) for name in ("thickness", "width")
    )
    for label in common_labels("softwood")
}
"""What the other tool says of each label; its own cases hold that to PS 20."""

PARTS = st.fixed_dictionaries(
    {
        "thickness": st.integers(2, 40).map(lambda n: Fraction(n, 8)),
        "width": st.integers(4, 160).map(lambda n: Fraction(n, 8)),
        "length": st.integers(10, 100).map(Fraction),
        "count": st.integers(1, 9),
        "face_allowance": st.sampled_from([Fraction(0), Fraction(1, 8), Fraction(1, 16)]),
        "edge_allowance": st.sampled_from([Fraction(0), Fraction(1, 8), Fraction(1, 4)]),
        "end_allowance": st.integers(0, 4).map(lambda n: Fraction(n, 4)),
        "kerf": st.sampled_from([Fraction(0), Fraction(1, 8)]),
    }
)
ROWS = st.lists(
    st.fixed_dictionaries(
        {
            "label": st.sampled_from(common_labels("softwood")),
            "thickness": st.integers(4, 32).map(lambda n: n / 8),
            "width": st.integers(8, 96).map(lambda n: n / 8),
            "price": st.none() | st.integers(1, 2000).map(lambda cents: cents / 100),
            "per": st.sampled_from(["board-foot", "lineal-foot"]),
        },
        optional={"yard_name": st.sampled_from(["North", "South", "East"])},
    ),
    max_size=5,
    unique_by=lambda row: (row["label"], row.get("yard_name")),
)
Key = tuple[bool, int, Fraction]


def sizes(rows: list[Row]) -> list[Size]:
    """Return what can be asked for: the list, then the standard for what isn't on it."""
    listed = [(r["label"], Fraction(r["thickness"]), Fraction(r["width"]), r) for r in rows]
    held = {row["label"] for row in rows}
    rest = [(name, *STANDARD[name], None) for name in STANDARD if name not in held]
    return listed + rest  # type: ignore[operator,return-value]


def sixteenths(size: Fraction) -> int:
    """Return a size in whole sixteenths, which all sizes here are: integers try faster."""
    assert (size * 16).denominator == 1
    return int(size * 16)


def every_way(part: dict[str, Any], size: Size) -> list[tuple[Key, int, Fraction]]:
    """Try every number of layers, strips and pieces side by side: key, lengths, layer."""
    thick, wide = sixteenths(size[1]), sixteenths(size[2])
    t, w, face, edge, kerf = (
        sixteenths(part[name])
        for name in ("thickness", "width", "face_allowance", "edge_allowance", "kerf")
    )
    cut = part["length"] + 2 * part["end_allowance"]
    found = []
    for layers, strips in itertools.product(range(1, 9), range(1, 25)):
        if layers * (thick - 2 * face) < t or strips * (wide - 2 * edge) < w:
            continue
        across = 1
        while (across + 1) * (w + 2 * edge * strips) + across * kerf * strips <= wide * strips:
            across += 1
        lengths = math.ceil(Fraction(part["count"] * layers * strips, across))
        lines = layers - 1 + layers * (strips - 1)
        key = (2 * t < thick * layers, lines, lengths * size[1] * size[2] * cut)
        found.append((key, lengths, part["thickness"] / layers))
    return found


def cost(part: dict[str, Any], size: Size, lengths: int) -> float | None:
    """Dollars: the label's inches times feet over 12, or feet, times the price."""
    label, _, _, row = size
    if row is None or row["price"] is None:
        return None
    feet = float(lengths * (part["length"] + 2 * part["end_allowance"]) / 12)
    if row["per"] == "lineal-foot":
        return feet * float(row["price"])
    named = [float(Fraction(side)) for side in label.split("x")]
    return named[0] * named[1] / 12 * feet * float(row["price"])


def tried(part: dict[str, Any], rows: list[Row]) -> list[tuple[str, Key, Fraction, float | None]]:
    """Return the best of every size, best first, by the rule as the tool states it."""
    best = []
    for place, size in enumerate(sizes(rows)):
        ways = every_way(part, size)
        if ways:
            key, lengths, layer = min(ways)
            best.append((key, place, size, cost(part, size, lengths), layer))
    unpriced = {key for key, _, _, dollars, _ in best if dollars is None}
    best.sort(key=lambda way: (way[0], 0 if way[0] in unpriced else way[3], way[1]))
    return [(size[0], key, layer, dollars) for key, _, size, dollars, layer in best]


def asked(part: dict[str, Any], rows: list[Row]) -> dict[str, Any]:
    """Return the tool's answer to the same question."""
    inputs: dict[str, Any] = {
        name: x if isinstance(x, int) else float(x) for name, x in part.items()
    }
    return answer("part-to-stock", yard=rows, sold_in="random", **inputs)


@settings(max_examples=40, deadline=None)
@given(PARTS, ROWS)
def test_the_order_is_that_of_trying_everything(part: dict[str, Any], rows: list[Row]) -> None:
    wanted = tried(part, rows)[:8]
    got = asked(part, rows)["tables"][0]
    assert [row[0] for row in got["rows"]] == [way[0] for way in wanted]
    lines = got["columns"].index("Glue lines")
    assert [int(row[lines]) for row in got["rows"]] == [way[1][1] for way in wanted]


@settings(max_examples=40, deadline=None)
@given(PARTS, ROWS)
def test_figures_are_those_of_the_best_way(part: dict[str, Any], rows: list[Row]) -> None:
    label, (_, lines, bought), layer, dollars = tried(part, rows)[0]
    got = {figure["name"]: figure["value"] for figure in asked(part, rows)["figures"]}
    assert (got["best"], got["glue_lines"]) == (label, lines)
    assert abs(got["real_thickness"] - 2 * got["to_mill"] - layer) < 1e-9
    assert got["to_mill"] >= part["face_allowance"] - 1e-9
    parts = part["thickness"] * part["width"] * part["length"] * part["count"]
    assert abs(got["waste"] / 100 - float(1 - parts / bought)) < 1e-9
    assert (dollars is None) == ("cost" not in got)
    assert dollars is None or abs(got["cost"] - dollars) < 1e-6


@settings(max_examples=40, deadline=None)
@given(PARTS, ROWS)
def test_pieces_lie_inside_the_board_a_kerf_apart(part: dict[str, Any], rows: list[Row]) -> None:
    found = asked(part, rows)
    shapes = found["drawing"]["shapes"]
    (board,) = [Polygon(shape["points"]) for shape in shapes if shape["role"] == "waste"]
    pieces = [Polygon(shape["points"]) for shape in shapes if shape["role"] == "stock"]
    face, edge = float(part["face_allowance"]), float(part["edge_allowance"])
    blanks = [
        Polygon.from_bounds(x0 - edge, y0 - face, x1 + edge, y1 + face)
        for x0, y0, x1, y1 in (piece.bounds for piece in pieces)
    ]
    for at, blank in enumerate(blanks):
        assert board.buffer(1e-9).covers(blank)
        for other in blanks[at + 1 :]:
            assert blank.distance(other) >= float(part["kerf"]) - 1e-9


@settings(max_examples=40, deadline=None)
@given(PARTS)
def test_the_glued_view_is_the_part(part: dict[str, Any]) -> None:
    found = asked(part, [])
    for view in found["details"]:
        pieces = [Polygon(s["points"]) for s in view["shapes"] if s["role"] == "stock"]
        whole = unary_union(pieces)
        assert abs(whole.area - sum(piece.area for piece in pieces)) < 1e-6
        size = (0.0, 0.0, float(part["width"]), float(part["thickness"]))
        assert all(abs(a - b) < 1e-9 for a, b in zip(whole.bounds, size, strict=True))


def test_a_form_kept_before_still_buys_by_the_foot() -> None:
    """The first version took any length to be sold: by hand 82 in are 6 5/6 ft."""
    kept = {"thickness": "1 1/4", "width": "3", "length": "80"}
    form = {"do": "form", "tool": "part-to-stock", "inputs": kept}
    first = at_the_door(form | {"version": 1})["answer"]["figures"]
    (feet,) = [figure["value"] for figure in first if figure["name"] == "lineal_feet"]
    assert abs(feet - 82 / 12) < 1e-9
    assert at_the_door(form | {"version": 2})["answer"] is None


def test_a_size_of_the_list_is_used_with_one_tap() -> None:
    yard = [{"label": "2x7", "thickness": "1 3/4", "width": "6 7/8"}]
    inputs = {"thickness": "1 1/4", "width": 3, "length": 40, "sold_in": "random", "yard": yard}
    reply = at_the_door({"do": "form", "tool": "part-to-stock", "inputs": inputs})
    (offers,) = [each["offers"] for each in reply["fields"] if each["name"] == "use"]
    assert offers[0] == "2x7"
    used = figures("part-to-stock", **inputs, use=offers[0])
    assert (used["best"], used["real_width"]) == ("2x7", 6.875)
