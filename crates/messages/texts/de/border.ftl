### Der Rand: wo an ihm, wie er ausgeformt wird und was an ihm zu tun ist.

## Wo am Rand. Längen entlang des Randes; Seiten sind die des Patienten.
## Eine Mittellinie folgt immer auf „der“ (Genitiv oder Dativ).

midline-labial = labialen Mittellinie
midline-lingual = lingualen Mittellinie
midline-back = dorsalen Mittellinie
stretch-behind-pad = hinter dem { $side ->
    [right] rechten Trigonum retromolare
    [left] linken Trigonum retromolare
   *[none] Trigonum retromolare
}
stretch-on-side = zwischen { $near } und { $far } mm { $side ->
    [right] rechts
   *[left] links
} der { $midline }
stretch-across = zwischen { $from } mm { $side ->
    [right] rechts
   *[left] links
} und { $to } mm { $other ->
    [right] rechts
   *[left] links
} der { $midline }
stretch-from-midline = von der { $midline } bis { $to } mm { $side ->
    [right] rechts
   *[left] links
} davon
stretch-at-midline = an der { $midline }

## Die Bewegungen, die ihn ausformen, als Anweisungen.

movement-lip-down = Lippe nach außen und unten ziehen
movement-lip-up = Lippe nach außen und oben ziehen
movement-cheek-down = Wange nach außen und unten ziehen
movement-cheek-up = Wange nach außen und oben ziehen
movement-jaw-aside = den Patienten den Mund weit öffnen, schließen und den Unterkiefer hin und her bewegen lassen
movement-open-and-close = den Patienten den Mund weit öffnen und schließen lassen
movement-say-ah = den Patienten „Ah“ sagen lassen
movement-purse-lips = den Patienten die Lippen spitzen und die Wangen einziehen lassen
movement-tongue-out = den Patienten die Zunge herausstrecken und in beide Mundwinkel führen lassen

## Was vorher und nachher zu tun ist, als Teil eines Satzes.

mould-again = den Rand neu ausformen
mould-again-by = den Rand neu ausformen ({ $movement })
then-take-wash = dann eine Wash-Abformung nehmen
then-repeat-wash = dann die Wash-Abformung wiederholen

## Was zu tun ist.

border-asymmetry = Der Funktionsrand ist { $range } niedriger als auf der anderen Seite. Kiefer sind von Natur aus asymmetrisch: die Umschlagfalten beider Seiten im Mund vergleichen. Ist diese tiefer, als der Rand reicht, Randmaterial auftragen und { $mould }, { $then }. Drückt der Rand der anderen Seite in seine Umschlagfalte, ist er dort zu lang: dort kürzen und mit dem Wash ausformen.
border-change = Der Rand ist { $range } niedriger als vor dem Wash: Er wurde gekürzt, oder der Wash hat ihn verdrängt. War das nicht beabsichtigt, dort Randmaterial auftragen und { $mould }, { $then }.
border-not-judged = Der Rand wurde nicht beurteilt: { $why }.
border-scan-arch = Den ganzen Kieferbogen scannen, jeden Funktionsrand von beiden Seiten, und erneut prüfen; oder den Rand selbst ansehen.
border-scan-round = Den Rand ringsum scannen, auch von außen.
border-near-tray = Der Löffel endet { $range } nahe am Rand. Soll der Rand neu ausgeformt werden, den Löffel dort zuerst auf 2 bis 3 mm Abstand zur Umschlagfalte kürzen; dann Randmaterial auftragen und { $mould }.
border-far-from-tray = Das Material reicht { $range } weit über den Löffel hinaus. Gibt es unter dem Finger nach, braucht es Halt: den Löffel dort verlängern (reinigen und trocknen, Adhäsiv auftragen und trocknen lassen), Randmaterial auftragen und { $mould }, { $then }; oder in einem größeren Löffel abformen.
border-sharp = Messerscharf: Der Rand ist { $range } scharfkantig statt gerundet. Dort Randmaterial auftragen und { $mould }, sodass er rund ausläuft, { $then }.
border-may-be-sharp = Der Rand ist { $range } vielleicht scharfkantig: nachfühlen. Ist er messerscharf, dort Randmaterial auftragen und { $mould }, { $then }.
flange-low = Der Funktionsrand ist { $range } niedrig. Dort Randmaterial auftragen und { $mould }, { $then }.
flange-low-or-ridge = Der Funktionsrand ist { $range } niedrig: im Mund nachsehen. Ist die Umschlagfalte tiefer, als der Rand reicht, dort Randmaterial auftragen und { $mould }, { $then }. Ist der Kieferkamm selbst niedrig, so lassen.
flange-thin = Der Funktionsrand ist { $range } dünn. Dort Randmaterial auftragen und { $mould }, { $then }.
flange-may-be-thin = Der Funktionsrand ist { $range } dünn. Gibt er unter dem Finger nach, dort Randmaterial auftragen und { $mould }, { $then }.
flange-thick = Der Funktionsrand ist { $range } dick. Von außen reduzieren, { $then } und { $mould }, solange der Wash weich ist.
flange-may-be-thick = Der Funktionsrand ist { $range } dick. Überfüllt er die Umschlagfalte, von außen reduzieren, { $then } und { $mould }, solange der Wash weich ist.
border-low = Der Rand ist { $range } niedrig: mit dem Mund vergleichen. Ist die Umschlagfalte dort ebenso flach, so lassen. Ist sie tiefer, Randmaterial auftragen und { $mould }, { $then }.
border-dips = Der Rand senkt sich { $range }, wo ein Bändchen liegen kann: mit dem Mund vergleichen. Ist es das Bändchen, so lassen. Wenn nicht, ist der Rand dort zu kurz: Randmaterial auftragen und { $mould }, { $then }.
border-short = Der Rand ist { $range } zu kurz. Dort Randmaterial auftragen und { $mould }, { $then }.
border-may-be-short = Der Rand ist { $range } vielleicht zu kurz: die Abformung dort ansehen. Geht der Rand über den Scan hinaus, diesen Abschnitt noch einmal scannen; ist er zu kurz und die Umschlagfalte tiefer, Randmaterial auftragen und { $mould }, { $then }.
tray-at-border = Der Löffel liegt { $range } am Rand frei: den Löffel dort auf 2 bis 3 mm Abstand zur Umschlagfalte kürzen, reinigen und trocknen, Adhäsiv auf den freigelegten Löffel auftragen und trocknen lassen; Randmaterial auftragen und { $mould }, { $then }.
tray-may-be-at-border = Am Scan nicht sicher zu erkennen: den Rand { $range } ansehen. Liegt kein Löffel frei, diesen Abschnitt mit höherer Auflösung noch einmal scannen. Liegt der Löffel frei, ihn dort auf 2 bis 3 mm Abstand zur Umschlagfalte kürzen, reinigen und trocknen, Adhäsiv auf den freigelegten Löffel auftragen und trocknen lassen; Randmaterial auftragen und { $mould }, { $then }.
scan-ends = Der Umschlag des Randes wurde { $range } nicht gescannt. Diesen Abschnitt noch einmal scannen, auch von außen: Ob der Rand selbst dort zu kurz ist, wurde nicht beurteilt.
