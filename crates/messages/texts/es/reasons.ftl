### Por qué no se evaluó algo.

cut-between-parts = la impresión se cortó: no se evaluó nada en el corte entre sus partes ({ $width } de ancho) ni junto a él
no-wash-pair = el caso no nombra ninguna impresión anterior al rebasado junto a un rebasado del mismo maxilar
reason-not-an-impression = no es una impresión: { $what }
no-record-scan = el caso no nombra ningún escaneo del registro intermaxilar
no-vertical-dimensions = el caso no indica ambas dimensiones verticales
no-parcel = el caso no dice nada del envío
too-small-to-see = los de menos de { $least } de ancho no se ven en este escaneo
border-partly-judged = no se pudieron evaluar { $part } de { $whole } del borde: { $why }
over-extension-not-shown = ningún escaneo muestra si el borde es demasiado largo: compárelo con la boca
