"""`turnspit serve`: the API and the pages in one process."""

from __future__ import annotations

import socket

import uvicorn
from pydantic import ValidationError
from sqlalchemy.exc import SQLAlchemyError

import turnspit_web
from turnspit.api import Settings, create_app
from turnspit.errors import Impossible


def serve(host: str, port: int) -> None:
    """Listen until stopped. Raises Impossible where the address is taken, a setting is wrong or the database shut."""
    listener = listen(host, port)
    try:
        app = create_app(Settings())
    except ValidationError as error:
        first = error.errors()[0]
        name = f"TURNSPIT_{'_'.join(map(str, first['loc'])).upper()}"
        raise Impossible(name, first["input"], f"is wrong ({first['msg']})", "correct it or leave it out") from error
    except SQLAlchemyError as error:
        shown = str(error).splitlines()[0]
        raise Impossible("the database", shown, "cannot be used", "look at TURNSPIT_DATABASE_URL") from error
    turnspit_web.mount(app)
    address, taken = listener.getsockname()[:2]
    print(f"turnspit: http://{address}:{taken} asks, http://{address}:{taken}/display shows the kitchen", flush=True)
    uvicorn.Server(uvicorn.Config(app, log_level="warning")).run(sockets=[listener])


def listen(host: str, port: int) -> socket.socket:
    """A socket on that address. Raises Impossible where there is none to be had."""
    try:
        return socket.create_server((host, port), family=socket.AF_INET6 if ":" in host else socket.AF_INET)
    except OSError as error:
        raise Impossible(
            "address", f"{host}:{port}", f"cannot be listened on ({error.strerror})", "take another --host or --port"
        ) from error
