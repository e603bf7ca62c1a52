# El asado y cómo entra en el horno, como partes de una frase.
asking-roast = { $roast } de { MASS($kg) }
asking-roasts = { $count } { $roast_many } de { MASS($kg) }
asking-how-unstuffed-thawed = , sin relleno,
asking-how-unstuffed-part-frozen = , a medio descongelar y sin relleno,
asking-how-unstuffed-frozen = , sin descongelar y sin relleno,
asking-how-stuffed-thawed = , con relleno,
asking-how-stuffed-part-frozen = , a medio descongelar y con relleno,
asking-how-stuffed-frozen = , sin descongelar y con relleno,
asking-how-plain-thawed = { "" }
asking-how-plain-part-frozen = , a medio descongelar,
asking-how-plain-frozen = , sin descongelar,
asking-station-breast = lo más hondo de la pechuga
asking-station-thigh = interior del muslo
asking-station-wing = articulación del ala
asking-station-stuffing = centro del relleno
asking-station-centre = centro
asking-station-leftovers = trozo más grueso
asking-word-frozen = congelado
asking-word-part_frozen = a medio descongelar
asking-word-thawed = descongelado
asking-word-us = libras y °F
asking-word-metric = kilos y °C
asking-yes = sí
asking-no = no

# Lo que se dio por supuesto.
asking-taken-kind = Supongo { $roast_a }: no se nombró el asado.
asking-taken-mass = Supongo { MASS($kg) }, un peso usual de { $roast }.
asking-taken-mass-for-covers = Supongo { MASS($kg) }, para { $covers } comensales.
asking-one-dinner = Esto es solo para el primer asado; pregunte por el otro aparte: «{ $other }».
asking-taken-hour = No se dijo la hora: se supone en la mesa a las { CLOCK($at) }.
asking-taken-probe-off = Una sonda que puede fallar en { RISE($off_k) } se toma en su peor caso: { TEMPERATURE($c) }.
asking-taken-noon = No se dijo la hora: se supone para { WHEN($at) }.
asking-taken-thawed = Supongo la pieza descongelada del todo y recién sacada del refrigerador.
asking-taken-unstuffed = Supongo que va sin relleno.
asking-taken-oven = Supongo el horno a { OVEN($c) }.
asking-taken-oven-still = Supongo el horno a { OVEN($c) }, sin ventilador.
asking-taken-still = Supongo un horno sin ventilador.
asking-taken-table-salt = Supongo sal de mesa.
asking-taken-reading-now = Supongo que se leyó ahora mismo.
asking-taken-place = Supongo que se leyó en el punto más lento: { $place }.
asking-corrected = Leí «{ $wrote }» como «{ $read }».

# Lo que una sala rechaza.
asking-refused-heavy = { MASS($kg) } es más de lo que puedo planear para una sola pieza ({ $roast }): trabajo con { MASS($low_kg) } a { MASS($high_kg) } por pieza. ¿Es la unidad, o son varias?
asking-refused-light = { MASS($kg) } es menos de lo que puedo planear para una pieza ({ $roast }): trabajo con { MASS($low_kg) } a { MASS($high_kg) } por pieza.
asking-refused-no-mass = Un peso tiene que ser mayor que cero: nada más ligero se puede asar.
asking-refused-past = { WHEN($at) } ya pasó, así que no hay plan que hacer.
asking-refused-far = Para { WHEN($at) } faltan más de dos meses: pregunte más cerca del día.
asking-refused-time = Para { WHEN($at) } no conozco ninguna forma segura de llegar.
asking-refused-temperature = { TEMPERATURE($c) } queda fuera de lo que puedo responder.
asking-refused-volume = { VOLUME($litres) } queda fuera de lo que puedo responder.
asking-refused-covers = No puedo cocinar para { $count }: diga un número de comensales desde 1.
asking-refused-unknown = No conozco «{ $value }».
asking-refused-value = Con { $value } no puedo trabajar aquí.

# Preguntas de vuelta, y opciones para tocar.
asking-ask-kind = ¿Qué asado es?
asking-ask-mass = ¿Cuánto pesa?
asking-ask-serve_at = ¿A qué hora es la cena?
asking-ask-covers = ¿Cuántos comen?
asking-ask-temperature = ¿Son °F o °C?
asking-ask-volume = ¿De qué tamaño es el recipiente?
asking-ask-unit = ¿En qué unidad está?
asking-ask-target_unit = ¿A qué unidad?
asking-ask-amount = ¿Cuánto de qué, y a qué unidad?
asking-ask-scale = ¿De cuántas raciones a cuántas?
asking-ask-again = ¿Qué cambio, o qué quiere saber de ella?
asking-ask-other = ¿Puede decirlo otra vez, con el número y su unidad?
asking-ask-roast-and-time = ¿Qué asa, cuánto pesa y a qué hora es la cena?
asking-ask-sold-as = ¿La etiqueta dice natural, inyectado («contiene hasta … de solución») o kosher?
asking-choice-plain = es natural, no inyectado
asking-choice-injected = es inyectado
asking-choice-kosher = es kosher, como uno inyectado
asking-choice-covers = para { $count }
asking-choice-at = cena a las { CLOCK($at) }

# Líneas que podrían seguir.
asking-next-plan = pavo de { MASS(7.2575, style: "own") }, cena a las 6
asking-next-size = pavo para 14 con sobras, ¿de qué tamaño?
asking-next-thaw = cuánto tarda en descongelarse un pavo de { MASS(9.979, style: "own") } en el refrigerador
asking-next-brine = salmuera para un pavo de { MASS(8.1647, style: "own") }
asking-next-doneness = { TEMPERATURE(54.44, style: "own") } en la pechuga a las 4:30, cena a las 6
asking-next-safety = lo dejé fuera 3 horas
asking-next-convert = 2 tazas de sal kosher en gramos
asking-next-help = ayuda
asking-next-why = ¿por qué?
asking-next-shown = ¿qué tienes?
asking-next-start-over = empezar de nuevo
asking-next-assumed = ¿qué supusiste?
asking-next-make-it = que sea de { MASS($kg, style: "own") }
asking-next-stuffed = ¿y si va relleno?
asking-next-unstuffed = ¿y si va sin relleno?
asking-next-frozen = ¿y si está congelado?
asking-next-at-six = cena a las 6
asking-next-push = cena a las { CLOCK($at) }
asking-next-how-long = ¿cuánto tarda?
asking-next-probe = ¿dónde pongo el termómetro?
asking-next-early = ya está listo antes de tiempo
asking-next-hold = ¿cómo lo mantengo caliente?
asking-next-carve = ¿cómo lo trincho?
asking-next-rest = ¿cuánto reposa?
asking-next-leftovers = sobras
asking-next-left-out = lo dejé fuera 3 horas
asking-next-reheat = ¿cómo lo recaliento?
asking-next-pink = está rosado
asking-next-frozen-plan = { $roast } de { MASS($kg, style: "own") }, sin descongelar, cena mañana a las 6
asking-next-counter = ¿puedo descongelarlo en la encimera?
asking-next-bucket = ¿cabe en un balde de { VOLUME(18.927, style: "own") }?
asking-next-kosher-salt = con sal kosher gruesa
asking-next-overnight = en salmuera toda la noche
asking-next-brine-plan = con salmuera, cena mañana a las 6
asking-next-for = ¿y para { $count }?
asking-next-with-leftovers = con sobras
asking-next-without-leftovers = sin sobras
asking-next-when-in = ¿cuándo lo meto al horno para cenar a las 6?
asking-next-in-unit = ¿y en { $unit }?
asking-next-double = el doble
asking-next-scale = escalar de 6 raciones a 14

