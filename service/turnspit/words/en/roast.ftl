# Names of the roasts, as they stand inside a sentence.
roast-turkey = turkey
roast-turkey_breast = turkey breast
roast-chicken = chicken
roast-capon = capon
roast-duck = duck
roast-goose = goose
roast-game_hen = game hen
roast-beef_rib = beef rib roast
roast-beef_tenderloin = beef tenderloin
roast-beef_round = beef round
roast-pork_loin = pork loin
roast-pork_shoulder = pork shoulder
roast-fresh_ham = fresh ham
roast-lamb_leg = leg of lamb
roast-veal_loin = veal loin
