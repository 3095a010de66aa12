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
sheet-cautions = Eine Hilfe bei der Prüfung, kein Medizinprodukt; es entscheidet die approbierte Fachperson. Vor Handhabung und Versand desinfizieren. Herstellerangaben haben Vorrang.
sheet-safety = Löffel nur außerhalb des Mundes zurückschleifen, mit Augen- und Staubschutz; danach nach scharfen Kanten tasten. Diese Seite enthält Gesundheitsdaten: entsprechend aufbewahren.

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
return-cautions = Dieses Blatt stammt von einer Hilfe bei der Prüfung, keinem Medizinprodukt; es entscheidet die approbierte Fachperson. Vor Handhabung und Versand desinfizieren. Herstellerangaben haben Vorrang.

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
clinic-relief-unknown = Wurde der Löffel hier nach seinem Scan zurückgeschliffen, den bearbeiteten Löffel scannen und diesen Scan senden.
clinic-altered = Die Oberfläche liegt hier innerhalb der Löffelwand, wie sie gescannt wurde: Der Löffel wurde dort nach seinem Scan zurückgeschliffen oder umgeformt. Die Abformung ansehen: Hier darf kein Löffel frei liegen. Für einen Messwert den bearbeiteten Löffel scannen und diesen Scan senden.
clinic-too-close = Zu knapp zum Entscheiden: ansehen.
clinic-wash-thick = Der Wash ist auf einem Zwanzigstel der Fläche dick. Prüfen, ob der Löffel beim Wash ganz saß. Wurde die Kieferrelation vor dem Wash registriert, sie neu registrieren.
clinic-scan-coarse = Der Scan ist zu grob. Ihn in voller Auflösung exportieren und erneut senden.
clinic-scan-arch = Den ganzen Kiefer scannen, jeden Funktionsrand von beiden Seiten, und diesen Scan senden; oder den Rand selbst ansehen.
clinic-cover-uncertain = Die Materialdicke ist zu unsicher, um danach zu urteilen. Mehr von der Rückseite des Löffels mit weniger Rauschen scannen und diesen Scan senden.
clinic-thin-unsure = Am Scan nicht zu entscheiden: die Abformung hier ansehen. Ist das Material nicht dünn, diese Stelle mit höherer Auflösung neu scannen. Ist es dünn:
clinic-stop-covered = Material bedeckt diesen Schleimhautstopp. Wurde der Stopp vor dem Wash zurückgeschliffen, dies mitteilen; wenn nicht, saß der Löffel hier nicht ganz, und die Abformung muss wiederholt werden.
