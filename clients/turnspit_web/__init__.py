"""The phone page and the kitchen display."""
