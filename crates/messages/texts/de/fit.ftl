### Welcher Serienlöffel zu nehmen ist: was `archproof fit` ausgibt, und seine Seite.

## Was zu tun ist.

fit-take = { $tray } NEHMEN ({ $jaw ->
    [maxillary] Oberkiefer
   *[mandibular] Unterkiefer
}): Er berührt nirgends.
fit-adapt = KEINER PASST ({ $jaw ->
    [maxillary] Oberkiefer
   *[mandibular] Unterkiefer
}): Am nächsten kommt { $tray }. Ihn anpassen:
fit-bend = Vom Gewebe wegbiegen ({ $place }): Er reicht dort auf { $area } bis { $depth } mm ins Gewebe.
fit-shorten = Kürzen ({ $place }): Seine Kante reicht dort { $past } mm über den Rand hinaus.
fit-individual = KEINER PASST ({ $jaw ->
    [maxillary] Oberkiefer
   *[mandibular] Unterkiefer
}): Einen individuellen Löffel anfertigen. Kein Serienlöffel kommt nahe genug, um angepasst zu werden.
fit-none-of-this-jaw = KEINER PASST: Es ist kein Serienlöffel für den { $jaw ->
    [maxillary] Oberkiefer
   *[mandibular] Unterkiefer
} gescannt. Die vorhandenen scannen.
fit-try = Den Löffel vor der Verwendung im Mund anprobieren; es entscheidet die approbierte Fachperson.

## Die Tabelle.

fit-head-tray = Löffel
fit-head-least = mind., mm
fit-head-median = Median
fit-head-uncertainty = ± (k = 2)
fit-head-wanted = { $from } bis { $to } mm
fit-head-edge = Löffelkante bis Rand, geringster Abstand
fit-head-touches = berührt
fit-other-jaw = ein Löffel des anderen Kiefers
fit-not-placed = ließ sich nicht anprobieren: Sein Scan zeigt keinen Löffel
fit-how = Abstand vom Gewebe zur Innenseite jedes Löffels in der Lage, in der er am gleichmäßigsten ist. Die Spalte „{ $wanted }“ ist der Anteil des Gewebes über dem Löffel mit diesem Abstand.
fit-positive = Der Scan zeigt den Mund oder ein Modell: Der Abstand ist der bis dorthin, wo der Scan endet; das ist nicht der Rand.

## Die Seite.

fit-page-kicker = Welcher Serienlöffel passt
fit-page-pictures = Jeder Löffel im Mund
fit-page-lines = Die Farben zeigen den Abstand vom Gewebe zur Innenseite des Löffels; grau, wo kein Löffel darunter liegt. Die durchgezogene Linie ist der Rand, die gestrichelte die Löffelkante. Ein nummerierter Ring markiert, wo der Löffel berührt.
fit-page-lines-positive = Die Farben zeigen den Abstand vom Gewebe zur Innenseite des Löffels; grau, wo kein Löffel darüber liegt. Die durchgezogene Linie zeigt, wo der Scan endet, die gestrichelte ist die Löffelkante. Ein nummerierter Ring markiert, wo der Löffel berührt.
fit-page-scale = Abstand, mm (erwünscht: { $from } bis { $to })
fit-page-picture = Abstand, den { $tray } lässt, { $view }. { $touches ->
    [0] Er berührt nirgends.
    [one] Eine Stelle, an der er berührt, ist markiert.
   *[other] { $touches } Stellen, an denen er berührt, sind markiert.
}
fit-page-touch = { $place }: bis { $depth } mm ins Gewebe, auf { $area }
fit-page-written-by = Erstellt mit { $program }. Eine Hilfe bei der Prüfung, kein Medizinprodukt; es entscheidet die approbierte Fachperson.
