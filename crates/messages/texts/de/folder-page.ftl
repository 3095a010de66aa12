### Die Seite über einen Ordner mit Fällen: Rahmen, Zählungen, Mängel, Verteilungen und Fälle.

## Der Rahmen.

folder-title = { $cases ->
    [one] 1 Fall
   *[other] { $cases } Fälle
} - geprüfte Abformungen
folder-kicker = Übersicht über einen Ordner mit Fällen
folder-heading = { $cases ->
    [one] 1 Fall
   *[other] { $cases } Fälle
}, { $impressions ->
    [one] 1 Abformung
   *[other] { $impressions } Abformungen
}
folder-footer = Fälle werden unter Pseudonymen geführt. Jede Zeile steht in summary.csv und findings.csv.
folder-accepted = { $accepted } von { $of } gelesenen Fällen wurden angenommen: { $share }, 95-%-Intervall { $interval }.
folder-none-read = Kein Fall war lesbar.
folder-unread = { $count } nicht lesbar.

## Was sie umfasst.

folder-covers = Was diese Seite umfasst
folder-sha = Ordner, nach SHA-256
folder-cases = Fälle
folder-cases-counted = { $cases }, davon { $unread } nicht lesbar
folder-impressions = Abformungen
folder-impressions-counted = { $impressions }, davon { $current } zur Weiterarbeit und { $superseded } durch einen Wash abgelöst
folder-scanned = Gescannt (UTC), erste bis letzte
folder-span = { $first } bis { $last }
folder-time-source = Zeit des Scans, nach Quelle
folder-limits = Grenzwerte, nach Name und SHA-256
folder-version = Version
folder-shards = Teilläufe
folder-one-shard = Teillauf { $number } von { $of }: die übrigen Fälle sind hier nicht enthalten
folder-no-shards = alle Fälle in einem Lauf
folder-all-shards = alle { $of } Teilläufe, zusammengeführt
folder-covers-note = Die Zeit des Scans ist die in der Falldatei angegebene (scanned_at), sonst die letzte Änderung der Scandatei, die beim Kopieren neu gesetzt werden kann. Die SHA-256 des Ordners gilt für das, was zu jedem Fall gegeben war, und den Namen seiner Ergebnisse, unabhängig von den Grenzwerten.

## Überschriften der Tabellen.

folder-head-what = Angabe
folder-head-value = Wert
folder-head-verdict = Ergebnis
folder-head-cases = Fälle
folder-head-share-read = Anteil an den gelesenen Fällen
folder-head-interval = 95-%-Intervall
folder-head-current = Abformungen zur Weiterarbeit
folder-head-comes-first = was zuerst kommt
folder-head-share-undecided = Anteil an den unentschiedenen
folder-head-verdict-on-it = Ergebnis dafür
folder-head-impressions = Abformungen
folder-head-share = Anteil
folder-head-group = Gruppe
folder-head-accepted = angenommen
folder-head-of = von
folder-head-check = Prüfung
folder-head-figure = Größe
folder-head-least = kleinster Wert
folder-head-percentile = { $percent }. Perzentil
folder-head-median = Median
folder-head-most = größter Wert
folder-head-case = Fall
folder-head-jaw = Kiefer
folder-head-first-step = was zuerst zu tun ist
folder-head-report = Bericht
folder-head-why = Grund

## Ergebnisse.

folder-verdicts = Ergebnisse
folder-accept = bereit für den nächsten Schritt, vorbehaltlich dessen, was nicht beurteilt wurde
folder-rework = die mangelhaften Stellen korrigieren, dann den Wash nehmen oder wiederholen
folder-retake = die Abformung neu nehmen
folder-undecided = etwas fehlt, oder es ist zu knapp, um zu entscheiden
folder-intervals = Die Intervalle sind Score-Intervalle (Wilson 1927). Bei Fällen wie diesen enthält ein solches Intervall den wahren Anteil in 95 von 100 Malen.
folder-why-undecided = Warum Fälle unentschieden sind
folder-because-question = zuerst ist eine Frage zu klären (welcher Kiefer, welche Ausrichtung, welche Einheit)
folder-because-missing = es fehlt etwas, das für ein Ergebnis nötig ist
folder-because-look = zu nahe am Grenzwert, um es zu entscheiden, oder mit dem Auge zu prüfen
folder-because-parcel = die Sendung ist nicht vollständig
folder-because-not-measured = nicht jede Abformung ließ sich messen
folder-superseded = Abformungen, die ein Wash abgelöst hat
folder-superseded-note = Der Wash entscheidet: Diese Abformungen sind nur hier gezählt.
folder-superseded-table = Abgelöste Abformungen
folder-by-group = Angenommen, nach Gruppe
folder-by-group-note = Abformungen zur Weiterarbeit. Bei kleinen Gruppen ist das Intervall weit.
folder-groups-left-out = Kennzeichen mit zu vielen Werten sind nicht aufgeführt: sie stehen in summary.csv.
folder-all-judged = Jede Prüfung wurde überall durchgeführt.
folder-not-judged-note = Abformungen zur Weiterarbeit, an denen eine Prüfung nicht durchgeführt wurde, oder nicht am ganzen Rand oder auf der ganzen Fläche. Kein Ergebnis schließt sie ein. „archproof explain CODE“ erklärt jede Prüfung.
share-of-none = von keinem
share-interval = { $low } bis { $high }

