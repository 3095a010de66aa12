### Findings, notes, and the pictures that show where they are.

## Findings.

page-findings = What fails and what is open, most urgent first
page-no-findings = Nothing fails, and nothing is left open in the checks that were made.
page-decision = The value after ± is the measuring uncertainty (95 % coverage, k = 2). A check fails only when the value is beyond its limit even after allowing for that uncertainty, and passes only when it is within the limit by the same margin. Anything between is reported as too close to call.
page-further-places = Further places that fail or are open
page-further-places-in-full = These further places with their pictures and sections
page-close-pictures = Close pictures are made of the most urgent findings only.
page-severity = { $severity ->
    [fail] fails
    [borderline] cannot be decided
   *[note] note
}
page-measured = Measured { $figure }.
page-listed-as = Listed as { $name } in the tables below.
page-do = Do:
page-section = Section of { $finding }
page-drag = Drag it sideways to see all of it.
page-section-caption = Section at the worst place of { $finding }, with its dimensions.

## Notes.

page-notes = Notes
page-notes-lead = Worth knowing; they change no verdict.
page-notes-in-full = The notes with their pictures and sections
page-number = No.
page-where = Where
page-measured-and-limit = Measured (k = 2), limit

## The pictures.

page-no-pictures = No pictures: which way the scan faces was not found.
page-colours = Colours show the material thickness, the distance from tissue surface to tray; grey where it is not known.
page-no-colours = Grey: the material thickness was not measured.
page-sides = R and L are the patient's right and left.
page-marks = A ring marks a place, a line a stretch of border: { $fail }, { $borderline }, { $note }.
page-other-views = Other views
page-view-name = { $view ->
    [tissue] Tissue side
    [outer] Outer side
   *[back] Back
}
page-view = { $view ->
    [tissue] view of the tissue side, front at the top
    [outer] seen from the tray's side, front up
   *[back] seen from behind and above, tissue side up
}
page-picture = { $impression }, { $view }. { $what ->
    [landmarks] Landmarks
   *[findings] Findings
} marked: { $ids }.
page-none-marked = none
page-hidden = Hidden in this view: { $ids }.
page-close-picture = Close picture of { $finding }: { $place }, { $up }
page-wash-picture = { $impression }, tissue side, coloured by the thickness of the wash
page-wash-colours = Dark where the wash is thin or none, bright where it is thick; grey where its thickness is not known.
page-tray-picture = The tray of the { $impression }, seen from inside, front at the top. Places to relieve: { $ids }.
page-tray-colours = The empty tray from inside, front at the top; coloured where little material lay over it.

## Scales of colours, with their limits.

page-scale-thickness = thickness, mm
page-scale-material-thickness = material thickness, mm
page-scale-limit = { $limit ->
    [shows] shows
   *[thin] thin
}
page-scale-end = or more
