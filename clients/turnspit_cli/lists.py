"""`turnspit lists`: shopping, preparation, equipment and orders of a whole dinner."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Annotated

import typer

from turnspit_cli.recipes import recipe_from
from turnspit_cli.telling import AsJson, Document, LanguageOption, UnitsOption, label, reader, request, show


def lists(
    covers: Annotated[int, typer.Argument(help="How many eat.")],
    *,
    children: Annotated[int, typer.Option(help="Of them children.")] = 0,
    non_eaters: Annotated[int, typer.Option(help="Of them not eating the roast.")] = 0,
    kind: Annotated[str, typer.Option(help="turkey, goose, beef_rib ...")] = "turkey",
    leftovers: Annotated[bool, typer.Option(help="With leftovers.")] = False,
    brine: Annotated[bool, typer.Option(help="The bird is brined.")] = False,
    side: Annotated[list[str] | None, typer.Option(help="Key of a starter recipe; may be repeated.")] = None,
    dish: Annotated[list[str] | None, typer.Option(help="A recipe of your own, a file; may be repeated.")] = None,
    serve_on: Annotated[str | None, typer.Option(help="Day of the dinner, as 2026-11-26: adds the orders.")] = None,
    price: Annotated[list[str] | None, typer.Option(help='What a pack costs, as "butter=3.20".')] = None,
    avoid: Annotated[list[str] | None, typer.Option(help="An allergen that a guest must avoid.")] = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """List what a dinner takes: turnspit lists 14 --children 3 --serve-on 2026-11-26."""
    from turnspit.api.schemas.lists import ListsBody, listed
    from turnspit.recipes import menu, scale_recipe

    dinner = {"covers": covers, "children": children, "non_eaters": non_eaters, "kind": kind, "leftovers": leftovers}
    sides = {"sides": side} if side else {}
    body = request(
        ListsBody,
        dinner={**dinner, **sides, "brine": brine},
        serve_on=_day(serve_on),
        prices=dict(map(_priced, price)) if price else None,
        avoid=avoid or [],
    )
    assert body.dinner is not None
    planned = menu(body.dinner.case(), tuple(body.dinner.sides), brine=body.dinner.brine)
    own = [scale_recipe(recipe_from(source), servings=covers).shown() for source in dish or []]
    asker = reader(units, language)
    given = listed(body, [*planned.recipes, *own], planned.sizing, None, asker).model_dump(mode="json")
    show(given, as_json, lambda one: "\n".join(_told(one, lambda key: label(f"lists-{key}", asker))))


def _day(text: str | None) -> object:
    from datetime import date

    from turnspit.errors import Impossible

    if text is None:
        return None
    try:
        return date.fromisoformat(text)
    except ValueError as error:
        raise Impossible("serve_on", text, "is no day", "write it as 2026-11-26") from error


def _priced(text: str) -> tuple[str, float]:
    from turnspit.errors import Impossible

    name, _, price = text.rpartition("=")
    try:
        return name.strip(), float(price)
    except ValueError as error:
        raise Impossible("price", text, "is no price", 'write it as "butter=3.20"') from error


def _told(given: Document, headings: Callable[[str], str]) -> Iterator[str]:
    """The lists one below the other, as they would be printed."""
    yield given["headline"]
    yield from (f"- {dish['name']} ({dish['makes']})" for dish in given["dishes"])
    for aisle in given["shopping"]["aisles"]:
        yield from ("", aisle["heading"])
        for line in aisle["lines"]:
            yield f"- {line['text']}" + (f"  {line['cost']:.2f}" if line["cost"] is not None else "")
    if given["shopping"]["cost"] is not None:
        yield f"= {given['shopping']['cost']:.2f}"
    for day in given["prep"]:
        for station in day["stations"]:
            yield from ("", f"{day['heading']}: {station['heading']}")
            yield from (f"- {task['recipe']}: {task['text']}" for task in station["tasks"])
    yield from ("", headings("equipment"), *(f"- {need['text']}" for need in given["equipment"]))
    if given["order"]:
        yield from ("", headings("order"))
        yield from (f"- {line['order_by']} → {line['deliver_on']}  {line['text']}" for line in given["order"])
    yield from ("", *(f"! {one['text']}" for one in given["cautions"] if one["severity"] != "info"))
    yield from (f"  {line}" for line in given["assumptions"])
