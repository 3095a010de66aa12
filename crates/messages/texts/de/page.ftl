### Der Bericht: sein Rahmen, das Ergebnis, Sicherheitshinweise, und was nicht beurteilt wurde.

## Der Rahmen.

page-title = Fall { $case }: { $verdict } - Bericht der Abformungsprüfung
page-kicker = Bericht der Abformungsprüfung
page-first-depth = Dieser Ausdruck ist der erste Teil des Berichts. Die Datei enthält mehr: Hinweise mit ihren Zeichnungen, alle Bilder, Methoden, Grenzwerte und Herkunft. Dort öffnen oder „Alles drucken“ ankreuzen.
page-written-by = Erstellt mit { $program }. Protokoll: { $protocol }. Eine Hilfe bei der Prüfung, kein Medizinprodukt; es entscheidet die approbierte Fachperson.
page-files = Dateien neben diesem Bericht
page-contents = Inhalt
page-folded = Eingeklappt; ein Klick öffnet jedes Kapitel:
page-print-everything = Alles drucken
page-print-hint = Ohne diesen Haken wird gedruckt, was auf der Seite offen ist: Eingeklapptes nur, wo es geöffnet wurde.

## Was zuerst zu tun ist.

page-first = Was zuerst zu tun ist
page-no-steps = Die durchgeführten Prüfungen ergaben keinen Mangel und keine offene Frage.
page-more-steps = Es ist noch mehr zu tun: siehe die Tabelle der weiteren Stellen.
page-further-steps = Weitere Schritte, in ihrer Reihenfolge
page-on-tray = am Löffel { $place }
page-wash-followed = (ein Wash folgte)
page-least-thickness = geringste Dicke { $thickness }

## Was nicht beurteilt wurde.

page-not-judged = Nicht beurteilt
page-not-judged-lead = Das Ergebnis erfasst die folgenden Punkte nicht. Die Abformung darauf mit bloßem Auge prüfen.
page-not-judged-and-why = Was nicht beurteilt wurde, und warum
page-of = Betrifft
page-why = Grund
page-the-case = ganzer Fall

## Sicherheitshinweise.

page-cautions = Sicherheitshinweise
page-caution-aid = Dies ist eine Hilfe bei der Prüfung. Sie ist kein Medizinprodukt und stellt keine Diagnose; es entscheidet die approbierte Fachperson mit der Abformung in der Hand.
page-caution-hygiene = Örtliche Vorschriften und Hygieneregeln gehen vor. Die Abformung reinigen und desinfizieren, bevor sie gehandhabt, gescannt oder versandt wird, und in der Sendung angeben, womit und wie lange desinfiziert wurde.
page-caution-relief = Einen Löffel nur außerhalb des Mundes zurückschleifen, mit Augen- und Staubschutz; nach scharfen Kanten tasten und sie glätten, bevor er wieder in den Mund kommt.
page-caution-makers = Die Angaben der Hersteller von Abformmaterial und Löffel haben Vorrang vor dieser Seite.
page-caution-data = Der Scan eines Mundes und alles, was daraus entsteht, sind Gesundheitsdaten: Diese Seite nach den vor Ort geltenden Vorschriften aufbewahren.
