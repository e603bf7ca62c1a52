"""Learn what the words of a line speak for: `python tests/asking/learn_weights.py [--check]`.

Reads the corpus, the exams and `intents/*.txt` (lines with no more than their intents), all but what is held back, learns
the weight of each feature by logistic regression, and writes `turnspit/asking/intents/weights.tsv`. With `--check` nothing
is written; each fifth of the lines is read by weights that the other four taught. Needs scikit-learn (`pip install -e
.[learn]`).
"""

from __future__ import annotations

import argparse
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from corpus_report import cases
from exam_report import exams
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

import turnspit.asking.intents
from turnspit.asking.contract import INTENTS
from turnspit.asking.intents.tenor import START, features
from turnspit.asking.reading import items_of

TABLE = Path(turnspit.asking.intents.__file__).with_name("weights.tsv")
LINES = Path(__file__).parent / "intents"
SEEN_AT_LEAST = 2
STRENGTH = 1.0
SMALLEST = 0.05
SEED = 1
FOLDS = 5


@dataclass(frozen=True)
class Row:
    """One line that opens a talk: its features, what it asks, and what it may be read as besides."""

    found: frozenset[str]
    asked: frozenset[str]
    open_to: frozenset[str] = frozenset()


Weights = dict[str, dict[str, float]]


def rows() -> Iterator[Row]:
    """All that teaches."""
    for case in cases():
        if not case.held_back and any(case.turns[0].intents):
            yield row(case.turns[0].text, case.turns[0].intents)
    for exam in exams(held_back=False):
        yield from (row(talk[0].text, talk[0].intents) for talk in exam.talks if talk[0].intents)
    for path in sorted(LINES.glob("*.txt")):
        told = (line for line in path.read_text(encoding="utf-8").splitlines() if line and not line.startswith("#"))
        for text, _, intents in (line.rpartition(" => ") for line in told):
            yield row(text, intents.replace(",", " ").split())


def row(text: str, intents: Sequence[str]) -> Row:
    """The row of a line; "a|b" is either, "x?" may be listed too."""
    asked = frozenset(one.split("|")[0].rstrip("?") for one in intents if not one.endswith("?"))
    named = frozenset(intent for one in intents for intent in one.replace("?", "").split("|"))
    if not named or not named.issubset(INTENTS):
        raise ValueError(f"{text!r} asks {' '.join(intents)!r}: {', '.join(INTENTS)} are known")
    return Row(features(items_of(text)), asked, named - asked)


def learn(taught: Sequence[Row]) -> Weights:
    """The weights of each feature by intent; behind `START` what each intent starts from."""
    often = Counter(feature for row in taught for feature in row.found)
    vectors = DictVectorizer()
    matrix = vectors.fit_transform([{f: 1 for f in row.found if often[f] >= SEEN_AT_LEAST} for row in taught])
    names = vectors.get_feature_names_out()
    weights: Weights = {START: {}, **{name: {} for name in names}}
    for intent in sorted({intent for row in taught for intent in row.asked}):
        teaches = [intent not in row.open_to for row in taught]
        model = LogisticRegression(C=STRENGTH, max_iter=400)
        model.fit(matrix, [intent in row.asked for row in taught], sample_weight=teaches)
        weights[START][intent] = float(model.intercept_[0])
        for name, weight in zip(names, model.coef_[0], strict=True):
            if abs(weight) >= SMALLEST:
                weights[name][intent] = float(weight)
    return weights


def write(weights: Weights) -> None:
    lines = [
        "\t".join((feature, *(f"{intent}={weight:.2f}" for intent, weight in sorted(found.items()))))
        for feature, found in sorted(weights.items())
        if found
    ]
    TABLE.write_text("\n".join(lines) + "\n", encoding="utf-8")
    print(f"{len(lines)} features, {TABLE.stat().st_size / 1e6:.2f} MB")


def check(taught: Sequence[Row]) -> None:
    """How often the strongest intent is right, by weights that did not see the line."""
    fold = np.random.default_rng(SEED).integers(0, FOLDS, len(taught))
    right = 0
    for left_out in range(FOLDS):
        weights = learn([row for row, part in zip(taught, fold, strict=True) if part != left_out])
        for row in (row for row, part in zip(taught, fold, strict=True) if part == left_out):
            total = dict(weights[START])
            for feature in row.found:
                for intent, weight in weights.get(feature, {}).items():
                    total[intent] += weight
            right += max(total, key=total.__getitem__) in row.asked | row.open_to
    print(f"{right / len(taught):.1%} of {len(taught)} lines, each unseen")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--check", action="store_true", help="write nothing, check on lines left out")
    taught = list(rows())
    if parser.parse_args().check:
        check(taught)
    else:
        write(learn(taught))


if __name__ == "__main__":
    main()
