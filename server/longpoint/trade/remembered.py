"""What was worked out lately: of a form that is asked anew, one number has changed."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

MOST = 2500
"""More than the longest form and its answer say."""


def remember(known: "dict[Any, Any]", key: object, value: "Any") -> "Any":
    """Keep and return what was worked out for `key`; when `known` is full it begins anew.

    For what is asked again and again of few plain values: one change of a form asks all of it.
    """
    if len(known) >= MOST:
        known.clear()
    known[key] = value
    return value
