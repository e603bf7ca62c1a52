"""`turnspit size`, `brine`, `convert`: each makes the same request as its route and runs the same core."""

from __future__ import annotations

from typing import Annotated, Literal

import typer

from turnspit_cli.telling import AsJson, Document, LanguageOption, UnitsOption, answered, reader, request, show


def convert(
    amount: Annotated[str, typer.Argument(help='What there is, as "2 1/2 cups" or "325 F".')],
    to: Annotated[str, typer.Argument(help="The unit wanted, as g, cup, C.")],
    *,
    of: Annotated[str | None, typer.Option(help="What is measured; between mass and volume it decides.")] = None,
    region: Annotated[
        Literal["US", "UK", "AU", "NZ", "CA", "imperial"] | None, typer.Option(help="Whose cups and spoons.")
    ] = None,
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Convert an amount: turnspit convert "2 cups" g --of "table salt"."""
    from turnspit.api.schemas.conversions import ConvertBody, ConvertGiven
    from turnspit.quantities import convert as converted
    from turnspit.quantities import typed_amount, unit_asked

    value, unit = typed_amount(amount)
    body = request(ConvertBody, value=value, unit=unit, target_unit=unit_asked(to), item=of, region=region)
    found = converted(body.value, body.unit, body.target_unit, body.item, body.region)
    given = ConvertGiven.of(found, reader("us", language))
    show(given.model_dump(mode="json"), as_json, _told_amount)


def brine(
    mass: Annotated[str, typer.Argument(help='Weight of one bird or joint, as "18 lb".')],
    *,
    kind: Annotated[str, typer.Option(help="turkey, chicken, pork_loin ...")] = "turkey",
    count: Annotated[int, typer.Option(help="How many.")] = 1,
    vessel: Annotated[str | None, typer.Option(help='What it goes into, as "5 gal".')] = None,
    method: Annotated[Literal["wet", "equilibrium", "dry"], typer.Option(help="How it is salted.")] = "wet",
    strength: Annotated[float | None, typer.Option(help="Percent of salt in the brine.")] = None,
    target: Annotated[float | None, typer.Option(help="Percent of salt wanted (equilibrium, dry).")] = None,
    hours: Annotated[float | None, typer.Option(help="How long.")] = None,
    salt: Annotated[
        Literal["table", "flake_kosher", "coarse_kosher"], typer.Option(help="Which salt there is.")
    ] = "table",
    sugar: Annotated[float, typer.Option(help="Percent of sugar in the brine.")] = 0.0,
    sold_as: Annotated[Literal["plain", "injected", "kosher"] | None, typer.Option(help="By its label.")] = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Work out a brine that fits: turnspit brine "18 lb" --vessel "5 gal"."""
    from turnspit.api.schemas.brines import BrineBody, BrineGiven
    from turnspit.brine import plan_brine
    from turnspit.quantities import typed_kilograms, typed_litres

    asker = reader(units, language)
    body = request(
        BrineBody,
        kind=kind,
        mass_kg=typed_kilograms(mass),
        count=count,
        vessel_l=None if vessel is None else typed_litres(vessel),
        method=method,
        strength_percent=strength,
        target_percent=target,
        hours=hours,
        salt_kind=salt,
        sugar_percent=sugar,
        sold_as=sold_as,
    )
    given = BrineGiven.of(plan_brine(body.case()), asker)
    show(given.model_dump(mode="json"), as_json, lambda one: answered(one, asker, "steps", "notes"))


def size(
    covers: Annotated[int, typer.Argument(help="How many eat.")],
    *,
    children: Annotated[int, typer.Option(help="Of them children.")] = 0,
    non_eaters: Annotated[int, typer.Option(help="Of them not eating the roast.")] = 0,
    kind: Annotated[str, typer.Option(help="turkey, goose, beef_rib ...")] = "turkey",
    leftovers: Annotated[bool, typer.Option(help="With leftovers.")] = False,
    hungry: Annotated[bool, typer.Option(help="A hungry table.")] = False,
    largest: Annotated[str | None, typer.Option(help='The most one piece may weigh, as "16 lb".')] = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Tell how big a roast, or how many: turnspit size 14 --leftovers."""
    from turnspit.api.schemas.sizes import SizeBody, sized
    from turnspit.quantities import typed_kilograms

    body = request(
        SizeBody,
        covers=covers,
        children=children,
        non_eaters=non_eaters,
        kind=kind,
        leftovers=leftovers,
        appetite="hungry" if hungry else "plain",
        largest_piece_kg=None if largest is None else typed_kilograms(largest),
    )
    asker = reader(units, language)
    given = sized(body, asker)
    show(given.model_dump(mode="json"), as_json, lambda one: answered(one, asker, "notes"))


def _told_amount(document: Document) -> str:
    def written(value: float) -> str:
        return f"{value:.4g}" if abs(value) < 1000 else f"{value:.0f}"

    spread = "" if document["exact"] else f"  ({written(document['low'])} – {written(document['high'])})"
    return "\n".join([f"{written(document['value'])} {document['unit']}{spread}", *document["notes"]])
