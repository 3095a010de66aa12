### Studies of scanner and measuring: artefact, gauge, repeats, agreement, trays of a shelf.

study-line = { $path }, line { $line }: { $fault }

## Names of compared figures. The English name is that of the result itself.

compared-of = impression { $number }: { $name }
compared-error = error of { $quantity }
compared-scanned-area = scanned area
compared-cover = cover
compared-median = median
compared-5th-percentile = 5th percentile
compared-least = least
compared-area-judged = area judged
compared-border-length = border length
compared-flange-height = flange height
compared-flange-thickness = flange thickness
compared-border-radius = border radius
compared-value = value
quantity-diameter = diameter
quantity-centre-distance = centre-distance
quantity-step-height = step-height
quantity-dispersion = dispersion
size-between = { $quantity } { $from } to { $to }

## A reference artefact.

artefact-head = { $verdict }: artefact { $artefact }, { $scans ->
    [one] 1 scan
   *[other] { $scans } scans
}
artefact-conforming = CONFORMING
artefact-borderline = BORDERLINE
artefact-not-conforming = NOT CONFORMING
artefact-not-judged = NOT JUDGED (the description states no limit)
artefact-scale = scan { $scan }: lengths differ by { $off } % from those certified
artefact-interchangeable = scan { $scan }: the spheres stand so evenly that one may be taken for another
artefact-size-head = size, mm
artefact-scan-head = scan
artefact-certified = certified
artefact-found = found
artefact-error = error ± U (k = 2)
artefact-limit-head = limit
reading-conforming = conforming
reading-borderline = borderline
reading-not-conforming = NOT CONFORMING
reading-not-judged = not judged
artefact-mean-error = mean error { $mean }, standard deviation { $sd }
artefact-mean = mean { $mean }, standard deviation { $sd }
artefact-sd-between = ({ $from } to { $to } with 95 % confidence)
artefact-legend = Uncertainty: of the certified size and of the fit, which takes the points to err independently. Dispersion: the shell that holds 95 % of a sphere's points.
artefact-scanner-source = artefact { $artefact }, certificate { $certificate }, checked { $date }: { $lengths ->
    [one] 1 length
   *[other] { $lengths } lengths
} in { $scans ->
    [one] 1 scan
   *[other] { $scans } scans
}, root mean square error { $error } mm
artefact-step-not-found = { $path }: step { $step }: { $problem }; scan it again, or see whether lower, upper and reach_mm are right
artefact-no-face = { $seen } vertices are seen on its { $face ->
    [upper] upper
   *[lower] lower
} face, fewer than { $least }
artefact-too-few = of { $wanted } spheres { $seen } are seen in the scan; each must be scanned over a third of it at least, and the unit be right
artefact-other = the spheres in the scan do not stand as those of the artefact ({ $seen } were seen, within 5 % of scale); the artefact may be another, or the scan be mirrored

## Its description.

artefact-no-id = the artefact needs a name of printable letters
artefact-no-sphere = an artefact has one sphere at least; give it under [[sphere]]
artefact-sphere-name = a sphere needs a name of printable letters that no other sphere has
artefact-centre = a centre needs three finite numbers, mm
artefact-size = a size must be finite and more than 0, mm
artefact-uncertainty = an uncertainty must be finite and not less than 0, mm (expanded, k = 2)
artefact-limit = a limit must be finite and more than 0, mm
artefact-between = a distance is between two different spheres that are named under [[sphere]]
artefact-centres-elsewhere = the distance is certified as { $certified } mm, but the centres of its spheres lie { $nominal } mm apart
artefact-step-name = a step needs a name of printable letters that no other step has
artefact-step-place = a step needs lower, upper and facing of three finite numbers each; facing is where its faces look, not 0 0 0
artefact-step-reach = the faces of a step lie beside each other, farther apart than twice reach_mm, which is more than 0
artefact-faces-elsewhere = the step is certified as { $certified } mm, but its faces lie { $nominal } mm apart along facing
artefact-step-unplaced = to find a step, three spheres are needed that do not stand in line

## A gauge study.

