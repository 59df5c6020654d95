"""What a hinge layout comes to, in sentences."""

from ...lengths import show_number

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from ...tables.hinges import HingeLeaf
    from .cups import Cups
    from .lines import Lines
    from .mortise import Mortise


def butt_verdict(
    lines: "Lines | None",
    mortise: "Mortise",
    head_gap: float,
    listed: "HingeLeaf | None",
    scale: "Scale",
) -> "list[str]":
    """Return where the hinges go and how deep, as far as both are known, ever shorter.

    `listed` is the hinge leaf where it was taken from the list, not measured.
    """
    fine = scale.finer()
    long, short = _depth(mortise, fine)
    if listed is not None and long:
        words = f" (listed leaf {scale.decimal(listed.thickness)}: measure yours)"
        long, short = long + words, short + words
    # The closed hinge's gap has a usual value, and half of it is wood.
    closed = ", closed gap " + fine.length(mortise.closed_gap) if long else ""
    if lines is None:
        gap = "; gap " + fine.length(mortise.gap or 0.0)
        return [_sentence(long) + words for words in (gap + closed, gap, "")] + [_sentence(short)]
    long, short = ["; " + words if words else "" for words in (long, short)]
    every = ", ".join([scale.length(top) for top in lines.tops])
    ends = " to ".join([scale.length(top) for top in (lines.tops[0], lines.tops[-1])])
    hinges = f"{lines.count} hinges" if lines.count > 1 else "1 hinge"
    tops = hinges + (", top lines " if lines.count > 1 else ", top line ")
    return [
        f"{tops}{every} down the leaf, {scale.length(head_gap)} more on the jamb{long}{closed}",
        f"{tops}{every} down the leaf{long}{closed}",
        f"{tops}{every} down the leaf{short}{closed}",
        f"{tops}{every} down{short}{closed}",
        f"{tops}{ends} down{short}{closed}",
        f"{tops}{ends} down{short}",
        hinges + short,
    ]


def _sentence(words: str) -> str:
    return words[:1].upper() + words[1:]


def _depth(mortise: "Mortise", fine: "Scale") -> "tuple[str, str]":
    """Return what is done for each hinge leaf, in full and short; nothing while not known."""
    if mortise.depth is None:
        return "", ""
    if mortise.shim:
        shim = fine.length(mortise.shim)
        return f"no mortise, shim each hinge leaf {shim}", f"no mortise, shim {shim}"
    deep = fine.length(mortise.depth)
    return f"mortise each hinge leaf {deep} deep", f"mortise {deep} deep"


def butt_notes(
    lines: "Lines | None", mortise: "Mortise", head_gap: float, scale: "Scale"
) -> "list[str]":
    """Return how the hinges are marked and let in."""
    said = _mortise_notes(mortise, scale.finer())
    if lines is not None and lines.matched:
        said.append(
            "Number and places follow the old hinges, not the offsets; try a hinge leaf in an old "
            "mortise, since its corners and depth may differ."
        )
    if lines is not None:
        said.append(
            "Marks on the leaf run from its top edge, marks on the jamb from the head; the jamb's "
            f"are {scale.length(head_gap)} more, so the leaf hangs with its gap at the head."
        )
    said.append(
        "Knife around the hinge leaf itself, pare shallow and try it; the mortise is open at the "
        "knuckle face. Where old hinges stay, transfer their lines instead of measuring."
    )
    return said


def _mortise_notes(mortise: "Mortise", fine: "Scale") -> "list[str]":
    if mortise.depth is None or mortise.leaf is None:
        return [
            "The mortise's depth waits for the hinge leaf's thickness and the hinge gap; without a "
            "hinge at hand take a listed leaf."
        ]
    if mortise.shim:
        return [
            "The hinge itself keeps more than the gap wanted: no mortise, and a shim "
            f"{fine.length(mortise.shim)} thick behind each hinge leaf."
        ]
    if mortise.depth > mortise.leaf:
        return [
            "The hinge leaves lie below the wood: the gap wanted is less than the closed hinge "
            "keeps. Check that the knuckle still turns freely, or take a hinge that closes tighter."
        ]
    return []


def cup_verdict(cups: "Cups", centers: "list[float] | None", scale: "Scale") -> "list[str]":
    """Return where the cups go and how deep, as far as both are known, ever shorter."""
    fine = scale.finer()
    # Their bits are sold in millimeters everywhere.
    bore = f"bore {show_number(cups.bore * 25.4, 1)} mm"
    if cups.depth is not None:
        bore += f", {fine.length(cups.depth)} deep"
    place = "" if cups.center is None else f"{fine.length(cups.center)} in"
    if centers is None:
        return [bore[:1].upper() + bore[1:] + (", center " + place if place else "")]
    also = (" and " + place if place else "") + "; " + bore
    ends = f"{scale.length(centers[0])} to {scale.length(centers[-1])}"
    every = ", ".join([scale.length(center) for center in centers])
    return [
        f"{len(centers)} cups, centers {every} down the leaf{also}",
        f"{len(centers)} cups, centers {every} down{also}",
        f"{len(centers)} cups, centers {ends} down{also}",
        f"{len(centers)} cups{also}",
    ]
