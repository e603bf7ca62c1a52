"""How the tables came to be, one step a file; `open_store` takes every database to the last."""
