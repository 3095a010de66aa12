### Der Löffel und das Material über ihm: was zu tun ist.

## Zurückschleifen. Jede Anweisung, einen Löffel zu schleifen oder zu kürzen, endet mit `safety`.

safety = Nur außerhalb des Mundes schleifen, mit Augen- und Staubschutz; danach auf scharfe Kanten abtasten und diese glätten.
relief = Löffel hier um etwa 1 mm und etwas über die Stelle hinaus zurückschleifen.
relief-by = Löffel hier an der tiefsten Stelle um { $depth } und etwas über die Stelle hinaus zurückschleifen.
relief-thin-wall = Von der Löffelwand bleiben dann etwa { $left }: sie vorher von außen verstärken oder einen anderen Löffel nehmen.
relief-through-wall = Das kann durch die Löffelwand gehen: einen anderen Löffel nehmen.
relief-scan-unusable = Der Scan des zurückgeschliffenen Löffels sagt nichts aus: { $why }. Den richtigen Scan angeben oder den Löffel selbst ansehen.
relief-done = Nach dem Scan des zurückgeschliffenen Löffels wurden hier { $depth } abgetragen; das schafft { $room } Platz, gewünscht sind { $wanted }.
relief-enough = Das genügt.
relief-more = Löffel hier um weitere { $depth } zurückschleifen.
relief-then = Reinigen und trocknen, Adhäsiv auf den freigelegten Löffel auftragen und trocknen lassen, { $then }.
relief-unknown = Wurde der Löffel hier nach seinem Scan zurückgeschliffen, ist dieser Wert zu niedrig: den zurückgeschliffenen Löffel scannen und erneut prüfen.

## Frei liegender Löffel und dünnes Material. Nach einem Doppelpunkt folgt die Anweisung zum Zurückschleifen.

show-through-edge = Eine Löffelkante liegt auf { $length } ihrer Länge frei.
show-through-unsure = Am Scan nicht sicher zu erkennen: die Abformung hier ansehen. Liegt kein Löffel frei, diese Stelle mit höherer Auflösung noch einmal scannen. Liegt der Löffel frei:
show-through-unsure-edge = Am Scan nicht sicher zu erkennen: die Abformung hier ansehen, entlang { $length } einer Löffelkante. Liegt kein Löffel frei, diese Stelle mit höherer Auflösung noch einmal scannen. Liegt der Löffel frei:
show-through-altered = Die Oberfläche liegt hier innerhalb der Wand des gescannten Löffels: Er wurde dort nach seinem Scan zurückgeschliffen oder umgeformt. Die Abformung ansehen: Vielleicht liegt hier kein Löffel frei. Für einen Messwert den zurückgeschliffenen Löffel scannen und erneut prüfen.
show-through-colour = Hier zeigt sich die Farbe des Löffels. Ansehen. Ist es der Löffel:
show-through-colour-unsure = Der Farbe nach liegt hier vielleicht der Löffel frei: die Abformung ansehen. Wenn ja:
colour-beside-cover = Hier zeigt sich die Farbe des Löffels, doch die Dickenkarte findet Material darüber. Die Abformung ansehen. Liegt kein Löffel frei, hat etwas anderes seine Farbe. Liegt der Löffel frei, prüfen, ob Scan oder Dicke des Löffels zu diesem Löffel gehören; dann:
show-through-too-much = Der Löffel liegt auf zu großer Fläche frei, um es durch Zurückschleifen und einen Wash zu beheben. Neu abformen, in einem Löffel mit Platz ringsum, den Schleimhautstopps oder ein Platzhalter vom Gewebe abhalten.
show-through-perhaps-too-much = Der Löffel liegt auf so großer Fläche frei, dass Zurückschleifen und ein Wash es vielleicht nicht beheben. Erwägen, in einem Löffel mit mehr Platz neu abzuformen, mit Schleimhautstopps oder Platzhalter.
other-colour = Hier zeigt sich eine andere Farbe: die Abformung ansehen. Um den Scan nach Farbe beurteilen zu lassen, die Farbe des Löffels mit --tray-colour angeben. Ist dies der Löffel:
thin-cover = Das Material ist hier dünn. Nachsehen, ob es eingerissen ist, sich vom Löffel abgelöst oder die Schleimhaut verdrängt hat. Wenn nicht, so lassen.
thin-cover-unsure = Zu nahe am Grenzwert, um es am Scan zu erkennen: die Abformung hier ansehen. Ist das Material nicht dünn, diese Stelle mit höherer Auflösung noch einmal scannen. Ist es dünn:

