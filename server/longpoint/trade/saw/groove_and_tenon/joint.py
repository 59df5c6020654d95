"""The groove as it is plowed and the tenon that suits it: sizes in inches."""

import math

from ...refusal import Refusal
from .plow import Plow

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale

STUB = 1 / 32


class GrooveJoint:
    """A panel's groove, and the tenon of the groove's width that is cut with the same cutter.

    Parameters
    ----------
    panel, stock : float
        Thickness of the panel and of the frame.
    depth : float
        Of the groove.
    tenon : (float, float)
        Length of the tenon, and how much thinner than the groove it is.
    plow : Plow

    Raises
    ------
    Refusal
        The stock is too thin for such a groove, the tenon's play too large for it.
    """

    def __init__(
        self,
        panel: float,
        stock: float,
        depth: float,
        tenon: "tuple[float, float]",
        plow: Plow,
        scale: "Scale",
    ) -> None:
        self.panel, self.stock, self.depth, self.plow = panel, stock, depth, plow
        self.tenon_length = tenon[0]
        self.tenon_thickness = plow.groove - tenon[1]
        self.wall = (stock - plow.groove) / 2
        self.shoulder = (stock - self.tenon_thickness) / 2
        if self.wall <= 0:
            raise Refusal(
                "stock_thickness",
                f"A groove {scale.decimal(plow.groove)} wide leaves no walls in stock "
                f"{scale.length(stock)} thick: use stock of at least "
                f"{scale.length(3 * plow.groove)}, or rabbet the panel's edge to a tongue.",
            )
        if self.tenon_thickness <= 0:
            raise Refusal("tenon_play", "The play takes up the whole tenon: use less.")

    @property
    def cut(self) -> float:
        """What one pass cuts."""
        return float(self.plow.cut)

    @property
    def groove(self) -> float:
        """The groove's true width."""
        return float(self.plow.groove)

    @property
    def passes(self) -> int:
        """How many passes side by side cut one cheek of the tenon."""
        return int(math.ceil(self.tenon_length / self.cut - 1e-9))

    @property
    def bury(self) -> float:
        """How far the cutter reaches past the tenon's end; 0 where it takes more passes."""
        return self.cut - self.tenon_length if self.passes == 1 else 0.0
