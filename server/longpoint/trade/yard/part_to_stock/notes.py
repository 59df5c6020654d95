"""What to say about the way a part is made: what is milled, and why nothing simpler will do."""

from ...lengths import Scale, show_money
from ...tables.hardwood import kiln_dried
from ...tool import Answer
from ..feet import show_feet
from ..sizes import GREEN, SAME
from ..yard_list import beside_note
from .offers import Offer
from .ways import Part, Way, needed, too_short

_LEAST_STRIP = 1 / 2  # Inches: what is narrower is no strip worth keeping.


def how_words(way: Way) -> str:
    """Return in a few words what is done with the boards."""
    strips = f"{way.strips} strips"
    if way.layers > 1:
        return f"laminate {way.layers}" + (f", each of {strips}" if way.strips > 1 else "")
    if way.strips > 1:
        return f"glue {strips}"
    return f"rip {way.across} side by side" if way.across > 1 else "one piece"


def rip_words(way: Way) -> str:
    """Return what is ripped, with the word before its width."""
    if way.layers > 1:
        return how_words(way) + ", ripped"
    if way.strips > 1:
        return how_words(way) + " ripped"
    return how_words(way) if way.across > 1 else "rip"


def feet_words(inches: float, scale: Scale) -> str:
    """Return a length as the yard sells it: in feet, or in millimeters where those are in force.

    >>> feet_words(96, Scale()), feet_words(99, Scale())
    ('8 ft', '8.25 ft')
    """
    return show_feet(inches / 12) if scale.units == "in" else scale.length(inches)


def sticks_words(way: Way, scale: Scale) -> str:
    """Return the whole sticks to buy, longest first: ``7 of 8 ft``; "" for any length."""
    sticks = reversed(way.sticks)
    return ", ".join([f"{each.count} of {feet_words(each.length, scale)}" for each in sticks])


def add_notes(answer: Answer, ways: "list[Way]", part: Part) -> None:
    """Say what is done with the best way, why it is the best, and what else could be."""
    best, say = ways[0], answer.scale.finer().length
    answer.note(_mill_note(best, part, answer.scale))
    if best.layers > 1 or best.planed_away:
        answer.note(_thickness_note(ways, part, answer.scale))
    _as_it_comes_note(answer, ways, part)
    if best.offer.seen is not None:
        answer.note(beside_note(best.offer.seen, best.offer.standard, answer.scale))
        _standard_note(answer, best, part)
    if best.left_over > _LEAST_STRIP and best.across == 1:
        answer.note(f"A strip of {say(best.left_over)} less the saw's kerf is left beside it.")
    if best.offer.guessed:
        answer.note(
            f"Random widths: counted as {say(best.offer.width)} wide. Sort the stack, and measure."
        )
    _cheapest_note(answer, ways)
    answer.note(
        "Order: stock of which more than half would be planed away comes last; then fewest glue "
        "lines, least wood bought, and where these are alike and all prices known, least cost. "
        "Waste is all that is bought and isn't in the finished parts."
    )


def _mill_note(way: Way, part: Part, scale: Scale) -> str:
    say = scale.finer().length
    if way.to_mill <= SAME:
        done = f"{way.offer.label} is used as thick as it comes, {say(way.offer.thickness)}"
    else:
        done = (
            f"{way.offer.label} mills down to {say(way.layer)}: {say(2 * way.to_mill)} comes off, "
            f"{say(way.to_mill)} a face"
        )
    if way.glue_lines:
        return f"{done}; {how_words(way)} to make {say(part.thickness)} x {say(part.width)}."
    return f"{done}; rip it to {say(way.rip)} and joint it to {say(way.strip)}."


def _thickness_note(ways: "list[Way]", part: Part, scale: Scale) -> str:
    """Say why the best way isn't one layer of stock about as thick as the part."""
    best, say = ways[0], scale.finer().length
    if best.planed_away:
        return (
            "All stock here is more than twice as thick as the part: resaw it on a band saw "
            "rather than plane it all away."
        )
    single = [way for way in ways if way.layers == 1]
    only = "Nothing here is thick enough"
    if single:
        milled = [way for way in single if not way.planed_away]
        takes = "takes more glue lines" if milled else "would be more than half planed away"
        only = "What is thick enough " + takes
    return (
        f"{only} for {say(part.thickness)} with {say(part.face)} off each face: laminate "
        f"{best.layers} of {best.offer.label}, each planed to {say(best.layer)}."
    )


def _as_it_comes_note(answer: Answer, ways: "list[Way]", part: Part) -> None:
    """Name stock that has the part's thickness but not what milling it is said to take."""
    say = answer.scale.finer().length
    for offer in [way.offer for way in ways if way.layers > 1]:
        spare = offer.thickness - part.thickness
        if ways[0].layers > 1 and spare >= -SAME:
            answer.note(
                f"{offer.label} is {say(offer.thickness)} as it comes: if {say(spare / 2)} off "
                "each face is enough, say so above, and one layer of it will do."
            )
            return


def _standard_note(answer: Answer, best: Way, part: Part) -> None:
    """Say where a board of the standard's size would not have done the same."""
    thickness, say = best.offer.standard[0], answer.scale.finer().length
    if thickness is None:
        return
    left = thickness - 2 * part.face
    if left <= 0 or needed(part.thickness, left) > best.layers:
        answer.note(
            f"From the standard's {say(thickness)} it would not come out: {say(best.layer)} and "
            f"{say(part.face)} off each face take {say(best.layer + 2 * part.face)}."
        )


def _cheapest_note(answer: Answer, ways: "list[Way]") -> None:
    priced = [(way.cost, way.place, way) for way in ways if way.cost is not None]
    if not priced:
        return
    cost, _, way = min(priced, key=lambda each: each[:2])
    if way is not ways[0]:
        answer.note(
            f"Cheapest of those with a price: {way.offer.label}, {how_words(way)}, "
            f"{show_money(cost)}."
        )


def condition_note(answer: Answer, condition: str, way: Way, part: Part) -> None:
    """Say what green or rough stock may do to the best way's sizes."""
    if condition == "green":
        answer.note(GREEN)
    if condition != "rough" or way.offer.seen is not None:
        return
    least, say = kiln_dried(way.offer.nominal[0]), answer.scale.finer().length
    if least - way.layer < 2 * part.face:
        answer.note(
            f"Kiln-dried, {way.offer.label} may be scant, down to {say(least)}, which leaves "
            f"{say((least - way.layer) / 2)} a face: measure before you buy."
        )


def short_note(answer: Answer, offers: "list[Offer]", part: Part) -> None:
    """Name what was left out for its length."""
    short = [offer for offer in offers if too_short(offer, part)]
    if short:
        names = ", ".join([f"{offer.label} ({offer.origin()})" for offer in short])
        answer.note(f"Sold too short to cut {answer.scale.length(part.cut_length)}: {names}.")