## Materialdicke, die nicht oder nicht sicher beurteilt wurde.

cover-not-judged = Die Materialdicke wurde nicht beurteilt: { $why }.
cover-by-thickness = Die Materialdicke wurde aus der angegebenen Löffeldicke berechnet, und nur auf { $area }, wo die Außenfläche des Löffels sichtbar ist; die übrige Gewebefläche, vor allem die Funktionsränder, wurde nicht beurteilt. Den leeren Löffel scannen und mit --tray angeben, um alles zu beurteilen.
cover-by-colour-alone = Ob der Löffel frei liegt, wurde nach den Farben des Scans beurteilt; wie dick das Material ist, nicht.
cover-gap = Auf { $area } wurde die Materialdicke nicht beurteilt (Bereich: { $part }): { $why }.
cover-scan-tray = Den leeren Löffel scannen und mit --tray angeben (in einer Falldatei: tray = "..."). Kann er nicht gescannt werden, seine Dicke mit --tray-thickness angeben oder in Farbe scannen.
cover-scan-all-sides = Die Abformung von allen Seiten scannen, auch die Rückseite des Löffels.
cover-scan-all-sides-or-other = Die Abformung von allen Seiten scannen, auch die Rückseite des Löffels. Passt der Löffelscan dann nicht, prüfen, ob er genau diesen Löffel zeigt.
cover-mirrored = Beide Scans noch einmal ohne Spiegelung exportieren und rechts und links mit der Abformung in der Hand vergleichen.
cover-other-tray = Prüfen, ob der Löffelscan genau diesen Löffel zeigt, und zwar leer; wenn nicht, ihn scannen.
cover-scan-back = Mehr von der Rückseite des Löffels scannen, auch den Griff.
cover-full-resolution = Den Scan mit voller Auflösung exportieren.
cover-scan-pieces = Jedes Teil des Löffels von allen Seiten scannen, ebenso die Abformung.
cover-scan-this-tray = Diesen Löffel selbst leer scannen und mit --tray angeben (in einer Falldatei: tray = "..."). Ein Löffel, der zurückgeschliffen, gekürzt oder mit Wärme umgeformt wurde, ist nicht mehr der Löffel der Sammlung.
cover-which-tray = Welcher davon ist es? Seinen Scan mit --tray angeben (in einer Falldatei: tray = "..."). Sind beide Scans von einem Löffel, einen aus der Sammlung nehmen.
cover-look = Die Abformung mit bloßem Auge ansehen.
cover-scan-whole-tray = Den ganzen Löffel scannen.
cover-look-there = Dort mit bloßem Auge nachsehen. Wurde der Löffel nach seinem Scan zurückgeschliffen oder umgeformt, ihn selbst scannen, sobald er leer ist.
cover-uncertain = Die Materialdicke ist zu unsicher, um danach zu urteilen. Mehr von der Rückseite des Löffels scannen, mit weniger Rauschen, und erneut prüfen.
cover-uncertain-by-thickness = Die Materialdicke ist zu unsicher, um danach zu urteilen. Den Löffel an mehreren Stellen mit dem Messschieber messen und seine Dicke mit dieser Unsicherheit angeben (--tray-thickness-uncertainty), oder den leeren Löffel scannen.

## Wie der Löffel lag.

