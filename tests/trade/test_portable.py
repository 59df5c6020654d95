"""The core must run where there is no standard library to speak of."""

import ast
from pathlib import Path

import pytest

import longpoint.trade

HERE = Path(longpoint.trade.__file__).parent
MODULES = sorted(HERE.rglob("*.py"))
ALLOWED = {"math", "json", "collections"}
MISSING_METHODS = {
    "ljust", "rjust", "zfill", "removeprefix", "removesuffix", "title", "capitalize",
    "casefold", "translate", "isalnum", "hypot", "gcd", "isqrt", "prod", "dist", "fsum",
    "_replace", "_asdict",
}  # fmt: skip


def name_of(path: Path) -> str:
    return str(path.relative_to(HERE))


def for_types_only(tree: ast.Module) -> set[ast.AST]:
    """Return the nodes under `if TYPE_CHECKING:`, which never run."""
    guarded = [
        node
        for node in ast.walk(tree)
        if isinstance(node, ast.If)
        and isinstance(node.test, ast.Name)
        and node.test.id == "TYPE_CHECKING"
    ]
    return {inner for node in guarded for inner in ast.walk(node)}


def complaints(source: str) -> list[str]:
    """Return what MicroPython 1.27 would not take, as line and reason."""
    tree = ast.parse(source)
    skipped = for_types_only(tree)
    found = []
    for node in ast.walk(tree):
        if node in skipped:
            continue
        reason = complaint(node)
        if reason:
            found.append(f"line {getattr(node, 'lineno', '?')}: {reason}")
    return found


def complaint(node: ast.AST) -> str:
    match node:
        case ast.Import(names=names):
            odd = [alias.name for alias in names if alias.name not in ALLOWED]
            return f"imports {odd}" if odd else ""
        case ast.ImportFrom(module=module, level=0):
            return "" if module in ALLOWED else f"imports from {module}"
        case ast.Match():
            return "match"
        case ast.arguments(posonlyargs=[_, *_]):
            return "positional-only parameters"
        case ast.List(ctx=ast.Load(), elts=elts) | ast.Tuple(ctx=ast.Load(), elts=elts):
            return "a star in a display" if any(isinstance(e, ast.Starred) for e in elts) else ""
        case ast.Dict(keys=keys):
            return "two stars in a dict display" if None in keys else ""
        case ast.Raise(cause=cause) if cause is not None:
            return "raise ... from"
        case ast.FormattedValue(format_spec=spec) if spec is not None:
            return "a format of its own: text of numbers is made in lengths"
        case ast.Call(func=ast.Attribute(attr=attr)) if attr in MISSING_METHODS:
            return f".{attr}"
        case ast.BinOp(op=ast.Mod(), left=ast.Constant(value=str())):
            return "% on a text"
        case ast.Call(func=ast.Name(id="round"), args=[_, _]):
            return "round to places"
        case ast.Call(keywords=keywords) if any(k.arg == "strict" for k in keywords):
            return "zip(strict=)"
    return ""


def test_modules_keep_to_what_the_phone_has() -> None:
    said = {name_of(path): complaints(path.read_text(encoding="utf-8")) for path in MODULES}
    assert said
    assert {name: found for name, found in said.items() if found} == {}


def test_modules_are_short_enough_for_one_subject() -> None:
    long = [path for path in MODULES if len(path.read_text(encoding="utf-8").splitlines()) >= 300]
    assert long == []


@pytest.mark.parametrize(
    "bad",
    [
        "import enum", "from fractions import Fraction", "x = [*a]", "x = {**a}", "f'{x:.1f}'",
        "'%d' % 3", "round(x, 2)", "s.zfill(3)", "zip(a, b, strict=True)", "def f(a, /): pass",
    ],
)  # fmt: skip
def test_the_check_sees_what_it_should(bad: str) -> None:
    assert complaints(bad)
