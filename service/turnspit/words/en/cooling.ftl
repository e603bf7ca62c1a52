# How long something hot takes to be cold, and how deep it may stand.
cooling-times = { SPANS($first_low, $first_high) } to { TEMPERATURE(21.11) } and { SPANS($total_low, $total_high) } to { TEMPERATURE(5) }, both from { TEMPERATURE(57.22) }
cooling-hours-ok = { $times }: it makes the two stages, 2 h and 6 h in all.
cooling-hours-warn = { $times }: it may not make the two stages, 2 h and 6 h in all.
cooling-hours-stop = { $times }: too slow, the limit is 2 h and 6 h in all.
cooling-in_time-ok = Yes: { $times }; the limit is 2 h and 6 h in all.
cooling-in_time-warn = Perhaps not: { $times }; the limit is 2 h and 6 h in all.
cooling-in_time-stop = No: { $times }; the limit is 2 h and 6 h in all.
cooling-depth = { LENGTH($depth_mm) } deep at most in the refrigerator, { LENGTH($iced_mm) } in an ice bath: nine times in ten that is { TEMPERATURE(21.11) } within 2 h and { TEMPERATURE(5) } within 6 h in all. Measure it.
cooling-depth-ice = { LENGTH($iced_mm) } deep at most in an ice bath: nine times in ten that is { TEMPERATURE(21.11) } within 2 h and { TEMPERATURE(5) } within 6 h in all. Measure it.
cooling-hot-in = Yes, hot and at once, but not in a deep pot: { LENGTH($depth_mm) } deep at most, or { LENGTH($iced_mm) } in an ice bath first; so it makes { TEMPERATURE(21.11) } within 2 h and { TEMPERATURE(5) } within 6 h in all.
cooling-hot-in-ice = Not in a deep pot: first in an ice bath, { LENGTH($iced_mm) } deep at most; so it makes { TEMPERATURE(21.11) } within 2 h and { TEMPERATURE(5) } within 6 h in all.
cooling-hot-in-whole = Not whole: off the bone and sliced, then hot and at once, { LENGTH($depth_mm) } deep at most, or { LENGTH($iced_mm) } in an ice bath first; so it makes { TEMPERATURE(21.11) } within 2 h and { TEMPERATURE(5) } within 6 h in all.
cooling-hot-in-whole-ice = Not whole: off the bone and sliced, first in an ice bath, { LENGTH($iced_mm) } deep at most; so it makes { TEMPERATURE(21.11) } within 2 h and { TEMPERATURE(5) } within 6 h in all.
cooling-or-ice = Or in an ice bath, { LENGTH($iced_mm) } deep at most.
cooling-pans = { LENGTH($depth_mm) } deep, it fills { $pans } { $pans ->
    [one] full hotel pan
   *[other] full hotel pans
} (about { LENGTH(508) } by { LENGTH(305) }).
cooling-carve = Not whole: take it off the bone and slice it first.
cooling-place-warm = Never: a refrigerator at { TEMPERATURE($c) } does not bring it to { TEMPERATURE(5) }. Set it to { TEMPERATURE(3) }, and use an ice bath meanwhile.
cooling-home = At home: into the refrigerator within 2 h of the heat, shallow and uncovered until it is cold.
cooling-taken-refrigerator = A refrigerator at { TEMPERATURE($c) }, air hardly moving.
cooling-taken-blast_chiller = A blast chiller at { TEMPERATURE($c) }.
cooling-taken-ice_bath = An ice bath, with ice in it to the end.
cooling-ask = How much is it, and how deep does it stand?
cooling-why = Computed with { $members } variations of size, properties and cooling; a forecast proves nothing, the thermometer does.
