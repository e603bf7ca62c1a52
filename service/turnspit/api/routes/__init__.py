"""The routes, one module a room."""
