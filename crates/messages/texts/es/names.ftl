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

zone-labial-flange = aleta vestibular anterior
zone-buccal-flange = aleta vestibular posterior
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
