planning-headline = Meta { $count ->
    [one] { $roast_the } de { MASS($mass_kg) }
   *[other] { $count } { $roast_many } de { MASS($mass_kg) }
 } al horno { WHEN($oven_in, style: "at") }, empiece a medir { WHEN($check_from, style: "at") }, sirva { WHEN($serve_at, style: "at") }.
planning-headline-later = La comida { WHEN($wished, style: "at") } no se puede cumplir. { $why } Lo más pronto, hecho y seguro: { $plan }
planning-headline-in = { $count ->
    [one] { $roast_the } de { MASS($mass_kg) }
   *[other] { $count } { $roast_many } de { MASS($mass_kg) }
 }, en el horno desde { WHEN($oven_in) }: empiece a medir { WHEN($check_from, style: "at") }, sirva { WHEN($serve_at, style: "at") }.
planning-headline-due = { $count ->
    [one] { $roast_the } de { MASS($mass_kg) }
   *[other] { $count } { $roast_many } de { MASS($mass_kg) }
 }, en el horno desde { WHEN($oven_in) }: empiece a medir ya, sirva { WHEN($serve_at, style: "at") }.
planning-headline-refused = { $seen } { $action } Así que el plan más cercano que cumple la regla: { $plan }
planning-headline-other = { $why } En su lugar: { $way }. { $plan }

planning-assume-kind = El asado es { $roast_a }.
planning-assume-thawed = La pieza está descongelada y fría del refrigerador.
planning-assume-unstuffed = Va sin relleno; el relleno se hornea aparte.
planning-assume-oven = El horno está a { OVEN($oven_c) }, { $fan ->
    [yes] con ventilador
   *[no] sin ventilador
 }.
planning-assume-plain = El ave se vendió natural: ni inyectada ni kosher. Lo dice la etiqueta.
planning-assume-stricter = No se dijo qué cocina es, así que vale la más estricta de las reglas de casa y de local autorizado.
planning-assume-mass-covers = { $count ->
    [one] Pesa { MASS($mass_kg) }
   *[other] Son { $count }, de { MASS($mass_kg) } la pieza
 }, suficiente para { $covers }.
planning-assume-mass = Pesa { MASS($mass_kg) }.
planning-no-time-for-brine = Ya no hay tiempo para la salmuera (al menos { $least_h } h en frío): se sala la piel.
planning-outside-hours = El trabajo empieza { WHEN($at, style: "at") }, fuera del horario habitual; una comida más tarde lo mueve.

planning-way-as-wished = como se pidió, { $roast } de { MASS($mass_kg) }
planning-way-as-wished-why = Al horno { WHEN($at, style: "at") }.
planning-way-too-late-why = Tendría que estar en el horno { WHEN($at, style: "at") }.
planning-way-refrigerator = descongelar { $roast_the } de { MASS($mass_kg) } en el refrigerador
planning-way-refrigerator-why = En el refrigerador tarda { SPAN($span_min) }, así que empezaría { WHEN($at, style: "at") }.
planning-way-refrigerator-late-why = En el refrigerador tarda { SPAN($span_min) }: tendría que haber empezado { WHEN($at, style: "at") }.
planning-way-cold-water = descongelar en agua fría, cambiada cada media hora
planning-way-cold-water-why = En agua fría tarda { SPAN($span_min) } y se cocina enseguida; empieza { WHEN($at, style: "at") }.
planning-way-cold-water-night-why = En agua fría tarda { SPAN($span_min) } y alguien tiene que cambiarla cada media hora; empezando { WHEN($at, style: "at") } cae fuera del horario.
planning-way-cold-water-licensed-why = En agua fría su superficie pasaría { $warm_h } h por encima de { TEMPERATURE(5) }, más de las 4 h que admite una cocina autorizada{ $named ->
    [yes] .
   *[no] ; diga «cocina de casa» si lo es.
 }
