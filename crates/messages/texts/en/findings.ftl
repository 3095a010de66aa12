### What is to be done at a finding. The border is in `border`, the tray in `tray`.

held-back = Held back until the question on this impression is answered: sides and places are not certain. Do nothing about it yet.
before-the-wash = Found before the wash; the wash that followed is judged by itself. It called for:

## Questions.

file-unclear = The { $which ->
    [tray] tray scan
   *[impression] impression scan
} could mean two things: { $question }. Export it again and check.
file-is-tray-too = Impression scan and tray scan are the same file. Give the scan of the empty tray as the tray scan.
file-mirrored = The impressions of this jaw before and after the wash fit one another only as in a mirror: one of their scans is mirrored, or they are of two mouths. Export both again without mirroring, and compare right and left with the impressions.
file-given-twice = The same scan file is given for two impressions of this case. Give each impression its own scan.
unit-inferred = The size of the { $which ->
    [tray] tray scan
   *[impression] impression scan
} is not that of an impression in mm, but of one in { $unit }, and it was read so. If that is right, check again with --unit { $unit }; if not, export it in mm.
unit-ambiguous = The size of the { $which ->
    [tray] tray scan
   *[impression] impression scan
} is not that of an impression in mm, but could be in { $units }. Check again with --unit and the right one, or export it in mm.
not-an-impression = Not an impression: { $what }.
check-file-and-unit = Check that the right file was given, and its unit (--unit).
give-impression-itself = Give the scan of the impression itself, not of a cast, a denture or the mouth.
for-edentulous-arches = This check is made for edentulous arches; look at this one by eye.
give-whole-arch = Give the scan of the whole arch; where only a half was scanned, scan the rest.
give-impression-in-tray = Give the scan of the impression in its tray; the empty tray is given with --tray. If this is an impression without its tray, look at it by eye.
give-every-part = Give every part of this impression, each scanned from all sides, and the scan of its whole tray.
export-each-scan = Export each scan into a file of its own.
give-edentulous = Give the scan of an edentulous impression in its tray.
arch-mismatch = Which jaw is it? It is declared as { $declared }, but the scan has the shape of a { $found } impression (confidence { $confidence }). Give the right scan or the right jaw.
which-jaw = Which jaw is it? Say so with --arch upper or --arch lower. The shape alone is not conclusive, and right and left depend on it.
which-way = Which way does the impression lie? Its axes are not certain, and right and left depend on them. Scan the whole arch again.

## The scan.

scan-coarse = The scan is too coarse. Export it at full resolution and check again.
tissue-area = Less tissue surface was scanned than an impression of this jaw has (scanned area, flange slopes included). If the impression is whole, scan all of it.
void-unseen = The scan is too coarse to show voids that would fail the impression. Rescan at higher resolution, or inspect ridge, notches, pads and border by eye with a light.
scan-quality-coarse = The scan is too coarse to show small voids in { $regions }. To check for them, rescan at higher resolution in a single pass.
scan-quality-rough = The scan is too rough to show shallow faults in { $regions }. To check for them, rescan with less noise in a single pass.
scan-quality-doubled = The scan is stitched badly, with two layers left, in { $regions }. Rescan in a single pass.
every-region = every region
these-regions = these regions: { $regions }

## The tissue surface.

too-close-to-tell = Too close to the limit to tell: look at it.
void-dry = Air was trapped here. Dry the place, so that the wash fills it.
void-at-seal = Air was trapped here, where the denture must seal. The cast will have a stone bead here: trim it if the surface around it shows the true shape. Otherwise dry the place, fill the void with wash and seat the impression again.
void = Air was trapped here. The cast will have a stone bead here that must be trimmed. If the bead is too large for the true surface to be seen around it, repeat the wash.
void-or-pressed = Look first whether the tray pressed here: the material over it is only { $cover } thick at the bottom of this pit. If it did not, treat the pit as a void.
void-or-landmark = Look first whether this hollow is the { $landmark } itself. If it is not, treat it as a void.
nodule = There is a bead here that does not look like tissue. Inspect it and compare it with the mouth; if it is not anatomy, remove it before pouring.
nodule-or-band = Look first whether this is the material between two bands of a frenum. If it is, leave it; if it is not, treat it as a nodule.
fold = This groove looks as if two fronts of material met without bonding. Inspect it. If the material folded or dragged, take a wash over it; if the mucosa has this furrow, leave it.
hole = Nothing was scanned here: scan this place again. If the impression itself has a hole, the wash must fill it.
hole-small = A small place was not scanned here. It is too small to hide a void that would fail the impression. Look at the place on the impression itself.

## Landmarks, each named as in `the-landmark`.

cut-short-scan-ends = The scan ends at the { $landmark }: scan this place again, well beyond it. Whether the impression itself reaches it was not judged.
cut-short-missed = The impression ends before the { $landmark }: take the impression again in a longer tray, or with the border built up.
cut-short-trough-open = The impression may end before the { $landmark }, which should close the trough there: see whether the scan or the impression is cut off. If the impression is, take the impression again in a longer tray, or with the border built up.
cut-short-at-border = The border passes at the { $landmark }: see whether the impression goes on beyond it. If it does not, take the impression again in a longer tray, or with the border built up.
cut-short-near = The border passes close behind the { $landmark }: see whether enough of the impression lies beyond it.
cut-short-covered = The impression may hold too little of the { $landmark }: see how much of it is there. If it is cut off, take the impression again in a longer tray, or with the border built up.
cut-short-border = The border is short at the { $landmark }: add border material there and { $mould }, { $then }.
obscured-by-hole = Nothing was scanned at the { $landmark }: scan it again. If material is missing there, the wash must fill it.
obscured-by-bump = A bump lies over the { $landmark }. Look at it; trim what does not belong to the tissue before pouring.
obscured-by-bump-before-wash = A bump lies over the { $landmark }. Look at it; trim what does not belong to the tissue and take the wash over it.
obscured-by-void = A void or fold lies over the { $landmark }. What it leaves on the cast must be trimmed; if the true surface cannot be seen around it, repeat the wash.
obscured-by-void-before-wash = A void or fold lies over the { $landmark }. Dry it, so that the wash fills it.
obscured-by-tray = Tray shows at the { $landmark }.
not-detected = The { $landmark } was not detected: { $why }. Look for it on the impression and, if it is there, mark it (key L in the window, or a landmarks file).

