### Das Fenster: die Abformung, ihre Befunde, Tasten, und was gesagt wird.

## Das Fenster selbst.

window-title = archproof: Fall { $case }: { $verdict }
window-caution = Eine Hilfe bei der Prüfung, kein Medizinprodukt; es entscheidet die approbierte Fachperson. Örtliche Vorschriften, Hygiene und Herstellerangaben haben Vorrang. Löffel nur außerhalb des Mundes zurückschleifen, mit Augen- und Staubschutz.
window-failed-keys = R versucht es noch einmal, Esc führt zurück, Strg Q schließt das Fenster.
window-picture-name = Abformung in 3D
window-no-finding = kein Befund
window-chosen-finding = gewählter Befund { $id }: { $cause } { $check }
window-arrows-turn = Pfeiltasten drehen sie
no-window-screen = kein Fenster: Es gibt keinen Bildschirm (weder DISPLAY noch WAYLAND_DISPLAY ist gesetzt); auf einem Desktop starten oder stattdessen report.html im Ergebnisordner ansehen
no-window-graphics = kein Fenster: Bildschirm oder Grafik sind nicht nutzbar ({ $reason }); unter Debian libvulkan1, mesa-vulkan-drivers, libx11-6, libx11-xcb1, libxcursor1, libxi6 und libxkbcommon-x11-0 installieren oder stattdessen report.html im Ergebnisordner ansehen

## Ergebnis und Befunde.

window-verdict = { $verdict }: Fall { $case }
window-done = (erledigt)
window-no-figure = kein Messwert
window-has-drawing = Schnittzeichnung mit Maßen: G zeigt sie groß.

## Schaltflächen und was jede tut, nach ihrer Taste.

button-whole = Ganzes
button-whole-how = Pos1: zeigt die ganze Abformung.
button-map = Karte: { $map }
button-map-none = keine
button-map-how = M: färbt die Oberfläche nach der nächsten Messgröße oder nach keiner.
button-border-figure = Randwerte
button-border-figure-how = F: färbt die Randlinie nach der nächsten Messgröße oder nach keiner.
button-colours = Farben
button-colours-how = P: verwendet die anderen Farben.
layer-border = Rand
layer-border-how = 1: zeigt oder verbirgt die Randlinie.
layer-crest = Kammlinie
layer-crest-how = 2: zeigt oder verbirgt die Kammlinie.
layer-outlines = Umrisse
layer-outlines-how = 3: zeigt oder verbirgt Linien an Grenzwerten und um Fehlstellen.
layer-landmarks = Landmarken
layer-landmarks-how = 4: zeigt oder verbirgt die Landmarken.
layer-tray = Löffel
layer-tray-how = 5: zeigt oder verbirgt den Löffel.
layer-strip = Randstreifen
layer-strip-how = 6: zeigt oder verbirgt den Rand, abgewickelt am unteren Ende des Fensters.
button-distance = Abstand
button-distance-how = D: misst zwischen zwei Klicks.
button-mark = Markieren
button-mark-how = L: markiert Landmarken durch Klicks.
button-section = Schnitt
button-section-how = X: schneidet die Abformung durch die Bildmitte.
button-drawing = Zeichnung
button-drawing-how = G: zeigt die Schnittzeichnung des Befundes groß oder klein.
button-next-impression = Nächste Abformung
button-next-impression-how = I: holt die nächste Abformung nach vorn.
button-beside = Nebeneinander
button-beside-how = B: zeigt zwei Abformungen nebeneinander.
button-screenshot = Bild speichern
button-screenshot-how = S: speichert ein Bild des Fensters bei den Ergebnissen.
button-check-again = Erneut prüfen
button-check-again-how = R oder F5: prüft den Fall erneut.
button-help = Hilfe (H)
button-help-how = H oder F1: zeigt alle Tasten.

## Hilfe: Tasten, und was sie tun.

keys-choose = Auf, Ab
help-choose = einen Befund wählen
keys-fly = Eingabe
help-fly = hinfliegen
keys-done = Leertaste
help-done = als erledigt kennzeichnen, oder nicht
keys-whole = Pos1
help-whole = die ganze Abformung
keys-turn = Ziehen, Umschalt + Pfeile
help-turn = drehen
keys-focus = Tab, Umschalt + Tab
help-focus = das Bild, wo Pfeile drehen; nächstes, voriges Bedienelement
keys-move = rechts ziehen, Strg + Pfeile
help-move = verschieben
keys-zoom = Mausrad, + und -
help-zoom = näher, ferner
keys-roll = Q, E
help-roll = um die Blickrichtung drehen
keys-impressions = I; B
help-impressions = nächste Abformung; zwei nebeneinander
keys-maps = M, Umschalt + M
help-maps = nächste, vorige Karte; einfarbige Oberfläche
keys-border-figure = F
help-border-figure = die Randlinie nach einer Messgröße färben
keys-colours = P
help-colours = andere Farben
keys-scale = Komma, Punkt
help-scale = kürzere, längere Skala; mit Strg: tiefer, höher
keys-drawing = G
help-drawing = Schnittzeichnung des Befundes, groß oder klein
keys-layers = 1, 2, 3, 4, 5, 6
help-layers = Rand, Kammlinie, Umrisse, Landmarken, Löffel, Randstreifen
keys-distance = D
help-distance = Abstand zwischen zwei Klicks
keys-mark = L
help-mark = Landmarken durch Klicks markieren
keys-landmark = N oder Bild ab, Bild auf
help-landmark = nächste, vorige Landmarke
keys-undo = Strg Z oder U; Strg Y
help-undo = Markierung oder Haken zurücknehmen; wiederherstellen
keys-middle = K
help-middle = in die Bildmitte klicken
keys-section = X; Links, Rechts; [ und ]
help-section = Schnittebene; verschieben; drehen
keys-save = S; R oder F5
help-save = ein Bild speichern; den Fall erneut prüfen
keys-papers = F2, F3, F4
help-papers = Begleitblatt, Rücksendeblatt, Bericht öffnen
keys-decide = F6, F7, F8
help-decide = entscheiden: zurückgegeben, in Arbeit, warten auf
keys-walk = Bild auf, Bild ab
help-walk = voriger, nächster Fall der Liste
keys-open = Strg O; Strg Umschalt O
help-open = Scans wählen; einen Ordner mit Fällen wählen
keys-text = Strg + und -; F9
help-text = größere, kleinere Schrift; hell oder dunkel
keys-leave = H oder F1; Esc; Strg Q
help-leave = diese Hilfe; verlassen, zurück zur Liste; schließen

