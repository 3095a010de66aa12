### Befunde, Hinweise, und die Bilder mit ihren Stellen.

## Befunde.

page-findings = Mängel und offene Fragen, das Dringendste zuerst
page-no-findings = Die durchgeführten Prüfungen ergaben keinen Mangel und ließen nichts offen.
page-decision = Der Wert nach ± ist die Messunsicherheit (Überdeckungswahrscheinlichkeit 95 %, k = 2). Eine Prüfung ist nur dann nicht bestanden, wenn der Wert auch nach Abzug dieser Unsicherheit jenseits des Grenzwerts liegt, und nur dann bestanden, wenn er um ebenso viel innerhalb liegt. Alles dazwischen wird als zu knapp zum Entscheiden gemeldet.
page-further-places = Weitere Mängel und offene Stellen
page-further-places-in-full = Diese weiteren Stellen mit ihren Bildern und Schnitten
page-close-pictures = Nahaufnahmen gibt es nur von den dringendsten Befunden.
page-severity = { $severity ->
    [fail] Mangel
    [borderline] nicht zu entscheiden
   *[note] Hinweis
}
page-measured = Gemessen: { $figure }.
page-listed-as = In den Tabellen unten als { $name } aufgeführt.
page-do = Zu tun:
page-section = Schnitt zu { $finding }
page-drag = Seitlich ziehen, um alles zu sehen.
page-section-caption = Schnitt an der ungünstigsten Stelle von { $finding }, mit Maßen.

## Hinweise.

page-notes = Hinweise
page-notes-lead = Wissenswert; am Ergebnis ändern sie nichts.
page-notes-in-full = Die Hinweise mit ihren Bildern und Schnitten
page-number = Nr.
page-where = Wo
page-measured-and-limit = Gemessen (k = 2), Grenzwert

## Die Bilder.

page-no-pictures = Keine Bilder: Die Lage des Scans wurde nicht erkannt.
page-colours = Die Farben zeigen die Materialdicke, den Abstand von der Schleimhautseite zum Löffel; grau, wo sie nicht bekannt ist.
page-no-colours = Grau: Die Materialdicke wurde nicht gemessen.
page-sides = R und L sind rechts und links des Patienten.
page-marks = Ein Ring markiert eine Stelle, eine Linie einen Abschnitt des Randes: { $fail }, { $borderline }, { $note }.
page-other-views = Weitere Ansichten
page-view-name = { $view ->
    [tissue] Schleimhautseite
    [outer] Außenseite
   *[back] Rückansicht
}
page-view = { $view ->
    [tissue] Blick auf die Schleimhautseite, vorn oben
    [outer] von der Löffelseite gesehen, vorn oben
   *[back] von hinten oben gesehen, Schleimhautseite oben
}
page-picture = { $impression }, { $view }. Markierte { $what ->
    [landmarks] Landmarken
   *[findings] Befunde
}: { $ids }.
page-none-marked = keine
page-hidden = In dieser Ansicht verdeckt: { $ids }.
page-close-picture = Nahaufnahme von { $finding }: { $place }, { $up }
page-wash-picture = { $impression }, Schleimhautseite, nach der Dicke des Wash eingefärbt
page-wash-colours = Dunkel, wo der Wash dünn ist oder fehlt; hell, wo er dick ist; grau, wo seine Dicke nicht bekannt ist.
page-tray-picture = Der Löffel der { $impression }, von innen gesehen, vorn oben. Zurückzuschleifende Stellen: { $ids }.
page-tray-colours = Der leere Löffel von innen, vorn oben; farbig, wo wenig Material über ihm lag.

## Farbskalen mit ihren Grenzwerten.

page-scale-thickness = Dicke, mm
page-scale-material-thickness = Materialdicke, mm
page-scale-limit = { $limit ->
    [shows] frei
   *[thin] dünn
}
page-scale-end = oder mehr
