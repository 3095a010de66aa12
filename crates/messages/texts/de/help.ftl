### Die Befehlszeile: Hilfe zu Befehlen und Optionen, und was nicht zu verstehen war. Der englische
### Text steht im Quelltext, bei den Befehlen und Optionen selbst, oder ist der von clap.

## Wörter um die Hilfe herum.

help-word-usage = Aufruf:
help-word-commands = Befehle
help-word-arguments = Argumente
help-word-options = Optionen
help-word-default = [Vorgabe: { $value }]
help-word-values = [mögliche Werte: { $values }]
help-word-values-listed = Mögliche Werte:
help-word-help = Hilfe ausgeben
help-word-help-short = Hilfe ausgeben (mehr mit „--help“)
help-word-help-long = Hilfe ausgeben (kürzer mit „-h“)
help-word-version = Version ausgeben
help-heading-how-scans-are-checked = Wie die Scans geprüft werden

## Befehle in einer Zeile.

help-command-archproof = Prüft die Qualität von 3D-Scans der Abformungen zahnloser Kiefer.
help-command-check = Einen Abformungsscan oder einen Fall aus mehreren prüfen
help-command-batch = Alle Fälle eines Ordners nebeneinander prüfen
help-command-collect = Die Ergebnisse aller Teilläufe zu einem Satz Tabellen vereinen
help-command-watch = Einen Ordner überwachen und jeden neuen Fall prüfen, sobald seine Dateien vollständig sind
help-command-baseline = Die Grenzen der Regelkarten aus den Ergebnissen einer guten Zeit einfrieren
help-command-judge = Gemessene Ergebnisse nach anderen Grenzwerten neu beurteilen, ohne neu zu messen
help-command-artefact = Einen Scanner an einem Prüfkörper mit Kugeln und Stufen zertifizierter Maße prüfen
help-command-gauge = Eine Messsystemanalyse (Wiederhol- und Vergleichpräzision) auswerten
help-command-agreement = Die Urteile von Personen miteinander und mit dem Programm vergleichen
help-command-control = Sagen, ob das Messen beherrscht ist, anhand eines immer wieder gemessenen Kontrollnormals
help-command-inspect = Scans mit Größe, Einheit, Art und Qualität auflisten, eine Zeile je Datei
help-command-fit = Sagen, welcher Ihrer Serienlöffel zu einem Mund passt
help-command-new = Aus den Scans eines Ordners eine Falldatei vorschlagen
help-command-clean = Einen Scan ohne den Text darin schreiben, der eine Person nennen kann
help-command-demo = Einen Beispielfall mit erfundener Geschichte in einen Ordner schreiben
help-command-explain = Eine Prüfung erklären: was sie ist, warum sie zählt, wie gemessen wird, was nicht bekannt ist
help-command-protocol = Grenzwerte zeigen, schreiben oder prüfen
help-command-protocol-show = Ein Protokoll mit jedem Grenzwert und seiner Quelle ausgeben; ohne Datei das mitgelieferte
help-command-protocol-new = Jeden Grenzwert mit seiner Quelle in eine neue Datei schreiben, um ihn zu ändern
help-command-protocol-check = Sagen, ob eine Protokolldatei verwendbar ist
help-command-repeat = Wiederholte Scans einer Abformung vergleichen
help-command-schema = Das JSON-Schema von result.json oder einer anderen Ausgabe ausgeben
help-command-completions = Ein Skript ausgeben, mit dem eine Shell Befehle und Optionen ergänzt
help-command-manual = Die Handbuchseiten, eine für jeden Befehl, in einen Ordner schreiben
help-command-help = Die Hilfe zu einem Befehl oder eine Seite zu einem Thema ausgeben
help-command-view = Ein Ergebnis auf der Abformung zeigen, in einem Fenster

## Was der Reihe nach mehr zu einem Befehl zu sagen ist.

