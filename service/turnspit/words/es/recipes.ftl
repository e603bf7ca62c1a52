# Qué tamaño.
recipes-size-headline = Para { $covers } comensales: { $count ->
    [one] { $roast }, una pieza de unos { MASS($each_kg) }
   *[other] { $roast }, { $count } piezas de unos { MASS($each_kg) } cada una, { MASS($total_kg) } en total
}.
recipes-size-headline-leftovers = Para { $covers } comensales, con sobras: { $count ->
    [one] { $roast }, una pieza de unos { MASS($each_kg) }
   *[other] { $roast }, { $count } piezas de unos { MASS($each_kg) } cada una, { MASS($total_kg) } en total
}.
recipes-size-edible = Cerca del { NUMBER($percent, maximumFractionDigits: 0) }% del peso crudo es carne trinchada: { MASS($meat_kg) }, { $servings } raciones de { MASS($serving_kg) }.
recipes-size-white-dark = Carne blanca unos { MASS($white_kg) }, oscura { MASS($dark_kg) } (60 a 40, práctica común).
recipes-size-other = O { $count } de { MASS($each_kg) }{ $count ->
    [one] {""}
   *[other] { " " }cada una
}; congelada, tarda hasta { $days ->
    [one] un día
   *[other] { $days } días
} en descongelarse.
recipes-size-two-smaller = Varias piezas pequeñas se hacen antes y más parejas y dan más muslos y piel; una grande ocupa menos horno.
recipes-size-two-joints = Varias piezas pequeñas se hacen antes y permiten distintos puntos; una grande ocupa menos horno.
recipes-size-least = { MASS($each_kg) } es casi lo más pequeño que se vende; bastarían { MASS($needed_kg) }: piense en una pechuga o un ave menor.
recipes-size-frozen = Congelada: al refrigerador { $low ->
    [one] 1 día
   *[other] { $low } días
} antes, mejor { $high }, además del tiempo de salmuera.
recipes-size-frozen-days = Congelada: al refrigerador { $high ->
    [one] 1 día
   *[other] { $high } días
} antes, además del tiempo de salmuera.
recipes-size-fresh = Fresca: cómprela de { $low } a { $high } días antes.
recipes-size-sides = Guarniciones: relleno { VOLUME($dressing_low) } a { VOLUME($dressing_high) }, salsa { VOLUME($gravy_low) } a { VOLUME($gravy_high) }, papas { MASS($potatoes_low) } a { MASS($potatoes_high) } en crudo.
recipes-size-non-eaters = { $count ->
    [one] Un comensal come otra cosa: prevea un plato principal para uno.
   *[other] { $count } comensales comen otra cosa: prevea un plato principal para ellos.
}
recipes-size-assumed-portion = { MASS($per_kg) } en crudo para cada uno.
recipes-size-assumed-children = { $children ->
    [one] Un niño cuenta por medio.
   *[other] { $children } niños cuentan por medio cada uno.
}
recipes-size-assumed-no-leftovers = Pocas sobras; la mitad más si las quiere.

# Lectura de una receta.
recipes-region-assumed = Nada indica de qué país son las tazas y cucharas; se suponen medidas de EE. UU.
recipes-region-inferred = Sus medidas se toman como de { $region }, por: { $signs }.
recipes-unread = { $count ->
    [one] Una línea no se pudo leer y queda como estaba
   *[other] { $count } líneas no se pudieron leer y quedan como estaban
}: { $first }
recipes-no-yield = La receta no dice cuánto rinde.
