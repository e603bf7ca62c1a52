"""The bodies of requests and responses, one module a room, as the contract fixes them."""
