"""Measured cooling against forecasts: rows of `chill_measured`, sources there.

The surface constants were chosen with the rows marked `fitted` in view; the others are checks. A row that is more than
20 percent off carries its reason in `apart`.
"""

import pytest

from turnspit.heat import ChillCase, forecast_chill
from turnspit.reference import table

ROWS = table("chill_measured").by("id")


def forecast(row):
    case = dict(row["case"])
    return forecast_chill(ChillCase(**{**case, "dims_mm": tuple(case.get("dims_mm", ()))}))


@pytest.mark.parametrize("name", sorted(ROWS))
def test_the_median_is_within_20_percent_or_says_why(name):
    row = ROWS[name]
    ratio = forecast(row).hours.p50 / row["hours"]
    if "apart" in row:
        assert 0.2 < abs(ratio - 1) < 0.35, "no longer apart, or too far"
    else:
        assert ratio == pytest.approx(1, abs=0.2)


@pytest.mark.parametrize("fitted", [True, False])
def test_four_of_five_lie_inside_the_window(fitted):
    rows = [row for row in ROWS.values() if row["fitted"] is fitted]
    inside = 0
    for row in rows:
        hours = forecast(row).hours
        assert hours.p90 / hours.p10 < 1.8
        inside += hours.p10 <= row["hours"] <= hours.p90
    assert inside >= 0.8 * len(rows)


def test_turkey_roasts_of_one_mass_meet_all_three_measured_first_stages():
    # J. Food Prot. 69(1), 2006, abstract: hours from 57 to 21 C; the mass is not given, 4 kg meets them
    start = {"food": "turkey roast", "shape": "brick", "from_c": 74.0, "to_c": 10.0}
    wrapped = forecast_chill(ChillCase(**start, mass_kg=4.0, packaging="wrap", medium_c=4.0)).hours_between(57, 21)
    quarter = forecast_chill(ChillCase(**start, mass_kg=1.0, medium_c=4.0)).hours_between(57, 21)
    assert wrapped.p10 <= 6.22 <= wrapped.p90
    assert quarter.p10 <= 2.27 <= quarter.p90
    assert wrapped.p10 > 2
    assert quarter.p90 > 2  # none of the methods surely met the two-stage limit


def test_ham_of_the_handbook_as_a_brick_and_as_an_ellipsoid():
    """ASHRAE 2006 ch. 10, cooling example: 70 to 10 C in air at -1 C, h 48; inputs recalled, answers recomputed."""
    import numpy as np

    from turnspit.heat import shapes
    from turnspit.heat.material import Material
    from turnspit.heat.solver import Body, graded_times, march
    from turnspit.heat.surface import Film

    k, rho_cp, film = 0.379, 1070 * 3740.0, 48.0
    edges_m = (0.102, 0.165, 0.279)

    def hours(column):
        body = Body(np.array([column.radius_m]), np.array([column.exponent]), Material(rho_cp, k), cells=32)
        run = march(body, body.state(70.0), Film(-1.0, film * column.area_factor), graded_times(40000, 5, 120))
        return np.interp(-10.0, -run.core_c[:, 0], run.times_s) / 3600

    assert hours(shapes.brick(edges_m, film / k)) == pytest.approx(6.529, rel=0.01)  # three exact series, recomputed
    assert hours(shapes.ellipsoid(edges_m, film / k)) == pytest.approx(5.211, rel=0.03)  # Lin et al., recomputed
