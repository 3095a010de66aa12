### The border: where on it, how it is moulded, and what is to be done about it.

## Where on the border. Lengths are along it; sides are the patient's.

midline-labial = labial midline
midline-lingual = lingual midline
midline-back = midline at the back
stretch-behind-pad = behind the { $side ->
    [right] right retromolar pad
    [left] left retromolar pad
   *[none] retromolar pad
}
stretch-on-side = from { $near } to { $far } mm { $side } of the { $midline }
stretch-across = from { $from } mm { $side } to { $to } mm { $other } of the { $midline }
stretch-from-midline = from the { $midline } to { $to } mm { $side } of it
stretch-at-midline = at the { $midline }

## The movements that mould it, as orders.

movement-lip-down = draw the lip outward and down
movement-lip-up = draw the lip outward and up
movement-cheek-down = draw the cheek outward and down
movement-cheek-up = draw the cheek outward and up
movement-jaw-aside = have the patient open wide, close, and move the jaw from side to side
movement-open-and-close = have the patient open wide and close
movement-say-ah = have the patient say 'ah'
movement-purse-lips = have the patient purse the lips and draw the cheeks in
movement-tongue-out = have the patient put the tongue out and to both corners of the mouth

## What goes before and after, as orders within a sentence.

mould-again = mould it again
mould-again-by = mould it again ({ $movement })
then-take-wash = then take a wash
then-repeat-wash = then repeat the wash

## What is to be done.

border-asymmetry = The flange is lower { $range } than on the other side. Jaws are naturally asymmetric: compare both vestibules in the mouth. If this one is deeper than the border reaches, add border material and { $mould }, { $then }. If the border on the other side presses into its vestibule, that side is too long: reduce it there and mould it with the wash.
border-change = The border is lower { $range } than before the wash: it was cut back, or the wash displaced it. If that was not intended, add border material there and { $mould }, { $then }.
border-not-judged = The border was not judged: { $why }.
border-scan-arch = Scan the whole arch, both sides of every flange, and check again; or look at the border yourself.
border-scan-round = Scan the border all the way round, from the outer side too.
border-near-tray = The tray ends close to the border { $range }. If the border is to be moulded again, first shorten the tray there to 2 to 3 mm short of the vestibule; then add border material and { $mould }.
border-far-from-tray = Material extends far past the tray { $range }. If it bends under a finger, it needs support: lengthen the tray there (clean and dry it, put adhesive on it and let it dry), add border material and { $mould }, { $then }; or take the impression in a larger tray.
border-sharp = Knife edge: the border is sharp { $range }. Add border material there and { $mould } so that it rolls over, { $then }.
border-may-be-sharp = The border may be sharp { $range }: feel it. If it is a knife edge, add border material there and { $mould }, { $then }.
flange-low = The flange is low { $range }. Add border material there and { $mould }, { $then }.
flange-low-or-ridge = The flange is low { $range }: look in the mouth. If the vestibule is deeper than the border reaches, add border material there and { $mould }, { $then }. If the ridge itself is low, leave it as it is.
flange-thin = The flange is thin { $range }. Add border material there and { $mould }, { $then }.
flange-may-be-thin = The flange is thin { $range }. If it bends under a finger, add border material there and { $mould }, { $then }.
flange-thick = The flange is thick { $range }. Reduce it from the outside, { $then } and { $mould } while the wash is soft.
flange-may-be-thick = The flange is thick { $range }. If it overfills the vestibule, reduce it from the outside, { $then } and { $mould } while the wash is soft.
border-low = The border is low { $range }: compare it with the mouth. If the vestibule is as shallow there, leave it as it is. If it is deeper, add border material and { $mould }, { $then }.
border-dips = The border dips { $range }, where a frenum may lie: compare it with the mouth. If this is the frenum, leave it as it is. If it is not, the border is short there: add border material and { $mould }, { $then }.
border-short = The border is short { $range }. Add border material there and { $mould }, { $then }.
border-may-be-short = The border may be short { $range }: look at the impression there. If the border goes on past the scan, scan this stretch again; if it is short and the vestibule is deeper, add border material and { $mould }, { $then }.
tray-at-border = Tray shows at the border { $range }: shorten the tray there to 2 to 3 mm short of the vestibule, clean and dry it, put adhesive on the bared tray and let it dry; add border material and { $mould }, { $then }.
tray-may-be-at-border = Too close to tell from the scan: look at the border { $range }. If no tray shows, scan this stretch again at higher resolution. If tray shows, shorten the tray there to 2 to 3 mm short of the vestibule, clean and dry it, put adhesive on the bared tray and let it dry; add border material and { $mould }, { $then }.
scan-ends = No border that turns over was scanned { $range }. Scan this stretch again, from the outer side too: whether the border itself is short there was not judged.
