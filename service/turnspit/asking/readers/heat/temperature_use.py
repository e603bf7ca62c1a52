"""What each temperature of the line is for: the oven, a probe reading, or the end that is wished.

`_CLUES` is the precedence: the first clue that speaks decides. What a word beside the number says comes first, then
what is asked or feared, and the height of the temperature last.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal

from turnspit.asking.readers.heat.course import course
from turnspit.asking.readers.heat.free_clauses import read_so
from turnspit.asking.readers.heat.oven import is_set_to, on_the_dial, roasts_hotter
from turnspit.asking.readers.heat.places import in_a_row_with_a_place, is_stuffed_bird
from turnspit.asking.readers.heat.surroundings import surroundings
from turnspit.asking.readers.heat.temperature import Said, Temperature, plausible_core
from turnspit.asking.readers.heat.wished_end import too_hot_for_meat, wished_end
from turnspit.asking.readers.hours.bare_clock import bare_clock
from turnspit.asking.readers.talk.bare import is_spoken_hour
from turnspit.asking.scene import Scene

Use = Literal["oven", "reading", "target", "nothing"]

OVEN_FROM_C = 100.0
READ_AT_MOST = 220
_HOTTEST_F = 500
# Another setting of an oven lies this near to the one before.
_NEAR_K = 60.0
_ALONE = 2
# What is kept in this heat is held.
_HOLDING_C = 45.0, 105.0
# Words that ask about, or fear for, what was read on a probe.
ASKED_OF = ("<safe>", "<ok>", "<done>", "<done_word>", "<cold_place>", "<danger>")
_PENDING: dict[str, Use] = {
    "oven.temperature_c": "oven",
    "reading.temperature_c": "reading",
    "roast.target_c": "target",
}


def temperatures(scene: Scene) -> list[Said]:
    """What could be a temperature, in the order of the line."""
    found = []
    lowest = 0 if danger(scene) == "thermometer" else 30
    highest = 5000 if scene.has("<place>") else 650
    for place, item in enumerate(scene.items):
        if place in scene.used:
            continue
        if "<temperature>" in item:
            value: Temperature = item.tags["<temperature>"]
            found.append(Said(place, value.value, value.unit, False))
        elif "<number>" in item and lowest <= item.tags["<number>"].value <= highest:
            number = item.tags["<number>"]
            # "so out 620": no dial shows that.
            no_setting = number.value > _HOTTEST_F and number.value % 25 != 0
            if bare_clock(scene, place) is None and not is_spoken_hour(scene, number) and not no_setting:
                found.append(Said(place, number.value, "", True))
    return found


def use(scene: Scene, said: Said) -> Use:
    """What a temperature is for."""
    for clue in _CLUES:
        found = clue(scene, said)
        if found is not None:
            return found
    return "nothing"


def danger(scene: Scene) -> str:
    """The first danger that the line speaks of, "" for none."""
    return next((str(item.tags["<danger>"]) for _, item in scene.find("<danger>")), "")


def _it_was_asked_for(scene: Scene, _: Said) -> Use | None:
    return _PENDING.get(scene.hints.get("pending", ""))


def _by_the_clock(scene: Scene, said: Said) -> Use | None:
    return "reading" if said.bare and said.place in course(scene) else None


def _one_of_two(scene: Scene, said: Said) -> Use | None:
    """`should I roast at 325 or 350`: neither is said."""
    both = scene.after_is(said.place, "'or", "'o"), scene.before_is(said.place, "'or", "'o")
    return "nothing" if said.bare and scene.has("<can>") and any(at is not None for at in both) else None


def _of_an_age(scene: Scene, said: Said) -> Use | None:
    """`grandad is 92`."""
    who = scene.before_is(said.place, "<relatives>")
    return "nothing" if said.bare and who is not None and "<number>" not in scene.items[who] else None


def _after_so_long(scene: Scene, said: Said) -> Use | None:
    """`only 100 after 90 minutes`."""
    so_long = scene.has("<been_in>", "<started>") and scene.has("<duration>", "<clock>")
    low = said.bare and said.core_like and said.value <= _DONE_F and not _at(scene, said)
    return "reading" if so_long and low and scene.after_is(said.place, *_COUNTED) is None else None


_DONE_F = 185
_COUNTED = ("<roast>", "<generic>", "<people>", "<time_unit>", "<mass_unit>", "<recipe>")


def _of_the_water(scene: Scene, said: Said) -> Use | None:
    """`the water is 46 this morning`, `cooler, ice melted, 44 now`."""
    cold = 30 <= said.value <= 65 and said.bare
    water = scene.before_is(said.place, "<water>") is not None
    lately = scene.after_is(said.place, "<morning>", "<night>", "<day>") is not None and scene.has("<vessel>")
    return "reading" if cold and (water or lately) else None


def _of_the_oil(scene: Scene, _: Said) -> Use | None:
    return "reading" if danger(scene) == "frying" and scene.has("<hot_oil>") else None


def _of_mince(scene: Scene, said: Said) -> Use | None:
    """`turkey burgers at 155 good?`: nothing that is roasted."""
    minced = any(item.tags["<subject>"] == "ground" for _, item in scene.find("<subject>"))
    return "reading" if minced and said.core_like else None


def _night_oven(scene: Scene, said: Said) -> Use | None:
    """`horno a 95 grados toda la noche`, `asar el pavo toda la noche a 90`."""
    led = scene.before_is(said.place, "<oven>", "'a", "<at>") is not None
    roasts = scene.has("<oven>") or (scene.has("<cook>") and scene.language == "es" and not _probed(scene))
    return "oven" if led and roasts and scene.has("<overnight>") and said.value >= _NIGHT_C else None


_NIGHT_C = 80


def _a_gas_mark(_: Scene, said: Said) -> Use | None:
    return "oven" if said.unit == "gas_mark" else None


def _behind_an_oven_word(scene: Scene, said: Said) -> Use | None:
    """`oven at 325`, `oven set to 190`."""
    if said.oven_like and scene.before_is(said.place, "<oven_left>") is not None:
        # "oven still on 160".
        return "oven"
    return "oven" if said.oven_like and (is_set_to(scene, said.place) or on_the_dial(scene, said.place)) else None


# So low a roast is still cooked, slowly.
_SLOWEST_C = 50


def _slow_oven(scene: Scene, said: Said) -> Use | None:
    """`horno a 80`, `low temperature 80`: for who cooks in Celsius."""
    before = scene.before_is(said.place, "<oven>", "<at>", "'a")
    led = before is not None and ("<oven>" in scene.items[before] or scene.before_is(before, "<oven>") is not None)
    return "oven" if led and scene.usual == "metric" and said.value >= _SLOWEST_C else None


def _of_no_meat(scene: Scene, said: Said) -> Use | None:
    """`a duck of 2,3 kilo, done in 2 hours by 180`."""
    probed = scene.nearest(said.place, "<place>", "<probe>", "<turkey_place>", reach=2) is not None
    return "oven" if scene.has("<mass>") and too_hot_for_meat(scene, said) and not probed else None


def _risen_in_the_rest(scene: Scene, said: Said) -> Use | None:
    """`rested to 166` is no wish."""
    to = scene.before_is(said.place, "'to")
    return "nothing" if to is not None and scene.before_is(to, "<rest>") is not None else None


def _held_in_heat(scene: Scene, said: Said) -> Use | None:
    """`keep it in a 150F oven`: held warm, neither roasted nor chilled."""
    low, high = _HOLDING_C
    if not scene.has("<hold>") or not low <= said.celsius(plausible_core(said.value)) <= high:
        return None
    hold = next((at for _, at, item in scene.walk(said.place, -1) if "<hold>" in item), None)
    if hold is None or not (
        _at(scene, said) or scene.before_is(said.place, "'in", "'en", "'a", "<oven>") is not None
    ):
        return None
    scene.items[hold].tags.setdefault("<danger>", "warm_holding")
    scene.tags.add("<danger>")
    return "oven" if scene.has("<oven>") else "reading"


def _of_the_kitchen(scene: Scene, said: Said) -> Use | None:
    return "nothing" if surroundings(scene, said) else None


def _a_wished_end(scene: Scene, said: Said) -> Use | None:
    return wished_end(scene, said)


def _roasts_hotter(scene: Scene, said: Said) -> Use | None:
    return "oven" if roasts_hotter(scene, said) else None


def _beside_an_oven_word(scene: Scene, said: Said) -> Use | None:
    oven = scene.nearest(said.place, "<oven>", "<convection>", reach=4.5)
    place = _place(scene, said)
    if oven and place and oven[1] > said.place and scene.after_is(oven[1], "<number>", "<temperature>") is not None:
        # "core is 62 celsius oven 160"
        return None
    return "oven" if oven and said.oven_like and (not place or oven[0] <= place[0]) else None


_HOTTEST_MEAT_C = 105


def _beside_a_place_or_probe(scene: Scene, said: Said) -> Use | None:
    """`130 in the breast`, `probe says 140`."""
    place = _place(scene, said)
    if said.unit == "degC" and said.value > _HOTTEST_MEAT_C:
        return None
    if scene.usual == "metric" and said.value > _HOTTEST_MEAT_C and said.bare and _tells_of_the_oven(scene):
        # "el horno no calienta bien, marca 140".
        return "oven"
    if place and said.value > READ_AT_MOST and "<roast>" in scene.items[place[1]]:
        # "turkey breast, 325": an oven's.
        return None
    return "reading" if place and (said.value <= READ_AT_MOST or place[0] <= 2) else None


def _tells_of_the_oven(scene: Scene) -> bool:
    """Whether an oven is spoken of, and neither a place in the meat nor a probe that is named."""
    named = any(
        item.words.startswith(("sonda", "la sonda", "probe", "the probe")) for _, item in scene.find("<probe>")
    )
    return scene.has("<oven>") and not scene.has("<place>", "<turkey_place>") and not named


def _of_the_same_place(scene: Scene, said: Said) -> Use | None:
    """`breasts at 62 and 61`, `62 y 61 en la pechuga`"""
    if not said.core_like or said.value > READ_AT_MOST or scene.before_is(said.place, "<for>") is not None:
        return None
    return "reading" if in_a_row_with_a_place(scene, said.place) else None


def _of_the_meat_too(scene: Scene, said: Said) -> Use | None:
    """`dressing says 148, meat's 166`."""
    meat = scene.before_is(said.place, "<generic>") is not None and scene.has("<probe>", "<place>")
    return "reading" if meat and said.core_like and said.value <= READ_AT_MOST and said.value >= _HOT else None


_HOT = 40


def _short_of_the_wish(scene: Scene, said: Said) -> Use | None:
    """`tengo la carne a 48 y la quiero a 55`: where the meat is, beside where it is to end."""
    wished = scene.has("<target>") and not scene.has("<mass>", "<oven>", "<how_long>")
    meat = scene.has("<roast>", "<generic>")
    return (
        "reading" if wished and meat and said.core_like and said.value <= READ_AT_MOST and _at(scene, said) else None
    )


def _heat_to_reach_an_end(scene: Scene, said: Said) -> Use | None:
    """`at 90 C, how many hours for a 6 kg joint to reach 54`: the oven's, however low."""
    asked = scene.has("<how_long>") and scene.has("<mass>") and scene.has("'reach")
    at = scene.before_is(said.place, "<at>", "'at", "'a") is not None
    return "oven" if asked and at and said.celsius("degC") >= _SLOWEST_C and not _probed(scene) else None


