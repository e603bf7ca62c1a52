"""The verbs beside `ask`: each makes the same request as its route, runs the same core, and prints what it gives."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any, Literal, TypeVar

import typer

from turnspit_cli.asked import celsius, kilograms, litres, measured

if TYPE_CHECKING:
    from pydantic import BaseModel

    from turnspit.words import Reader

Model = TypeVar("Model", bound="BaseModel")

AsJson = Annotated[bool, typer.Option("--json", help="Print the response of the same route as JSON.")]
UnitsOption = Annotated[Literal["us", "metric"], typer.Option("--units", help="Which units lead in texts.")]
LanguageOption = Annotated[Literal["en", "es"], typer.Option("--language", help="Language of the texts.")]
KitchenOption = Annotated[
    Literal["home", "licensed"] | None, typer.Option("--kitchen", help="Whose rules lead; by default the stricter.")
]

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

    found = _recipe(source)
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

    given = {
        "servings": to,
        "factor": factor,
        "roast_kg": None if roast is None else kilograms(roast),
        "vessel_l": None if vessel is None else litres(vessel),
        "pan_from": pan_from,
        "pan_to": pan_to,
        "short": None if short is None else measured(short),
    }
    body = request(ScaleBody, recipe_id=source, units=units, rules_off=rule_off or [], **given)
    led = "us" if units in ("us", None) else "metric"
    scaled = ScaleGiven.of(body.scaled(_recipe(source)), reader(led, language), body)
    show(scaled.model_dump(mode="json"), as_json, _told_recipe)


def convert(
    amount: Annotated[str, typer.Argument(help='What there is, as "2 1/2 cups" or "325 F".')],
    to: Annotated[str, typer.Argument(help="The unit wanted, as g, cup, C.")],
    *,
    of: Annotated[str | None, typer.Option(help="What is measured; between mass and volume it decides.")] = None,
    region: Annotated[Literal["US", "UK", "AU", "metric"] | None, typer.Option(help="Whose cups and spoons.")] = None,
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Convert an amount: turnspit convert "2 cups" g --of "table salt"."""
    from turnspit.api.schemas.conversions import ConvertBody, ConvertGiven
    from turnspit.quantities import convert as converted
    from turnspit_cli.asked import unit_asked, value_and_unit

    value, unit = value_and_unit(amount)
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
    sold_as: Annotated[Literal["plain", "injected", "kosher"] | None, typer.Option(help="By its label.")] = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Work out a brine that fits: turnspit brine "18 lb" --vessel "5 gal"."""
    from turnspit.api.schemas.brines import BrineBody, BrineGiven
    from turnspit.brine import plan_brine

    body = request(
        BrineBody,
        kind=kind,
        mass_kg=kilograms(mass),
        count=count,
        vessel_l=None if vessel is None else litres(vessel),
        method=method,
        strength_percent=strength,
        target_percent=target,
        hours=hours,
        salt_kind=salt,
        sold_as=sold_as,
    )
    given = BrineGiven.of(plan_brine(body.case()), reader(units, language))
    show(given.model_dump(mode="json"), as_json, lambda one: _told(one, "steps", "notes"))


def size(
    covers: Annotated[int, typer.Argument(help="How many eat.")],
    *,
    children: Annotated[int, typer.Option(help="Of them children.")] = 0,
    non_eaters: Annotated[int, typer.Option(help="Of them not eating the roast.")] = 0,
    kind: Annotated[str, typer.Option(help="turkey, goose, beef_rib ...")] = "turkey",
    leftovers: Annotated[bool, typer.Option(help="With leftovers.")] = False,
    hungry: Annotated[bool, typer.Option(help="A hungry table.")] = False,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Tell how big a roast, or how many: turnspit size 14 --leftovers."""
    from turnspit.api.schemas.sizes import SizeBody, sized

    body = request(
        SizeBody,
        covers=covers,
        children=children,
        non_eaters=non_eaters,
        kind=kind,
        leftovers=leftovers,
        appetite="hungry" if hungry else "plain",
    )
    given = sized(body, reader(units, language))
    show(given.model_dump(mode="json"), as_json, lambda one: _told(one, "notes"))


