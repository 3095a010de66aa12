### The tray and the material over it: what is to be done.

## Relief. Every instruction to relieve or shorten a tray ends with `safety`.

safety = Grind only out of the mouth, with eye and dust protection; feel for sharp edges afterwards and smooth them.
relief = Relieve the tray here by about 1 mm and a little beyond the place.
relief-by = Relieve the tray here by { $depth } at the deepest and a little beyond the place.
relief-thin-wall = That leaves about { $left } of the tray's wall: reinforce it from outside first, or use another tray.
relief-through-wall = That may go through the tray's wall: use another tray.
relief-scan-unusable = The scan of the relieved tray tells nothing: { $why }. Give the right scan, or look at the tray itself.
relief-done = The scan of the relieved tray shows { $depth } taken off here, which makes room of { $room }; { $wanted } are wanted.
relief-enough = That is enough.
relief-more = Relieve the tray by another { $depth } here.
relief-then = Clean and dry it, put adhesive on the bared tray and let it dry, { $then }.
relief-unknown = If the tray was relieved here after it was scanned, this figure is too low: scan the relieved tray and check again.

## Tray that shows, and thin material. After a colon the order to relieve follows.

show-through-edge = A tray edge shows through over { $length } of its length.
show-through-unsure = Too close to tell from the scan: look at the impression here. If no tray shows, scan this place again at higher resolution. If tray shows:
show-through-unsure-edge = Too close to tell from the scan: look at the impression here, along { $length } of a tray edge. If no tray shows, scan this place again at higher resolution. If tray shows:
show-through-altered = The surface here lies inside the wall of the tray as it was scanned: the tray was relieved or reshaped there after its scan. Look at the impression: no tray may show here. For a figure, scan the relieved tray and check again.
show-through-colour = The tray's colour shows here. Look at it. If it is the tray:
show-through-colour-unsure = Judging by colour, tray may show here: look at the impression. If it does:
colour-beside-cover = The tray's colour shows here, but the thickness map finds material over it. Look at the impression. If no tray shows, something else has its colour. If tray shows, check that the scan or thickness of the tray is that of this tray; then:
show-through-too-much = Too much tray shows to be corrected by relief and a wash. Take the impression again, in a tray with room all round, held off the tissue by tissue stops or a spacer.
show-through-perhaps-too-much = So much tray shows that relief and a wash may not correct it. Consider taking the impression again in a tray with more room, with tissue stops or a spacer.
other-colour = Another colour shows here: look at the impression. To have the scan judged by colour, give the tray's colour with --tray-colour. If this is the tray:
thin-cover = The material is thin here. Look whether it is torn, lifted off the tray, or pressed the mucosa aside. If not, leave it as it is.
thin-cover-unsure = Too close to the limit to tell from the scan: look at the impression here. If the material is not thin, scan this place again at higher resolution. If it is:

## Material thickness that was not judged, or not surely.

