### Namen: Kiefer, Seiten, Zonen, Landmarken, Stufen, Papiere.

## Seiten: die des Patienten.

side = { $side ->
    [right] rechts
   *[left] links
}

## Kiefer.

arch-maxillary = Oberkiefer
arch-mandibular = Unterkiefer

## Zonen.

zone-labial-flange = labialer Rand
zone-buccal-flange = bukkaler Rand
zone-residual-ridge = Alveolarkamm
zone-tuberosity = Tuber maxillae
zone-hamular-notch = Fossa hamularis
zone-posterior-palatal-seal = dorsale Abdämmung
zone-palate = Gaumen
zone-rugae = Gaumenfalten
zone-incisive-papilla = Papilla incisiva
zone-buccal-shelf = bukkales Feld
zone-retromolar-pad = Trigonum retromolare
zone-distobuccal = distobukkaler Bereich
zone-lingual-flange = lingualer Rand
zone-retromylohyoid = retromylohyoidaler Bereich
