### Warum etwas nicht beurteilt wurde.

cut-between-parts = die Abformung wurde zerteilt: am Schnitt zwischen ihren Teilen ({ $width } breit) und dicht daneben wurde nichts beurteilt
no-wash-pair = der Fall nennt keine Abformung vor dem Wash zu einem Wash desselben Kiefers
reason-not-an-impression = keine Abformung: { $what }
no-record-scan = der Fall nennt keinen Scan des Kieferrelationsregistrats
no-vertical-dimensions = der Fall gibt nicht beide vertikalen Dimensionen an
no-parcel = der Fall enthält keine Angaben zur Sendung
too-small-to-see = Stellen unter { $least } Breite zeigt dieser Scan nicht
border-partly-judged = { $part } von { $whole } des Randes konnten nicht beurteilt werden: { $why }
over-extension-not-shown = kein Scan zeigt, ob der Rand zu lang ist: mit dem Mund vergleichen
no-tissue-too-coarse = die mittlere Kantenlänge beträgt { $edge } mm, zu grob für Fehler der Oberfläche (höchstens { $most } mm)
parts-off-the-tray = Teil { $part } liegt nicht auf dem Löffel ({ $share } % seiner Oberfläche liegen auf): prüfen, ob er von dieser Abformung stammt, und auch seine Außenseite scannen
parts-ambiguous = Teil { $part } passt auf mehr als eine Weise auf den Löffel, { $spread } mm auseinander: er zeigt zu wenig vom Löffel
parts-step = die Oberflächen der Teile setzen sich nicht fort (Stufe von { $step } mm am Schnitt): sie stammen von verschiedenen Abformungen
parts-shown-twice = die Teile { $first } und { $second } zeigen dieselbe Oberfläche, über { $share } % des kleineren: jeden Teil nur einmal angeben
parts-apart = Teil { $part } stößt an keinen anderen Teil über einen Schnitt von mindestens { $least } mm: ein Teil dazwischen könnte fehlen
no-border-line = um den Scan herum ließ sich keine Randlinie verfolgen
border-not-round = die verfolgte Linie läuft nicht an beiden Seiten des ganzen Kiefers entlang
missing-tissue-side-only = der Scan zeigt nur die Schleimhautseite
missing-scan-ends = der Scan endet, bevor der Rand umläuft
missing-no-surface = dort wurde keine Oberfläche gescannt
missing-no-crest = der Kieferkamm wurde dort nicht gefunden
missing-flange-too-low = der Funktionsrand ist niedriger als die Tiefe, in der die Dicke gemessen wird
missing-no-roll = der Rand hat dort keine Rundung
missing-off-the-summit = die verfolgte Linie verlässt dort die Höhe des Funktionsrandes
missing-no-tray = kein Scan des Löffels ist zugeordnet
missing-at-the-cut = dort wurde die Abformung zerteilt
no-relation-not-in-record = die Abformung des { $arch ->
    [maxillary] Oberkiefers
   *[mandibular] Unterkiefers
} ist im Scan des Registrats nicht zu finden: nur { $share } % ihrer Schleimhautseite liegen darauf
no-relation-ambiguous = die Abformung des { $arch ->
    [maxillary] Oberkiefers
   *[mandibular] Unterkiefers
} passt auf mehr als eine Weise in den Scan des Registrats, { $spread } mm auseinander: was das Registrat von ihr zeigt, ist zu wenig oder zu gleichförmig
no-relation-jaw-missing = der Fall enthält keine Abformung des { $arch ->
    [maxillary] Oberkiefers
   *[mandibular] Unterkiefers
}, die auf das Registrat gelegt werden könnte
no-relation-not-opposed = im Scan des Registrats stehen sich die beiden Abformungen nicht seitenrichtig gegenüber; einer der Scans könnte gespiegelt sein, oder das Registrat gehört zu einem anderen Fall
no-space-not-opposed = gegenüber liegt kein unterer Kieferkamm
no-space-not-shown = das Registrat zeigt hier nicht beide Kieferkämme
no-colour-unknown = der Scan ist farbig, doch die Farbe des Löffels wurde nicht angegeben, und keine hebt sich auf der Außenseite ab
no-colour-alike = die Farben von Löffel und Material unterscheiden sich in CIELAB um { $difference }, zu wenig zum Unterscheiden (mindestens { $least })
no-colour-uneven = die Farben des Scans sind zu ungleichmäßig, um Löffel und Material zu unterscheiden: sie liegen { $separation } Standardabweichungen auseinander (mindestens { $least })
no-cover-inside-missing = dem Scan des Löffels fehlt die Innenseite, oder er ist umgestülpt: über { $share } % der Schleimhautseite zeigt er seine Rückseite
no-cover-too-little-tray = gegenüber der Schleimhautseite ist zu wenig Außenfläche des Löffels zu sehen, um seine Dicke zu messen
no-cover-here-no-tray = der Scan des Löffels enthält dort keinen Löffel
no-cover-here-differs = die Außenseite passt dort weder zum Löffel noch zu Material darüber
no-pair-does-not-fit = die frühere Abformung passt nicht auf diese: nur { $share } % von ihr liegen darauf
no-pair-ambiguous = die frühere Abformung lässt sich auf mehr als eine Weise auf diese legen; der Unterschied beträgt { $spread } mm
no-pair-mirrored = die frühere Abformung passt nur spiegelverkehrt auf diese: einer der beiden Scans ist gespiegelt, oder sie stammen von zwei Patienten
no-border-before-the-wash = vor dem Wash: { $why }
transit-same-file = es ist dieselbe Datei wie der Scan der Abformung bei der Ankunft
transit-arrived-none = der Scan bei der Ankunft zeigt keine Abformung: { $what }
transit-sent-none = der Scan beim Versand zeigt keine Abformung: { $what }
transit-other-jaw = er zeigt den anderen Kiefer: eine Abformung des { $arch ->
    [maxillary] Oberkiefers
   *[mandibular] Unterkiefers
}
transit-not-this = nur { $share } % der Schleimhautseite liegen darauf
transit-no-crest-line = bei der Abformung, wie sie ankam: { $why }
no-wash-outer-surface = von der Abformung vor dem Wash oder vom Wash wurde nur die Schleimhautseite gescannt; nach ihr ausgerichtet wäre ein gleichmäßiger Wash nicht zu sehen
no-wash-nothing-over = keine Schleimhautseite des Wash liegt über der Abformung vor dem Wash
unseen-no-notch = der Rand zeigt dort keine Einkerbung von { $least } mm oder mehr
unseen-no-border = dort ließ sich keine Randlinie verfolgen
unseen-no-relief = jedes Relief liegt unter { $least } mm, dem Kleinsten, was dieser Scan zeigt
unseen-too-coarse = die mittlere Kantenlänge von { $edge } mm ist dafür zu grob (höchstens { $most } mm)
unseen-trough-open = die Mulde schließt sich dort nicht: sie endet { $open } mm über ihrem Grund
unseen-no-neighbour = ihr Ort ergibt sich aus einer Landmarke, die nicht gefunden wurde
no-tray-scan = es wurde kein Scan des Löffels angegeben
no-tray-outer-surface = der Scan zeigt nur die Schleimhautseite; es ist keine Löffelfläche zu sehen, an der sich der Scan des Löffels ausrichten ließe
no-tray-little-outer-surface = der Scan zeigt { $outer } cm² Außenseite neben { $tissue } cm² Schleimhautseite, zu wenig, um den Scan des Löffels auszurichten
no-tray-does-not-fit = der Scan des Löffels passt nicht zur Außenseite der Abformung: nur { $share } % von ihr liegen auf dem Löffel
no-tray-other-size = der Scan des Löffels hat eine andere Größe: { $tray } mm breit, die Abformung mit ihrem Löffel { $impression } mm
no-tray-mirrored = der Scan des Löffels passt nur spiegelverkehrt zur Abformung: einer der beiden Scans ist gespiegelt, rechts und links stehen nicht fest
no-tray-ambiguous = der Scan des Löffels ließe sich auf mehr als eine Weise anlegen; die Lagen unterscheiden sich um { $spread } mm
no-tray-too-coarse = die mittlere Kantenlänge beträgt { $edge } mm, zu grob, um die Materialdicke zu messen (höchstens { $most } mm)
no-tray-alike = zwei Löffel im Regal passen gleich gut zur Abformung: „{ $one }“ und „{ $other }“
no-tray-of-shelf-nearest = keiner der { $trays } Löffel im Regal passt zur Außenseite der Abformung (am nächsten liegt „{ $nearest }“)
no-tray-of-shelf = keiner der { $trays } Löffel im Regal passt zur Außenseite der Abformung
pieces-no-impression = der Scan zeigt keine Abformung, an die sich die Teile des Löffels anlegen ließen
pieces-no-outer-surface = der Scan zeigt zu wenig Außenseite, um die Teile des Löffels anzulegen
pieces-not-found = Teil { $piece } des Löffels ist an der Außenseite der Abformung nicht zu finden
pieces-ambiguous = Teil { $piece } des Löffels passt auf mehr als eine Weise an die Außenseite der Abformung, { $spread } mm auseinander: es ist zu wenig von ihm zu sehen
relieved-other-tray = nur { $share } % des ersten Scans des Löffels passen darauf: er könnte einen anderen Löffel zeigen, oder ein Teil fehlt
relieved-ambiguous = er lässt sich auf mehr als eine Weise auf den ersten Scan des Löffels legen; der Unterschied beträgt { $spread } mm
none-wrong-size = seine längste Seite misst { $longest } mm, eine Abformung im Löffel { $least } bis { $most } mm
none-positive = der Kiefer ragt als Kamm auf wie auf einem Modell oder im Mund; eine Abformung hat dort eine Mulde
none-cast = der Kiefer ragt als Kamm über einem eben getrimmten Sockel auf: ein Modell
none-half = seine Mulde läuft nur um eine Seite des Kiefers: ein halber Kiefer
none-shell = seine Wand ist { $wall } mm dick und lässt keinen Platz für einen Löffel mit Material: ein leerer Löffel oder eine Prothesenbasis
none-record-rim = unter seiner Mulde sitzt ein { $depth } mm hoher Block mit ebener Fläche: eine Registrierschablone mit Wachswall
none-no-trough = keine bogenförmige Mulde gefunden
none-teeth = { $teeth } Zähne oder Teile von Zähnen ragen nebeneinander auf: ein bezahnter Kiefer
none-sockets = { $sockets } Vertiefungen wie von Zähnen liegen nebeneinander: ein bezahnter Kiefer wurde abgeformt
none-two-scans = zwei getrennte Scans liegen nebeneinander in der Datei, von { $larger } und { $smaller } mm²
none-exchanged = er ist ein Teil des größeren Scans, der als Löffel angegeben wurde: Abformung und Löffel scheinen vertauscht
none-parts = seine Teile ließen sich nicht zusammenfügen: { $why }
none-empty-tray = seine Schleimhautseite liegt überall auf dem Löffel: das ist der leere Löffel
no-cover-no-colour = { $cover }; nach der Farbe: { $colour }
stops-relieved = die Stopps wurden vor dem Wash zurückgeschliffen; ob der Löffel ganz saß, zeigt die Abformung vor dem Wash
tray-thickness-stated = bei angegebener Dicke des Löffels ist die Materialdicke nur über einem Teil der Schleimhautseite bekannt
tray-not-aligned = der Scan des Löffels wurde nicht an der Abformung ausgerichtet
