# Salts and vessels, as they stand inside a sentence.
brine-salt-table = table salt
brine-salt-flake_kosher = light-flake kosher salt
brine-salt-coarse_kosher = coarse (dense) kosher salt
brine-salt-finishing_flake = flaked finishing salt
brine-salt-kosher = kosher salt
brine-sold-plain = plain
brine-sold-injected = injected
brine-sold-kosher = as kosher
brine-vessel-pot-8qt = an 8 quart (7.6 L) pot
brine-vessel-pot-12qt = a 12 quart (11.4 L) pot
brine-vessel-pot-16qt = a 16 quart (15.1 L) pot
brine-vessel-bucket-5gal = a 5 gallon (18.9 L) food-grade bucket
brine-vessel-tub-22qt = a 22 quart (20.8 L) food-grade tub
brine-vessel-pot-24qt = a 24 quart (22.7 L) pot
brine-vessel-pot-32qt = a 32 quart (30.3 L) pot
brine-vessel-cooler-48qt = a 48 quart (45.4 L) ice chest
brine-vessel-cooler-60qt = a 60 quart (56.8 L) ice chest
brine-vessel-bin-20gal = a 20 gallon (75.7 L) food-grade bin
brine-vessel-bin-32gal = a 32 gallon (121 L) food-grade bin
brine-vessel-none = several vessels, one or two birds in each

# The answer in one line.
brine-headline = Brine for { $meat }: { VOLUME($water_l) } of water in all and { $salt_weight } of salt, about { $cups } of { $salt }; { $hours } at { TEMPERATURE(4.44) } or below.
brine-headline-too-long = Not { $hours }: raw meat keeps { $most } in salt or brine at most, in the cold. The longest that is allowed: { $nearest }
brine-headline-misfit = It will not fit that vessel: covered, { $meat } takes { VOLUME($needed_l) } or more. In that much: { VOLUME($water_l) } of water in all, { $salt_weight } of salt (about { $cups } of { $salt }), { $hours } at { TEMPERATURE(4.44) } or below.
brine-headline-dry = Salt { $meat } dry: { $salt_weight } of salt, about { $cups } of { $salt }, { PERCENT($percent) } of its weight; uncovered in the cold for { $hours }.
brine-not-brined = No brine and no added salt: this { $roast } is sold { $sold_as }, so it is salted already.

# What to do.
brine-step-label = Read the label: a bird with added solution ("injected", "enhanced", "self-basting") or a kosher one is not salted again. Take out giblets, neck and plastic.
brine-step-label-joint = Read the label: meat with added solution ("injected", "enhanced", "self-basting") is not salted again.
brine-step-dissolve = Heat { VOLUME($water_l) } of water to { TEMPERATURE($hot_c) } and dissolve { $salt_weight } of salt in it (about { $cups } of { $salt }; weigh it if you can).
brine-step-dissolve-sugar = Heat { VOLUME($water_l) } of water to { TEMPERATURE($hot_c) } and dissolve { $salt_weight } of salt (about { $cups } of { $salt }; weigh it if you can) and { MASS($sugar_kg) } of sugar in it.
brine-step-ice = Pour it over { MASS($ice_kg) } of ice and { VOLUME($water_l) } of cold tap water and stir until the ice is gone: that brings it to about { TEMPERATURE($brine_c) }.
brine-step-ice-only = Pour it over { MASS($ice_kg) } of ice and stir until the ice is gone: that brings it to about { TEMPERATURE($brine_c) }.
brine-step-check-cold = The meat goes in only when a thermometer in the brine reads { TEMPERATURE(4.44) } or below; add ice in a closed bag if it does not.
brine-step-bird-in = Lower the bird in, breast down, let the cavity fill, weight it with a plate so that it stays under, and cover.
brine-step-joint-in = Lower the meat in, weight it with a plate so that it stays under, and cover.
brine-step-place = Full, it weighs { MASS($weight_kg) } besides the vessel, and a common one stands about { LENGTH($height_mm) } high. Lowest shelf of the refrigerator, on a tray, below everything that is eaten as it is.
brine-step-out = Take it out after { $hours }. Do not rinse it: let it drip, pat it dry, pour the brine down the drain and wash and sanitize sink, vessel and hands.
brine-step-dry-skin = Dry the skin on a rack over a tray, uncovered, on the lowest shelf: a few hours, or overnight.
brine-step-season = Salt it no more, or only lightly; season with pepper and herbs.
brine-step-rub = Mix { $salt_weight } of salt (about { $cups } of { $salt }), { PERCENT($percent) } of the raw weight, with the herbs; rub most of it on breast and thighs, the rest inside.
brine-step-rub-joint = Mix { $salt_weight } of salt (about { $cups } of { $salt }), { PERCENT($percent) } of the raw weight, with the herbs; rub it in on all sides.
brine-step-dry-rest = On a rack over a tray, uncovered, on the lowest shelf of the refrigerator, below everything that is eaten as it is.
brine-step-dry-after = Do not rinse it and add no more salt; pat dry what is wet.

