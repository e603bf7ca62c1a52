# The plan: headline, ways, tasks and their reasons.

planning-headline = Put { $count ->
    [one] the { MASS($mass_kg) } { $roast }
   *[other] { $count } { $roast_many } of { MASS($mass_kg) } each
 } in { WHEN($oven_in, style: "at") }, start checking { WHEN($check_from, style: "at") }, serve { WHEN($serve_at, style: "at") }.
planning-headline-later = Dinner { WHEN($wished, style: "at") } cannot be met. { $why } The soonest that is done and safe: { $plan }
planning-headline-in = In since { WHEN($oven_in) }, { $count ->
    [one] the { MASS($mass_kg) } { $roast }
   *[other] { $count } { $roast_many } of { MASS($mass_kg) } each
 }: start checking { WHEN($check_from, style: "at") }, serve { WHEN($serve_at, style: "at") }.
planning-headline-due = In since { WHEN($oven_in) }, { $count ->
    [one] the { MASS($mass_kg) } { $roast }
   *[other] { $count } { $roast_many } of { MASS($mass_kg) } each
 }: start checking now, serve { WHEN($serve_at, style: "at") }.
planning-headline-refused = { $seen } { $action } So the nearest plan that keeps the rule: { $plan }
planning-headline-other = { $why } Instead: { $way }. { $plan }

# What was assumed
planning-assume-kind = The roast is a { $roast }.
planning-assume-thawed = It is thawed and cold from the refrigerator.
planning-assume-unstuffed = It is not stuffed; the dressing is baked apart.
planning-assume-oven = The oven is set to { OVEN($oven_c) }, { $fan ->
    [yes] with the fan
   *[no] without a fan
 }.
planning-assume-plain = The bird is sold plain: not injected, not kosher. The label tells.
planning-assume-stricter = No kitchen was named, so the stricter of the home and licensed rules holds.
planning-assume-mass-covers = { $count ->
    [one] It weighs { MASS($mass_kg) }
   *[other] There are { $count }, { MASS($mass_kg) } each
 }, enough for { $covers }.
planning-assume-mass = It weighs { MASS($mass_kg) }.
planning-no-time-for-brine = There is no time left to brine it (at least { $least_h } h cold): the skin is salted instead.
planning-outside-hours = The work starts { WHEN($at, style: "at") }, outside usual hours; a later dinner moves it.

# Ways
planning-way-as-wished = as wished, { MASS($mass_kg) } { $roast }
planning-way-as-wished-why = In the oven { WHEN($at, style: "at") }.
planning-way-too-late-why = It would have to be in the oven by { WHEN($at) }.
planning-way-refrigerator = thaw the { MASS($mass_kg) } { $roast } in the refrigerator
planning-way-refrigerator-why = A refrigerator thaw takes { SPAN($span_min) }, so it would start { WHEN($at, style: "at") }.
planning-way-refrigerator-late-why = A refrigerator thaw takes { SPAN($span_min) }: it would have had to start { WHEN($at, style: "at") }.
planning-way-cold-water = thaw it in cold water, changed each half hour
planning-way-cold-water-why = Cold water takes { SPAN($span_min) }, then it is cooked at once; it starts { WHEN($at, style: "at") }.
planning-way-cold-water-night-why = Cold water takes { SPAN($span_min) } and somebody to change it each half hour; starting { WHEN($at, style: "at") } it falls outside the hours of work.
planning-way-cold-water-licensed-why = In cold water its surface would be above { TEMPERATURE(5) } for { $warm_h } h, more than the 4 h a licensed kitchen may allow{ $named ->
    [yes] .
   *[no] ; say “home kitchen” if it is one.
 }
planning-way-both = thaw it in the refrigerator, the last of the ice in cold water
planning-way-both-why = In the refrigerator { WHEN($at, style: "at") }, and { WHEN($water_from, style: "at") } into cold water, changed each half hour, for up to { SPAN($span_min, style: "rough") }; then it is cooked at once.
planning-way-both-not-why = After the refrigerator it would still need { SPAN($span_min, style: "rough") } in cold water from { WHEN($water_from) }: out of hours, or warmer for longer than the rule allows.
planning-way-frozen = roast it from frozen, unstuffed
planning-way-frozen-why = From frozen it roasts { SPANS($low_min, $high_min) }; in the oven { WHEN($at, style: "at") }.
planning-way-later = the same { $roast }, later
planning-way-in-late-why = In since { WHEN($at) }, most likely ready by { CLOCK($ready_at) }; it rests and is carved after that.
planning-way-later-why = In the oven { WHEN($oven_in, style: "at") }, on the table { WHEN($at, style: "at") }.
planning-way-opened = the same bird opened flat, { MASS($mass_kg) }
planning-way-opened-why = Backbone cut out and pressed flat, it roasts faster in a hot oven of { OVEN($oven_c) }: in at { CLOCK($at) }. No times were published for it, so the window is wide.
planning-way-smaller = a smaller { $roast }, { MASS($mass_kg) } at most
planning-way-smaller-why = Up to { MASS($mass_kg) }, thawed, still makes it: in the oven { WHEN($at, style: "at") }. Two small ones feed as many as one large.
planning-way-breast = a { MASS($mass_kg) } { $roast }
planning-way-breast-why = It roasts faster than the whole bird: in the oven { WHEN($at, style: "at") }.