# ayuda, sin entender, preguntas sobre la respuesta
asking-help-headline = Diga qué asa, cuánto pesa y a qué hora es la cena; yo cuento hacia atrás. Por ejemplo:
asking-help-plan = Un plan con horas: «{ $example }»
asking-help-size = Cuánto comprar: «{ $example }»
asking-help-thaw = Descongelar: «{ $example }»
asking-help-brine = Salmuera: «{ $example }»
asking-help-doneness = Cómo va: «{ $example }»
asking-help-safety = Si es seguro: «{ $example }»
asking-help-convert = Cantidades: «{ $example }»
asking-unknown-headline = No lo entendí; planeo asados, de la compra a las sobras.
asking-unknown-in-talk = No lo entendí. La cena sigue como estaba.
asking-as-before = Eso no cambia nada: { $answer }
asking-unknown-empty = Pregúnteme por su asado.
asking-started-over = Borrado. ¿Qué asa, y a qué hora es la cena?
asking-assumed-headline = Di por supuesto { $count ->
    [one] una cosa
   *[other] { $count } cosas
 }; corrija cualquiera con una respuesta.
asking-assumed-nothing = No supuse nada: todo estaba dicho.
asking-shown-headline = Esto es lo que guardo de la conversación:
asking-shown-nothing = Aún no se ha dicho nada.
asking-shown-said = { $what } (lo dijo usted)
asking-shown-assumed = { $what } (supuesto)
asking-value-roast-kind = asado: { $value }
asking-value-roast-mass_kg = peso: { MASS($value) }
asking-value-roast-count = cuántos: { $value }
asking-value-roast-state = estado: { $value }
asking-value-roast-stuffed = con relleno: { $value }
asking-value-roast-bone_in = con hueso: { $value }
asking-value-roast-injected = inyectado: { $value }
asking-value-roast-target_c = temperatura final deseada: { TEMPERATURE($value) }
asking-value-covers = comensales: { $value }
asking-value-leftovers_wanted = con sobras: { $value }
asking-value-serve_at = cena: { WHEN($value) }
asking-value-start_at = al horno: { WHEN($value) }
asking-value-oven-temperature_c = horno: { OVEN($value) }
asking-value-oven-convection = ventilador: { $value }
asking-value-oven-count = hornos: { $value }
asking-value-brine-wanted = salmuera: { $value }
asking-value-brine-hours = horas en salmuera: { $value }
asking-value-brine-water_l = agua para la salmuera: { VOLUME($value) }
asking-value-brine-vessel_l = recipiente: { VOLUME($value) }
asking-value-brine-salt_kind = sal: { $value }
asking-value-amount-value = cantidad: { $value }
asking-value-amount-unit = unidad: { $value }
asking-value-amount-item = de: { $value }
asking-value-amount-target_unit = a: { $value }
asking-value-scale-from = raciones ahora: { $value }
asking-value-scale-to = raciones deseadas: { $value }
asking-value-scale-factor = factor: { $value }
asking-value-reading-temperature_c = lectura: { TEMPERATURE($value) }
asking-value-reading-place = leída en: { $value }
asking-value-reading-at = leída a las: { WHEN($value) }
asking-value-reading-oven_left_on = horno encendido: { $value }
asking-value-elapsed_h = horas pasadas: { $value }
asking-value-altitude_m = altitud: { $value } m
asking-value-subject = sobre: { $value }
asking-value-units = unidades: { $value }

# Listo, reposo, antes de tiempo
asking-done-bird = Listo cuando lo más frío entre lo hondo de la pechuga, el interior del muslo y la articulación del ala, lejos del hueso, marca { TEMPERATURE($c) }.
asking-done-joint = Fuera del horno cuando el centro, lejos del hueso, marca { TEMPERATURE($c) }; el mínimo seguro es { TEMPERATURE($safe_c) }.
asking-rest = Déjelo reposar { SPANS($low_min, $high_min) } antes de trinchar; mientras tanto sigue calentándose por dentro.
asking-rest-large = Una pieza grande como esta reposa { SPANS($low_min, $high_min) } antes de trinchar; mientras tanto sigue calentándose por dentro.
asking-early-headline = Listo antes de tiempo: sáquelo, cúbralo flojo con papel de aluminio unos 30 min y luego manténgalo caliente a { TEMPERATURE(60) } o más hasta la cena.
asking-early-hold = Para mantenerlo: el horno al mínimo que conserve la carne a { TEMPERATURE(60) }, tapado, con una taza de caldo en la bandeja; entero queda más jugoso que en lonchas.
asking-early-carved = Para una espera larga, trínchelo, ponga las lonchas en una bandeja baja con caldo caliente, bien tapadas, a { TEMPERATURE(60) }.
asking-early-clock = Si no se mantiene caliente, las dos horas cuentan desde que sale del horno.
asking-hold-until = Manténgalo caliente hasta las { CLOCK($serve_at) }: unos 30 min bajo papel de aluminio, luego tapado en el horno más bajo que lo conserve a { TEMPERATURE(60) } o más. Sin calor, se come o se enfría antes de las { CLOCK($by) }.
asking-hold-until-asked = Sí, si se mantiene caliente: unos 30 min bajo papel de aluminio, luego tapado en el horno más bajo que lo conserve a { TEMPERATURE(60) } o más hasta las { CLOCK($serve_at) }. Sin calor, se come o se enfría antes de las { CLOCK($by) }.
asking-why-early = Un ave entera cubierta sigue caliente una media hora (práctica común, sin fuente); después solo el calor la mantiene por encima de { TEMPERATURE(60) }.

# roast_time
asking-roast_time-headline = { $roast }{ $how } a { OVEN($oven_c) }: { SPANS($low_min, $high_min) }. Empiece a medir { SPAN($check_min) } después de meterlo; decide el termómetro.
asking-roast_time-clock = { $roast }{ $how } al horno { WHEN($start_at, style: "at") }: listo entre las { CLOCK($low_at) } y las { CLOCK($high_at) }. Empiece a medir a las { CLOCK($check_at) }; decide el termómetro.
asking-roast_time-frozen = Sin descongelar tarda la mitad más, o más aún: saque los menudillos cuando se suelten; sal y mantequilla solo con la piel ya descongelada.
asking-roast_time-advice = Métalo contando con el lado largo del margen: un asado adelantado se mantiene caliente, uno atrasado no se puede apurar.
asking-why-ensemble = { $members } asados calculados, cada uno con otro horno, otra forma y otro frío inicial, llegan a { TEMPERATURE($c) } ({ $station }) entre { SPAN($low_min) } (uno de cada diez) y { SPAN($high_min) } (nueve de cada diez); el del medio en { SPAN($middle_min) }.
asking-why-spread = El margen viene de lo que nadie puede saber antes: cuánto miente el horno, cómo se mueve el aire, cuánto tarda en secarse la piel, lo frío que entra.
asking-why-calibration-measured = El modelo está ajustado a aves medidas en un horno de ensayo y llega hasta la tabla federal, que es más lenta; el margen abarca las dos.
asking-why-calibration-chart = El modelo está ajustado a la tabla federal de este asado.
asking-why-calibration-shape-only = Para este asado no hay tiempos medidos con que ajustar el modelo: solo forma y composición, por eso el margen es más ancho.
asking-why-loss = En el camino pierde de { PERCENT($low) } a { PERCENT($high) } de su peso en jugo y grasa.
asking-why-safe = Su mínimo seguro es { TEMPERATURE($c) }, y solo lo prueba una lectura, nunca el modelo.
asking-why-source = Fuente: { $source }.
asking-why-sources = Fuentes: { $sources }{ $more ->
    [0] .
   *[other] ; y { $more } más.
 }

