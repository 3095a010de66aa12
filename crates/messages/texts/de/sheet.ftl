### Das Blatt zur Sendung, und das Rücksendeblatt.

## Die Seite.

sheet-title = Fall { $case }: { $word }
sheet-case = Fall { $case }
sheet-region = Das Blatt
sheet-purpose = Abformungsprüfung: begleitet die Sendung
sheet-time-not-recorded = Zeit der Prüfung: nicht festgehalten.
times-checked = Geprüft { $checked } UTC; { $scans }
times-scans = Scandateien von { $first } UTC
times-scans-between = Scandateien von { $first } bis { $last } UTC
times-scans-unknown = Zeit der Scandateien nicht bekannt
sheet-checked-by = Geprüft von
sheet-date = Datum
sheet-returned-because = Zurückgesandt, weil
sheet-source = { $program } · Grenzwerte: { $limits } (SHA-256 { $sum }…)
sheet-cautions = Eine Prüfhilfe, kein Medizinprodukt; es entscheidet die approbierte Fachperson. Vor Handhabung und Versand desinfizieren. Herstellerangaben gehen vor.
sheet-safety = Löffel nur außerhalb des Mundes zurückschleifen, mit Augen- und Staubschutz; dann nach scharfen Kanten tasten. Vertrauliche Gesundheitsdaten.

## Was zu tun ist.

sheet-tasks = Was zu tun ist, in dieser Reihenfolge
sheet-no-tasks = Die durchgeführten Prüfungen ergaben keinen Mangel und keine offene Frage.
sheet-in-the-report = im Bericht
sheet-notes-elsewhere = Hinweise, die am Ergebnis nichts ändern: { $notes }, { $place }.
sheet-more-tasks = Dazu { $more ->
    [one] 1 weitere Aufgabe
   *[other] { $more } weitere Aufgaben
} { $place }.
sheet-more-tasks-and-notes = Dazu { $more ->
    [one] 1 weitere Aufgabe
   *[other] { $more } weitere Aufgaben
} und { $notes ->
    [one] 1 Hinweis
   *[other] { $notes } Hinweise
} { $place }.
sheet-more-places = { $places }; und { $more } weitere

## Die Bilder.

sheet-legend = R, L: rechts und links des Patienten. Nummerierter Ring: Mangel; gestrichelt: offene Frage. Dunkel: dünnes Material über dem Löffel; hell: 3 mm oder mehr; grau: nicht gemessen.
sheet-hidden = In diesen Ansichten verdeckt: { $ids }. { $legend }
sheet-more-impressions = { $more ->
    [one] 1 weitere Abformung
   *[other] { $more } weitere Abformungen
} { $place }. { $legend }
sheet-no-picture = Kein Bild: Die Lage des Scans wurde nicht erkannt.
sheet-picture = { $name }, { $view }; markiert: { $ids }
view-front-up = vorn oben
view-tissue-side-up = Schleimhautseite oben
view-front = vorn
side-letter = { $side ->
    [right] R
   *[left] L
}

## Was nicht beurteilt wurde, und die Sendung.

sheet-all-judged = Nicht beurteilt: nichts; jede Prüfung wurde durchgeführt.
sheet-not-judged = Nicht beurteilt ({ $count }, siehe Bericht): { $checks }.
sheet-not-judged-more = Nicht beurteilt ({ $count }, siehe Bericht): { $checks } und { $more } weitere.
sheet-not-judged-count = Nicht beurteilt: { $count } Prüfungen; siehe Bericht.
sheet-parcel-not-stated = Sendung: Der Fall gibt nicht an, was darin ist.
sheet-parcel-complete = Sendung: nichts fehlt.
sheet-parcel-missing = In der Sendung fehlt
sheet-parcel-more = { $what } (und { $more } weitere { $place })

## Das Rücksendeblatt.

