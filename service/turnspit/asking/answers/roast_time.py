"""How long a roast takes: a window from the heat model, when to start checking, and what decides."""

from __future__ import annotations

from contextlib import suppress
from datetime import timedelta
from typing import TYPE_CHECKING, Any

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.compared import comparison
from turnspit.asking.answers.dial import dial_line
from turnspit.asking.answers.roasting import (
    clock_window,
    done_when,
    first_check_min,
    forecast_document,
    how,
    reasons,
    rest_line,
    roast_cautions,
)
from turnspit.asking.answers.taken import Taken, forecast_of, roast_case_of, roast_phrase
from turnspit.asking.answers.wishes import dinner_of
from turnspit.errors import TurnspitError
from turnspit.message import Message

if TYPE_CHECKING:
    from turnspit.heat import RoastCase, RoastForecast, RoastRow


def answer(enquiry: Enquiry) -> Answer:
    """The window in hours, or on the clock where the start was said."""
    from turnspit.heat import roast

    taken = Taken(enquiry)
    case = roast_case_of(taken)
    row, forecast = roast(case.kind), forecast_of(case)
    return Answer(
        headline=_headline(enquiry, case, row, forecast),
        lines=(
            *dial_line(enquiry, case.oven[0].temperature_c),
            *comparison(enquiry, forecast),
            *done_when(row, forecast),
            *_with_dinner(enquiry),
            *([Message("asking-roast_time-frozen")] if case.state == "frozen" else []),
            rest_line(row, case.mass_kg),
            *([Message("asking-roast_time-advice")] if enquiry.moment("start_at") is None else []),
        ),
        reasons=reasons(case, row, forecast),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        cautions=(*taken.cautions, *forecast.cautions, *roast_cautions(forecast, row)),
        next=(
            Message("asking-next-at-six"),
            Message("asking-next-stuffed") if row.poultry and not case.stuffed else Message("asking-next-probe"),
            Message("asking-next-why"),
        ),
        data={"forecast": forecast_document(forecast)},
    )


def _with_dinner(enquiry: Enquiry) -> tuple[Message, ...]:
    """What that makes of a dinner whose time is known."""
    serve_at = enquiry.moment("serve_at")
    if serve_at is None or serve_at <= enquiry.now:
        return ()
    from turnspit.planning import plan_dinner

    with suppress(TurnspitError):
        return (plan_dinner(dinner_of(enquiry), enquiry.now).headline,)
    return ()


def _headline(enquiry: Enquiry, case: RoastCase, row: RoastRow, forecast: RoastForecast) -> Message:
    first_min = first_check_min(forecast)
    shared: dict[str, Any] = {
        "roast": roast_phrase(case.kind, case.mass_kg, case.count),
        "how": how(case, row),
        "oven_c": case.oven[0].temperature_c,
    }
    start_at = enquiry.moment("start_at")
    if start_at is not None:
        low_at, high_at = clock_window(start_at, forecast.ready_min)
        return Message(
            "asking-roast_time-clock",
            start_at=start_at,
            low_at=low_at,
            high_at=high_at,
            check_at=start_at + timedelta(minutes=first_min),
            **shared,
        )
    return Message(
        "asking-roast_time-headline",
        low_min=forecast.ready_min.p10,
        high_min=forecast.ready_min.p90,
        check_min=first_min,
        **shared,
    )
