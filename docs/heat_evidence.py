"""Prints every published row against the forecast, and draws the plots of heat.md into docs/images.

Run `python docs/heat_evidence.py`; the plots need matplotlib (`pip install turnspit[docs]`), the tables do not.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np

from turnspit.heat import OvenStep, RoastCase, forecast_roast, sensitivities
from turnspit.heat.fits import case_of, minutes, ready_min, turkey_fits
from turnspit.reference import table

IMAGES = Path(__file__).parent / "images"
CHART = list(table("roasting_charts"))
MEASURED = list(table("roasting_measured"))


def print_chart_rows() -> None:
    """The federal charts: each row, the window, and the counts the measures ask for."""
    print(f"{'federal chart row':36s} {'use':8s} {'printed, min':>14s} {'P10':>6s} {'P50':>6s} {'P90':>6s}  P90/P10")
    counts = {"fitted": np.zeros(4, int), "checked": np.zeros(4, int)}
    for row in CHART:
        window, (low, high) = forecast_roast(case_of(row, 256)).ready_min, minutes(row)
        middle = (low + high) / 2.0
        counts[row["use"]] += [
            1,
            window.p10 <= high and window.p90 >= low,
            window.p10 <= middle <= window.p90,
            abs(window.p50 / middle - 1.0) <= 0.15,
        ]
        print(
            f"{row['id']:36s} {row['use']:8s} {low:6.0f} to {high:4.0f} "
            f"{window.p10:6.0f} {window.p50:6.0f} {window.p90:6.0f}  {window.p90 / window.p10:.2f}"
        )
    for use, (rows, overlap, inside, near) in counts.items():
        print(f"{use}: of {rows} rows {overlap} overlap, {inside} middles inside, {near} medians within 15 percent")


def print_measured() -> None:
    """The measured roasts: minutes, peaks and losses inside their windows or not."""
    print(f"\n{'measured roast':24s} {'what':8s} {'measured':>9s} {'P10':>7s} {'P50':>7s} {'P90':>7s}")
    for row in MEASURED:
        forecast = forecast_roast(replace(case_of(row, 256), rest_min=60.0))
        station = forecast.deciding_station
        for what, measured, window in (
            ("minutes", row.get("minutes"), forecast.ready_min),
            ("peak, C", row["target_c"] + row["rise_k"] if "rise_k" in row else None, forecast.peak_c[station]),
            ("loss", row.get("loss"), forecast.loss_fraction),
        ):
            if measured is not None:
                mark = "" if window.p10 <= measured <= window.p90 else "  outside"
                seen = f"{window.p10:7.3g} {window.p50:7.3g} {window.p90:7.3g}"
                print(f"{row['id']:24s} {what:8s} {measured:9.3g} {seen}{mark}")


def draw_window() -> None:
    """Minutes against mass for the whole turkey: window, chart, measured birds and the named fits."""
    from matplotlib import pyplot as plt

    figure, axes = plt.subplots(figsize=(7, 4.5))
    masses = np.linspace(3.2, 11.5, 18)
    windows = [forecast_roast(RoastCase("turkey", float(m), oven=(OvenStep(0, 162.8),))).ready_min for m in masses]
    axes.fill_between(
        masses, [w.p10 for w in windows], [w.p90 for w in windows], alpha=0.25, label="P10 to P90, to 74 C"
    )
    axes.plot(masses, [w.p50 for w in windows], label="P50")
    for row in CHART:
        if row["kind"] == "turkey" and not row["stuffed"]:
            (low_kg, high_kg), (low, high) = row["mass_kg"], minutes(row)
            axes.fill_between([low_kg, high_kg], low, high, color="tab:orange", alpha=0.45)
    axes.plot([], [], color="tab:orange", linewidth=6, alpha=0.45, label="federal chart")
    fit = turkey_fits()["C"]
    line = np.linspace(5.9, 10.8, 9)
    base = next(row for row in MEASURED if row["id"] == "turkey-5.9kg")
    axes.plot(line, 155 + 11 * line, "k--", label="measured birds, to 82.2 C")
    at_82 = [ready_min(fit, {**base, "mass_kg": float(m)}) for m in line]
    at_74 = [ready_min(fit, {**base, "mass_kg": float(m), "target_c": 73.9}) for m in line]
    axes.plot(line, at_82, "k:", label="set C to 82.2 C")
    axes.plot(line, at_74, "k-.", linewidth=0.8, label="set C to 74 C")
    axes.set(xlabel="mass, kg", ylabel="minutes at 163 C, still oven", title="Whole turkey, unstuffed")
    axes.legend(fontsize=8)
    figure.savefig(IMAGES / "turkey_window.svg", bbox_inches="tight")


def draw_curve() -> None:
    """One bird in the oven and in its rest, place by place."""
    from matplotlib import pyplot as plt

    forecast = forecast_roast(RoastCase("turkey", 6.35, pull_c=70.0, rest_min=40.0))
    figure, axes = plt.subplots(figsize=(7, 4))
    for name, colour in zip(forecast.curve_c, ("tab:blue", "tab:red", "tab:green"), strict=True):
        low, middle, high = forecast.curve_c[name]
        axes.fill_between(forecast.curve_min, low, high, alpha=0.12, color=colour)
        axes.plot(forecast.curve_min, middle, color=colour, label=name)
    axes.axhline(74.0, color="grey", linewidth=0.8)
    axes.set(xlabel="minutes", ylabel="C", title="14 lb turkey pulled at 70 C in its slowest place, rested 40 min")
    axes.legend()
    figure.savefig(IMAGES / "turkey_curve.svg", bbox_inches="tight")


def draw_rows() -> None:
    """Every chart row: the window over the row's middle."""
    from matplotlib import pyplot as plt

    figure, axes = plt.subplots(figsize=(7, 8))
    for place, row in enumerate(reversed(CHART)):
        window, (low, high) = forecast_roast(case_of(row, 256)).ready_min, minutes(row)
        middle = (low + high) / 2.0
        colour = "tab:blue" if row["use"] == "fitted" else "tab:red"
        axes.plot([window.p10 / middle, window.p90 / middle], [place, place], color=colour)
        axes.plot(window.p50 / middle, place, "o", color=colour, markersize=4)
        axes.plot([low / middle, high / middle], [place, place], color="tab:orange", linewidth=6, alpha=0.4)
    axes.axvline(1.0, color="grey", linewidth=0.8)
    axes.set_yticks(range(len(CHART)), [row["id"] for row in reversed(CHART)], fontsize=7)
    axes.set(
        xlabel="minutes over the middle of the chart's row", title="Windows (blue fitted, red checked) and chart rows"
    )
    figure.savefig(IMAGES / "chart_rows.svg", bbox_inches="tight")


def draw_sensitivities() -> None:
    """What makes the time uncertain."""
    from matplotlib import pyplot as plt

    found = [one for one in sensitivities(RoastCase("turkey", 6.35)) if one.swing_min > 0.5][::-1]
    figure, axes = plt.subplots(figsize=(6, 3))
    axes.barh([one.name for one in found], [one.at_p10_min for one in found], label="at its 10th percentile")
    axes.barh([one.name for one in found], [one.at_p90_min for one in found], label="at its 90th percentile")
    axes.set(xlabel="minutes later than the median", title="14 lb turkey, each number alone")
    axes.legend(fontsize=8)
    figure.savefig(IMAGES / "sensitivities.svg", bbox_inches="tight")


def main() -> None:
    """Tables, then plots."""
    print_chart_rows()
    print_measured()
    try:
        import matplotlib
    except ModuleNotFoundError:
        print("\nno matplotlib: the plots were not drawn")
        return
    matplotlib.use("svg")
    matplotlib.rcParams["svg.hashsalt"] = "turnspit"
    IMAGES.mkdir(exist_ok=True)
    for draw in (draw_window, draw_curve, draw_rows, draw_sensitivities):
        draw()


if __name__ == "__main__":
    main()
