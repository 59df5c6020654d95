"""How painters measure for a price: old and printed ways that count work, not paint.

- `FLAT`: flat faces that are coated, edges not; trim by its girth. Common practice, no source.
- `FACTORS`: flat faces times a factor for the kind of door, edges and moldings in it; trim to 4 in
  wide by the running foot. Factors of the Indian measurement standard as engineering pages quote
  them (panelled 1.30, flush 1.20, glazed 0.80 to 1.00, louvered 1.80).
- `DOUBLED`: about 1909: panelled faces twice, edges twice, trim of a girth to 6 in as 12 and what
  is over 6 twice. Radford's cyclopedia as an archive shows it, one reading of its words.
- `GIRTHS`: 19th century: the tape goes into all quirks; a girth under 6 in counts 6, one of 6 to 12
  counts 12. Spon as an archive shows it.
"""

FLAT, FACTORS, DOUBLED, GIRTHS = "flat", "factors", "doubled", "girths"

CONVENTIONS = (
    (FLAT, "flat faces, no edges"),
    (FACTORS, "flat faces times a factor"),
    (DOUBLED, "panel doors and edges twice"),
    (GIRTHS, "true area, narrow trim counted wider"),
)

DOOR_FACTORS = {"framed": 1.30, "slab": 1.20, "glazed": 0.80, "board": 1.0}

RUNNING = 100 / 25.4
"""Inches: trim up to 10 cm wide is measured by its length, where factors are used."""


def counted_girth(girth: float, way: str) -> float:
    """Return the girth of trim as a convention counts it, in inches; 0 where by length alone.

    >>> [counted_girth(girth, DOUBLED) for girth in (4, 6, 8)]
    [12.0, 12.0, 16.0]
    >>> [counted_girth(girth, GIRTHS) for girth in (4, 6, 12, 14)]
    [6.0, 12.0, 12.0, 14.0]
    """
    if way == FACTORS:
        return 0.0 if girth <= RUNNING else float(girth)
    if way == DOUBLED:
        return 12.0 + 2 * max(girth - 6.0, 0.0)
    if way == GIRTHS and girth <= 12:
        return 6.0 if girth < 6 else 12.0
    return float(girth)