help-more-check = Exit-Status: 0 annehmen; 1 nacharbeiten oder neu abformen; 3 unentschieden; 2 falscher Gebrauch oder unlesbare Eingabe.
help-more-batch = Fälle sind die Falldateien im Ordner und darunter oder, mit --scans, Scans mit solchen Namen. DIR erhält einen Ordner für jeden Fall, Tabellen über alle (results.jsonl, Zusammenfassung und Befunde als CSV und Parquet, summary.xlsx) und inputs.csv, in der steht, zu welchem Fall welche Datei gehört. Nicht lesbare Fälle stehen mit dem Grund als Zeilen darin. Die letzte Zeile zählt die Ergebnisse. Exit-Status: 0, wenn jeder Fall geprüft wurde, gleich mit welchem Ergebnis; 1, wenn einer oder mehrere nicht lesbar waren oder ein Ergebnis aus --fail-on haben; 2 falscher Gebrauch.
help-more-collect = Die Ergebnisse der Fälle bleiben, wo sie sind. Exit-Status: wie bei „archproof batch“.
help-more-watch = Führt „archproof batch --resume“ immer wieder aus, bis es beendet wird (Strg-C). Ein Fall wird nur dann erneut geprüft, wenn sich seine Dateien ändern.
help-more-baseline = Für jeden Kiefer und jede Phase mit 20 oder mehr Abformungen: Mittellinie, Standardabweichung und Anzahl jeder Größe mit Regelkarte und der Anteil mit Mängeln. „archproof batch --baseline“ beurteilt spätere Fälle danach.
help-more-judge = Sagt, welche Fälle ihr Ergebnis ändern und warum. Eine Prüfung wird nur dort neu beurteilt, wo die Ergebnisse alle ihre Messwerte enthalten; sonst zählt der Fall als „neu messen“ und nie als bestanden.
help-more-artefact = Abweichungen der Durchmesser und Mittelpunktabstände im Sinn von ISO 12836 und ISO 10360, und ob jede innerhalb der Grenze liegt, die die Beschreibung nennt. Exit-Status: 0 alles konform; 1 etwas nicht konform; 3 Grenzfall oder keine Grenze genannt; 2 falscher Gebrauch, oder der Prüfkörper ist in einem Scan nicht zu finden.
help-more-gauge = Durch Varianzanalyse zweier gekreuzter Zufallsfaktoren. Wo sich die Prüfer von Teil zu Teil nicht unterscheiden (p über 0,25), wird das mit den Wiederholungen zusammengefasst.
help-more-agreement = Nach dem Anteil der Übereinstimmung über den Zufall hinaus (Kappa nach Cohen und nach Fleiss) und danach, was jeder Beurteiler gegenüber einem gewählten übersieht und zu Unrecht ablehnt.
help-more-control = Der Ordner enthält Ergebnisse einer Abformung („archproof check --out DIR/WEEK“) oder des Prüfkörpers („archproof artefact … --json > DIR/WEEK.json“), eines für jedes Mal. Sie werden nach den Zeiten ihrer Scandateien geordnet. Exit-Status: 0 bei der letzten Messung beherrscht; 1 nicht beherrscht; 3 zu wenige; 2 falscher Gebrauch.
help-more-inspect = Spalten: Größe in mm; Einheit (mit Fragezeichen, wo sie zweifelhaft ist); was der Scan zeigt; gescannte Seiten; Anzahl der zusammenhängenden Teile, der Randschleifen und der Fehler (Kanten von drei oder mehr Dreiecken und Dreiecke ohne Fläche); Median der Kantenlänge in mm; Rauschen in mm; Name der Datei und Anmerkungen. Exit-Status: 0; 2, wenn eine Datei nicht lesbar war, was in ihrer Zeile steht.
help-more-fit = Zu jedem Löffel: die Lage mit dem gleichmäßigsten Abstand, dort der kleinste und der mediane Abstand, wo er berührt, und wie weit seine Kante vom Rand entfernt ist. Exit-Status: 0 einen davon so nehmen, wie er ist; 1 keiner passt so, wie er ist; 3 kein Löffel dieses Kiefers; 2 falscher Gebrauch oder unlesbare Eingabe.
help-more-new = Jeder Scan wird angesehen: welcher eine Abformung ist und von welchem Kiefer, welcher ein Löffel und wozu er gehört, welcher das Kieferrelationsregistrat, und welche von zwei Abformungen eines Kiefers der Wash ist. Eine Tabelle sagt, wofür jeder gehalten wurde, wie sicher und warum. Was die Oberflächen nicht zeigen, wird gefragt oder, ohne Terminal, als Kommentar in der Falldatei offengelassen. Ein Ordner mit solchen Ordnern erhält in jedem eine Falldatei. Exit-Status: 0 nichts offen; 3 eine Frage ist offen; 2 falscher Gebrauch.
help-more-clean = Kopf, Kommentare und Namen entfallen; Eckpunkte, Dreiecke und Farben bleiben, wie sie sind, bis auf Dreiecke ohne Fläche oder doppelt angegebene.
help-more-repeat = Die Scans werden am ersten ausgerichtet. Gibt die Streuung an jeder Stelle an, die Bereiche, in denen sich die Scans um mehr unterscheiden, als Rauschen und Ausrichtung erklären, und die Wiederholstandardabweichung jeder Größe, die „check“ angibt.
help-more-completions = Für bash nach ~/.local/share/bash-completion/completions/archproof schreiben; für zsh nach _archproof in einem Ordner aus $fpath; für fish nach ~/.config/fish/completions/archproof.fish. Das Debian-Paket bringt alle drei mit.
help-more-help = Ohne Namen werden Befehle und Themen aufgelistet.
help-more-view = Ein Fall oder ein Scan wird zuerst geprüft, mit den Optionen von „check“. Das Fenster ist ein eigenes Programm, archproof-viewer, das neben diesem oder im PATH gesucht wird.

