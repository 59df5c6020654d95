"""A window with one page in it, as large as a phone: what WebKit's driver drives.

Run by Debian's own Python, which alone has the bindings: `webkit_window.py FOLDER`, or `--check` to
try that they are here. WebKit's own small browser is never as narrow as a phone.
"""

import sys
from pathlib import Path
from typing import Any

import gi

gi.require_version("Gdk", "3.0")
gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")

from gi.repository import Gdk, Gtk, WebKit2  # noqa: E402 # the versions are said first

WIDTH, HEIGHT = 390, 844


def view_of(folder: Path) -> Any:
    """Return a page that the driver may drive, and whose storage lies in the folder."""
    kept = WebKit2.WebsiteDataManager(
        base_data_directory=str(folder / "data"), base_cache_directory=str(folder / "cache")
    )
    context = WebKit2.WebContext(website_data_manager=kept)
    context.set_automation_allowed(True)
    view = WebKit2.WebView(web_context=context, is_controlled_by_automation=True)
    settings = view.get_settings()
    settings.set_enable_write_console_messages_to_stdout(True)
    # No card draws here: a card played by the processor takes longer than drawing at once.
    settings.set_hardware_acceleration_policy(WebKit2.HardwareAccelerationPolicy.NEVER)
    context.connect("automation-started", lambda _, session: introduce(session, view))
    context.connect("download-started", lambda _, download: save(download, folder / "saved"))
    view.connect("close", lambda _: Gtk.main_quit())
    return view


def introduce(session: Any, view: Any) -> None:
    """Say what the driver expects to hear: the name of the browser it knows."""
    about = WebKit2.ApplicationInfo()
    about.set_name("MiniBrowser")
    about.set_version(*(getattr(WebKit2, part)() for part in VERSION))
    session.set_application_info(about)
    session.connect("create-web-view", lambda _: view)


VERSION = ("get_major_version", "get_minor_version", "get_micro_version")


def save(download: Any, folder: Path) -> None:
    """Save a file without a question."""

    def decide(download: Any, name: str) -> bool:
        download.set_destination((folder / name).as_uri())
        return True

    download.connect("decide-destination", decide)


def main() -> None:
    # As on a phone that asks for it, nothing moves.
    Gtk.Settings.get_default().set_property("gtk-enable-animations", False)
    window = Gtk.Window()
    window.set_default_size(WIDTH, HEIGHT)
    window.add(view_of(Path(sys.argv[1])))
    window.show_all()
    # Nobody manages windows here: this one takes the keys itself.
    window.get_window().focus(Gdk.CURRENT_TIME)
    Gtk.main()


if __name__ == "__main__" and sys.argv[1:] != ["--check"]:
    main()
