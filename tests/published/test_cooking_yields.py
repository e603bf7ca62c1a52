"""USDA cooking yields against the predicted loss; what a row's drip was fitted to is marked in the table."""

import pytest

from turnspit.heat import OvenStep, RoastCase, forecast_roast, roast
from turnspit.reference import Row, table


@pytest.mark.parametrize("row", list(table("roasting_yields")), ids=lambda row: row["item"])
def test_the_window_of_the_loss_holds_the_published_yield(row: Row) -> None:
    case = RoastCase(
        row["kind"],
        roast(row["kind"]).usual_mass_kg,
        bone_in=row.get("bone_in"),
        oven=(OvenStep(0.0, row["oven_c"]),),
        target_c=row["target_c"],
    )
    loss = forecast_roast(case).loss_fraction
    assert loss.p10 <= 1.0 - row["yield_fraction"] <= loss.p90


@pytest.mark.parametrize("row", [r for r in table("roasting_measured") if "loss" in r], ids=lambda row: row["id"])
def test_the_window_of_the_loss_holds_the_measured_loss(row: Row) -> None:
    case = RoastCase(row["kind"], row["mass_kg"], oven=(OvenStep(0.0, row["oven_c"]),), target_c=row["target_c"])
    loss = forecast_roast(case).loss_fraction
    assert loss.p10 <= row["loss"] <= loss.p90
