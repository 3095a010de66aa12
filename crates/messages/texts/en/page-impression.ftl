### The report: chapters of one impression.

## Figures.

figure-uncertainty-not-stated = (uncertainty not stated)
figure-not-available = not available ({ $why })

## Columns of several tables.

head-figure = Figure
head-measured = Measured (k = 2)
head-limit = Limit
head-where = Where
head-what = What
head-what-it-was = What it was
head-area = Area
head-place = Place
head-moved = Moved (k = 2)
head-finding = Finding
head-part-of-arch = Part

## Cells of several tables.

cell-no-limit = no limit
cell-at-least = at least { $limit }
cell-at-most = at most { $limit }
cell-at-most-either-way = at most { $limit } either way
cell-at-most-in-all = at most { $limit } in all
cell-above = above { $limit }
cell-yes = yes
cell-no = no
cell-not-known = not known
row-least = least
row-p05 = 5th percentile
row-median = median
row-p95 = 95th percentile
row-uncertainty = uncertainty of a value (k = 2)
found-by-colour = found by its colour

## An impression.

more-of-impression = More of the { $impression }: other views, landmarks, tray, defects, scan

## Since the impression was sent.

since-sent = Change since the impression was sent
since-sent-no-limit = the protocol holds no such limit
since-sent-unused = The scan as sent was not compared: { $why }.
since-sent-ground = Addition silicone shrinks by 0.3 % in a week, which is 0.13 mm over 42 mm; the standard allows 1.5 %. After allowing for bend and size, { $share } of the tissue surface lies on the scan as sent.
since-sent-no-damage = No place changed by itself by more than its uncertainty ({ $uncertainty } on half of the surface).
since-sent-arch = Change of the arch as a whole
since-sent-larger = larger evenly
since-sent-judged-by-heels = judged by the heels
since-sent-heels-apart = heels farther apart, in all
since-sent-heel-toward-tissue = patient's { $side ->
    [right] right
   *[left] left
} heel toward the tissue, beside the front
since-sent-heel-outward = patient's { $side ->
    [right] right
   *[left] left
} heel outward, beside the front
since-sent-damage = Places that changed by themselves
since-sent-torn = missing at the border
since-sent-pressed-in = pressed in
since-sent-stuck-on = stuck on
since-sent-places = Places on the scan as sent
head-as-it-arrived = As it arrived
since-sent-found-again = found again
since-sent-gone = gone
since-sent-not-measured = not measured there

## The border.

along-border = Border
along-border-extremes = Extremes along the border
along-border-least = least { $figure }
along-border-greatest = greatest { $figure }
along-border-not-measured = could not be measured at any point of the border
along-border-length = Length of the border { $length }.
along-border-open = The scan does not show the border all the way round.
along-border-depth = Flange thickness is measured { $depth } below the border.
along-border-judged = Only stretches of at least { $least } are judged. Frenum notches, the posterior border and the last 10 mm before it are excluded, so an extreme value in the table is not necessarily a fault.
border-chart = { $impression }: the border unrolled, the labial midline in the middle.
border-chart-facing = { $impression }: the border unrolled, the labial midline in the middle, { $facing }.
border-chart-table = The same figures are in { $table }.
border-chart-label = Chart of the border, { $impression }

## Material thickness.

