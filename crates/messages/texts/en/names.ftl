### Names: jaws, sides, zones, landmarks, stages, papers.

## Zones.

zone-labial-flange = labial flange
zone-buccal-flange = buccal flange
zone-residual-ridge = residual ridge
zone-tuberosity = tuberosity
zone-hamular-notch = hamular notch
zone-posterior-palatal-seal = posterior palatal seal
zone-palate = palate
zone-rugae = rugae
zone-incisive-papilla = incisive papilla
zone-buccal-shelf = buccal shelf
zone-retromolar-pad = retromolar pad
zone-distobuccal = distobuccal
zone-lingual-flange = lingual flange
zone-retromylohyoid = retromylohyoid

## A part of the arch with its side.

zone-at-side = { $side ->
    [right] right
   *[left] left
} { $zone }

## Sides, where nothing else says whose they are.

patient-side = { $side ->
    [right] patient's right
   *[left] patient's left
}

## Landmarks.

landmark-labial-frenum = labial frenum
landmark-buccal-frenum = buccal frenum
landmark-lingual-frenum = lingual frenum
landmark-incisive-papilla = incisive papilla
landmark-rugae = rugae
landmark-foveae-palatini = foveae palatini
landmark-tuberosity = tuberosity
landmark-hamular-notch = hamular notch
landmark-posterior-palatal-seal = posterior palatal seal
landmark-retromolar-pad = retromolar pad
landmark-buccal-shelf = buccal shelf
landmark-lingual-flange = lingual flange

## Landmarks within a sentence. English puts its article before them.

the-landmark-labial-frenum = { landmark-labial-frenum }
the-landmark-buccal-frenum = { $side ->
    [right] { landmark-buccal-frenum } on the right
    [left] { landmark-buccal-frenum } on the left
   *[none] { landmark-buccal-frenum }
}
the-landmark-lingual-frenum = { landmark-lingual-frenum }
the-landmark-incisive-papilla = { landmark-incisive-papilla }
the-landmark-rugae = { landmark-rugae }
the-landmark-foveae-palatini = { landmark-foveae-palatini }
the-landmark-tuberosity = { $side ->
    [right] { landmark-tuberosity } on the right
    [left] { landmark-tuberosity } on the left
   *[none] { landmark-tuberosity }
}
the-landmark-hamular-notch = { $side ->
    [right] { landmark-hamular-notch } on the right
    [left] { landmark-hamular-notch } on the left
   *[none] { landmark-hamular-notch }
}
the-landmark-posterior-palatal-seal = { landmark-posterior-palatal-seal }
the-landmark-retromolar-pad = { $side ->
    [right] { landmark-retromolar-pad } on the right
    [left] { landmark-retromolar-pad } on the left
   *[none] { landmark-retromolar-pad }
}
the-landmark-buccal-shelf = { $side ->
    [right] { landmark-buccal-shelf } on the right
    [left] { landmark-buccal-shelf } on the left
   *[none] { landmark-buccal-shelf }
}
the-landmark-lingual-flange = { $side ->
    [right] { landmark-lingual-flange } on the right
    [left] { landmark-lingual-flange } on the left
   *[none] { landmark-lingual-flange }
}

## Impressions: of a jaw, at a stage. In German and Spanish all are feminine, as sentences expect.

impression-before-wash = { $jaw ->
    [maxillary] maxillary impression before the wash
    [mandibular] mandibular impression before the wash
   *[unknown] unknown jaw impression before the wash
}
impression-wash = { $jaw ->
    [maxillary] maxillary wash
    [mandibular] mandibular wash
   *[unknown] unknown jaw wash
}
impression-one-step = { $jaw ->
    [maxillary] maxillary impression
    [mandibular] mandibular impression
   *[unknown] unknown jaw impression
}

## Verdicts.

verdict-accept = accept
verdict-rework = rework
verdict-retake = retake
verdict-undecided = undecided

## Why a finding bears on the verdict.

cause-question = QUESTION
cause-fault = FAIL
cause-missing = MISSING
cause-look = LOOK
cause-note = note
cause-held-back = held back

## Places of a scan that were looked for again.

place-show-through = show-through
place-thin = thin
place-void = void
place-nodule = nodule
place-fold = fold
place-hole = hole
place-short-border = short border

## Checks, and parts of a result that several of them need.

check-file-unclear = file unclear
check-unit-unclear = unit unclear
check-not-an-impression = not an impression
check-arch-mismatch = arch mismatch
check-orientation-unclear = orientation unclear
check-show-through = show through
check-other-colour = other colour
check-show-through-extent = show through extent
check-tissue-stop = tissue stop
check-thin-cover = thin cover
check-tray-seating = tray seating
check-tray-bent = tray bent
check-tray-joint = tray joint
check-changed-in-transit = changed in transit
check-tray-size = tray size
check-outer-excess = outer excess
check-tray-at-border = tray at border
check-under-extension = under extension
check-border-radius = border radius
check-flange-height = flange height
check-flange-thickness = flange thickness
check-border-overlap = border overlap
check-border-asymmetry = border asymmetry
check-border-change = border change
check-wash-open = wash open
check-wash-thickness = wash thickness
check-wash-uneven = wash uneven
check-scan-ends = scan ends
check-border-not-judged = border not judged
check-void = void
check-void-unseen = void unseen
check-nodule = nodule
check-fold = fold
check-hole = hole
check-landmark-cut-short = landmark cut short
check-landmark-obscured = landmark obscured
check-landmark-not-found = landmark not found
check-cover-not-judged = cover not judged
check-cover-uncertainty = cover uncertainty
check-tissue-area = tissue area
check-scan-resolution = scan resolution
check-scan-quality = scan quality
check-interarch-space = interarch space
check-ridge-angle = ridge angle
check-jaw-relation-not-judged = jaw relation not judged
check-wash-missing = wash missing
check-impression-age = impression age
check-interocclusal-distance = interocclusal distance
check-lip-length = lip length
check-parcel-incomplete = parcel incomplete
check-prescription-missing = prescription missing
check-disinfection-not-stated = disinfection not stated
check-border = border
check-wash = wash
check-jaw-relation = jaw relation
check-parcel = parcel
check-over-extension = over extension
check-cut = cut