## Optionen, die bei mehreren Befehlen dasselbe bedeuten.

help-option-unit = Einheit der Scandateien, wenn nicht mm
help-option-protocol = Datei mit Ihren eigenen Grenzwerten
help-option-language = Sprache der Ausgabe [Vorgabe: die des Systems]
help-option-folder = Ordner mit den Fällen
help-option-out = Ordner für die Ergebnisse
help-option-scans = Namen der Abformungsscans, die ohne Falldatei Fälle sind, wie in „*-upper.ply“
help-option-trays = Namen ihrer Löffel, in denen * für dasselbe steht, wie in „*-tray.stl“
help-option-ids-from-names = Erklären, dass der Text an der Stelle des * ein Pseudonym ist, und die Fälle danach benennen
help-option-arch = Kiefer der Scans ohne Falldatei
help-option-stage = Phase ihrer Abformungen [Vorgabe: one-step]
help-option-no-report = Keine report.html und kein Begleitblatt zu den Fällen schreiben
help-option-memory = Speicher für die Fälle in Arbeit, wie in 8GiB oder in Bytes
help-option-threads = Zahl der gleichzeitig geprüften Fälle [Vorgabe: einer je Prozessorkern]
help-option-baseline = Eingefrorene Grenzen der Regelkarten, von „archproof baseline“ geschrieben
help-option-by = Kennzeichen, nach dem Regelkarten getrennt werden, neben Kiefer und Phase
help-option-rules = Regeln der Regelkarten, wie in beyond-limits,ewma; außerdem two-of-three, four-of-five, eight-in-a-row [Vorgabe: beyond-limits,ewma]
help-option-json = Die Zählung als JSON ausgeben („archproof schema batch“ erklärt sie)
help-option-fail-on = Ergebnisse, die den Exit-Status auf 1 setzen, wie in rework,retake
help-option-file = Protokolldatei

## Optionen und Argumente je Befehl.

