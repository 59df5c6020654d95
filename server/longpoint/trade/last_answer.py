"""The form that was answered last: a job that asks the same takes its answer over.

On a question's own screen each number typed is answered twice, at once for the screen and then for
the job.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .form import Form
    from .lengths import Scale


class Asked:
    """All that the answer to a form depends on.

    Parameters
    ----------
    said : dict
        `tool`, `inputs`, `typed_in`, `version`: a request's form, or a question of a job.
    values : dict
        By input: what is carried to it.
    """

    def __init__(self, said: "dict[str, Any]", values: "dict[str, Any]", scale: "Scale") -> None:
        typed_in = said.get("typed_in") or scale.units
        version = int(said.get("version") or 0)
        self.parts = [said.get("tool"), said.get("inputs"), typed_in, version, values]
        self.parts += [scale.units, scale.step]


class LastAnswer:
    """One form, read, with its whole answer; nothing before there was one."""

    def __init__(self) -> None:
        self._last: tuple[list[Any], tuple[Form, dict[str, Any]] | None] = ([], None)

    def keep(self, asked: Asked, form: "Form", answer: "dict[str, Any]") -> None:
        """Keep an answer in the place of the last one."""
        self._last = asked.parts, (form, answer)

    def of(self, asked: Asked) -> "tuple[Form, dict[str, Any]] | None":
        """Return the form as read and its answer; None where something else was asked last."""
        parts, known = self._last
        return known if parts == asked.parts else None


LAST = LastAnswer()
"""The phone's own. A server answers one form here and the next there: a rare gain, no harm."""
