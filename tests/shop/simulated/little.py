"""The server's contract in a page: what a device is answered, and nothing of how it is kept."""

from typing import Any

from tests.shop.simulated.states import Reply, State, state_of


class LittleServer:
    """Documents with revisions, changes known by their ids, tombstones and a feed, in memory."""

    def __init__(self) -> None:
        self.epoch = 1
        self.seq = 0
        self.documents: dict[str, dict[str, Any]] = {}
        self.changes_known: dict[str, dict[str, Any]] = {}

    def write(self, name: str, to: int | None, change_id: str, state: State, epoch: str) -> Reply:
        """Change a document as of a revision (None begins it); no state deletes it."""
        known = self.changes_known.get(change_id)
        if known:
            return 200, known
        if epoch != str(self.epoch):
            return 409, {}
        now = self.documents.get(name)
        if now is None and (to is not None or state is None):
            return 404, {}
        if now is not None and (not now["deleted"] if to is None else now["rev"] != to):
            return 412, {"current": now}
        self.seq += 1
        head = {
            "id": name, "rev": now["rev"] + 1 if now else 1, "seq": self.seq,
            "change_id": change_id, "deleted": state is None,
        }  # fmt: skip
        self.documents[name] = head | (state or {})
        self.changes_known[change_id] = head
        return 200, head

    def changes(self, since: int, last: str, limit: int) -> dict[str, Any]:
        """Return a part of the feed."""
        by_seq = {each["seq"]: key for key, each in self.changes_known.items()}
        is_restored = since > 0 and (since not in by_seq or last not in ("", by_seq[since]))
        start, seen = (0, "") if is_restored else (since, last)
        found = sorted(
            (each for each in self.documents.values() if each["seq"] > start),
            key=lambda each: int(each["seq"]),
        )
        taken = found[:limit]
        if taken:
            start, seen = taken[-1]["seq"], taken[-1]["change_id"]
        return {
            "epoch": str(self.epoch), "restored": is_restored, "changes": taken,
            "since": start, "last": seen, "more": len(found) > limit,
        }  # fmt: skip

    def backed_up(self) -> Any:
        """Return all that is kept at this moment."""
        return self.seq, dict(self.documents), dict(self.changes_known)

    def restore(self, backup: Any) -> None:
        """Stand where the backup stood, and say so by another epoch."""
        self.seq, documents, changes = backup
        self.documents, self.changes_known = dict(documents), dict(changes)
        self.epoch += 1

    def states(self) -> dict[str, State]:
        """Return what each document says, None of a deleted one."""
        return {name: state_of(each) for name, each in self.documents.items()}
