### The desk: scans of one case, and what each was recognised as.

## What is read on it.

desk-caution = An aid to inspection, not a medical device; the licensed clinician decides. Nothing leaves this computer. Give each case a pseudonym, never a name.
desk-list = List of cases (Esc)
desk-drop = Drop scans here, or choose them
desk-what = STL, PLY or OBJ: the impressions of one case, the scans of their empty trays, the jaw-relation record.
desk-what-else = A case file or a result folder can be dropped, too, and a folder of cases, which becomes a list.
desk-choose-scans = Choose scans …
desk-choose-folder = Choose a folder of cases …
desk-scan-files = Scans
desk-scans = Scans of one case
desk-recognised = What each scan was recognised as, by its surface. Correct what is wrong.
desk-step = { $step } …
desk-pseudonym = Pseudonym of the case
desk-pseudonym-hint = left empty, a neutral one
desk-never-a-name = never a name
desk-check = Check
desk-clear = Clear the desk
desk-head-scan = Scan
desk-head-is = What it is
desk-head-surety = How sure
desk-head-why = Why
desk-more-questions = and { $more } more

## What is missing.

desk-no-scan = There is no scan (STL, PLY, OBJ) among them.
desk-one-folder = The scans of a case must lie in one folder. Put them together, then drop the folder.
desk-looking = The scans are being looked at.
desk-open-rows = Say what the rows marked 'open' are; then the case can be checked.
desk-no-impression = No scan shows an impression of this case.

## What a scan is, and how surely.

role-one-step = { $jaw ->
    [maxillary] maxillary impression, one-step
   *[mandibular] mandibular impression, one-step
}
role-tray = { $jaw ->
    [maxillary] maxillary tray
   *[mandibular] mandibular tray
}
role-relieved-tray = { $jaw ->
    [maxillary] maxillary tray after relief
   *[mandibular] mandibular tray after relief
}
role-record = jaw-relation record
role-left-out = left out
surety-clear = clear
surety-likely = likely
surety-stated = stated
surety-open = open
