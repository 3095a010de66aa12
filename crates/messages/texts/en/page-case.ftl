### The case as a whole: jaw relation, parcel, appendix, methods, limits and provenance.

## Limits beside a figure.

page-at-least = at least { $limit }
page-at-most = at most { $limit }
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
