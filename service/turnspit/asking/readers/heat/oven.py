"""The oven beside its temperature: fan or not, and how many."""

from __future__ import annotations

from turnspit.asking.readers.heat.temperature import Said, Temperature
from turnspit.asking.scene import Scene
from turnspit.quantities import celsius

_MOST_OVENS = 8


def read(scene: Scene) -> None:
    """Put `oven.convection` and `oven.count`, and the setting that was spoken of as `that`."""
    _at_what_was_converted(scene)
    _fan_by_its_letter(scene)
    for place, item in scene.find("<convection>"):
        scene.put("oven.convection", item.tags["<convection>"], "oven: fan", place, keep=True)
    for place, item in scene.find("<double_oven>"):
        scene.put("oven.count", int(item.tags["<double_oven>"]), "oven: how many", place, keep=True)
    for place, item in scene.find("<count>"):
        if _of_ovens(scene, place):
            scene.put("oven.count", item.tags.pop("<count>"), "oven: how many", place)
    for place, item in scene.find("<number>", unused=True):
        said = item.tags["<number>"].value
        if said == int(said) and 1 <= said <= _MOST_OVENS and counts_ovens(scene, place):
            scene.put("oven.count", int(said), "oven: how many", place)


def _at_what_was_converted(scene: Scene) -> None:
    """`350F in C, and how long at that`: the degrees that are converted, in this line or the one before."""
    for place, _ in scene.find("<at_that>"):
        said = scene.values if "amount.value" in scene.values else scene.before
        unit = str(said.get("amount.unit", ""))
        if unit in ("degC", "degF", "gas_mark") and scene.after_is(place, *_NO_HEAT) is None:
            set_c = celsius(float(said["amount.value"]), unit)
            scene.put("oven.temperature_c", round(set_c, 2), "oven: at what was converted", place)


def _fan_by_its_letter(scene: Scene) -> None:
    """`6 kg turkey 160f`: a fan oven in Celsius, for none roasts at 160 F."""
    low, high = _FANNED_C
    if scene.usual != "metric" or not scene.has("<mass>") or scene.has("<target>", "<probe>", "<place>", "<hold>"):
        return
    for place, item in scene.find("<temperature>"):
        said: Temperature = item.tags["<temperature>"]
        if item.words.endswith(" f") and low <= said.value <= high and said.value % 10 == 0:
            item.tags["<temperature>"] = Temperature(said.value, "degC")
            scene.put("oven.convection", True, "oven: fan by its letter", place, keep=True)


_FANNED_C = 140, 200
_NO_HEAT = ("'time", "'point", "'hour", "'moment", "'rate", "'pace")


def counts_ovens(scene: Scene, place: int) -> bool:
    """Whether a bare number counts the ovens behind it: `two ovens`, and not `dinner at 6 oven 325`."""
    if not _of_ovens(scene, place) or scene.before_is(place, "<at>", "<hour_at>") is not None:
        return False
    noun = scene.after_is(place, "<oven>", "<convection>")
    several = noun is not None and scene.items[noun].words.endswith(("s", "combi"))
    one = scene.items[place].tags["<number>"].value == 1
    set_to = noun is not None and scene.after_is(noun, "<number>", "<temperature>", "<at>", "'gas") is not None
    led = scene.before_is(place, "<meal>", "<serve>", "<start>", "<started>", "<when_day>") is not None
    owned = scene.before_is(place, "<only_have>", "'have", "'got", "'only") is not None
    return several or owned or not (set_to or led) or (one and not led and scene.has("<clock>"))


def _of_ovens(scene: Scene, place: int) -> bool:
    after = scene.after_is(place, "<oven>", "<convection>")
    if after is not None and not _is_an_oven(scene, after):
        after = scene.after_is(after, "<oven>")
    return after is not None and _is_an_oven(scene, after)


def _is_an_oven(scene: Scene, place: int) -> bool:
    return scene.items[place].words.removesuffix(" at").endswith(_NOUNS)


_NOUNS = ("combi", "combis", "oven", "ovens", "horno", "hornos", "cooker", "cookers")


def setting(scene: Scene, found: list[Said]) -> Said:
    """The setting of several that it roasts at: the lower one that it is turned to, else the fan's own, else what is
    measured, else the first."""
    turned = [said for said in found[1:] if said.value < found[0].value and _turned_to(scene, found[0], said)]
    return next(
        (
            said
            for row in (turned, *([s for s in found if of(scene, s)] for of in (_of_the_fan, _measured)))
            for said in row
        ),
        found[0],
    )


def _turned_to(scene: Scene, first: Said, said: Said) -> bool:
    """`450 for 30 minutes then 325`"""
    return any("<turned_to>" in item for item in scene.items[first.place + 1 : said.place])


def _of_the_fan(scene: Scene, said: Said) -> bool:
    """`180/160 fan`"""
    fan = scene.after_is(said.place, "<convection>")
    return fan is not None and scene.items[fan].tags["<convection>"] is True


def _measured(scene: Scene, said: Said) -> bool:
    """`the dial says 325 but the oven thermometer says 340`"""
    probe = scene.before_is(said.place, "<probe>")
    return probe is not None and scene.before_is(probe, "<oven>") is not None


_DIALS = ("'dial", "'knob", "'display")


def on_the_dial(scene: Scene, place: int) -> bool:
    """`the dial says 325`"""
    says = scene.before_is(place, "<probe>", "<at>", "'to")
    return scene.before_is(place if says is None else says, *_DIALS) is not None


_LEADS_TO_A_SETTING = ("<at>", "<probe>", "<convection>", "'to", "'a", "<soft>")


def is_set_to(scene: Scene, place: int) -> bool:
    """`oven set to 190`, `el horno esta a 180`, `oven thermometer reads 350`; not `probe in the oven says 150`."""
    probed = False
    for at in range(place - 1, -1, -1):
        item = scene.items[at]
        if "<oven>" in item:
            inside = item.words.startswith(("en ", "in ")) or scene.before_is(at, "'in", "'en", *_PROBES) is not None
            return not (probed and inside)
        if item.words.startswith(_PROBES_SAY) or not any(tag in item for tag in _LEADS_TO_A_SETTING):
            return False
        probed = probed or "<probe>" in item
    return False


_PROBES = ("'sonda", "'probe")
_PROBES_SAY = ("sonda", "la sonda", "probe", "the probe")


_NO_CORE = 220
_METRIC_CORE, _METRIC_OVEN = (40, 82), 120


def roasts_hotter(scene: Scene, said: Said) -> bool:
    """`in 3 hours at 325 and the breast reads 140`, `2 horas a 160, pechuga 55`: hotter than what is probed."""
    at = scene.before_is(said.place, "<at>", "'a")
    if not said.bare or said.value % 5 or (at is not None and "<probe>" in scene.items[at]):
        return False
    if not scene.has("<duration>", "<been_in>", "<started>") or not scene.has("<place>", "<probe>"):
        return False
    probed = [
        item.tags["<number>"].value
        for place, item in scene.find("<number>", unused=True)
        if place != said.place and scene.nearest(place, "<place>", "<probe>", reach=2) is not None
    ]
    low, high = _METRIC_CORE
    metric = any(low <= other <= high for other in probed)
    return (at is not None and said.value > _NO_CORE) or (metric and said.value >= _METRIC_OVEN)
