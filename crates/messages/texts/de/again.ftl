### Ergebnisse, nach anderen Grenzwerten neu beurteilt: was `archproof judge` ausgibt.

again-head = Neu beurteilt nach „{ $protocol }“. Fälle, deren Ergebnis sich ändert:
again-no-case = keine
again-no-finding = kein Befund
again-findings = { $severity ->
    [fail] { $count ->
        [one] 1 Mangel
       *[other] { $count } Mängel
    }
    [borderline] { $count ->
        [one] 1 Grenzfall
       *[other] { $count } Grenzfälle
    }
   *[note] { $count ->
        [one] 1 Hinweis
       *[other] { $count } Hinweise
    }
}
again-was = bisher
again-now = jetzt
again-cases = Fälle
again-measure = neu messen
again-measure-these = Nicht neu beurteilt, weil den Ergebnissen fehlt, was diese Prüfungen nach den geänderten Grenzwerten brauchen. Für diese Fälle „archproof batch --protocol“ ausführen:
again-check = { $check }: { $cases ->
    [one] 1 Fall
   *[other] { $cases } Fälle
}
again-unread = { $cases ->
    [one] 1 Fall war bei der Prüfung nicht lesbar.
   *[other] { $cases } Fälle waren bei der Prüfung nicht lesbar.
}
again-total = { $cases ->
    [one] 1 Fall
   *[other] { $cases } Fälle
} neu beurteilt: bei { $changed } ändert sich das Ergebnis, { $open ->
    [one] 1 muss
   *[other] { $open } müssen
} neu gemessen werden.