# The lines that matter besides.
brine-note-fits = It fits: the meat itself takes { VOLUME($displaced_l) }, and covered it wants a vessel of { VOLUME($needed_l) } or more.
brine-note-misfit = Covered it wants { VOLUME($needed_l) }: that vessel is { VOLUME($short_l) } too small; { $vessel } would do, or joint the bird, or salt it dry.
brine-note-largest = The vessel you have takes { $count ->
    [one] one piece
   *[other] { $count } pieces
} of up to { MASS($mass_kg) }.
brine-note-vessels = Or { $vessels } vessels like yours, with the brine shared out.
brine-note-uncovered = { VOLUME($water_l) } will not cover it, { VOLUME($covers_l) } would: use a narrower vessel or a brining bag and turn it every few hours, or make more.
brine-note-overflows = It does not fit with { VOLUME($water_l) } of water: the meat takes { VOLUME($displaced_l) }, which leaves room for { VOLUME($spare_l) } of brine. { VOLUME($covers_l) } cover it; make that.
brine-note-percent = { PERCENT($percent) } salt by weight of the brine; the same brine counted by its water alone is { PERCENT($of_water) }.
brine-note-freezing = { $degrees } degrees on the salometer; it starts to freeze at { TEMPERATURE($freezing_c) }.
brine-note-strong = This is a very salty brine: no longer than { $hours }, gravy from unsalted stock, and no salt afterwards. The ordinary strength is 5.5% by weight.
brine-note-equilibrium = It can never get saltier than this brine and meat together; it stays in as long as raw meat keeps, at most two days.
brine-note-too-long = { $hours } is too long at this strength: { $most } at most.
brine-note-too-short = { $hours } is short for this strength ({ $least } or more): only the outside will be seasoned.
brine-note-too-salty = After that time the carved meat is likely above { PERCENT($limit) } salt, which most people find too salty: fewer hours or a weaker brine.
brine-note-salty-after = By the model it becomes too salty for most people (above 2%) after some { $hours }.
brine-note-finished = After { $hours } the carved meat holds about { NUMBER($low, maximumFractionDigits: 1) }–{ NUMBER($high, maximumFractionDigits: 1) }% salt: { NUMBER($sodium_low) }–{ NUMBER($sodium_high) } mg of sodium in { MASS($serving_kg) }. A model of how salt moves, not a measurement.
brine-note-weigh-salt = Weigh the salt: { $cups } may hold { MASS($low_kg) } to { MASS($high_kg) }, by the crystals.
brine-note-without-ice = Without ice: with tap water instead it is at { TEMPERATURE($from_c) } when mixed and takes { $hours } in the refrigerator to { TEMPERATURE(4.44) }; make it the day before, in two pots if you can, and put nothing in until it is that cold.
brine-vessel-line = { $vessel }: { VOLUME($covers_l) } of brine covers it, { MASS($contents_kg) } in all, about { LENGTH($height_mm) } high
brine-note-heavy = { MASS($weight_kg) } is a load for two people: fill the vessel where it will stand.
brine-note-gravy = The drippings will be salty: make the gravy from unsalted neck stock, add drippings to taste, and salt it last.
brine-note-no-added-salt = Roast it as it is, add no salt outside or in, and taste before salting anything that its juices go into.
brine-note-allergens = What goes into brine, butter or dressing (milk, wheat, nuts, soy) is in the bird: tell those who must know.

# What was taken for granted.
brine-assumed-plain = The { $roast } is plain, without added solution and not kosher: check the label.
brine-assumed-strength = The federal strength, { PERCENT($percent) } by weight (3/4 US cup of table salt to a US gallon of water).
brine-assumed-strong = A stronger brine, { PERCENT($percent) } by weight, because the hours are few.
brine-assumed-hours = No published hours for brining { $roast }: those of a turkey, at the same strength.
brine-assumed-vessel = A vessel that just takes it, { VOLUME($needed_l) }; { $vessel } would do.
brine-assumed-vessels = Several vessels, { VOLUME($needed_l) } in all: { $vessels } of the largest common kind, with the brine shared out.
brine-assumed-time = In the brine for { $hours }.

# Parts of sentences.
brine-hours-of = { $asked } ({ $right } will do)
brine-piece = the { MASS($mass_kg) } { $roast }
brine-pieces = { NUMBER($count) } × { $roast } of { MASS($mass_kg) }
brine-hours = { NUMBER($low) }–{ NUMBER($high) } h
brine-hour = { NUMBER($high) } h
brine-salt-weight = { NUMBER($grams) } g ({ NUMBER($ounces, maximumFractionDigits: 1) } oz)
brine-parts = { $first } + { $second }
brine-part-cup = { $amount } US { $many ->
    [0] cup
   *[other] cups
}
brine-part-tbsp = { $amount } tbsp
brine-part-tsp = { $amount } tsp
