"""The readers: one file per dimension.

`GRAMMARS` find values in the words (a mass, a clock time), in this order, each on the line as the one before left
it: what
carries its unit comes first, what needs its neighbours last. `ROLES` then say what each value is for; the order is
the
precedence here too, and a value that is used is not used again.
"""

from __future__ import annotations

from turnspit.asking.readers import (
    altitude,
    bare,
    bare_covers,
    brine,
    clock,
    company,
    correction,
    counts,
    covers,
    cues,
    day,
    degrees,
    diners,
    duration,
    elapsed,
    flags,
    going_back,
    length,
    mass,
    moment,
    numbers,
    oven,
    pieces,
    put_in,
    roast,
    state,
    temperature,
    volume,
    weight,
)

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
