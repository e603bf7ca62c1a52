"""The roast: which, how heavy, how many, in what state."""
