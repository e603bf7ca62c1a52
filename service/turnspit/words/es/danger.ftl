# Respuestas breves a lo que puede hacer daño.
danger-eaten = { $seen } Tire lo que queda. Con fiebre, diarrea con sangre o vómitos que no paran, o si es alguien pequeño, embarazada, mayor o enfermo: llame al médico.
danger-cook_ahead = Sí, si se cocina del todo hasta { TEMPERATURE(73.9) }, se trincha, se enfría en recipientes bajos en 2 h y al día siguiente se recalienta a { TEMPERATURE(73.9) }; entero ni se enfría ni se recalienta.
danger-eaten_raw = La carne cruda, el huevo crudo y lo que los tocó pueden enfermar, en horas o días. Fiebre, diarrea con sangre, vómitos que no paran, o alguien pequeño, embarazada, mayor o enfermo: llame al médico. Esa cuchara va a lavar, no de vuelta.
danger-drive = Solo frío: enfríelo antes y llévelo en una nevera portátil con hielo a { TEMPERATURE(4.44) } o menos todo el camino. Sin frío, o sin calor a { TEMPERATURE(60) }, 2 h es todo, 1 h en un coche caliente.
danger-not-out = No: 2 h en total fuera del frío o del calor, 1 h por encima de { TEMPERATURE(32.22) }. Para entonces está en el refrigerador, o se tira.
danger-brine-out = No: en el refrigerador, salmuera y ave a { TEMPERATURE(4.44) } o menos todo el tiempo. Lo que estuvo en salmuera fuera del frío más de 2 h se tira.
danger-refreeze-cooked = Sí: ya cocinado puede volver a congelarse, en 3–4 días, si se enfrió en 2 h.
danger-hold_which = { TEMPERATURE(57.22) } según el Food Code en una cocina con licencia, { TEMPERATURE(60) } según la guía al consumidor y muchas normas locales: { TEMPERATURE(60) } cumple ambas.
