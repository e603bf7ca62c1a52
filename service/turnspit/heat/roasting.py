"""The forecast of a roast: when it is ready, when to pull it, what the rest adds, what it loses."""

from __future__ import annotations

from types import MappingProxyType

from turnspit.heat.carving import on_platter
from turnspit.heat.cases import RoastCase, RoastForecast
from turnspit.heat.cook import cook
from turnspit.heat.ensemble import draw
from turnspit.heat.limits import check_roast
from turnspit.heat.moisture import cooking_loss
from turnspit.heat.percentiles import median, spread
from turnspit.heat.pull import advised_pull_c, curves, pull
from turnspit.heat.remarks import assumptions, cautions
from turnspit.heat.roasts import RoastRow, roast, stretched


def forecast_roast(case: RoastCase, row: RoastRow | None = None) -> RoastForecast:
    """When a roast is ready and what happens in its rest, as an ensemble expects it (docs/heat.md).

    `row` is that of `case.kind` unless another is given (a fit of its own, a cut not in the table).
    Raises Unknown for a name there is not (a kind, a state), OutOfRange for a mass, oven, target, altitude or rest
    outside the row's range, Impossible for what cannot be (a field of the wrong type, a thawed roast at -18 C) and
    for an oven that never brings it to `pull_c`.
    """
    row = row or roast(case.kind)
    target_c, pull_c = ends_c(case, row)
    check_roast(case, row, target_c, pull_c)
    row = stretched(row, case.mass_kg)
    members = draw(row, case.members, case.seed)
    cooked = cook(case, row, members, max(target_c, pull_c))
    pulled = pull(cooked, pull_c, case.rest_min)
    names = [place.name for place in cooked.places]
    deciding = int(median(pulled.reached_s).argmax())
    # stuffing that has not reached its own safe temperature in the oven may not rely on the rest
    advised_c = target_c if case.stuffed else advised_pull_c(cooked, pulled, target_c)
    curve_min, curve_c = curves(cooked, pulled)
    return RoastForecast(
        case=case,
        target_c=target_c,
        pull_c=pull_c,
        ready_min=spread(pulled.ready_s / 60.0),
        ready_members_min=pulled.ready_s / 60.0,
        deciding_station=names[deciding],
        advised_pull_c=advised_c,
        peak_c=MappingProxyType({name: spread(pulled.peak_c[i]) for i, name in enumerate(names)}),
        loss_fraction=spread(cooking_loss(cooked, pulled.state, row, members)),
        curve_min=curve_min,
        curve_c=MappingProxyType({name: curve_c[:, :, i] for i, name in enumerate(names)}),
        history_min=cooked.times_s / 60.0,
        history_c=MappingProxyType({name: cooked.core_c[:, i] for i, name in enumerate(names)}),
        platter=on_platter(case.platter, cooked, pulled, row, members) if case.platter else None,
        calibration=row.calibration,
        assumptions=assumptions(case, row),
        cautions=cautions(case, row, target_c, pull_c),
    )


def ends_c(case: RoastCase, row: RoastRow) -> tuple[float, float]:
    """The end temperature and the pull temperature that are meant where the case names none."""
    target_c = row.default_target_c if case.target_c is None else case.target_c
    return target_c, target_c if case.pull_c is None else case.pull_c
