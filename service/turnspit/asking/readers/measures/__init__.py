"""Numbers, and numbers with a unit."""
