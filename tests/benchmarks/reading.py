"""How long reading takes: `python tests/benchmarks/reading.py`. Processor time, in milliseconds, once the words are loaded.

First every line of the corpus, each read for the first time; then lines of 200 characters, made of corpus lines and of noise; then
long lines of several makes, each twice as long as the one before, which shows that the time does not grow faster than the line.
"""

from __future__ import annotations

import gc
import random
import statistics
import sys
import time
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

from turnspit.asking.contract import Line
from turnspit.asking.reading import read_line

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))
CORPUS = Path(__file__).parents[1] / "asking" / "corpus"
CHANCE = random.Random(1)
LETTERS = "abcdefghijklmnopqrstuvwxyz      0123456789,.'"


def corpus() -> list[str]:
    texts = (path.read_text(encoding="utf-8").splitlines() for path in sorted(CORPUS.rglob("*.txt")))
    return [line.partition("=>")[0].strip() for lines in texts for line in lines if "=>" in line]


def spent_ms(text: str) -> float:
    start = time.process_time()
    read_line(Line(text, NOW), None)
    return (time.process_time() - start) * 1000


def row(name: str, times: list[float]) -> None:
    print(f"{name:34}{len(times):7}{statistics.median(times):9.2f}{max(times):9.2f}")


def noise(length: int, letters: str = LETTERS) -> str:
    return "".join(CHANCE.choice(letters) for _ in range(length))


def main() -> None:
    lines = corpus()
    spent_ms("a frist line, diner tomorow at easter")
    gc.collect()
    gc.freeze()
    print(f"{'lines':34}{'count':>7}{'median':>9}{'worst':>9}")
    row("corpus, first reading", [spent_ms(line) for line in lines])
    row("corpus, again", [spent_ms(line) for line in lines])
    made = [" ".join(CHANCE.choices(lines, k=8))[:200] for _ in range(400)]
    row("200 characters of corpus", [spent_ms(line) for line in made])
    row("200 characters of noise", [spent_ms(noise(200)) for _ in range(400)])
    print(f"\n{'long lines, characters':34}" + "".join(f"{2**n * 625:9}" for n in range(5)))
    makes = {
        "corpus": " ".join(lines) * 2,
        "noise": noise(10_000),
        "one letter": "a" * 10_000,
        "digits apart": "1 " * 5_000,
        "signs": "<" * 10_000,
        "units": "lb " * 4_000,
        "clock": "at 6 to 7 past 8 " * 600,
    }
    for name, text in makes.items():
        times = [min(spent_ms(text[: 2**n * 625]) for _ in range(3)) for n in range(5)]
        print(f"{name:34}" + "".join(f"{spent:9.2f}" for spent in times))
    sys.exit(0)


if __name__ == "__main__":
    main()
