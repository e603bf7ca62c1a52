# The roast and how it goes into the oven, as parts of a sentence.
asking-roast = { MASS($kg) } { $roast }
asking-roasts = { $count } { $roast_many } of { MASS($kg) } each
asking-how-unstuffed-thawed = , unstuffed,
asking-how-unstuffed-part-frozen = , part frozen and unstuffed,
asking-how-unstuffed-frozen = , from frozen and unstuffed,
asking-how-stuffed-thawed = , stuffed,
asking-how-stuffed-part-frozen = , part frozen and stuffed,
asking-how-stuffed-frozen = , from frozen and stuffed,
asking-how-plain-thawed = { "" }
asking-how-plain-part-frozen = , part frozen,
asking-how-plain-frozen = , from frozen,
asking-station-breast = deepest breast
asking-station-thigh = inner thigh
asking-station-wing = wing joint
asking-station-stuffing = middle of the stuffing
asking-station-centre = centre
asking-station-leftovers = thickest piece
asking-word-frozen = frozen
asking-word-part_frozen = part frozen
asking-word-thawed = thawed
asking-word-us = pounds and °F
asking-word-metric = kilograms and °C
asking-yes = yes
asking-no = no

# What was taken for granted.
asking-taken-kind = Taken as a { $roast }: no roast was named.
asking-taken-mass = Taken as { MASS($kg) }, a usual size of { $roast }.
asking-taken-mass-for-covers = Taken as { MASS($kg) }, for { $covers } diners.
asking-one-dinner = This is for the first roast alone; ask for the other by itself: “{ $other }”.
asking-taken-hour = No hour was said: taken as served at { CLOCK($at) }.
asking-taken-probe-off = A probe that may be off by { RISE($off_k) } is taken at its worst: { TEMPERATURE($c) }.
asking-taken-noon = No hour was said: taken to be needed by { WHEN($at) }.
asking-taken-thawed = Taken as fully thawed and straight from the refrigerator.
asking-taken-unstuffed = Taken as not stuffed.
asking-taken-oven = Oven taken as { OVEN($c) }.
asking-taken-oven-still = Oven taken as { OVEN($c) }, no fan.
asking-taken-still = Oven taken as a still one, no fan.
asking-taken-table-salt = Salt taken as table salt.
asking-taken-reading-now = Taken as read just now.
asking-taken-place = Taken as read at the { $place }, the slowest place.
asking-corrected = I read “{ $wrote }” as “{ $read }”.

# What a room refuses.
asking-refused-heavy = { MASS($kg) } is more than I can plan one { $roast } for: I work with { MASS($low_kg) } to { MASS($high_kg) } apiece. Is it the unit, or several of them?
asking-refused-light = { MASS($kg) } is less than I can plan one { $roast } for: I work with { MASS($low_kg) } to { MASS($high_kg) } apiece.
asking-refused-no-mass = A weight has to be above zero: nothing lighter can be roasted.
asking-refused-past = { WHEN($at) } has already passed, so there is no plan to make for it.
asking-refused-far = { WHEN($at) } is more than two months away: ask again nearer the day.
asking-refused-time = { WHEN($at) } cannot be met safely in any way I know.
asking-refused-temperature = { TEMPERATURE($c) } is outside what I can answer for.
asking-refused-volume = { VOLUME($litres) } is outside what I can answer for.
asking-refused-covers = I cannot cook for { $count }: say a number of diners from 1 up.
asking-refused-unknown = I do not know “{ $value }”.
asking-refused-value = I cannot work with { $value } here.

# Questions back, and choices to tap.
asking-ask-kind = Which roast is it?
asking-ask-mass = What does it weigh?
asking-ask-serve_at = What time is dinner?
asking-ask-covers = How many are eating?
asking-ask-temperature = Is that °F or °C?
asking-ask-volume = How large is the vessel?
asking-ask-unit = Which unit is that?
asking-ask-target_unit = Into which unit?
asking-ask-amount = How much of what, and into which unit?
asking-ask-scale = From how many servings to how many?
asking-ask-again = What shall I change, or tell you about it?
asking-ask-other = Could you say that once more, with the number and its unit?
asking-ask-roast-and-time = What are you roasting, how heavy is it, and when is dinner?
asking-ask-sold-as = Does the label say plain, injected (“contains up to … solution”) or kosher?
asking-choice-plain = it is plain, not injected
asking-choice-injected = it is injected
asking-choice-kosher = it is kosher, so pre salted
asking-choice-covers = for { $count }
asking-choice-at = dinner at { CLOCK($at) }

# Lines that could come next.
asking-next-plan = { MASS(7.2575, style: "own") } bird, dinner at 6
asking-next-size = turkey for 14 with leftovers, how big?
asking-next-thaw = how long to thaw { MASS(9.979, style: "own") } in the fridge
asking-next-brine = brine for { MASS(8.1647, style: "own") } of turkey
asking-next-doneness = { TEMPERATURE(54.44, style: "own") } in the breast at 4:30, dinner at 6
asking-next-safety = left it out 3 hours
asking-next-convert = 2 cups kosher salt in grams
asking-next-help = help
asking-next-why = why?
asking-next-shown = what do you have so far?
asking-next-start-over = start over
asking-next-assumed = what did you assume?
asking-next-make-it = make it { MASS($kg, style: "own") }
asking-next-stuffed = what if it's stuffed?
asking-next-unstuffed = what if it's not stuffed?
asking-next-frozen = what if it's frozen?
asking-next-at-six = dinner at 6
asking-next-push = push dinner to { CLOCK($at) }
asking-next-how-long = how long does it take?
asking-next-probe = where do I put the probe?
asking-next-early = it's done early
asking-next-hold = how do I keep it warm?
asking-next-carve = how do I carve it?
asking-next-rest = how long does it rest?
asking-next-leftovers = leftovers
asking-next-left-out = left it out 3 hours
asking-next-reheat = how do I reheat it?
asking-next-pink = it's pink
asking-next-frozen-plan = frozen { MASS($kg, style: "own") } { $roast }, dinner tomorrow at 6
asking-next-counter = can I thaw it on the counter?
asking-next-bucket = will it fit a { VOLUME(18.927, style: "own") } bucket?
asking-next-kosher-salt = use coarse kosher salt
asking-next-overnight = brine it overnight
asking-next-brine-plan = brined, dinner tomorrow at 6
asking-next-for = how about for { $count }?
asking-next-with-leftovers = with leftovers
asking-next-without-leftovers = without leftovers
asking-next-when-in = when do I put it in for dinner at 6?
asking-next-in-unit = and in { $unit }?
asking-next-double = double it
asking-next-scale = scale 6 servings to 14

