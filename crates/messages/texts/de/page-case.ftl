### Der Fall als Ganzes: Kieferrelation, Sendung, Anhang, Methoden, Grenzwerte und Herkunft.

## Grenzwerte neben einem Messwert.

page-between = mindestens { $least }, höchstens { $most }
page-no-limit = kein Grenzwert
page-figure = Messgröße
page-measured-so = Gemessen (k = 2)
page-limits = Grenzwerte

## Kieferrelation.

page-jaw-relation = Kieferrelation
page-relation-of-jaws = Lage der Kiefer zueinander
page-vertical-dimension = vertikale Dimension in Okklusion, wie angegeben
page-rest-vertical-dimension = vertikale Dimension in Ruhelage, wie angegeben
page-interocclusal-distance = interokklusaler Abstand, daraus errechnet
page-upper-lip-length = Länge der Oberlippe ab der Nasenbasis, wie angegeben
page-papilla-to-lip = Papilla incisiva bis Lippenlinie, wie angegeben
page-least-space = geringster Abstand der Kieferkämme
page-most-space = größter Abstand der Kieferkämme
page-ridge-angle = Winkel zwischen den Kieferkämmen
page-record-not-judged = Nicht beurteilt: das Registrat ({ $why }).
page-vertical-dimension-by = Die vertikale Dimension in Okklusion wurde { $by } bestimmt.
page-centric-relation-by = Die zentrische Relation wurde { $by } bestimmt.
page-record-shows = Der Scan des Registrats zeigt, in welcher Lage die Kiefer gehalten wurden. Ob das die zentrische Relation ist und ob die vertikale Dimension zum Patienten passt, lässt sich daran nicht ablesen.

## Wie eine vertikale Dimension oder die zentrische Relation bestimmt wurde.

found-from-the-rest-position = aus der Ruhelage
found-by-lip-contact = nach dem Lippenschluss
found-from-an-existing-denture = nach einer vorhandenen Prothese
found-by-speech = phonetisch
found-by-swallowing = durch Schlucken
found-in-another-way = auf andere Weise
found-by-guiding-the-jaw = durch Führen des Unterkiefers
found-by-a-gothic-arch-tracing = durch Pfeilwinkelregistrierung

## Das Diagramm des Abstands der Kieferkämme.

page-space-chart = Abstand der Kieferkämme entlang der oberen Kieferkammlinie, rechts des Patienten rechts im Bild; der Punkt auf dem kleinen Kieferbogen zeigt, wo er am geringsten ist
page-space-limit = Grenzwert, mindestens
page-space = Abstand, mm

## Sendung.

page-parcel = Sendung
page-no-list = Es gibt keine Liste dessen, was in die Sendung gehört.
page-contents-of-parcel = Was in die Sendung gehört
page-part = Teil
page-state = Zustand
page-packed = eingepackt
page-missing = FEHLT
page-papers = Papiere und Desinfektion
page-what = Was
page-stated = Angabe
page-prescription = schriftlicher Laborauftrag
page-enclosed = { $is ->
    [yes] liegt bei
    [no] liegt NICHT bei
   *[unknown] nicht angegeben
}
page-disinfectant = Desinfektionsmittel
page-disinfectant-stated = { $is ->
    [yes] angegeben
   *[no] NICHT angegeben
}
page-disinfection-time = Dauer der Desinfektion
page-not-stated = nicht angegeben
page-no-record-reason = Grund, warum kein Kieferrelationsregistrat vorliegt
page-one-jaw-reason = Grund, warum nur ein Kiefer vorliegt
page-reason = { $is ->
    [yes] angegeben
   *[no] nicht angegeben
}
page-disinfect = Vor Handhabung und Versand nach örtlichen Vorschriften und Herstellerangaben desinfizieren; jede Abformung mit dem Pseudonym des Falls und ihrer Stufe beschriften.

## Anhang.

page-appendix = Anhang: vor dem Wash
page-appendix-lead = Auf diese Abformungen folgte ein Wash, der für sich beurteilt wird. Am Ergebnis ändern sie nichts.
page-findings-before-wash = Befunde vor dem Wash

## Methoden.

