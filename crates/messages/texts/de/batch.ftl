### Viele Fälle: was batch, collect und watch ausgeben, und warum ein Fall nicht geprüft werden konnte.

batch-checked = { $cases ->
    [one] 1 Fall geprüft
   *[other] { $cases } Fälle geprüft
}
batch-checked-but = { $cases ->
    [one] 1 Fall
   *[other] { $cases } Fälle
}, davon { $unread } nicht prüfbar
batch-skipped = davon { $count } schon früher geprüft
batch-rate = { $seconds } s, { $rate } Fälle je Sekunde
batch-of-shards = { $counted }, aus { $shards } Teilläufen
batch-whereabouts = Ergebnisse in { $path }: summary.html, summary.csv, findings.csv; cases/ enthält die jedes Falls
batch-order-in-time = Zeitliche Reihenfolge nach: { $sources }
batch-verdicts = annehmen { $accept }, nacharbeiten { $rework }, neu abformen { $retake }, unentschieden { $undecided }, nicht lesbar { $unread }

## Warum ein Fall nicht geprüft werden konnte. Dateinamen fehlen: sie könnten die eines Patienten sein.

unread-folder = der Ordner lässt sich nicht durchsehen ({ $reason })
unread-file = nicht lesbar ({ $reason })
unread-case-file = Falldatei: { $problem }
unread-landmarks-file = Landmarkendatei: { $problem }
unread-scan = { $scan }: { $problem }
unread-own-fault = archproof selbst versagte bei diesem Fall; bitte melden
unread-memory = kann { $need } MiB Speicher brauchen, mehr als die zulässigen { $allowed } MiB; mit --memory mehr zulassen
unread-scan-of-impression = Scan der { $jaw ->
    [maxillary] Oberkieferabformung
    [mandibular] Unterkieferabformung
   *[unknown] Abformung
}{ $stage ->
    [first-pass] {" "}vor dem Wash
    [wash] , Wash
   *[single] {""}
}
unread-scan-as-sent = Scan der { $jaw ->
    [maxillary] Oberkieferabformung
    [mandibular] Unterkieferabformung
   *[unknown] Abformung
}{ $stage ->
    [first-pass] {" "}vor dem Wash
    [wash] , Wash
   *[single] {""}
}, wie sie versandt wurde
unread-scan-of-relieved-tray = Scan des zurückgeschliffenen { $jaw ->
    [maxillary] Oberkieferlöffels
    [mandibular] Unterkieferlöffels
   *[unknown] Löffels
}
unread-scan-of-tray = Scan des { $jaw ->
    [maxillary] Oberkieferlöffels
    [mandibular] Unterkieferlöffels
   *[unknown] Löffels
}
unread-scan-of-record = Scan des Kieferrelationsregistrats
