### Was die Leser von Scandateien sagen: was auffiel und wie gelesen wurde, und warum eine Datei
### abgelehnt wurde.

## Trotzdem gelesen.

read-wrong-extension = ist { $format }, obwohl der Name auf .{ $named } endet; gelesen nach dem Inhalt
read-byte-order-mark = beginnt mit einer UTF-8-Byte-Reihenfolge-Marke; sie wurde übergangen
read-trailing-bytes = { $bytes ->
    [one] 1 Byte
   *[other] { $bytes } Bytes
} nach dem Ende des Scans weggelassen
read-surplus-values = Zeilen enthalten mehr Zahlen, als der Dateikopf angibt; die überzähligen wurden weggelassen
read-second-scan = in derselben Datei folgt ein zweiter Scan mit { $triangles ->
    [one] 1 Dreieck
   *[other] { $triangles } Dreiecken
} und wurde weggelassen; jeden Scan in eine eigene Datei schreiben
read-wrong-count = der Dateikopf gibt { $declared } Dreiecke an, vorhanden sind genau { $held }; alle { $held } wurden gelesen
read-no-endsolid = die Schlusszeile 'endsolid' fehlt; die Datei könnte nach dem letzten Dreieck abgeschnitten sein
read-several-solids = { $solids } Körper in einer Datei wurden als ein Scan gelesen
read-faces-without-area = { $count ->
    [one] 1 Fläche
   *[other] { $count } Flächen
} mit weniger als 3 Ecken weggelassen
read-repeated-corners = { $count ->
    [one] 1 Dreieck
   *[other] { $count } Dreiecke
} mit zwei gleichen Ecken weggelassen
read-duplicate-triangles = { $count ->
    [one] 1 Dreieck
   *[other] { $count } Dreiecke
} genau auf einem anderen weggelassen (davon umgekehrt ausgerichtet: { $turned })
read-unused-vertices = { $count } von { $of } Eckpunkten weggelassen, die zu keinem Dreieck gehören
read-joined-corners = die Dreiecke hatten keine gemeinsamen Ecken: { $joined } Ecken wurden innerhalb von { $tolerance } (Einheiten der Datei) mit einer anderen verbunden
read-coarse-coordinates = Koordinaten nahe { $largest } lassen sich nur in Schritten von { $step } (Einheiten der Datei) speichern, grob für einen Scan von { $size } Länge; näher am Ursprung exportieren
read-normals-against-triangles = die gespeicherten Normalen zeigen zur anderen Seite als die Dreiecke: der Scan wurde umgestülpt oder gespiegelt
read-whole-numbers = Koordinaten sind als ganze Zahlen gespeichert, in Schritten von 1; die Einheit prüfen
read-face-colours = Farbe ist je Fläche angegeben, nicht je Eckpunkt, und wurde nicht verwendet
read-texture-picture = die Farbe steht in einem Bild neben der Datei und wurde nicht verwendet
read-turned = { $count ->
    [one] 1 Dreieck war anders ausgerichtet als seine Nachbarn und wurde gewendet
   *[other] { $count } Dreiecke waren anders ausgerichtet als ihre Nachbarn und wurden gewendet
}
read-inside-out = der Scan war umgestülpt und wurde gewendet; hat Software ihn gespiegelt, so sind rechts und links vertauscht
read-turned-and-inside-out = { $count ->
    [one] 1 Dreieck war anders ausgerichtet als seine Nachbarn und wurde gewendet
   *[other] { $count } Dreiecke waren anders ausgerichtet als ihre Nachbarn und wurden gewendet
}; der Scan war umgestülpt und wurde gewendet; hat Software ihn gespiegelt, so sind rechts und links vertauscht
read-other-landmarks = die Landmarkendatei gehört nach ihrer Prüfsumme zu einem anderen Scan und wurde nicht verwendet
read-of-one = { $kind ->
    [part] Teil
   *[piece] Löffelteil
} { $number }: { $said }

