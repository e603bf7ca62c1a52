"""How the exams are passed: `python tests/asking/exam_report.py [exam ...] [--held-back] [--wrong]`.

Each exam in `exams/` was written by somebody who had seen neither the rules nor the corpus. What stands there has been
learnt from since; `exams/held_back/` has not been looked at while rules were written and weights were learnt, and is
reported apart. A row is a line, or a list of turns: `text`, `now`, `timezone`, `intents` ("a|b" either, "x?" may be
listed too, absent not asked), `understood` by dotted path ("~lo..hi" between, "~word" with that word, "a|b" either, "*" any)
and `optional`, what may be understood besides.
"""

from __future__ import annotations

import argparse
import json
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from turnspit.asking import Line, ask
from turnspit.asking.conversation import Conversation
from turnspit.asking.reading import flat, read_line, remember

EXAMS = Path(__file__).parent / "exams"


@dataclass(frozen=True)
class Turn:
    """One line and what it should be read as; `intents` is empty where any will do."""

    text: str
    now: datetime
    intents: tuple[str, ...]
    understood: Mapping[str, Any]
    optional: Mapping[str, Any]


@dataclass(frozen=True)
class Exam:
    """Lines and conversations of one writer."""

    name: str
    talks: tuple[tuple[Turn, ...], ...]


@dataclass
class Score:
    """Counts of one exam."""

    turns: int = 0
    right: int = 0
    intents: int = 0
    slots: Counter[str] = field(default_factory=Counter)
    wrong: list[str] = field(default_factory=list)

    def add(self, other: Score) -> None:
        self.turns += other.turns
        self.right += other.right
        self.intents += other.intents
        self.slots += other.slots
        self.wrong += other.wrong

    @property
    def f1(self) -> float:
        right, missed, invented = (self.slots[kind] for kind in ("right", "missed", "invented"))
        return 2 * right / max(2 * right + missed + invented, 1)

    def row(self, name: str) -> str:
        share = max(self.turns, 1)
        return f"{name:28}{self.turns:6}{self.right / share:9.1%}{self.intents / share:9.1%}{self.f1:9.3f}"


def exams(held_back: bool) -> Iterator[Exam]:
    """The exams, those held back or the others."""
    for path in sorted((EXAMS / "held_back" if held_back else EXAMS).glob("*.jsonl")):
        rows = [json.loads(row) for row in path.read_text(encoding="utf-8").splitlines()]
        yield Exam(path.stem, tuple(tuple(map(_turn, row if isinstance(row, list) else [row])) for row in rows))


def _turn(row: Mapping[str, Any]) -> Turn:
    now = datetime.fromisoformat(row["now"]).astimezone(ZoneInfo(row["timezone"]))
    return Turn(row["text"], now, tuple(row["intents"] or ()), row["understood"], row.get("optional", {}))


def same(wanted: Any, found: Any, path: str) -> bool:
    """Whether a value is what was wanted: numbers within 1 %, degrees within 0.05."""
    if wanted == "*":
        return True
    if isinstance(wanted, bool) or isinstance(found, bool):
        return wanted is found
    if isinstance(wanted, int | float) and isinstance(found, int | float):
        return abs(wanted - found) <= max(0.01 * abs(wanted), 0.05 if path.endswith("_c") else 1e-9)
    if isinstance(wanted, list) and isinstance(found, list):
        return _same_list(wanted, found, path)
    if isinstance(wanted, str):
        return _same_text(wanted, found, path)
    return bool(wanted == found)


def _same_text(wanted: str, found: Any, path: str) -> bool:
    if wanted.startswith("~") and ".." in wanted:
        low, high = map(float, wanted[1:].split(".."))
        return isinstance(found, int | float) and low <= found <= high
    if not isinstance(found, str):
        return False
    if wanted.startswith("~"):
        return wanted[1:].lower() in found.lower()
    if path.endswith(("_at", ".at")):
        at, was = datetime.fromisoformat(wanted), datetime.fromisoformat(found)
        return at == was and at.utcoffset() == was.utcoffset()
    return found.lower() in wanted.lower().split("|")


