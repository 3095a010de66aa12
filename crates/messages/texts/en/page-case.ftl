### The case as a whole: jaw relation, parcel, appendix, methods, limits and provenance.

## Limits beside a figure.

page-between = at least { $least }, at most { $most }
page-no-limit = no limit
page-figure = Figure
page-measured-so = Measured (k = 2)
page-limits = Limits

## Jaw relation.

page-jaw-relation = Jaw relation
page-relation-of-jaws = Relation of the jaws
page-vertical-dimension = vertical dimension of occlusion, as given
page-rest-vertical-dimension = vertical dimension at rest, as given
page-interocclusal-distance = interocclusal distance, from these
page-upper-lip-length = upper lip length from the base of the nose, as given
page-papilla-to-lip = incisive papilla to lip line, as given
page-least-space = least space between the ridges
page-most-space = most space between the ridges
page-ridge-angle = angle between the ridges
page-record-not-judged = Not judged: the record ({ $why }).
page-vertical-dimension-by = The vertical dimension of occlusion was found { $by }.
page-centric-relation-by = Centric relation was found { $by }.
page-record-shows = The scan of the record shows where the jaws were held. Whether that is centric relation, and whether the vertical dimension suits the patient, cannot be read from it.

## How a vertical dimension or centric relation was found.

found-from-the-rest-position = from the rest position
found-by-lip-contact = by lip contact
found-from-an-existing-denture = from an existing denture
found-by-speech = by speech
found-by-swallowing = by swallowing
found-in-another-way = in another way
found-by-guiding-the-jaw = by guiding the jaw
found-by-a-gothic-arch-tracing = by a gothic-arch tracing

## The chart of the space between the ridges.

page-space-chart = Space between the ridges along the upper crest line, the patient's right on the right; the dot on the small arch is where it is least
page-space-limit = limit, least
page-space = space, mm

## Parcel.

page-parcel = Parcel
page-no-list = There is no list of what must be in the parcel.
page-contents-of-parcel = What must be in the parcel
page-part = Part
page-state = State
page-packed = packed
page-missing = MISSING
page-papers = Papers and disinfection
page-what = What
page-stated = Stated
page-prescription = written prescription
page-enclosed = { $is ->
    [yes] enclosed
    [no] NOT enclosed
   *[unknown] not stated
}
page-disinfectant = disinfectant
page-disinfectant-stated = { $is ->
    [yes] stated
   *[no] NOT stated
}
page-disinfection-time = time of disinfection
page-not-stated = not stated
page-no-record-reason = reason for no jaw-relation record
page-one-jaw-reason = reason for one jaw alone
page-reason = { $is ->
    [yes] given
   *[no] not given
}
page-disinfect = Disinfect before handling and shipping, by local regulations and the makers' instructions; label each impression with the case's pseudonym and its stage.

## Appendix.

page-appendix = Appendix: before the wash
page-appendix-lead = A wash followed these impressions, and is judged by itself. They change no verdict.
page-findings-before-wash = Findings before the wash

## Methods.

page-methods = Methods
page-method-material = Material thickness
page-method-material-is = At a point of the tissue surface, the distance to the nearest point of the tray; zero or negative where tray is at or through the surface.
page-method-height = Flange height
page-method-height-is = In a section, from the crest point to the border point along the seating axis.
page-method-thickness = Flange thickness
page-method-thickness-is = In a section, from tissue face to outer face, across the seating axis, at a stated depth below the border.
page-method-radius = Border radius
page-method-radius-is = Radius of the least-squares circle through the roll of the border.
page-method-overlap = Overlap
page-method-overlap-is = From a border point to the nearest point of the tray: how far material goes past the tray's edge.
page-method-uncertainty = Uncertainty
page-method-uncertainty-is = Expanded, with coverage factor k = 2. It holds what the scan's noise, the tray's place and its bend add. What a real elastomer or a scanner's own distortion adds is not included.
page-method-decision = Decision rule
page-method-decision-is = That of ISO 14253-1, in general terms: a figure conforms only if it meets its limit by more than its uncertainty and fails only if it misses it by more. Anything in between is too close to call and is never accepted in silence.
page-method-unknown = What cannot be known from an impression alone
page-method-unknown-is = Whether the vestibule was deeper or wider than the material reached; whether lip, cheek and tongue were moved while it was soft; whether a low stretch of border is a broad muscle attachment and a low flange a low ridge; whether the border is too long. Compare those places with the mouth.

