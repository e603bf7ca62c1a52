"""How far Salmonella is reduced by a history of temperatures, by the published time-temperature tables.

The table is the rule: log-linear in time between its rows, at a printed temperature exactly the printed cell. A cell
printed as 0 s and everything hotter takes the last time above zero; below the first row nothing is earned. The times
are those for the whole reduction, taken as spent evenly (rate = reduction / time), as the guideline's users do; the
survival curves behind them bend, so a reduction reached in part is an estimate.

Source: FSIS Cooking Guideline (Revised Appendix A), December 2021, Tables 2, 3 and 4.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from turnspit.errors import OutOfRange, Unknown
from turnspit.heat import RoastForecast
from turnspit.reference import table
from turnspit.safety.foods import family
from turnspit.spread import Spread

Species = Literal["turkey", "chicken", "other_poultry", "meat"]
Floats = NDArray[np.float64]

REQUIRED_LOG10: Mapping[Species, float] = {"turkey": 7.0, "chicken": 7.0, "other_poultry": 7.0, "meat": 6.5}
FATTEST_PERCENT = 12
MEAT_COLUMNS = (6.5, 7.0, 5.0)
_BIRD_TABLES: Mapping[Species, tuple[str, ...]] = {
    "turkey": ("fsis_turkey",),
    "chicken": ("fsis_chicken",),
    "other_poultry": ("fsis_chicken", "fsis_turkey"),
}


@dataclass(frozen=True, slots=True)
class HoldTable:
    """Seconds of holding by temperature that give `log10` of reduction, for one species and fat content."""

    species: Species
    log10: float
    rows_c: Floats = field(repr=False)
    log_hold_s: Floats = field(repr=False)

    @property
    def starts_c(self) -> float:
        """The coolest row; nothing is earned below it."""
        return float(self.rows_c[0])

    def hold_s(self, core_c: ArrayLike) -> Floats:
        """Seconds at `core_c` for the whole reduction; infinite below the first row."""
        core = np.asarray(core_c, dtype=float)
        seconds = np.exp(np.interp(core, self.rows_c, self.log_hold_s))
        return np.where(core >= self.rows_c[0] - 1e-9, seconds, np.inf)

    def log10_per_s(self, core_c: ArrayLike) -> Floats:
        """Rate of reduction at `core_c`; never falls with temperature."""
        return self.log10 / self.hold_s(core_c)


def hold_table(species: Species, fat_percent: float | None = None, log10: float | None = None) -> HoldTable:
    """The table for a species; for birds by fat in percent (0 to 100), unknown or over 12 as the fattest.

    A fat content between two columns takes the longer of both times; poultry that is neither chicken nor turkey the
    longer of the two tables. `log10` chooses the column for meat: 6.5 (the default), 7, or 5, which the guideline
    allows only with further support. Raises OutOfRange, and Unknown for a species or column that is not printed.
    """
    if species not in REQUIRED_LOG10:
        raise Unknown("species", species, tuple(REQUIRED_LOG10))
    if species == "meat":
        column = REQUIRED_LOG10["meat"] if log10 is None else log10
        if column not in MEAT_COLUMNS:
            raise Unknown("log10", log10, [f"{each:g}" for each in MEAT_COLUMNS])
        return _meat_table(column)
    if log10 not in (None, REQUIRED_LOG10[species]):
        raise Unknown("log10", log10, ["7"])
    if fat_percent is None:
        return _bird_table(species, FATTEST_PERCENT, FATTEST_PERCENT)
    OutOfRange.check("fat_percent", fat_percent, 0.0, 100.0, "give percent of the raw meat's weight")
    bounded = min(max(fat_percent, 1.0), float(FATTEST_PERCENT))
    return _bird_table(species, int(np.floor(bounded)), int(np.ceil(bounded)))


def species_of(kind: str) -> Species:
    """Which table a roast is held to; what is neither chicken, turkey nor red meat takes the longer of both."""
    if family(kind) in ("beef_lamb", "pork", "ham"):
        return "meat"
    if "turkey" in kind:
        return "turkey"
    return "chicken" if kind in ("chicken", "capon", "game_hen") else "other_poultry"


def log10_reduction(
    hold: HoldTable, minutes: ArrayLike, core_c: ArrayLike, longest_gap_min: float = np.inf
) -> Floats:
    """Log10 reduction over a history: `minutes` rising, shaped (n,); `core_c` shaped (n,) or (n, members).

    Between two readings the cooler of both is credited; across a gap longer than `longest_gap_min`, nothing.
    """
    at = np.asarray(minutes, dtype=float)
    core = np.asarray(core_c, dtype=float)
    if at.size < 2:
        return np.zeros(core.shape[1:])
    steps_s = np.diff(at) * 60.0
    steps_s = np.where(steps_s <= longest_gap_min * 60.0 + 1e-6, steps_s, 0.0)
    rate = hold.log10_per_s(np.minimum(core[:-1], core[1:]))
    reduction: Floats = np.tensordot(steps_s, rate, axes=1)
    return reduction


def predicted_log10(hold: HoldTable, minutes: ArrayLike, stations_c: Mapping[str, ArrayLike]) -> Spread:
    """What an ensemble expects at the coldest station, member by member. A prediction earns no credit.

    `stations_c` holds per station the temperatures shaped (len(minutes), members).
    """
    by_station = [log10_reduction(hold, minutes, core_c) for core_c in stations_c.values()]
    return Spread.of(np.min(np.stack(by_station), axis=0))


def forecast_log10(forecast: RoastForecast, fat_percent: float | None = None) -> Spread:
    """What a roast forecast expects at its coldest station, oven and rest together; it earns no credit.

    Taken along the forecast's percentile curves, so its P10 is rather too low than too high.
    """
    hold = hold_table(species_of(forecast.case.kind), fat_percent)
    by_station = [log10_reduction(hold, forecast.curve_min, curves.T) for curves in forecast.curve_c.values()]
    p10, p50, p90 = (float(each) for each in np.min(np.stack(by_station), axis=0))
    return Spread(p10, p50, p90)


@cache
def _meat_table(log10: float) -> HoldTable:
    rows_c, hold_s = _printed("fsis_meat", (MEAT_COLUMNS.index(log10),))
    return HoldTable("meat", log10, rows_c, np.log(hold_s))


@cache
def _bird_table(species: Species, low_fat: int, high_fat: int) -> HoldTable:
    columns = tuple(range(low_fat - 1, high_fat))
    printed = [_printed(name, columns) for name in _BIRD_TABLES[species]]
    rows_c = printed[0][0]
    hold_s = np.max(np.stack([seconds for _, seconds in printed]), axis=0)
    return HoldTable(species, REQUIRED_LOG10[species], rows_c, np.log(hold_s))


def _printed(name: str, columns: tuple[int, ...]) -> tuple[Floats, Floats]:
    """Rows in C and the seconds of the longest of the columns, a 0 s replaced by the last time above zero."""
    rows = table(name).rows
    rows_c = np.array([(row["printed_f"] - 32) / 1.8 for row in rows])
    cells = np.array([[cell_s(row["time"][n], row["unit"][n]) for n in columns] for row in rows])
    for number in range(1, len(cells)):
        cells[number] = np.where(cells[number] > 0.0, cells[number], cells[number - 1])
    longest = np.max(cells, axis=1)
    return rows_c, np.maximum.accumulate(longest[::-1])[::-1]


def cell_s(time: float, unit: str) -> float:
    """A printed cell in seconds."""
    return float(time) * (60.0 if unit == "min" else 1.0)