planning-way-both = descongelar en el refrigerador y, lo último del hielo, en agua fría
planning-way-both-why = Al refrigerador { WHEN($at, style: "at") }, y { WHEN($water_from, style: "at") } a agua fría, cambiada cada media hora, hasta { SPAN($span_min, style: "rough") }; después se cocina enseguida.
planning-way-both-not-why = Tras el refrigerador necesitaría aún { SPAN($span_min, style: "rough") } en agua fría desde { WHEN($water_from) }: fuera de horario, o templado más tiempo del que admite la regla.
planning-way-frozen = asar sin descongelar, sin relleno
planning-way-frozen-why = Sin descongelar se asa en { SPANS($low_min, $high_min) }; al horno { WHEN($at, style: "at") }.
planning-way-later = la misma pieza, más tarde
planning-way-in-late-why = En el horno desde { WHEN($at) }, listo lo más probable antes de las { CLOCK($ready_at) }; después reposa y se corta.
planning-way-later-why = Al horno { WHEN($oven_in, style: "at") }, en la mesa { WHEN($at, style: "at") }.
planning-way-opened = la misma ave abierta y plana, { MASS($mass_kg) }
planning-way-opened-why = Sin espinazo y aplastada se asa antes en un horno fuerte de { OVEN($oven_c) }: al horno { WHEN($at, style: "at") }. No hay tiempos publicados, así que el margen es amplio.
planning-way-smaller = { $roast_a } de menos peso, { MASS($mass_kg) } como mucho
planning-way-smaller-why = Hasta { MASS($mass_kg) }, sin congelar, aún llega: al horno { WHEN($at, style: "at") }. Dos piezas pequeñas dan de comer a tantos como una grande.
planning-way-breast = { $roast } de { MASS($mass_kg) }
planning-way-breast-why = Se asa antes que el ave entera: al horno { WHEN($at, style: "at") }.

planning-shop = Compre { $count ->
    [one] { $roast_a } de { MASS($mass_kg) }, sin congelar
   *[other] { $count } { $roast_many } de { MASS($mass_kg) }, sin congelar
 }
planning-shop-named = Compre { $count ->
    [one] { $roast_a } de { MASS($mass_kg) }
   *[other] { $count } { $roast_many } de { MASS($mass_kg) }
 }
planning-shop-why = Un ave fresca se compra uno o dos días antes y va directa al frío; una congelada necesita días más.
planning-thaw-refrigerator = Descongele { $count ->
    [one] { $roast_the } de { MASS($mass_kg) }
   *[other] { $count } { $roast_many } de { MASS($mass_kg) }
 } en el refrigerador, en su envoltura, en una bandeja en el estante más bajo
planning-thaw-refrigerator-why = Necesita hasta { SPAN($span_min) }: el mayor entre la regla federal y el tiempo calculado.
planning-thaw-cold-water = Descongele { $count ->
    [one] { $roast_the } de { MASS($mass_kg) }
   *[other] { $count } { $roast_many } de { MASS($mass_kg) }
 } en agua fría, en una envoltura sin fugas
