### Studien von Scanner und Messung: Prüfkörper, Messsystem, Wiederholungen, Übereinstimmung, Serienlöffel.

study-line = { $path }, Zeile { $line }: { $fault }

## Namen der verglichenen Größen. Der englische Name ist der des Ergebnisses selbst.

compared-of = Abformung { $number }: { $name }
compared-error = Messabweichung: { $quantity }
compared-scanned-area = gescannte Fläche
compared-cover = Materialdicke
compared-median = Median
compared-5th-percentile = 5. Perzentil
compared-least = kleinster Wert
compared-area-judged = beurteilte Fläche
compared-border-length = Länge des Randes
compared-flange-height = Höhe des Funktionsrandes
compared-flange-thickness = Dicke des Funktionsrandes
compared-border-radius = Radius des Randes
compared-value = Wert
quantity-diameter = Durchmesser
quantity-centre-distance = Mittelpunktabstand
quantity-step-height = Stufenhöhe
quantity-dispersion = Streuung
size-between = { $quantity } { $from } bis { $to }

## Ein Prüfkörper.

artefact-head = { $verdict }: Prüfkörper { $artefact }, { $scans ->
    [one] 1 Scan
   *[other] { $scans } Scans
}
artefact-conforming = KONFORM
artefact-borderline = GRENZFALL
artefact-not-conforming = NICHT KONFORM
artefact-not-judged = NICHT BEURTEILT (die Beschreibung nennt keine Grenze)
artefact-scale = Scan { $scan }: die Längen weichen um { $off } % von den zertifizierten ab
artefact-interchangeable = Scan { $scan }: die Kugeln stehen so gleichmäßig, dass eine für eine andere gehalten werden kann
artefact-size-head = Maß, mm
artefact-scan-head = Scan
artefact-certified = zertifiziert
artefact-found = gemessen
artefact-error = Abweichung ± U (k = 2)
artefact-limit-head = Grenze
reading-conforming = konform
reading-borderline = Grenzfall
reading-not-conforming = NICHT KONFORM
reading-not-judged = nicht beurteilt
artefact-mean-error = mittlere Abweichung { $mean }, Standardabweichung { $sd }
artefact-mean = Mittelwert { $mean }, Standardabweichung { $sd }
artefact-sd-between = ({ $from } bis { $to } mit 95 % Vertrauen)
artefact-legend = Messunsicherheit: die des zertifizierten Maßes und die der Anpassung, bei der die Punkte als unabhängig abweichend gelten. Streuung: die Schale, die 95 % der Punkte einer Kugel enthält.
artefact-scanner-source = Prüfkörper { $artefact }, Zertifikat { $certificate }, geprüft am { $date }: { $lengths ->
    [one] 1 Länge
   *[other] { $lengths } Längen
} in { $scans ->
    [one] 1 Scan
   *[other] { $scans } Scans
}, quadratisches Mittel der Abweichungen { $error } mm
artefact-step-not-found = { $path }: Stufe { $step }: { $problem }; noch einmal scannen oder prüfen, ob lower, upper und reach_mm stimmen
artefact-no-face = auf ihrer { $face ->
    [upper] oberen
   *[lower] unteren
} Fläche sind { $seen } Eckpunkte zu sehen, weniger als { $least }
artefact-too-few = von { $wanted } Kugeln sind { $seen } im Scan zu sehen; jede muss mindestens zu einem Drittel gescannt sein, und die Einheit muss stimmen
artefact-other = die Kugeln im Scan stehen nicht wie die des Prüfkörpers ({ $seen } waren zu sehen, im Maßstab auf 5 % genau); der Prüfkörper kann ein anderer oder der Scan gespiegelt sein

## Seine Beschreibung.

artefact-no-id = der Prüfkörper braucht einen Namen aus druckbaren Zeichen
artefact-no-sphere = ein Prüfkörper hat mindestens eine Kugel; sie unter [[sphere]] angeben
artefact-sphere-name = eine Kugel braucht einen Namen aus druckbaren Zeichen, den keine andere hat
artefact-centre = ein Mittelpunkt braucht drei endliche Zahlen, mm
artefact-size = ein Maß muss endlich und größer als 0 sein, mm
artefact-uncertainty = eine Messunsicherheit muss endlich und nicht kleiner als 0 sein, mm (erweitert, k = 2)
artefact-limit = eine Grenze muss endlich und größer als 0 sein, mm
artefact-between = ein Abstand liegt zwischen zwei verschiedenen Kugeln, die unter [[sphere]] genannt sind
artefact-centres-elsewhere = der Abstand ist mit { $certified } mm zertifiziert, doch die Mittelpunkte seiner Kugeln liegen { $nominal } mm auseinander
artefact-step-name = eine Stufe braucht einen Namen aus druckbaren Zeichen, den keine andere hat
artefact-step-place = eine Stufe braucht lower, upper und facing mit je drei endlichen Zahlen; facing ist die Richtung, in die ihre Flächen weisen, nicht 0 0 0
artefact-step-reach = die Flächen einer Stufe liegen nebeneinander, weiter auseinander als das Doppelte von reach_mm, das größer als 0 ist
artefact-faces-elsewhere = die Stufe ist mit { $certified } mm zertifiziert, doch ihre Flächen liegen entlang facing { $nominal } mm auseinander
artefact-step-unplaced = um eine Stufe zu finden, sind drei Kugeln nötig, die nicht auf einer Geraden stehen

