"""Clock times, days and spans, and what each is for."""