# thaw
asking-thaw-refrigerator = { $roast }: { SPANS($low_min, $high_min) } en el refrigerador, sobre una bandeja, en su envoltura.
asking-thaw-cold-water = En agua fría: hasta { SPAN($plan_min, style: "rough") }, en una bolsa sin fugas, agua nueva cada 30 min, y a cocinar en seguida.
asking-thaw-cold-water-rule = En agua fría: { SPAN($rule_min, style: "rough") } (30 min por libra, cerca de una hora por kilo), en una bolsa sin fugas, agua nueva cada 30 min, y a cocinar en seguida.
asking-thaw-cold-water-longer = En agua fría: 30 min por libra (una hora por kilo) son { SPAN($rule_min, style: "rough") }, según el cálculo puede tardar hasta { SPAN($plan_min, style: "rough") }; en una bolsa sin fugas, agua nueva cada 30 min, y a cocinar en seguida.
asking-thaw-from-frozen = Se puede asar sin descongelar, sin relleno, a { OVEN($oven_c) }: la mitad más de tiempo, o más; calculado, { SPANS($low_min, $high_min) }.
asking-thaw-hurried = Aún congelado: agua fría, 30 min por libra (una hora por kilo), cambiada cada media hora, y a cocinar en seguida; o áselo sin descongelar, sin relleno, con la mitad más de tiempo, o más.
asking-thaw-keeps = Descongelado en el refrigerador aguanta 1 a 2 días más antes de cocinarlo (la carne roja, 3 a 5).
asking-thaw-licensed = En una cocina con licencia el agua fría puede no servir: el exterior pasa de { TEMPERATURE(5) } hasta { SPAN($hours_min, style: "rough") }, y el límite son 4 h.
asking-why-thaw-refrigerator = Calculado para el refrigerador: { SPANS($low_min, $high_min) }; se planea con { SPAN($plan_min, style: "rough") }.
asking-why-thaw-cold-water = Calculado para el agua fría: { SPANS($low_min, $high_min) }; se planea con { SPAN($plan_min, style: "rough") }.
asking-why-thaw-rule = La regla federal: { SPANS($low_min, $high_min) } (Let's Talk Turkey; The Big Thaw).
asking-why-thaw-safer = Donde el modelo y la regla difieren se planea con lo más largo.

# brine
asking-brine-dry-or-wet = En seco es más sencillo y la piel queda más crujiente: sin recipiente, pero uno o dos días de frío. En agua va más rápido y conserva más jugo, parte de él agua (práctica común, sin fuente).
asking-brine-per-gallon = { PERCENT($percent) } de sal en peso: ¾ de taza de sal de mesa por galón, { $grams } g por litro; mejor pesarla.
asking-brine-strength = { PERCENT($percent) } de sal en peso, { $grams } g por litro; mejor pesarla.
asking-brine-make = Disuelva la sal en { VOLUME($hot_l) } de agua hirviendo y viértala sobre { MASS($ice_kg) } de hielo y { VOLUME($water_l) } de agua fría: unos { TEMPERATURE($brine_c) }.
asking-brine-per-mass = { NUMBER($per_kg, maximumFractionDigits: 0) } g de sal por kilo ({ NUMBER($grams, maximumFractionDigits: 1) } g por libra), unas { NUMBER($spoons, maximumFractionDigits: 1) } cdtas. de { $salt } por libra.
asking-why-brine-cover = { VOLUME($cover_l) } cubren el ave en un recipiente de su forma; ella misma ocupa el lugar de { VOLUME($displaced_l) }.

# carve
asking-carve-bird = Déjelo reposar; luego quite el hilo, separe los muslos por la articulación, saque las pechugas enteras y córtelas en lonchas al través, y la carne del muslo en trozos grandes.
asking-carve-joint = Déjelo reposar; luego córtelo en lonchas contra la fibra con un cuchillo largo bien afilado.
asking-carve-bird-how = Los muslos primero, por la articulación; después, a lo largo del esternón, cada pechuga entera; las alas al final (práctica común, sin fuente).
asking-carve-joint-how = Huesos fuera de una pieza, cuerda fuera, lonchas iguales contra la fibra; el jugo va a la salsa (práctica común, sin fuente).
asking-carve-board = Tabla y cuchillo limpios, nunca los de lo crudo; se trincha al sentarse a la mesa y lo que sobra va al frío antes de 2 h.
asking-why-rest = El reposo iguala el calor por dentro, y lo más frío aún sube; cortado en seguida deja más jugo en la tabla.
asking-why-yield = Rendimientos según las tablas federales de nutrientes (SR28, por libra lista para cocinar).

# leftovers
asking-leftovers-headline = Antes de 2 h fuera del calor: sin huesos, en lonchas, en recipientes bajos tapados, al refrigerador; se come en 3–4 días, recalentado a { TEMPERATURE(73.9) }.
asking-leftovers-but-stood = Lo que estuvo fuera { SPAN($minutes) }: tírelo. Lo que fue al refrigerador antes de 2 h: cómalo en 3–4 días.
asking-leftovers-keep = Las sobras frías aguantan 3–4 días en el refrigerador a { TEMPERATURE(4.44) } o menos.
asking-leftovers-keep-licensed = Marcadas con fecha, a { TEMPERATURE(5) } o menos, pueden guardarse 7 días, contando el de cocción como día 1; en casa, 3–4 días.
asking-leftovers-reheat = Recaliente a { TEMPERATURE(73.9) } en todo su interior, tapado y humedecido con caldo; la salsa, hasta que hierva.
asking-leftovers-freeze = O congélelas antes de 3–4 días: seguras mientras sigan congeladas, mejores en 2 a 6 meses.
asking-leftovers-two-stage = Una cocina con licencia enfría de { TEMPERATURE(57.2) } a { TEMPERATURE(21.1) } en 2 h y hasta { TEMPERATURE(5) } en 6 h en total.
asking-leftovers-bones = Carcasa y cuello dan caldo: a la olla o al frío dentro de las mismas 2 h.
asking-why-leftovers = Entre { TEMPERATURE(4.44) } y { TEMPERATURE(60) } los gérmenes pueden duplicarse en unos 20 minutos; el límite federal es 2 h, 1 h por encima de { TEMPERATURE(32.2) } (Leftovers and Food Safety).
asking-why-shallow = Un ave entera tarda muchas horas en enfriarse por dentro; unas lonchas en un recipiente bajo, una fracción.

# doneness
asking-doneness-when-bird = Sale cuando lo más frío marca { TEMPERATURE($c) }: lo hondo de la pechuga, el interior del muslo y la articulación del ala, lejos del hueso.
asking-doneness-when-joint = Saque { $roast_the } cuando el centro marque { TEMPERATURE($c) }, lejos del hueso{ $is_safe ->
    [yes] {""}
   *[no] ; seguro desde { TEMPERATURE($safe_c) }
 }.
asking-doneness-probe-bird = Tres puntos: lo más hondo de la pechuga, el interior del muslo y la articulación del ala, con la punta lejos del hueso; cuenta el más frío, y con { TEMPERATURE($c) } ahí está listo.
asking-doneness-probe-joint = En el centro de lo más grueso, la punta lejos de hueso y grasa, desde el costado; cuenta el punto más frío, y con { TEMPERATURE($safe_c) } ahí es seguro.
asking-doneness-stuffed = Con relleno: también el centro del relleno tiene que marcar { TEMPERATURE(73.9) } antes de salir del horno.
asking-doneness-unmeasured = Sin termómetro no hay manera segura: ni el color, ni el jugo, ni las horas prueban nada. Pida prestado o compre uno, el más barato sirve; el centro tiene que marcar { TEMPERATURE($safe_c) }.
asking-doneness-till-then = Mientras tanto déjelo en el horno más allá del final de su tiempo: de más queda seco, de menos puede enfermar a alguien.
asking-doneness-stall = Se estanca, y ahí es lo normal: lo que se evapora enfría tanto como calienta el horno, a veces durante horas. Espere, o envuelva bien en papel de aluminio (práctica común, sin fuente).
asking-safety-holds-how-long = Mientras todo siga a { TEMPERATURE(60) } o más, midiendo cada hora; si baja, 2 h en total, y después se tira.
asking-doneness-signs = Ni el color, ni el jugo claro, ni el botón que salta prueban nada; el termómetro sí.
asking-dial-cold = El horno calienta { RISE($off_k) } de menos: ponga el mando a { TEMPERATURE($dial_c) } para { TEMPERATURE($c) }.
asking-dial-hot = El horno calienta { RISE($off_k) } de más: ponga el mando a { TEMPERATURE($dial_c) } para { TEMPERATURE($c) }.
asking-doneness-late = Va tarde: no abra el horno, súbalo { RISE(14) } y, si hace falta, separe los muslos; nunca lo sirva por debajo de { TEMPERATURE($c) }.
asking-why-coldest = El calor llega al último a lo más hondo; lo que se atrasa decide, por eso solo cuenta la lectura más fría.
asking-doneness-ready = { TEMPERATURE($c) } ({ $place }) a las { CLOCK($at) }: listo entre las { CLOCK($low_at) } y las { CLOCK($high_at) }, dentro de { SPANS($low_min, $high_min) }. Empiece a medir a las { CLOCK($check_at) }; sale a { TEMPERATURE($pull_c) }.
asking-doneness-done = { TEMPERATURE($c) } ({ $place }): ahí está listo; sale si todos los demás puntos marcan { TEMPERATURE($pull_c) }.
asking-doneness-others = Mida los demás puntos antes de sacarlo del horno; cuenta el más frío.
asking-doneness-unexpected = Ningún asado calculado marcaba eso a esa hora: revise dónde está la sonda y qué hace de verdad el horno.
asking-doneness-on-time = La cena de las { CLOCK($serve_at) } se mantiene: incluye { SPAN($rest_min) } de reposo y { SPAN($carve_min) } para trinchar.
asking-doneness-early = Sobran unos { SPAN($spare_min, style: "rough") } antes de las { CLOCK($serve_at) }, contando reposo y trinchado: ya listo, cúbralo y luego manténgalo caliente a { TEMPERATURE(60) }.
asking-doneness-maybe-late = La cena de las { CLOCK($serve_at) } va justa: con { SPAN($rest_min) } de reposo y { SPAN($carve_min) } para trinchar llega a la mesa entre las { CLOCK($low_at) } y las { CLOCK($high_at) }.
asking-doneness-will-be-late = La cena de las { CLOCK($serve_at) } se atrasa: con { SPAN($rest_min) } de reposo y { SPAN($carve_min) } para trinchar llega a la mesa entre las { CLOCK($low_at) } y las { CLOCK($high_at) }.
asking-why-placed = La lectura se coloca sobre { $members } asados calculados; los que marcaban como el suyo a esa hora dicen lo que falta.
asking-next-late = va con retraso

# plan
asking-plan-first = Primero, { WHEN($at) }: { $title }.
asking-plan-ready = Se espera listo entre las { CLOCK($low_at) } y las { CLOCK($high_at) }: sale cuando lo más frío marca { TEMPERATURE($c) }.
asking-plan-task = { WHEN($at) }: { $title }.
asking-plan-by = Hacia { WHEN($at) }, o antes: { $title }.
asking-plan-hold = { $title }.
asking-plan-way = O bien: { $title }. { $why }
asking-plan-why = { $title }: { $why }

# convert
asking-amount-g = { NUMBER($value, maximumFractionDigits: 2) } g
asking-amount-kg = { NUMBER($value, maximumFractionDigits: 3) } kg
asking-amount-oz = { NUMBER($value, maximumFractionDigits: 2) } oz
asking-amount-lb = { NUMBER($value, maximumFractionDigits: 2) } lb
asking-amount-mL = { NUMBER($value, maximumFractionDigits: 1) } mL
asking-amount-L = { NUMBER($value, maximumFractionDigits: 2) } L
asking-amount-tsp = { NUMBER($value, maximumFractionDigits: 2) } cdta.
asking-amount-tbsp = { NUMBER($value, maximumFractionDigits: 2) } cda.
asking-amount-cup = { NUMBER($value, maximumFractionDigits: 2) } { $value ->
    [one] taza
   *[other] tazas
 }
asking-amount-floz = { NUMBER($value, maximumFractionDigits: 1) } fl oz
asking-amount-pint = { NUMBER($value, maximumFractionDigits: 2) } { $value ->
    [one] pinta
   *[other] pintas
 }
asking-amount-quart = { NUMBER($value, maximumFractionDigits: 2) } { $value ->
    [one] cuarto
   *[other] cuartos
 }
asking-amount-gal = { NUMBER($value, maximumFractionDigits: 2) } { $value ->
    [one] galón
   *[other] galones
 }
asking-amount-degC = { NUMBER($value, maximumFractionDigits: 0) } °C
asking-amount-degF = { NUMBER($value, maximumFractionDigits: 0) } °F
asking-amount-gas_mark = gas { NUMBER($value, maximumFractionDigits: 2) }
asking-amount-cm = { NUMBER($value, maximumFractionDigits: 1) } cm
asking-amount-in = { NUMBER($value, maximumFractionDigits: 2) } pulgadas
asking-amount-of = { $amount } de { $item }
asking-unit-g = gramos
asking-unit-kg = kilos
asking-unit-oz = onzas
asking-unit-lb = libras
asking-unit-mL = mililitros
asking-unit-L = litros
asking-unit-tsp = cucharaditas
asking-unit-tbsp = cucharadas
asking-unit-cup = tazas
asking-unit-floz = onzas líquidas
asking-unit-pint = pintas
asking-unit-quart = cuartos
asking-unit-gal = galones
asking-unit-degC = grados Celsius
asking-unit-degF = grados Fahrenheit
asking-unit-gas_mark = marca de gas
asking-unit-cm = centímetros
asking-unit-in = pulgadas
asking-convert-exact = { $given } = { $found }
asking-convert-about = { $given } ≈ { $found }
asking-convert-between = { $given } ≈ { $found } ({ NUMBER($low, maximumFractionDigits: 2) }–{ NUMBER($high, maximumFractionDigits: 2) })
asking-convert-range = { $given } ≈ { NUMBER($low, maximumFractionDigits: 2) }–{ $found }, según la clase: mejor pesarla.
asking-convert-kind = { $kind }: { NUMBER($low, maximumFractionDigits: 2) }–{ $found }
asking-convert-fan = { $fan ->
    [yes] { OVEN($given_c) } sin ventilador ≈ { OVEN($c) } con ventilador.
   *[no] { OVEN($given_c) } con ventilador ≈ { OVEN($c) } en un horno sin él.
}
asking-convert-fan-gas = { OVEN($given_c) } con ventilador ≈ gas { NUMBER($mark, maximumFractionDigits: 2) }: el horno de gas no tiene.
asking-convert-fan-check = De un horno a otro cambia unos grados: empiece a medir antes y que decida el termómetro.
asking-why-fan = El aire en movimiento calienta más deprisa: para el mismo asado el horno se pone { RISE($rise_k) } más bajo.
asking-convert-incomplete = Necesito una cantidad y su unidad, como «2 tazas de harina en gramos».
asking-taken-metric-cups = Las tazas y cucharas se toman como métricas: una taza son 250 mL, una cucharada { $region ->
    [AU] 20
   *[other] 15
 } mL.
asking-taken-imperial = Pintas, galones y onzas líquidas se toman como imperiales: una pinta son 568 mL (la de EE. UU., 473 mL).
asking-next-convert-oven = { OVEN(176.67, style: "own") } en marca de gas
asking-why-exact = Las dos unidades se definen una por otra; la cifra es exacta y se redondea a lo que mide una cocina.
asking-why-measured = De volumen a peso se va por medidas caseras publicadas; según se llene, tamice o apriete sale el margen.
asking-refused-negative = { $value } está por debajo de cero: no existe esa cantidad.
asking-refused-food = No tengo un peso publicado de «{ $value }». Dígalo por su nombre llano, como «sal gruesa» o «harina».
asking-refused-item = No tengo un peso publicado para «{ $value }»; lo más cercano que conozco: { $known }.
asking-refused-which-item = Una taza de harina y una de miel no pesan lo mismo: necesito saber de qué.
asking-ask-item = ¿De qué?

# safety
asking-safety-finding = { $seen } { $action }
asking-safety-unknown = Lo que no se dijo se toma en su valor menos seguro.
asking-safety-why = { $reason } ({ $citation })
asking-safety-stuffing = Mejor hornee el relleno aparte; dentro del ave solo si su centro marca { TEMPERATURE(73.9) } antes de salir del horno.
asking-safety-stuffing-degrees = { TEMPERATURE(73.9) } en el centro del relleno, dentro del ave o en una fuente, antes de salir del horno.
asking-safety-stuffing_mixed = Lo seco y lo húmedo pueden prepararse la víspera y guardarse por separado en el refrigerador; mézclelos justo antes de que el relleno entre en el ave o en el horno. Nunca rellene el ave con antelación.
asking-safety-water_unchanged = El agua que no se cambia cada 30 min se calienta. Si alguna parte estuvo a más de { TEMPERATURE(4.44) } por más de 2 h, o nadie lo sabe, tírelo; si no, a agua fría limpia, y cocínelo enseguida.
asking-safety-pink = El color no prueba nada, ni el botón que salta: { TEMPERATURE(73.9) } en el punto más frío del ave, sí.
asking-safety-stuffing-how = Dentro: húmedo, suelto, unos ¾ de taza por libra, templado y justo antes de asar; para entonces la carne marca unos { TEMPERATURE(80) } y queda más seca (práctica común, sin fuente).
asking-next-refreeze = ¿puedo volver a congelarlo?

# size
asking-size-eaters = los { $eaters } de { $covers } que lo comen
asking-size-headline = Unos { MASS($kg) } de { $roast } para { $covers }; { MASS($more_kg) } si quiere sobras.
asking-size-headline-leftovers = Unos { MASS($more_kg) } de { $roast } para { $covers } con sobras; { MASS($kg) } sin ellas.
asking-size-headline-none = Unos { MASS($kg) } de { $roast } para { $covers }, sin que sobre.
asking-size-headline-either = Unos { MASS($kg) } de { $roast } para { $covers }, y algo sobra.
asking-size-with-leftovers = Con sobras hacen falta unos { MASS($kg) }.
asking-size-several = Es más de una pieza: { $count } × { MASS($each_kg) }.
asking-size-feeds = { $roast } alcanza para unos { $plain }, o { $more } con sobras.
asking-size-unknown = Cuente { MASS(0.4536) } de ave entera por persona, la mitad más si quiere sobras.
asking-why-size = { MASS($per_kg) } en crudo por persona, { MASS($more_per_kg) } con sobras (Let's Talk Turkey; lo de las sobras es práctica común, sin fuente).

# scale
asking-scale-headline = { $how }.
asking-scale-servings = De { NUMBER($from, maximumFractionDigits: 1) } a { NUMBER($to, maximumFractionDigits: 1) } raciones: { $how }.
asking-scale-multiply = multiplique todas las cantidades por { NUMBER($factor, maximumFractionDigits: 3) }
asking-scale-divide = divida todas las cantidades entre { NUMBER($by, maximumFractionDigits: 1) }
asking-scale-amount = { $given } × { NUMBER($factor, maximumFractionDigits: 2) } = { $found }
asking-scale-short = Divida { $there } de { $item } por lo que pide la receta y tome esa parte de todo lo demás.
asking-ask-needed = ¿Cuánto { $item } pide la receta?
asking-scale-not-linear = No van al paso: la sal, las especias fuertes y los espesantes (empiece con tres cuartos del aumento y pruebe), las levaduras, los líquidos que hierven en una olla ancha.
asking-scale-time = El tiempo sigue al grosor, no al peso: una bandeja llena hasta la misma altura tarda lo mismo; dos pueden necesitar un giro.
asking-scale-incomplete = Dígame de cuántas raciones a cuántas, o por qué factor.
asking-why-scale = El método del factor: raciones deseadas entre raciones de ahora, en peso (TM 10-412); lo que no lo sigue es práctica común, sin fuente.

asking-brine-ratio = ¾ de taza de sal de mesa por galón de agua ({ $grams } g por litro, { PERCENT($percent) } en peso), { NUMBER($low, maximumFractionDigits: 0) }–{ NUMBER($high, maximumFractionDigits: 0) } h, a { TEMPERATURE(4.44) } o menos.
asking-why-brine-strength = { PERCENT($percent) } de sal en peso; la guía federal es ¾ de taza de sal de mesa por galón de 8 a 48 h (Poultry: Basting, Brining, and Marinating).
asking-why-brine-none = Un ave vendida inyectada, autobañada o kosher ya lleva su sal; con más queda demasiado salada.
asking-size-half = De un ave entera se come cerca de la mitad: { MASS($meat_kg) } de carne trinchada, { $servings } raciones de { MASS($serving_kg) }.
asking-size-meat = Trinchado da { MASS($meat_kg) }, { $servings } raciones de { MASS($serving_kg) }.
asking-carve-amount = { $roast } da unos { MASS($kg) } de carne trinchada, unos { $servings } platos.
asking-done-joint-rising = Fuera del horno cuando el centro, lejos del hueso, marca { TEMPERATURE($c) }; el reposo lo lleva a unos { TEMPERATURE($target_c) }.
asking-why-placed-untimed = Sin la hora en que entró, cada uno de { $members } asados calculados se toma desde que marca lo mismo; lo que le falta desde ahí da el margen.
asking-choice-when = cena { WHEN($at) }
asking-safety-warm_holding = Manténgalo a { TEMPERATURE(60) } o más: la primera media hora cubierto con papel de aluminio, luego tapado en el horno más bajo que lo conserve así, con una taza de caldo en la bandeja; mídalo cada hora.
asking-size-enough = { $roast } alcanza para { $covers }: hacen falta unos { MASS($need_kg) }.
asking-size-short = { $roast } no alcanza para { $covers }: faltan unos { MASS($short_kg) } de los { MASS($need_kg) } que hacen falta; mejor { $pieces }.
asking-line = { $text }
asking-scale-recipe = { $name }, por { NUMBER($factor, maximumFractionDigits: 2) }:
asking-scale-recipe-servings = { $name }, para { NUMBER($servings, maximumFractionDigits: 1) } (por { NUMBER($factor, maximumFractionDigits: 2) }, de { NUMBER($base, maximumFractionDigits: 1) }):
asking-next-scale-gravy = escalar la salsa a 20 raciones
asking-next-half = la mitad
asking-dish-gravy = salsa
asking-dish-dressing = relleno
asking-dish-potatoes = papas
asking-dish-cranberry = salsa de arándanos
asking-dish-greens = verduras
asking-dish-carrots = zanahorias
asking-size-side-volume = { $dish } para { $covers }: { VOLUME($low) } a { VOLUME($high) }.
asking-size-side-mass = { $dish } para { $covers }: { MASS($low) } a { MASS($high) } en crudo.
asking-size-side-pieces = { $dish } para { $covers }: { $low } a { $high }.
asking-size-side-volume-about = { $dish } para { $covers }: unos { VOLUME($low) }.
asking-size-side-mass-about = { $dish } para { $covers }: unos { MASS($low) } en crudo.
asking-size-side-pieces-about = { $dish } para { $covers }: { $low }.
asking-size-side-recipe = Para una receta de ese tamaño: «escalar { $dish } a { $covers } raciones».
asking-scale-your-recipe = su receta
asking-doneness-resting-done = { TEMPERATURE($c) } ({ $place }), fuera del horno: ahí está listo; mida que los demás puntos marquen { TEMPERATURE($safe_c) } y déjelo reposar.
asking-doneness-resting-rising = { TEMPERATURE($c) } ({ $place }), fuera del horno: puede subir { RISE($rise_k) } más por sí solo; mida otra vez a los 10 y a los 20 min, y por debajo de { TEMPERATURE($safe_c) } vuelve al horno.
asking-doneness-resting-back = { TEMPERATURE($c) } ({ $place }) es poco para reposar: por sí solo sube unos { RISE($rise_k) }. Vuelva a meterlo en el horno caliente hasta que marque { TEMPERATURE($safe_c) }.
asking-why-rise = { $members } asados calculados, sacados a { TEMPERATURE($c) }, suben ahí { RISE($rise_k) } en el medio del margen; cuenta lo que usted mida.
asking-taken-bird-target = { TEMPERATURE($wished_c) } es poco para un ave: calculado para { TEMPERATURE($c) }.
asking-carve-rise = El punto más frío sube todavía de { RISE($low_k) } a { RISE($high_k) } en el reposo.
asking-safety-spoiled = Mal olor, baba o envase hinchado: tírelo, no pruebe nada; cocinarlo no lo hace seguro.
asking-doneness-pull = { TEMPERATURE($c) } ({ $place }): sáquelo ya (desde { TEMPERATURE($pull_c) }); el reposo lo lleva a unos { TEMPERATURE($target_c) } o más.
asking-doneness-reached = { TEMPERATURE($c) } ({ $place }): { TEMPERATURE($pull_c) } alcanzados, sáquelo ya.
asking-thaw-enough = { SPAN($given_min) } deberían bastar: se planea con hasta { SPAN($plan_min, style: "rough") }. Palpe si queda hielo dentro.
asking-thaw-not-enough = { SPAN($given_min) } pueden no bastar: se planea con hasta { SPAN($plan_min, style: "rough") }.

# Los peligros, que se responden primero
asking-safety-too-rare = { TEMPERATURE($c) } es demasiado crudo para ser seguro: siga asando hasta { TEMPERATURE(62.78) }. Solo la tabla de tiempos del código baja más: todo mantenido a { TEMPERATURE(54.44) } durante { SPAN($table_min) }, medido.
asking-safety-back = Aún no es seguro: { TEMPERATURE($c) }, y un ave tiene que marcar { TEMPERATURE(73.9) } en su punto más frío antes de trincharla. Puede subir en el reposo: mida otra vez a los 10 min y, si no llega, vuelva a meterla en el horno.
asking-safety-oven-on-again = Encienda otra vez el horno, a { OVEN($oven_c) }: marca { TEMPERATURE($c) } y debe marcar { TEMPERATURE(73.9) } en su punto más frío antes de salir; la cena se retrasa lo que estuvo apagado y algo más. Más de 2 h apagado y por debajo de { TEMPERATURE(60) }: tírelo.
asking-safety-if-raw = Eso vale para lo cocinado: el ave cruda solo aguanta 1 a 2 días.
asking-safety-refreeze = Sí, si se descongeló en el refrigerador y no estuvo fuera más de 2 h; lo descongelado en agua, en microondas o no se sabe cómo se cocina primero.
asking-safety-thaw_place-warm = No: { TEMPERATURE($c) } es demasiado calor para descongelar. Al refrigerador ahora mismo; si por fuera pasó más de 2 h por encima de { TEMPERATURE(4.44) }, tírelo.
asking-safety-thaw_place-cold = { TEMPERATURE($c) } es bastante frío, mientras siga a { TEMPERATURE(4.44) } o menos: mídalo mañana y noche; el refrigerador es más seguro.
asking-safety-thaw_place-unmeasured = No, ahí no: descongélelo en el refrigerador. Solo vale un lugar que siga a { TEMPERATURE(4.44) } o menos, medido; lo que se descongeló donde hace más calor por más de 2 h, o donde nadie lo sabe, se tira.
asking-safety-hot-water = No, en agua tibia o caliente no: calienta lo de fuera mientras el centro es hielo. Al refrigerador o a agua fría ahora; si fueron más de 2 h, o no se sabe, tírelo.
asking-safety-brine_reuse = No: la salmuera y el adobo usados contienen jugos crudos. Tírelos y prepare otros.
asking-safety-clock-starts = Desde que baja de { TEMPERATURE(60) }, o sea desde el horno, no desde que se trincha: 2 h en total, 1 h por encima de { TEMPERATURE(32.22) }.
asking-safety-rests-how-long = Hasta que se acerque a { TEMPERATURE(60) }: entonces manténgalo ahí o más caliente. Si no, se come o se enfría antes de 2 h desde el horno.
asking-safety-at-risk = No: para niños pequeños, embarazadas, mayores o enfermos debe marcar { TEMPERATURE($needed_c) }, no { TEMPERATURE($temperature_c) }.
asking-carve-when-safe = Antes de trinchar, el centro tiene que marcar { TEMPERATURE($safe_c) }, medido; si no, vuelve al horno.
asking-carve-below-safe = { TEMPERATURE($c) } queda por debajo del mínimo seguro de { TEMPERATURE($safe_c) }: no es para niños, embarazadas, mayores ni enfermos.
asking-tender = A { TEMPERATURE($safe_c) } es segura pero firme, para lonchas; para deshebrarla, despacio hasta unos { TEMPERATURE($pulled_c) } (práctica común, sin fuente).

# La salmuera: ¿está bien?
asking-brine-longest = No más de { NUMBER($high, maximumFractionDigits: 0) } h{ $method ->
    [dry] {""}
   *[other] {" "}con unos 58 g de sal por litro
 }; bastan { NUMBER($low, maximumFractionDigits: 0) } h. Más tiempo la deja demasiado salada, y dos días es lo más para carne cruda.
asking-brine-label-first = Lea primero la etiqueta: no, si dice solución añadida, inyectado, autobañado o kosher, porque ya está salado. Si es natural, puede ir en salmuera.
asking-brine-enough = Sí, { SPAN($hours_min) } bastan: de { NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) } h con esta concentración.
asking-brine-not-too-long = No, { SPAN($hours_min) } no es demasiado: de { NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) } h con esta concentración.
asking-brine-too-long = Demasiado: con { SPAN($hours_min) } queda muy salado con esta concentración; { NUMBER($high, maximumFractionDigits: 0) } h como mucho.
asking-brine-too-short = { SPAN($hours_min) } es poco: de { NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) } h con esta concentración.
asking-brine-over-two-days-bird = Demasiado: dos días como mucho, en el refrigerador. Si ya lleva más, tírelo: el ave cruda no aguanta tanto.
asking-brine-over-two-days-joint = Demasiado: dos días en salmuera como mucho, en el refrigerador.
asking-brine-done = { SPAN($hours_min) } está bien (de { NUMBER($low, maximumFractionDigits: 0) } a { NUMBER($high, maximumFractionDigits: 0) } h): sáquelo, déjelo escurrir y séquelo; sin más sal, o muy poca.
asking-brine-after = Seque la piel sin tapar en el estante más bajo del refrigerador; tire la salmuera, lave y desinfecte lo que tocó.
asking-taken-brined = Supongo la pieza ya salada en salmuera: sin más sal, o muy poca.

