"""What a device is called in the list of devices, by what its browser says of itself."""

from flask import Request

SYSTEMS = (("iPhone", "iPhone"), ("iPad", "iPad"), ("Android", "Android"), ("Windows", "Windows"),
           ("Mac OS", "Mac"), ("CrOS", "Chromebook"), ("Linux", "Linux"))  # fmt: skip
BROWSERS = (("Firefox/", "Firefox"), ("FxiOS/", "Firefox"), ("Edg", "Edge"), ("OPR/", "Opera"),
            ("Chrome/", "Chrome"), ("CriOS/", "Chrome"), ("Safari/", "Safari"))  # fmt: skip


def title_of(request: Request) -> str:
    """Return a few words that tell one's devices apart."""
    said = request.user_agent.string
    browser = next((name for sign, name in BROWSERS if sign in said), "A browser")
    system = next((name for sign, name in SYSTEMS if sign in said), "")
    return f"{browser} on {system}" if system else browser
