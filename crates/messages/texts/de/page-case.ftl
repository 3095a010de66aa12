### Der Fall als Ganzes: Kieferrelation, Sendung, Anhang, Methoden, Grenzwerte und Herkunft.

## Grenzwerte neben einem Messwert.

page-at-least = mindestens { $limit }
page-at-most = höchstens { $limit }
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
page-method-height-is = Im Schnitt, vom Kammpunkt zum Randpunkt, entlang der Einsetzachse.
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
page-if-missed = Bei Verletzung
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
