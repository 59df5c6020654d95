"""What a simulated shop's devices and servers speak of."""

from typing import Any

State = dict[str, Any] | None
"""``{"units", "schema", "body"}``; None is not there, or deleted."""
Reply = tuple[int, dict[str, Any]]


def state_of(document: dict[str, Any]) -> State:
    """Return the state in a document as the server says it."""
    if document["deleted"]:
        return None
    return {name: document[name] for name in ("units", "schema", "body")}
