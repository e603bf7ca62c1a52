"""`turnspit serve`: the API and the pages in one process."""

from __future__ import annotations

import socket

import uvicorn

import turnspit_web
from turnspit.api import Settings, create_app
from turnspit.errors import Impossible
from turnspit_cli.kept import told_plainly


def serve(host: str, port: int) -> None:
    """Listen until stopped. Raises Impossible where the address is taken, a setting is wrong or the database shut."""
    listener = listen(host, port)
    with told_plainly():
        app = create_app(Settings())
    turnspit_web.mount(app)
    address, taken = listener.getsockname()[:2]
    print(f"turnspit: http://{address}:{taken} asks, http://{address}:{taken}/display shows the kitchen", flush=True)
    uvicorn.Server(uvicorn.Config(app, log_level="warning")).run(sockets=[listener])


def listen(host: str, port: int) -> socket.socket:
    """A socket on that address. Raises Impossible where there is none to be had."""
    try:
        listener = socket.create_server((host, port), family=socket.AF_INET6 if ":" in host else socket.AF_INET)
        # Accepted connections inherit this; asyncio sets it only on sockets that name their protocol, and without it
        # an answer in two writes waits 40 ms for the other side's delayed acknowledgement.
        listener.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        return listener
    except OSError as error:
        raise Impossible(
            "address", f"{host}:{port}", f"cannot be listened on ({error.strerror})", "take another --host or --port"
        ) from error