## Limits of the protocol.

page-limits-of = Limits: { $protocol }
page-limits-of-case = Limits that the case was judged by
page-limit = Limit
page-value = Value
page-if-missed = If missed
page-source = Source
page-level = { $level ->
    [fail] fails
    [undecided] not accepted on this measurement
   *[note] noted
}
page-criterion-number = Number:

## Provenance.

page-provenance = Provenance
page-made-by-and-from = What this result was made by and from
page-which = Which
page-program = program
page-commit = built from commit
page-commit-not-stated = not stated by the build
page-protocol = limits
page-protocol-sum = limits, SHA-256
page-limits-changed = limits that differ from the program's own
page-none-changed = none
page-scanner-uncertainty = scanner: uncertainty of a length (k = 2)
page-scanner-source = scanner: source of that uncertainty
page-scanned-at = scanned, as the case file states (UTC)
page-scan-sum = scan of the { $impression }, SHA-256
page-part-sum = scan of part { $part } of the { $impression }, SHA-256
page-tray-sum = scan of the tray of the { $impression }, SHA-256
page-record-sum = scan of the jaw-relation record, SHA-256
page-durations = How long each step took; impressions are measured side by side
page-step = Step
page-duration = Duration

## What each limit of a protocol limits.

limit-show-through-mm = Cover at or below which tray counts as showing through.
limit-thin-cover-mm = Cover below which material counts as thin.
limit-least-spot-area-mm2 = Patches smaller than this are taken for noise.
limit-relief-room-mm = Room for material that relief of the tray is to make.
limit-tray-wall-left-mm = Least thickness of the tray's wall that relief may leave.
limit-show-through-share-percent = Share of the tissue surface that may show tray before relief and a wash no longer mend it.
limit-stop-cover-mm = Most cover that a declared tissue stop may have.
limit-stop-size-mm = Side length of a tissue stop.
limit-cover-uncertainty-mm = Most expanded uncertainty with which cover may be judged.
limit-maxillary-tissue-area-mm2 = Least tissue surface of a maxillary impression.
limit-mandibular-tissue-area-mm2 = Least tissue surface of a mandibular impression.
limit-median-edge-mm = Coarsest triangles that may be judged, as the median edge.
limit-most-tray-shift-mm = How far the tray may have stood off the place of most even cover.
limit-most-tray-tilt-deg = How far it may have been tilted or turned from there.
limit-most-tray-bend-mm = How far a limb of the tray may have bent between its scan and the impression.
limit-most-tray-joint-mm = Gap or step at the joint of a tray in pieces.
limit-most-arch-change-mm = How far a heel of the impression may have moved, or both apart, since it was sent.
limit-most-local-change-mm = How far a place of its surface may have moved by itself since it was sent.
limit-most-outer-excess-mm2 = Most material on the outer faces of the tray, beyond what laps over its rim.
limit-most-tray-width-mm = How much wider or narrower it may be than suits, over the width of the arch.
limit-void-mm = Width up to which a void is let pass outside critical zones.
limit-void-critical-mm = Width up to which a void is let pass in critical zones and beside the border.
limit-void-critical-redo-mm = Width from which a void there is too large to be trimmed off the cast.
limit-nodule-mm = Width up to which a nodule is let pass outside critical zones.
limit-nodule-critical-mm = Width up to which a nodule is let pass in critical zones and beside the border.
limit-fold-mm = Length up to which a fold is let pass outside critical zones.
limit-fold-critical-mm = Length up to which a fold is let pass in critical zones and beside the border.
limit-hole-mm = Width up to which a hole is let pass: a wider one is scanned again.
limit-hole-critical-mm = Width from which a smaller hole is noted in critical zones and beside the border.
limit-border-margin-mm = How far from the edge of the tissue surface the border is taken to reach.
limit-smallest-void-seen-mm = Width of the smallest void that every part of the scan must be able to show.
limit-scan-noise-mm = Most noise of a part of the scan, as a standard deviation.
limit-double-layer-percent = Most of a part that may have been scanned twice with two layers left.
limit-orientation-confidence = Least confidence, 0 to 1, that arch and sides must be recognised with.
limit-flange-depth-mm = Depth below the border at which flange thickness is taken.
limit-least-border-stretch-mm = Shorter stretches of border are taken for noise.
limit-under-extension-mm = Depth by which the border may fall below its neighbourhood.
limit-flange-height-mm = Least height of a flange; 0 for no limit.
limit-least-flange-thickness-mm = Least thickness of a flange.
limit-most-flange-thickness-mm = Most thickness of a flange.
limit-border-radius-mm = Least radius of the border's roll.
limit-least-border-overlap-mm = Least distance by which the tray stays short of the border.
limit-most-border-overlap-mm = Most distance by which material goes past the tray's edge.
limit-border-asymmetry-mm = How much lower a flange may be than the other side's.
limit-border-drop-mm = How much lower a wash's border may be than the first pass's.
limit-wash-most-mm = Most thickness of a wash, as its 95th percentile.
limit-wash-spread-mm = Most difference between the thick and the thin parts of a wash.
limit-landmark-margin-mm = How far the border passes beyond a landmark, at least.
limit-landmark-reach-mm = Least distance from a notch, tuberosity or pad to the border beyond it, below which the impression ends before it.
limit-landmark-covered-percent = Least share of a landmark's own area that must lie inside the border.
limit-landmark-clearance-mm = How far from a landmark's reach a defect or the end of the scan spoils it.
limit-landmark-search-mm = How far from where an unseen landmark should be it is taken to be lost with what is there.
limit-least-interarch-space-mm = Least space between the crest lines.
limit-most-ridge-angle-deg = Most angle between the planes of the crest lines.
limit-least-interocclusal-distance-mm = Least interocclusal distance that is let pass unquestioned.
limit-most-interocclusal-distance-mm = Most interocclusal distance that is let pass unquestioned.
limit-least-usual-interocclusal-distance-mm = Least interocclusal distance that is usual.
limit-most-usual-interocclusal-distance-mm = Most interocclusal distance that is usual.
limit-reading-uncertainty-mm = Expanded uncertainty (k = 2) of one reading taken at the chair.
limit-least-upper-lip-length-mm = Shortest plausible upper lip, from the base of the nose.
limit-most-upper-lip-length-mm = Longest plausible upper lip, from the base of the nose.
limit-least-papilla-to-lip-mm = Least plausible distance from the incisive papilla to the lip line.
limit-most-papilla-to-lip-mm = Most plausible distance from the incisive papilla to the lip line.
limit-most-addition-silicone-h = Longest time, in hours, for which addition silicone is known to keep its size.
limit-most-alginate-min = Longest time for which alginate may wait before it is poured or scanned.
limit-wash-required = Whether a jaw needs its wash before the set is worked from: 1 or 0.
limit-prescription-required = Whether a written prescription must go with the parcel: 1 or 0.
limit-disinfection-required = Whether disinfectant and exposure time must be stated: 1 or 0.
limit-jaw-relation-required = Whether a jaw-relation record, or the reason for none, must be there: 1 or 0.
limit-both-arches-required = Whether both jaws, or the reason for one, must be there: 1 or 0.
limit-least-disinfection-min = Least usual time of disinfection.
limit-most-disinfection-min = Most usual time of disinfection.
