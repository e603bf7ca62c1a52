"""The words of everyday language: what people say is no slip of a kitchen word (`cricket` is none of `chicken`).

The lists are those of the spelling library `pyspellchecker`, counted in the subtitles of films; they are read when
the first word is met that the vocabulary does not hold.
"""

from __future__ import annotations

from functools import cache

from spellchecker import SpellChecker

from turnspit.asking.clean import clean
from turnspit.asking.vocabulary import Language

# The English list gives this count to words it holds for completeness (Brest, in France); slips are not in it at all.
# The Spanish one has words of that count that are common enough, but few forms of verbs: those stand in es_plain.txt.
_SELDOM = {"en": 50, "es": 0}


@cache
def everyday_words(language: Language) -> frozenset[str]:
    """The words of a language that are in common use, without accents."""
    counts = SpellChecker(language=language).word_frequency.dictionary
    return frozenset(
        word if word.isascii() else clean(word) for word, count in counts.items() if int(count) > _SELDOM[language]
    )
