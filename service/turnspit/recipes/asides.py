"""What a line says beside amount and item: optional, to taste, what it is for, and more of it."""

from __future__ import annotations

import re
from dataclasses import dataclass

from turnspit.quantities import is_food_name, take_amount

_LETTER = re.compile(r"[^\W\d_]")
_ASIDE_WORDS = re.compile(
    r"option|opcional|\bif\b|taste|suit|gusto|necesaria|\bas\b|q\.?\s?s\b|\btt\b|\bc/[ns]\b|\bplus\b|\+|\bmore\b|\bmás\b|extra|additional|"
    r"\bfor\b|\bto\b|\bpara\b",
    re.IGNORECASE,
)
"""Without one of these no aside can stand on the line: a quick look that saves the four searches below."""
_OPTIONAL = re.compile(
    r"[\s,;]*[(\[]?\s*\b(?<!more )(?<!less )"
    r"(?:optional(?:ly)?|if (?:desired|using|you like|you have (?:it|them)|available|liked|wished)|"
    r"opcional(?:es)?)\b\s*[)\]]?\s*:?",
    re.IGNORECASE,
)
_TO_TASTE = re.compile(
    r"[\s,;]*[(\[]?\s*\b(?:or\s+)?(?:more\s+(?:or less\s+)?)?(?:(?:just\s+)?to (?:(?:suit|your) )?taste|to suit|"
    r"according to taste|al? gusto|as (?:needed|required|desired|necessary)|"
    r"(?:q\.?\s?s|c/[ns]|(?-i:TT|T\.T))\.?(?=\W|$)|"
    r"(?:la )?cantidad necesaria)\s*[)\]]?",
    re.IGNORECASE,
)
_EXTRA = re.compile(
    r"[\s,;]*[(\[]?\s*(?:\b(?:plus|and|with|y)|\+)\s+(?:(?:a little|some|a bit)\s+)?(?:more|extra|additional|más)\b"
    r"\s*(?P<what>[^)\]]*)[)\]]?|(?:,\s*plus|\s\+)\s+(?![^()]*\))(?P<amount>(?:\d|an?\s|another\s)[^()\[\]]*|"
    r"[^(),]+\s(?:for|to)\s[^()]+)",
    re.IGNORECASE,
)
_PURPOSE = re.compile(
    r"""[\s,;]*[(\[]?\s*\b(?P<what>
        (?:for|to)\s+(?:the\s+)?(?:[^\W\d_]+-)?(?:[^\W\d_]{2,}ing\b|(?:serve|garnish|decorate|finish|coat|cover|fill|top
            |grease|dust|brush|glaze|thicken|loosen|bind|pan|tin|dish|bowl|rack|table|cavity|skin|pot)\b)[^)\]]*
        | enough\s+(?:to|for)\s+[^)\]]+
        | (?<=,\s)to\s+[^\W\d_]+(?:\s+[^\W\d_]+){0,3}
        | para\s+(?:(?:el|la|los|las)\s+[^\W\d_]+|[^\W\d_]+[aeií]r(?:l[aeo]s?)?\b)[^)\]]*
    )[)\]]?$""",
    re.IGNORECASE | re.VERBOSE,
)


@dataclass(frozen=True, slots=True)
class Asides:
    """What a line says beside its amount and item."""

    optional: bool
    to_taste: bool
    purpose: str
    extra: str


_NOTHING_SAID = Asides(optional=False, to_taste=False, purpose="", extra="")


def take_asides(rest: str) -> tuple[str, Asides]:
    """The line without its asides, and the asides."""
    if not _ASIDE_WORDS.search(rest):
        return rest.strip(" ,;"), _NOTHING_SAID
    rest, optional = _without(_OPTIONAL, rest)
    extra = _EXTRA.search(rest)
    shorter = rest[: extra.start()] + rest[extra.end() :] if extra else rest
    named = take_amount(shorter) if extra else None
    if named is not None and not named[1]:
        extra = None  # "1 cup plus more flour": the food stands behind it
    else:
        rest = shorter
    rest, to_taste = _without(_TO_TASTE, rest)
    purpose = _PURPOSE.search(rest)
    before = rest[: purpose.start()].split()[-1:] if purpose else []
    if purpose is None or not before or is_food_name(f"{before[0]} {purpose['what']}"):  # polvo para hornear
        purpose = None
    else:
        rest = rest[: purpose.start()]
    said = Asides(
        optional,
        to_taste,
        purpose["what"].strip(" .,") if purpose else "",
        ((extra["amount"] or "").strip() or extra["what"].strip(" .,") or "more") if extra else "",
    )
    return rest.strip(" ,;"), said


def _without(pattern: re.Pattern[str], rest: str) -> tuple[str, bool]:
    shorter = pattern.sub("", rest, count=1)
    return (shorter.strip(" ,;"), True) if shorter != rest and _LETTER.search(shorter) else (rest, False)
