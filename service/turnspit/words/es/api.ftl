api-fault = Eso me supera: algo falló de nuestro lado y quedó en el registro. Dígalo de otra manera.
api-calendar-name = Comida del { $day }
api-place-shop = tienda
api-place-refrigerator = refrigerador
api-place-sink = fregadero
api-place-counter = encimera
api-place-stove = fogón
api-place-oven = horno
api-place-table = mesa
api-lists-of = Listas de { $count ->
    [one] un plato
   *[other] { $count } platos
}.
api-kind-taken = «{ $said }» se calcula como { $kind }.
api-kind-only-one = «{ $said }» se calcula como { $kind }, crudo: si ya viene curado o cocido, los tiempos son otros.