def _roasted_low(scene: Scene, said: Said) -> Use | None:
    """`roast overnight at 200F`: an oven's, for something is roasted or started at it."""
    low = said.unit != "degC" and 170 <= said.value <= 250
    roasts = scene.has("<cook>", "<start>", "<overnight>") and not scene.has("<place>", "<probe>", "<rest>", "<out>")
    return "oven" if low and roasts else None


def _a_dish_at(scene: Scene, said: Said) -> Use | None:
    """`gravy at 130`, `soup was 110 at bedtime`, `reheated turkey to 140`."""
    dish = scene.has("<reheat>") or (scene.has("<subject>") and not scene.has("<roast>", "<place>"))
    led = _at(scene, said) or scene.items[said.place - 1].words == "was" or scene.has("<reheat>")
    return "reading" if said.bare and led and 90 <= said.value <= READ_AT_MOST and dish else None


def _served_at(scene: Scene, said: Said) -> Use | None:
    """`can I serve it at 160`."""
    served = scene.has("<can>") and scene.before_is(said.place, "<at>") is not None and scene.has("<serve>")
    return "reading" if said.bare and served and 120 <= said.value <= 180 and not scene.has("<cook>") else None


def _at_an_oven_setting(scene: Scene, said: Said) -> Use | None:
    """`turkey at 325`, where nothing is asked about 325."""
    if not (said.bare and _at(scene, said) and said.value >= 140) or _probed(scene) or scene.has(*ASKED_OF):
        return None
    if said.core_like and scene.has("<carve>") and not scene.has("<how_long>", "<cook>"):
        # "ham at 140, slice it?".
        return "reading"
    if said.value > READ_AT_MOST or said.value % 5 == 0:
        return "oven"
    # "chicken's at 161, off?"
    return (
        "reading" if said.core_like and scene.has("<roast>", "<generic>") and not scene.has("<mass>") else "nothing"
    )


