"""`turnspit recipe`: read a recipe, scale it."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Annotated, Any, Literal

import typer

from turnspit_cli.telling import AsJson, Document, LanguageOption, reader, request, show

recipe = typer.Typer(no_args_is_help=True, help="Read a recipe, scale it.")


@recipe.command("show")
def show_recipe(
    source: Annotated[str, typer.Argument(help="A file, - for the input, or the key of a starter recipe.")],
    *,
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Print a recipe as clean text, or with --json as a schema.org Recipe."""
    from turnspit.recipes import write_json_ld, write_text

    found = recipe_from(source)
    show(write_json_ld(found), as_json, lambda _: write_text(found, language=language).rstrip())


@recipe.command("scale")
def scale_recipe(
    source: Annotated[str, typer.Argument(help="A file, - for the input, or the key of a starter recipe.")],
    *,
    to: Annotated[float | None, typer.Option(help="Servings.")] = None,
    factor: Annotated[float | None, typer.Option(help="Times the recipe.")] = None,
    roast: Annotated[str | None, typer.Option(help='Weight of its roast, as "20 lb".')] = None,
    vessel: Annotated[str | None, typer.Option(help='A vessel to fill, as "6 qt".')] = None,
    pan_from: Annotated[str | None, typer.Option(help='The recipe\'s pan, as "13 x 9 x 2 in".')] = None,
    pan_to: Annotated[str | None, typer.Option(help='The pan there is, as "GN 1/1 65 mm".')] = None,
    short: Annotated[str | None, typer.Option(help='What there is of one thing, as "700 g potatoes".')] = None,
    rule_off: Annotated[list[str] | None, typer.Option(help="A rule that shall not apply; may be repeated.")] = None,
    units: Annotated[
        Literal["us", "metric", "both"] | None, typer.Option(help="By default the recipe's own.")
    ] = None,
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Scale a recipe: turnspit recipe scale gravy --to 40."""
    from turnspit.api.schemas.recipes import ScaleBody, ScaleGiven
    from turnspit.quantities import typed_kilograms, typed_litres

    given = {
        "servings": to,
        "factor": factor,
        "roast_kg": None if roast is None else typed_kilograms(roast),
        "vessel_l": None if vessel is None else typed_litres(vessel),
        "pan_from": pan_from,
        "pan_to": pan_to,
        "short": None if short is None else _measured(short),
    }
    body = request(ScaleBody, recipe_id=source, units=units, rules_off=rule_off or [], **given)
    led = "us" if units in ("us", None) else "metric"
    scaled = ScaleGiven.of(body.scaled(recipe_from(source)), reader(led, language), body)
    show(scaled.model_dump(mode="json"), as_json, _told)


def recipe_from(source: str) -> Any:
    """The recipe in a file, in the input (-), or the starter of that key. Raises Impossible for none."""
    from turnspit.errors import Impossible
    from turnspit.recipes import read_recipe, read_starter, starter_keys

    if source == "-":
        return read_recipe(sys.stdin.read())
    path = Path(source)
    if source in starter_keys() and not path.exists():
        return read_starter(source).recipe
    try:
        return read_recipe(path.read_bytes().decode("utf-8-sig", "replace"))
    except OSError as error:
        reason = (error.strerror or "cannot be read").lower()
        keys = ", ".join(starter_keys())
        raise Impossible("recipe", source, f"cannot be read ({reason})", f"name a file, or one of {keys}") from error


def _measured(text: str) -> Document:
    """What there is of one thing, as the route takes it. Raises Impossible."""
    from turnspit.errors import Impossible
    from turnspit.recipes import read_ingredient

    one = read_ingredient(text, "US")
    if one.amount is None or not one.read:
        raise Impossible("short", text, "is not an amount of something", 'write it as "700 g potatoes"')
    return {"item": one.item, "value": float(one.amount.usual), "unit": one.amount.unit}


def _told(document: dict[str, Any]) -> str:
    lines = [document["name"], f"{document['makes']}  {document['by']}".strip(), ""]
    for line in document["lines"]:
        other = f" ({line['other']})" if line["other"] else ""
        lines.append(f"- {line['text']}{other}{'  *' if line['rule'] else ''}")
    lines += ["", *(f"{number}. {step}" for number, step in enumerate(document["steps"], 1))]
    rules = [f"* {rule['text']} [{rule['rule']}]" for rule in document["rules"] if rule["on"]]
    return "\n".join([*lines, "", *rules]).rstrip()
