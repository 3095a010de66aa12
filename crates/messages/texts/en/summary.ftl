### The summary on the terminal.

findings-more = { $count ->
    [one] { $notes ->
        [all] 1 further note is
       *[some] 1 further finding is
    }
   *[other] { $notes ->
        [all] { $count } further notes are
       *[some] { $count } further findings are
    }
} in { $place }.

## The headline.

headline-ready = Ready for the { $next ->
    [wash] wash
   *[laboratory] laboratory
}.
headline-ready-in-part = Ready for the { $next ->
    [wash] wash
   *[laboratory] laboratory
}, subject to the items listed as not judged.
headline-retake = { $which ->
    [upper] Take the upper impression again.
    [lower] Take the lower impression again.
    [both] Take both impressions again.
   *[one] Take the impression again.
}
headline-correct = Correct { $findings } before the set is used; the impressions themselves pass.
headline-rework = Correct the places marked FAIL, then { $next ->
    [repeat] repeat the wash
    [each] take the wash of each
   *[take] take the wash impression
}.
headline-rework-one = Correct the places marked FAIL on the { $impression }, then { $next ->
    [repeat] repeat the wash
    [each] take the wash of each
   *[take] take the wash impression
}.
headline-question-first = Answer the question on the { $impression } first.
headline-answer = { $count ->
    [one] Answer the question below, then check again. Do nothing to the impression until it is answered.
   *[other] Answer the questions below, then check again. Do nothing to the impression until they are answered.
}
headline-missing = No verdict is possible yet: { $lacks }. Supply what is listed below, then check again.
headline-look = { $count ->
    [one] One place needs a look before this can be accepted: { $findings }.
   *[other] { $count } places need a look before this can be accepted: { $findings }.
}
headline-can-be-worked-from = { $count ->
    [one] The impression can be worked from.
   *[other] The impressions can be worked from.
}
headline-parcel = Complete the parcel: { $lacks }.
headline-not-measured = No verdict is possible yet: not every impression could be measured.

## What is missing, in a few words.

lack-thickness-in-part = the material thickness is known in part only
lack-thickness = the material thickness could not be measured
lack-thickness-uncertain = the material thickness is too uncertain
lack-border = the border could not be measured
lack-scan-ends = the scan ends before the border does
lack-scan-coarse = the scan is too coarse
lack-tissue-surface = part of the tissue surface was not scanned
lack-hole = the scan has a hole
lack-tissue-stop = a tissue stop was not scanned
lack-record = the jaw-relation record could not be measured
lack-wash = { $jaw ->
    [upper] the upper wash is missing
    [lower] the lower wash is missing
   *[unknown] a wash is missing
}
lack-prescription = prescription missing
lack-disinfection = disinfection not stated
lack-contents = contents incomplete
lack-something = something is missing

## What is said of an impression, a wash and the jaw relation.

summary-head = { $verdict } case { $case }: { $asked }
summary-joined = joined from { $parts } parts; the cuts are { $width } wide and not judged
tray-found = tray found on the shelf of { $trays }: { $best }, { $lies }
tray-found-before = tray found on the shelf of { $trays }: { $best }, { $lies }; next is { $next }, { $next_lies }
tray-lies = { $share } of the outer surface within { $rms } mm (root mean square)
summary-thickness = material thickness over the tray: minimum { $least }, median { $median } (± { $doubt }), over { $area } of tissue surface
summary-no-material = 0 (tray at the surface)
summary-stops-show = { $stops ->
    [one] tray shows at 1 declared tissue stop, as it should
   *[other] tray shows at { $stops } declared tissue stops, as it should
}
summary-stops-relieved = the tissue stops were relieved before the wash
summary-since-sent = since it was sent: { $by } % { $size ->
    [smaller] smaller
   *[larger] larger
}, heels { $heels } mm { $way ->
    [nearer] nearer together
   *[farther] farther apart
}; { $places ->
    [0] no place changed by itself
    [one] 1 place changed by itself
   *[other] { $places } places changed by themselves
}
summary-places-sent = of { $all } places on the scan as sent, { $again } found again
summary-places-gone = gone
summary-places-not-measured = not measured again
summary-colour = by colour, tray ({ $tray }, { $source ->
    [found] found in the scan
   *[given] as given
}) shows over { $shown } of { $all }; the material is { $material }
summary-landmarks = landmarks recorded: { $recorded } of { $all }
landmarks-reached = place reached, not verified
landmarks-cut-short = cut short
landmarks-obscured = obscured
landmarks-not-found = not found
summary-wash = { $jaw ->
    [maxillary] maxillary wash
   *[mandibular] mandibular wash
}: thickness median { $median }, 5 to 95 % { $least } to { $most }, each ± { $doubt } mm
wash-resolved = resolved
wash-still-open = still open
wash-unclear = too close to call
wash-new = new
summary-interocclusal = interocclusal distance, from the readings given: { $distance }
summary-space = space between the ridges: { $least } to { $most }, each ± { $doubt } mm; angle between them { $angle }
record-in-part = The record shows a part of the arch: the space was measured at { $measured } of { $all } stations; at { $not_shown } the record does not show both ridges.

