"""What the machine that runs the server may set, as environment variables.

What is no number or no level raises `BadSetting`: nothing else is taken in its place.
"""

import os

from platformdirs import user_data_path

ROOM = 2 * 1024**3
LEVELS = ("debug", "info", "warning", "error")


class BadSetting(Exception):
    """A setting can't be understood; the message is for the person."""


def database_address() -> str:
    """Where the shop's database is, or a file among this person's data."""
    named = os.environ.get("LONGPOINT_DATABASE", "")
    return named or f"sqlite:///{user_data_path('longpoint') / 'shop.db'}"


def limits_address() -> str:
    """Where tries that fail are counted: several processes share one by its address."""
    return os.environ.get("LONGPOINT_LIMITS") or "memory://"


def public_address() -> str:
    """Where people reach the server, without a slash at its end; empty if it is not set."""
    return os.environ.get("LONGPOINT_ADDRESS", "").rstrip("/")


def proxies() -> int:
    """How many web servers stand before this one and say for whom they ask."""
    return _number("LONGPOINT_PROXIES") or 0


def room() -> int:
    """How many bytes the documents begun by one person may take."""
    number = _number("LONGPOINT_ROOM")
    return ROOM if number is None else number


def workers() -> int:
    """How many processes compute what takes long: as many as this one has processors."""
    if number := _number("LONGPOINT_WORKERS"):
        return number
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1


def log_level() -> str:
    """From which level on the log tells."""
    named = os.environ.get("LONGPOINT_LOG", "").lower() or "info"
    if named not in LEVELS:
        raise BadSetting(f"LONGPOINT_LOG is {named!r}: it takes {', '.join(LEVELS)}.")
    return named


def _number(name: str) -> int | None:
    """Return a whole number that is set; None where it is not set."""
    said = os.environ.get(name, "")
    if said and not (said.isascii() and said.isdigit()):
        raise BadSetting(f"{name} is {said!r}: it takes a whole number.")
    return int(said) if said else None
