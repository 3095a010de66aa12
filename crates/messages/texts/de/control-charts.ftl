### Regelkarten: eines Ordners mit Fällen und eines Kontrollnormals; die eingefrorene Ausgangsbasis.

## Was aufgetragen ist.

charted-noise = Rauschen des Scans
charted-tray-fit = Abformung auf ihrem Löffel, quadratisches Mittel
charted-thickness = mediane Dicke
charted-share = Anteil mit Mängeln
chart-upper = OEG { $value }
chart-centre = Mitte { $value }
chart-lower = UEG { $value }
chart-share = Anteil { $value }
chart-individuals = Einzelwerte (OEG, UEG: obere und untere Eingriffsgrenze)
chart-ranges = gleitende Spannweite
chart-averages = gleitender Mittelwert, Gewicht { $weight }
chart-head-centre = Mittellinie
chart-head-deviation = Standardabweichung
chart-head-lower = untere Grenze
chart-head-upper = obere Grenze

## Regeln in ganzer Länge, und wie sie verletzt wurden.

rule-beyond-limits = ein Wert jenseits von drei Standardabweichungen (Western Electric 1956)
rule-two-of-three = zwei von drei Werten jenseits von zwei Standardabweichungen auf einer Seite (Western Electric 1956)
rule-four-of-five = vier von fünf Werten jenseits von einer Standardabweichung auf einer Seite (Western Electric 1956)
rule-eight-in-a-row = acht Werte nacheinander auf einer Seite der Mittellinie (Western Electric 1956)
rule-ewma = gleitender Mittelwert mit dem Gewicht { $weight } jenseits des { $reach }-Fachen seiner Standardabweichung (Lucas und Saccucci 1990)
broken-beyond-limits = jenseits der Eingriffsgrenzen, { $side ->
    [above] oben
   *[below] unten
}
broken-two-of-three = zwei von drei weit entfernt, { $side ->
    [above] oben
   *[below] unten
}
broken-four-of-five = vier von fünf entfernt, { $side ->
    [above] oben
   *[below] unten
}
broken-eight-in-a-row = acht nacheinander auf einer Seite, { $side ->
    [above] oben
   *[below] unten
}
broken-ewma = gleitender Mittelwert außerhalb seiner Grenzen, { $side ->
    [above] oben
   *[below] unten
}

## Worauf zu achten ist.

look-noise-above = Der Scanner: sein Fenster reinigen, ihn kalibrieren, dann den Prüfkörper scannen („archproof artefact“).
look-noise-below = Die Einstellungen des Scanners: weniger Rauschen kann vom Glätten kommen, das Kanten verrundet. Den Prüfkörper scannen.
look-tray-fit-above = Die Löffel: ist jeder der gescannte, seither unverändert? Dann der Maßstab des Scanners, am Prüfkörper.
look-tray-fit-below = Was sich an Löffeln oder Scanner geändert hat: ein besserer Sitz kann von geglätteten Scans kommen.
look-thickness-above = Die Wahl der Löffel und wie weit sie gesetzt werden: größere Löffel, oder zu hoch gehaltene.
look-thickness-below = Die Wahl der Löffel und wie sie gesetzt werden: kleinere Löffel, mehr Druck oder ein anderes Material.
look-share-above = Welche Prüfungen häufiger verfehlt werden (siehe oben), dann Personen, Material und Scanner dieser Tage.
look-share-below = Ob noch dasselbe geprüft wird: andere Fälle, ein anderer Scanner oder Prüfungen, die nicht mehr durchgeführt werden.

## Auf der Seite über einen Ordner.

