### Many cases: what batch, collect and watch print, and why a case could not be checked.

batch-checked = { $cases ->
    [one] 1 case checked
   *[other] { $cases } cases checked
}
batch-checked-but = { $cases ->
    [one] 1 case
   *[other] { $cases } cases
}, { $unread } of which could not be checked
batch-skipped = { $count } of them done before
batch-rate = { $seconds } s, { $rate } cases a second
batch-of-shards = { $counted } of { $shards } shards
batch-whereabouts = Results in { $path }: summary.html, summary.csv, findings.csv; cases/ holds those of each case
batch-order-in-time = Order in time by { $sources }
batch-verdicts = accept { $accept }, rework { $rework }, retake { $retake }, undecided { $undecided }, could not be read { $unread }

## Why a case could not be checked. Names of files are left out: they may be a patient's.

unread-folder = the folder cannot be looked into ({ $reason })
unread-file = cannot be read ({ $reason })
unread-case-file = case file: { $problem }
unread-landmarks-file = landmarks file: { $problem }
unread-scan = { $scan }: { $problem }
unread-own-fault = archproof itself failed on this case; report it
unread-memory = may need { $need } MiB of memory, more than the { $allowed } MiB allowed; allow more with --memory
unread-scan-of-impression = { $jaw ->
    [maxillary] maxillary{" "}
    [mandibular] mandibular{" "}
   *[unknown] {""}
}{ $stage ->
    [first-pass] first-pass
    [wash] wash
   *[single] single
} scan
unread-scan-as-sent = { $jaw ->
    [maxillary] maxillary{" "}
    [mandibular] mandibular{" "}
   *[unknown] {""}
}{ $stage ->
    [first-pass] first-pass
    [wash] wash
   *[single] single
} scan as sent
unread-scan-of-relieved-tray = { $jaw ->
    [maxillary] maxillary{" "}
    [mandibular] mandibular{" "}
   *[unknown] {""}
}relieved tray scan
unread-scan-of-tray = { $jaw ->
    [maxillary] maxillary{" "}
    [mandibular] mandibular{" "}
   *[unknown] {""}
}tray scan
unread-scan-of-record = jaw-relation scan