# Una lectura vieja, un asado que aún no entró
asking-doneness-overdue = { TEMPERATURE($c) } ({ $place }) a las { CLOCK($at) }: tenía que estar antes de las { CLOCK($high_at) }. Mida otra vez ahora; sale a { TEMPERATURE($pull_c) }.
asking-doneness-due = { TEMPERATURE($c) } ({ $place }) a las { CLOCK($at) }: se esperaba entre las { CLOCK($low_at) } y las { CLOCK($high_at) }, así que mida otra vez ahora; sale a { TEMPERATURE($pull_c) }.
asking-taken-not-in-yet = { WHEN($start_at) } está aún por llegar: calculado solo con la lectura.
asking-refused-hours = Esas horas no casan: no se puede medir antes de meterlo.
asking-ask-when-in = ¿A qué hora entró al horno?

# ¿Descongelado a tiempo?
asking-thaw-by-day-yes-late = No, no es tarde: en el refrigerador desde ahora está descongelado para { WHEN($high_at) }, a tiempo para { WHEN($by) }.
asking-thaw-by-day-maybe-late = Quizá sea tarde: en el refrigerador desde ahora está descongelado entre { WHEN($low_at) } y { WHEN($high_at) }; no cuente con { WHEN($by) }.
asking-thaw-by-day-no-late = Sí, ya es tarde para el refrigerador: está descongelado como pronto { WHEN($low_at) }, después de { WHEN($by) }.
asking-too-late = Sí, ya es tarde. { $plan }
asking-in-time = No, da tiempo. { $plan }
asking-thaw-by-day-yes = Sí: en el refrigerador desde ahora está descongelado para { WHEN($high_at) }, a tiempo para { WHEN($by) }.
asking-thaw-by-day-maybe = Quizá: en el refrigerador desde ahora está descongelado entre { WHEN($low_at) } y { WHEN($high_at) }; no cuente con { WHEN($by) }.
asking-thaw-by-day-no = No: en el refrigerador desde ahora está descongelado como pronto { WHEN($low_at) }, tarde para { WHEN($by) }.
asking-thaw-in-time-yes = Sí: se descongela a tiempo; en el refrigerador tarda { SPANS($low_min, $high_min) }.
asking-thaw-in-time-no = No: en el refrigerador tarda { SPANS($low_min, $high_min) }.
asking-thaw-not-overnight = Toda la noche no: el agua se cambia cada 30 min y se cocina en seguida. De noche, en el refrigerador.