help-option-check-input = Abformungsscan (STL, PLY, OBJ) oder Falldatei (case.toml)
help-option-check-arch = Kiefer der Abformung (upper und lower werden auch verstanden)
help-option-check-tray = Scan des leeren Löffels
help-option-check-trays = Ordner mit Scans Ihrer leeren Serienlöffel; der passende wird gefunden
help-option-check-tray-thickness = Dicke des Löffels in mm, wenn er nicht gescannt wurde
help-option-check-tray-thickness-uncertainty = Messunsicherheit (k = 2) dieser Dicke in mm [Vorgabe: 0.5]
help-option-check-tray-colour = Farbe des Löffels in einem farbigen Scan, als #rrggbb [Vorgabe: die im Scan gefundene]
help-option-check-landmarks = Von Hand markierte Landmarken (landmarks.toml); sie ersetzen die gefundenen
help-option-check-stage = Phase der Abformung [Vorgabe: one-step]
help-option-check-out = Ordner für die Ergebnisse [Vorgabe: archproof-CASE, ohne Fallkürzel nach Zeit und Prüfsumme]
help-option-check-case = Fallkürzel (nie der Name des Patienten)
help-option-check-language = Sprache von Zusammenfassung, Bericht und Blättern [Vorgabe: die des Systems]
help-long-check-language = Die Zusammenfassung am Terminal, Meldungen, Bericht, Begleitblatt und Rücksendeblatt sind in dieser Sprache; result.json und Tabellen sind auf Englisch.
help-option-check-json = result.json statt der Zusammenfassung ausgeben
help-option-check-no-report = Keine report.html und kein Begleitblatt schreiben
help-option-check-open = Das Begleitblatt öffnen, wenn es geschrieben ist
help-option-check-return-note = Auch ein Rücksendeblatt für die Praxis schreiben, wenn von ihr etwas gebraucht wird
help-long-check-return-note = Eine Seite ohne die Grenzwerte des Labors (return.html, return.pdf) und ein Text zum Einfügen in eine Nachricht (return.txt).
help-option-check-verbose = Jede geschriebene Datei auflisten
help-option-check-times = Die Dauer jedes Schritts auf der Standardfehlerausgabe nennen
help-option-check-threads = Anzahl der Threads [Vorgabe: einer je Prozessorkern]
help-option-batch-resume = In DIR fortfahren: Fälle, die schon aus denselben Dateien mit denselben Grenzwerten und derselben Version geprüft wurden, werden übersprungen
help-option-batch-shard = Teillauf I von N der Fälle prüfen; „archproof collect“ vereint die Teilläufe
help-option-batch-language = Sprache der Berichte, der Blätter und der Seite über alle Fälle [Vorgabe: die des Systems]
help-option-watch-language = { help-option-batch-language }
help-option-watch-settle = Sekunden, in denen sich die Dateien eines Falls nicht geändert haben dürfen
help-option-collect-folders = Ergebnisordner, einer je Teillauf
help-option-collect-out = Ordner für die Tabellen
help-option-baseline-dir = Ordner, den „archproof batch“ oder „archproof collect“ geschrieben hat
help-option-baseline-write = Zu schreibende Datei; eine schon vorhandene bleibt, wie sie ist
help-option-baseline-by = { help-option-by }
help-option-judge-dir = Ordner, den „archproof batch“ oder „archproof check“ geschrieben hat
help-option-judge-protocol = Datei mit den Grenzwerten, nach denen beurteilt wird
help-option-judge-json = Je Fall eine Zeile JSON ausgeben („archproof schema judge“ erklärt sie)
help-option-artefact-description = Beschreibung des Prüfkörpers, eine TOML-Datei (siehe „archproof help measuring“)
help-option-artefact-scans = Scans davon, in beliebiger Lage
help-option-artefact-write = Was die Scans über den Scanner sagen, in diese neue Datei schreiben; sie in der Falldatei oder im Protokoll als „scanner“ nennen
help-option-artefact-json = Alles als JSON ausgeben
help-option-control-dir = Ordner mit den Ergebnissen
help-option-control-first = Zahl der Messungen, von der ersten an, aus denen die Grenzen gebildet werden (8 oder mehr)
help-option-control-rules = Regeln der Regelkarten, wie bei „archproof batch“ [Vorgabe: beyond-limits,ewma]
help-option-control-write = Eine Seite mit den Regelkarten in diese neue Datei schreiben
help-option-control-json = { help-option-artefact-json }
help-option-agreement-verdicts = CSV-Datei mit einer Spalte „case“ und einer für jeden Beurteiler, unter einem Kürzel; eine Zelle enthält ein Urteil, etwa accept oder rework, oder nichts
help-option-agreement-beside = Spalte, mit der die übrigen verglichen werden: was sie übersehen, und Fehlalarme
help-option-agreement-json = Die Studie als JSON ausgeben
help-option-gauge-study = CSV-Datei mit den Spalten operator, part, repeat, value; oder ein Ordner mit OPERATOR/PART/REPEAT, jedes REPEAT ein Scan oder ein Ergebnisordner
help-option-gauge-least = Kleinster zulässiger Messwert einer Tabelle, mit dem das Messsystem verglichen wird
help-option-gauge-most = Größter zulässiger Messwert einer Tabelle
help-option-gauge-json = { help-option-agreement-json }
help-option-gauge-arch = Kiefer der Abformungen
help-option-gauge-tray = Scan des leeren Löffels, der allen gemeinsam ist
help-option-gauge-protocol = Protokolldatei, für die Tiefe, in der die Dicke des Funktionsrandes gemessen wird
help-option-repeat-scans = Scans einer Abformung, zwei oder mehr
help-option-repeat-out = Ordner für repeat.json und die Karte spread.ply
help-option-repeat-known = repeat.json einer früheren Studie: die Spannweiten nach deren Standardabweichungen beurteilen
help-option-repeat-json = repeat.json statt der Zusammenfassung ausgeben
help-option-repeat-arch = { help-option-gauge-arch }
help-option-repeat-tray = { help-option-gauge-tray }
help-option-repeat-protocol = { help-option-gauge-protocol }
help-option-inspect-scans = Scans (STL, PLY, OBJ) oder Ordner, die durchgesehen werden
help-option-inspect-json = Die Zeilen als JSON ausgeben
help-option-fit-scan = Scan einer Abformung, des Mundes oder eines Modells (STL, PLY, OBJ)
help-option-fit-trays = Ordner mit Scans Ihrer leeren Serienlöffel [Vorgabe: der des Protokolls]
help-option-fit-arch = Kiefer (upper und lower werden auch verstanden)
help-option-fit-unit = Einheit des Scans, wenn nicht mm
help-option-fit-write = Eine Seite mit einem Bild jedes Löffels im Mund in diese neue Datei schreiben
help-option-fit-json = Die Messwerte als JSON ausgeben
help-option-new-folder = Ordner mit den Scans eines Falls oder mit solchen Ordnern
help-option-new-ids = Pseudonyme, eine CSV-Datei mit den Spalten folder, id [Vorgabe: aus Prüfsummen gebildet]
help-option-new-stage = Phase jeder Abformung, die die einzige ihres Kiefers ist
help-option-new-yes = Nichts fragen; was zweifelhaft ist, wird weggelassen
help-option-new-force = Eine schon vorhandene Falldatei ersetzen
help-option-clean-scan = Scan (STL, PLY, OBJ)
help-option-clean-out = Zu schreibende Datei; ihre Endung (ply, stl, obj) nennt das Format
help-option-demo-dir = Ordner, in den geschrieben wird; er wird angelegt, wenn es ihn nicht gibt
help-option-demo-in-pieces = Einen Fall schreiben, dessen Abformung zerschnitten wurde und dessen Löffel aus zwei Teilen besteht
help-option-explain-code = Code der Prüfung, wie ihn Befunde nennen; ohne ihn werden alle Codes aufgelistet
help-option-explain-language = Sprache der Seite [Vorgabe: die des Systems]
help-option-protocol-show-language = Sprache von Fehlermeldungen; das Protokoll wird ausgegeben, wie es ist [Vorgabe: die des Systems]
help-option-protocol-new-file = Zu schreibende Protokolldatei; eine schon vorhandene bleibt, wie sie ist
help-option-schema-of = Wovon das Schema ausgegeben wird
help-option-completions-shell = Shell, für die das Skript ist
help-option-manual-dir = { help-option-demo-dir }
help-option-help-of = Befehl oder Thema
help-option-help-html = Die Seite „scanning“ mit ihren Zeichnungen schreiben, zum Ausdrucken
help-option-help-language = Sprache der Hilfe [Vorgabe: die des Systems]
help-option-view-arguments = Ergebnisordner, Falldatei (case.toml) oder Abformungsscan, und Optionen

