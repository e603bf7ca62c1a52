# Notes on conversions.
quantities-us-measures = Spoons, cups, pints and gallons are taken as US measures.
quantities-vague-measure = A { $unit } has no fixed size; the range is what kitchens use.
quantities-weigh = Without scales this varies from cook to cook: weigh it.
quantities-which-salt = Kosher and sea salts differ: a cup of light flakes weighs little more than half a cup of dense crystals. Say which kind, or weigh it.
quantities-gas-mark = Gas marks are nominal; ovens differ by about { RISE(20) }.
