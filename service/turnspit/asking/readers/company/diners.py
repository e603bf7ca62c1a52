"""Who eats: `covers`, and whether leftovers are wanted."""

from __future__ import annotations

from turnspit.asking.grammar import Item
from turnspit.asking.readers.company.covers import Covers
from turnspit.asking.readers.roasts.counts import is_plural
from turnspit.asking.scene import Scene

# "For 2 chicken, how long": in English not everybody says a plural.
_MOST_OF_A_SINGULAR = 6
_FEWER = ("just", "its just", "only", "solo")


def is_one_roast(scene: Scene, place: int, covers: Covers) -> bool:
    """`swap it for a 16`, `got an 18`, in a talk of a roast with its weight: one of so many pounds."""
    one = scene.items[place].words.endswith((f" a {covers.count}", f" an {covers.count}"))
    return one and not covers.sure and "roast.mass_kg" in scene.before


def read(scene: Scene) -> None:
    """Put `covers` and `leftovers_wanted`."""
    found: list[tuple[int, Covers]] = [
        (place, item.tags["<covers>"]) for place, item in scene.find("<covers>", unused=True)
    ]
    sure = [row for row in found if row[1].sure and not row[1].more]
    more = [row for row in found if row[1].more]
    plain = [row for row in found if not row[1].sure and not row[1].more]
    for place, covers in (*sure, *plain):
        if any(scene.items[at].get("<danger>") == "allergens" for at in [scene.after_is(place, "<danger>")] if at):
            # "4 people coming are celiac".
            continue
        if is_one_roast(scene, place, covers):
            continue
        if not covers.more and _is_one_of_them(scene, place, covers):
            scene.used.add(place)
            continue
        if scene.items[place].words.endswith("eating") and place and scene.items[place - 1].words.endswith("at"):
            # "done at 3 eating at 5".
            continue
        counted = scene.after_is(place, "<mass>", "<roast>", "<generic>")
        one = (
            counted is not None and "<mass>" not in scene.items[counted] and not is_plural(scene.items[counted].words)
        )
        many = covers.count > _MOST_OF_A_SINGULAR or scene.language == "es"
        if covers.count > 1 and one and (many or scene.has("<how_big>")):
            # "12 oz a head for 30 turkey", "cena para 12 pavo": so many people.
            counted = None
        if not covers.sure and counted is not None and "<how_big>" not in scene.items[counted]:
            # "brine for two 12 lb birds": for two birds, not for two people.
            scene.put("roast.count", covers.count, "roast: how many", place)
            continue
        if not covers.sure and "roast.count" in scene.before and scene.items[place].words.startswith(_FEWER):
            # `just one`, in a talk of two birds.
            scene.put("roast.count", covers.count, "roast: how many", place)
            continue
        among = covers.among or covers.count == covers.non_eaters
        if among and "covers" in scene.before and covers.count <= scene.before["covers"]:
            # `two vegetarians`, told of a company that was counted: they are among it.
            scene.hints["apart"] = (covers.kids or scene.apart[0], covers.non_eaters or scene.apart[1])
            scene.used.add(place)
            continue
        if "covers" not in scene.values:
            scene.hints["apart"] = (covers.kids, covers.non_eaters)
        scene.put("covers", covers.count, "covers", place)
    for place, covers in more:
        before = scene.values.get("covers", scene.before.get("covers"))
        if isinstance(before, int):
            scene.drop("covers")
            scene.put("covers", before + covers.more, "covers: more or fewer", place)
            kids, non_eaters = scene.hints.get("apart", scene.apart)
            scene.hints["apart"] = (kids + covers.kids, non_eaters + covers.non_eaters)
    _share_that_eats_none(scene)
    _leftovers(scene)


_FARTHEST_SHARE = 5


def _share_that_eats_none(scene: Scene) -> None:
    """`half the guests are vegetarian, 16 of us`: eight eat of the roast; who makes no whole one counts as eating."""
    count = scene.values.get("covers", scene.before.get("covers"))
    for place, _ in scene.find("<people>", unused=True):
        if not count or scene.items[place].tags["<people>"] != "non_eaters":
            continue
        shares = (_share(item) for item in reversed(scene.items[max(0, place - _FARTHEST_SHARE) : place]))
        share = next((share for share in shares if share), 0.0)
        if 0 < share < 1:
            kids, _ = scene.hints.get("apart", scene.apart)
            scene.hints["apart"] = (kids, int(count * share))


def _share(item: Item) -> float:
    """`a third`, `half the`, `half of them`; 0 for what names no share."""
    if "<half_of>" in item:
        return 0.5
    return float(item.get("<part>") or item.get("<factor>") or 0.0)


# What is told of some of the diners, and not of how many they are.
_TOLD_OF = """
'is 'isnt 'are 'arent 'has 'have 'having 'was 'were 'doesnt 'dont 'cant 'wont 'likes 'like 'wants 'want 'hates 'needs
'whos 'who 'with 'being 'thats 'might 'may 'only 'prefers 'loves 'asked 'keeps 'eats
'esta 'estan 'es 'tiene 'tienen 'no 'quiere 'quieren 'que 'come 'comen 'prefiere 'prefieren
"""


def _is_one_of_them(scene: Scene, place: int, covers: Covers) -> bool:
    """`one guest is pregnant`, `two of us like it rare`: some of the company, which was or will be counted."""
    told = next((item for item in scene.items[place + 1 : place + 2]), None)
    if told is None or not any(tag in told for tag in _TOLD_OF.split()) or not covers.sure:
        return False
    counted = scene.before.get("covers", 0) > covers.count or any(
        other is not None and other.count > covers.count
        for at, item in enumerate(scene.items)
        if at != place and (other := item.get("<covers>")) is not None
    )
    comes = any(item.words.startswith(_COMES) for _, item in zip(range(3), scene.items[place + 1 :], strict=False))
    return not comes and (covers.count == 1 or counted)


_COMES = ("coming", "come", "eating", "here", "joining", "left", "vienen", "viene", "now", "going")


def _leftovers(scene: Scene) -> None:
    for place, _ in scene.find("<no_leftovers>"):
        scene.put("leftovers_wanted", False, "leftovers: none wanted", place, keep=True)
    sizing = "covers" in scene.values or "serve_at" in scene.values or scene.has("<how_big>")
    if not sizing and "covers" not in scene.before:
        return
    for place, _ in scene.find("<extra_wished>"):
        scene.put("leftovers_wanted", True, "leftovers: for the days after", place, keep=True)
    asked_about = scene.has("<keep>", "<reheat>", "<safe>")
    for place, _ in scene.find("<leftovers>"):
        # "with leftovers how big, and how long do they keep": wished, and then asked about.
        if not asked_about or _wished(scene, place):
            scene.put("leftovers_wanted", True, "leftovers: wanted", place, keep=True)


def _wished(scene: Scene, place: int) -> bool:
    """`with leftovers`, `plus some left over`; `what do I do with leftovers` wishes nothing."""
    led = scene.before_is(place, "'with", "'plus", "'want", "'wanting", "'con", "'quiero")
    return led is not None and scene.before_is(led, "'do", "'done", "'hacer", "'hago") is None
