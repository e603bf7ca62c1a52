# How big.
recipes-size-headline = For { $covers ->
    [one] one diner
   *[other] { $covers } diners
}: { $count ->
    [one] one { $roast } of about { MASS($each_kg) }
   *[other] { $count } × { $roast } of about { MASS($each_kg) } each, { MASS($total_kg) } in all
}.
recipes-size-headline-leftovers = For { $covers ->
    [one] one diner
   *[other] { $covers } diners
} with leftovers: { $count ->
    [one] one { $roast } of about { MASS($each_kg) }
   *[other] { $count } × { $roast } of about { MASS($each_kg) } each, { MASS($total_kg) } in all
}.
recipes-size-edible = About { NUMBER($percent, maximumFractionDigits: 0) }% of the raw weight is carved meat: { MASS($meat_kg) }, { $servings } servings of { MASS($serving_kg) }.
recipes-size-white-dark = White meat about { MASS($white_kg) }, dark { MASS($dark_kg) } (60 to 40, common practice).
recipes-size-other = Or { $count } of { MASS($each_kg) }{ $count ->
    [one] {""}
   *[other] { " " }each
}; frozen, that takes up to { $days ->
    [one] a day
   *[other] { $days } days
} to thaw.
recipes-size-two-smaller = Several smaller ones cook faster and more evenly and give more legs and skin; one large one takes less room in the oven.
recipes-size-two-joints = Several smaller ones cook faster and allow for different degrees of doneness; one large one takes less room in the oven.
recipes-size-least = { MASS($each_kg) } is about the smallest one sold; { MASS($needed_kg) } would do, so think of a breast or a smaller bird.
recipes-size-frozen = Frozen: in the refrigerator { $low ->
    [one] 1 day
   *[other] { $low } days
} before, better { $high }, besides the time in a brine.
recipes-size-frozen-days = Frozen: in the refrigerator { $high ->
    [one] 1 day
   *[other] { $high } days
} before, besides the time in a brine.
recipes-size-fresh = Fresh: buy it { $low } to { $high } days ahead.
recipes-size-sides = Sides: dressing { VOLUME($dressing_low) } to { VOLUME($dressing_high) }, gravy { VOLUME($gravy_low) } to { VOLUME($gravy_high) }, potatoes { MASS($potatoes_low) } to { MASS($potatoes_high) } raw.
recipes-size-non-eaters = { $count ->
    [one] One diner eats something else: plan a main dish for one.
   *[other] { $count } diners eat something else: plan a main dish for them.
}
recipes-size-assumed-portion = { MASS($per_kg) } raw for each.
recipes-size-assumed-children = { $children ->
    [one] One child counts as half.
   *[other] { $children } children count as half each.
}
recipes-size-assumed-no-leftovers = Few leftovers; half as much again if you want them.

# Reading a recipe.
recipes-region-assumed = Nothing tells whose cups and spoons these are; US measures are assumed.
recipes-region-inferred = Its measures are taken as { $region } ones, by: { $signs }.
recipes-unread = { $count ->
    [one] One line could not be read and stands as it was
   *[other] { $count } lines could not be read and stand as they were
}: { $first }
recipes-no-yield = The recipe does not say how much it makes.

# Scaling.
recipes-by-factor = Times { NUMBER($factor, maximumFractionDigits: 2) }.
recipes-by-servings = From { NUMBER($made, maximumFractionDigits: 1) } to { NUMBER($wanted, maximumFractionDigits: 1) } servings.
recipes-by-roast = For { $item } of { MASS($to_kg) } instead of { MASS($from_kg) }.
recipes-by-vessel = To fill a vessel of { VOLUME($vessel_l) } to 85%: { VOLUME($to_l) } instead of { VOLUME($from_l) }.
recipes-by-pan = For the pan { $new } instead of { $old }, by volume.
recipes-by-pan-deeper = For the pan { $new } instead of { $old }, by volume. It is deeper: allow about a quarter more time, in a slightly cooler oven.
recipes-by-pan-shallower = For the pan { $new } instead of { $old }, by volume. It is shallower: allow about a quarter less time, in a slightly hotter oven.
recipes-by-short = By the { $item } there is: { $have } of { $needed }, times { NUMBER($factor, maximumFractionDigits: 2) }.
recipes-by-short-serves = By the { $item } there is: { $have } of { $needed } for { NUMBER($serves, maximumFractionDigits: 1) }, enough for { $servings }.
recipes-rule-herbs-half-steps = Dried herbs ({ $items }): linear to twice the recipe, then half as much for each further time.
recipes-rule-hot-pepper-quarter-steps = Hot pepper ({ $items }): linear to twice the recipe, then a quarter as much for each further time.
recipes-rule-spices-by-weight = Spices ({ $items }) are linear by weight: weigh them, then taste.
recipes-rule-salt-linear-in-brine = Salt in a brine, a cure or a dough is strictly linear; weigh it.
recipes-rule-salt-taste-last = Salt ({ $items }): hold back a quarter, taste, then add.
recipes-rule-leavening-depth = Leavening ({ $items }) is linear while the batter keeps its depth; weigh it.
recipes-rule-thickener-last = Thickener ({ $items }) goes with the liquid that is left after simmering: add the last quarter only if it is too thin.
recipes-rule-evaporation-by-surface = Less simmers away from a larger pot for its volume, more from a smaller one, so the liquid ({ $items }) is not quite linear.
recipes-rule-browning-in-batches = Brown in one layer: in about { $batches } batches of the same pan, with fat for each, or in pans of that much more area.
recipes-rule-batches-beyond-four = Beyond four times make batches: here about { $batches }.
recipes-rule-time-by-thickness = Time goes with thickness, not weight: one piece this much larger takes about { NUMBER($time_factor, maximumFractionDigits: 2) } times as long; more pieces, or more pans of the same depth, take the same time.
recipes-rule-whole-roasts = A roast is bought whole ({ $items }): the next whole number stands here, and the rest stays by the factor.
recipes-rule-part-of-an-egg = Part of an egg: beat it and weigh; a large egg is 50 g without its shell.

