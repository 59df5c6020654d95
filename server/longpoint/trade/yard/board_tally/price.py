"""What the yard asks for the boards of a tally."""


class Price:
    """What the yard asks.

    Parameters
    ----------
    dollars : float or None
        For one board foot or lineal foot; None where it isn't known.
    per : str
        ``board-foot`` or ``lineal-foot``.
    drying : float
        Percent that the yard adds to board feet measured after drying.
    """

    def __init__(self, dollars: "float | None", per: str, drying: float) -> None:
        self.dollars = dollars
        self.per = per
        self.drying = drying

    def is_known(self) -> bool:
        """Tell whether there is a price."""
        return self.dollars is not None

    def charged(self, board_feet: float) -> float:
        """Return the board feet that are paid for."""
        return board_feet * (1 + self.drying / 100)

    def of(self, board_feet: float, lineal_feet: float) -> float:
        """Return dollars for boards of so many board feet and lineal feet."""
        by_length = self.per == "lineal-foot"
        return (self.dollars or 0.0) * (lineal_feet if by_length else self.charged(board_feet))
