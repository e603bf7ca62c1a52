"""The brine, and amounts to convert or to scale."""