cover-not-judged = The material thickness was not judged: { $why }.
cover-by-thickness = Thickness was calculated from the tray thickness you entered, and only over { $area } where the tray's outer face is visible; the rest of the tissue surface, flanges above all, was not judged. Scan the empty tray and give it with --tray to judge all of it.
cover-by-colour-alone = Whether tray shows was judged by the scan's colours; how thick the material is was not.
cover-gap = Over { $area } of the { $part } the material thickness was not judged: { $why }.
cover-scan-tray = Scan the empty tray and give it with --tray (in a case file: tray = "..."). If it cannot be scanned, give its thickness with --tray-thickness, or scan in colour.
cover-scan-all-sides = Scan the impression from all sides, the back of the tray too.
cover-scan-all-sides-or-other = Scan the impression from all sides, the back of the tray too. If the tray scan then does not fit, check that it shows this very tray.
cover-mirrored = Export both scans again without mirroring, and compare right and left with the impression in hand.
cover-other-tray = Check that the tray scan shows this very tray, empty; if not, scan it.
cover-scan-back = Scan more of the back of the tray, the handle too.
cover-full-resolution = Export the scan at full resolution.
cover-scan-pieces = Scan every piece of the tray from all sides, and the impression from all sides, too.
cover-scan-this-tray = Scan this tray itself, empty, and give it with --tray (in a case file: tray = "..."). A tray that was relieved, cut or shaped with heat is no longer the tray on the shelf.
cover-which-tray = Which of them is it? Give that scan with --tray (in a case file: tray = "..."). If both are scans of one tray, take one off the shelf.
cover-look = Look at the impression by eye.
cover-scan-whole-tray = Scan the whole tray.
cover-look-there = Look there by eye. If the tray was relieved or shaped after its scan, scan this tray itself once it is empty.
cover-uncertain = The material thickness is too uncertain to judge by. Scan more of the back of the tray, with less noise, and check again.
cover-uncertain-by-thickness = The material thickness is too uncertain to judge by. Measure the tray with a caliper at several places and give its thickness with that uncertainty (--tray-thickness-uncertainty), or scan the empty tray.

## How the tray lay.

tissue-stop-not-scanned = No surface was scanned at this tissue stop. Scan this place again.
tissue-stop-under-wash = The wash lies over this tissue stop. Whether the tray was fully seated is judged on the impression before the wash.
tissue-stop-covered = Tray not fully seated here: material covers the tissue stop. Take the impression again and seat the tray until this stop touches.
tissue-stop-covered-in-wash = Material covers this tissue stop. If the stop was relieved before the wash, say so (stops_relieved = true); if it was not, the tray was not fully seated here and the impression must be taken again.
tissue-stop-unsure = Look at this tissue stop: the tray should show. If material covers it, the tray was not fully seated here and the impression must be taken again.
tray-seating = Compared with the position of even material thickness, the tray lay { $how }. If the impression is taken again, try the tray in dry first so that it lies over the ridge, and seat it evenly with tissue stops.
seating-right = too far to the patient's right
seating-left = too far to the patient's left
seating-front = too far to the front
seating-back = too far to the back
seating-tilted-front = tilted, nearer to the tissue in front
seating-tilted-back = tilted, nearer to the tissue at the back
seating-tilted-right = tilted, nearer to the tissue on the patient's right
seating-tilted-left = tilted, nearer to the tissue on the patient's left
seating-turned-right = turned, with its front toward the patient's right
seating-turned-left = turned, with its front toward the patient's left
tray-wide = The tray is wider than suits this arch: its outer walls stand off and its inner parts come near. If the impression is taken again, choose the next size or adapt the tray.
tray-narrow = The tray is narrower than suits this arch: its outer walls come near to the flanges. If the impression is taken again, choose the next size or adapt the tray.
tray-bent = The tray bent between its scan and the impression: at its { $side } end it lay { $moved } than its scan shows. The material thickness is measured from the tray as it lay. If the tray sprang back when it was taken out, the impression is distorted: take it again in a stiffer tray.
tray-bent-slightly = The tray bent between its scan and the impression: at its { $side } end it lay { $moved } than its scan shows. The material thickness is measured from the tray as it lay. Try the tray for stiffness before the next impression.
moved-nearer = nearer to the tissue
moved-farther = farther from the tissue
moved-outward = farther outward
moved-inward = farther inward
tray-joint = There is a { $what ->
    [gap] gap
   *[step] step
} between pieces { $one } and { $other } of the tray: they were not fully joined, or came apart. The material thickness is measured from the pieces as they lay. If they moved while the material set or later, the impression is distorted: join the pieces and take it again.
outer-excess = Material up to { $thickness } thick lies on the outer faces of the tray. Trim it off with a sharp blade, cutting away from the border and without lifting material off the tray, so that the jaw-relation material bonds to the tray and the parts separate cleanly.
