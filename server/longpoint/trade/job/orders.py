"""The order of a list that two people have reordered, added to and taken from."""


def merged_order(
    base: "list[str]", mine: "list[str]", theirs: "list[str]", left: "list[str]"
) -> "tuple[list[str], bool]":
    """Return the ids that are left in the order of whoever moved them, and whether both did.

    What was added stands behind what it was added behind; where several people added at one place,
    `interleaved` says who comes first, so that it does not matter who is asked, nor in which order
    their lists come together.

    >>> merged_order(["a", "b"], ["a", "b", "m"], ["b", "a"], ["a", "b", "m"])
    (['b', 'm', 'a'], False)
    >>> merged_order(["a"], ["a", "m"], ["a", "k"], ["a", "k", "m"])
    (['a', 'k', 'm'], False)
    """
    stays, before = set(left), set(base)
    old = [own for own in base if own in stays]
    # What both have although their base had not: they got it from each other some other way.
    shared = (set(mine) & set(theirs) & stays) - before
    full = [_old_order(version, base, set(old) | shared) for version in (mine, theirs)]
    moved = [[own for own in order if own in before] != old for order in full]
    spine = full[1] if moved[1] and not moved[0] else full[0]
    is_moved_twice = full[0] != full[1] and moved[0] == moved[1]
    runs = _runs(mine, set(spine), stays, before)
    for anchor, added in _runs(theirs, set(spine), stays, before).items():
        runs.setdefault(anchor, []).extend(added)
    order: list[str] = []
    for anchor in [""] + spine:
        order += [anchor] if anchor else []
        order += interleaved(runs.get(anchor, []))
    return order, is_moved_twice


def interleaved(runs: "list[list[str]]") -> "list[str]":
    """Return runs joined, each in its own order, whichever of them are joined first.

    A run is parted before each value that is higher than all before it; the parts stand by what
    they begin with. Parted anew, the result has the very same parts, so that joining more runs
    one by one or at once gives the same.

    >>> interleaved([["m", "c", "z"], ["k", "p"]])
    ['k', 'm', 'c', 'p', 'z']
    """
    parts: list[list[str]] = []
    for run in runs:
        highest = ""
        for own in run:
            if own > highest or not highest:
                parts.append([])
                highest = own
            parts[-1].append(own)
    return [own for part in sorted(parts) for own in part]


def _old_order(version: "list[str]", base: "list[str]", old: "set[str]") -> "list[str]":
    """Return the old ids in a version's order; one it deleted stays behind its predecessor."""
    order = [own for own in version if own in old]
    there = set(order)
    for at, own in enumerate(base):
        if own in old and own not in there:
            before = [each for each in base[:at] if each in there]
            order.insert(order.index(before[-1]) + 1 if before else 0, own)
            there.add(own)
    return order


def _runs(
    version: "list[str]", spine: "set[str]", left: "set[str]", base: "set[str]"
) -> "dict[str, list[list[str]]]":
    """Return the ids a version added, by the one they stand behind; empty for the list's head.

    Where the other person deleted one between them they are two runs.
    """
    runs: dict[str, list[list[str]]] = {}
    anchor = ""
    run: list[str] = []
    for own in version:
        if own in spine:
            anchor, run = own, []
        elif own in base:
            run = []
        elif own in left:
            if not run:
                runs.setdefault(anchor, []).append(run)
            run.append(own)
    return runs