page-methods = Methoden
page-method-material = Materialdicke
page-method-material-is = An einem Punkt der Schleimhautseite der Abstand zum nächsten Punkt des Löffels; null oder negativ, wo der Löffel an der Oberfläche liegt oder sie durchdringt.
page-method-height = Höhe des Funktionsrandes
page-method-height-is = Im Schnitt, vom Kieferkammpunkt zum Randpunkt, entlang der Einsetzachse.
page-method-thickness = Dicke des Funktionsrandes
page-method-thickness-is = Im Schnitt, von der Schleimhautseite zur Außenseite, quer zur Einsetzachse, in einer angegebenen Tiefe unter dem Rand.
page-method-radius = Randradius
page-method-radius-is = Radius des Ausgleichskreises (kleinste Quadrate) durch die Rundung des Randes.
page-method-overlap = Überstand
page-method-overlap-is = Von einem Randpunkt zum nächsten Punkt des Löffels: wie weit das Material über die Kante des Löffels hinausreicht.
page-method-uncertainty = Unsicherheit
page-method-uncertainty-is = Erweitert, mit Erweiterungsfaktor k = 2. Sie enthält die Beiträge des Scanrauschens, der Lage des Löffels und seiner Verbiegung. Nicht enthalten ist, was ein wirkliches Abformmaterial oder die Verzerrung eines Scanners beiträgt.
page-method-decision = Entscheidungsregel
page-method-decision-is = Die der ISO 14253-1, allgemein gefasst: Ein Messwert hält seinen Grenzwert nur dann ein, wenn er ihn um mehr als seine Unsicherheit einhält, und verfehlt ihn nur dann, wenn er ihn um mehr als diese verfehlt. Alles dazwischen ist zu knapp zum Entscheiden und wird nie stillschweigend angenommen.
page-method-unknown = Was eine Abformung allein nicht zeigt
page-method-unknown-is = Ob das Vestibulum tiefer oder weiter war, als das Material reichte; ob Lippe, Wange und Zunge bewegt wurden, solange es weich war; ob ein niedriger Randabschnitt ein breiter Muskelansatz und ein niedriger Funktionsrand ein niedriger Kieferkamm ist; ob der Rand zu lang ist. Diese Stellen mit dem Mund vergleichen.

## Grenzwerte des Protokolls.

page-limits-of = Grenzwerte: { $protocol }
page-limits-of-case = Grenzwerte, nach denen der Fall beurteilt wurde
page-limit = Grenzwert
page-value = Wert
page-if-missed = Folge
page-source = Quelle
page-level = { $level ->
    [fail] Mangel
    [undecided] mit dieser Messung nicht annehmbar
   *[note] Hinweis
}
page-criterion-number = Zahl:

## Herkunft.

page-provenance = Herkunft
page-made-by-and-from = Womit und woraus dieses Ergebnis entstand
page-which = Angabe
page-program = Programm
page-commit = gebaut aus Commit
page-commit-not-stated = beim Bau nicht angegeben
page-protocol = Grenzwerte
page-protocol-sum = Grenzwerte, SHA-256
page-limits-changed = Grenzwerte, die von denen des Programms abweichen
page-none-changed = keine
page-scanner-uncertainty = Scanner: Unsicherheit einer Länge (k = 2)
page-scanner-source = Scanner: Quelle dieser Unsicherheit
page-scanned-at = gescannt, laut Falldatei (UTC)
page-scan-sum = Scan der { $impression }, SHA-256
page-part-sum = Scan von Teil { $part } der { $impression }, SHA-256
page-tray-sum = Scan des Löffels der { $impression }, SHA-256
page-record-sum = Scan des Kieferrelationsregistrats, SHA-256
page-durations = Wie lange jeder Schritt dauerte; Abformungen werden gleichzeitig vermessen
page-step = Schritt
page-duration = Dauer

## Was jeder Grenzwert eines Protokolls begrenzt.

