"""What a sheet plan says: in brief, and whole."""

from ...tool import Answer, FieldError, Refusal, Scale, square
from .layouts import layouts_of
from .views import add_tables, draw, sheet_weight, sheets_of_rows, weights
from .words import add_figures, add_notes, add_verdict, add_weights

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...guillotine.search import SheetSearch
    from .layouts import SheetLayout
    from .order import SheetOrder


class Stuff:
    """What the sheets are: material and thickness in inches, where given."""

    def __init__(self, made_of: str, thickness: "float | None") -> None:
        self.made_of = made_of if made_of != "unknown" else ""
        self.thickness = thickness
        if self.made_of and thickness is None:
            words = "How thick are the sheets? Their weight needs it."
            raise Refusal.of([FieldError("sheet_thickness", words, True)])


def brief(order: "SheetOrder", stuff: Stuff, found: "SheetSearch", scale: Scale) -> Answer:
    answer, _ = _decided(order, stuff, found, layouts_of(order, found.plan), scale)
    answer.is_brief = True
    return answer


def _decided(
    order: "SheetOrder",
    stuff: Stuff,
    found: "SheetSearch",
    layouts: "list[SheetLayout]",
    scale: Scale,
) -> "tuple[Answer, list[float]]":
    """Return an answer with what decides, and what the parts weigh in pounds, where known."""
    answer = Answer(scale)
    add_verdict(answer, order, found, layouts)
    add_figures(answer, order, found, layouts)
    pounds: list[float] = []
    if stuff.made_of and stuff.thickness is not None:
        pounds = weights(order, stuff.made_of, stuff.thickness)
        full = sheet_weight(order, stuff.made_of, stuff.thickness)
        add_weights(answer, order, pounds, full)
    return answer, pounds


def whole(order: "SheetOrder", stuff: Stuff, found: "SheetSearch", scale: Scale) -> Answer:
    layouts = layouts_of(order, found.plan)
    answer, pounds = _decided(order, stuff, found, layouts, scale)
    _pieces(answer, order, stuff, layouts)
    for layout in layouts:
        for rest in layout.offcuts:
            long, wide = layout.sides(rest)
            answer.offcut(long, wide, layout.times)
    drawn = draw(answer, layouts)
    add_tables(answer, order, layouts, pounds)
    add_notes(answer, order, found, len(layouts) - drawn)
    return answer


def _pieces(
    answer: Answer, order: "SheetOrder", stuff: Stuff, layouts: "list[SheetLayout]"
) -> None:
    for part, sheets in zip(order.parts, sheets_of_rows(order, layouts)):
        answer.piece(
            part.tag,
            part.name,
            part.length,
            (square(), square()),
            width=part.width,
            thickness=stuff.thickness,
            count=part.count,
            stock=("Sheet " if sheets.isdigit() else "Sheets ") + sheets,
        )