thickness = Material thickness
thickness-over-tray = Material thickness over the tray
thickness-measured-over = Thickness was measured over { $area } of tissue surface, flange slopes included. Such areas are larger than the classic denture-bearing areas: by about 60 % in the upper and 100 % in the lower jaw.
thickness-by-tray-scan = It was measured by the registered scan of the empty tray.
thickness-by-both-sides = It was measured by the thickness of material and tray together, less a stated tray thickness.
thickness-by-colour = It was measured by the colours of tray and material; how thick the material is, they do not tell.
thickness-tray-lies = The tray lies on { $share } of the outer surface, root mean square distance { $rms }, its place known to ± { $uncertainty } (k = 2).
thickness-tray-stated = The tray's thickness was stated as { $thickness }; the thickness is not known opposite material that laps over the tray's outer face.
colour-tray-shows = By colour, tray ({ $tray }, { $source ->
    [found] found on the outer surface
   *[given] as given
}) shows over { $shown } of { $judged }; the material is { $material }.
colour-apart = They lie { $difference } apart in CIELAB and { $separation } standard deviations of the scan's colours; a third colour covers { $other }.
colour-beside-map = Beside the thickness map: bare by both { $both }, by colour alone { $colour }, by cover alone { $cover }.
patches = Patches of thin material
head-patch = Patch
head-least-thickness = Least thickness (k = 2)
head-patch-area = Area (k = 2)
patch-stop = tissue stop, as it should show
patch-by-colour = show-through, by colour
patch-tray-edge = bare tray edge
patch-around = { $patch } around { $around }
patch-area-and-length = { $area }, { $length } long

## Landmarks.

landmarks = Landmarks
landmarks-in-full = Landmarks in full
landmarks-of-jaw = Landmarks of the jaw
head-number = No.
head-landmark = Landmark
head-recorded = Recorded
head-place-uncertainty = Position uncertainty (k = 2)
head-confidence = Confidence
head-source = Source
status-recorded = recorded
status-reached = place reached, not verified
status-cut-short = cut short
status-obscured = obscured
status-not-found = not found
landmarks-no-place = no place
landmarks-not-seen = not seen
landmarks-detected = found on the surface
landmarks-marked = marked by an operator

## The tray.

tray-position = Tray
tray-position-compared = Tray position compared with the position that would have given the most even thickness
head-deviation = Deviation
tray-to-right = to the patient's right
tray-to-front = to the front
tray-tilted-front = tilted, front nearer to the tissue
tray-tilted-right = tilted, patient's right nearer to the tissue
tray-turned-right = turned, front toward the patient's right
tray-wider = wide, over the width of the arch
tray-evenness = Thickness varies with a standard deviation of { $found }; in the best tray position it would be { $best }.
tray-bend = Bend of the tray between its scan and the impression, beside its front
limb-end-toward-tissue = { $side ->
    [right] right
   *[left] left
} limb, end: toward the tissue
limb-end-outward = { $side ->
    [right] right
   *[left] left
} limb, end: outward
limb-middle-toward-tissue = { $side ->
    [right] right
   *[left] left
} limb, middle: toward the tissue
limb-middle-outward = { $side ->
    [right] right
   *[left] left
} limb, middle: outward
tray-by-part = The tray in each part of the arch, medians
head-edge-to-border = Tray's edge to border (k = 2)
head-thickness = Material thickness (k = 2)
tray-no-border-here = no border here
tray-not-known-here = not known here

## Relief.

places-on-tray = Places on the tray
places-on-tray-how = These places are on the empty tray as it was scanned. Distances run straight from the middle of the place: to the nearest point of the rim on the lip and cheek side, and to the middle of that rim at the front. Relieve the tray out of the mouth, with eye and dust protection, and check for sharp edges.
places-on-tray-to-relieve = Places on the tray to relieve
head-relieve-by = Relieve by (k = 2)
head-wall-there = Wall there (k = 2)
head-wall-left = Wall left (k = 2)
head-to-outer-rim = To the outer rim (k = 2)
head-to-front-rim = To the rim's middle at the front (k = 2)
wall-one-face = the scan shows one face of the wall
rim-not-found = rim not found
relieved-scan-unused = The scan of the relieved tray tells nothing: { $why }.
tray-after-relief = The tray after relief, by its second scan
head-taken-off = Taken off (k = 2)
head-room-made = Room made (k = 2)

## Defects.

