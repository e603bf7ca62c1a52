api-fault = That is too much for me: something broke on our side and is in the log. Say it another way.
api-calendar-name = Dinner on { $day }
api-place-shop = shop
api-place-refrigerator = refrigerator
api-place-sink = sink
api-place-counter = counter
api-place-stove = stove
api-place-oven = oven
api-place-table = table
api-lists-of = Lists of { $count ->
    [one] one dish
   *[other] { $count } dishes
}.
api-kind-taken = “{ $said }” is reckoned as { $kind }.
api-kind-only-one = “{ $said }” is reckoned as { $kind }, raw: one that is cured or cooked already takes other times.
