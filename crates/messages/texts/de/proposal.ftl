### Ein Fall, aus den Scans eines Ordners vorgeschlagen: Gründe, Anmerkungen, Fragen und Antworten.

## Wofür ein Scan gehalten wird und warum, und was dagegen spricht. Durch „; “ verbunden.

placed-and = { $what }; { $more }
placed-as-stated = wie angegeben
placed-see-question = siehe die Frage
placed-record = eine Oberkiefer- und eine Unterkieferabformung liegen darin einander gegenüber
placed-same = derselbe Scan wie { $other }
placed-unreadable = nicht lesbar
placed-impression = zeigt eine { $jaw ->
    [maxillary] Oberkieferabformung
   *[mandibular] Unterkieferabformung
}
placed-jaw-open = welcher Kiefer es ist, geht aus der Form nicht klar hervor
placed-tray-open = keine Abformung zeigt hier, zu welchem Kiefer der Löffel gehört
placed-stage-stated = Phase wie angegeben
placed-wash = im Löffel von { $first }, { $by } mm darüber
placed-first-pass = im Löffel von { $wash }, darunter
placed-tray = passt auf { $shares }
tray-share = { $share } % der Außenseite von { $impression }
remark-not-seen = auf { $impression } nicht zu sehen: { $why }
remark-older = die Datei ist die ältere der beiden, ein schwaches Indiz
remark-name = der Dateiname lässt etwas anderes vermuten, ein schwaches Indiz
trial-same-tray = beide zeigen denselben leeren Löffel
trial-no-impression = es ist keine Abformung zu sehen

## Was die Oberflächen offenlassen.

ask-unreadable = Darf ein Scan, der nicht lesbar ist, im Fall fehlen? { $refused }
ask-what = Was ist { $name }? Der Scan zeigt keine ganze Abformung: { $what }.
ask-record = Ist { $name } das Kieferrelationsregistrat? Der Scan sieht aus wie eine { $jaw ->
    [maxillary] Oberkieferabformung
   *[mandibular] Unterkieferabformung
}, doch { $other } liegt darin.
ask-jaw = Welchen Kiefer zeigt { $name }? Die Form lässt den { $jaw ->
    [maxillary] Oberkiefer
   *[mandibular] Unterkiefer
} vermuten, aber nicht eindeutig.
ask-jaw-named = Welchen Kiefer zeigt { $name }? Die Form lässt den { $jaw ->
    [maxillary] Oberkiefer
   *[mandibular] Unterkiefer
} vermuten, der Dateiname den anderen Kiefer.
ask-tray = Ist { $name } ein Löffel dieses Falls? Zu keiner der Abformungen passt er.
ask-tray-wall = Ist { $name } ein Löffel dieses Falls? Zu keiner der Abformungen passt er; seine Wand von { $wall } mm ist die eines Löffels oder einer Prothesenbasis.
ask-tray-jaw = Zu welchem Kiefer gehört der Löffel { $name }? Er passt zu { $impressions }.
ask-which = Welcher Scan ist es ({ $role }): { $names }?
ask-one-step = Der Fall enthält eine { $jaw ->
    [maxillary] Oberkieferabformung
   *[mandibular] Unterkieferabformung
}, die als einzeitig angegeben wurde, und daneben eine mit Wash-Technik. Welche gehört zum Fall?
ask-stage = In welcher Phase ist die { $jaw ->
    [maxillary] Oberkieferabformung
   *[mandibular] Unterkieferabformung
} { $name }?
ask-stage-alone = Ein Scan allein zeigt es nicht.
ask-stage-several = Mehrere Abformungen dieses Kiefers liegen hier.
ask-order = Welche der { $jaw ->
    [maxillary] Oberkieferabformungen
   *[mandibular] Unterkieferabformungen
} { $one } und { $other } ist der Wash?
ask-order-not-compared = Sie wurden nicht verglichen.
ask-order-not-comparable = Sie lassen sich nicht vergleichen: { $why }.
ask-order-alike = Sie unterscheiden sich um { $by } mm, und keine liegt klar über der anderen.
ask-order-stated-otherwise = Die Angabe widerspricht dem, was die Oberflächen zeigen.

## Antworten.

choice-part = Teil der { $jaw ->
    [maxillary] Oberkieferabformung
   *[mandibular] Unterkieferabformung
}, die zerschnitten wurde
choice-pieces = alle: es sind Teile eines Löffels
choice-relieved = { $before }; { $after } ist derselbe Löffel nach dem Zurückschleifen
choice-order = { $first } vor dem Wash, { $wash } der Wash
choice-leave-out = { $kept }; { $other } weglassen
choice-record = { $kept }; das Kieferrelationsregistrat ist { $other }
choice-parts = beide: Teile einer Abformung, die zerschnitten wurde ({ $impression })
choice-number = Nummer (1 bis { $most }) oder Eingabetaste, um es offenzulassen:
choice-not-listed = Eine Nummer aus der Liste eingeben.

## Kommentare in der Falldatei.

comment-proposed = Von archproof nach dem vorgeschlagen, was die Scans zeigen. Vor dem Gebrauch lesen;
comment-proposed-help = „archproof help case-file“ nennt, was sich sonst angeben lässt.
comment-pseudonym = ein Pseudonym, nie ein Name
comment-question = FRAGE: { $question }
comment-answers = Vor dem Richtigen und vor seinem Abschnitt „# “ entfernen:
comment-left-out = Weggelassen: { $name }: { $why }
