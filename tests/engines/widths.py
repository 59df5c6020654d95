"""Whether any screen can be scrolled sideways, on phones of three widths."""

from collections.abc import Iterator

from longpoint.trade.shelf import PLACES, tool_named
from tests.engines.engine import WIDTH
from tests.engines.journey import Journey
from tests.phone.app import TOOLS, example_hash

WIDTHS = (WIDTH, 360, 320)


def too_wide(way: Journey) -> list[str]:
    """Return the screens that are wider than a phone, and by how much."""
    found: list[str] = []

    def look(screen: str) -> None:
        # There and back again: each screen is looked at in the width the last one was left in.
        widths = sorted(WIDTHS, reverse=way.engine.width == WIDTH)
        for width in widths:
            way.engine.resize(width)
            if (over := way.engine.ask("sideways")) > 0:
                found.append(f"{screen}: {over} over at {width}")

    way.engine.open(f"{way.address}/")
    for place, title in PLACES:
        way.open(f"#/{place}", title)
        look(title)
    for place, slug in TOOLS:
        way.open(example_hash(place, slug), tool_named(slug).title)
        way.answer()
        look(slug)
    for screen in job_screens(way):
        look(screen)
    way.engine.resize(WIDTH)
    return found


def job_screens(way: Journey) -> Iterator[str]:
    """Go through the screens of the demo job, each named once it is up."""
    way.open("#/job", "Jobs")
    yield "no job"
    way.engine.tap("button", "Open the demo job")
    way.engine.says("h1", "Boot room, a demo")
    way.engine.says(".item", "Two inset leaves")
    yield "a job"
    for part in ("Stock", "Quote"):
        way.engine.tap(".parts .part", part)
        way.engine.titled(part)
        yield part
        way.engine.tap("a", "Back to the job")
    for place, title in PLACES:
        way.open(f"#/{place}", title)
        way.engine.says(".jobsheet .ticklist", "")
        yield f"a job's {place} sheet"
    way.open("#/job", "Jobs")
    way.engine.says(".jobcard", "Boot room, a demo")
    yield "jobs"
