### Die Zusammenfassung im Terminal.

findings-more = { $count } { $notes ->
    [all] { $count ->
        [one] weiterer Hinweis
       *[other] weitere Hinweise
    }
   *[some] { $count ->
        [one] weiterer Befund
       *[other] weitere Befunde
    }
} in { $place }.

## Die Überschrift.

headline-ready = Bereit für { $next ->
    [wash] den Wash
   *[laboratory] das Labor
}.
headline-ready-in-part = Bereit für { $next ->
    [wash] den Wash
   *[laboratory] das Labor
}, vorbehaltlich der als nicht beurteilt aufgeführten Punkte.
headline-retake = { $which ->
    [upper] Die Oberkieferabformung wiederholen.
    [lower] Die Unterkieferabformung wiederholen.
    [both] Beide Abformungen wiederholen.
   *[one] Die Abformung wiederholen.
}
headline-correct = { $findings } berichtigen, bevor die Sendung verwendet wird; die Abformungen selbst sind in Ordnung.
headline-rework = Die mit MANGEL gekennzeichneten Stellen nacharbeiten, dann { $next ->
    [repeat] den Wash wiederholen
    [each] von jedem Kiefer die Wash-Abformung durchführen
   *[take] die Wash-Abformung durchführen
}.
headline-rework-one = An der { $impression } die mit MANGEL gekennzeichneten Stellen nacharbeiten, dann { $next ->
    [repeat] den Wash wiederholen
    [each] von jedem Kiefer die Wash-Abformung durchführen
   *[take] die Wash-Abformung durchführen
}.
headline-question-first = Zuerst die Frage zur { $impression } beantworten.
headline-answer = { $count ->
    [one] Die Frage unten beantworten, dann erneut prüfen. Bis dahin an der Abformung nichts verändern.
   *[other] Die Fragen unten beantworten, dann erneut prüfen. Bis dahin an der Abformung nichts verändern.
}
headline-missing = Noch kein Ergebnis möglich, denn { $lacks }. Das unten Aufgeführte nachreichen, dann erneut prüfen.
headline-look = { $count ->
    [one] Vor der Annahme eine Stelle ansehen: { $findings }.
   *[other] Vor der Annahme { $count } Stellen ansehen: { $findings }.
}
headline-can-be-worked-from = { $count ->
    [one] Mit der Abformung kann gearbeitet werden.
   *[other] Mit den Abformungen kann gearbeitet werden.
}
headline-parcel = Die Sendung vervollständigen: { $lacks }.
headline-not-measured = Noch kein Ergebnis möglich, denn nicht jede Abformung konnte vermessen werden.


## Was fehlt, in wenigen Worten.

lack-thickness-in-part = die Materialdicke ist nur teilweise bekannt
lack-thickness = die Materialdicke konnte nicht gemessen werden
lack-thickness-uncertain = die Materialdicke ist zu unsicher
lack-border = der Rand konnte nicht vermessen werden
lack-scan-ends = der Scan endet vor dem Rand
lack-scan-coarse = der Scan ist zu grob
lack-tissue-surface = ein Teil der Schleimhautseite wurde nicht gescannt
lack-hole = der Scan hat ein Loch
lack-tissue-stop = ein Schleimhautstopp wurde nicht gescannt
lack-record = das Kieferrelationsregistrat konnte nicht vermessen werden
lack-wash = { $jaw ->
    [upper] der Wash des Oberkiefers fehlt
    [lower] der Wash des Unterkiefers fehlt
   *[unknown] ein Wash fehlt
}
lack-prescription = Laborauftrag
lack-disinfection = Angaben zur Desinfektion
lack-contents = fehlende Teile
lack-something = etwas fehlt

## Was über eine Abformung, einen Wash und die Kieferrelation gesagt wird.

