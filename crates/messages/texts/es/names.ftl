### Nombres: maxilares, lados, zonas, puntos anatómicos, fases, documentos.

## Zonas.

zone-labial-flange = aleta labial
zone-buccal-flange = aleta bucal
zone-residual-ridge = reborde residual
zone-tuberosity = tuberosidad
zone-hamular-notch = escotadura hamular
zone-posterior-palatal-seal = sellado palatino posterior
zone-palate = paladar
zone-rugae = rugas palatinas
zone-incisive-papilla = papila incisiva
zone-buccal-shelf = repisa bucal
zone-retromolar-pad = almohadilla retromolar
zone-distobuccal = zona distobucal
zone-lingual-flange = aleta lingual
zone-retromylohyoid = zona retromilohioidea

## Una zona de la arcada con su lado.

zone-at-side = { $zone } del lado { $side ->
    [right] derecho
   *[left] izquierdo
}

## Lados, donde nada más dice de quién son.

patient-side = { $side ->
    [right] lado derecho del paciente
   *[left] lado izquierdo del paciente
}

## Puntos anatómicos.

landmark-labial-frenum = frenillo labial
landmark-buccal-frenum = frenillo bucal
landmark-lingual-frenum = frenillo lingual
landmark-incisive-papilla = papila incisiva
landmark-rugae = rugas palatinas
landmark-foveae-palatini = fóveas palatinas

landmark-tuberosity = tuberosidad
landmark-hamular-notch = escotadura hamular
landmark-posterior-palatal-seal = sellado palatino posterior
landmark-retromolar-pad = almohadilla retromolar
landmark-buccal-shelf = repisa bucal
landmark-lingual-flange = aleta lingual

## Puntos anatómicos dentro de una frase, con su artículo.

the-landmark-labial-frenum = el { landmark-labial-frenum }
the-landmark-buccal-frenum = { $side ->
    [right] el { landmark-buccal-frenum } derecho
    [left] el { landmark-buccal-frenum } izquierdo
   *[none] el { landmark-buccal-frenum }
}
the-landmark-lingual-frenum = el { landmark-lingual-frenum }
the-landmark-incisive-papilla = la { landmark-incisive-papilla }
the-landmark-rugae = las { landmark-rugae }
the-landmark-foveae-palatini = las { landmark-foveae-palatini }
the-landmark-tuberosity = { $side ->
    [right] la { landmark-tuberosity } derecha
    [left] la { landmark-tuberosity } izquierda
   *[none] la { landmark-tuberosity }
}
the-landmark-hamular-notch = { $side ->
    [right] la { landmark-hamular-notch } derecha
    [left] la { landmark-hamular-notch } izquierda
   *[none] la { landmark-hamular-notch }
}
the-landmark-posterior-palatal-seal = el { landmark-posterior-palatal-seal }
the-landmark-retromolar-pad = { $side ->
    [right] la { landmark-retromolar-pad } derecha
    [left] la { landmark-retromolar-pad } izquierda
   *[none] la { landmark-retromolar-pad }
}
the-landmark-buccal-shelf = { $side ->
    [right] la { landmark-buccal-shelf } derecha
    [left] la { landmark-buccal-shelf } izquierda
   *[none] la { landmark-buccal-shelf }
}
the-landmark-lingual-flange = { $side ->
    [right] la { landmark-lingual-flange } derecha
    [left] la { landmark-lingual-flange } izquierda
   *[none] la { landmark-lingual-flange }
}

## Impresiones: de un maxilar, en una fase. Todas son femeninas; las frases cuentan con ello.

impression-before-wash = { $jaw ->
    [maxillary] impresión superior antes del lavado
    [mandibular] impresión inferior antes del lavado
   *[unknown] impresión de maxilar desconocido antes del lavado
}
impression-wash = { $jaw ->
    [maxillary] impresión de lavado superior
    [mandibular] impresión de lavado inferior
   *[unknown] impresión de lavado de maxilar desconocido
}
impression-one-step = { $jaw ->
    [maxillary] impresión superior
    [mandibular] impresión inferior
   *[unknown] impresión de maxilar desconocido
}

## Dictámenes.

verdict-accept = aceptar
verdict-rework = retocar
verdict-retake = repetir la impresión
verdict-undecided = sin decidir

## Por qué un hallazgo cuenta para el dictamen.

cause-question = PREGUNTA
cause-fault = NO CUMPLE
cause-missing = FALTA
cause-look = REVISAR
cause-note = nota
cause-held-back = en espera

## Lugares de un escaneo que se buscaron de nuevo.

place-show-through = cubeta visible
place-thin = material delgado
place-void = burbuja
place-nodule = nódulo
place-fold = pliegue
place-hole = hueco en el escaneo
place-short-border = borde corto

## Comprobaciones, y partes de un resultado que varias de ellas necesitan.

check-file-unclear = archivo dudoso
check-unit-unclear = unidad dudosa
check-not-an-impression = no es una impresión
check-arch-mismatch = maxilar distinto
check-orientation-unclear = orientación dudosa
check-show-through = cubeta visible
check-other-colour = otro color
check-show-through-extent = superficie de cubeta visible
check-tissue-stop = tope tisular
check-thin-cover = material delgado
check-tray-seating = asentamiento de la cubeta
check-tray-bent = cubeta doblada
check-tray-joint = unión de la cubeta
check-changed-in-transit = cambio durante el transporte
check-tray-size = tamaño de la cubeta
check-outer-excess = material por fuera de la cubeta
check-tray-at-border = cubeta en el borde
check-under-extension = subextensión
check-border-radius = radio del borde
check-flange-height = altura de la aleta
check-flange-thickness = grosor de la aleta
check-border-overlap = extensión más allá de la cubeta
check-border-asymmetry = asimetría del borde
check-border-change = cambio del borde
check-wash-open = lugar aún sin cubrir
check-wash-thickness = grosor del lavado
check-wash-uneven = lavado desigual
check-scan-ends = el escaneo termina antes del borde
check-border-not-judged = borde no evaluado
check-void = burbuja
check-void-unseen = burbujas no detectables
check-nodule = nódulo
check-fold = pliegue
check-hole = hueco en el escaneo
check-landmark-cut-short = punto anatómico incompleto
check-landmark-obscured = punto anatómico oculto
check-landmark-not-found = punto anatómico no encontrado
check-cover-not-judged = grosor del material no evaluado
check-cover-uncertainty = incertidumbre del grosor
check-tissue-area = superficie tisular escaneada
check-scan-resolution = resolución del escaneo
check-scan-quality = calidad del escaneo
check-interarch-space = espacio entre los rebordes
check-ridge-angle = ángulo entre los rebordes
check-jaw-relation-not-judged = relación intermaxilar no evaluada
check-wash-missing = impresión de lavado
check-impression-age = antigüedad de la impresión
check-interocclusal-distance = distancia interoclusal
check-lip-length = longitud del labio
check-parcel-incomplete = envío incompleto
check-prescription-missing = prescripción
check-disinfection-not-stated = desinfección no indicada
check-border = borde
check-wash = lavado
check-jaw-relation = relación intermaxilar
check-parcel = envío
check-over-extension = sobreextensión
check-cut = corte
