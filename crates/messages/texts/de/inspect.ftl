### Scans auf einen Blick: was `archproof inspect` ausgibt.

## Die Tabelle.

inspect-head-size = Größe, mm
inspect-head-unit = Einheit
inspect-head-shows = zeigt
inspect-head-sides = Seiten
inspect-head-parts = Teile
inspect-head-loops = Schleifen
inspect-head-faults = Fehler
inspect-head-edge = Kante, mm
inspect-head-noise = Rauschen, mm
inspect-head-file = Datei: Anmerkungen
inspect-both-sides = beide
inspect-tissue-side = Gewebe
inspect-not-read = nicht lesbar

## Was ein Scan zeigt, der keine Abformung ist, in ein, zwei Wörtern.

shows-wrong-size = falsche Größe
shows-positive = Positiv
shows-cast = Modell
shows-half-arch = halber Kiefer
shows-tray-or-base = Löffel oder Basis
shows-record-rim = Registrierschablone
shows-no-arch = kein Kieferbogen
shows-toothed-arch = bezahnter Kiefer
shows-toothed-impression = Abformung mit Zähnen
shows-two-scans = zwei Scans
shows-tray = Löffel
shows-parts = Teile
shows-empty-tray = leerer Löffel

## Anmerkungen zu einer Datei, durch „; “ verbunden.

inspect-not-an-impression = keine Abformung: { $what }
inspect-attribute-bytes = die Attributbytes, in denen manche Programme Farbe speichern, wurden nicht verwendet
inspect-unit-inferred = in { $unit } gelesen: die Größe passt nicht zu einer Abformung in mm, sondern zu einer in { $unit }; wenn das stimmt, --unit { $unit } angeben
inspect-unit-ambiguous = in mm gelesen, doch die Größe könnte zu einer Abformung in { $units } passen; die Einheit mit --unit angeben
inspect-unit-implausible = in mm gelesen, doch die Größe passt in keiner Einheit zu einer Abformung
inspect-double-layers = { $percent } % der Fläche liegen in zwei Schichten
inspect-free-text = enthält freien Text, der eine Person nennen kann („archproof clean“ schreibt den Scan ohne ihn)
