### Die Abformung in 3D auf der Seite.

turning-surfaces = Gezeigte Abformung
turning-canvas = Die Abformung in 3D
turning-click = Auf die Oberfläche oder eine Markierung klicken, um zu lesen, was dort ist.
turning-colours = Farben der Materialdicke
turning-ways = Ansichten
turning-go-to = Gehe zu
turning-a-place = Stelle …
turning-findings = Befunde
turning-landmarks = Landmarken
turning-border = Rand
turning-keys = Ziehen: drehen; mit Umschalttaste oder zwei Fingern: verschieben; Spreizen oder, nach einem Klick, Mausrad: zoomen. Tasten: Pfeile drehen, Umschalt und Pfeile verschieben, + und − zoomen, Pos1 zeigt das Ganze.
turning-legend = Grau: Dicke nicht bekannt. Ein Klick gibt die Werte eines Punktes; das Ergebnis beruht auf den Befunden.
turning-thinned = Eine Oberfläche aus vielen Dreiecken ist in diesem Bild vereinfacht; jeder Messwert des Berichts stammt vom vollständigen Scan.
turning-closer = Näher
turning-farther = Weiter weg
turning-name = { $name }, in 3D
turning-shown = Gezeigt: { $name }.
turning-show = In 3D zeigen
turning-show-place = In 3D zeigen: { $id }
turning-landmark = { $name }: { $status }.
turning-no-surface = Hier ist keine Oberfläche.
turning-off-tissue = Nicht auf der Schleimhautseite
turning-not-measured = { $place }. Die Materialdicke wurde nicht gemessen.
turning-not-known = { $place }. Die Materialdicke ist hier nicht bekannt.
turning-thick = { $place }: Material { $thickness } mm dick.
turning-tray-at-surface = { $place }: Material { $thickness } mm dick (Löffel an der Oberfläche).