summary-head = { $verdict } Fall { $case }: { $asked }
summary-joined = aus { $parts } Teilen zusammengefügt; die Schnitte sind { $width } breit und nicht beurteilt
tray-found = Löffel unter { $trays } Serienlöffeln gefunden: { $best }, { $lies }
tray-found-before = Löffel unter { $trays } Serienlöffeln gefunden: { $best }, { $lies }; nächster ist { $next }, { $next_lies }
tray-lies = { $share } der Außenfläche auf { $rms } mm (quadratisches Mittel)
summary-thickness = Materialdicke über dem Löffel: Minimum { $least }, Median { $median } (± { $doubt }), auf { $area } Schleimhautseite
summary-no-material = 0 (Löffel an der Oberfläche)
summary-stops-show = { $stops ->
    [one] an 1 angegebenen Schleimhautstopp liegt der Löffel frei, wie vorgesehen
   *[other] an { $stops } angegebenen Schleimhautstopps liegt der Löffel frei, wie vorgesehen
}
summary-stops-relieved = die Schleimhautstopps wurden vor dem Wash entfernt
summary-since-sent = seit dem Versand: { $by } % { $size ->
    [smaller] kleiner
   *[larger] größer
}, hintere Enden { $heels } mm { $way ->
    [nearer] näher beieinander
   *[farther] weiter auseinander
}; { $places ->
    [0] keine Stelle für sich verändert
    [one] 1 Stelle für sich verändert
   *[other] { $places } Stellen für sich verändert
}
summary-places-sent = von { $all ->
    [one] 1 Stelle
   *[other] { $all } Stellen
} auf dem Scan beim Versand { $again } wiedergefunden
summary-places-gone = nicht mehr da
summary-places-not-measured = nicht wieder gemessen
summary-colour = nach der Farbe liegt Löffel ({ $tray }, { $source ->
    [found] im Scan gefunden
   *[given] wie angegeben
}) auf { $shown } von { $all } frei; das Material ist { $material }
summary-landmarks = Landmarken abgeformt: { $recorded } von { $all }
landmarks-reached = Stelle erreicht, nicht bestätigt
landmarks-cut-short = abgeschnitten
landmarks-obscured = verdeckt
landmarks-not-found = nicht gefunden
summary-wash = Wash { $jaw ->
    [maxillary] des Oberkiefers
   *[mandibular] des Unterkiefers
}, Dicke: Median { $median }; 5 bis 95 %: { $least } bis { $most }; jeweils ± { $doubt } mm
wash-resolved = behoben
wash-still-open = weiter offen
wash-unclear = zu knapp zum Entscheiden
wash-new = neu
summary-interocclusal = interokklusaler Abstand, aus den angegebenen Messwerten: { $distance }
summary-space = Abstand der Kieferkämme: { $least } bis { $most } mm (jeweils ± { $doubt } mm); Winkel zwischen ihnen { $angle }
record-in-part = Das Registrat zeigt einen Teil des Kiefers: Der Abstand wurde an { $measured } von { $all } Messstellen gemessen; an { $not_shown } zeigt das Registrat nicht beide Kieferkämme.

## Die Messgröße eines Befunds.

figure-at-least = { $what }, mindestens { $limit }
figure-at-most = { $what }, höchstens { $limit }
figure-patch = Fläche von { $figure }
figure-material = Material { $figure } dick
figure-tray-at-surface = Material { $figure } dick (Löffel an der Oberfläche)
figure-over-stop = Material über dem Stopp { $figure } dick
figure-tray-shows = Löffel liegt auf { $figure } der Fläche frei
figure-known-within = Dicke auf { $figure } genau bekannt
figure-scanned = { $figure } gescannt
figure-flange-thick = Funktionsrand { $figure } dick
figure-flange-high = Funktionsrand { $figure } hoch
figure-lower-than-other-side = Funktionsrand { $figure } niedriger als auf der anderen Seite
figure-lower-than-before = Rand { $figure } niedriger als vor dem Wash
figure-below-neighbourhood = Rand { $figure } niedriger als daneben
figure-border-radius = Randradius { $figure }
figure-past-tray = Material reicht { $figure } über den Löffel hinaus
figure-wide = { $figure } breit
figure-long = { $figure } lang
figure-smallest-void = kleinste erkennbare Blase { $figure } breit
figure-median-edge = mediane Kantenlänge { $figure }
figure-confidence = Konfidenz { $figure }
figure-tray-turned = Löffel um { $figure } verdreht
figure-tray-off = Löffel um { $figure } versetzt
figure-tray-bent = Löffel um { $figure } verbogen
figure-pieces-apart = Teile { $figure } auseinander
figure-moved = um { $figure } bewegt
figure-outer-excess = Material auf { $figure } der Löffelaußenseiten
figure-tray-width = Löffelbreite weicht um { $figure } ab
figure-wash-thick = Wash auf einem Zwanzigstel der Fläche { $figure } dick
figure-wash-varies = Dicke des Wash schwankt um { $figure }
figure-recorded = { $figure } davon abgeformt
figure-beyond-landmark = Abformung reicht { $figure } darüber hinaus
figure-space = Abstand { $figure }
figure-angle = Winkel { $figure }
figure-distance = Abstand { $figure }
figure-old = { $figure } alt

