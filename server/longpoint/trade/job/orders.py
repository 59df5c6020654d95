"""The order of a list that two people have reordered, added to and taken from."""


def merged_order(
    base: "list[str]", mine: "list[str]", theirs: "list[str]", left: "list[str]"
) -> "tuple[list[str], bool]":
    """Return the ids that are left in the order of whoever moved them, and whether both did.

    What was added stands behind what it was added behind; where both added at one place, what
    begins with the lower id comes first, so that it does not matter who is asked.

    >>> merged_order(["a", "b"], ["a", "b", "m"], ["b", "a"], ["a", "b", "m"])
    (['b', 'm', 'a'], False)
    >>> merged_order(["a"], ["a", "m"], ["a", "k"], ["a", "k", "m"])
    (['a', 'k', 'm'], False)
    """
    old = [own for own in base if own in left]
    orders = [_only(old, version, base) for version in (mine, theirs)]
    moved = [order != old for order in orders]
    spine = orders[1] if moved[1] and not moved[0] else orders[0]
    is_moved_twice = moved[0] and moved[1] and orders[0] != orders[1]
    added = [_added(version, base, spine, left) for version in (mine, theirs)]
    order: list[str] = []
    for anchor in [""] + spine:
        order += [anchor] if anchor else []
        runs = sorted([each[anchor] for each in added if anchor in each])
        for own in [own for run in runs for own in run]:
            if own not in order:
                order.append(own)
    return order, is_moved_twice


def _only(old: "list[str]", version: "list[str]", base: "list[str]") -> "list[str]":
    """Return the old ids in a version's order; one it deleted stays behind its predecessor."""
    order = [own for own in version if own in old]
    for own in old:
        if own not in order:
            before = [each for each in base[: base.index(own)] if each in order]
            order.insert(order.index(before[-1]) + 1 if before else 0, own)
    return order


def _added(
    version: "list[str]", base: "list[str]", spine: "list[str]", left: "list[str]"
) -> "dict[str, list[str]]":
    """Return the ids a version added, by the one they stand behind; empty for the list's head."""
    runs: dict[str, list[str]] = {}
    anchor = ""
    for own in version:
        if own in spine:
            anchor = own
        elif own in left and own not in base:
            runs.setdefault(anchor, []).append(own)
    return runs
