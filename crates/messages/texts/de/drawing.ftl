### Zeichnungen des Randes: Diagramm und Schnitte.

drawing-heading = Fall { $case }, { $jaw ->
    [maxillary] Oberkiefer
    [mandibular] Unterkiefer
   *[unknown] Kiefer unbekannt
}, { $stage ->
    [first-pass] Abformung vor dem Wash
    [wash] Wash-Abformung
   *[single] einzeitige Abformung
}

## Die Messgrößen entlang des Randes.

station-height = Höhe des Funktionsrandes
station-thickness = Dicke des Funktionsrandes
station-radius = Randradius
station-overlap = Überstand über den Löffel

## Wie herum man sieht.

facing-right-on-the-right = die rechte Patientenseite rechts, wie in den Bildern
facing-right-on-the-left = die rechte Patientenseite links, wie in den Bildern
drawing-midline = Mittellinie

## Der Rand abgewickelt.

chart-title = { $heading }: der Rand abgewickelt
chart-seen = Von der Schleimhautseite gesehen: { $facing }.
chart-outer = Labialer und bukkaler Rand, dorsal an beiden Enden
chart-lingual = Lingualer Rand
chart-axis = mm entlang des Randes ab der { $midline } (R: nach rechts, L: nach links, vom Patienten aus)
chart-row = { $figure }, mm
chart-row-at-depth = { $figure }, mm, { $depth } mm unterhalb der Randkante
chart-row-none = { $row }: keine Werte ({ $why })
chart-frenum = Bändchen, { $depth } mm tief

## Warum ein Abschnitt keinen Wert hat, in wenigen Worten.

gap-tissue-side-only = nur Gewebeseite
gap-scan-ends = Scan endet hier
gap-no-surface = nicht gescannt
gap-no-crest = kein Kieferkamm
gap-flange-too-low = Rand niedrig
gap-no-roll = keine Rundung
gap-no-tray = kein Löffelscan
gap-at-the-cut = hier zerteilt
gap-off-the-summit = Linie abseits

## Die Legende des Diagramms.

legend-measured = gemessen, mit erweiterter Unsicherheit (k = 2)
legend-no-less = Grenzwert: nicht weniger
legend-no-more = Grenzwert: nicht mehr
legend-no-figure = kein Wert, mit Grund
legend-fails = Mangel ■
legend-undecided = nicht zu entscheiden ◆
legend-note = Hinweis ●
legend-marks = Zeichen an der ungünstigsten Messstelle eines Befundes, nummeriert wie in result.json

## Ein Schnitt.

section-place = { $heading }. Schnitt bei { $at } mm von { $length } mm Randumfang (s = { $s }).
section-toward-ridge = zum Kieferkamm
section-toward-lip = nach vestibulär
section-toward-tongue = zur Zunge
section-toward-front = nach vorn
section-toward-back = nach dorsal
section-axis = Einsetzrichtung, zum Gewebe
section-border = Rand
section-crest = Kamm
section-height = Höhe { $figure }
section-thickness = Dicke { $figure }
section-radius = Radius { $figure }
section-arch = Lage des Schnittes, gesehen wie im Bild
section-figure-at-depth = { $figure }, { $depth } mm tief
section-none = kein Wert: { $why }
section-limit = Grenzwert: { $limits }
section-stretch = Abschnitt { $range }
section-found = gemessen: { $figure }, { $limit }
section-tissue-face = Schleimhautseite
section-outer-face = Außenseite
section-tray = Löffel
section-circle = Kreis durch die Randrundung
section-overlap = Überstand, bis zum Löffel
section-uncertainties = Erweiterte Unsicherheiten (k = 2).

## So wird gescannt.

scanning-drawing = Zeichnung: { $heading }
scanning-tissue-side = Schleimhautseite
scanning-outer-side = Außenseite
scanning-handle = der Griff
scanning-empty = sauber, leer
scanning-now = jetzt scannen
scanning-too-late = zerteilt: zu spät
scanning-fine = fein: Blase sichtbar
scanning-coarse = grob: unsichtbar
scanning-good = gut: eine Lage
scanning-hole = Loch
scanning-two-layers = zwei Lagen
scanning-rough = rau
scanning-bad = schlecht: neu scannen
