brine-salt-table = sal de mesa
brine-salt-flake_kosher = sal kosher en escamas ligeras
brine-salt-coarse_kosher = sal kosher gruesa (densa)
brine-salt-finishing_flake = sal en escamas para terminar
brine-salt-kosher = sal kosher
brine-sold-plain = sin tratar
brine-sold-injected = con solución añadida
brine-sold-kosher = kosher
brine-vessel-pot-8qt = una olla de 7,6 L (8 cuartos)
brine-vessel-pot-12qt = una olla de 11,4 L (12 cuartos)
brine-vessel-pot-16qt = una olla de 15,1 L (16 cuartos)
brine-vessel-bucket-5gal = un cubo de uso alimentario de 18,9 L (5 galones)
brine-vessel-tub-22qt = una cuba de uso alimentario de 20,8 L (22 cuartos)
brine-vessel-pot-24qt = una olla de 22,7 L (24 cuartos)
brine-vessel-pot-32qt = una olla de 30,3 L (32 cuartos)
brine-vessel-cooler-48qt = una nevera portátil de 45,4 L (48 cuartos)
brine-vessel-cooler-60qt = una nevera portátil de 56,8 L (60 cuartos)
brine-vessel-bin-20gal = un bidón de uso alimentario de 75,7 L (20 galones)
brine-vessel-bin-32gal = un bidón de uso alimentario de 121 L (32 galones)
brine-vessel-none = varios recipientes, con una o dos aves en cada uno

brine-headline = Salmuera para { $meat }: { VOLUME($water_l) } de agua en total y { $salt_weight } de sal, cerca de { $cups } de { $salt }; { $hours } a { TEMPERATURE(4.44) } o menos.
brine-headline-too-long = { $hours } no: la carne cruda aguanta { $most } en sal o salmuera como mucho, en frío. Lo más largo que se permite: { $nearest }
brine-headline-misfit = No cabe en ese recipiente: para cubrir { $meat } hacen falta { VOLUME($needed_l) } o más. En uno así: { VOLUME($water_l) } de agua en total, { $salt_weight } de sal (cerca de { $cups } de { $salt }), { $hours } a { TEMPERATURE(4.44) } o menos.
brine-headline-dry = Salar en seco { $meat }: { $salt_weight } de sal, cerca de { $cups } de { $salt }, { PERCENT($percent) } de su peso; sin tapar en el frío { $hours }.
brine-not-brined = Ni salmuera ni sal añadida: { $roast_the } se vende { $sold_as } y ya lleva sal.

brine-step-label = Lea la etiqueta: un ave con solución añadida («inyectada», «mejorada», «autobasteada») o kosher no se vuelve a salar. Saque menudos, cuello y plásticos.
brine-step-label-joint = Lea la etiqueta: la carne con solución añadida («inyectada», «mejorada», «autobasteada») no se vuelve a salar.
brine-step-dissolve = Caliente { VOLUME($water_l) } de agua a { TEMPERATURE($hot_c) } y disuelva en ella { $salt_weight } de sal (cerca de { $cups } de { $salt }; mejor pesada).
brine-step-dissolve-sugar = Caliente { VOLUME($water_l) } de agua a { TEMPERATURE($hot_c) } y disuelva en ella { $salt_weight } de sal (cerca de { $cups } de { $salt }; mejor pesada) y { MASS($sugar_kg) } de azúcar.
brine-step-ice = Viértala sobre { MASS($ice_kg) } de hielo y { VOLUME($water_l) } de agua fría del grifo y remueva hasta que se funda el hielo: queda a unos { TEMPERATURE($brine_c) }.
brine-step-ice-only = Viértala sobre { MASS($ice_kg) } de hielo y remueva hasta que se funda: queda a unos { TEMPERATURE($brine_c) }.
brine-step-check-cold = La carne entra solo cuando un termómetro en la salmuera marca { TEMPERATURE(4.44) } o menos; si no, añada hielo en una bolsa cerrada.
brine-step-bird-in = Meta el ave con la pechuga hacia abajo, deje que se llene la cavidad, ponga un plato encima para que quede sumergida y tape.
brine-step-joint-in = Meta la carne, ponga un plato encima para que quede sumergida y tape.
brine-step-place = Lleno pesa { MASS($weight_kg) } sin contar el recipiente, y uno corriente mide unos { LENGTH($height_mm) } de alto. En el estante más bajo del refrigerador, sobre una bandeja, debajo de todo lo que se come tal cual.
brine-step-out = Sáquela después de { $hours }. No la enjuague: escúrrala, séquela con papel, tire la salmuera por el desagüe y lave y desinfecte fregadero, recipiente y manos.
brine-step-dry-skin = Seque la piel sobre una rejilla con bandeja, sin tapar, en el estante más bajo: unas horas o toda la noche.
brine-step-season = No la sale más, o solo un poco; sazone con pimienta y hierbas.
brine-step-rub = Mezcle { $salt_weight } de sal (cerca de { $cups } de { $salt }; { PERCENT($percent) } del peso crudo) con las hierbas; frote la mayor parte en pechuga y muslos, el resto por dentro.
brine-step-rub-joint = Mezcle { $salt_weight } de sal (cerca de { $cups } de { $salt }; { PERCENT($percent) } del peso crudo) con las hierbas y frote la pieza por todos los lados.
brine-step-dry-rest = Sobre una rejilla con bandeja, sin tapar, en el estante más bajo del refrigerador, debajo de todo lo que se come tal cual.
brine-step-dry-after = No la enjuague ni añada más sal; seque lo que esté húmedo.

