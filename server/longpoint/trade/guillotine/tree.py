"""A sheet's cuts as a tree, and a plan of several sheets.

A node is a list: ``[REST]``, ``[PART, part, side along x, side along y]`` or
``[CUT, axis, at, first, second]``. A cut on axis 0 stops x at `at`, one on axis 1 stops y.
Trees grow as deep as parts are many, so they are walked with lists, never by recursion.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .problem import Sheets

    Node = list[Any]

REST, PART, CUT = 0, 1, 2


class Tree:
    """A tree walked through: nodes from the root down, and the room each needs.

    Attributes
    ----------
    nodes : list
    first, second : list of int
        Places of the children of a cut; -1 where there are none.
    needs : list of pair
        Least sides along x and y; (0, 0) where no part lies.
    """

    def __init__(self, root: "Node") -> None:
        self.nodes = [root]
        self.first: list[int] = []
        self.second: list[int] = []
        for node in self.nodes:
            here = len(self.nodes)
            if node[0] == CUT:
                self.nodes.append(node[3])
                self.nodes.append(node[4])
                self.first.append(here)
                self.second.append(here + 1)
            else:
                self.first.append(-1)
                self.second.append(-1)
        self.needs = [(0, 0) for _ in self.nodes]
        for at in range(len(self.nodes) - 1, -1, -1):
            self.needs[at] = self._need(at)

    def _need(self, at: int) -> "tuple[int, int]":
        node = self.nodes[at]
        if node[0] == REST:
            return (0, 0)
        if node[0] == PART:
            return (node[2], node[3])
        one, other = self.needs[self.first[at]], self.needs[self.second[at]]
        if not other[0]:
            return one
        if node[1] == 0:
            return (node[2] + other[0], max(one[1], other[1]))
        return (max(one[0], other[0]), node[2] + other[1])


def parts_in(root: "Node") -> "list[int]":
    """Return the parts in a tree, each as often as it is there."""
    parts, waiting = [], [root]
    while waiting:
        node = waiting.pop()
        if node[0] == CUT:
            waiting.append(node[3])
            waiting.append(node[4])
        elif node[0] == PART:
            parts.append(node[1])
    return parts


class SheetPlan:
    """Sheets that hold all parts, as pairs of kind and tree; put on the cheapest that do.

    Attributes
    ----------
    weight : int
        Cost and number of sheets in one number: the smaller, the better.
    needs : list of pair
        Least sides along x and y that each sheet's parts need.
    """

    def __init__(self, problem: "Sheets", sheets: "list[tuple[int, Node]]") -> None:
        self.problem = problem
        self.needs = [Tree(root).needs[0] for _, root in sheets]
        self.sheets = sheets
        if len(problem.rooms) > 1:
            self.sheets = downsized(problem, sheets, self.needs)
        self.weight = sum([problem.weights[kind] for kind, _ in self.sheets])
        self._largest_rest = -1
        self._crowding = -1

    def used(self) -> "list[int]":
        """Return how many sheets of each kind are cut."""
        used = [0 for _ in self.problem.kinds]
        for kind, _ in self.sheets:
            used[kind] += 1
        return used

    def largest_rest(self) -> int:
        """Return the largest area that one cut frees from a sheet's end or side."""
        if self._largest_rest < 0:
            kinds = [kind for kind, _ in self.sheets]
            rests = [_rest(self.problem.rooms[kind], need) for kind, need in zip(kinds, self.needs)]
            self._largest_rest = max(rests)
        return self._largest_rest

    def crowding(self) -> int:
        """Return the sum of the squares of the area used in each sheet: least where all are alike.

        The more a plan crowds into some sheets, the nearer is another one to empty.
        """
        if self._crowding < 0:
            areas = self.problem.areas
            used = [sum([areas[part] for part in parts_in(root)]) for _, root in self.sheets]
            self._crowding = sum([area * area for area in used])
        return self._crowding


def _rest(room: "tuple[int, int]", need: "tuple[int, int]") -> int:
    wide, high = room
    return max((wide - need[0]) * high, wide * (high - need[1]))


def downsized(
    problem: "Sheets", sheets: "list[tuple[int, Node]]", needs: "list[tuple[int, int]]"
) -> "list[tuple[int, Node]]":
    """Return the sheets with each tree, which needs so much room, on the cheapest kind for it."""
    left = list(problem.limits)
    order = sorted(
        [(problem.weights[kind], problem.room_area(kind), kind) for kind in left_of(left)]
    )
    by_need = sorted([(-wide * high, at) for at, (wide, high) in enumerate(needs)])
    moved = list(sheets)
    # What needs most chooses first: a smaller sheet may be all it leaves.
    for _, at in by_need:
        wide, high = needs[at]
        for _, _, kind in order:
            room = problem.rooms[kind]
            if left[kind] and room[0] >= wide and room[1] >= high:
                left[kind] -= 1
                moved[at] = (kind, sheets[at][1])
                break
        else:
            return sheets
    weights = problem.weights
    if sum([weights[kind] for kind, _ in moved]) < sum([weights[kind] for kind, _ in sheets]):
        return moved
    return sheets


def left_of(left: "list[int]") -> "list[int]":
    """Return the kinds of which there are any left."""
    return [kind for kind, number in enumerate(left) if number]