# Preguntado otra vez, con opciones
asking-ask-oven = ¿A cuánto está el horno?
asking-ask-reading = ¿Cuánto marca el termómetro?
asking-choice-mass = pesa { MASS($kg, style: "own") }
asking-choice-oven = horno a { OVEN($c, style: "own") }
asking-choice-reading = marca { TEMPERATURE($c, style: "own") }
asking-thanked = De nada. ¡Buen provecho!
asking-size-a-little-short = { $roast } queda un poco corto para { $covers }: faltan unos { MASS($short_kg) } de { MASS($need_kg) }; lo completa una pechuga o unas patas aparte, o porciones algo menores.
asking-size-pieces = Para { $covers } comensales hacen falta { MASS($need_kg) }: { $pieces }.
asking-next-standing = ¿cuánto tiempo puede estar fuera?
asking-next-keeps = ¿cuántos días aguantan las sobras?
asking-next-freeze = ¿puedo congelar las sobras?
asking-next-too-long = ¿son demasiado 3 días en salmuera?
asking-next-frozen-how-long = ¿cuánto tarda sin descongelar?
asking-next-brined-plan = ya estuvo en salmuera, cena a las 6
asking-next-doneness-joint = { TEMPERATURE(48.89, style: "own") } en el centro a las 4:30, cena a las 6

