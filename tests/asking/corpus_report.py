"""How much of the corpus is read right: `python tests/asking/corpus_report.py [group ...] [--held-back] [--wrong]`.

Each file in `corpus/` is a group. A line is `what is typed => intents key=value ...`; `conversations*.txt` hold several turns
each, parted by an empty line. What stands in `corpus/held_back/` is not looked at while rules are written, and is reported
apart.
"""

from __future__ import annotations

import argparse
import re
import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from turnspit.asking.contract import Line
from turnspit.asking.conversation import Conversation
from turnspit.asking.reading import flat, read_line, remember

CORPUS = Path(__file__).parent / "corpus"
NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))
KG = {"lb": 0.45359237, "kg": 1.0, "g": 0.001, "oz": 0.028349523125}
LITRES = {"gal": 3.785411784, "quart": 0.946352946, "L": 1.0, "cup": 0.2365882365, "mL": 0.001}
METRES = {"ft": 0.3048, "m": 1.0}
DONENESS = {"rare": 52.0, "medium_rare": 57.0, "medium": 63.0, "medium_well": 68.0, "well_done": 71.0}
PATHS = {
    "k": "roast.kind", "m": "roast.mass_kg", "n": "roast.count", "st": "roast.state", "stuffed": "roast.stuffed",
    "bone": "roast.bone_in", "inj": "roast.injected", "tgt": "roast.target_c", "cov": "covers",
    "left": "leftovers_wanted", "serve": "serve_at", "start": "start_at", "oven": "oven.temperature_c",
    "fan": "oven.convection", "ovens": "oven.count", "brine": "brine.wanted", "bh": "brine.hours",
    "water": "brine.water_l", "vessel": "brine.vessel_l", "salt": "brine.salt_kind", "val": "amount.value",
    "unit": "amount.unit", "item": "amount.item", "to": "amount.target_unit", "from": "scale.from", "onto": "scale.to",
    "by": "scale.factor", "temp": "reading.temperature_c", "place": "reading.place", "read": "reading.at",
    "lefton": "reading.oven_left_on", "temps": "readings", "h": "elapsed_h", "alt": "altitude_m", "subj": "subject",
    "units": "units",
}  # fmt: skip


@dataclass(frozen=True)
class Turn:
    """One line of the corpus and what it should be read as."""

    text: str
    intents: tuple[str, ...]
    understood: dict[str, Any]
    move: str = ""


@dataclass(frozen=True)
class Case:
    """A line, or the turns of a conversation."""

    group: str
    turns: tuple[Turn, ...]
    held_back: bool = False


@dataclass
class Score:
    """Counts of one group: cases, turns and slots."""

    cases: int = 0
    right: int = 0
    turns: int = 0
    turns_right: int = 0
    intents_right: int = 0
    slots: Counter[str] = field(default_factory=Counter)
    wrong: list[str] = field(default_factory=list)


def expected(text: str, now: datetime = NOW) -> Turn:
    line, _, rest = text.rpartition("=>")
    intents, *pairs = rest.split()
    intents, _, move = intents.partition("/")
    values: dict[str, Any] = {}
    for pair in pairs:
        key, _, value = pair.partition("=")
        values |= _values(key, value, now)
    return Turn(line.strip() if line.strip() else "", tuple(intents.split(",")), values, move)


def _values(key: str, value: str, now: datetime) -> dict[str, Any]:
    path = PATHS[key]
    if key == "m":
        low, high, unit = re.fullmatch(r"(-?[\d.]+)(?:-([\d.]+))?([a-z]+)", value).groups()  # type: ignore[union-attr]
        if high is None:
            return {path: float(low) * KG[unit]}
        ends = [float(low) * KG[unit], float(high) * KG[unit]]
        return {path: sum(ends) / 2, "roast.mass_kg_range": ends}
    if key in ("water", "vessel"):
        number, unit = re.fullmatch(r"([\d.]+)([a-zA-Z]+)", value).groups()  # type: ignore[union-attr]
        return {path: float(number) * LITRES[unit]}
    if key == "alt":
        number, unit = re.fullmatch(r"([\d.]+)([a-z]+)", value).groups()  # type: ignore[union-attr]
        return {path: float(number) * METRES[unit]}
    if key in ("temp", "oven", "tgt"):
        return {path: _celsius(value)}
    if key == "temps":
        readings: list[dict[str, Any]] = []
        for one in value.split(","):
            temperature, _, place = one.partition("@")
            readings.append({"temperature_c": _celsius(temperature)} | ({"place": place} if place else {}))
        return {path: readings}
    if key in ("serve", "start", "read"):
        day, _, clock = value.rpartition("/")
        hour, minute = clock.split(":")
        date = now.date() + timedelta(days=int(day)) if "-" not in day[1:] else datetime.fromisoformat(day).date()
        at = datetime(date.year, date.month, date.day, int(hour), int(minute), tzinfo=now.tzinfo)
        return {path: at.isoformat()}
    if value in ("y", "n"):
        return {path: value == "y"}
    if key in ("item", "subj"):
        return {path: value.replace("_", " ") if key == "item" else value}
    return {path: float(value) if re.fullmatch(r"-?[\d.]+", value) else value}


