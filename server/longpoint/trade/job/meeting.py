"""A phone's document meets the one on the shop's server: what stands on both from now on."""

from ..refusal import Refusal
from .document import check
from .joining import GONE, Collision, Joined
from .merge import joined_jobs, reported
from .questions import with_questions
from .sameness import is_same

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    Object = dict[str, Any]

WHOLE = ("photo",)
"""Kinds of which one stands whole: half of one picture and half of another is none."""


def meet(request: "Object") -> "Object":
    """Return what a document says once a phone and the server have met, as the door asks for it.

    The request holds the `kind` of document and three states of it, each
    ``{"units", "schema", "body"}`` or null (not there, or deleted): `base`, which both last had in
    common, `mine` on this phone, `theirs` on the server; `is_behind`, whether the server stands at
    a version that this phone had before, since it was restored from a backup; perhaps `names`, who
    says mine and who says theirs.

    The reply holds the `document` that both are to have, whether it `is_mine` and `is_theirs`, and
    the `collisions`, for the phone to say. What truly collides is in the document as `questions`.
    Without a base both are united, and where they differ theirs stands.

    Raises
    ------
    Refusal
        A newer Longpoint wrote one of them, or one is no document: both stay where they are.
    """
    base, mine, theirs = [request.get(name) for name in ("base", "mine", "theirs")]
    names = request.get("names") or ["", ""]
    kind = str(request.get("kind"))
    collisions: list[Collision] = []
    if request.get("is_behind") or is_same(mine, theirs) or is_same(base, theirs):
        found = mine
    elif is_same(base, mine):
        found = theirs
    elif mine is None or theirs is None:
        found = theirs if mine is None else mine
        if base is not None:
            collisions = [Collision((), base["body"], _body(mine), _body(theirs), False)]
    elif base is None:
        found, collisions = _joined(kind, None, theirs, mine, [names[1], names[0]])
        collisions = [
            Collision(each.path, each.base, each.theirs, each.mine, each.together)
            for each in collisions
        ]
    else:
        found, collisions = _joined(kind, base, mine, theirs, names)
    return {
        "document": found,
        "is_mine": is_same(found, mine),
        "is_theirs": is_same(found, theirs),
        "collisions": [reported(each) for each in collisions],
    }


def _joined(
    kind: str, base: "Any", mine: "Object", theirs: "Object", names: "list[str]"
) -> "tuple[Object, list[Collision]]":
    """Return two states joined; where they collide, mine stands and the document asks."""
    if mine["schema"] != theirs["schema"]:
        raise Refusal("schema", "A newer Longpoint wrote one of the two: update, then they meet.")
    if kind in WHOLE:
        whole = Collision((), _body(base), mine["body"], theirs["body"], False)
        return mine, [whole]
    if kind == "job":
        check(mine["body"])
        check(theirs["body"])
        body, collisions = joined_jobs(
            None if base is None else base["body"], mine["body"], theirs["body"]
        )
        units = body.get("units") or mine["units"]
    else:
        body, units, collisions = _plain(base, mine, theirs)
    body = with_questions(body, collisions, names)
    if kind == "job":
        check(body, mine["body"])
    return {"units": units, "schema": mine["schema"], "body": body}, collisions


def _plain(base: "Any", mine: "Object", theirs: "Object") -> "tuple[Object, str, list[Collision]]":
    """Return body, units and collisions of a document that is no job.

    Where the units differ and the body doesn't say its own, one body stands: inches and
    millimeters don't mix.
    """
    is_alike = is_same(mine["units"], theirs["units"])
    if not is_alike and "typed_in" not in mine["body"]:
        whole = Collision((), _body(base), mine["body"], theirs["body"], False)
        return mine["body"], mine["units"], [whole]
    joined = Joined(GONE if base is None else base["body"], mine["body"], theirs["body"])
    is_moved = base is not None and is_same(base["units"], mine["units"])
    return joined.found, theirs["units"] if is_moved else mine["units"], joined.collisions


def _body(state: "Any") -> "Any":
    return GONE if state is None else state["body"]
