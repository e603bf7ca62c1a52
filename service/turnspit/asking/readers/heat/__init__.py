"""Temperatures: of the oven, of a probe, of the end that is wished."""
