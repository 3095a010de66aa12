### Why something was not judged.

cut-between-parts = the impression was cut apart: nothing was judged at the cut between its parts ({ $width } wide) and close beside it
no-wash-pair = the case names no impression before the wash beside a wash of the same jaw
reason-not-an-impression = not an impression: { $what }
no-record-scan = the case names no scan of the jaw-relation record
no-vertical-dimensions = the case does not give both vertical dimensions
no-parcel = the case says nothing of the parcel
too-small-to-see = those narrower than { $least } do not show on this scan
border-partly-judged = { $part } of { $whole } of border could not be judged: { $why }
over-extension-not-shown = no scan shows whether the border is too long: compare it with the mouth
