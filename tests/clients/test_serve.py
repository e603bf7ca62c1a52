"""`turnspit serve`: the API and the pages on a socket, and one line for whoever cannot start it."""

import os
import signal
import socket
import subprocess
import sys
from pathlib import Path

import httpx
import pytest

from turnspit_cli.serving import listen

SERVE = (sys.executable, "-u", "-c", "import turnspit_cli; turnspit_cli.main()", "serve")


def test_it_serves_and_keeps_what_was_said_over_a_restart(tmp_path: Path) -> None:
    environment = {**os.environ, "TURNSPIT_DATABASE_URL": f"sqlite:///{tmp_path / 'kept.db'}"}
    conversation = plan = None
    for _ in range(2):
        with subprocess.Popen([*SERVE, "--port", "0"], env=environment, stdout=subprocess.PIPE, text=True) as service:
            assert service.stdout is not None
            address = service.stdout.readline().split()[1]
            try:
                if conversation is None:
                    line = {"text": "16 lb bird, dinner tomorrow at 6", "timezone": "America/New_York"}
                    reply = httpx.post(f"{address}/v1/ask", json=line, timeout=30).json()
                    conversation, plan = reply["conversation"], reply["data"]["plan"]["id"]
                for path in ("/", f"/plans/{plan}", "/display", "/static/page.css", "/healthz"):
                    assert httpx.get(address + path).status_code == 200, path
                shown = httpx.get(f"{address}/v1/conversations/{conversation}").json()
                assert shown["lines"] == ["16 lb bird, dinner tomorrow at 6"]
            finally:
                service.send_signal(signal.SIGINT)
                service.wait(20)


def test_it_listens_on_this_machine_alone_unless_told() -> None:
    import inspect

    from turnspit_cli.commands import serve

    assert inspect.signature(serve).parameters["host"].default == "127.0.0.1"


@pytest.mark.parametrize(
    ("change", "told"),
    [
        ({"TURNSPIT_WORKERS": "none"}, "TURNSPIT_WORKERS none is wrong"),
        ({"TURNSPIT_DATABASE_URL": "sqlite:////nowhere/at/all.db"}, "the database"),
        ({"TURNSPIT_DATABASE_URL": "a database"}, "the database"),
    ],
)
def test_a_wrong_setting_is_one_line(change: dict[str, str], told: str) -> None:
    done = subprocess.run(
        [*SERVE, "--port", "0"], env={**os.environ, **change}, capture_output=True, text=True, timeout=60, check=False
    )
    assert done.returncode == 2
    assert told in done.stderr
    assert "Traceback" not in done.stderr


def test_a_port_that_is_taken_is_one_line() -> None:
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = str(taken.getsockname()[1])
        done = subprocess.run([*SERVE, "--port", port], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 2
    assert "cannot be listened on" in done.stderr


def test_an_answer_in_two_writes_does_not_wait_for_an_acknowledgement() -> None:
    with listen("127.0.0.1", 0) as listener, socket.create_connection(listener.getsockname()):
        accepted, _ = listener.accept()
        with accepted:
            assert accepted.getsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY)
