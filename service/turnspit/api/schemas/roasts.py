"""`POST /v1/roasts/forecast`: the heat model without the words."""

from __future__ import annotations

from typing import Annotated, Any, Self

from pydantic import ConfigDict, Field

from turnspit.api.kinds import kind_named, taken_as
from turnspit.api.schemas.common import Body, CautionGiven, Given, Number, Q, ReaderFields, Whole, Yes
from turnspit.api.schemas.roast_questions import AnswersGiven, QuestionsBody
from turnspit.heat import MEMBERS, SEED, OvenStep, Platter, PlatterForecast, RoastCase, RoastForecast
from turnspit.heat.cases import Calibration, Cover, Floats, Pan, PlatterCover, RestPlace, State
from turnspit.words import Reader, say

Members = Annotated[Whole, Field(ge=1, le=1024, description="Members of the ensemble.")]
Seed = Annotated[Whole, Field(ge=0, lt=2**32)]

FORECAST_EXAMPLE: dict[str, Any] = {
    "roast": {"kind": "turkey", "mass_kg": 7.257},
    "oven": [{"from_min": 0, "temperature_c": 163, "convection": False}],
}


class RoastBody(Body):
    """The roast; `mass_kg` is one piece."""

    kind: str = Field(max_length=40, examples=["turkey"], description="turkey, beef_rib ..., or a name of the trade.")
    mass_kg: Number
    count: Whole = 1
    state: State = "thawed"
    stuffed: Yes = False
    bone_in: Yes | None = None
    tied: Yes | None = Field(default=None, description="A joint tied round, a bird trussed; by default not told.")


class OvenStepBody(Body):
    """The oven from one minute on."""

    from_min: Number = 0
    temperature_c: Number = 163
    convection: Yes = False
    cover: Cover = "none"


class PlatterBody(Body):
    """The meat once carved, at the end of the rest."""

    depth_mm: Number = Field(default=25, description="How deep the slices lie.")
    cover: PlatterCover = "none"
    warmed: Yes = Field(default=False, description="The platter is warm.")
    served_c: Number = Field(default=45, description="Below it the meat is no longer warm to eat.")


class ForecastBody(ReaderFields):
    """A roast, its oven, and the temperature it is wanted at."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [FORECAST_EXAMPLE]})

    roast: RoastBody
    start_c: Number = 4.4
    oven: list[OvenStepBody] = Field(default_factory=lambda: [OvenStepBody()], min_length=1, max_length=50)
    target_c: Number | None = Field(default=None, description="By default the roast's own; for a bird 74.")
    pull_c: Number | None = Field(default=None, description="When it leaves the oven; by default `target_c`.")
    rest_min: Number = Field(default=30, ge=0, le=240)
    altitude_m: Number = 0
    preheated: Yes = Field(default=True, description="The oven is hot when the roast goes in.")
    openings_min: list[Number] = Field(
        default_factory=list, max_length=50, description="Minutes at which the door is opened to look."
    )
    bastings_min: list[Number] = Field(
        default_factory=list, max_length=50, description="Minutes at which it is basted, the door opened for it."
    )
    oven_vapour_pa: Number = Field(
        default=5000, ge=0, le=70000, description="Humidity of the oven: 5000 vented, 20000 to 60000 with steam."
    )
    rest_place: RestPlace | None = Field(
        default=None, description="By default on a board, or in the cover that its last setting had."
    )
    pan: Pan = Field(
        default="any", description="Dark, light or glass; any as in the published charts, which tell none."
    )
    platter: PlatterBody | None = Field(default=None, description="Given: how the meat cools once it is carved.")
    questions: QuestionsBody | None = Field(default=None, description="What else is wanted of the forecast.")
    members: Members = MEMBERS
    seed: Seed = SEED

    def case(self) -> RoastCase:
        """As the heat room takes it."""
        return RoastCase(
            **{**self.roast.model_dump(), "kind": kind_named(self.roast.kind)},
            start_c=self.start_c,
            oven=tuple(OvenStep(**step.model_dump()) for step in self.oven),
            target_c=self.target_c,
            pull_c=self.pull_c,
            rest_min=self.rest_min,
            altitude_m=self.altitude_m,
            preheated=self.preheated,
            openings_min=tuple(self.openings_min),
            bastings_min=tuple(self.bastings_min),
            oven_vapour_pa=self.oven_vapour_pa,
            rest_place=self.rest_place,
            pan=self.pan,
            platter=Platter(**self.platter.model_dump()) if self.platter else None,
            members=self.members,
            seed=self.seed,
        )


class PlatterGiven(Given):
    """The carved meat as it cools in the room."""

    carved_c: Q = Field(description="The mean of the meat when it is carved.")
    warm_min: Q = Field(description="How long it stays above `served_c`; 120 where it is still warm after two hours.")
    clock_left_min: float = Field(description="What the rest has left of the two hours out of the heat.")
    curve: list[dict[str, Any]] = Field(description="`minute` after carving, and `meat_c`.")

    @classmethod
    def of(cls, forecast: PlatterForecast) -> Self:
        """From the heat room's answer."""
        return cls(
            carved_c=Q.of(forecast.carved_c, 1),
            warm_min=Q.of(forecast.warm_min, 1),
            clock_left_min=round(forecast.clock_left_min, 1),
            curve=curve("minute", forecast.curve_min, {"meat_c": forecast.curve_c}),
        )


