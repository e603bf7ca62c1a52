"""The draws: stratified, common to all questions, and each with its reason."""

import numpy as np
import pytest

from turnspit.heat import KINDS, roast
from turnspit.heat.ensemble import draw, one_at_a_time, priors

TURKEY = roast("turkey")
PRIORS = priors(TURKEY)
NAMES = [prior.name for prior in PRIORS]


@pytest.mark.parametrize("kind", KINDS)
def test_every_prior_of_every_roast_gives_its_reason(kind: str) -> None:
    found = priors(roast(kind))
    assert len({prior.name for prior in found}) == len(found)
    assert all(len(prior.why) > 15 and prior.sd > 0.0 for prior in found)


@pytest.mark.parametrize("prior", [p for p in PRIORS if p.name != "station"], ids=lambda prior: prior.name)
def test_draws_have_the_median_and_spread_of_their_prior(prior) -> None:
    values = draw(TURKEY, 256, 7)[prior.name]
    logs = np.log(values) if prior.form == "factor" else values
    assert np.median(logs) == pytest.approx(0.0, abs=0.02 * prior.sd)
    assert logs.std() == pytest.approx(prior.sd, rel=0.03)


def test_numbers_are_drawn_independently() -> None:
    members = draw(TURKEY, 256, 1)
    rows = np.array([members[name] for name in NAMES if name != "station"])
    between = np.corrcoef(rows) - np.eye(len(rows))
    assert np.abs(between).max() < 0.25


def test_a_roast_known_by_its_shape_only_spreads_more_in_size_alone() -> None:
    known, shape_only = draw(TURKEY, 64, 1), draw(roast("turkey_spatchcock"), 64, 1)
    assert np.log(shape_only["size"]).std() > 1.3 * np.log(known["size"]).std()
    np.testing.assert_array_equal(shape_only["oven"], known["oven"])


def test_one_at_a_time_moves_one_number_a_member() -> None:
    members = one_at_a_time(TURKEY)
    assert members.count == 1 + 2 * len(PRIORS)
    moved = np.array(
        [
            members[prior.name] != (0.0 if prior.form == "offset" else 1.0)
            for prior in PRIORS
            if prior.name != "station"
        ]
    )
    assert not moved[:, 0].any()
    assert moved.sum(axis=0).max() == 1
    assert members["station"].shape[1] == members.count
