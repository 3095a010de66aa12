### Warum etwas nicht beurteilt wurde.

cut-between-parts = die Abformung wurde zerteilt: am Schnitt zwischen ihren Teilen ({ $width } breit) und dicht daneben wurde nichts beurteilt
no-wash-pair = der Fall nennt keine Abformung vor dem Wash zu einem Wash desselben Kiefers
reason-not-an-impression = keine Abformung: { $what }
no-record-scan = der Fall nennt keinen Scan des Kieferrelationsregistrats
no-vertical-dimensions = der Fall gibt nicht beide vertikalen Dimensionen an
no-parcel = der Fall enthält keine Angaben zur Sendung
too-small-to-see = Stellen unter { $least } Breite zeigt dieser Scan nicht
border-partly-judged = { $part } von { $whole } des Randes konnten nicht beurteilt werden: { $why }
over-extension-not-shown = kein Scan zeigt, ob der Rand zu lang ist: mit dem Mund vergleichen
