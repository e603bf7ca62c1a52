"""Phrases with the roast in their midst: `left the ham out`, `put the goose in`, `keep the turkey warm`."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.company.covers import Covers, FromTo
from turnspit.asking.readers.heat.temperature import Temperature
from turnspit.asking.readers.hours.duration import HOURS, Duration
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

grammar = Grammar("cue")
_IT = "<roast>|<generic>|<subject>|<leftovers>|it|them|everything|food"


@grammar.rule(
    f"left|leave|leaving|forgot|forget|had|dumped|dropped <cooked>|<raw>|<state>? {_IT} out|outside|<on_table>",
    f"left|leave|leaving|forgot|forget {_IT} on",
    f"deje|deja|dejar|dejamos|dejo|dejaron|olvide {_IT} fuera|afuera|<on_table>",
    f"{_IT} sat out|on|in",
    f"{_IT} that sat",
    "sat <duration>",
    "sat for <duration>",
    gives="<out>",
    keeps=True,
)
def _left_out(*_: object) -> str:
    return "out"


@grammar.rule(
    f"nobody|never|didnt|not|one put {_IT} away",
    f"forgot|forget to put {_IT} away",
    f"nadie|no guardo|guarde|guardamos|metio {_IT}",
    gives="<out>",
    keeps=True,
)
def _not_put_away(*_: object) -> str:
    """`nobody put the turkey away`"""
    return "out"


@grammar.rule(
    "sat|sitting|stood|standing|been|was|were|left|still <duration>? <on_table>",
    f"estuvo|estuvieron|lleva|llevan|quedo|sigue|siguen {_IT}? <duration>? <on_table>",
    gives="<out>",
    keeps=True,
)
def _on_the_table(*_: object) -> str:
    return "out"


_FASTEST = 20


@grammar.rule(
    "<temperature>|<deg> every|each|per|cada|por <duration>|<time_unit>",
    "<number> every|each|cada <duration>|<time_unit>",
    "<temperature> in|over|within|en last|past|ultimos? <duration>",
    gives="<rate>",
)
def _so_much_every(*_: object) -> str:
    """`climbing two degrees every five minutes`: how fast it rises, and no reading."""
    return "rate"


@grammar.rule("<temperature> <duration>", gives="<rate>")
def _so_much_a_minute(rise: Temperature, span: Duration) -> str | None:
    """`1 degree a minute`."""
    return "rate" if rise.value <= _FASTEST and span.hours in (1.0, HOURS["min"]) else None


@grammar.rule(f"pulled|took|taken|lifted|saque {_IT}|her|him|em out? at|@|a", gives="<probe>", keeps=True)
def _pulled_at(*_: object) -> str:
    return "probe"


@grammar.rule("hace|hacen|estamos <temperature>", gives="<weather>")
def _hace_calor(_: object) -> str:
    return "weather"


@grammar.rule("<from_to> <deg>? in|within|en <duration>", gives="<danger>", keeps=True)
def _cooled_in(span: FromTo, *_: object) -> str | None:
    return "cooling" if span.low > span.high else None


@grammar.rule("<oven_left> of <freezer>", gives="<thaw>")
def _took_it_out_of_the_freezer(*_: object) -> str:
    return "thaw"


@grammar.rule("<oven_left> of <cold_place>", "<been_in>|in <no_cold_place>", gives="<out>")
def _out_of_the_cold(*_: object) -> str:
    return "out"


@grammar.rule(
    "<cold_place> door? off|out|died|dead|broke|broken|stopped|failed|down|open|ajar|unplugged|quit",
    gives="<danger>",
    keeps=True,
)
def _no_power(_: str) -> str:
    return "power_cut"


@grammar.rule(f"cook|roast|bake|cooked|roasted {_IT}? halfway|partway", gives="<danger>", keeps=True)
def _partly_cooked(_: str | None) -> str:
    return "partial_cooking"


@grammar.rule(f"<stuffed> {_IT}? <ahead>", f"stuff {_IT} <ahead>", gives="<danger>", keeps=True)
def _stuffed_ahead(*_: object) -> str:
    return "stuffing"


@grammar.rule(
    "dejar|dejo|meter|meto|guardar|guardo|poner|pongo <subject> adentro|dentro|en",
    "preparar|preparo|hacer|hago|dejar|dejo|meter|meto <subject> <ahead>",
    "<subject> <can> preparar|hacer|dejar|guardar|meter adentro|dentro|<ahead>",
    "make|making|mix|mixing|prep|prepare|assemble <subject> <ahead>",
    gives="<danger>",
    keeps=True,
)
def _stuffing_ahead(*values: object) -> str | None:
    """`dejar el relleno adentro del pavo`, `el relleno se puede preparar el dia antes`."""
    return "stuffing" if "stuffing" in values else None


@grammar.rule("<ok>|<safe>|serve|feed|give it? for|to <people>|<covers>", gives="<danger>", keeps=True)
def _for_children(*values: object) -> str | None:
    return "at_risk" if "kids" in values else None


@grammar.rule(f"what should|must|does <place>|{_IT} read|reach|hit|register", gives="<core_temp>", keeps=True)
def _what_it_should_read(_: str) -> str:
    return "core_temp"


@grammar.rule("minimum|min|lowest|required|recommended|usda <core_temp>|<what_temp>", gives="<what_temp>", keeps=True)
def _minimum_temperature(_: str) -> str:
    return "what_temp"


_MOST_BIRDS = 6


@grammar.rule(
    f"popped|stuck|shoved|chucked|slid|whacked|bunged|got <mass>? {_IT} in|<start>", gives="<started>", keeps=True
)
def _popped_in(*_: object) -> str:
    return "started"


@grammar.rule(f"pull|pulling {_IT} at", f"cook|take|bring|get {_IT} to", gives="<target>", keeps=True)
def _pull_at(_: str) -> str:
    return "target"


@grammar.rule(f"just put|stuck|started <mass>? {_IT} in?", gives="<starts_now>", keeps=True)
def _just_put_in(*_: object) -> str:
    return "now"


@grammar.rule(f"hot {_IT}", gives="<danger>", keeps=True)
def _hot(_: str) -> str:
    return "cooling"


@grammar.rule(f"puse|meti|pusimos|metimos <mass>? {_IT}", gives="<started>", keeps=True)
def _lo_puse(*_: object) -> str:
    return "started"


@grammar.rule(f"i|we put|stuck|popped <mass>? {_IT} in|inside|<start>", gives="<started>", keeps=True)
def _i_put_in(*_: object) -> str:
    return "started"


@grammar.rule(
    f"if|when|should|do|can|could|must|once|would|will|shall i|we put|stick|pop <mass>? {_IT} in|<in_for>|<start>",
    gives="<start>",
    keeps=True,
)
def _if_i_put_in(*_: object) -> str:
    return "start"


@grammar.rule(
    f"put|putting|stick|pop|slide|get|shove|throw <mass>? {_IT} in|into|<in_for>",
    f"meto|meter|pongo <mass>? {_IT}",
    gives="<start>",
    keeps=True,
)
def _put_in(*_: object) -> str:
    return "start"


@grammar.rule(
    f"keep|keeping|hold|holding|kept <number>|<mass>? {_IT} warm|hot",
    f"hold|holding carved|cooked|sliced|finished? {_IT} at|for|until|till|<duration>",
    gives="<danger>",
    keeps=True,
)
def _keep_warm(*_: object) -> str:
    return "warm_holding"


@grammar.rule(f"{_IT} finished|done|ready early|soon", f"{_IT} <done_word> early", gives="<danger>", keeps=True)
def _done_early(*_: str | None) -> str:
    return "warm_holding"


@grammar.rule(f"move|moving|transfer|shift|moved <mass>? {_IT} to|into <cold_place>", gives="<thaw>", keeps=True)
def _moved_to_the_fridge(*_: object) -> str:
    return "thaw"


@grammar.rule(f"take|pull|move|get|took {_IT} out|from of? <freezer>", gives="<thaw>", keeps=True)
def _out_of_the_freezer(*_: str) -> str:
    return "thaw"


@grammar.rule(f"saco|sacar|saca|sacamos|sacarlo {_IT}? <mass>? congelador", gives="<thaw>", keeps=True)
def _saco_del_congelador(*_: object) -> str:
    return "thaw"


@grammar.rule(
    "<meal> not|isnt|back|pushed|moved|delayed|slipped|now until|till|til|to",
    "<meal> pushed|moved|put back to|until|till|til",
    "<meal>|<serve>|dinners is|its|was? put|pushed|moved|knocked? <returns>",
    "not <serve> until|till|til|before",
    "<serve> not|back until|till|til|to",
    gives="<put_off>",
    keeps=True,
)
def _put_off(*_: object) -> bool:
    """`dinner not till 3`, `dinner back to 5`: the hour behind is that of dinner."""
    return True


_NO = "no|not|never|dont|doesnt|wont|didnt|isnt|wasnt|arent|skip|skipping|skipped|without|sin|nunca|drop"
_NEED = (
    "need|time|going|gonna|want|bother|bothering|planning|voy|vamos|quiero|hace|do|doing|did|using|put|putting|any"
)


@grammar.rule(
    f"{_NO} {_NEED}? to|a|with|falta? do|hacer|poner|bother? with|in|it|la? <brine>|<brined>",
    gives="<brined>",
    keeps=True,
)
def _no_brine(*_: object) -> bool:
    """`no need to brine it`, `skipping the brine`, `no voy a hacer salmuera`."""
    return False


@grammar.rule("<sink> <started>? <overnight>|<night>|<when_day>|<day>", gives="<danger>", keeps=True)
def _in_the_sink_since_last_night(*_: object) -> str:
    return "thawed_on_counter"


@grammar.rule(f"wash|rinse|washed|rinsed {_IT}", gives="<danger>", keeps=True)
def _washed(_: str) -> str:
    return "washed"


@grammar.rule("<part>|<fraction> of? <recipe>", gives="<factor>", keeps=True)
def _part_of_the_recipe(part: float | Number, _: str) -> float:
    return number(part).value


@grammar.rule("cut|divide|split|chop <subject>|<brine>|<ingredient>? <recipe> in half|two", gives="<factor>")
def _recipe_in_half(*_: object) -> float:
    return 0.5


@grammar.rule(
    f"cut|chop {_IT} in half",
    "cut|divide|split <mass>|<volume>? <ingredient> in half",
    f"half|halve|halving of? {_IT}",
    gives="<halved>",
    keeps=True,
)
def _halved(*_: str) -> str:
    return "halved"


@grammar.rule(
    "<one_more> <roast>|<generic>|one|ones|of", "<one_more> <mass>? <roast>|<generic>", gives="<another>", keeps=True
)
def _a_second_bird(*_: object) -> int:
    return 1


@grammar.rule("<covers> <mass>? <roast>|<generic>", gives="<another>")
def _one_more_bird(more: Covers, *_: object) -> int | None:
    return more.more if 0 < more.more <= _MOST_BIRDS else None


@grammar.rule("<generic> (|,? <fresh>", gives="<roast>")
def _ham_fresh(meat: str, _: object) -> str | None:
    return "fresh_ham" if meat == "ham" else None


@grammar.rule("( <place> )", gives="<place>")
def _place_in_brackets(place: str) -> str:
    """`148 (thigh) 155 (breast)`."""
    return place


@grammar.rule("in :", gives="<start>")
def _in_at() -> str:
    """`bird: 14 lb, in: 11am`."""
    return "start"


@grammar.rule(f"loads|load|lots|lot|plenty|heaps|tons|piles of {_IT} left", gives="<leftovers>", keeps=True)
def _lots_left(*_: object) -> str:
    return "leftovers"


@grammar.rule(f"olvide|olvido|olvidamos sacar|sacarlo {_IT}? <freezer>", gives="<state>", keeps=True)
def _forgotten_in_the_freezer(*_: object) -> str:
    return "frozen"


@grammar.rule(
    "<unwanted> <how_much>|any|anything|many|much|more|lot|lots|muchas? of|de? <leftovers>", gives="<no_leftovers>"
)
@grammar.rule(
    "<leftovers> arent|isnt|not|dont needed|important|necessary|wanted|required|matter", gives="<no_leftovers>"
)
def _no_leftovers(*_: object) -> bool:
    return False


@grammar.rule(
    "<next_days_dish> on|for|the|el|all? <day>|<weekday>|<next>|<when_day>|weekend|week|days|day|after",
    gives="<extra_wished>",
    keeps=True,
)
@grammar.rule(
    "some|extra|plenty|enough|left|more|lots|loads over? for <roast>|<generic>? <next_days_dish>|<stock>",
    "sobre|alcance|quede|haya|algo para <next_days_dish>",
    "some|plenty|lots|enough over for|on <weekday>|<day>|<holiday>|<when_day>",
    "left|extra for|on <weekday>|<day>|<holiday>|<when_day>",
    "cold <roast>|<generic>|meat|cuts on|for? <weekday>|<day>|<holiday>|<when_day>|<next>|after",
    gives="<extra_wished>",
    keeps=True,
)
def _sandwiches_on_friday(*_: object) -> str:
    return "extra_wished"
