"""`turnspit check`, `cool`, `lethality`: what the published rules say, by the same route as the service."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any, Literal

import typer

from turnspit_cli.telling import (
    AsJson,
    Document,
    KitchenOption,
    LanguageOption,
    UnitsOption,
    findings,
    label,
    reader,
    request,
    request_json,
    show,
)

if TYPE_CHECKING:
    from turnspit.api.schemas.safety import CheckBody
    from turnspit.words import Reader

Degrees = Literal["F", "C"]


def check(
    topic: Annotated[str, typer.Argument(help="left_out, reading, cooling, oven ...; or - for a request in JSON.")],
    *,
    subject: Annotated[str, typer.Option(help="turkey, gravy, stuffing ...")] = "",
    hours: Annotated[float | None, typer.Option(help="How long it has been so.")] = None,
    temperature: Annotated[str | None, typer.Option(help='What it reads, as "160 F".')] = None,
    ambient: Annotated[str | None, typer.Option(help='How warm it is where it stands, as "95 F".')] = None,
    oven: Annotated[str | None, typer.Option(help='The oven, as "325 F".')] = None,
    altitude: Annotated[str | None, typer.Option(help='Of the kitchen, as "5000 ft" (thermometer).')] = None,
    place: Annotated[str, typer.Option(help="Where it was measured or is kept.")] = "",
    state: Annotated[Literal["raw", "cooked", "frozen", "part_frozen"] | None, typer.Option()] = None,
    method: Annotated[str | None, typer.Option(help="cold_water, counter, microwave; ice or boiling ...")] = None,
    stuffed: Annotated[bool, typer.Option(help="The bird is stuffed.")] = False,
    at_risk: Annotated[bool, typer.Option(help="Infants, pregnant, elderly or ill guests eat.")] = False,
    kitchen: KitchenOption = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Tell what the rules say: turnspit check left_out --subject turkey --hours 3."""
    from turnspit.api.schemas.safety import CheckBody
    from turnspit.quantities import typed_metres

    if topic == "-":
        body = request_json(CheckBody, sys.stdin.read())
    else:
        question = {
            "topic": topic,
            "subject": subject,
            "elapsed_h": hours,
            "temperature_c": _celsius(temperature),
            "ambient_c": _celsius(ambient),
            "oven_c": _celsius(oven),
            "altitude_m": None if altitude is None else typed_metres(altitude),
            "place": place,
            "state": state,
            "method": method,
            "stuffed": stuffed,
            "at_risk": at_risk,
        }
        body = request(CheckBody, question=question, kitchen=kitchen)
    _show(body, kitchen, reader(units, language), as_json)