tissue-stop-not-scanned = An diesem Schleimhautstopp wurde keine Oberfläche gescannt. Diese Stelle noch einmal scannen.
tissue-stop-under-wash = Der Wash liegt über diesem Schleimhautstopp. Ob der Löffel ganz saß, wird an der Abformung vor dem Wash beurteilt.
tissue-stop-covered = Der Löffel saß hier nicht ganz: Material bedeckt den Schleimhautstopp. Neu abformen und den Löffel so weit einsetzen, bis dieser Stopp aufliegt.
tissue-stop-covered-in-wash = Material bedeckt diesen Schleimhautstopp. Wurde der Stopp vor dem Wash zurückgeschliffen, das angeben (stops_relieved = true); wenn nicht, saß der Löffel hier nicht ganz, und es muss neu abgeformt werden.
tissue-stop-unsure = Diesen Schleimhautstopp ansehen: Der Löffel sollte frei liegen. Bedeckt ihn Material, saß der Löffel hier nicht ganz, und es muss neu abgeformt werden.
tray-seating = Verglichen mit der Lage, in der das Material gleichmäßig dick wäre, lag der Löffel { $how }. Wird neu abgeformt, den Löffel zuerst ohne Material einprobieren, sodass er über dem Kieferkamm liegt, und ihn mit Schleimhautstopps gleichmäßig einsetzen.
seating-right = zu weit rechts (vom Patienten aus)
seating-left = zu weit links (vom Patienten aus)
seating-front = zu weit vorn
seating-back = zu weit hinten
seating-tilted-front = gekippt (vorn näher am Gewebe)
seating-tilted-back = gekippt (hinten näher am Gewebe)
seating-tilted-right = gekippt (auf der rechten Seite des Patienten näher am Gewebe)
seating-tilted-left = gekippt (auf der linken Seite des Patienten näher am Gewebe)
seating-turned-right = verdreht (vorn zur rechten Seite des Patienten)
seating-turned-left = verdreht (vorn zur linken Seite des Patienten)
tray-wide = Der Löffel ist breiter, als zu diesem Kiefer passt: Seine Außenwände stehen ab, und seine inneren Teile kommen dem Kiefer nahe. Wird neu abgeformt, die nächste Größe wählen oder den Löffel anpassen.
tray-narrow = Der Löffel ist schmaler, als zu diesem Kiefer passt: Seine Außenwände kommen den Funktionsrändern nahe. Wird neu abgeformt, die nächste Größe wählen oder den Löffel anpassen.
tray-bent = Der Löffel hat sich zwischen seinem Scan und der Abformung verbogen: Sein { $side ->
    [right] rechtes
   *[left] linkes
} Ende lag { $moved } als in seinem Scan. Die Materialdicke ist vom Löffel aus gemessen, wie er lag. Ist der Löffel bei der Entnahme zurückgefedert, ist die Abformung verzogen: in einem steiferen Löffel neu abformen.
tray-bent-slightly = Der Löffel hat sich zwischen seinem Scan und der Abformung verbogen: Sein { $side ->
    [right] rechtes
   *[left] linkes
} Ende lag { $moved } als in seinem Scan. Die Materialdicke ist vom Löffel aus gemessen, wie er lag. Vor der nächsten Abformung prüfen, ob der Löffel steif genug ist.
moved-nearer = näher am Gewebe
moved-farther = weiter vom Gewebe entfernt
moved-outward = weiter außen
moved-inward = weiter innen
tray-joint = Zwischen den Teilen { $one } und { $other } des Löffels ist { $what ->
    [gap] ein Spalt
   *[step] eine Stufe
}: Sie waren nicht ganz zusammengefügt oder haben sich gelöst. Die Materialdicke ist von den Teilen aus gemessen, wie sie lagen. Haben sie sich beim Abbinden oder später bewegt, ist die Abformung verzogen: die Teile zusammenfügen und neu abformen.
outer-excess = Material von bis zu { $thickness } Dicke liegt auf den Außenflächen des Löffels. Mit scharfer Klinge abtrennen, vom Rand weg und ohne Material vom Löffel abzuheben, damit das Registriermaterial am Löffel haftet und sich die Teile sauber trennen lassen.