# help, unknown, moves
asking-help-headline = Say what you roast, what it weighs and when dinner is; I work back from there. For example:
asking-help-plan = A timed plan: “{ $example }”
asking-help-size = How big to buy: “{ $example }”
asking-help-thaw = Thawing: “{ $example }”
asking-help-brine = Brine: “{ $example }”
asking-help-doneness = How it is going: “{ $example }”
asking-help-safety = Is it safe: “{ $example }”
asking-help-convert = Amounts: “{ $example }”
asking-unknown-headline = I did not catch that; I plan roast dinners, from shopping to leftovers.
asking-unknown-in-talk = I did not catch that. Your dinner stands as it was.
asking-as-before = No change taken from that: { $answer }
asking-unknown-empty = Ask me about your roast dinner.
asking-started-over = Cleared. What are you roasting, and when is dinner?
asking-assumed-headline = I took { $count ->
    [one] one thing
   *[other] { $count } things
 } for granted; correct any of them with one reply.
asking-assumed-nothing = I took nothing for granted: all of it was said.
asking-shown-headline = This is what I hold of our talk:
asking-shown-nothing = Nothing has been said yet.
asking-shown-said = { $what } (you said so)
asking-shown-assumed = { $what } (assumed)
asking-value-roast-kind = roast: { $value }
asking-value-roast-mass_kg = weight: { MASS($value) }
asking-value-roast-count = how many: { $value }
asking-value-roast-state = state: { $value }
asking-value-roast-stuffed = stuffed: { $value }
asking-value-roast-bone_in = on the bone: { $value }
asking-value-roast-injected = injected: { $value }
asking-value-roast-target_c = wished end temperature: { TEMPERATURE($value) }
asking-value-covers = diners: { $value }
asking-value-leftovers_wanted = leftovers wanted: { $value }
asking-value-serve_at = dinner: { WHEN($value) }
asking-value-start_at = in the oven: { WHEN($value) }
asking-value-oven-temperature_c = oven: { OVEN($value) }
asking-value-oven-convection = fan: { $value }
asking-value-oven-count = ovens: { $value }
asking-value-brine-wanted = brine: { $value }
asking-value-brine-hours = hours in the brine: { $value }
asking-value-brine-water_l = water for the brine: { VOLUME($value) }
asking-value-brine-vessel_l = vessel: { VOLUME($value) }
asking-value-brine-salt_kind = salt: { $value }
asking-value-amount-value = amount: { $value }
asking-value-amount-unit = unit: { $value }
asking-value-amount-item = of: { $value }
asking-value-amount-target_unit = into: { $value }
asking-value-scale-from = servings now: { $value }
asking-value-scale-to = servings wanted: { $value }
asking-value-scale-factor = factor: { $value }
asking-value-reading-temperature_c = reading: { TEMPERATURE($value) }
asking-value-reading-place = read at: { $value }
asking-value-reading-at = read: { WHEN($value) }
asking-value-reading-oven_left_on = oven left on: { $value }
asking-value-elapsed_h = hours gone by: { $value }
asking-value-altitude_m = height above the sea: { $value } m
asking-value-subject = about: { $value }
asking-value-units = units: { $value }

# Done, resting, early
asking-done-bird = Done when the coldest of deepest breast, inner thigh and wing joint, off the bone, reads { TEMPERATURE($c) }.
asking-done-joint = Out when the centre, off the bone, reads { TEMPERATURE($c) }; the safe minimum is { TEMPERATURE($safe_c) }.
asking-rest = Rest it { SPANS($low_min, $high_min) } before carving; it goes on heating meanwhile.
asking-rest-large = Rest a large one like this { SPANS($low_min, $high_min) } before carving; it goes on heating meanwhile.
asking-early-headline = Done early: take it out, tent it loosely with foil for about 30 min, then hold it hot at { TEMPERATURE(60) } or above until dinner.
asking-early-hold = To hold: oven at its lowest that keeps the meat at { TEMPERATURE(60) }, covered, a cup of stock in the pan; whole holds juicier than sliced.
asking-early-carved = For a long wait, carve it, fan the slices in a shallow pan with hot stock, cover tightly, hold at { TEMPERATURE(60) }.
asking-early-clock = Not held hot, the two-hour clock runs from the moment it leaves the oven.
asking-hold-until = Hold it hot until { CLOCK($serve_at) }: tented about 30 min, then covered in the lowest oven that keeps it at { TEMPERATURE(60) } or above. Not held hot, it is eaten or chilled by { CLOCK($by) }.
asking-hold-until-asked = Yes, if it is held hot: tented about 30 min, then covered in the lowest oven that keeps it at { TEMPERATURE(60) } or above until { CLOCK($serve_at) }. Not held hot, it is eaten or chilled by { CLOCK($by) }.
asking-why-early = A tented whole bird stays hot for about half an hour (common practice, no source); after that only heat keeps it above { TEMPERATURE(60) }.

# roast_time
asking-roast_time-headline = { $roast }{ $how } at { OVEN($oven_c) }: { SPANS($low_min, $high_min) }. Start checking at { SPAN($check_min) }; the thermometer decides.
asking-roast_time-clock = { $roast }{ $how } in { WHEN($start_at, style: "at") }: ready { CLOCK($low_at) } to { CLOCK($high_at) }. Start checking at { CLOCK($check_at) }; the thermometer decides.
asking-roast_time-frozen = From frozen, half as long again or more: giblets out once they come loose, salt and butter only when the skin has thawed.
asking-roast_time-advice = Put it in by the later side of the window: an early roast can be held hot, a late one cannot be hurried.
asking-why-ensemble = { $members } computed roasts, each with another oven, shape and starting cold, reach { TEMPERATURE($c) } at the { $station } between { SPAN($low_min) } (one in ten) and { SPAN($high_min) } (nine in ten); the middle one in { SPAN($middle_min) }.
asking-why-spread = What nobody can know beforehand makes the window: how far the oven is off, how the air moves in it, how fast the skin dries, how cold the roast starts.
asking-why-calibration-measured = The model is set to birds that were measured in a test oven and reaches over to the federal chart, which runs slower; the window spans both.
asking-why-calibration-chart = The model is set to the federal roasting chart for this roast.
asking-why-calibration-shape-only = For this roast there is no measured time to set the model to: shape and composition only, so the window is wider.
asking-why-loss = It gives up { PERCENT($low) } to { PERCENT($high) } of its weight in juice and fat on the way.
asking-why-safe = The safe minimum for it is { TEMPERATURE($c) }, and only a reading proves it, never the model.
asking-why-source = Source: { $source }.
asking-why-sources = Sources: { $sources }{ $more ->
    [0] .
   *[other] ; and { $more } more.
 }