class ForecastGiven(Given):
    """What the ensemble expects; planning, never proof that the roast is safe."""

    ready_min: Q = Field(description="Minutes until the deciding station reads `pull_c`.")
    deciding_station: str
    advised_pull_c: float = Field(description="The pull whose median peak is `target_c`.")
    peak_c: dict[str, Q] = Field(description="The highest of each station in the rest.")
    loss_fraction: Q = Field(description="Share of the mass that evaporates and drips.")
    curve: list[dict[str, Any]] = Field(description="`minute`, and per station `<station>_c`.")
    platter: PlatterGiven | None = None
    answers: AnswersGiven | None = Field(default=None, description="To `questions`.")
    calibration: Calibration
    assumptions: list[str]
    cautions: list[CautionGiven]

    @classmethod
    def of(cls, forecast: RoastForecast, reader: Reader, body: ForecastBody) -> Self:
        """From the heat room's answer to `body`, in the reader's words."""
        questions = body.questions
        return cls(
            ready_min=Q.of(forecast.ready_min, 1),
            deciding_station=forecast.deciding_station,
            advised_pull_c=round(forecast.advised_pull_c, 1),
            peak_c={station: Q.of(peak, 1) for station, peak in forecast.peak_c.items()},
            loss_fraction=Q.of(forecast.loss_fraction, 4),
            curve=curve("minute", forecast.curve_min, {f"{k}_c": v for k, v in forecast.curve_c.items()}),
            platter=PlatterGiven.of(forecast.platter) if forecast.platter else None,
            answers=AnswersGiven.of(questions, forecast, reader) if questions else None,
            calibration=forecast.calibration,
            assumptions=[say(message, reader) for message in (*taken_as(body.roast.kind), *forecast.assumptions)],
            cautions=[CautionGiven.of(caution, reader) for caution in forecast.cautions],
        )


def curve(axis: str, at: Floats, values: dict[str, Floats]) -> list[dict[str, Any]]:
    """Rows of a curve: the axis, and per column three percentiles from an array shaped (3, len(at))."""
    columns = {name: rows.round(2).T.tolist() for name, rows in values.items()}
    return [
        {
            axis: place,
            **{name: dict(zip(("p10", "p50", "p90"), rows[i], strict=True)) for name, rows in columns.items()},
        }
        for i, place in enumerate(at.round(3).tolist())
    ]
