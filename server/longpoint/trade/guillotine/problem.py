"""What is to be cut out of sheets, in whole numbers, so that "fits exactly" is exact."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    Pair = tuple[int, int]


class Sheets:
    """Rectangles to be cut out of sheets.

    A cut takes a kerf, but n parts that fill a sheet exactly take only n - 1: so the kerf is
    counted in both sides of each part and once in both sides of each room, and then left alone.

    Parameters
    ----------
    turns : list of list of pair
        Of each different part the ways it may lie: side along x, side along y, kerfs included.
    wanted : list of int
        How many of each.
    rooms : list of pair
        Of each kind of sheet the sides along x and y, a kerf added to each.
    costs : list of int
        What a sheet of each kind costs.
    limits : list
        How many there are of each kind; None for as many as needed.
    spare : int or None
        The kind that is not there, used only to tell which parts find no place.
    """

    def __init__(
        self,
        turns: "list[list[Pair]]",
        wanted: "list[int]",
        rooms: "list[Pair]",
        costs: "list[int]",
        limits: "list[int | None]",
        spare: "int | None" = None,
    ) -> None:
        self.turns = turns
        self.wanted = wanted
        self.rooms = rooms
        self.costs = costs
        self.parts = sum(wanted)
        self.areas = [ways[0][0] * ways[0][1] for ways in turns]
        self.total = sum([area * number for area, number in zip(self.areas, wanted)])
        self.kinds = range(len(rooms))
        self.limits = [self.parts if limit is None else limit for limit in limits]
        self.spare = spare
        # One number for "least cost, then fewest sheets": no plan has more sheets than parts.
        self.per_cost = self.parts + 1
        self.weights = [cost * self.per_cost + 1 for cost in costs]

    def room_area(self, kind: int) -> int:
        """Return the area of a kind of sheet, kerfs included."""
        return self.rooms[kind][0] * self.rooms[kind][1]

    def holds(self, kind: int, part: int) -> bool:
        """Tell whether a sheet of this kind can hold the part at all."""
        wide, high = self.rooms[kind]
        return bool([1 for w, h in self.turns[part] if w <= wide and h <= high])