def _same_list(wanted: Sequence[Any], found: Sequence[Any], path: str) -> bool:
    if len(wanted) != len(found):
        return False
    if path != "readings":
        return all(same(one, other, path) for one, other in zip(wanted, found, strict=True))
    left = list(found)
    for one in wanted:
        match = next((row for row in left if all(same(one[key], row.get(key), key) for key in one)), None)
        if match is None:
            return False
        left.remove(match)
    return True


def same_intents(wanted: Sequence[str], found: Sequence[str]) -> bool:
    """Whether the intents are those that are wanted, the first one first."""
    if not wanted:
        return True
    demanded = [set(one.split("|")) for one in wanted if not one.endswith("?")]
    left = list(found)
    if not left or left[0] not in demanded[0]:
        return False
    for spare in (one[:-1] for one in wanted if one.endswith("?")):
        if len(left) > len(demanded) and spare in left[1:]:
            left.remove(spare)
    return len(left) == len(demanded) and all(any(one in either for one in left) for either in demanded)


def mark(talk: Sequence[Turn], whole_reply: bool = True) -> Score:
    """Ask the turns of one conversation, or only read them, and count what is right."""
    score, conversation = Score(), None
    for turn in talk:
        intents, found, conversation = _answered(turn, conversation, whole_reply)
        wrong = []
        if same_intents(turn.intents, intents):
            score.intents += 1
        else:
            wrong.append(f"intents {' '.join(intents)} not {' '.join(turn.intents)}")
        for path, value in turn.understood.items():
            if path not in found:
                score.slots["missed"] += 1
                wrong.append(f"missed {path}={value}")
            elif same(value, found[path], path):
                score.slots["right"] += 1
            else:
                score.slots += Counter(("missed", "invented"))
                wrong.append(f"{path}={found[path]} not {value}")
        for path in found.keys() - turn.understood.keys():
            if path not in turn.optional or not same(turn.optional[path], found[path], path):
                score.slots["invented"] += 1
                wrong.append(f"invented {path}={found[path]}")
        score.turns += 1
        score.right += not wrong
        if wrong:
            score.wrong.append(f"  {turn.text!r} @{turn.now:%a %d %b %H:%M}: " + "; ".join(wrong))
    return score


def _answered(
    turn: Turn, conversation: Conversation | None, whole_reply: bool
) -> tuple[Sequence[str], Mapping[str, Any], Conversation]:
    line = Line(turn.text, turn.now)
    if not whole_reply:
        reading = read_line(line, conversation)
        kept = remember(conversation or Conversation("exam"), reading, turn.text)
        return reading.intents, flat(reading.understood), kept
    reply, kept = ask(line, conversation, "exam")
    understood = json.loads(json.dumps(reply.document()["understood"], default=str))
    return reply.intents, flat(understood), kept


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("exams", nargs="*", help="only these")
    parser.add_argument("--held-back", action="store_true", help="what is held back")
    parser.add_argument("--wrong", action="store_true", help="list what is read wrong")
    parser.add_argument(
        "--only-read", action="store_true", help="read the lines and do not answer them, which is faster"
    )
    chosen = parser.parse_args()
    whole = Score()
    print(f"{'exam':28}{'turns':>6}{'right':>9}{'intents':>9}{'slot F1':>9}")
    for exam in exams(chosen.held_back):
        if chosen.exams and exam.name not in chosen.exams:
            continue
        score = Score()
        for talk in exam.talks:
            score.add(mark(talk, whole_reply=not chosen.only_read))
        print(score.row(exam.name))
        whole.add(score)
    print(whole.row("all"))
    if chosen.wrong:
        print("\n" + "\n".join(whole.wrong))


if __name__ == "__main__":
    main()
