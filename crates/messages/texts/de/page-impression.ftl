### Der Bericht: Kapitel einer Abformung.

## Messwerte.

figure-uncertainty-not-stated = (Unsicherheit nicht angegeben)
figure-not-available = nicht verfügbar ({ $why })

## Spalten mehrerer Tabellen.

head-figure = Messgröße
head-measured = Messwert (k = 2)
head-limit = Grenzwert
head-where = Ort
head-what = Art
head-what-it-was = Was es war
head-area = Fläche
head-place = Stelle
head-moved = Verlagerung (k = 2)
head-finding = Befund
head-part-of-arch = Bereich

## Zellen mehrerer Tabellen.

cell-no-limit = kein Grenzwert
cell-at-least = mindestens { $limit }
cell-at-most = höchstens { $limit }
cell-at-most-either-way = höchstens { $limit } in jeder Richtung
cell-at-most-in-all = insgesamt höchstens { $limit }
cell-above = über { $limit }
cell-yes = ja
cell-no = nein
cell-not-known = unbekannt
row-least = kleinster Wert
row-p05 = 5. Perzentil
row-median = Median
row-p95 = 95. Perzentil
row-uncertainty = Unsicherheit eines Wertes (k = 2)
found-by-colour = an der Farbe erkannt

## Eine Abformung.

more-of-impression = Mehr zur { $impression }: weitere Ansichten, Landmarken, Löffel, Fehlstellen, Scan

## Seit dem Versand der Abformung.

since-sent = Veränderung seit dem Versand der Abformung
since-sent-no-limit = das Protokoll enthält keinen solchen Grenzwert
since-sent-unused = Der Scan beim Versand wurde nicht verglichen: { $why }.
since-sent-ground = Additionsvernetzendes Silikon schrumpft in einer Woche um 0,3 %, das sind 0,13 mm auf 42 mm; die Norm lässt 1,5 % zu. Nach Abzug von Verbiegung und Größenänderung liegen { $share } der Schleimhautseite auf dem Scan beim Versand.
since-sent-no-damage = Keine Stelle hat sich für sich um mehr als ihre Unsicherheit verändert ({ $uncertainty } auf der Hälfte der Fläche).
since-sent-arch = Veränderung des Kieferbogens als Ganzes
since-sent-larger = gleichmäßig größer
since-sent-judged-by-heels = beurteilt an den distalen Enden
since-sent-heels-apart = distale Enden weiter auseinander, insgesamt
since-sent-heel-toward-tissue = { $side ->
    [right] rechtes
   *[left] linkes
} distales Ende zum Gewebe hin, relativ zur Front
since-sent-heel-outward = { $side ->
    [right] rechtes
   *[left] linkes
} distales Ende nach außen, relativ zur Front
since-sent-damage = Stellen, die sich für sich verändert haben
since-sent-torn = fehlt am Rand
since-sent-pressed-in = eingedrückt
since-sent-stuck-on = anhaftend
since-sent-places = Stellen auf dem Scan beim Versand
head-as-it-arrived = Beim Eintreffen
since-sent-found-again = wiedergefunden
since-sent-gone = nicht mehr da
since-sent-not-measured = dort nicht gemessen

## Der Rand.

along-border = Rand
along-border-extremes = Extremwerte entlang des Randes
along-border-least = { $figure }, kleinster Wert
along-border-greatest = { $figure }, größter Wert
along-border-not-measured = an keiner Stelle des Randes messbar
along-border-length = Länge des Randes: { $length }.
along-border-open = Der Scan zeigt den Rand nicht ringsum.
along-border-depth = Die Dicke des Funktionsrandes wird { $depth } unterhalb der Randkante gemessen.
along-border-judged = Nur Abschnitte von mindestens { $least } werden beurteilt. Einziehungen der Bändchen, der dorsale Rand und die letzten 10 mm davor sind ausgenommen; ein Extremwert in der Tabelle ist daher nicht unbedingt ein Mangel.
border-chart = { $impression }: der Rand abgewickelt, die labiale Mittellinie in der Mitte.
border-chart-facing = { $impression }: der Rand abgewickelt, die labiale Mittellinie in der Mitte, { $facing }.
border-chart-table = Dieselben Werte stehen in { $table }.
border-chart-label = Randdiagramm, { $impression }

