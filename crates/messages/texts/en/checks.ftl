### What each check, and each part that several checks need, is in one sentence.

## Checks.

gist-file-unclear = The file could mean two things, or one file is given as two.
gist-unit-unclear = The unit of the scan cannot be told from its size.
gist-not-an-impression = The scan shows something else than an impression.
gist-arch-mismatch = The jaw found is not the jaw declared.
gist-orientation-unclear = Which jaw it is, or which side is which, is not certain.
gist-show-through = Tray shows through the material.
gist-other-colour = Another colour than the material's shows, and the tray's is not known.
gist-show-through-extent = Tray shows through over too much of the surface for relief and a wash.
gist-tissue-stop = A declared tissue stop does not show: the tray was not fully seated.
gist-thin-cover = Material is thin.
gist-tray-seating = The tray was not where the material would have been of even thickness.
gist-tray-bent = The tray bent between its scan and the impression.
gist-tray-joint = The pieces of the tray were not fully joined.
gist-changed-in-transit = The impression changed between the scan in which it was sent and the one in which it arrived.
gist-tray-size = The tray is too small or too large for the mouth.
gist-outer-excess = Material lies on the outer faces of the tray.
gist-tray-at-border = Tray shows at the border itself.
gist-under-extension = A stretch of border is short, or may be.
gist-border-radius = The border is sharp instead of rounded.
gist-flange-height = A flange is low.
gist-flange-thickness = A flange is thinner or thicker than its guide.
gist-border-overlap = The tray ends too near to the border or too far from it.
gist-border-asymmetry = A flange is much lower than the other side's.
gist-border-change = The border is lower than before the wash.
gist-wash-open = A place that was bare or thin before the wash still is.
gist-wash-thickness = The wash is thick.
gist-wash-uneven = The wash is much thicker in some places than in others.
gist-scan-ends = The scan ends before the border turns over.
gist-border-not-judged = The border could not be measured.
gist-void = Air left a pit in the tissue surface.
gist-void-unseen = The scan is too coarse to show a void that would fail.
gist-nodule = There is a bump on the tissue surface.
gist-fold = A groove where two fronts of material met without bonding.
gist-hole = Nothing was scanned at a place of the tissue surface.
gist-landmark-cut-short = Border or scan end at a landmark or before it, or may.
gist-landmark-obscured = A defect or bare tray lies over a landmark.
gist-landmark-not-found = A landmark was not detected.
gist-cover-not-judged = The material thickness could not be measured.
gist-cover-uncertainty = The material thickness was measured with too large an uncertainty.
gist-tissue-area = Too little tissue surface was scanned.
gist-scan-resolution = The triangles of the scan are too coarse.
gist-scan-quality = A part of the arch was not scanned well enough for what is measured there.
gist-interarch-space = There is little room between the ridges.
gist-ridge-angle = The ridges are far from parallel.
gist-jaw-relation-not-judged = The jaw-relation record was given but could not be measured.
gist-wash-missing = A jaw is still before its wash.
gist-impression-age = The impression is older than its material allows.
gist-interocclusal-distance = Rest vertical dimension less that of occlusion is unusual or impossible.
gist-lip-length = The length of the upper lip is outside the plausible range.
gist-parcel-incomplete = A required item is missing from the parcel.
gist-prescription-missing = The written prescription is missing from the parcel.
gist-disinfection-not-stated = Disinfection details are missing.

## Parts.

gist-border = All checks of the border.
gist-wash = All checks of what a wash added.
gist-jaw-relation = The checks of the space between the jaws.
gist-parcel = The checks of the parcel.
gist-over-extension = Whether the border is too long, which no scan shows.
gist-cut = What lies at the cut between the parts of an impression.
