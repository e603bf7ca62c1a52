"""A short chat: one conversation, line by line, until the input ends."""

from __future__ import annotations

import sys
from collections.abc import Callable

from turnspit.errors import TurnspitError
from turnspit.message import Message
from turnspit.moment import utc_now
from turnspit.words import Reader, say
from turnspit_cli.roads import Document, Road

PROMPT = "> "


def chat(road: Road, show: Callable[[Document], None]) -> None:
    """Ask for lines and answer each; a line that is refused does not end the chat."""
    at_a_terminal = sys.stdin.isatty()
    if at_a_terminal:
        print(say(Message("cli-greeting"), Reader(utc_now())))
    while True:
        try:
            text = input(PROMPT if at_a_terminal else "")
        except (EOFError, KeyboardInterrupt):
            return
        try:
            show(road.ask(text))
        except TurnspitError as error:
            print(f"turnspit: {error}", file=sys.stderr)