drift-over-time = Zeitlicher Verlauf
drift-lead = Die neuesten Abformungen jeder Gruppe in der Reihenfolge, in der sie gescannt wurden, nach: { $sources }; wurden Dateien ohne angegebene Zeit kopiert, kann ihre Zeit die des Kopierens sein. Abformungen vor dem Wash und Washs stehen nie auf einer Karte. Was außerhalb liegt, ist ein Anlass, Scanner, Material oder die Mischung der Fälle anzusehen, und für sich kein Mangel einer Abformung.
drift-left-out = { $count ->
    [one] 1 Abformung gehört zu einer Gruppe jenseits der ersten 100 und steht auf keiner Karte.
   *[other] { $count } Abformungen gehören zu Gruppen jenseits der ersten 100 und stehen auf keiner Karte.
}
drift-too-few = Zu wenige Abformungen für Eingriffsgrenzen, oder alle gleich: { $figures }.
drift-by-baseline = Eingriffsgrenzen: eingefrorene Ausgangsbasis.
drift-baseline = Sie stammt von Ergebnissen mit der SHA-256 { $sha }, erstellt mit archproof { $version } und den Grenzwerten „{ $limits }“. Eine Gruppe, die sie nicht enthält, wird nach ihren eigenen Punkten beurteilt, wie ihre Karte angibt.
drift-by-own-points = Eingriffsgrenzen: aus den Punkten selbst.
drift-freeze = Sie folgen genau der Drift, die sie finden sollen. Einfrieren, solange alles in Ordnung ist: „archproof baseline DIR --write base.toml“, dann „batch … --baseline base.toml“.
drift-rules = Regeln: { $rules }. Standardabweichung: mittlere gleitende Spannweite durch 1,128; Grenze der Spannweiten: ihre Mittellinie mal 3,267. Der Anteil mit Mängeln wird über so viele Tage gezählt, dass fünf mit Mängeln zu erwarten sind; seine Grenzen sind drei Standardabweichungen für diese Anzahl (p-Karte).
drift-no-signal = Keine Karte zeigt eine Änderung an.
drift-signals = { $count ->
    [one] 1 Signal.
   *[other] { $count } Signale.
}
drift-silent = Kein Signal.
drift-by-chance = Allein durch Zufall sind bei so vielen Punkten etwa { $signals } zu erwarten, und mehr, wo die Grenzen aus wenigen bestimmt sind.
drift-said = Was die Karten anzeigen
drift-some-listed = Aufgeführt sind die neuesten { $listed }; „batch --json“ gibt alle aus.
drift-head-when = Zeit (UTC)
drift-head-rule = Regel
drift-head-since = seit
drift-head-limits = Grenzen
drift-head-look-at = worauf zu achten ist
drift-this-one = diesem
drift-days = (Tage)
drift-baseline-limits = Ausgangsbasis
drift-own-limits = eigene Punkte
drift-numbers = Kennwerte der Karten
drift-head-chart = Karte
drift-head-outside = außerhalb
drift-head-limits-from = Grenzen aus (Anzahl)
drift-span = { $count ->
    [one] 1 Abformung
   *[other] { $count } Abformungen
}, { $first } bis { $last }.
drift-limits-from-baseline = Grenzen aus der Ausgangsbasis.
drift-limits-from-points = Grenzen aus diesen Punkten.
drift-share-of = Anteil mit Mängeln, { $group }
drift-days-counted = { $count } Gruppen von Tagen.
drift-outside = { $count } außerhalb.

## Woher die Zeit eines Scans stammt.

time-by-case-file = Falldatei
time-by-scan-file = letzte Änderung der Scandatei
time-by-check = Zeit der Prüfung
time-not-known = nicht bekannt
time-for = { $source } bei { $counted }
timed-cases = { $count ->
    [one] 1 Fall
   *[other] { $count } Fällen
}
timed-measurements = { $count ->
    [one] 1 Messung
   *[other] { $count } Messungen
}
timed-no-cases = keine Fälle
timed-no-measurements = keine Messungen

## Die eingefrorene Ausgangsbasis.

baseline-other-limits = Die Ausgangsbasis entstand mit anderen Grenzwerten ({ $limits }): Messwerte sind vergleichbar, der Anteil mit Mängeln vielleicht nicht.
baseline-other-version = Die Ausgangsbasis entstand mit archproof { $version }: wo sich das Messen seither geändert hat, kann eine Verschiebung vom Programm kommen. Sie zur Sicherheit aus denselben Scans neu erstellen.
baseline-toml = { $problem }; die Datei mit „archproof baseline DIR --write FILE“ neu schreiben
baseline-number = [[{ $table }]] Nummer { $number }: für { $key } ist { $must } nötig; die Datei mit „archproof baseline DIR --write FILE“ neu schreiben
baseline-twice = [[{ $table }]] Nummer { $number } wiederholt eine frühere Angabe; nur eine davon behalten
must-be-number = eine Zahl
must-be-positive = eine Zahl über 0
must-be-at-least = mindestens { $least }
must-be-at-most-of = höchstens der Wert von of
baseline-written = Grenzen von { $figures } Größen in { $groups ->
    [one] 1 Gruppe
   *[other] { $groups } Gruppen
} in { $path }
baseline-use = Verwenden mit: archproof batch FOLDER --out DIR --baseline { $path }

