heat-thaw-refrigerator = Descongelado en un refrigerador a { TEMPERATURE($medium_c) }, desde { TEMPERATURE($start_c) }.
heat-thaw-cold-water = Descongelado en bolsa hermética en agua a { TEMPERATURE($medium_c) }, cambiada cada media hora, desde { TEMPERATURE($start_c) }.
heat-thaw-both = Antes del agua pasa { SPAN($hours_min) } en un refrigerador a { TEMPERATURE($medium_c) }.
heat-thaw-part-frozen = A { TEMPERATURE($start_c) } solo parte de su agua es hielo, y un grado más o menos decide cuánta: palpe si queda hielo y no cuente con la hora más temprana.
heat-thaw-no-rule = Ninguna tabla federal da horas de descongelado para este corte: son calculadas; compruebe que no quede hielo antes de contar con ellas.

# Lo que el pronóstico de un asado da por supuesto.
heat-oven-still = Horno sin ventilador a { OVEN($oven_c) }, caliente cuando entra el asado.
heat-oven-fan = Horno con ventilador a { OVEN($oven_c) }, caliente cuando entra el asado.
heat-thawed = Del todo descongelado, { TEMPERATURE($start_c) } en el centro al entrar.
heat-frozen = Congelado duro al entrar.
heat-part-frozen = Todavía con hielo en el centro al entrar, descongelado por fuera.
heat-count = { $count } piezas de { MASS($mass_kg) } con aire entre ellas: cada una oculta a las demás parte del horno, así que tarda algo más que una sola.
heat-count-crowded = En un horno doméstico { $count ->
    [one] cabe una pieza así
   *[other] caben { $count } piezas así
} con aire alrededor; para más, se cuenta con un horno mayor y con potencia para ello. Si no, use dos hornos o ase por tandas.
heat-tied-joint = Atada y redonda tiene el mayor grosor posible: cerca de un 5 por ciento más que si no se dice. Calculado por su forma, no medido.
heat-untied-joint = Sin atar queda más plana: cerca de un 5 por ciento más rápida que si no se dice. Calculado por su forma, no medido.
heat-tied-bird = Bridada, el muslo y la articulación del ala quedan pegados al cuerpo y tardan más. Calculado por la forma, no medido.
heat-untied-bird = Sin bridar, el muslo y la articulación del ala quedan libres y llegan antes. Calculado por la forma, no medido.
heat-pan-dark = Una fuente oscura calienta más la parte de abajo que una brillante: unos pocos puntos por ciento antes. Que es más rápida está publicado; cuánto, se calcula aquí.
heat-pan-light = Una fuente brillante aparta de la parte de abajo la radiación del horno: unos pocos puntos por ciento después que en una oscura. Que es más lenta está publicado; cuánto, se calcula aquí.
heat-pan-glass = Una fuente de vidrio absorbe la radiación del horno como una oscura: unos pocos puntos por ciento antes que una brillante, calculado y no medido.
heat-stuffed = El relleno entra fresco y suelto, justo antes de asar; su centro decide.
heat-bone-untold = Con hueso o sin él no hay diferencia aquí: ningún tiempo publicado los distingue para esta pieza.
heat-stuffed-slow = Un ave rellena en un horno lento puede tardar mucho más: la única medida que se encontró tardó la mitad más.
heat-spans-chart-and-measured = El margen abarca la tabla federal, lenta para { TEMPERATURE(73.89) }, y 128 aves medidas, que fueron más rápidas.
heat-places-assumed = Cuánto tardan más el muslo y la articulación del ala que la pechuga es una suposición; mida en todos.
heat-shape-only = Ningún tiempo publicado respalda este corte, solo su forma y su composición; por eso el margen es amplio.
heat-mass-extrapolated = Hay tiempos publicados de { MASS($low_kg) } a { MASS($high_kg) }; este queda fuera.
heat-oven-extrapolated = Hay tiempos publicados para hornos de { TEMPERATURE($low_c) } a { TEMPERATURE($high_c) }; este queda fuera.
heat-altitude = A { NUMBER($altitude_m, maximumFractionDigits: 0) } m sobre el mar el agua hierve antes y el aire lleva menos calor.
heat-chill-even = Empieza a { TEMPERATURE($from_c) } en toda la pieza.
heat-chill-ice-bath = En el baño queda hielo hasta el final.
heat-chill-bare = Está en el agua sin bolsa; una bolsa hermética lo mantiene limpio y lo enfría un poco más despacio.
heat-chill-pan-on-ice = La bandeja está sobre el hielo, que solo la enfría por debajo. Removiendo a menudo, o en una bolsa plana dentro del hielo, es varias veces más rápido.
heat-chill-pan-on-shelf = Está en una bandeja sobre un estante, que la enfría más despacio por abajo que por arriba.
heat-chill-bird = De aves enteras solo se hallaron mediciones de pollos en agua con hielo; el grosor es el que indica su asado.
heat-chill-flooded = Se supone que la cavidad se llena de agua, con la abertura hacia arriba; el aire que quede dentro la hace más lenta.
heat-chill-glycol = Por debajo de { TEMPERATURE(0) } es salmuera o glicol, que se supone que conduce el calor como el agua; congela por fuera lo que se deja dentro.
heat-chill-covered = Se supone la olla tapada; destapada se enfría antes mientras está caliente.
heat-chill-like-meat = Se toma como carne cocida que se enfría.
heat-chill-like-soup = Se toma como sopa que se enfría.
heat-chill-large-load = Tanta comida caliente calienta el frigorífico en el que está: el margen lo tiene en cuenta, pero uno lleno o flojo tarda aún más. En bandejas poco hondas se enfría mucho antes.
heat-chill-thin = Se toma como líquido claro, como un caldo, que se mueve solo al enfriarse. Lo espeso o con muchos tropezones tarda varias veces más.
heat-chill-thick = Se toma como espeso, que apenas se mueve solo al enfriarse. Un caldo claro en la misma olla tarda en hielo una fracción; remover ayuda a ambos.
heat-chill-usual-shape = Solo se dio el peso; se tomaron las proporciones usuales: { LENGTH($mm) } de grosor.
heat-chill-rectangular = Una bandeja rectangular de { LENGTH($long_mm) } por { LENGTH($wide_mm) } y { LENGTH($deep_mm) } de hondo; la menor de las tres medidas se toma por la profundidad.
heat-chill-full-pot = Solo se dijo el ancho de la olla: se toma tan honda como ancha, y llena.
heat-chill-bird-by-mass = Un ave se mide por su peso; sus dimensiones no se usaron.
heat-chill-edges-by-mass = No se dijeron todas las medidas: por su peso, redondeada como suelen ser las piezas, lo que falta da { LENGTH($mm) }.
heat-chill-not-stirred = Remover solo cuenta en ollas y en baños de agua; aquí no cambia nada.
heat-rest-board = Reposa { SPAN($rest_min) } sobre una tabla en un cuarto a unos { TEMPERATURE(21) }.
heat-rest-foil = Reposa { SPAN($rest_min) } bajo papel de aluminio suelto en un cuarto a unos { TEMPERATURE(21) }.
heat-rest-wrapped = Reposa { SPAN($rest_min) } envuelto tal como se asó, en una habitación a unos { TEMPERATURE(21) }; así es como más sigue subiendo.
heat-rest-cupboard = Reposa { SPAN($rest_min) } en un armario a unos { TEMPERATURE(60) }.
heat-platter = Se trincha tras el reposo y se dispone con { LENGTH($mm) } de grosor en una fuente; cuenta como caliente hasta { TEMPERATURE($served_c) }. No hay mediciones publicadas de carne trinchada que lo respalden; dos horas después del horno va a la nevera, esté caliente o no.
heat-oven-still-cold = Horno sin ventilador puesto a { OVEN($oven_c) }, frío cuando entra el asado; se calienta con él.
heat-oven-fan-cold = Horno con ventilador puesto a { OVEN($oven_c) }, frío cuando entra el asado; se calienta con él.
heat-oven-extrapolated-one = Solo hay tiempos publicados para hornos a { TEMPERATURE($low_c) }; este queda bastante fuera.
heat-cover = Una tapa cambia el calor y la humedad de un modo no medido aquí; la dirección es segura, el tamaño no.
heat-bastings = Se rocía { $count ->
    [one] una vez
   *[other] { $count } veces
}; cada una cuesta unos { SPAN(4) }, la mitad por la puerta y la mitad por lo que vuelve a secarse.
heat-openings = La puerta se abre { $count ->
    [one] una vez
   *[other] { $count } veces
}; cada vez cuesta unos { SPAN(2) }.
# Lo que hace incierto un tiempo, un número cada vez.
heat-uncertain-size = el grosor de una pieza de este peso
heat-uncertain-station = la profundidad de cada punto respecto a los demás
heat-uncertain-shape = lo redonda que es
heat-uncertain-exchange = lo bien que el horno transmite su calor: tamaño, rejilla, espacio libre
heat-uncertain-crust = lo pronto que se seca la superficie
heat-uncertain-oven = la exactitud del termostato del horno
heat-uncertain-start = lo fría que entra
heat-uncertain-conductivity = lo bien que la carne conduce el calor
heat-uncertain-room = la temperatura de la cocina
heat-uncertain-rest-exchange = las corrientes y el calor donde reposa
heat-uncertain-drip = el jugo que gotea