gauge-head = Crossed gauge study: { $operators } operators, { $parts } parts, { $repeats } repeats
gauge-source = source
gauge-freedom = freedom
gauge-sum-of-squares = sum of squares
gauge-mean-square = mean square
gauge-part-parts = parts
gauge-part-operators = operators
gauge-part-operators-by-parts = operators by parts
gauge-part-repeats = repeats
gauge-part-repeatability = repeatability
gauge-part-reproducibility = reproducibility
gauge-part-gauge = gauge
gauge-part-total = total
gauge-interaction-pooled = operators by parts: F { $f }, p { $p }; pooled with the repeats
gauge-interaction-apart = operators by parts: F { $f }, p { $p }; kept apart
gauge-no-interaction = operators by parts: no F, since repeats never differ
gauge-variation = variation
gauge-sd = sd
gauge-confidence = 95 % confidence
gauge-of-study = % study variation
gauge-of-variance = % of variance
gauge-at-most = at most { $most }
gauge-below-zero = none: far below 0
gauge-categories = Distinct categories: { $count }
gauge-by-ranges = By averages and ranges instead: repeatability { $repeatability }, reproducibility { $reproducibility }, gauge { $gauge }, parts { $parts }; gauge { $percent } % of the study variation, { $categories } categories
gauge-nothing = No figure could be studied.
gauge-repeat-sd = repeat sd
gauge-operators-sd = operators
gauge-gauge-sd = gauge sd
gauge-parts-sd = parts sd
gauge-gauge-percent = gauge %
gauge-categories-head = categories
gauge-of-figure = { $figure }: { $said }
gauge-not-studied = Not studied: { $figure } ({ $why })
gauge-legend = In the car makers' measurement systems analysis a gauge below 10 % of the study variation is good, from 10 to 30 % it may do, above it does not; it should tell 5 categories apart. The same shares are asked of tolerance and distance. Where a variance is estimated at 0, the standard deviation is at most as given, with a one-sided confidence of 95 %.
gauge-least-and-most = least { $least }, most { $most }
gauge-least = least { $least }
gauge-most = most { $most }
gauge-against-both = Gauge against limits ({ $limits }): 6 sd are { $percent } % of the tolerance; { $distance }
gauge-against-one = Gauge against limits ({ $limits }): { $distance }
gauge-mean-on-limit = the mean of the readings lies on the limit
gauge-of-distance = 3 sd are { $percent } % of the distance of the mean from the nearest limit
gauge-lacking = { $lacking } of { $all } readings lack it
gauge-unreadable = { $path }: cannot be read ({ $reason }); give a CSV file with the columns operator, part, repeat, value, or a folder of operator folders
gauge-file-for-folder = { $path }: is a file where a folder is wanted; a study is kept as OPERATOR/PART/REPEAT, where each REPEAT is a scan (STL, PLY, OBJ) or a result folder
gauge-no-repeat = { $path }: is neither a scan nor a result folder; a study is kept as OPERATOR/PART/REPEAT, where each REPEAT is a scan (STL, PLY, OBJ) or a result folder
gauge-no-column = there is no column '{ $name }'; the first line names the columns operator, part, repeat, value, with commas between
gauge-no-cell = the { $name } is missing
gauge-no-number = the value '{ $value }' is no number; write it as 1.25
gauge-twice = operator, part and repeat are those of line { $line }; give each reading once
gauge-unequal = it has { $columns } columns, the first line { $first }; write numbers with a point, not a comma
gauge-no-text = it is no text in UTF-8; save the table so
gauge-no-row = it is no row of a CSV table
study-too-small = a gauge study needs two operators, two parts and two repeats at least
study-unequal = operator "{ $operator }" read part "{ $part }" { $readings } times, not { $wanted } times as elsewhere; every operator reads every part equally often
study-no-variation = every reading is the same, which says nothing about the gauge
study-not-finite = a reading of operator "{ $operator }" on part "{ $part }" is no finite number

## Repeated scans.

repeat-head = { $count } scans of one impression
repeat-aligned = scan { $scan } aligned with the first: rms { $rms } mm over { $share } of it, placed to ± { $uncertainty } mm
repeat-spread = Standard deviation at a place: pooled { $pooled }, median { $median }, 95th percentile { $p95 } mm, over { $area }
repeat-no-spread = Not judged: spread (nothing could be compared)
repeat-one-place = (of one place alone it lies between { $from } and { $to } times that, with 95 % confidence)
repeat-nowhere = They differ nowhere by more than noise and alignment explain ({ $detectable } mm)
repeat-places = They differ by more than noise and alignment explain ({ $detectable } mm) in { $count ->
    [one] 1 place
   *[other] { $count } places
}:
repeat-place = { $id } { $place }: { $apart } mm apart over { $area } mm²
repeat-stands-out = { $line }, scan { $scan } stands out
repeat-off = off the tissue surface
repeat-more = (and { $count } smaller)
repeat-title = Repeatability (in the sense of ISO 5725), { $freedom } degrees of freedom
repeat-mean = mean ± (95 %)
repeat-sd = sd
repeat-limit = limit
repeat-range = range
repeat-critical = critical
repeat-beyond = BEYOND
repeat-legend = limit: two scans differ by less in 95 of 100. critical: so many scans lie within it in 95 of 100 (ISO 5725-6, factor { $factor }), { $by }. Map: viridis, dark 0 to bright { $most } mm; grey where a scan shows no surface
repeat-known-beyond = by the standard deviation of the earlier study. Where the range is BEYOND it, scan again; until then take the median
repeat-known-within = by the standard deviation of the earlier study: every range is within it
repeat-own = by these scans' own standard deviation; --known judges the ranges by that of an earlier study
repeat-some-have-it = { $have } of { $all } scans have it
repeat-too-few = one scan alone says nothing of repeatability; give two or more of one impression
repeat-does-not-fit = this scan does not lie on the first: only { $share } % of it fits; it may be of another impression, or be mirrored
repeat-not-known = { $path }: is no repeat.json of this version ({ $reason }); give one that 'archproof repeat' wrote

## Agreement of raters.

agreement-head = { $cases } cases, { $raters } raters, verdicts { $verdicts }
agreement-raters = raters
agreement-cases = cases
agreement-agreement = agreement
agreement-kappa-head = kappa (95 % interval)
agreement-kappa = { $kappa } ({ $from } to { $to })
agreement-all = all
agreement-not-known = not known beyond chance: one verdict only, or no case in common
agreement-rater = rater
agreement-missed = missed (95 % interval)
agreement-false-alarms = false alarms (95 % interval)
agreement-share = { $count } of { $of } ({ $from } to { $to } %)
agreement-no-case = no such case
agreement-legend = kappa: agreement beyond chance, 1 where all agree, 0 as by chance. Of two raters Cohen's, with the interval of Fleiss, Cohen and Everitt 1969; of all Fleiss', with that of the jackknife over cases.
agreement-unreadable = { $path }: cannot be read ({ $reason }); give a CSV file with a column 'case' and one for each rater
agreement-no-table = is no table ({ $reason })
agreement-columns = the first line names a column 'case' and one for each of two raters or more, all different
agreement-unknown = '{ $reference }' is no rater; the table holds { $raters }

## Trays of a shelf in a mouth.

