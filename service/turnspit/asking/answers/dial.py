"""An oven that is known to run hot or cold: what its dial is set to, so that it holds what the plan counts on."""

from __future__ import annotations

import re

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.clean import clean
from turnspit.message import Message

MOST_OFF_K = 42.0
"""An oven further off than 75 F is broken."""
_OFF = re.compile(
    r"\b(?:runs?|running|is|its|heats|corre|calienta)(?: about| around| some| roughly| unos| como)? (\d{1,2})"
    r" ?(?:°|deg\w*|grad\w*)? ?(f|c|fahrenheit|celsius)?\b"
    r" ?(?:too |un )?(cold|cool|low|slow|hot|high|de menos|de mas)\b"
)
_OVEN = re.compile(r"\b(?:oven|horno)\b")
_BELOW = ("cold", "cool", "low", "slow", "de menos")


def dial_line(enquiry: Enquiry, oven_c: float) -> tuple[Message, ...]:
    """The setting for an oven that is off by so much; nothing where the talk tells of none."""
    text = clean(enquiry.text).lower()
    found = _OFF.search(text)
    if found is None or not _OVEN.search(text):
        return ()
    letter = found.group(2) or ("c" if enquiry.reader.units == "metric" else "f")
    off_k = float(found.group(1)) / (1.0 if letter.startswith("c") else 1.8)
    if not 0 < off_k <= MOST_OFF_K:
        return ()
    below = found.group(3) in _BELOW
    dial_c = oven_c + off_k if below else oven_c - off_k
    return (Message(f"asking-dial-{'cold' if below else 'hot'}", off_k=off_k, dial_c=dial_c, c=oven_c),)