## Was die möglichen Werte bedeuten.

help-value-maxillary = Oberkiefer
help-value-mandibular = Unterkiefer
help-value-before-wash = Das schwer- oder mittelfließende Material, vor dem Wash
help-value-wash = Mit dem Wash darüber
help-value-one-step = Einzeitig abgeformt
help-value-rework = Zu korrigieren, dann ein Wash
help-value-retake = Neu abzuformen
help-value-undecided = Etwas fehlt, oder es ist zu knapp, um zu entscheiden
help-value-result = result.json
help-value-summary = Eine Zeile von results.jsonl, summary.csv und summary.parquet
help-value-findings = Eine Zeile von findings.jsonl, findings.csv und findings.parquet
help-value-batch = Was `batch --json` ausgibt
help-value-judge = Eine Zeile dessen, was `judge --json` ausgibt
help-value-inspect = Was `inspect --json` ausgibt
help-value-repeat = repeat.json
help-value-gauge = Was `gauge --json` ausgibt
help-value-agreement = Was `agreement --json` ausgibt
help-value-artefact = Was `artefact --json` ausgibt
help-value-control = Was `control --json` ausgibt
help-value-fit = Was `fit --json` ausgibt

## Was nicht zu verstehen war.

refusal-word-error = Fehler:
refusal-word-tip = Tipp:
refusal-word-help = Mehr dazu mit „--help“.
refusal-unknown-option = das Argument '{ $given }' ist nicht bekannt
refusal-unknown-command = der Befehl '{ $given }' ist nicht bekannt
refusal-nearest = gemeint ist vielleicht { $nearest }
refusal-invalid-value = der Wert '{ $value }' ist für '{ $option }' nicht möglich
refusal-no-value = '{ $option }' braucht einen Wert
refusal-twice = '{ $option }' darf nur einmal angegeben werden
refusal-conflict = '{ $option }' und '{ $other }' lassen sich nicht zusammen verwenden
refusal-missing = es fehlt: { $options }
refusal-too-many = der Wert '{ $value }' ist für '{ $option }' zu viel
refusal-too-few = '{ $option }' braucht { $least } Werte; angegeben: { $given }
refusal-not-text = ein Argument ist kein Text in UTF-8
refusal-other = die Befehlszeile ist so nicht verständlich