## Materialdicke.

thickness = Materialdicke
thickness-over-tray = Materialdicke über dem Löffel
thickness-measured-over = Die Dicke wurde auf { $area } der Schleimhautseite gemessen, Flanken der Funktionsränder eingeschlossen. Solche Flächen sind größer als die klassischen Prothesenlagerflächen: im Oberkiefer um etwa 60 %, im Unterkiefer um etwa 100 %.
thickness-by-tray-scan = Gemessen wurde gegen den eingepassten Scan des leeren Löffels.
thickness-by-both-sides = Gemessen wurde die Dicke von Material und Löffel zusammen, abzüglich der angegebenen Löffeldicke.
thickness-by-colour = Beurteilt wurde nach den Farben von Löffel und Material; wie dick das Material ist, zeigen sie nicht.
thickness-tray-lies = Der Löffel liegt auf { $share } der Außenfläche (quadratisches Mittel der Abstände { $rms }); seine Lage ist auf ± { $uncertainty } (k = 2) bekannt.
thickness-tray-stated = Die Löffeldicke wurde mit { $thickness } angegeben; wo Material über die Außenfläche des Löffels reicht, ist die Materialdicke gegenüber nicht bekannt.
colour-tray-shows = Der Farbe nach liegt der Löffel ({ $tray }, { $source ->
    [found] auf der Außenfläche gefunden
   *[given] wie angegeben
}) auf { $shown } von { $judged } frei; das Material ist { $material }.
colour-apart = Die Farben liegen in CIELAB { $difference } auseinander, das sind { $separation } Standardabweichungen der Farben des Scans; eine dritte Farbe bedeckt { $other }.
colour-beside-map = Im Vergleich mit der Dickenkarte: frei nach beiden { $both }, nur nach der Farbe { $colour }, nur nach der Dicke { $cover }.
patches = Stellen mit dünnem Material
head-patch = Stelle
head-least-thickness = Kleinste Dicke (k = 2)
head-patch-area = Fläche (k = 2)
patch-stop = Schleimhautstopp, liegt wie vorgesehen frei
patch-by-colour = freiliegender Löffel, der Farbe nach
patch-tray-edge = freiliegende Löffelkante
patch-around = { $patch } um { $around }
patch-area-and-length = { $area }, { $length } lang

## Landmarken.

landmarks = Landmarken
landmarks-in-full = Landmarken im Einzelnen
landmarks-of-jaw = Landmarken des Kiefers
head-number = Nr.
head-landmark = Landmarke
head-recorded = Erfasst
head-place-uncertainty = Unsicherheit der Lage (k = 2)
head-confidence = Konfidenz
head-source = Quelle
status-recorded = erfasst
status-reached = Stelle erreicht, nicht bestätigt
status-cut-short = abgeschnitten
status-obscured = verdeckt
status-not-found = nicht gefunden
landmarks-no-place = keine Lage bekannt
landmarks-not-seen = nicht erkannt
landmarks-detected = auf der Oberfläche gefunden
landmarks-marked = vom Bediener markiert

## Der Löffel.