def cool(
    food: Annotated[str, typer.Argument(help="stock, soup, gravy, turkey, rice ...")],
    *,
    depth: Annotated[str | None, typer.Option(help='How deep it stands, as "2 in".')] = None,
    amount: Annotated[str | None, typer.Option(help='How much there is, as "8 L" or "10 lb".')] = None,
    container: Annotated[str, typer.Option(help='Its pan, as "GN 1/1 65 mm", or pot.')] = "",
    place: Annotated[
        Literal["refrigerator", "blast_chiller", "ice_bath"], typer.Option(help="Where it stands.")
    ] = "refrigerator",
    place_temperature: Annotated[str | None, typer.Option(help='How cold it is there, as "38 F".')] = None,
    start: Annotated[str, typer.Option(help="How hot it is when it goes in.")] = "70 C",
    kitchen: KitchenOption = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Tell whether hot food will be cold in time, and which depth would: turnspit cool stock --depth "2 in"."""
    from turnspit.api.schemas.safety import CheckBody
    from turnspit.quantities import typed_celsius, typed_kilograms_or_litres, typed_metres
    from turnspit.safety import cooling_case

    kg, litres = (None, None) if amount is None else typed_kilograms_or_litres(amount)
    case = cooling_case(
        food,
        place,
        depth_m=None if depth is None else typed_metres(depth),
        kg=kg,
        litres=litres,
        container=container,
        from_c=typed_celsius(start),
        place_c=_celsius(place_temperature),
    )
    body = request(CheckBody, cooling=_chill_part(case), kitchen=kitchen)
    _show(body, kitchen, reader(units, language), as_json)


def lethality(
    readings: Annotated[str, typer.Argument(help="A file of readings, or - for the input.")],
    *,
    kind: Annotated[str, typer.Option(help="turkey, chicken, beef_rib ...")] = "turkey",
    degrees: Annotated[Degrees | None, typer.Option(help="Of bare numbers among the readings.")] = None,
    fat: Annotated[float | None, typer.Option(help="Percent; unknown is read as the fattest.")] = None,
    moisture: Annotated[
        str | None, typer.Option(help="How its surface was kept moist: sealed_bag, humid ...")
    ] = None,
    mass: Annotated[str | None, typer.Option(help='Weight of the roast, as "16 lb".')] = None,
    lowest_oven: Annotated[str | None, typer.Option(help='The coolest the oven was, as "325 F".')] = None,
    come_up: Annotated[
        float | None, typer.Option(help="Hours from 10 to 54 C, where the readings begin warm.")
    ] = None,
    probe_error: Annotated[float, typer.Option(help="K that the probe may read too high.")] = 1.0,
    kitchen: KitchenOption = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Tell what measured readings earn by the published tables: turnspit lethality readings.txt --mass "16 lb"."""
    from turnspit.api.schemas.safety import CheckBody
    from turnspit.quantities import typed_kilograms
    from turnspit.safety import read_measured

    measured = read_measured(_text(readings), degrees or "")
    part = {
        "kind": kind,
        "readings": [{"minute": one.minute, "temperature_c": one.core_c, "station": one.station} for one in measured],
        "fat_percent": fat,
        "moisture": moisture,
        "mass_kg": None if mass is None else typed_kilograms(mass),
        "lowest_oven_c": _celsius(lowest_oven),
        "come_up_h": come_up,
        "probe_error_k": probe_error,
    }
    _show(request(CheckBody, lethality=part, kitchen=kitchen), kitchen, reader(units, language), as_json)


def _show(body: CheckBody, kitchen: Any, asker: Reader, as_json: bool) -> None:
    from turnspit.api.schemas.safety import checked

    given = checked(body, body.kitchen or kitchen, asker).model_dump(mode="json", exclude_none=True)
    show(given, as_json, lambda document: _told(document, asker))


def _told(document: Document, asker: Reader) -> str:
    """What was worked out, then the findings."""
    lines = []
    cooling = document.get("cooling", {})
    for name in ("depth_mm", "iced_depth_mm"):
        if name in cooling:
            lines.append(label(f"cooling-{name.removesuffix('_mm').replace('_', '-')}", asker, mm=cooling[name]))
    proof = document.get("lethality", {})
    for station, log10 in proof.get("by_station", {}).items():
        lines.append(label("lethality-station", asker, station=station or "-", log10=log10))
    if proof:
        key = "lethality-met" if proof["met"] else "lethality-not-met"
        lines.append(label(key, asker, credited=proof["credited_log10"], required=proof["required_log10"]))
    return "\n".join([findings(document, asker), *lines])


def _celsius(text: str | None) -> float | None:
    from turnspit.quantities import typed_celsius

    return None if text is None else typed_celsius(text)


def _chill_part(case: Any) -> Document:
    """The case as the route takes it."""
    from dataclasses import asdict

    return {**asdict(case), "dims_mm": list(case.dims_mm)}


def _text(source: str) -> str:
    from turnspit.errors import Impossible

    if source == "-":
        return sys.stdin.read()
    try:
        return Path(source).read_bytes().decode("utf-8-sig", "replace")
    except OSError as error:
        reason = (error.strerror or "cannot be read").lower()
        raise Impossible(
            "readings", source, f"cannot be read ({reason})", "name a file, or - for the input"
        ) from error
