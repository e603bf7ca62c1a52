# Qué tamaño.
recipes-size-headline = Para { $covers ->
    [one] un comensal
   *[other] { $covers } comensales
}: { $count ->
    [one] { $roast }, una pieza de unos { MASS($each_kg) }
   *[other] { $roast }, { $count } piezas de unos { MASS($each_kg) } cada una, { MASS($total_kg) } en total
}.
recipes-size-headline-leftovers = Para { $covers ->
    [one] un comensal
   *[other] { $covers } comensales
}, con sobras: { $count ->
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

# Cambio de cantidades.
recipes-by-factor = Por { NUMBER($factor, maximumFractionDigits: 2) }.
recipes-by-servings = De { NUMBER($made, maximumFractionDigits: 1) } a { NUMBER($wanted, maximumFractionDigits: 1) } raciones.
recipes-by-roast = Para { $item } de { MASS($to_kg) } en vez de { MASS($from_kg) }.
recipes-by-vessel = Para llenar un recipiente de { VOLUME($vessel_l) } al 85%: { VOLUME($to_l) } en vez de { VOLUME($from_l) }.
recipes-by-pan = Para el molde { $new } en vez de { $old }, por volumen.
recipes-by-pan-deeper = Para el molde { $new } en vez de { $old }, por volumen. Es más hondo: cuente una cuarta parte más de tiempo, con el horno algo más suave.
recipes-by-pan-shallower = Para el molde { $new } en vez de { $old }, por volumen. Es menos hondo: cuente una cuarta parte menos de tiempo, con el horno algo más fuerte.
recipes-by-short = Según lo que hay de { $item }: { $have } de { $needed }, por { NUMBER($factor, maximumFractionDigits: 2) }.
recipes-by-short-serves = Según lo que hay de { $item }: { $have } de { $needed } para { NUMBER($serves, maximumFractionDigits: 1) }, alcanza para { $servings }.
recipes-rule-herbs-half-steps = Hierbas secas ({ $items }): lineal hasta el doble, después la mitad por cada vez más.
recipes-rule-hot-pepper-quarter-steps = Picante ({ $items }): lineal hasta el doble, después un cuarto por cada vez más.
recipes-rule-spices-by-weight = Las especias ({ $items }) son lineales en peso: péselas y pruebe.
recipes-rule-salt-linear-in-brine = La sal de una salmuera, un curado o una masa es estrictamente lineal; pésela.
recipes-rule-salt-taste-last = Sal ({ $items }): reserve un cuarto, pruebe y añada.
recipes-rule-leavening-depth = La levadura ({ $items }) es lineal mientras la masa tenga la misma altura; pésela.
recipes-rule-thickener-last = El espesante ({ $items }) va con el líquido que queda tras hervir: añada el último cuarto solo si queda clara.
recipes-rule-evaporation-by-surface = De una olla mayor se evapora menos por volumen, de una menor más, así que el líquido ({ $items }) no es del todo lineal.
recipes-rule-browning-in-batches = Dore en una sola capa: en unas { $batches } tandas de la misma sartén, con grasa para cada una, o en sartenes con esa superficie.
recipes-rule-batches-beyond-four = Más allá de cuatro veces, hágalo en tandas: aquí unas { $batches }.
recipes-rule-time-by-thickness = El tiempo va con el grosor, no con el peso: una pieza así de grande tarda unas { NUMBER($time_factor, maximumFractionDigits: 2) } veces más; más piezas, o más moldes de la misma altura, tardan lo mismo.
recipes-rule-whole-roasts = Un asado se compra entero ({ $items }): aquí va el siguiente número entero y lo demás sigue el factor.
recipes-rule-part-of-an-egg = Parte de un huevo: bátalo y péselo; un huevo grande pesa 50 g sin cáscara.

# Listas: compra, pedidos, preparación.
recipes-food = { $es }
recipes-buy-packs = { $item }: { NUMBER($packs) } { $pack } de { $size }; sobran { $left }
recipes-buy-loose = { $item }: { $amount }
recipes-buy-made = { $item }: { $amount }, nada que comprar
recipes-buy-unmeasured = { $item } ({ $line })
recipes-amount-mass = { MASS($kg) }
recipes-amount-volume = { VOLUME($litres) }
recipes-amount-pieces = { NUMBER($count, maximumFractionDigits: 1) }
recipes-amount-pieces-of = { NUMBER($count, maximumFractionDigits: 1) } × { MASS($each_kg) }
recipes-order = { $item }: { $ordered }
recipes-order-cold = { $item }: { $ordered }, se recibe a { TEMPERATURE($receive_c) } o menos
recipes-order-packs = { NUMBER($packs) } { $pack } de { $size }
recipes-order-both = { $cases } y { $packs }
recipes-at-once = { NUMBER($count) } × { $equipment } a la vez: { $recipes }
recipes-day = { $days ->
    [0] El mismo día
    [one] El día antes
   *[other] { $days } días antes
}
recipes-aisle-meat = Carne y aves
recipes-aisle-produce = Fruta, verdura y hierbas
recipes-aisle-dairy = Lácteos y huevos
recipes-aisle-bakery = Pan
recipes-aisle-baking = Repostería
recipes-aisle-dry = Arroz, frutos secos y legumbres
recipes-aisle-shelf = Conservas, aceites, vinagres y caldos
recipes-aisle-spices = Sal y especias
recipes-aisle-frozen = Congelados
recipes-aisle-drinks = Vino y bebidas
recipes-aisle-equipment = Cosas de cocina
recipes-aisle-tap = En casa
recipes-aisle-other = Otros
recipes-station-oven = Horno
recipes-station-stove = Fuegos
recipes-station-cold = Frío y refrigerador
recipes-station-board = Tabla y cuchillo
recipes-station-pass = Trinchado y pase
recipes-pack-bag = { $count ->
    [one] bolsa
   *[other] bolsas
}
recipes-pack-block = { $count ->
    [one] bloque
   *[other] bloques
}
recipes-pack-bottle = { $count ->
    [one] botella
   *[other] botellas
}
recipes-pack-box = { $count ->
    [one] caja
   *[other] cajas
}
recipes-pack-bunch = { $count ->
    [one] manojo
   *[other] manojos
}
recipes-pack-can = { $count ->
    [one] lata
   *[other] latas
}
recipes-pack-carton = { $count ->
    [one] cartón
   *[other] cartones
}
recipes-pack-head = { $count ->
    [one] cabeza
   *[other] cabezas
}
recipes-pack-jar = { $count ->
    [one] frasco
   *[other] frascos
}
recipes-pack-lemon = { $count ->
    [one] limón
   *[other] limones
}
recipes-pack-loaf = { $count ->
    [one] hogaza
   *[other] hogazas
}
recipes-pack-orange = { $count ->
    [one] naranja
   *[other] naranjas
}
recipes-pack-packet = { $count ->
    [one] sobre
   *[other] sobres
}
recipes-pack-piece = { $count ->
    [one] pieza
   *[other] piezas
}
recipes-pack-tub = { $count ->
    [one] tarrina
   *[other] tarrinas
}
recipes-case-birds = { $count ->
    [one] caja
   *[other] cajas
}
recipes-case-case = { $count ->
    [one] caja
   *[other] cajas
}
recipes-case-sack = { $count ->
    [one] saco
   *[other] sacos
}