## Die Listen: Befunde, und was nicht beurteilt wurde.

place-on-tray = { $rim } mm vom Löffelrand auf der Lippen- und Wangenseite, { $front } mm von dessen Mitte vorn
summary-on-tray = Am Löffel: { $place }.
summary-same-action = Vorgehen wie bei { $id }.
summary-safety = Sicherheit: Nur außerhalb des Mundes schleifen, mit Augen- und Staubschutz; danach nach scharfen Kanten tasten und sie glätten.
adhesive = Adhäsiv: Wo aufgetragen wird, Löffel und Material reinigen und trocknen; freien Löffel damit bestreichen, trocknen lassen. Herstellerangaben gehen vor.
summary-how-to-scan = So scannen, dass alles beurteilt werden kann: archproof help scanning
summary-held-back = Zurückgestellt, bis die Frage beantwortet ist, weil Seiten und Stellen nicht feststehen: { $checks }
summary-not-judged = Nicht beurteilt: { $checks } ({ $why })
summary-not-judged-of = Nicht beurteilt, { $impression }: { $checks } ({ $why })
summary-not-part = Nicht Teil dieser Prüfung: { $checks }

## Der Schluss.

summary-scanner = Scanner: ± { $doubt } mm einer Länge, in jeder Unsicherheit oben enthalten ({ $source })
summary-map = { $what ->
    [wash] Wash-Karte
   *[thickness] Dickenkarte
} { $file }: dunkel = { $from } mm, hell = { $to } mm oder mehr, grau = nicht gemessen
summary-reading = Beim Lesen: { $file }: { $warning }
summary-sheet = Begleitblatt: { $path }
summary-report = Bericht: { $path }
summary-return-note = Rücksendeblatt: { $path }
summary-return-text = Text zum Rücksendeblatt: { $path }
summary-result = Ergebnis: { $path }
summary-no-return-note = Rücksendeblatt: keines geschrieben, da von der Praxis nichts benötigt wird.
summary-files = Ergebnisse in { $folder }: { $files }

# Welcher Serienlöffel für eine Abformung zu nehmen ist, die wiederholt wird.
next-tray-take = Für die neue Abformung den Serienlöffel { $tray } nehmen: Er berührt nirgends; Abstand im Median { $median }, nach dem Gewebe, das diese Abformung zeigt.
next-tray-same = Für die neue Abformung passt kein Serienlöffel besser als { $tray }, der verwendet wurde: Er berührt nirgends; Abstand im Median { $median }, nach dem Gewebe, das diese Abformung zeigt.
next-tray-adapt = Für die neue Abformung passt kein Serienlöffel, wie er ist. Am nächsten kommt { $tray }: Ihn vom Gewebe wegbiegen, wo er es berührt ({ $places }).
next-tray-individual = Für die neue Abformung kommt kein Serienlöffel nahe genug: Einen individuellen Löffel anfertigen.
next-tray-none = Für die neue Abformung ist kein Serienlöffel dieses Kiefers gescannt.
next-tray-try = Den Löffel zuerst im Mund anprobieren.
