# Notas sobre las conversiones.
quantities-us-measures = Cucharas, tazas, pintas y galones se toman como medidas de EE. UU.
quantities-vague-measure = La medida ({ $unit }) no tiene tamaño fijo; el intervalo es el de uso en las cocinas.
quantities-weigh = Sin balanza varía de un cocinero a otro: péselo.
quantities-which-salt = Las sales kosher y marinas difieren: una taza de escamas ligeras pesa poco más de la mitad que una de cristales densos. Diga cuál es, o pésela.
quantities-gas-mark = Las marcas de gas son nominales; los hornos difieren en unos { RISE(20) }.
