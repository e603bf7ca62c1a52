api-fault = Eso me supera: algo falló de nuestro lado y quedó en el registro. Dígalo de otra manera.