return-purpose = Rücksendeblatt: Labor an Praxis
return-word = bitte antworten
return-tasks = Bitte in dieser Reihenfolge erledigen
return-no-tasks = An den Abformungen selbst ist nichts zu tun.
return-parcel-missing = Bitte die Sendung vervollständigen
return-legend = R, L: rechts und links des Patienten. Nummerierter Ring: zu korrigieren; gestrichelt: anzusehen. Dunkel: dünnes Material über dem Löffel; hell: dickes; grau: nicht gemessen.
return-in-the-text = im Begleittext zu dieser Seite
return-answered-by = Beantwortet von
return-answer = Antwort
return-head = Fall { $case }: Rücksendeblatt
return-lead = { $count ->
    [0] Von Ihnen wird nichts benötigt.
    [one] Bevor die Arbeit weitergehen kann, bitten wir Sie um eines.
   *[other] Bevor die Arbeit weitergehen kann, bitten wir Sie um { $count } Dinge.
}
return-pictures = Die Seite zu diesem Text zeigt die nummerierten Stellen in einem Bild.
return-cautions = Dieses Blatt stammt von einer Prüfhilfe, keinem Medizinprodukt; es entscheidet die approbierte Fachperson. Vor Handhabung und Versand desinfizieren. Herstellerangaben haben Vorrang.

## Was von einer Praxis verlangt wird, wo die Anweisung vom Programm spricht.

clinic-file-unclear = Bitte mitteilen, welcher Scan welcher ist, und jeden in einer eigenen Datei senden.
clinic-unit-unclear = Bitte die Einheit des Scans mitteilen oder ihn erneut in mm exportieren.
clinic-not-an-impression = Bitte den Scan der ganzen Abformung in ihrem Löffel senden; dieser Scan zeigt etwas anderes.
clinic-which-jaw = Bitte mitteilen, welchen Kiefer dieser Scan zeigt.
clinic-other-colour = Hier ist eine andere Farbe zu sehen. Bitte ansehen, ob es der Löffel ist, und mitteilen.
clinic-scan-tray = Den leeren Löffel von allen Seiten scannen, unverändert wie bei dieser Abformung, und diesen Scan senden.
clinic-send-wash = Bitte den Wash dieser Abformung mit seinem Scan senden. Braucht sie keinen, dies mitteilen.
clinic-jaw-relation = Bitte das Kieferrelationsregistrat mit seinem Scan senden oder die vertikale Dimension angeben; oder mitteilen, warum es keines gibt.
clinic-list = Bitte eine Liste dessen senden, was in die Sendung gehört.
clinic-one-jaw = Der Fall enthält nur einen Kiefer: die Abformung des anderen nachreichen oder angeben, warum es keine gibt.
clinic-disinfectant = Angeben, womit die Sendung desinfiziert wurde.
clinic-disinfection = Angeben, womit und wie lange die Sendung desinfiziert wurde. Falls noch nicht geschehen, sie vor der Handhabung reinigen und desinfizieren.
clinic-disinfection-time = Angeben, wie viele Minuten die Sendung desinfiziert wurde.
clinic-prescription = Den schriftlichen Laborauftrag beilegen.
clinic-readings = Zu knapp zum Entscheiden. Beide vertikalen Dimensionen dreimal messen und die Messwerte angeben.

## Was eine Prüfung findet, in einem Satz.

