"""The address of an invitation, and its code for a phone's camera."""

import segno
from flask import request
from markupsafe import Markup

from longpoint.settings import public_address


def address_of(token: str) -> str:
    """Return where an invitation is taken up."""
    return f"{public_address() or request.host_url.rstrip('/')}/join/{token}"


def code_of(address: str) -> Markup:
    """Return an address as a QR code (ISO/IEC 18004), SVG to stand in a page."""
    code = segno.make(address, error="m", micro=False)
    svg = code.svg_inline(
        border=4, dark="#000", light="#fff", svgclass="code", omitsize=True, title="Code"
    )
    return Markup(svg)