# Before the oven
planning-shop = Buy { $count ->
    [one] a fresh { $roast }, { MASS($mass_kg) }
   *[other] { $count } fresh { $roast_many }, { MASS($mass_kg) } each
 }
planning-shop-named = Buy { $count ->
    [one] a { $roast }, { MASS($mass_kg) }
   *[other] { $count } { $roast_many }, { MASS($mass_kg) } each
 }
planning-shop-why = A fresh bird is bought one to two days ahead and goes straight into the cold; a frozen one needs days more.
planning-thaw-refrigerator = Thaw { $count ->
    [one] the { MASS($mass_kg) } { $roast }
   *[other] { $count } { $roast_many } of { MASS($mass_kg) } each
 } in the refrigerator, in its wrapping, on a tray on the lowest shelf
planning-thaw-refrigerator-why = It needs up to { SPAN($span_min) }: the longer of rule and computed time.
planning-thaw-cold-water = Thaw { $count ->
    [one] the { MASS($mass_kg) } { $roast }
   *[other] { $count } { $roast_many } of { MASS($mass_kg) } each
 } in cold water, in a leak-proof wrapping
planning-thaw-cold-water-why = It needs up to { SPAN($span_min) }: the longer of rule and computed time. It is cooked at once.
planning-thaw-water-change = Change the water every { $every_min } minutes; keep the bird under.
planning-thaw-rule = Federal rule: { SPANS($low_min, $high_min) }.
planning-thaw-computed = Computed: { SPANS($low_min, $high_min) }.
planning-last-ice-refrigerator = Leave the { $roast } in the refrigerator from now on, on a tray, until { WHEN($at) }; ice that is left then does no harm: it is roasted as it is
planning-last-ice-cold-water = Put the { $roast } in cold water until { CLOCK($at) }, in a leak-proof bag, fresh water every 30 min, then straight on to the oven
planning-last-ice-why = The times allow for ice that is left; the less there is, the more evenly it roasts.
planning-thaw-check = Feel inside the cavity and at the thigh joint: ice there means it needs longer, here or in the oven.
planning-brine-make = Make the brine: { VOLUME($water_l) } water, { MASS($salt_kg) } salt; chill it with ice
planning-brine-make-why = { PERCENT($percent) } by weight; it is completely cold before the bird goes in.
planning-brine-in = Put the { $roast } into the cold brine, covered by it
planning-brine-in-why = { $hours } h in this strength (from { $low } to { $high } h).
planning-brine-place = The full vessel weighs { MASS($weight_kg) }; lowest shelf, below ready-to-eat food.
planning-brine-out = Take the { $roast } out of the brine, pour the brine away, pat dry
planning-brine-out-why = Longer only makes it saltier; used brine is raw juice.
planning-dry = Dry the { $roast } uncovered in the refrigerator
planning-dry-why = A dry skin browns instead of steaming.
planning-giblets = Take giblets, neck and plastic out of the { $roast }; pat it dry, do not wash it
planning-giblets-why = Paper and plastic burn, and the neck makes the gravy.
planning-giblets-frozen = Pull the giblet bag out with tongs once it loosens
planning-giblets-frozen-why = In a bird roasted from frozen it comes free only about half-way.
planning-pat-dry = Pat the { $roast } dry, do not wash it, and season it
planning-pat-dry-why = Dry skin browns; water from the tap spreads germs.
planning-truss = Truss and season: tie the legs loosely, tuck the wing tips under, brush with butter
planning-truss-why = Tied legs roast evenly, tucked tips do not burn.
planning-tie = Tie and season the { $roast }
planning-tie-why = An even shape roasts evenly.
planning-season-frozen = Unwrap it and set it on a rack in a pan; season when the skin has thawed
planning-season-frozen-why = Salt does not hold on ice.
planning-salt = Salt it all over.
planning-salt-lightly = Salt it lightly or not at all: it is salted already.
planning-stuff = Stuff it now, loosely, with warm dressing: not before.
planning-temper = Let the { $roast } stand on the counter for { SPAN($span_min) }
planning-temper-why = It counts as time out of the cold and saves only minutes in the oven.

