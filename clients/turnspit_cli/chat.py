"""A short chat: one conversation, line by line, until the input ends."""

from __future__ import annotations

import sys

from turnspit.errors import TurnspitError
from turnspit_cli.roads import Road
from turnspit_cli.show import Screen

PROMPT = "> "


def chat(road: Road, screen: Screen) -> None:
    """Ask for lines and answer each; a line that is refused does not end the chat."""
    at_a_terminal = sys.stdin.isatty()
    if at_a_terminal:
        screen.say("cli-greeting")
    while True:
        try:
            text = input(PROMPT if at_a_terminal else "")
        except (EOFError, KeyboardInterrupt):
            return
        try:
            screen.show(road.ask(text))
        except TurnspitError as error:
            print(f"turnspit: {error}", file=sys.stderr)
