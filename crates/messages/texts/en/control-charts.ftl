### Control charts: of a folder of cases, and of a check standard; the frozen baseline.

## What is charted.

charted-noise = noise of the scan
charted-tray-fit = impression on its tray, root mean square
charted-thickness = median thickness
charted-share = share that fails
chart-upper = upper limit { $value }
chart-centre = centre { $value }
chart-lower = lower limit { $value }
chart-share = share { $value }
chart-individuals = individuals
chart-ranges = moving range
chart-averages = moving average, weight { $weight }
chart-head-centre = centre
chart-head-deviation = standard deviation
chart-head-lower = lower limit
chart-head-upper = upper limit

## Rules in full, and as they were broken.

rule-beyond-limits = one value beyond three standard deviations (Western Electric 1956)
rule-two-of-three = two of three values beyond two standard deviations on one side (Western Electric 1956)
rule-four-of-five = four of five values beyond one standard deviation on one side (Western Electric 1956)
rule-eight-in-a-row = eight values in a row on one side of the centre (Western Electric 1956)
rule-ewma = moving average of weight { $weight } beyond { $reach } of its standard deviations (Lucas and Saccucci 1990)
broken-beyond-limits = beyond the limits, { $side ->
    [above] above
   *[below] below
}
broken-two-of-three = two of three far off, { $side ->
    [above] above
   *[below] below
}
broken-four-of-five = four of five off, { $side ->
    [above] above
   *[below] below
}
broken-eight-in-a-row = eight in a row on one side, { $side ->
    [above] above
   *[below] below
}
broken-ewma = moving average outside its limits, { $side ->
    [above] above
   *[below] below
}

## What to look at.

look-noise-above = The scanner: clean its window, calibrate it, then scan the reference artefact ('archproof artefact').
look-noise-below = The scanner's settings: less noise may come from smoothing, which rounds edges. Scan the reference artefact.
look-tray-fit-above = The trays: is each the one that was scanned, unaltered since? Then the scanner's scale, on the reference artefact.
look-tray-fit-below = What changed in trays or scanner: a better fit may come from smoothed scans.
look-thickness-above = The choice of trays and how far they are seated: larger trays, or trays held too high.
look-thickness-below = The choice of trays and how they are seated: smaller trays, more pressure, or another material.
look-share-above = Which checks fail more often (above), then operators, material and scanner of these days.
look-share-below = Whether the same is still checked: other cases, another scanner, or checks that are no longer made.

## On the page over a folder.

drift-over-time = Over time
drift-lead = The latest impressions of each group in the order in which they were scanned, by { $sources }; where files without a stated time were copied, theirs may be the time of copying. Impressions before the wash and washes never share a chart. What lies outside is a reason to look at scanner, material or mix of cases, and no fault of an impression in itself.
drift-left-out = { $count ->
    [one] 1 impression belongs to a group beyond the first 100 and is on no chart.
   *[other] { $count } impressions belong to groups beyond the first 100 and are on no chart.
}
drift-too-few = Too few impressions for limits, or all alike: { $figures }.
drift-by-baseline = Limits: frozen baseline.
drift-baseline = It is of results with SHA-256 { $sha }, made with archproof { $version } and the limits "{ $limits }". A group that it does not hold is judged by its own points, as its chart says.
drift-by-own-points = Limits: from the points themselves.
drift-freeze = They follow the very drift that they are to find. Freeze them while all is well: 'archproof baseline DIR --write base.toml', then 'batch … --baseline base.toml'.
drift-rules = Rules: { $rules }. Standard deviation: mean moving range over 1.128; limit of the ranges: their centre times 3.267. The share that fails is counted over as many days as are needed to expect five that fail; its limits are three standard deviations for that number (p chart).
drift-no-signal = No chart says that anything has changed.
drift-signals = { $count ->
    [one] 1 signal.
   *[other] { $count } signals.
}
drift-silent = No signal.
drift-by-chance = By chance alone, about { $signals } are to be expected on so many points, and more where limits are made from few.
drift-said = What the charts say
drift-some-listed = Listed are the latest { $listed }; 'batch --json' prints all.
drift-head-when = when (UTC)
drift-head-rule = rule
drift-head-since = since
drift-head-limits = limits
drift-head-look-at = what to look at
drift-this-one = this one
drift-days = (days)
drift-baseline-limits = baseline
drift-own-limits = own points
drift-numbers = Numbers of the charts
drift-head-chart = chart
drift-head-outside = outside
drift-head-limits-from = limits from (impressions)
drift-span = { $count ->
    [one] 1 impression
   *[other] { $count } impressions
}, { $first } to { $last }.
drift-limits-from-baseline = Limits from the baseline.
drift-limits-from-points = Limits from these points.
drift-share-of = Share that fails, { $group }
drift-days-counted = { $count } groups of days.
drift-outside = { $count } outside.

