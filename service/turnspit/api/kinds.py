"""Roasts by whatever name the trade has for them, in the numeric requests."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache

from turnspit.asking.clean import clean
from turnspit.asking.vocabulary import vocabulary
from turnspit.heat import KINDS
from turnspit.message import Message

ONLY_ONE_HERE: Mapping[str, str] = {"ham": "fresh_ham"}
"""Names of more than one roast, of which the tables hold one; which, is said. Plain beef or pork is no such name: its
cuts differ by hours."""
FLATTENED = ("spatchcock", "spatchcocked", "butterflied", "flattened")


def kind_named(name: str) -> str:
    """The kind that `name` means ("Turkey", "pork-loin", "prime rib", "pierna de cordero"); `name` where none."""
    words = _words(name)
    return _kinds().get(words) or ONLY_ONE_HERE.get(" ".join(words)) or name


def taken_as(name: str) -> tuple[Message, ...]:
    """What the answer has to say of a name that is not the roast's own."""
    kind, words = kind_named(name), _words(name)
    if kind not in KINDS or words == _words(kind):
        return ()
    key = "api-kind-taken" if words in _kinds() else "api-kind-only-one"
    return (Message(key, said=name, kind=Message(f"roast-{kind}")),)


def _words(name: str) -> tuple[str, ...]:
    return tuple(clean(name.replace("_", " ").replace("-", " ")).split())


@cache
def _kinds() -> Mapping[tuple[str, ...], str]:
    own = {_words(kind): kind for kind in KINDS}
    told = {
        tuple(phrase): tags["<roast>"]
        for language in ("es", "en")
        for seconds in vocabulary(language).phrases.values()
        for rows in seconds.values()
        for phrase, tags in rows
        if "<roast>" in tags
    }
    flat = {(form, bird): f"{bird}_spatchcock" for form in FLATTENED for bird in ("turkey", "chicken")}
    return told | flat | {(*words[:-1], words[-1].removesuffix("s")): kind for words, kind in own.items()} | own
