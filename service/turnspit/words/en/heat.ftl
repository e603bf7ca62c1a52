heat-thaw-refrigerator = Thawed in a refrigerator at { TEMPERATURE($medium_c) }, from { TEMPERATURE($start_c) }.
heat-thaw-cold-water = Thawed in a leak-proof bag in water of { TEMPERATURE($medium_c) }, changed every half hour, from { TEMPERATURE($start_c) }.
heat-thaw-both = Before the water it has { SPAN($hours_min) } in a refrigerator at { TEMPERATURE($medium_c) }.
heat-thaw-part-frozen = At { TEMPERATURE($start_c) } only part of its water is ice, and a degree more or less decides how much: feel for ice, and do not count on the early hour.
heat-thaw-no-rule = No federal table gives thawing hours for this cut: these are computed, so feel for ice before you count on them.

# What a forecast of a roast took for granted.
heat-oven-still = Oven without a fan at { OVEN($oven_c) }, hot when the roast goes in.
heat-oven-fan = Fan oven at { OVEN($oven_c) }, hot when the roast goes in.
heat-thawed = Fully thawed, { TEMPERATURE($start_c) } at the centre when it goes in.
heat-frozen = Hard frozen when it goes in.
heat-part-frozen = Still icy in the middle when it goes in, thawed outside.
heat-count = { $count } pieces of { MASS($mass_kg) } with air between them: each hides a part of the oven from the others, so it takes somewhat longer than one alone.
heat-count-crowded = A household oven holds { $count ->
    [one] one such piece
   *[other] { $count } such pieces
} with air between; for more, this counts on a larger oven with the power for it. Else use two ovens, or roast in turn.
heat-tied-joint = Tied round it is as thick as it can be: some 5 percent longer than one of which that is not told. Computed from its shape, not measured.
heat-untied-joint = Not tied it lies flatter: some 5 percent quicker than one of which that is not told. Computed from its shape, not measured.
heat-tied-bird = Trussed, thigh and wing joint lie against the body and come later. Computed from the shape, not measured.
heat-untied-bird = Not trussed, thigh and wing joint stand free and come sooner. Computed from the shape, not measured.
heat-pan-dark = A dark pan warms the underside more than a bright one: a few percent sooner. That it is quicker is published, by how much is computed here.
heat-pan-light = A bright pan keeps the oven's radiation from the underside: a few percent later than in a dark one. That it is slower is published, by how much is computed here.
heat-pan-glass = A glass pan takes up the oven's radiation as a dark one does: a few percent sooner than a bright one, which is computed, not measured.
heat-stuffed = Stuffing goes in cool and loose, just before roasting; its centre decides.
heat-bone-untold = With the bone or without makes no difference here: no published times tell them apart for this roast.
heat-stuffed-slow = Stuffed birds in slow ovens may take much longer: the one that was found measured took half as long again.
heat-spans-chart-and-measured = The window spans the federal chart, which is slow for { TEMPERATURE(73.89) }, and 128 measured birds, which were faster.
heat-places-assumed = How far thigh and wing joint lag behind the breast is assumed; probe all of them.
heat-shape-only = No published times stand behind this cut, only its shape and what it is made of; so the window is wide.
heat-mass-extrapolated = Published times exist from { MASS($low_kg) } to { MASS($high_kg) }; this one lies outside them.
heat-oven-extrapolated = Published times exist for ovens from { TEMPERATURE($low_c) } to { TEMPERATURE($high_c) }; this one lies outside them.
heat-altitude = At { NUMBER($altitude_m, maximumFractionDigits: 0) } m above the sea water boils sooner and the air carries less heat.
heat-chill-even = It starts at { TEMPERATURE($from_c) } all through.
heat-chill-ice-bath = Ice is kept in the bath until the end.
heat-chill-bare = It lies in the water without a bag; a leak-proof bag keeps it clean and slows it a little.
heat-chill-pan-on-ice = Its pan stands in the ice, which cools it from below only. Stirred often, or in a bag laid flat in the ice, it is several times quicker.
heat-chill-pan-on-shelf = It lies in a pan on a shelf, which cools it more slowly from below than from above.
heat-chill-bird = Of whole birds only broilers in ice water were found measured; the depth is the one that roasting tells.
heat-chill-flooded = Its cavity is taken to fill with water, so lay it with the open end up; air caught in it slows it.
heat-chill-glycol = Below { TEMPERATURE(0) } it is brine or glycol, taken to carry heat as water does; it freezes the outside of what stays in it.
heat-chill-covered = The pot is taken to be covered; open, it cools sooner while it is hot.
heat-chill-like-meat = Taken to cool as cooked meat does.
heat-chill-like-soup = Taken to cool as soup does.
heat-chill-large-load = So much hot food warms the refrigerator it stands in: the window allows for that, but a full or weak one takes longer still. Shallow pans are far quicker.
heat-chill-thin = Taken to be thin, like a clear stock, which turns over by itself as it cools. What is thick or has much in it takes several times as long.
heat-chill-thick = Taken to be thick, so that it hardly moves by itself as it cools. A clear stock in the same pot takes a fraction of that in ice; stirring helps both.
heat-chill-usual-shape = Only the mass was told, so the usual proportions were taken: { LENGTH($mm) } across.
heat-chill-rectangular = A rectangular pan { LENGTH($long_mm) } by { LENGTH($wide_mm) }, { LENGTH($deep_mm) } deep; the least of the three is taken for the depth.
heat-chill-full-pot = Only the width of the pot was told: it is taken to be as deep as wide, and full.
heat-chill-bird-by-mass = A bird is sized by its mass; its dimensions were not used.
heat-chill-edges-by-mass = Not all edges were told: from its mass, rounded as joints are, what is left comes to { LENGTH($mm) }.
heat-chill-not-stirred = Stirring counts in pots and baths only; here it changes nothing.
heat-rest-board = Rests { SPAN($rest_min) } on a board in a room of about { TEMPERATURE(21) }.
heat-rest-foil = Rests { SPAN($rest_min) } under loose foil in a room of about { TEMPERATURE(21) }.
heat-rest-wrapped = Rests { SPAN($rest_min) } still wrapped as it was roasted, in a room of about { TEMPERATURE(21) }; so it goes on heating the most.
heat-rest-cupboard = Rests { SPAN($rest_min) } in a cupboard of about { TEMPERATURE(60) }.
heat-platter = Carved when it has rested, and laid { LENGTH($mm) } deep on a platter; it counts as warm down to { TEMPERATURE($served_c) }. No measured cooling of carved meat stands behind that; two hours after the oven it is chilled, warm or not.
heat-oven-still-cold = Oven without a fan set to { OVEN($oven_c) }, cold when the roast goes in; it heats up with it.
heat-oven-fan-cold = Fan oven set to { OVEN($oven_c) }, cold when the roast goes in; it heats up with it.
heat-oven-extrapolated-one = Published times exist for ovens of { TEMPERATURE($low_c) } only; this one lies well outside.
heat-cover = A cover changes heat and moisture in ways not measured here; its direction is sure, its size is not.
heat-bastings = It is basted { $count ->
    [one] once
   *[other] { $count } times
}; each costs about { SPAN(4) }, half for the door and half for what dries off again.
heat-openings = The door is opened { $count ->
    [one] once
   *[other] { $count } times
}; each time costs about { SPAN(2) }.
# What makes a time uncertain, one number each; the names are those of heat/ensemble.py.
heat-uncertain-size = how thick a piece of this mass is
heat-uncertain-station = how deep each place lies beside the rest
heat-uncertain-shape = how round it is
heat-uncertain-exchange = how well the oven passes its heat: size, rack, crowding
heat-uncertain-crust = how soon the surface dries
heat-uncertain-oven = how true the oven's thermostat is
heat-uncertain-start = how cold it goes in
heat-uncertain-conductivity = how well the meat conducts
heat-uncertain-room = how warm the kitchen is
heat-uncertain-rest-exchange = draught and warmth where it rests
heat-uncertain-drip = how much juice it drips
