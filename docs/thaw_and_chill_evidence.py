"""Prints thawing and cooling forecasts beside rules and measurements, and draws the plots of thaw_and_chill.md.

Run `python docs/thaw_and_chill_evidence.py`; the plots need matplotlib (`pip install turnspit[docs]`).
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np

from turnspit.errors import OutOfRange
from turnspit.heat import ChillCase, ThawCase, depth_for, forecast_chill, forecast_thaw
from turnspit.heat.cases import ThawMethod
from turnspit.heat.properties import composition, conductivity_levy, conductivity_parallel, density, specific_heat
from turnspit.reference import rule, table
from turnspit.spread import Spread

IMAGES = Path(__file__).parent / "images"
POUND_KG = 0.45359237
WAYS: tuple[tuple[str, ThawMethod, float], ...] = (
    ("refrigerator 3.3 C", "refrigerator", 3.3),
    ("water 10 C", "cold_water", 10.0),
    ("water 21 C", "cold_water", 21.0),
)


def print_properties() -> None:
    """What a few meats come to at 20 C."""
    print(f"{'food':36s} {'kg/m3':>7s} {'J/kgK':>7s} {'Levy':>6s} {'parallel':>9s} W/mK, -20 C Levy")
    for food in (
        "turkey",
        "chicken",
        "duck",
        "beef ribs, whole (6-12)",
        "pork shoulder, whole, lean",
        "lamb leg, whole, lean",
    ):
        meat = composition(food)
        levy, parallel = conductivity_levy(meat, np.array([20.0, -20.0])), conductivity_parallel(meat, 20.0)
        heat = specific_heat(meat, 20.0)
        print(f"{food:36s} {density(meat, 4.0):7.0f} {heat:7.0f} {levy[0]:6.3f} {parallel:9.3f} {levy[1]:8.2f}")


def print_thaw() -> None:
    """Turkeys by mass: the rule, the model, the plan."""
    heads = "".join(f"{head:>7s}" for head in ("P10", "P50", "P90", "plan"))
    print(f"\n{'turkey':8s} {'way':20s} {'rule, h':>12s}{heads} {'above 5 C':>10s}")
    for pounds in (4, 8, 12, 16, 20, 24):
        for name, method, medium_c in WAYS:
            thaw = forecast_thaw(ThawCase("turkey", pounds * POUND_KG, method, medium_c))
            low_h, high_h = thaw.rule_h or (0.0, 0.0)
            model = thaw.model_h
            print(
                f"{pounds:3d} lb   {name:20s} {low_h:5.1f} to {high_h:4.0f} {model.p10:6.1f} {model.p50:6.1f} "
                f"{model.p90:6.1f} {thaw.plan_h:6.1f} {thaw.surface_above_5c_h.p50:10.1f}"
            )


def measured_case(row: dict[str, object]) -> ChillCase:
    """The case of a row of `chill_measured`."""
    case = dict(row["case"])  # type: ignore[call-overload]
    return ChillCase(**{**case, "dims_mm": tuple(case.get("dims_mm", ()))})


def print_chill() -> None:
    """Each measured cooling beside its window, and the counts."""
    print(
        f"\n{'measured cooling':26s} {'use':8s} {'hours':>6s} {'P10':>6s} {'P50':>6s} {'P90':>6s} {'P50/hours':>10s}"
    )
    inside = near = 0
    rows = list(table("chill_measured"))
    for row in rows:
        window: Spread = forecast_chill(measured_case(dict(row))).hours
        within = window.p10 <= row["hours"] <= window.p90
        ratio = window.p50 / row["hours"]
        inside, near = inside + within, near + (abs(ratio - 1) <= 0.2)
        print(
            f"{row['id']:26s} {'fitted' if row['fitted'] else 'checked':8s} {row['hours']:6.2f} {window.p10:6.2f} "
            f"{window.p50:6.2f} {window.p90:6.2f} {ratio:10.2f}{'' if within else '  outside'}"
        )
    print(f"of {len(rows)} rows {inside} lie inside P10 to P90, {near} medians within 20 percent")


KITCHEN = (
    ("carved turkey, 50 mm in a pan", ChillCase("carved turkey", "slab", (50.0,))),
    ("the same, 25 mm", ChillCase("carved turkey", "slab", (25.0,))),
    ("stuffing, 50 mm", ChillCase("stuffing", "slab", (50.0,))),
    ("whole turkey of 6 kg", ChillCase("turkey", "bird", mass_kg=6.0)),
    ("half a breast, 1 kg", ChillCase("turkey", "brick", mass_kg=1.0)),
    ("stock, 10 L pot", ChillCase("stock", "pot", mass_kg=10.0)),
    ("stock, 10 L pot, ice bath", ChillCase("stock", "pot", mass_kg=10.0, medium="ice_bath")),
    ("the same, stirred", ChillCase("stock", "pot", mass_kg=10.0, medium="ice_bath", stirred=True)),
    ("chili, 4 L pot, ice bath", ChillCase("chili", "pot", mass_kg=4.0, medium="ice_bath")),
)


def print_kitchen() -> None:
    """Everyday cases in a still refrigerator at 3 C: hours from 57 C to 21 C and to 5 C, and the depths that do."""
    limits = rule("cooling-two-stage").limits
    print(f"\n{'from 57 C, refrigerator 3 C':32s} {'to 21 C: P10 P50 P90':>24s} {'to 5 C: P10 P50 P90':>24s}")
    for name, case in KITCHEN:
        forecast = forecast_chill(replace(case, from_c=limits["from_c"], to_c=limits["cold_c"]))
        first, total = forecast.hours_between(limits["from_c"], limits["middle_c"]), forecast.hours
        shown = [f"{h.p10:8.1f}{h.p50:8.1f}{h.p90:8.1f}" for h in (first, total)]
        print(f"{name:32s} {shown[0]} {shown[1]}")
    for name, place in (
        ("refrigerator 3 C, still", {}),
        ("blast chiller -5 C, 3 m/s", {"medium_c": -5.0, "air_m_s": 3.0}),
        ("ice bath, bagged", {"medium": "ice_bath", "packaging": "bag"}),
    ):
        layer = ChillCase("carved turkey", "slab", (20.0,), from_c=limits["from_c"], to_c=limits["middle_c"], **place)  # type: ignore[arg-type]
        cold = replace(layer, to_c=limits["cold_c"])
        try:
            depth_mm = min(depth_for(layer, limits["first_max_h"]), depth_for(cold, limits["total_max_h"]))
            print(
                f"deepest layer of carved turkey that makes both stages nine times in ten, {name}: {depth_mm:.0f} mm"
            )
        except OutOfRange:
            print(f"no layer of 10 mm or more makes both stages nine times in ten, {name}")


def draw_thaw() -> None:
    """Hours to thaw against mass, with the federal rule."""
    from matplotlib import pyplot as plt

    figure, both = plt.subplots(1, 2, figsize=(9, 4))
    masses_kg = np.linspace(2.0, 11.5, 14)
    for axes, shown in zip(both, (WAYS[:1], WAYS[1:]), strict=True):
        for name, method, medium_c in shown:
            thaws = [forecast_thaw(ThawCase("turkey", float(kg), method, medium_c)) for kg in masses_kg]
            axes.fill_between(masses_kg, [t.model_h.p10 for t in thaws], [t.model_h.p90 for t in thaws], alpha=0.25)
            axes.plot(masses_kg, [t.model_h.p50 for t in thaws], label=f"model, {name}")
        rules = np.array([t.rule_h for t in thaws])
        axes.fill_between(masses_kg, rules[:, 0], rules[:, 1], color="0.5", alpha=0.3)
        axes.plot(masses_kg, rules[:, 1], color="0.3", linestyle="--", label="federal rule")
        axes.set_xlabel("turkey, kg")
        axes.set_ylabel("hours to -1 C in the core")
        axes.legend(fontsize=8)
    _save(figure, "thaw_rule")


def draw_chill() -> None:
    """Measured hours against forecast hours."""
    from matplotlib import pyplot as plt

    figure, axes = plt.subplots(figsize=(5, 5))
    for row in table("chill_measured"):
        window = forecast_chill(measured_case(dict(row))).hours
        axes.plot([row["hours"]] * 2, [window.p10, window.p90], color="0.6", linewidth=3, zorder=1)
        axes.plot(row["hours"], window.p50, "o" if row["fitted"] else "s", color="C0" if row["fitted"] else "C1")
    axes.plot([0.8, 14], [0.8, 14], color="k", linewidth=0.8)
    axes.set_xscale("log")
    axes.set_yscale("log")
    axes.set_xlabel("measured, h (squares: not seen by the fit)")
    axes.set_ylabel("forecast P10, P50, P90, h")
    _save(figure, "chill_measured")


def _save(figure, name: str) -> None:  # type: ignore[no-untyped-def]
    figure.tight_layout()
    figure.savefig(IMAGES / f"{name}.svg", metadata={"Date": None})


def main() -> None:
    """Print all tables, then draw."""
    print_properties()
    print_thaw()
    print_chill()
    print_kitchen()
    try:
        import matplotlib
    except ModuleNotFoundError:
        print("\nno matplotlib: the plots were not drawn")
        return
    matplotlib.use("svg")
    matplotlib.rcParams["svg.hashsalt"] = "turnspit"
    draw_thaw()
    draw_chill()


if __name__ == "__main__":
    main()
