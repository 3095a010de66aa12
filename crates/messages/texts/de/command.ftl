### Warum ein Befehl nicht ausgeführt werden konnte.

said-in-the-case-file = { $name } lässt sich nicht mit einer Falldatei verwenden: die Angabe in die Falldatei schreiben
said-case-name = { $name } braucht einen Namen aus druckbaren Zeichen (ein Pseudonym, nie den Namen des Patienten)
named-scan-refused = { $path }: Zeile { $line } nennt einen Scan, der nicht lesbar ist: { $refused }

## Die Ablage der leeren Löffel.

shelf-folder = { $path }: nicht einsehbar ({ $reason }); den Ordner mit den Scans der leeren Löffel angeben
shelf-no-trays = { $path }: enthält keinen Scan eines Löffels (STL, PLY, OBJ); jeden leeren konfektionierten Löffel einmal scannen und die Scans dort ablegen
shelf-same = { $path }: { $one } und { $other } sind derselbe Scan; einen davon aus dem Ordner nehmen
shelf-impression = { $path }: ist der Scan der Abformung selbst; ihn aus dem Ordner der leeren Löffel nehmen
shelf-scan = { $refused }; den Scan dieses Löffels noch einmal exportieren oder die Datei aus dem Ordner der leeren Löffel nehmen
fit-no-shelf = keine Löffel angegeben: den Ordner mit ihren Scans durch --trays nennen oder als trays im Protokoll
fit-no-mouth = { $path }: zeigt keinen zahnlosen Kiefer ({ $why }); den Scan einer Abformung, des Mundes oder eines Modells angeben

## Eine vorgeschlagene Falldatei.

proposal-folder = { $path }: nicht einsehbar ({ $reason }); einen lesbaren Ordner angeben
proposal-no-scans = { $path }: enthält keinen Scan (STL, PLY, OBJ); einen anderen Ordner angeben
proposal-in-the-way = { $path }: ist schon eine Falldatei; sie prüfen oder mit --force durch eine neue ersetzen
proposal-name = { $path }: der Name ist kein gültiger Text und kann nicht in eine Falldatei geschrieben werden; den Scan umbenennen
ids-columns = Zeile 1 braucht die Spalten folder und id
ids-no-id = Zeile { $line } braucht eine id aus druckbaren Zeichen, ein Pseudonym
ids-no-scans = Zeile { $line } nennt einen Ordner ohne Scans
ids-twice = Zeile { $line } nennt einen Ordner oder eine id zum zweiten Mal
ids-no-table = keine lesbare Tabelle: { $reason }

## Schreiben.

unwritten-no-folder = { $path }: nicht geschrieben: der Ordner dafür fehlt; ihn zuerst anlegen
unwritten-permission = { $path }: nicht geschrieben: keine Schreibrechte im Ordner; einen anderen Ordner wählen
unwritten-read-only = { $path }: nicht geschrieben: der Datenträger ist schreibgeschützt; einen anderen Ordner wählen
unwritten-full = { $path }: nicht geschrieben: der Datenträger ist voll; Platz schaffen und noch einmal versuchen
unwritten-folder-there = { $path }: nicht geschrieben: ein Ordner heißt schon so; einen anderen Namen wählen
unwritten-file-there = { $path }: nicht geschrieben: statt des Ordners ist dort eine Datei; einen anderen Ordner wählen
unwritten-other = { $path }: nicht geschrieben: { $reason }; Ordner und Datenträger prüfen
unwritten-content = { $path }: nicht geschrieben: { $reason }
encode-ending = den Namen auf .ply, .stl oder .obj enden lassen
encode-no-colour = dieses Format enthält keine Farbe, der Scan aber schon; den Namen auf .ply enden lassen
encode-too-many = { $triangles } Dreiecke sind mehr, als ein binäres STL zählen kann (4.294.967.295)
results-unwritten = { $path }: lässt sich nicht schreiben ({ $reason }); Platz schaffen oder einen anderen Ordner wählen
results-no-table = die Tabelle des Randes lässt sich nicht erstellen: { $reason }
results-no-picture = die Bilder des Berichts lassen sich nicht erstellen: { $reason }
results-no-map = die Karte der Materialdicke lässt sich nicht erstellen: { $reason }
demo-unwritten = { $path }: lässt sich nicht schreiben ({ $reason }); Platz schaffen oder einen anderen Ordner angeben
demo-in-the-way = { $path }: ist schon ein Fall; für das Beispiel einen anderen Ordner angeben
new-file-unwritten = { $path }: lässt sich nicht schreiben ({ $reason }); eine Datei angeben, die es noch nicht gibt
over-itself = { $path }: ist der Scan selbst; eine andere Datei zum Schreiben angeben
output-unwritten = die Standardausgabe lässt sich nicht schreiben ({ $reason })
tables-unwritten = die Tabellen lassen sich nicht schreiben ({ $reason }); Platz schaffen oder einen anderen Ordner angeben
tables-no-csv = eine CSV-Tabelle lässt sich nicht erstellen: { $reason }
tables-no-workbook = summary.xlsx lässt sich nicht erstellen ({ $reason }); Platz schaffen oder einen anderen Ordner angeben
tables-no-parquet = eine Parquet-Tabelle lässt sich nicht erstellen: { $reason }

## Ergebnisse, die wieder gelesen werden.

