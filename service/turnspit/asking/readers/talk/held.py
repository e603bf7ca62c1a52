"""What the talk holds, as it was said: 7.257 kg is `16` pounds, so that a bare `18` can be seen to correct it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from turnspit.asking.readers.heat.temperature import Temperature
from turnspit.asking.readers.measures.measures import KG, LITRES, METRES
from turnspit.asking.scene import Scene

# By path, the units in which its value may have been said: those of the United States, then metric ones.
_UNITS = {
    "roast.mass_kg": (("lb", "oz"), ("kg", "g"), KG),
    "brine.water_l": (("gal", "quart", "cup"), ("L", "mL"), LITRES),
    "brine.vessel_l": (("gal", "quart", "cup"), ("L", "mL"), LITRES),
    "altitude_m": (("ft",), ("m",), METRES),
}
# The steps in which one tells a measure.
_STEPS = {
    "lb": 0.25, "oz": 1.0, "kg": 0.05, "g": 50.0, "gal": 0.25, "quart": 0.5, "cup": 0.5, "L": 0.5, "mL": 50.0,
    "ft": 10.0, "m": 10.0, "degF": 1.0, "degC": 1.0,
}  # fmt: skip
_DEGREES = ("oven.temperature_c", "reading.temperature_c", "roast.target_c")
_PLAIN = ("covers", "roast.count", "brine.hours", "elapsed_h", "scale.from", "scale.to")
MOMENTS = ("serve_at", "start_at", "reading.at")
# How near a value must lie to a whole number of steps to have been said in that unit.
_ROUND = 0.02


@dataclass(frozen=True, slots=True)
class Held:
    """A value of the talk: its path, the number that was said, and its unit, "" where it has none."""

    path: str
    number: float
    unit: str = ""

    def si(self, number: float) -> float:
        """Another number of the same unit, in SI."""
        if self.path in _UNITS:
            table = _UNITS[self.path][2]
            return round(number * table[self.unit], 3)
        if self.path in _DEGREES:
            return round(Temperature(number, self.unit).celsius, 2)
        return int(number) if number == int(number) and self.path not in ("brine.hours", "elapsed_h") else number


def held(scene: Scene) -> Iterator[Held]:
    """Every value of the talk that has a number; twice where it may have been said in either of two units."""
    for path, value in scene.before.items():
        yield from as_said(path, value, scene.usual == "metric")


def as_said(path: str, value: Any, metric: bool) -> Iterator[Held]:
    """A value of a path in the units in which it may have been said; nothing where it has no number."""
    if path in _UNITS:
        american, scientific, table = _UNITS[path]
        units = (*scientific, *american) if metric else (*american, *scientific)
        yield from _said_in(path, {unit: value / table[unit] for unit in units})
    elif path in _DEGREES:
        units = ("degC", "degF") if metric else ("degF", "degC")
        yield from _said_in(path, {unit: value if unit == "degC" else value * 1.8 + 32 for unit in units})
    elif path in _PLAIN:
        yield Held(path, float(value))
    elif path in MOMENTS:
        at = datetime.fromisoformat(value)
        yield Held(path, (at.hour % 12 or 12) + at.minute / 60)


def _said_in(path: str, values: dict[str, float]) -> Iterator[Held]:
    """The value in the unit in which it is the roundest number: degrees in both, where both are whole."""
    steps = {unit: value / _STEPS[unit] for unit, value in values.items()}
    whole = [unit for unit, count in steps.items() if count >= 0.5 and abs(count - round(count)) <= _ROUND]
    if path not in _DEGREES:
        whole = sorted(whole, key=lambda unit: steps[unit])[:1]
    for unit in whole or list(values)[:1]:
        yield Held(path, round(values[unit], 2), unit)