## Mängel.

folder-failures = Häufigste Mängel
folder-nothing-failed = Es gab keinen Mangel.
folder-failures-note = Mängel mit ihrer Anzahl und dem Anteil, den sie zusammen mit den darüber stehenden an allen haben.
folder-by-check = Nach Prüfung
folder-by-check-and-zone = Nach Prüfung und Zone
folder-the-whole = insgesamt
folder-all-others = alle übrigen
folder-where = Wo am Kiefer
folder-where-note = Mängel, gezählt in Quadraten von 4 mm, im Koordinatensystem der Abformung: Schleimhautseite zum Betrachter, vorn oben. Graue Linien: die Ränder einiger Abformungen.
folder-placed = { $jaw }: { $count ->
    [one] 1 Mangel
   *[other] { $count } Mängel
} mit bekanntem Ort
chart-so-far = bis hier { $share }
chart-where = Wo Mängel liegen, { $jaw }
chart-front = vorn
chart-findings = { $count ->
    [one] 1 Mangel
   *[other] { $count } Mängel
}
chart-thumbnail = Fall { $case }, Schleimhautseite, { $places ->
    [one] 1 mangelhafte Stelle
   *[other] { $places } mangelhafte Stellen
}
chart-no-figures = keine Werte
chart-spread = Median { $median } mm, { $impressions ->
    [one] 1 Abformung
   *[other] { $impressions } Abformungen
}; höchster Balken: { $most }

## Verteilungen.

folder-spreads = Verteilungen
folder-spreads-note = Ein Wert je Abformung, auf 0,01 mm gezählt; die gestrichelte Linie ist der Median. Die Messunsicherheiten stehen in summary.csv.
folder-spreads-of = Verteilungen, { $jaw }
spread-thickness = Mediane Dicke, mm
spread-least-thickness = Geringste Dicke, mm
spread-flange-height = Mediane Höhe des Funktionsrandes, mm
spread-flange-thickness = Mediane Dicke des Funktionsrandes, mm

## Fälle.

folder-worst = Fälle, die am meisten Aufmerksamkeit brauchen
folder-worst-note = Zuerst die meisten Mängel, dann die geringste Dicke. Ansicht der Schleimhautseite, vorn oben, nach der Materialdicke gefärbt (dunkel ist dünn); Ringe an den mangelhaften Stellen, gestrichelt, wo andere Fläche davor liegt.
folder-failing = { $count ->
    [one] 1 Mangel
   *[other] { $count } Mängel
}: { $checks }
folder-thickness-not-measured = Dicke nicht gemessen
folder-no-picture = Kein Bild: die Ausrichtung des Scans wurde nicht gefunden.
folder-not-read = Nicht gelesen: { $count }
folder-more-not-read = Und { $count } weitere, jeder eine Zeile in { $table }.
folder-all-cases = Alle Fälle
folder-some-cases = Die { $listed } Fälle, die am meisten Aufmerksamkeit brauchen; { $more } weitere stehen in { $table }.
folder-cases-order = Was am meisten Aufmerksamkeit braucht, steht zuerst. Dieselben Zeilen stehen in { $table }.
folder-case-unread = nicht lesbar
folder-open = öffnen

## Gruppen von Abformungen.

group-maxillary = Oberkiefer
group-mandibular = Unterkiefer
group-first-pass = vor dem Wash
group-wash = Wash
group-single = einzeitig
group-unknown = Kiefer nicht bekannt
group-without-label = { $key }=(ohne)