planning-thaw-cold-water-why = Necesita hasta { SPAN($span_min) }: el mayor entre la regla federal y el tiempo calculado. Se cocina enseguida.
planning-thaw-water-change = Cambie el agua cada { $every_min } minutos; el ave siempre cubierta.
planning-thaw-rule = Regla federal: { SPANS($low_min, $high_min) }.
planning-thaw-computed = Calculado: { SPANS($low_min, $high_min) }.
planning-last-ice-refrigerator = Deje { $roast_the } en el refrigerador desde ahora, en una bandeja, hasta { WHEN($at) }; el hielo que quede entonces no estorba: se asa así
planning-last-ice-cold-water = Meta { $roast_the } en agua fría hasta las { CLOCK($at) }, en una bolsa que no gotee, con agua nueva cada 30 min, y de ahí al horno
planning-last-ice-why = Las horas cuentan con el hielo que quede; cuanto menos haya, más parejo se asa.
planning-thaw-check = Toque dentro de la cavidad y en la articulación del muslo: si hay hielo, necesita más tiempo, aquí o en el horno.
planning-brine-make = Prepare la salmuera: { VOLUME($water_l) } de agua, { MASS($salt_kg) } de sal; enfríela con hielo
planning-brine-make-why = { PERCENT($percent) } en peso; está fría del todo antes de meter el ave.
planning-brine-in = Meta { $roast_the } en la salmuera fría, por debajo del líquido
planning-brine-in-why = { $hours } h con esta concentración (de { $low } a { $high } h).
planning-brine-place = El recipiente lleno pesa { MASS($weight_kg) }; estante más bajo, debajo de lo listo para comer.
planning-brine-out = Saque { $roast_the } de la salmuera, tire la salmuera, seque la piel con papel
planning-brine-out-why = Más tiempo solo lo sala más; la salmuera usada es jugo crudo.
planning-dry = Seque { $roast_the } sin tapar en el refrigerador
planning-dry-why = La piel seca se dora en vez de cocerse al vapor.
planning-giblets = Saque de cada ave menudos, cuello y plástico; seque con papel, sin lavar
planning-giblets-why = El papel y el plástico se queman, y el cuello hace la salsa.
planning-giblets-frozen = Saque la bolsa de menudos con pinzas cuando se suelte
planning-giblets-frozen-why = En un ave asada congelada solo se suelta hacia la mitad.
planning-pat-dry = Seque { $roast_the }, sin lavar, y sazone
planning-pat-dry-why = La piel seca se dora; el agua del grifo reparte gérmenes.
planning-truss = Ate y sazone: ate las patas flojas, meta las puntas de las alas debajo, unte con mantequilla
planning-truss-why = El ave atada se asa parejo; las puntas metidas no se queman.
planning-tie = Ate y sazone { $roast_the }
planning-tie-why = Una forma pareja se asa pareja.
planning-season-frozen = Desenvuelva la pieza y póngala en una rejilla sobre una bandeja; sazone cuando la piel se haya descongelado
planning-season-frozen-why = La sal no se pega al hielo.
planning-salt = Ponga sal por todas partes.
planning-salt-lightly = Poca sal o ninguna: ya tiene.
planning-stuff = Rellene el ave ahora, flojo, con el relleno caliente: no antes.
planning-temper = Deje { $roast_the } en la encimera { SPAN($span_min) }
planning-temper-why = Cuenta como tiempo fuera del frío y ahorra solo minutos de horno.

planning-oven-on = Caliente el horno a { OVEN($oven_c) }{ $fan ->
    [yes] , con ventilador
   *[no] {""}
 }
planning-oven-on-why = Los tiempos se calculan con el horno caliente desde el primer minuto.
planning-roast-in = { $count ->
    [one] { $roast } de { MASS($mass_kg) } al horno, { OVEN($oven_c) }
   *[other] { $count } { $roast_many } de { MASS($mass_kg) } al horno, { OVEN($oven_c) }
 }