tray-position = Löffel
tray-position-compared = Lage des Löffels, verglichen mit der Lage, in der das Material am gleichmäßigsten dick wäre
head-deviation = Abweichung
tray-to-right = nach rechts (vom Patienten aus)
tray-to-front = nach vorn
tray-tilted-front = gekippt, vorn näher am Gewebe
tray-tilted-right = gekippt, rechte Patientenseite näher am Gewebe
tray-turned-right = verdreht, vorn zur rechten Patientenseite
tray-wider = zu breit, über die Breite des Kieferbogens
tray-evenness = Die Dicke streut mit einer Standardabweichung von { $found }; in der besten Lage des Löffels wären es { $best }.
tray-bend = Verbiegung des Löffels zwischen seinem Scan und der Abformung, relativ zu seiner Front
limb-end-toward-tissue = { $side ->
    [right] rechter
   *[left] linker
} Schenkel, Ende: zum Gewebe hin
limb-end-outward = { $side ->
    [right] rechter
   *[left] linker
} Schenkel, Ende: nach außen
limb-middle-toward-tissue = { $side ->
    [right] rechter
   *[left] linker
} Schenkel, Mitte: zum Gewebe hin
limb-middle-outward = { $side ->
    [right] rechter
   *[left] linker
} Schenkel, Mitte: nach außen
tray-by-part = Der Löffel in jedem Bereich des Kiefers, Mediane
head-edge-to-border = Löffelkante bis Rand (k = 2)
head-thickness = Materialdicke (k = 2)
tray-no-border-here = hier kein Rand
tray-not-known-here = hier nicht bekannt

## Zurückschleifen.

places-on-tray = Stellen am Löffel
places-on-tray-how = Diese Stellen liegen auf dem leeren Löffel, wie er gescannt wurde. Die Abstände verlaufen gerade von der Mitte der Stelle: zum nächsten Punkt des Löffelrandes auf der Lippen- und Wangenseite und zu dessen Mitte vorn. Den Löffel außerhalb des Mundes zurückschleifen, mit Augen- und Staubschutz, und auf scharfe Kanten prüfen.
places-on-tray-to-relieve = Zurückzuschleifende Stellen am Löffel
head-relieve-by = Zurückschleifen um (k = 2)
head-wall-there = Wanddicke dort (k = 2)
head-wall-left = Verbleibende Wand (k = 2)
head-to-outer-rim = Bis zum äußeren Löffelrand (k = 2)
head-to-front-rim = Bis zur Mitte des Löffelrandes vorn (k = 2)
wall-one-face = der Scan zeigt nur eine Seite der Wand
rim-not-found = Löffelrand nicht gefunden
relieved-scan-unused = Der Scan des zurückgeschliffenen Löffels sagt nichts aus: { $why }.
tray-after-relief = Der Löffel nach dem Zurückschleifen, nach seinem zweiten Scan
head-taken-off = Abgetragen (k = 2)
head-room-made = Gewonnener Platz (k = 2)

## Fehlstellen.

defects = Fehlstellen der Schleimhautseite
defects-limits = Was einen Grenzwert verfehlt, ist ein Befund; die Grenzwerte jeder Art stehen in der Tabelle der Grenzwerte.
head-defect = Fehlstelle
head-width = Breite (k = 2)
head-depth-or-height = Tiefe oder Höhe (k = 2)
head-opening = Fläche der Öffnung
defect-void = Blase
defect-nodule = Materialperle
defect-fold = Falte
defect-hole = Loch im Scan
defect-no-depth = ein Loch hat keine Tiefe

## Der Scan.