brine-note-fits = Cabe: la carne ocupa { VOLUME($displaced_l) } y cubierta necesita un recipiente de { VOLUME($needed_l) } o más.
brine-note-misfit = Cubierta necesita { VOLUME($needed_l) }: a ese recipiente le faltan { VOLUME($short_l) }; serviría { $vessel }, o despiece el ave, o sálela en seco.
brine-note-largest = En el recipiente que tiene { $count ->
    [one] cabe una pieza
   *[other] caben { $count } piezas
} de hasta { MASS($mass_kg) }.
brine-note-vessels = O { $vessels } recipientes como el suyo, con la salmuera repartida.
brine-note-uncovered = { VOLUME($water_l) } no la cubren, { VOLUME($covers_l) } sí: use un recipiente más estrecho o una bolsa y dele la vuelta cada pocas horas, o haga más.
brine-note-overflows = No cabe con { VOLUME($water_l) } de agua: la carne ocupa { VOLUME($displaced_l) } y quedan { VOLUME($spare_l) } para la salmuera. Con { VOLUME($covers_l) } queda cubierta: haga esa cantidad.
brine-note-percent = { PERCENT($percent) } de sal sobre el peso de la salmuera; contada solo sobre el agua es { PERCENT($of_water) }.
brine-note-freezing = { $degrees } grados del salómetro; empieza a helarse a { TEMPERATURE($freezing_c) }.
brine-note-strong = Es una salmuera muy salada: no más de { $hours }, salsa con caldo sin sal y nada de sal después. Lo corriente es 5,5% en peso.
brine-note-equilibrium = Nunca quedará más salada que salmuera y carne juntas; puede estar lo que la carne cruda aguanta, dos días como mucho.
brine-note-too-long = { $hours } es demasiado con esta concentración: { $most } como mucho.
brine-note-too-short = { $hours } es poco con esta concentración ({ $least } o más): solo se sazonará el exterior.
brine-note-too-salty = Después de ese tiempo la carne pasará probablemente de { PERCENT($limit) } de sal, demasiado para la mayoría: menos horas o una salmuera más suave.
brine-note-salty-after = Según el modelo, después de unas { $hours } queda demasiado salada para la mayoría (más del 2%).
brine-note-finished = Después de { $hours } la carne trinchada tiene un { NUMBER($low, maximumFractionDigits: 1) }–{ NUMBER($high, maximumFractionDigits: 1) }% de sal: { NUMBER($sodium_low) }–{ NUMBER($sodium_high) } mg de sodio en { MASS($serving_kg) }. Es un modelo de cómo se mueve la sal, no una medida.
brine-note-weigh-salt = Pese la sal: { $cups } pueden tener de { MASS($low_kg) } a { MASS($high_kg) }, según los cristales.
brine-note-without-ice = Sin hielo: con agua del grifo en su lugar está a { TEMPERATURE($from_c) } al mezclarla y tarda { $hours } en la nevera en llegar a { TEMPERATURE(4.44) }; hágala el día antes, en dos ollas si puede, y no meta nada hasta que esté así de fría.
brine-vessel-line = { $vessel }: la cubren { VOLUME($covers_l) } de salmuera, { MASS($contents_kg) } en total, unos { LENGTH($height_mm) } de alto
brine-note-heavy = { MASS($weight_kg) } es carga para dos personas: llene el recipiente donde vaya a quedar.
brine-note-gravy = El jugo del asado saldrá salado: haga la salsa con caldo de cuello sin sal, añada jugo al gusto y sale al final.
brine-note-no-added-salt = Ase el ave como viene, sin sal por fuera ni por dentro, y pruebe antes de salar nada que lleve sus jugos.
brine-note-allergens = Lo que llevan la salmuera, la mantequilla o el relleno (leche, trigo, frutos secos, soya) está en el ave: dígaselo a quien deba saberlo.

brine-assumed-plain = Se supone { $roast } sin tratar, sin solución añadida y no kosher: mire la etiqueta.
brine-assumed-strength = La concentración federal, { PERCENT($percent) } en peso (3/4 de taza de sal de mesa por galón de agua).
brine-assumed-strong = Una salmuera más fuerte, { PERCENT($percent) } en peso, porque las horas son pocas.
brine-assumed-hours = No hay horas publicadas para { $roast } en salmuera: las del pavo, a la misma concentración.
brine-assumed-vessel = Un recipiente justo, de { VOLUME($needed_l) }; serviría { $vessel }.
brine-assumed-vessels = Varios recipientes, { VOLUME($needed_l) } en total: { $vessels } de los más grandes corrientes, con la salmuera repartida.
brine-assumed-time = En la salmuera { $hours }.

brine-hours = { NUMBER($low) }–{ NUMBER($high) } h
brine-hour = { NUMBER($high) } h
brine-salt-weight = { NUMBER($grams) } g ({ NUMBER($ounces, maximumFractionDigits: 1) } oz)
brine-parts = { $first } + { $second }
brine-part-cup = { $amount } { $many ->
    [0] taza (EE. UU.)
   *[other] tazas (EE. UU.)
}
brine-part-tbsp = { $amount } { $many ->
    [0] cda.
   *[other] cdas.
}
brine-part-tsp = { $amount } { $many ->
    [0] cdta.
   *[other] cdtas.
}
brine-hours-of = { $asked } (valen { $right })
brine-piece = { $roast_the } de { MASS($mass_kg) }
brine-pieces = { NUMBER($count) } × { $roast } de { MASS($mass_kg) }
