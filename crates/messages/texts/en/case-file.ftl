### What is wrong in a case file, in limits, or in another file of settings; and what the
### system says of a file.

in-line = line { $line }: { $fault }
of-file = { $path }: { $problem }
settings-unreadable = { $path }: cannot be read ({ $reason }); give { $wanted }
wanted-case-file = the path of a case file or of a file that it names
wanted-scanner-file = the scanner file that "archproof artefact" writes
wanted-protocol = the path of a protocol file
wanted-artefact = the description of the artefact, a TOML file
wanted-baseline = a file that 'archproof baseline DIR --write FILE' wrote
system-says = { $kind ->
   *[other] { $reason }
}

## The text itself.

toml-backslash = a backslash in a path: write C:/scans/upper.ply, or put the path in single quotes ('C:\scans\upper.ply')
toml-unknown = { $what ->
    [value] unknown value
   *[key] unknown key
} `{ $name }`{ $is ->
    [near] ; did you mean { $nearest }?
   *[far] .
} Known here: { $known }
toml-missing = missing field `{ $key }`
toml-twice = duplicate key
toml-kind = invalid type: { $given }, expected { $wanted }
toml-given-text = string { $value }
toml-given-number = { $kind ->
    [integer] integer
   *[fraction] floating point
} { $value }
toml-given-truth = boolean { $value }
toml-given-list = sequence
toml-given-table = map
toml-wanted-number = f64
toml-wanted-text = a string
toml-wanted-path = path string
toml-wanted-truth = a boolean
toml-wanted-list = a sequence
toml-wanted-point = an array of length 3
toml-wanted-table = { $words }
toml-wanted-parts = expected the name of a file (a string), or a list of the parts' files
toml-wanted-scanner = scanner is the path of a scanner file, or a table of length_uncertainty_mm and source
toml-other = { $kind ->
   *[other] { $text }
}

## The case.

case-no-id = the case needs a name of printable letters (a pseudonym, never a patient's name)
case-no-impression = no impression is named; give before_wash, wash or one_step under [maxillary] or [mandibular]
case-empty-jaw = no impression of this jaw is named; give before_wash, wash or one_step, or leave the section out
case-one-step-and-stages = one_step is given beside before_wash or wash; give one_step alone, or the stages of a wash technique
case-reading-not-finite = a reading under [jaw_relation] needs a finite number
case-value-and-readings = a vertical dimension is given both as a value and as readings; give one of the two
case-hours = the hours since the impression was taken must be a number, 0 or more
case-stop-not-finite = a tissue stop needs three finite numbers
case-stops-without-tray = tissue stops are given but no tray; they are places on the tray scan
case-relieved-alone = tray_relieved is the tray after relief, between two passes: give the tray's scan before relief as tray, and the impressions as before_wash and wash
case-sent-alone = a scan of the impression as it was sent is given, but none of it as it arrived; name that by the same key without _as_sent
case-no-parts = the list of the impression's parts is empty; name each part's scan, or one scan of the whole
case-parts-without-tray = an impression in parts needs the scan of its whole tray, on which they are laid; give it as tray
case-no-pieces = the list of the tray's pieces is empty; name each piece's scan, or one scan of the whole
case-pieces-not-whole = a tray in pieces cannot be the frame of an impression in parts, nor be compared with tray_relieved; join the pieces and scan the tray whole
case-unknown-landmark = '{ $name }' is no landmark; there are { $known }
case-landmark-side = the { $landmark } { $lies ->
    [aside] lies on the right or left: give its side
   *[midline] lies on the midline: leave its side out
}
case-mark-not-finite = a landmark's point needs three finite numbers
case-marked-twice = the { $landmark } is marked twice
case-time = scanned_at needs a date of the years 2000 to 2099 (ISO 8601), such as 2026-03-04, or a date and time, such as 2026-03-04T10:20:00+01:00; without an offset, the time counts as UTC
case-colour = '{ $text }' is no colour: give it as #rrggbb, as it looks in the scan
case-thickness = a tray of { $given } mm is not possible: give its thickness as { $least } to { $most } mm
case-uncertainty = an uncertainty of { $given } mm is not possible: give it as 0 mm or more
case-no-thickness = an uncertainty is given but no thickness of the tray

label-key = a key under [labels] needs 1 to { $longest } small letters, digits, _ or -
label-personal = labels never tell a person: leave out '{ $key }'
label-value = the label '{ $key }' needs 1 to { $longest } letters, digits, ., _ or -, without blanks
label-name = the label '{ $key }' looks like a name; write a code, such as op-3, or small letters if it is no name
label-too-many = more than { $most } labels are given; keep those that results are compared by

scanner-impossible = length_uncertainty_mm = { $given } is not possible: it lies between 0 and 1 mm (k = 2)

## Limits.

limit-unit-other = the unit of { $key } is { $own }, not { $given }; convert the value
limit-without-zones = { $key } cannot differ by zone
limit-impossible = { $key } = { $value } is not possible: { $why }
impossible-no-number = it must be a number
impossible-negative = it cannot be negative
impossible-less = { $first ->
    [greater] { $greater } ({ $other }) must be more than { $lesser } ({ $is })
   *[lesser] { $lesser } ({ $is }) must be less than { $greater } ({ $other })
}
impossible-cover-uncertainty = cover_uncertainty_mm ({ $is }) must not be more than thin_cover_mm less show_through_mm ({ $room })
impossible-share = a share is at most 100 %
impossible-confidence = a confidence is at most 1
impossible-median-edge = the material thickness is not measured on triangles coarser than { $coarsest } mm
impossible-required = it is 1 (required) or 0 (not required)
impossible-least-and-most = { $of ->
    [interocclusal] the least interocclusal distance must be less than the most
    [usual-interocclusal] the least usual interocclusal distance must be less than the most
    [lip] the least upper lip length must be less than the most
    [papilla] the least distance from papilla to lip line must be less than the most
   *[disinfection] the least time of disinfection must be less than the most
}
impossible-angle = the angle between two planes is at most 90°
impossible-stop-size = a tissue stop has a size
impossible-flange-depth = flange thickness is taken { $least } to { $most } mm below the border
