### Nombres: maxilares, lados, zonas, puntos anatómicos, fases, documentos.

## Lados: los del paciente.

side = { $side ->
    [right] derecho
   *[left] izquierdo
}

## Maxilares.

arch-maxillary = superior
arch-mandibular = inferior

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
