"""A time of day, as it is typed."""

from ...finish.week import minutes_of
from ...inputs import Text
from ...reading import Unreadable, quoted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Scale


class Clock(Text):
    """A time of day."""

    def read(self, raw: object, scale: "Scale") -> str:
        if raw in range(25) and not isinstance(raw, bool):
            raw = str(raw).split(".")[0]
        text = super().read(raw, scale)
        if minutes_of(text) is None:
            raise Unreadable(f"{quoted(text)} is no time of day: write it like 7:30 or 4 pm.")
        return text

    def applies(self, earlier: "dict[str, object]") -> bool:
        return bool(earlier.get("coats"))

    def is_always_asked(self) -> bool:
        return False