## Ein Kontrollnormal im zeitlichen Verlauf.

control-title = { $standard } im zeitlichen Verlauf
control-kicker = Kontrollnormal im zeitlichen Verlauf
control-heading = { $standard }, { $count ->
    [one] 1 Messung
   *[other] { $count } Messungen
}
control-impression = Abformung
control-artefact = Prüfkörper { $name }
control-in = BEHERRSCHT: { $count } Messungen ({ $standard }); die letzte ({ $latest }) liegt innerhalb der Grenzen aus den ersten { $from }.
control-earlier = { $count ->
    [one] Es gibt 1 früheres Signal.
   *[other] Es gibt { $count } frühere Signale.
}
control-too-few = NICHT BEURTEILT: { $count ->
    [one] 1 Messung ({ $standard }) ist zu wenig.
   *[other] { $count } Messungen ({ $standard }) sind zu wenige, oder alle gleich.
} Das Normal beim nächsten Mal wieder messen.
control-out = NICHT BEHERRSCHT: { $count } Messungen ({ $standard }); bei der letzten ({ $latest }) haben sich { $spoken } von { $figures } Größen geändert. Das Normal noch einmal messen. Liegt auch diese Messung außerhalb, den Scanner reinigen und kalibrieren und keinen Fall damit prüfen, bis das Messen des Normals beherrscht ist.
control-scanned = Gescannt von { $first } bis { $last } (UTC), nach: { $sources }. Die Grenzen stammen aus den ersten { $from } Messungen.
control-signal = Messung { $number } ({ $at }): { $value }, { $rule }
control-since = { $said }, seit Messung { $number } ({ $at })
control-up-to = { $said }, bis Messung { $number }
control-beyond-limits = jenseits von drei Standardabweichungen { $side ->
    [above] über
   *[below] unter
} der Mittellinie
control-two-of-three = zwei von drei jenseits von zwei Standardabweichungen { $side ->
    [above] über
   *[below] unter
} der Mittellinie
control-four-of-five = vier von fünf jenseits von einer Standardabweichung { $side ->
    [above] über
   *[below] unter
} der Mittellinie
control-eight-in-a-row = acht nacheinander { $side ->
    [above] über
   *[below] unter
} der Mittellinie
control-ewma = gleitender Mittelwert außerhalb seiner Grenzen, { $side ->
    [above] über
   *[below] unter
} der Mittellinie
control-by-chance = Bei so vielen Punkten sind allein durch Zufall etwa { $signals } Signale zu erwarten.
control-not-judged = Nicht beurteilt: { $figures }
control-figures = Größen
control-written-by = Erstellt mit archproof { $version }.
control-some-have-it = { $have } von { $all } Messungen enthalten sie
control-least = { $count } Messungen; { $least } sind nötig
control-alike = die ersten { $from } Messwerte sind gleich und ergeben keine Grenzen
control-head-figure = Größe
control-head-unit = Einheit
control-head-deviation = s
control-head-lower = UEG
control-head-upper = OEG
control-head-latest = letzte
control-head-signals = Signale

## Warum ein Kontrollnormal nicht beurteilt werden konnte.

control-unreadable = { $path }: nicht lesbar ({ $reason }); einen Ordner mit Ergebnissen eines Normals angeben
control-none = { $path }: enthält keine Ergebnisse von „archproof check“ oder „archproof artefact --json“; dort für jede Messung eines ablegen
control-mixed = { $path }: gilt für { $found }, andere für { $wanted }; in einem Ordner nur Ergebnisse eines Normals ablegen
control-no-time = { $path }: gibt nicht an, wann gemessen wurde; mit dieser Version neu messen
