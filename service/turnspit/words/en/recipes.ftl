# How big.
recipes-size-headline = For { $covers } diners: { $count ->
    [one] one { $roast } of about { MASS($each_kg) }
   *[other] { $count } × { $roast } of about { MASS($each_kg) } each, { MASS($total_kg) } in all
}.
recipes-size-headline-leftovers = For { $covers } diners with leftovers: { $count ->
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