## The wash.

wash-thick = The wash is thicker than the limit over a twentieth of the surface. Check that the tray was fully seated when the wash was taken. If the jaw relation was recorded before the wash, record it again.
wash-uneven = The wash is much thicker in some places than in others: the tray was tilted or shifted when it was seated. Look at the wash map and check the border in the mouth.
wash-open = The wash did not correct this place.
wash-open-relieved = If the tray was relieved after the scan before the wash, there is more material than this figure says: look at it.
wash-open-unsure = Too close to tell whether the wash corrected this place: look at it.

## The way from the clinic.

sent-same-file = The same file is given as the scan of the impression as sent and as it arrived. Give each its own scan.
sent-other-scan = The scan given as sent is not a scan of this impression: { $why }. Give the scan that was made of this impression before it was sent, or leave it out. If it is that scan, the impression was distorted on its way: do not work from it.
changed-heel = The impression changed as a whole on its way: its { $side } heel lies { $moved } than when it was sent.
changed-heels = The impression changed as a whole on its way: its heels lie { $apart ->
    [nearer] nearer together
   *[farther] farther apart
} than when it was sent.
changed-size = Beside that it is { $percent } { $size ->
    [smaller] smaller
   *[larger] larger
}; addition silicone shrinks by 0.3 %, and the standard allows 1.5 %. Ask whether the tray was bent, squeezed in its parcel or laid down on its heels. If it stays so, do not work from it: a denture made from it will not seat.
changed-torn = Material is missing at the border that was there when the impression was sent. Look whether it is torn, or was trimmed on purpose. If it is torn, add border material there or take the impression again.
changed-pressed-in = The surface lies deeper than when the impression was sent. Look whether it is pressed in, torn out or scraped. If it does not spring back, do not work from this place.
changed-stuck-on = Something lies on the surface that was not there when the impression was sent. Look for dirt, a splinter or residues of disinfectant, rinse it off and scan again.
changed-area = The place covers { $area }.

## The case as a whole.

impression-age = The impression is older than the time for which its material is known to keep its size. Follow the maker's instructions; if the time has passed there too, take the impression again.
wash-missing = The { $jaw } impression is still before its wash. Take the wash and give its scan; if this impression needs none, give it as one-step (--stage one-step, or `wash` in the case file).
interarch-space = There is little room between the ridges for teeth and base: check the vertical dimension, and tell the laboratory if it is right.
ridge-angle = The ridges are far from parallel: dentures will tend to slide on them. Check that the record was taken without tilting a tray, and tell the laboratory.
jaw-relation-not-judged = The jaw relation was not measured: { $why }. Check the scan of the record, or the record by hand.
interocclusal-impossible = At rest the jaws always stand farther apart than in occlusion: one of the two vertical dimensions is wrong, or they were exchanged. Measure both again.
interocclusal-questioned = The interocclusal distance is outside the range that was observed. Measure both vertical dimensions again, three times each, and check the registration against speech and lips.
interocclusal-unusual = The interocclusal distance is outside the usual range: check both vertical dimensions.
interocclusal-unsure = Too close to the limit to tell. Measure both vertical dimensions three times and give the readings (vertical_dimension_readings_mm, rest_vertical_dimension_readings_mm).
lip-implausible = This upper lip length is outside the plausible range. Measure again from the base of the nose to the lip line at rest.
lip-too-short = This is too short for the length of an upper lip from the base of the nose. If it was measured from the incisive papilla, give it as papilla_to_lip_mm; otherwise measure again.
papilla-implausible = This distance is outside the plausible range. Measure again from the incisive papilla to the lip line at rest.
papilla-too-long = This is too long for the distance from the incisive papilla to the lip line. If it was measured from the base of the nose, give it as upper_lip_length_mm; otherwise measure again.

## The parcel.

not-packed = Not packed: { $part }. Add it, or remove it from the list.
parcel-no-list = There is no list of what must be in the parcel: give it as `expected` under [parcel].
parcel-no-record = The case holds no jaw relation: give the scan of the record or the vertical dimension under [jaw_relation], or say why there is none (no_jaw_relation_because under [parcel]).
parcel-one-jaw = The case holds one jaw only: add the impression of the other, or say why there is none (one_arch_because under [parcel]).
prescription-not-enclosed = Enclose the written prescription.
prescription-not-stated = Say whether the written prescription is enclosed (prescription = true), and enclose it.
disinfectant-not-stated = State what the set was disinfected with (disinfectant).
disinfection-not-stated = State what the set was disinfected with, and for how long (disinfectant, disinfection_min). If it was not yet, clean and disinfect it before it is handled.
disinfection-time-not-stated = State for how many minutes the set was disinfected (disinfection_min).
disinfection-time-unusual = The time of disinfection is unusual: compare it with the instructions of the makers of disinfectant and elastomer, which take precedence.
