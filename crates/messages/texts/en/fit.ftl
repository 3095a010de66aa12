### Which stock tray to take: what `archproof fit` prints, and its page.

## What to do.

fit-take = TAKE { $tray } ({ $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
}): it touches nowhere.
fit-adapt = NONE FITS ({ $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
}): { $tray } comes nearest. Adapt it:
fit-bend = Bend it away from the { $place }: it reaches { $depth } mm into the tissue over { $area }.
fit-shorten = Shorten it at the { $place }: its edge reaches { $past } mm past the border.
fit-individual = NONE FITS ({ $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
}): make an individual tray. No tray on the shelf comes near enough to be adapted.
fit-none-of-this-jaw = NONE FITS: there is no { $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
} tray on the shelf. Scan those that you have.
fit-try = Try the tray in the mouth before you use it; the licensed clinician decides.

## The table.

fit-head-tray = tray
fit-head-least = least, mm
fit-head-median = median
fit-head-uncertainty = ± (k = 2)
fit-head-wanted = { $from } to { $to } mm
fit-head-edge = edge to border, least
fit-head-touches = touches
fit-other-jaw = a tray of the other jaw
fit-not-placed = could not be tried in: no tray is seen in its scan
fit-how = Clearance from the tissue to the inside of each tray, in the place where it is most even. The column "{ $wanted }" is the share of the tissue over the tray with that clearance.
fit-positive = The scan shows the mouth or a cast: the distance is to where the scan ends, which is not the border.

## The page.

fit-page-kicker = Which of the trays on the shelf fits
fit-page-pictures = Each tray in the mouth
fit-page-lines = The colours show the clearance from the tissue to the inside of the tray; grey where no tray lies under it. The whole line is the border, the dashed line the edge of the tray. A numbered ring marks where the tray touches.
fit-page-lines-positive = The colours show the clearance from the tissue to the inside of the tray; grey where no tray lies over it. The whole line is where the scan ends, the dashed line the edge of the tray. A numbered ring marks where the tray touches.
fit-page-scale = clearance, mm ({ $from } to { $to } wanted)
fit-page-picture = Clearance that { $tray } leaves, { $view }. { $touches ->
    [0] It touches nowhere.
    [one] One place where it touches is marked.
   *[other] { $touches } places where it touches are marked.
}
fit-page-touch = { $place }: { $depth } mm into the tissue, over { $area }
fit-page-written-by = Written by { $program }. An aid to inspection, not a medical device; the licensed clinician decides.
