"""What every answer about a roast in the oven says: windows on the clock, where to probe, the rest, the rules, the
reasons and the curve for a plot."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Any

from turnspit.message import Caution, Message, Value
from turnspit.reference import caution

if TYPE_CHECKING:
    from turnspit.heat import RoastCase, RoastForecast, RoastRow
    from turnspit.spread import Spread

FIVE = 5
"""Minutes: nobody reads a roast's time finer."""
LARGE_BIRD_KG = 5.4
TOLERANCE_K = 0.3
FAN_IS_WORTH_K = 13.9
"""A fan oven set 25 F lower heats as a still one: the usual fan conversion."""
FLOOR_C = 162.5
"""An oven set to this or more meets the federal floor of 325 F."""


def clock_window(since: datetime, span_min: Spread) -> tuple[datetime, datetime]:
    """When something is expected that takes `span_min` from `since`, outward to the next five minutes."""
    return outward(since + timedelta(minutes=span_min.p10), since + timedelta(minutes=span_min.p90))


def outward(low_at: datetime, high_at: datetime) -> tuple[datetime, datetime]:
    """A window on the clock, widened to the five minutes."""
    step = timedelta(minutes=FIVE)
    low_at -= timedelta(minutes=low_at.minute % FIVE, seconds=low_at.second, microseconds=low_at.microsecond)
    over = timedelta(minutes=high_at.minute % FIVE, seconds=high_at.second, microseconds=high_at.microsecond)
    return low_at, high_at - over + step if over else high_at


def first_check_min(forecast: RoastForecast) -> float:
    """Minutes in the oven at which the first reading is due: the early side of the window, on the five minutes."""
    return FIVE * (forecast.ready_min.p10 // FIVE)


def how(case: RoastCase, row: RoastRow) -> Message:
    """Stuffed or not, frozen or not, as it follows the roast's name."""
    stuffing = ("stuffed" if case.stuffed else "unstuffed") if row.poultry else "plain"
    return Message(f"asking-how-{stuffing}-{case.state}".replace("_", "-"))


def done_when(row: RoastRow, forecast: RoastForecast) -> tuple[Message, ...]:
    """Where the probe goes and what it must read."""
    if row.poultry:
        stuffed = (Message("asking-doneness-stuffed"),) if forecast.case.stuffed else ()
        return (Message("asking-done-bird", c=forecast.pull_c), *stuffed)
    said: dict[str, Value] = {"c": forecast.pull_c, "target_c": forecast.target_c, "safe_c": row.safe_c}
    rises = forecast.pull_c < forecast.target_c
    out = Message("asking-done-joint-rising" if rises else "asking-done-joint", **said)
    return (out, *before_carving(row, forecast), *tender(row, forecast))


def before_carving(row: RoastRow, forecast: RoastForecast) -> tuple[Message, ...]:
    """What has to be read before the knife, where meat is taken out below its safe minimum to rise in the rest."""
    if row.poultry or forecast.pull_c >= row.safe_c - TOLERANCE_K:
        return ()
    if forecast.target_c < row.safe_c - TOLERANCE_K:
        return (Message("asking-carve-below-safe", c=forecast.target_c, safe_c=row.safe_c),)
    return (Message("asking-carve-when-safe", safe_c=row.safe_c),)


def tender(row: RoastRow, forecast: RoastForecast) -> tuple[Message, ...]:
    """A cut full of sinew is safe long before it is tender."""
    pulled_c = row.doneness.get("pulled")
    if pulled_c is None or forecast.target_c >= row.doneness.get("sliced", pulled_c):
        return ()
    return (Message("asking-tender", safe_c=row.safe_c, pulled_c=pulled_c),)


def rest_line(row: RoastRow, mass_kg: float) -> Message:
    """The rest: a quarter of an hour or so, half an hour and more for a large bird (common practice, no source)."""
    low_min, high_min = row.rest_min_range
    if not row.poultry:
        return Message("asking-rest", low_min=low_min, high_min=high_min)
    if mass_kg >= LARGE_BIRD_KG:
        return Message("asking-rest-large", low_min=min(max(low_min, 30.0), high_min), high_min=high_min)
    return Message("asking-rest", low_min=min(low_min, 15.0), high_min=min(high_min, 20.0))


def roast_cautions(forecast: RoastForecast, row: RoastRow) -> tuple[Caution, ...]:
    """The rules that a roast in the oven touches."""
    case = forecast.case
    found = [caution("thermometer-decides", "info")]
    if row.poultry:
        found.append(caution("poultry-165", "info"))
        step = case.oven[0]
        if step.temperature_c + (FAN_IS_WORTH_K if step.convection else 0.0) < FLOOR_C:
            found.append(caution("oven-325", "warn"))
    if case.stuffed:
        found.append(caution("stuffing-165", "warn"))
    if case.state == "frozen":
        found.append(caution("from-frozen", "info"))
    if not row.poultry and forecast.target_c < row.safe_c:
        found.append(caution("beef-lamb-time-table" if row.kind.startswith(("beef", "lamb")) else "meat-145", "warn"))
    return tuple(found)


def reasons(case: RoastCase, row: RoastRow, forecast: RoastForecast) -> tuple[Message, ...]:
    """The numbers behind a window."""
    ready = forecast.ready_min
    return (
        Message(
            "asking-why-ensemble",
            members=case.members,
            low_min=ready.p10,
            middle_min=ready.p50,
            high_min=ready.p90,
            station=Message(f"asking-station-{forecast.deciding_station}"),
            c=forecast.pull_c,
        ),
        Message("asking-why-spread"),
        Message(f"asking-why-calibration-{forecast.calibration.replace(' ', '-')}"),
        Message("asking-why-loss", low=forecast.loss_fraction.p10 * 100, high=forecast.loss_fraction.p90 * 100),
        Message("asking-why-safe", c=row.safe_c),
        *forecast.assumptions,
    )


def forecast_document(forecast: RoastForecast) -> dict[str, Any]:
    """Minutes and percentiles for a plot, in SI."""
    return {
        "pull_c": round(forecast.pull_c, 1),
        "target_c": round(forecast.target_c, 1),
        "advised_pull_c": round(forecast.advised_pull_c, 1),
        "ready_min": forecast.ready_min.document(1),
        "check_from_min": first_check_min(forecast),
        "deciding_station": forecast.deciding_station,
        "peak_c": {station: spread.document(1) for station, spread in forecast.peak_c.items()},
        "calibration": forecast.calibration,
        "curve": {
            "minute": [round(float(minute), 1) for minute in forecast.curve_min],
            "stations": {
                station: {
                    name: [round(float(value), 1) for value in row]
                    for name, row in zip(("p10", "p50", "p90"), rows, strict=True)
                }
                for station, rows in forecast.curve_c.items()
            },
        },
    }
