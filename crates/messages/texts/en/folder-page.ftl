### The page over a folder of cases: its frame, counts, failures, distributions and cases.

## The frame.

folder-title = { $cases ->
    [one] 1 case
   *[other] { $cases } cases
} - impressions checked
folder-kicker = Summary of a folder of cases
folder-heading = { $cases ->
    [one] 1 case
   *[other] { $cases } cases
}, { $impressions ->
    [one] 1 impression
   *[other] { $impressions } impressions
}
folder-footer = Cases go by pseudonyms. Every row is in summary.csv and findings.csv.
folder-accepted = { $accepted } of { $of } cases that were read are accepted: { $share }, 95 % interval { $interval }.
folder-none-read = No case could be read.
folder-unread = { $count } could not be read.

## What it covers.

folder-covers = What this page covers
folder-sha = Folder, by SHA-256
folder-cases = Cases
folder-cases-counted = { $cases }, of which { $unread } could not be read
folder-impressions = Impressions
folder-impressions-counted = { $impressions }, of which { $current } are to be worked from and { $superseded } were superseded by a wash
folder-scanned = Scanned (UTC), first to last
folder-span = { $first } to { $last }
folder-time-source = Time of scanning, by source
folder-limits = Limits, by name and SHA-256
folder-version = Version
folder-shards = Shards
folder-one-shard = shard { $number } of { $of }: the other cases are not here
folder-no-shards = all cases in one run
folder-all-shards = all { $of } shards, joined
folder-covers-note = The time of scanning is what the case file states (scanned_at) or else the last change of the scan file, which copying may set anew. The SHA-256 of the folder is of what was given of each case and the name of its results, whatever limits were used.

## Headings of tables.

folder-head-what = what
folder-head-value = value
folder-head-verdict = verdict
folder-head-cases = cases
folder-head-share-read = share of the cases that were read
folder-head-interval = 95 % interval
folder-head-current = impressions to be worked from
folder-head-comes-first = what comes first
folder-head-share-undecided = share of the undecided
folder-head-verdict-on-it = verdict on it
folder-head-impressions = impressions
folder-head-share = share
folder-head-group = group
folder-head-accepted = accepted
folder-head-of = of
folder-head-check = check
folder-head-figure = figure
folder-head-least = least
folder-head-percentile = { $percent }th percentile
folder-head-median = median
folder-head-most = most
folder-head-case = case
folder-head-jaw = jaw
folder-head-first-step = first thing to do
folder-head-report = report
folder-head-why = why

## Verdicts.

folder-verdicts = Verdicts
folder-accept = ready for the next step, subject to what was not judged
folder-rework = correct the places that fail, then take the wash or repeat it
folder-retake = take the impression again
folder-undecided = something is missing, or too close to call
folder-intervals = Intervals are score intervals (Wilson 1927). For cases like these, such an interval contains the true share 95 times in 100.
folder-why-undecided = Why cases are undecided
folder-because-question = a question comes first (which jaw, which way, which unit)
folder-because-missing = something is missing that a verdict needs
folder-because-look = too close to its limit to call, or for a person to see
folder-because-parcel = the parcel is not complete
folder-because-not-measured = not every impression could be measured
folder-superseded = Impressions that a wash has superseded
folder-superseded-note = The wash decides: these are counted here alone.
folder-superseded-table = Superseded impressions
folder-by-group = Accepted, by group
folder-by-group-note = Impressions to be worked from. An interval is wide where a group is small.
folder-groups-left-out = Labels with too many values are not listed: they are in summary.csv.
folder-all-judged = Every check was made everywhere.
folder-not-judged-note = Impressions to be worked from on which a check was not made, or not along the whole border or surface. No verdict covers these. 'archproof explain CODE' says what each is.
share-of-none = of none
share-interval = { $low } to { $high }

## Failures.

folder-failures = Most frequent failures
folder-nothing-failed = Nothing failed.
folder-failures-note = Findings that fail, with their count and the share that they and those above make of all.
folder-by-check = By check
folder-by-check-and-zone = By check and zone
folder-the-whole = the whole
folder-all-others = all others
folder-where = Where on the arch
folder-where-note = Findings that fail, counted in squares of 4 mm, in the impression frame: tissue side toward you, front up. Grey lines: the borders of some of the impressions.
folder-placed = { $jaw }: { $count ->
    [one] 1 finding
   *[other] { $count } findings
} with a place
chart-so-far = { $share } so far
chart-where = Where findings fail, { $jaw }
chart-front = front
chart-findings = { $count ->
    [one] 1 finding
   *[other] { $count } findings
}
chart-thumbnail = Case { $case }, tissue side, { $places ->
    [one] 1 place fails
   *[other] { $places } places fail
}
chart-no-figures = no figures
chart-spread = median { $median } mm, { $impressions ->
    [one] 1 impression
   *[other] { $impressions } impressions
}; highest bar: { $most }

## Distributions.

folder-spreads = Distributions
folder-spreads-note = One figure for each impression, counted to 0.01 mm; the dashed line is their median. Uncertainties are in summary.csv.
folder-spreads-of = Distributions, { $jaw }
spread-thickness = Median thickness, mm
spread-least-thickness = Least thickness, mm
spread-flange-height = Median flange height, mm
spread-flange-thickness = Median flange thickness, mm

## Cases.

folder-worst = Cases needing most attention
folder-worst-note = Most failing findings first, then least thickness. View of the tissue side, front at the top, coloured by material thickness (dark is thin); rings where findings fail, dashed where other surface lies before them.
folder-failing = { $count } failing: { $checks }
folder-thickness-not-measured = thickness not measured
folder-no-picture = No picture: which way the scan faces was not found.
folder-not-read = Not read: { $count }
folder-more-not-read = And { $count } more, each a row of { $table }.
folder-all-cases = All cases
folder-some-cases = The { $listed } cases that need most attention; { $more } more are in { $table }.
folder-cases-order = What needs most attention comes first. The same rows are in { $table }.
folder-case-unread = could not be read
folder-open = open

## Groups of impressions.

group-maxillary = maxillary
group-mandibular = mandibular
group-first-pass = before the wash
group-wash = wash
group-single = one-step
group-unknown = jaw not known
group-without-label = { $key }=(none)
