"""Stuffed or not, with the bone or without, injected or plain: `stuffing goes in a dish`, `hasn't been injected`."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number
from turnspit.heat import roast

grammar = Grammar("flag")
_FLAGS = ("stuffed", "bone_in", "injected")
_NOT = "not|isnt|arent|wasnt|hasnt|havent|never|nothing|wont|dont|no"
_IS = "is|be|goes|going|go|cooked|cooks|baked|bakes|done|made|left|va"


def _denied(flag: bool) -> bool | None:
    return False if flag else None


for _flag in _FLAGS:
    grammar.rule(f"{_NOT} been|be|going|esta|va? to? be? <{_flag}>", gives=f"<{_flag}>")(_denied)


@grammar.rule(
    f"<subject> {_IS}? in|on|as its|own|separate|another|a? own|side|dish|pan|tray|casserole dish?",
    "<subject> <start> its|own|separate|another|a? own|side|dish|pan|tray|casserole dish?",
    f"<subject> {_IS}? separate|separately|apart|outside|alone|aparte",
    gives="<stuffed>",
    keeps=True,
)
def _stuffing_apart(subject: str, *_: str) -> bool | None:
    """`the stuffing goes in a separate dish`."""
    return False if subject == "stuffing" else None


@grammar.rule(
    f"<subject> {_IS}? inside",
    "<subject> <feeds> inside",
    f"<subject> {_IS}? in|into both|each? cavity|ends|end|neck",
    gives="<stuffed>",
    keeps=True,
)
def _stuffing_inside(subject: str, *_: object) -> bool | None:
    return True if subject == "stuffing" else None


@grammar.rule("cavity left|is|stays|kept? empty", gives="<stuffed>")
def _cavity_empty() -> bool:
    return False


@grammar.rule("<number> <percent> of? solution|broth|saline", gives="<injected>")
def _with_solution(_: object, __: str) -> bool:
    return True


@grammar.rule(
    "bone|bones still|left|kept|is in",
    "with bone|bones still|left|kept? in",
    "hueso|huesos dentro|puesto",
    gives="<bone_in>",
)
def _bone_still_in(*_: object) -> bool:
    return True


@grammar.rule("bone|bones taken|cut|pulled|removed|come out", gives="<bone_in>")
def _bone_taken_out(*_: object) -> bool:
    return False


def read(scene: Scene) -> None:
    """Put `roast.stuffed`, `roast.bone_in` and `roast.injected`."""
    for flag in _FLAGS:
        for place, item in scene.find(f"<{flag}>"):
            if (
                "<subject>" in item
                and scene.has("<out>", "<keep>", "<safe>", "<leftovers>", "<freeze>")
                and not scene.has("<roast>", "<generic>")
            ):
                # "relleno 2 horas fuera": the stuffing itself.
                continue
            scene.put(f"roast.{flag}", item.tags[f"<{flag}>"], f"roast: {flag}", place, keep=True)
    _bones(scene)


_MOST_BONES = 8
_BONES = ("bone", "bones", "hueso", "huesos")
_RIBS = ("ribs", "costillas", "chuletas")


def _bones(scene: Scene) -> None:
    """`3 bone prime rib`, `a two-rib roast`, `rack of pork, 6 bones`: bones that are counted are still in it."""
    kind = scene.values.get("roast.kind") or scene.before.get("roast.kind")
    if kind is None or roast(kind).poultry or scene.has("<leftovers>", "<cooked>"):
        return
    for place, item in scene.find("<number>", unused=True):
        said: Number = item.tags["<number>"]
        behind = scene.items[place + 1] if place + 1 < len(scene.items) else None
        if behind is None or said.value != int(said.value) or not 2 <= said.value <= _MOST_BONES:
            continue
        # "3 rib roasts" are three; "2 ribs", of a rib roast that is named, are its bones.
        rib = behind.get("<roast>") == "beef_rib" and behind.words.startswith(("rib", "costilla"))
        one = (
            rib and not behind.words.endswith("roasts") and (behind.words != "ribs" or _names_a_rib(scene, place + 1))
        )
        if behind.words in _BONES or one or (behind.words in _RIBS and not kind.startswith("beef")):
            scene.put("roast.bone_in", True, "roast: its bones", place, place + 1)


def _names_a_rib(scene: Scene, but: int) -> bool:
    """`a standing rib roast, 4 ribs`: its bones."""
    return any(place != but and item.tags["<roast>"] == "beef_rib" for place, item in scene.find("<roast>"))