def _celsius(value: str) -> float:
    if value in DONENESS:
        return DONENESS[value]
    if value.startswith("gas"):
        return ((float(value[3:]) - 1) * 25 + 275 - 32) / 1.8
    return float(value[:-1]) if value.endswith("C") else (float(value[:-1]) - 32) / 1.8


def cases() -> Iterator[Case]:
    for path in sorted(CORPUS.rglob("*.txt")):
        talk: list[Turn] = []
        held_back = path.parent != CORPUS
        for raw in [*path.read_text(encoding="utf-8").split("\n"), ""]:
            if raw.startswith("#"):
                continue
            if path.stem.startswith("conversations"):
                if raw.strip():
                    talk.append(expected(raw))
                elif talk:
                    yield Case(path.stem, tuple(talk), held_back)
                    talk = []
            elif raw.strip():
                yield Case(path.stem, (expected(raw),), held_back)


def run(case: Case) -> Iterator[tuple[Turn, tuple[str, ...], dict[str, Any], str]]:
    conversation: Conversation | None = None
    for number, turn in enumerate(case.turns):
        line = Line(turn.text, NOW + timedelta(minutes=number))
        reading = read_line(line, conversation)
        yield turn, reading.intents, flat(reading.understood), reading.move
        conversation = remember(conversation or Conversation("corpus"), reading, turn.text)


def same(wanted: Any, found: Any) -> bool:
    if isinstance(wanted, list) and isinstance(found, list):
        return len(wanted) == len(found) and all(map(same, wanted, found))
    if isinstance(wanted, dict) and isinstance(found, dict):
        return wanted.keys() == found.keys() and all(same(value, found[key]) for key, value in wanted.items())
    if isinstance(wanted, bool) or isinstance(found, bool):
        return wanted is found
    if isinstance(wanted, int | float) and isinstance(found, int | float):
        return abs(wanted - found) <= 0.005 * abs(wanted) + 0.006
    return bool(wanted == found)


def mark(case: Case, score: Score) -> None:
    whole = True
    for turn, intents, found, move in run(case):
        wrong = []
        if intents != turn.intents:
            wrong.append(f"intents {','.join(intents)} not {','.join(turn.intents)}")
        else:
            score.intents_right += 1
        if turn.move and move != turn.move:
            wrong.append(f"move {move} not {turn.move}")
        for path in turn.understood.keys() | found.keys():
            if path in turn.understood and path in found and same(turn.understood[path], found[path]):
                score.slots[f"right {path}"] += 1
                continue
            if path in turn.understood:
                score.slots[f"missed {path}"] += 1
                wrong.append(f"missed {path}={turn.understood[path]}")
            if path in found:
                score.slots[f"invented {path}"] += 1
                wrong.append(f"invented {path}={found[path]}")
        score.turns += 1
        score.turns_right += not wrong
        if wrong:
            whole = False
            score.wrong.append(f"  {turn.text!r}: " + "; ".join(wrong))
    score.cases += 1
    score.right += whole


def scores(groups: list[str], held_back: bool) -> dict[str, Score]:
    found: dict[str, Score] = {}
    for case in cases():
        if case.held_back == held_back and (not groups or case.group in groups):
            mark(case, found.setdefault(case.group, Score()))
    return found


def total(found: dict[str, Score]) -> Score:
    whole = Score()
    for score in found.values():
        whole = replace(
            whole,
            cases=whole.cases + score.cases,
            right=whole.right + score.right,
            turns=whole.turns + score.turns,
            turns_right=whole.turns_right + score.turns_right,
            intents_right=whole.intents_right + score.intents_right,
            slots=whole.slots + score.slots,
        )
    return whole


def f1(slots: Counter[str], path: str = "") -> float:
    def count(kind: str) -> int:
        return sum(n for name, n in slots.items() if name.startswith(kind) and (not path or name == f"{kind} {path}"))

    right, missed, invented = count("right"), count("missed"), count("invented")
    return 2 * right / max(2 * right + missed + invented, 1)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("groups", nargs="*", help="only these groups")
    parser.add_argument("--held-back", action="store_true", help="what is held back")
    parser.add_argument("--wrong", action="store_true", help="list what is read wrong")
    chosen = parser.parse_args()
    found = scores(chosen.groups, chosen.held_back)
    whole = total(found)
    print(f"{'group':28}{'cases':>7}{'right':>8}{'turns':>7}{'right':>8}{'intents':>9}{'slot F1':>9}")
    for name, score in [*found.items(), ("all", whole)]:
        print(
            f"{name:28}{score.cases:7}{score.right / max(score.cases, 1):8.1%}{score.turns:7}"
            f"{score.turns_right / max(score.turns, 1):8.1%}{score.intents_right / max(score.turns, 1):9.1%}"
            f"{f1(score.slots):9.3f}"
        )
    print(f"\n{'dimension':28}{'said':>7}{'slot F1':>9}")
    for path in sorted({name.split(" ", 1)[1] for name in whole.slots}):
        said = whole.slots[f"right {path}"] + whole.slots[f"missed {path}"]
        print(f"{path:28}{said:7}{f1(whole.slots, path):9.3f}")
    if chosen.wrong:
        print("\n" + "\n".join(wrong for score in found.values() for wrong in score.wrong))
    sys.exit(0)


if __name__ == "__main__":
    main()
