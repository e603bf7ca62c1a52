"""Who eats."""