## The figure of a finding.

figure-at-least = { $what }, at least { $limit }
figure-at-most = { $what }, at most { $limit }
figure-patch = patch of { $figure }
figure-material = material { $figure } thick
figure-tray-at-surface = material { $figure } thick (tray at the surface)
figure-over-stop = material over the stop { $figure } thick
figure-tray-shows = tray shows over { $figure } of the surface
figure-known-within = thickness known to within { $figure }
figure-scanned = { $figure } scanned
figure-flange-thick = flange { $figure } thick
figure-flange-high = flange { $figure } high
figure-lower-than-other-side = flange { $figure } lower than the other side's
figure-lower-than-before = border { $figure } lower than before the wash
figure-below-neighbourhood = border { $figure } below its neighbourhood
figure-border-radius = border radius { $figure }
figure-past-tray = material extends { $figure } past the tray
figure-wide = { $figure } wide
figure-long = { $figure } long
figure-smallest-void = smallest void that shows { $figure } wide
figure-median-edge = median edge { $figure }
figure-confidence = confidence { $figure }
figure-tray-turned = tray turned by { $figure }
figure-tray-off = tray off by { $figure }
figure-tray-bent = tray bent by { $figure }
figure-pieces-apart = pieces apart by { $figure }
figure-moved = moved by { $figure }
figure-outer-excess = material over { $figure } of the tray's outer faces
figure-tray-width = tray off by { $figure } in width
figure-wash-thick = wash { $figure } thick over a twentieth of the surface
figure-wash-varies = wash thickness varies by { $figure }
figure-recorded = { $figure } of it recorded
figure-beyond-landmark = impression extends { $figure } beyond it
figure-space = space { $figure }
figure-angle = angle { $figure }
figure-distance = distance { $figure }
figure-old = { $figure } old

## The lists: findings, and what was not judged.

place-on-tray = { $rim } mm from the rim on the lip and cheek side, { $front } mm from the middle of that rim at the front
summary-on-tray = On the tray: { $place }.
summary-same-action = Same action as { $id }.
summary-safety = Safety: Grind only out of the mouth, with eye and dust protection; feel for sharp edges afterwards and smooth them.
adhesive = Adhesive: Clean and dry tray and set material where you add to them; coat bared tray with adhesive and let it dry. Makers' instructions take precedence.
summary-how-to-scan = How to scan so that all of it can be judged: archproof help scanning
summary-held-back = Held back until the question is answered, because sides and places are not certain: { $checks }
summary-not-judged = Not judged: { $checks } ({ $why })
summary-not-judged-of = Not judged, { $impression }: { $checks } ({ $why })
summary-not-part = Not part of this check: { $checks }

## What it ends with.

summary-scanner = Scanner: ± { $doubt } mm of a length, part of every uncertainty above ({ $source })
summary-map = { $what ->
    [wash] Wash map
   *[thickness] Thickness map
} { $file }: dark = { $from } mm, bright = { $to } mm or more, grey = not measured
summary-reading = Reading: { $file }: { $warning }
summary-sheet = Sheet: { $path }
summary-report = Report: { $path }
summary-return-note = Return note: { $path }
summary-return-text = Text of the return note: { $path }
summary-result = Result: { $path }
summary-no-return-note = Return note: none was written, since nothing is asked of the clinic.
summary-files = Results in { $folder }: { $files }

# Which tray of the shelf to take for an impression that is to be taken again.
next-tray-take = For the new impression take tray { $tray } of the shelf: it touches nowhere; median clearance { $median }, by the tissue that this impression shows.
next-tray-same = For the new impression no tray of the shelf suits better than { $tray }, which was used: it touches nowhere; median clearance { $median }, by the tissue that this impression shows.
next-tray-adapt = For the new impression no tray of the shelf fits as it is. { $tray } comes nearest: bend it away from the tissue where it touches ({ $places }).
next-tray-individual = For the new impression no tray of the shelf comes near enough: make an individual tray.
next-tray-none = For the new impression the shelf holds no tray of this jaw.
next-tray-try = Try it in the mouth first.
