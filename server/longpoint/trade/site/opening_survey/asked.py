"""What is measured of an opening by tape and level."""

from ...tool import Length


def size(
    name: str, label: str, help: str = "", *, optional: bool = False, quantity: str = ""
) -> Length:
    """Return a size by tape."""
    text = "not measured" if optional else ""
    return Length(
        name,
        label,
        least=1 / 8,  # beside a long side nothing is left of a shorter one
        help=help,
        optional=optional,
        default_text=text,
        quantity=quantity,
    )


def reading(name: str, label: str, way: str) -> Length:
    """Return what a level reads at its end."""
    return Length(
        name,
        label,
        least=-4,
        most=4,
        optional=True,
        default_text="not read",
        help=f"Gap at the level's end, bubble centered: + {way}, - the other way.",
    )
