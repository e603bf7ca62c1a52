"""Reads lines made by chance and stops at the first that raises: `python tests/asking/fuzz_reading.py [count] [seed] [answer]`.

With a third argument each line is answered too, which is slower. Corpus lines cut, joined, shuffled and mistyped, words of both vocabularies in any order, and signs from all of Unicode; each
fifth line goes on a talk.
"""

from __future__ import annotations

import json
import random
import re
import sys
from datetime import datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from turnspit.asking import ask
from turnspit.asking.contract import INTENTS, Line
from turnspit.asking.conversation import Conversation
from turnspit.asking.reading import read_line, remember
from turnspit.asking.vocabulary import vocabulary

CORPUS = Path(__file__).parent / "corpus"
ZONES = [ZoneInfo(name) for name in ("America/New_York", "Europe/Madrid", "Australia/Lord_Howe", "UTC")]
SIGNS = [
    "½",
    "°",
    "🦃",
    "’",
    "\u200b",
    "\x00",
    "\t",
    "<b>",
    "</",
    "-",
    "–",
    "99999999999999999999",
    "1e309",
    "0/0",
    "24:00",
]


def corpus_lines() -> list[str]:
    texts = (path.read_text(encoding="utf-8").splitlines() for path in sorted(CORPUS.rglob("*.txt")))
    return [line.partition("=>")[0].strip() for lines in texts for line in lines if "=>" in line]


NUMBERS = ("0", "1", "7", "60", "95", "165", "325", "900", "0.5", "-3", "12:30", "1845", "3/4", "1e9")


def _other_numbers(chance: random.Random, text: str) -> str:
    return re.sub(r"\d+(?:[.:,]\d+)?", lambda found: chance.choice((found.group(), *NUMBERS)), text)


def line(chance: random.Random, known: list[str], words: list[str]) -> str:
    make = chance.randrange(7)
    if make == 0:
        return " ".join(chance.choices(known, k=chance.randint(1, 4)))
    if make == 1:
        mixed = " ".join(chance.choices(known, k=2)).split()
        chance.shuffle(mixed)
        return " ".join(mixed)
    if make == 6:
        return _other_numbers(chance, chance.choice(known))
    if make == 2:
        return " ".join(chance.choices(words, k=chance.randint(1, 15)))
    if make == 3:
        return "".join(
            chr(chance.choice((chance.randrange(32, 127), chance.randrange(1, 0x2FFF)))) for _ in range(40)
        )
    if make == 4:
        letters = list(chance.choice(known) or "x")
        for _ in range(chance.randint(1, 4)):
            letters[chance.randrange(len(letters))] = chance.choice("abcdefghijklmnopqrstuvwxyz0123456789 .,:/-")
        return "".join(letters)
    pieces = (
        chance.choices(words, k=4) + chance.choices(SIGNS, k=3) + [str(chance.randint(-50, 5000)) for _ in range(4)]
    )
    chance.shuffle(pieces)
    return " ".join(pieces)


def fuzz(count: int, seed: int, answers: bool = False) -> None:
    """Read `count` lines, and answer them; raises with the line at the first that is not read into a proper reading."""
    chance = random.Random(seed)
    known = corpus_lines()
    words = sorted(vocabulary("en").words | vocabulary("es").words)
    conversation: Conversation | None = None
    for number in range(count):
        text = line(chance, known, words)
        now = datetime(2026, 1, 1, tzinfo=chance.choice(ZONES)) + timedelta(minutes=chance.randrange(525_600))
        if number % 5 == 0:
            conversation = None
        try:
            if answers:
                json.dumps(ask(Line(text, now), conversation, "fuzz")[0].document(), allow_nan=False)
            reading = read_line(Line(text, now), conversation)
            assert reading.intents
            assert set(reading.intents) <= set(INTENTS)
            json.dumps(reading.understood, allow_nan=False)
            conversation = remember(conversation or Conversation("fuzz"), reading, text)
            assert Conversation.from_document(json.loads(json.dumps(conversation.document()))).id == "fuzz"
        except Exception as error:
            raise AssertionError(f"line {number} of seed {seed}: {text!r} at {now.isoformat()}") from error


if __name__ == "__main__":
    wanted = int(sys.argv[1]) if len(sys.argv) > 1 else 200_000
    fuzz(wanted, int(sys.argv[2]) if len(sys.argv) > 2 else 1, answers=len(sys.argv) > 3)
    print(f"{wanted} lines read, none raised")
