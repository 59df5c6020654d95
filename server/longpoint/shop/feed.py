"""The feed of changes: each document once, as it stands, in the order of its last change."""

from typing import Any

from sqlalchemy import select
from sqlalchemy.orm import Session

from .documents import as_said, chosen
from .tables import Change, Document, Shop

MOST_BYTES = 1024 * 1024
"""Of the bodies in one reply; a single larger one still goes."""


def feed(session: Session, since: int, last: str, limit: int) -> dict[str, Any]:
    """Return what was changed after `since`.

    Parameters
    ----------
    since : int
        The number of the last change that the asker knows; 0 for none.
    last : str
        That change's id; empty where the asker did not note it. Where it is another's, or there is
        no such change, the server was restored from a backup, and what came after it is not what
        the asker knows: everything is told from the beginning.
    """
    shop = session.get_one(Shop, 1)
    known = session.get(Change, since) if since else None
    restored = bool(since) and (known is None or last not in ("", known.change_id))
    start, seen = (0, "") if restored else (since, last)
    end, more = _end(session, start, limit)
    rows = session.execute(
        chosen().where(Document.seq > start, Document.seq <= end).order_by(Document.seq)
    )
    taken = [as_said(*row) for row in rows]
    if taken:
        start, seen = taken[-1]["seq"], taken[-1]["change_id"]
    return {
        "epoch": shop.epoch, "restored": restored, "changes": taken,
        "since": start, "last": seen, "more": more,
    }  # fmt: skip


def _end(session: Session, start: int, limit: int) -> tuple[int, bool]:
    """Return the last change that one reply tells, and whether there are more.

    Sizes come first, so that no more bodies are read than are told.
    """
    rows = session.execute(
        select(Document.seq, Document.size)
        .where(Document.seq > start)
        .order_by(Document.seq)
        .limit(limit + 1)
    ).all()
    end, told, size = start, 0, 0
    for row in rows[:limit]:
        size += row.size
        if told and size > MOST_BYTES:
            break
        end, told = row.seq, told + 1
    return end, len(rows) > told
