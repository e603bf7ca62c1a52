"""How long a cook waits: a warm `POST /v1/ask` over real HTTP, every line another bird, and a cold `turnspit ask`.

    python tests/benchmarks/ask.py [requests]

The service listens on a socket of this machine with a database on disk, in a process of its own; each line is a
distinct bird, oven and hour, so that no cache answers. The bounds are 60 ms for the warm median and 1.5 s for the
cold command, on two cores.
"""

import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import httpx

NOW = "2026-11-25T09:00:00-05:00"
ZONE = "America/New_York"
COLD = (sys.executable, "-c", "import turnspit_cli; turnspit_cli.main()", "ask", "16 lb bird, dinner at 6", "--json")
WARM_UP = 5


def main() -> None:
    requests = int(sys.argv[1]) if len(sys.argv) > 1 else 100
    cold = sorted(timed_cold() for _ in range(5))
    print(f"cold turnspit ask: median {cold[2]:.2f} s of {', '.join(f'{one:.2f}' for one in cold)}")
    with tempfile.TemporaryDirectory() as folder:
        warm = timed_warm(requests, Path(folder))
    ordered = sorted(1000 * one for one in warm)
    print(
        f"warm POST /v1/ask, {requests} distinct birds: median {statistics.median(ordered):.1f} ms, "
        f"p90 {ordered[int(0.9 * len(ordered))]:.1f} ms, worst {ordered[-1]:.1f} ms; "
        f"load {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores"
    )


def timed_cold() -> float:
    started = time.perf_counter()
    subprocess.run([*COLD, "--now", NOW, "--timezone", ZONE], check=True, stdout=subprocess.DEVNULL)
    return time.perf_counter() - started


def timed_warm(requests: int, folder: Path) -> list[float]:
    environment = {**os.environ, "TURNSPIT_DATABASE_URL": f"sqlite:///{folder / 'turnspit.db'}"}
    command = (sys.executable, "-u", "-c", "import turnspit_cli; turnspit_cli.main()", "serve", "--port", "0")
    with subprocess.Popen(command, env=environment, stdout=subprocess.PIPE, text=True) as service:
        assert service.stdout is not None
        address = service.stdout.readline().split()[1]
        try:
            with httpx.Client(base_url=address, timeout=30) as client:
                times = [timed_ask(client, number) for number in range(WARM_UP)]
                before = cpu_seconds(client)
                times += [timed_ask(client, WARM_UP + number) for number in range(requests)]
                print(
                    f"the service's own processor time: {1000 * (cpu_seconds(client) - before) / requests:.1f} ms each"
                )
        finally:
            service.terminate()
    return times[WARM_UP:]


def cpu_seconds(client: httpx.Client) -> float:
    """What the service has spent, which other work on the machine does not change."""
    lines = client.get("/metrics").text.splitlines()
    return next(float(line.split()[1]) for line in lines if line.startswith("process_cpu_seconds_total"))


def timed_ask(client: httpx.Client, number: int) -> float:
    body = {"text": line(number), "now": NOW, "timezone": ZONE}
    started = time.perf_counter()
    reply = client.post("/v1/ask", json=body)
    spent = time.perf_counter() - started
    assert reply.json()["data"]["plan"]["tasks"], reply.text
    return spent


def line(number: int) -> str:
    """Another bird each time: 10 to 20 lb in steps of a tenth, three oven settings, three days."""
    pounds = 10 + (number * 37 % 101) / 10
    oven_f = (325, 350, 375)[number % 3]
    day = ("tomorrow", "friday", "saturday")[number // 101 % 3]
    return f"{pounds} lb turkey, thawed, oven {oven_f}, dinner {day} at {5 + number % 3}"


if __name__ == "__main__":
    main()