# thaw
asking-thaw-refrigerator = { $roast }: { SPANS($low_min, $high_min) } in the refrigerator, on a tray, in its wrapper.
asking-thaw-cold-water = In cold water: up to { SPAN($plan_min, style: "rough") }, in a leak-proof bag, fresh water every 30 min, cooked at once.
asking-thaw-cold-water-rule = In cold water: { SPAN($rule_min, style: "rough") } (30 min a pound, about an hour a kilo), in a leak-proof bag, fresh water every 30 min, cooked at once.
asking-thaw-cold-water-longer = In cold water: 30 min a pound (an hour a kilo) makes { SPAN($rule_min, style: "rough") }, computed it may take up to { SPAN($plan_min, style: "rough") }; in a leak-proof bag, fresh water every 30 min, cooked at once.
asking-thaw-from-frozen = It may be roasted from frozen, unstuffed, at { OVEN($oven_c) }: half as long again or more, { SPANS($low_min, $high_min) } computed.
asking-thaw-hurried = Still frozen: cold water, 30 min a pound (an hour a kilo), changed every half hour, then cook at once; or roast it from frozen, unstuffed, half as long again or more.
asking-thaw-keeps = Thawed in the refrigerator it keeps 1 to 2 days more before it has to be cooked (red meat 3 to 5).
asking-thaw-licensed = In a licensed kitchen cold water may not do: the outside is above { TEMPERATURE(5) } for up to { SPAN($hours_min, style: "rough") }, and 4 h is the limit.
asking-why-thaw-refrigerator = Computed for the refrigerator: { SPANS($low_min, $high_min) }; planned with { SPAN($plan_min, style: "rough") }.
asking-why-thaw-cold-water = Computed for cold water: { SPANS($low_min, $high_min) }; planned with { SPAN($plan_min, style: "rough") }.
asking-why-thaw-rule = The federal rule for it: { SPANS($low_min, $high_min) } (Let's Talk Turkey; The Big Thaw).
asking-why-thaw-safer = Where model and rule differ the longer is planned with.

# brine
asking-brine-dry-or-wet = Dry is simpler and crisps the skin: no vessel, but a day or two in the cold. In water it is quicker and keeps more juice, some of it the water (common practice, no source).
asking-brine-per-gallon = { PERCENT($percent) } salt by weight: ¾ cup table salt a gallon, { $grams } g a litre; weigh it if you can.
asking-brine-strength = { PERCENT($percent) } salt by weight, { $grams } g a litre; weigh it if you can.
asking-brine-make = Dissolve the salt in { VOLUME($hot_l) } of boiling water, pour it over { MASS($ice_kg) } of ice and { VOLUME($water_l) } of cold water: about { TEMPERATURE($brine_c) }.
asking-brine-per-mass = { NUMBER($grams, maximumFractionDigits: 1) } g of salt a pound ({ NUMBER($per_kg, maximumFractionDigits: 0) } g a kilo), about { NUMBER($spoons, maximumFractionDigits: 1) } tsp of { $salt } a pound.
asking-why-brine-cover = { VOLUME($cover_l) } covers the bird in a vessel of its shape; the bird itself takes the place of { VOLUME($displaced_l) }.

# carve
asking-carve-bird = Rest the { $roast } first; then string off, legs off at the joint, breasts off whole and sliced across, thigh meat picked in large pieces.
asking-carve-joint = Rest the { $roast } first, then slice it across the grain with a long sharp knife.
asking-carve-bird-how = Legs first, at the joint; then down along the breastbone, each breast off whole; wings last (common practice, no source).
asking-carve-joint-how = Bones off in one piece, string off, even slices across the grain; the juices go into the gravy (common practice, no source).
asking-carve-board = A clean board and knife, never the raw one; carve when they sit down, what is left is chilled within 2 h.
asking-why-rest = A rest evens out the heat inside, and the coldest places still rise; cut at once, more juice stays on the board.
asking-why-yield = Yields by the federal nutrient tables (SR28, per pound ready to cook).

# leftovers
asking-leftovers-headline = Within 2 h of leaving the heat: off the bone, sliced, into shallow covered boxes, into the refrigerator; eat within 3–4 days, reheated to { TEMPERATURE(73.9) }.
asking-leftovers-but-stood = What stood out { SPAN($minutes) }: throw it away. What went into the refrigerator within 2 h: eat it within 3–4 days.
asking-leftovers-keep = Cold leftovers keep 3–4 days in the refrigerator at { TEMPERATURE(4.44) } or below.
asking-leftovers-keep-licensed = Date-marked at { TEMPERATURE(5) } or below they may be kept 7 days, the day of cooking being day 1; at home 3–4 days.
asking-leftovers-reheat = Reheat to { TEMPERATURE(73.9) } all through, covered and moistened with stock; bring gravy to a boil.
asking-leftovers-freeze = Or freeze them within 3–4 days: safe for as long as they stay frozen, best within 2 to 6 months.
asking-leftovers-two-stage = A licensed kitchen cools from { TEMPERATURE(57.2) } to { TEMPERATURE(21.1) } within 2 h and to { TEMPERATURE(5) } within 6 h in all.
asking-leftovers-bones = Carcass and neck make stock: into the pot or into the cold within the same 2 h.
asking-why-leftovers = Between { TEMPERATURE(4.44) } and { TEMPERATURE(60) } germs can double in some 20 minutes; 2 h is the federal limit, 1 h above { TEMPERATURE(32.2) } (Leftovers and Food Safety).
asking-why-shallow = A whole bird cools for many hours in the middle; slices in a shallow box take a fraction of that.

# doneness
asking-doneness-when-bird = It is out when the coldest place reads { TEMPERATURE($c) }: deepest breast, inner thigh and wing joint, off the bone.
asking-doneness-when-joint = The { $roast } is out when its centre reads { TEMPERATURE($c) }, off the bone{ $is_safe ->
    [yes] {""}
   *[no] ; safe from { TEMPERATURE($safe_c) }
 }.
asking-doneness-probe-bird = Three places: the deepest breast, the inner thigh and the wing joint, tip off the bone; the coldest counts, and { TEMPERATURE($c) } there is done.
asking-doneness-probe-joint = Into the centre of the thickest part, tip off bone and fat, from the side; the coldest spot counts, and { TEMPERATURE($safe_c) } there is safe.
asking-doneness-stuffed = Stuffed: the middle of the stuffing has to read { TEMPERATURE(73.9) } too, before it leaves the oven.
asking-doneness-unmeasured = There is no sure way without a thermometer: colour, juices and hours prove nothing. Borrow or buy one, the cheapest will do; the centre must read { TEMPERATURE($safe_c) }.
asking-doneness-till-then = Until then leave it in past the late end of its time: too long is dry, too short may make somebody ill.
asking-doneness-stall = It stalls, which is usual there: what evaporates cools it as fast as the oven heats it, for hours at times. Wait, or wrap it tightly in foil to get past (common practice, no source).
asking-safety-holds-how-long = As long as every part stays at { TEMPERATURE(60) } or above, measured every hour; once below, 2 h in all, then it is thrown away.
asking-doneness-signs = Colour, clear juices and a pop-up button prove nothing; a thermometer does.
asking-dial-cold = Your oven runs { RISE($off_k) } cold: set its dial to { TEMPERATURE($dial_c) } for { TEMPERATURE($c) }.
asking-dial-hot = Your oven runs { RISE($off_k) } hot: set its dial to { TEMPERATURE($dial_c) } for { TEMPERATURE($c) }.
asking-doneness-late = Running late: keep the oven shut, turn it up by { RISE(14) }, and take legs off the body if need be; never serve it below { TEMPERATURE($c) }.
asking-why-coldest = Heat reaches the deep places last; what lags decides, so the coldest reading is the only one that counts.
asking-doneness-ready = { TEMPERATURE($c) } at the { $place } at { CLOCK($at) }: ready { CLOCK($low_at) } to { CLOCK($high_at) }, in { SPANS($low_min, $high_min) }. Start checking at { CLOCK($check_at) }; out at { TEMPERATURE($pull_c) }.
asking-doneness-done = { TEMPERATURE($c) } at the { $place }: done there; out if every other place reads { TEMPERATURE($pull_c) } too.
asking-doneness-others = Read the other places before it leaves the oven; the coldest counts.
asking-doneness-unexpected = No computed roast read that at that time: check where the probe sits and what the oven really does.
asking-doneness-on-time = Dinner at { CLOCK($serve_at) } holds: { SPAN($rest_min) } rest and { SPAN($carve_min) } to carve are in.
asking-doneness-early = About { SPAN($spare_min, style: "rough") } in hand before { CLOCK($serve_at) }, rest and carving counted: once done tent it, then hold it hot at { TEMPERATURE(60) }.
asking-doneness-maybe-late = Dinner at { CLOCK($serve_at) } is tight: with { SPAN($rest_min) } rest and { SPAN($carve_min) } to carve it is on the table between { CLOCK($low_at) } and { CLOCK($high_at) }.
asking-doneness-will-be-late = Dinner at { CLOCK($serve_at) } will be late: with { SPAN($rest_min) } rest and { SPAN($carve_min) } to carve it is on the table between { CLOCK($low_at) } and { CLOCK($high_at) }.
asking-why-placed = The reading is laid on { $members } computed roasts; those that read as yours did at that time tell what is left.
asking-next-late = it's running late

# plan
asking-plan-first = First, { WHEN($at) }: { $title }.
asking-plan-ready = Expected ready { CLOCK($low_at) } to { CLOCK($high_at) }: out when the coldest place reads { TEMPERATURE($c) }.
asking-plan-task = { WHEN($at) }: { $title }.
asking-plan-by = By about { WHEN($at) }: { $title }.
asking-plan-hold = { $title }.
asking-plan-way = Or: { $title }. { $why }
asking-plan-why = { $title }: { $why }

# convert
asking-amount-g = { NUMBER($value, maximumFractionDigits: 2) } g
asking-amount-kg = { NUMBER($value, maximumFractionDigits: 3) } kg
asking-amount-oz = { NUMBER($value, maximumFractionDigits: 2) } oz
asking-amount-lb = { NUMBER($value, maximumFractionDigits: 2) } lb
asking-amount-mL = { NUMBER($value, maximumFractionDigits: 1) } mL
asking-amount-L = { NUMBER($value, maximumFractionDigits: 2) } L
asking-amount-tsp = { NUMBER($value, maximumFractionDigits: 2) } tsp
asking-amount-tbsp = { NUMBER($value, maximumFractionDigits: 2) } tbsp
asking-amount-cup = { NUMBER($value, maximumFractionDigits: 2) } { $value ->
    [one] cup
   *[other] cups
 }
asking-amount-floz = { NUMBER($value, maximumFractionDigits: 1) } fl oz
asking-amount-pint = { NUMBER($value, maximumFractionDigits: 2) } { $value ->
    [one] pint
   *[other] pints
 }
asking-amount-quart = { NUMBER($value, maximumFractionDigits: 2) } { $value ->
    [one] quart
   *[other] quarts
 }
asking-amount-gal = { NUMBER($value, maximumFractionDigits: 2) } { $value ->
    [one] gallon
   *[other] gallons
 }
asking-amount-degC = { NUMBER($value, maximumFractionDigits: 0) } °C
asking-amount-degF = { NUMBER($value, maximumFractionDigits: 0) } °F
asking-amount-gas_mark = gas mark { NUMBER($value, maximumFractionDigits: 2) }
asking-amount-cm = { NUMBER($value, maximumFractionDigits: 1) } cm
asking-amount-in = { NUMBER($value, maximumFractionDigits: 2) } in
asking-amount-of = { $amount } of { $item }
asking-unit-g = grams
asking-unit-kg = kilograms
asking-unit-oz = ounces
asking-unit-lb = pounds
asking-unit-mL = milliliters
asking-unit-L = liters
asking-unit-tsp = teaspoons
asking-unit-tbsp = tablespoons
asking-unit-cup = cups
asking-unit-floz = fluid ounces
asking-unit-pint = pints
asking-unit-quart = quarts
asking-unit-gal = gallons
asking-unit-degC = Celsius
asking-unit-degF = Fahrenheit
asking-unit-gas_mark = gas mark
asking-unit-cm = centimeters
asking-unit-in = inches
asking-convert-exact = { $given } = { $found }
asking-convert-about = { $given } ≈ { $found }
asking-convert-between = { $given } ≈ { $found } ({ NUMBER($low, maximumFractionDigits: 2) }–{ NUMBER($high, maximumFractionDigits: 2) })
asking-convert-range = { $given } ≈ { NUMBER($low, maximumFractionDigits: 2) }–{ $found }, by the kind: weigh it.
asking-convert-kind = { $kind }: { NUMBER($low, maximumFractionDigits: 2) }–{ $found }
asking-convert-fan = { $fan ->
    [yes] { OVEN($given_c) } without a fan ≈ { OVEN($c) } with the fan.
   *[no] { OVEN($given_c) } with the fan ≈ { OVEN($c) } in an oven without one.
}
asking-convert-fan-gas = { OVEN($given_c) } with the fan ≈ gas mark { NUMBER($mark, maximumFractionDigits: 2) }, for a gas oven has none.
asking-convert-fan-check = Makers and ovens differ by a few degrees: start checking early, and let the thermometer decide.
asking-why-fan = Moving air brings the heat in faster, so the dial stands { RISE($rise_k) } lower for the same roast.
asking-convert-incomplete = I need an amount and its unit, like “2 cups flour in grams”.
asking-taken-metric-cups = Cups and spoons are taken as metric ones: a cup is 250 mL, a tablespoon { $region ->
    [AU] 20
   *[other] 15
 } mL.
asking-taken-imperial = Pints, gallons and fluid ounces are taken as imperial: a pint is 568 mL (a US pint is 473 mL).
asking-next-convert-oven = { OVEN(176.67, style: "own") } in gas mark
asking-why-exact = Both units are defined by one another; the figure is exact, then rounded to what a kitchen measures.
asking-why-measured = Volume to weight rests on published household measures; how it is filled, sifted or packed makes the range.
asking-refused-negative = { $value } is below zero: there is no such amount.
asking-refused-food = I have no published weight for “{ $value }”. Call it by its plain name, like “kosher salt” or “bread flour”.
asking-refused-item = I have no published weight for “{ $value }”; the nearest I know: { $known }.
asking-refused-which-item = A cup of flour and a cup of honey do not weigh the same: I need to know of what.
asking-ask-item = Of what?

# safety
asking-safety-finding = { $seen } { $action }
asking-safety-unknown = What was not said is taken at its less safe value.
asking-safety-why = { $reason } ({ $citation })
asking-safety-stuffing = Bake the dressing apart; inside the bird only if its middle reads { TEMPERATURE(73.9) } before it leaves the oven.
asking-safety-stuffing-degrees = { TEMPERATURE(73.9) } in the middle of the stuffing, in the bird or in a dish, before it leaves the oven.
asking-safety-stuffing_mixed = Dry and wet parts may be made the day before and kept apart in the refrigerator; mix them just before the stuffing goes into the bird or the oven. Never stuff the bird ahead.
asking-safety-water_unchanged = Water that is not changed every 30 min warms up. If any part has been above { TEMPERATURE(4.44) } for over 2 h, or nobody knows, throw it away; else into fresh cold water, and cook it at once.
asking-safety-pink = Colour proves nothing, nor does a pop-up button: { TEMPERATURE(73.9) } at the coldest place of a bird does.
asking-safety-stuffing-how = Inside: moist, loose, about ¾ cup a pound, warm, just before roasting; by then the meat reads { TEMPERATURE(80) } or so and is drier (common practice, no source).
asking-next-refreeze = can I refreeze it?

# size
asking-size-eaters = the { $eaters } of { $covers } who eat it
asking-size-headline = About { MASS($kg) } of { $roast } for { $covers }; { MASS($more_kg) } if you want leftovers.
asking-size-headline-leftovers = About { MASS($more_kg) } of { $roast } for { $covers } with leftovers; { MASS($kg) } without.
asking-size-headline-none = About { MASS($kg) } of { $roast } for { $covers }, with nothing to spare.
asking-size-headline-either = About { MASS($kg) } of { $roast } for { $covers }, and that leaves some over.
asking-size-with-leftovers = With leftovers it takes about { MASS($kg) }.
asking-size-several = That is more than one: { $count } × { MASS($each_kg) }.
asking-size-feeds = { $roast } feeds about { $plain }, or { $more } with leftovers.
asking-size-unknown = Count { MASS(0.4536) } of whole bird a head, half as much again for leftovers.
asking-why-size = { MASS($per_kg) } raw a head, { MASS($more_per_kg) } with leftovers (Let's Talk Turkey; the leftovers are common practice, no source).

# scale
asking-scale-headline = { $how }.
asking-scale-servings = From { NUMBER($from, maximumFractionDigits: 1) } to { NUMBER($to, maximumFractionDigits: 1) } servings: { $how }.
asking-scale-multiply = multiply every amount by { NUMBER($factor, maximumFractionDigits: 3) }
asking-scale-divide = divide every amount by { NUMBER($by, maximumFractionDigits: 1) }
asking-scale-amount = { $given } × { NUMBER($factor, maximumFractionDigits: 2) } = { $found }
asking-scale-short = Divide the { $there } of { $item } by what the recipe asks for, and take that part of everything else.
asking-ask-needed = How much { $item } does the recipe ask for?
asking-scale-not-linear = Not in step: salt, strong spices and thickeners (start at three quarters of the increase and taste), leavening, liquids that boil away in a wide pan.
asking-scale-time = Time follows thickness, not weight: a pan filled as deep takes as long, two pans may need a turn.
asking-scale-incomplete = Tell me from how many servings to how many, or by what factor.
asking-why-scale = The factor method: wanted servings over servings now, on weights (TM 10-412); what does not follow it is common practice, no source.

asking-brine-ratio = ¾ cup table salt a gallon of water ({ $grams } g a litre, { PERCENT($percent) } by weight), { NUMBER($low, maximumFractionDigits: 0) }–{ NUMBER($high, maximumFractionDigits: 0) } h, kept at { TEMPERATURE(4.44) } or below.
asking-why-brine-strength = { PERCENT($percent) } of salt in the brine by weight; the federal strength is ¾ cup table salt a gallon for 8 to 48 h (Poultry: Basting, Brining, and Marinating).
asking-why-brine-none = A bird sold injected, self-basted or kosher carries its salt; more makes it too salty to eat.
asking-size-half = About half of a whole bird is edible: { MASS($meat_kg) } of carved meat, { $servings } servings of { MASS($serving_kg) }.
asking-size-meat = That carves to { MASS($meat_kg) }, { $servings } servings of { MASS($serving_kg) }.
asking-carve-amount = { $roast } gives about { MASS($kg) } of carved meat, some { $servings } plates.
asking-done-joint-rising = Out when the centre, off the bone, reads { TEMPERATURE($c) }; resting takes it to about { TEMPERATURE($target_c) }.
asking-why-placed-untimed = Without the hour it went in, each of { $members } computed roasts is taken from the moment it reads the same; what it still needs from there makes the window.
asking-choice-when = dinner { WHEN($at) }
asking-safety-warm_holding = Keep it at { TEMPERATURE(60) } or above: tented with foil for the first half hour, then covered in the lowest oven that holds it there, a cup of stock in the pan; measure it every hour.
asking-size-enough = { $roast } is enough for { $covers }: it takes about { MASS($need_kg) }.
asking-size-short = { $roast } is short for { $covers } by about { MASS($short_kg) }: it takes { MASS($need_kg) }, so { $pieces }.
asking-line = { $text }
asking-scale-recipe = { $name }, times { NUMBER($factor, maximumFractionDigits: 2) }:
asking-scale-recipe-servings = { $name }, for { NUMBER($servings, maximumFractionDigits: 1) } (times { NUMBER($factor, maximumFractionDigits: 2) }, from { NUMBER($base, maximumFractionDigits: 1) }):
asking-next-scale-gravy = scale the gravy to 20
asking-next-half = halve it
asking-dish-gravy = gravy
asking-dish-dressing = dressing
asking-dish-potatoes = potatoes
asking-dish-cranberry = cranberry sauce
asking-dish-greens = greens
asking-dish-carrots = carrots
asking-size-side-volume = { $dish } for { $covers }: { VOLUME($low) } to { VOLUME($high) }.
asking-size-side-mass = { $dish } for { $covers }: { MASS($low) } to { MASS($high) } raw.
asking-size-side-pieces = { $dish } for { $covers }: { $low } to { $high }.
asking-size-side-volume-about = { $dish } for { $covers }: about { VOLUME($low) }.
asking-size-side-mass-about = { $dish } for { $covers }: about { MASS($low) } raw.
asking-size-side-pieces-about = { $dish } for { $covers }: { $low }.
asking-size-side-recipe = For a recipe of it in that size: “scale the { $dish } to { $covers }”.
asking-scale-your-recipe = your recipe
asking-doneness-resting-done = { TEMPERATURE($c) } at the { $place }, out of the oven: done there; check the other places for { TEMPERATURE($safe_c) }, then let it rest.
asking-doneness-resting-rising = { TEMPERATURE($c) } at the { $place }, out of the oven: it may rise another { RISE($rise_k) } by itself; measure again in 10 and 20 min, and below { TEMPERATURE($safe_c) } it goes back in.
asking-doneness-resting-back = { TEMPERATURE($c) } at the { $place } is too low to rest: it rises only about { RISE($rise_k) } by itself. Back into the hot oven until it reads { TEMPERATURE($safe_c) }.
asking-why-rise = { $members } computed roasts taken out at { TEMPERATURE($c) } rise { RISE($rise_k) } there in the middle of the window; what counts is what you measure.
asking-taken-bird-target = { TEMPERATURE($wished_c) } is too low for a bird: reckoned to { TEMPERATURE($c) } instead.
asking-carve-rise = The coldest place still rises about { RISE($low_k) } to { RISE($high_k) } in the rest.
asking-safety-spoiled = An off smell, slime or a swollen pack: throw it away, taste nothing; cooking does not make it safe.
asking-doneness-pull = { TEMPERATURE($c) } at the { $place }: take it out now (from { TEMPERATURE($pull_c) } on); resting takes it to about { TEMPERATURE($target_c) } or more.
asking-doneness-reached = { TEMPERATURE($c) } at the { $place }: { TEMPERATURE($pull_c) } is reached, take it out now.
asking-thaw-enough = { SPAN($given_min) } should do: up to { SPAN($plan_min, style: "rough") } is planned for it. Feel the cavity for ice.
asking-thaw-not-enough = { SPAN($given_min) } may not be enough: up to { SPAN($plan_min, style: "rough") } is planned for it.

# The dangers that are answered first
asking-safety-too-rare = { TEMPERATURE($c) } is too rare to be safe: cook on to { TEMPERATURE(62.78) }. Only the code’s time table goes lower: every part held at { TEMPERATURE(54.44) } for { SPAN($table_min) }, measured.
asking-safety-back = Not safe yet: { TEMPERATURE($c) }, and a bird must read { TEMPERATURE(73.9) } in its coldest place before it is carved. It may rise as it rests: read it again in 10 min, and if it is still below, back into the oven.
asking-safety-oven-on-again = Oven back on now, { OVEN($oven_c) }: it reads { TEMPERATURE($c) } and must read { TEMPERATURE(73.9) } in its coldest place before it comes out; dinner is later by the time it was off, and somewhat more. Off for over 2 h and below { TEMPERATURE(60) }: throw it away.
asking-safety-if-raw = That is for cooked food: raw poultry keeps 1 to 2 days only.
asking-safety-refreeze = Yes, if it thawed in the refrigerator and was out of it no more than 2 h; what thawed in water, in a microwave or nobody knows how is cooked first.
asking-safety-thaw_place-warm = No: { TEMPERATURE($c) } is too warm to thaw in. Into the refrigerator with it now; if its outside has been above { TEMPERATURE(4.44) } for over 2 h, throw it away.
asking-safety-thaw_place-cold = { TEMPERATURE($c) } is cold enough, as long as it stays at { TEMPERATURE(4.44) } or below: measure it morning and evening; the refrigerator is surer.
asking-safety-thaw_place-unmeasured = No, not there: thaw it in the refrigerator. Only a place that stays at { TEMPERATURE(4.44) } or below, measured, is cold enough; what thawed where it is warmer for over 2 h, or where nobody knows, is thrown away.
asking-safety-hot-water = No, not in warm water: it warms the outside while the middle is ice. Into the refrigerator or cold water with it now; if it was over 2 h, or nobody knows, throw it away.
asking-safety-brine_reuse = No: used brine and marinade hold raw juices. Throw them away and mix fresh.
asking-safety-clock-starts = From when it falls below { TEMPERATURE(60) }, so from the oven, not from the carving: 2 h in all, 1 h above { TEMPERATURE(32.22) }.
asking-safety-rests-how-long = Until it nears { TEMPERATURE(60) }: then keep it at that or above. Not kept hot, it is eaten or chilled within 2 h of the oven.
asking-safety-at-risk = No: for anyone small, pregnant, old or ill it must read { TEMPERATURE($needed_c) }, not { TEMPERATURE($temperature_c) }.
asking-carve-when-safe = Before it is carved its centre must read { TEMPERATURE($safe_c) }, measured; if not, back into the oven.
asking-carve-below-safe = { TEMPERATURE($c) } is below the safe minimum of { TEMPERATURE($safe_c) }: not for children, pregnant, old or ill guests.
asking-tender = Safe at { TEMPERATURE($safe_c) }, but firm, for slicing; to pull it apart take it slowly to { TEMPERATURE($pulled_c) } or so (common practice, no source).

# Brine: is it right?
asking-brine-longest = No longer than { NUMBER($high, maximumFractionDigits: 0) } h{ $method ->
    [dry] {""}
   *[other] {" "}at ¾ cup table salt a gallon
 }; { NUMBER($low, maximumFractionDigits: 0) } h is enough. Longer is too salty, and two days is the most for raw meat.
asking-brine-label-first = Read the label first: not if it says solution added, injected, self-basted or kosher, it is salted already. A plain bird may be.
asking-brine-enough = Yes, { SPAN($hours_min) } is enough: { NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) } h at this strength.
asking-brine-not-too-long = No, { SPAN($hours_min) } is not too long: { NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) } h at this strength.
asking-brine-too-long = Too long: { SPAN($hours_min) } makes it too salty at this strength; { NUMBER($high, maximumFractionDigits: 0) } h at most.
asking-brine-too-short = { SPAN($hours_min) } is too short: { NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) } h at this strength.
asking-brine-over-two-days-bird = Too long: two days at most, in the refrigerator. If it has been in longer, throw it away: raw poultry keeps no longer.
asking-brine-over-two-days-joint = Too long: two days in a brine at most, in the refrigerator.
asking-brine-done = { SPAN($hours_min) } is right ({ NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) } h): take it out, let it drip, pat it dry; no more salt, or only lightly.
asking-brine-after = Dry the skin uncovered on the lowest shelf of the refrigerator; pour the brine away, wash and sanitize what it touched.
asking-taken-brined = Taken as brined already: no more salt on it, or only lightly.

