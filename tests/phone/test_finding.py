"""A question is found by what a carpenter calls the thing, whatever the tool calls it.

The words are the trade's own; that they belong to these questions is common practice, no source.
"""

import pytest
from playwright.sync_api import expect

from tests.phone.app import App


@pytest.mark.parametrize(
    ("words", "title"),
    [
        ("lumber", "Stock sizes"),
        ("2x4", "Stock sizes"),
        ("cope baseboard", "Trim run"),
        ("picture frames", "Mitered frame"),
        ("balusters", "Even spacing"),
        ("boxes", "Wall frames"),
        ("butt hinge", "Hinge layout"),
        ("rosette", "Casing set"),
        ("clearance", "Mitered frame"),  # it stands only in a help
    ],
)
def test_by_words_of_the_trade(app: App, words: str, title: str) -> None:
    app.open("#/site")
    app.page.get_by_role("searchbox").fill(words)
    expect(app.page.get_by_role("link").filter(has_text=title)).to_be_visible()


def test_what_is_found_at_every_place_stands_under_no_place_s_name(app: App) -> None:
    app.open("#/site")
    app.page.get_by_role("searchbox").fill("lumber")
    expect(app.page.get_by_role("heading", level=1)).to_have_text("Found")
    app.page.get_by_role("searchbox").fill("")
    expect(app.page.get_by_role("heading", level=1)).to_have_text("On site")


def test_where_the_network_hangs_titles_and_names_are_searched(app: App) -> None:
    """What the tools say for themselves never comes: a search does without."""
    app.open("#/site")
    app.page.route("**/assets/tool-*.json", lambda route: None)
    app.page.get_by_role("searchbox").fill("picture frames")
    expect(app.page.get_by_role("link").filter(has_text="Mitered frame")).to_be_visible()
    expect(app.page.get_by_role("heading", level=1)).to_have_text("Found")
    app.page.unroute_all(behavior="ignoreErrors")