planning-roast-in-why = Calculado { SPANS($low_min, $high_min) }; el plan cuenta con el lado lento, porque un ave temprana se mantiene caliente y una comida tarde no tiene arreglo.
planning-rack-bird = Pechuga arriba sobre una rejilla, para que la grasa gotee en la bandeja y se aproveche.
planning-rack = Sobre una rejilla, la grasa arriba, para que gotee en la bandeja y se aproveche.
planning-tent = Cubra la pechuga con papel de aluminio suelto cuando esté dorada.
planning-apart = { $count } en un horno: deje un palmo entre ellos y gire las bandejas a la mitad.
planning-baste = Bañe: unte con mantequilla y jugos, cierre pronto la puerta
planning-baste-why = Cada apertura cuesta unos { SPAN($cost_min) }; los tiempos cuentan con ello.
planning-check = Mida la temperatura desde aquí, cada diez a quince minutos; listo a { TEMPERATURE($pull_c) } en el punto más frío
planning-check-why = Se espera de { WHEN($p10) } a { WHEN($p90) }; decide el termómetro.
planning-probe-bird = Mida hondo en la pechuga, en el muslo interior y en la articulación del ala, lejos del hueso: cuenta el más frío.
planning-probe-meat = Mida en el centro de la parte más gruesa, lejos de hueso y grasa: cuenta el más frío.
planning-probe-stuffing = Mida también el centro del relleno: debe marcar { TEMPERATURE(74) } en el horno.
planning-hold = Si está antes: cubra la pieza hasta media hora, luego manténgala a { TEMPERATURE($hot_c) } o más
planning-hold-why = Puede adelantarse hasta { SPAN($early_min, style: "rough") }. Por debajo de { TEMPERATURE($hot_c) } corre el reloj de dos horas.
planning-hold-warm = Si está antes: saque la pieza y déjela reposar más tiempo bajo papel de aluminio, en un lugar tibio
planning-hold-warm-why = Puede adelantarse hasta { SPAN($early_min, style: "rough") }. A { TEMPERATURE($hot_c) } seguiría cociéndose; fuera del horno corre el reloj de dos horas.
planning-rest = { $count ->
    [one] Saque { $roast_the }
   *[other] Saque cada pieza
 } a { TEMPERATURE($pull_c) }; repose { SPAN($span_min) } bajo papel de aluminio suelto
planning-rest-why = El calor sigue hacia dentro: { $station } sube unos { RISE($rise_k) } más y el jugo se asienta.
planning-measure-before-carving = Antes de trinchar debe marcar { TEMPERATURE($safe_c) } en el punto más frío; si no, vuelve al horno.
planning-rest-long = Un ave grande reposa de 30 a 45 minutos.
planning-rest-short = Bastan de 15 a 20 minutos.
planning-station-breast = la pechuga
planning-station-thigh = el muslo interior
planning-station-wing = la articulación del ala
planning-station-stuffing = el relleno
planning-station-centre = el centro

planning-stock = Cueza cuello y menudos (sin el hígado) en agua sin sal para la salsa
planning-stock-why = Los jugos de la bandeja pueden ser salados; con caldo sin sal usted elige.
planning-gravy = Haga la salsa con los jugos y el caldo; manténgala humeante
planning-gravy-why = El asado ya salió del horno y la grasa se ha asentado.
planning-gravy-salty-why = Los jugos de un ave salada son salados: empiece con caldo sin sal y pruebe.
planning-carve-bird = Trinche: quite el hilo, primero las patas por la articulación, la pechuga en lonchas, el muslo en trozos grandes
planning-carve-breast = Trinche: cada mitad del esternón entera, y luego en lonchas a contrafibra
planning-carve = Corte a contrafibra, sin el hilo
planning-carve-many = Trinchen entre { $hands }, { SPAN($span_min, style: "rough") } (uno solo tarda { SPAN($alone_min, style: "rough") }); lo que espera y lo trinchado, tapado a { TEMPERATURE($hot_c) } o más
planning-carve-many-pink = Corten entre { $hands }, { SPAN($span_min, style: "rough") } (uno solo tarda { SPAN($alone_min, style: "rough") }), a contrafibra, sin el hilo
planning-carve-why = Tabla y cuchillo limpios que no hayan tocado el ave cruda.
planning-serve = { $covers ->
    [0] Sirva
   *[other] Sirva a { $covers }
 }
planning-serve-why = El minuto prometido.
planning-leftovers = Las sobras sin hueso, en capa baja, en el refrigerador a más tardar { WHEN($by, style: "at") }
planning-leftovers-why = Dos horas desde el horno; duran de tres a cuatro días y se recalientan a { TEMPERATURE(74) }.
