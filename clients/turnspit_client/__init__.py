"""Python client of the turnspit service."""