# At the oven
planning-oven-on = Heat the oven to { OVEN($oven_c) }{ $fan ->
    [yes] , fan on
   *[no] {""}
 }
planning-oven-on-why = A hot oven from the first minute is what the times are computed for.
planning-roast-in = { $count ->
    [one] { MASS($mass_kg) } { $roast } into the oven, { OVEN($oven_c) }
   *[other] { $count } { $roast_many } of { MASS($mass_kg) } into the oven, { OVEN($oven_c) }
 }
planning-roast-in-why = Computed { SPANS($low_min, $high_min) }; the plan allows for the slower side, since an early bird can be held hot and a late dinner cannot.
planning-rack-bird = Breast up on a rack, so that the fat drips into the pan and can be used.
planning-rack = On a rack, fat side up, so that the fat drips into the pan and can be used.
planning-tent = Lay foil loosely over the breast once it is brown.
planning-apart = { $count } in one oven: leave a hand’s width between them and turn the pans half-way.
planning-baste = Baste: brush with butter and drippings, door shut quickly
planning-baste-why = Each opening costs about { SPAN($cost_min) }; the times allow for it.
planning-check = Check the temperature from here on, each ten to fifteen minutes; done at { TEMPERATURE($pull_c) } in the coldest place
planning-check-why = It is expected between { WHEN($p10) } and { WHEN($p90) }; the thermometer decides.
planning-probe-bird = Probe deep in the breast, the inner thigh and the wing joint, off the bone: the coldest counts.
planning-probe-meat = Probe the middle of the thickest part, off bone and fat: the coldest counts.
planning-probe-stuffing = Probe the middle of the stuffing too: it must read { TEMPERATURE(74) } in the oven.
planning-hold = If it is done early: tent it up to half an hour, then hold it at { TEMPERATURE($hot_c) } or hotter
planning-hold-why = It may be up to { SPAN($early_min, style: "rough") } early. Below { TEMPERATURE($hot_c) } the two-hour clock runs.
planning-hold-warm = If it is done early: take it out and let it rest longer under foil, in a warm place
planning-hold-warm-why = It may be up to { SPAN($early_min, style: "rough") } early. Held at { TEMPERATURE($hot_c) } it would cook on; out of the oven the two-hour clock runs.
planning-rest = { $count ->
    [one] Take the { $roast } out
   *[other] Take them out, each
 } at { TEMPERATURE($pull_c) }; rest { SPAN($span_min) } under loose foil
planning-rest-why = Heat goes on inward: the { $station } rises about { RISE($rise_k) } more, and the juice settles.
planning-measure-before-carving = Before it is carved it must read { TEMPERATURE($safe_c) } in the coldest place; if not, it goes back into the oven.
planning-rest-long = A large bird rests 30 to 45 minutes.
planning-rest-short = 15 to 20 minutes are enough.
planning-station-breast = breast
planning-station-thigh = inner thigh
planning-station-wing = wing joint
planning-station-stuffing = stuffing
planning-station-centre = centre

# To the table
planning-stock = Simmer neck and giblets (not the liver) in unsalted water for the gravy
planning-stock-why = The pan’s drippings may be salty; unsalted stock lets you choose.
planning-gravy = Make the gravy from drippings and stock; keep it steaming
planning-gravy-why = The oven is free of the roast and the fat has settled.
planning-gravy-salty-why = The drippings of a salted bird are salty: start from unsalted stock and taste.
planning-carve-bird = Carve: string off, legs first at the joint, breast in slices, thigh in large pieces
planning-carve-breast = Carve: each half off the breastbone in one piece, then in slices across the grain
planning-carve = Carve across the grain, string off
planning-carve-many = Carve with { $hands } pairs of hands, { SPAN($span_min, style: "rough") } (one pair takes { SPAN($alone_min, style: "rough") }); keep what waits and what is carved covered at { TEMPERATURE($hot_c) } or above
planning-carve-many-pink = Carve with { $hands } pairs of hands, { SPAN($span_min, style: "rough") } (one pair takes { SPAN($alone_min, style: "rough") }), across the grain, string off
planning-carve-why = A clean board and knife that have not met the raw bird.
planning-serve = { $covers ->
    [0] Serve
   *[other] Serve { $covers }
 }
planning-serve-why = The promised minute.
planning-leftovers = Leftovers off the bone, shallow, in the refrigerator by { WHEN($by) }
planning-leftovers-why = Two hours from the oven; they keep three to four days and are reheated to { TEMPERATURE(74) }.
