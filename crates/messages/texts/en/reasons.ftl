### Why something was not judged.

cut-between-parts = the impression was cut apart: nothing was judged at the cut between its parts ({ $width } wide) and close beside it
no-wash-pair = the case names no impression before the wash beside a wash of the same jaw
reason-not-an-impression = not an impression: { $what }
no-record-scan = the case names no scan of the jaw-relation record
no-vertical-dimensions = the case does not give both vertical dimensions
no-parcel = the case says nothing of the parcel
too-small-to-see = those narrower than { $least } do not show on this scan
border-partly-judged = { $part } of { $whole } of border could not be judged: { $why }
over-extension-not-shown = no scan shows whether the border is too long: compare it with the mouth
no-tissue-too-coarse = the median edge is { $edge } mm, too coarse to see defects of the surface ({ $most } mm at most)
parts-off-the-tray = part { $part } does not lie on the tray ({ $share } % of its surface does): check that it was cut from this impression, and scan its outside too
parts-ambiguous = part { $part } fits the tray in more than one way, { $spread } mm apart: too little of the tray shows on it
parts-step = the surfaces of the parts do not continue each other (a step of { $step } mm at the cut): they are of different impressions
parts-shown-twice = parts { $first } and { $second } show the same surface, over { $share } % of the smaller: give each part once
parts-apart = part { $part } meets no other part along a cut of at least { $least } mm: a part between them may be missing
no-border-line = no border line could be followed round the scan
border-not-round = the line that was followed does not run along both sides of the whole arch
missing-tissue-side-only = the scan shows the tissue side only
missing-scan-ends = the scan ends before the border turns over
missing-no-surface = no surface was scanned there
missing-no-crest = the ridge crest was not found there
missing-flange-too-low = the flange is shorter than the depth at which thickness is measured
missing-no-roll = the border has no roll there
missing-off-the-summit = the line that was followed leaves the summit of the flange there
missing-no-tray = no tray scan is registered
missing-at-the-cut = the impression was cut apart there
no-relation-not-in-record = the { $arch ->
    [maxillary] maxillary
   *[mandibular] mandibular
} impression is not found in the scan of the record: only { $share } % of its tissue side lies on it
no-relation-ambiguous = the { $arch ->
    [maxillary] maxillary
   *[mandibular] mandibular
} impression fits the scan of the record in more than one way, { $spread } mm apart: what the record shows of it is too little or too even
no-relation-jaw-missing = the case holds no impression of the { $arch ->
    [maxillary] upper
   *[mandibular] lower
} jaw to be laid on the record
no-relation-not-opposed = in the scan of the record the two impressions do not stand opposite each other with right and left alike; one of the scans may be mirrored, or the record is of another case
no-space-not-opposed = no lower ridge lies opposite
no-space-not-shown = the record does not show both ridges here
no-colour-unknown = the scan has colours, but the tray's was not given and none stands out on the outer surface
no-colour-alike = the colours of tray and material differ by { $difference } in CIELAB, too little to tell them apart ({ $least } at least)
no-colour-uneven = the colours of the scan are too uneven to tell tray from material: they lie { $separation } standard deviations apart ({ $least } at least)
no-cover-inside-missing = the tray scan lacks its inner surface, or is inside out: over { $share } % of the tissue surface it shows its back
no-cover-too-little-tray = too little of the tray's outer face shows opposite the tissue surface to measure its thickness
no-cover-here-no-tray = the tray scan holds no tray there
no-cover-here-differs = the outer surface there fits neither the tray nor material over it
no-pair-does-not-fit = the earlier impression does not fit on this one: only { $share } % of it lies there
no-pair-ambiguous = the earlier impression could be laid on this one in more than one way; they differ by { $spread } mm
no-pair-mirrored = the earlier impression fits on this one only as in a mirror: one of the two scans is mirrored, or they are of two mouths
no-border-before-the-wash = before the wash, { $why }
transit-same-file = it is the same file as the scan of the impression as it arrived
transit-arrived-none = the scan as it arrived shows no impression: { $what }
transit-sent-none = the scan as it was sent shows no impression: { $what }
transit-other-jaw = it shows the other jaw: a { $arch ->
    [maxillary] maxillary
   *[mandibular] mandibular
} impression
transit-not-this = only { $share } % of the tissue surface lies on it
transit-no-crest-line = of the impression as it arrived, { $why }
no-wash-outer-surface = of the impression before the wash or of the wash only the tissue side was scanned; aligned by it, an even wash could not be seen
no-wash-nothing-over = no tissue surface of the wash lies over the impression before the wash
unseen-no-notch = the border shows no notch of { $least } mm or more there
unseen-no-border = no border line could be followed there
unseen-no-relief = any relief is below { $least } mm, the least this scan can show
unseen-too-coarse = the median edge of { $edge } mm is too coarse for it ({ $most } mm at most)
unseen-trough-open = the trough does not close there: it ends { $open } mm above its bottom
unseen-no-neighbour = its place follows from a landmark that was not found
no-tray-scan = no tray scan was given
no-tray-outer-surface = the scan shows the tissue side only, so no tray surface is seen to register the tray scan on
no-tray-little-outer-surface = the scan shows { $outer } cm² of outer surface beside { $tissue } cm² of tissue surface, too little to register the tray scan on
no-tray-does-not-fit = the tray scan does not fit the outer surface of the impression: only { $share } % of it lies on the tray
no-tray-other-size = the tray scan is of another size: { $tray } mm across, the impression with its tray { $impression } mm
no-tray-mirrored = the tray scan fits the impression only as in a mirror: one of the two scans is mirrored, and right and left are not certain
no-tray-ambiguous = the tray scan could be placed in more than one way; the placings differ by { $spread } mm
no-tray-too-coarse = the median edge is { $edge } mm, too coarse to measure the material thickness ({ $most } mm at most)
no-tray-alike = two trays on the shelf fit the impression alike: '{ $one }' and '{ $other }'
no-tray-of-shelf-nearest = none of the { $trays } trays on the shelf fits the outer surface of the impression (the nearest is '{ $nearest }')
no-tray-of-shelf = none of the { $trays } trays on the shelf fits the outer surface of the impression
pieces-no-impression = the scan shows no impression on which the pieces of the tray could be placed
pieces-no-outer-surface = the scan shows too little of the outside to place the pieces of the tray
pieces-not-found = piece { $piece } of the tray is not found on the outside of the impression
pieces-ambiguous = piece { $piece } of the tray fits the outside of the impression in more than one way, { $spread } mm apart: too little of it shows
relieved-other-tray = only { $share } % of the tray's first scan fits on it: it may be of another tray, or lack a part
relieved-ambiguous = it can be laid on the tray's first scan in more than one way; they differ by { $spread } mm
none-wrong-size = its longest side is { $longest } mm, an impression in its tray has { $least } to { $most } mm
none-positive = the arch stands up as a ridge, as on a cast or in the mouth; an impression has a trough there
none-cast = the arch stands up as a ridge over a base that was trimmed flat: a cast
none-half = its trough runs round one side of the arch only: one half of an arch
none-shell = its wall is { $wall } mm thick, which leaves no room for a tray with material in it: an empty tray or a denture base
none-record-rim = under its trough stands a block { $depth } mm high with a level face: a record base with its wax rim
none-no-trough = no arch-shaped trough was found
none-teeth = { $teeth } teeth or parts of teeth stand up side by side: a tooth-bearing arch
none-sockets = { $sockets } hollows as of teeth lie side by side: a tooth-bearing arch was impressed
none-two-scans = two separate scans lie side by side in the file, of { $larger } and { $smaller } mm²
none-exchanged = it is a part of the larger scan that was given as the tray: impression and tray seem exchanged
none-parts = its parts could not be joined: { $why }
none-empty-tray = its tissue surface lies on the tray everywhere: this is the empty tray
no-cover-no-colour = { $cover }; by colour: { $colour }
stops-relieved = the stops were relieved before the wash; whether the tray was fully seated shows on the impression before the wash
tray-thickness-stated = with a stated thickness of the tray, the material thickness is known over a part of the tissue surface only
tray-not-aligned = the scan of the tray was not aligned with the impression