gist-file-unclear = Die Datei lässt sich auf zwei Arten lesen, oder eine Datei ist zweimal angegeben.
gist-unit-unclear = Die Einheit des Scans geht aus seiner Größe nicht hervor.
gist-not-an-impression = Der Scan zeigt etwas anderes als eine Abformung.
gist-arch-mismatch = Der erkannte Kiefer ist nicht der angegebene.
gist-orientation-unclear = Es steht nicht fest, welcher Kiefer es ist oder welche Seite welche.
gist-show-through = Der Löffel liegt frei.
gist-other-colour = Eine andere Farbe als die des Materials ist zu sehen, und die des Löffels ist nicht bekannt.
gist-show-through-extent = Der Löffel liegt auf einer zu großen Fläche frei, um ihn zurückzuschleifen und mit einem Wash zu überdecken.
gist-tissue-stop = Ein angegebener Schleimhautstopp liegt nicht frei: Der Löffel saß nicht vollständig.
gist-thin-cover = Das Material ist dünn.
gist-tray-seating = Der Löffel saß nicht dort, wo das Material gleichmäßig dick gewesen wäre.
gist-tray-bent = Der Löffel hat sich zwischen seinem Scan und der Abformung verbogen.
gist-tray-joint = Die Teile des Löffels waren nicht ganz zusammengefügt.
gist-changed-in-transit = Die Abformung hat sich zwischen dem Scan beim Versand und dem Scan bei der Ankunft verändert.
gist-tray-size = Der Löffel ist für den Mund zu klein oder zu groß.
gist-outer-excess = Auf den Außenseiten des Löffels liegt Material.
gist-tray-at-border = Der Löffel liegt am Rand selbst frei.
gist-under-extension = Ein Abschnitt des Randes ist zu kurz oder könnte es sein.
gist-border-radius = Der Rand ist scharf statt gerundet.
gist-flange-height = Ein Funktionsrand ist niedrig.
gist-flange-thickness = Ein Funktionsrand ist dünner oder dicker als der Richtwert.
gist-border-overlap = Der Löffel endet zu nah am Rand oder zu weit davon entfernt.
gist-border-asymmetry = Ein Funktionsrand ist viel niedriger als auf der anderen Seite.
gist-border-change = Der Rand ist niedriger als vor dem Wash.
gist-wash-open = Eine Stelle, die vor dem Wash frei lag oder dünn war, ist es noch.
gist-wash-thickness = Der Wash ist dick.
gist-wash-uneven = Der Wash ist an manchen Stellen viel dicker als an anderen.
gist-scan-ends = Der Scan endet, bevor der Rand umschlägt.
gist-border-not-judged = Der Rand konnte nicht vermessen werden.
gist-void = Luft hat auf der Schleimhautseite eine Vertiefung hinterlassen.
gist-void-unseen = Der Scan ist zu grob, um eine unzulässige Blase zu zeigen.
gist-nodule = Auf der Schleimhautseite ist eine Erhebung.
gist-fold = Eine Rille, wo zwei Materialfronten zusammentrafen, ohne sich zu verbinden.
gist-hole = An einer Stelle der Schleimhautseite wurde nichts gescannt.
gist-landmark-cut-short = Rand oder Scan enden an einer Landmarke oder davor, oder könnten es.
gist-landmark-obscured = Ein Fehler oder freiliegender Löffel verdeckt eine Landmarke.
gist-landmark-not-found = Eine Landmarke wurde nicht erkannt.
gist-cover-not-judged = Die Materialdicke konnte nicht gemessen werden.
gist-cover-uncertainty = Die Materialdicke wurde mit zu großer Unsicherheit gemessen.
gist-tissue-area = Von der Schleimhautseite wurde zu wenig gescannt.
gist-scan-resolution = Die Dreiecke des Scans sind zu grob.
gist-scan-quality = Ein Teil des Kiefers wurde nicht gut genug für das gescannt, was dort gemessen wird.
gist-interarch-space = Zwischen den Kieferkämmen ist wenig Platz.
gist-ridge-angle = Die Kieferkämme sind weit davon entfernt, parallel zu sein.
gist-jaw-relation-not-judged = Das Kieferrelationsregistrat wurde angegeben, konnte aber nicht vermessen werden.
gist-wash-missing = Ein Kiefer hat noch keinen Wash.
gist-impression-age = Die Abformung ist älter, als ihr Material erlaubt.
gist-interocclusal-distance = Vertikale Dimension in Ruhelage minus die in Okklusion ist ungewöhnlich oder unmöglich.
gist-lip-length = Die Länge der Oberlippe liegt außerhalb des plausiblen Bereichs.
gist-parcel-incomplete = In der Sendung fehlt etwas Erforderliches.
gist-prescription-missing = In der Sendung fehlt der schriftliche Laborauftrag.
gist-disinfection-not-stated = Angaben zur Desinfektion fehlen.