## Abgelehnt: die Datei.

refused-missing = diese Datei gibt es nicht; den Namen prüfen
refused-dangling-link = ist eine Verknüpfung mit einer Datei, die es nicht gibt; den Scan selbst angeben
refused-link-loop = ist eine Verknüpfung, die im Kreis führt; den Scan selbst angeben
refused-folder = ist ein Ordner; eine einzelne Scandatei angeben
refused-special = ist keine gewöhnliche Datei (sondern Gerät, Pipe oder Socket); eine Scandatei angeben
refused-permission = nicht lesbar: keine Zugriffsrechte; Leserechte einholen
refused-too-large = hat { $bytes } Bytes, gelesen werden höchstens { $most }; den Scan mit weniger Dreiecken exportieren
refused-changed = wurde während des Lesens verändert ({ $before } Bytes, dann { $after }); abwarten, bis das Kopieren beendet ist
refused-system = nicht lesbar ({ $reason }); Datenträger oder Verbindung prüfen

## Abgelehnt: der Inhalt.

refused-empty = ist leer; den Scan noch einmal exportieren
refused-too-short = hat nur { $bytes } Bytes, zu wenig für einen Scan; den Scan noch einmal exportieren
refused-unrecognised = ist weder STL noch PLY oder OBJ; den Scan als binäres STL oder PLY exportieren
refused-cut-short = gibt { $declared } { $items } an, enthält aber { $held }: die Datei ist abgeschnitten; noch einmal exportieren oder kopieren
refused-not-counted = gibt keine Dreiecke an, obwohl { $bytes } Bytes folgen, die keine ganze Zahl von Dreiecken ergeben; den Scan noch einmal exportieren
refused-vertex-count = gibt { $declared } Eckpunkte an, enthält aber weniger: der Dateikopf passt nicht zu den Daten; den Scan noch einmal exportieren
refused-no-room = gibt { $declared } { $items } an, hat nach seiner Größe aber Platz für höchstens { $room }: die Datei ist abgeschnitten oder ihr Kopf beschädigt; noch einmal exportieren oder kopieren
refused-ends-inside = { $place }: die Datei endet mitten in Dreieck { $number }; noch einmal exportieren oder kopieren
refused-no-triangles = enthält keine Dreiecke; den Scan als Netz exportieren
refused-only-degenerate = enthält { $dropped } Dreiecke, keines mit drei verschiedenen Ecken; den Scan noch einmal exportieren
refused-point-cloud = ist eine Punktwolke ({ $points } Punkte, keine Dreiecke); ein Netz exportieren
refused-not-finite = { $place }: eine Koordinate ist keine endliche Zahl; den Scan reparieren und noch einmal exportieren
refused-out-of-proportion = { $place }: die Koordinate { $value } liegt weit außerhalb jedes denkbaren Scans; den Scan reparieren und noch einmal exportieren
refused-decimal-comma = { $place }: eine Zahl mit Dezimalkomma; mit Dezimalpunkt exportieren (im exportierenden Programm englische Zahlen einstellen)
refused-not-a-number = { $place }: wo eine Zahl stehen muss, steht etwas anderes; den Scan noch einmal exportieren
refused-bad-number = { $place }: { $problem }; den Scan noch einmal exportieren
refused-expected = { $place }: hier gehört { $expected } hin; den Scan noch einmal exportieren
refused-corners = { $place }: Dreieck { $triangle } hat { $corners } Ecken statt 3; den Scan noch einmal exportieren
refused-header = { $place }: Fehler im PLY-Kopf: { $problem }; den Scan noch einmal exportieren
refused-index = { $place }: Fläche { $face } verweist auf Eckpunkt { $index }, die Datei hat aber { $vertices } Eckpunkte; den Scan noch einmal exportieren
refused-list-too-long = { $place }: eine Liste von { $length } Werten, mehr als der Rest der Datei enthalten kann; noch einmal exportieren oder kopieren
refused-too-many-triangles = enthält mehr als { $most } Dreiecke, mehr werden nicht gelesen; den Scan mit weniger exportieren
refused-too-many-vertices = enthält mehr als { $most } Eckpunkte, mehr werden nicht gelesen; den Scan mit weniger exportieren
refused-mesh = { $problem }; den Scan noch einmal exportieren

