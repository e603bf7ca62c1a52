# Cuánto tarda algo caliente en enfriarse, y con cuánta altura puede estar.
cooling-times = { SPANS($first_low, $first_high) } hasta { TEMPERATURE(21.11) } y { SPANS($total_low, $total_high) } hasta { TEMPERATURE(5) }, ambos desde { TEMPERATURE(57.22) }
cooling-hours-ok = { $times }: cumple las dos etapas, 2 h y 6 h en total.
cooling-hours-warn = { $times }: quizá no cumpla las dos etapas, 2 h y 6 h en total.
cooling-hours-stop = { $times }: demasiado lento, el límite es 2 h y 6 h en total.
cooling-in_time-ok = Sí: { $times }; el límite es 2 h y 6 h en total.
cooling-in_time-warn = Quizá no: { $times }; el límite es 2 h y 6 h en total.
cooling-in_time-stop = No: { $times }; el límite es 2 h y 6 h en total.
cooling-depth = { LENGTH($depth_mm) } de hondo como máximo en el refrigerador, { LENGTH($iced_mm) } en un baño de hielo: nueve de cada diez veces son { TEMPERATURE(21.11) } en 2 h y { TEMPERATURE(5) } en 6 h en total. Mídalo.
cooling-depth-ice = { LENGTH($iced_mm) } de hondo como máximo en un baño de hielo: nueve de cada diez veces son { TEMPERATURE(21.11) } en 2 h y { TEMPERATURE(5) } en 6 h en total. Mídalo.
cooling-hot-in = Sí, caliente y enseguida, pero no en una olla honda: { LENGTH($depth_mm) } de hondo como máximo, o antes { LENGTH($iced_mm) } en un baño de hielo; así llega a { TEMPERATURE(21.11) } en 2 h y a { TEMPERATURE(5) } en 6 h en total.
cooling-hot-in-ice = No en una olla honda: antes en un baño de hielo, { LENGTH($iced_mm) } de hondo como máximo; así llega a { TEMPERATURE(21.11) } en 2 h y a { TEMPERATURE(5) } en 6 h en total.
cooling-hot-in-whole = Entero no: deshuesado y rebanado, y entonces caliente y enseguida, { LENGTH($depth_mm) } de hondo como máximo, o antes { LENGTH($iced_mm) } en un baño de hielo; así llega a { TEMPERATURE(21.11) } en 2 h y a { TEMPERATURE(5) } en 6 h en total.
cooling-hot-in-whole-ice = Entero no: deshuesado y rebanado, antes en un baño de hielo, { LENGTH($iced_mm) } de hondo como máximo; así llega a { TEMPERATURE(21.11) } en 2 h y a { TEMPERATURE(5) } en 6 h en total.
cooling-or-ice = O en un baño de hielo, { LENGTH($iced_mm) } de hondo como máximo.
cooling-pans = Con { LENGTH($depth_mm) } de hondo llena { $pans } { $pans ->
    [one] bandeja entera de servicio
   *[other] bandejas enteras de servicio
} (de unos { LENGTH(508) } por { LENGTH(305) }).
cooling-carve = Entero no: antes quítele el hueso y rebánelo.
cooling-place-warm = Nunca: un refrigerador a { TEMPERATURE($c) } no lo lleva a { TEMPERATURE(5) }. Póngalo a { TEMPERATURE(3) } y use mientras tanto un baño de hielo.
cooling-home = En casa: al refrigerador en 2 h desde que dejó el fuego, en capa baja y sin tapar hasta que esté frío.
cooling-taken-refrigerator = Un refrigerador a { TEMPERATURE($c) }, con el aire casi quieto.
cooling-taken-blast_chiller = Un abatidor a { TEMPERATURE($c) }.
cooling-taken-ice_bath = Un baño de hielo, con hielo hasta el final.
cooling-ask = ¿Cuánto es y con cuánta altura está?
cooling-why = Calculado con { $members } variaciones de tamaño, propiedades y enfriamiento; una previsión no prueba nada, el termómetro sí.
