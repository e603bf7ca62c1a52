heat-thaw-refrigerator = Descongelado en un refrigerador a { TEMPERATURE($medium_c) }, desde { TEMPERATURE(-18) }.
heat-thaw-cold-water = Descongelado en bolsa hermética en agua a { TEMPERATURE($medium_c) }, cambiada cada media hora.
heat-thaw-no-rule = Ninguna tabla federal da horas de descongelado para este corte: son calculadas; compruebe que no quede hielo antes de contar con ellas.