# A reading that is old, a roast that is not in yet
asking-doneness-overdue = { TEMPERATURE($c) } at the { $place } at { CLOCK($at) }: it was due by { CLOCK($high_at) }. Read it again now; out at { TEMPERATURE($pull_c) }.
asking-doneness-due = { TEMPERATURE($c) } at the { $place } at { CLOCK($at) }: due { CLOCK($low_at) } to { CLOCK($high_at) }, so read it again now; out at { TEMPERATURE($pull_c) }.
asking-taken-not-in-yet = { WHEN($start_at) } is still to come: reckoned from the reading alone.
asking-refused-hours = Those times do not fit together: it cannot be read before it goes in.
asking-ask-when-in = When did it go in?

# Thawed in time?
asking-thaw-by-day-yes-late = No, not too late: in the refrigerator now, it is thawed by { WHEN($high_at) }, in time for { WHEN($by) }.
asking-thaw-by-day-maybe-late = Perhaps too late: in the refrigerator now, it is thawed between { WHEN($low_at) } and { WHEN($high_at) }; do not count on { WHEN($by) }.
asking-thaw-by-day-no-late = Yes, too late for the refrigerator: it is thawed { WHEN($low_at) } at the earliest, after { WHEN($by) }.
asking-too-late = Yes, too late. { $plan }
asking-in-time = No, there is time. { $plan }
asking-thaw-by-day-yes = Yes: in the refrigerator now, it is thawed by { WHEN($high_at) }, in time for { WHEN($by) }.
asking-thaw-by-day-maybe = Maybe: in the refrigerator now, it is thawed between { WHEN($low_at) } and { WHEN($high_at) }; do not count on { WHEN($by) }.
asking-thaw-by-day-no = No: in the refrigerator now, it is thawed { WHEN($low_at) } at the earliest, too late for { WHEN($by) }.
asking-thaw-in-time-yes = Yes: it thaws in time; the refrigerator takes { SPANS($low_min, $high_min) }.
asking-thaw-in-time-no = No: the refrigerator takes { SPANS($low_min, $high_min) }.
asking-thaw-not-overnight = Not overnight: the water must be changed every 30 min and the bird cooked at once. Overnight, use the refrigerator.

