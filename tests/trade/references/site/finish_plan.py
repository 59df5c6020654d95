"""A day watched from five minutes to five minutes: whoever is at work begins what may begin.

The plan is walked through a calendar of `datetime`, no moment is computed. The dew point is found
by halving: where the saturation pressure (Magnus, the WMO's constants) is what the air holds.
"""

from collections.abc import Iterator
from datetime import datetime, timedelta
from math import exp
from random import Random
from typing import Any

from tests.trade.references.expected import Expected

SLUG = "finish-plan"
DAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
MONDAY = datetime(2026, 11, 30)
TICK = timedelta(minutes=5)


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "air_temperature": random.randint(40, 95),
        "humidity": random.randint(20, 100),
    }
    if random.random() < 0.2:
        return inputs
    coats = []
    for _ in range(random.randint(1, 3)):
        recoat = random.choice([1, 2, 4, 8])
        coat: dict[str, Any] = {"minutes": random.choice([20, 45, 90]), "recoat_from": recoat}
        coat["sanding"] = random.choice([0, 15, 40])
        if random.random() < 0.5:
            coat["recoat_until"] = recoat + random.choice([1, 6, 20, 40])
        if random.random() < 0.5:
            coat["sand_after"] = random.choice([0.5, 2, 12])
        if random.random() < 0.5:
            coat["handle_after"] = random.choice([0.25, 1, 6])
        coats.append(coat)
    for paint, coat in zip(random.sample(("primer", "topcoat"), 2), coats, strict=False):
        if random.random() < 0.3:
            coat["paint"] = paint
            inputs[f"{paint}_coats"] = random.randint(1, 2)
    for name in ("dry_film", "primer_film", "topcoat_film"):
        if random.random() < 0.7:
            inputs[name] = random.choice([0.8, 1.5, 2.25])
    inputs["coated"] = random.choice(["leaf", "both"])
    return inputs | {
        "coats": coats,
        "faces": random.choice(["1", "2"]),
        "start_day": random.choice(DAYS),
        "day_from": random.choice(["7", "8:30", "6:00 am"]),
        "day_to": random.choice(["4 pm", "16:30", "12 pm"]),
        "start_time": random.choice(["", "10:00", "3 pm"]),
        "working_days": random.choice(["5", "6", "7"]),
        "hang_after": random.choice([4, 24, 48.5]),
    }


def dew_point(air: float, humidity: float) -> float:
    def pressure(celsius: float) -> float:
        return exp(17.62 * celsius / (243.12 + celsius))

    held = humidity / 100 * pressure((air - 32) / 1.8)
    low, high = -80.0, 60.0
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if pressure(middle) < held else (low, middle)
    return low * 1.8 + 32


def time_of(text: str) -> timedelta:
    hours, _, minutes = text.split()[0].partition(":")
    later = 12 if text.endswith("pm") and hours != "12" else 0
    return timedelta(hours=int(hours) + later, minutes=int(minutes or 0))


class Shop:
    """Working hours, and the clock on the wall."""

    def __init__(self, inputs: dict[str, Any]) -> None:
        self.begin, self.end = time_of(inputs["day_from"]), time_of(inputs["day_to"])
        self.days = int(inputs["working_days"])
        day = MONDAY + timedelta(days=DAYS.index(inputs["start_day"]))
        self.now = day + (time_of(inputs["start_time"]) if inputs["start_time"] else self.begin)

    def can_work(self, minutes: int) -> bool:
        midnight = self.now.replace(hour=0, minute=0)
        into = self.now - midnight
        fits = self.begin <= into and into + timedelta(minutes=minutes) <= self.end
        return fits and self.now.weekday() < self.days

    def wait_for(self, ready: datetime, minutes: int) -> datetime:
        while self.now < ready or not self.can_work(minutes):
            self.now += TICK
        return self.now


def expect(inputs: dict[str, Any]) -> Expected | None:
    figures: dict[str, Any] = {
        "dew_point": dew_point(inputs["air_temperature"], inputs["humidity"])
    }
    figures["surface_5f"] = figures["dew_point"] + 5
    figures["surface_3c"] = figures["dew_point"] + 3 * 9 / 5
    absent: tuple[str, ...] = ()
    if "coats" in inputs:
        films = layers(inputs)
        figures |= walked(inputs) | films
        absent = () if films else ("film_total", "film_of_gaps")
    return Expected(figures=figures, absent=absent, tolerance=1e-6)


def walked(inputs: dict[str, Any]) -> dict[str, Any]:
    shop, dry, missed, first = Shop(inputs), {}, 0, None
    faces = ["front"] if inputs["faces"] == "1" else ["front", "back"]
    coats = list(put_on(inputs))
    for at, coat in enumerate(coats):
        under = coats[at - 1]
        for place, face in enumerate(faces):
            if place:
                shop.now = max(shop.now, dry[faces[0]] + hours(coat, "handle_after"))
            if at and under["sanding"]:
                shop.wait_for(dry[face] + hours(under, "sand_after"), under["sanding"])
                shop.now += timedelta(minutes=under["sanding"])
            ready = dry[face] + hours(under, "recoat_from") if at else shop.now
            begun = shop.wait_for(ready, coat["minutes"])
            first = first or begun
            if at and "recoat_until" in under:
                missed += begun > dry[face] + hours(under, "recoat_until")
            dry[face] = shop.now = begun + timedelta(minutes=coat["minutes"])
        faces.reverse()
    shop.wait_for(max(dry.values()) + timedelta(hours=inputs["hang_after"]), 0)
    assert first is not None
    return {"hang_hours": (shop.now - first) / timedelta(hours=1), "missed": missed}


def layers(inputs: dict[str, Any]) -> dict[str, Any]:
    """Lay the films one by one on each surface that borders a gap, in inches from wood to wood."""
    films = [inputs.get(row.get("paint", "dry") + "_film") for row in put_on(inputs)]
    if None in films:
        return {}
    surfaces = 2 if inputs["coated"] == "leaf" else 4
    taken = 0.0
    for film in films * surfaces:
        taken += film / 1000
    return {"film_total": sum(films), "film_of_gaps": taken}


def put_on(inputs: dict[str, Any]) -> Iterator[dict[str, Any]]:
    """Give each coat that goes on; a row for a paint is as many as there are coats of it."""
    for row in inputs["coats"]:
        yield from [row] * (inputs[row["paint"] + "_coats"] if "paint" in row else 1)


def hours(coat: dict[str, Any], name: str) -> timedelta:
    return timedelta(hours=coat.get(name, coat["recoat_from"]))
