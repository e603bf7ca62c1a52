"""What a line says, read in the light of the conversation before it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any, Literal

from turnspit.asking import follow_up, intents, subject
from turnspit.asking.clean import clean
from turnspit.asking.contract import Intent, Line, Trace, Understood
from turnspit.asking.conversation import Conversation, SetBy
from turnspit.asking.grammar import Item
from turnspit.asking.intents import tenor
from turnspit.asking.readers import GRAMMARS, ROLES
from turnspit.asking.readers.amounts import amount, aside, held_amount, scale
from turnspit.asking.readers.heat import fan
from turnspit.asking.readers.heat.temperature import Temperature
from turnspit.asking.readers.measures.measures import METRIC_UNITS, US_UNITS, Measure
from turnspit.asking.readers.roasts import others, roast
from turnspit.asking.readers.talk import repair
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Tokens, tokenize
from turnspit.asking.vocabulary import Language, kind_words

Move = Literal["ask", "amend", "why", "assumptions", "start_over", "show", "thanks"]
Units = Literal["us", "metric"]


@dataclass(frozen=True, slots=True)
class Reading:
    """The reading of one line.

    `understood` is already merged with the conversation (keys accumulate until the subject changes). `move` tells
    what kind of turn it is: a new question, an amendment of the last one ("make it 20 lb"), or a question about the
    answer itself. `corrections` are spelling corrections that could change the meaning. `ambiguous` is the path
    that has to be asked back ("" for none) with `choices` as lines that would settle it. `topic` is what a question
    about safety is about (a key of `[danger]` in the vocabulary, "" for none), `technique` what one about how to
    roast is about (a key of `[technique]`). `kept` is what the next line needs of this one: fields of
    `Conversation`. `others` are further roasts of the line, in its words.
    """

    intents: tuple[Intent, ...]
    understood: Understood
    move: Move = "ask"
    language: Literal["en", "es"] = "en"
    units: Units | None = None
    clock: Literal["12h", "24h"] | None = None
    traces: tuple[Trace, ...] = ()
    corrections: tuple[tuple[str, str], ...] = ()
    ambiguous: str = ""
    choices: tuple[str, ...] = ()
    topic: str = ""
    technique: str = ""
    kept: Mapping[str, Any] = field(default_factory=dict)
    others: tuple[str, ...] = ()


CONVERSIONS = (fan.read, amount.read, held_amount.read)
"""What reads a conversion; the first that finds one has it."""


def read_line(line: Line, conversation: Conversation | None) -> Reading:
    """Read one line; never raises for what a person can type."""
    text = clean(line.text)
    tokens = tokenize(text, conversation.language if conversation is not None else "en")
    items = _items(tokens)
    if any("<anew>" in item for item in items):
        conversation = _emptied(conversation)
    scene = _scene(line, tokens, items, conversation)
    scene.tenor = tenor.weigh(items)
    converts_too = aside.read(scene)
    converts = not (converts_too or tenor.denies(scene, "convert")) and (
        fan.read(scene) or amount.read(scene) or held_amount.read(scene)
    )
    scales = not converts and (converts_too or not tenor.denies(scene, "scale")) and scale.read(scene)
    if not converts and not scales:
        for read in ROLES:
            read(scene)
    asked = intents.intents(scene, converts, scales)
    if not asked and scene.has("<off_topic>"):
        # "the capital of turkey" is no bird.
        for path in tuple(scene.values):
            scene.drop(path)
    roast.settle_cut(scene, asked)
    subject.read(scene, asked)
    turn = follow_up.turn(scene, asked, conversation)
    ambiguous, choices = _asked_back(scene, turn.intents, turn.understood)
    return Reading(
        intents=turn.intents or ("unknown",),
        understood=turn.understood,
        move=turn.move,
        language=tokens.language,
        units=_units(scene),
        clock=scene.hints.get("clock"),
        traces=tuple(scene.traces),
        corrections=tuple((c.typed, c.read) for c in tokens.corrections if c.grave),
        ambiguous=ambiguous,
        choices=choices,
        topic=subject.topic(scene),
        technique=turn.kept.get("technique", ""),
        kept=turn.kept,
        others=others.others(scene, text),
    )


def items_of(text: str, usual: Language = "en") -> list[Item]:
    """What every reader starts from: the items of a line as it was typed."""
    return _items(tokenize(clean(text), usual))


def _items(tokens: Tokens) -> list[Item]:
    items = tokens.items
    for grammar in GRAMMARS:
        items = grammar.reduce(items)
    return repair.mend(items)


def _emptied(conversation: Conversation | None) -> Conversation | None:
    """The talk before a new question: nothing is held, how the reader reads is."""
    if conversation is None:
        return None
    return Conversation(conversation.id, conversation.language, units=conversation.units, clock=conversation.clock)


def _scene(line: Line, tokens: Tokens, items: list[Item], conversation: Conversation | None) -> Scene:
    before = flat(conversation.understood) if conversation is not None else {}
    if conversation is not None and conversation.shelved and any("<back_to>" in item for item in items):
        before = {**conversation.shelved}
    apart = (conversation.children, conversation.non_eaters) if conversation is not None else (0, 0)
    scene = Scene(items, line.now, tokens.language, before=before, talk=conversation is not None, apart=apart)
    scene.hints["talk_of"] = conversation.intents[0] if conversation is not None and conversation.intents else ""
    pending = conversation.pending if conversation is not None else ""
    scene.hints["pending"] = "" if pending == "number" else pending
    scene.hints["earlier"] = conversation.earlier if conversation is not None else {}
    scene.hints["roasts"] = conversation.roasts if conversation is not None else {}
    scene.hints["last_said"] = conversation.said if conversation is not None else ()
    scene.hints["lone"] = conversation.lone if conversation is not None else None
    scene.usual = line.units or _units(scene) or before.get("units") or (conversation.units if conversation else None)
    return scene


def _units(scene: Scene) -> Units | None:
    """The units the text uses, by its first measure; None where it has none."""
    for item in scene.items:
        if "<system>" in item:
            named: Units = "metric" if item.tags["<system>"] == "metric" else "us"
            return named
        for value in item.tags.values():
            unit = value.unit if isinstance(value, Measure | Temperature) else ""
            if unit in US_UNITS:
                return "us"
            if unit in METRIC_UNITS:
                return "metric"
    # "how many kilos"
    weighed_in = next((item.tags["<mass_unit>"] for item in scene.items if "<mass_unit>" in item), "")
    return "metric" if weighed_in in METRIC_UNITS else "us" if weighed_in in US_UNITS else None


# Intents whose answer hangs on the cut of meat.
_NEED_THE_CUT = frozenset(("plan", "size", "roast_time", "doneness"))


_OF_A_NUMBER = {
    "en": ("{:g} in the breast", "oven at {:g}", "for {:g} people"),
    "es": ("{:g} en la pechuga", "horno a {:g}", "para {:g} personas"),
}


def _asked_back(scene: Scene, asked: tuple[Intent, ...], known: Mapping[str, Any]) -> tuple[str, tuple[str, ...]]:
    """The path that must be asked back, "" for none, and lines that would settle it."""
    lone = follow_up.lone_number(scene)
    if lone is not None and not asked:
        return "number", tuple(text.format(lone) for text in _OF_A_NUMBER[scene.language])
    if scene.ambiguous == "oven.temperature_c":
        value = scene.hints["ambiguous_value"]
        return scene.ambiguous, (f"{value:g} F", f"{value:g} C")
    if scene.ambiguous == "roast.kind" and "kind" not in known.get("roast", {}) and _NEED_THE_CUT.intersection(asked):
        return scene.ambiguous, tuple(kind_words(kind, scene.language) for kind in scene.hints["cuts"])
    return "", ()


LINES_KEPT = 200
"""A conversation is shown and kept no longer than this many lines back."""


def remember(
    conversation: Conversation,
    reading: Reading,
    text: str,
    assumed: Mapping[str, Any] | None = None,
    pending: str = "",
) -> Conversation:
    """The conversation after a line: what is held, by whom it was set, and what is still asked.

    `assumed` are the values the answer took for granted, by path, `pending` the path that the answer asks for.
    """
    if reading.move == "start_over":
        return Conversation(conversation.id, reading.language, clock=reading.clock)
    set_by: dict[str, SetBy] = dict.fromkeys(assumed or {}, "assumed")
    held = flat(conversation.understood)
    for path, value in flat(reading.understood).items():
        if path in held and held[path] == value:
            set_by[path] = conversation.set_by.get(path, "said")
        else:
            set_by[path] = "asked" if path == conversation.pending else "said"
    aside = reading.move in ("why", "assumptions", "show", "thanks")
    # How to roast is asked in passing: the talk goes on about the dinner.
    stays = bool(conversation.intents) and reading.intents == ("help",) and bool(reading.technique)
    # What was not understood changes nothing.
    stays = stays or (bool(conversation.intents) and reading.intents == ("unknown",))
    return replace(
        conversation,
        language=reading.language,
        understood=reading.understood,
        set_by=set_by,
        assumed=dict(assumed or {}),
        intents=conversation.intents if stays else reading.intents,
        main=reading.intents if follow_up.MAIN.intersection(reading.intents) else conversation.main,
        pending=reading.ambiguous or pending,
        clock=reading.clock or conversation.clock,
        lines=conversation.lines if aside else (*conversation.lines, text)[-LINES_KEPT:],
        **reading.kept,
    )


def flat(understood: Mapping[str, Any], above: str = "") -> dict[str, Any]:
    """`understood` by dotted path."""
    found: dict[str, Any] = {}
    for name, value in understood.items():
        if isinstance(value, Mapping):
            found |= flat(value, f"{above}{name}.")
        else:
            found[f"{above}{name}"] = value
    return found