## Where times of scanning are taken from.

time-by-case-file = the case file
time-by-scan-file = the last change of the scan file
time-by-check = the time of the check
time-not-known = not known
time-for = { $source } for { $counted }
timed-cases = { $count ->
    [one] 1 case
   *[other] { $count } cases
}
timed-measurements = { $count ->
    [one] 1 measurement
   *[other] { $count } measurements
}
timed-no-cases = no cases
timed-no-measurements = no measurements

## The frozen baseline.

baseline-other-limits = The baseline was made under other limits ({ $limits }): figures compare, the share that fails may not.
baseline-other-version = The baseline was made with archproof { $version }: where measuring has changed since, a shift may be the program's. Make it again from the same scans to be sure.
baseline-toml = { $problem }; write it again with 'archproof baseline DIR --write FILE'
baseline-number = [[{ $table }]] number { $number }: { $key } must be { $must }; write the file again with 'archproof baseline DIR --write FILE'
baseline-twice = [[{ $table }]] number { $number } repeats an earlier one; keep one of them
must-be-number = a number
must-be-positive = a number above 0
must-be-at-least = { $least } or more
must-be-at-most-of = no more than of
baseline-written = Limits of { $figures } figures in { $groups ->
    [one] 1 group
   *[other] { $groups } groups
} in { $path }
baseline-use = Use them: archproof batch FOLDER --out DIR --baseline { $path }

## A check standard over time.

control-title = { $standard } over time
control-kicker = Check standard over time
control-heading = { $standard }, { $count ->
    [one] 1 measurement
   *[other] { $count } measurements
}
control-impression = an impression
control-artefact = artefact { $name }
control-in = IN CONTROL: { $count } measurements of { $standard }; the latest ({ $latest }) is within limits from the first { $from }.
control-earlier = { $count ->
    [one] There is 1 earlier signal.
   *[other] There are { $count } earlier signals.
}
control-too-few = NOT JUDGED: { $count ->
    [one] 1 measurement of { $standard } is too few.
   *[other] { $count } measurements of { $standard } are too few, or all alike.
} Measure the standard again next time.
control-out = OUT OF CONTROL: { $count } measurements of { $standard }; at the latest ({ $latest }), { $spoken } of { $figures } figures have changed. Measure the standard again. If that is out, too, clean and calibrate the scanner, and check no case with it until the standard is in control.
control-scanned = Scanned { $first } to { $last } (UTC), by { $sources }. Limits are from the first { $from } measurements.
control-signal = measurement { $number } ({ $at }): { $value }, { $rule }
control-since = { $said }, since measurement { $number } ({ $at })
control-up-to = { $said }, up to measurement { $number }
control-beyond-limits = beyond three standard deviations, { $side ->
    [above] above
   *[below] below
} the centre
control-two-of-three = two of three beyond two standard deviations, { $side ->
    [above] above
   *[below] below
} the centre
control-four-of-five = four of five beyond one standard deviation, { $side ->
    [above] above
   *[below] below
} the centre
control-eight-in-a-row = eight in a row { $side ->
    [above] above
   *[below] below
} the centre
control-ewma = moving average outside its limits, { $side ->
    [above] above
   *[below] below
} the centre
control-by-chance = On so many points, about { $signals } signals are to be expected by chance alone.
control-not-judged = Not judged: { $figures }
control-figures = Figures
control-written-by = Written by archproof { $version }.
control-some-have-it = { $have } of { $all } measurements have it
control-least = { $count } measurements; { $least } are needed
control-alike = the first { $from } readings are alike, which gives no limits
control-head-figure = figure
control-head-unit = unit
control-head-deviation = sd
control-head-lower = lower
control-head-upper = upper
control-head-latest = latest
control-head-signals = signals

## Why a check standard could not be judged.

control-unreadable = { $path }: cannot be read ({ $reason }); give a folder with results of one standard
control-none = { $path }: holds no results of 'archproof check' or 'archproof artefact --json'; keep one for each measurement there
control-mixed = { $path }: is of { $found }, others are of { $wanted }; keep the results of one standard in a folder
control-no-time = { $path }: does not say when it was measured; measure again with this version