## Dateien, die keine Scans sind.

foreign-zip = ist ein ZIP-Archiv; zuerst entpacken
foreign-gzip = ist ein GZIP-Archiv; zuerst entpacken
foreign-archive = ist ein komprimiertes Archiv; zuerst entpacken
foreign-html = ist eine Webseite, kein Scan (Herunterladen misslungen?); die Datei noch einmal holen
foreign-json = ist ein JSON-Text, kein Scan (Herunterladen misslungen?); die Datei noch einmal holen
foreign-xml = ist eine XML-Datei, kein Scan; den Scan selbst angeben, als STL oder PLY
foreign-pdf = ist ein PDF-Dokument, kein Scan; den Scan selbst angeben, als STL oder PLY
foreign-picture = ist ein Bild, kein Scan; den Scan selbst angeben, als STL oder PLY
foreign-utf16 = ist Text in UTF-16; als ASCII oder UTF-8 speichern
foreign-gltf = ist eine binäre glTF-Szene; den Scan als binäres STL oder PLY exportieren
foreign-dicom = ist eine DICOM-Datei; den Scan als binäres STL oder PLY exportieren
foreign-off = ist ein OFF-Netz; den Scan als binäres STL oder PLY exportieren

## Stellen in einer Datei, und was dort steht.

at-line = Zeile { $line }
at-triangle = Dreieck { $number } (Byte { $byte })
at-byte = Byte { $byte }
at-vertex = Eckpunkt { $index }
format-stl-binary = binäres STL
format-stl-ascii = ASCII-STL
format-ply-binary-le = binäres PLY (Little Endian)
format-ply-binary-be = binäres PLY (Big Endian)
format-ply-ascii = ASCII-PLY
format-obj = OBJ
items-triangles = Dreiecke
items-vertices = Eckpunkte
items-faces = Flächen
items-strips = Dreiecksstreifen
items-other = Datensätze eines anderen Elements
number-not-whole = eine Zahl, die ganz sein müsste, ist es nicht
number-negative-length = die Länge einer Liste ist negativ
expected-coordinates = nach 'v' ein Satz von drei Koordinaten
header-no-line = die Zeile '{ $word }' fehlt
header-no-vertices = es gibt Flächen, aber keine Eckpunkte
header-no-xyz = den Eckpunkten fehlt x, y oder z
header-one-byte = Koordinaten von einem Byte sind zu grob für einen Scan
header-no-indices = den Flächen fehlt die Liste der Eckpunkte
header-format = das Format ist keines von ascii, binary_little_endian und binary_big_endian
header-property-first = eine Eigenschaft steht vor dem ersten Element
header-unknown-word = eine Zeile beginnt mit keinem bekannten Wort
header-element-name = ein Element hat keinen Namen
header-element-count = die Anzahl eines Elements ist keine ganze Zahl ab 0
header-property-type = eine Eigenschaft hat einen unbekannten Typ
header-no-type = eine Eigenschaft hat keinen Typ
header-property-name = eine Eigenschaft hat keinen Namen
header-list-length = die Länge einer Liste ist kein ganzzahliger Typ
mesh-vertex = Dreieck { $triangle } verweist auf Eckpunkt { $vertex }, es gibt aber nur { $vertices }
mesh-not-finite = eine Koordinate von Eckpunkt { $vertex } ist keine endliche Zahl
mesh-colours = { $colours } Farben für { $vertices } Eckpunkte
mesh-too-many-vertices = { $vertices } Eckpunkte sind mehr, als ein Netz zählen kann (4.294.967.295)