# Lists: shopping, orders, preparation.
recipes-food = { $said }
recipes-buy-packs = { $item }: { NUMBER($packs) } { $pack } of { $size }; { $left } left over
recipes-buy-loose = { $item }: { $amount }
recipes-buy-made = { $item }: { $amount }, nothing to buy
recipes-buy-unmeasured = { $item } ({ $line })
recipes-amount-mass = { MASS($kg) }
recipes-amount-volume = { VOLUME($litres) }
recipes-amount-pieces = { NUMBER($count, maximumFractionDigits: 1) }
recipes-amount-pieces-of = { NUMBER($count, maximumFractionDigits: 1) } × { MASS($each_kg) }
recipes-order = { $item }: { $ordered }
recipes-order-cold = { $item }: { $ordered }, received at { TEMPERATURE($receive_c) } or below
recipes-order-packs = { NUMBER($packs) } { $pack } of { $size }
recipes-order-both = { $cases } and { $packs }
recipes-at-once = { NUMBER($count) } × { $equipment } at once: { $recipes }
recipes-day = { $days ->
    [0] On the day
    [one] The day before
   *[other] { $days } days before
}
recipes-aisle-meat = Meat and poultry
recipes-aisle-produce = Fruit, vegetables and herbs
recipes-aisle-dairy = Dairy and eggs
recipes-aisle-bakery = Bread
recipes-aisle-baking = Baking
recipes-aisle-dry = Rice, nuts and dry goods
recipes-aisle-shelf = Tins, oils, vinegars and stocks
recipes-aisle-spices = Salt and spices
recipes-aisle-frozen = Frozen
recipes-aisle-drinks = Wine and drinks
recipes-aisle-equipment = Kitchen things
recipes-aisle-tap = At home
recipes-aisle-other = Other
recipes-station-oven = Oven
recipes-station-stove = Stove
recipes-station-cold = Cold and refrigerator
recipes-station-board = Board and knife
recipes-station-pass = Carving and pass
recipes-pack-bag = { $count ->
    [one] bag
   *[other] bags
}
recipes-pack-block = { $count ->
    [one] block
   *[other] blocks
}
recipes-pack-bottle = { $count ->
    [one] bottle
   *[other] bottles
}
recipes-pack-box = { $count ->
    [one] box
   *[other] boxes
}
recipes-pack-bunch = { $count ->
    [one] bunch
   *[other] bunches
}
recipes-pack-can = { $count ->
    [one] can
   *[other] cans
}
recipes-pack-carton = { $count ->
    [one] carton
   *[other] cartons
}
recipes-pack-head = { $count ->
    [one] head
   *[other] heads
}
recipes-pack-jar = { $count ->
    [one] jar
   *[other] jars
}
recipes-pack-lemon = { $count ->
    [one] lemon
   *[other] lemons
}
recipes-pack-loaf = { $count ->
    [one] loaf
   *[other] loaves
}
recipes-pack-orange = { $count ->
    [one] orange
   *[other] oranges
}
recipes-pack-packet = { $count ->
    [one] packet
   *[other] packets
}
recipes-pack-piece = { $count ->
    [one] piece
   *[other] pieces
}
recipes-pack-tub = { $count ->
    [one] tub
   *[other] tubs
}
recipes-case-birds = { $count ->
    [one] case
   *[other] cases
}
recipes-case-case = { $count ->
    [one] case
   *[other] cases
}
recipes-case-sack = { $count ->
    [one] sack
   *[other] sacks
}
