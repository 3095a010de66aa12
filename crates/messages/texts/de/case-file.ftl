### Was in einer Falldatei, in Grenzwerten oder in einer anderen Datei mit Einstellungen falsch
### ist; und was das System zu einer Datei sagt.

in-line = Zeile { $line }: { $fault }
of-file = { $path }: { $problem }
settings-unreadable = { $path }: nicht lesbar ({ $reason }); { $wanted } angeben
wanted-case-file = den Pfad einer Falldatei oder einer darin genannten Datei
wanted-scanner-file = die Scannerdatei, die „archproof artefact“ schreibt,
wanted-protocol = den Pfad einer Protokolldatei
wanted-artefact = die Beschreibung des Prüfkörpers (eine TOML-Datei)
wanted-baseline = eine Datei, die „archproof baseline DIR --write FILE“ geschrieben hat,
system-says = { $kind ->
    [missing] die Datei ist nicht vorhanden
    [locked] keine Zugriffsrechte
    [exists] sie ist schon vorhanden
    [no-folder] ein Teil des Pfades ist kein Ordner
    [folder] ist ein Ordner
    [full] der Datenträger ist voll
    [read-only] der Datenträger ist schreibgeschützt
    [special] ist keine gewöhnliche Datei
    [no-text] ist kein Text in UTF-8
    [large] ist zu groß für eine solche Datei
   *[other] { $reason }
}

## Der Text selbst.

toml-backslash = ein umgekehrter Schrägstrich in einem Pfad: C:/scans/upper.ply schreiben oder den Pfad in einfache Anführungszeichen setzen ('C:\scans\upper.ply')
toml-unknown = { $what ->
    [value] unbekannter Wert
   *[key] unbekannter Schlüssel
} `{ $name }`{ $is ->
    [near] ; ist { $nearest } gemeint?
   *[far] .
} Hier bekannt: { $known }
toml-missing = der Schlüssel `{ $key }` fehlt
toml-twice = derselbe Schlüssel steht zweimal da
toml-kind = Wert der falschen Art: { $given }; nötig ist { $wanted }
toml-given-text = der Text { $value }
toml-given-number = { $kind ->
    [integer] die ganze Zahl
   *[fraction] die Dezimalzahl
} { $value }
toml-given-truth = der Wahrheitswert { $value }
toml-given-list = eine Liste
toml-given-table = eine Tabelle
toml-wanted-number = eine Zahl
toml-wanted-text = ein Text in Anführungszeichen
toml-wanted-path = ein Pfad in Anführungszeichen
toml-wanted-truth = true oder false
toml-wanted-list = eine Liste
toml-wanted-point = eine Liste von drei Zahlen
toml-wanted-table = { $words ->
   *[other] ein Abschnitt mit eigenen Schlüsseln
}
toml-wanted-parts = nötig ist der Name einer Datei in Anführungszeichen oder eine Liste mit den Dateien der Teile
toml-wanted-scanner = scanner ist der Pfad einer Scannerdatei oder eine Tabelle mit length_uncertainty_mm und source
toml-other = { $kind ->
    [unclosed] eine Klammer ist nicht geschlossen
    [unquoted] ein Text gehört in Anführungszeichen
    [open-text] das schließende Anführungszeichen fehlt
    [more] nach dem Wert steht noch etwas; eine Angabe je Zeile, Zahlen mit Dezimalpunkt
    [number] keine gültige Zahl; Zahlen mit Dezimalpunkt schreiben, wie 2.5
    [length] die Liste hat nicht die nötige Zahl von Werten
   *[other] keine gültige TOML-Angabe: { $text }
}

## Der Fall.

