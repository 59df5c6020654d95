"""Which sticks, taken together, could still make a better plan?"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .problem import Cutting

MOST_STEPS = 3000


def combos(problem: "Cutting", bound: int, below: int) -> "list[tuple[int, list[int]]] | None":
    """Return the weights and numbers of sticks of each kind that are worth a try, lightest first.

    They weigh at least `bound` and less than `below`, and their rooms add up to all pieces.
    None where there are too many to list.
    """
    found: list[tuple[int, list[int]]] = []
    order = sorted(
        [(-problem.weights[kind], kind) for kind in problem.kinds if problem.limits[kind]]
    )
    kinds = [kind for _, kind in order]
    counts = [0 for _ in problem.kinds]
    weight, room, at, steps = 0, 0, 0, 0
    while True:
        steps += 1
        if steps > MOST_STEPS:
            return None
        if at == len(kinds) - 1:
            kind = kinds[at]
            each, holds = problem.weights[kind], problem.rooms[kind]
            low = max(0, -(-(bound - weight) // each), -(-(problem.total - room) // holds))
            high = min(problem.limits[kind], (below - 1 - weight) // each)
            steps += max(0, high - low)
            for number in range(low, high + 1):
                counts[kind] = number
                found.append((weight + number * each, list(counts)))
            counts[kind] = 0
            at -= 1
        else:
            kind = kinds[at]
            # Going forward a level starts from as many as the weight allows.
            counts[kind] = max(
                0, min(problem.limits[kind], (below - 1 - weight) // problem.weights[kind])
            )
            weight += counts[kind] * problem.weights[kind]
            room += counts[kind] * problem.rooms[kind]
            at += 1
            continue
        while at >= 0 and counts[kinds[at]] == 0:
            at -= 1
        if at < 0:
            break
        kind = kinds[at]
        counts[kind] -= 1
        weight -= problem.weights[kind]
        room -= problem.rooms[kind]
        at += 1
    return sorted(found)


def material_bound(problem: "Cutting") -> int:
    """Return the least weight whose rooms add up to all pieces, sticks divisible at will."""
    order = sorted([(problem.weights[k] / problem.rooms[k], k) for k in problem.kinds])
    total, weight = problem.total, 0
    for _, kind in order:
        room, each = problem.rooms[kind], problem.weights[kind]
        if room * problem.limits[kind] >= total:
            return weight + -(-total * each // room)
        total -= room * problem.limits[kind]
        weight += each * problem.limits[kind]
    return weight
