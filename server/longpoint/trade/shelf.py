"""The shelf: which tools lie at which place.

A tool's module is named here and imported only when it is asked for. One line adds a tool:
``folder/slug``, the module being ``trade/folder/slug.py`` with underscores for the dashes.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .tool import Tool

PLACES = (
    ("yard", "At the yard"),
    ("saw", "At the saw"),
    ("site", "On site"),
)

SHELF = (
    ("yard", "yard/stock-sizes"),
    ("yard", "yard/part-to-stock"),
    ("yard", "yard/board-tally"),
    ("yard", "yard/price-compare"),
    ("yard", "yard/wood-movement"),
    ("yard", "yard/sheet-plan"),
    ("yard", "yard/piece-weight"),
    ("yard", "yard/finish-area"),
    ("yard", "yard/finish-amount"),
    ("yard", "yard/price"),
    ("saw", "saw/corner-joint"),
    ("saw", "saw/mitered-frame"),
    ("saw", "saw/odd-frame"),
    ("saw", "saw/polygon-frame"),
    ("saw", "saw/miter-fit"),
    ("saw", "saw/trim-run"),
    ("saw", "saw/wall-frames"),
    ("saw", "saw/even-spacing"),
    ("saw", "saw/wide-crosscut"),
    ("saw", "saw/milling-passes"),
    ("saw", "saw/glue-up"),
    ("saw", "saw/stick-plan"),
    ("saw", "saw/crown-corner"),
    ("saw", "saw/splayed-box"),
    ("saw", "door/door-set"),
    ("saw", "saw/groove-and-tenon"),
    ("saw", "saw/panel-raise"),
    ("site", "site/opening-survey"),
    ("site", "site/jamb-and-stop"),
    ("site", "site/door-swing"),
    ("site", "site/hinge-layout"),
    ("site", "site/even-gap"),
    ("site", "site/lock-boring"),
    ("site", "site/casing-set"),
    ("site", "site/hardware-centers"),
    ("site", "site/scribe"),
    ("site", "site/finish-plan"),
    ("site", "site/story-stick"),
)


def slugs_at(place: str) -> "list[str]":
    """Return the slugs of the tools at a place, in display order."""
    return [path.split("/")[1] for at, path in SHELF if at == place]


def module_of(slug: str) -> str:
    """Return the name of a tool's module.

    Raises
    ------
    KeyError
        No tool has that slug.

    >>> module_of("mitered-frame")
    'longpoint.trade.saw.mitered_frame'
    """
    for _, path in SHELF:
        folder, name = path.split("/")
        if name == slug:
            return "longpoint.trade." + folder + "." + name.replace("-", "_")
    raise KeyError(slug)


def tool_named(slug: str) -> "Tool":
    """Import and return a tool.

    Raises
    ------
    KeyError
        No tool has that slug.
    """
    module = __import__(module_of(slug), None, None, ("TOOL",), 0)
    tool: Tool = module.TOOL
    return tool
