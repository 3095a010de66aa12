### The sheet that goes with the parcel, and the return note.

## The page.

sheet-title = Case { $case }: { $word }
sheet-case = Case { $case }
sheet-region = The sheet
sheet-purpose = Impression check: goes with the parcel
sheet-time-not-recorded = Time of the check: not recorded.
times-checked = Checked { $checked } UTC; { $scans }
times-scans = scan files of { $first } UTC
times-scans-between = scan files of { $first } to { $last } UTC
times-scans-unknown = time of the scan files not known
sheet-checked-by = Checked by
sheet-date = Date
sheet-returned-because = Returned because
sheet-source = { $program } · limits: { $limits } (SHA-256 { $sum }…)
sheet-cautions = An aid to inspection, not a medical device; the licensed clinician decides. Disinfect before handling and shipping. Makers' instructions take precedence.
sheet-safety = Relieve a tray only out of the mouth, with eye and dust protection; then feel for sharp edges. This page is health data: keep it as such.

## What is to be done.

sheet-tasks = What to do, in this order
sheet-no-tasks = Nothing fails and nothing is in question in the checks that were made.
sheet-in-the-report = in the report
sheet-notes-elsewhere = Notes that change no verdict: { $notes }, { $place }.
sheet-more-tasks = And { $more } more to do, { $place }.
sheet-more-tasks-and-notes = And { $more } more to do, and { $notes } notes, { $place }.
sheet-more-places = { $places }; and { $more } more

## The pictures.

sheet-legend = R, L: the patient's right and left. Numbered ring: a place that fails; dashed: a question. Dark: thin material over the tray; bright: 3 mm or more; grey: not measured.
sheet-hidden = Hidden in these views: { $ids }. { $legend }
sheet-more-impressions = { $more } more impressions are { $place }. { $legend }
sheet-no-picture = No picture: which way the scan faces was not found.
sheet-picture = { $name }, { $view }; marked: { $ids }
view-front-up = front up
view-tissue-side-up = tissue side up
view-front = front
side-letter = { $side ->
    [right] R
   *[left] L
}

## What was not judged, and the parcel.

sheet-all-judged = Not judged: nothing; every check was made.
sheet-not-judged = Not judged ({ $count }, see the report): { $checks }.
sheet-not-judged-more = Not judged ({ $count }, see the report): { $checks } and { $more } more.
sheet-not-judged-count = Not judged: { $count } checks; see the report.
sheet-parcel-not-stated = Parcel: the case does not state what is in it.
sheet-parcel-complete = Parcel: nothing is missing.
sheet-parcel-missing = Missing from the parcel
sheet-parcel-more = { $what } (and { $more } more { $place })

## The return note.

return-purpose = Return note: laboratory to clinic
return-word = please reply
return-tasks = Please do this, in this order
return-no-tasks = Nothing is asked of the impressions themselves.
return-parcel-missing = Please complete the parcel
return-legend = R, L: the patient's right and left. Numbered ring: a place to correct; dashed: a place to look at. Dark: thin material over the tray; bright: thick; grey: not measured.
return-in-the-text = in the text that goes with this page
return-answered-by = Answered by
return-answer = Answer
return-head = Case { $case }: return note
return-lead = { $count ->
    [0] Nothing is asked of you.
    [one] The work cannot go on yet: one thing is asked of you.
   *[other] The work cannot go on yet: { $count } things are asked of you.
}
return-pictures = The page with this text shows the numbered places in a picture.
return-cautions = This note comes from an aid to inspection, not a medical device; the licensed clinician decides. Disinfect before handling and shipping. Makers' instructions take precedence.

## What is asked of a clinic, where the instruction speaks of the program.

clinic-file-unclear = Tell us which scan is which, and send each in a file of its own.
clinic-unit-unclear = Tell us the unit of the scan, or export it again in mm.
clinic-not-an-impression = Send the scan of the whole impression in its tray; this scan shows something else.
clinic-which-jaw = Tell us which jaw this scan shows.
clinic-other-colour = Another colour shows here. Look whether it is the tray, and tell us.
clinic-scan-tray = Scan the empty tray from all sides, unaltered as it was for this impression, and send that scan.
clinic-send-wash = Send the wash of this impression with its scan. If it needs none, tell us.
clinic-jaw-relation = Send the jaw-relation record with its scan, or state the vertical dimension; or tell us why there is none.
clinic-list = Send a list of what belongs in the parcel.
clinic-one-jaw = The case holds one jaw only: add the impression of the other, or say why there is none.
clinic-disinfectant = State what the set was disinfected with.
clinic-disinfection = State what the set was disinfected with, and for how long. If it was not yet, clean and disinfect it before it is handled.
clinic-disinfection-time = State for how many minutes the set was disinfected.
clinic-prescription = Enclose the written prescription.
clinic-readings = Too close to tell. Measure both vertical dimensions three times and give the readings.
clinic-relief-unknown = If the tray was relieved here after it was scanned, scan the relieved tray and send that scan.
clinic-altered = The surface here lies inside the wall of the tray as it was scanned: the tray was relieved or reshaped there after its scan. Look at the impression: no tray may show here. For a figure, scan the relieved tray and send that scan.
clinic-too-close = Too close to tell: look at it.
clinic-wash-thick = The wash is thick over a twentieth of the surface. Check that the tray was fully seated when the wash was taken. If the jaw relation was recorded before the wash, record it again.
clinic-scan-coarse = The scan is too coarse. Export it at full resolution and send it again.
clinic-scan-arch = Scan the whole arch, both sides of every flange, and send that scan; or look at the border yourself.
clinic-cover-uncertain = The material thickness is too uncertain to judge by. Scan more of the back of the tray, with less noise, and send that scan.
clinic-thin-unsure = Too close to tell from the scan: look at the impression here. If the material is not thin, scan this place again at higher resolution. If it is:
clinic-stop-covered = Material covers this tissue stop. If the stop was relieved before the wash, tell us; if it was not, the tray was not fully seated here and the impression must be taken again.
