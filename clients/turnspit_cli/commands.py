"""The commands. Each imports what is heavy only when it runs: a cold question must be answered at once."""

from __future__ import annotations

import sys
from collections.abc import Callable
from io import TextIOWrapper
from typing import Annotated, Any, Literal

import typer

from turnspit_cli import lists, logs, recipes, safety, verbs
from turnspit_cli.telling import print_json

REFUSED, FAULT = 2, 1

app = typer.Typer(
    add_completion=False,
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
    help="Plans a roast dinner backward from the minute it is served.",
)


@app.command()
def ask(
    text: Annotated[list[str] | None, typer.Argument(help="A line as you would say it; without one, a chat.")] = None,
    *,
    server: Annotated[str | None, typer.Option(help="Ask this running service, e.g. http://127.0.0.1:8000.")] = None,
    as_json: Annotated[bool, typer.Option("--json", help="Print the ask response as JSON.")] = False,
    now: Annotated[str | None, typer.Option(help="What time it is, ISO 8601; by default the clock.")] = None,
    timezone: Annotated[str | None, typer.Option(help="IANA time zone; by default this machine's.")] = None,
    units: Annotated[Literal["us", "metric"] | None, typer.Option(help="By default what the line uses.")] = None,
    kitchen: Annotated[
        Literal["home", "licensed"] | None, typer.Option(help="Whose rules lead; by default the stricter.")
    ] = None,
    explain: Annotated[bool, typer.Option(help="Show which words gave which value.")] = False,
) -> None:
    """Answer a plain line: turnspit ask "16 lb bird, dinner at 6"."""
    from turnspit_cli.roads import Asker, road_to

    road = road_to(server, Asker(now, timezone, units, kitchen, explain))
    show = print_json if as_json else _tables()
    if text is not None:
        # Bytes that are no text come in as halves of characters, which nothing can write again.
        show(road.ask(" ".join(text).encode("utf-8", "replace").decode("utf-8")))
    else:
        from turnspit_cli.chat import chat

        chat(road, show)


@app.command()
def serve(
    host: Annotated[str, typer.Option(envvar="TURNSPIT_HOST", help="Address to listen on.")] = "127.0.0.1",
    port: Annotated[int, typer.Option(envvar="TURNSPIT_PORT", min=0, max=65535, help="0 takes a free one.")] = 8000,
) -> None:
    """Serve the API, the phone page at / and the kitchen display at /display."""
    from turnspit_cli.serving import serve as run

    run(host, port)


app.add_typer(recipes.recipe, name="recipe")
app.add_typer(logs.log, name="log")
for verb in (verbs.size, lists.lists, verbs.brine, verbs.convert, safety.check, safety.cool, safety.lethality):
    app.command()(verb)


def main() -> None:
    """Run the command line. Exit code 0; 2 for what cannot be met, with one line on stderr; 1 for a fault of ours."""
    from turnspit.errors import TurnspitError

    for stream in (sys.stdin, sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):
            stream.reconfigure(errors="replace")  # a terminal that cannot write a degree sign still gets the answer
    try:
        app()
    except TurnspitError as error:
        _leave(str(error), REFUSED)
    except BrokenPipeError:  # whoever read our output has seen enough
        sys.stderr.close()
        sys.exit(0)
    except Exception as error:
        refusal = _refusal(error)
        _leave(refusal or f"a fault in turnspit: {type(error).__name__}: {error}", REFUSED if refusal else FAULT)


def _tables() -> Callable[[dict[str, Any]], None]:
    from turnspit_cli.show import Screen

    return Screen().show


def _refusal(error: Exception) -> str:
    """The line for an error that is nobody's fault here, "" for any other."""
    if "turnspit_client" not in sys.modules:
        return ""
    from turnspit_client import NoService, Refused

    return str(error) if isinstance(error, NoService | Refused) else ""


def _leave(line: str, code: int) -> None:
    print(f"turnspit: {line}", file=sys.stderr)
    sys.exit(code)
