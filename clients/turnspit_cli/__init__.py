"""The command line: a plain line or one verb in this process, a line against a server, and `turnspit serve`."""

from turnspit_cli.commands import main

__all__ = ["main"]
