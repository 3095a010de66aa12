### Drawings of the border: chart and sections.

drawing-heading = Case { $case }, { $jaw ->
    [maxillary] maxillary
    [mandibular] mandibular
   *[unknown] unknown
} { $stage ->
    [first-pass] first pass
    [wash] wash
   *[single] single
}

## The figures along the border.

station-height = flange height
station-thickness = flange thickness
station-radius = border radius
station-overlap = overlap past the tray

## Which way it is seen.

facing-right-on-the-right = the patient's right on the right, as in the pictures
facing-right-on-the-left = the patient's right on the left, as in the pictures
drawing-midline = midline

## The border unrolled.

chart-title = { $heading }: the border unrolled
chart-seen = Seen from the tissue side: { $facing }.
chart-outer = Labial and buccal border, the back at both ends
chart-lingual = Lingual border
chart-axis = mm along the border from the { $midline } (R: to the patient's right, L: to the patient's left)
chart-row = { $figure }, mm
chart-row-at-depth = { $figure }, mm, { $depth } mm below the border
chart-row-none = { $row }: none ({ $why })
chart-frenum = frenum, { $depth } mm deep

## Why a stretch has no figure, in few words.

gap-tissue-side-only = tissue side only
gap-scan-ends = scan ends here
gap-no-surface = not scanned
gap-no-crest = no crest line here
gap-flange-too-low = flange too low
gap-no-roll = no roll
gap-no-tray = no tray scan
gap-at-the-cut = cut apart here
gap-off-the-summit = line off the summit

## The legend of the chart.

legend-measured = measured, with its expanded uncertainty (k = 2)
legend-no-less = limit: no less
legend-no-more = limit: no more
legend-no-figure = no figure, with the reason
legend-fails = fails ■
legend-undecided = cannot be decided ◆
legend-note = note ●
legend-marks = marks stand at the worst station of a finding, numbered as in result.json

## A section.

section-place = { $heading }. Section { $at } mm of { $length } mm round the border (s = { $s }).
section-toward-ridge = toward the ridge
section-toward-lip = toward lip or cheek
section-toward-tongue = toward the tongue
section-toward-front = toward the front
section-toward-back = toward the back
section-axis = seating axis, toward the tissue
section-border = border
section-crest = crest
section-height = height { $figure }
section-thickness = thickness { $figure }
section-radius = radius { $figure }
section-arch = Where the section lies, seen as in the pictures
section-figure-at-depth = { $figure }, { $depth } mm down
section-none = none: { $why }
section-limit = limit: { $limits }
section-stretch = Stretch { $range }
section-found = found: { $figure }, { $limit }
section-tissue-face = tissue face
section-outer-face = outer face
section-tray = tray
section-circle = circle through the roll
section-overlap = overlap, to the nearest tray
section-uncertainties = Uncertainties are expanded (k = 2).

## How to scan.

scanning-drawing = Drawing: { $heading }
scanning-tissue-side = tissue side
scanning-outer-side = outer side
scanning-handle = the handle
scanning-empty = clean, empty
scanning-now = scan it now
scanning-too-late = cut: too late
scanning-fine = fine: the void shows
scanning-coarse = coarse: it does not
scanning-good = good: one layer
scanning-hole = hole
scanning-two-layers = two layers
scanning-rough = rough
scanning-bad = bad: scan again