## Eine Messsystemanalyse.

gauge-head = Gekreuzte Messsystemanalyse: { $operators } Prüfer, { $parts } Teile, { $repeats } Wiederholungen
gauge-source = Quelle
gauge-freedom = Freiheitsgrade
gauge-sum-of-squares = Quadratsumme
gauge-mean-square = mittleres Quadrat
gauge-part-parts = Teile
gauge-part-operators = Prüfer
gauge-part-operators-by-parts = Prüfer × Teile
gauge-part-repeats = Wiederholungen
gauge-part-repeatability = Wiederholpräzision
gauge-part-reproducibility = Vergleichpräzision
gauge-part-gauge = Messsystem
gauge-part-total = gesamt
gauge-interaction-pooled = Prüfer × Teile: F { $f }, p { $p }; mit den Wiederholungen zusammengefasst
gauge-interaction-apart = Prüfer × Teile: F { $f }, p { $p }; getrennt gehalten
gauge-no-interaction = Prüfer × Teile: kein F, da sich Wiederholungen nie unterscheiden
gauge-variation = Streuung
gauge-sd = s
gauge-confidence = 95 % Vertrauen
gauge-of-study = % der Gesamtstreuung
gauge-of-variance = % der Varianz
gauge-at-most = höchstens { $most }
gauge-below-zero = keiner: weit unter 0
gauge-categories = Unterscheidbare Klassen: { $count }
gauge-by-ranges = Stattdessen nach Mittelwerten und Spannweiten: Wiederholpräzision { $repeatability }, Vergleichpräzision { $reproducibility }, Messsystem { $gauge }, Teile { $parts }; Messsystem { $percent } % der Gesamtstreuung, { $categories } Klassen
gauge-nothing = Keine Größe ließ sich untersuchen.
gauge-repeat-sd = s Wiederh.
gauge-operators-sd = s Prüfer
gauge-gauge-sd = s Messsystem
gauge-parts-sd = s Teile
gauge-gauge-percent = Messsystem %
gauge-categories-head = Klassen
gauge-of-figure = { $figure }: { $said }
gauge-not-studied = Nicht untersucht: { $figure } ({ $why })
gauge-legend = In der Messsystemanalyse der Automobilhersteller ist ein Messsystem unter 10 % der Gesamtstreuung gut, von 10 bis 30 % bedingt brauchbar, darüber nicht; es soll 5 Klassen unterscheiden. Dieselben Anteile gelten für Toleranz und Abstand. Wird eine Varianz auf 0 geschätzt, ist die Standardabweichung höchstens wie angegeben, mit einem einseitigen Vertrauen von 95 %.
gauge-least-and-most = mindestens { $least }, höchstens { $most }
gauge-least = mindestens { $least }
gauge-most = höchstens { $most }
gauge-against-both = Messsystem gegen Grenzwerte ({ $limits }): 6 s sind { $percent } % der Toleranz; { $distance }
gauge-against-one = Messsystem gegen Grenzwerte ({ $limits }): { $distance }
gauge-mean-on-limit = der Mittelwert der Messwerte liegt auf dem Grenzwert
gauge-of-distance = 3 s sind { $percent } % des Abstands des Mittelwerts vom nächsten Grenzwert
gauge-lacking = fehlt bei { $lacking } von { $all } Messungen
gauge-unreadable = { $path }: nicht lesbar ({ $reason }); eine CSV-Datei mit den Spalten operator, part, repeat, value oder einen Ordner mit Ordnern der Prüfer angeben
gauge-file-for-folder = { $path }: eine Datei, wo ein Ordner nötig ist; eine Studie liegt als OPERATOR/PART/REPEAT vor, und jedes REPEAT ist ein Scan (STL, PLY, OBJ) oder ein Ergebnisordner
gauge-no-repeat = { $path }: weder ein Scan noch ein Ergebnisordner; eine Studie liegt als OPERATOR/PART/REPEAT vor, und jedes REPEAT ist ein Scan (STL, PLY, OBJ) oder ein Ergebnisordner
gauge-no-column = es gibt keine Spalte '{ $name }'; die erste Zeile nennt die Spalten operator, part, repeat, value, mit Kommas dazwischen
gauge-no-cell = { $name } fehlt
gauge-no-number = der Wert '{ $value }' ist keine Zahl; so schreiben: 1.25
gauge-twice = operator, part und repeat sind die von Zeile { $line }; jeden Messwert einmal angeben
gauge-unequal = { $columns } Spalten, in der ersten Zeile { $first }; Zahlen mit Punkt statt Komma schreiben
gauge-no-text = kein Text in UTF-8; die Tabelle so speichern
gauge-no-row = keine Zeile einer CSV-Tabelle
study-too-small = eine Messsystemanalyse braucht mindestens zwei Prüfer, zwei Teile und zwei Wiederholungen
study-unequal = Prüfer „{ $operator }“ maß Teil „{ $part }“ { $readings }-mal statt { $wanted }-mal wie sonst; jeder Prüfer misst jedes Teil gleich oft
study-no-variation = alle Messwerte sind gleich, was nichts über das Messsystem aussagt
study-not-finite = ein Messwert von Prüfer „{ $operator }“ an Teil „{ $part }“ ist keine endliche Zahl

