"""The `turnspit` command."""
