"""The server itself, with its database, as a simulated shop asks it."""

from pathlib import Path
from typing import Any

from longpoint.app import create_app
from longpoint.shop.backup import back_up, restore
from longpoint.shop.database import Database
from tests.shop.conftest import Phone, person, token_of
from tests.shop.simulated.states import Reply, State, state_of


class RealServer:
    """The server itself, asked through its addresses, in the little one's words."""

    def __init__(self, address: str, folder: Path) -> None:
        self.folder, self.count = folder, 0
        self.database = Database(address)
        app = create_app({"SHOP": self.database})
        self.phone = Phone(app, token_of(self.database, person(self.database, "Ada", "owner")))

    def write(self, name: str, to: int | None, change_id: str, state: State, epoch: str) -> Reply:
        condition = {"If-None-Match": "*"} if to is None else {"If-Match": f'"{to}"'}
        path = f"/api/documents/{name}?epoch={epoch}"
        if state is None:
            path += f"&change_id={change_id}"
            reply = self.phone.client.delete(path, headers=condition)
        else:
            said = state | {"change_id": change_id}
            reply = self.phone.client.put(path, json=said, headers=condition)
        assert reply.json is not None
        return (200 if reply.status_code == 201 else reply.status_code), reply.json

    def changes(self, since: int, last: str, limit: int) -> dict[str, Any]:
        found: dict[str, Any] = self.phone.get(
            f"changes?since={since}&last={last}&limit={limit}"
        ).json
        return found

    @property
    def seq(self) -> int:
        return max([0, *(each["seq"] for each in self.changes(0, "", 500)["changes"])])

    def backed_up(self) -> Path:
        self.count += 1
        file = self.folder / f"backup-{self.count}.db"
        back_up(self.database, file)
        return file

    def restore(self, backup: Path) -> None:
        restore(self.database, backup, replace=True)

    def states(self) -> dict[str, State]:
        return {each["id"]: state_of(each) for each in self.changes(0, "", 500)["changes"]}