defects = Defects of the tissue surface
defects-limits = Those that miss a limit are findings; the limits of each kind stand in the table of limits.
head-defect = Defect
head-width = Width (k = 2)
head-depth-or-height = Depth or height (k = 2)
head-opening = Area of its opening
defect-void = void
defect-nodule = nodule
defect-fold = fold
defect-hole = hole in the scan
defect-no-depth = a hole has no depth

## The scan.

scan = Scan
scan-of-impression = The scan of the impression
scan-of-tray = The scan of the empty tray
scan-no-tray = No scan of the empty tray was given.
head-fact = Fact
head-value = Value
scan-file = file
scan-checksum = checksum (SHA-256)
scan-unit = unit of its numbers
scan-unit-assumed = { $unit } (assumed from the size: nobody named it)
scan-unit-named = { $unit } (as named by the operator)
scan-size = triangles, vertices
scan-components = connected parts
scan-open-loops = loops of open edges
scan-branching-edges = edges of three triangles or more
scan-flat-triangles = triangles without area
scan-median-edge = median edge
scan-mesh-area = area of the whole mesh
scan-exact = { $value } (exact, of this mesh)
scan-exact-with-limit = { $value } (exact, of this mesh), limit { $limit }
scan-noise = noise along the normal (standard deviation)
scan-noise-value = { $noise } (its own uncertainty is not stated)
scan-no-noise = it could not be determined
scan-outer-surface = outer surface scanned too
scan-colour = colour
scan-free-text = free text in the file
scan-carries-text = yes: it may name a person
scan-joints = The joints of the tray
head-pieces = Pieces
head-gap = Gap
head-step = Step
scan-parts = The parts of the impression
head-part-of-impression = Part
head-on-tray = On the tray
head-distance-from-it = Distance from it (root mean square)
head-lies-within = Lies within (k = 2)
scan-part-share = { $share } % of its surface
scan-parts-not-joined = the parts were not joined
scan-cut-apart = The impression was cut apart.
scan-parts-laid = Its parts were laid on the scan of the whole tray, in whose numbers all places are given; the cuts are { $width } wide.
scan-on-reading = On reading: { $warning }
scan-by-region = Scan quality by region (properties of the mesh, given without uncertainty)
head-scanned = Scanned
head-median-edge = Median edge
head-noise = Noise (standard deviation)
head-least-void = Smallest void that can be seen
scan-least-void = { $across } across, { $depth } deep

## The wash.

wash-chapter = Wash
wash-over-maxillary = maxillary, wash over the impression before it
wash-over-mandibular = mandibular, wash over the impression before it
wash-thickness-of = Thickness of the wash
wash-measured-over = Measured over { $area } of scanned tissue surface.
wash-added = Material was clearly added over { $added } of it, and the surface is clearly lower than before over { $lowered }; differences within the uncertainty do not count.
wash-map-is = The map is { $map }.
wash-no-places = Before the wash there was no show-through and no thin place.
wash-places-before = Places before the wash
wash-new-places = New on the wash: { $places }.
head-thickness-before = Least thickness before
head-thickness-now = Least thickness now (k = 2)
head-under-wash = Under the wash
wash-not-scanned = the wash was not scanned there
wash-place-resolved = resolved
wash-place-open = still open
wash-place-unclear = too close to call

# Trays of the shelf, tried in for a new impression.
next-tray-heading = Trays for the new impression
next-tray-trays = The trays and the room that each leaves
next-tray-column-tray = Tray
next-tray-column-least = Least clearance (k = 2)
next-tray-column-median = Median clearance (k = 2)
next-tray-column-wanted = Tissue with { $from } to { $to } mm
next-tray-column-touches = Touches
next-tray-nowhere = nowhere
next-tray-other-jaw = a tray of the other jaw
next-tray-not-placed = it could not be tried in
next-tray-how = Each tray lies where its clearance from the tissue that this impression shows is most even. Its edge is not compared with the border: the new impression may have to go beyond it.