def check(
    topic: Annotated[str, typer.Argument(help="left_out, reading, cooling, oven ...; or - for a request in JSON.")],
    *,
    subject: Annotated[str, typer.Option(help="turkey, gravy, stuffing ...")] = "",
    hours: Annotated[float | None, typer.Option(help="How long it has been so.")] = None,
    temperature: Annotated[str | None, typer.Option(help='What it reads, as "160 F".')] = None,
    place: Annotated[str, typer.Option(help="Where it was measured or is kept.")] = "",
    state: Annotated[Literal["raw", "cooked", "frozen", "part_frozen"] | None, typer.Option()] = None,
    at_risk: Annotated[bool, typer.Option(help="Infants, pregnant, elderly or ill guests eat.")] = False,
    kitchen: KitchenOption = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Tell what the rules say: turnspit check left_out --subject turkey --hours 3."""
    from turnspit.api.schemas.safety import CheckBody, checked

    if topic == "-":
        body = _body_json(CheckBody, sys.stdin.read())
    else:
        question = {
            "topic": topic,
            "subject": subject,
            "elapsed_h": hours,
            "temperature_c": None if temperature is None else celsius(temperature),
            "place": place,
            "state": state,
            "at_risk": at_risk,
        }
        body = request(CheckBody, question=question, kitchen=kitchen)
    given = checked(body, body.kitchen or kitchen, reader(units, language))
    show(given.model_dump(mode="json", exclude_none=True), as_json, told_findings)


def _recipe(source: str) -> Any:
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


def request(model: type[Model], **values: Any) -> Model:
    """The request of a route, checked as the route does. Raises Impossible for the first field at fault."""
    return _checked(lambda: model.model_validate(values))


def _body_json(model: type[Model], text: str) -> Model:
    return _checked(lambda: model.model_validate_json(text))


def _checked(make: Callable[[], Model]) -> Model:
    from pydantic import ValidationError

    from turnspit.errors import Impossible

    try:
        return make()
    except ValidationError as error:
        first = error.errors()[0]
        name = ".".join(map(str, first["loc"])) or "request"
        said = str(first["msg"]).removeprefix("Value error, ")
        given = "" if isinstance(first["input"], dict) else str(first["input"])[:60]
        raise Impossible(name, given, f"cannot be ({said})", "see --help for what is taken") from error


def reader(units: str, language: str) -> Reader:
    """Whoever reads the answer, now."""
    from turnspit.moment import utc_now
    from turnspit.words import Reader

    led: Literal["us", "metric"] = "us" if units == "us" else "metric"
    return Reader(utc_now(), "es" if language == "es" else "en", led, "12h" if led == "us" else "24h")


def show(document: dict[str, Any], as_json: bool, told: Callable[[dict[str, Any]], str]) -> None:
    """Print a document as it is, or as it is told."""
    from turnspit_cli.commands import print_json

    if as_json:
        print_json(document)
    else:
        print(told(document), flush=True)


def _told(document: dict[str, Any], *lists: str) -> str:
    grave = [one for one in document["cautions"] if one["severity"] != "info"]
    lines = [document["headline"], *(f"{one['severity'].upper()}: {one['text']}" for one in grave)]
    lines += [f"- {line}" for name in lists for line in document[name]]
    lines += [f"  {line}" for line in document["assumptions"]]
    return "\n".join(lines)


def _told_recipe(document: dict[str, Any]) -> str:
    lines = [document["name"], f"{document['makes']}  {document['by']}".strip(), ""]
    for line in document["lines"]:
        other = f" ({line['other']})" if line["other"] else ""
        lines.append(f"- {line['text']}{other}{'  *' if line['rule'] else ''}")
    lines += ["", *(f"{number}. {step}" for number, step in enumerate(document["steps"], 1))]
    rules = [f"* {rule['text']} [{rule['rule']}]" for rule in document["rules"] if rule["on"]]
    return "\n".join([*lines, "", *rules]).rstrip()


def _told_amount(document: dict[str, Any]) -> str:
    def written(value: float) -> str:
        return f"{value:.4g}" if abs(value) < 1000 else f"{value:.0f}"

    spread = "" if document["exact"] else f"  ({written(document['low'])} to {written(document['high'])})"
    return "\n".join([f"{written(document['value'])} {document['unit']}{spread}", *document["notes"]])


def told_findings(document: dict[str, Any]) -> str:
    """The findings of a check, the gravest first."""
    return "\n".join(
        f"{one['severity'].upper()}: {one['seen']}{'' if one['rule'] == 'local-codes' else ' ' + one['action']}"
        f" ({one['citation']})"
        for one in document["findings"]
    )