case-no-id = der Fall braucht einen Namen aus druckbaren Zeichen (ein Pseudonym, nie den Namen des Patienten)
case-no-impression = keine Abformung genannt; before_wash, wash oder one_step unter [maxillary] oder [mandibular] angeben
case-empty-jaw = keine Abformung dieses Kiefers genannt; before_wash, wash oder one_step angeben oder den Abschnitt weglassen
case-one-step-and-stages = one_step steht neben before_wash oder wash; nur one_step angeben oder die Schritte einer Abformung mit Wash
case-reading-not-finite = ein Messwert unter [jaw_relation] muss eine endliche Zahl sein
case-value-and-readings = eine vertikale Dimension ist als Wert und zugleich als Reihe von Messwerten angegeben; nur eines von beiden angeben
case-hours = die Stunden seit der Abformung müssen eine Zahl ab 0 sein
case-stop-not-finite = ein Schleimhautstopp braucht drei endliche Zahlen
case-stops-without-tray = Schleimhautstopps sind angegeben, aber kein Löffel; sie sind Stellen auf dem Scan des Löffels
case-relieved-alone = tray_relieved ist der zurückgeschliffene Löffel zwischen zwei Abformschritten: den Scan des Löffels vor dem Zurückschleifen als tray angeben, die Abformungen als before_wash und wash
case-sent-alone = angegeben ist ein Scan der Abformung beim Versand, aber keiner bei der Ankunft; diesen unter demselben Schlüssel ohne _as_sent nennen
case-no-parts = die Liste der Teile der Abformung ist leer; den Scan jedes Teils oder einen Scan des Ganzen nennen
case-parts-without-tray = eine Abformung in Teilen braucht den Scan ihres ganzen Löffels, auf den sie gelegt werden; ihn als tray angeben
case-no-pieces = die Liste der Löffelteile ist leer; den Scan jedes Teils oder einen Scan des Ganzen nennen
case-pieces-not-whole = ein Löffel in Teilen kann nicht die Grundlage einer Abformung in Teilen sein und nicht mit tray_relieved verglichen werden; die Teile zusammensetzen und den ganzen Löffel scannen
case-unknown-landmark = '{ $name }' ist keine Landmarke; bekannt sind { $known }
case-landmark-side = { $landmark }: { $lies ->
    [aside] liegt rechts oder links; die Seite (side) angeben
   *[midline] liegt in der Mittellinie; die Seite (side) weglassen
}
case-mark-not-finite = der Punkt einer Landmarke braucht drei endliche Zahlen
case-marked-twice = { $landmark }: zweimal markiert
case-time = scanned_at braucht ein Datum der Jahre 2000 bis 2099 (ISO 8601) wie 2026-03-04 oder Datum und Uhrzeit wie 2026-03-04T10:20:00+01:00; ohne Zeitzone gilt die Uhrzeit als UTC
case-colour = '{ $text }' ist keine Farbe: als #rrggbb angeben, wie sie im Scan aussieht
case-thickness = ein Löffel von { $given } mm Dicke ist nicht möglich: die Dicke mit { $least } bis { $most } mm angeben
case-uncertainty = eine Unsicherheit von { $given } mm ist nicht möglich: 0 mm oder mehr angeben
case-no-thickness = eine Unsicherheit ist angegeben, aber keine Dicke des Löffels

label-key = ein Schlüssel unter [labels] braucht 1 bis { $longest } Kleinbuchstaben, Ziffern, _ oder -
label-personal = Kennzeichen nennen nie eine Person: '{ $key }' weglassen
label-value = das Kennzeichen '{ $key }' braucht 1 bis { $longest } Buchstaben, Ziffern, ., _ oder -, ohne Leerzeichen
label-name = das Kennzeichen '{ $key }' sieht wie ein Name aus; ein Kürzel wie op-3 schreiben oder Kleinbuchstaben, wenn es kein Name ist
label-too-many = mehr als { $most } Kennzeichen angegeben; nur die behalten, nach denen Ergebnisse verglichen werden

scanner-impossible = length_uncertainty_mm = { $given } ist nicht möglich: der Wert liegt zwischen 0 und 1 mm (k = 2)

## Grenzwerte.

limit-unit-other = die Einheit von { $key } ist { $own }, nicht { $given }; den Wert umrechnen
limit-without-zones = { $key } kann nicht je nach Zone verschieden sein
limit-impossible = { $key } = { $value } ist nicht möglich: { $why }
impossible-no-number = es muss eine Zahl sein
impossible-negative = der Wert darf nicht negativ sein
impossible-less = { $first ->
    [greater] { $greater } ({ $other }) muss größer sein als { $lesser } ({ $is })
   *[lesser] { $lesser } ({ $is }) muss kleiner sein als { $greater } ({ $other })
}
impossible-cover-uncertainty = cover_uncertainty_mm ({ $is }) darf nicht größer sein als thin_cover_mm minus show_through_mm ({ $room })
impossible-share = ein Anteil beträgt höchstens 100 %
impossible-confidence = eine Sicherheit beträgt höchstens 1
impossible-median-edge = auf Dreiecken, die gröber als { $coarsest } mm sind, wird die Materialdicke nicht gemessen
impossible-required = der Wert ist 1 (verlangt) oder 0 (nicht verlangt)
impossible-least-and-most = { $of ->
    [interocclusal] der kleinste interokklusale Abstand muss kleiner sein als der größte
    [usual-interocclusal] der kleinste übliche interokklusale Abstand muss kleiner sein als der größte
    [lip] die kleinste Oberlippenlänge muss kleiner sein als die größte
    [papilla] der kleinste Abstand von der Papille zur Lippenlinie muss kleiner sein als der größte
   *[disinfection] die kürzeste Desinfektionszeit muss kürzer sein als die längste
}
impossible-angle = der Winkel zwischen zwei Ebenen beträgt höchstens 90°
impossible-stop-size = ein Schleimhautstopp hat eine Größe
impossible-flange-depth = die Dicke des Funktionsrandes wird { $least } bis { $most } mm unterhalb des Randes gemessen