## Wiederholte Scans.

repeat-head = { $count } Scans einer Abformung
repeat-aligned = Scan { $scan } am ersten ausgerichtet: quadratisches Mittel { $rms } mm über { $share } davon, Lage auf ± { $uncertainty } mm
repeat-spread = Standardabweichung an einer Stelle: gepoolt { $pooled }, Median { $median }, 95. Perzentil { $p95 } mm, über { $area }
repeat-no-spread = Nicht beurteilt: Streuung (nichts ließ sich vergleichen)
repeat-one-place = (an einer einzelnen Stelle liegt sie mit 95 % Vertrauen zwischen dem { $from }- und dem { $to }-Fachen davon)
repeat-nowhere = Sie unterscheiden sich nirgends um mehr, als Rauschen und Ausrichtung erklären ({ $detectable } mm)
repeat-places = Sie unterscheiden sich um mehr, als Rauschen und Ausrichtung erklären ({ $detectable } mm), an { $count ->
    [one] 1 Stelle
   *[other] { $count } Stellen
}:
repeat-place = { $id } { $place }: { $apart } mm auseinander über { $area } mm²
repeat-stands-out = { $line }, Scan { $scan } weicht ab
repeat-off = neben der Schleimhautseite
repeat-more = (und { $count } kleinere)
repeat-title = Wiederholpräzision (im Sinn von ISO 5725), { $freedom } Freiheitsgrade
repeat-mean = Mittelwert ± (95 %)
repeat-sd = s
repeat-limit = r
repeat-range = Spannweite
repeat-critical = kritisch
repeat-beyond = DARÜBER
repeat-legend = r (Wiederholgrenze): zwei Scans unterscheiden sich in 95 von 100 Fällen um weniger. kritisch: so viele Scans liegen in 95 von 100 Fällen innerhalb (ISO 5725-6, Faktor { $factor }), { $by }. Karte: viridis, dunkel 0 bis hell { $most } mm; grau, wo ein Scan keine Fläche zeigt
repeat-known-beyond = nach der Standardabweichung der früheren Studie. Wo die Spannweite DARÜBER liegt, noch einmal scannen; bis dahin den Median nehmen
repeat-known-within = nach der Standardabweichung der früheren Studie: jede Spannweite liegt darin
repeat-own = nach der Standardabweichung dieser Scans selbst; --known beurteilt die Spannweiten nach der einer früheren Studie
repeat-some-have-it = vorhanden bei { $have } von { $all } Scans
repeat-too-few = ein einzelner Scan sagt nichts über die Wiederholpräzision; zwei oder mehr von einer Abformung angeben
repeat-does-not-fit = dieser Scan liegt nicht auf dem ersten: nur { $share } % davon passen; er kann von einer anderen Abformung stammen oder gespiegelt sein
repeat-not-known = { $path }: keine repeat.json dieser Version ({ $reason }); eine angeben, die „archproof repeat“ geschrieben hat

## Übereinstimmung von Beurteilern.

agreement-head = { $cases } Fälle, { $raters } Beurteiler, Urteile { $verdicts }
agreement-raters = Beurteiler
agreement-cases = Fälle
agreement-agreement = Übereinstimmung
agreement-kappa-head = Kappa (95-%-Intervall)
agreement-kappa = { $kappa } ({ $from } bis { $to })
agreement-all = alle
agreement-not-known = über den Zufall hinaus nicht bekannt: nur ein Urteil, oder kein gemeinsamer Fall
agreement-rater = Beurteiler
agreement-missed = übersehen (95-%-Intervall)
agreement-false-alarms = Fehlalarme (95-%-Intervall)
agreement-share = { $count } von { $of } ({ $from } bis { $to } %)
agreement-no-case = kein solcher Fall
agreement-legend = Kappa: Übereinstimmung über den Zufall hinaus, 1 bei völliger Übereinstimmung, 0 wie durch Zufall. Bei zwei Beurteilern das von Cohen, mit dem Intervall von Fleiss, Cohen und Everitt 1969; bei allen das von Fleiss, mit dem Jackknife-Intervall über die Fälle.
agreement-unreadable = { $path }: nicht lesbar ({ $reason }); eine CSV-Datei mit einer Spalte 'case' und einer für jeden Beurteiler angeben
agreement-no-table = keine Tabelle ({ $reason })
agreement-columns = die erste Zeile nennt eine Spalte 'case' und je eine für zwei oder mehr Beurteiler, alle verschieden
agreement-unknown = '{ $reference }' ist kein Beurteiler; die Tabelle enthält { $raters }

## Serienlöffel in einem Mund.

