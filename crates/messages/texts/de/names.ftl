### Namen: Kiefer, Seiten, Zonen, Landmarken, Stufen, Papiere.

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

## Seiten, wo nichts sonst sagt, wessen sie sind.

patient-side = { $side ->
    [right] rechte Patientenseite
   *[left] linke Patientenseite
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

## Abformungen: eines Kiefers, auf einer Stufe. Alle sind weiblich; Sätze rechnen damit.

impression-before-wash = { $jaw ->
    [maxillary] Oberkieferabformung vor dem Wash
    [mandibular] Unterkieferabformung vor dem Wash
   *[unknown] Abformung eines unbekannten Kiefers vor dem Wash
}
impression-wash = { $jaw ->
    [maxillary] Wash-Abformung des Oberkiefers
    [mandibular] Wash-Abformung des Unterkiefers
   *[unknown] Wash-Abformung eines unbekannten Kiefers
}
impression-one-step = { $jaw ->
    [maxillary] Oberkieferabformung
    [mandibular] Unterkieferabformung
   *[unknown] Abformung eines unbekannten Kiefers
}

## Ergebnisse.

verdict-accept = annehmen
verdict-rework = nacharbeiten
verdict-retake = neu abformen
verdict-undecided = unentschieden

## Warum ein Befund für das Ergebnis zählt.

cause-question = FRAGE
cause-fault = MANGEL
cause-missing = FEHLT
cause-look = ANSEHEN
cause-note = Hinweis
cause-held-back = zurückgestellt

## Stellen eines Scans, nach denen wieder gesucht wurde.

place-show-through = freiliegender Löffel
place-thin = dünnes Material
place-void = Blase
place-nodule = Materialperle
place-fold = Falte
place-hole = Loch im Scan
place-short-border = kurzer Rand

## Prüfungen, und Teile eines Ergebnisses, die mehrere von ihnen brauchen.

check-file-unclear = Datei unklar
check-unit-unclear = Einheit unklar
check-not-an-impression = keine Abformung
check-arch-mismatch = abweichender Kiefer
check-orientation-unclear = Ausrichtung unklar
check-show-through = Löffel liegt frei
check-other-colour = andere Farbe
check-show-through-extent = freiliegende Löffelfläche
check-tissue-stop = Schleimhautstopp
check-thin-cover = dünnes Material
check-tray-seating = Sitz des Löffels
check-tray-bent = Löffel verbogen
check-tray-joint = Fuge im Löffel
check-changed-in-transit = Veränderung auf dem Transport
check-tray-size = Löffelgröße
check-outer-excess = Material auf der Löffelaußenseite
check-tray-at-border = Löffel am Rand
check-under-extension = Unterextension
check-border-radius = Randrundung
check-flange-height = Höhe des Funktionsrandes
check-flange-thickness = Dicke des Funktionsrandes
check-border-overlap = Überstand über den Löffel
check-border-asymmetry = Seitenunterschied des Randes
check-border-change = Veränderung des Randes
check-wash-open = Stelle weiter offen
check-wash-thickness = Dicke des Wash
check-wash-uneven = ungleichmäßiger Wash
check-scan-ends = Scan endet vor dem Rand
check-border-not-judged = Rand nicht beurteilt
check-void = Blase
check-void-unseen = Blasen nicht erkennbar
check-nodule = Materialperle
check-fold = Falte
check-hole = Loch im Scan
check-landmark-cut-short = Landmarke abgeschnitten
check-landmark-obscured = Landmarke verdeckt
check-landmark-not-found = Landmarke nicht gefunden
check-cover-not-judged = Materialdicke nicht beurteilt
check-cover-uncertainty = Unsicherheit der Materialdicke
check-tissue-area = gescannte Schleimhautfläche
check-scan-resolution = Auflösung des Scans
check-scan-quality = Qualität des Scans
check-interarch-space = Abstand der Kieferkämme
check-ridge-angle = Winkel der Kieferkämme
check-jaw-relation-not-judged = Kieferrelation nicht beurteilt
check-wash-missing = Wash-Abformung
check-impression-age = Alter der Abformung
check-interocclusal-distance = interokklusaler Abstand
check-lip-length = Lippenlänge
check-parcel-incomplete = Sendung unvollständig
check-prescription-missing = Laborauftrag
check-disinfection-not-stated = Desinfektion nicht angegeben
check-border = Rand
check-wash = Wash
check-jaw-relation = Kieferrelation
check-parcel = Sendung
check-over-extension = Überextension
check-cut = Schnitt
