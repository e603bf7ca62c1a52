"""The readers: a folder for each kind of thing that is told, in it a file for each dimension.

`measures` are numbers with a unit, `hours` clock times, days and spans, `heat` temperatures, `company` who eats,
`roasts` the roast and its state, `amounts` the brine and what is converted or scaled, `talk` what carries a talk on.

`GRAMMARS` find values in the words (a mass, a clock time), in this order, each on the line as the one before left it:
what carries its unit comes first, what needs its neighbours last. `ROLES` then say what each value is for; the order
is the precedence here too, and a value that is used is not used again.
"""

from __future__ import annotations

from turnspit.asking.readers import cues
from turnspit.asking.readers.amounts import brine
from turnspit.asking.readers.company import bare_covers, company, covers, diners
from turnspit.asking.readers.heat import degrees, oven, temperature
from turnspit.asking.readers.hours import clock, day, duration, elapsed, moment, put_in
from turnspit.asking.readers.measures import length, mass, numbers, pieces, volume
from turnspit.asking.readers.roasts import altitude, counts, flags, roast, state, weight
from turnspit.asking.readers.talk import bare, correction, going_back

GRAMMARS = (
    numbers.grammar,
    mass.grammar,
    volume.grammar,
    temperature.grammar,
    length.grammar,
    pieces.grammar,
    clock.plain_grammar,
    covers.grammar,
    company.grammar,
    counts.grammar,
    clock.grammar,
    duration.grammar,
    day.number_grammar,
    bare_covers.grammar,
    day.grammar,
    state.grammar,
    flags.grammar,
    put_in.grammar,
    cues.grammar,
)
ROLES = (
    going_back.read,
    correction.read,
    oven.read,
    altitude.read,
    degrees.read,
    put_in.read,
    brine.read,
    elapsed.read,
    moment.read,
    diners.read,
    roast.read,
    weight.read,
    bare.read,
)