result-unreadable = { $path }: nicht lesbar ({ $reason }); den Ordner angeben, den „archproof check“ geschrieben hat
result-of-another-version = { $path }: ist kein Ergebnis dieser Version ({ $reason }); den Fall noch einmal prüfen
baseline-unreadable = { $path }: nicht lesbar ({ $reason }); einen Ordner angeben, den „archproof batch“ geschrieben hat
baseline-too-few = { $path }: von keinem Kiefer und Abformschritt gibt es { $least } Abformungen mit bekannter Zeit; so viele braucht eine Ausgangsbasis

## Ein Ordner mit Fällen.

batch-folder = { $path }: nicht durchsuchbar ({ $reason }); einen lesbaren Ordner angeben
batch-no-cases = { $path }: enthält keine Falldateien und keine Scans nach dem Muster; einen anderen Ordner oder --scans PATTERN angeben
batch-pattern = ein Muster für Scans ist ein Dateiname mit einem *, wie '*-upper.ply'
batch-unwritten = { $path }: lässt sich nicht schreiben ({ $reason }); Platz schaffen oder einen anderen Ordner angeben
batch-in-use = { $path }: ein anderer Lauf schreibt dort; ihn abwarten oder einen anderen Ordner angeben
batch-into-itself = { $path }: ist zum Lesen und zum Schreiben angegeben; mit --out einen anderen Ordner angeben
batch-in-the-way = { $path }: enthält schon Ergebnisse; sie mit --resume fortsetzen oder einen anderen Ordner angeben
batch-unfinished = { $path }: enthält keine abgeschlossenen Ergebnisse; sie zuerst mit „archproof batch … --resume“ abschließen
batch-no-results = { $path }: enthält keine Ergebnisse von „archproof check“ oder „archproof batch“; den Ordner angeben, den diese geschrieben haben
batch-unlike = { $path }: stammt von einer anderen Version, anderen Grenzwerten oder einer anderen Zahl von Teilläufen; nur zusammengehörige Teilläufe lassen sich vereinen
batch-shard-twice = { $path }: wiederholt Teillauf { $shard }; jeden Teillauf nur einmal nennen
batch-shards-missing = es fehlen die Teilläufe { $shards }; die Ordner aller Teilläufe angeben
no-threads = die Threads konnten nicht gestartet werden ({ $reason }); mit --threads eine kleinere Zahl versuchen

## Andere Befehle.

unknown-code = '{ $code }' ist kein Code einer Prüfung{ $is ->
    [near] ; ist { $nearest } gemeint?
   *[far] {""}
}
unknown-code-of-all = { $refused } („archproof explain“ nennt alle Codes)
unknown-topic = '{ $name }' ist weder Befehl noch Thema; „archproof help“ nennt sie alle
no-drawings = Zeichnungen gibt es nur auf der Seite zum Scannen: „archproof help scanning --html FILE“
no-certified-length = die Beschreibung des Prüfkörpers enthält kein zertifiziertes Maß; Durchmesser, Abstand oder Stufe angeben
sheet-not-opened = das Begleitblatt wurde geschrieben, lässt sich aber nicht öffnen ({ $reason }); von Hand öffnen
no-viewer = das Fenster ist ein eigenes Programm, archproof-viewer, und liegt weder neben diesem noch im PATH; mit „cargo install --path viewer --locked“ installieren
viewer-not-started = archproof-viewer lässt sich nicht starten ({ $reason }); mit „cargo install --path viewer --locked“ neu installieren
explain-one = „archproof explain CODE“ zeigt die Seite zu einem Code.
help-topics = Themen („archproof help TOPIC“):
page-written = Geschrieben: { $path }
clean-written = { $path }: { $triangles ->
    [one] 1 Dreieck
   *[other] { $triangles } Dreiecke
}, { $vertices } Eckpunkte{ $colours ->
    [some] {" mit Farben"}
   *[none] {""}
}, { $format }, ohne jeden Text
clean-reading = Beim Lesen: { $warning }
clean-attribute-bytes = die Attributbytes der Dreiecke wurden weggelassen
protocol-written = Geschrieben: { $path }. Die gewünschten Grenzwerte ändern, dann: archproof protocol check { $path }
protocol-usable = { $path }: verwendbar ({ $name })

## Was mit einem Pfad geschieht, der allein angegeben wird.

start-case-file = { $path }: eine Falldatei; sie wird geprüft. Die Ergebnisse kommen in einen Ordner daneben.
start-scan = { $path }: ein einzelner Scan; er wird für sich geprüft, als einzeitige Abformung ohne Löffel. Die Ergebnisse kommen in einen Ordner daneben.
start-scans = { $path }: { $folders ->
    [one] Scans ohne Falldatei; eine Falldatei wird vorgeschlagen.
   *[other] { $folders } Ordner mit Scans ohne Falldatei; für jeden wird eine Falldatei vorgeschlagen.
}
start-open = Nicht geprüft: zuerst in der Falldatei beantworten, was offen ist, dann mit ihr neu beginnen.
start-checked = { $path }: wird geprüft. Die Ergebnisse kommen in einen Ordner daneben.
start-cases = { $path }: { $cases } Fälle, die nebeneinander geprüft werden.
proposal-left = { $path }: ist schon eine Falldatei und blieb, wie sie ist
proposal-open = Offen: { $question }
proposal-written = Geschrieben: { $path }. Die Datei lesen, dann: archproof check { $path }
proposal-written-open = Geschrieben: { $path }. Jede offene Frage steht darin als Kommentar; dort beantworten.
