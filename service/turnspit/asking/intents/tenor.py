"""Which intents the words of a line speak for.

`weights.tsv` has a line for each feature: a word, a meaning of a word, or two or three of them in a row. Behind it
stands what the feature adds to the log-odds of each intent. `tests/asking/learn_weights.py` learns them from the
corpus by logistic regression; here they are only read and summed. The rules of `asked` and `told` read structure, the
weights read tenor; `settle` lets the weights decide where they clearly disagree.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import lru_cache
from importlib.resources import files
from itertools import pairwise
from typing import cast

from turnspit.asking.contract import Intent, Trace
from turnspit.asking.grammar import Item
from turnspit.asking.scene import Scene

Weights = tuple[tuple[Intent, float], ...]
START = ""
"""The row that holds what each intent starts from."""
# So much more must speak for another intent before it is taken (log-odds); more where a fear is let go.
CLEARLY = 1.0
CLEARLY_NO_FEAR = 2.5
# What has the shape of a conversion or of a scaling is one, unless this much speaks for something else.
CLEARLY_NO_SUM = 3.0
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


def weigh(items: Sequence[Item]) -> dict[Intent, float]:
    """The log-odds of each intent."""
    total = dict(weights(START))
    for feature in features(items):
        for intent, weight in weights(feature):
            total[intent] += weight
    return total


def denies(scene: Scene, intent: Intent) -> bool:
    """Whether the words clearly speak for something else than this one intent."""
    total = scene.tenor
    return not scene.talk and bool(total) and max(total.values()) - total[intent] > CLEARLY_NO_SUM


def settle(scene: Scene, asked: tuple[Intent, ...]) -> tuple[Intent, ...]:
    """The intents by rule, or what the words clearly speak for instead; `asked` is empty where no rule spoke."""
    settled = _settled(scene, asked)
    if settled == asked:
        return asked
    best: Intent = settled[0] if settled else "unknown"
    scene.traces.append(Trace("weights", _grounds(scene, best), "intent", best))
    scene.hints["pieces"] = [(name, 0, len(scene.items)) for name in settled]
    return settled


def _settled(scene: Scene, asked: tuple[Intent, ...]) -> tuple[Intent, ...]:
    total = scene.tenor
    if scene.talk or not total:
        # Half a line goes on with what was said before: its own words are too few.
        return asked
    best = max(total, key=total.__getitem__)
    if len(asked) > 1:
        return tuple(intent for intent in asked if total[intent] > HARDLY or intent == best) or (best,)
    rule = asked[0] if asked else "unknown"
    if rule == "plan" and best == "roast_time" and "serve_at" in scene.values and not scene.has("'?"):
        # A roast told with the hour of dinner is a plan, however short.
        return asked
    enough = CLEARLY_NO_FEAR if rule == "safety" else CLEARLY
    if best == rule or total[best] - total[rule] <= enough:
        return asked
    return () if best == "unknown" else (best,)


def _grounds(scene: Scene, intent: Intent) -> str:
    """The words that speak most for an intent."""
    words = list(dict.fromkeys(word for item in scene.items for word in item.words.split()))
    speaks = {word: dict(weights(f"w {word}")).get(intent, 0.0) for word in words}
    strongest = sorted(words, key=speaks.__getitem__, reverse=True)[:MOST_WORDS_SHOWN]
    return " ".join(word for word in words if word in strongest and speaks[word] > 0)


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
    """An item in a row: of a value its kind, else its words."""
    return next((value for value in _VALUES if value in item.tags), item.words)


@lru_cache(maxsize=4096)
def weights(feature: str) -> Weights:
    """What a feature adds to the log-odds of each intent; nothing where it is not known."""
    pairs = (pair.split("=") for pair in _lines().get(feature, "").split("\t") if pair)
    return tuple((cast(Intent, intent), float(weight)) for intent, weight in pairs)


@lru_cache(maxsize=1)
def _lines() -> Mapping[str, str]:
    """The lines by feature, unread: of so many a question needs few."""
    text = files("turnspit.asking.intents").joinpath("weights.tsv").read_text(encoding="utf-8")
    return {feature: pairs for feature, _, pairs in (line.partition("\t") for line in text.splitlines())}