# Varias piezas

# Respuestas cortas sobre seguridad
asking-safety-standing = 2 h en total fuera del frío o del calor, 1 h por encima de { TEMPERATURE(32.22) }: antes, al refrigerador; después, a la basura.
asking-safety-slow-cooker = No, en olla lenta no: horno, fuego o microondas, hasta { TEMPERATURE(73.9) } en menos de 2 h; después la olla lenta caliente puede mantenerlo.
asking-safety-stuffed_ahead = Rellenar antes, no. Si ya está hecho: tire el relleno, ase el ave sin rellenar y hornee relleno nuevo aparte; si pasó más de 2 h fuera del frío, tire ambos.
asking-safety-partial_cooking = No, mitad ahora y mitad luego no: cocínelo entero de una vez. Lo que quedó a medias y se enfrió se tira.
asking-safety-thawed_on_counter = No, nunca en la encimera: en el refrigerador, o en agua fría cambiada cada 30 min. Lo que estuvo fuera más de 2 h se tira.
asking-safety-hot-day = { SPAN($minutes) } es demasiado un día de más de { TEMPERATURE(32.22) }, en un coche caliente o al sol: tírelo. Si estuvo más fresco, el límite son 2 h: al refrigerador ahora.
asking-plan-too-rare = { TEMPERATURE($c) } queda por debajo del mínimo seguro, así que se planea hasta { TEMPERATURE($safe_c) }: { $plan }
asking-safety-target-bird = { TEMPERATURE($c) }, medidos, en lo más frío entre lo hondo de la pechuga, el interior del muslo y la articulación del ala.
asking-safety-target = { TEMPERATURE($c) }, medidos en el centro de lo más grueso, lejos del hueso.
asking-safety-time_control = 4 h en total, con la hora marcada y un procedimiento escrito; lo que quede entonces se tira. Sin él, 2 h.
asking-taken-cut = Supongo { $roast }: no se dijo qué corte.
asking-convert-dial = { $given } ≈ { $found } en el mando del horno ({ $exact } exactos)
asking-safety-target-pink = Sí, si el centro marcó { TEMPERATURE($c) } y reposó 3 min: una pieza entera puede quedar rosada. Sin medir, o con menos: de vuelta al horno.
asking-safety-target-any = { TEMPERATURE(62.78) } en piezas enteras de res, cordero, ternera y cerdo, { TEMPERATURE(71.1) } en carne picada, { TEMPERATURE(73.9) } en aves y relleno, medidos.
asking-safety-cold-enough = { TEMPERATURE($c) } es bastante frío: { TEMPERATURE(4.44) } o menos.
asking-refused-together = Esas dos cosas no van juntas, así que no planeo nada con ellas.
asking-safety-slow-oven = No: { OVEN($c) } es un horno demasiado lento. Póngalo a { OVEN(162.78) } o más.
asking-safety-holds = Solo cuando haya marcado { TEMPERATURE($cooked_c) } por todas partes: entonces { TEMPERATURE($c) } lo mantiene, no lo cocina. { $action }
asking-safety-enough = { TEMPERATURE($c) } basta. { $action }
asking-safety-washed = No: lavar aves o carne crudas reparte sus gérmenes. Séquelas con papel y limpie y desinfecte lo que tocaron.
asking-safety-thawed_keeps = El ave cruda aguanta 2 días como mucho en el refrigerador, en salmuera o sin ella (la carne roja, 3 a 5). Después se tira.
asking-leftovers-freeze-yes = Sí, congélelas antes de 3–4 días: seguras mientras sigan congeladas, mejores en 2 a 6 meses.
asking-leftovers-freeze-long = En el congelador es seguro mientras siga congelado, mejor dentro de 2 a 6 meses; congélelo dentro de 3–4 días.
asking-carve-breast = Déjela reposar; luego separe cada lado del esternón entero y córtelo en lonchas contra la fibra.
asking-carve-breast-how = A lo largo del esternón, cada pechuga entera, y luego lonchas iguales (práctica común, sin fuente).
asking-plan-other = No como se quería, pero sí así: { $way }. { $plan }
asking-plan-later = La comida { WHEN($wished, style: "at") } no se puede cumplir. Lo más pronto, hecho y seguro: { $plan }
asking-under-way-due = En el horno desde { WHEN($start_at) }: se espera entre { CLOCK($low_at) } y { CLOCK($high_at) }, así que mida ya; sale a { TEMPERATURE($c) }.
asking-under-way-overdue = En el horno desde { WHEN($start_at) }: se esperaba para { CLOCK($high_at) }. Mida ya; sale a { TEMPERATURE($c) }, no antes.
asking-taken-to-pull = Supongo que es para deshebrar, desde { TEMPERATURE($c) }: pasados { TEMPERATURE($safe_c) } ya es seguro, y firme.
asking-compared-stuffed = Sin relleno tarda { SPANS($low_min, $high_min) }: con relleno, unos { SPAN($more_min, style: "rough") } más.
asking-compared-frozen = Descongelado tarda { SPANS($low_min, $high_min) }: el hielo lo alarga unos { SPAN($more_min, style: "rough") }.
asking-compared-flat = Entero tarda { SPANS($low_min, $high_min) }: aplanado, unos { SPAN($more_min, style: "rough") } menos.
asking-compared-count = Uno solo tarda { SPANS($low_min, $high_min) }: { $count } juntos tardan unos { SPAN($more_min, style: "rough") } más, con aire entre ellos, y no { $count } veces más.
asking-compared-fan = Sin ventilador tarda { SPANS($low_min, $high_min) }: a la misma temperatura el ventilador ahorra unos { SPAN($more_min, style: "rough") }.
asking-compared-by-weight = Son de { $low_kg } a { $high_kg } minutos por kilo (de { $low } a { $high } por libra) con este peso; uno más pequeño tarda más por kilo, uno más grande menos.
asking-carve-loss = { $roast } pierde del { PERCENT($low) } al { PERCENT($high) } de su peso en el horno, casi todo agua: quedan unos { MASS($left_kg) } a { TEMPERATURE($c) }, con huesos.
asking-ahead = El día antes: haga el caldo para la salsa, la salsa de arándanos y los postres; seque el pan y pique las verduras del relleno; ponga la mesa.
asking-ahead-roast = El asado: sálelo o póngalo en salmuera, y luego déjelo descubierto en el refrigerador toda la noche, en el estante más bajo, para que se seque la piel.
asking-ahead-not = No antes del día: rellenar el ave, mezclar el relleno húmedo con huevo crudo, ni asarla en parte. Las papas peladas esperan en agua fría en el refrigerador.
asking-brine-too-late = Ya es tarde para la salmuera: quiere { SPAN($hours_min, style: "rough") } como mínimo y una hora para escurrir, y el asado entra { WHEN($oven_in, style: "at") }.
asking-brine-late-instead = Mejor sálelo ahora en seco y déjelo descubierto en frío hasta que entre; o corte la pechuga en la mesa y ofrezca una salsa con sal.
asking-brine-in-time = Da tiempo: a la salmuera { WHEN($at, style: "at") }, { SPAN($hours_min, style: "rough") } o más; se asa desde { WHEN($oven_in) }.
asking-compared-altitude = A nivel del mar tarda { SPANS($low_min, $high_min) }: la altura cambia unos { SPAN($more_min, style: "rough") }; el agua hierve a menos grados y la superficie se seca antes. Guíese por el termómetro.
asking-doneness-resting-rising-wished = { TEMPERATURE($c) } ({ $place }), fuera del horno: sube unos { RISE($rise_k) } más, hasta cerca de los { TEMPERATURE($target_c) } que quiere. Es menos que el mínimo seguro de { TEMPERATURE($safe_c) }: no para niños, embarazadas, mayores o enfermos.
asking-doneness-resting-back-wished = { TEMPERATURE($c) } ({ $place }) es poco para reposar: solo sube unos { RISE($rise_k) } por sí solo, menos que los { TEMPERATURE($target_c) } que quiere. Vuelve al horno caliente.
asking-taken-coarse-kosher = Sal kosher sin marca, tomada como la gruesa: la de escamas pide casi el doble de tazas, así que mejor pesarla.
asking-carve-rest-long = { SPAN($rest_min) } es más de lo que aguanta caliente: déjelo reposar { SPANS($low_min, $high_min) } y luego manténgalo tapado a { TEMPERATURE(60) } o más. Fuera del calor, 2 h en total como mucho.
asking-carve-rest-enough = Sí, { SPAN($rest_min) } bastan: lo usual para uno así son { SPANS($low_min, $high_min) }.
asking-carve-rest-short = { SPAN($rest_min) } es poco: mejor { SPANS($low_min, $high_min) }, o se pierde más jugo en la tabla.
asking-brine-safe = Sí, siempre a { TEMPERATURE(4.4) } o menos: { SPAN($hours_min) } está entre { NUMBER($low, maximumFractionDigits: 0) } y { NUMBER($high, maximumFractionDigits: 0) } h con esta concentración, y dos días es lo máximo.
asking-safety-thaw_place-warm-risky = Sí, lo es: { TEMPERATURE($c) } es demasiado calor para descongelar. Al refrigerador ahora mismo; si por fuera pasó más de 2 h por encima de { TEMPERATURE(4.44) }, tírelo.
asking-safety-thaw_place-unmeasured-risky = Sí, lo es: descongélelo en el refrigerador. Solo vale un lugar que siga a { TEMPERATURE(4.44) } o menos, medido; lo que se descongeló donde hace más calor por más de 2 h, o donde nadie lo sabe, se tira.
asking-safety-hot-water-risky = Sí, lo es: el agua tibia o caliente calienta lo de fuera mientras el centro es hielo. Al refrigerador o a agua fría ahora; si fueron más de 2 h, o no se sabe, tírelo.
asking-safety-slow-cooker-risky = Sí, lo es: use horno, fuego o microondas, hasta { TEMPERATURE(73.9) } en menos de 2 h; después la olla lenta caliente puede mantenerlo.
asking-safety-stuffed_ahead-risky = Sí, lo es: no se rellena antes. Si ya está hecho: tire el relleno, ase el ave sin rellenar y hornee relleno nuevo aparte; si pasó más de 2 h fuera del frío, tire ambos.
asking-safety-partial_cooking-risky = Sí, lo es: cocínelo entero de una vez. Lo que quedó a medias y se enfrió se tira.
asking-safety-thawed_on_counter-risky = Sí, lo es: descongélelo en el refrigerador, o en agua fría cambiada cada 30 min. Lo que estuvo fuera más de 2 h se tira.
asking-safety-slow-oven-risky = Sí, lo es: { OVEN($c) } es un horno demasiado lento. Póngalo a { OVEN(162.78) } o más.
asking-safety-washed-risky = Sí, lo es: lavar aves o carne crudas reparte sus gérmenes. Séquelas con papel y limpie y desinfecte lo que tocaron.
asking-refused-count = { $count } piezas son más de las que caben en un horno: calculo hasta { $most } por horno.
asking-ask-ovens = ¿Cuántos hornos hay, o cuántos se meten a la vez?
