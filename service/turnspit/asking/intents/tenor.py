"""Which intents the words of a line speak for.

Each word, each meaning of a word and each row of two or three of them that stands often enough in the corpus has a
weight for every intent, learnt once by logistic regression (`tests/asking/learn_evidence.py` writes `evidence.tsv`)
and read here as a table. The weights of a line add up to the log-odds that it asks for that intent. The rules of
`asked` and `told` read structure, the weights read tenor; `settle` lets the weights decide where they clearly
disagree.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import lru_cache
from importlib.resources import files
from itertools import pairwise

from turnspit.asking.contract import Intent, Trace
from turnspit.asking.grammar import Item
from turnspit.asking.scene import Scene

Weights = tuple[tuple[Intent, float], ...]

# So much more must speak for another intent before it is taken (log-odds); more where a fear is let go, or where the
# line may only go on with a talk.
CLEARLY = 1.0
CLEARLY_NO_FEAR = 1.5
IN_A_TALK = 99.0
# One of several intents is let go when this little speaks for it.
HARDLY = -4.0
MOST_WORDS_SHOWN = 5

# What such a value is matters for the tenor of a line, and not how much it is.
_VALUES = (
    "<roast>", "<generic>", "<mass>", "<covers>", "<duration>", "<clock>", "<temperature>", "<volume>", "<number>",
    "<ingredient>", "<weekday>", "<day>", "<people>", "<place>", "<holiday>",
)  # fmt: skip
_MEANINGS = 3
_SOFT_TAGS = 2


def features(items: Sequence[Item]) -> frozenset[str]:
    """What of a line is weighed: words, meanings, and rows of two and three of them."""
    said = [item for item in items if not ("<soft>" in item.tags and len(item.tags) <= _SOFT_TAGS)]
    row = ["^", *(_symbol(item) for item in said), "$"]
    meanings = [sorted(tag for tag in item.tags if tag[0] == "<")[:_MEANINGS] or [item.words] for item in said]
    return frozenset(
        (
            *(tag for item in said for tag in item.tags),
            *(f"w {word}" for item in said for word in item.words.split()),
            *_rows(row),
            *(f"t {one} {two}" for before, after in pairwise(meanings) for one in before for two in after),
        )
    )


def _rows(row: Sequence[str]) -> Iterator[str]:
    for size in (1, 2, 3):
        for start in range(len(row) - size + 1):
            yield " ".join(("s", *row[start : start + size]))


def _symbol(item: Item) -> str:
    return next((value for value in _VALUES if value in item.tags), item.words)


def weigh(items: Sequence[Item]) -> dict[Intent, float]:
    """The log-odds of each intent."""
    table, start = _table()
    total = dict(start)
    for feature in features(items):
        for intent, weight in table.get(feature, ()):
            total[intent] += weight
    return total


def denies(scene: Scene, intent: Intent) -> bool:
    """Whether the words clearly speak for something else than this one intent."""
    return _settled(scene, (intent,)) != (intent,)


def settle(scene: Scene, asked: tuple[Intent, ...]) -> tuple[Intent, ...]:
    """The intents by rule, or what the words clearly speak for instead; `asked` is empty where no rule spoke."""
    settled = _settled(scene, asked)
    if settled == asked:
        return asked
    best: Intent = settled[0] if settled else "unknown"
    scene.traces.append(Trace("evidence", _grounds(scene, best), "intent", best))
    scene.hints["pieces"] = [(name, 0, len(scene.items)) for name in settled]
    return settled


def _settled(scene: Scene, asked: tuple[Intent, ...]) -> tuple[Intent, ...]:
    total = scene.tenor
    best = max(total, key=total.__getitem__)
    if len(asked) > 1:
        return tuple(intent for intent in asked if total[intent] > HARDLY or intent == best) or (best,)
    rule = asked[0] if asked else "unknown"
    if total[best] - total[rule] <= _margin(scene, rule) or best == rule:
        return asked
    return () if best == "unknown" else (best,)


def _margin(scene: Scene, rule: Intent) -> float:
    if scene.talk:
        return IN_A_TALK
    return CLEARLY_NO_FEAR if rule == "safety" else CLEARLY


def _grounds(scene: Scene, intent: Intent) -> str:
    """The words that speak most for an intent."""
    table, _ = _table()
    speaks = {
        word: next((weight for name, weight in table.get(f"w {word}", ()) if name == intent), 0.0)
        for item in scene.items
        for word in item.words.split()
    }
    strongest = sorted(speaks, key=speaks.__getitem__, reverse=True)[:MOST_WORDS_SHOWN]
    return " ".join(word for word in speaks if word in strongest and speaks[word] > 0)


@lru_cache(maxsize=1)
def _table() -> tuple[Mapping[str, Weights], Mapping[Intent, float]]:
    """The weights by feature, and the log-odds of each intent for a line that says nothing."""
    table: dict[str, Weights] = {}
    text = files("turnspit.asking.intents").joinpath("evidence.tsv").read_text(encoding="utf-8")
    for line in text.splitlines():
        feature, *pairs = line.split("\t")
        weights = (pair.split("=") for pair in pairs)
        table[feature] = tuple((intent, float(weight)) for intent, weight in weights)  # type: ignore[misc]
    return table, dict(table.pop(""))
