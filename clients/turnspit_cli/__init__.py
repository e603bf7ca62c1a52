"""The command line: `turnspit ask` in this process or against a server, and `turnspit serve`."""

from turnspit_cli.commands import main

__all__ = ["main"]