def _a_round_high_number(_: Scene, said: Said) -> Use | None:
    return "oven" if said.bare and said.value >= 250 and said.value % 5 == 0 else None


def _like_the_oven_before(scene: Scene, said: Said) -> Use | None:
    """`what about 200`, where the oven was set to 180."""
    held = scene.before.get("oven.temperature_c")
    if held is None and "oven.convection" in scene.before and said.bare and len(scene.items) <= _ALONE:
        # `fan oven`, then `160`.
        return "oven" if said.value >= 100 and said.value % 5 == 0 else None
    if held is None or not said.bare or scene.has("<place>", "<probe>", *ASKED_OF):
        return None
    if "reading.temperature_c" in scene.before:
        return None
    near = any(abs(Temperature(said.value, unit).celsius - held) <= _NEAR_K for unit in ("degC", "degF"))
    return "oven" if said.value >= 100 and near else None


def _alone_before_how_long(scene: Scene, said: Said) -> Use | None:
    """`2 kg duck, 180, how long`: too hot for meat in the units of the line."""
    if not said.bare or not scene.has("<how_long>") or _probed(scene):
        return None
    hot = said.value > READ_AT_MOST or (scene.usual == "metric" and said.value >= 140)
    return "oven" if hot and said.value % 5 == 0 else None


