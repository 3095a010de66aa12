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

zone-labial-flange = labialer Funktionsrand
zone-buccal-flange = bukkaler Funktionsrand
zone-residual-ridge = Kieferkamm
zone-tuberosity = Tuber maxillae
zone-hamular-notch = Hamularkerbe
zone-posterior-palatal-seal = dorsale Abdämmung
zone-palate = Gaumen
zone-rugae = Gaumenfalten
zone-incisive-papilla = Papilla incisiva
zone-buccal-shelf = bukkale Auflagefläche
zone-retromolar-pad = Trigonum retromolare
zone-distobuccal = distobukkaler Bereich
zone-lingual-flange = lingualer Funktionsrand
zone-retromylohyoid = retromylohyoidaler Bereich

## Ein Bereich des Kiefers mit seiner Seite.

zone-at-side = { $zone } { $side ->
    [right] rechts
   *[left] links
}

## Landmarken.

landmark-labial-frenum = Lippenbändchen
landmark-buccal-frenum = Wangenbändchen
landmark-lingual-frenum = Zungenbändchen
landmark-incisive-papilla = Papilla incisiva
landmark-rugae = Gaumenfalten
landmark-foveae-palatini = Foveae palatinae
landmark-tuberosity = Tuber maxillae
landmark-hamular-notch = Hamularkerbe
landmark-posterior-palatal-seal = dorsale Abdämmung
landmark-retromolar-pad = Trigonum retromolare
landmark-buccal-shelf = bukkale Auflagefläche
landmark-lingual-flange = lingualer Funktionsrand

## Landmarken am Anfang eines Satzes, ohne Artikel.

the-landmark-labial-frenum = { landmark-labial-frenum }
the-landmark-buccal-frenum = { $side ->
    [right] { landmark-buccal-frenum } rechts
    [left] { landmark-buccal-frenum } links
   *[none] { landmark-buccal-frenum }
}
the-landmark-lingual-frenum = { landmark-lingual-frenum }
the-landmark-incisive-papilla = { landmark-incisive-papilla }
the-landmark-rugae = { landmark-rugae }
the-landmark-foveae-palatini = { landmark-foveae-palatini }
the-landmark-tuberosity = { $side ->
    [right] { landmark-tuberosity } rechts
    [left] { landmark-tuberosity } links
   *[none] { landmark-tuberosity }
}
the-landmark-hamular-notch = { $side ->
    [right] { landmark-hamular-notch } rechts
    [left] { landmark-hamular-notch } links
   *[none] { landmark-hamular-notch }
}
the-landmark-posterior-palatal-seal = Dorsale Abdämmung
the-landmark-retromolar-pad = { $side ->
    [right] { landmark-retromolar-pad } rechts
    [left] { landmark-retromolar-pad } links
   *[none] { landmark-retromolar-pad }
}
the-landmark-buccal-shelf = { $side ->
    [right] Bukkale Auflagefläche rechts
    [left] Bukkale Auflagefläche links
   *[none] Bukkale Auflagefläche
}
the-landmark-lingual-flange = { $side ->
    [right] Lingualer Funktionsrand rechts
    [left] Lingualer Funktionsrand links
   *[none] Lingualer Funktionsrand
}