scan = Scan
scan-of-impression = Der Scan der Abformung
scan-of-tray = Der Scan des leeren Löffels
scan-no-tray = Es wurde kein Scan des leeren Löffels angegeben.
head-fact = Angabe
head-value = Wert
scan-file = Datei
scan-checksum = Prüfsumme (SHA-256)
scan-unit = Einheit der Koordinaten
scan-unit-assumed = { $unit } (aus der Größe angenommen, da nicht angegeben)
scan-unit-named = { $unit } (wie angegeben)
scan-size = Dreiecke, Eckpunkte
scan-components = zusammenhängende Teile
scan-open-loops = Schleifen offener Kanten
scan-branching-edges = Kanten von drei oder mehr Dreiecken
scan-flat-triangles = Dreiecke ohne Fläche
scan-median-edge = mittlere Kantenlänge (Median)
scan-mesh-area = Fläche des ganzen Netzes
scan-exact = { $value } (exakt, für dieses Netz)
scan-exact-with-limit = { $value } (exakt, für dieses Netz), Grenzwert { $limit }
scan-noise = Rauschen entlang der Normalen (Standardabweichung)
scan-noise-value = { $noise } (dessen eigene Unsicherheit ist nicht angegeben)
scan-no-noise = nicht bestimmbar
scan-outer-surface = Außenfläche mitgescannt
scan-colour = Farbe
scan-free-text = freier Text in der Datei
scan-carries-text = ja: er kann eine Person nennen
scan-joints = Die Fugen des Löffels
head-pieces = Teile
head-gap = Spalt
head-step = Stufe
scan-parts = Die Teile der Abformung
head-part-of-impression = Teil
head-on-tray = Auf dem Löffel
head-distance-from-it = Abstand von ihm (quadratisches Mittel)
head-lies-within = Lage bekannt auf (k = 2)
scan-part-share = { $share } % seiner Oberfläche
scan-parts-not-joined = die Teile wurden nicht zusammengefügt
scan-cut-apart = Die Abformung wurde zerteilt.
scan-parts-laid = Ihre Teile wurden auf den Scan des ganzen Löffels gelegt, in dessen Koordinaten alle Stellen angegeben sind; die Schnitte sind { $width } breit.
scan-on-reading = Beim Einlesen: { $warning }
scan-by-region = Qualität des Scans nach Bereichen (Eigenschaften des Netzes, ohne Unsicherheit angegeben)
head-scanned = Gescannt
head-median-edge = Mittlere Kantenlänge
head-noise = Rauschen (Standardabweichung)
head-least-void = Kleinste erkennbare Blase
scan-least-void = { $across } breit, { $depth } tief

## Der Wash.

wash-chapter = Wash
wash-over-maxillary = Oberkiefer: Wash über der vorherigen Abformung
wash-over-mandibular = Unterkiefer: Wash über der vorherigen Abformung
wash-thickness-of = Dicke des Wash
wash-measured-over = Gemessen auf { $area } gescannter Schleimhautseite.
wash-added = Eindeutig hinzugekommen ist Material auf { $added } davon, eindeutig tiefer als vorher liegt die Oberfläche auf { $lowered }; Unterschiede innerhalb der Unsicherheit zählen nicht.
wash-map-is = Die Karte ist { $map }.
wash-no-places = Vor dem Wash gab es keinen freiliegenden Löffel und keine dünne Stelle.
wash-places-before = Stellen vor dem Wash
wash-new-places = Neu auf dem Wash: { $places }.
head-thickness-before = Kleinste Dicke vorher
head-thickness-now = Kleinste Dicke jetzt (k = 2)
head-under-wash = Unter dem Wash
wash-not-scanned = der Wash wurde dort nicht gescannt
wash-place-resolved = behoben
wash-place-open = weiter offen
wash-place-unclear = zu knapp zum Entscheiden

# Serienlöffel, für eine neue Abformung anprobiert.
next-tray-heading = Löffel für die neue Abformung
next-tray-trays = Die Löffel und der Abstand, den jeder lässt
next-tray-column-tray = Löffel
next-tray-column-least = Abstand, geringster (k = 2)
next-tray-column-median = Abstand, Median (k = 2)
next-tray-column-wanted = Gewebe mit { $from } bis { $to } mm
next-tray-column-touches = Berührt
next-tray-nowhere = nirgends
next-tray-other-jaw = ein Löffel des anderen Kiefers
next-tray-not-placed = ließ sich nicht anprobieren
next-tray-how = Jeder Löffel liegt dort, wo sein Abstand zum Gewebe, das diese Abformung zeigt, am gleichmäßigsten ist. Sein Rand wird nicht mit dem Rand der Abformung verglichen: Die neue Abformung muss vielleicht darüber hinausreichen.