# Asked again, with lines to tap
asking-ask-oven = What is the oven set to?
asking-ask-reading = What does the thermometer read?
asking-choice-mass = it weighs { MASS($kg, style: "own") }
asking-choice-oven = oven at { OVEN($c, style: "own") }
asking-choice-reading = it reads { TEMPERATURE($c, style: "own") }
asking-thanked = You’re welcome. Enjoy the dinner!
asking-size-a-little-short = { $roast } is a little short for { $covers }, by about { MASS($short_kg) } of { MASS($need_kg) }: a breast or some legs beside it make up for that, or carve smaller portions.
asking-size-pieces = { $covers } diners take { MASS($need_kg) }: { $pieces }.
asking-next-standing = how long can it sit out?
asking-next-keeps = how long do leftovers keep?
asking-next-freeze = can I freeze the leftovers?
asking-next-too-long = is 3 days too long in brine?
asking-next-frozen-how-long = how long from frozen?
asking-next-brined-plan = it's brined already, dinner at 6
asking-next-doneness-joint = { TEMPERATURE(48.89, style: "own") } in the centre at 4:30, dinner at 6

# Several roasts

# Short answers about safety
asking-safety-standing = 2 h in all, 1 h above { TEMPERATURE(32.22) }: by then it is in the refrigerator, or it is thrown away.
asking-safety-slow-cooker = No, not in a slow cooker: oven, stove or microwave, to { TEMPERATURE(73.9) } within 2 h; then a hot slow cooker may keep it warm.
asking-safety-stuffed_ahead = No stuffing ahead. If it is done: throw the stuffing away, roast the bird unstuffed, bake fresh stuffing apart; out of the cold for over 2 h, throw both away.
asking-safety-partial_cooking = No, not half now and half later: cook it through in one go. What is half-cooked and has cooled is thrown away.
asking-safety-thawed_on_counter = No, never on the counter: in the refrigerator, or in cold water changed every 30 min. What has been out for over 2 h is thrown away.
asking-safety-hot-day = { SPAN($minutes) } is too long on a day above { TEMPERATURE(32.22) }, in a hot car or in the sun: throw it away. Where it stayed cooler, 2 h is the limit: into the refrigerator now.
asking-plan-too-rare = { TEMPERATURE($c) } is below the safe minimum, so this is planned to { TEMPERATURE($safe_c) }: { $plan }
asking-safety-target-bird = { TEMPERATURE($c) }, measured, in the coldest of deepest breast, inner thigh and wing joint.
asking-safety-target = { TEMPERATURE($c) }, measured in the middle of the thickest part, off the bone.
asking-safety-time_control = 4 h in all, marked with the time, under a written procedure; what is left then is thrown away. Without one, 2 h.
asking-taken-cut = Taken as { $roast }: which cut was not said.
asking-convert-dial = { $given } ≈ { $found } on an oven dial ({ $exact } to the degree)
asking-safety-target-pink = Yes, if the middle read { TEMPERATURE($c) } and it rested 3 min: a whole piece may be pink. Not measured, or less: back into the oven.
asking-safety-target-any = { TEMPERATURE(62.78) } for whole beef, lamb, veal and pork, { TEMPERATURE(71.1) } for ground meat, { TEMPERATURE(73.9) } for poultry and stuffing, measured.
asking-safety-cold-enough = { TEMPERATURE($c) } is cold enough: { TEMPERATURE(4.44) } or below.
asking-refused-together = Those two do not go together, so I plan nothing for them.
asking-safety-slow-oven = No: { OVEN($c) } is too slow an oven. Set it to { OVEN(162.78) } or more.
asking-safety-holds = Only once it has read { TEMPERATURE($cooked_c) } everywhere: then { TEMPERATURE($c) } holds it, it does not cook it. { $action }
asking-safety-enough = { TEMPERATURE($c) } is enough. { $action }
asking-safety-washed = No: washing raw poultry or meat spreads its germs. Pat it dry with paper, then clean and sanitize what it touched.
asking-safety-thawed_keeps = Raw poultry keeps 2 days at most in the refrigerator, in a brine or out of it (red meat 3 to 5). After that throw it away.
asking-leftovers-freeze-yes = Yes, into the freezer within 3–4 days: safe for as long as it stays frozen, best within 2 to 6 months.
asking-leftovers-freeze-long = In the freezer it is safe for as long as it stays frozen, best within 2 to 6 months; freeze it within 3–4 days.
asking-carve-breast = Rest it first; then cut each side off the breastbone whole and slice it across the grain.
asking-carve-breast-how = Down along the breastbone, each breast off whole, then even slices (common practice, no source).
asking-plan-other = Not as wished, but this way: { $way }. { $plan }
asking-plan-later = Dinner { WHEN($wished, style: "at") } cannot be met. The soonest that is done and safe: { $plan }
asking-under-way-due = In since { WHEN($start_at) }: due { CLOCK($low_at) } to { CLOCK($high_at) }, so read the thermometer now; out at { TEMPERATURE($c) }.
asking-under-way-overdue = In since { WHEN($start_at) }: it was due by { CLOCK($high_at) }. Read the thermometer now; out at { TEMPERATURE($c) }, not before.
asking-taken-to-pull = Taken as meant to be pulled apart, from { TEMPERATURE($c) }: past { TEMPERATURE($safe_c) } it is safe, and firm.
asking-compared-stuffed = Unstuffed it takes { SPANS($low_min, $high_min) }: stuffing makes it about { SPAN($more_min, style: "rough") } longer.
asking-compared-frozen = Thawed it takes { SPANS($low_min, $high_min) }: the ice makes it about { SPAN($more_min, style: "rough") } longer.
asking-compared-flat = Whole it takes { SPANS($low_min, $high_min) }: flattened it is about { SPAN($more_min, style: "rough") } quicker.
asking-compared-count = One alone takes { SPANS($low_min, $high_min) }: { $count } together take about { SPAN($more_min, style: "rough") } longer, with air between them, and not { $count } times as long.
asking-compared-fan = Without the fan it takes { SPANS($low_min, $high_min) }: at the same setting the fan makes it about { SPAN($more_min, style: "rough") } quicker.
asking-compared-by-weight = That is { $low } to { $high } minutes a pound ({ $low_kg } to { $high_kg } a kilogram) at this weight; a smaller one takes more for each pound, a larger one less.
asking-carve-loss = { $roast } loses { PERCENT($low) } to { PERCENT($high) } of its weight in the oven, most of it water: about { MASS($left_kg) } are left at { TEMPERATURE($c) }, bones and all.
asking-ahead = The day before: make the stock for the gravy, the cranberry sauce and the desserts; dry the bread and chop the vegetables for the dressing; set the table.
asking-ahead-roast = The roast: salt it or brine it, then leave it bare in the refrigerator overnight on the lowest shelf, so that its skin dries.
asking-ahead-not = Not before the day: stuffing the bird, mixing wet dressing with raw egg, or roasting it in part. Peeled potatoes wait in cold water in the refrigerator.
asking-brine-too-late = Too late for a brine: it wants { SPAN($hours_min, style: "rough") } at least and an hour to drip dry, and the roast goes in { WHEN($oven_in, style: "at") }.
asking-brine-late-instead = Salt it dry now instead, and leave it bare in the cold until it goes in; or slice the breast at the table and pass salty gravy.
asking-brine-in-time = In time: into the brine { WHEN($at, style: "at") }, for { SPAN($hours_min, style: "rough") } or more; it roasts from { WHEN($oven_in) }.
asking-compared-altitude = At sea level it takes { SPANS($low_min, $high_min) }: the height makes about { SPAN($more_min, style: "rough") } of difference, water boiling cooler and the surface drying sooner. Go by the thermometer.
asking-doneness-resting-rising-wished = { TEMPERATURE($c) } at the { $place }, out of the oven: it rises about { RISE($rise_k) } more, to about the { TEMPERATURE($target_c) } you want. That is below the safe minimum of { TEMPERATURE($safe_c) }: not for children, pregnant, old or ill guests.
asking-doneness-resting-back-wished = { TEMPERATURE($c) } at the { $place } is too low to rest: it rises only about { RISE($rise_k) } by itself, short of the { TEMPERATURE($target_c) } you want. Back into the hot oven.
asking-taken-coarse-kosher = Kosher salt of no named brand, taken as the coarse one: a flaked one wants nearly twice the cups, so weigh it.
asking-carve-rest-long = { SPAN($rest_min) } is longer than it stays hot: rest it { SPANS($low_min, $high_min) }, then hold it covered at { TEMPERATURE(60) } or above. Out of the heat it may be 2 h in all.
asking-carve-rest-enough = Yes, { SPAN($rest_min) } is enough: { SPANS($low_min, $high_min) } is usual for one like this.
asking-carve-rest-short = { SPAN($rest_min) } is short: better { SPANS($low_min, $high_min) }, or more juice runs out on the board.
asking-brine-safe = Yes, kept at { TEMPERATURE(4.4) } or below all the time: { SPAN($hours_min) } is within { NUMBER($low, maximumFractionDigits: 0) } to { NUMBER($high, maximumFractionDigits: 0) } h at this strength, and two days is the most.
asking-safety-thaw_place-warm-risky = Yes, it is: { TEMPERATURE($c) } is too warm to thaw in. Into the refrigerator with it now; if its outside has been above { TEMPERATURE(4.44) } for over 2 h, throw it away.
asking-safety-thaw_place-unmeasured-risky = Yes, it is: thaw it in the refrigerator. Only a place that stays at { TEMPERATURE(4.44) } or below, measured, is cold enough; what thawed where it is warmer for over 2 h, or where nobody knows, is thrown away.
asking-safety-hot-water-risky = Yes, it is: warm water warms the outside while the middle is ice. Into the refrigerator or cold water with it now; if it was over 2 h, or nobody knows, throw it away.
asking-safety-slow-cooker-risky = Yes, it is: use the oven, stove or microwave, to { TEMPERATURE(73.9) } within 2 h; then a hot slow cooker may keep it warm.
asking-safety-stuffed_ahead-risky = Yes, it is: no stuffing ahead. If it is done: throw the stuffing away, roast the bird unstuffed, bake fresh stuffing apart; out of the cold for over 2 h, throw both away.
asking-safety-partial_cooking-risky = Yes, it is: cook it through in one go. What is half-cooked and has cooled is thrown away.
asking-safety-thawed_on_counter-risky = Yes, it is: thaw it in the refrigerator, or in cold water changed every 30 min. What has been out for over 2 h is thrown away.
asking-safety-slow-oven-risky = Yes, it is: { OVEN($c) } is too slow an oven. Set it to { OVEN(162.78) } or more.
asking-safety-washed-risky = Yes, it is: washing raw poultry or meat spreads its germs. Pat it dry with paper, then clean and sanitize what it touched.
asking-refused-count = { $count } roasts are more than one oven takes: I work with up to { $most } in each.
asking-ask-ovens = How many ovens are there, or how many go in at a time?
