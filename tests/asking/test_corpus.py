"""The corpus is the test of reading: lines and talks written by hand, some of them never looked at while rules were made."""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

from turnspit.asking.contract import Line
from turnspit.asking.reading import flat, read_line


def _command(name: str) -> ModuleType:
    spec = importlib.util.spec_from_file_location(f"asking_{name}", Path(__file__).with_name(f"{name}.py"))
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


corpus_report = _command("corpus_report")
exam_report = _command("exam_report")
fuzz_reading = _command("fuzz_reading")


def test_corpus_is_as_large_as_promised_and_repeats_nothing() -> None:
    cases = list(corpus_report.cases())
    lines = [case.turns[0].text for case in cases if len(case.turns) == 1]
    talks = [tuple(turn.text for turn in case.turns) for case in cases if len(case.turns) > 1]
    assert len(lines) >= 800
    assert len(talks) >= 150
    assert len(set(lines)) == len(lines)
    assert len(set(talks)) == len(talks)
    assert sum(case.held_back for case in cases) >= 150


def test_lines_the_rules_were_written_with_are_read_right() -> None:
    whole = corpus_report.total(corpus_report.scores([], held_back=False))
    assert whole.right / whole.cases >= 0.98
    assert corpus_report.f1(whole.slots) >= 0.99


def test_lines_held_back_are_read_right() -> None:
    whole = corpus_report.total(corpus_report.scores([], held_back=True))
    assert whole.turns_right / whole.turns >= 0.9
    assert whole.intents_right / whole.turns >= 0.94
    assert corpus_report.f1(whole.slots) >= 0.96


def test_exams_that_taught_are_passed() -> None:
    whole = _passed(held_back=False)
    assert whole.right / whole.turns >= 0.94
    assert whole.intents / whole.turns >= 0.97
    assert whole.f1 >= 0.98


def test_exams_held_back_are_passed() -> None:
    whole = _passed(held_back=True)
    assert whole.right / whole.turns >= 0.85
    assert whole.intents / whole.turns >= 0.95
    assert whole.f1 >= 0.955


def _passed(held_back: bool) -> Any:
    whole = exam_report.Score()
    for exam in exam_report.exams(held_back):
        for talk in exam.talks:
            whole.add(exam_report.mark(talk, whole_reply=False))
    return whole


def test_every_value_can_be_traced_to_words() -> None:
    for case in corpus_report.cases():
        if len(case.turns) == 1:
            reading = read_line(Line(case.turns[0].text, corpus_report.NOW), None)
            traced = {trace.path: trace.value for trace in reading.traces if trace.path != "intent"}
            assert traced == flat(reading.understood), case.turns[0].text


@pytest.mark.parametrize("seed", [11, 12])
def test_no_line_made_by_chance_raises(seed: int) -> None:
    fuzz_reading.fuzz(1500, seed)


@pytest.mark.slow
def test_no_line_made_by_chance_raises_when_it_is_answered() -> None:
    fuzz_reading.fuzz(120, 4, answers=True)