limit-show-through-mm = Materialdicke, bis zu der der Löffel als freiliegend gilt.
limit-thin-cover-mm = Materialdicke, unter der das Material als dünn gilt.
limit-least-spot-area-mm2 = Kleinere Stellen gelten als Rauschen.
limit-relief-room-mm = Raum für Material, den das Zurückschleifen des Löffels schaffen soll.
limit-tray-wall-left-mm = Geringste Wandstärke des Löffels, die beim Zurückschleifen bleiben muss.
limit-show-through-share-percent = Anteil der Schleimhautseite, auf dem der Löffel frei liegen darf, ehe Zurückschleifen und Wash nicht mehr genügen.
limit-stop-cover-mm = Größte Materialdicke über einem angegebenen Schleimhautstopp.
limit-stop-size-mm = Seitenlänge eines Schleimhautstopps.
limit-cover-uncertainty-mm = Größte erweiterte Unsicherheit, mit der die Materialdicke beurteilt werden darf.
limit-maxillary-tissue-area-mm2 = Kleinste Schleimhautfläche einer Oberkieferabformung.
limit-mandibular-tissue-area-mm2 = Kleinste Schleimhautfläche einer Unterkieferabformung.
limit-median-edge-mm = Gröbste Dreiecke, die noch beurteilt werden dürfen, als mediane Kantenlänge.
limit-most-tray-shift-mm = Wie weit der Löffel von der Lage mit der gleichmäßigsten Materialdicke entfernt sein durfte.
limit-most-tray-tilt-deg = Wie weit er gegenüber dieser Lage gekippt oder verdreht sein durfte.
limit-most-tray-bend-mm = Wie weit sich ein Schenkel des Löffels zwischen seinem Scan und der Abformung verbogen haben darf.
limit-most-tray-joint-mm = Spalt oder Stufe an der Fuge eines geteilten Löffels.
limit-most-arch-change-mm = Wie weit sich ein hinteres Ende der Abformung, oder der Abstand beider, seit dem Versand verändert haben darf.
limit-most-local-change-mm = Wie weit sich eine Stelle der Oberfläche seit dem Versand für sich verändert haben darf.
limit-most-outer-excess-mm2 = Größte Materialfläche auf den Außenseiten des Löffels, über das hinaus, was seinen Rand umgreift.
limit-most-tray-width-mm = Wie viel breiter oder schmaler er sein darf, als zur Breite des Kiefers passt.
limit-void-mm = Breite, bis zu der eine Blase außerhalb kritischer Zonen hingenommen wird.
limit-void-critical-mm = Breite, bis zu der eine Blase in kritischen Zonen und am Rand hingenommen wird.
limit-void-critical-redo-mm = Breite, ab der eine Blase dort zu groß ist, um am Modell weggeschnitten zu werden.
limit-nodule-mm = Breite, bis zu der eine Materialperle außerhalb kritischer Zonen hingenommen wird.
limit-nodule-critical-mm = Breite, bis zu der eine Materialperle in kritischen Zonen und am Rand hingenommen wird.
limit-fold-mm = Länge, bis zu der eine Falte außerhalb kritischer Zonen hingenommen wird.
limit-fold-critical-mm = Länge, bis zu der eine Falte in kritischen Zonen und am Rand hingenommen wird.
limit-hole-mm = Breite, bis zu der ein Loch hingenommen wird; ein breiteres wird neu gescannt.
limit-hole-critical-mm = Breite, ab der ein kleineres Loch in kritischen Zonen und am Rand vermerkt wird.
limit-border-margin-mm = Wie weit der Rand vom Ende der Schleimhautseite an gerechnet wird.
limit-smallest-void-seen-mm = Breite der kleinsten Blase, die jeder Teil des Scans zeigen können muss.
limit-scan-noise-mm = Größtes Rauschen eines Teils des Scans, als Standardabweichung.
limit-double-layer-percent = Größter Anteil eines Teils, der doppelt gescannt und in zwei Schichten geblieben sein darf.
limit-orientation-confidence = Kleinste Konfidenz, 0 bis 1, mit der Kiefer und Seiten erkannt sein müssen.
limit-flange-depth-mm = Tiefe unter dem Rand, in der die Dicke des Funktionsrandes gemessen wird.
limit-least-border-stretch-mm = Kürzere Randabschnitte gelten als Rauschen.
limit-under-extension-mm = Tiefe, um die der Rand gegenüber seiner Umgebung abfallen darf.
limit-flange-height-mm = Geringste Höhe eines Funktionsrandes; 0 für keinen Grenzwert.
limit-least-flange-thickness-mm = Geringste Dicke eines Funktionsrandes.
limit-most-flange-thickness-mm = Größte Dicke eines Funktionsrandes.
limit-border-radius-mm = Kleinster Radius der Randrundung.
limit-least-border-overlap-mm = Geringster Abstand, um den der Löffel vor dem Rand endet.
limit-most-border-overlap-mm = Größter Abstand, um den das Material über die Kante des Löffels hinausreicht.
limit-border-asymmetry-mm = Wie viel niedriger ein Funktionsrand sein darf als der der anderen Seite.
limit-border-drop-mm = Wie viel niedriger der Rand eines Wash sein darf als der Rand davor.
limit-wash-most-mm = Größte Dicke eines Wash, als 95. Perzentil.
limit-wash-spread-mm = Größter Unterschied zwischen den dicken und den dünnen Teilen eines Wash.
limit-landmark-margin-mm = Wie weit der Rand mindestens jenseits einer Landmarke verläuft.
limit-landmark-reach-mm = Geringster Abstand von einer Hamularkerbe, einem Tuber oder einem Trigonum retromolare zum Rand dahinter; darunter endet die Abformung davor.
limit-landmark-covered-percent = Kleinster Anteil der Fläche einer Landmarke, der innerhalb des Randes liegen muss.
limit-landmark-clearance-mm = Bis zu welchem Abstand ein Fehler oder das Ende des Scans eine Landmarke unbrauchbar macht.
limit-landmark-search-mm = Bis zu welchem Abstand von ihrer erwarteten Stelle eine nicht erkannte Landmarke durch einen Fehler dort als verloren gilt.
limit-least-interarch-space-mm = Geringster Abstand der Kieferkammlinien.
limit-most-ridge-angle-deg = Größter Winkel zwischen den Ebenen der Kieferkammlinien.
limit-least-interocclusal-distance-mm = Kleinster interokklusaler Abstand, der ohne Rückfrage hingenommen wird.
limit-most-interocclusal-distance-mm = Größter interokklusaler Abstand, der ohne Rückfrage hingenommen wird.
limit-least-usual-interocclusal-distance-mm = Kleinster üblicher interokklusaler Abstand.
limit-most-usual-interocclusal-distance-mm = Größter üblicher interokklusaler Abstand.
limit-reading-uncertainty-mm = Erweiterte Unsicherheit (k = 2) einer Ablesung am Behandlungsstuhl.
limit-least-upper-lip-length-mm = Kürzeste plausible Oberlippe, ab der Nasenbasis.
limit-most-upper-lip-length-mm = Längste plausible Oberlippe, ab der Nasenbasis.
limit-least-papilla-to-lip-mm = Kleinster plausibler Abstand von der Papilla incisiva zur Lippenlinie.
limit-most-papilla-to-lip-mm = Größter plausibler Abstand von der Papilla incisiva zur Lippenlinie.
limit-most-addition-silicone-h = Längste Zeit in Stunden, für die additionsvernetzendes Silikon nachweislich maßhaltig bleibt.
limit-most-alginate-min = Längste Zeit, die Alginat bis zum Ausgießen oder Scannen warten darf.
limit-wash-required = Ob ein Kiefer seinen Wash braucht, bevor mit der Sendung gearbeitet wird: 1 oder 0.
limit-prescription-required = Ob der Sendung ein schriftlicher Laborauftrag beiliegen muss: 1 oder 0.
limit-disinfection-required = Ob Desinfektionsmittel und Einwirkzeit angegeben sein müssen: 1 oder 0.
limit-jaw-relation-required = Ob ein Kieferrelationsregistrat, oder der Grund für sein Fehlen, vorliegen muss: 1 oder 0.
limit-both-arches-required = Ob beide Kiefer, oder der Grund für nur einen, vorliegen müssen: 1 oder 0.
limit-least-disinfection-min = Kürzeste übliche Dauer der Desinfektion.
limit-most-disinfection-min = Längste übliche Dauer der Desinfektion.
