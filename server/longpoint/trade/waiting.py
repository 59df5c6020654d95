"""What an answer waits for, in words, and what a form's fields are called there."""

from .rows import Rows

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .refusal import FieldError
    from .tool import Tool


def waits_for(tool: "Tool", errors: "list[FieldError]") -> "dict[str, str] | None":
    """Return what an answer waits for, in words, with the field to go to; None for nothing."""
    wrong = [error for error in errors if not error.missing]
    if wrong:
        name = label_of(tool, wrong[0].field)
        return {"field": wrong[0].field, "words": "Check " + name if name else wrong[0].message}
    if not errors:
        return None
    names = [label_of(tool, error.field) or error.field for error in errors]
    return {"field": errors[0].field, "words": "Still needed: " + _listed(names)}


def _listed(names: "list[str]") -> str:
    """Return names in a row; where one holds a comma itself, it can't part them too."""
    return ("; " if [1 for name in names if "," in name] else ", ").join(names)


def label_of(tool: "Tool", path: str) -> str:
    """Return what a field is called: `Trim width`, `a wall`, `Wall 2, Length`; empty for none."""
    name, _, rest = path.partition(".")
    asked = [each for each in tool.inputs if each.name == name]
    if not asked:
        return ""
    if not isinstance(asked[0], Rows):
        return asked[0].label
    at, _, column = rest.partition(".")
    word = asked[0].row
    if not at:
        return ("an " if word[0] in "aeiou" else "a ") + word
    labels = [each.label for each in asked[0].columns if each.name == column]
    row = f"{word[:1].upper()}{word[1:]} {int(at) + 1}"
    return ", ".join([row] + labels)
