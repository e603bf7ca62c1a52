"""A line of text in, an answer in words out: reading, the conversation, one answer module an intent.

`ask` is the whole road; `read_line` only the reading. Both are pure functions of their arguments.
"""

from turnspit.asking.ask import ask, warm
from turnspit.asking.contract import INTENTS, Intent, Line, Question, Reply, SaidCaution, Trace, Understood
from turnspit.asking.conversation import Conversation
from turnspit.asking.reading import Reading, read_line

__all__ = [
    "INTENTS",
    "Conversation",
    "Intent",
    "Line",
    "Question",
    "Reading",
    "Reply",
    "SaidCaution",
    "Trace",
    "Understood",
    "ask",
    "read_line",
    "warm",
]