def _read_in_its_own_clause(scene: Scene, said: Said) -> Use | None:
    return "reading" if read_so(scene, said) else None


def _feared_for(scene: Scene, said: Said) -> Use | None:
    """`is 160 ok`, `it was at 145, will we get sick`; and `now 145` in a talk about readings."""
    if not said.bare:
        return None
    if said.value > READ_AT_MOST:
        return "nothing"
    near = scene.nearest(said.place, *ASKED_OF, reach=3.5) is not None
    asked = near or "reading.temperature_c" in scene.before or (_at(scene, said) and scene.has(*ASKED_OF))
    return "reading" if asked else "nothing"


def _degrees_by_their_height(scene: Scene, said: Said) -> Use | None:
    if not said.unit and said.value > READ_AT_MOST / 2:
        asked = said.value <= READ_AT_MOST and scene.has("<place>", "<probe>", *ASKED_OF)
        return "reading" if asked else "oven"
    return "oven" if said.celsius("degC") >= OVEN_FROM_C else "reading"


_CLUES: tuple[Callable[[Scene, Said], Use | None], ...] = (
    _it_was_asked_for,
    _by_the_clock,
    _one_of_two,
    _of_the_kitchen,
    _of_an_age,
    _of_the_water,
    _of_the_oil,
    _of_mince,
    _night_oven,
    _a_gas_mark,
    _held_in_heat,
    _behind_an_oven_word,
    _slow_oven,
    _risen_in_the_rest,
    _a_wished_end,
    _heat_to_reach_an_end,
    _roasts_hotter,
    _read_in_its_own_clause,
    _beside_an_oven_word,
    _of_no_meat,
    _beside_a_place_or_probe,
    _of_the_same_place,
    _of_the_meat_too,
    _short_of_the_wish,
    _roasted_low,
    _a_dish_at,
    _served_at,
    _at_an_oven_setting,
    _a_round_high_number,
    _after_so_long,
    _like_the_oven_before,
    _alone_before_how_long,
    _feared_for,
    _degrees_by_their_height,
)


def _at(scene: Scene, said: Said) -> bool:
    return scene.before_is(said.place, "<at>", "<start>") is not None


def _probed(scene: Scene) -> bool:
    """Whether a probe or a place is spoken of."""
    return scene.has("<probe>") or any(not is_stuffed_bird(scene, place) for place, _ in scene.find("<place>"))


def _place(scene: Scene, said: Said) -> tuple[float, int, str] | None:
    birds = [at for at, _ in scene.find("<stuffed>") if is_stuffed_bird(scene, at)]
    return scene.nearest(said.place, "<place>", "<probe>", "<turkey_place>", reach=3.5, but=birds)
