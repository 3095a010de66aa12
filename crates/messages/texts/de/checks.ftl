### Was jede Prüfung und jeder Teil, den mehrere Prüfungen brauchen, in einem Satz ist.

## Prüfungen.

gist-file-unclear = Die Datei kann zweierlei bedeuten, oder eine Datei ist als zwei angegeben.
gist-unit-unclear = Die Einheit des Scans ist an seiner Größe nicht zu erkennen.
gist-not-an-impression = Der Scan zeigt etwas anderes als eine Abformung.
gist-arch-mismatch = Der gefundene Kiefer ist nicht der angegebene.
gist-orientation-unclear = Welcher Kiefer es ist oder welche Seite welche, ist nicht sicher.
gist-show-through = Der Löffel liegt durch das Material hindurch frei.
gist-other-colour = Es zeigt sich eine andere Farbe als die des Materials, und die des Löffels ist nicht bekannt.
gist-show-through-extent = Der Löffel liegt auf zu großer Fläche frei, um es durch Zurückschleifen und einen Wash zu beheben.
gist-tissue-stop = Ein angegebener Schleimhautstopp zeigt sich nicht: Der Löffel saß nicht ganz.
gist-thin-cover = Das Material ist dünn.
gist-tray-seating = Der Löffel lag nicht dort, wo das Material gleichmäßig dick gewesen wäre.
gist-tray-bent = Der Löffel hat sich zwischen seinem Scan und der Abformung verbogen.
gist-tray-joint = Die Teile des Löffels waren nicht ganz zusammengefügt.
gist-changed-in-transit = Die Abformung hat sich zwischen dem Scan vor dem Versand und dem nach der Ankunft verändert.
gist-tray-size = Der Löffel ist zu klein oder zu groß für den Mund.
gist-outer-excess = Auf den Außenflächen des Löffels liegt Material.
gist-tray-at-border = Der Löffel liegt am Rand selbst frei.
gist-under-extension = Ein Abschnitt des Randes ist zu kurz oder vielleicht zu kurz.
gist-border-radius = Der Rand ist scharfkantig statt gerundet.
gist-flange-height = Ein Funktionsrand ist niedrig.
gist-flange-thickness = Ein Funktionsrand ist dünner oder dicker als sein Richtwert.
gist-border-overlap = Der Löffel endet zu nahe am Rand oder zu weit von ihm entfernt.
gist-border-asymmetry = Ein Funktionsrand ist viel niedriger als der der anderen Seite.
gist-border-change = Der Rand ist niedriger als vor dem Wash.
gist-wash-open = Eine Stelle, die vor dem Wash frei lag oder dünn war, ist es noch immer.
gist-wash-thickness = Der Wash ist dick.
gist-wash-uneven = Der Wash ist an manchen Stellen viel dicker als an anderen.
gist-scan-ends = Der Scan endet, bevor der Rand umschlägt.
gist-border-not-judged = Der Rand konnte nicht gemessen werden.
gist-void = Luft hat in der Gewebefläche eine Vertiefung hinterlassen.
gist-void-unseen = Der Scan ist zu grob, um eine Blase zu zeigen, an der die Abformung scheitern würde.
gist-nodule = Auf der Gewebefläche ist eine Materialperle.
gist-fold = Eine Rille, wo zwei Materialfronten aufeinandertrafen, ohne sich zu verbinden.
gist-hole = An einer Stelle der Gewebefläche wurde nichts gescannt.
gist-landmark-cut-short = Rand oder Scan enden an einer Landmarke oder davor, zumindest vielleicht.
gist-landmark-obscured = Ein Fehler oder frei liegender Löffel verdeckt eine Landmarke.
gist-landmark-not-found = Eine Landmarke wurde nicht gefunden.
gist-cover-not-judged = Die Materialdicke konnte nicht gemessen werden.
gist-cover-uncertainty = Die Materialdicke wurde mit zu großer Unsicherheit gemessen.
gist-tissue-area = Es wurde zu wenig Gewebefläche gescannt.
gist-scan-resolution = Die Dreiecke des Scans sind zu grob.
gist-scan-quality = Ein Teil des Kiefers wurde nicht gut genug für das gescannt, was dort gemessen wird.
gist-interarch-space = Zwischen den Kieferkämmen ist wenig Platz.
gist-ridge-angle = Die Kieferkämme sind alles andere als parallel.
gist-jaw-relation-not-judged = Das Kieferrelationsregistrat wurde angegeben, konnte aber nicht gemessen werden.
gist-wash-missing = Zu einem Kiefer fehlt noch der Wash.
gist-impression-age = Die Abformung ist älter, als ihr Material zulässt.
gist-interocclusal-distance = Die vertikale Dimension in Ruhe abzüglich der in Okklusion ist ungewöhnlich oder unmöglich.
gist-lip-length = Die Länge der Oberlippe liegt außerhalb des plausiblen Bereichs.
gist-parcel-incomplete = In der Sendung fehlt etwas Vorgeschriebenes.
gist-prescription-missing = In der Sendung fehlt der schriftliche Auftrag.
gist-disinfection-not-stated = Angaben zur Desinfektion fehlen.

## Teile.

gist-border = Alle Prüfungen des Randes.
gist-wash = Alle Prüfungen dessen, was ein Wash hinzugefügt hat.
gist-jaw-relation = Die Prüfungen des Raums zwischen den Kiefern.
gist-parcel = Die Prüfungen der Sendung.
gist-over-extension = Ob der Rand zu lang ist, was kein Scan zeigt.
gist-cut = Was am Schnitt zwischen den Teilen einer Abformung liegt.