## Karten und ihre Skalen.

map-cover = Materialdicke
map-wash = Wash
map-wash-figure = Dicke des Wash
map-scan-quality = Scanqualität
map-scan-quality-figure = kleinste erkennbare Blase
map-missing = hier keine Karte für { $map }: { $why }
map-holds-none = dieses Ergebnis enthält keine
map-limit-show-through = frei
map-limit-thin = dünn
map-limit-least = mindestens
map-limit-most = höchstens
map-key = grau: nicht bekannt; weiße Linien: an einem Grenzwert
map-defects = gerandete weiße Linien: Fehlstellen der Oberfläche
map-line = Linie: { $figure }, mm
map-plain = einfarbige Oberfläche

## Über dem Bild.

no-surface-here = die Oberfläche liegt nicht in diesem Ordner; zum Ansehen die Falldatei öffnen
side-front = vorn
section-side = Schnitt, Schleimhautseite oben
click-distance = Abstand: zwei Stellen anklicken (K: die Mitte)
click-landmark = anklicken: { $landmark } (N: nächste, U: zurücknehmen, L: beenden)
landmark-label-marked = { $landmark } (markiert)
landmark-label-status = { $landmark }: { $status }
probe-thickness = Dicke { $figure }
probe-thickness-not-known = Dicke nicht bekannt
probe-figure = { $name } { $figure }
probe-not-known = { $name } nicht bekannt
probe-no-zone = keine Zone
probe-at = x { $x }; y { $y }; z { $z }
probe-border = Rand: { $zone }, { $along } mm von der { $midline }

## Der Randstreifen.

strip-none = kein Rand zum Abwickeln: { $why }
strip-holds-none = dieses Ergebnis enthält keinen
strip-limit = Grenzwert
strip-no-height = keine Höhe
strip-fails = Mangel
strip-undecided = unentschieden
strip-note = Hinweis
strip-left = links
strip-right = rechts
strip-midline = { $part ->
    [labial] labiale Mittellinie
   *[lingual] linguale Mittellinie
}

## Was unten gesagt wird.

said-one-impression = es gibt nur eine Abformung
said-no-tray = der Löffel wird gezeigt, wenn die Falldatei geöffnet ist, nicht ihr Ergebnis
said-of-the-whole = dieser Befund betrifft die ganze Abformung oder den Fall
said-in-front = vorn: { $impression }
said-nothing-to-take-back = nichts zurückzunehmen
said-nothing-to-make-again = nichts wiederherzustellen
said-landmarks-saved = Landmarken gespeichert in { $path }
said-no-drawing = Keine Schnittzeichnung: Nur Befunde am Rand haben eine.
said-no-room = Das Fenster hat keinen Platz für größere Schrift.
said-saved = gespeichert: { $path }
said-check-the-case = um erneut zu prüfen, statt des Ergebnisses die Falldatei oder den Scan öffnen
said-limits-of-your-own = dieses Ergebnis wurde nach eigenen Grenzwerten beurteilt; um es danach erneut zu prüfen, das Fenster mit --protocol FILE starten
landmarks-unreadable = { $path }: nicht lesbar ({ $reason })
landmarks-no-list = { $path }: ist keine Liste von Landmarken ({ $reason }); berichtigen oder entfernen
drawing-unreadable = { $path }: nicht lesbar ({ $reason }); den Fall erneut prüfen
surface-of-another = { $path }: ist keine Oberfläche, wie archproof sie schreibt; den Fall erneut prüfen
drawing-of-another = { $path }: ist keine Zeichnung, wie archproof sie schreibt; den Fall erneut prüfen

## Ein Fall, der geöffnet wird.

opening-case = Der Fall wird geöffnet
opening = wird geöffnet
opening-result = das Ergebnis wird gelesen
opening-writing = die Ergebnisse werden geschrieben
opening-cancelled = die Prüfung wurde abgebrochen; nichts wurde geschrieben
button-cancel = Abbrechen (Esc)
